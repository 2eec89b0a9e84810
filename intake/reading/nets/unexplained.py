"""A net for an OD that is told on another line, while a figure on the own one is not understood."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from ..naming.place_tests import is_diameter, is_thin
from ..sizes.groups import Group
from ..text.figures import Figure, Layout

OD_ELSEWHERE = "its OD is told on another line, and a figure beside it is not understood"


def doubt_tubes_elsewhere(layout: Layout, groups: Sequence[Group]) -> None:
    """'1.75 tube, .095 wall R5.25; 2 tube, .120 wall R6', where the 2 was not heard."""
    for group in groups:
        od = group.slots.get("od")
        own = [f for slot in ("wall", "clr") for f in group.slots.get(slot, ())]
        if not od or not own or od[0].row is not None:
            continue
        if any(_may_be_tube(f) for f in _beside(layout, [f for f in own if f.line != od[0].line])):
            group.notes.append(("od", OD_ELSEWHERE))


def _beside(layout: Layout, figures: Sequence[Figure]) -> Iterator[Figure]:
    """The figures right before some others, in their sentences."""
    for figure in figures:
        before = layout.before(figure)
        if before is not None and before.line == figure.line:
            behind = layout.tokens_after(before, 1)
            if not (behind and behind[0].text == ":"):  # "Variante 1: Wand 2"
                yield before


def _may_be_tube(figure: Figure) -> bool:
    if figure.role is not None or figure.negated or figure.unit not in ("in", "mm", None):
        return False
    return figure.is_measure and is_diameter(figure) and not is_thin(figure)
