"""Is a mandrel needed: both sides of each published threshold."""

from __future__ import annotations

import csv
from decimal import Decimal
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bendreply.rules.needed import Needed, mandrel_need
from bendreply.rules.request import Material

CHECK_VALUES = Path(__file__).parents[1] / "data" / "check_values.csv"
STEEL, COPPER = Material.CARBON_STEEL, Material.COPPER
NEEDED, EITHER, EMPTY = "needed", "either", "may not be needed"

THRESHOLDS = [
    # wall factor, D of bend, material, verdict, source
    ("12", "1.5", STEEL, NEEDED, "S03"),  # D <= 1.5: almost always
    ("12", "1.51", STEEL, EITHER, "S03, M"),
    ("20.01", "3", STEEL, NEEDED, "S01"),  # over 20: in most cases
    ("20", "3", STEEL, EITHER, "S03, S01, house rule"),
    ("15", "2", STEEL, EITHER, "S03, S01, house rule"),  # the two differ from 15 to 20
    ("15", "1.99", STEEL, NEEDED, "S03"),
    ("14.99", "3", STEEL, EMPTY, "M"),
    ("14.99", "2.99", STEEL, EITHER, "S03, M"),
    ("10", "2", STEEL, EMPTY, "M"),
    ("10.01", "2", STEEL, EITHER, "S03, M"),
    ("15", "2", COPPER, EITHER, "S03, S01, house rule"),
    ("14.99", "2", COPPER, EMPTY, "S10"),  # up to 15 at 2 D without, by S10
    ("15.01", "2.5", COPPER, NEEDED, "S10"),
    ("15.01", "2.51", COPPER, EITHER, "S10"),
]


@pytest.mark.parametrize(("wall_factor", "d", "material", "verdict", "source"), THRESHOLDS)
def test_each_threshold(
    wall_factor: str, d: str, material: Material, verdict: Needed, source: str
) -> None:
    found = mandrel_need(wall_factor=Decimal(wall_factor), d_of_bend=Decimal(d), material=material)
    assert (found.needed, found.source) == (verdict, source)
    for key in source.split(", "):
        assert key in found.why


def test_the_copper_limit_is_that_of_the_source() -> None:
    with CHECK_VALUES.open(encoding="utf-8") as file:
        (row,) = [row for row in csv.DictReader(file) if row["topic"] == "copper_no_mandrel_limit"]
    limit = Decimal(row["expected"])  # S10, at 2 D
    above = mandrel_need(wall_factor=limit + Decimal("0.01"), d_of_bend=Decimal(2), material=COPPER)
    on_it = mandrel_need(wall_factor=limit, d_of_bend=Decimal(2), material=COPPER)
    assert above.needed == NEEDED
    assert on_it.needed != NEEDED


ORDER = [EMPTY, EITHER, NEEDED]
RATIOS = st.decimals(min_value="2.01", max_value=60, places=2)
BENDS = st.decimals(min_value="0.51", max_value=10, places=2)


@given(RATIOS, RATIOS, BENDS, st.sampled_from([STEEL, COPPER, Material.ALUMINIUM, None]))
def test_a_thinner_wall_never_needs_it_less(
    one: Decimal, other: Decimal, d: Decimal, material: Material | None
) -> None:
    heavy, thin = sorted((one, other))
    verdicts = [
        mandrel_need(wall_factor=w, d_of_bend=d, material=material).needed for w in (heavy, thin)
    ]
    assert ORDER.index(verdicts[0]) <= ORDER.index(verdicts[1])


@given(RATIOS, BENDS, BENDS, st.sampled_from([STEEL, COPPER, Material.ALUMINIUM, None]))
def test_a_larger_radius_never_needs_it_more(
    w: Decimal, one: Decimal, other: Decimal, material: Material | None
) -> None:
    tight, wide = sorted((one, other))
    verdicts = [
        mandrel_need(wall_factor=w, d_of_bend=d, material=material).needed for d in (tight, wide)
    ]
    assert ORDER.index(verdicts[1]) <= ORDER.index(verdicts[0])
