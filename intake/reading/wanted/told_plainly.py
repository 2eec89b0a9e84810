"""Sizes that a message plainly only tells of, beside one that it plainly asks for: these are left
out, and the person is told of them.

'You made us a 2-1/2 x .065 on 3.75 back in June, now we want the same thing in 3"'. Three things
must be heard: words of the size itself that say why it is not asked for; a whole other size that is
asked for; and nothing that asks for the first all the same. Where any is missing, the size is kept
and doubted.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from ...late_pattern import late_pattern
from ..counts.sizes_said import COUNTED, SIZES
from ..nets.there import is_tube_there
from ..sizes.groups import Group
from ..text.figures import Layout
from .asked_words import AGAIN, ASKS, ASKS_FOR, BY_PLACE, POINTS, REFERS, TOOL
from .counted_otherwise import (
    COUNTED_FOR_IT,
    COUNTED_OTHERWISE,
    COUNTED_TOOLS,
    QUANTITY,
    TUBES_COUNTED,
)
from .plainly_asked import asks_for, borrowed, is_new, is_told
from .said_of import Split, split
from .told_before_words import BESIDE, WAS_BEFORE
from .told_came_along import came_along
from .told_elsewhere_words import ELSEWHERE
from .told_otherwise import is_borrowed, is_let_be, is_taken_back, is_there
from .told_plainly_words import (
    AGAIN_HARMLESS,
    BOUGHT_PARTS,
    DELIVERED,
    FOR_SALE,
    GIVEN_UP,
    MAY_SERVE,
    NO_MANDREL,
    OF_SEVERAL,
    ON_OUR_MACHINE,
    ONE_AGAIN,
    ORDERED,
    OWNED,
    PLURAL_TOOLS,
    QUOTED,
    SOMEBODY_ELSES,
    TAKEN_UP_AGAIN,
    THIS_ONE,
    WANTED_ALL_THE_SAME,
)
from .told_sent_out_words import NO_MANDREL_FOR_IT, SEEN_TO, SENT_OUT
from .told_unneeded_words import (
    BENT_EMPTY,
    DONE,
    IF_ALL_GOES_WELL,
    NEXT_TIME,
    NOT_NEEDED_HERE,
    NOT_TO_QUOTE,
    OF_SEVERAL_SIZES,
    ON_DRAWING,
    OTHER_THINGS,
    PRICED_NOW,
    STRAIGHT,
)
from .told_words import OF_SUBJECT
from .words_on_size import Said

PLAINLY_TOLD = "its words say that it is there, given up or somebody else's, and do not ask for it"

_NEED_NONE = (
    STRAIGHT, BENT_EMPTY, DONE, NOT_NEEDED_HERE, SENT_OUT, NO_MANDREL_FOR_IT, SEEN_TO
)  # fmt: skip
_MOST = 6
"""So many sizes are told apart; more are a list."""
_WHOLE = ("wall", "clr")


_ALSO_LATER = late_pattern(
    r"\b(?:later|then|afterwards|später|dann|danach|plus tard|ensuite|après|luego|después|più"
    r" avanti|poi|daarna"
    r"|dan) (?:also|auch|aussi|también|anche|ook)\b|\b(?:also|auch|aussi|también|anche|ook) "
    r"(?:later|später"
    r"|plus tard|más adelante|più avanti)\b|\b(?:may|might) also (?=need|want|look)"
)
"""'We will later also need one': that is later, too."""


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
    told = [
        _is_plainly_told(part, found) and _is_said_once(group, part)
        for group, part in zip(groups, found.sizes, strict=True)
    ]
    if not any(told) or all(told):
        return None
    rest = [(g, part) for g, part, gone in zip(groups, found.sizes, told, strict=True) if not gone]
    if any(_may_be_bent(group, part, rest) for group, part in _gone(groups, found.sizes, told)):
        return None
    for part, gone in zip(found.sizes, told, strict=True):
        part.told = gone
    if not any(_is_whole(g, part, found) and _is_asked(part, found) for g, part in rest):
        return None
    loose = found.loose
    if all(_is_past(part) for part in found.sizes if part.told):
        loose = [COUNTED_TOOLS.sub(" ", words) for words in loose]  # of the size as it is now
    if len(rest) == 1 and any(map(PLURAL_TOOLS.search, loose)):
        return None  # several mandrels, and one size is left
    left = [part for _, part in rest]
    if any(_may_want_all(words, left) for words in loose):
        return None
    if any(_wanted_all_the_same(COUNTED_FOR_IT.sub(" ", part.words), left) for part in left):
        return None
    return Apart(found.sizes, sure=len(rest) == 1)


def _gone(
    groups: Sequence[Group], sizes: Sequence[Said], told: Sequence[bool]
) -> list[tuple[Group, Said]]:
    return [(g, part) for g, part, gone in zip(groups, sizes, told, strict=True) if gone]


def _may_be_bent(group: Group, part: Said, rest: Sequence[tuple[Group, Said]]) -> bool:
    """'38 x 2. In the rack we have 38 x 3': that may be the tube that will be bent."""
    if "od" not in group.slots or not is_tube_there(part.words) or TOOL.search(part.words):
        return False
    value = group.slots["od"][0].number.value
    return any("od" in g.slots and g.slots["od"][0].number.value == value for g, _ in rest)


def _is_plainly_told(part: Said, found: Split) -> bool:
    """Whether its own words tell of it, and neither those nor what points to it ask for it."""
    part = _of_its_own(part, found)
    together = [o for o in found.sizes if (o.begin, o.end) == (part.begin, part.end)]
    shared = len(together) > 1
    own = [*([] if shared else [part.words]), *part.elsewhere]
    if any(_comes_later_if(words) or is_taken_back(words) for words in own):
        return True
    if any(map(NEXT_TIME.search, own)) and any(map(NOT_TO_QUOTE.search, [*own, *part.behind[:1]])):
        return True
    if asks_for(part):
        return False
    if came_along(part, found.sizes):
        return True
    if any(map(is_borrowed, own)):
        return True
    if is_new(part):
        return False
    on_all = [part.words] if shared and OF_SEVERAL_SIZES.search(part.words) else []
    at_once = [
        words for words in part.behind if POINTS.match(words) or NOT_NEEDED_HERE.match(words)
    ]
    if any(_needs_none(words) or is_let_be(words) for words in [*own, *on_all, *at_once]):
        return True
    pointing = [words for words in part.behind if REFERS.search(words)]
    if any(map(_gives_up, [*own, *pointing])) and not _comes_beside(part, found):
        return True
    following = " ".join(part.behind)
    said = _without_harmless(" . ".join([*own, following]))
    if WANTED_ALL_THE_SAME.search(said) or AGAIN.search(said):
        return False
    if any(FOR_SALE.search(words) and not NO_MANDREL.search(words) for words in own):
        return True  # "... interested?" goes with it
    serves = [words for words in part.elsewhere if MAY_SERVE.search(words)]
    if any("?" in words for words in own if words not in serves):
        return False
    asks = ASKS.search(following) is not None
    last = all(other.begin <= part.begin for other in found.sizes)
    others = [other.words for other in found.sizes if other.begin != part.begin]
    if is_there(own, part.behind, others, last=last):
        return True
    if any(SOMEBODY_ELSES.search(words) for words in own):
        return not ON_OUR_MACHINE.search(said) and (
            not asks or any(other.end <= part.begin for other in found.sizes)
        )
    if asks:  # "... is too long. Need a shorter one"
        return False
    if any(BOUGHT_PARTS.search(words) for words in own):
        return True
    if any(QUOTED.search(words) for words in own):
        return "?" not in following
    there = [words for words in own if any(p.search(words) for p in (DELIVERED, ORDERED, OWNED))]
    elsewhere = all(words in there or words in serves for words in part.elsewhere)
    return bool(there) and elsewhere and not any(map(NO_MANDREL.search, there))


def _needs_none(words: str) -> bool:
    """Whether it stays straight, is bent empty, is done, or is not needed here."""
    if OTHER_THINGS.search(ON_DRAWING.sub(" ", words)):
        return False
    found = (pattern.search(words) for pattern in _NEED_NONE)
    return any(match and not TAKEN_UP_AGAIN.search(words, match.end()) for match in found)


def _is_past(part: Said) -> bool:
    """Whether it was so before, or is made no more: then what is counted is for the other."""
    if WAS_BEFORE.search(part.words):
        return True
    return any(_gives_up(w) for w in [part.words, *(w for w in part.behind if REFERS.search(w))])


def _comes_later_if(words: str) -> bool:
    """'If that one works out I'll want one for ... after Christmas': no price of it is asked."""
    found = IF_ALL_GOES_WELL.search(words)
    return found is not None and not PRICED_NOW.search(_ALSO_LATER.sub(" ", words))


def _gives_up(words: str) -> bool:
    found = GIVEN_UP.search(words) or WAS_BEFORE.search(words)
    return found is not None and not TAKEN_UP_AGAIN.search(words, found.end())


def _comes_beside(part: Said, found: Split) -> bool:
    """'Until now we had 38 x 2, now also 42 x 2': it has not gone, and may need a mandrel, too."""
    texts = (*found.loose, *(words for o in found.sizes for words in (o.words, *o.behind)))
    return WAS_BEFORE.search(part.words) is not None and any(map(BESIDE.search, texts))


def _of_its_own(part: Said, found: Split) -> Said:
    """Without sentences that stand behind another size too, and without what turns to another."""
    behind = [
        words
        for words in part.behind
        if not any(words in o.behind and o.begin >= part.end for o in found.sizes)
    ]
    turn = THIS_ONE.search(part.words)
    words = part.words[: turn.start()] if turn is not None else part.words
    return replace(part, words=words, behind=behind)


def _is_said_once(group: Group, part: Said) -> bool:
    """Whether none of its figures is said again among other words, which may ask for it."""
    return all(
        part.begin <= figure.start < part.end
        for slot, figures in group.slots.items()
        if slot not in group.shared
        for figure in figures[1:]
    )


def _is_asked(part: Said, found: Split) -> bool:
    """Whether it is asked for: by its words, by being new, or by a request that names no size.

    'One mandrel please, and if that works we'll be back for the 5/8': the request names none.
    """
    if asks_for(part) or is_new(part):
        return True
    if is_told(part):
        return False
    if ASKS_FOR.search(part.words):
        return True
    if TOOL.search(part.words):
        return True
    before = filter(None, (IF_ALL_GOES_WELL.search(o.words) for o in found.sizes if o.told))
    loose = [*found.loose, *(later.string[: later.start()] for later in before)]
    return any(p.search(words) for words in loose for p in (ASKS, TOOL, QUANTITY))


def _is_whole(group: Group, part: Said, found: Split) -> bool:
    """Whether it has all its lengths, and not the tube of one that is told of."""
    slots = {*group.slots, *(("wall",) if {"od", "id"} <= {*group.slots} else ())}
    return (
        group.has_tube
        and all(slot in slots for slot in _WHOLE)
        and not {"od", "id"} & {*borrowed(group, part, found.sizes)}
    )


def _may_want_all(words: str, rest: Sequence[Said]) -> bool:
    """Whether a sentence on no size may ask for one that is told of, or for all."""
    if any(clause in words for part in rest for clause in part.elsewhere):
        return False  # "one each for the 4 and the 5"
    if any(words in part.behind and asks_for(part) for part in rest) and ONE_AGAIN.fullmatch(words):
        return False  # "just one again", right behind the size that is asked for
    if _gives_up(words) and not ASKS.search(words):
        return False  # "the old one won't be replaced"
    if not ASKS.search(words) and not TOOL.search(words):
        words = TUBES_COUNTED.sub(" ", words)
    said = OF_SEVERAL.sub(" ", words) if len(rest) > 1 else words
    other = _without_harmless(said)
    again = AGAIN.search(other) or BY_PLACE.search(other)
    return again is not None or _wanted_all_the_same(said, rest)


def _wanted_all_the_same(words: str, rest: Sequence[Said]) -> bool:
    """Whether words that are not on it may ask for a size that is told of; those for several may
    mean the sizes that are left."""
    said = OF_SEVERAL.sub(" ", words) if len(rest) > 1 else words
    said = SIZES.sub(lambda m: " " if COUNTED[m["number"]] == len(rest) else m[0], said)
    return WANTED_ALL_THE_SAME.search(_without_harmless(said)) is not None


def _without_harmless(words: str) -> str:
    for harmless in (OF_SUBJECT, COUNTED_OTHERWISE, AGAIN_HARMLESS, ELSEWHERE):
        words = harmless.sub(" ", words)
    return words
