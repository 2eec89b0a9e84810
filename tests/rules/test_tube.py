"""Wall factor, bore, and each of OD, wall and bore from the other two."""

from __future__ import annotations

import csv
import json
from decimal import Decimal
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bendreply.rules.tube import (
    ImpossibleSize,
    bore,
    is_possible_wall,
    od_from_bore,
    wall_factor,
    wall_from_bore,
)

CHECK_VALUES = Path(__file__).parents[1] / "data" / "check_values.csv"


def check_values(topic: str) -> list[dict[str, str]]:
    with CHECK_VALUES.open(encoding="utf-8") as file:
        found = [row for row in csv.DictReader(file) if row["topic"] == topic]
    assert found
    return found


@pytest.mark.parametrize("row", check_values("wall_factor"), ids=lambda row: row["source"])
def test_wall_factor_as_published(row: dict[str, str]) -> None:
    given_sizes = json.loads(row["inputs"], parse_float=Decimal, parse_int=Decimal)
    factor = wall_factor(od_mm=given_sizes["od_in"], wall_mm=given_sizes["wall_in"])
    assert abs(factor - Decimal(row["expected"])) <= Decimal(row["tolerance"])


@pytest.mark.parametrize("row", check_values("id"), ids=lambda row: row["source"])
def test_bore_as_published(row: dict[str, str]) -> None:
    sizes = json.loads(row["inputs"], parse_float=Decimal, parse_int=Decimal)
    assert bore(od_mm=sizes["od_in"], wall_mm=sizes["wall_in"]) == Decimal(row["expected"])


@pytest.mark.parametrize(
    ("od_in", "wall_in", "factor"),
    # A float says 29.999999999999996 or 30.000000000000004 for some of these.
    [("1.5", "0.05", 30), ("1.95", "0.065", 30), ("1.05", "0.035", 30), ("3.6", "0.12", 30)],
)
def test_a_wall_factor_on_the_limit_is_exact(od_in: str, wall_in: str, factor: int) -> None:
    od_mm, wall_mm = Decimal(od_in) * Decimal("25.4"), Decimal(wall_in) * Decimal("25.4")
    assert wall_factor(od_mm=od_mm, wall_mm=wall_mm) == factor
    assert str(wall_factor(od_mm=od_mm, wall_mm=wall_mm)) == str(factor)


_LENGTHS = st.decimals(min_value="0.001", max_value=3000, places=6)
_RATIOS = st.decimals(min_value=2, max_value=200, places=3)


@given(_LENGTHS, _RATIOS)
def test_comparing_with_a_limit_never_suffers_rounding(wall_mm: Decimal, limit: Decimal) -> None:
    step = Decimal("0.000000001")
    on_limit = limit * wall_mm
    if is_possible_wall(od_mm=on_limit - step, wall_mm=wall_mm):
        assert wall_factor(od_mm=on_limit, wall_mm=wall_mm) == limit
        assert wall_factor(od_mm=on_limit - step, wall_mm=wall_mm) < limit
        assert wall_factor(od_mm=on_limit + step, wall_mm=wall_mm) > limit


@given(_LENGTHS, _LENGTHS)
def test_bore_and_wall_lead_back_to_the_od(bore_mm: Decimal, wall_mm: Decimal) -> None:
    od_mm = od_from_bore(bore_mm=bore_mm, wall_mm=wall_mm)
    assert bore(od_mm=od_mm, wall_mm=wall_mm) == bore_mm
    assert wall_from_bore(od_mm=od_mm, bore_mm=bore_mm) == wall_mm


def test_a_solid_bar_is_no_tube() -> None:
    assert not is_possible_wall(od_mm=Decimal(10), wall_mm=Decimal(5))
    assert not is_possible_wall(od_mm=Decimal(10), wall_mm=Decimal(0))
    assert is_possible_wall(od_mm=Decimal(10), wall_mm=Decimal("4.999"))


def test_impossible_tubes_are_refused_with_their_figures() -> None:
    with pytest.raises(ImpossibleSize, match="10 mm OD can't have a wall of 5 mm"):
        wall_factor(od_mm=Decimal(10), wall_mm=Decimal(5))
    with pytest.raises(ImpossibleSize, match="10 mm OD can't have a wall of 0 mm"):
        bore(od_mm=Decimal(10), wall_mm=Decimal(0))
    with pytest.raises(ImpossibleSize, match="bore of 12 mm does not fit in a tube of 10 mm"):
        wall_from_bore(od_mm=Decimal(10), bore_mm=Decimal(12))
    with pytest.raises(ImpossibleSize, match="bore of 0 mm"):
        od_from_bore(bore_mm=Decimal(0), wall_mm=Decimal(1))
