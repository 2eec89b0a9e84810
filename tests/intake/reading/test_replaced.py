"""A figure whose time is past, and the one in its place; tubes and walls only asked about."""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import doubted, read_text

INCH = Decimal("25.4")
FAILED = {
    "48.3 x 4.4 went bang on the first bend at 150 CLR. So new plan: 200 CLR, same tube, one"
    " mandrel please.": ("48.3", "4.4", "200"),
    "We bent the 50 x 2 round a 100 CLR and it tore open every time. Now we're going to 150 CLR"
    " instead. Please quote one mandrel.": ("50", "2", "150"),
    "Rohr 42,4 x 2 ist mit R 60 gerissen. Neuer Plan: R 100. Bitte einen Dorn anbieten.": (
        "42.4", "2", "100",
    ),
    "Das Rohr 30 x 2 ist beim ersten Versuch mit Radius 45 geplatzt. Jetzt soll es Radius 75"
    " werden. Wir brauchen einen Dorn.": ("30", "2", "75"),
    "Avec un rayon de 60 le tube de 40 x 2 a éclaté. Nouveau plan : rayon 100. Merci de chiffrer un"
    " mandrin.": ("40", "2", "100"),
    "Con radio 60 el tubo de 40 x 2 reventó. Ahora vamos a radio 100. Necesitamos un mandril.": (
        "40", "2", "100",
    ),
    "Con raggio 60 il tubo 40 x 2 si è spaccato. Nuovo piano: raggio 100. Ci serve un'anima.": (
        "40", "2", "100",
    ),
    "Met straal 60 is de buis 40 x 2 gescheurd. Nieuw plan dus: straal 100. Graag een offerte voor"
    " één doorn.": ("40", "2", "100"),
}  # fmt: skip
STOPPED = {
    "Wir brauchen einen Dorn. Rohr ist 42 x 3 ... Moment. Das hatten wir früher, ab jetzt 2,5."
    " Radius 84.": ("42", "2.5", "84"),
    "Il me faut un mandrin. Le tube est du 42 x 3... attendez. Désormais on prend du 2,5. Rayon"
    " 84.": ("42", "2.5", "84"),
    "Necesito un mandril. El tubo es 42 x 3... un momento. De ahora en adelante 2,5. Radio 84.": (
        "42", "2.5", "84",
    ),
    "Mi serve un'anima. Il tubo è 42 x 3... un attimo. D'ora in poi 2,5. Raggio 84.": (
        "42", "2.5", "84",
    ),
    "Ik heb een doorn nodig. De buis is 42 x 3 ... wacht even. Voortaan 2,5. Straal 84.": (
        "42", "2.5", "84",
    ),
}  # fmt: skip


@pytest.mark.parametrize(("text", "lengths"), [*FAILED.items(), *STOPPED.items()])
def test_the_new_figure_stands(text: str, lengths: tuple[str, str, str]) -> None:
    (request,) = read_text(text)
    assert (request.od_mm, request.wall_mm, request.clr_mm) == tuple(map(Decimal, lengths))
    assert not doubted(request) - {"wall"}


def test_who_stops_to_think_goes_on_with_another_wall() -> None:
    (request,) = read_text(
        "I need a price on 1 mandrel. Tube is 1.75 x .120 ... hang on. The last bundle came in at"
        " .095 and that will do. Going with .095 from here on. Die is 7 inch clr."
    )
    assert (request.wall_mm, request.clr_mm) == (Decimal("0.095") * INCH, 7 * INCH)


def test_a_radius_that_is_gone_is_none() -> None:
    (request,) = read_text(
        'Tube is 1-1/2" OD x .083". The bender comes with a 4" CLR die. Oh, they just called, the 4'
        " is gone, it'll be the 4.5\" CLR. So 4.5. One mandrel."
    )
    assert request.clr_mm == Decimal("4.5") * INCH


@pytest.mark.parametrize(
    ("text", "radii"),
    [
        ("38 x 1.5, radius 76, kinked. The new die is 76 CLR too. One mandrel please.", {76}),
        (
            "Two bends in one tube, 38 x 1.5. The 60 CLR kinked every time, the 90 CLR is fine now."
            " One mandrel please for both radii.",
            {60, 90},
        ),
        (
            "Need two mandrels. 50 x 2 on 100 CLR, that one wrinkled. 40 x 2 is now on 80 CLR.",
            {100, 80},
        ),
        (
            "Rohr 38 x 1,5 mit R 76 und R 60, bei R 60 ist es geknickt. Für beide jetzt je ein"
            " Dorn.",
            {76, 60},
        ),
    ],
)
def test_what_went_wrong_may_be_wanted(text: str, radii: set[int]) -> None:
    assert {request.clr_mm for request in read_text(text)} == {Decimal(radius) for radius in radii}


@pytest.mark.parametrize(
    "question",
    [
        "My question is whether the same 43 x 1.5 mandrel would also do for 43 x 2.",
        "Would the same mandrel do for 43 x 2?",
        "Frage: Passt derselbe Dorn auch für 43 x 2?",
        "Est-ce que le même mandrin irait aussi pour du 43 x 2 ?",
        "Mi pregunta es si el mismo mandril de 43 x 1,5 valdría también para 43 x 2.",
        "La stessa anima andrebbe bene anche per 43 x 2?",
        "Zou dezelfde doorn ook voor 43 x 2 te gebruiken zijn?",
        "Will the wall on the outside stay above 1.2 mm? That's our minimum.",
        "Bleibt die Wand außen noch über 1,2 mm? Das ist unsere Mindestwanddicke.",
        "La paroi extérieure restera-t-elle au-dessus de 1,2 mm ? C'est notre minimum.",
        "¿La pared exterior se queda por encima de 1,2 mm?",
        "La parete esterna resta sopra i 1,2 mm?",
        "Na het buigen mag de wand niet onder 1,2 mm komen.",
    ],
)
def test_what_is_only_asked_about_is_no_size(question: str) -> None:
    (request,) = read_text(f"We need one mandrel for 43 x 1.5 on 130 CLR. {question}")
    assert (request.od_mm, request.wall_mm, request.clr_mm) == (43, Decimal("1.5"), 130)
    assert not doubted(request)


@pytest.mark.parametrize(
    ("past", "asked"),
    [
        (
            "The mandrel for the stanchions (25 x 1.5, CLR 50) broke. We've redesigned those, so"
            " the old one won't be replaced.",
            "New is: tube 30 x 2, CLR 60. Please quote 2 mandrels.",
        ),
        (
            "Der Dorn für die Stützen (25 x 1,5, R 50) ist gebrochen. Der alte Dorn wird nicht"
            " ersetzt.",
            "Neu ist: Rohr 30 x 2, Radius 60. Bitte 2 Dorne anbieten.",
        ),
        (
            "Le mandrin pour 25 x 1,5, rayon 50, a cassé. Nous ne le remplaçons pas.",
            "Le nouveau : tube 30 x 2, rayon 60. Merci de chiffrer 2 mandrins.",
        ),
        (
            "El mandril de 25 x 1,5, radio 50, se rompió y no lo vamos a reponer.",
            "Lo nuevo es: tubo 30 x 2, radio 60 al eje. Necesitamos 2 mandriles.",
        ),
        (
            "L'anima da 25 x 1,5, raggio 50, si è rotta e non va sostituita.",
            "Nuovo è: tubo 30 x 2, raggio 60 in asse. Vorremmo un'offerta per 2 anime.",
        ),
        (
            "De doorn voor 25 x 1,5, R 50, is gebroken; die wordt niet vervangen.",
            "Nieuw is: buis 30 x 2, straal 60 hart. Graag 2 doornen aanbieden.",
        ),
    ],
)
def test_a_mandrel_that_is_not_replaced_is_not_asked_for(past: str, asked: str) -> None:
    (request,) = read_text(f"{past}\n\n{asked}")
    assert (request.od_mm, request.clr_mm, request.quantity) == (30, 60, 2)


def test_no_before_a_capital_ends_a_sentence() -> None:
    requests = read_text(
        "Necesitamos:\n- 43 x 1,5 mm, radio 130 al eje, 1 mandril\n- 33,7 x 2 mm, radio 100 al eje,"
        " 1 mandril\n\nLos de 25 no. Mi pregunta es si el mismo mandril valdría para 43 x 2."
    )
    assert [request.clr_mm for request in requests if request.od_mm != 25] == [130, 100]
