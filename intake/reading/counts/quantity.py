"""How many mandrels are wanted: never the number of tubes, bends or parts."""

from __future__ import annotations

import itertools
import re

from ..naming.place_tests import opens_list, opens_tube
from ..numbers.units_after import counted_after
from ..sizes.groups import Group
from ..tables.text_tables import RowFacts
from ..text.figures import Figure, Layout
from ..text.roles import LENGTH_ROLES, RADIUS_ROLES
from .at_line_ends import counts_at_line_ends
from .mentions import mentions
from .more_of_one import where_more
from .multiplied import sets_count_apart, sets_size_apart
from .one_for import more_for
from .prompts import BARE, PIECES, PROMPTED
from .several import Counts, Several, settled

_MANY_WALLS = 4
"""A tube is at least so many walls across."""
_FOR_A_SIZE = re.compile(r"\s(?:for|für|pour|para|per|voor)\s(?:the\s)?\d", re.IGNORECASE)
"""'Need 1 for 1.5 x .065': the 1 is no OD."""
_OF_A_SIZE = re.compile(
    r"\s(?:of|von|de|di|van)\s(?:the\s)?\d[\d./ -]{0,7}\"?\s?[x×*]\s?[.,\d]", re.IGNORECASE
)
"""'... and 1 of 2 x .065': no size is of another."""
_TIMES_BEHIND = re.compile(r"\b(?:clr|radius|rad|radii)\.?,?\s{1,2}[x×]\s?$", re.IGNORECASE)
_THE = re.compile(
    r"(?<!\w)(?:the|den|die|das|dem|l[aeo]|el|il|de|het)\s(?:other\s)?$", re.IGNORECASE
)
_NEAR = 16
_JOINS_COUNTS = re.compile(
    r"\s?(?:,|/|&|and|or|und|oder|et|ou|y|e|o|en|of)\s(?:(?:for|für|bei|pour|por|per|voor)\s)?",
    re.IGNORECASE,
)
"""'Price for 1 and 5 pcs': neither measures."""


def find_counts(
    layout: Layout,
    groups: list[Group],
    rows: dict[tuple[str, int, int], RowFacts],
    beside: Layout | None = None,
) -> Counts:
    """The quantities of a message's requests.

    ``beside`` is the other part of the message, subject or body: it is asked where the part that
    holds the sizes says nothing.
    """
    sizes = _sizes(groups) | _set_aside(layout) | layout.counts_else
    named = _named_by_od(layout)
    found = [m for m in mentions(layout, sizes) if m.rank > BARE or m.start not in named]
    if len(groups) <= 1:
        row = rows.get(groups[0].row) if groups and groups[0].row is not None else None
        if row is not None and row.quantity is not None:
            return Counts((row.quantity,), None)
        plain = [m for m in found if not m.bracket or (m.count or 0) > 1]
        if not plain and layout.form_count is not None:
            return Counts((layout.form_count,), None)
        if not plain and beside is not None:
            plain = [m for m in mentions(beside, frozenset()) if not m.bracket]
        return Counts((), settled(plain))
    counts = Several(layout, groups, rows, found, beside).counts()
    sure = [number for number, group in enumerate(groups) if not group.doubtful]
    if len(sure) == 1 and counts.quantity(sure[0]) is None:
        # The others are likely mentioned only: the count is that of the one asked for.
        return Counts((), settled([m for m in found if not m.bracket]))
    return counts


def set_counts_aside(layout: Layout) -> None:
    """Say of figures that plainly count mandrels that they measure nothing.

    To be called before figures get their roles: in "2 req'd, 1.75 x .095" the 2 is no OD.
    """
    found = mentions(layout, frozenset())
    joined = {
        first.start
        for first, second in itertools.pairwise(found)
        if second.rank >= PIECES
        and _JOINS_COUNTS.fullmatch(layout.text, first.number_end, second.start)
    }
    counts = [
        m
        for m in found
        if m.rank >= PROMPTED
        or (m.rank >= BARE and (m.start in joined or _FOR_A_SIZE.match(layout.text, m.number_end)))
    ]
    dashed = {*counts_at_line_ends(layout.text)} | {start for start, _, _ in more_for(layout.text)}
    dashed |= where_more(layout.text)
    at = 0
    for figure in layout.figures:
        if sets_size_apart(layout, figure) or sets_count_apart(layout, figure):
            continue
        while at < len(counts) and counts[at].number_end <= figure.start:
            at += 1
        after = layout.after(figure)
        if _is_wall_in_chain(layout, figure) or opens_tube(layout, figure):
            continue
        if after is not None and (after.link == "times" or opens_list(layout, figure)):
            continue  # "one mandrel: 4 by .120": the 4 is a diameter
        counted = at < len(counts) and counts[at].start <= figure.start
        if after is not None and _OF_A_SIZE.match(layout.text, figure.end):
            counted, after.link = True, "apart"  # this "of" is no Dutch "or"
        counted = counted or _is_times_at_end(layout, figure) or figure.start in dashed
        if counted and figure.unit is None and figure.role is None:
            figure.role, figure.how = "noise", "count"


def _is_times_at_end(layout: Layout, figure: Figure) -> bool:
    """'1.5 x .065 4.5 CLR x2', at the end of its line."""
    begin = layout.text.rfind("\n", 0, figure.start) + 1
    ahead = layout.text[max(begin, figure.start - _NEAR) : figure.start]
    return (
        figure.number.style == "integer"
        and _TIMES_BEHIND.search(ahead) is not None
        and not layout.text[figure.end :].split("\n", 1)[0].strip(" .,;!")
    )


def _is_wall_in_chain(layout: Layout, figure: Figure) -> bool:
    """'16 x 2   R 40   3 Dorne': the 2 is a wall, unless a piece is named right behind it."""
    before = layout.before(figure) if figure.link == "times" else None
    if before is None or before.number.value < figure.number.value * _MANY_WALLS:
        return False
    if _is_called_radius(layout, before):
        return False  # "CLR 76 x3"
    between = layout.text[before.end : figure.start].strip().casefold()
    return between in ("x", "×", "*") and not counted_after(layout.text, figure.number)


def _is_called_radius(layout: Layout, figure: Figure) -> bool:
    ahead = [token for token in layout.tokens_before(figure, 1) if token.number is None]
    near = (layout.tokens[figure.token], *ahead)
    return any(cue.role in RADIUS_ROLES and cue.side != "after" for t in near for cue in t.cues)


def _sizes(groups: list[Group]) -> frozenset[int]:
    """Where the figures stand that the requests are made of."""
    return frozenset(
        figure.start for group in groups for figures in group.slots.values() for figure in figures
    )


def _set_aside(layout: Layout) -> frozenset[int]:
    """Figures of sizes that are not asked for: 'für 18 x 1 haben wir schon Dorne' counts none."""
    return frozenset(f.start for f in layout.figures if f.negated and f.role in LENGTH_ROLES)


def _named_by_od(layout: Layout) -> frozenset[int]:
    """Figures that name a tube again: 'only the 22 please' of a 20 and a 22."""
    ods = {f.number.value: f.start for f in reversed(layout.figures) if f.role == "od"}
    return frozenset(
        f.start
        for f in layout.figures
        if f.number.style == "integer"
        and ods.get(f.number.value, f.start) != f.start
        and _THE.search(layout.text[max(0, f.start - _NEAR) : f.start])
    )
