"""Walls told as parts of a millimetre in words, in the six languages."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text

WALLS = {
    "0.5": [
        "Brass tube, 10 mm outside, half a millimetre wall (CZ108), R 30 centreline. One mandrel.",
        "Brass tube, 10 mm outside, wall half a\nmillimetre, R 30 centreline. One mandrel.",
        "Brass tube, 10 mm outside, half a\nmillimetre wall, R 30 centreline. One mandrel.",
        "Brass tube, 10 mm outside, half a mm wall, R 30 centreline. One mandrel.",
        "Brass tube, 10 mm outside, a half millimeter wall, R 30 centreline. One mandrel.",
        "Brass tube, 10 mm outside, half-millimetre wall, R 30 centreline. One mandrel.",
        "Brass tube, 10 mm outside, half millimetre wall, R 30 centreline. One mandrel.",
        "Messingrohr, 10 mm außen, ein halber Millimeter Wand, R 30 Mitte. Ein Dorn.",
        "Messingrohr, 10 mm außen, Wand ein halber Millimeter, R 30 Mitte. Ein Dorn.",
        "Messingrohr, 10 mm außen, einen halben Millimeter dick, R 30 Mitte. Ein Dorn.",
        "Messingrohr, 10 mm außen, halber Millimeter Wandstärke, R 30 Mitte. Ein Dorn.",
        "Messingrohr, 10 mm außen, einen halben mm Wand, R 30 Mitte. Ein Dorn.",
        "Tube laiton, 10 mm extérieur, un demi-millimètre d'épaisseur, rayon 30 à l'axe. Un mandrin.",
        "Tube laiton, 10 mm extérieur, épaisseur un demi millimètre, rayon 30 à l'axe. Un mandrin.",
        "Tube laiton, 10 mm extérieur, paroi d'un demi-millimètre, rayon 30 à l'axe. Un mandrin.",
        "Tubo de latón, 10 mm exterior, medio milímetro de pared, radio 30 al eje. Un mandril.",
        "Tubo de latón, 10 mm exterior, pared de medio milímetro, radio 30 al eje. Un mandril.",
        "Tubo ottone, 10 mm esterno, mezzo millimetro di spessore, raggio 30 in asse. Un mandrino.",
        "Tubo ottone, 10 mm esterno, spessore mezzo millimetro, raggio 30 in asse. Un mandrino.",
        "Messing buis, 10 mm buiten, halve millimeter wand, straal 30 hart. Een doorn.",
        "Messing buis, 10 mm buiten, een halve millimeter wand, straal 30 hart. Een doorn.",
    ],
    "0.75": [
        "Brass tube, 10 mm outside, three quarters of a millimetre wall, R 30 centreline. One mandrel.",
        "Brass tube, 10 mm outside, three quarter mm wall, R 30 centreline. One mandrel.",
        "Messingrohr, 10 mm außen, dreiviertel Millimeter Wand, R 30 Mitte. Ein Dorn.",
        "Messingrohr, 10 mm außen, drei viertel Millimeter Wand, R 30 Mitte. Ein Dorn.",
        "Tube laiton, 10 mm extérieur, trois quarts de millimètre d'épaisseur, rayon 30 à l'axe. Un mandrin.",
        "Tubo de latón, 10 mm exterior, tres cuartos de milímetro de pared, radio 30 al eje. Un mandril.",
        "Tubo ottone, 10 mm esterno, tre quarti di millimetro di spessore, raggio 30 in asse. Un mandrino.",
        "Messing buis, 10 mm buiten, driekwart millimeter wand, straal 30 hart. Een doorn.",
    ],
    "1.5": [
        "Brass tube, 20 mm outside, a millimetre and a half wall, R 60 centreline. One mandrel.",
        "Brass tube, 20 mm outside, a mm and a half thick, R 60 centreline. One mandrel.",
        "Messingrohr, 20 mm außen, anderthalb Millimeter Wand, R 60 Mitte. Ein Dorn.",
        "Messingrohr, 20 mm außen, eineinhalb Millimeter Wand, R 60 Mitte. Ein Dorn.",
        "Tube laiton, 20 mm extérieur, un millimètre et demi d'épaisseur, rayon 60 à l'axe. Un mandrin.",
        "Tubo de latón, 20 mm exterior, milímetro y medio de pared, radio 60 al eje. Un mandril.",
        "Tubo de latón, 20 mm exterior, un milímetro y medio de pared, radio 60 al eje. Un mandril.",
        "Tubo ottone, 20 mm esterno, un millimetro e mezzo di spessore, raggio 60 in asse. Un mandrino.",
        "Messing buis, 20 mm buiten, anderhalve millimeter wand, straal 60 hart. Een doorn.",
    ],
    "1.0": [
        "Brass tube, 20 mm outside, a millimetre wall, R 60 centreline. One mandrel.",
        "Brass tube, 20 mm outside, one millimetre wall, R 60 centreline. One mandrel.",
    ],
    "0.8": [
        "Brass tube, 20 mm outside, eight tenths of a millimetre wall, R 60 centreline. One mandrel.",
        "Messingrohr, 20 mm außen, acht Zehntel Millimeter Wand, R 60 Mitte. Ein Dorn.",
        "Messingrohr, 20 mm außen, acht Zehntel Wand, R 60 Mitte. Ein Dorn.",
        "Tube laiton, 20 mm extérieur, huit dixièmes de millimètre d'épaisseur, rayon 60 à l'axe. Un mandrin.",
        "Tube laiton, 20 mm extérieur, huit dixièmes d'épaisseur, rayon 60 à l'axe. Un mandrin.",
        "Tubo de latón, 20 mm exterior, ocho décimas de pared, radio 60 al eje. Un mandril.",
        "Tubo ottone, 20 mm esterno, otto decimi di spessore, raggio 60 in asse. Un mandrino.",
        "Messing buis, 20 mm buiten, acht tiende millimeter wand, straal 60 hart. Een doorn.",
        "Messing buis, 20 mm buiten, 8 tiende wand, straal 60 hart. Een doorn.",
    ],
    "1.25": [
        "Brass tube, 20 mm outside, one and a quarter millimetre wall, R 60 centreline. One mandrel.",
    ],
}


@pytest.mark.parametrize(
    ("wall", "text"), [(wall, text) for wall, texts in WALLS.items() for text in texts]
)
def test_a_wall_in_parts_of_a_millimetre(wall: str, text: str) -> None:
    (size,) = read_text(text)
    assert size.wall_mm == Decimal(wall)
    assert not size.doubts


@pytest.mark.parametrize(
    ("text", "wall"),
    [
        ("Brass tube, 20 mm outside, R 60 centreline, play half a millimetre. One mandrel.", None),
        (
            "Brass tube, 20 mm outside x 1, R 60 centreline, tolerance half a millimetre. One mandrel.",
            Decimal(1),
        ),
        (
            "Brass tube, 20 mm outside x 1, R 60 centreline. Ovality under half a millimetre please. One mandrel.",
            Decimal(1),
        ),
        ("Messingrohr 20 x 1, R 60 Mitte. Spiel einen halben Millimeter. Ein Dorn.", Decimal(1)),
    ],
)
def test_a_play_or_tolerance_is_no_wall(text: str, wall: Decimal | None) -> None:
    (size,) = read_text(text)
    assert size.wall_mm == wall
