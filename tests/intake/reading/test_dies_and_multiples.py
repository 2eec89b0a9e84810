"""Tubes listed behind a radius told as so many ODs; dies told before the tubes with their walls; the
same radius said again; numbers of steel, coats and tools of before beside a material."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

from decimal import Decimal

import pytest

from bendreply.rules.request import Material

from .support import doubted, read_text, written_down

_IN = Decimal("25.4")
_ODS = [_IN, _IN * Decimal("1.25"), _IN * Decimal("1.5")]
MULTIPLES = [
    (3, 'Mandrels for 12 ga tube on 3D dies: 1", 1-1/4" and 1-1/2". One each.'),
    (3, "Mandrels for 12 ga tube on 3 x D dies: 1 inch, 1.25 and 1.5. One each."),
    (2, 'Mandrels, 16 ga, CLR 2D: 1", 1-1/4" and 1-1/2".'),
    (2, 'Mandrels, 16 ga, bend radius 2 x OD: 1", 1-1/4" and 1-1/2".'),
    (
        3,
        'Budget numbers for mandrels, all our 12 gauge work, on 3 x OD dies:\n\n1", 1-1/4" and 1-1/2"',
    ),
    (2, 'Need mandrels, all 16 ga, all 2D bends:\n1"\n1-1/4"\n1-1/2"'),
]
DIES = [
    "Got one 6.5 clr die that does 1 5/8 and a second one same radius for 1 3/4. Want mandrels for both\n\n1 5/8 x .120\n1 3/4 x .120\n\n1 of each.",
    "I have a 6.5 clr die for 1 5/8 and another one, same radius, for 1 3/4. Need mandrels for both:\n1 5/8 x .120\n1 3/4 x .120",
    "I have 6.5 clr dies for 1 5/8 and 1 3/4. Need mandrels for both:\n1 5/8 x .120\n1 3/4 x .120",
    "Dies are 1.625 on 6.5 and 1.75 on 6.5. Need mandrels for 1.625 x .120 and 1.75 x .120.",
]
SAME = [
    '1-7/8" x 16 ga, 3" CLR. And 2" 16 ga on the same 3". One of each.',
    '1-7/8" x 16 ga, 3" CLR. Also 2" x 16 ga, same 3". One mandrel of each.',
    '1-7/8" x 16 ga, 3" CLR, and 2" x 16 ga on that same 3 inch. One mandrel of each.',
]
_SIZE = "One mandrel, 1.5 x .083, 4.5 CLR, "
MATERIALS = [
    ("One mandrel for 1-7/8 x 16 ga 1010, 3 CLR.", Material.CARBON_STEEL),
    ("One mandrel, 1.5 x .188, 5 CLR. Cold drawn 1026.", Material.CARBON_STEEL),
    (_SIZE + "1010 welded.", Material.CARBON_STEEL),
    (_SIZE + "1020.", Material.CARBON_STEEL),
    (_SIZE + "1018 CDS.", Material.CARBON_STEEL),
    (_SIZE + "409 aluminized exhaust tube.", Material.STAINLESS_STEEL),
    (_SIZE + "aluminised 409.", Material.STAINLESS_STEEL),
    (_SIZE + "galvanized steel.", Material.CARBON_STEEL),
    (_SIZE + "aluminium, ladder rails for RVs.", Material.ALUMINIUM),
    (_SIZE + "6061-T6. Last fella's was steel and it galled.", Material.ALUMINIUM),
    (_SIZE + "6061. Our old one is steel and scratches.", Material.ALUMINIUM),
]
ABOUT = [
    "Boss, the mandrel we talked about\n5/8 od .040 wall 2 clr",
    "The mandrel I called about:\n5/8 od .040 wall 2 clr",
    "Here is the tube we spoke about: 5/8 od .040 wall 2 clr. One mandrel.",
]


@pytest.mark.parametrize(("times", "text"), MULTIPLES)
def test_tubes_behind_a_multiple_are_tubes(times: int, text: str) -> None:
    requests = read_text(text)
    assert [r.od_mm for r in requests] == _ODS, written_down(requests)
    assert [r.clr_mm for r in requests] == [od * times for od in _ODS]
    assert not any(map(doubted, requests)), written_down(requests)


@pytest.mark.parametrize("text", DIES)
def test_dies_tell_the_radii_of_their_tubes(text: str) -> None:
    requests = read_text(text)
    assert [r.od_mm for r in requests] == [_IN * Decimal("1.625"), _IN * Decimal("1.75")]
    assert all(r.clr_mm == _IN * Decimal("6.5") for r in requests), written_down(requests)
    assert all(r.wall_mm == _IN * Decimal(".12") for r in requests)
    assert not any(map(doubted, requests)), written_down(requests)


@pytest.mark.parametrize("text", SAME)
def test_the_same_radius_said_again(text: str) -> None:
    first, second = read_text(text)
    assert first.clr_mm == second.clr_mm == _IN * 3
    assert not any(map(doubted, (first, second))), written_down([first, second])


@pytest.mark.parametrize(("text", "material"), MATERIALS)
def test_the_material_is_the_tubes(text: str, material: Material) -> None:
    (request,) = read_text(text)
    assert request.material is material
    assert request.doubt_on("material") is None


@pytest.mark.parametrize("text", ABOUT)
def test_what_was_spoken_about_is_no_hedge(text: str) -> None:
    (request,) = read_text(text)
    assert request.od_mm == _IN * Decimal("0.625")
    assert not doubted(request), written_down([request])


def test_a_figure_named_behind_keeps_the_length_of_a_multiple() -> None:
    (request,) = read_text("Mandrel for 2 mm wall, radius 3D: 150 mm, 50 OD")
    assert (request.od_mm, request.clr_mm) == (50, 150)
