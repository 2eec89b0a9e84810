"""Declines by how far they were out: which limit would have let them pass."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from decimal import ROUND_CEILING, ROUND_FLOOR, Decimal
from typing import TYPE_CHECKING

from ..rules.assessment import Decision
from .report_count import Asked

if TYPE_CHECKING:
    from ..rules.shop_settings import Limits

WALL_FACTOR_STEP = Decimal(1)
D_OF_BEND_STEP = Decimal("0.1")


@dataclass(frozen=True, slots=True)
class Step:
    """A limit that the shop could have, and how many of the declines it would let pass."""

    limit: Decimal
    would_pass: int


@dataclass(frozen=True, slots=True)
class Declines:
    """The declines of some weeks. Each stands in exactly one of the four counts."""

    total: int
    too_thin: int
    """Wall factor above the limit, and the bend not too tight."""
    too_tight: int
    both: int
    untold: int
    """Which of the two can't be told from one reading: a figure is missing or in doubt."""
    wall_factor_steps: tuple[Step, ...]
    """Rising; for those that are only too thin, D of bend staying as it is."""
    d_of_bend_steps: tuple[Step, ...]
    """Falling; for those that are only too tight."""


def declines(rows: Iterable[Asked], limits: Limits) -> Declines:
    """How far the declined among ``rows`` were out."""
    total = both = untold = 0
    wall_factors: list[Decimal] = []
    ds_of_bend: list[Decimal] = []
    most, least = limits.wall_factor_max.value, limits.d_of_bend_min.value
    for row in rows:
        if row.decision is not Decision.DECLINE:
            continue
        total += 1
        size = row.size
        if size is None or row.doubtful:
            untold += 1
            continue
        # Products, as the decision itself compares: exactly on the limit is feasible.
        thin = size.od_mm > most * size.wall_mm
        tight = size.clr_mm < least * size.od_mm
        if thin and tight:
            both += 1
        elif thin:
            wall_factors.append(_up(size.od_mm, size.wall_mm))
        elif tight:
            ds_of_bend.append(_down(size.clr_mm, size.od_mm))
        else:
            untold += 1
    return Declines(
        total=total,
        too_thin=len(wall_factors),
        too_tight=len(ds_of_bend),
        both=both,
        untold=untold,
        wall_factor_steps=tuple(
            Step(limit, sum(one <= limit for one in wall_factors))
            for limit in sorted(set(wall_factors))
        ),
        d_of_bend_steps=tuple(
            Step(limit, sum(one >= limit for one in ds_of_bend))
            for limit in sorted(set(ds_of_bend), reverse=True)
        ),
    )


def _up(od_mm: Decimal, wall_mm: Decimal) -> Decimal:
    """The least limit in whole steps that the tube would pass."""
    return (od_mm / (wall_mm * WALL_FACTOR_STEP)).to_integral_value(ROUND_CEILING)


def _down(clr_mm: Decimal, od_mm: Decimal) -> Decimal:
    return (clr_mm / (od_mm * D_OF_BEND_STEP)).to_integral_value(ROUND_FLOOR) * D_OF_BEND_STEP
