"""Where to set the nose first: the geometry, two thirds of it, and the table by OD."""

from __future__ import annotations

import csv
import json
import math
from decimal import Decimal
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bendreply.rules.advance import advance_advised, advance_by_table, advance_max

CHECK_VALUES = Path(__file__).parents[1] / "data" / "check_values.csv"


def check_row(topic: str) -> tuple[dict[str, Decimal], Decimal, Decimal]:
    with CHECK_VALUES.open(encoding="utf-8") as file:
        (row,) = [row for row in csv.DictReader(file) if row["topic"] == topic]
    inputs = json.loads(row["inputs"], parse_float=Decimal, parse_int=Decimal)
    inputs = {key.replace("tube_id_mm", "bore_mm"): value for key, value in inputs.items()}
    return inputs, Decimal(row["expected"]), Decimal(row["tolerance"])


@pytest.mark.parametrize(
    ("topic", "formula"),
    [
        ("mandrel_advance_max", advance_max),  # C51, Pythagoras
        ("mandrel_advance_advised", advance_advised),  # C52, S01
        ("mandrel_advance_table", advance_by_table),  # C53, S06
    ],
)
def test_worked_examples(topic: str, formula: object) -> None:
    inputs, expected, within = check_row(topic)
    assert callable(formula)
    assert abs(formula(**inputs) - expected) <= within


@pytest.mark.parametrize(
    ("od", "advance"),
    [
        ("5.49", None),
        ("5.5", "0.75"),
        ("44.45", "5.5"),  # 44 to the whole mm
        ("44.5", "6"),  # 45
        ("152.49", "9"),
        ("152.5", None),
    ],
)
def test_the_table_is_kept_in_whole_mm_and_ends(od: str, advance: str | None) -> None:
    found = advance_by_table(od_mm=Decimal(od))
    assert found == (Decimal(advance) if advance else None)


@pytest.mark.parametrize("z", ["0", "-0.1", "17.4"])
def test_a_clearance_that_can_not_be_is_refused(z: str) -> None:
    size = {"clr_mm": Decimal(100), "bore_mm": Decimal("34.8"), "radial_clearance_mm": Decimal(z)}
    for formula in (advance_max, advance_advised):
        with pytest.raises(ValueError, match="does not fit"):
            formula(**size)


@given(
    st.decimals(min_value=10, max_value=1000, places=2),
    st.decimals(min_value=5, max_value=200, places=2),
    st.decimals(min_value="0.01", max_value="1", places=3),
)
def test_a_nose_so_far_past_tangent_just_touches_the_bore(
    clr_mm: Decimal, bore_mm: Decimal, z: Decimal
) -> None:
    # A corner of the mandrel at e past tangent lies sqrt((R + dm/2)^2 + e^2) from the bend's
    # centre, where dm = ID - 2 z; it touches the outer bore at R + ID/2.
    e = float(advance_max(clr_mm=clr_mm, bore_mm=bore_mm, radial_clearance_mm=z))
    reach = math.hypot(float(clr_mm + bore_mm / 2 - z), e)
    assert reach == pytest.approx(float(clr_mm + bore_mm / 2), abs=0.01)
