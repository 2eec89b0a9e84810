"""How likely a tube is to be asked for, by its lengths alone.

A wall must be less than half the OD, a radius more than half; common stock sizes are likelier than
odd ones. The scores are house judgement, not physics: they only rank readings.
"""

from __future__ import annotations

from decimal import Decimal

from ....rules import standards


def plausibility(od: Decimal | None, wall: Decimal | None, clr: Decimal | None) -> float:
    """How likely a tube of these lengths [mm] is to be asked for. 0 is unremarkable."""
    score = 0.0
    if od is not None:
        score += _od_score(float(od)) + (1.5 if standards.is_standard_od(od) else 0.0)
    if wall is not None:
        score += 1.0 if standards.is_standard_wall(wall) else 0.0
        score += _wall_score(float(wall), float(od) if od is not None else None)
    if clr is not None:
        score += _clr_score(float(clr), float(od) if od is not None else None)
    return score


def _od_score(od: float) -> float:
    if od <= 0 or od > 700:
        return -8
    if od < 3 or od > 330:
        return -5
    return -1.0 if od > 170 or od < 4 else 0.0


def _wall_score(wall: float, od: float | None) -> float:
    if wall <= 0:
        return -9
    if od is None:
        return 0.0 if 0.2 <= wall <= 13 else -4.0
    factor = od / wall
    if factor <= 2:
        return -8
    if factor < 3.4:
        return -4.5
    if factor < 5:
        return -0.8
    if factor <= 100:
        return 0.0
    if factor <= 130:
        return -2.0
    return -4.6 if factor <= 200 else -6.0


def _clr_score(clr: float, od: float | None) -> float:
    if clr <= 0:
        return -9
    if od is None:
        return 0.0 if 5 <= clr <= 2000 else -3.0
    if od <= 0:
        return -9
    k = clr / od
    if k <= 0.5:
        return -7
    if k < 0.95:
        return -2.6
    if k <= 12:
        return 0.3 if k <= 8 else 0.0
    return -1.5 if k <= 25 else -5.0
