"""The tube itself: wall factor, bore, and each of OD, wall and bore from the other two.

Lengths are exact ``Decimal`` mm.
"""

from __future__ import annotations

from decimal import Decimal

from .units import tidy


class ImpossibleSize(ValueError):
    """Figures that no tube or bend can have; the message says which."""


def is_possible_wall(*, od_mm: Decimal, wall_mm: Decimal) -> bool:
    """Whether a round tube of ``od_mm`` [mm] can have ``wall_mm`` [mm]: 0 < wall < OD/2.

    Source: geometry; at OD/2 it is a solid bar.
    """
    return wall_mm > 0 and 2 * wall_mm < od_mm


def wall_factor(*, od_mm: Decimal, wall_mm: Decimal) -> Decimal:
    """Wall factor OD / wall [-] from OD [mm] and wall [mm].

    Exact where the ratio is a finite decimal (1.5 in / 0.05 in is exactly 30), else 28 digits:
    far finer than any two sizes can lie from a limit, so comparing with a limit is safe.
    Valid for any possible wall; raises ImpossibleSize otherwise.
    Source: trade definition, shared by all tooling makers' guides read (SOURCES.md, S07).

    >>> wall_factor(od_mm=Decimal("38.1"), wall_mm=Decimal("1.27"))
    Decimal('30')
    """
    _check_wall(od_mm, wall_mm)
    return tidy(od_mm / wall_mm)


def bore(*, od_mm: Decimal, wall_mm: Decimal) -> Decimal:
    """Inside diameter OD - 2 x wall [mm] from OD [mm] and wall [mm].

    Raises ImpossibleSize where no bore is left. Source: geometry.

    >>> bore(od_mm=Decimal(50), wall_mm=Decimal("1.5"))
    Decimal('47')
    """
    _check_wall(od_mm, wall_mm)
    return tidy(od_mm - 2 * wall_mm)


def wall_from_bore(*, od_mm: Decimal, bore_mm: Decimal) -> Decimal:
    """Wall (OD - bore) / 2 [mm] from OD [mm] and inside diameter [mm].

    Raises ImpossibleSize unless 0 < bore < OD. Source: geometry.
    """
    if not 0 < bore_mm < od_mm:
        raise ImpossibleSize(f"A bore of {bore_mm} mm does not fit in a tube of {od_mm} mm.")
    return tidy((od_mm - bore_mm) / 2)


def od_from_bore(*, bore_mm: Decimal, wall_mm: Decimal) -> Decimal:
    """Outside diameter bore + 2 x wall [mm] from inside diameter [mm] and wall [mm].

    Raises ImpossibleSize unless both are above 0. Source: geometry.
    """
    if bore_mm <= 0 or wall_mm <= 0:
        raise ImpossibleSize(
            f"A tube can't have a bore of {bore_mm} mm and a wall of {wall_mm} mm."
        )
    return tidy(bore_mm + 2 * wall_mm)


def _check_wall(od_mm: Decimal, wall_mm: Decimal) -> None:
    if not is_possible_wall(od_mm=od_mm, wall_mm=wall_mm):
        raise ImpossibleSize(f"A tube of {od_mm} mm OD can't have a wall of {wall_mm} mm.")
