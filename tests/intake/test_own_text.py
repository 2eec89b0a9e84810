"""Whose words these are: what stays of a message when all that others wrote is blanked.

Each case shows the mail, then what must still be readable ("keeps") and what must not ("hides").
"""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bendreply.intake.model import Address, Attachment, Message, OwnText
from bendreply.intake.own_text import mask

from ..pace import assert_quick
from .own_text_rows import ATTRIBUTIONS, CASES, FORWARD_MARKS, HEADER_BLOCKS, REPLY


def message(body: str, subject: str = "mandrel", **more: object) -> Message:
    return Message.model_validate(
        {
            "message_id": "a@example.com",
            "sender": Address(name="Pat", address="pat@example.com"),
            "subject": subject,
            "body": body,
            **more,
        }
    )


def assert_whole(own: OwnText, original: Message) -> None:
    """The promise of every mask: same length, and nothing stands where it did not stand before."""
    assert len(own.text) == len(original.text)
    assert all(a == b or a == " " for a, b in zip(own.text, original.text, strict=True))
    assert own.text.count("\n") == original.text.count("\n")


@pytest.mark.parametrize(
    ("headers", "body", "keeps", "hides"),
    [case[1:] for case in CASES],
    ids=[case[0] for case in CASES],
)
def test_keeps_the_senders_new_words_only(
    headers: dict[str, str], body: str, keeps: list[str], hides: list[str]
) -> None:
    original = message(body, **headers)
    own = mask(original)
    assert_whole(own, original)
    shown = own.text[own.body_start :]
    for words in keeps:
        assert words in shown
    for words in hides:
        assert words not in shown


@pytest.mark.parametrize(
    "body",
    [
        "I'm on the road this week. If it's about a delivery ring the dock, 555-0110.",
        "Uw factuur 2026-0388 kunnen wij niet verwerken omdat het nummer ontbreekt. Stuurt u?",
        "Thank you for your continuous support.\nWe request quotation as follows.\nOD 25.4\n",
        "Sirs,\nPlease offer your best price CIF for following:\nOD 25.4, wall 1.65\n",
    ],
    ids=["telephone", "number", "closing", "following"],
)
def test_a_sentence_is_the_senders_though_it_has_a_mark_of_other_lines(body: str) -> None:
    """A telephone number makes no signature of a sentence, nor does "thank you" above one."""
    own = mask(message(body))
    shown = own.text[own.body_start :].split()
    assert shown[-4:] == body.split()[-4:]
    assert "request" in shown or "request" not in body


@pytest.mark.parametrize("attribution", ATTRIBUTIONS)
@pytest.mark.parametrize("mark", ["> ", ">", ""], ids=["spaced", "tight", "unmarked"])
def test_every_programs_attribution_starts_the_quoted_mail(attribution: str, mark: str) -> None:
    original = message(
        f"Yes, go ahead.\n\n{attribution}\n\n{mark}tube 1.5 x .065\n{mark}CLR 4.5\n", **REPLY
    )
    own = mask(original)
    assert_whole(own, original)
    assert own.text[own.body_start :].split() == ["Yes,", "go", "ahead."]


@pytest.mark.parametrize("block", HEADER_BLOCKS)
def test_every_languages_header_block_starts_the_quoted_mail(block: str) -> None:
    own = mask(message(f"ok\n\n{block}\n\ntube 1.5 x .065\n", **REPLY))
    assert own.text[own.body_start :].split() == ["ok"]


@pytest.mark.parametrize("mark", FORWARD_MARKS)
def test_every_forward_mark_hands_the_request_over(mark: str) -> None:
    head = "From: Lou\nDate: 3 March 2026\nTo: Dale\nSubject: x"
    body = f"Can you do this one?\n\n{mark}\n{head}\n\n1.5 x .065\n"
    own = mask(message(body, subject="Fwd: x"))
    assert "1.5 x .065" in own.text
    assert "Lou" not in own.text
    assert any(part.kind == "forwarded" for part in own.parts)


@pytest.mark.parametrize(
    ("subject", "counts"),
    [
        ("mandrel 1.5 x .065", True),
        ("Re: mandrel 1.5 x .065", False),
        ("AW: Dorn 38 x 1,5", False),
        ("SV: dorn 38 x 1,5", False),
        ("Antw: doorn 38 x 1,5", False),
        ("R: mandrino 38 x 1,5", False),
        ("Odp: trzpień 38 x 1,5", False),
        ("Vá: tüske 38 x 1,5", False),
        ("答复: mandrel 38 x 1,5", False),
        ("RE[2]: mandrel 1.5 x .065", False),
        ("[EXT] Re: mandrel 1.5 x .065", False),
        ("R: 133, tube 44.45 x 1.65", True),
        ("Reel: 1.5 x .065", True),
    ],
)
def test_the_subject_of_an_earlier_mail_does_not_count(subject: str, counts: bool) -> None:
    original = message("One please.\n", subject=subject, in_reply_to="b@example.com")
    own = mask(original)
    assert_whole(own, original)
    assert own.subject_counts is counts
    assert own.text.startswith(subject if counts else " " * len(subject))


@pytest.mark.parametrize(
    "body",
    ["size is in the subject", "see subject", "siehe Betreff", "voir l'objet", "vedi oggetto"],
)
def test_the_body_may_say_that_the_subject_counts(body: str) -> None:
    own = mask(message(body, subject="Re: mandrel 1.5 x .065", in_reply_to="b@example.com"))
    assert own.subject_counts


def test_re_as_a_heading_counts_where_no_earlier_mail_is_in_sight() -> None:
    own = mask(message("Please quote two of these.", subject="RE: mandrel 2 x .120, 6 CLR"))
    assert own.subject_counts


def test_parts_say_whose_words_even_where_they_are_shown() -> None:
    original = message("fyi\n\n> 1.5 x .065\n", subject="Fwd: tooling")
    own = mask(original)
    kinds = [(part.kind, original.text[part.start : part.end].strip()) for part in own.parts]
    assert kinds == [
        ("subject", "Fwd: tooling"),
        ("own", "fyi"),
        ("forwarded", "> 1.5 x .065"),
    ]
    assert "1.5 x .065" in own.text
    assert "> 1.5" not in own.text


def test_readable_attachments_come_along() -> None:
    csv = Attachment(name="sizes.csv", content_type="text/csv", size=9, text="od,wall\n2,3\n")
    pdf = Attachment(name="print.pdf", content_type="application/pdf", size=9)
    assert mask(message("see file", attachments=(csv, pdf))).attachment_texts == (
        ("sizes.csv", "od\twall\n2\t3"),
    )


LINES = st.sampled_from(
    [
        "> ", ">> x", "| a", "On 3 March 2026 Pat wrote:", "Am 3.3.2026 schrieb P:", "From: a",
        "Sent: b", "To: c", "Subject: d", "-- ", "--", "Thanks", "Mit freundlichen Grüßen",
        "Tel 555-0118", "1.5 x .065", "see below", "____________________",
        "Begin forwarded message:", "", "\r", "PS: 1.75", "-----Original Message-----",
        "CONFIDENTIAL: x", "\u2028", "<" * 50, "(" * 60, " " * 90, "a" * 500,
    ]
)  # fmt: skip
ANY_TEXT = st.one_of(
    st.text(max_size=300),
    st.lists(st.one_of(LINES, st.text(max_size=30)), max_size=40).map("\n".join),
)


@given(
    body=ANY_TEXT, subject=st.one_of(st.text(max_size=60), st.just("Fwd: Re: x"), st.just("Re: "))
)
def test_length_and_places_are_kept_whatever_is_written(body: str, subject: str) -> None:
    original = message(body, subject=subject)
    own = mask(original)
    assert_whole(own, original)
    assert all(0 <= part.start < part.end <= len(original.text) for part in own.parts)
    places = [(part.start, part.end) for part in own.parts]
    assert places == sorted(places)


UNITS = [
    "\n", "> \n", ">\n", "a\n", "a", " ", ":", "a:\n", "From: a\n", "wrote:\n",
    "On 3 March 2026\n", "On a wrote:\n", "Thanks\n", "--\n", "-- \n", "-", "_", "<", "(",
    "x1", "1.", "+1 ", "Tel ", "see below ", "> On 3 March 2026 Pat wrote:\n",
    "Begin forwarded message:\n", "-----Original Message-----\n",
    "From: a\nSent: b\nTo: c\nSubject: d\n\nx\n", "a@", "555-", "\u00a0", "Re: ",
    "Confidential\n", "Thanks\n>\n", "a\n\n>\n", "| a\n", "写道", "1/2 ", "od wall ",
]  # fmt: skip


@pytest.mark.parametrize("unit", UNITS, ids=repr)
@pytest.mark.parametrize("subject", ["x", "Fwd: x"])
def test_time_grows_with_length_only_whatever_is_repeated(unit: str, subject: str) -> None:
    # Usually 0.02 to 0.5 s. Were each line compared with each other, it would be minutes.
    original = message(unit * (200_000 // len(unit)), subject=subject)
    assert_quick(lambda: mask(original), within=3)


@pytest.mark.parametrize("unit", ["\n", "> a\n", "From: a\n", "word "], ids=repr)
def test_a_megabyte_takes_no_time(unit: str) -> None:
    original = message(unit * (1_000_000 // len(unit)))
    assert_quick(lambda: mask(original), within=5)
