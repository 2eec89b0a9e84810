"""Counts told by the sizes' places in running words, with what is left for the others: 'two of the
first and one of each other', 'item 1 - three mandrels; items 2 & 3 - one mandrel each'."""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..picking.place_names import ARTICLE, COUNTED, LAST, NOUN
from ..text.patterns import any_of
from .by_place import COUNT, MOST, TOOL, value_of

_TO = r"(?:of|for|on|für|von|vom|bei|zu|pour|de|du|para|per|di|del|voor|van)"
_RANK = "|".join(sorted((*COUNTED, *LAST), key=len, reverse=True))
_AND = r"(?:\s?[,&+]\s?(?:(?:and|und|et|y|e|en)\s)?|\s(?:and|und|et|y|e|en)\s)"
_NUMBERS = r"(?P<numbers>\d{1,2}(?:" + _AND + r"\d{1,2}){0,5})(?![\w/\"”]|[.,-]\d|\s?mm\b)"
_NAMED = rf"(?:{NOUN}\s?#?{_NUMBERS}|#{_NUMBERS.replace('<numbers>', '<marks>')})"
_RANKED = rf"(?P<rank>{_RANK})(?:\s(?:one|size|tube|line|rohr|tubo|buis))?(?!\w|\s\d)"
_BEHIND = late_pattern(
    rf"(?<![\w.,/(]){COUNT}{TOOL}(?:\seach)?\s(?:{_TO}\s)?{ARTICLE}(?:{_NAMED}|{_RANKED})"
)
_AHEAD = late_pattern(
    rf"(?:^|(?<=[.;:,]\s)){ARTICLE}{_NAMED.replace('<', '<a')}\s?[:=–-]\s{COUNT}{TOOL}"
    r"(?:\s(?:each|je|jeweils|chacun|cada uno|ciascuno|elk))?(?=\s?(?:[.;,)\n]|$))",
    re.MULTILINE,
)
_OTHERS = late_pattern(
    rf"(?<![\w.,/(]){COUNT}(?:\s(?:seule?|single|sol[oa]|einzige[nr]?))?{TOOL}\s(?:(?:each|je|jeweils)\s)?(?:{_TO}\s)?"
    + any_of(
        r"(?:(?:all|each|every) )?(?:of )?(?:the )?(?:others?|rest|remaining)(?: ones?| sizes?)?",
        "(?:allen |jedem )?(?:der |den )?(?:anderen|übrigen|restlichen)",
        "(?:chacun )?(?:des|les|chaque) autres? | cada (?:uno de )?los (?:otros|demás)",
        "(?:los|las) (?:otros|demás|otras) | (?:gli|le|degli|delle) altr[ie] | de (?:andere|rest)",
    )
    + r"(?!\w)"
)


def counts_by_ordinal(text: str, sizes: int) -> dict[int, int]:
    """The count of each size by its place in the list, from 0 on; empty where any is left open or
    gets two."""
    words = text.lower()  # a casefolded text would be longer by each sharp s
    if len(words) != len(text):
        return {}
    found: dict[int, int] = {}
    for match in (*_BEHIND.finditer(words), *_AHEAD.finditer(words)):
        if "\n" in match[0]:
            continue  # a radius at the end of a line, and the next one's number
        said = match.groupdict()
        numbers = said.get("numbers") or said.get("marks")
        numbers = numbers or said.get("anumbers") or said.get("amarks")
        rank = said.get("rank") or ""
        places = [int(one) for one in re.findall(r"\d+", numbers or "")]
        places = places or [COUNTED.get(rank, sizes if rank in LAST else 0)]
        for place in places:
            if not 0 < place <= sizes:
                return {}
            count = value_of(match["count"])
            if count > MOST:
                return {}
            if found.setdefault(place - 1, count) != count:
                return {}
    others = {value_of(match["count"]) for match in _OTHERS.finditer(words)}
    if found and len(others) == 1:
        for place in range(sizes):
            found.setdefault(place, *others)
    return found if len(found) == sizes else {}
