"""The bore a mandrel has to go into: the smallest and the largest that a tube's make allows.

Formulas first, each for one way in which a standard fixes the bore; ``bore_range`` puts them
together for a tube. Lengths are exact ``Decimal`` mm.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from functools import lru_cache
from typing import Literal

from .tolerances import Tolerance, TubeMake, makes, tolerance_of
from .tube import ImpossibleSize, bore
from .units import MM_PER_INCH, tidy

LARGEST_FLASH_MM = Decimal(3) / 32 * MM_PER_INCH
"""Inside flash of ERW tube that is not controlled: at most 3/32 in (S30)."""
CONTROLLED_FLASH_MM = Decimal("0.010") * MM_PER_INCH
_BEAD_COUNTED = ("erw-flash-in", "erw-flash-005", "erw-flash-010")


def smallest_bore(
    *, od_mm: Decimal, wall_mm: Decimal, od_minus_mm: Decimal, wall_plus_mm: Decimal
) -> Decimal:
    """Smallest bore: ID = (OD - d) - 2 (t + w).

    Symbols: ID bore [mm]; OD outside diameter [mm]; d its minus tolerance [mm]; t wall [mm]; w its
    plus tolerance [mm].
    Range: any size that leaves a bore.
    Source: geometry; the tolerances are those of the tube's standard.

    Raises ImpossibleSize outside its range.

    >>> smallest_bore(od_mm=Decimal(50), wall_mm=Decimal("1.5"),
    ...               od_minus_mm=Decimal("0.375"), wall_plus_mm=Decimal("0.2"))
    Decimal('46.225')
    """
    return bore(od_mm=od_mm - od_minus_mm, wall_mm=wall_mm + wall_plus_mm)


def largest_bore(
    *, od_mm: Decimal, wall_mm: Decimal, od_plus_mm: Decimal, wall_minus_mm: Decimal
) -> Decimal:
    """Largest bore: ID = (OD + d) - 2 (t - w).

    Symbols: ID bore [mm]; OD outside diameter [mm]; d its plus tolerance [mm]; t wall [mm]; w its
    minus tolerance [mm].
    Range: w below t.
    Source: geometry; the tolerances are those of the tube's standard.

    Raises ImpossibleSize outside its range.

    >>> largest_bore(od_mm=Decimal(50), wall_mm=Decimal("1.5"),
    ...              od_plus_mm=Decimal("0.375"), wall_minus_mm=Decimal("0.2"))
    Decimal('47.775')
    """
    return bore(od_mm=od_mm + od_plus_mm, wall_mm=wall_mm - wall_minus_mm)


def flash_in_bead(*, wall_mm: Decimal) -> Decimal:
    """Inside flash of ERW tube, left in: b = the lesser of t and 3/32 in.

    Symbols: b height of the bead, at most [mm]; t wall [mm].
    Range: t above 0.
    Source: ASTM A513 Type 2, distributor table (S30).

    Raises ImpossibleSize outside its range.

    >>> flash_in_bead(wall_mm=Decimal("1.651"))
    Decimal('1.651')
    """
    if wall_mm <= 0:
        raise ImpossibleSize(f"A tube can't have a wall of {wall_mm} mm.")
    return min(wall_mm, LARGEST_FLASH_MM)


def en10296_bead(
    *, od_mm: Decimal, wall_mm: Decimal, finish: Literal["A", "B", "C"]
) -> Decimal | None:
    """Inside bead of EN 10296-2 tube: A b = 0.20 t + 0.5, B b = 0.06 t + 0.3, C b = 0.15.

    Symbols: b height of the bead, at most [mm]; t wall [mm]; A bead left inside and out, B left
    inside, C removed or rolled [-].
    Range: t below 8 mm, and B below 114.3 mm OD.
    Source: EN 10296-2, by a stainless association's page (S35).

    None outside its range.

    >>> en10296_bead(od_mm=Decimal(50), wall_mm=Decimal("1.5"), finish="B")
    Decimal('0.39')
    """
    if not 0 < wall_mm < 8 or (finish == "B" and od_mm >= Decimal("114.3")):
        return None
    factor, base = {"A": ("0.20", "0.5"), "B": ("0.06", "0.3"), "C": ("0", "0.15")}[finish]
    return tidy(Decimal(factor) * wall_mm + Decimal(base))


def across_weld(*, bore_mm: Decimal, bead_mm: Decimal) -> Decimal:
    """Free diameter across an inside weld bead: F = ID - b.

    Symbols: F free diameter [mm]; ID bore [mm]; b height of the one bead [mm].
    Range: b from 0 to below ID.
    Source: geometry.

    Raises ImpossibleSize outside its range.

    >>> across_weld(bore_mm=Decimal("34.798"), bead_mm=Decimal("1.651"))
    Decimal('33.147')
    """
    if not 0 <= bead_mm < bore_mm:
        raise ImpossibleSize(f"A bead of {bead_mm} mm fills a bore of {bore_mm} mm.")
    return tidy(bore_mm - bead_mm)


@dataclass(frozen=True, slots=True)
class BoreRange:
    """What is known of a tube's bore [mm]."""

    nominal_mm: Decimal
    low_mm: Decimal | None
    """The smallest bore that counts for the mandrel; None: only the nominal is known."""
    high_mm: Decimal | None
    basis: str
    """Where the range is from, or why only the nominal bore is known: one clause."""
    doubtful: tuple[tuple[str, Decimal], ...] = ()
    """Smaller bores that can't be ruled out but are not counted: (of what, mm)."""
    notes: tuple[str, ...] = ()
    open_bead: str = ""
    """The make whose inside weld bead is not counted, as its height is not on record; or ''."""

    @property
    def counts_mm(self) -> Decimal:
        """The bore that the mandrel is made for: the smallest one known for sure [mm]."""
        return self.nominal_mm if self.low_mm is None else self.low_mm


@lru_cache(maxsize=4096)
def bore_range(*, od_mm: Decimal, wall_mm: Decimal, make: TubeMake | None) -> BoreRange:
    """The bore of a tube of that make, inside weld bead counted [mm].

    Without a make, or where nothing is on record for it, the nominal bore alone. Figures that are
    from memory only, and makes that the customer's word leaves open ('ERW': flash left in or
    not?), don't settle what mandrel fits: their bores are told as doubtful.
    Raises ImpossibleSize for a wall that leaves no bore. Source: each row of tolerance.csv.
    """
    nominal_mm = bore(od_mm=od_mm, wall_mm=wall_mm)
    if make is None:
        basis = "nominal bore: how the tube is made (DOM, ERW, a standard) is not said"
        return BoreRange(nominal_mm, None, None, basis)
    notes: tuple[str, ...] = (make.note,) if make.note else ()
    bead = make.title if make.seam == "bead" and not _bead_is_counted(make) else ""
    if make.could_be:
        meant = [
            (makes()[key].title, _of_make(makes()[key], od_mm, wall_mm)) for key in make.could_be
        ]
        doubtful = tuple((title, ends[0]) for title, ends in meant if ends is not None)
        basis = f"nominal bore: {make.title} leaves open whether the inside flash is controlled"
        return BoreRange(nominal_mm, None, None, basis, doubtful, notes, bead)
    ends = _of_make(make, od_mm, wall_mm)
    if ends is None:
        basis = f"nominal bore: no tolerances on record here for {make.title} in this size"
        return BoreRange(nominal_mm, None, None, basis, (), notes, bead)
    low_mm, high_mm, tolerance = ends
    notes += tuple(_notes(make, od_mm, wall_mm, tolerance))
    if not tolerance.checked:
        basis = f"nominal bore: our figures for {make.title} are from memory"
        return BoreRange(nominal_mm, None, None, basis, ((make.title, low_mm),), notes, bead)
    basis = f"{make.title} ({tolerance.source})"
    return BoreRange(nominal_mm, low_mm, high_mm, basis, (), notes, bead)


def _bead_is_counted(make: TubeMake) -> bool:
    return make.key in _BEAD_COUNTED or (make.key == "en10296-2" and bool(make.state))


_Ends = tuple[Decimal, Decimal | None, Tolerance]


def _of_make(make: TubeMake, od_mm: Decimal, wall_mm: Decimal) -> _Ends | None:
    """(smallest, largest, tolerance) of a make that is known; None outside its table."""
    found = tolerance_of(make, od_mm=od_mm, wall_mm=wall_mm)
    if found is None:
        return None
    high_mm: Decimal | None = None
    try:
        nominal_mm = bore(od_mm=od_mm, wall_mm=wall_mm)
        if found.id_minus_mm is not None and found.id_plus_mm is not None:
            low_mm = tidy(nominal_mm - found.id_minus_mm)
            high_mm = tidy(nominal_mm + found.id_plus_mm)
        else:
            low_mm = smallest_bore(
                od_mm=od_mm,
                wall_mm=wall_mm,
                od_minus_mm=found.od_minus_mm,
                wall_plus_mm=found.wall_plus_mm or Decimal(0),
            )
            if found.wall_minus_mm is not None:
                high_mm = largest_bore(
                    od_mm=od_mm,
                    wall_mm=wall_mm,
                    od_plus_mm=found.od_plus_mm,
                    wall_minus_mm=found.wall_minus_mm,
                )
        low_mm = across_weld(bore_mm=low_mm, bead_mm=_bead(make, od_mm, wall_mm))
    except ImpossibleSize:  # so thick a wall that its tolerances leave no bore
        return None
    return low_mm, high_mm, found


def _bead(make: TubeMake, od_mm: Decimal, wall_mm: Decimal) -> Decimal:
    """The inside bead that is known of, beyond what an ID tolerance has in it already [mm]."""
    if make.key == "erw-flash-in":
        return flash_in_bead(wall_mm=wall_mm)
    if make.key == "erw-flash-010":
        return CONTROLLED_FLASH_MM
    if make.key == "en10296-2" and make.state in ("A", "B", "C"):
        return en10296_bead(od_mm=od_mm, wall_mm=wall_mm, finish=make.state) or Decimal(0)
    return Decimal(0)


def _notes(
    make: TubeMake, od_mm: Decimal, wall_mm: Decimal, tolerance: Tolerance
) -> tuple[str, ...]:
    """What the range leaves out, each one clause."""
    found = []
    if tolerance.id_minus_mm is None and tolerance.wall_plus_mm is None:
        found.append(
            "no upper limit of the wall is on record: the bore may be smaller than worked out here"
        )
    if make.key == "en10305-1" and not make.state:
        found.append("tolerances of the drawn states (+C, +LC); heat treated thin tube has wider")
    if make.key == "en10296-2" and not make.state:
        beads = [
            f"{finish} {bead}"
            for finish in ("A", "B", "C")
            if (bead := en10296_bead(od_mm=od_mm, wall_mm=wall_mm, finish=finish)) is not None
        ]
        if beads:
            found.append(f"inside weld bead not counted; by finish, in mm: {', '.join(beads)}")
    elif make.seam == "bead" and not _bead_is_counted(make):
        found.append("an inside weld bead is not counted: its height is not on record")
    return tuple(found)
