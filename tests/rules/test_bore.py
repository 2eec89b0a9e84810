"""The bore a mandrel goes into: each make of tube against published figures, and its limits."""

from __future__ import annotations

import csv
import json
from decimal import Decimal
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bendreply.rules.bore import (
    across_weld,
    bore_range,
    en10296_bead,
    flash_in_bead,
    largest_bore,
    smallest_bore,
)
from bendreply.rules.tolerances import make_named, makes
from bendreply.rules.tube import ImpossibleSize, bore
from bendreply.rules.units import MM_PER_INCH, parse_length

CHECK_VALUES = Path(__file__).parents[1] / "data" / "check_values.csv"
MAKE_OF_TOPIC = {
    "dom_min_id": "DOM",
    "erw_fc005_min_id": "ERW flash controlled to 0.005",
    "a269_min_id": "A269",
    "en10296_min_id": "EN 10296-2",
    "en10305_min_id": "EN 10305-1",
}


def check_rows(*topics: str) -> list[dict[str, str]]:
    with CHECK_VALUES.open(encoding="utf-8") as file:
        return [row for row in csv.DictReader(file) if row["topic"] in topics]


def sizes_mm(row: dict[str, str]) -> tuple[Decimal, Decimal, Decimal]:
    """OD, wall [mm] and the mm that one unit of the row has."""
    inputs = json.loads(row["inputs"], parse_float=Decimal, parse_int=Decimal)
    scale = MM_PER_INCH if "od_in" in inputs else Decimal(1)
    unit = "in" if "od_in" in inputs else "mm"
    return inputs[f"od_{unit}"] * scale, inputs[f"wall_{unit}"] * scale, scale


@pytest.mark.parametrize("row", check_rows(*MAKE_OF_TOPIC), ids=lambda row: row["topic"])
def test_the_smallest_bore_is_that_of_the_standard(row: dict[str, str]) -> None:
    od_mm, wall_mm, scale = sizes_mm(row)
    found = bore_range(od_mm=od_mm, wall_mm=wall_mm, make=make_named(MAKE_OF_TOPIC[row["topic"]]))
    assert found.low_mm is not None
    assert abs(found.low_mm / scale - Decimal(row["expected"])) <= Decimal(row["tolerance"])
    assert found.counts_mm == found.low_mm
    assert row["source"] in found.basis


@pytest.mark.parametrize("row", check_rows("erw_flash_in_across_weld"), ids=lambda row: row["id"])
def test_the_free_diameter_across_a_weld_left_in(row: dict[str, str]) -> None:
    od_mm, wall_mm, scale = sizes_mm(row)
    free_mm = across_weld(
        bore_mm=bore(od_mm=od_mm, wall_mm=wall_mm), bead_mm=flash_in_bead(wall_mm=wall_mm)
    )
    assert abs(free_mm / scale - Decimal(row["expected"])) <= Decimal(row["tolerance"])


@pytest.mark.parametrize("row", check_rows("en10296_bead_finish_B"), ids=lambda row: row["id"])
def test_the_bead_of_en_10296_2(row: dict[str, str]) -> None:
    od_mm, wall_mm, _ = sizes_mm(row)
    bead_mm = en10296_bead(od_mm=od_mm, wall_mm=wall_mm, finish="B")
    assert bead_mm is not None
    assert abs(bead_mm - Decimal(row["expected"])) <= Decimal(row["tolerance"])


# OD, wall, words, smallest, largest bore; the arithmetic beside it, figures from tolerance.csv
RANGES = [
    # the nominal 1.370 plus and minus 0.019 (S30)
    ("1.5 in", "0.065 in", "flash-controlled", "1.351 in", "1.389 in"),
    # (1.5 - 0.005) - 2 x 0.065 - 0.065: the bead is the whole wall
    ("1.5 in", "0.065 in", "ERW, flash-in", "1.300 in", None),
    # (1.5 - 0.005) - 2 x 0.120 - 3/32: the bead is at most 3/32
    ("1.5 in", "0.120 in", "ERW, flash-in", "1.16125 in", None),
    # (1.5 - 0.005) - 2 x 0.065 - 0.010
    ("1.5 in", "0.065 in", "flash controlled to .010", "1.355 in", None),
    # nominal ID is the largest of DOM: 1.560 - 0.006
    ("1.75 in", "0.095 in", "DOM", "1.554 in", "1.560 in"),
    # 1.699 and 1.7 are the ends of two bands: 0.005, then 0.006
    ("1.699 in", "0.095 in", "DOM", "1.504 in", "1.509 in"),
    ("1.7 in", "0.095 in", "DOM", "1.504 in", "1.510 in"),
    # the upper end of each band of A269 is in the next one: 0.990 - 2 x 0.0715 would be 0.005's
    ("1.49 in", "0.065 in", "A269", "1.342 in", "1.378 in"),
    # A249 names no rule for 1.5 in: the wider 0.008 of both bands; 1.492 - 2 x 0.0715
    ("1.5 in", "0.065 in", "A249", "1.349 in", "1.391 in"),
    # A554 up to 0.065: 0.008; wall 5 % of OD; (1.25 - 0.008) - 2 x 0.0715
    ("1.25 in", "0.065 in", "A554", "1.099 in", "1.141 in"),
    # A554 below 3 % of OD: the OD tolerance twice, 2 x 0.012; (2 - 0.024) - 2 x 0.0539
    ("2 in", "0.049 in", "A554", "1.8682 in", "1.9358 in"),
    # EN 10305-1, heat treated: T/D 1.5/60 = 1/40, so 1.5 x 0.25, but from memory: not counted
    ("60 mm", "1.5 mm", "E235+N EN 10305-1", None, None),
    ("60 mm", "3 mm", "E235+N EN 10305-1", "53.75 mm", "54.25 mm"),  # 1/20: the factor is 1
    # bead C 0.15 on top of C58's 46.225
    ("50 mm", "1.5 mm", "EN 10296-2 finish C", "46.075 mm", "47.775 mm"),
]


@pytest.mark.parametrize(("od", "wall", "words", "low", "high"), RANGES)
def test_the_bore_by_make(
    od: str, wall: str, words: str, low: str | None, high: str | None
) -> None:
    make = make_named(words)
    assert make is not None
    found = bore_range(od_mm=parse_length(od), wall_mm=parse_length(wall), make=make)
    assert found.low_mm == (low and parse_length(low))
    assert found.high_mm == (high and parse_length(high))


@pytest.mark.parametrize(
    ("od", "wall", "words", "why"),
    [
        ("1.5 in", "0.065 in", "304", "how the tube is made (DOM, ERW, a standard) is not said"),
        ("1.5 in", "0.065 in", "ERW", "ERW tube leaves open whether the inside flash"),
        ("6 in", "0.25 in", "DOM", "no tolerances on record here for ASTM A513 Type 5"),
        ("31 mm", "2 mm", "EN 10305-1", "no tolerances on record here for EN 10305-1"),
        ("1.5 in", "0.058 in", "flash controlled", "no tolerances on record"),  # between walls
        ("1.5 in", "0.065 in", "A519", "no tolerances on record"),
        ("1.9 in", "0.145 in", "A53", "our figures for ASTM A53 pipe are from memory"),
    ],
)
def test_where_nothing_is_known_for_sure_the_nominal_bore_counts_and_it_is_said(
    od: str, wall: str, words: str, why: str
) -> None:
    od_mm, wall_mm = parse_length(od), parse_length(wall)
    found = bore_range(od_mm=od_mm, wall_mm=wall_mm, make=make_named(words))
    assert (found.low_mm, found.high_mm) == (None, None)
    assert found.counts_mm == found.nominal_mm == od_mm - 2 * wall_mm
    assert found.basis.startswith("nominal bore: ")
    assert why in found.basis


def test_what_can_not_be_ruled_out_is_told() -> None:
    size = {"od_mm": parse_length("1.5 in"), "wall_mm": parse_length("0.065 in")}
    erw = bore_range(**size, make=make_named("ERW"))
    assert [mm for _, mm in erw.doubtful] == [parse_length("1.351 in"), parse_length("1.300 in")]
    # 1.9 - 0.0156 - 2 x 0.145, the wall's upper end unknown (M)
    pipe = bore_range(
        od_mm=parse_length("1.9 in"), wall_mm=parse_length("0.145 in"), make=make_named("A53")
    )
    assert [mm for _, mm in pipe.doubtful] == [parse_length("1.5944 in")]
    assert any("no upper limit of the wall" in note for note in pipe.notes)


def test_an_inside_bead_that_is_not_counted_is_named() -> None:
    size = {"od_mm": Decimal(50), "wall_mm": Decimal("1.5")}
    assert bore_range(**size, make=make_named("EN 10296-2")).open_bead
    assert not bore_range(**size, make=make_named("EN 10296-2 finish A")).open_bead
    assert not bore_range(**size, make=make_named("seamless")).open_bead
    assert bore_range(**size, make=make_named("HREW")).open_bead
    # by finish: 0.20 x 1.5 + 0.5, 0.06 x 1.5 + 0.3, 0.15
    assert any(
        "A 0.8, B 0.39, C 0.15" in note
        for note in bore_range(**size, make=make_named("EN 10296-2")).notes
    )


@pytest.mark.parametrize(
    ("od", "wall", "finish"), [("120", "2", "B"), ("50", "8", "A"), ("50", "8", "C")]
)
def test_beyond_the_bead_rule_there_is_none(od: str, wall: str, finish: str) -> None:
    assert en10296_bead(od_mm=Decimal(od), wall_mm=Decimal(wall), finish=finish) is None  # type: ignore[arg-type]


def test_impossible_sizes_are_refused() -> None:
    with pytest.raises(ImpossibleSize):
        smallest_bore(
            od_mm=Decimal(10),
            wall_mm=Decimal(4),
            od_minus_mm=Decimal(1),
            wall_plus_mm=Decimal("0.5"),
        )
    with pytest.raises(ImpossibleSize):
        across_weld(bore_mm=Decimal(2), bead_mm=Decimal(2))
    with pytest.raises(ImpossibleSize):
        flash_in_bead(wall_mm=Decimal(0))
    with pytest.raises(ImpossibleSize):
        bore_range(od_mm=Decimal(10), wall_mm=Decimal(5), make=None)


SIZES = st.decimals(min_value=5, max_value=250, places=3)


@given(
    SIZES, st.decimals(min_value="0.01", max_value="0.49", places=2), st.sampled_from(list(makes()))
)
def test_the_smallest_bore_is_never_above_the_nominal(
    od_mm: Decimal, share: Decimal, key: str
) -> None:
    found = bore_range(od_mm=od_mm, wall_mm=od_mm * share, make=makes()[key])
    assert 0 < found.counts_mm <= found.nominal_mm
    if found.low_mm is not None and found.high_mm is not None:
        assert found.low_mm <= found.nominal_mm <= found.high_mm


@given(SIZES, st.integers(1, 30), st.integers(0, 30), st.integers(0, 30))
def test_tolerances_only_widen_the_bore(
    od_mm: Decimal, wall: int, od_by: int, wall_by: int
) -> None:
    wall_mm = od_mm * wall / 100
    by = (od_mm * od_by / 1000, wall_mm * wall_by / 100)
    low_mm = smallest_bore(od_mm=od_mm, wall_mm=wall_mm, od_minus_mm=by[0], wall_plus_mm=by[1])
    high_mm = largest_bore(od_mm=od_mm, wall_mm=wall_mm, od_plus_mm=by[0], wall_minus_mm=by[1])
    assert low_mm <= od_mm - 2 * wall_mm <= high_mm
