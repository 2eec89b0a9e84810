"""A net for whole sizes that are in no size: 'Ø5/8" x .035' said, and only the 3/4 beside it read.

A figure that was read as an OD with a wall beside it is lost where its group gave way to another
figure and no word took it back. Nothing is read anew: what was read beside it is doubted.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal

from ..sizes.groups import Group, slot_of
from ..text.figures import Figure, Layout
from .lost_beside import is_beside_one

LOST = "another size seems to be named that was not understood"
_SURE = frozenset({"sign", "cue", "chain", "header"})


def doubt_lost(layout: Layout, groups: Sequence[Group]) -> None:
    """Note on every group that a size beside it may have been lost.

    To be called before any group is left out as not asked for.
    """
    held = {figure.index for g in groups for figures in g.slots.values() for figure in figures}
    values = {(f.number.value, f.unit) for f in layout.figures if f.index in held}
    values |= {(value, None) for value, _ in values}
    ods = {f.number.value for g in groups for f in g.slots.get("od", ())}
    said = {value for value, _ in values}
    told_twice = any(_is_other_wall(layout, f, ods, values) for f in layout.figures)
    if told_twice or any(
        (_is_lost(layout, f, held) and _is_new(layout, f, values))
        or (f.number.value not in said and is_beside_one(layout, f, held))
        for f in layout.figures
    ):
        for group in groups:
            if not group.doubtful:
                group.doubtful = LOST
                group.notes += [(slot, LOST) for slot in group.slots]


def _is_lost(layout: Layout, figure: Figure, held: set[int]) -> bool:
    if figure.index in held or not figure.is_measure or figure.row is not None:
        return False
    if figure.context_only or figure.put_off or figure.points or figure.how not in _SURE:
        return False
    if slot_of(figure) != "od" or figure.link in ("restate", "slash"):
        return False
    if not any(wall.role == "wall" for wall in _beside(layout, figure)):
        return False
    given_up = any(figure is old for old, _ in layout.given_up)
    return not given_up and not _is_put_right(layout, figure)


def _is_other_wall(
    layout: Layout, figure: Figure, ods: set[Decimal], values: set[tuple[Decimal, str | None]]
) -> bool:
    """'Drawing 35 x 2' beside a 35 x 1.5: taken for a drawing's number, and yet that OD."""
    if figure.role != "noise" or figure.how != "cue" or figure.number.value not in ods:
        return False
    after = layout.after(figure)
    if after is None or after.link != "times" or after.number.value * 3 > figure.number.value:
        return False
    return not figure.negated and (after.number.value, after.unit) not in values


def _beside(layout: Layout, figure: Figure) -> Iterator[Figure]:
    """The wall that is joined to an OD by a times sign."""
    after = layout.after(figure)
    if after is not None and after.link == "times":
        yield after


def _is_new(layout: Layout, figure: Figure, values: set[tuple[Decimal, str | None]]) -> bool:
    """Whether no size has the OD or the wall: 'per drawing 35 x 2, per parts list 35 x 1.5'."""
    pair = (figure, *_beside(layout, figure))
    return any((one.number.value, one.unit) not in values for one in pair)


def _is_put_right(layout: Layout, figure: Figure) -> bool:
    """Whether a later figure of its kind is said to put one right: 'scratch that, 1.75'."""
    return any(
        other.corrects and slot_of(other) == "od" for other in layout.figures[figure.index + 1 :]
    )
