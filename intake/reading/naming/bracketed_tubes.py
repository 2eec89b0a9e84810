"""Radii with their tubes in brackets: 'CLRs are 5.25 (1.75 x .095) and 4.5 (1.5 x .065)'."""

from __future__ import annotations

from itertools import pairwise

from ..text.figures import Figure, Layout
from ..text.roles import RADIUS_ROLES, Role


def hear_bracketed_tubes(layout: Layout) -> None:
    """Where one bracket's tube stands behind a radius, so do the others of its sentence."""
    known: dict[int, Role] = {}
    for figure, tube in pairwise(layout.figures):
        if not brackets_tube(layout, figure, tube) or figure.sentence != tube.sentence:
            continue
        if figure.role in RADIUS_ROLES:
            known[figure.sentence] = figure.role
        elif figure.role in (None, "label") and not figure.negated and figure.sentence in known:
            figure.give(known[figure.sentence], "list")


def brackets_tube(layout: Layout, figure: Figure, tube: Figure) -> bool:
    """Whether a bracket behind a figure holds an OD and its wall, and not the same once more as
    that of '1-3/4 x .095 (44.5 x 2.4 mm)'."""
    wall = layout.after(tube)
    if wall is None or "(" not in layout.text[figure.end : tube.start]:
        return False
    if figure.link in ("times", "slash") or figure.unit == "D" or tube.role not in (None, "od"):
        return False
    between = layout.between(tube, wall)
    if len(between) > 2 or not any(token.kind == "times" for token in between):
        return False
    return wall.number.value * 4 < tube.number.value < figure.number.value
