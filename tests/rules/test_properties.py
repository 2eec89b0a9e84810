"""What holds for every request: order, units, scale, alternatives, edges of the shelf."""

from __future__ import annotations

from decimal import Decimal
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bendreply.rules import assess as assessing
from bendreply.rules.alternatives import METRIC_WALLS_MM
from bendreply.rules.assess import assess
from bendreply.rules.assessment import Assessment, Decision
from bendreply.rules.gauges import bwg_mm
from bendreply.rules.request import Material, SizeRequest
from bendreply.rules.shelf import CatalogueMandrel
from bendreply.rules.shop import Shop, sample_shop
from bendreply.rules.standards import BWG_GAUGES
from bendreply.rules.tube import SAME_SIZE_MM, SAME_WALL_MM
from bendreply.rules.units import parse_length

INCH = Decimal("25.4")
MOST_CLEARANCE_MM, LEAST_CLEARANCE_MM = Decimal("0.3"), Decimal("0.1")  # sample_shop/shop.toml
STOCK_ODS_MM = sorted({die.tube_od_mm for die in sample_shop().dies})


def sixty_fourths(lowest: int, highest: int) -> st.SearchStrategy[Decimal]:
    """Lengths in mm, by 1/64 in."""
    return st.integers(lowest, highest).map(lambda n: n * INCH / 64)


ods = st.sampled_from(STOCK_ODS_MM) | sixty_fourths(16, 256)
walls = sixty_fourths(1, 24) | st.integers(20, 250).map(lambda n: n * INCH / 1000)
d_of_bends = st.integers(51, 800).map(lambda n: Decimal(n) / 100)
materials = st.sampled_from(list(Material))
units = st.sampled_from(["in", "mm"])


def judged(
    od_mm: Decimal,
    wall_mm: Decimal | None,
    clr_mm: Decimal | None,
    material: Material | None = Material.CARBON_STEEL,
    written_in: Any = "in",
    shop: Shop | None = None,
) -> Assessment:
    request = SizeRequest(
        od_mm=od_mm, wall_mm=wall_mm, clr_mm=clr_mm, material=material, written_in=written_in
    )
    return assess(request, shop or sample_shop())


RANK = {Decision.DECLINE: 0, Decision.ASK: 1, Decision.CUSTOM_MAKE: 2, Decision.STOCK: 2}
"""From stock or made: both are a yes. Which of them is the shelf's word, not the bend's."""


@given(ods, walls, d_of_bends, d_of_bends, materials)
def test_the_decision_never_gets_worse_as_the_radius_grows(
    od: Decimal, wall: Decimal, one: Decimal, other: Decimal, material: Material
) -> None:
    tight, wide = sorted((one, other))
    before, after = judged(od, wall, tight * od, material), judged(od, wall, wide * od, material)
    assert RANK[before.decision] <= RANK[after.decision] or 2 * wall >= od


@given(ods, walls, walls, d_of_bends, materials)
def test_the_decision_never_gets_worse_as_the_wall_grows(
    od: Decimal, one: Decimal, other: Decimal, k: Decimal, material: Material
) -> None:
    thin, thick = sorted((one, other))
    if od - 2 * thick <= MOST_CLEARANCE_MM:
        return  # the limit of the bore: no mandrel has room
    before, after = judged(od, thin, k * od, material), judged(od, thick, k * od, material)
    assert RANK[before.decision] <= RANK[after.decision]


@given(
    st.integers(16, 256),
    st.integers(1, 24) | st.none(),
    st.integers(16, 1024) | st.none(),
    materials | st.none(),
)
def test_inch_and_mm_forms_of_one_request_get_the_same_answer(
    od: int, wall: int | None, clr: int | None, material: Material | None
) -> None:
    def in_inches(n: int | None) -> Decimal | None:
        return None if n is None else parse_length(f"{n // 64}-{n % 64}/64 in")

    def in_mm(n: int | None) -> Decimal | None:
        return None if n is None else parse_length(f"{float(n) * 25.4 / 64:.6f} mm")

    forms = [(in_inches, "in"), (in_mm, "mm")]
    inch, metric = (
        judged(read(od) or Decimal(0), read(wall), read(clr), material, unit)
        for read, unit in forms
    )
    assert inch.decision is metric.decision
    assert (inch.stock, inch.mandrel) == (metric.stock, metric.mandrel)
    said = [
        [(f.rule, f.effect, f.measured, f.limit, f.field) for f in form.findings]
        for form in (inch, metric)
    ]
    assert said[0] == said[1]


@given(ods, walls, d_of_bends, st.integers(1, 40))
def test_scaling_all_lengths_leaves_the_ratios(
    od: Decimal, wall: Decimal, k: Decimal, quarters: int
) -> None:
    scale = Decimal(quarters) / 4
    one, other = judged(od, wall, k * od), judged(scale * od, scale * wall, scale * k * od)
    assert (one.wall_factor, one.d_of_bend) == (other.wall_factor, other.d_of_bend)
    declined = [[f.rule for f in form.findings if f.effect == "declines"] for form in (one, other)]
    assert declined[0] == declined[1]


@given(ods, walls | st.none(), d_of_bends | st.none(), materials, units)
def test_no_nearer_standard_wall_and_no_nearer_die_than_offered_would_do(
    od: Decimal, wall: Decimal | None, k: Decimal | None, material: Material, unit: Any
) -> None:
    clr = None if k is None else k * od
    found = judged(od, wall, clr, material, unit)
    gauges = [mm for mm in map(bwg_mm, BWG_GAUGES) if mm is not None]
    series = METRIC_WALLS_MM if unit == "mm" else gauges
    dies = [
        die.clr_mm
        for die in sample_shop().dies
        if die.on_hand and abs(die.tube_od_mm - od) <= SAME_SIZE_MM
    ]
    # Brute force: every standard wall and every die, each judged for itself.
    for offer in found.alternatives:
        assert feasible(judged(od, offer.wall_mm, offer.clr_mm, material, unit))
        nearer_walls = [w for w in series if (wall or 0) <= w < offer.wall_mm]
        assert not any(feasible(judged(od, w, offer.clr_mm, material, unit)) for w in nearer_walls)
        nearer_dies = [c for c in dies if (clr or 0) <= c < offer.clr_mm]
        assert not any(feasible(judged(od, offer.wall_mm, c, material, unit)) for c in nearer_dies)
        assert offer.wall_mm == wall or offer.wall_mm in series
        # Without a die on hand: the smallest CLR of all, 2.5 x OD.
        assert offer.clr_mm == clr or offer.clr_mm in dies or offer.clr_mm == od * Decimal("2.5")
    if found.decision is Decision.DECLINE and not found.alternatives and is_possible(od, wall, clr):
        far = 20 * od
        assert not any(feasible(judged(od, w, far, material, unit)) for w in series)


def feasible(found: Assessment) -> bool:
    return found.decision in (Decision.STOCK, Decision.CUSTOM_MAKE)


def is_possible(od: Decimal, wall: Decimal | None, clr: Decimal | None) -> bool:
    return (wall is None or 2 * wall < od) and (clr is None or 2 * clr > od)


# -- the shelf ---------------------------------------------------------------------------------


def shop_with(od: Decimal, wall: Decimal, clearance: Decimal) -> Shop:
    """A shop whose one mandrel is for that tube, from 3 to 6 D."""
    mandrel = CatalogueMandrel.model_construct(
        part="A",
        tube_od_mm=od,
        tube_wall_min_mm=wall,
        tube_wall_max_mm=wall,
        mandrel_diameter_mm=od - 2 * wall - clearance,
        balls=9,
        surface="chromed tool steel",
        clr_min_mm=3 * od,
        clr_max_mm=6 * od,
        on_hand=1,
        price=None,
    )
    return sample_shop().model_copy(update={"catalogue": (mandrel,)})


HAIR = Decimal("0.0001")
EDGES = [
    # what is moved, how far it may be, and how far it is moved before the edge
    ("clr", SAME_SIZE_MM, lambda od: 6 * od, 1),
    ("clr", SAME_SIZE_MM, lambda od: 3 * od, -1),
    ("wall", SAME_WALL_MM, None, 1),
    ("wall", SAME_WALL_MM, None, -1),
    ("od", SAME_SIZE_MM, None, 1),
    ("od", SAME_SIZE_MM, None, -1),
]


@pytest.mark.parametrize(
    ("moved", "slack", "start", "way"), EDGES, ids=[f"{e[0]} {e[3]:+d}" for e in EDGES]
)
@given(od=sixty_fourths(64, 200), share=st.integers(5, 25), unit=units)
def test_a_mandrel_serves_up_to_its_edges_and_no_further(
    moved: str, slack: Decimal, start: Any, way: int, od: Decimal, share: int, unit: Any
) -> None:
    wall = od / share
    shop = shop_with(od, wall, Decimal("0.2"))
    for beyond, serves in ((Decimal(0), True), (HAIR, False)):
        by = way * (slack + beyond)
        size = {"od": od, "wall": wall, "clr": start(od) if start else 4 * od}
        size[moved] += by
        found = judged(size["od"], size["wall"], size["clr"], written_in=unit, shop=shop)
        assert (found.decision is Decision.STOCK) is serves


@given(sixty_fourths(64, 200), st.integers(5, 25), units)
def test_a_mandrel_serves_with_the_least_and_most_clearance_and_no_other(
    od: Decimal, share: int, unit: Any
) -> None:
    wall = od / share
    for clearance, serves in (
        (LEAST_CLEARANCE_MM, True),
        (LEAST_CLEARANCE_MM - HAIR, False),
        (MOST_CLEARANCE_MM, True),
        (MOST_CLEARANCE_MM + HAIR, False),
    ):
        # The bore has 28 digits; what the mandrel lacks of it has to be as exact.
        shop = shop_with(od, wall, clearance)
        found = judged(od, wall, 4 * od, written_in=unit, shop=shop)
        assert (found.decision is Decision.STOCK) is serves


# -- what is remembered changes nothing --------------------------------------------------------


@given(ods, walls, d_of_bends, materials, units)
def test_an_answer_is_the_same_whatever_was_asked_before(
    od: Decimal, wall: Decimal, k: Decimal, material: Material, unit: Any
) -> None:
    remembered = judged(od, wall, k * od, material, unit)
    assessing._judged.cache_clear()
    assert judged(od, wall, k * od, material, unit) == remembered


def test_another_shelf_is_another_answer_for_the_same_request() -> None:
    od, wall = parse_length("1.75 in"), parse_length("0.120 in")
    empty = sample_shop().model_copy(update={"catalogue": ()})
    assert judged(od, wall, 3 * od).decision is Decision.STOCK
    assert judged(od, wall, 3 * od, shop=empty).decision is Decision.CUSTOM_MAKE
    assert judged(od, wall, 3 * od).decision is Decision.STOCK
