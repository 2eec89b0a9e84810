"""What to make next: the optimum against all possibilities, weights, the shelf as it is now."""

from __future__ import annotations

import random
from decimal import Decimal
from itertools import combinations
from typing import ClassVar

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bendreply.rules import stabbing
from bendreply.rules.demand import (
    MandrelRange,
    Need,
    demand_weight,
    has_die,
    shelf_serves,
    what_to_make,
)
from bendreply.rules.request import Material
from bendreply.rules.shop import sample_shop
from bendreply.rules.shop_report import ReportSettings
from bendreply.rules.stabbing import Party, best_choices

from ..pace import assert_quick

CHROME, BRONZE = "chromed tool steel", "aluminium bronze"


def need(
    customer: str,
    low: str,
    high: str,
    *surfaces: str,
    weight: int = 1000,
    balls: int | None = 0,
) -> Need:
    mandrel = MandrelRange(Decimal(low), Decimal(high), balls, surfaces or (CHROME,))
    return Need(customer, weight, mandrel)


def all_possibilities(needs: list[Need], k: int) -> int:
    """The greatest weight that k mandrels serve, by trying every k of all edges and surfaces."""
    places = {
        (surface, edge)
        for one in needs
        for surface in one.mandrel.surfaces
        for edge in (one.mandrel.low_mm, one.mandrel.high_mm)
    }
    weights: dict[str, int] = {}
    for one in needs:
        weights[one.customer] = max(weights.get(one.customer, 0), one.weight)
    best = 0
    for chosen in combinations(sorted(places), min(k, len(places))):
        served = {
            one.customer
            for one in needs
            for surface, mm in chosen
            if surface in one.mandrel.surfaces and one.mandrel.low_mm <= mm <= one.mandrel.high_mm
        }
        best = max(best, sum(weights[customer] for customer in served))
    return best


def drawn(chance: random.Random) -> list[Need]:
    """A small instance: customers with one request or several, on one surface or both."""
    needs = []
    for _ in range(chance.randint(1, 9)):
        low = chance.randint(200, 230)
        surfaces = chance.choice([(CHROME,), (BRONZE,), (BRONZE, CHROME)])
        needs.append(
            need(
                f"customer {chance.randint(1, 6)}",
                f"{low / 10}",
                f"{(low + chance.randint(0, 8)) / 10}",
                *surfaces,
                weight=chance.choice([1, 500, 1000, 2844, 3000]),
            )
        )
    return needs


def test_the_plan_is_the_best_of_all_on_500_drawn_instances() -> None:
    chance = random.Random(20261122)
    for _ in range(500):
        needs = drawn(chance)
        plans = what_to_make(needs, 3)
        for k in (1, 2, 3):
            plan = plans[min(k, len(plans)) - 1]
            assert plan.weight == all_possibilities(needs, k), needs
            assert plan.proven


def test_a_customer_of_two_sizes_counts_once() -> None:
    # 20.0 serves a, b, c; 30.0 a and b again; 40.0 d; 50.0 e. The best two serve four, the best
    # three all five, and 30.0, which two requests ask for, is never among them.
    needs = [
        need("a", "20.0", "20.1"),
        need("b", "20.0", "20.1"),
        need("c", "20.0", "20.1"),
        need("a", "30.0", "30.1"),
        need("b", "30.0", "30.1"),
        need("d", "40.0", "40.1"),
        need("e", "50.0", "50.1"),
    ]
    one, two, three = what_to_make(needs, 3)
    assert [plan.customers for plan in (one, two, three)] == [3, 4, 5]
    assert one.mandrels[0].low_mm == Decimal("20.0")
    assert Decimal("30.0") not in {m.low_mm for plan in (two, three) for m in plan.mandrels}


def test_greedy_would_be_wrong_here() -> None:
    # One mandrel is best at 2.5, which meets 3 + 3 = 6; from there, one more makes it 8. The two
    # ends meet 2 + 3 = 5 each: 10, all there is.
    needs = [
        need("left only", "1.0", "2.0", weight=2),
        need("left", "1.0", "2.5", weight=3),
        need("right", "2.5", "4.0", weight=3),
        need("right only", "3.0", "4.0", weight=2),
    ]
    one, two = what_to_make(needs, 5)
    assert one.weight == 6
    assert two.weight == 10


def test_a_mandrel_is_told_with_its_range_balls_and_whom_it_serves() -> None:
    needs = [
        need("a", "20.00", "20.20", balls=0),
        need("b", "20.15", "20.30", BRONZE, CHROME, balls=2),
        need("c", "20.00", "20.10", BRONZE, balls=None),
    ]
    (mandrel,) = what_to_make(needs, 1)[0].mandrels
    assert (mandrel.low_mm, mandrel.high_mm) == (Decimal("20.15"), Decimal("20.20"))
    assert (mandrel.surface, mandrel.balls, mandrel.customers) == (CHROME, 2, 2)
    assert {one.customer for one in mandrel.serves} == {"a", "b"}


def test_ranges_that_only_touch_share_a_mandrel() -> None:
    (plan,) = what_to_make([need("a", "20.0", "20.2"), need("b", "20.2", "20.4")], 5)
    assert plan.customers == 2
    assert plan.mandrels[0].low_mm == plan.mandrels[0].high_mm == Decimal("20.2")


def test_nothing_wanted_makes_no_plan() -> None:
    assert what_to_make([], 5) == ()
    assert what_to_make([need("a", "20", "21", weight=0)], 5) == ()


@given(st.randoms(use_true_random=False))
@settings(max_examples=60)
def test_the_order_of_arrival_changes_nothing(chance: random.Random) -> None:
    needs = drawn(chance)
    shuffled = needs[:]
    chance.shuffle(shuffled)
    assert [(p.weight, p.customers) for p in what_to_make(needs)] == [
        (p.weight, p.customers) for p in what_to_make(shuffled)
    ]


@given(st.randoms(use_true_random=False))
@settings(max_examples=60)
def test_the_same_again_by_the_same_customer_changes_nothing(chance: random.Random) -> None:
    needs = drawn(chance)
    again = [*needs, chance.choice(needs)]
    assert [p.customers for p in what_to_make(needs)] == [p.customers for p in what_to_make(again)]


@pytest.mark.parametrize("customers", [5000, 2000, 1000])
def test_five_thousand_requests_are_planned_in_two_seconds(customers: int) -> None:
    chance = random.Random(5)
    needs = []
    for number in range(5000):
        low = Decimal(chance.randint(10_000, 100_000)) / 1000
        needs.append(
            Need(
                f"customer {number % customers}",
                chance.randint(1, 3000),
                MandrelRange(low, low + Decimal("0.2"), 1, chance.choice([(CHROME,), (BRONZE,)])),
            )
        )
    assert_quick(lambda: what_to_make(needs), within=2, tries=2)
    plans = what_to_make(needs)
    assert len(plans) == 5
    assert all(plan.proven for plan in plans)


def test_a_search_given_up_says_so(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(stabbing, "MOST_WORK", 0)
    # Two customers at every place: the bound counts both twice, so one programme proves nothing.
    parties = [Party(2, ((0, 0), (2, 2))), Party(2, ((0, 0), (4, 4))), Party(1, ((2, 2), (4, 4)))]
    assert not best_choices(parties, 2)[-1].proven


class TestWeights:
    # w = w0 / 2^(a / h), in thousandths
    @pytest.mark.parametrize(
        ("buying", "weeks_ago", "expected"),
        [(True, 0, 3000), (False, 0, 1000), (True, 13, 1500), (False, 26, 250), (True, 52, 188)],
    )
    def test_a_weight_halves_with_each_half_life(
        self, buying: bool, weeks_ago: int, expected: int
    ) -> None:
        settings = ReportSettings(weight_buying=3, weight_asking=1, half_life_weeks=13)
        assert demand_weight(buying=buying, weeks_ago=weeks_ago, settings=settings) == expected


class TestShelf:
    # FM-1750-095: 1.75 in tube, wall 0.0945 to 0.096 in, 1.55 in = 39.37 mm, 1 ball, chromed,
    # CLR 4.375 to 10.5 in, 2 on hand (catalogue of the sample shop)
    TUBE: ClassVar = {
        "od_mm": Decimal("44.45"),
        "wall_mm": Decimal("2.413"),
        "clr_mm": Decimal("133.35"),
        "material": Material.CARBON_STEEL,
    }
    FITS = MandrelRange(Decimal("39.324"), Decimal("39.524"), 1, (CHROME,))

    @pytest.mark.parametrize(
        ("mandrel", "wanted", "serves"),
        [
            (FITS, 1, True),
            (FITS, 2, True),
            (FITS, 3, False),
            (MandrelRange(Decimal("39.324"), Decimal("39.36"), 1, (CHROME,)), 1, False),
            (MandrelRange(Decimal("39.324"), Decimal("39.524"), 2, (CHROME,)), 1, False),
            (MandrelRange(Decimal("39.324"), Decimal("39.524"), 1, (BRONZE,)), 1, False),
        ],
    )
    def test_what_is_on_hand_now_decides(
        self, mandrel: MandrelRange, wanted: int, serves: bool
    ) -> None:
        found = shelf_serves(
            **self.TUBE, mandrel=mandrel, wanted=wanted, catalogue=sample_shop().catalogue
        )
        assert found is serves
        assert not shelf_serves(**self.TUBE, mandrel=mandrel, wanted=wanted, catalogue=())

    def test_a_die_is_there_or_not(self) -> None:
        dies = sample_shop().dies  # FD-1750-525: 1.75 in at 5.25 in
        assert has_die(Decimal("44.45"), Decimal("133.35"), dies)
        assert not has_die(Decimal("44.45"), Decimal("140"), dies)
