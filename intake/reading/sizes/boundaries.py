"""Where in the text one size ends and the next begins, told by the figures that follow.

Each test is given the figure that is being taken and the next few, that one first.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from decimal import Decimal

from ..naming.likeness import restates
from ..naming.wall_ahead import is_right_behind
from ..text.figures import Figure, Layout
from ..text.patterns import whole_words
from .groups import Group, Slot, slot_of

AHEAD = 8
"""The figure itself, and those looked ahead for the tube that it belongs to."""
_IN_TURN = 12
"""Figures looked ahead at where radii open one tube after the other."""
_SAME = whole_words(
    "same | gleich\\w* | dasselbe | selbe | même | mism[oa] | stess[oa] | zelfde | hetzelfde"
)
_ANOTHER = whole_words(
    "another | second | also | too | plus | and the same | auch | noch ein\\w* | zweite\\w*",
    "aussi | un autre | deuxième | también | otro | segundo | anche | un altro | secondo | ook",
    "nog een | tweede",
)
_LEAST_BORE = Decimal("0.6")
"""A bore that is less of an OD is that of another tube."""
_BORE_TOLERANCE = Decimal("0.02")
_NEXT_TUBE = 24
"""Characters between a radius and the tube it opens: 'R 90, tube 40 x 3'."""


def begins_item(group: Group, slot: Slot | None, ahead: Sequence[Figure]) -> bool:
    """'1) 2.5 CLR, 1.625 x .134 / 2) 3 CLR, 1.75 x .049': a line with a tube of its own that opens
    with what the tube before, ``group``, has already."""
    figure = ahead[0]
    if slot == "od" or slot not in group.slots or not group.has_tube:
        return False
    last = max(figures[-1].clause for figures in group.slots.values())
    if figure.row is not None or figure.clause == last or figure.corrects:
        return False
    return any(slot_of(f) == "od" and f.clause == figure.clause for f in ahead[:-1])


def opens_next(ahead: Sequence[Figure], *, first: bool = False) -> bool:
    """'25 x 1.5, R 50 and R 90, tube 40 x 3': a second radius right before a tube that has no
    other is that tube's.

    Where radii come ``first``, one behind that tube may open the next in its turn.
    """
    figure, following = ahead[0], ahead[1:]
    if not following or slot_of(following[0]) != "od":
        return False
    if following[0].start - figure.end > _NEXT_TUBE:
        return False
    for at, after in enumerate(following[1:], 1):
        if first and slot_of(after) == "clr":
            return opens_next(following[at : at + _IN_TURN], first=True)
        if slot_of(after) in ("od", "clr"):
            return slot_of(after) == "od"
    return True


def wall_opens_next(layout: Layout, ahead: Sequence[Figure]) -> bool:
    """'5/8 in 20 gauge and 10 gauge 1-7/8 in': a second wall right before an OD without another."""
    if [slot_of(figure) for figure in ahead[:2]] != ["wall", "od"]:
        return False
    own = len(ahead) > 2 and slot_of(ahead[2]) == "wall" and ahead[2].link != "restate"
    if own and not (len(ahead) > 3 and is_right_behind(layout, ahead[2], ahead[3])):
        return False
    return is_right_behind(layout, ahead[0], ahead[1])


def asks_another(layout: Layout, wall: Figure, held: Sequence[Figure]) -> bool:
    """'4 in x 10 ga. Need a second one, same tube but 109 wall': no other form of the first."""
    if any(other.sentence == wall.sentence for other in held):
        return False
    return layout.says(wall.sentence, _SAME) and layout.says(wall.sentence, _ANOTHER)


def has_wall_behind(layout: Layout, ahead: Sequence[Figure]) -> bool:
    """'4 in x .109', '1.75 .065 wall': an OD that a wall of its own follows."""
    if [slot_of(figure) for figure in ahead[:2]] != ["od", "wall"]:
        return False
    return ahead[1].link == "times" or not layout.text[ahead[0].end : ahead[1].start].strip()


def starts_tube(open_groups: Sequence[Group], slot: Slot, ahead: Sequence[Figure]) -> bool:
    """An OD that brings its own wall along, though the tube before has one of the same OD."""
    if slot != "od" or any("wall" not in group.slots for group in open_groups):
        return False
    figure = ahead[0]
    if _is_row_of_own(open_groups[-1].slots["od"][-1], ahead):
        return True
    after = ahead[1] if len(ahead) > 1 else None
    if after is None or after.link != "times" or slot_of(after) != "wall":
        return False
    if figure.link == "restate" or figure.corrects:
        return False
    return not any(restates(group.slots["wall"][0], after) for group in open_groups)


def is_other_bore(group: Group, slot: Slot, ahead: Sequence[Figure]) -> bool:
    """'.805 ID with .035 wall', and then '2 in x .095': a tube told by its bore and wall takes no
    OD that has a wall of its own, nor does a tube with a wall take another's bore."""
    figure = ahead[0]
    following = _slots(ahead[1:3], lambda after: after.sentence == figure.sentence)
    other: Slot = "id" if slot == "od" else "od"
    if slot not in ("od", "id") or other not in group.slots or "wall" not in group.slots:
        return False
    held, wall = group.slots[other][0], group.slots["wall"][0]
    if figure.row is not None or figure.corrects or figure.link == "restate":
        return False
    if "wall" not in following and (slot == "id" or held.sentence == figure.sentence):
        return False
    od, bore = (figure, held) if slot == "od" else (held, figure)
    if wall.is_gauge or wall.unit == "sch" or wall.number.value >= od.number.value:
        return bore.number.value < od.number.value * _LEAST_BORE
    room = od.number.value - 2 * wall.number.value - bore.number.value
    return abs(room) > od.number.value * _BORE_TOLERANCE


def _is_row_of_own(held: Figure, ahead: Sequence[Figure]) -> bool:
    """'a) 57 x 2.6, R 142 / b) 57 x 2.6, R 257': the same OD opens another item of a list, or
    another line that says all of a size again in the same way."""
    figure = ahead[0]
    if figure.item != held.item:
        return bool(_slots(ahead[1:], lambda after: after.item == figure.item))
    if figure.line == held.line or (figure.unit or held.unit) != (held.unit or figure.unit):
        return False
    after = _slots(ahead[1:], lambda after: after.line == figure.line)
    return figure.number.value == held.number.value and {"wall", "clr"} <= after


def _slots(following: Sequence[Figure], goes_with: Callable[[Figure], bool]) -> set[Slot]:
    """Walls and radii among the figures that go with the one before them."""
    slots = (slot_of(after) for after in following if goes_with(after))
    return {slot for slot in slots if slot in ("wall", "clr")}
