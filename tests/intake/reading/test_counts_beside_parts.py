"""Counts beside a mandrel that count its balls, the parts to be bent, or mandrels in hand."""

from __future__ import annotations

import pytest

from .support import read_text


@pytest.mark.parametrize(
    ("text", "count"),
    [
        ("We need a three-ball mandrel for 1.5 x .095, 4.5 CLR.", 1),
        ("Price on a 4-ball mandrel, 1.5 x .095, 4.5 CLR", 1),
        ("Please quote two 3-ball mandrels, 1.5 x .095, 4.5 CLR", 2),
        ("Ci serve un mandrino per 42,4 x 2,6 mm, raggio 100 mm, dobbiamo curvare 40 pezzi.", 1),
        ("Nous voulons un mandrin pour 42,4 x 2,6 mm, rayon 100, 50 pièces à cintrer.", 1),
        ("Necesitamos un mandril para 42,4 x 2,6 mm, radio 100 mm, son 40 piezas.", 1),
        ("Wir brauchen Dorne für 42,4 x 2,6, Radius 100, 10 Stück", 10),
        ("We hebben er 2 van nodig: doorn 42,4 x 2,6 mm, radius 100", 2),
        ("Half of our 6 mandrels are worn so I need 3 for 1.5 x .095, 4.5 CLR", 3),
    ],
)
def test_mandrels_are_counted(text: str, count: int) -> None:
    (size,) = read_text(text)
    assert size.quantity == count


@pytest.mark.parametrize(
    "text",
    [
        "Please quote a mandrel for 38 x 1.5, CLR 76. Pieces: 40\nOne mandrel",
        "Prix pour mandrin, tube 38 x 1,5, rayon 76 à l'axe. Pièces : 40\n1 mandrin",
        "Precio de mandril para tubo 38 x 1,5, radio 76 al eje. Piezas: 40\n1 mandril",
        "Prezzo mandrino per tubo 38 x 1,5, raggio 76 in asse. Pezzi: 40\n1 mandrino",
    ],
)
def test_pieces_told_before_the_one_mandrel_are_what_is_bent(text: str) -> None:
    (size,) = read_text(text)
    assert size.quantity == 1
