"""The shelf: one row of catalogue.csv or dies.csv, and what makes such a row impossible."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Literal

from pydantic import Field, field_validator

from .mandrel import SURFACE_WORDS
from .request import Frozen
from .shop_fields import Count, Length, Line
from .units import both_units


class CatalogueMandrel(Frozen):
    """A mandrel of the catalogue: one row of catalogue.csv. Lengths in mm."""

    part: Line
    tube_od_mm: Length = Field(alias="tube_od")
    tube_wall_min_mm: Length = Field(alias="tube_wall_min")
    tube_wall_max_mm: Length = Field(alias="tube_wall_max")
    mandrel_diameter_mm: Length = Field(alias="mandrel_diameter")
    balls: Count
    surface: str
    clr_min_mm: Length = Field(alias="clr_min")
    clr_max_mm: Length = Field(alias="clr_max")
    on_hand: Count
    price: Line | None = None

    @field_validator("surface")
    @classmethod
    def _known_surface(cls, value: str) -> str:
        known = SURFACE_WORDS.get(value.casefold())
        if known is None:
            names = " or ".join(sorted(set(SURFACE_WORDS.values())))
            raise ValueError(f"{value!r} is not a surface we know: write {names}")
        return known


class Die(Frozen):
    """A bend die: one row of dies.csv. Lengths in mm."""

    part: Line
    tube_od_mm: Length = Field(alias="tube_od")
    clr_mm: Length = Field(alias="clr")
    on_hand: Count


def mandrel_faults(row: CatalogueMandrel, cells: Mapping[str, str]) -> Iterator[tuple[str, str]]:
    """What contradicts itself in a row: (column, sentence), in the words of its ``cells``."""
    od = f"the tube's OD {cells['tube_od']}"
    half_od_mm = row.tube_od_mm / 2
    for column, wall_mm in (
        ("tube_wall_min", row.tube_wall_min_mm),
        ("tube_wall_max", row.tube_wall_max_mm),
    ):
        if wall_mm >= half_od_mm:
            share = "half" if wall_mm == half_od_mm else "more than half"
            yield column, f"{cells[column]} is {share} of {od}"
    if row.tube_wall_min_mm > row.tube_wall_max_mm:
        text = f"{cells['tube_wall_min']} is more than tube_wall_max {cells['tube_wall_max']}"
        yield "tube_wall_min", text
    bore_mm = row.tube_od_mm - 2 * row.tube_wall_max_mm
    if 0 < bore_mm <= row.mandrel_diameter_mm:
        first: Literal["in", "mm"] = "mm" if "mm" in cells["tube_od"] else "in"
        bore = both_units(bore_mm, first)
        text = f"{cells['mandrel_diameter']} does not go into the smallest bore, {bore}"
        yield "mandrel_diameter", text
    for column, clr_mm in (("clr_min", row.clr_min_mm), ("clr_max", row.clr_max_mm)):
        if clr_mm <= half_od_mm:
            yield column, f"{cells[column]} is not more than half of {od}"
    if row.clr_min_mm > row.clr_max_mm:
        yield "clr_min", f"{cells['clr_min']} is more than clr_max {cells['clr_max']}"


def die_faults(row: Die, cells: Mapping[str, str]) -> Iterator[tuple[str, str]]:
    """What contradicts itself in a row: (column, sentence)."""
    if 2 * row.clr_mm <= row.tube_od_mm:
        yield "clr", f"{cells['clr']} is not more than half of the tube's OD {cells['tube_od']}"
