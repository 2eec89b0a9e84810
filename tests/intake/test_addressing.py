"""Subject and greeting of a reply, from what the customer's headers say."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bendreply.intake.addressing import first_name, reply_subject
from bendreply.intake.model import Address, Message


def message(body: str = "hi", name: str = "Dale Prukop", **more: Any) -> Message:
    sender = Address(name=name, address="sender@example.net")
    return Message(message_id="m1", sender=sender, body=body, **more)


@pytest.mark.parametrize(
    ("name", "body", "greeting"),
    [
        ("Dale Prukop", "hi", "Dale"),
        ("Prukop, Dale", "hi", "Dale"),
        ("Inés Halvorsdottir", "hi", "Inés"),
        ("Gil", "No size yet.\n\nGil", "Gil"),
        ("Gil", "No size yet.", ""),
        ("Tanaka Hiroshi", "No size yet.\n\nHiroshi", "Hiroshi"),
        ("J. Okerlund", "hi", ""),
        ("Dr. Hans Example", "hi", ""),
        ("Import Dept", "hi", ""),
        ("Toolroom", "hi", ""),
        ("Werkzeugbau Muster", "hi", ""),
        ("SALES TEAM", "hi", ""),
        ("山田 太郎", "hi", ""),
        ("mike_78", "hi", ""),
        ("", "hi", ""),
        ("Dale\r\nBcc: x@example.com", "hi", ""),
    ],
)
def test_first_names_only_where_they_are_safe(name: str, body: str, greeting: str) -> None:
    assert first_name(message(body, name=name)) == greeting


def test_a_website_form_is_greeted_by_the_name_of_who_filled_it_in() -> None:
    form = message(name="Larkfield Website", reply_to=Address(name="", address="a@example.org"))
    assert first_name(form) == ""
    form = message(name="No Reply", reply_to=Address(name="Ana Ruiz", address="a@example.org"))
    assert first_name(form) == "Ana"


@pytest.mark.parametrize(
    ("theirs", "ours"),
    [
        ("mandrel quote", "Re: mandrel quote"),
        ("Re: mandrel quote", "Re: mandrel quote"),
        ("RE: AW: Sv: mandrel", "Re: mandrel"),
        ("Re[2]: mandrel", "Re: mandrel"),
        ("Antw.: mandrel", "Re: Antw.: mandrel"),
        ("Reducer mandrel", "Re: Reducer mandrel"),
        ("R: 114 mm, 38 x 1,5", "Re: R: 114 mm, 38 x 1,5"),
        ("Fwd: mandrel", "Re: Fwd: mandrel"),
        ("", "Re: your enquiry"),
        ("  Re: ", "Re: your enquiry"),
        ("a\r\nBcc: x@example.com", "Re: a Bcc: x@example.com"),
        ("a\x00\u2028b\u202e", "Re: a b"),
    ],
)
def test_subject(theirs: str, ours: str) -> None:
    assert reply_subject(theirs) == ours


@given(st.text(max_size=400))
def test_no_subject_makes_a_second_header_line(theirs: str) -> None:
    subject = reply_subject(theirs)
    assert len(subject.splitlines()) == 1
    assert subject.startswith("Re: ")
    assert len(subject) <= 200
