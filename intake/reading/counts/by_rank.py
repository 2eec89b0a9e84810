"""Counts of two sizes told apart by how big they are: '2 of the big one, 1 of the small one'."""

from __future__ import annotations

import re
from collections.abc import Sequence
from decimal import Decimal

from ...late_pattern import late_pattern
from ..text.patterns import any_of

_NUMBERS = {
    word: number
    for number, words in enumerate(
        (
            "1 one a an ein eine einen eins un une uno una een één",
            "2 two zwei deux dos due twee",
            "3 three drei trois tres tre drie",
            "4 four vier quatre cuatro quattro",
            "5 five fünf cinq cinco cinque vijf",
            "6 six sechs seis sei zes",
        ),
        start=1,
    )
    for word in words.split()
}
_NUMBERS |= dict.fromkeys("8 eight acht huit ocho otto".split(), 8)
_NUMBERS |= dict.fromkeys("10 ten zehn dix diez dieci tien".split(), 10)
_BIG = any_of(
    r"big(?:ger|gest)?(?: one| ones| tube| size)? | larg(?:e|er|est)(?: one| ones| tube| size)?",
    r"grö(?:ß|ss)er\w* | gro(?:ß|ss)e[nrms]? | dicke?r?e[nrms]? | plus gros(?:se)? | gros(?:se)? "
    r"| plus grand"
    r"e? | grande?",
    r"más grande | mayor | grueso | gordo | più grande | grosso | grot(?:e|ere|er) | grootste",
    r"dikke",
)
_SMALL = any_of(
    r"small(?:er|est)?(?: one| ones| tube| size)? | little(?: one| ones)?",
    r"kleiner\w* | kleine[nrms]? | dünne?r?e[nrms]? | plus petite? | petite?",
    r"más pequeñ[oa] | pequeñ[oa] | menor | chic[oa] | delgado | più piccol[oa] | piccol[oa]",
    r"kleine(?:re)? | kleinste | dunne",
)
_OF = (
    r"(?:mandrels?|pcs|pieces|off|ea|dorne?|stück|stk|mandrins?|pièces?|mandril(?:es)?|mandrin[oi]"
    r"|doorn(?:en)?|stuks?)?\s?(?:of|for|on|in|vom|von|für|du|de|pour|del|della|para|per|van|voor)\s?"
    r"(?:the|den|der|dem|das|die|le|la|l[’']|les|el|los|il|lo|gli|de|het)?\s?"
)
_COUNTED = late_pattern(
    rf"(?<![\w.,/])(?P<count>{'|'.join(sorted(_NUMBERS, key=len, reverse=True))})\s{_OF}"
    rf"(?:(?P<big>{_BIG})|(?P<small>{_SMALL}))(?!\w)",
    re.IGNORECASE,
)
_PAIR = 2


def counts_by_rank(text: str, ods: Sequence[Decimal | None]) -> tuple[int, int] | None:
    """The counts of two sizes of these ODs; None unless each is told exactly once."""
    if len(ods) != _PAIR or ods[0] is None or ods[1] is None or ods[0] == ods[1]:
        return None
    found = list(_COUNTED.finditer(" ".join(text.split())))
    if len(found) != _PAIR or (found[0]["big"] is None) == (found[1]["big"] is None):
        return None
    big, small = found if found[0]["big"] is not None else reversed(found)
    counts = _NUMBERS[big["count"].casefold()], _NUMBERS[small["count"].casefold()]
    return counts if ods[0] > ods[1] else (counts[1], counts[0])
