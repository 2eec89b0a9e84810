"""Sizes as Germans, French, Spaniards, Italians and Dutch write them, in prose and lines."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text

Wanted = tuple[tuple[str, str, str], ...]
FORTY: Wanted = (("40", "2", "100"),)

WALL_BY_ITS_WORD: list[tuple[str, Wanted]] = [
    (
        "Wat kost een doorn voor buis 25 wanddikte 2, hartlijnradius 60, staal?",
        (("25", "2", "60"),),
    ),
    ("Graag een doorn voor buis 18 wand 1, straal 45.", (("18", "1", "45"),)),
    ("Ci serve un mandrino per tubo da 22 spessore 1, raggio all'asse 44", (("22", "1", "44"),)),
    ("Mandrin pour tube de 12 ép. 1, rayon 30", (("12", "1", "30"),)),
    ("Dorn für Rohr 18 Wand 1, Radius 45", (("18", "1", "45"),)),
    ("Necesito mandril para tubo de 25 esp. 2, radio 60", (("25", "2", "60"),)),
    (
        "Mandrins : tube 33,7 ep 2,6 rayon 100; tube 42,4 ep 2,6 rayon 90",
        (("33.7", "2.6", "100"), ("42.4", "2.6", "90")),
    ),
    ("Mandrin pour du tube de 40 en 2 d'épaisseur, rayon 100", FORTY),
    ("Dorn für Rohr 40 mit 2 Wand und Radius 100", FORTY),
    ("Mandrino per tubo 40 con 2 di spessore e raggio 100", FORTY),
]
IN_SENTENCES: list[tuple[str, Wanted]] = [
    (
        "Le tube fait 40 de diamètre, l'épaisseur est de 2 et le rayon de 100. Il me faut un mandrin.",
        FORTY,
    ),
    ("Un mandrin svp. Diamètre 40. L’épaisseur est de 2. On cintre avec un rayon de 100.", FORTY),
    ("Il me faut un mandrin. Diametre 40, l'epaisseur est de 2, le rayon est de 100", FORTY),
    ("Diameter 40. De wanddikte bedraagt 2. We buigen met radius 100. Ik zoek een doorn.", FORTY),
    ("Der Durchmesser beträgt 40, die Wand beträgt 2, der Radius 100. Bitte Dorn anbieten.", FORTY),
    ("Cerco mandrino: il diametro misura 40 mm, lo spessore è 2, il raggio vale 100", FORTY),
]
OF_THE_NEXT_TUBE: list[tuple[str, Wanted]] = [
    (
        "Mandrins pour tube diamètre extérieur 28, épaisseur 1,5, rayon moyen 70 et pour tube"
        " diamètre extérieur 76,1, épaisseur 2, rayon moyen 230.",
        (("28", "1.5", "70"), ("76.1", "2", "230")),
    ),
    (
        "Mandriles para tubo diámetro exterior 18, espesor 1, radio medio 36 y para tubo diámetro"
        " exterior 40, espesor 1.5, radio medio 100.",
        (("18", "1", "36"), ("40", "1.5", "100")),
    ),
    ("Servono mandrini per tubo 44,5/1,5 raggio 110", (("44.5", "1.5", "110"),)),
    (
        "Mandrini:\n- tubo 44.5x1.5 raggio 110\n- tubo 40x2 raggio 100",
        (("44.5", "1.5", "110"), *FORTY),
    ),
]
OWNED_ON_THE_NEXT_LINE: list[tuple[str, Wanted]] = [
    ("1 mandrin pour tube diam 40 ép 2 r 100, 304L\nNous avons déjà un mandrin pour 30x2.", FORTY),
    ("Anime per:\n- 40 x 2, R 100\nAbbiamo già un mandrino per 30x2.", FORTY),
    ("Wir brauchen einen Dorn für Rohr 40x2, R 100\nEinen Dorn für 30x2 haben wir schon", FORTY),
    ("Necesitamos un mandril para 40x2, radio 100\nYa tenemos un mandril para 30x2", FORTY),
    ("Doorn nodig voor 40x2, radius 100\nEen doorn voor 30x2 hebben we al", FORTY),
]
CREASES: list[tuple[str, Wanted]] = [
    ("Ci serve un mandrino: tubo 40x2 R100\nL'ultima curva aveva grinze all'interno.", FORTY),
    ("Dorn für 40x2 R100, der letzte Bogen hatte Falten innen.", FORTY),
    ("Mandrin 40x2 R100\nLe dernier coude avait des plis à l'intérieur", FORTY),
    ("Mandril 40x2 R100\nLa última curva salió con arrugas por dentro", FORTY),
    ("Doorn 40x2 R100\nDe laatste bocht had plooien aan de binnenkant", FORTY),
]


@pytest.mark.parametrize(
    ("text", "wanted"),
    [*WALL_BY_ITS_WORD, *IN_SENTENCES, *OF_THE_NEXT_TUBE, *OWNED_ON_THE_NEXT_LINE, *CREASES],
)
def test_read_as_meant(text: str, wanted: Wanted) -> None:
    sizes = read_text(text)
    read = [(size.od_mm, size.wall_mm, size.clr_mm) for size in sizes]
    assert read == [tuple(Decimal(length) for length in one) for one in wanted]
    assert not any(size.doubts for size in sizes)


@pytest.mark.parametrize(
    "owned",
    [
        "Für 18 x 1 haben wir schon Dorne.",
        "Per il tubo 18 x 1 abbiamo già il mandrino.",
        "Para el tubo 18 x 1 ya tenemos mandril.",
    ],
)
def test_a_size_that_is_there_counts_no_mandrels(owned: str) -> None:
    (size,) = read_text(f"1 mandrel for tubo 16 spessore 1, raggio 40. {owned}")
    assert (size.od_mm, size.wall_mm) == (Decimal(16), Decimal(1))
    assert size.quantity in (None, 1)
