"""Which of several sizes is plainly the one asked for, because its neighbours are plainly not.

'Ihr Dorn für 30 x 1,5 läuft seit März. Jetzt kommt 35 x 1,5 dazu': both halves must be heard, words
that only tell of every other size and none that do of this one. Anything else is left undecided,
and the guard that doubts too much rather than too little has its way.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from ..sizes.groups import SLOTS, Group, Slot
from ..text.figures import Figure, Layout
from .asked_words import (
    AGAIN,
    ANEW,
    ASKS,
    ASKS_FOR,
    BY_A_DAY,
    BY_PLACE,
    LABELLED,
    NEWLY,
    ONLY,
    OWN_JOB,
    RANKED,
    REFERS,
    SAME_MATERIAL,
    SAME_TOOL,
    TOO,
    TOOL,
    TROUBLE,
)
from .each_words import OF_EACH
from .said_of import Split, split
from .told import only_told
from .told_words import (
    ABOUT_DIE,
    HAD_ALREADY,
    HAS_MANDREL,
    NO,
    OF_SUBJECT,
    TELLS,
    TELLS_NOT,
    WAS_GOING_TO,
)
from .words_on_size import Said

_WHOLE = 3
"""OD, wall and radius."""
_PAIR = 2
"""So many lengths of its own has what may be asked for beside a size that is told of."""
_MOST = 6
"""So many sizes are told apart; more are a list."""
_AHEAD = 32
"""Characters before a word in which a 'not' turns it round."""
_THIN = frozenset({"thin", "light"})
_THICK = frozenset({"thick", "heav"})
_SMALL = "small"


def told_apart(layout: Layout, groups: Sequence[Group]) -> list[Said] | None:
    """What is said on each size, ``told`` where it is only told of; the others are asked for.
    None where that isn't plain."""
    if not 1 < len(groups) <= _MOST or any(group.row is not None for group in groups):
        return None
    found = split(layout, groups)
    if found is None:
        return None
    if BY_PLACE.search(" ".join(words for words in found.loose if not _rests(words))):
        return None
    nothing = [False] * len(groups)
    for weakly in (nothing, only_told(layout, groups), _others_than_only(found)):
        for part, tells in zip(found.sizes, weakly, strict=True):
            part.told = (tells or is_told(part)) and not _is_asked(part)
        if _is_plain(groups, found, plainly=weakly is nothing):
            return found.sizes
    return None


def _rests(words: str) -> bool:
    """'The old one is still good': it points to a size and asks for none."""
    return _tells(words) and not _has(ASKS, words)


def sure_but_told(layout: Layout, groups: Sequence[Group]) -> list[bool]:
    """Sizes that words only tell of, and none asks for, where all others are in doubt: then one
    that may be asked for is among those, and none is sure. 'You built the 1.25 x .083 on 3.75. We
    have bought a 5 in die for the same tube.'"""
    none = [False] * len(groups)
    if all(group.doubtful for group in groups) or not any(group.doubtful for group in groups):
        return none
    found = split(layout, groups) if len(groups) <= _MOST else None
    if found is None:
        return none
    told = [is_told(part) and not _is_asked(part) for part in found.sizes]
    sure = [not group.doubtful for group in groups]
    if any(group.doubtful and group.slots.keys() - group.shared <= {"wall"} for group in groups):
        return none  # one tube whose wall is not settled
    return none if any(s and not t for s, t in zip(sure, told, strict=True)) else sure


def _others_than_only(found: Split) -> list[bool]:
    """'... Only the 1-5/8 needs a mandrel': all sizes but the one that an 'only' asks for."""
    only = [
        any(ONLY.search(words) and _has(ASKS, words) for words in part.elsewhere)
        for part in found.sizes
    ]
    return [only.count(True) == 1 and not one for one in only]


def strongly_told(layout: Layout, groups: Sequence[Group]) -> list[bool]:
    """Where nothing is plain: which sizes the words still tell of, and never ask for, beside one
    of which they don't and that has a tube of its own."""
    none = [False] * len(groups)
    if not 1 < len(groups) <= _MOST or any(group.row is not None for group in groups):
        return none
    found = split(layout, groups)
    if found is None or any(OF_EACH.search(words) and _has(ASKS, words) for words in found.loose):
        return none
    told = [
        is_told(part) and not _is_asked(part) and not _went_on(part, found.sizes)
        for part in found.sizes
    ]
    left = [
        (g, part) for g, part, tells in zip(groups, found.sizes, told, strict=True) if not tells
    ]
    on_same = [SAME_TOOL["od"].search(" ".join([part.words, *part.behind])) for _, part in left]
    own = any(
        same or len(group.slots.keys() - group.shared) >= _PAIR
        for (group, _), same in zip(left, on_same, strict=True)
    )
    apart = own and not any(
        "od" in group.shared and not same for (group, _), same in zip(left, on_same, strict=True)
    )
    return told if apart else none


def _went_on(part: Said, parts: Sequence[Said]) -> bool:
    behind = [other.words for other in parts if other.begin >= part.end]
    return bool(behind) and bool(TOO.match(behind[0]) and WAS_GOING_TO.search(part.words))


def _is_plain(groups: Sequence[Group], found: Split, *, plainly: bool) -> bool:
    """Whether the sizes not marked as told are asked for, and nothing speaks against it;
    ``plainly`` tells that the others are not only said to be."""
    told = [part for part in found.sizes if part.told]
    rest = [part for part in found.sizes if not part.told]
    if AGAIN.search(" ".join([*found.loose, *(part.words for part in told)])):
        return False
    if not rest:
        return plainly
    if not told or BY_PLACE.search(" ".join(part.words for part in rest)):
        return False
    return (
        _all_asked(rest, found.loose, plainly=plainly, alone=_is_alone_whole(groups, found.sizes))
        and _is_whole(groups, found.sizes)
        and not _rank_says_otherwise(groups, found.sizes, found.loose)
    )


def borrowed(group: Group, said: Said, others: Sequence[Said]) -> list[Slot]:
    """Slots of a size asked for whose figures stand among the words on one only told of, and of
    which it isn't said that they hold for it too."""
    return [
        slot
        for slot in SLOTS
        for figure in group.slots.get(slot, [])[:1]
        if any(other.told and _is_within(figure, said, other) for other in others)
        and not SAME_TOOL[slot].search(" ".join([said.words, *said.behind]))
    ]


def _is_within(figure: Figure, said: Said, other: Said) -> bool:
    """Whether a figure stands among the words on another size; those of two that were named in one
    breath, and told apart elsewhere, are no more the one's than the other's."""
    together = (said.begin, said.end) == (other.begin, other.end)
    return not together and other.begin <= figure.start < other.end


def words_of_others(said: Said, others: Sequence[Said]) -> list[tuple[int, int]]:
    """Where sizes only told of are spoken of, but where this one has the same material."""
    if SAME_MATERIAL.search(" ".join([said.words, *said.behind])):
        return []
    here = (said.begin, said.end)
    return [(o.begin, o.end) for o in others if o.told and (o.begin, o.end) != here]


def _all_asked(rest: Sequence[Said], loose: Sequence[str], *, plainly: bool, alone: bool) -> bool:
    """Whether nothing told of the sizes left speaks against them, and each is asked for: by its
    own words, by being new where a mandrel is named, or, where all others are ``plainly`` only told
    of, by a request that can mean no other: that is what the sender has to do, or ``alone`` of all
    a size with a radius."""
    if any(is_told(part) for part in rest):
        return False
    wanted = any(_has(ASKS, words) for words in loose)
    named = wanted or any(TOOL.search(words) for words in [*loose, *(p.words for p in rest)])
    asked = {
        (part.begin, part.end)
        for part in rest
        if asks_for(part)
        or ASKS_FOR.search(part.words)
        or (named and (_is_new(part, part.words) or LABELLED.match(part.words)))
    }
    if not asked and wanted and plainly and (alone or OWN_JOB.search(rest[0].words)):
        asked = {(rest[0].begin, rest[0].end)}
    return all((part.begin, part.end) in asked for part in rest)


def is_told(part: Said) -> bool:
    """Whether its own words, or those behind that point to it, tell of it."""
    if any(_tells(words) for words in (part.words, *part.elsewhere)):
        return True
    # "... That one can wait."
    return any(REFERS.search(words) and _tells(words) for words in part.behind)


def _is_asked(part: Said) -> bool:
    """Whether its words, or those behind that point to it, ask for it or say that it is new."""
    return asks_for(part) or is_new(part)


def asks_for(part: Said) -> bool:
    """Whether its own words, or those behind that point to it, ask for it."""
    if any(_has(ASKS, words) for words in (part.words, *part.elsewhere)):
        return True
    behind = (BY_A_DAY.sub(" ", words) for words in part.behind)
    pointing = (words for words in behind if REFERS.search(words) or ANEW.search(words))
    return any(_has(ASKS, words) for words in pointing)


def is_new(part: Said) -> bool:
    """Whether words before its figures say that it is what the sender has come to now."""
    return _is_new(part, part.ahead)


def _is_new(part: Said, where: str) -> bool:
    return _has(NEWLY, where) or bool(_heard(TROUBLE, part.words))


def _tells(words: str) -> bool:
    words = OF_SUBJECT.sub(" ", words)
    return TELLS_NOT.search(words) is not None or any(
        not _of_die(words, match) for match in _heard(TELLS, words)
    )


def _has(pattern: re.Pattern[str], words: str) -> bool:
    """Whether the words hold one of the pattern that no 'not' turns round."""
    return bool(_heard(pattern, TELLS_NOT.sub(" ", words)))


def _heard(pattern: re.Pattern[str], words: str) -> list[re.Match[str]]:
    return [
        match
        for match in pattern.finditer(words)
        if NO.search(words, max(0, match.start() - _AHEAD), match.start()) is None
    ]


def _of_die(words: str, match: re.Match[str]) -> bool:
    """'Biegeblock ist vorhanden': of the die, and of no mandrel."""
    if not HAD_ALREADY.fullmatch(match[0]):
        return False
    begin = max(words.rfind(sign, 0, match.start()) for sign in ",;.(") + 1
    ends = (words.find(sign, match.end()) for sign in ",;.)")
    clause = words[begin : min((end for end in ends if end >= 0), default=len(words))]
    return ABOUT_DIE.search(clause) is not None and HAS_MANDREL.search(clause) is None


def _is_whole(groups: Sequence[Group], said: Sequence[Said]) -> bool:
    """Whether no size asked for lacks what one only told of has: it may be the other's."""
    told = [group for group, part in zip(groups, said, strict=True) if part.told]
    for group, part in zip(groups, said, strict=True):
        if part.told:
            continue
        if any(slot in ("od", "id") for slot in borrowed(group, part, said)):
            return False
        if any(
            slot not in group.slots and slot in other.slots and slot not in other.shared
            for slot in ("wall", "clr")
            for other in told
        ):
            return False
    return True


def _is_alone_whole(groups: Sequence[Group], said: Sequence[Said]) -> bool:
    """Whether the size asked for has OD, wall and radius of its own, and no other has a radius."""
    for group, part in zip(groups, said, strict=True):
        own = [slot for slot in ("od", "wall", "clr") if slot in group.slots.keys() - group.shared]
        if ("clr" in own) if part.told else len(own) < _WHOLE:
            return False
    return True


def _rank_says_otherwise(
    groups: Sequence[Group], said: Sequence[Said], loose: Sequence[str]
) -> bool:
    """Whether 'the thick one' that is asked for is one of those only told of."""
    for words in loose:
        for match in RANKED.finditer(words):
            rank = match["rank"]
            slot: Slot = "wall" if rank in _THIN | _THICK else "od"
            if any(slot not in group.slots for group in groups):
                return True
            values = [group.slots[slot][0].number.value for group in groups]
            best = min(values) if rank in _THIN or rank == _SMALL else max(values)
            if any(part.told for part, v in zip(said, values, strict=True) if v == best):
                return True
    return False
