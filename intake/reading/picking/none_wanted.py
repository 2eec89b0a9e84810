"""Rows of a list whose count is 0: the customer asks for the others."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence

from ...late_pattern import late_pattern
from ..sizes.groups import Group, own_figures
from ..tables.counted_rows import asks_for_counted
from ..tables.text_tables import RowFacts
from ..text.figures import Layout, Row

_STOCK = late_pattern(
    r"\b(?:qty|quantity|pcs|anzahl|menge|stück|qté|quantité|cant|cantidad|aantal)\b\.?[ (]{1,2}"
    r"(?:on hand|in stock|in house|available|owned|in store|lager|auf lager|vorhanden|en stock)\b"
    r"|\b(?:on[- ]hand|stock|inventory|lager|bestand|shelf)[ _-]?(?:qty|quantity|menge|count)\b",
    re.IGNORECASE,
)
"""The head of a column that counts what is there, not what is wanted."""
NO_COUNT = "other rows have a count, and this one has a dash: is none wanted?"
ALL_NONE = "every count in the list is 0"


def without_none_wanted(
    layout: Layout, groups: Sequence[Group], rows: Mapping[Row, RowFacts]
) -> list[Group]:
    """The sizes without those of rows that want none; what they were is told to the person.

    Where no row wants any, none is left out and each is in doubt. No count of 0 is left.
    """
    counted = any(facts.quantity for facts in rows.values()) and len(groups) > 1
    only_counted = counted and asks_for_counted(layout.text)
    there = bool(rows) and _STOCK.search(layout.text) is not None
    none = [not there and _wants_none(group, rows, only_counted) for group in groups]
    if counted and not there and not only_counted:
        _doubt_dashes(groups, rows)
    for facts in rows.values():
        if facts.quantity is not None and (there or facts.quantity <= 0):
            facts.quantity = None
    if not any(none):
        return list(groups)
    if all(none):
        for group in groups:
            group.doubtful = group.doubtful or ALL_NONE
            group.notes += [(slot, ALL_NONE) for slot in group.slots]
        return list(groups)
    for group, gone in zip(groups, none, strict=True):
        if gone:
            layout.left_out.append(_words_of(layout, group))
    return [group for group, gone in zip(groups, none, strict=True) if not gone]


def _wants_none(group: Group, rows: Mapping[Row, RowFacts], only_counted: bool) -> bool:
    facts = rows.get(group.row) if group.row is not None else None
    if facts is None:
        return False
    return facts.quantity == 0 or (only_counted and facts.quantity is None)


def _doubt_dashes(groups: Sequence[Group], rows: Mapping[Row, RowFacts]) -> None:
    """A dash among counts may mean that none is wanted."""
    for group in groups:
        facts = rows.get(group.row) if group.row is not None else None
        if facts is not None and facts.no_count and facts.quantity is None and not group.doubtful:
            group.doubtful = NO_COUNT
            group.notes += [(slot, NO_COUNT) for slot in group.slots]


def _words_of(layout: Layout, group: Group) -> str:
    own = own_figures(group)
    if not own:
        return ""
    begin, end = min(f.start for f in own), max(f.end for f in own)
    return " ".join(layout.text[begin:end].split())
