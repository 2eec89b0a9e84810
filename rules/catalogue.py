"""The shelf asked: which mandrel on hand serves a bend, which come near, is there a die."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal
from typing import Literal

from .assessment import MandrelNeeded
from .bend import BendSpec
from .by_od import tools_near
from .shelf import CatalogueMandrel, Die
from .tube import SAME_SIZE_MM, SAME_WALL_MM
from .units import both_units, format_in, format_mm

_LEAST_TOLD_MM = Decimal("0.002")
"""Less is told as 'a hair': in inches it would be 0."""


@dataclass(frozen=True, slots=True)
class NearMiss:
    """A mandrel for this OD that does not serve the bend, and why, in words."""

    mandrel: CatalogueMandrel
    reasons: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class ShelfLook:
    """What the shelf has for a bend."""

    match: CatalogueMandrel | None
    """The mandrel to take; None also while the material is unknown."""
    fits_by_size: tuple[CatalogueMandrel, ...]
    """On hand and right but for the surface, which only the material can settle."""
    near_misses: tuple[NearMiss, ...]
    """Nearest first; only mandrels for this OD."""


def look_on_shelf(
    spec: BendSpec,
    needed: MandrelNeeded,
    catalogue: tuple[CatalogueMandrel, ...],
    first: Literal["in", "mm"] = "in",
) -> ShelfLook:
    """What ``catalogue`` has for ``spec``; ``first`` is the unit that reasons are told in.

    A mandrel serves when its tube's OD is the same (SAME_SIZE_MM), its diameter lies in the needed
    range, wall and CLR lie in its ranges (edges included), it has balls enough, its surface suits
    the material and one is on hand. Of several: best surface, then fewest balls to spare, then the
    diameter nearest the middle of the range.
    """
    of_od = list(tools_near(catalogue, spec.od_mm))
    if not of_od:
        return ShelfLook(None, (), ())
    middle_mm = (needed.diameter_low_mm + needed.diameter_high_mm) / 2
    most = needed.balls_high or 0
    of_od.sort(
        key=lambda m: (max(m.balls - most, 0), abs(m.mandrel_diameter_mm - middle_mm), m.part)
    )
    fits: list[CatalogueMandrel] = []
    serves: list[CatalogueMandrel] = []
    misses: list[NearMiss] = []
    for mandrel in of_od:
        reasons = list(_size_reasons(mandrel, spec, needed, first))
        if not reasons:
            fits.append(mandrel)
        if (surface := _surface_reason(mandrel, spec, needed)) is not None:
            reasons.append(surface)
        if reasons:
            misses.append(NearMiss(mandrel, tuple(reasons)))
        elif spec.material is not None:
            serves.append(mandrel)
    serves.sort(key=lambda m: needed.surfaces.index(m.surface))
    misses.sort(key=lambda miss: len(miss.reasons))
    return ShelfLook(serves[0] if serves else None, tuple(fits), tuple(misses))


def _size_reasons(
    mandrel: CatalogueMandrel, spec: BendSpec, needed: MandrelNeeded, first: Literal["in", "mm"]
) -> Iterator[str]:
    diameter_mm = mandrel.mandrel_diameter_mm
    if diameter_mm > needed.diameter_high_mm:
        bore = "this wall" if needed.bore_low_mm is None else "the smallest bore of this tube"
        yield f"it is {_by(diameter_mm - needed.diameter_high_mm, first)} too big for {bore}"
    elif diameter_mm < needed.diameter_low_mm:
        yield f"it is {_by(needed.diameter_low_mm - diameter_mm, first)} too small for this wall"
    elif not _within(
        spec.wall_mm, mandrel.tube_wall_min_mm, mandrel.tube_wall_max_mm, SAME_WALL_MM
    ):
        walls = _span(mandrel.tube_wall_min_mm, mandrel.tube_wall_max_mm, first, wall=True)
        yield f"it is made for walls of {walls}"
    if not _within(spec.clr_mm, mandrel.clr_min_mm, mandrel.clr_max_mm, SAME_SIZE_MM):
        yield f"it is made for a CLR of {_span(mandrel.clr_min_mm, mandrel.clr_max_mm, first)}"
    if needed.balls_low is not None and mandrel.balls < needed.balls_low:
        few = needed.balls_low - mandrel.balls
        yield f"it has {'one ball' if few == 1 else f'{few} balls'} too few"
    if mandrel.on_hand == 0:
        yield "none is on hand"


def _by(mm: Decimal, first: Literal["in", "mm"]) -> str:
    return both_units(mm, first) if mm >= _LEAST_TOLD_MM else "a hair"


def _surface_reason(mandrel: CatalogueMandrel, spec: BendSpec, needed: MandrelNeeded) -> str | None:
    if spec.material is None or mandrel.surface in needed.surfaces:
        return None
    if not needed.surfaces:
        return f"we have no record of whether {mandrel.surface} suits this material"
    return f"{mandrel.surface} is not what we use in {spec.material.replace('_', ' ')}"


def _within(value_mm: Decimal, low_mm: Decimal, high_mm: Decimal, slack_mm: Decimal) -> bool:
    return low_mm - slack_mm <= value_mm <= high_mm + slack_mm


def _span(
    low_mm: Decimal, high_mm: Decimal, first: Literal["in", "mm"], *, wall: bool = False
) -> str:
    if first == "in":
        return f"{format_in(low_mm, wall=wall)} to {format_in(high_mm, wall=wall)} in"
    return f"{format_mm(low_mm)} to {format_mm(high_mm)} mm"


def dies_for(od_mm: Decimal, dies: tuple[Die, ...]) -> tuple[Die, ...]:
    """Dies on hand for a tube of ``od_mm`` [mm], tightest first."""
    found = [die for die in tools_near(dies, od_mm) if die.on_hand]
    return tuple(sorted(found, key=lambda die: (die.clr_mm, die.part)))


def die_at(clr_mm: Decimal, dies: tuple[Die, ...]) -> Die | None:
    """The one of ``dies``, all for one OD, that bends at this CLR [mm], or None."""
    return next((die for die in dies if abs(die.clr_mm - clr_mm) <= SAME_SIZE_MM), None)


def next_die(od_mm: Decimal, clr_mm: Decimal, dies: tuple[Die, ...]) -> Die | None:
    """The tightest die on hand for this OD at ``clr_mm`` [mm] or above, or None."""
    return next((d for d in dies_for(od_mm, dies) if d.clr_mm >= clr_mm), None)
