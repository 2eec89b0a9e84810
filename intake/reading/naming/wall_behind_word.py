"""A wall behind a little word: 'buis 45 op 2', 'Rohr 45 auf 2', 'tube de 40 en 2'."""

from __future__ import annotations

import re
from itertools import pairwise

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of

_TUBE = late_pattern(
    r"\b\w{0,14}"
    + any_of(
        "rohre?s? | rohren | tub(?:e|es|ing) | tubos? | tubi | tubazione | buis(?:je)?s? | buizen",
        r"rur[aęy] | rurk[aię] | rör(?:et)? | rør(?:et)? | pijp(?:en)?",
    )
    + r"(?:\s(?:van|von|vom|de|da|di|of|fi|à|met|mit|mm|diam(?:eter|ètre|etro)?|[øØ]))?\W{0,3}$",
    re.IGNORECASE,
)
_WORD = late_pattern(
    r"^\s?(?:mm)?\s(?:op|auf|en|na|bij|da|su|på|och|à)\s(?:een\swand\svan\s|de\s)?$"
)
_ENDS = late_pattern(
    r"^\s?(?:mm\b)?\s?(?:[.,;:)\n]|$|(?:radius|r\s?\d|r=|rayon|raggio|radio|promień|straal|biege\w*"
    r"|buig\w*|clr|met|mit|avec|con|z|mat[ée]ri\w*|inox|acier|alu\w*|staal|rvs|stahl|edelstahl"
    r"|cuivre|koper|kupfer|acero|acciaio|cobre|rame)\b)"
)
_THICKEST = 5
"""An OD is at least so many walls, or the second figure may be anything."""


def hear_walls_behind_words(layout: Layout) -> None:
    """Give the two figures of 'buis 45 op 2' their roles: a tube's OD, and a far smaller wall."""
    for od, wall in pairwise(layout.figures):
        if _is_pair(layout, od, wall):
            if od.role is None:
                od.give("od", "list")
            wall.give("wall", "list")


def _is_pair(layout: Layout, od: Figure, wall: Figure) -> bool:
    if od.role not in (None, "od") or wall.role is not None or od.sentence != wall.sentence:
        return False
    if not {od.unit, wall.unit} <= {None, "mm"} or od.number.value < _THICKEST * wall.number.value:
        return False
    if not _WORD.match(layout.words(od.end, wall.start)):
        return False
    begin = max(0, od.start - 32)
    return bool(
        _TUBE.search(layout.words(begin, od.start))
        and _ENDS.match(layout.words(wall.end, min(len(layout.text), wall.end + 16)))
    )
