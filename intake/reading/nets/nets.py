"""Nets below the reading: signs that a size was misread, whatever misled it. Each raises a doubt.

How a message can be misread has no end. What a misread looks like afterwards has: a figure with
its name beside it is in no size, a list holds two kinds of length, somebody says 'that was wrong'
and nothing was put right. Nothing here reads anything anew; the reply asks.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal

from ...late_pattern import late_pattern
from ..picking.line_status import statuses_unclear
from ..sizes.groups import Group, Slot, own_figures, slot_of
from ..text.figures import LISTED, Figure, Layout
from ..text.roles import LENGTH_ROLES, Role
from ..wanted.asked_words import SAME_TOOL
from ..wanted.told import opens_line, words_around
from .denied import denied
from .meant import doubt_meant
from .near import nearly_one
from .one_of_them import not_that, of_which
from .one_of_two import one_of_two
from .own_beside import doubt_taken_over
from .picked_out import picked_out
from .picks import picks_unheard
from .preferred import preferred
from .putting_right import PUTTING_RIGHT
from .there import doubt_there
from .unexplained import doubt_tubes_elsewhere
from .words import (
    ASKED_BEFORE,
    OTHER_THINGS,
    PERHAPS,
)

UNREAD = "a figure with its name beside it was not understood"
TWO_KINDS = "one list holds what was read as a radius and as an OD"
TWO_DIAMETERS = "so tight a bend is rare, and no word says that it is one: are there two ODs?"
OF_MANDREL = "it may be the diameter of a mandrel, or a bore"
OF_BEFORE = "it seems to be of an earlier time"
OFFERED = "the message is not sure of it"
WEAKLY_TOLD = "no word says that this is a further size"
_LABEL = 8
"""Words of a label that begins a line, its mark included."""
TUBE_OF_ANOTHER = "its tube is told on another line of the list"

_TIGHTEST = Decimal("1.3")
_UNNAMED = frozenset({"place", "chain"})
_MARK = late_pattern(r"\s*(?:[-*•–]|\(?[\da-z]{1,2}[.)])\s")
_OFFERED_FAR, _HALF = 40, Decimal("0.55")
"""Characters between a figure and one offered instead, which is at least that share of it."""
_BESIDE = 4
"""So many sizes to either side are compared: it keeps a long list linear."""
_LEAST_BORE = Decimal("0.8")
"""The bore of most tubes that are bent is at least that share of the OD."""


def cast_nets(layout: Layout, groups: list[Group]) -> None:
    """Note on each group what looks like a misread; see the module."""
    _doubt_offered(layout, groups)
    doubt_there(layout, groups)
    doubt_tubes_elsewhere(layout, groups)
    doubt_taken_over(layout, groups)
    doubt_meant(layout, groups)
    for net in _NETS:
        for group, why in net(layout, groups):
            if not group.doubtful:
                group.doubtful = why
                group.notes += [(slot, why) for slot in group.slots]


def _doubt_offered(layout: Layout, groups: Sequence[Group]) -> None:
    """'38 mm (maybe 40)', 'R 100 (could also be 105)': the figure before it is in doubt, too."""
    holders: dict[int, list[tuple[Group, Slot]]] = {}
    for group in groups:
        for slot, figures in group.slots.items():
            for held in figures:
                holders.setdefault(held.index, []).append((group, slot))
    for figure in layout.figures[1:]:
        if figure.role is not None or figure.index in holders or figure.negated:
            continue
        before = layout.figures[figure.index - 1]
        if before.sentence != figure.sentence:
            continue
        between = layout.words(before.end, figure.start)
        if len(between) > _OFFERED_FAR or not PERHAPS.search(between) or figure.unit == "D":
            continue
        a, b = before.number.value, figure.number.value
        units = {before.unit, figure.unit} - {None}
        if a and b != a and len(units) < 2 and _HALF < b / a < 1 / _HALF:
            for group, slot in holders.get(before.index, ()):
                group.notes.append((slot, OFFERED))


def _two_kinds(layout: Layout, groups: Sequence[Group]) -> Iterator[tuple[Group, str]]:
    """'2-1/2, 3-3/4 and 5 CLR': an OD that hangs on a radius by an 'and' is likelier a radius."""
    for figure in layout.figures:
        before = layout.before(figure)
        if before is None or figure.link not in LISTED or figure.how not in _UNNAMED:
            continue
        if slot_of(before) != "clr" or slot_of(figure) != "od" or figure.row is not None:
            continue
        after = layout.after(figure)
        apart = after is not None and after.link not in LISTED
        if after is not None and (
            slot_of(after) == "wall" or (apart and slot_of(after) == "clr") or after.link == "times"
        ):
            continue  # "1 in on 3 CLR, and 7/8 in on 2.5 CLR": a tube of its own
        for group in groups:
            if any(figure in figures or before in figures for figures in group.slots.values()):
                yield group, TWO_KINDS


def _two_diameters(_: Layout, groups: Sequence[Group]) -> Iterator[tuple[Group, str]]:
    """'1.75, 1.875, both on 2.625 CLR': what no word calls a radius, hardly larger than the OD, is
    likelier another OD."""
    for group in groups:
        od, radius = group.slots.get("od"), group.slots.get("clr")
        if not od or not radius or radius[0].how not in _UNNAMED or od[0].unit != radius[0].unit:
            continue
        if radius[0].role != "times_d" and radius[0].number.value < od[0].number.value * _TIGHTEST:
            yield group, TWO_DIAMETERS


def _asked_before(layout: Layout, groups: Sequence[Group]) -> Iterator[tuple[Group, str]]:
    """'... we previously asked for 51 x 2': a size of another time, beside the one of now."""
    if len(groups) < 2:
        return
    told = [group for group in groups if _is_of_before(layout, group)]
    if len(told) < len(groups):
        yield from ((group, OF_BEFORE) for group in told)


def _is_of_before(layout: Layout, group: Group) -> bool:
    own = own_figures(group)
    if not own or own[0].row is not None:
        return False
    first = own[0]
    far = layout.figures[first.index - 1].end if first.index else 0
    begin = max(far, layout.sentence_start(first.sentence), first.start - _OFFERED_FAR)
    return ASKED_BEFORE.search(layout.words(begin, first.start)) is not None


def _tube_of_another(layout: Layout, groups: Sequence[Group]) -> Iterator[tuple[Group, str]]:
    """'- the frame ..., 9 inch CLR / - the scroll 3/4 x .065, 2-1/4 CLR': the first has taken the
    tube of an item behind its own."""
    for group in groups:
        if group.row is not None or "clr" not in group.slots or "od" not in group.slots:
            continue
        od, radius = group.slots["od"][0], group.slots["clr"][0]
        if radius.role == "times_d" or not radius.item < od.item or not radius.line < od.line:
            continue
        same = SAME_TOOL["clr"].search(words_around(layout, [od])[0])  # "same radius as the 42.4"
        labels = len(groups) == 1 and all(_is_labelled(layout, f) for f in (od, radius))
        if is_item(layout, od) and is_item(layout, radius) and not (same or labels):
            yield group, TUBE_OF_ANOTHER


def _is_labelled(layout: Layout, figure: Figure) -> bool:
    """'- Rayon : 114': its line has no item's name, but begins with what the figure is."""
    begin = layout.text.rfind("\n", 0, figure.start) + 1
    on_line = [
        token
        for token in layout.tokens[max(0, figure.token - _LABEL) : figure.token + 1]
        if token.start >= begin and (token.cues or token.kind == "word")
    ]
    return bool(on_line) and bool(on_line[0].cues)


def is_item(layout: Layout, figure: Figure) -> bool:
    """Whether the line of a figure bears the mark of a list's item."""
    begin = layout.text.rfind("\n", 0, figure.start) + 1
    return _MARK.match(layout.text, begin) is not None


def _weakly_told(layout: Layout, groups: Sequence[Group]) -> Iterator[tuple[Group, str]]:
    """A further size whose OD no word names, without a wall of its own beside one that has it."""
    for number, group in enumerate(groups):
        own = own_figures(group)
        od = group.slots["od"][0] if "od" in group.slots else None
        if not number or od is None or od not in own or od.how != "place" or od.row is not None:
            continue
        if od.link in LISTED or any(slot_of(f) == "wall" for f in own):
            continue
        if any(f.line == od.line and f.index < od.index for f in group.slots.get("wall", ())):
            continue  # "Wall 2 mm: 42.4 (R100), 48.3 (R120)"
        on_it = any(slot_of(f) == "clr" and f.line == od.line for f in own)
        named = any(slot_of(f) == "clr" and f.how not in _UNNAMED for f in own)
        named = named or (on_it and _is_on_its_line(groups[number - 1]))  # "1-1/2 on the 5 die"
        if opens_line(layout, od) and (named or is_item(layout, od)):
            continue  # a line of a list: '2" on a 4" CLR'
        if any("wall" in other.slots and "wall" not in other.shared for other in groups[:number]):
            yield group, WEAKLY_TOLD


def _is_on_its_line(group: Group) -> bool:
    """Whether OD and radius of a size stand on one line: its neighbour's line may be alike."""
    od, radius = group.slots.get("od"), group.slots.get("clr")
    if not od or not radius or "clr" in group.shared:
        return False
    return od[0].line == radius[0].line


def _no_wall(_: Layout, groups: Sequence[Group]) -> Iterator[tuple[Group, str]]:
    """'33.7 x 2 ... bis 52 mm': a second wall that is no wall of that tube makes no second size."""
    for number, group in enumerate(groups):
        od, wall = group.slots.get("od"), group.slots.get("wall")
        if not number or not od or not wall or wall[0].is_gauge or wall[0].role != "wall":
            continue
        other = groups[number - 1].slots
        same = other.get("od") == od and other.get("wall") != wall
        thick = wall[0].number.value * 2 >= od[0].number.value
        if same and thick and od[0].unit in (wall[0].unit, None):
            yield group, WEAKLY_TOLD


def _bore_of_another(_: Layout, groups: Sequence[Group]) -> Iterator[tuple[Group, str]]:
    """'2.25 OD 16 ga ... the one I have is 2.085 diameter': nearly the bore of another tube and
    without a wall is likelier a mandrel's diameter than a tube's."""
    for number, group in enumerate(groups):
        od = group.slots.get("od")
        if not od or "od" in group.shared or od[0].row is not None or _owns(group, "wall"):
            continue
        for other in groups[max(0, number - _BESIDE) : number + _BESIDE + 1]:
            tube, wall = other.slots.get("od"), other.slots.get("wall")
            if other is group or not tube or not wall or tube[0] is od[0]:
                continue
            if tube[0].unit not in (od[0].unit, None) and od[0].unit is not None:
                continue
            whole, part = tube[0].number.value, od[0].number.value
            if whole * _LEAST_BORE < part < whole and not _owns(group, "clr"):
                yield group, OF_MANDREL


def _owns(group: Group, slot: Slot) -> bool:
    return slot in group.slots and slot not in group.shared


def _unread(layout: Layout, groups: Sequence[Group]) -> Iterator[tuple[Group, str]]:
    """'2-3/8 OD x .154 wall' that is in no size at all, though two figures say what they are."""
    held = {f.index for group in groups for figures in group.slots.values() for f in figures}
    lost: dict[int, set[Role]] = {}
    for figure in layout.figures:
        if figure.index in held or figure.negated or figure.context_only or figure.put_off:
            continue
        if figure.role is None or figure.role == "noise":
            lost.setdefault(figure.sentence, set()).update(_named(layout, figure))
    for sentence, roles in lost.items():
        if len(roles) > 1 and not layout.says(sentence, OTHER_THINGS):
            for group in groups:
                yield group, UNREAD
            return


def _named(layout: Layout, figure: Figure) -> set[Role]:
    """What the word right behind a figure calls it; nothing where there is no such word."""
    following = layout.tokens_after(figure, 1)
    cues = following[0].cues if following else ()
    return {cue.role for cue in cues if cue.role in LENGTH_ROLES and cue.side != "before"}


_NETS = (
    one_of_two,
    _two_kinds,
    _two_diameters,
    *PUTTING_RIGHT,
    _asked_before,
    _tube_of_another,
    _weakly_told,
    _no_wall,
    not_that,
    of_which,
    _bore_of_another,
    _unread,
    picks_unheard,
    statuses_unclear,
    nearly_one,
    denied,
    preferred,
    picked_out,
)
