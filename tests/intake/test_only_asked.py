"""Messages that want an answer and no tooling, visits, and bare replies to a question of ours."""

from __future__ import annotations

from datetime import date

import pytest

from bendreply.intake.model import Kind
from bendreply.intake.pasted import text_message
from bendreply.intake.pipeline import understand

from .test_reliance import reply

TODAY = date(2026, 11, 25)

QUESTIONS = [
    "Before I order I'd like to know: what thread is on the back end? My rod is 3/4-16. "
    "I have not decided on tube yet so don't quote anything.",
    "What's the smallest tube you make a mandrel for, in general? And what do they cost, ballpark? "
    "Not ready to order.",
    "No quote needed yet. How do I tell that a mandrel is worn?",
    "We are not buying yet, but how tight can a mandrel go on thin wall tube?",
    "Do you supply a drawing with each mandrel, and a data sheet for the balls?",
    "Noch kein Angebot nötig: wie schmiert man einen Dorn, und wie lange hält er?",
    "Wir wollen noch nichts bestellen. Welche Dorne gibt es für dünne Rohre?",
    "Pas besoin de devis pour l'instant : comment graisse-t-on un mandrin ?",
    "No hace falta cotizar todavía. ¿Cada cuánto se lubrica un mandril?",
    "Non serve un preventivo: come si lubrifica un mandrino?",
    "Geen offerte nodig. Hoe smeer je een doorn?",
    "We have received the mandrel against our PO 450018833. Our QA wants to know:\n1. Hardness of "
    "the plating\n2. Up to how many bends is it guaranteed\n3. Can it be re-plated after wear",
    "The mandrel you delivered on order 2231 is in service. Please advise: can it be re-chromed?",
    "Wir haben den Dorn aus Bestellung 4711 erhalten. Frage: welche Härte hat die Beschichtung?",
    "Nous avons reçu le mandrin de la commande 1182. Question : quelle est la dureté du chrome ?",
]
SIZES = [
    "Not ready to order yet, but please quote a mandrel for 1.5 x .065, 4.5 CLR.",
    "I need a mandrel for my bender. What do you need to know?",
    "Could I get a quote for two mandrels? Drawing follows.",
    "We received the mandrel for 1.5 x .065, works well. Please quote one for 2 x .083, 6 CLR. "
    "What is the hardness of the plating?",
    "Same again as PO 5114 please, one mandrel. Is it plated?",
    "Please quote a mandrel for 1.75 x .095, 5.25 clr. Also could I come and see the shop?",
    "We visited your shop last year. Please quote a mandrel for 38 x 1.5 mm, R 57 mm.",
    "need a mandrel 1.5 x .065 4.5 clr, drop in by friday to see if it fits",
]
OTHERS = [
    "I'd like to bring my students to look round your works in March, would that be possible?",
    "Could two of us come and see the shop when we're in town? We bend handrail, 2 inch mostly.",
    "Do you do tours of your workshop? We're a local engineering society of about 12.",
    "May we visit your factory next Tuesday? Our engineer would like to see how mandrels are made.",
    "Können wir Ihre Werkstatt besichtigen? Wir sind eine Berufsschulklasse, 20 Schüler.",
    "Pourrions-nous visiter votre atelier avec nos apprentis le 12 novembre ?",
    "¿Podríamos visitar su taller el día 12? Somos un grupo de alumnos.",
    "Sarebbe possibile visitare la vostra officina il 12 novembre con gli studenti?",
    "Zou een rondleiding mogelijk zijn op 12 november? Wij zijn een school.",
    "The mandrel from PO 4471 arrived damaged, the plating is peeling. What now?",
    "We received the mandrel of order 2231, but the invoice is wrong. Please send a credit note.",
]


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        *((text, Kind.QUESTION) for text in QUESTIONS),
        *((text, Kind.SIZES) for text in SIZES),
        *((text, Kind.OTHER) for text in OTHERS),
    ],
)
def test_what_is_wanted(text: str, kind: Kind) -> None:
    said = understand(text_message(text, TODAY))
    assert said.kind is kind, said.why_kind


BELOW = (
    '\n\n> On Oct 27, 2026, at 4:51 PM, Desk <desk@example.com> wrote:\n>\n> Got it, 1" OD '
    "aluminum 6061-T6. What are the wall and the CLR?\n>\n>> On Oct 27, 2026, at 1:20 PM, Maike "
    "Ott <someone@example.net> wrote:\n>>\n>> Hi, need one mandrel for ladder rails. 1 inch "
    "6061-T6. What else do you need to know?\n"
)


@pytest.mark.parametrize(
    "words",
    [
        "4 inch. And .065. I measured with calipers this time lol\n\nMaike",
        ".065 and 4 inch",
        "4\" and .065\"",
        ".065, 4",
        "101.6 mm, 1.651 mm",
    ],
)  # fmt: skip
def test_bare_figures_answer_in_whatever_order(words: str) -> None:
    _, said = reply("Re: ladder", words + BELOW)
    assert said.kind is Kind.SIZES, said.why_kind
    (request,) = said.requests
    lengths = (request.od_mm, request.wall_mm, request.clr_mm)
    assert [round(float(length or 0), 3) for length in lengths] == [25.4, 1.651, 101.6]
    assert request.quantity == 1


@pytest.mark.parametrize("words", ["2 and 1.5", "call me at 4, room 12", "2 inch"])
def test_figures_that_sizes_cannot_tell_apart_are_not_taken_for_sure(words: str) -> None:
    _, said = reply("Re: ladder", words + BELOW)
    for request in said.requests:
        assert request.wall_mm is None or request.doubt_on("wall") is not None
