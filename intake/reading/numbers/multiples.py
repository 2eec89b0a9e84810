"""Radii as multiples in words: 'twice the diameter', 'dreimal Rohr-Ø'."""

from __future__ import annotations

import re
from decimal import Decimal

from ...late_pattern import late_pattern
from ..text.patterns import any_of
from .foreign_multiples import foreign_multiple_at
from .numbers import Number

_MULTIPLE = any_of(
    r"twice | two times | double | doppelt\w* | zweimal | zwei mal | deux fois | dos veces",
    "due volte | il doppio | twee keer | tweemaal | duas vezes | three times | dreimal | drei mal",
    "trois fois | tres veces | tre volte | drie keer | driemaal | três vezes",
)
_TWICE = late_pattern(
    rf"(?P<n>{_MULTIPLE})\s(?:(?:of|the|its|der|den|dem|des|le|el|il|la|de|del|o)\s){{0,2}}"
    r"(?:(?:tube|pipe|outside|outer|rohr)\s?){0,2}"
    r"(?:od\b|o\.d\.?|d\b|diameters?\b|dia\b|durchmesser\w*|diam[èe]tre|di[áa]metro|Ø)",
    re.IGNORECASE,
)
_OD_TIMES = re.compile(
    r"(?:(?:the|der|le|el|il|de)\s)?(?:(?:tube|pipe|outside)\s)?"
    r"(?:od\b|o\.d\.?|diameter\b|dia\b|durchmesser\b|rohr-?ø|diam[èe]tre\b|di[áa]metro\b)\s?"
    r"(?:times|x|×|\*|mal|fois|por|per|veces|volte|keer|maal)\s?(?P<n>[1-9](?:[.,]\d{1,2})?)(?![\d/]|[.,]\d)"
    r"(?!\s?(?:mm|in\b|\"|cm))",
    re.IGNORECASE,
)
"""'Radius is the OD times 1.5': only behind a word for the radius."""
_RADIUS_AHEAD = re.compile(
    r"\b(?:radius|clr|rad|centre ?line|center ?line|biegeradius|rayon|radio|raggio|straal)\b"
    r"(?:\s?[:=,]|\s(?:is|same|as|of|ist|gleich|est|égal|au|à|es|igual|al?|è|pari|uguale|gelijk|aan|a))*\s?$",
    re.IGNORECASE,
)
_BARE = re.compile(
    r"\s?(?:(?:times|x|mal|fois|veces|volte|keer|maal)(?=\s*(?:[.,;)](?!\d)|\n|$))"
    r"|(?:(?:tube|pipe)\s)?(?:diameters|durchmesser|diamètres|diámetros|diametri)\b(?!\s\d))",
    re.IGNORECASE,
)
"""'Radius is 1.5 times', 'radius equal to 3 diameters'."""
_EQUALS = re.compile(
    r"\b(?:equal(?:s|ing)?(?:\sto)?|equivalent\sto|be|about|approx\.?|ca\.?)\s?$", re.I
)
_LARGEST = 10
_BACK = 40
_THREE = re.compile(r"th?re|drei|dri|trois|três", re.IGNORECASE)
MULTIPLE_STARTS = frozenset("tdzior")
"""No multiple begins with another letter, casefolded."""


def multiple_at(text: str, place: int) -> Number | None:
    """The number of diameters that words starting exactly there name, or None."""
    match = _TWICE.match(text, place)
    if match is None:
        said = _OD_TIMES.match(text, place)
        if said is None or not _RADIUS_AHEAD.search(text, max(0, place - _BACK), place):
            return foreign_multiple_at(text, place)
        value = Decimal(said["n"].replace(",", "."))
        return Number(said.start(), said.end(), (value,), "words")
    times = Decimal(3 if _THREE.match(match["n"]) else 2)
    return Number(match.start(), match.end(), (times,), "words")


def bare_multiple(text: str, number: Number) -> int | None:
    """Where the words end that make a number behind a word for the radius a multiple; None where
    there are none."""
    found = _BARE.match(text, number.end) if number.value <= _LARGEST else None
    if found is None:
        return None
    ahead = text[max(0, number.start - _BACK) : number.start]
    while (shorter := _EQUALS.sub("", ahead)) != ahead:
        ahead = shorter
    return found.end() if _RADIUS_AHEAD.search(ahead) else None


def is_list_mark(text: str, at: int) -> bool:
    """Whether a star is the first or last sign of its line: a mark of the list, no times sign."""
    first, last = text.rfind("\n", 0, at) + 1, text.find("\n", at)
    ahead, behind = text[first:at], text[at + 1 : last if last >= 0 else len(text)]
    return not ahead.strip() or not behind.strip()
