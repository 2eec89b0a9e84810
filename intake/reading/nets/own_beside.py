"""A net for what a size took over from another, while a figure of its own stands unread beside it.

'... R 60, and one for 30 mm, same wall, à 75 mm' where the 75 was not heard has the 60 of the size
before; '22 x 0,8 ..., quelli alti, 16 x 0,8' where the 16 was taken for a height has its 22.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from decimal import Decimal

from ..naming.place_tests import is_diameter, is_thin
from ..naming.wall_ahead import is_right_behind
from ..sizes.groups import Group
from ..text.figures import Figure, Layout

RADIUS_BESIDE = "its radius is told of another size, and a figure beside it is not understood"
OD_BESIDE = "its OD is told of another size, and a figure beside it is not understood"

_LEAST, _MOST = Decimal("1.2"), Decimal(12)
"""A radius lies between these times the OD."""
_LEAST_BARE = 20
"""A smaller whole number without a unit may count, or name a line."""
_INCH = Decimal("25.4")
_LINES = 2
"""A line that wraps goes on in the next."""


def doubt_taken_over(layout: Layout, groups: Sequence[Group]) -> None:
    """Note the doubts on the groups; see the module."""
    holders = Counter(held[0].index for group in groups for held in group.slots.values())
    held = {f.index for group in groups for figures in group.slots.values() for f in figures}
    own = [
        sorted(one[0].index for one in group.slots.values() if holders[one[0].index] == 1)
        for group in groups
    ]
    starts = sorted(first for first, *_ in filter(None, own))
    for group, indexes in zip(groups, own, strict=True):
        od, radius = group.slots.get("od"), group.slots.get("clr")
        if not indexes or group.row is not None or od is None:
            continue
        first = layout.figures[indexes[0]]
        if od[0].index not in indexes:
            told_later = od[0].index > first.index and _is_tube_before(layout, group, held)
            beside = _is_chain_before(layout, first, held) or _has_tube_behind(layout, first, held)
            if told_later or beside:
                group.notes += [("od", OD_BESIDE), ("wall", OD_BESIDE)]
        elif radius is not None and radius[0].index not in indexes and radius[0].unit != "D":
            end = next((start for start in starts if start > first.index), len(layout.figures))
            if any(_may_be_radius(f, od[0]) for f in _behind(layout, first, end, held)):
                group.notes.append(("clr", RADIUS_BESIDE))


def _is_chain_before(layout: Layout, figure: Figure, held: set[int]) -> bool:
    """Whether 'a x b' that no size has stands before a figure, with none that one has between."""
    for before in reversed(layout.figures[: figure.index]):
        if before.index in held or before.sentence != figure.sentence or before.negated:
            return False
        if before.link == "times" and before.index - 1 not in held:
            return True
    return False


def _is_tube_before(layout: Layout, group: Group, held: set[int]) -> bool:
    """'Bars at 60 mm. Wall 2, R 180 ... and one in 42 mm', where the 60 was not heard."""
    first = min((one[0] for one in group.slots.values()), key=lambda figure: figure.index)
    before = layout.before(first)
    if before is None or before.index in held or before.negated or before.role is not None:
        return False
    if before.put_off or before.points or not before.is_measured:
        return False
    near = before.paragraph == first.paragraph and first.sentence - before.sentence < _LINES
    return near and before.unit in ("in", "mm", None) and is_diameter(before)


def _has_tube_behind(layout: Layout, wall: Figure, held: set[int]) -> bool:
    """Whether a diameter that no size has stands right behind a wall: '14 gauge 1-1/2 inch'."""
    after = layout.after_in_sentence(wall)
    if after is None or wall.role != "wall" or after.index in held or after.role is not None:
        return False
    measured = after.is_measured and not after.negated and not is_thin(after)
    return measured and is_diameter(after) and is_right_behind(layout, wall, after)


def _behind(layout: Layout, first: Figure, end: int, held: set[int]) -> Iterator[Figure]:
    """What stands behind a size in its sentence, before the next size, and is in none."""
    for figure in layout.figures[first.index + 1 : end]:
        same = figure.sentence == first.sentence and figure.line - first.line < _LINES
        if same and figure.index not in held:
            yield figure


def _may_be_radius(figure: Figure, od: Figure) -> bool:
    if figure.role is not None or figure.negated or figure.put_off or figure.points:
        return False
    told = figure.is_measured or figure.number.value >= _LEAST_BARE
    if figure.unit not in ("in", "mm", None) or not told:
        return False
    value = _in_mm(figure, od)
    return _LEAST <= value / max(_in_mm(od, od), Decimal(1)) <= _MOST


def _in_mm(figure: Figure, od: Figure) -> Decimal:
    return figure.number.value * (_INCH if (figure.unit or od.unit) == "in" else 1)
