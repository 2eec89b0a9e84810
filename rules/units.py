"""Lengths: exact conversion to mm, and how a length is written for people.

All lengths inside the program are exact ``Decimal`` mm. An inch is 25.4 mm by definition
(international yard and pound agreement, 1959), so every fraction of an inch down to 1/128 and
every gauge is a finite decimal.
"""

from __future__ import annotations

import re
from decimal import ROUND_HALF_UP, Decimal, localcontext
from functools import lru_cache
from typing import TYPE_CHECKING, Literal

if TYPE_CHECKING:
    from pint import UnitRegistry

MM_PER_INCH = Decimal("25.4")

# Everyday units stand here so that reading a message need not load pint (150 ms); a test holds
# each of them to pint. Marks for inch and foot are what shop files and customers write.
_MM_PER: dict[str, Decimal] = {
    "mm": Decimal(1),
    "millimetre": Decimal(1),
    "millimeter": Decimal(1),
    "cm": Decimal(10),
    "centimetre": Decimal(10),
    "centimeter": Decimal(10),
    "dm": Decimal(100),
    "m": Decimal(1000),
    "metre": Decimal(1000),
    "meter": Decimal(1000),
    "in": MM_PER_INCH,
    "inch": MM_PER_INCH,
    "inches": MM_PER_INCH,
    '"': MM_PER_INCH,
    "ft": 12 * MM_PER_INCH,
    "foot": 12 * MM_PER_INCH,
    "feet": 12 * MM_PER_INCH,
    "'": 12 * MM_PER_INCH,
    "thou": MM_PER_INCH / 1000,
    "mil": MM_PER_INCH / 1000,
    "mils": MM_PER_INCH / 1000,
    "µm": Decimal("0.001"),
    "um": Decimal("0.001"),
}


class UnknownUnit(ValueError):
    """A unit that nobody defines, or that is no length."""


class BadLength(ValueError):
    """A length in a shop file that can't be used; the message says why."""


def to_mm(value: Decimal, unit: str) -> Decimal:
    """``value`` of ``unit`` in mm [mm], exact.

    Only numbers already read come here: pint never sees a customer's figures, because it reads
    '38,1 mm' as 381 mm and '1 1/2 in' as half an inch.

    Raises UnknownUnit for a unit that nobody defines or that is no length.
    Source: inch as defined in 1959; other units as pint defines them.

    >>> to_mm(Decimal("1.75"), "in")
    Decimal('44.45')
    """
    return tidy(value * _mm_per(unit.strip()))


def _mm_per(unit: str) -> Decimal:
    factor = _MM_PER.get(unit) or _MM_PER.get(unit.lower())
    return factor if factor is not None else _mm_per_by_pint(unit)


@lru_cache(maxsize=256)
def _mm_per_by_pint(unit: str) -> Decimal:
    import pint

    # Letters only: pint evaluates what it is given, and '9**9**9 mm' would never come back.
    if not unit.replace("_", "").isalpha() or len(unit) > 40:
        raise UnknownUnit(f"{unit!r} is not a unit of length.")
    try:
        return Decimal(_registry().Quantity(Decimal(1), unit).to("mm").magnitude)
    except (pint.PintError, ArithmeticError, AttributeError) as error:
        raise UnknownUnit(f"{unit!r} is not a unit of length.") from error


@lru_cache(maxsize=1)
def _registry() -> UnitRegistry[Decimal]:
    import pint

    # Without its cache on disk: that remembers where pint lay when it was written, and fails
    # where another installation has been removed since. Rare units cost 0.3 s once a run instead.
    return pint.UnitRegistry(non_int_type=Decimal)


def tidy(d: Decimal) -> Decimal:
    """The same value without trailing zeros or exponent: 44.450 -> 44.45, 1E+2 -> 100.

    Stored sizes go through here, or 44.45 and 44.450 would be counted as two sizes.
    """
    if not d.is_finite():
        return d
    text = format(d, "f")
    if "." in text:
        text = text.rstrip("0").rstrip(".")
    return Decimal("0") if text in ("-0", "") else Decimal(text)


_WRITTEN = re.compile(
    r"""(?: (?P<whole>\d{1,6})(?:\s?-\s?|\s{1,2}) (?P<top>\d{1,3})/(?P<under>\d{1,3})
          | (?P<numer>\d{1,3})/(?P<denom>\d{1,3})
          | (?P<decimal>\d{1,9}(?:\.\d{0,9})?|\.\d{1,9}) )
        \s{0,3} (?P<unit>[^\W\d_]{1,20}|"|')? \.?""",
    re.VERBOSE,
)


def parse_length(text: str) -> Decimal:
    """A length as shop files write it [mm]: '1.75 in', '1-3/4 in', '38 mm', '0.25mm'.

    Raises BadLength, in one sentence, for a number without a unit, a decimal comma, anything that
    is no length, and a fraction that is not exact (1/3 in).

    >>> parse_length("1-3/4 in")
    Decimal('44.45')
    """
    written = text.strip()
    match = _WRITTEN.fullmatch(written)
    if match is None:
        if re.search(r"\d,\d", written):
            raise BadLength(
                f"{written!r} has a comma: write decimals with a point, e.g. '38.1 mm'."
            )
        raise BadLength(
            f"{written!r} is not a length: write e.g. '1.75 in', '1-3/4 in' or '38 mm'."
        )
    if match["unit"] is None:
        raise BadLength(f"{written!r} has no unit: write '{written} in' or '{written} mm'.")
    try:
        return to_mm(_value(match, written), match["unit"])
    except UnknownUnit as error:
        raise BadLength(f"{written!r}: {error}") from error


def _value(match: re.Match[str], written: str) -> Decimal:
    if match["decimal"] is not None:
        return Decimal(match["decimal"])
    top = int(match["top"] or match["numer"])
    under = int(match["under"] or match["denom"])
    if under not in (2, 4, 8, 16, 32, 64, 128):
        raise BadLength(f"{written!r}: fractions are written in halves, quarters ... 64ths.")
    return int(match["whole"] or 0) + Decimal(top) / under


def format_in(mm: Decimal, *, wall: bool = False) -> str:
    """A length of ``mm`` [mm] as inches: at most four decimals, '1.75'.

    ``wall`` keeps at least three decimals, as the trade writes walls: '0.120'.

    >>> format_in(Decimal("44.45")), format_in(Decimal("3.048"), wall=True)
    ('1.75', '0.120')
    """
    return _rounded(mm / MM_PER_INCH, most=4, least=3 if wall else 0)


def format_mm(mm: Decimal) -> str:
    """A length of ``mm`` [mm] with at most three decimals: '44.45', '1.245'."""
    return _rounded(mm, most=3, least=0)


@lru_cache(maxsize=4096)
def both_units(mm: Decimal, first: Literal["in", "mm"], *, wall: bool = False) -> str:
    """A length in both units, the sender's own first: '1.75 in (44.45 mm)', '38 mm (1.496 in)'.

    An inch value in brackets is a conversion: it gets three decimals unless four are exact.
    """
    if first == "in":
        return f"{format_in(mm, wall=wall)} in ({format_mm(mm)} mm)"
    return f"{format_mm(mm)} mm ({converted_in(mm, wall=wall)} in)"


def converted_in(mm: Decimal, *, wall: bool = False) -> str:
    """A metric length as inches: three decimals unless four are exact, '1.496' for 38 mm."""
    inches = mm / MM_PER_INCH
    exact = inches == inches.quantize(Decimal("0.0001"))
    return _rounded(inches, most=4 if exact else 3, least=3 if wall else 0)


def _rounded(value: Decimal, *, most: int, least: int) -> str:
    with localcontext() as context:
        context.prec = 60  # so that no length, however absurd, is too long to be rounded
        text = format(value.quantize(Decimal(1).scaleb(-most), ROUND_HALF_UP), "f")
    whole, _, decimals = text.partition(".")
    decimals = decimals.rstrip("0").ljust(least, "0")
    return f"{whole}.{decimals}" if decimals else whole
