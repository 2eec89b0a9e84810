"""Whole inches joined to a fraction by an 'and' or its sign, in any case of letters: one length;
two that are both marked are two. And lengths of no tube that a mandrel goes into are in doubt."""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text

_INCH = Decimal("25.4")


@pytest.mark.parametrize(
    ("tube", "inches"),
    [
        ("INCH & 1/8, 14 GAUGE", "1.125"),
        ("inch & 1/4 x .083", "1.25"),
        ("1 inch & 1/8, 14 ga", "1.125"),
        ('1" & 1/8, 14 ga', "1.125"),
        ("2 INCH & 1/4, 14 GAUGE", "2.25"),
        ("1 INCH AND 1/4 OD, .065 WALL", "1.25"),
        ("1 Inch 1/4 OD, .065 wall", "1.25"),
        ("1 pouce et 1/8, épaisseur 2 mm", "1.125"),
        ("1 pulgada y 1/4, pared 2 mm", "1.25"),
        ("1 pollice e 1/4, spessore 2 mm", "1.25"),
        ("1 Zoll und 1/4, Wand 2 mm", "1.25"),
    ],
)
def test_one_length(tube: str, inches: str) -> None:
    (size,) = read_text(f"Please quote one mandrel, tube {tube}, 3 1/2 in CLR.")
    assert size.od_mm == Decimal(inches) * _INCH
    assert not size.doubts


@pytest.mark.parametrize("tubes", ['1" & 1/2"', '1" and 1/2"', "1 inch & 1/2 inch"])
def test_two_lengths(tubes: str) -> None:
    sizes = read_text(f"Mandrels for {tubes} OD, .065 wall, 4 in CLR, one each.")
    assert [size.od_mm for size in sizes] == [_INCH, _INCH / 2]


@pytest.mark.parametrize("tube", ["1/8 OD, 14 ga", "3 mm OD, 2 mm wall", '1/8" OD, .095 wall'])
def test_no_tube_for_a_mandrel(tube: str) -> None:
    """Likelier part of a figure than a tube: the OD is asked, whatever the wall is repaired to."""
    (size,) = read_text(f"Please quote one mandrel, tube {tube}, 3 in CLR.")
    assert size.doubt_on("od")
