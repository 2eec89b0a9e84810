"""Whether a size that stands in the text is one that is asked for: where in doubt, it is doubted.

Words that rule a size out are endless, and a doubt is cheap. So a further size is trusted only
where it is tied to the one before, or where its own words ask for it; and where words take some
size back that was not found, every size is to be confirmed.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from ..picking.by_name import OTHER_PICKED, picked_by_name
from ..sizes.groups import Group, Slot, own_figures, slot_of
from ..sizes.sharing import BOTH
from ..text.figures import LISTED, Figure, Layout
from ..text.patterns import whole_words
from .asked_words import SAME_TOOL
from .each_words import EACH_WALL
from .of_no_size import without_others
from .one_and_one import is_one_and_other
from .one_asked import ONE_OF_THESE, of_one
from .plainly_asked import (
    borrowed,
    strongly_told,
    sure_but_told,
    told_apart,
    words_of_others,
)
from .taken_back import TAKEN_BACK, taken_back
from .told import ONLY_TOLD, only_told, opens_line, words_around
from .told_by_clause import told_by_clause
from .told_plainly import PLAINLY_TOLD, plainly_told
from .told_words import PERSON
from .words_on_size import Said

BESIDE = "it may only be mentioned beside the size that is asked for"
_EITHER = "one of two sizes is meant: which?"
_UNNAMED = frozenset({"place", "chain"})
_ASKS = whole_words(
    rf"need\w* | want\w* | quot\w+ | pric\w+ | also | another(?! {PERSON}) | second | third",
    "plus | each | both",
    "two | mandrels? | every | all | dorne? | auch | noch | zweite[rnms]? | jeweils | mandrins?",
    r"aussi | deux | mandril(?:es)? | también | ambos | mandrin[oi] | anche | anime | entrambi",
    "ook | doorn(?:en|s)? | beide | allebei | number | item | pos | chacun | cada | ognuno",
    r"options? | variant\w* | alternative\w* | opci\w+ | opzion\w+ | optie\w*",
    "same (?:wall|radius|tube|od|die|clr|size|material|thing|but) | and one for | one more",
    r"(?:the )?same(?: again)? (?:in|with|at)(?= \W?[\d.]) | (?:everything|all) else the same",
    r"(?:das|den) gleichen? (?:in|mit) | le même en | l[ao] mismo en | l[ao] stesso in",
    "hetzelfde in",
)
_RADII = whole_words(
    r"(?:each|every|per|either) radius | (?:both|two|three|all) radii | (?:je|pro|jeden) radius",
    r"(?:zwei|drei|beide) radien | chaque rayon | (?:deux|trois|les) rayons | cada radio",
    r"(?:dos|tres) radios | ogni raggio | (?:due|tre) raggi | elke (?:radius|straal)",
    r"(?:twee|drie) (?:radii|stralen)",
)
"""Where several radii are spoken of, a further one needs no other word."""
_LENT: tuple[Slot, ...] = ("wall", "clr")
_SAME_AS = whole_words(
    "same | identical | ditto | (?:die|das|dem|den)?selbe\\w* | gleiche\\w* | même | pareil",
    "mism[oa]s? | igual | stess[oaie] | uguale | zelfde | dezelfde | hetzelfde",
)
"""'The same in .065 wall', 'same radius'."""


def doubt_unasked(layout: Layout, groups: list[Group]) -> None:
    """Note on each group what speaks against its being asked for; see the module."""
    layout = without_others(layout, groups)
    if len(groups) < 2 or is_one_and_other(layout, groups):
        return
    _doubt_each(layout, groups)
    for before, group in pairwise(groups):
        od, earlier = group.slots.get("od"), before.slots.get("od")
        if not (before.doubtful and od and earlier and _own(group, before) == od[:1]):
            continue
        if od[0].link in LISTED and od[0].sentence == earlier[0].sentence:
            _doubt(group, before.doubtful)  # "die Dorne für 22er und 18er sind noch gut"


def _doubt_each(layout: Layout, groups: list[Group]) -> None:
    apart = plainly_told(layout, groups)
    if apart is not None:
        _doubt_those(groups, [part.told for part in apart.said], PLAINLY_TOLD)
        if apart.sure:
            _note_of_others(groups, apart.said)
            return
    listed = _is_list(layout, [g for g in groups if g.has_tube or g.shape] or groups)
    said = None if listed else told_apart(layout, groups)
    if said is not None:
        _doubt_those(groups, [part.told for part in said], ONLY_TOLD)
        _note_of_others(groups, said)
        _doubt_further(layout, [g for g, part in zip(groups, said, strict=True) if not part.told])
        return
    left = [group for group in groups if group.doubtful != PLAINLY_TOLD]
    _doubt_further(layout, left)
    named = picked_by_name(layout, groups)
    unpicked = named if named.count(False) == 1 else [True] * len(groups)
    _doubt_those(groups, _both(only_told(layout, groups), unpicked), ONLY_TOLD)
    by_clause = [False] * len(groups) if listed else told_by_clause(layout, groups)
    _doubt_those(groups, _both(by_clause, unpicked), ONLY_TOLD)
    if not listed:
        _doubt_those(groups, _both(strongly_told(layout, groups), unpicked), ONLY_TOLD)
    _doubt_those(groups, named, OTHER_PICKED)
    if named.count(False) != 1:  # 'the other one later' is said of those that are not picked
        heard = bool(layout.left_out) or len(left) < len(groups)
        _doubt_those(left, taken_back(layout, left, picked=heard), TAKEN_BACK)
    if not listed and named.count(False) != 1 and len(left) > 1:
        there = [part for part in apart.said if part.told] if apart is not None else []
        words = [said for part in there for said in (part.words, *part.elsewhere)]
        if by_clause.count(False) != 1:  # else the one mandrel is for the size that is left
            _doubt_those(left, of_one(layout, left, words), ONE_OF_THESE)
    if not listed:
        _doubt_those(groups, sure_but_told(layout, groups), ONLY_TOLD)
    _doubt_lent(layout, groups)


def _note_of_others(groups: Sequence[Group], said: Sequence[Said]) -> None:
    """Note on each size asked for what it may have of one that is only told of."""
    for group, part in zip(groups, said, strict=True):
        if not part.told:
            group.notes += [(slot, BESIDE) for slot in borrowed(group, part, said)]
            group.others_words = words_of_others(part, said)


def _doubt_lent(layout: Layout, groups: Sequence[Group]) -> None:
    """Note a wall or radius that a size asked for has from another sentence, on one only told of:
    'we tried 1.75 x .083 on a 7 CLR and it kinked. Price on 1.375 x .095?'"""
    told = [group for group in groups if group.doubtful in (ONLY_TOLD, PLAINLY_TOLD)]
    if layout.says_anywhere(_SAME_AS):
        return
    for group in groups:
        own = own_figures(group)
        if group.doubtful or not own or not told:
            continue
        for slot in _LENT:
            figure = next(iter(group.slots.get(slot, ())), None)
            lends = any(figure in other.slots.get(slot, ()) for other in told)
            apart = figure is not None and all(f.sentence != figure.sentence for f in own)
            if lends and apart:
                group.notes.append((slot, BESIDE))


def _doubt_further(layout: Layout, groups: list[Group]) -> None:
    """Doubt further sizes that nothing ties to the one before."""
    for number, group in enumerate(groups):
        before = groups[number - 1] if number else None
        tied = before is None or _is_tied(layout, before, group)
        beside = (before, group) if before is not None else (group, *groups[1:2])
        listed = len(beside) > 1 and _is_next_line(layout, *beside[:2])
        if not tied or (not listed and _is_straggler(layout, groups, group)):
            _doubt(group, BESIDE)
        if before is not None:
            _doubt_choice(layout, before, group)


def _both(some: Sequence[bool], others: Sequence[bool]) -> list[bool]:
    return [one and other for one, other in zip(some, others, strict=True)]


def _doubt_those(groups: Sequence[Group], which: Sequence[bool], why: str) -> None:
    for group, meant in zip(groups, which, strict=True):
        if meant:
            _doubt(group, why)


def _is_list(layout: Layout, groups: Sequence[Group]) -> bool:
    """Whether all sizes are rows of a table, or lines of one list."""
    return all(
        group.row is not None or _is_next_line(layout, before, group)
        for before, group in pairwise(groups)
    )


def _doubt(group: Group, why: str) -> None:
    if not group.doubtful:  # one reason is enough
        group.doubtful = why
        group.notes += [(slot, why) for slot in group.slots]


def _doubt_choice(layout: Layout, before: Group, group: Group) -> None:
    """'We don't know yet whether 30 x 3 or 30 x 4': one of two, unless both are asked for."""
    own = _own(group, before)
    if not own or own[0].link != "or" or slot_of(own[0]) != "od":
        return
    if layout.says(own[0].sentence, BOTH):
        return
    before.notes += [(slot, _EITHER) for slot in ("od", "wall") if slot in before.slots]
    _doubt(group, _EITHER)


def _is_straggler(layout: Layout, groups: Sequence[Group], group: Group) -> bool:
    """A further OD that no word names, with no radius of its own beside sizes that have theirs,
    may be a box, a machine or a length."""
    figure = group.slots["od"][0] if "od" in group.slots else None
    if figure is None or figure.how not in _UNNAMED or figure.row is not None:
        return False
    others = [other for other in groups if other is not group]
    poor = "clr" not in group.slots or "clr" in group.shared
    richer = any("clr" in other.slots and "clr" not in other.shared for other in others)
    beside = any(
        other.slots["od"][0].sentence == figure.sentence for other in others if "od" in other.slots
    )
    return poor and richer and not beside and not _points_to_radius(layout, figure)


def _points_to_radius(layout: Layout, figure: Figure) -> bool:
    """'48.3, same radius as the 42.4': no radius of its own, and yet one."""
    return SAME_TOOL["clr"].search(words_around(layout, [figure])[0]) is not None


def _is_tied(layout: Layout, before: Group, group: Group) -> bool:
    """Whether a further size goes on from the one before it, or asks for itself."""
    if group.row is not None or any(f.row is not None for f in _own(group, None)):
        return True
    own, others = _own(group, before), _own(before, None)
    if not own and others and group.side is not None:
        own = [group.side]  # "the stays in 30 x 16 oval, those I buy"
    if not own or not others:
        return True
    if len(own) == _WHOLE:
        return True
    figure = own[0]
    beside = any(o.sentence == figure.sentence and o.line == figure.line for o in others)
    if figure.link in LISTED or (beside and (len(own) > 1 or group.shape)):
        return not before.doubtful
    if _is_next_line(layout, before, group) or _is_next_radius(own, before):
        return True
    if slot_of(figure) == "clr" and _RADII.search(layout.text.casefold()):
        return True
    if slot_of(figure) == "wall" and EACH_WALL.search(layout.text.casefold()):
        return not before.doubtful
    return _ASKS.search(words_around(layout, [figure])[0]) is not None


def _is_next_line(layout: Layout, before: Group, group: Group) -> bool:
    """Whether two sizes stand on lines of one list."""
    own, others = _own(group, before), _own(before, None)
    if not others or (len(own) < _PAIR and not (own and _points_to_radius(layout, own[0]))):
        return False
    if group.shape and own[0].line != others[-1].line:
        return _opens_as_box(layout, own[0]) and own[0].line - others[-1].line <= _LINES
    slot = slot_of(own[0])
    last = before.slots[slot][0] if slot is not None and slot in before.slots else others[0]
    opens = all(opens_line(layout, first) for first in (own[0], last))
    return opens and own[0].line - last.line <= _LINES


def _opens_as_box(layout: Layout, wall: Figure) -> bool:
    """'2. rectangular, 40 x 20 x 1.5': a line that begins with the sides of a box."""
    line = [
        f for f in layout.near_in_sentence(wall) if f.line == wall.line and f.index <= wall.index
    ]
    sides = [figure for figure in line if figure is not wall]
    return bool(sides) and all(side.shape for side in sides) and opens_line(layout, sides[0])


def _is_next_radius(own: Sequence[Figure], before: Group) -> bool:
    """'radius A: 70 mm / radius B: 105 mm': a further radius, named as one, right after another."""
    radius = before.slots["clr"][-1] if "clr" in before.slots else None
    if radius is None or len(own) != 1 or own[0].how not in ("cue", "sign"):
        return False
    beside = own[0].line - radius.line <= 1 and own[0].index - radius.index == 1
    return slot_of(own[0]) == "clr" and beside


_PAIR = 2
_WHOLE = 3
"""OD, wall and radius of its own: whoever writes all three asks for it."""
_LINES = 2
"""So far apart stand the lines of one list."""


def _own(group: Group, before: Group | None) -> list[Figure]:
    """The figures that a group doesn't share, without those of ``before``."""
    own = own_figures(group)
    if before is None:
        return own
    taken = {f.index for figures in before.slots.values() for f in figures}
    return [f for f in own if f.index not in taken]
