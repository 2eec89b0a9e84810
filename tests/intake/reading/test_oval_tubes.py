"""A cross-section named before a remark in brackets is still the tube's."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text

OVAL = [
    "Do you make tooling for oblong tube (half round on both narrow sides, straight between)? 50 x 25 mm, wall 2 mm, steel, CLR 120 mm. We need one mandrel.",
    "Wir brauchen einen Dorn für Flachovalrohr (zwei Halbkreise, gerade Seiten). 50 x 25 mm, Wand 2 mm, Radius 120 mm.",
    "Il nous faut un mandrin pour tube oblong (deux demi-cercles et des côtés droits) : 50 x 25 mm, épaisseur 2 mm, rayon 120 mm.",
    "Necesitamos un mandril para tubo ovalado (dos medios círculos y lados rectos), 50 x 25 mm, espesor 2 mm, radio 120 mm.",
    "Ci serve un mandrino per tubo ovale (due semicerchi con i lati dritti): 50 x 25 mm, spessore 2 mm, raggio 120 mm.",
    "We hebben een doorn nodig voor platovale buis (twee halve cirkels met rechte zijden). 50 x 25 mm, wanddikte 2 mm, radius 120 mm.",
]


@pytest.mark.parametrize("text", OVAL)
def test_a_remark_in_brackets_takes_no_shape_away(text: str) -> None:
    [request] = read_text(text)
    assert (request.shape, request.od_mm) == ("other", None)
    assert (request.wall_mm, request.clr_mm) == (Decimal(2), Decimal(120))


def test_a_frame_that_is_square_tells_nothing_of_its_tube() -> None:
    [request] = read_text("A mandrel for a square frame (tube as drawn). 40 x 2, CLR 120")
    assert (request.shape, request.od_mm) == ("round", Decimal(40))
