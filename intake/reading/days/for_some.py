"""The only day told, where it is for some of several sizes: 'deliver item 2 by the 7th, item 1 has
no rush', 'Zeile 3 ist eilig, die anderen bis 27.11.'. The others have none.

Where several days are told, `several.py` shares them out.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence

from ....rules.request import SizeRequest
from ...late_pattern import late_pattern

_PARTS = late_pattern(r"[,;:–—]\s|\s(?:and|but|und|aber|et|mais|y|pero|ed?|ma|en|maar)\s")
_EVERYTHING = late_pattern(
    r"\b(?:all|every\w*|both|the lot|alles?|beide\w*|tout(?:es)?|tous|todos?|todas?|ambos|ambas"
    r"|tutt[oi]|entramb[ie]|each|je|jede[rnms]?|chaque|cada|ogni|elke?|iedere?)\b",
    re.IGNORECASE,
)
_THE_OTHERS = late_pattern(
    r"\b(?:rest|others?|remaining|restlichen?|übrigen?|ander(?:en?|s)|reste|autres?|resto|demás"
    r"|otr[oa]s?|altr[oi]|overige)\b",
    re.IGNORECASE,
)


def without_day_of_others(
    requests: Sequence[SizeRequest], own_day: Sequence[bool], others: frozenset[int]
) -> list[SizeRequest]:
    """The requests, those of ``others`` without the day; ``own_day`` marks what its row tells."""
    return [
        request.model_copy(
            update={
                "needed_by": None,
                "doubts": tuple(
                    doubt
                    for doubt in request.doubts
                    if doubt.field != "needed_by" or doubt.about == "size"
                ),
            }
        )
        if number in others and not own_day[number]
        else request
        for number, request in enumerate(requests)
    ]


def day_is_not_for(
    clauses: Sequence[str], count: int, called: Callable[[str], set[int]]
) -> frozenset[int]:
    """The sizes that the day in one of ``clauses`` is not for; ``called`` tells which of the
    ``count`` sizes some words name."""
    for clause in clauses:
        if _EVERYTHING.search(clause):
            return frozenset()
        parts = _PARTS.split(clause)
        rest = next((at for at, part in enumerate(parts) if _THE_OTHERS.search(part)), None)
        if rest is not None:
            before = called(" , ".join(parts[:rest]))
            return frozenset(before if len(before) < count else ())
        if named := called(clause):
            return frozenset(range(count)) - named
    return frozenset()
