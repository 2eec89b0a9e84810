"""Sizes that a message plainly only tells of, beside one that it plainly asks for: these are left
out, and the person is told of them.

'You made us a 2-1/2 x .065 on 3.75 back in June, now we want the same thing in 3"'. Three things
must be heard: words of the size itself that say why it is not asked for; a whole other size that is
asked for; and nothing that asks for the first all the same. Where any is missing, the size is kept
and doubted.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from .asked_words import AGAIN, ASKS, ASKS_FOR, BY_PLACE, REFERS, TOOL
from .figures import Layout
from .groups import Group
from .plainly_asked import asks_for, is_new, is_told
from .said_of import Said, Split, split
from .told_plainly_words import (
    AGAIN_HARMLESS,
    BOUGHT_PARTS,
    DELIVERED,
    FOR_SALE,
    GIVEN_UP,
    OWNED,
    PLURAL_TOOLS,
    QUOTED,
    SOMEBODY_ELSES,
    WANTED_ALL_THE_SAME,
)

PLAINLY_TOLD = "its words say that it is there, given up or somebody else's, and do not ask for it"

_MOST = 6
"""So many sizes are told apart; more are a list."""
_WHOLE = ("wall", "clr")
_TOLD_OF = (DELIVERED, OWNED, SOMEBODY_ELSES, FOR_SALE, BOUGHT_PARTS)


@dataclass(frozen=True, slots=True)
class Apart:
    """The words on each size, in the order of the groups; ``told`` where it is only told of."""

    said: list[Said]
    sure: bool
    """Whether the one size that is left is plainly the one asked for."""


def plainly_told(layout: Layout, groups: Sequence[Group]) -> Apart | None:
    """Which sizes are plainly only told of; None where that goes for none."""
    if not 1 < len(groups) <= _MOST or any(group.row is not None for group in groups):
        return None
    found = split(layout, groups)
    if found is None:
        return None
    told = [_is_plainly_told(part, found) for part in found.sizes]
    if not any(told) or all(told):
        return None
    rest = [(g, part) for g, part, gone in zip(groups, found.sizes, told, strict=True) if not gone]
    if not any(_is_whole(group) and _is_asked(part, found) for group, part in rest):
        return None
    if len(rest) == 1 and any(map(PLURAL_TOOLS.search, found.loose)):
        return None  # several mandrels, and one size is left
    if any(_speaks_of_told(words, found, told) for words in found.loose):
        return None
    for part, gone in zip(found.sizes, told, strict=True):
        part.told = gone
    alone = len(rest) == 1 and not is_told(rest[0][1])
    return Apart(found.sizes, sure=alone)


def _is_plainly_told(part: Said, found: Split) -> bool:
    """Whether its own words tell of it, and neither those nor what points to it ask for it."""
    shared = any(o is not part and (o.begin, o.end) == (part.begin, part.end) for o in found.sizes)
    own = [*([] if shared else [part.words]), *part.elsewhere]
    pointing = [words for words in part.behind if REFERS.search(words)]
    if asks_for(part) or is_new(part) or any(ASKS_FOR.search(words) for words in part.elsewhere):
        return False
    if any(GIVEN_UP.search(words) for words in [*own, *pointing]):
        return True
    said = _without_harmless(" . ".join([*own, *part.behind]))
    if WANTED_ALL_THE_SAME.search(said) or AGAIN.search(said):
        return False
    if any(pattern.search(words) for pattern in _TOLD_OF for words in own):
        return True
    following = " ".join(part.behind)
    open_still = ASKS.search(following) or "?" in following
    return not open_still and any(QUOTED.search(words) for words in own)


def _is_asked(part: Said, found: Split) -> bool:
    """Whether it is asked for: by its words, by being new, or by a request that names no size."""
    if asks_for(part) or ASKS_FOR.search(part.words) or is_new(part):
        return True
    return any(ASKS.search(words) or TOOL.search(words) for words in found.loose)


def _is_whole(group: Group) -> bool:
    return group.has_tube and all(slot in group.slots for slot in _WHOLE)


def _speaks_of_told(words: str, found: Split, told: Sequence[bool]) -> bool:
    """Whether a sentence on no size may ask for one that is told of, or for all."""
    rest = [p for p, gone in zip(found.sizes, told, strict=True) if not gone]
    named = any(clause in words for part in rest for clause in part.elsewhere)
    if named or any(words in part.behind and asks_for(part) for part in rest):
        return False  # "just one again" right behind the size that is asked for
    said = _without_harmless(words)
    return any(p.search(said) is not None for p in (WANTED_ALL_THE_SAME, AGAIN, BY_PLACE))


def _without_harmless(words: str) -> str:
    return AGAIN_HARMLESS.sub(" ", words)
