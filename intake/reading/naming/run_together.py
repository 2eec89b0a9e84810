"""A size that lost its times sign and is told again in words: '252,5 Rohr, also 25 dick'."""

from __future__ import annotations

from itertools import pairwise

from ..text.figures import Figure, Layout

_FAR = 6
"""Figures on which the same is said again."""


def hear_run_together(layout: Layout) -> None:
    """Set aside a figure whose digits are those of an OD and a wall that stand near it."""
    for figure in layout.figures:
        written = _written(layout, figure)
        if figure.role is not None or len(written) < 3:
            continue
        near = layout.figures[max(0, figure.index - _FAR) : figure.index + 1 + _FAR]
        for od, wall in pairwise(near):
            if figure in (od, wall) or _written(layout, od) + _written(layout, wall) != written:
                continue
            if not 0 < wall.number.value * 4 < od.number.value:
                continue
            if _written(layout, wall).startswith("."):
                continue  # "4.75 CLR", beside a 4 and a .75: a number like any other
            figure.give("noise", "same")
            if {od.role, wall.role} == {None}:
                od.give("od", "same")
                wall.give("wall", "same")
            break


def _written(layout: Layout, figure: Figure) -> str:
    """The number alone as the sender wrote it."""
    return layout.text[figure.number.start : figure.number.end].replace(",", ".")
