"""Butted tubes, thicker at the ends: '0.9/0.6/0.9', '0.9/0.6/0.9 x 22.2'."""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout

_THICK_END = late_pattern(
    r"\b(?:thick|thicker|butted|dicken?|épaisse?|grues[oa]|spess[oa]|dikke)\s(?:[\d.,]+\s)?(?:mm\s)?"
    r"(?:end|section|part|side|ende|bereich|bout|partie|extremo|parte|estremità|einde?|deel)",
    re.IGNORECASE,
)
_THIN = 4
"""An OD is more than so many walls."""


def ends_butted(layout: Layout, figure: Figure) -> bool:
    """Whether it is the last of three walls: '0.9/0.6/0.9 x 22.2'."""
    if figure.index < 2:
        return False
    first, middle = layout.figures[figure.index - 2 : figure.index]
    thin = middle.number.value < figure.number.value
    return middle.link == "slash" and thin and first.number.value == figure.number.value


def read_butted(layout: Layout, chain: list[Figure]) -> bool:
    """Give the walls of a butted tube their roles; it is asked which are at the bend."""
    walls, tube = (chain[:3], chain[3:]) if len(chain) == 4 else (chain, [])
    if len(walls) != 3 or any(figure.link != "slash" for figure in walls[1:]):
        return False
    first, middle, last = (figure.number.value for figure in walls)
    if first != last or middle >= first:
        return False
    if any(od.link != "times" or od.number.value <= _THIN * first for od in tube):
        return False
    walls[0].give("wall", "chain")
    if not _THICK_END.search(layout.text):
        walls[0].notes.append("butted tube: which wall is at the bend?")
    for figure in walls[1:]:
        figure.give("noise", "chain")
    for od in tube:
        od.give("od", "chain")
    return True
