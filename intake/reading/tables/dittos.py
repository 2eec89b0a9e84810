"""Ditto marks in a table: a cell that says no more than 'as above' has what the row above has."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from ..sizes.groups import Group, Slot
from ..text.figures import Layout, Row
from ..text.patterns import word_set
from ..text.roles import LENGTH_ROLES, RADIUS_ROLES
from .cells import Cell, ColumnRole
from .rows import Placed, RowFacts

_MARKS = word_set(
    "\" '' -\"- ,, do dto ditto same sameasabove asabove idem ídem id dito so wieoben gleich",
    "igual comosopra cs hetzelfde alsboven zoalshierboven commecidessus",
)
_SLOTS: dict[ColumnRole, Slot] = {
    "od": "od", "nps": "od", "dn": "od", "id": "id", "wall": "wall", "schedule": "wall",
    **dict.fromkeys(LENGTH_ROLES & RADIUS_ROLES, "clr"), "times_d": "clr",
}  # fmt: skip


def take_from_above(layout: Layout, placed: Placed, facts: RowFacts, above: RowFacts) -> None:
    """Copy what the row above says beside its lengths, and note which lengths are its, too."""
    for column, cell in placed:
        if not _is_ditto(layout, cell):
            continue
        if column.role in ("quantity", "wanted"):
            facts.quantity = above.quantity
        elif column.role == "material":
            facts.material = above.material
        elif column.role == "when":
            facts.when = above.when
        elif column.role in _SLOTS:
            facts.like_above.add(_SLOTS[column.role])


def _is_ditto(layout: Layout, cell: Cell) -> bool:
    said = "".join(layout.tokens[index].text for index in cell.tokens)
    return said.replace(".", "").replace(" ", "") in _MARKS


def share_dittos(groups: Sequence[Group], rows: Mapping[Row, RowFacts]) -> None:
    """Give the sizes of rows the lengths that their marks take from the row above."""
    by_row = {group.row: group for group in groups if group.row is not None}
    for group in groups:
        facts = rows.get(group.row) if group.row is not None else None
        if facts is None or group.row is None:
            continue
        kind, table, number = group.row
        above = by_row.get((kind, table, number - 1))
        for slot in sorted(facts.like_above):
            if above is not None and slot in above.slots and slot not in group.slots:
                group.slots[slot] = list(above.slots[slot])
                group.shared.add(slot)
