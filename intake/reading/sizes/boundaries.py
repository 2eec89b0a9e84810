"""Where in the text one size ends and the next begins, told by the figures that follow.

Each test is given the figure that is being taken and the next few, that one first.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

from ..naming.likeness import restates
from ..text.figures import Figure
from .groups import Group, Slot, slot_of

AHEAD = 8
"""The figure itself, and those looked ahead for the tube that it belongs to."""
_IN_TURN = 12
"""Figures looked ahead at where radii open one tube after the other."""
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
