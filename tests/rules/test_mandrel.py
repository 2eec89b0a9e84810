"""The mandrel a bend calls for: bore less clearance, and the surface for the tube's material."""

from __future__ import annotations

from decimal import Decimal

import pytest

from bendreply.rules.bend import BendSpec
from bendreply.rules.mandrel import BRONZE, CHROME, mandrel_needed, surfaces_for
from bendreply.rules.request import Material
from bendreply.rules.shop_settings import ClearanceRule
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
