"""The shelf: one row of catalogue.csv or dies.csv, and what makes such a row impossible."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from decimal import Decimal
from typing import Literal

from pydantic import Field, field_validator

from .mandrel import SURFACE_WORDS
from .request import Frozen
from .shop_fields import Count, Length, Line
from .units import BadLength, both_units, parse_length


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


def mandrel_faults(cells: Mapping[str, str]) -> Iterator[tuple[str, str]]:
    """What contradicts itself in a row of catalogue.csv: (column, sentence).

    Cells that are no length are left to the other checks; the rest are still compared.
    """
    od, diameter = _length(cells, "tube_od"), _length(cells, "mandrel_diameter")
    wall_min, wall_max = _length(cells, "tube_wall_min"), _length(cells, "tube_wall_max")
    clr_min, clr_max = _length(cells, "clr_min"), _length(cells, "clr_max")
    for column, wall in (("tube_wall_min", wall_min), ("tube_wall_max", wall_max)):
        if od and wall and 2 * wall >= od:
            share = "half" if 2 * wall == od else "more than half"
            yield column, f"{cells[column]} is {share} of the tube's OD {cells['tube_od']}"
    if wall_min and wall_max and wall_min > wall_max:
        text = f"{cells['tube_wall_min']} is more than tube_wall_max {cells['tube_wall_max']}"
        yield "tube_wall_min", text
    if od and wall_max and diameter and 0 < od - 2 * wall_max <= diameter:
        first: Literal["in", "mm"] = "mm" if "mm" in cells["tube_od"] else "in"
        bore = both_units(od - 2 * wall_max, first)
        text = f"{cells['mandrel_diameter']} does not go into the smallest bore, {bore}"
        yield "mandrel_diameter", text
    yield from _radius_faults(cells, ("clr_min", "clr_max"))
    if clr_min and clr_max and clr_min > clr_max:
        yield "clr_min", f"{cells['clr_min']} is more than clr_max {cells['clr_max']}"


def die_faults(cells: Mapping[str, str]) -> Iterator[tuple[str, str]]:
    """What contradicts itself in a row of dies.csv: (column, sentence)."""
    yield from _radius_faults(cells, ("clr",))


def _radius_faults(cells: Mapping[str, str], columns: tuple[str, ...]) -> Iterator[tuple[str, str]]:
    od = _length(cells, "tube_od")
    for column in columns:
        clr = _length(cells, column)
        if od and clr and 2 * clr <= od:
            text = f"{cells[column]} is not more than half of the tube's OD {cells['tube_od']}"
            yield column, text


def _length(cells: Mapping[str, str], column: str) -> Decimal | None:
    """A cell's length [mm]; None where it holds none, or nothing."""
    try:
        return parse_length(cells.get(column, ""))
    except BadLength:
        return None
