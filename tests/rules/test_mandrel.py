"""The mandrel a bend calls for: bore less clearance, and the surface for the tube's material."""

from __future__ import annotations

import csv
from decimal import Decimal
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bendreply.rules.advance import advance_advised, advance_max
from bendreply.rules.ball_chart import BallChart
from bendreply.rules.bend import BendSpec
from bendreply.rules.mandrel import BRONZE, CHROME, mandrel_needed, surface_notes, surfaces_for
from bendreply.rules.request import Material
from bendreply.rules.shop import sample_shop
from bendreply.rules.shop_settings import ClearanceRule
from bendreply.rules.tolerances import make_named
from bendreply.rules.units import parse_length

RULE = ClearanceRule.model_validate(
    {
        "reason": "test",
        "bands": [
            {"tube_od_up_to": "1 in", "low": "0.05 mm", "high": "0.15 mm"},
            {"tube_od_up_to": "4 in", "low": "0.10 mm", "high": "0.30 mm"},
        ],
    }
)


def spec(od: str, wall: str, material: Material | None = None) -> BendSpec:
    od_mm = parse_length(od)
    return BendSpec(od_mm=od_mm, wall_mm=parse_length(wall), clr_mm=3 * od_mm, material=material)


def test_the_diameter_range_is_the_bore_less_the_clearance() -> None:
    # 1.75 - 2 x 0.120 = 1.510 in = 38.354 mm; less 0.30 and 0.10 mm
    needed = mandrel_needed(spec("1.75 in", "0.120 in"), RULE)
    assert needed is not None
    assert needed.bore_mm == Decimal("38.354")
    assert needed.diameter_low_mm == Decimal("38.054")
    assert needed.diameter_high_mm == Decimal("38.254")


@pytest.mark.parametrize(
    ("od", "low_mm", "high_mm"),
    [
        ("25.4 mm", "23.25", "23.35"),  # exactly the end of the first band: bore 23.4
        ("25.5 mm", "23.20", "23.40"),  # just above it: bore 23.5
        ("101.6 mm", "99.30", "99.50"),  # the end of the last band: bore 99.6
    ],
)
def test_the_clearance_follows_the_od(od: str, low_mm: str, high_mm: str) -> None:
    needed = mandrel_needed(spec(od, "1 mm"), RULE)
    assert needed is not None
    assert (needed.diameter_low_mm, needed.diameter_high_mm) == (Decimal(low_mm), Decimal(high_mm))


@pytest.mark.parametrize(
    ("od", "wall"), [("102 mm", "2 mm"), ("6 mm", "2.95 mm")], ids=["beyond the rule", "no bore"]
)
def test_where_nothing_can_be_worked_out_nothing_is_said(od: str, wall: str) -> None:
    assert mandrel_needed(spec(od, wall), RULE) is None


@pytest.mark.parametrize(
    ("material", "surfaces"),
    [
        (Material.ALUMINIUM, {CHROME}),  # never bronze: S07, S08, S09 agree
        (Material.STAINLESS_STEEL, {BRONZE}),  # not chrome: S04
        (Material.CARBON_STEEL, {BRONZE, CHROME}),  # either: S07
        (Material.ALLOY_STEEL, {BRONZE, CHROME}),  # as carbon steel, from memory
        (Material.TITANIUM, {BRONZE}),  # S01, S04
        (Material.NICKEL_ALLOY, {BRONZE}),  # S01, S04
        (Material.COPPER, {CHROME}),  # S04, S07
        (Material.BRASS, {CHROME}),  # S07
        (Material.OTHER, set()),
        (None, set()),
    ],
)
def test_the_surface_suits_the_material(material: Material | None, surfaces: set[str]) -> None:
    assert set(surfaces_for(material)) == surfaces
    needed = mandrel_needed(spec("2 in", "0.083 in", material), RULE)
    assert needed is not None
    assert set(needed.surfaces) == surfaces


def test_the_smallest_bore_counts_weld_bead_included() -> None:
    # ERW, flash in: (1.5 - 0.005) - 2 x 0.065 - 0.065 = 1.300 in = 33.02 mm
    needed = mandrel_needed(spec("1.5 in", "0.065 in"), RULE, make=make_named("ERW flash-in"))
    assert needed is not None
    assert (needed.bore_mm, needed.bore_low_mm) == (Decimal("34.798"), Decimal("33.02"))
    assert needed.diameter_low_mm == Decimal("32.72")
    assert needed.diameter_high_mm == Decimal("32.92")


def test_without_a_make_only_the_nominal_bore_is_known_and_that_is_said() -> None:
    needed = mandrel_needed(spec("1.5 in", "0.065 in"), RULE)
    assert needed is not None
    assert (needed.bore_low_mm, needed.bore_high_mm) == (None, None)
    assert needed.notes[0].startswith("nominal bore: how the tube is made")


def test_the_chart_gives_balls_nose_and_pitch() -> None:
    # 2 x 0.065 in at 3 D: wall factor 30.8, over 30 up to 40, D over 2.5 up to 4 (balls.csv)
    bend = spec("2 in", "0.065 in", Material.COPPER)
    needed = mandrel_needed(bend, RULE, chart=sample_shop().balls)
    assert needed is not None
    assert (needed.balls_low, needed.balls_high) == (1, 2)
    assert (needed.nose, needed.pitch, needed.wiper) == ("ball", "regular", "maybe")
    assert any("the shop has none, and its limits" in note for note in needed.notes)
    with_wipers = mandrel_needed(bend, RULE, chart=sample_shop().balls, wiper_dies=True)
    assert with_wipers is not None
    assert not any("the shop has none" in note for note in with_wipers.notes)


def test_without_a_chart_no_balls_are_named() -> None:
    needed = mandrel_needed(spec("2 in", "0.065 in", Material.COPPER), RULE, chart=BallChart())
    assert needed is not None
    assert (needed.balls_low, needed.balls_high, needed.pitch) == (None, None, None)
    assert any("no ball chart" in note for note in needed.notes)


def test_the_advance_is_for_the_middle_of_the_range_and_the_table_differs() -> None:
    # 38 x 1.6 at 114: ID 34.8; middle clearance 0.20 mm on diameter, so z = 0.10 mm
    needed = mandrel_needed(spec("38 mm", "1.6 mm"), RULE)
    assert needed is not None
    setting = {
        "clr_mm": Decimal(114),
        "bore_mm": Decimal("34.8"),
        "radial_clearance_mm": Decimal("0.1"),
    }
    assert needed.advance_max_mm == advance_max(**setting)
    assert needed.advance_mm == advance_advised(**setting)
    assert needed.advance_table_mm == Decimal("5.5")  # S06, 30 to 44 mm
    apart = Decimal("5.5") - advance_advised(**setting)
    assert any(f"5.5 mm (S06), {apart} mm more" in note for note in needed.notes)


@pytest.mark.parametrize(
    ("material", "told"),
    [
        (Material.CARBON_STEEL, "sources differ on which is better"),
        (Material.STAINLESS_STEEL, "S07 also lists chrome for ferrous tube: conflict"),
        (Material.TITANIUM, "is not meant for titanium"),
        (Material.NICKEL_ALLOY, "chromed tool steel: sometimes (S04)"),
        (Material.ALUMINIUM, "aluminium bronze: never (S07,S08,S09; galling"),
    ],
)
def test_what_the_sources_say_between_surfaces_is_told(material: Material, told: str) -> None:
    assert any(told in note for note in surface_notes(material))
    needed = mandrel_needed(spec("2 in", "0.083 in", material), RULE)
    assert needed is not None
    assert set(surface_notes(material)) <= set(needed.notes)


def test_the_sample_clearance_is_within_common_practice() -> None:
    # C69: no published figure; common practice, no source
    with (Path(__file__).parents[1] / "data" / "check_values.csv").open(encoding="utf-8") as file:
        (row,) = [r for r in csv.DictReader(file) if r["topic"] == "thin_wall_mandrel_clearance"]
    middle, within = Decimal(row["expected"]), Decimal(row["tolerance"])
    for band in sample_shop().mandrel_clearance.bands:
        assert abs(band.low_mm - middle) <= within
        assert abs(band.high_mm - middle) <= within


CLEARANCES = st.integers(1, 900).map(lambda n: Decimal(n) / 1000)
WORDS = st.sampled_from(["", "DOM", "ERW", "ERW flash-in", "A269", "EN 10305-1", "EN 10296-2"])


def rule_of(low_mm: Decimal, high_mm: Decimal) -> ClearanceRule:
    bands = [{"low": f"{low_mm} mm", "high": f"{high_mm} mm"}]
    return ClearanceRule.model_validate({"reason": "test", "bands": bands})


@given(CLEARANCES, CLEARANCES, CLEARANCES, WORDS)
def test_more_clearance_never_makes_a_mandrel_bigger(
    one: Decimal, other: Decimal, more: Decimal, words: str
) -> None:
    low, high = sorted((one, other))
    bend, make = spec("1.5 in", "0.065 in"), make_named(words)
    tight = mandrel_needed(bend, rule_of(low, high), make=make)
    loose = mandrel_needed(bend, rule_of(low + more, high + more), make=make)
    assert tight is not None
    assert loose is not None
    assert loose.diameter_high_mm < tight.diameter_high_mm
    assert loose.diameter_low_mm < tight.diameter_low_mm
    width = tight.diameter_high_mm - tight.diameter_low_mm
    assert loose.diameter_high_mm - loose.diameter_low_mm == width == high - low


@given(CLEARANCES, CLEARANCES, WORDS)
def test_a_make_never_asks_for_a_bigger_mandrel_than_the_nominal_bore(
    one: Decimal, other: Decimal, words: str
) -> None:
    rule = rule_of(*sorted((one, other)))
    nominal = mandrel_needed(spec("38.1 mm", "1.651 mm"), rule)
    made = mandrel_needed(spec("1.5 in", "0.065 in"), rule, make=make_named(words))
    assert nominal is not None
    assert made is not None
    assert made.diameter_high_mm <= nominal.diameter_high_mm
