"""Whatever stands in a mail, reading it ends: without an exception, and in good time."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bendreply.intake.pipeline import understand
from bendreply.intake.reading import read
from bendreply.rules.request import SizeRequest

from ...pace import assert_quick
from .support import read_text, whole

_DIGITS_AND_MARKS = st.text(alphabet="0123456789./-x\"\\' ,mm od wall clr\n\t", max_size=200)
_WORDS = st.lists(
    st.sampled_from(
        "1.75 .095 5-1/4 1/2 15/8 38 1,5 R57 Ø42,4 2,0 16 ga gauge x × by * / - + ( ) , . ; : \n \n\n \t | "
        "OD wall CLR radius inside outside ID inch in mm \" ' ½ ¾ ″ sch 40 NPS DN pipe tube square 2D 3 x D "
        "not no sorry wait instead about max min or and to each both qty 2 pcs mandrel 304 DOM 6061-T6 "
        "Wandstärke Biegeradius épaisseur raggio espesor inch and a half one twenty point zero nine "
        "by Friday 3/15/2027 20.11. need due # $ € % ° 45 deg ±0.1 10/8 0 00 000 1e9 999999999".split(
            " "
        )
    ),
    max_size=40,
).map(" ".join)


def _spans_hold(requests: tuple[SizeRequest, ...], text: str) -> None:
    """What is shown as evidence is what stands there; end 0 is evidence in an attachment."""
    for request in requests:
        for evidence in request.evidence:
            if evidence.end > 0:
                assert text[evidence.start : evidence.end] == evidence.surface


@settings(max_examples=150)
@given(st.text(max_size=300), st.text(max_size=40))
def test_any_text_is_read_without_an_exception(body: str, subject: str) -> None:
    message, own = whole(body, subject)
    _spans_hold(read(own, message).requests, own.text)


@settings(max_examples=300)
@given(st.one_of(_DIGITS_AND_MARKS, _WORDS))
def test_any_heap_of_digits_and_trade_words_is_read_without_an_exception(body: str) -> None:
    message, own = whole(body)
    requests = read(own, message).requests
    _spans_hold(requests, own.text)


@settings(max_examples=300)
@given(st.one_of(_DIGITS_AND_MARKS, _WORDS))
def test_every_length_read_is_finite_and_positive(body: str) -> None:
    for request in read_text(body):
        for length in (request.od_mm, request.wall_mm, request.clr_mm):
            assert length is None or (length.is_finite() and length > 0)


HOSTILE = [
    "1-", "1 ", "1/", "a1-", "+1 ", "((", "x1", "1.", "wall ", "\t1", "1,", "1 x ", "1\n", "1\n\n", "x", "-",
    "OD 1 ", "one ", "inch and ", "or 1 ", "1/2 ", "1-1/2", "no wait 1 ", "|1", ";1", "1 1/2 x ", "by friday ",
    "½", "Ø", "1 or ", "CLR\t", "R1 ", "304 ", "not 1 ", "2D ", "qty 1 ", "1.75 x .095 x 5.25 clr\n", "1.5 od, ",
]  # fmt: skip


@pytest.mark.parametrize("snippet", HOSTILE, ids=repr)
def test_a_hundred_kilobytes_of_one_snippet_are_read_in_good_time(snippet: str) -> None:
    body = snippet * (100_000 // len(snippet))
    message, _ = whole(body)
    # 0.2 to 0.5 s where nothing else runs; see benchmarks/README.md for the aim.
    assert_quick(lambda: understand(message), within=1.0)


def test_a_message_too_long_to_be_read_to_its_end_says_so() -> None:
    message, own = whole("1.75 x .095 x 5.25 clr\n" * 5000)
    assert "very long" in " ".join(read(own, message).notes)
    message, own = whole("1.75 x .095 x 5.25 clr\n" * 50)
    assert read(own, message).notes == ()


@pytest.mark.parametrize("body", ["31x3 1.4301x1.4301", "25x2 1.4301 x 1.4571"])
def test_a_size_without_figures_of_its_own_shares_nothing(body: str) -> None:
    """Mutated mail found it: 'steel x steel' is a size by its shape, and has no figure."""
    message, own = whole(body)
    assert read(own, message).requests[0].od_mm is not None
