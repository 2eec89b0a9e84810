"""The whole way of a message: kind, requests, decision, draft."""

from __future__ import annotations

from decimal import Decimal

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bendreply.intake.message import parse_message
from bendreply.intake.model import Kind, Result
from bendreply.intake.pipeline import process
from bendreply.intake.templates import Templates
from bendreply.rules.assessment import Decision
from bendreply.rules.request import Material
from bendreply.rules.shop import sample_shop


def mail(body: str, subject: str = "Mandrel", *headers: str) -> bytes:
    lines = [
        "From: Ada Byrne <ada@example.com>",
        "To: sales@example.org",
        f"Subject: {subject}",
        "Date: Mon, 16 Nov 2026 10:00:00 -0500",
        "Message-ID: <1@example.com>",
        "Content-Type: text/plain; charset=utf-8",
        *headers,
        "",
        body,
    ]
    return "\n".join(lines).encode()


def processed(raw: bytes) -> Result:
    return process(parse_message(raw), sample_shop(), Templates())


def test_a_size_is_read_judged_and_answered() -> None:
    result = processed(mail("Please quote a mandrel for 1.75 OD x .120 wall DOM on a 7 in CLR."))
    assert result.kind is Kind.SIZES
    (assessment,) = result.assessments
    # 1.75 x 25.4, .120 x 25.4, 7 x 25.4
    assert assessment.request.od_mm == Decimal("44.45")
    assert assessment.request.wall_mm == Decimal("3.048")
    assert assessment.request.clr_mm == Decimal("177.8")
    assert assessment.request.material is Material.CARBON_STEEL
    assert assessment.d_of_bend == 4  # 7 / 1.75
    assert result.draft is not None
    assert result.draft.subject == "Re: Mandrel"
    assert "44.45 mm" in result.draft.body


def test_a_bend_beyond_a_limit_is_declined_with_what_would_do() -> None:
    # wall factor 2 / 0.049 = 40.8, above the sample shop's limit of 30
    result = processed(mail("Mandrel for 2 in OD x .049 wall 304 stainless, 6 in CLR please."))
    (assessment,) = result.assessments
    assert assessment.decision is Decision.DECLINE
    assert assessment.alternatives
    assert result.draft is not None


def test_a_size_in_a_complaint_is_no_request() -> None:
    words = (
        "The mandrel for 1.75 x .095 on 5.25 CLR that you sent us on order 5521 is cracked. "
        "We want our money back: please refund invoice 77120."
    )
    result = processed(mail(words, "Refund for order 5521"))
    assert result.kind is Kind.OTHER
    assert result.assessments == ()
    assert result.draft is None


def test_automatic_mail_is_never_answered() -> None:
    words = "I am out of the office. Your mail about 1.75 x .095 on 5.25 CLR will wait."
    result = processed(mail(words, "Automatic reply: mandrel", "Auto-Submitted: auto-replied"))
    assert result.kind is Kind.AUTOMATIC
    assert result.why_kind
    assert (result.assessments, result.questions, result.draft) == ((), (), None)


def test_a_question_alone_gets_an_answer_and_no_assessment() -> None:
    result = processed(mail("Do I need a wiper die as well?", "A question"))
    assert result.kind is Kind.QUESTION
    assert [q.answer for q in result.questions] == ["wiper-die"]
    assert result.assessments == ()
    assert result.draft is not None


@settings(max_examples=60)
@given(st.text(max_size=300))
def test_any_text_gives_a_result(words: str) -> None:
    message = parse_message(mail(words.encode("utf-8", "replace").decode()))
    result = process(message, sample_shop(), Templates())
    for assessment in result.assessments:
        for e in assessment.request.evidence:
            assert message.text[e.start : e.end] == e.surface


@pytest.mark.parametrize("raw", [b"", b"\x00\xff\xfe", b"From: a\nSubject: =?x?q?=00?=\n\n\x80"])
def test_broken_bytes_give_a_result(raw: bytes) -> None:
    assert processed(raw).draft is None
