"""Copper tube called by its bore and OD: '12/14', 'cuivre 14/16' (bore 14, OD 16), as plumbers in
France, Italy and Spain do. It is no fraction of an inch, and no day of December."""

from __future__ import annotations

import re
from math import gcd

from ...late_pattern import late_pattern

_BACK = 40
_COPPER = late_pattern(
    r"\b(?:cuivre|copper|kupfer\w*|cobre|rame|koper\w*|laiton|brass|messing\w*|ottone|latón)\b"
    r"(?:(?!\b(?:by|before|due|until|till|bis|vor|avant|antes|prima|voor|on)\b)"
    r"[^.;,\n]){0,24}$"
)
_LEAST_BORE, _MOST_WALL = 4, 2
"""mm: copper tube for bending is at least so wide, and no thicker (common practice, no source)."""
_MOST_BORE = 60
_INCH_PARTS = frozenset((2, 4, 8, 16, 32, 64))
_INCH_BEHIND = re.compile(r"\s?(?:\"|''|in\b|inch|zoll|pouce|pulg|poll)", re.IGNORECASE)


def is_bore_by_od(text: str, start: int, bore: int, od: int) -> bool:
    """Whether 'bore/od' at ``start``, right behind a word for copper, can be such a name [mm]."""
    if od in _INCH_PARTS and gcd(bore, od) == 1:
        return False  # 5/8 is an inch measure, 14/16 is none: nobody leaves one unreduced
    if _INCH_BEHIND.match(text, start + len(f"{bore}/{od}")):
        return False
    if not (_LEAST_BORE <= bore <= _MOST_BORE and 0 < od - bore <= 2 * _MOST_WALL):
        return False
    return _COPPER.search(text[max(0, start - _BACK) : start].casefold()) is not None
