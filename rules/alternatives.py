"""The nearest bends that would be feasible: a larger CLR, a heavier wall, or both."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal
from functools import lru_cache

from .assessment import Alternative
from .case import Case
from .catalogue import next_die
from .checks import DECIDING
from .standards import BWG_GAUGES, bwg_mm, bwg_of
from .units import format_in, format_mm, tidy

METRIC_WALLS_MM: tuple[Decimal, ...] = tuple(
    map(
        Decimal, ("0.5", "0.8", "1", "1.2", "1.5", "2", "2.5", "3", "3.5", "4", "5", "6", "8", "10")
    )
)
"""Walls that metric tube is usually held in [mm] (from memory; sizes of EN 10305-1)."""

MOST_ALTERNATIVES = 3


def alternatives_for(case: Case) -> tuple[Alternative, ...]:
    """Feasible bends nearest to a declined one, nearest first, at most three.

    The two limits don't touch each other: a heavier wall mends the wall factor only, a larger CLR
    the D of bend only, so each is changed only where its limit is broken or its value is missing.
    Nothing for a size that can't exist, and nothing where no standard wall is heavy enough.
    """
    reading = case.reading
    od_mm = reading.od_mm
    if od_mm is None or not (case.too_thin or case.too_tight):
        return ()
    walls = [(reading.wall_mm, "")] if reading.wall_mm and not case.too_thin else _walls(case)
    radii = [(reading.clr_mm, "")] if reading.clr_mm and not case.too_tight else _radii(case)
    found = []
    for wall_mm, wall_why in walls:
        for clr_mm, clr_why in radii:
            offer = replace(case, reading=replace(reading, wall_mm=wall_mm, clr_mm=clr_mm))
            if wall_mm is not None and clr_mm is not None and _passes(offer):
                why = "; ".join(filter(None, (clr_why, wall_why)))
                found.append(Alternative(od_mm=od_mm, wall_mm=wall_mm, clr_mm=clr_mm, why=why))
    return tuple(found[:MOST_ALTERNATIVES])


def _passes(offer: Case) -> bool:
    """Feasible, and open in nothing but the material."""
    return not any(
        finding.effect == "declines" or (finding.effect == "asks" and finding.field != "material")
        for rule in DECIDING
        for finding in rule(offer)
    )


def _radii(case: Case) -> list[tuple[Decimal | None, str]]:
    """The next die at or above the smallest CLR that the limit allows; without a die, that CLR."""
    od_mm = case.reading.od_mm
    assert od_mm is not None, "only called with an OD"
    smallest_mm = tidy(case.shop.limits.d_of_bend_min.value * od_mm)
    what = "larger radius" if case.reading.clr_mm is not None else "radius, as none was given"
    die = next_die(od_mm, smallest_mm, case.shop.dies)
    if die is not None:
        return [(die.clr_mm, f"{what}: the next die we have, {_length(die.clr_mm, case)} CLR")]
    why = f"{what}: {_length(smallest_mm, case)} CLR, the smallest by our limit (no die on hand)"
    return [(smallest_mm, why)]


def _walls(case: Case) -> list[tuple[Decimal | None, str]]:
    """The lightest standard wall that the limit allows, in the series of the sender's unit."""
    od_mm = case.reading.od_mm
    assert od_mm is not None, "only called with an OD"
    limit = case.shop.limits.wall_factor_max.value
    series = METRIC_WALLS_MM if case.written_in == "mm" else _gauge_walls_mm()
    wall_mm = next((wall for wall in series if limit * wall >= od_mm), None)
    if wall_mm is None:  # outside the series: nothing standard to offer
        return []
    what = "heavier wall" if case.reading.wall_mm is not None else "wall, as none was given"
    gauge = bwg_of(wall_mm) if case.written_in == "in" else None
    suffix = f" ({gauge} gauge BWG)" if gauge else ""
    return [(wall_mm, f"{what}: {_length(wall_mm, case, wall=True)}{suffix}")]


@lru_cache(maxsize=1)
def _gauge_walls_mm() -> tuple[Decimal, ...]:
    return tuple(sorted(wall for wall in map(bwg_mm, BWG_GAUGES) if wall is not None))


def _length(mm: Decimal, case: Case, *, wall: bool = False) -> str:
    if case.written_in == "in":
        return f"{format_in(mm, wall=wall)} in"
    return f"{format_mm(mm)} mm"
