"""How far a mandrel's nose is set past the tangent: a starting value only."""

from __future__ import annotations

from decimal import ROUND_HALF_UP, Decimal
from functools import lru_cache

from .tables import rows

_HUNDREDTH = Decimal("0.01")


def advance_max(*, clr_mm: Decimal, bore_mm: Decimal, radial_clearance_mm: Decimal) -> Decimal:
    """Furthest advance past the tangent: e = sqrt(2 (R + ID / 2) z - z^2).

    Symbols: e advance of the nose's shoulder, never of the balls [mm]; R centreline radius [mm];
    ID bore [mm]; z radial clearance between bore and mandrel [mm].
    Range: z above 0 and below ID/2, the mandrel in the middle of the bore; the
    result is kept to 0.01 mm.
    Source: geometry (Pythagoras; S01 names the method and prints no formula).

    Raises ValueError outside its range.

    >>> advance_max(clr_mm=Decimal("76.2"), bore_mm=Decimal("34.8"),
    ...             radial_clearance_mm=Decimal("0.125"))
    Decimal('4.84')
    """
    z = radial_clearance_mm
    if not 0 < 2 * z < bore_mm:
        raise ValueError(f"A radial clearance of {z} mm does not fit in a bore of {bore_mm} mm.")
    return _to_hundredth((2 * (clr_mm + bore_mm / 2) * z - z * z).sqrt())


def advance_advised(*, clr_mm: Decimal, bore_mm: Decimal, radial_clearance_mm: Decimal) -> Decimal:
    """Advance to start with: e = 2/3 sqrt(2 (R + ID / 2) z - z^2).

    Symbols: e advance of the nose's shoulder, never of the balls [mm]; R centreline radius [mm];
    ID bore [mm]; z radial clearance between bore and mandrel [mm].
    Range: as for the furthest advance.
    Source: S01 (two thirds of the furthest).

    Raises ValueError outside its range.

    >>> advance_advised(clr_mm=Decimal("76.2"), bore_mm=Decimal("34.8"),
    ...                 radial_clearance_mm=Decimal("0.125"))
    Decimal('3.22')
    """
    z = radial_clearance_mm
    if not 0 < 2 * z < bore_mm:
        raise ValueError(f"A radial clearance of {z} mm does not fit in a bore of {bore_mm} mm.")
    return _to_hundredth((2 * (clr_mm + bore_mm / 2) * z - z * z).sqrt() * 2 / 3)


@lru_cache(maxsize=256)
def advance_by_table(*, od_mm: Decimal) -> Decimal | None:
    """Advance past the tangent, a second opinion: e by OD alone.

    Symbols: e advance of the nose's shoulder [mm]; OD outside diameter, to the whole mm [mm].
    Range: OD of 6 to 152 mm.
    Source: set-up page of a maker of bending machines (S06); it looks at neither radius nor
    clearance.

    None outside its range.

    >>> advance_by_table(od_mm=Decimal(38))
    Decimal('5.5')
    """
    whole_mm = od_mm.quantize(Decimal(1), ROUND_HALF_UP)
    return next((mm for low, high, mm in _table() if low <= whole_mm <= high), None)


def _to_hundredth(value_mm: Decimal) -> Decimal:
    return value_mm.quantize(_HUNDREDTH, ROUND_HALF_UP)


@lru_cache(maxsize=1)
def _table() -> tuple[tuple[Decimal, Decimal, Decimal], ...]:
    return tuple(
        (Decimal(row["od_mm_from"]), Decimal(row["od_mm_to"]), Decimal(row["advance_mm"]))
        for row in rows("mandrel_advance.csv")
    )
