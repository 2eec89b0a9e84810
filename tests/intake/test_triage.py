"""What kind of message: the words, the sizes a reader would find in them, then the kind.

MESSAGES_BEFORE were written before the cues were; MESSAGES_AFTER while they grew; MESSAGES_LAST
when the cues seemed done (26 of 34 were right then). None copies a message of the open sample.
"""

from __future__ import annotations

import pytest

from bendreply.intake.model import Address, Kind, Message
from bendreply.intake.own_text import mask
from bendreply.intake.triage import classify

ALL = [("before", *row) for row in MESSAGES_BEFORE] + [("after", *row) for row in MESSAGES_AFTER]
ALL += [("last", *row) for row in MESSAGES_LAST]


def message(subject: str, body: str) -> Message:
    reply = subject.lower().startswith("re:")
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
    found, why = classify(original, mask(original), sizes_read)
    assert found.value == kind, why
    assert why


def test_the_reason_quotes_the_words_that_decided() -> None:
    original = message("", "Quote me a mandrel for 1.5 x .065 on 4.5 CLR, please.")
    kind, why = classify(original, mask(original), 1)
    assert kind is Kind.SIZES
    assert "mandrel" in why
    assert "one size read" in why


def test_lines_of_tooling_without_a_size_are_a_request() -> None:
    original = message("list", "mandrel, as drawing 4471\nmandrel, as drawing 4472\n")
    kind, why = classify(original, mask(original), 0, tooling_lines=2)
    assert kind is Kind.SIZES
    assert "lines of tooling" in why


def test_a_signature_alone_says_nothing() -> None:
    original = message("", "\n-- \nToby\nTube bending to 2.0 x .120, 1.5D\nT 555-0118\n")
    assert classify(original, mask(original), 0)[0] is Kind.OTHER
