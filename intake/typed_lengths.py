"""A length as a person types it at the desk: taken exactly as written, or not at all.

The reader of customers' messages puts slips right (a decimal point that has slipped, a sign that
makes no sense). Whoever corrects a reading has the drawing at hand, so nothing is put right here.
"""

from __future__ import annotations

import re
import unicodedata
from decimal import Decimal
from typing import Literal

from ..rules.units import tidy, to_mm
from .reading import parse_field

Field = Literal["od", "wall", "clr"]
Unit = Literal["in", "mm"]

_UNITS = {
    **dict.fromkeys(("in", "in.", "inch", "inches", '"', "″", "”", "''"), "in"),
    **dict.fromkeys(("mm", "millimetre", "millimetres", "millimeter", "millimeters"), "mm"),
    **dict.fromkeys(("cm", "thou", "mil", "mils"), ""),
}
"""Spellings of units; an empty one stands for itself."""

_NUMBER = re.compile(
    r"""(?P<sign>[-+−]?)\s*
        (?: (?:(?P<whole>\d{1,4})[\s-]\s*)? (?P<top>\d{1,3})\s*/\s*(?P<under>\d{1,3})
          | (?P<decimal>\d{1,9}(?:[.,]\d{0,9})?|[.,]\d{1,9}) )
        \s*(?P<unit>[^\d\s.,/-].*)?""",
    re.VERBOSE | re.ASCII,
)
_THOUSANDS = re.compile(r"[1-9]\d{0,2},\d{3}", re.ASCII)
_GAUGE = re.compile(r"\d{1,2}\s*-?\s*(?:ga|ga\.|gage|gauge|swg|bwg)", re.ASCII | re.IGNORECASE)

_LIKELY: dict[Field, tuple[Decimal, Decimal]] = {
    "od": (Decimal(3), Decimal(300)),
    "wall": (Decimal("0.2"), Decimal(25)),
    "clr": (Decimal(3), Decimal(1000)),
}
"""[mm] Where a bare number has to lie in one unit to be taken for it (common practice, no source);
a number with its unit may be anything."""


class NoLength(ValueError):
    """What was typed is no length; the message says why, or is empty where it is plainly none."""


def typed_length(field: Field, words: str, unit: Unit) -> Decimal:
    """What a person typed for ``field`` [mm], exact, also where it is negative or absurd.

    ``unit`` is the sender's: it settles a bare number that could be either. Raises NoLength.
    """
    spelled = _plain_fractions(words).strip()
    if field == "wall" and _GAUGE.fullmatch(spelled):
        value = parse_field(field, spelled)
        if isinstance(value, Decimal):
            return value
        raise NoLength
    match = _NUMBER.fullmatch(spelled)
    if match is None:
        raise NoLength
    value = _value(match)
    written = (match["unit"] or "").strip().casefold()
    if not written:
        # Only inches are written as fractions.
        return to_mm(value, "in" if match["top"] else _likelier(field, value, unit))
    if written not in _UNITS:
        raise NoLength
    return to_mm(value, _UNITS[written] or written)


def _value(match: re.Match[str]) -> Decimal:
    if match["top"]:
        top, under = int(match["top"]), int(match["under"])
        if under not in (2, 4, 8, 16, 32, 64, 128):
            raise NoLength("fractions are written in halves, quarters ... 128ths")
        value = int(match["whole"] or 0) + Decimal(top) / under
    elif _THOUSANDS.fullmatch(match["decimal"]):
        raise NoLength("is that a decimal comma? Write a point")
    else:
        value = Decimal(match["decimal"].replace(",", "."))
    return tidy(-value if match["sign"] in ("-", "−") and value else value)


def _likelier(field: Field, value: Decimal, unit: Unit) -> Unit:
    """The unit of a bare number: the only one that makes a tube of it, else the sender's."""
    low, high = _LIKELY[field]
    units: tuple[Unit, ...] = ("in", "mm")
    fitting = [one for one in units if low <= abs(to_mm(value, one)) <= high]
    if not value or len(fitting) == len(units):
        return unit
    if not fitting:
        raise NoLength("write its unit, in or mm")
    return fitting[0]


def _plain_fractions(words: str) -> str:
    """``1½`` as ``1 1/2``."""
    return "".join(
        " " + unicodedata.normalize("NFKC", char).replace("\N{FRACTION SLASH}", "/")
        if unicodedata.decomposition(char).startswith("<fraction>")
        else char
        for char in words
    )
