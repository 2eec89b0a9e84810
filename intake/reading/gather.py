"""Figures with roles become size requests: gathered, shared, and what is owned left out."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from itertools import groupby

from .counts.by_ordinal import counts_by_ordinal
from .nets.lost_sizes import doubt_lost
from .nets.nets import cast_nets
from .picking.by_exception import the_one_named
from .picking.dropped_in_reply import left_by_reply
from .picking.left_by_pointer import left_by_pointer
from .picking.named_later import left_by_name
from .picking.none_wanted import without_none_wanted
from .picking.picked import lines_of_only, picked
from .picking.withdrawn import label_before, label_place, left_over
from .radii.tied import find_ties, tie
from .sizes.gatherer import Gatherer
from .sizes.groups import Group, is_told_whole, slot_of
from .sizes.named_again import without_named_again
from .sizes.radii_of_dies import with_radii_of_dies
from .sizes.sharing import share
from .tables.dittos import share_dittos
from .tables.text_tables import RowFacts
from .text.figures import Figure, Layout, Row
from .wanted.asked_for import doubt_unasked


def gather(
    layout: Layout, told: str | None = "", rows: Mapping[Row, RowFacts] | None = None
) -> list[Group]:
    """All requests in the order asked for, ``MOST_GROUPS`` at the most.

    ``told`` are words beside the text that may pick out its lines, and then its own don't; None
    where lines that are not wanted have been taken out already.
    """
    ties = find_ties(layout)
    tied = {figure.index for figure, _ in ties}
    figures = [
        figure
        for figure in layout.figures
        if figure.index not in tied
        and (slot_of(figure) or figure.shape)
        and figure.is_measure
        and not figure.context_only
        and not figure.put_off
    ]
    groups = Gatherer(layout, _by_column(figures)).run()
    groups = groups or _of_tooling(layout)
    share_dittos(groups, rows or {})
    _fill_from_context(layout, groups)
    groups = with_radii_of_dies(layout, groups)
    groups = without_named_again(layout, groups)
    share(layout, groups)
    tie(groups, ties)
    doubt_lost(layout, groups)
    if told is not None:
        groups = _without_withdrawn(layout, groups, told)
    groups = without_none_wanted(layout, groups, rows or {})
    doubt_unasked(layout, groups)
    cast_nets(layout, groups)
    return groups


def _without_withdrawn(layout: Layout, groups: list[Group], told: str) -> list[Group]:
    """'On second thought drop 5': the others are left."""
    if not told and counts_by_ordinal(layout.text, len(groups)):
        return groups  # "Two for the first, one for the second": that picks none
    labels = [
        label_before(layout.text, group.anchor.start) if group.anchor is not None else None
        for group in groups
    ]
    sizes = [f.number.value for group in groups for fs in group.slots.values() for f in fs]
    kept = _left_over(groups, told or layout.text, labels, sizes)
    if len(kept) == len(groups) and not told:
        kept = the_one_named(layout, groups)
    if len(kept) == len(groups):
        kept = picked(layout, groups, told)
    if len(kept) == len(groups):
        kept = left_by_reply(told, groups) if told else left_by_name(layout, groups)
    if not told:
        pointed = left_by_pointer(layout, groups)
        kept = [index for index in kept if index in pointed] or pointed
    gone = [group for index, group in enumerate(groups) if index not in kept]
    layout.left_out += [_words_of(layout, group) for group in gone]
    left = [groups[index] for index in kept]
    layout.lines_out += lines_of_only(layout, gone, left)
    if layout.lines_out:  # '2) mandrel for ...' counts no mandrels, with no '1)' above it either
        rows = (g.anchor for g in left if g.anchor is not None and g.row is None)
        labels_left = (label_place(layout.text, anchor.start) for anchor in rows)
        layout.lines_out += [place for place in labels_left if place is not None]
        layout.lines_out += layout.places
    return left


def _left_over(
    groups: list[Group], words: str, labels: list[str | None], sizes: list[Decimal]
) -> list[int]:
    """The places of a list are those of its tubes: a radius for all above it is none of them."""
    tubes = [index for index, group in enumerate(groups) if group.has_tube]
    if len(tubes) < 2:
        return left_over(words, labels, sizes)
    left = {tubes[at] for at in left_over(words, [labels[index] for index in tubes], sizes)}
    return [index for index, group in enumerate(groups) if index in left or not group.has_tube]


def _words_of(layout: Layout, group: Group) -> str:
    """A size as the sender wrote it, without what it shares with others."""
    own = [f for slot, fs in group.slots.items() if slot not in group.shared for f in fs]
    begin, end = min(f.start for f in own), max(f.end for f in own)
    return " ".join(layout.text[begin:end].split())


def _by_column(figures: list[Figure]) -> list[Figure]:
    """A table with a size in each column is read column by column."""
    ordered: list[Figure] = []
    for table, run in groupby(figures, key=_sideways_table):
        columns = list(run)
        if table is not None:
            columns.sort(key=lambda figure: figure.row[2] if figure.row is not None else 0)
        ordered += columns
    return ordered


def _sideways_table(figure: Figure) -> int | None:
    return figure.row[1] if figure.row is not None and figure.row[0] == "column" else None


def _fill_from_context(layout: Layout, groups: list[Group]) -> None:
    """The die or tube of tooling already owned fills what the request itself leaves open; a whole
    size of which nothing is taken over is told to the person."""
    context = [figure for figure in layout.figures if figure.context_only]
    for figure in context:
        slot = slot_of(figure)
        if slot is not None:
            for group in groups:
                if not is_told_whole(group, slot):
                    group.slots.setdefault(slot, [figure])
    held = {f.index for group in groups for figures in group.slots.values() for f in figures}
    for _, run in groupby(context, key=lambda figure: figure.sentence):
        figures = list(run)
        if {"od", "wall"} <= {slot_of(f) for f in figures} and not {
            f.index for f in figures
        } & held:
            words = layout.text[figures[0].start : figures[-1].end]
            layout.owned.append(" ".join(words.split()))


def _of_tooling(layout: Layout) -> list[Group]:
    """'We have dies for both: 1.75 x .095 and 1.5 x .065. Need the mandrels.'"""
    figures = [f for f in layout.figures if f.context_only and slot_of(f) and f.is_measure]
    groups = [g for g in Gatherer(layout, figures).run() if g.has_tube]
    for group in groups:
        group.notes += [
            (slot, "named as the size of tooling that is there") for slot in group.slots
        ]
    return groups
