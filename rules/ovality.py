"""Out of round after bending: each rule book measures it in its own way, so each has a function."""

from __future__ import annotations

from decimal import Decimal

from .formula import Outside, not_positive

_FOUR_D = Decimal(4)


def flattening_pct(
    *, largest_mm: Decimal, smallest_mm: Decimal, od_mm: Decimal
) -> Decimal | Outside:
    """Flattening, ASME B31.1, B31.3 and TEMA: o = 100 x (Dmax - Dmin) / OD.

    Symbols: o flattening [%]; Dmax, Dmin largest and smallest diameter in the bend [mm]; OD average
        OD before bending (B31.1) or nominal OD (B31.3, TEMA) [mm].
    Range: all above 0, Dmax not less than Dmin.
    Source: ASME B31.1 104.2.1 (S11; limit 8 %); B31.3 332.2.1 (memory; 8 %, 3 % under outside
        pressure); TEMA (S15, S16; 10 %).

    >>> flattening_pct(largest_mm=Decimal(52), smallest_mm=Decimal(48), od_mm=Decimal(50))
    Decimal('8')
    """
    return _wrong(largest_mm, smallest_mm, od_mm) or 100 * (largest_mm - smallest_mm) / od_mm


def out_of_roundness_pct(*, largest_mm: Decimal, smallest_mm: Decimal) -> Decimal | Outside:
    """Departure from circularity, EN: u = 200 x (Dmax - Dmin) / (Dmax + Dmin).

    Symbols: u departure from circularity [%]; Dmax, Dmin largest and smallest diameter in the bend
        [mm].
    Range: both above 0, Dmax not less than Dmin.
    Source: EN 13480-4 7.4.1 (definition from memory; limit 1 % under outside pressure, S24).

    >>> out_of_roundness_pct(largest_mm=Decimal(52), smallest_mm=Decimal(48))
    Decimal('8')
    """
    wrong = _wrong(largest_mm, smallest_mm, Decimal(1))
    return wrong or 200 * (largest_mm - smallest_mm) / (largest_mm + smallest_mm)


def boiler_tube_limit_pct(*, d_of_bend: Decimal) -> Decimal | Outside:
    """Limit of departure from circularity, boiler tubes: u = 20 / k up to 4 D, then 5 %.

    Symbols: u limit [%]; k CLR / OD [-].
    Range: k above 0.5.
    Source: a U-tube maker's page (S15); EN 12952-5 or TRD, clause from memory.

    >>> boiler_tube_limit_pct(d_of_bend=Decimal("2.5"))
    Decimal('8')
    """
    if 2 * d_of_bend <= 1:
        return Outside("a D of bend of 0.5 or less leaves no inside radius")
    return 20 / d_of_bend if d_of_bend <= _FOUR_D else Decimal(5)


def roundness_ratio(*, largest_mm: Decimal, smallest_mm: Decimal) -> Decimal | Outside:
    """Roundness of a safety cage, FIA: q = Dmin / Dmax.

    Symbols: q ratio [-]; Dmax, Dmin largest and smallest diameter in the bend [mm].
    Range: both above 0, Dmax not less than Dmin.
    Source: FIA Appendix J Art. 253-8.3.3, 2009 text (S17; at least 0.9).

    >>> roundness_ratio(largest_mm=Decimal(50), smallest_mm=Decimal(45))
    Decimal('0.9')
    """
    return _wrong(largest_mm, smallest_mm, Decimal(1)) or smallest_mm / largest_mm


def smallest_diameter_faa(*, od_mm: Decimal) -> Decimal | Outside:
    """Smallest diameter left in a bend, FAA: Dmin = 0.75 x OD.

    Symbols: Dmin smallest diameter allowed in the flattened part [mm]; OD diameter before bending
        [mm].
    Range: OD above 0; fluid lines of aircraft.
    Source: FAA AC 43.13-1B par. 9-30 and FAA-H-8083 (S20; paragraph from memory).

    >>> smallest_diameter_faa(od_mm=Decimal("12.7"))
    Decimal('9.525')
    """
    return not_positive(OD=od_mm) or Decimal("0.75") * od_mm


def _wrong(largest_mm: Decimal, smallest_mm: Decimal, od_mm: Decimal) -> Outside | None:
    if wrong := not_positive(largest=largest_mm, smallest=smallest_mm, OD=od_mm):
        return wrong
    if smallest_mm > largest_mm:
        return Outside("the smallest diameter is more than the largest")
    return None
