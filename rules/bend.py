"""The bend: D of bend, every way of giving a radius turned into the centreline radius (CLR).

Lengths are exact ``Decimal`` mm.
"""

from __future__ import annotations

from decimal import Decimal
from typing import Self

from pydantic import ConfigDict, model_validator

from .lazy import lazy
from .request import Frozen, Material
from .tube import ImpossibleSize, bore, is_possible_wall, wall_factor
from .units import tidy

__all__ = [
    "BendSpec",
    "ImpossibleSize",
    "clr_from_d",
    "clr_from_inside_radius",
    "clr_from_outside_radius",
    "d_of_bend",
    "is_possible_clr",
    "is_possible_wall",
]


def is_possible_clr(*, od_mm: Decimal, clr_mm: Decimal) -> bool:
    """Whether a tube of ``od_mm`` [mm] can be bent to ``clr_mm`` [mm]: CLR > OD/2.

    Source: geometry; at OD/2 the inside radius is nothing.
    """
    return od_mm > 0 and 2 * clr_mm > od_mm


def d_of_bend(*, clr_mm: Decimal, od_mm: Decimal) -> Decimal:
    """D of bend: k = CLR / OD.

    Symbols: k D of bend [-]; CLR centreline radius [mm]; OD outside diameter [mm].
    Range: CLR above OD/2.
    Source: trade definition (S07, S10).

    Raises ImpossibleSize outside its range.
    Exact where the ratio is a finite decimal, else 28 digits (see ``tube.wall_factor``).

    >>> d_of_bend(clr_mm=Decimal("101.6"), od_mm=Decimal("50.8"))
    Decimal('2')
    """
    if not is_possible_clr(od_mm=od_mm, clr_mm=clr_mm):
        raise ImpossibleSize(f"A tube of {od_mm} mm OD can't be bent to a CLR of {clr_mm} mm.")
    return tidy(clr_mm / od_mm)


def clr_from_inside_radius(*, inside_radius_mm: Decimal, od_mm: Decimal) -> Decimal:
    """CLR from the inside radius: CLR = Ri + OD / 2.

    Symbols: CLR centreline radius [mm]; Ri inside radius [mm]; OD outside diameter [mm].
    Range: Ri and OD above 0.
    Source: geometry.

    Raises ImpossibleSize outside its range.

    >>> clr_from_inside_radius(inside_radius_mm=Decimal(50), od_mm=Decimal(30))
    Decimal('65')
    """
    if inside_radius_mm <= 0 or od_mm <= 0:
        raise ImpossibleSize(
            f"No tube of {od_mm} mm has an inside radius of {inside_radius_mm} mm."
        )
    return tidy(inside_radius_mm + od_mm / 2)


def clr_from_outside_radius(*, outside_radius_mm: Decimal, od_mm: Decimal) -> Decimal:
    """CLR from the outside radius: CLR = Ro - OD / 2.

    Symbols: CLR centreline radius [mm]; Ro outside radius [mm]; OD outside diameter [mm].
    Range: Ro above OD (else nothing is left inside).
    Source: geometry.

    Raises ImpossibleSize outside its range.

    >>> clr_from_outside_radius(outside_radius_mm=Decimal(80), od_mm=Decimal(30))
    Decimal('65')
    """
    if od_mm <= 0 or outside_radius_mm <= od_mm:
        raise ImpossibleSize(
            f"A tube of {od_mm} mm OD can't have an outside radius of {outside_radius_mm} mm."
        )
    return tidy(outside_radius_mm - od_mm / 2)


def clr_from_d(*, n: Decimal, od_mm: Decimal) -> Decimal:
    """CLR from the D of bend: CLR = n x OD.

    Symbols: CLR centreline radius [mm]; n D of bend, 2 for '2D' [-]; OD outside diameter [mm].
    Range: n above 0.5, OD above 0.
    Source: definition; for pipe some count D as the nominal size (S11, S25, S26), which the reader
        doubts.

    Raises ImpossibleSize outside its range.

    >>> clr_from_d(n=Decimal(2), od_mm=Decimal("60.325"))
    Decimal('120.65')
    """
    clr_mm = n * od_mm
    if not is_possible_clr(od_mm=od_mm, clr_mm=clr_mm):
        raise ImpossibleSize(f"A tube of {od_mm} mm OD can't be bent to {n} D.")
    return tidy(clr_mm)


class BendSpec(Frozen):
    """A complete, possible bend. Lengths in mm, exact.

    Refuses (ValidationError) a wall of OD/2 or more and a CLR of OD/2 or less.
    """

    model_config = ConfigDict(ignored_types=(lazy,))

    od_mm: Decimal
    wall_mm: Decimal
    clr_mm: Decimal
    material: Material | None = None

    @model_validator(mode="after")
    def _is_possible(self) -> Self:
        if not is_possible_wall(od_mm=self.od_mm, wall_mm=self.wall_mm):
            raise ImpossibleSize(
                f"A tube of {self.od_mm} mm OD can't have a wall of {self.wall_mm} mm."
            )
        if not is_possible_clr(od_mm=self.od_mm, clr_mm=self.clr_mm):
            raise ImpossibleSize(
                f"A tube of {self.od_mm} mm OD can't be bent to a CLR of {self.clr_mm} mm."
            )
        return self

    @lazy
    def wall_factor(self) -> Decimal:
        """OD / wall [-]."""
        return wall_factor(od_mm=self.od_mm, wall_mm=self.wall_mm)

    @lazy
    def d_of_bend(self) -> Decimal:
        """CLR / OD [-]."""
        return d_of_bend(clr_mm=self.clr_mm, od_mm=self.od_mm)

    @property
    def bore_mm(self) -> Decimal:
        """Inside diameter [mm]."""
        return bore(od_mm=self.od_mm, wall_mm=self.wall_mm)
