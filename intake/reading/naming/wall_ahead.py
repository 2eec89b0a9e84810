"""A tube told wall first: '... and 10 gauge 1-7/8 in, both on a 4 CLR' names an OD behind it."""

from __future__ import annotations

from ..text.figures import Figure, Layout
from ..text.patterns import word_set
from .place_tests import is_diameter, is_thin

_OF_WALL = word_set("wall walls thick gauge gage ga thickness x by")
_IN_A_TUBE = word_set("wall tube tubing pipe stuff stainless steel")
_BEHIND = word_set(
    "tube tubes tubing pipe od o.d. outside on at with bent to around in and & one or",
    ", ; . ( ) / - :",
)
"""What may stand behind such an OD; a word of its own would say what else it is."""


_THICKEST_MM = 6
_LEAST_OF_WALL = 4


def hear_walls_in(layout: Layout) -> None:
    """'.083 4130 in 1.75, 6" CLR': a wall and its material in an OD."""
    for wall, od in zip(layout.figures, layout.figures[1:], strict=False):
        if _stands_in(layout, wall, od):
            wall.give("wall", "chain")
            od.give("od", "chain")
            after = layout.after(od)
            if after is not None and after.link == "list":
                after.link = "apart"


def _stands_in(layout: Layout, wall: Figure, od: Figure) -> bool:
    if wall.role not in (None, "wall") or od.role is not None or wall.negated or od.negated:
        return False
    millimetres = wall.unit == "mm" and wall.number.value <= _THICKEST_MM
    if not (is_thin(wall) or wall.is_gauge or millimetres):
        return False
    if not is_diameter(od) or is_thin(od) or layout.tokens[od.token].cues or od.row is not None:
        return False
    if not wall.is_gauge and od.number.value < wall.number.value * _LEAST_OF_WALL:
        return False
    words = [token for token in layout.between(wall, od) if token.kind != "gap"]
    if not words or words[-1].text != "in" or layout.before(wall) is not None:
        return False
    rest = words[:-1]
    named = any(token.kind == "material" for token in rest)
    return named and all(t.kind == "material" or t.text in _IN_A_TUBE for t in rest)


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
