"""Two lists of one length: read in their order, and asked about; dies that are there already.

Every size is arithmetic: 1-3/4 in is 44.45 mm, .095 in 2.413, 5-1/4 in 133.35; 1-1/2 in is 38.1,
.065 in 1.651, 4-1/2 in 114.3.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text

LARGE = tuple(map(Decimal, ("44.45", "2.413", "133.35")))
SMALL = tuple(map(Decimal, ("38.1", "1.651", "114.3")))


@pytest.mark.parametrize(
    "text",
    [
        "OD: 1.75 and 1.5\nWall: .095 and .065\nCLR: 5.25 and 4.5\nMandrels for both please.",
        "I'd like one for 1.75 x .095 and, price allowing, one for 1.5 x .065. Radii 5.25 and 4.5.",
        "1.75 x .095 and 1.5 x .065, CLR 5.25 and 4.5, one mandrel each.",
        "1.75 x .095 and 1.5 x .065 on radii of 5.25 and 4.5, two off each please.",
        "Mandrels for 1.75 x .095 and for 1.5 x .065. The dies are 5.25 and 4.5 CLR.",
        "Quote 1.75 x .095; also 1.5 x .065. Centerline radii: 5.25, 4.5",
    ],
)
def test_lists_of_one_length_are_paired_and_doubted(text: str) -> None:
    sizes = read_text(text)
    assert [(size.od_mm, size.wall_mm, size.clr_mm) for size in sizes] == [LARGE, SMALL]
    assert all("clr" in {doubt.field for doubt in size.doubts} for size in sizes)


@pytest.mark.parametrize(
    ("text", "count"),
    [
        ("Mandrels for 1.75 x .095 and 1.5 x .065, each on radii of 5 and 6 inches.", 4),
        ("25x1.5 and 30x1.5 mm at 2D and 3D, mandrels for all.", 4),
        ("Mandrels for 1.75 x .095 on 5.25 and 6 inch radius.", 2),
    ],
)
def test_each_and_multiples_of_d_go_with_every_size(text: str, count: int) -> None:
    assert len(read_text(text)) == count


@pytest.mark.parametrize(
    "text",
    [
        "We already have dies for both: 1.75 x .095 on 5.25 CLR and 1.5 x .065 on 4.5 CLR. "
        "Need the mandrels.",
        "We've already got bending dies for 1.75 x .095 on 5.25 CLR and 1.5 x .065 on 4.5 CLR. "
        "Need mandrels for those.",
    ],
)
def test_a_die_that_is_there_says_what_mandrel_is_wanted(text: str) -> None:
    sizes = read_text(text)
    assert [(size.od_mm, size.wall_mm, size.clr_mm) for size in sizes] == [LARGE, SMALL]


def test_a_mandrel_that_is_there_is_not_wanted() -> None:
    text = "We already have dies and mandrels for 1.75 x .095 on 5.25 CLR. Need one for 1.5 x .065."
    assert [size.od_mm for size in read_text(text)] == [Decimal("38.1")]


@pytest.mark.parametrize(
    "text",
    [
        "Need a mandrel for 1.75 OD x .095 wall, we have the 5.25 inch radius shoe.",
        "Need a mandrel for 1.75 x .095, we have a 5.25 CLR die. Just one.",
        "Please quote a mandrel for 1.75 x .095, I have the 5-1/4 CLR die already.",
    ],
)
def test_a_die_that_is_there_takes_no_tube_back(text: str) -> None:
    (size,) = read_text(text)
    assert (size.od_mm, size.wall_mm, size.clr_mm) == LARGE


def test_a_wall_named_with_an_owned_tube_stays_that_of_another() -> None:
    text = "The mandrel for 1.5 x .065 we already have, need one for 1.75 x .065 on 5.25 CLR."
    assert [(size.od_mm, size.wall_mm) for size in read_text(text)] == [
        (Decimal("44.45"), Decimal("1.651"))
    ]
