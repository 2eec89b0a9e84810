"""A net for two sizes that are hardly two: '51 x 1.5, but it measures 50.8'."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal
from itertools import pairwise

from ..sizes.groups import Group, Slot
from ..text.figures import LISTED, Figure, Layout

NEARLY_ONE = "two ODs so near each other: is one the other, rounded or measured?"
_NEAR = Decimal("1.02")
_INCH = Decimal("25.4")
_REST: tuple[Slot, ...] = ("wall", "clr")


def nearly_one(_: Layout, groups: Sequence[Group]) -> Iterator[tuple[Group, str]]:
    """Neighbours outside tables that differ in their OD alone, and in that by 2 % at most."""
    for one, other in pairwise(groups):
        if _are_near(one, other) and all(_agree(one, other, slot) for slot in _REST):
            yield one, NEARLY_ONE
            yield other, NEARLY_ONE


def _are_near(one: Group, other: Group) -> bool:
    a, b = one.slots.get("od"), other.slots.get("od")
    if not a or not b or a[0].row is not None or b[0].row is not None:
        return False
    if b[0].link in LISTED:
        return False  # "1.500 and 1.505 OD (chromed)": both are named in one breath
    small, large = sorted((_length(a[0], b[0]), _length(b[0], a[0])))
    return 0 < small < large <= small * _NEAR


def _length(figure: Figure, beside: Figure) -> Decimal:
    """In mm where its unit is an inch; a figure without a unit has that of the one beside it."""
    inches = (figure.unit or beside.unit) == "in"
    return figure.number.value * (_INCH if inches else 1)


def _agree(one: Group, other: Group, slot: Slot) -> bool:
    a, b = one.slots.get(slot), other.slots.get(slot)
    return not a or not b or a[0].number.value == b[0].number.value
