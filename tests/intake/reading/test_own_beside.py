"""A size that took something over from another, while a figure of its own stands beside it: read,
or in doubt, and never the other's in silence. The sentences are made up; no published source.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text


@pytest.mark.parametrize(
    ("text", "clr"),
    [
        (
            "Un mandrin pour 25 x 1,5 mm, R 60 mm, et un pour 30 mm, même épaisseur, à 75 mm.",
            75,
        ),
        ("Un mandrino per 25 x 1,5 mm, R 60 mm, e uno per 30 mm, stesso spessore, a 75 mm.", 75),
        ("Een doorn voor 25 x 1,5 mm, R 60 mm, en een voor 30 mm, zelfde wand, bij 75 mm.", 75),
        ("A mandrel for 25 x 1.5 mm, R 60 mm, and one for 30 mm, same wall, the bend 75.0 mm.", 75),
    ],
)
def test_a_radius_taken_over_is_not_sure_beside_an_own_one(text: str, clr: int) -> None:
    _, second = read_text(text)
    assert second.od_mm == 30
    assert second.clr_mm == clr or second.doubt_on("clr")


@pytest.mark.parametrize(
    "text",
    [
        "Due anime: per i bassi 22 x 0,8, raggio 90, e per gli alti, 16 x 0,8, raggio 70.",
        "Mandrels: low ones 22 x 0.8 mm, radius 90; high ones, height 16 x 0.8, radius 70.",
    ],
)
def test_an_od_taken_over_is_not_sure_beside_a_chain_of_its_own(text: str) -> None:
    second = read_text(text)[-1]
    assert second.clr_mm == 70
    assert second.od_mm == 16 or second.doubt_on("od")


@pytest.mark.parametrize(
    "first",
    ["Bars come at 60mm, polished. Wall's 2mm, R 180.", "Hoops 60mm please. Wall's 2mm, R 180."],
)
def test_an_od_told_later_is_not_sure_for_a_tube_whose_own_was_not_heard(first: str) -> None:
    big, small = read_text(f"{first} And a smaller tube, 42mm OD, same wall, R 126. One each.")
    assert big.clr_mm == 180
    assert big.od_mm != 42 or big.doubt_on("od")
    assert small.od_mm == 42
    assert not small.doubt_on("od")


@pytest.mark.parametrize(
    "text",
    [
        "Mandrels for 25 x 1.5 mm and 30 x 1.5 mm, R 75 mm, legs 300 mm long.",
        "We need mandrels for these, R 90 mm:\nSize 1: 25 x 1.5 mm\nSize 2: 30 x 1.5 mm",
        "All on a 90 mm CLR: 25 x 1.5 mm (2 mandrels), 30 x 1.5 mm (1 mandrel).",
    ],
)
def test_a_radius_shared_by_all_is_sure(text: str) -> None:
    sizes = read_text(text)
    assert [size.od_mm for size in sizes] == [Decimal(25), Decimal(30)]
    assert len({size.clr_mm for size in sizes}) == 1
    assert not any(size.doubt_on("clr") for size in sizes)


@pytest.mark.parametrize(
    "told", ["16 gauge 2 inch", '16 ga 2"', "10 gauge 2-1/4", ".065 wall 2 in"]
)
@pytest.mark.parametrize("frame", ["My buddy runs {} on his.", "Our old one was for {}."])
def test_a_tube_told_wall_first_is_not_the_one_before(told: str, frame: str) -> None:
    asked = " I need one for 14 gauge 1-1/2 inch on a 5 inch CLR."  # BWG 14 is 0.083 in
    last = read_text(frame.format(told) + asked)[-1]
    assert (last.od_mm, last.clr_mm) == (Decimal("38.1"), Decimal("127"))
    assert last.wall_mm == Decimal("2.1082")
