"""How far a bend stretches the tube, against what its material is listed to bear.

Pure geometry with the neutral axis on the centreline. The axis really moves inwards, so without
boost the outer fibre stretches somewhat more: these figures advise, they decide nothing.
"""

from __future__ import annotations

from decimal import Decimal

from .formula import Outside, no_bend, not_positive


def extrados_strain(*, od_mm: Decimal, clr_mm: Decimal) -> Decimal | Outside:
    """Strain of the outer fibre: e = OD / (2 x CLR).

    Symbols: e strain, 0.25 is 25 % [-]; OD outside diameter [mm]; CLR centreline radius [mm].
    Range: CLR above OD/2; neutral axis taken on the centreline, so it understates without boost.
    Source: a European tube bender's FAQ (S25: half the tube / radius); the principle in an FAA
        paper of 2003 (S28).

    >>> extrados_strain(od_mm=Decimal(50), clr_mm=Decimal(100))
    Decimal('0.25')
    """
    return no_bend(od_mm, clr_mm) or od_mm / (2 * clr_mm)


def intrados_strain(*, od_mm: Decimal, clr_mm: Decimal) -> Decimal | Outside:
    """Strain of the inner fibre: e = -OD / (2 x CLR).

    Symbols: e strain, negative because it is pressed together [-]; OD outside diameter [mm];
        CLR centreline radius [mm].
    Range: CLR above OD/2; neutral axis taken on the centreline; a wrinkle relieves it.
    Source: geometry, derived here.

    >>> intrados_strain(od_mm=Decimal(50), clr_mm=Decimal(100))
    Decimal('-0.25')
    """
    return no_bend(od_mm, clr_mm) or -od_mm / (2 * clr_mm)


def elongation_share(*, strain: Decimal, elongation_pct: Decimal) -> Decimal | Outside:
    """Stretch needed / elongation listed: u = 100 x e / A.

    Symbols: u share, 1 is all that is listed [-]; e strain of the outer fibre [-]; A elongation at
        break as listed for the material [%].
    Range: e and A above 0; advisory only: catalogue minima are exceeded daily (6061-T6 of 8 % is
        bent at 3 D), and the same alloy from another mill may snap.
    Source: a European tube bender's FAQ (S25); practice in machinists' threads (S49).

    >>> elongation_share(strain=Decimal("0.2"), elongation_pct=Decimal(10))
    Decimal('2.0')
    """
    wrong = not_positive(strain=strain, elongation=elongation_pct)
    return wrong or 100 * strain / elongation_pct


def smallest_d_by_elongation(*, elongation_pct: Decimal) -> Decimal | Outside:
    """Smallest D of bend by listed elongation: k = 50 / A.

    Symbols: k D of bend CLR / OD [-]; A elongation at break as listed [%].
    Range: A above 0 and below 100, else the CLR would be half the OD or less; advisory only.
    Source: follows from S25 (outer fibre strain = 1 / (2 k)).

    >>> smallest_d_by_elongation(elongation_pct=Decimal(20))
    Decimal('2.5')
    """
    if wrong := not_positive(elongation=elongation_pct):
        return wrong
    if elongation_pct >= 100:
        return Outside("elongation of 100 % or more sets no smallest D of bend")
    return 50 / elongation_pct


def elastic_limit_radius(*, od_mm: Decimal, yield_strain: Decimal) -> Decimal | Outside:
    """Radius above which a bend springs back wholly: R = OD / (2 x ey).

    Symbols: R centreline radius [mm]; OD outside diameter [mm]; ey strain at yield, yield strength
        / elastic modulus [-].
    Range: OD and ey above 0.
    Source: bending theory; a worked note on 347 stainless tube (1/4 in OD, 0.0011: 113.6 in).

    >>> round(elastic_limit_radius(od_mm=Decimal(50), yield_strain=Decimal("0.002")))
    12500
    """
    return not_positive(OD=od_mm, yield_strain=yield_strain) or od_mm / (2 * yield_strain)
