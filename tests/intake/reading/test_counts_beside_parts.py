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


@pytest.mark.parametrize(
    "text",
    [
        "We make stoves, every year some 30 pieces. Without a mandrel the tube kinks. "
        "1.5 x .083, 4.5 CLR. We need a mandrel.",
        "Every month we ship 20 pieces. With no mandrel it kinks. "
        "1.5 x .083 tube on a 4.5 CLR. Please quote the mandrel.",
        "Wir bauen Öfen, jedes Jahr etwa 30 Stück. Ohne Dorn knickt das Rohr. "
        "26,9 x 2, R 60 Mitte. Bitte um ein Angebot über einen Dorn.",
        "Nous en faisons, chaque année, environ 30 pièces. Sans mandrin le tube plie. "
        "26,9 x 2, rayon 60 à l'axe. Votre prix pour le mandrin svp.",
        "Hacemos cada año unas 30 piezas. Sin mandril se arruga. "
        "Tubo 38 x 1,5, radio al eje 76. Precio de un mandril.",
        "Ne facciamo ogni anno circa 30 pezzi. Senza anima fa le pieghe. "
        "Tubo 38 x 1,5, raggio in asse 76. Ci serve un'anima.",
        "We maken elk jaar zo'n 30 stuks. Zonder doorn knikt de buis. "
        "Buis 38 x 1,5, hartradius 76. Prijs voor een doorn graag.",
    ],
)
def test_pieces_made_every_year_are_no_mandrels(text: str) -> None:
    (size,) = read_text(text)
    assert size.quantity == 1


@pytest.mark.parametrize(
    ("text", "count"),
    [
        ("Mandrel for 38 x 1.5, R 76. Every year 2 pieces please.", 2),
        ("Dorn 38 x 1,5, R 76. Wir brauchen pro Jahr 2 Stück.", 2),
        ("Bending 400 frames per year, 2 pcs for 38 x 1.5, R 76 CLR.", 2),
        ("400 cintrages par an, 2 pièces, mandrin 38 x 1,5 rayon 76 à l'axe", 2),
        ("Bending 4000 frames per year, 10 pcs for 38 x 1.5, R 76 CLR.", 10),
    ],
)
def test_mandrels_beside_a_yearly_number_are_counted(text: str, count: int) -> None:
    (size,) = read_text(text)
    assert size.quantity == count
