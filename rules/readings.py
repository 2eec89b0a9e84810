"""Every way to read one request: each doubt settled each way, all combined."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from decimal import Decimal
from itertools import product
from math import prod
from typing import Any, TypeVar, cast

from .bend import BendSpec, is_possible_clr, is_possible_wall
from .request import LENGTH_FIELDS, Doubt, FieldName, Material, Shape, SizeRequest

MOST_READINGS = 64
"""Above this many combinations nothing is worked out: too much is in doubt, a person asks."""

T = TypeVar("T")

READ_FIELDS: tuple[FieldName, ...] = ("shape", "od", "wall", "clr", "material", "quantity")
"""The fields that a decision can hang on, in the order of Reading. A doubtful date changes none."""


@dataclass(frozen=True, slots=True)
class Reading:
    """One way to read a request. Lengths in mm; None is 'not given'."""

    shape: Shape
    od_mm: Decimal | None
    wall_mm: Decimal | None
    clr_mm: Decimal | None
    material: Material | None
    quantity: int | None

    @property
    def lengths_mm(self) -> tuple[Decimal | None, Decimal | None, Decimal | None]:
        """OD, wall, CLR."""
        return self.od_mm, self.wall_mm, self.clr_mm

    @property
    def possible_wall(self) -> bool:
        """False only where OD and wall contradict each other."""
        if self.od_mm is None or self.wall_mm is None:
            return True
        return is_possible_wall(od_mm=self.od_mm, wall_mm=self.wall_mm)

    @property
    def possible_clr(self) -> bool:
        """False only where OD and CLR contradict each other."""
        if self.od_mm is None or self.clr_mm is None:
            return True
        return is_possible_clr(od_mm=self.od_mm, clr_mm=self.clr_mm)

    @property
    def can_be(self) -> bool:
        """Whether a tube and bend of these figures can exist, as far as they are given."""
        return (
            all(length is None or length > 0 for length in self.lengths_mm)
            and self.possible_wall
            and self.possible_clr
        )

    @property
    def spec(self) -> BendSpec | None:
        """The complete, possible round bend, or None."""
        if self.od_mm is None or self.wall_mm is None or self.clr_mm is None:
            return None
        if self.shape is not Shape.ROUND or not self.can_be:
            return None
        return BendSpec(
            od_mm=self.od_mm, wall_mm=self.wall_mm, clr_mm=self.clr_mm, material=self.material
        )


def stated_reading(request: SizeRequest) -> Reading:
    """The request as read, doubts left aside."""
    return Reading(
        shape=request.shape,
        od_mm=request.od_mm,
        wall_mm=request.wall_mm,
        clr_mm=request.clr_mm,
        material=request.material,
        quantity=request.quantity,
    )


def all_readings(request: SizeRequest, stated: Reading | None = None) -> tuple[Reading, ...] | None:
    """Every combination of the doubtful readings, the stated one first; None if too many.

    A combination that no tube can have (wall of OD/2 and more) is no reading and is left out,
    unless nothing else remains. ``stated`` is ``stated_reading``'s, where it is at hand.
    """
    if not request.doubts:
        return (stated or stated_reading(request),)
    axes = (
        tuple(dict.fromkeys((request.shape, *_read(request.doubt_on("shape"), _as_shape)))),
        *(
            _options(request.length_mm(field), request.doubt_on(field), _as_length)
            for field in LENGTH_FIELDS
        ),
        _options(request.material, request.doubt_on("material"), _as_material),
        _options(request.quantity, request.doubt_on("quantity"), _as_count),
    )
    if prod(map(len, axes)) > MOST_READINGS:
        return None
    # product() can't tell the checker that each axis keeps its own type.
    readings = tuple(Reading(*cast(Any, values)) for values in product(*axes))
    return tuple(r for r in readings if r.can_be) or readings


def _options(
    stated: T | None, doubt: Doubt | None, convert: Callable[[str | Decimal], T | None]
) -> tuple[T | None, ...]:
    readings = _read(doubt, convert)
    if stated is None and len(set(readings)) > 1:  # one of these is meant, though not which
        return tuple(dict.fromkeys(readings))
    return tuple(dict.fromkeys((stated, *readings)))


def _read(doubt: Doubt | None, convert: Callable[[str | Decimal], T]) -> tuple[T, ...]:
    return tuple(map(convert, doubt.readings)) if doubt else ()


def _as_length(reading: str | Decimal) -> Decimal | None:
    return reading if isinstance(reading, Decimal) else None


def _as_shape(reading: str | Decimal) -> Shape:
    return next((shape for shape in Shape if shape == reading), Shape.OTHER)


def _as_material(reading: str | Decimal) -> Material | None:
    # A word that names no family leaves the material unknown, which may be asked.
    return next((material for material in Material if material == reading), None)


def _as_count(reading: str | Decimal) -> int | None:
    text = str(reading).strip()
    return int(text) if text.isascii() and text.isdigit() and len(text) < 10 else None
