"""Tubes told of beside the one that is asked for: the old one beside the new, what another bent,
what was only measured, and the side of a box named again."""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import doubted, read_text

Lengths = tuple[str, str, str]
NEW: Lengths = ("25", "1.2", "60")
DRAWN: Lengths = ("25", "1.5", "240")


@pytest.mark.parametrize(
    ("text", "lengths"),
    [
        ("The old tube was 25 x 2, the new one is 25 x 1.2, CLR 60. Two mandrels please.", NEW),
        ("Das alte Rohr war 25 x 2, das neue ist 25 x 1,2, R 60. Bitte zwei Dorne.", NEW),
        ("L'ancien tube était en 25 x 2, le nouveau est en 25 x 1,2, rayon 60. Merci de chiffrer"
         " deux mandrins.", NEW),
        ("El tubo antiguo era 25 x 2, el nuevo es 25 x 1,2, radio 60. Necesitamos dos mandriles.",
         NEW),
        ("Il tubo vecchio era 25x2, quello nuovo 25x1,2, raggio medio 60. Vorremmo un'offerta per"
         " due anime.", NEW),
        ("De oude buis was 25 x 2, de nieuwe is 25 x 1,2, straal 60. Graag twee doornen.", NEW),
        ("The tube is 25 x 1.2, CLR 60. The steel one was 25 x 2, which bends fine without a"
         " mandrel, that one is history. Please quote one mandrel.", NEW),
        ("It is 25 x 1.5 per the drawing. The one in the wreck measured 2, but I'm going by the"
         " drawing. The radius is 240. One mandrel please.", DRAWN),
        ("Laut Zeichnung ist das Rohr 25 x 1,5. Das alte Teil hat 2 mm gemessen, aber ich halte"
         " mich an die Zeichnung. Radius 240. Bitte einen Dorn.", DRAWN),
        ("D'après le plan le tube est du 25 x 1,5. Sur la pièce j'ai mesuré 2 mm, mais je m'en"
         " tiens au plan. Rayon 240. Il nous faut un mandrin.", DRAWN),
        ("Según el plano el tubo es 25 x 1,5. En la pieza medí 2 mm, pero me guío por el plano."
         " Radio 240. Necesitamos un mandril.", DRAWN),
        ("Da disegno il tubo è 25 x 1,5. Sul pezzo ho misurato 2 mm, ma mi attengo al disegno."
         " Raggio 240. Ci serve un'anima.", DRAWN),
        ("Volgens de tekening is de buis 25 x 1,5. Aan het stuk heb ik 2 mm gemeten, maar ik ga"
         " uit van de tekening. Straal 240. Graag een doorn.", DRAWN),
        ("The previous owner bent 76 and left a rod, can we use that? Tube is 25 x 1.2, CLR 60. We"
         " need one mandrel.", NEW),
        ("The line is 25 x 1.2, CLR 60. The cold side is 57 but I'm buying those bends, don't want"
         " to mess with it. Just 1 mandrel.", NEW),
    ],
)  # fmt: skip
def test_only_the_one_is_read(text: str, lengths: Lengths) -> None:
    (request,) = read_text(text)
    assert (request.od_mm, request.wall_mm, request.clr_mm) == tuple(map(Decimal, lengths))
    assert not doubted(request)


def test_both_are_kept_where_both_are_asked_for() -> None:
    requests = read_text(
        "The old tube was 25 x 2, the new one is 25 x 1.2, both on a 60 CLR. A mandrel each please."
    )
    assert {request.wall_mm for request in requests} == {Decimal(2), Decimal("1.2")}


@pytest.mark.parametrize(
    "text",
    [
        "Tube is 50 x 30 x 3 rectangular, bent on the flat (so the 30 mm is in the plane of the"
        " bend), CLR 120. One mandrel.",
        "Rechteckrohr 50 x 30 x 3, flach gebogen (die 30 mm liegen in der Biegeebene), Radius 120"
        " Mitte. Bitte einen Dorn.",
        "Tube rectangulaire 50 x 30 x 3, cintré à plat (les 30 mm sont dans le plan de cintrage),"
        " rayon 120 à l'axe. Un mandrin svp.",
        "Tubo rectangular 50 x 30 x 3, doblado de plano (los 30 mm quedan en el plano de la curva),"
        " radio 120 al eje. Necesitamos un mandril.",
        "Tubo rettangolare 50 x 30 x 3, piegato di piatto (i 30 mm stanno nel piano di piega),"
        " raggio 120 in asse. Ci serve un'anima.",
        "Rechthoekige buis 50 x 30 x 3, plat gebogen (de 30 mm ligt in het buigvlak), straal 120"
        " hart. Graag een doorn.",
    ],
)
def test_a_side_named_again_is_no_tube(text: str) -> None:
    (request,) = read_text(text)
    assert (request.shape.value, request.wall_mm, request.clr_mm) == ("rectangular", 3, 120)


def test_a_railways_gauge_is_no_length() -> None:
    (request,) = read_text(
        'The steam pipe is copper, 5/8" OD, 0.048" wall, 1-1/4" radius to the centre line. One'
        " mandrel please.",
        subject="steam pipes on a 5 inch gauge engine",
    )
    assert request.od_mm == Decimal("15.875")
    assert not doubted(request)


def test_to_scrap_the_old_ones_takes_nothing_back() -> None:
    requests = read_text(
        "60.3 x 3.2 R 180 - 2 mandrels\n48.3 x 3.2 R 145 - 2 mandrels\n\nCan the old ones be"
        " rebuilt, or is it cheaper to scrap them?"
    )
    assert len(requests) == 2
    assert not any(map(doubted, requests))
