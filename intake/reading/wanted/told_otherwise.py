"""Whether words say in one more way that a size is only told of; see ``told_otherwise_words``."""

from __future__ import annotations

import re
from collections.abc import Sequence

from ...late_pattern import late_pattern
from .asked_words import ASKS, REFERS
from .told_elsewhere_words import ELSEWHERE, NOT_ANY_MORE, RUNS_WELL
from .told_otherwise_words import (
    ANOTHERS,
    BORROWED,
    BOUGHT,
    BY_HAND,
    CAME_BY,
    IGNORED,
    LENT,
    OLD_ONES,
    OWNED_SAID_BEHIND,
    SAME_MAKE,
    SEEN_ELSEWHERE,
    TUBE_ITSELF,
)
from .told_plainly_words import NO_MANDREL, ON_OUR_MACHINE, TAKEN_UP_AGAIN

_FOR_IT = late_pattern(
    r"\b(?:mandrels?|\w*dorne?|mandrins?|mandril(?:es)?|mandrin[oi]|doorn(?:en|s)?|one) (?:each )?"
    r"(?:for|to suit|für"
    r"|pour|para|per|voor)\b"
)
_ONCE_MORE = late_pattern(
    r"\b(?:(?:the )?same(?: \w+)? again|once more|again,|again\b(?= ?(?:please|pls|[.;!]|$))|noch"
    r" einmal|nochmals?"
    r"|dasselbe|encore une fois|la même chose|otra vez|lo mismo|di nuovo|lo stesso|opnieuw|nog"
    r" eens)"
    r"|\b(?:he|she|they)(?:'d| would)? (?:also )?(?:asked|asks|wants?|needs?|likes?)\b|\b(?:for"
    r"|get) (?:him|her"
    r"|them)\b|\b(?:er|sie) (?:braucht|will|möchte)\b|\b(?:il|elle) (?:en )?(?:veut|voudrait)\b"
    r"|\b(?:él|ella) (?:también"
    r" )?(?:quiere|necesita)\b|\b(?:lui|lei) (?:ne )?(?:vuole|vorrebbe)\b|\b(?:hij|zij) wil\b"
    r"|\b(?:mandrels?|\w*dorn|mandrin|mandril|mandrino|doorn|one|quote|price)\b[^.;]{0,20}?\b"
    r"(?:that|this|it|those"
    r"|them|dafür|das|celui-là|ça|eso|ese|quello|daarvoor)\b(?= ?(?:[.,;!]|$|and\b|as well\b"
    r"|too\b|und\b|et\b"
    r"|y\b|e\b|en\b))"
)
"""'... the same again, plus one for ...', 'so a mandrel for that, and ...'."""


def is_taken_back(words: str) -> bool:
    """'A mandrel for 44.5 x 2.6 - hang on, that's the old car', 'the 26.9 we need no more': and
    nothing asks behind it."""
    found = OLD_ONES.search(words) or NOT_ANY_MORE.search(words)
    return found is not None and not ASKS.search(words, found.end())


def is_borrowed(words: str) -> bool:
    """Bent with a tool that is borrowed: said of what is bent today."""
    return BORROWED.search(words) is not None


def is_let_be(words: str) -> bool:
    """Bent by hand, or to be ignored."""
    found = IGNORED.search(words) or (BY_HAND.search(words) if not _FOR_IT.search(words) else None)
    return found is not None and not TAKEN_UP_AGAIN.search(words, found.end())


def is_there(
    own: Sequence[str], behind: Sequence[str], others: Sequence[str], *, last: bool
) -> bool:
    """Bought before or elsewhere, owned, or another's; ``last`` tells that no other size comes
    after it: then a request ``behind`` that points to none is for those. ``others`` are the words
    on other sizes, which may ask for this one once more."""
    if any(map(_ONCE_MORE.search, others)):
        return False
    asking = [words for words in behind if ASKS.search(words)]
    if asking and (not last or any(map(REFERS.search, asking))):
        return False
    if any(p.search(words) for words in own for p in (CAME_BY, LENT, SEEN_ELSEWHERE, SAME_MAKE)):
        return True
    if any(ANOTHERS.search(words) and not ON_OUR_MACHINE.search(words) for words in own):
        return True
    bought = (BOUGHT, ELSEWHERE, RUNS_WELL)
    if any(_any(bought, words) and not NO_MANDREL.search(words) for words in own):
        return True
    return any(OWNED_SAID_BEHIND.search(words) and not TUBE_ITSELF.search(words) for words in own)


def _any(patterns: Sequence[re.Pattern[str]], words: str) -> bool:
    return any(pattern.search(words) for pattern in patterns)
