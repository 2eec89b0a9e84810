"""A length with its unit where the point would be: '1 mm 5', '2 mm et demi', '48mm3'.

So it is said in French, and written by who writes as he speaks.
"""

from __future__ import annotations

import re
from dataclasses import replace
from decimal import Decimal

from ...late_pattern import late_pattern
from .numbers import Number

_PART = late_pattern(
    r"(?P<mm> ?(?:mm|millim[eè]tres?|milímetros?|millimetri|millimeter))"
    r"(?:(?P<gap> ?)(?P<part>\d{1,2})(?![\d.,/]*\d|[):]|\s?(?:mm|cm|x|×|\*|°|%|''|\")|[a-z])"
    r"|\s(?:et|y|e|und|en)\s(?:ein\s|een\s|un\s)?(?P<half>demie?|medio|mezzo|halbe?r?|half)\b)",
    re.IGNORECASE,
)
_ENDS = late_pattern(
    r"\W{0,2}$|\s?[.,;:!?)\n](?!\d)"
    r"|\s(?:rayons?|raggio|radio|radius|clr|r\b|R\d|cintr\w+|fibre|inox|acier|alu\w*|laiton|cuivre"
    r"|sur|avec|et|pour|en|tube|diam\w*|ø|ép\w*|à|au)(?!\w)",
    re.IGNORECASE,
)
_THICK = late_pattern(r"\s(?:d'ép\w+|d'ep\w+|de paroi|épais\w*)", re.IGNORECASE)
_WALL_BEFORE = late_pattern(
    r"\b(?:[ée]pais\w*|[ée]p|paroi|pared|espesor|spessore|parete|wand\w*|wall)\b[^\d\n.;]{0,14}$",
    re.IGNORECASE,
)
_RADIUS_BEFORE = late_pattern(
    r"\b(?:rayon|radio|raggio|radius|straal|clr|cintr\w+)\b[^\d\n.;]{0,20}$", re.IGNORECASE
)
_TUBES = frozenset(
    map(
        Decimal,
        "10.2 13.5 17.2 21.3 26.9 33.7 42.4 44.5 48.3 60.3 63.5 76.1 88.9 101.6 114.3".split(),
    )
)
"""ODs with a part (EN 10220, ISO 4200): what else stands so behind an OD may be its wall."""
_THICKEST = 10
_LEAD = 36


def parted_at(text: str, number: Number) -> Number | None:
    """The whole length, unit and all, that a whole number begins: 1.5 for '1 mm 5'."""
    if number.style != "integer" or number.unit is not None:
        return None
    match = _PART.match(text, number.end)
    if match is None:
        return None
    if match["half"]:
        return _with(number, number.value + Decimal("0.5"), match.end())
    value = number.value + Decimal(f"0.{match['part']}")
    glued = not match["gap"] and not match["mm"].startswith(" ")
    if not (glued or _belongs(text, number, value, match)):
        return None
    return _with(number, value, match.end())


def _belongs(text: str, number: Number, value: Decimal, match: re.Match[str]) -> bool:
    ahead = text[max(0, number.start - _LEAD) : number.start]
    if number.value < _THICKEST and _THICK.match(text, match.end()):
        return int(match["part"]) >= number.value  # "8 mm 1 d'épaisseur": an OD and its wall
    if _ENDS.match(text, match.end()) is None:
        return False
    if _WALL_BEFORE.search(ahead):
        return number.value < _THICKEST
    return _RADIUS_BEFORE.search(ahead) is not None or value in _TUBES


def _with(number: Number, value: Decimal, end: int) -> Number:
    return replace(number, values=(value,), style="decimal", unit="mm", end=end)
