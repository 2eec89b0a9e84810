"""What the sender says about figures, heard before any of them is given a role."""

from __future__ import annotations

from itertools import groupby, pairwise

from .naming.measured import hear_measured, set_names_aside
from .naming.restated import hear_references
from .radii.least_radius import set_least_radius_aside
from .radii.same_radius import keep_same_radius
from .said.by_drawing import hear_by_drawing
from .said.corrections import hear_corrections
from .said.dropped_whole import negate_dropped
from .said.given_up import hear_given_up
from .said.hedges import hear_capacity, hear_hedges
from .said.old_and_new import hear_old_and_new
from .said.replaced import hear_replaced
from .said.rule_limits import set_rule_limits_aside
from .said.said_elsewhere import hear_ignored, hear_said_elsewhere
from .text.figures import Layout
from .thread.changed_since import hear_changed_since
from .thread.written_wrong import hear_written_wrong
from .wanted.not_now import hear_not_now
from .wanted.owned import hear_ours, hear_owned
from .wanted.owned_lists import hear_owned_lines, hear_owned_lists
from .wanted.told_statements import hear_told_statements


def listen(layout: Layout) -> None:
    """Mark figures as negated, hedged, limits, owned already, or correcting an earlier one."""
    hear_told_statements(layout)
    hear_hedges(layout)
    _negate_whole_sizes(layout)
    negate_dropped(layout)
    set_rule_limits_aside(layout)
    refused = {figure.index for figure in layout.figures if figure.negated}
    hear_owned(layout)
    _negate_whole_sizes(layout)
    hear_ours(layout)
    hear_owned_lines(layout)
    hear_owned_lists(layout)
    _tell_of_owned(layout, refused)
    hear_not_now(layout)
    hear_references(layout)
    hear_capacity(layout)
    hear_corrections(layout)
    hear_written_wrong(layout)
    hear_changed_since(layout)
    hear_measured(layout)
    set_names_aside(layout)
    hear_given_up(layout)
    hear_replaced(layout)
    hear_old_and_new(layout)
    hear_by_drawing(layout)
    hear_said_elsewhere(layout)
    hear_ignored(layout)
    set_least_radius_aside(layout)
    keep_same_radius(layout)


def _tell_of_owned(layout: Layout, refused: set[int]) -> None:
    """Note what is there already of each size, so that the person may see it."""
    owned = [
        f for f in layout.figures if f.negated and f.role != "noise" and f.index not in refused
    ]
    for _, run in groupby(owned, key=lambda figure: (figure.sentence, figure.line)):
        figures = list(run)
        if len(figures) > 1:
            words = layout.text[figures[0].start : figures[-1].end]
            layout.owned.append(" ".join(words.split()))


def _negate_whole_sizes(layout: Layout) -> None:
    """'Already have the 1.5 x .095 mandrel', 'not 2 x .065': the whole size goes."""
    for left, right in pairwise(layout.figures):
        if right.link == "times" and left.negated:
            right.negated = True
    for at in range(len(layout.figures) - 1, 0, -1):
        if layout.figures[at].link == "times" and layout.figures[at].negated:
            layout.figures[at - 1].negated = True
