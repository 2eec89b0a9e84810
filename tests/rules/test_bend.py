"""D of bend, and every way of giving a radius turned into the centreline radius."""

from __future__ import annotations

import csv
import json
from decimal import Decimal
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import ValidationError

from bendreply.rules.bend import (
    BendSpec,
    ImpossibleSize,
    clr_from_d,
    clr_from_inside_radius,
    clr_from_outside_radius,
    d_of_bend,
    is_possible_clr,
)
from bendreply.rules.request import Material
from bendreply.rules.standards import pipe_od_mm

CHECK_VALUES = Path(__file__).parents[1] / "data" / "check_values.csv"


def check_values(topic: str) -> list[tuple[dict[str, Decimal], Decimal, Decimal]]:
    with CHECK_VALUES.open(encoding="utf-8") as file:
        rows = [row for row in csv.DictReader(file) if row["topic"] == topic]
    assert rows
    return [
        (
            json.loads(row["inputs"], parse_float=Decimal, parse_int=Decimal),
            Decimal(row["expected"]),
            Decimal(row["tolerance"]),
        )
        for row in rows
    ]


@pytest.mark.parametrize(("sizes", "expected", "within"), check_values("d_of_bend"))
def test_d_of_bend_as_published(
    sizes: dict[str, Decimal], expected: Decimal, within: Decimal
) -> None:
    found = d_of_bend(clr_mm=sizes["clr_in"], od_mm=sizes["od_in"])  # a ratio: inches will do
    assert abs(found - expected) <= within


@pytest.mark.parametrize(("sizes", "expected", "within"), check_values("clr_from_inside_radius"))
def test_clr_from_inside_radius_as_published(
    sizes: dict[str, Decimal], expected: Decimal, within: Decimal
) -> None:
    found = clr_from_inside_radius(inside_radius_mm=sizes["inside_r_mm"], od_mm=sizes["od_mm"])
    assert abs(found - expected) <= within


@pytest.mark.parametrize(("sizes", "expected", "within"), check_values("clr_from_nD_tube_OD"))
def test_2d_of_a_tube_counts_its_od(
    sizes: dict[str, Decimal], expected: Decimal, within: Decimal
) -> None:
    assert abs(clr_from_d(n=sizes["nD"], od_mm=sizes["od_mm"]) - expected) <= within


@pytest.mark.parametrize(("sizes", "expected", "within"), check_values("clr_from_nD_nominal_pipe"))
def test_2d_of_pipe_can_also_count_the_nominal_size(
    sizes: dict[str, Decimal], expected: Decimal, within: Decimal
) -> None:
    nominal_mm = sizes["nps_in"] * Decimal("25.4")
    assert abs(clr_from_d(n=sizes["nD"], od_mm=nominal_mm) - expected) <= within
    real_od = pipe_od_mm(str(sizes["nps_in"]))
    assert real_od is not None
    # The two readings lie further apart than any tolerance: hence the reader's doubt.
    assert clr_from_d(n=sizes["nD"], od_mm=real_od) - expected > 10


@pytest.mark.parametrize(("sizes", "expected", "within"), check_values("smallest_possible_clr"))
def test_the_smallest_possible_clr_is_half_the_od(
    sizes: dict[str, Decimal], expected: Decimal, within: Decimal
) -> None:
    assert not is_possible_clr(od_mm=sizes["od_mm"], clr_mm=expected)
    assert is_possible_clr(od_mm=sizes["od_mm"], clr_mm=expected + max(within, Decimal("0.001")))


_LENGTHS = st.decimals(min_value="0.01", max_value=3000, places=5)


@given(_LENGTHS, _LENGTHS)
def test_inside_and_outside_radius_lead_to_the_same_clr(inside: Decimal, od_mm: Decimal) -> None:
    clr_mm = clr_from_inside_radius(inside_radius_mm=inside, od_mm=od_mm)
    assert clr_from_outside_radius(outside_radius_mm=inside + od_mm, od_mm=od_mm) == clr_mm
    assert is_possible_clr(od_mm=od_mm, clr_mm=clr_mm)


@given(st.decimals(min_value="0.51", max_value=50, places=3), _LENGTHS)
def test_n_times_d_is_n_d_again(n: Decimal, od_mm: Decimal) -> None:
    assert d_of_bend(clr_mm=clr_from_d(n=n, od_mm=od_mm), od_mm=od_mm) == n


def test_impossible_bends_are_refused_with_their_figures() -> None:
    with pytest.raises(ImpossibleSize, match="50 mm OD can't be bent to a CLR of 25 mm"):
        d_of_bend(clr_mm=Decimal(25), od_mm=Decimal(50))
    with pytest.raises(ImpossibleSize, match=r"50 mm OD can't be bent to 0\.5 D"):
        clr_from_d(n=Decimal("0.5"), od_mm=Decimal(50))
    with pytest.raises(ImpossibleSize, match="outside radius of 50 mm"):
        clr_from_outside_radius(outside_radius_mm=Decimal(50), od_mm=Decimal(50))
    with pytest.raises(ImpossibleSize, match="inside radius of 0 mm"):
        clr_from_inside_radius(inside_radius_mm=Decimal(0), od_mm=Decimal(50))


def test_a_complete_bend_knows_its_ratios() -> None:
    # 1.5 x 0.05 in at 3.75 in: 1.5 / 0.05 = 30, 3.75 / 1.5 = 2.5, 1.5 - 0.1 = 1.4 in = 35.56 mm
    spec = BendSpec(
        od_mm=Decimal("38.1"),
        wall_mm=Decimal("1.27"),
        clr_mm=Decimal("95.25"),
        material=Material.CARBON_STEEL,
    )
    assert spec.wall_factor == 30
    assert spec.d_of_bend == Decimal("2.5")
    assert spec.bore_mm == Decimal("35.56")


@pytest.mark.parametrize(
    ("wall", "clr", "says"),
    [("25", "100", "can't have a wall of 25 mm"), ("2", "25", "can't be bent to a CLR of 25 mm")],
)
def test_a_bend_spec_refuses_impossible_sizes(wall: str, clr: str, says: str) -> None:
    with pytest.raises(ValidationError, match=says):
        BendSpec(od_mm=Decimal(50), wall_mm=Decimal(wall), clr_mm=Decimal(clr))


def test_a_bend_spec_does_not_change() -> None:
    spec = BendSpec(od_mm=Decimal(50), wall_mm=Decimal(2), clr_mm=Decimal(100))
    with pytest.raises(ValidationError):
        spec.od_mm = Decimal(60)
