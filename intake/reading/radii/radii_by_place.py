"""Two radii of one tube, each told with the place that it is for: 'Radius 60 am Sitz und 90 an der
Lehne', 'radio 60 delante y 110 detrás', 'einmal mit 70er und einmal mit 100er Radius'.

Only where the words at both are of one make: the same preposition, a pair of opposites, or 'once'.
"""

from __future__ import annotations

import re
from decimal import Decimal

from ...late_pattern import late_pattern
from ..naming.cue_sides import cue_right
from ..text.figures import Figure, Layout
from ..text.patterns import any_of
from ..text.roles import RADIUS_ROLES

_PREPOSITIONS = (
    "am|an|ans|beim|bei", "für|fürs", "im|in", "auf", "pour", "à|au|aux", "sur", "dans", "para",
    "en", "per", "al|alla|allo|ai|alle", "sul|sulla|sullo", "nel|nella", "voor", "aan", "bij", "op",
    "for", "at", "on",
)  # fmt: skip
_WORD = r"[^\W\d_][\w'’-]{1,24}"
_THE = r"(?:(?:the|der|die|das|den|dem|la|le|les|l|el|los|las|il|lo|gli|de|het)[\s'’])?"
_PLACE = "|".join(
    rf"(?P<at{number}>(?:{words}))\s{_THE}{_WORD}" for number, words in enumerate(_PREPOSITIONS)
)
_OPPOSITES = (
    "vorne?|hinten", "oben|unten", "links|rechts", "devant|derrière", "à l'avant|à l'arrière",
    "en haut|en bas", "à gauche|à droite", "delante|detrás|atrás", "arriba|abajo",
    "a la izquierda|a la derecha", "davanti|dietro", "sopra|sotto", "a sinistra|a destra",
    "voor(?:aan)?|achter(?:aan)?", "voor|achter", "boven|onder", "links|rechts", "front|rear|back",
)  # fmt: skip
_SIDE = "|".join(f"(?P<by{number}>{words})" for number, words in enumerate(_OPPOSITES))
_MM = r"(?:er)?\s?(?:mm\b)?\s?"
_AND = r"\s?,?\s?(?:(?:und|et|y|e|ed|en|and|,)\s)?"
_IS = r"(?:\s(?:ist|est|es|è|is|de|da|di|von|van|of))?"
_BEHIND_FIRST = late_pattern(rf"^{_MM}(?:{_SIDE}|{_PLACE}){_AND}(?:de|da|di|von|van|of|a|auf)?\s?$")
_BEHIND_SECOND = late_pattern(rf"^{_MM}(?:{_PLACE}|{_SIDE})(?=[\s.,;:!?)]|$)")
_BEFORE_SECOND = late_pattern(rf"^{_MM}\s?,?\s(?:und|et|y|e|ed|en|and)\s(?:{_PLACE}){_IS}\s?:?\s?$")
_BEFORE_FIRST = late_pattern(rf"(?:{_PLACE})\s(?=[^.;\d]{{0,32}}$)")
_ONCE = any_of(
    "einmal | ein mal | une fois | une autre(?: fois)? | una vez | otr[ao](?: vez)? | una volta",
    "un'altra(?: volta)? | l'altr[oa] | (?:één|een) keer | eenmaal | once | das andere(?: mal)?",
)
_ONCE_AGAIN = late_pattern(
    rf"^{_MM}(?:de rayon |de radio |di raggio |radius )?,?\s?(?:(?:und|et|y|e|en|and)\s)?{_ONCE}"
    r"(?:\s(?:mit|auf|avec|en|à|con|a|da|de|met|op|with|at|on|radius|rayon|radio|raggio|un)){0,3}\s$"
)
_LEAST, _MOST = Decimal("0.3"), Decimal("3.4")
_BACK, _FAR = 72, 40


def hear_radii_by_place(layout: Layout) -> None:
    """Make a radius of the second of two, or of both where the word stands behind the second."""
    for first in layout.figures:
        second = layout.after_in_sentence(first)
        if second is None or not _may_pair(layout, first, second):
            continue
        told = first.role in RADIUS_ROLES and first.role != "times_d"
        if told and second.role is None and _are_parallel(layout, first, second):
            second.give(first.role, "list")
            second.link = "list"
        elif not told and second.role in ("radius", "clr") and first.role in (None, "od"):
            between = layout.words(first.end, second.start)
            if _ONCE_AGAIN.match(between) or _is_called_so(between):
                first.give(second.role, "list")
                second.link = "list"


def _may_pair(layout: Layout, first: Figure, second: Figure) -> bool:
    after = layout.after(second)
    if first.negated or second.negated or "times" in (first.link, second.link):
        return False
    if second.unit not in (None, first.unit, "mm") or (after and after.link in ("times", "slash")):
        return False
    low = first.number.value * _LEAST
    return low <= second.number.value <= first.number.value * _MOST


def _are_parallel(layout: Layout, first: Figure, second: Figure) -> bool:
    if cue_right(layout, second) is not None and _is_named(layout, second):
        return False
    between = layout.words(first.end, second.start)
    if _ONCE_AGAIN.match(between):
        return True
    behind = _BEHIND_FIRST.match(between)
    if behind is not None:
        words = layout.words(second.end, second.end + _FAR)
        return _same(behind, _BEHIND_SECOND.match(words))
    again = _BEFORE_SECOND.match(between)
    if again is None:
        return False
    begin = max(layout.sentence_start(first.sentence), first.start - _BACK)
    ahead = layout.words(begin, first.start)
    return any(_same(again, found) for found in _BEFORE_FIRST.finditer(ahead))


def _is_named(layout: Layout, figure: Figure) -> bool:
    found = cue_right(layout, figure)
    return found is not None and found.distance == 0 and found.cue.role not in RADIUS_ROLES


def _is_called_so(between: str) -> bool:
    """'Mit 70er und 100er Biegeradius'"""
    return (
        re.fullmatch(r"er\s?(?:und|oder|,|sowie|bzw\.?)\s(?:(?:mit|auf)\s)?", between) is not None
    )


def _same(one: re.Match[str] | None, other: re.Match[str] | None) -> bool:
    """Whether both places are told by one preposition, or by words of one pair."""
    if one is None or other is None:
        return False
    ones, others = one.groupdict(), other.groupdict()
    return any(ones.get(name) and others.get(name) for name in ones)
