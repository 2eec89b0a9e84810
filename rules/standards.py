"""Which sizes are made: gauges, pipe, trade sizes, and the standard ODs and walls of tube.

One door to ``gauges`` and ``pipe``. The reader weighs readings by these tables ('48.3 is a pipe,
38 x 1.5 a metric tube'); they never limit what a customer may ask for.
"""

from __future__ import annotations

from decimal import Decimal
from functools import lru_cache

from .gauges import awg_mm, bwg_mm, bwg_of, stainless_sheet_mm, steel_sheet_mm, swg_mm
from .pipe import (
    NPS_SIZES,
    copper_trade_of_od,
    copper_tube_od_mm,
    copper_tube_wall_mm,
    emt_od_mm,
    is_pipe_wall,
    iso_od_mm,
    nps_of_dn,
    nps_of_inches,
    nps_of_od,
    pipe_od_mm,
    pipe_ods_mm,
    pipe_wall_mm,
    pipe_walls_mm,
)
from .tables import rows
from .units import MM_PER_INCH, tidy

__all__ = [
    "BWG_GAUGES",
    "NPS_SIZES",
    "STANDARD_ODS_IN",
    "STANDARD_ODS_MM",
    "awg_mm",
    "bwg_mm",
    "bwg_of",
    "copper_trade_of_od",
    "copper_tube_od_mm",
    "copper_tube_wall_mm",
    "emt_od_mm",
    "is_pipe_wall",
    "is_standard_od",
    "is_standard_wall",
    "iso_od_mm",
    "nps_of_dn",
    "nps_of_inches",
    "nps_of_od",
    "pipe_od_mm",
    "pipe_ods_mm",
    "pipe_wall_mm",
    "pipe_walls_mm",
    "stainless_sheet_mm",
    "steel_sheet_mm",
    "swg_mm",
]

BWG_GAUGES: tuple[str, ...] = ("0000", "000", "00", *(str(number) for number in range(31)))


def _stock(name: str, unit: str) -> frozenset[Decimal]:
    return frozenset(tidy(Decimal(row["value"])) for row in rows(name) if row["unit"] == unit)


STANDARD_ODS_IN: frozenset[Decimal] = _stock("stock_od.csv", "in")
"""Tube ODs in common inch stock [in]. Source: stock_od.csv (from memory)."""
STANDARD_ODS_MM: frozenset[Decimal] = _stock("stock_od.csv", "mm")
"""Tube ODs in common metric stock [mm]. Source: stock_od.csv (EN 10305 / EN 10220)."""


def is_standard_od(mm: Decimal) -> bool:
    """Whether ``mm`` [mm] is an OD in common stock: inch, metric or pipe.

    An inch or pipe OD also counts rounded to 0.1 or 0.01 mm, as customers write it (60.3, 31.75).
    """
    return tidy(mm) in _ods()


def is_standard_wall(mm: Decimal) -> bool:
    """Whether ``mm`` [mm] is a wall in common stock: BWG, inch, metric or pipe.

    An inch wall also counts rounded to 0.01 mm, as customers write it (1.65 for 16 gauge).
    """
    return tidy(mm) in _walls()


@lru_cache(maxsize=1)
def _ods() -> frozenset[Decimal]:
    exact = {tidy(inches * MM_PER_INCH) for inches in STANDARD_ODS_IN} | pipe_ods_mm()
    return frozenset(exact | _rounded(exact, "0.01") | _rounded(exact, "0.1") | STANDARD_ODS_MM)


@lru_cache(maxsize=1)
def _walls() -> frozenset[Decimal]:
    gauges = {wall for wall in map(bwg_mm, BWG_GAUGES) if wall is not None}
    inch = {tidy(value * MM_PER_INCH) for value in _stock("stock_wall.csv", "in")}
    exact = gauges | inch | pipe_walls_mm()
    return frozenset(exact | _rounded(exact, "0.01") | _stock("stock_wall.csv", "mm"))


def _rounded(values: set[Decimal] | frozenset[Decimal], step: str) -> set[Decimal]:
    return {tidy(value.quantize(Decimal(step))) for value in values}
