"""Tables that a mail's plain words have lost: a cell a line, or cells with a single blank between.

Mail programs make the plain words out of the HTML, each in its own way. Which figure stands under
which head is then told by the HTML alone.
"""

from __future__ import annotations

import re

_FEWEST_CELLS = 3
_FEWEST_FIGURES = 2
"""Cells of a row that have a figure: an address set in columns has fewer."""
_MOST_ROWS = 40
"""So many rows of figures are looked at; the rest is as they are."""
_DIGIT = re.compile(r"\d")
_BLANKS = re.compile(r"\s+")
_KEPT = re.compile(r"[ ]*(?:[\t|;]|[ ]{2})[ \t|;]*")
"""What parts the cells of a row in plain words that have kept them."""


def lost_rows(rich: str, plain: str) -> bool:
    """Whether ``rich`` has a table, its cells parted by tabs, whose rows ``plain`` has not."""
    rows = [line.split("\t") for line in rich.split("\n") if line.count("\t") >= _FEWEST_CELLS - 1]
    rows = [row for row in rows if _figures(row) >= _FEWEST_FIGURES][:_MOST_ROWS]
    if not rows:
        return False
    words = _BLANKS.sub("", plain)
    kept = {_squeezed(_KEPT.split(line.strip(" \t|;"))) for line in plain.split("\n")}
    told = [row for row in rows if "".join(_squeezed(row)) in words]
    return bool(told) and not any(_squeezed(row) in kept for row in told)


def _figures(row: list[str]) -> int:
    return sum(_DIGIT.search(cell) is not None for cell in row)


def _squeezed(cells: list[str]) -> tuple[str, ...]:
    return tuple(squeezed for cell in cells if (squeezed := _BLANKS.sub("", cell)))
