"""A figure without a unit that can only be meant in one: '38.1 x 3.0' beside a radius in inches.

A stock size in the one unit that in the other is no tube at all needs no question. A radius is of
any length, so that one without a unit of its own is asked about; but for pipe that is told by name
and schedule alone, of which no figure is in inches: '2" sch 40, R=200'.
"""

from __future__ import annotations

from decimal import Decimal

from ....rules.standards import is_standard_od, is_standard_wall
from .choices import Length
from .sizing import Sizing
from .values import Value

_INCH = Decimal("25.4")
_WIDEST, _NARROWEST = Decimal(330), Decimal(3)
"""No tube that is bent over a mandrel is wider or narrower [mm]."""
_LEAST_FACTOR, _MOST_FACTOR = Decimal("3.4"), Decimal(200)
"""OD over wall of any tube."""
_WIDEST_BEND = 20
"""No mandrel bends a pipe on so large a multiple of its OD (common practice, no source)."""
_SIDES_STEP = Decimal("0.125")
"""Sides of rectangular tube go by that [in]."""


def is_plainly_in(size: Sizing, field: Length) -> bool:
    """Whether a length without a unit is stock as read, and none in the other unit."""
    value = size.best.value(field)
    if value is None or not value.assumed or value.why or not value.system:
        return False
    if field == "clr":
        return _is_beside_names(size, value)
    missing = any(length is None for length in size.lengths.values())
    if missing and not (field == "wall" and _is_named_wall(size)):
        return False  # what is left out may be what this is
    if _differ(size.best.od, size.best.wall):
        return False  # "1.5 x 1.2, R 80 mm": one of the two may be a slip
    other = value.mm * _INCH if value.system == "mm" else value.mm / _INCH
    if field == "od":
        return _is_od(size, value, other)
    return field == "wall" and _is_wall(size, value, other)


def _is_beside_names(size: Sizing, radius: Value) -> bool:
    """Whether a radius in mm stands beside a pipe's name and schedule, and is none in inches."""
    od, walls = size.lengths["od"], size.slots.get("wall", [])
    named = bool(walls) and all(wall.unit == "sch" for wall in walls)
    if od is None or not named or radius.system != "mm" or radius.mm % 1:
        return False
    return radius.mm * _INCH > od * _WIDEST_BEND


def _is_named_wall(size: Sizing) -> bool:
    """'27.2 mm OD, .065 wall': beside an OD with its unit a wall by name is nothing else."""
    ods, walls = size.slots.get("od", []), size.slots.get("wall", [])
    with_unit = bool(ods) and ods[0].unit is not None
    return with_unit and bool(walls) and walls[0].how == "cue"


def _differ(od: Value | None, wall: Value | None) -> bool:
    """Whether OD and wall, both without a unit, are read in two."""
    if od is None or wall is None or not (od.assumed and wall.assumed):
        return False
    return od.system != wall.system


def _is_od(size: Sizing, value: Value, other: Decimal) -> bool:
    clr = size.lengths["clr"]
    radius = size.best.clr
    fixed = radius is not None and not radius.assumed and clr is not None and clr * 2 <= other
    return is_standard_od(value.mm) and (fixed or not _NARROWEST <= other <= _WIDEST)


def _is_wall(size: Sizing, value: Value, other: Decimal) -> bool:
    od, tube = size.lengths["od"], size.best.od
    figures = size.slots.get("wall", [])
    if od is None or tube is None or not figures or not is_standard_wall(value.mm):
        return False
    figure = figures[0]
    named = figure.how in ("cue", "sign", "header", "table")
    no_side = figure.number.value % _SIDES_STEP != 0
    as_written = figure.number.style == "decimal" and (named or no_side)
    with_od = tube.assumed and tube.system == value.system and is_plainly_in(size, "od")
    if not (as_written or with_od):
        return False  # '2" OD, 2 wall' may be any slip, '2" x 1.5' two sides
    return not _LEAST_FACTOR <= od / other <= _MOST_FACTOR
