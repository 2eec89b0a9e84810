"""A radius told as the least or the most, the word behind it: it is in doubt, and not lost."""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text


@pytest.mark.parametrize(
    "said",
    [
        "Radius 76 min, tell me if tighter works. One mandrel.",
        "76 CLR min, one mandrel.",
        "Radius 76 maximum. One mandrel.",
        "Radius 76 mindestens. Ein Dorn.",
        "Radius 76 maximal. Ein Dorn.",
        "Radius 76 oder größer. Ein Dorn.",
        "Radius 76 oder grösser. Ein Dorn.",
        "Rayon 76 mini, si on peut faire plus serré dites-le moi. Un mandrin svp.",
        "Rayon mini 76. Un mandrin svp.",
        "Rayon 76 au moins. Un mandrin svp.",
        "Rayon 76 maxi. Un mandrin svp.",
        "Radio 76 mínimo. Un mandril.",
        "Radio 76 como mínimo. Un mandril.",
        "Raggio 76 minimo. Un mandrino.",
        "Raggio 76 min. Un mandrino.",
        "Raggio 76 o superiore. Un mandrino.",
        "Straal 76 minimaal. Een doorn.",
        "Straal 76 of groter. Een doorn.",
    ],
)
def test_a_limit_behind_the_radius(said: str) -> None:
    (size,) = read_text(f"304, 50.8 x 1.5 mm. {said}")
    assert size.clr_mm == Decimal(76)
    assert size.doubt_on("clr")


@pytest.mark.parametrize(
    "said",
    [
        "Radius 76, mindestens 2 Dorne.",
        "Radius 76, maximale Länge 600. Ein Dorn.",
        "rayon 76, prix mini svp. Un mandrin.",
        "raggio 76, massima precisione. Un mandrino.",
        "CLR 76, takes 20 min per bend. One mandrel.",
    ],
)
def test_a_limit_of_something_else(said: str) -> None:
    (size,) = read_text(f"304, 50.8 x 1.5 mm, {said}")
    assert size.clr_mm == Decimal(76)
    assert not size.doubts
