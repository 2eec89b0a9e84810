"""Walls in tenths of a millimetre, as French and Italian workshops write them: 'paroi 15/10'."""

from __future__ import annotations

from decimal import Decimal

from ...late_pattern import late_pattern
from .numbers import Number

_TENTHS = late_pattern(
    r"(?P<tenths>[5-9]|[1-6]\d)\s?/\s?10(?:\s?(?:èmes?|emes?|mm)\b)?(?![\d/.,]\d|\d)"
)
_BEFORE = late_pattern(
    r"(?:épaisseur|epaisseur|ép|ep|paroi|en|d'épaisseur|spessore|spess|sp|parete|espesor|pared|esp"
    r"|x|×)\s?(?:\.|:|=|de|di|da|d')?\s?$"
)
_FAR = 24


def tenths_at(text: str, place: int) -> Number | None:
    """A wall of so many tenths of a millimetre that stands at ``place`` behind a word for walls."""
    match = _TENTHS.match(text, place)
    if match is None or not _BEFORE.search(text[max(0, place - _FAR) : place].casefold()):
        return None
    value = Decimal(match["tenths"]) / 10
    return Number(match.start(), match.end(), (value,), "decimal", unit="mm")
