"""'Pretty sure it's .065, but I can't find my mic': the figure meant is doubted, and no other."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

import pytest

from .support import doubted, read_text

UNSURE_OF_THE_WALL = [
    "Tube is 2 inch OD, pretty sure it's .065 but I can't find my mic. Mild steel. 6 inch CLR. One mandrel.",
    "Tube is 2 inch OD, fairly sure the wall is .065. Mild steel. 6 inch CLR. One mandrel.",
    "Tube is 2 inch OD, wall's .065, I'm fairly certain. Mild steel. 6 inch CLR. One mandrel.",
    "Tube is 2 inch OD, almost certain it's .065 wall. Mild steel. 6 inch CLR. One mandrel.",
    "Tube is 2 inch OD, wall .065 unless I misread the tag. Mild steel. 6 inch CLR. One mandrel.",
    "Tube is 2 inch OD, .065 wall but I couldn't find my calipers to check. Mild steel. 6 inch CLR. One mandrel.",
    "Tube is 2 inch OD x .065 wall, haven't measured it though. Mild steel. 6 inch CLR. One mandrel.",
    "Tube is 2 inch OD, .065 wall, haven't miked it. Mild steel. 6 inch CLR. One mandrel.",
    "Tube is 2 inch OD, .065 wall if the label is right. Mild steel. 6 inch CLR. One mandrel.",
    "Rohr 50 mm, ziemlich sicher 1,5 Wand, Stahl, R 100 Mitte. Ein Dorn bitte.",
    "Rohr 50 mm, Wand 1,5, da bin ich mir ziemlich sicher. Stahl, R 100 Mitte. Ein Dorn bitte.",
    "Rohr 50 mm, Wand 1,5, aber nicht nachgemessen. Stahl, R 100 Mitte. Ein Dorn bitte.",
    "Rohr 50 mm, Wand 1,5, finde meine Schieblehre nicht. Stahl, R 100 Mitte. Ein Dorn bitte.",
    "Tube 50 mm, presque sûr que c'est 1,5 d'épaisseur. Acier, rayon 100 à l'axe. Un mandrin svp.",
    "Tube 50 mm, épaisseur 1,5, je n'ai pas pu mesurer. Acier, rayon 100 à l'axe. Un mandrin svp.",
    "Tube 50 mm, épaisseur 1,5, je suis à peu près sûr. Acier, rayon 100 à l'axe. Un mandrin svp.",
    "Tubo de 50 mm, casi seguro que es 1,5 de pared. Acero, radio 100 al eje. Un mandril por favor.",
    "Tubo de 50 mm, pared 1,5, pero no lo he medido. Acero, radio 100 al eje. Un mandril por favor.",
    "Tubo da 50 mm, quasi sicuro che sia 1,5 di spessore. Acciaio, raggio 100 in asse. Un mandrino per favore.",
    "Tubo da 50 mm, spessore 1,5, ma non l'ho misurato. Acciaio, raggio 100 in asse. Un mandrino per favore.",
    "Buis 50 mm, vrij zeker 1,5 wand. Staal, straal 100 hart. Een doorn graag.",
    "Buis 50 mm, wand 1,5, maar niet nagemeten. Staal, straal 100 hart. Een doorn graag.",
    "Tube is 2 inch OD, .065 wall. Can't find my calipers though. Mild steel. 6 inch CLR. One mandrel.",
]


@pytest.mark.parametrize("text", UNSURE_OF_THE_WALL)
def test_the_wall_alone_is_doubted(text: str) -> None:
    (size,) = read_text(text)
    assert doubted(size) == {"wall"}


@pytest.mark.parametrize(
    ("text", "field"),
    [
        ("2 inch OD, .065 wall, 304. CLR is 6 inch, I'm fairly sure. One mandrel.", "clr"),
        ("Pretty sure the OD is 2 inch. .065 wall, 304, 6 inch CLR. One mandrel.", "od"),
        ("Rohr 50 x 1,5, 1.4301. Radius 100 Mitte, da bin ich mir fast sicher. Ein Dorn.", "clr"),
        ("Tube 50 x 1,5 inox. Rayon 100 à l'axe, je suis presque sûr. Un mandrin.", "clr"),
    ],
)
def test_what_it_is_said_of_is_doubted(text: str, field: str) -> None:
    (size,) = read_text(text)
    assert doubted(size) == {field}


@pytest.mark.parametrize(
    "text",
    [
        "Tube is 2 inch OD, I'm sure the wall is .065. Mild steel. 6 inch CLR. One mandrel.",
        "Tube is 2 inch OD, .065 wall, I measured it. Mild steel. 6 inch CLR. One mandrel.",
        "Tube is 2 inch OD, .065 wall, mic'd it twice. Mild steel. 6 inch CLR. One mandrel.",
        "Tube is 2 inch OD, .065 wall. Pretty sure we spoke last year. Mild steel. 6 inch CLR. One mandrel.",
        "Tube is 2 inch OD, .065 wall. Make sure it's .065 clearance ok. Mild steel. 6 inch CLR. One mandrel.",
        "Rohr 50 mm, Wand 1,5, nachgemessen. Stahl, R 100 Mitte. Ein Dorn bitte.",
        "Rohr 50 mm, ganz sicher 1,5 Wand, Stahl, R 100 Mitte. Ein Dorn bitte.",
        "Tube 50 mm, épaisseur 1,5, mesurée. Acier, rayon 100 à l'axe. Un mandrin svp.",
        "Tubo de 50 mm, pared 1,5 medida con calibre. Acero, radio 100 al eje. Un mandril por favor.",
        "2 inch OD, .065 wall, 304, 6 inch CLR. Haven't checked the price yet. One mandrel.",
        "2 inch OD, .065 wall, 304, 6 inch CLR. We haven't measured the springback. One mandrel.",
        "2 inch OD, .065 wall, 304, 6 inch CLR. Fairly sure you made one for Mike. One mandrel.",
        "1-1/4 tube, 304, 3-3/4 CLR. I don't have a micrometer so I can't tell you how thick it is. One mandrel.",
        "Rohr 50 x 1,5, 1.4301, R 100 Mitte. Preis noch nicht geprüft. Ein Dorn.",
    ],
)
def test_nothing_is_doubted(text: str) -> None:
    (size,) = read_text(text)
    assert doubted(size) == frozenset()
