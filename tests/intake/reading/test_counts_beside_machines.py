"""Counts beside a machine's number, bent parts and a wiper, and those of one size and the others."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

import pytest

from .support import read_text


@pytest.mark.parametrize(
    "text",
    [
        "for bender 4 I need 3 mandrels, tube 33.7 x 2.6, 76 mm clr",
        "Machine 4 needs 3 mandrels, tube 33.7 x 2.6, 76 mm clr",
        "für die Biegemaschine 4 brauchen wir 3 Dorne, Rohr 33,7 x 2,6, R 76 Mitte.",
        "pour la cintreuse 4 il me faut 3 mandrins pour tube 33,7 x 2,6, rayon 76 à l'axe.",
        "para la curvadora 4 necesitamos 3 mandriles, tubo 33,7 x 2,6, radio 76 al eje",
        "per la curvatubi 4 servono 3 mandrini, tubo 33,7 x 2,6, raggio 76 all'asse",
        "voor buigmachine 4 hebben we 3 doornen nodig, buis 33,7 x 2,6, straal 76 hart",
        "für meine Maschine 3 Dorne, Rohr 33,7 x 2,6, R 76 Mitte.",
        "We have 40 pieces to get bent. 33.7 x 2.6 mm tube, 76 mm clr. Need 3 mandrels.",
    ],
)
def test_a_machines_number_counts_nothing(text: str) -> None:
    (size,) = read_text(text)
    assert size.quantity == 3


@pytest.mark.parametrize(
    "text",
    [
        "ODs 38, 42.4 and 48.3, wall 2 mm, 120 mm CLR. Two mandrels for the 38 and one each of the others.",
        "ODs 38, 42.4 and 48.3, wall 2 mm, 120 mm CLR. Two mandrels in the 38, one each in the others.",
        "ODs 38, 42.4 and 48.3, wall 2 mm, 120 mm CLR. 2 of the 38, one each of the rest. What do the mandrels cost?",
        "Rohre 38, 42,4 und 48,3, Wand 2 mm, R 120 Mitte. Zwei Dorne für 38 und je einen für die anderen.",
        "Tubes 38, 42,4 et 48,3, épaisseur 2, rayon 120 à l'axe. Deux mandrins pour le 38 et un pour les autres.",
        "Tubos de 38, 42,4 y 48,3, pared 2, radio 120 al eje. Dos mandriles para el de 38 y uno para los demás.",
        "Tubi 38, 42,4 e 48,3, parete 2, raggio 120 all'asse. Due mandrini per il 38 e uno per gli altri.",
        "Buizen 38, 42,4 en 48,3, wand 2, straal 120 hart. Twee doornen voor de 38 en één voor de andere.",
    ],
)
def test_one_size_and_the_others(text: str) -> None:
    assert [size.quantity for size in read_text(text)] == [2, 1, 1]


@pytest.mark.parametrize(
    "text",
    [
        "How much for a mandrel 1.25 x .049 4130, 3.5 clr",
        "4130 1.25 x .049 x 3.5 clr how much for a mandrel and wiper",
        "4130 1.25 x .049 x 3.5 clr, price for a mandrel and a wiper?",
    ],
)
def test_the_price_of_a_mandrel_beside_a_size_or_a_wiper(text: str) -> None:
    (size,) = read_text(text)
    assert size.quantity == 1


@pytest.mark.parametrize(
    ("said", "count"),
    [
        ("The former is one off an old ship-repair bender. Can you do mandrels to suit?", None),
        ("The die is one off my old bender, can you do mandrels to suit?", None),
        ("Mandrels please. My die is one off a machine we scrapped.", None),
        ("Need mandrels; the clamp is one off the old bender.", None),
        ("Mandrel please, one off.", 1),
        ("Mandrels, two off for the new bender.", 2),
        ("Mandrel, 1 off, needed for the old machine.", 1),
    ],
)
def test_what_one_off_counts(said: str, count: int | None) -> None:
    """'One off an old bender' tells where it came from; 'one off' alone is one piece."""
    (size,) = read_text(f"50 x 3 tube, 175 CLR. {said}")
    assert size.quantity == count
