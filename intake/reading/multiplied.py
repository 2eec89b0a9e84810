"""A count glued before a size by a times sign: '2x 42,4x2' is two of it, and no box."""

from __future__ import annotations

import re

from .figures import Figure, Layout

_MOST_OF_A_SIZE = 20
_MANY_WALLS = 4
"""A tube is at least so many walls across."""
_X_AND_SPACE = re.compile(r"[x×]\s", re.IGNORECASE)
"""'2x 42,4x2' counts; '2 x 42,4x2' may."""


def sets_size_apart(layout: Layout, figure: Figure) -> bool:
    """Part a count from the size that it multiplies, and say so; to be called before roles."""
    od = _size_multiplied(layout, figure)
    if od is None:
        return False
    figure.give("noise", "count")
    od.link = "apart"
    return True


def _size_multiplied(layout: Layout, figure: Figure) -> Figure | None:
    """The OD of a size that a figure multiplies: '2x 42,4x2'.

    Not '2 x 1.5 x .065', a box; but what has no room for the wall behind it is no side.
    """
    od = layout.after(figure)
    wall = layout.after(od) if od is not None and od.link == "times" else None
    if od is None or wall is None or wall.link != "times" or figure.link in ("times", "slash"):
        return None
    if figure.number.style != "integer" or figure.unit or figure.number.value > _MOST_OF_A_SIZE:
        return None
    if od.number.value < wall.number.value * _MANY_WALLS:
        return None
    spread = _X_AND_SPACE.match(layout.text, figure.end, od.start) is not None
    glued = layout.text[od.end : wall.start].strip(" ") == layout.text[od.end : wall.start]
    counts = (spread and glued) or (
        figure.number.value <= wall.number.value * 2 and od.number.value > figure.number.value
    )
    return od if counts else None
