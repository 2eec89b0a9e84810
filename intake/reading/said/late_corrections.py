"""A correction that comes when another size was named since.

'2 x .120 on a 5 inch die ... sliders out of 1-3/4 ... his die is 5-1/2, not 5': what is put right
is the size that has the value said to be wrong, and not the last one named.
"""

from __future__ import annotations

from collections.abc import Container, Sequence
from decimal import Decimal

from ..sizes.groups import Group, Slot
from ..text.figures import Figure, Layout


def put_right_by(
    layout: Layout, done: Sequence[Group], last: Sequence[Group], slot: Slot, figure: Figure
) -> list[Group]:
    """The sizes before the ``last`` ones whose value a figure puts right: right beside it a value
    is denied that they have, and the last ones have not."""
    if not done or any(
        group.anchor is not None and group.anchor.sentence == figure.sentence for group in last
    ):
        return []  # "we have a 50 x 3, not on R 80 but on R 100"
    near = layout.figures[max(0, figure.index - 1) : figure.index + 2]
    wrong = {
        other.number.value
        for other in near
        if other.negated and not other.owned and other.sentence == figure.sentence
    }
    if any(_has(group, slot, wrong) for group in last):
        return []
    return [group for group in done if _has(group, slot, wrong)]


def _has(group: Group, slot: Slot, values: Container[Decimal]) -> bool:
    return slot in group.slots and group.slots[slot][0].number.value in values
