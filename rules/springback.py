"""The moment that bends the tube, and how far it springs back when let go.

An estimate to set up by, not to rely on: shop values run higher than this theory. Bend a trial.
"""

from __future__ import annotations

from decimal import Decimal

from .formula import PI, Outside, no_bend, no_tube, not_positive

FULLY_PLASTIC = Decimal(2)
"""Outer strain / strain at yield from which a thin tube carries 95 % of its full plastic moment.

Derived: M/Mp = (r x asin(1/r) + sqrt(1 - 1/r^2)) / 2 = 0.957 at r = 2.
"""


def plastic_modulus(*, od_mm: Decimal, wall_mm: Decimal) -> Decimal | Outside:
    """Plastic section modulus: Zp = (OD^3 - ID^3) / 6.

    Symbols: Zp plastic modulus [mm3]; OD outside diameter [mm]; ID = OD - 2 x t bore [mm]; t wall
        [mm].
    Range: t above 0 and below OD/2; a round tube that stays round.
    Source: standard result of bending theory; checked by numeric integration in the tests.

    >>> plastic_modulus(od_mm=Decimal(50), wall_mm=Decimal(5))
    Decimal('10166.66666666666666666666667')
    """
    if wrong := no_tube(od_mm, wall_mm):
        return wrong
    return (od_mm**3 - (od_mm - 2 * wall_mm) ** 3) / 6


def second_moment(*, od_mm: Decimal, wall_mm: Decimal) -> Decimal | Outside:
    """Second moment of area: I = pi x (OD^4 - ID^4) / 64.

    Symbols: I second moment [mm4]; OD outside diameter [mm]; ID = OD - 2 x t bore [mm]; t wall
        [mm].
    Range: t above 0 and below OD/2; a round tube that stays round.
    Source: standard result of bending theory; checked by numeric integration in the tests.

    >>> round(second_moment(od_mm=Decimal(50), wall_mm=Decimal(5)))
    181132
    """
    if wrong := no_tube(od_mm, wall_mm):
        return wrong
    return PI * (od_mm**4 - (od_mm - 2 * wall_mm) ** 4) / 64


def plastic_moment(*, od_mm: Decimal, wall_mm: Decimal, flow_mpa: Decimal) -> Decimal | Outside:
    """Moment that bends the tube: M = s x Zp / 1000.

    Symbols: M plastic bending moment [N m]; s flow stress, between yield and tensile strength
        [MPa]; Zp plastic modulus [mm3].
    Range: as the plastic modulus, s above 0; friction and boost of the machine come on top.
    Source: standard result of bending theory, derived here.

    >>> plastic_moment(od_mm=Decimal(50), wall_mm=Decimal(5), flow_mpa=Decimal(300))
    Decimal('3050.000000000000000000000001')
    """
    modulus = plastic_modulus(od_mm=od_mm, wall_mm=wall_mm)
    if isinstance(modulus, Outside):
        return modulus
    return not_positive(flow_stress=flow_mpa) or flow_mpa * modulus / 1000


def springback_deg(
    *,
    angle_deg: Decimal,
    od_mm: Decimal,
    wall_mm: Decimal,
    clr_mm: Decimal,
    flow_mpa: Decimal,
    e_gpa: Decimal,
) -> Decimal | Outside:
    """Springback of a bend: d = a x M x CLR / (E x I).

    Symbols: d springback [deg]; a bend angle [deg]; M plastic bending moment [N mm]; CLR centreline
        radius [mm]; E elastic modulus [MPa]; I second moment [mm4].
    Range: CLR above OD/2; outer strain at least twice that at yield (s / E), below which the tube
        is not plastic throughout.
    Source: elastic unloading of a fully plastic tube, derived here; shop values run higher.

    >>> d = springback_deg(
    ...     angle_deg=Decimal(90), od_mm=Decimal("50.8"), wall_mm=Decimal("1.651"),
    ...     clr_mm=Decimal("101.6"), flow_mpa=Decimal(350), e_gpa=Decimal(205),
    ... )
    >>> f"{d:.2f}"
    '0.81'
    """
    wrong = no_bend(od_mm, clr_mm) or not_positive(angle=angle_deg, elastic_modulus=e_gpa)
    moment = plastic_moment(od_mm=od_mm, wall_mm=wall_mm, flow_mpa=flow_mpa)
    area = second_moment(od_mm=od_mm, wall_mm=wall_mm)
    if wrong or isinstance(moment, Outside) or isinstance(area, Outside):
        return next(r for r in (wrong, moment, area) if isinstance(r, Outside))
    e_mpa = 1000 * e_gpa
    if od_mm / (2 * clr_mm) < FULLY_PLASTIC * flow_mpa / e_mpa:
        return Outside("the bend is so wide that the tube is not plastic throughout")
    return angle_deg * 1000 * moment * clr_mm / (e_mpa * area)


def flow_stress_range(
    *, yield_mpa: Decimal | None, ultimate_mpa: Decimal | None
) -> tuple[Decimal, Decimal] | Outside:
    """Flow stress while bending: from yield to tensile strength, s = Re ... Rm.

    Symbols: s flow stress [MPa]; Re yield strength as listed [MPa]; Rm tensile strength as listed
        [MPa].
    Range: both listed; the material hardens from one towards the other as it is bent.
    Source: house rule: the two ends that the flow stress must lie between, no published figure.

    >>> flow_stress_range(yield_mpa=Decimal(300), ultimate_mpa=Decimal(400))
    (Decimal('300'), Decimal('400'))
    """
    if yield_mpa is None or ultimate_mpa is None:
        return Outside("yield or tensile strength is not listed for this material")
    return min(yield_mpa, ultimate_mpa), max(yield_mpa, ultimate_mpa)
