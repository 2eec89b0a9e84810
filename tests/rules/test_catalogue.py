"""Which mandrel on the shelf serves a bend, which comes near and why not, which die there is."""

from __future__ import annotations

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bendreply.rules.ball_chart import BallChart, BallRow
from bendreply.rules.bend import BendSpec
from bendreply.rules.catalogue import ShelfLook, die_at, dies_for, look_on_shelf, next_die
from bendreply.rules.mandrel import mandrel_needed
from bendreply.rules.request import Material
from bendreply.rules.shelf import CatalogueMandrel, Die
from bendreply.rules.shop_settings import ClearanceRule
from bendreply.rules.tolerances import make_named
from bendreply.rules.units import parse_length

CLEARANCE = ClearanceRule.model_validate(
    {"reason": "test", "bands": [{"low": "0.10 mm", "high": "0.30 mm"}]}
)


def mandrel(**changes: str) -> CatalogueMandrel:
    """For 50 x 2 mm: bore 46, so diameters from 45.7 to 45.9 mm serve."""
    row = {
        "part": "M1",
        "tube_od": "50 mm",
        "tube_wall_min": "1.9 mm",
        "tube_wall_max": "2.05 mm",
        "mandrel_diameter": "45.8 mm",
        "balls": "2",
        "surface": "chrome",
        "clr_min": "125 mm",
        "clr_max": "300 mm",
        "on_hand": "1",
    }
    return CatalogueMandrel.model_validate(row | changes)


NO_CHART = BallChart()


def ball_row(low: str, high: str) -> BallRow:
    """For every bend of steel tube."""
    cells = {"wall_factor_over": "0", "wall_factor_to": "99", "d_over": "0", "d_to": "99"}
    more = {"angle_to": "180", "tube": "ferrous", "nose": "ball"}
    return BallRow.model_validate(cells | more | {"balls_low": low, "balls_high": high})


def look(
    *shelf: CatalogueMandrel,
    od: str = "50 mm",
    wall: str = "2 mm",
    clr: str = "150 mm",
    material: Material | None = Material.CARBON_STEEL,
    make: str = "",
    chart: BallChart = NO_CHART,
) -> ShelfLook:
    spec = BendSpec(
        od_mm=parse_length(od),
        wall_mm=parse_length(wall),
        clr_mm=parse_length(clr),
        material=material,
    )
    needed = mandrel_needed(spec, CLEARANCE, make=make_named(make), chart=chart)
    assert needed is not None
    return look_on_shelf(spec, needed, shelf, "mm")


SERVES = [
    ("lowest diameter", {"mandrel_diameter": "45.7 mm"}, {}),
    ("highest diameter", {"mandrel_diameter": "45.9 mm"}, {}),
    ("tightest CLR", {}, {"clr": "125 mm"}),
    ("widest CLR", {}, {"clr": "300 mm"}),
    ("OD rounded by the customer", {"tube_od": "50.04 mm"}, {}),
    ("the wall at the edge", {"tube_wall_min": "2 mm"}, {}),
]
MISSES = [
    (
        "too big",
        {"mandrel_diameter": "46.15 mm"},
        {},
        "it is 0.25 mm (0.01 in) too big for this wall",
    ),
    (
        "too small",
        {"mandrel_diameter": "45.2 mm"},
        {},
        "it is 0.5 mm (0.02 in) too small for this wall",
    ),
    ("wall", {"tube_wall_min": "2.01 mm"}, {}, "it is made for walls of 2.01 to 2.05 mm"),
    ("CLR", {}, {"clr": "124.9 mm"}, "it is made for a CLR of 125 to 300 mm"),
    ("none left", {"on_hand": "0"}, {}, "none is on hand"),
    (
        "surface",
        {"surface": "bronze"},
        {"material": Material.ALUMINIUM},
        "aluminium bronze is not what we use in aluminium",
    ),
    (
        "no record",
        {},
        {"material": Material.OTHER},
        "we have no record of whether chromed tool steel suits this material",
    ),
]


@pytest.mark.parametrize(("row", "asked"), [s[1:] for s in SERVES], ids=[s[0] for s in SERVES])
def test_a_mandrel_serves_up_to_the_edges(row: dict[str, str], asked: dict[str, str]) -> None:
    found = look(mandrel(**row), **asked).match  # type: ignore[arg-type]
    assert found is not None


@pytest.mark.parametrize(
    ("row", "asked", "reason"), [m[1:] for m in MISSES], ids=[m[0] for m in MISSES]
)
def test_a_near_miss_says_why(row: dict[str, str], asked: dict[str, str], reason: str) -> None:
    shelf = look(mandrel(**row), **asked)  # type: ignore[arg-type]
    assert shelf.match is None
    assert [miss.reasons for miss in shelf.near_misses] == [(reason,)]


def test_the_smallest_bore_of_the_tube_counts() -> None:
    # 1.75 x 0.120 DOM: ID 1.510, down to 1.504 in (S29); less 0.10 mm: 38.1016 mm at most
    row = {
        "tube_od": "1.75 in",
        "tube_wall_min": "0.118 in",
        "tube_wall_max": "0.121 in",
        "clr_min": "4 in",
        "clr_max": "9 in",
    }
    asked = {"od": "1.75 in", "wall": "0.120 in", "clr": "5.25 in"}
    at_most = mandrel(mandrel_diameter="38.1016 mm", **row)
    above = mandrel(mandrel_diameter="38.1017 mm", **row)
    assert look(at_most, make="DOM", **asked).match == at_most
    assert look(above, **asked).match == above
    (miss,) = look(above, make="DOM", **asked).near_misses
    assert miss.reasons == ("it is a hair too big for the smallest bore of this tube",)


@pytest.mark.parametrize(
    ("balls", "reason"),
    [("3", None), ("2", None), ("1", "it has one ball too few"), ("0", "it has 2 balls too few")],
)
def test_a_mandrel_needs_balls_enough(balls: str, reason: str | None) -> None:
    chart = BallChart(rows=(ball_row("2", "3"),))
    found = look(mandrel(balls=balls), chart=chart)
    assert (found.match is None) == (reason is not None)
    assert [miss.reasons for miss in found.near_misses] == ([(reason,)] if reason else [])


def test_more_balls_than_needed_serve_but_are_taken_last() -> None:
    chart = BallChart(rows=(ball_row("1", "2"),))
    few, many = mandrel(part="B", balls="2"), mandrel(part="A", balls="4")
    assert look(many, chart=chart).match == many
    assert look(many, few, chart=chart).match == few


@given(
    st.integers(0, 4000).map(lambda n: Decimal(n) / 10000),  # clearance tried, mm
    st.sampled_from(["in", "mm"]),
)
def test_the_match_is_the_same_in_both_units_and_at_the_exact_edges(
    clearance_mm: Decimal, unit: str
) -> None:
    # 2 in x 0.083 in: bore 1.834 in = 46.5836 mm; 0.10 to 0.30 mm less serve
    diameter_mm = Decimal("46.5836") - clearance_mm
    shelf = mandrel(
        tube_od="50.8 mm",
        tube_wall_min="0.083 in",
        tube_wall_max="2.1082 mm",
        mandrel_diameter=f"{diameter_mm} mm",
    )
    asked = (
        {"od": "2 in", "wall": "0.083 in", "clr": "6 in"}
        if unit == "in"
        else {"od": "50.8 mm", "wall": "2.1082 mm", "clr": "152.4 mm"}
    )
    found = look(shelf, **asked)
    assert (found.match is not None) == (Decimal("0.1") <= clearance_mm <= Decimal("0.3"))


def test_another_od_is_not_even_near() -> None:
    # 38 and 38.1 mm are two sizes; 48.26 (US tables) and 48.3 (European) are one pipe.
    assert look(mandrel(tube_od="50.1 mm")) == ShelfLook(None, (), ())
    pipe = mandrel(
        tube_od="48.26 mm",
        tube_wall_min="3.6 mm",
        tube_wall_max="3.7 mm",
        mandrel_diameter="40.7 mm",
    )
    assert look(pipe, od="48.3 mm", wall="3.683 mm").match == pipe


def test_the_surface_preferred_for_the_material_is_taken_first() -> None:
    chrome, bronze = mandrel(part="A"), mandrel(part="B", surface="bronze")
    assert look(chrome, bronze, material=Material.STAINLESS_STEEL).match == bronze
    assert look(bronze, chrome, material=Material.ALUMINIUM).match == chrome


def test_without_a_material_the_size_alone_matches_nothing() -> None:
    shelf = look(mandrel(), material=None)
    assert shelf.match is None
    assert [m.part for m in shelf.fits_by_size] == ["M1"]


def test_fewest_reasons_come_first() -> None:
    far = mandrel(part="FAR", mandrel_diameter="45 mm", on_hand="0")
    near = mandrel(part="NEAR", mandrel_diameter="45.6 mm")
    assert [miss.mandrel.part for miss in look(far, near).near_misses] == ["NEAR", "FAR"]


def die(part: str, od: str, clr: str, on_hand: int = 1) -> Die:
    row = {"part": part, "tube_od": od, "clr": clr, "on_hand": on_hand}
    return Die.model_validate(row)


DIES = (
    die("A", "1.75 in", "6 in"),
    die("B", "1.75 in", "4.5 in"),
    die("C", "1.75 in", "5.25 in", on_hand=0),
    die("D", "2 in", "5 in"),
)


@pytest.mark.parametrize(
    ("clr", "there", "above"),
    [
        ("4.5 in", "B", "B"),
        ("114.3 mm", "B", "B"),
        ("5 in", None, "A"),  # the 2 in die does not count, nor the one that is not on hand
        ("5.25 in", None, "A"),
        ("6.1 in", None, None),
    ],
)
def test_dies_for_the_od_at_this_clr_and_above(
    clr: str, there: str | None, above: str | None
) -> None:
    od_mm, clr_mm = parse_length("1.75 in"), parse_length(clr)
    found, following = die_at(clr_mm, dies_for(od_mm, DIES)), next_die(od_mm, clr_mm, DIES)
    assert (found and found.part, following and following.part) == (there, above)
