"""A statement on a tube that is no matter of the request is left out, wherever it stands: it stays
straight, is made with elbows or hose, is rolled, goes well as it is, or is of the old design."""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text

ASKED = {
    "en": ("The tube is 42.4 x 2 and the former is 100 mm centre line.", "Just one mandrel."),
    "de": ("Das Rohr ist 42,4 x 2, Radius 100 Mitte.", "Wir brauchen einen Dorn."),
    "fr": ("Le tube est du 42,4 x 2, rayon 100 à l'axe.", "Il nous faut un mandrin."),
    "es": ("El tubo es de 42,4 x 2, radio 100 al eje.", "Necesitamos un mandril."),
    "it": ("Il tubo è 42,4 x 2, raggio medio 100.", "Ci serve un'anima."),
    "nl": ("De buis is 42,4 x 2, straal 100 op hart.", "We hebben één doorn nodig."),
}
TOLD = {
    "en": (
        "The 63.5 lines we make with weld elbows.",
        "Brake lines are 28 mm, we'll use hose for the bends.",
        "The 76.1 posts stay straight.",
        "Uprights are 48.3 x 2.6 but those don't get bent.",
        "The 25 mm bars I do on a roller so don't worry about them.",
        "We also bend 33.7 x 3.2 on the same machine, that comes out fine.",
        "The 60 x 3 has never given us trouble.",
        "Our earlier version used 20 mm copper nickel.",
        "Next will be the 60.3, but don't quote that one.",
    ),
    "de": (
        "Die 63,5er machen wir mit Schweißbögen.",
        "Die Pfosten in 76,1 bleiben gerade.",
        "Die Stützen sind 48,3 x 2,6, die werden nicht gebogen.",
        "Die 25er Stangen rollen wir.",
        "Mit 33,7 hatten wir noch nie Ärger.",
        "Die alte Variante war 38 x 3, die ist Geschichte.",
    ),
    "fr": (
        "Le 63,5, on le fait avec des coudes à souder.",
        "Les poteaux en 76,1 sont droits.",
        "Les montants sont en 48,3 x 2,6 mais ne sont pas cintrés.",
        "Les barres de 25, je les fais à la rouleuse.",
        "L'ancienne version était en 38 x 3, c'est du passé.",
    ),
    "es": (
        "El de 63,5 lo hacemos con codos soldados.",
        "Los postes de 76,1 son rectos.",
        "Los montantes son de 48,3 x 2,6, pero no se doblan.",
        "Con el 33,7 nunca hemos tenido problemas.",
        "El dueño anterior doblaba tubo de 76 y dejó una barra.",
    ),
    "it": (
        "Il 63,5 lo facciamo con curve a saldare.",
        "I montanti da 76,1 sono dritti.",
        "Le gambe (30 x 2) non vanno piegate.",
        "Con il 33,7 non abbiamo mai avuto problemi.",
        "Il tubo pesante (60 x 3) va bene da sempre.",
    ),
    "nl": (
        "De 63,5 die ook in het project zit doen we gewoon met lasbochten.",
        "De staanders van 76,1 zijn recht.",
        "De staanders zijn 48,3 x 2,6, maar die worden niet gebogen.",
        "De oude versie was 38 x 3, dat is geschiedenis.",
        "De zware buis (60 x 3) gaat door zonder.",
    ),
}


@pytest.mark.parametrize(
    ("language", "told"), [(language, told) for language in TOLD for told in TOLD[language]]
)
def test_it_is_left_out_and_the_other_is_sure(language: str, told: str) -> None:
    tube, asks = ASKED[language]
    for text in (f"{tube} {asks}\n\n{told}", f"{told}\n\n{tube} {asks}", f"{tube} {told} {asks}"):
        (request,) = read_text(text)
        assert (request.od_mm, request.wall_mm, request.clr_mm) == (
            Decimal("42.4"), Decimal(2), Decimal(100),
        )  # fmt: skip
        assert not any(doubt.about == "size" for doubt in request.doubts)


@pytest.mark.parametrize(
    "text",
    [
        "Up to now we made 42.4 x 2 with weld elbows. Now we bend: 42.4 x 2 on 100 CLR and 35 x 1.5"
        " on 70 CLR, a mandrel each.",
        "Two mandrels please. 42.4 x 2 on 100 CLR, the ends stay straight. 35 x 1.5 on 70 CLR too.",
        "Il nous faut deux mandrins. 42,4 x 2, rayon 100, les bouts restent droits. 35 x 1,5, rayon"
        " 70, pareil.",
        "The hoop is 42.4 x 2 on 100 CLR and it comes out fine to 60 degrees, beyond that it"
        " wrinkles. The brace is 35 x 1.5 on 70 CLR. Please quote mandrels.",
        "We've got the 42.4 x 2 on 100 CLR that goes wrong with elbows. One mandrel please. And the"
        " 35 x 1.5 on 70 CLR, one too.",
        "42.4 x 2 on 84 CLR: we have always bent it without a mandrel. 35 x 1.5 on 76 CLR is new."
        " The customer now wants a mandrel used on everything, so one of each.",
        "Rohr 42,4 x 2, R 100, bisher immer ohne Dorn gebogen. Rohr 35 x 1,5, R 70, ebenso. Für"
        " beide bitte je einen Dorn.",
    ],
)
def test_what_is_asked_for_all_the_same_is_kept(text: str) -> None:
    ods = {request.od_mm for request in read_text(text)}
    assert {Decimal("42.4"), Decimal(35)} <= ods


def test_a_condition_tells_of_nothing() -> None:
    text = (
        "El cliente quiere el tubo de 40 x 2,5, radio 120. Haced uno por favor. Si va bien en"
        " primavera pediremos otro para 60 x 3."
    )
    first = read_text(text)[0]
    assert (first.od_mm, first.wall_mm) == (Decimal(40), Decimal("2.5"))


def test_legs_with_a_wall_in_parts_of_an_inch_are_tube() -> None:
    (request,) = read_text(
        "The fork legs are 7/8 by 1/16 wall, 1-3/4 inch radius to the middle. I need one mandrel."
    )
    assert (request.od_mm, request.wall_mm) == (Decimal("22.225"), Decimal("1.5875"))
