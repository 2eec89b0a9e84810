"""Nets for an OD or a radius that is told elsewhere, while a figure beside the size's own is not
understood."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from ..naming.place_tests import is_diameter, is_radius_of, is_thin
from ..sizes.groups import Group
from ..text.figures import Figure, Layout

OD_ELSEWHERE = "its OD is told on another line, and a figure beside it is not understood"
_LEAST_BARE_MM = 20
RADIUS_ELSEWHERE = "its radius is told of another tube, and a figure beside it is not understood"


def doubt_tubes_elsewhere(layout: Layout, groups: Sequence[Group]) -> None:
    """'1.75 tube, .095 wall R5.25; 2 tube, .120 wall R6', where the 2 was not heard."""
    for group in groups:
        od = group.slots.get("od")
        own = [f for slot in ("wall", "clr") for f in group.slots.get(slot, ())]
        if not od or not own or od[0].row is not None:
            continue
        if any(_may_be_tube(f) for f in _beside(layout, [f for f in own if f.line != od[0].line])):
            group.notes.append(("od", OD_ELSEWHERE))


def doubt_radii_elsewhere(layout: Layout, groups: Sequence[Group]) -> None:
    """'25 x 1.5 on a 60 mm radius and one for 30 mm, same wall, 75 mm', where the 75 was not heard:
    the 30 shares the 60."""
    for group in groups:
        od, radius = group.slots.get("od"), group.slots.get("clr")
        if not od or not radius or "clr" not in group.shared or od[0].row is not None:
            continue
        if any(_may_be_radius(figure, od[0]) for figure in _behind(layout, od[-1])):
            group.notes.append(("clr", RADIUS_ELSEWHERE))


def _behind(layout: Layout, od: Figure) -> Iterator[Figure]:
    """The figures behind an OD in its sentence, up to the next tube."""
    for figure in layout.in_sentence(od.sentence):
        if figure.index > od.index:
            if figure.role in ("od", "radius", "clr"):
                return
            yield figure


def _may_be_radius(figure: Figure, od: Figure) -> bool:
    if figure.role is not None or not figure.is_measure:
        return False
    bare = figure.unit is None and figure.number.value >= _LEAST_BARE_MM
    return (
        (bare or figure.unit in ("in", "mm"))
        and is_radius_of(figure, od)
        and figure.number.value > od.number.value
    )


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
