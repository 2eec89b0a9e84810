"""What to make next: the mandrels that would serve most customers whom the shelf does not serve.

A bend takes any mandrel whose diameter lies in a range (the tube's smallest bore less the shop's
clearance), whose surface suits the material, with balls enough. Each customer counts once, by a
weight. Which k mandrels serve the greatest weight is solved exactly, see ``stabbing``.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal
from functools import lru_cache

from .assessment import MandrelNeeded
from .bend import BendSpec
from .by_od import tools_near
from .by_value import Itself
from .catalogue import die_at, dies_for, look_on_shelf
from .request import Material
from .shelf import CatalogueMandrel, Die
from .shop_report import ReportSettings
from .stabbing import Party, best_choices
from .tube import bore

WEIGHT_UNIT = 1000
"""Weights are whole thousandths, so that sums of them are exact."""


@dataclass(frozen=True, slots=True)
class MandrelRange:
    """The mandrels that serve a bend: diameters in mm, edges included."""

    low_mm: Decimal
    high_mm: Decimal
    balls: int | None
    """The fewest that do; None where the shop's chart names no number."""
    surfaces: tuple[str, ...]
    """Those that suit the material, best first."""


@dataclass(frozen=True, slots=True)
class Need:
    """One feasible request that no mandrel on the shelf serves."""

    customer: str
    weight: int
    """In thousandths; of a customer with several requests the greatest counts."""
    mandrel: MandrelRange
    about: object = None
    """Whatever the caller wants to find again in the plan."""


@dataclass(frozen=True, slots=True)
class ToMake:
    """One mandrel of a plan, and the needs that it serves. Lengths in mm."""

    low_mm: Decimal
    high_mm: Decimal
    """Any diameter from low to high serves all of them."""
    balls: int | None
    surface: str
    serves: tuple[Need, ...]

    @property
    def customers(self) -> int:
        """How many it serves."""
        return len({need.customer for need in self.serves})


@dataclass(frozen=True, slots=True)
class Plan:
    """The best so-and-so many mandrels to make."""

    mandrels: tuple[ToMake, ...]
    customers: int
    weight: int
    """What they serve together, each customer once."""
    proven: bool
    """False where a better plan could not be ruled out within the steps allowed."""


def what_to_make(needs: Sequence[Need], most: int = 5) -> tuple[Plan, ...]:
    """The best plan of 1, 2 ... ``most`` mandrels; fewer plans where more mandrels add nothing.

    The order of ``needs`` changes nothing. Source: dynamic programming with bounds (``stabbing``).
    """
    needs = sorted(needs, key=_order)
    weights: defaultdict[str, int] = defaultdict(int)
    for need in needs:
        weights[need.customer] = max(weights[need.customer], need.weight)
    places = sorted(
        {
            (surface, edge)
            for need in needs
            for surface in need.mandrel.surfaces
            for edge in (need.mandrel.low_mm, need.mandrel.high_mm)
        }
    )
    place_of = {place: index for index, place in enumerate(places)}
    runs: defaultdict[str, set[tuple[int, int]]] = defaultdict(set)
    for need in needs:
        low_mm, high_mm = need.mandrel.low_mm, need.mandrel.high_mm
        for surface in need.mandrel.surfaces:
            run = (place_of[surface, low_mm], place_of[surface, high_mm])
            runs[need.customer].add(run)
    parties = [Party(weights[one], tuple(sorted(runs[one]))) for one in sorted(runs)]
    choices = best_choices(parties, most)
    chosen = {places[at] for choice in choices for at in choice.positions}
    mandrels = {place: _to_make(*place, needs) for place in chosen}
    return tuple(
        _plan([mandrels[places[at]] for at in choice.positions], weights, choice.proven)
        for choice in choices
    )


def _order(need: Need) -> tuple[str, Decimal, Decimal, tuple[str, ...], int]:
    mandrel = need.mandrel
    balls = -1 if mandrel.balls is None else mandrel.balls
    return (need.customer, mandrel.low_mm, mandrel.high_mm, mandrel.surfaces, balls)


def _plan(
    mandrels: Sequence[ToMake],
    weights: dict[str, int],
    proven: bool,
) -> Plan:
    served = {need.customer for one in mandrels for need in one.serves}
    return Plan(
        mandrels=tuple(sorted(mandrels, key=lambda one: (-one.customers, one.low_mm, one.surface))),
        customers=len(served),
        weight=sum(weights[one] for one in served),
        proven=proven,
    )


def _to_make(surface: str, diameter_mm: Decimal, needs: Sequence[Need]) -> ToMake:
    serves = tuple(
        need
        for need in needs
        if surface in need.mandrel.surfaces
        and need.mandrel.low_mm <= diameter_mm <= need.mandrel.high_mm
    )
    return ToMake(
        low_mm=max(need.mandrel.low_mm for need in serves),
        high_mm=min(need.mandrel.high_mm for need in serves),
        balls=max((n.mandrel.balls for n in serves if n.mandrel.balls is not None), default=None),
        surface=surface,
        serves=serves,
    )


def demand_weight(*, buying: bool, weeks_ago: int, settings: ReportSettings) -> int:
    """What a request counts, in thousandths: w = w0 / 2^(a / h), rounded to the nearest.

    Symbols: w weight [1/1000]; w0 weight of a customer who buys or asks [1/1000]; a age [weeks];
    h half-life [weeks].
    Range: a from 0.
    Source: house rule; weights and half-life are the shop's.
    """
    weight = settings.weight_buying if buying else settings.weight_asking
    faded = WEIGHT_UNIT * weight / Decimal(2) ** (Decimal(weeks_ago) / settings.half_life_weeks)
    return int(faded.to_integral_value())


def shelf_serves(
    *,
    od_mm: Decimal,
    wall_mm: Decimal,
    clr_mm: Decimal,
    material: Material,
    mandrel: MandrelRange,
    wanted: int,
    catalogue: tuple[CatalogueMandrel, ...],
) -> bool:
    """Whether as many mandrels as are ``wanted`` are on hand for the bend. Lengths in mm."""
    return _shelf_serves(od_mm, wall_mm, clr_mm, material, mandrel, wanted, Itself(catalogue))


@lru_cache(maxsize=65536)  # a long report asks about the same sizes again and again
def _shelf_serves(
    od_mm: Decimal,
    wall_mm: Decimal,
    clr_mm: Decimal,
    material: Material,
    mandrel: MandrelRange,
    wanted: int,
    catalogue: Itself[tuple[CatalogueMandrel, ...]],
) -> bool:
    if not tools_near(catalogue.value, od_mm):
        return False
    spec = BendSpec(od_mm=od_mm, wall_mm=wall_mm, clr_mm=clr_mm, material=material)
    needed = MandrelNeeded(
        bore_mm=bore(od_mm=od_mm, wall_mm=wall_mm),
        diameter_low_mm=mandrel.low_mm,
        diameter_high_mm=mandrel.high_mm,
        balls_low=mandrel.balls,
        surfaces=mandrel.surfaces,
    )
    match = look_on_shelf(spec, needed, catalogue.value).match
    return match is not None and match.on_hand >= wanted


def has_die(od_mm: Decimal, clr_mm: Decimal, dies: tuple[Die, ...]) -> bool:
    """Whether a die on hand bends a tube of ``od_mm`` [mm] at ``clr_mm`` [mm]."""
    return _has_die(od_mm, clr_mm, Itself(dies))


@lru_cache(maxsize=65536)
def _has_die(od_mm: Decimal, clr_mm: Decimal, dies: Itself[tuple[Die, ...]]) -> bool:
    return die_at(clr_mm, dies_for(od_mm, dies.value)) is not None
