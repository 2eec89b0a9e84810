"""Replies above a quoted mail: the one length it asks for, told in prose; a count changed."""

from __future__ import annotations

from decimal import Decimal

import pytest

from bendreply.intake.message import parse_message
from bendreply.intake.model import Kind
from bendreply.intake.pipeline import Understanding, understand

HEADS = {
    "en": "On Mon, 1 Jun 2026 at 16:40, {} wrote:",
    "de": "Am 01.06.2026 um 16:40 schrieb {}:",
    "fr": "Le 1 juin 2026 à 16:40, {} a écrit :",
    "es": "El 1 jun 2026 a las 16:40, {} escribió:",
    "it": "Il giorno 01 giu 2026, alle ore 16:40, {} ha scritto:",
    "nl": "Op 1 jun 2026 om 16:40 schreef {}:",
}
OURS, THEIRS = "Sales <sales@example.com>", "Jo <jo@example.com>"
RADIUS = {
    "en": "2 mandrels for 50 x 2 mm tube in S235. We still need the centreline radius.",
    "de": "2 Dorne für Rohr 50 x 2 mm in S235. Es fehlt uns noch der Biegeradius.",
    "fr": "2 mandrins pour tube 50 x 2 mm en S235. Il nous manque le rayon de cintrage.",
    "es": "2 mandriles para tubo 50 x 2 mm en S235. Nos falta el radio de curvado.",
    "it": "2 mandrini per tubo 50 x 2 mm in S235. Ci manca il raggio di curvatura.",
    "nl": "2 doornen voor buis 50 x 2 mm in S235. Wij missen nog de buigradius.",
}
WALL = {
    "en": "one mandrel for 50 mm tube, S235, centreline radius 100 mm. What is the wall?",
    "de": "ein Dorn für Rohr 50 mm, S235, Biegeradius 100 mm. Welche Wandstärke hat das Rohr?",
    "fr": "un mandrin pour tube de 50 mm, S235, rayon de cintrage 100 mm. Quelle épaisseur ?",
    "es": "un mandril para tubo de 50 mm, S235, radio medio 100 mm. ¿Qué espesor tiene?",
    "it": "un mandrino per tubo da 50 mm, S235, raggio medio 100 mm. Qual è lo spessore?",
    "nl": "een doorn voor buis 50 mm, S235, radius 100 mm hartlijn. Welke wanddikte heeft de buis?",
}


def above(new: str, quoted: str, language: str, who: str = OURS) -> Understanding:
    """A reply by Jo above a mail of ours, or of her own."""
    head = HEADS[language].format(who)
    mail = (
        "From: Jo <jo@example.com>\nDate: Tue, 02 Jun 2026 09:00:00 +0000\nSubject: Re: Mandrel\n"
        f"Content-Type: text/plain; charset=utf-8\n\n{new}\n\nJo\n\n{head}\n> {quoted}\n>\n"
    )
    return understand(parse_message(mail.encode()))


ANSWERS: list[tuple[str, dict[str, str], str]] = [
    ("en", RADIUS, "sorry, forgot. It is 100 mm, to the middle of the tube. Rest as I wrote."),
    ("en", RADIUS, "It's 100 mm."),
    ("en", RADIUS, "That would be 100, thanks for checking."),
    ("en", RADIUS, "It's 2D."),
    ("de", {"de": RADIUS["de"].replace("Biegeradius", "Mittenradius")}, "er ist 100."),
    (
        "de",
        {"de": WALL["de"].replace("Welche Wandstärke hat das Rohr", "Wie dick ist die Wand")},
        "2.",
    ),
    ("fr", {"fr": RADIUS["fr"].replace("Il nous manque", "Merci de nous indiquer")}, "100 mm."),
    ("en", WALL, "it is 2 according to the certificate."),
    ("de", RADIUS, "das sind 100 mm, Mitte Rohr."),
    ("de", RADIUS, "er beträgt 100 mm, sonst bleibt alles."),
    ("fr", RADIUS, "Désolé pour l'oubli. C'est 100 mm, à l'axe du tube. Le reste ne change pas."),
    ("es", RADIUS, "Perdón por el olvido. Son 100 mm, al eje del tubo. Lo demás igual."),
    ("it", RADIUS, "Scusate la dimenticanza. Sono 100 mm, all'asse del tubo."),
    ("nl", RADIUS, "Sorry, vergeten. Het is 100 mm, tot het hart van de buis."),
    ("en", WALL, "2mm, sorry about that!"),
    ("en", WALL, "It's 2 mm, same as last time."),
    ("de", WALL, "die ist 2 mm. Alles andere wie geschrieben."),
    ("fr", WALL, "elle est de 2 mm. Le reste est bon."),
    ("es", WALL, "son 2 mm. Lo demás igual."),
    ("it", WALL, "sono 2 mm. Il resto è corretto."),
    ("nl", WALL, "die is 2 mm. De rest klopt."),
]


@pytest.mark.parametrize(("language", "asked", "new"), ANSWERS)
def test_the_one_length_asked_for(language: str, asked: dict[str, str], new: str) -> None:
    said = above(new, asked[language], language)
    assert said.kind is Kind.SIZES
    (request,) = said.requests
    assert (request.od_mm, request.wall_mm, request.clr_mm) == (50, 2, 100)
    assert not [d for d in request.doubts if d.field in ("od", "wall", "clr")]


def test_a_side_that_the_answer_names_counts() -> None:
    (request,) = above("75 mm, to the inside of the bend", RADIUS["en"], "en").requests
    assert request.clr_mm == 100  # and half of 50


@pytest.mark.parametrize(
    "new",
    [
        "We will know more in 100 days.",
        "The old one was 120 but this is a new die, will measure.",
        "Our part number is 76.",
        "I think 3 people here could know it, will ask.",
        "Our shop is 2 mm away from closing, never mind.",
    ],
)
def test_other_figures_answer_nothing(new: str) -> None:
    assert not above(new, RADIUS["en"], "en").requests


OWN = {
    "en": "please quote 1 mandrel for 42.4 x 2 mm tube, 304, CLR 85 mm",
    "de": "bitte Angebot für 1 Dorn, Rohr 42,4 x 2, 1.4301, Radius 85 Mitte",
    "fr": "merci de chiffrer 1 mandrin, tube 42,4 x 2, inox 304, rayon 85 à l'axe",
    "es": "por favor cotizar 1 mandril, tubo 42,4 x 2, inox 304, radio 85 al eje",
    "it": "vorrei un preventivo per 1 mandrino, tubo 42,4 x 2, AISI 304, raggio medio 85",
    "nl": "graag offerte voor 1 doorn, buis 42,4 x 2, rvs 304, radius 85 hartlijn",
}
COUNTS: list[tuple[str, str]] = [
    ("en", "make it 3 instead of 1, and I need them here by July 10"),
    ("en", "Actually I need 3, not 1."),
    ("en", "Could you change the quantity to 3?"),
    ("en", "Better make that three."),
    ("en", "we need three of them now"),
    ("de", "Bitte 3 statt 1."),
    ("de", "Machen Sie bitte drei daraus."),
    ("de", "Bitte auf 3 Stück ändern."),
    ("fr", "Mettez-en 3 au lieu de 1, s'il vous plaît."),
    ("es", "Que sean 3 en vez de 1, por favor."),
    ("it", "Fate 3 invece di 1, grazie."),
    ("nl", "Maak er 3 van in plaats van 1."),
]


@pytest.mark.parametrize(("language", "new"), COUNTS)
def test_a_count_is_changed(language: str, new: str) -> None:
    said = above(new, OWN[language], language, THEIRS)
    assert said.kind is Kind.SIZES
    (request,) = said.requests
    assert (request.od_mm, request.wall_mm, request.clr_mm) == (Decimal("42.4"), 2, 85)
    assert request.quantity == 3
    assert not request.doubts


def test_a_bare_figure_may_be_a_length_as_well() -> None:
    (request,) = above("Let's do 3.", OWN["en"], "en", THEIRS).requests
    assert request.quantity == 3
    assert request.doubt_on("wall") is not None


def test_another_length_is_no_count() -> None:
    (request,) = above("make it 90 instead of 85", OWN["en"], "en", THEIRS).requests
    assert (request.clr_mm, request.quantity) == (90, 1)


@pytest.mark.parametrize("new", ["OK go ahead as quoted.", "I need 2 of these, ship when ready."])
def test_orders_above_our_offer_ask_for_nothing(new: str) -> None:
    offer = "quotation 771: 1 mandrel for 42.4 x 2 mm tube, 304, CLR 85 mm, EUR 312, 3 weeks"
    assert not above(new, offer, "en").requests
