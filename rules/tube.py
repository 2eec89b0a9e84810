"""The tube itself: wall factor, bore, and each of OD, wall and bore from the other two.

Lengths are exact ``Decimal`` mm.
"""

from __future__ import annotations

from decimal import Decimal

from .units import tidy

SAME_SIZE_MM = Decimal("0.05")
"""ODs and CLRs this close are one size: half of the 0.1 mm to which customers round (48.26 in a US
table is 48.3 in a European one, 31.75 is written 31.8). 38 and 38.1 stay two."""
SAME_WALL_MM = Decimal("0.005")
"""Walls are rounded to 0.01 mm at most: 16 gauge is 1.651 and is written 1.65."""


class ImpossibleSize(ValueError):
    """Figures that no tube or bend can have; the message says which."""


def is_possible_wall(*, od_mm: Decimal, wall_mm: Decimal) -> bool:
    """Whether a round tube of ``od_mm`` [mm] can have ``wall_mm`` [mm]: 0 < wall < OD/2.

    Source: geometry; at OD/2 it is a solid bar.
    """
    return wall_mm > 0 and 2 * wall_mm < od_mm


def wall_factor(*, od_mm: Decimal, wall_mm: Decimal) -> Decimal:
    """Wall factor: WF = OD / t.

    Symbols: WF wall factor [-]; OD outside diameter [mm]; t wall [mm].
    Range: t above 0 and below OD/2.
    Source: trade definition, shared by all tooling makers' guides read (S07).

    Raises ImpossibleSize outside its range.
    Exact where the ratio is a finite decimal (1.5 in / 0.05 in is exactly 30), else 28 digits:
    far finer than any two sizes can lie from a limit, so comparing with a limit is safe.

    >>> wall_factor(od_mm=Decimal("38.1"), wall_mm=Decimal("1.27"))
    Decimal('30')
    """
    _check_wall(od_mm, wall_mm)
    return tidy(od_mm / wall_mm)


def bore(*, od_mm: Decimal, wall_mm: Decimal) -> Decimal:
    """Bore, nominal: ID = OD - 2 x t.

    Symbols: ID inside diameter [mm]; OD outside diameter [mm]; t wall [mm].
    Range: t above 0 and below OD/2.
    Source: geometry.

    Raises ImpossibleSize outside its range.

    >>> bore(od_mm=Decimal(50), wall_mm=Decimal("1.5"))
    Decimal('47')
    """
    _check_wall(od_mm, wall_mm)
    return tidy(od_mm - 2 * wall_mm)


def wall_from_bore(*, od_mm: Decimal, bore_mm: Decimal) -> Decimal:
    """Wall from the bore: t = (OD - ID) / 2.

    Symbols: t wall [mm]; OD outside diameter [mm]; ID inside diameter [mm].
    Range: ID above 0 and below OD.
    Source: geometry.

    Raises ImpossibleSize outside its range.

    >>> wall_from_bore(od_mm=Decimal(50), bore_mm=Decimal(47))
    Decimal('1.5')
    """
    if not 0 < bore_mm < od_mm:
        raise ImpossibleSize(f"A bore of {bore_mm} mm does not fit in a tube of {od_mm} mm.")
    return tidy((od_mm - bore_mm) / 2)


def od_from_bore(*, bore_mm: Decimal, wall_mm: Decimal) -> Decimal:
    """OD from the bore: OD = ID + 2 x t.

    Symbols: OD outside diameter [mm]; ID inside diameter [mm]; t wall [mm].
    Range: ID and t above 0.
    Source: geometry.

    Raises ImpossibleSize outside its range.

    >>> od_from_bore(bore_mm=Decimal(47), wall_mm=Decimal("1.5"))
    Decimal('50')
    """
    if bore_mm <= 0 or wall_mm <= 0:
        raise ImpossibleSize(
            f"A tube can't have a bore of {bore_mm} mm and a wall of {wall_mm} mm."
        )
    return tidy(bore_mm + 2 * wall_mm)


def _check_wall(od_mm: Decimal, wall_mm: Decimal) -> None:
    if not is_possible_wall(od_mm=od_mm, wall_mm=wall_mm):
        raise ImpossibleSize(f"A tube of {od_mm} mm OD can't have a wall of {wall_mm} mm.")
