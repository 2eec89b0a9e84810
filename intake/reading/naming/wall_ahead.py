"""A tube told wall first: '... and 10 gauge 1-7/8 in, both on a 4 CLR' names an OD behind it."""

from __future__ import annotations

from ..text.figures import Figure, Layout
from ..text.patterns import word_set
from .place_tests import is_diameter, is_thin

_OF_WALL = word_set("wall walls thick gauge gage ga thickness x by")
_BEHIND = word_set(
    "tube tubes tubing pipe od o.d. outside on at with bent to around in and & one or",
    ", ; . ( ) / - :",
)
"""What may stand behind such an OD; a word of its own would say what else it is."""


def hear_walls_ahead(layout: Layout) -> None:
    """Give a figure that stands right behind a wall the role of its OD, where the wall can be of
    no tube that was named before it."""
    for figure in layout.figures[1:]:
        if figure.role is None and not figure.negated and _is_behind_its_wall(layout, figure):
            figure.give("od", "place")


def _is_behind_its_wall(layout: Layout, figure: Figure) -> bool:
    wall = layout.before(figure)
    if wall is None or wall.sentence != figure.sentence or not figure.is_measured:
        return False
    if wall.role != "wall" and not wall.is_gauge:
        return False
    if not is_diameter(figure) or is_thin(figure) or layout.tokens[figure.token].cues:
        return False
    if not is_right_behind(layout, wall, figure):
        return False
    behind = layout.tokens_after(figure, 1)
    if behind and behind[0].kind != "material" and behind[0].text not in _BEHIND:
        return False
    return not _is_of_tube_before(layout, wall)


def is_right_behind(layout: Layout, wall: Figure, figure: Figure) -> bool:
    """'.065 wall 2 in', '16 gauge 304 2-1/4 in': nothing else stands between the two."""
    between = layout.between(wall, figure)
    return all(t.kind in ("gap", "times", "material") or t.text in _OF_WALL for t in between)


def _is_of_tube_before(layout: Layout, wall: Figure) -> bool:
    """Whether what is named before a wall may be the tube whose wall it is."""
    before = layout.before(wall)
    if before is None or before.role in ("noise", "label") or not before.is_measure:
        return False
    if before.role == "wall" or before.is_gauge or is_thin(before):
        return False
    held = layout.before(before)
    first = held is not None and (held.role == "wall" or held.is_gauge)
    if first and held is not None and is_right_behind(layout, held, before):
        return False  # ".120 wall 2 in and .065 wall 1.5 in"
    return before.role not in ("clr", "radius", "times_d") or held is None or held.role == "od"
