"""Radii beside words of wrinkles, of an axis, of a temper of copper; counts by OD in six languages.

An inside radius of 57 on a 38 mm tube is 57 + 19 = 76 to the centre line.
"""

from __future__ import annotations

import pytest

from .support import doubted, read_text

SEVENTY_SIX: list[str] = [
    "Rohr 38 x 1,5, Radius 76 Mitte, innen kommen lauter Falten. Brauche einen Dorn.",
    "Rohr 38 x 1,5, Radius 76 auf Mitte, innen wird es faltig. Bitte einen Dorn anbieten.",
    "Tube 38 x 1.5 mm, radius 76, it wrinkles on the inside of the bend. Need a mandrel.",
    "Tube 38 x 1.5, rayon 76 à l'axe, à l'intérieur ça plisse. Il me faut un mandrin.",
    "Tubo 38 x 1,5, radio 76 al eje, por dentro salen arrugas. Necesito un mandril.",
    "Tubo 38 x 1,5, raggio 76 in mezzeria, all'interno si formano grinze. Serve un mandrino.",
    "Buis 38 x 1,5, radius 76 hart, aan de binnenkant komen plooien. Ik heb een doorn nodig.",
    "Tube 38 x 1.5 mm, radius 57 to the inside, it wrinkles. Need a mandrel.",
    "We need one mandrel for tube 38x1.5, R76 in axis, bending 90 degrees.",
    "Need one mandrel for tube 38x1.5, R76 in center.",
    "Rohr 38x1,5, R76 in Rohrmitte. Ein Dorn bitte.",
    "buis 38x1,5, R76 in hartlijn. Een doorn graag.",
    "Need a mandrel, 38 x 1.5 copper, half hard R250, bend radius 76 mm.",
    "Need a mandrel, 38 x 1.5 copper R250, bend radius 76 mm.",
    "Kupferrohr 38 x 1,5, R220 weich, Radius 76. Ein Dorn bitte.",
    "Tube cuivre 38 x 1,5 écroui R290, rayon 76. Un mandrin svp.",
    "Tubo cobre 38 x 1,5 recocido R220, radio 76. Un mandril por favor.",
    "Koperen buis 38 x 1,5 halfhard R250, radius 76. Een doorn graag.",
]


@pytest.mark.parametrize("text", SEVENTY_SIX)
def test_one_radius_to_the_centre(text: str) -> None:
    (request,) = read_text(text)
    assert (request.od_mm, request.clr_mm) == (38, 76)
    assert not doubted(request)


@pytest.mark.parametrize(
    ("text", "clr"),
    [
        ("One mandrel for S235 tube 60.3 x 2.9 R250", "250"),
        ("One mandrel for copper tube 54 x 2 hard, R250 bend", "250"),
        ("One mandrel for 1.5 x .065, 6 in center line radius", "152.4"),
    ],
)
def test_radii_and_inches_that_look_like_those(text: str, clr: str) -> None:
    (request,) = read_text(text)
    assert str(request.clr_mm) == clr


COUNTS: list[str] = [
    "Tubes 25 x 1.5 on 75 clr, 30 x 2 on 90 clr. Two mandrels for the 25, one for the 30.",
    "Tubes 25 x 1.5 on 75 clr, 30 x 2 on 90 clr. Two of the 25 mandrels and one of the 30.",
    "Rohre 25 x 1,5 Radius 75 und 30 x 2 Radius 90. Zwei Dorne fürs 25er und einen fürs 30er.",
    "Tubes 25 x 1,5 rayon 75 et 30 x 2 rayon 90. Deux mandrins pour le 25 et un pour le 30.",
    "Tubos 25 x 1,5 radio 75 y 30 x 2 radio 90. Dos mandriles para el de 25 y uno para el de 30.",
    "Tubi 25 x 1,5 raggio 75 e 30 x 2 raggio 90. Vorrei due mandrini per il 25 e uno per il 30.",
    "Buizen 25 x 1,5 radius 75 en 30 x 2 radius 90. Twee doornen voor de 25 en een voor de 30.",
]


@pytest.mark.parametrize("text", COUNTS)
def test_counts_by_od(text: str) -> None:
    requests = read_text(text)
    assert [(r.od_mm, r.quantity) for r in requests] == [(25, 2), (30, 1)]


def test_tubes_that_get_bent_are_asked_for() -> None:
    requests = read_text(
        '7/8 OD x .049 wall and 1" OD x .065 wall, both get bent on a 4" center line. '
        "I'd like two mandrels for the 7/8 and one for the 1 inch."
    )
    assert [request.quantity for request in requests] == [2, 1]
    assert not any(request.doubts for request in requests)
