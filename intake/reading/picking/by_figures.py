"""Several sizes of a list asked for by a figure of each: 'only the 1-1/4 and the 1 inch'."""

from __future__ import annotations

import re
from collections.abc import Sequence

from ...late_pattern import late_pattern
from ..sizes.groups import Group
from .by_letter import speaks_of_other
from .by_rank import having, length_of
from .place_lists import NO_REQUEST, clause_of
from .place_names import ENDS

_PAIR = 2
_ONLY = (
    r"(?:only|just|nur|bloß|lediglich|seulement|uniquement|juste|solo|sólo|solamente|soltanto|alleen"
    r"|enkel)"
)
_THE = r"(?:(?:the|das|die|den|le|la|les|el|los|il|i|lo|de|het)\s)"
_NUMBER = r"(?:(?:\d{1,2}[ -])?\d{1,2}/\d{1,2}|\d{1,3}(?:[.,]\d{1,3})?)(?![\d/])"
_UNIT = r"(?:\s?(?:mm|\"|inch(?:es)?|in|er)\b|\s?\")?(?:[\s-](?:mandrels?|ones?|tubes?|rohre?))?"
_AND = r"(?:\s?,\s|,?\s(?:and|&|und|et|y|e|en)\s)"
_FIGURES = rf"(?P<all>{_THE}{_NUMBER}{_UNIT}(?:{_AND}{_THE}?{_NUMBER}{_UNIT}){{1,5}})"
_WORDS = (
    r"(?:(?:need|want|quote|price|prices|pricing|after|for|on|a|one|brauchen?|wir|ich|einen|für"
    r"|besoin|d['’]un|un|pour|necesitamos|para|serve|servono|per|uno|nodig|een|voor|mandrels?|dorne?"
    r"|mandrins?|mandril(?:es)?|mandrin[oi]|doorn(?:en)?)\s){0,6}"
)
_BEFORE = late_pattern(rf"\b{_ONLY}\s{_WORDS}{_FIGURES}{ENDS}")
_BEHIND = late_pattern(
    r"\b(?:need|want|quote|price|brauchen?|besoin|necesitamos|serv\w+|nodig|offer|anbieten)\s"
    rf"(?:[^\W\d]+\s){{0,5}}?{_FIGURES}\s(?:{_ONLY}|alone)\b"
)
_EACH_NUMBER = re.compile(_NUMBER)


def picked_by_figures(words: str, groups: Sequence[Group]) -> set[int]:
    """The sizes whose ODs are named beside an 'only'; empty where one is no size's alone."""
    spaced = " ".join(words.split()).casefold()
    for match in (*_BEFORE.finditer(spaced), *_BEHIND.finditer(spaced)):
        clause = clause_of(spaced, match.start(), match.end())
        if NO_REQUEST.search(clause) or speaks_of_other(spaced, match.start()):
            continue
        found = [having(groups, "od", length_of(n)) for n in _EACH_NUMBER.findall(match["all"])]
        if len(found) >= _PAIR and all(len(one) == 1 for one in found):
            return {at for one in found for at in one}
    return set()
