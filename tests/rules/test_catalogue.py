"""Which mandrel on the shelf serves a bend, which comes near and why not, which die there is."""

from __future__ import annotations

import pytest

from bendreply.rules.bend import BendSpec
from bendreply.rules.catalogue import ShelfLook, die_for, look_on_shelf, next_die
from bendreply.rules.mandrel import mandrel_needed
from bendreply.rules.request import Material
from bendreply.rules.shelf import CatalogueMandrel, Die
from bendreply.rules.shop_settings import ClearanceRule
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


def look(
    *shelf: CatalogueMandrel,
    od: str = "50 mm",
    wall: str = "2 mm",
    clr: str = "150 mm",
    material: Material | None = Material.CARBON_STEEL,
) -> ShelfLook:
    spec = BendSpec(
        od_mm=parse_length(od),
        wall_mm=parse_length(wall),
        clr_mm=parse_length(clr),
        material=material,
    )
    needed = mandrel_needed(spec, CLEARANCE)
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
    ("too big", {"mandrel_diameter": "46.15 mm"}, {}, "it is 0.25 mm (0.01 in) too big"),
    ("too small", {"mandrel_diameter": "45.2 mm"}, {}, "it is 0.5 mm (0.02 in) too small"),
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
    found, following = die_for(od_mm, clr_mm, DIES), next_die(od_mm, clr_mm, DIES)
    assert (found and found.part, following and following.part) == (there, above)
