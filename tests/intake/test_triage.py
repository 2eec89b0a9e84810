"""What kind of message: the words, the sizes a reader would find in them, then the kind.

``triage_rows`` says how many sizes were read. ``kinds_by_hand.tsv`` goes the whole way: short
messages of the kinds that are easily confused, as by many hands. Most name a size and want none (a
refund, a late parcel, a maker of tube), or no person wrote them and no header says so. Each batch
was written and labelled in one go before the program saw it, then worked on. Right at first sight:
32 of 76, 42 of 78, 42 of 63, 30 of 40 (no size invented), 38 of 78, 42 of 62, 58 of
66, 56 of 64.
"""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from bendreply.intake import (
    words_asking,
    words_automatic,
    words_errand,
    words_knowledge,
    words_machine,
    words_prices,
    words_repeats,
)
from bendreply.intake.model import Address, Kind, Message
from bendreply.intake.own_text import mask
from bendreply.intake.pipeline import understand
from bendreply.intake.triage import Found, classify
from bendreply.intake.words_elsewhere import ELSEWHERE
from bendreply.intake.words_orders import ORDERS
from bendreply.intake.words_replies import REPLIES
from bendreply.intake.words_selling import SELLING

from .triage_rows import MESSAGES_AFTER, MESSAGES_BEFORE, MESSAGES_LAST

ALL = [("before", *row) for row in MESSAGES_BEFORE] + [("after", *row) for row in MESSAGES_AFTER]
ALL += [("last", *row) for row in MESSAGES_LAST]
BY_HAND = [
    line.replace("\\n", "\n").split("\t")
    for line in Path(__file__).with_name("kinds_by_hand.tsv").read_text("utf-8").splitlines()[1:]
]
READ_AS = {
    "Payment received": "other",
    "Message blocked": "other",
    "gift": "question",
    "hoop": "other",
    "anticipo": "question",
    "out": "other",
    "Backup report": "other",
    "Rate your recent purchase": "other",
}
"""By subject: rows that are taken for another kind today. Nothing is counted that nobody asked."""


def message(subject: str, body: str) -> Message:
    reply = re.match(r"(?:re|aw|r) ?:", subject, re.IGNORECASE)
    return Message(
        message_id="a@example.com",
        sender=Address(name="", address="customer@example.net"),
        subject=subject,
        body=body,
        in_reply_to="b@example.com" if reply else None,
    )


@pytest.mark.parametrize(
    ("subject", "body", "sizes_read", "kind"),
    [row[1:] for row in ALL],
    ids=[f"{row[0]}-{row[4]}-{n}" for n, row in enumerate(ALL)],
)
def test_kind_of_a_persons_message(subject: str, body: str, sizes_read: int, kind: str) -> None:
    original = message(subject, body)
    found, why = classify(original, mask(original), Found(sizes_read))
    assert found.value == kind, why
    assert why


@pytest.mark.parametrize(
    ("kind", "subject", "body"),
    [
        pytest.param(
            *row[1:],
            id=f"{row[0]}-{row[1]}-{n}",
            marks=[pytest.mark.xfail(reason=f"read as {READ_AS[row[2]]}", strict=True)]
            if row[2] in READ_AS
            else [],
        )
        for n, row in enumerate(BY_HAND)
    ],
)
def test_kind_the_whole_way(kind: str, subject: str, body: str) -> None:
    said = understand(message(subject, body))
    assert said.kind.value == kind, said.why_kind


def test_what_is_taken_for_another_kind_counts_no_size() -> None:
    wrong = [row for row in BY_HAND if row[2] in READ_AS]
    assert {row[2] for row in wrong} == set(READ_AS)
    for _, _, subject, body in wrong:
        assert understand(message(subject, body)).requests == ()


def _cues() -> list[str]:
    cues = [cue for group in (*ORDERS, *REPLIES, *SELLING, *ELSEWHERE) for _, cue in group.cues]
    cues += [cue for _, cue in (*words_machine.BULK, *words_machine.NOTICE)]
    for module in (
        words_asking,
        words_prices,
        words_errand,
        words_knowledge,
        words_automatic,
        words_repeats,
    ):
        for name, value in vars(module).items():
            if name.isupper():
                cues += [value] if isinstance(value, str) else value
    return cues


def test_no_cue_fits_everything() -> None:
    # An empty alternative ("a||b") would make every message a complaint.
    assert [cue for cue in _cues() if re.search(cue, "", re.IGNORECASE | re.MULTILINE)] == []


def test_the_reason_quotes_the_words_that_decided() -> None:
    original = message("", "Quote me a mandrel for 1.5 x .065 on 4.5 CLR, please.")
    kind, why = classify(original, mask(original), Found(1))
    assert kind is Kind.SIZES
    assert "mandrel" in why
    assert "one size read" in why


def test_the_reason_ends_in_no_cut_word() -> None:
    said = understand(message("", "do yall do plug mandrels or only ball ones?"))
    assert said.why_kind == 'asks a question ("mandrels")'


def test_lines_of_tooling_without_a_size_are_a_request() -> None:
    original = message("list", "mandrel, as drawing 4471\nmandrel, as drawing 4472\n")
    kind, why = classify(original, mask(original), Found(tooling_lines=2))
    assert kind is Kind.SIZES
    assert "lines of tooling" in why


def test_a_signature_alone_says_nothing() -> None:
    original = message("", "\n-- \nToby\nTube bending to 2.0 x .120, 1.5D\nT 555-0118\n")
    assert classify(original, mask(original), Found())[0] is Kind.OTHER


@pytest.mark.parametrize(
    "body",
    [
        "What is a wall factor and can you quote 1.5 x .083 DOM on 4.5 clr?",
        "How do I measure the CLR, and do you have a mandrel for 1.75 x .095 DOM 5.25 clr?",
        "Was ist ein Wandfaktor, und können Sie einen Dorn für 38 x 1,5, R 100 anbieten?",
        "Which lubricant is best, and how much is a mandrel for 2 x .065 304 on a 4 CLR?",
    ],
)
def test_a_size_asked_for_behind_a_question_is_a_request(body: str) -> None:
    said = understand(message("", body))
    assert said.kind.value == "sizes"
    assert len(said.requests) == 1
    assert said.questions


@pytest.mark.parametrize(
    "body",
    [
        "We bend 1.5 x .058 and would like to buy mandrels from you. Tell us what else you need.",
        "We bend 1.5 x .058 and want to get a mandrel from you. What else do you need to know?",
        "Wir biegen Rohr 38 x 1,5 und möchten Dorne bei Ihnen kaufen. Was brauchen Sie noch?",
        "Nous cintrons du 38 x 1,5 et nous aimerions vous acheter des mandrins. Que vous faut-il ?",
        "Curvamos tubo de 38 x 1,5 y queremos comprarles mandriles. ¿Qué más necesitan?",
        "Curviamo tubo 38 x 1,5 e vorremmo comprare dei mandrini da voi. Cos'altro vi serve?",
        "Wij buigen buis 38 x 1,5 en willen graag doornen bij u kopen. Wat heeft u nog nodig?",
        "What do your ball mandrels go for in 7/8 x .058, 6061-T6, 3-1/2 radius?",
        "What do mandrels sell for in 7/8 x .058, 6061-T6, 3-1/2 radius?",
        "What are your ball mandrels going for? Mine is 7/8 x .058, 6061-T6, 3-1/2 radius.",
        "A combien sont vos mandrins pour du tube 22 x 1,5 alu, rayon 90 ?",
    ],
)
def test_a_wish_to_buy_is_a_request(body: str) -> None:
    """Whatever else is asked beside it, a tool of a told size is to be bought."""
    said = understand(message("", body))
    assert said.kind.value == "sizes"
    assert len(said.requests) == 1


@pytest.mark.parametrize(
    "body",
    [
        "What do I need to know if I want to buy a mandrel for 1.5 x .065 tube?",
        "I don't want to buy a mandrel for 1.5 x .065, I only wonder why it wrinkles.",
        "What do your mandrels do for 1.5 x .065 tube that sand does not?",
    ],
)
def test_a_question_about_buying_is_none(body: str) -> None:
    assert understand(message("", body)).kind.value == "question"
