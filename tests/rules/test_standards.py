"""Gauge, pipe and stock tables, against outside sources and against what defines them."""

from __future__ import annotations

import csv
import doctest
import importlib
import json
from decimal import Decimal
from pathlib import Path
from types import ModuleType

import pytest

from bendreply.rules import standards
from bendreply.rules.tables import rows
from bendreply.rules.tube import bore, wall_factor

CHECK_VALUES = Path(__file__).parents[1] / "data" / "check_values.csv"


@pytest.fixture(scope="module")
def fluids_piping() -> ModuleType:
    module: ModuleType = pytest.importorskip(
        "fluids.piping", reason="PyPI fluids (test extra) is the outside check of these tables"
    )
    return module


def check_values(topic: str) -> list[dict[str, str]]:
    with CHECK_VALUES.open(encoding="utf-8") as file:
        found = [row for row in csv.DictReader(file) if row["topic"] == topic]
    assert found
    return found


# --- gauges ---------------------------------------------------------------------------------------


@pytest.mark.parametrize("row", check_values("bwg_to_mm"), ids=lambda row: row["inputs"])
def test_bwg_as_published(row: dict[str, str]) -> None:
    found = standards.bwg_mm(str(json.loads(row["inputs"])["bwg"]))
    assert found is not None
    assert abs(found - Decimal(row["expected"])) <= Decimal(row["tolerance"])


@pytest.mark.parametrize(
    ("system", "column"), [("BWG", "bwg_in"), ("BSWG", "swg_in"), ("AWG", "awg_in")]
)
def test_gauges_agree_with_fluids(fluids_piping: ModuleType, system: str, column: str) -> None:
    numbers, inches, *_ = fluids_piping.wire_schedules[system]
    theirs = dict(zip(numbers, inches, strict=True))
    ours = {row["gauge"]: row[column] for row in rows("gauges.csv") if row[column]}
    compared = 0
    for gauge, inch in ours.items():
        number = (
            0.5 if gauge == "00" else float(gauge) if gauge.strip("0") or gauge == "0" else None
        )
        if number is not None and number in theirs:
            assert abs(Decimal(str(theirs[number])) - Decimal(inch)) <= Decimal("0.0001"), gauge
            compared += 1
    assert compared >= 28


# Weight of a square foot in ounces, US standard gauge (Act of Congress, 3 March 1893; from memory).
_OUNCES = {
    3: 160, 4: 150, 5: 140, 6: 130, 7: 120, 8: 110, 9: 100, 10: 90, 11: 80, 12: 70, 13: 60,
    14: 50, 15: 45, 16: 40, 17: 36, 18: 32, 19: 28, 20: 24, 21: 22, 22: 20, 23: 18, 24: 16,
    25: 14, 26: 12, 27: 11, 28: 10, 29: 9, 30: 8,
}  # fmt: skip


@pytest.mark.parametrize("gauge", _OUNCES)
def test_sheet_gauges_follow_from_the_weights_that_define_them(gauge: int) -> None:
    ounces = Decimal(_OUNCES[gauge])
    steel = standards.steel_sheet_mm(str(gauge))
    assert steel is not None
    # Manufacturers' standard: 41.82 lb per square foot and inch of thickness.
    assert abs(steel / Decimal("25.4") - ounces / 16 / Decimal("41.82")) <= Decimal("0.00006")
    stainless = standards.stainless_sheet_mm(str(gauge))
    if stainless is not None:  # US standard: 640 ounces a square foot and inch
        assert abs(stainless / Decimal("25.4") - ounces / 640) <= Decimal("0.00006")


@pytest.mark.parametrize("gauge", range(31))
def test_awg_follows_from_its_formula(gauge: int) -> None:
    # ASTM B258: 0.005 x 92^((36 - n) / 39) in
    found = standards.awg_mm(str(gauge))
    assert found is not None
    assert float(found) / 25.4 == pytest.approx(0.005 * 92 ** ((36 - gauge) / 39), abs=0.00006)


def test_a_gauge_depends_on_its_system() -> None:
    # Gauge tables of the trade: 16 ga is .065 BWG, .0598 steel, .0625 stainless, .064 SWG
    inch = Decimal("25.4")
    assert standards.bwg_mm("16") == Decimal("0.065") * inch
    assert standards.steel_sheet_mm("16") == Decimal("0.0598") * inch
    assert standards.stainless_sheet_mm("16") == Decimal("0.0625") * inch
    assert standards.swg_mm("16") == Decimal("0.064") * inch


def test_gauges_above_0_are_written_two_ways() -> None:
    assert standards.bwg_mm("2/0") == standards.bwg_mm("00") == Decimal("0.380") * Decimal("25.4")
    assert standards.bwg_mm("4/0") == standards.bwg_mm("0000")
    assert standards.bwg_mm("1/0") == standards.bwg_mm("0")


@pytest.mark.parametrize("gauge", ["31", "99", "-1", "", "16.5", "5/0", "sixteen"])
def test_outside_the_table_there_is_no_wall(gauge: str) -> None:
    assert standards.bwg_mm(gauge) is None


def test_a_wall_is_named_a_gauge_only_where_it_is_exactly_one() -> None:
    assert standards.bwg_of(Decimal("1.651")) == "16"
    assert standards.bwg_of(Decimal("1.6510")) == "16"
    assert standards.bwg_of(Decimal("1.65")) is None


def test_bwg_walls_shrink_as_the_number_grows() -> None:
    walls = [standards.bwg_mm(gauge) for gauge in standards.BWG_GAUGES]
    assert None not in walls
    assert walls == sorted(walls, key=lambda wall: wall or Decimal(0), reverse=True)
    assert len(set(walls)) == len(walls)


# --- pipe -----------------------------------------------------------------------------------------


def _inches(nps: str) -> float:
    whole, _, fraction = nps.rpartition("-")
    top, _, under = fraction.partition("/")
    return float(whole or 0) + float(top) / float(under or 1)


@pytest.mark.parametrize("schedule", sorted({row["schedule"] for row in rows("pipe_walls.csv")}))
def test_pipe_agrees_with_fluids(fluids_piping: ModuleType, schedule: str) -> None:
    sizes, _, ods, walls = fluids_piping.schedule_lookup[schedule]
    theirs = {size: (od, wall) for size, od, wall in zip(sizes, ods, walls, strict=True)}
    ours = [row["nps"] for row in rows("pipe_walls.csv") if row["schedule"] == schedule]
    for nps in ours:
        their_od, their_wall = theirs[_inches(nps)]
        od, wall = standards.pipe_od_mm(nps), standards.pipe_wall_mm(nps, schedule)
        assert od is not None
        assert wall is not None
        assert float(od) == pytest.approx(their_od, abs=0.06), nps  # theirs is rounded to 0.1 mm
        assert float(wall) == pytest.approx(their_wall, abs=0.0151), nps  # theirs to 0.01 mm
    # and no size that is made in this schedule is missing up to NPS 12
    assert {_inches(nps) for nps in ours} == {size for size in theirs if size <= 12}


@pytest.mark.parametrize("row", check_values("nps_id"), ids=lambda row: row["source"])
def test_pipe_bore_as_published(row: dict[str, str]) -> None:
    given_pipe = json.loads(row["inputs"])
    od = standards.pipe_od_mm(given_pipe["nps"])
    wall = standards.pipe_wall_mm(given_pipe["nps"], str(given_pipe["sch"]))
    assert od is not None
    assert wall is not None
    assert abs(bore(od_mm=od, wall_mm=wall) - Decimal(row["expected"])) <= Decimal(row["tolerance"])


@pytest.mark.parametrize("row", check_values("nps_wall_factor"), ids=lambda row: row["source"])
def test_pipe_wall_factor(row: dict[str, str]) -> None:
    given_pipe = json.loads(row["inputs"])
    od = standards.pipe_od_mm(given_pipe["nps"])
    wall = standards.pipe_wall_mm(given_pipe["nps"], str(given_pipe["sch"]))
    assert od is not None
    assert wall is not None
    factor = wall_factor(od_mm=od, wall_mm=wall)
    assert abs(factor - Decimal(row["expected"])) <= Decimal(row["tolerance"])


def test_schedules_go_by_several_names() -> None:
    assert standards.pipe_wall_mm("2", "std") == standards.pipe_wall_mm("2", "40")
    assert standards.pipe_wall_mm("2", "XH") == standards.pipe_wall_mm("2", "xs")
    assert standards.pipe_wall_mm("2", "10s") == standards.pipe_wall_mm("2", "10")
    # From NPS 10 standard weight and schedule 40 part: 12 in STD is .375, schedule 40 .406
    assert standards.pipe_wall_mm("12", "STD") == Decimal("0.375") * Decimal("25.4")
    assert standards.pipe_wall_mm("12", "40") == Decimal("0.406") * Decimal("25.4")


def test_what_is_not_made_has_no_wall() -> None:
    assert standards.pipe_wall_mm("1/8", "160") is None
    assert standards.pipe_wall_mm("2", "55") is None
    assert standards.pipe_od_mm("1-5/8") is None
    assert standards.pipe_od_mm("14") is None
    assert standards.iso_od_mm("14") is None


def test_a_size_may_be_written_with_space_hyphen_or_point() -> None:
    assert (
        standards.pipe_od_mm("1-1/2")
        == standards.pipe_od_mm("1 1/2")
        == standards.pipe_od_mm("1.5")
        == Decimal("48.26")
    )


@pytest.mark.parametrize(("dn", "nps"), [(15, "1/2"), (32, "1-1/4"), (40, "1-1/2"), (100, "4")])
def test_dn_names_an_nps(dn: int, nps: str) -> None:
    assert standards.nps_of_dn(dn) == nps


def test_there_is_no_dn_42() -> None:
    assert standards.nps_of_dn(42) is None


def test_two_iso_sizes_are_other_pipes_than_asme() -> None:
    # EN 10220 against ASME B36.10M: DN 65 is 76.1 / 73.0 mm, DN 125 139.7 / 141.3 mm
    assert standards.iso_od_mm("2-1/2") == Decimal("76.1")
    assert standards.iso_od_mm("5") == Decimal("139.7")
    for nps in set(standards.NPS_SIZES) - {"2-1/2", "5"}:
        iso, asme = standards.iso_od_mm(nps), standards.pipe_od_mm(nps)
        assert iso is not None
        assert asme is not None
        assert abs(iso - asme) < Decimal("0.35"), nps


@pytest.mark.parametrize(
    ("od", "nps"),
    [("48.3", "1-1/2"), ("42.4", "1-1/4"), ("60.3", "2"), ("76.1", "2-1/2"), ("38.1", None)],
)
def test_a_pipe_od_is_recognised_in_either_standard(od: str, nps: str | None) -> None:
    assert standards.nps_of_od(Decimal(od), Decimal("0.3")) == nps


def test_nominal_sizes_are_called_by_inches() -> None:
    assert standards.nps_of_inches(Decimal("1.50")) == "1-1/2"
    assert standards.nps_of_inches(Decimal("0.125")) == "1/8"
    assert standards.nps_of_inches(Decimal("1.6")) is None


# --- trade sizes and stock ------------------------------------------------------------------------


def test_copper_tube_is_an_eighth_larger_than_its_name() -> None:
    # ASTM B88: OD = nominal + 1/8 in (from memory); 1/2 in copper is 15.875 mm
    assert standards.copper_tube_od_mm("1/2") == Decimal("15.875")
    assert standards.copper_tube_od_mm("1-1/4") == Decimal("1.375") * Decimal("25.4")
    assert standards.copper_tube_od_mm("7/8") is None


@pytest.mark.parametrize(
    ("trade", "kind", "bore"),
    [
        # Inside diameters [in] as a published size chart to ASTM B88 lists them (types L and M),
        # and type K to 1 in; OD less twice the wall has to be that.
        ("1/4", "K", "0.305"), ("1/2", "K", "0.527"), ("1", "K", "0.995"),
        ("1/4", "L", "0.315"), ("1/2", "L", "0.545"), ("3/4", "L", "0.785"), ("1", "L", "1.025"),
        ("1-1/4", "L", "1.265"), ("2", "L", "1.985"), ("4", "L", "3.905"), ("6", "L", "5.845"),
        ("3/8", "M", "0.450"), ("1/2", "M", "0.569"), ("3/4", "M", "0.811"), ("1", "M", "1.055"),
        ("1-1/2", "M", "1.527"), ("2", "M", "2.009"), ("3", "M", "2.981"), ("6", "M", "5.881"),
    ],
)  # fmt: skip
def test_copper_walls_leave_the_bore_that_a_chart_lists(trade: str, kind: str, bore: str) -> None:
    od, wall = standards.copper_tube_od_mm(trade), standards.copper_tube_wall_mm(trade, kind)
    assert od is not None
    assert wall is not None
    assert od - 2 * wall == Decimal(bore) * Decimal("25.4")


def test_copper_of_no_such_type_or_size_has_no_wall() -> None:
    assert standards.copper_tube_wall_mm("5/8", "M") is None
    assert standards.copper_tube_wall_mm("3/4", "X") is None
    assert standards.copper_trade_of_od(Decimal("22.225")) == "3/4"
    assert standards.copper_trade_of_od(Decimal("22")) is None


def test_copper_trade_sizes_agree_with_fluids(fluids_piping: ModuleType) -> None:
    # CTS plastic pipe (ASTM D2241) is made to the ODs of copper tube.
    sizes, _, ods, _ = fluids_piping.schedule_lookup["DR11D2241CTS"]
    for size, od in zip(sizes, ods, strict=True):
        assert standards.copper_tube_od_mm(str(size)) == Decimal(str(od))


def test_emt_od_by_trade_size() -> None:
    # ANSI C80.3 (from memory): 1/2 is .706 in, 3/4 is .922 in
    assert standards.emt_od_mm("1/2") == Decimal("0.706") * Decimal("25.4")
    assert standards.emt_od_mm("3/4") == Decimal("0.922") * Decimal("25.4")
    assert standards.emt_od_mm("5/8") is None


@pytest.mark.parametrize("od", ["44.45", "38.1", "31.75", "28.6", "38", "60.3", "48.26", "42.4"])
def test_stock_ods_are_standard(od: str) -> None:
    assert standards.is_standard_od(Decimal(od))


@pytest.mark.parametrize("od", ["37", "44.9", "39.5", "1.75"])
def test_odd_ods_are_not(od: str) -> None:
    assert not standards.is_standard_od(Decimal(od))


@pytest.mark.parametrize("wall", ["1.651", "1.65", "2.413", "1.5", "2.0", "3.175", "6.35", "2.6"])
def test_stock_walls_are_standard(wall: str) -> None:
    assert standards.is_standard_wall(Decimal(wall))


@pytest.mark.parametrize("wall", ["1.33", "2.72", "38", "0.123"])
def test_odd_walls_are_not(wall: str) -> None:
    assert not standards.is_standard_wall(Decimal(wall))


@pytest.mark.parametrize("module", ["units", "tube", "bend", "gauges", "pipe"])
def test_the_examples_in_docstrings_hold(module: str) -> None:
    ran = doctest.testmod(importlib.import_module(f"bendreply.rules.{module}"))
    assert ran.attempted > 0
    assert ran.failed == 0
