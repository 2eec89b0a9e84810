"""Gauge numbers. One column, in inches, is authoritative for each system; mm is derived.

On tube a bare gauge is BWG; the others are here for senders who say otherwise.
"""

from __future__ import annotations

from decimal import Decimal
from functools import lru_cache

from .tables import rows
from .units import MM_PER_INCH, tidy


def bwg_mm(gauge: str) -> Decimal | None:
    """Birmingham wire gauge, the gauge of tube walls [mm]; None outside the table (4/0 to 30).

    ``gauge`` is '16', '00' or '2/0'. Source: gauges.csv (S39; agrees with PyPI fluids).

    >>> bwg_mm("16")
    Decimal('1.651')
    """
    return _column("bwg_in").get(_plain(gauge))


def swg_mm(gauge: str) -> Decimal | None:
    """British standard wire gauge [mm]; None outside the table (0 to 30).

    Source: gauges.csv (agrees with PyPI fluids).
    """
    return _column("swg_in").get(_plain(gauge))


def steel_sheet_mm(gauge: str) -> Decimal | None:
    """Manufacturers' standard gauge of steel sheet [mm]; None outside the table (3 to 30).

    Source: gauges.csv; the tests derive each value from the weight that defines the gauge.
    """
    return _column("steel_sheet_in").get(_plain(gauge))


def stainless_sheet_mm(gauge: str) -> Decimal | None:
    """US standard gauge of stainless sheet [mm]; None outside the table (7 to 26).

    Source: gauges.csv; the tests derive each value from the weight that defines the gauge.
    """
    return _column("stainless_sheet_in").get(_plain(gauge))


def awg_mm(gauge: str) -> Decimal | None:
    """American wire gauge, of wire and non-ferrous sheet [mm]; None outside the table (0 to 30).

    Source: gauges.csv; the tests derive each value from the formula that defines the gauge.
    """
    return _column("awg_in").get(_plain(gauge))


def bwg_of(wall_mm: Decimal) -> str | None:
    """The BWG number whose wall is exactly ``wall_mm`` [mm], or None."""
    return _bwg_by_wall().get(tidy(wall_mm))


def _plain(gauge: str) -> str:
    """'2/0' -> '00', as the table writes it."""
    text = gauge.strip()
    if len(text) == 3 and text.endswith("/0") and text[0] in "1234":
        return "0" * int(text[0])
    return text


@lru_cache(maxsize=1)
def _table() -> tuple[dict[str, str], ...]:
    return rows("gauges.csv")


@lru_cache(maxsize=8)
def _column(name: str) -> dict[str, Decimal]:
    return {row["gauge"]: tidy(Decimal(row[name]) * MM_PER_INCH) for row in _table() if row[name]}


@lru_cache(maxsize=1)
def _bwg_by_wall() -> dict[Decimal, str]:
    return {wall: gauge for gauge, wall in _column("bwg_in").items()}
