"""What kind a message is: thanks that name a size, a machine that is given away, questions on an offer
and on whether a mandrel is needed at all, a chat that was sent on as a mail."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

from datetime import date
from decimal import Decimal

import pytest

from bendreply.intake.model import Kind
from bendreply.intake.pasted import text_message
from bendreply.intake.pipeline import Understanding, understand


def _understood(text: str) -> Understanding:
    return understand(text_message(text, date(2026, 3, 10)))


@pytest.mark.parametrize(
    "text",
    [
        'Just wanted to say the mandrel arrived Monday and the guys are tickled. First good part on the second try. That 2" at 3" radius used to be our worst scrap number. Thanks again.',
        "The mandrel came in yesterday, everybody is thrilled. The 1.5 x .049 on a 3 CLR was always our problem child.",
        "Wollte nur Danke sagen: der Dorn ist da, erstes gutes Teil beim zweiten Versuch, alle begeistert. Das 50 x 1,5 mit Radius 75 war immer unser größter Ausschuss.",
        "Le mandrin est arrivé lundi, toute l'équipe est ravie. Le 38 x 1,5 sur rayon 76 était notre pire rebut.",
        "El mandril ha llegado el lunes y el equipo está encantado. El tubo de 38 x 1,5 con radio 76 era nuestra pesadilla.",
        "I'm clearing my late father's workshop. There's a tube bender with about 20 dies (38mm to 63mm I think). If it's of interest please ring me, otherwise it goes to the scrap man. It would need a van.",
        "We are closing the garage and have a bender with dies from 1 inch to 2 inch. If any of it is of use to you, come and get it.",
    ],
)
def test_nothing_is_asked_for(text: str) -> None:
    assert _understood(text).kind is Kind.OTHER


@pytest.mark.parametrize(
    "text",
    [
        "Before I send the PO, two questions:\n\n1) Is that with the bronze or the steel balls?\n2) Can you hold the price till the end of September?",
        "Could you hold your quote until our board meets in October?",
        "Is het waar dat je voor dikwandige buis geen doorn nodig hebt? Vanaf welke wanddikte?",
        "Is it true that no mandrel is needed for thick wall tube?",
    ],
)
def test_it_is_a_question(text: str) -> None:
    assert _understood(text).kind is Kind.QUESTION


def test_thanks_with_a_request_ask() -> None:
    found = _understood(
        "The mandrel arrived Monday and the guys are tickled. Now we need one for 1.5 x .065 on 4.5 CLR."
    )
    assert found.kind is Kind.SIZES


_CHATS = [
    "Chat started 18:51.\n\nAnnie: hiya\nSite: Hello! Leave us your OD, wall and centreline radius and we'll get back to you.\nAnnie: ok so its 22mm tube\nAnnie: 1.2 wall\nAnnie: clr is 44\nAnnie: one mandrel\nAnnie: oh and can you tell me if I need lube\nSite: Thanks, somebody will answer.",
    "Web chat conversation\n\nBot: Hi! How can we help?\nGuest: need a price on a mandrel\nGuest: 22 x 1.2 steel\nBot: What is the centerline radius?\nGuest: 44 mm\nGuest: just one\nBot: Thank you.",
    "Chatverlauf\n\nBesucher: Hallo\nAgent: Guten Tag, welches Rohr?\nBesucher: Rohr 22 x 1,2 Stahl\nBesucher: Radius 44\nBesucher: ein Dorn bitte\nAgent: Danke",
]  # fmt: skip


@pytest.mark.parametrize("text", _CHATS)
def test_a_chat_is_read_by_what_its_visitor_says(text: str) -> None:
    found = _understood(text)
    assert found.kind is Kind.SIZES
    assert [(r.od_mm, r.wall_mm, r.clr_mm, r.quantity) for r in found.requests] == [
        (Decimal(22), Decimal("1.2"), Decimal(44), 1)
    ]


def test_labels_that_come_again_are_no_speakers() -> None:
    found = _understood(
        "We had a chat on the phone. Mandrels please:\nTube: 38 x 1.5\nCLR: 57\nTube: 42.4 x 2\nCLR: 63\nTube: 50 x 2\nCLR: 75"
    )
    assert [r.od_mm for r in found.requests] == [Decimal(38), Decimal("42.4"), Decimal(50)]


@pytest.mark.parametrize(
    "text",
    [
        "Gibt es bei Ihnen Dorne passend für 18 x 1, Kupfer, Radius 36 auf Mitte?",
        "Gibts den Dorn 42,4x2 noch, diesmal für 3D?",
        "Rohr 45x2, Radius 110. Können Sie mir sagen was ein Dorn kostet?",
        "Y a-t-il un mandrin pour tube 42,4x2, rayon 106 ?",
        "C'è un mandrino per tubo 42,4x2, raggio 106?",
        "Is er een doorn voor 42,4x2, radius 106?",
        "La matrice è nostra, il mandrino no. Tubo 45x2, raggio 135. Ne vogliamo uno.",
    ],
)
def test_whether_there_is_one_asks_for_it(text: str) -> None:
    assert _understood(text).kind is Kind.SIZES
