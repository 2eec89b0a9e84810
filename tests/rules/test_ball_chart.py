"""Balls by the shop's chart: a range, no more than have room, and nothing outside the chart."""

from __future__ import annotations

import csv
import json
from decimal import Decimal
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bendreply.rules.ball_chart import (
    BallChart,
    BallRow,
    BallsNeeded,
    balls_needed,
    balls_that_fit,
    swing_per_joint,
)
from bendreply.rules.request import Material
from bendreply.rules.shop import sample_shop

CHECK_VALUES = Path(__file__).parents[1] / "data" / "check_values.csv"
STEEL, ALUMINIUM = Material.CARBON_STEEL, Material.ALUMINIUM


def row(**changes: str) -> BallRow:
    cells = {
        "wall_factor_over": "20",
        "wall_factor_to": "30",
        "d_over": "1.75",
        "d_to": "2.5",
        "angle_to": "180",
        "tube": "ferrous",
        "nose": "ball",
        "balls_low": "2",
        "balls_high": "4",
        "pitch": "regular",
        "wiper": "maybe",
    }
    return BallRow.model_validate(cells | changes)


CHART = BallChart(
    rows=(
        row(),
        row(d_over="2.5", d_to="4", balls_low="1", balls_high="2", wiper="no"),
        row(tube="soft non-ferrous", balls_low="3", balls_high="5", pitch="close"),
    )
)


def asked(
    wall_factor: str,
    d_of_bend: str,
    material: Material | None = STEEL,
    angle: str | None = None,
) -> BallsNeeded | str:
    return balls_needed(
        CHART,
        wall_factor=Decimal(wall_factor),
        d_of_bend=Decimal(d_of_bend),
        material=material,
        angle_deg=Decimal(angle) if angle else None,
    )


def counted(found: BallsNeeded | str) -> tuple[int, int]:
    assert isinstance(found, BallsNeeded)
    return found.low, found.high


@pytest.mark.parametrize(
    ("wall_factor", "d_of_bend", "expected"),
    [
        ("20.01", "2.5", (2, 4)),
        ("30", "2.5", (2, 4)),  # exactly on an upper end still belongs to the row
        ("30", "2.51", (1, 2)),
        ("25", "4", (1, 2)),
    ],
)
def test_a_row_holds_above_its_lower_up_to_its_upper_end(
    wall_factor: str, d_of_bend: str, expected: tuple[int, int]
) -> None:
    assert counted(asked(wall_factor, d_of_bend)) == expected


@pytest.mark.parametrize(
    ("wall_factor", "d_of_bend"), [("20", "2"), ("30.01", "2"), ("25", "1.75"), ("25", "4.01")]
)
def test_outside_the_chart_it_is_said_never_clamped(wall_factor: str, d_of_bend: str) -> None:
    found = asked(wall_factor, d_of_bend)
    assert isinstance(found, str)
    assert "outside the ball chart" in found


def test_a_bend_beyond_the_angle_of_the_chart_is_left_to_a_person() -> None:
    assert isinstance(asked("25", "2", angle="180"), BallsNeeded)
    found = asked("25", "2", angle="180.5")
    assert isinstance(found, str)
    assert "ends at 180 degrees" in found


def test_no_more_balls_than_have_room_in_the_bend() -> None:
    # 0.45 / 2 rad = 12.89 degrees a joint: 2 in 30 degrees, 0 in 10
    assert counted(asked("25", "2", angle="90")) == (2, 4)
    assert counted(asked("25", "2", angle="30")) == (2, 2)
    assert counted(asked("25", "2", angle="10")) == (0, 0)


def test_titanium_and_nickel_are_read_as_steel_and_soft_metals_apart() -> None:
    for material in (Material.TITANIUM, Material.NICKEL_ALLOY, Material.STAINLESS_STEEL):
        assert counted(asked("25", "2", material)) == (2, 4)
    for material in (ALUMINIUM, Material.COPPER, Material.BRASS):
        assert counted(asked("25", "2", material)) == (3, 5)


def test_without_a_material_the_range_spans_both_and_what_differs_is_not_told() -> None:
    found = asked("25", "2", None)
    assert counted(found) == (2, 5)
    assert isinstance(found, BallsNeeded)
    assert (found.pitch, found.nose) == (None, "ball")


def test_without_a_chart_or_a_row_for_the_material_nothing_is_counted() -> None:
    ratios = {"wall_factor": Decimal(25), "d_of_bend": Decimal(2)}
    assert "no ball chart" in str(balls_needed(BallChart(), **ratios, material=STEEL))
    assert "no rows" in str(balls_needed(CHART, **ratios, material=Material.OTHER))


@pytest.mark.parametrize(
    "check",
    [
        r
        for r in csv.DictReader(CHECK_VALUES.read_text("utf-8").splitlines())
        if r["topic"] == "ball_swing_per_joint"
    ],
    ids=lambda r: r["source"],
)
def test_the_swing_of_a_joint(check: dict[str, str]) -> None:
    inputs = json.loads(check["inputs"], parse_float=Decimal, parse_int=Decimal)
    swing = swing_per_joint(**inputs)
    assert abs(swing - Decimal(check["expected"])) <= Decimal(check["tolerance"])


# pitch/OD, D, angle, balls: worked from angle x D / pitch, in radians (facts of the trade, 2)
@pytest.mark.parametrize(
    ("pitch", "d", "angle", "balls"),
    [
        ("0.45", "1", "90", 3),
        ("0.55", "2", "90", 5),
        ("0.55", "3", "180", 17),
        ("0.35", "1", "45", 2),
    ],
)
def test_the_balls_with_room_in_a_bend(pitch: str, d: str, angle: str, balls: int) -> None:
    assert (
        balls_that_fit(angle_deg=Decimal(angle), pitch_over_od=Decimal(pitch), d_of_bend=Decimal(d))
        == balls
    )


@pytest.mark.parametrize("bad", [("0", "1"), ("0.45", "0"), ("-1", "1")])
def test_a_joint_of_nothing_is_refused(bad: tuple[str, str]) -> None:
    with pytest.raises(ValueError, match="above 0"):
        swing_per_joint(pitch_over_od=Decimal(bad[0]), d_of_bend=Decimal(bad[1]))


RATIO = st.decimals(min_value="2.01", max_value=300, places=2)
BENDS = st.decimals(min_value="0.76", max_value=99, places=2)


@given(RATIO, BENDS, st.sampled_from([STEEL, ALUMINIUM]))
def test_the_sample_chart_has_one_answer_inside_its_ends(
    wall_factor: Decimal, d_of_bend: Decimal, material: Material
) -> None:
    chart = sample_shop().balls
    found = balls_needed(chart, wall_factor=wall_factor, d_of_bend=d_of_bend, material=material)
    low, high = counted(found)
    assert 0 <= low <= high


@given(RATIO, BENDS, st.integers(1, 180))
def test_a_smaller_angle_never_asks_for_more_balls(
    wall_factor: Decimal, d_of_bend: Decimal, angle: int
) -> None:
    chart = sample_shop().balls
    ratios = {"wall_factor": wall_factor, "d_of_bend": d_of_bend, "material": STEEL}
    whole = counted(balls_needed(chart, **ratios, angle_deg=Decimal(180)))  # type: ignore[arg-type]
    part = counted(balls_needed(chart, **ratios, angle_deg=Decimal(angle)))  # type: ignore[arg-type]
    assert part[0] <= whole[0]
    assert part[1] <= whole[1]


def test_the_sample_chart_says_that_it_is_no_source() -> None:
    import bendreply.rules

    folder = Path(bendreply.rules.__file__).parent / "sample_shop"
    first = (folder / "balls.csv").read_text("utf-8").splitlines()[0]
    assert first.startswith("# House chart, replace with your own")
    assert "unverified" in first
