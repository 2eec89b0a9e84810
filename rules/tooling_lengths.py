"""Lengths along the tube that the tooling needs: clamp, straight between bends, pressure die."""

from __future__ import annotations

from decimal import Decimal

from .formula import PI, Outside, no_bend, not_positive

WHOLE_TURN_DEG = Decimal(360)


def clamp_length(*, od_mm: Decimal) -> Decimal | Outside:
    """Clamp length preferred: L = 3 x OD.

    Symbols: L length of the clamp die along the tube [mm]; OD outside diameter [mm].
    Range: OD above 0; a serrated or lined clamp may be shorter, a smooth one on thin wall may not.
    Source: a US tooling maker's set-up page (S07).

    >>> clamp_length(od_mm=Decimal("50.8"))
    Decimal('152.4')
    """
    return not_positive(OD=od_mm) or 3 * od_mm


def straight_between_bends(*, od_mm: Decimal) -> Decimal | Outside:
    """Straight wanted between two bends: S = clamp length = 3 x OD.

    Symbols: S straight between the tangents of two bends [mm]; OD outside diameter [mm].
    Range: OD above 0; less needs a shorter clamp or a clamp shaped to the bend before.
    Source: the principle in a tooling maker's glossary (S01); the figure from memory.

    >>> straight_between_bends(od_mm=Decimal(40))
    Decimal('120')
    """
    return clamp_length(od_mm=od_mm)


def arc_length(*, clr_mm: Decimal, angle_deg: Decimal) -> Decimal | Outside:
    """Length of the bend along the centreline: A = pi x CLR x a / 180.

    Symbols: A arc length [mm]; CLR centreline radius [mm]; a bend angle [deg].
    Range: CLR above 0, a above 0 and up to 360 deg.
    Source: geometry.

    >>> round(arc_length(clr_mm=Decimal("101.6"), angle_deg=Decimal(90)), 2)
    Decimal('159.59')
    """
    if angle_deg > WHOLE_TURN_DEG:
        return Outside("more than a whole turn is a coil, not a bend")
    wrong = not_positive(CLR=clr_mm, angle=angle_deg)
    return wrong or PI * clr_mm * angle_deg / 180


def pressure_die_length(
    *, od_mm: Decimal, clr_mm: Decimal, angle_deg: Decimal
) -> Decimal | Outside:
    """Pressure die length: P = pi x CLR x a / 180 + 2 x OD.

    Symbols: P length of the pressure die [mm]; CLR centreline radius [mm]; a bend angle [deg]; OD
        outside diameter [mm].
    Range: CLR above OD/2, a above 0 and up to 360 deg; published for 180 deg, the arc of any other
        angle put in its place here.
    Source: a US tooling maker's set-up page (S07: length of bend + 2 OD).

    >>> round(
    ...     pressure_die_length(od_mm=Decimal(50), clr_mm=Decimal(100), angle_deg=Decimal(180)), 1
    ... )
    Decimal('414.2')
    """
    arc = arc_length(clr_mm=clr_mm, angle_deg=angle_deg)
    if isinstance(arc, Outside):
        return arc
    return no_bend(od_mm, clr_mm) or arc + 2 * od_mm
