"""What the shelf lacks: the mandrels to make next, and the CLRs that no die has."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from decimal import Decimal
from typing import TYPE_CHECKING

from ..rules.assessment import Decision
from ..rules.demand import (
    Need,
    Plan,
    ToMake,
    demand_weight,
    has_die,
    shelf_serves,
    what_to_make,
)
from ..rules.request import Shape
from .report_count import Asked, Size, join_twins

if TYPE_CHECKING:
    from ..rules.shop import Shop

MOST_MANDRELS = 5


@dataclass(frozen=True, slots=True)
class MissingDie:
    """A CLR asked for that no die on hand bends. Lengths in mm."""

    od_mm: Decimal
    clr_mm: Decimal
    customers: int
    requests: int
    who: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Demand:
    """What the requests of some weeks mean for the shelf."""

    weeks: int
    customers: int
    """Whose feasible request no mandrel on the shelf serves."""
    weight: int
    """Theirs, in thousandths."""
    plans: tuple[Plan, ...]
    """For 1, 2 ... mandrels."""
    without_mandrel: int
    """Further customers for whom no mandrel can be named: no clearance or surface on record."""
    unsettled: int
    """Customers with a request that is in doubt or to be asked about: not counted in."""
    dies: tuple[MissingDie, ...]
    """Most customers first."""


def demand(weeks: Sequence[Sequence[Asked]], shop: Shop) -> Demand:
    """The demand of ``weeks``, the latest last, as the shelf is now."""
    needs: list[Need] = []
    nameless: set[str] = set()
    unsettled: set[str] = set()
    for ago, rows in enumerate(reversed(weeks)):
        weights = {
            buying: demand_weight(buying=buying, weeks_ago=ago, settings=shop.report)
            for buying in (False, True)
        }
        for row in rows:
            if row.decision is Decision.ASK or (row.doubtful and row.decision is not _DECLINED):
                unsettled.add(row.customer)
            elif row.decision is Decision.CUSTOM_MAKE and not _on_shelf(row, shop):
                if row.mandrel is None or not row.mandrel.surfaces:
                    nameless.add(row.customer)
                else:
                    needs.append(Need(row.customer, weights[row.buying], row.mandrel, row))
    heaviest: defaultdict[str, int] = defaultdict(int)
    for need in needs:
        heaviest[need.customer] = max(heaviest[need.customer], need.weight)
    return Demand(
        weeks=len(weeks),
        customers=len(heaviest),
        weight=sum(heaviest.values()),
        plans=what_to_make(needs, MOST_MANDRELS),
        without_mandrel=len(nameless - heaviest.keys()),
        unsettled=len(unsettled - heaviest.keys()),
        dies=tuple(_missing_dies((row for rows in weeks for row in rows), shop)),
    )


_DECLINED = Decision.DECLINE


def _on_shelf(row: Asked, shop: Shop) -> bool:
    """Whether what is on hand now serves what nothing served when it was asked for."""
    size = row.size
    if size is None or row.mandrel is None or row.material is None:
        return False
    return shelf_serves(
        od_mm=size.od_mm,
        wall_mm=size.wall_mm,
        clr_mm=size.clr_mm,
        material=row.material,
        mandrel=row.mandrel,
        wanted=row.wanted or 1,
        catalogue=shop.catalogue,
    )


def _missing_dies(rows: Iterable[Asked], shop: Shop) -> Iterator[MissingDie]:
    asked: defaultdict[Size, list[Asked]] = defaultdict(list)
    for row in rows:
        size = row.size
        feasible = row.decision in (Decision.STOCK, Decision.CUSTOM_MAKE) and not row.doubtful
        if size is None or not feasible or row.shape is not Shape.ROUND:
            continue
        if not has_die(size.od_mm, size.clr_mm, shop.dies):
            asked[Size(size.od_mm, Decimal(0), size.clr_mm)].append(row)  # a die knows no wall
    found = []
    for twins in join_twins(asked):
        together = [row for twin in twins for row in asked[twin]]
        usual = min(twins, key=lambda twin: (-len(asked[twin]), twin))
        who = tuple(sorted({row.customer for row in together}))
        found.append(MissingDie(usual.od_mm, usual.clr_mm, len(who), len(together), who))
    yield from sorted(found, key=lambda one: (-one.customers, -one.requests, one.od_mm, one.clr_mm))


def tubes(mandrel: ToMake) -> list[tuple[Asked, int]]:
    """The tubes that a mandrel would serve: a request of each, and its customers, most first."""
    customers: defaultdict[tuple[Decimal | None, Decimal | None], set[str]] = defaultdict(set)
    example: dict[tuple[Decimal | None, Decimal | None], Asked] = {}
    for row in requests(mandrel):
        key = (row.od_mm, row.wall_mm)
        customers[key].add(row.customer)
        example.setdefault(key, row)
    order = sorted(customers, key=lambda key: (-len(customers[key]), key[0] or 0, key[1] or 0))
    return [(example[key], len(customers[key])) for key in order]


def requests(mandrel: ToMake) -> list[Asked]:
    """The requests that a mandrel would serve."""
    return [need.about for need in mandrel.serves if isinstance(need.about, Asked)]


def balls_wanted(mandrel: ToMake) -> Counter[int]:
    """How many of its requests need at least so many balls."""
    return Counter(n.mandrel.balls for n in mandrel.serves if n.mandrel.balls is not None)
