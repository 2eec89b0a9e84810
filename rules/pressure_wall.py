"""Wall of a bend under pressure by ASME B31.3 304.2.1: figures to talk by, never a design.

The code in force and a licensed engineer decide; nothing here certifies a part.
"""

from __future__ import annotations

from decimal import Decimal

from .formula import Outside, not_positive

_NO_BEND = Outside("a D of bend of 0.5 or less leaves no inside radius")
_HALF = Decimal("0.5")


def intrados_factor(*, d_of_bend: Decimal) -> Decimal | Outside:
    """Factor for the inside of a bend, ASME B31.3: Ii = (4k - 1) / (4k - 2).

    Symbols: Ii intrados factor [-]; k CLR / OD [-].
    Range: k above 0.5.
    Source: ASME B31.3 304.2.1 as in two worked sheets (S12, S13).

    >>> intrados_factor(d_of_bend=Decimal("1.5"))
    Decimal('1.25')
    """
    return _NO_BEND if d_of_bend <= _HALF else (4 * d_of_bend - 1) / (4 * d_of_bend - 2)


def extrados_factor(*, d_of_bend: Decimal) -> Decimal | Outside:
    """Factor for the outside of a bend, ASME B31.3: Ie = (4k + 1) / (4k + 2).

    Symbols: Ie extrados factor [-]; k CLR / OD [-].
    Range: k above 0.5.
    Source: ASME B31.3 304.2.1 as in two worked sheets (S12, S13).

    >>> extrados_factor(d_of_bend=Decimal("1.5"))
    Decimal('0.875')
    """
    return _NO_BEND if d_of_bend <= _HALF else (4 * d_of_bend + 1) / (4 * d_of_bend + 2)


def pressure_wall(
    *,
    pressure_mpa: Decimal,
    od_mm: Decimal,
    stress_mpa: Decimal,
    factor: Decimal,
    quality: Decimal,
    weld: Decimal,
    y: Decimal,
) -> Decimal | Outside:
    """Wall after bending for pressure, ASME B31.3: t = P x OD / (2 x (S x E x W / I + P x Y)).

    Symbols: t wall after bending [mm]; P design pressure [MPa]; OD outside diameter [mm]; S
        allowable stress [MPa]; E quality factor [-]; W weld factor [-]; I bend factor Ii, Ie, or 1
        at the sides [-]; Y coefficient of the code [-].
    Range: all above 0 and t below OD/6, from where the code wants more thought (from memory).
    Source: ASME B31.3 304.2.1 as in two worked sheets (S12, S13).

    >>> round(
    ...     pressure_wall(
    ...         pressure_mpa=Decimal(5), od_mm=Decimal(60), stress_mpa=Decimal(120),
    ...         factor=Decimal(1), quality=Decimal(1), weld=Decimal(1), y=Decimal("0.4"),
    ...     ), 2
    ... )
    Decimal('1.23')
    """
    wrong = not_positive(
        pressure=pressure_mpa, OD=od_mm, allowable_stress=stress_mpa, bend_factor=factor,
        quality_factor=quality, weld_factor=weld, Y=y,
    )  # fmt: skip
    if wrong:
        return wrong
    wall_mm = pressure_mpa * od_mm / (2 * (stress_mpa * quality * weld / factor + pressure_mpa * y))
    if 6 * wall_mm >= od_mm:
        return Outside("a wall of OD/6 or more is beyond this formula of ASME B31.3")
    return wall_mm
