"""Walls told as parts of a millimetre in words: 'half a millimetre wall', 'acht Zehntel Wand',
'trois quarts de millimètre', 'a millimetre and a half'.

Only beside a word for walls or behind a times sign: a play or a tolerance of half a millimetre is
no part of a tube.
"""

from __future__ import annotations

from decimal import Decimal

from ...late_pattern import late_pattern
from ..text.patterns import any_of
from .foreign_numbers import value_of
from .number_words import UNITS
from .numbers import Number

_MM = r"(?:millimet(?:er|re)s?n?|millimètres?|milímetros?|millimetr[io]|mm)(?![^\W\d_]|\d)"
_HALF = any_of(
    r"(?:an?\s|one\s)?half(?:\sof)?(?:\s(?:an?|one))?[\s-]",
    r"(?:ein(?:e[mnrs]?)?\s)?halbe[mnrs]?\s",
    r"(?:un\s|d['’]un\s)?demi[\s-]",
    r"(?:un\s)?medio\s | (?:un\s)?mezzo\s | (?:een\s)?halve\s",
)
_QUARTERS = any_of(
    r"three[\s-]quarters?(?:\sof)?(?:\s(?:an?|one))?[\s-]",
    r"drei[\s-]?viertel\s | trois[\s-]quarts?\s(?:de\s|d['’]un\s)?",
    r"tres\scuartos\sde\s(?:un\s)?",
    r"tre\squarti\sdi\s(?:un\s)? | drie[\s-]?kwart\s(?:van\seen\s)?",
)
_QUARTER = any_of(
    r"(?:an?\s|one\s)?quarter(?:\sof)?(?:\s(?:an?|one))?[\s-]",
    r"(?:ein(?:e[mnrs]?)?\s)?viertel[\s-]?",
    r"(?:un\s)?quart\sde\s | (?:un\s)?cuarto\sde\s | (?:un\s)?quarto\sdi\s | (?:een\s)?kwart\s",
)
_TENTHS = any_of(
    rf"tenths?(?:\sof)?(?:\s(?:an?|one))?\s{_MM}",
    rf"zehntel(?:[\s-]?{_MM})?(?![^\W\d_])",
    rf"dixièmes?(?:\sde\s{_MM})? | décimas?(?:\sde\s{_MM})? | decim[io](?:\sdi\s{_MM})?",
    rf"tienden?(?:\s(?:van\seen\s)?{_MM})?",
)
_AND = any_of(
    r"\sand\s(?:a\s)?(?P<en>half|quarter) | \s(?:y|e)\s(?P<south>medio|mezzo|cuarto|quarto)",
    r"\set\s(?:un\s)?(?P<fr>demi|quart)",
)
_PART = late_pattern(
    rf"(?:(?P<half>{_HALF})|(?P<quarters>{_QUARTERS})|(?P<quarter>{_QUARTER})){_MM}"
    rf"|(?P<tenths>[^\W\d_]+|\d{{1,2}})[\s-]{_TENTHS}"
    rf"|(?P<one>an?\s|one\s|un\s)?{_MM}{_AND}\b"
    rf"|(?P<whole>an?)\s{_MM}"
)
_WALL_BEHIND = late_pattern(
    r"[\s(-]{0,2}(?:of\s|in\s|in\sder\s|de\sla\s|de\s|di\s|d['’]|à\sla\s|in\sde\s)?"
    r"(?:walls?|thick|wand\w*|dick|stark|paroi|épaisseur|pared|espesor|grosor|spessore|parete|dik"
    r"|wanddikte|gauge)\b"
)
_WALL_BEFORE = late_pattern(
    r"(?:\b(?:walls?(?:\sthickness)?|thickness|gauge|wand\w*|paroi|épaisseur|pared|espesor|grosor"
    r"|spessore|parete|wanddikte)"
    r"(?:\s(?:is|of|at|about|ist|von|beträgt|est|de|d['’]|es|è|di|van|only|just|nur|just\sover"
    r"|seulement|solo|sólo|slechts|un|una)){0,2}[\s:=]{0,2}"
    r"|[\d\"]\s?(?:mm\s)?(?:x|×|by|mal|par|por|per|bij)\s)$"
)
_FAR = 40
STARTS = frozenset(
    "a an one half three quarter d'un d’un"
    " ein eine einen einem einer halber halben halbes halbe drei"
    " dreiviertel viertel un d demi trois quart medio mezzo tres tre cuarto quarto een halve drie"
    " driekwart kwart millimetre millimeter milímetro millimètre millimetro mm".split()
)
"""Words, casefolded, with which such a part may begin, tenths apart."""
_TENTH_STARTS = ("tenth", "zehntel", "dixième", "décima", "decim", "tiende")


def part_at(text: str, place: int) -> Number | None:
    """The wall in parts of a millimetre that begins at ``place``, or None."""
    match = _PART.match(text[place : place + 2 * _FAR].casefold())
    if match is None:
        return None
    value = _value(match.groupdict())
    end = place + match.end()
    if value is None or len(text[place:end].casefold()) != match.end():
        return None
    ahead = text[max(0, place - _FAR) : place].casefold()
    if not _WALL_BEHIND.match(text[end : end + _FAR].casefold()) and not _WALL_BEFORE.search(ahead):
        return None
    return Number(place, end, (value,), "words", unit="mm")


def may_be_tenths(text: str, end: int) -> bool:
    """Whether behind the number that ends there so many tenths may be counted."""
    return text[end + 1 : end + 8].casefold().startswith(_TENTH_STARTS)


def _value(found: dict[str, str | None]) -> Decimal | None:
    if found["half"]:
        return Decimal("0.5")
    if found["quarters"]:
        return Decimal("0.75")
    if found["quarter"]:
        return Decimal("0.25")
    tenths = found["tenths"]
    if tenths is not None:
        count = int(tenths) if tenths.isdecimal() else UNITS.get(tenths, value_of(tenths))
        return Decimal(count) / 10 if count else None
    if found["whole"]:
        return Decimal(1)
    part = found["en"] or found["south"] or found["fr"] or ""
    return (
        Decimal("1.5") if part.startswith(("half", "medio", "mezzo", "demi")) else Decimal("1.25")
    )
