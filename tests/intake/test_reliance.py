"""A reply is completed from the mail that it quotes, and never in silence."""

from __future__ import annotations

from datetime import UTC, date, datetime

import pytest

from bendreply.intake.model import Address, Kind, Message
from bendreply.intake.pipeline import Understanding, understand

from .reliance_rows import ROWS


def reply(subject: str, body: str, name: str = "Maike Ott") -> tuple[Message, Understanding]:
    """A reply that came on 5 March 2026, and what is made of it."""
    message = Message(
        message_id="a@example.com",
        in_reply_to="b@example.com",
        sender=Address(name=name, address="someone@example.net"),
        subject=subject,
        body=body,
        sent_on=date(2026, 3, 5),
        received_at=datetime(2026, 3, 5, 9, 0, tzinfo=UTC),
    )
    return message, understand(message)


def same(value: object, wanted: object) -> bool:
    """'-' must be open, '*' may be anything, lengths to a hundredth of a mm."""
    if wanted == "*":
        return True
    if wanted == "-":
        return value is None
    if isinstance(wanted, (int, float)) and value is not None:
        return abs(float(str(value)) - wanted) < 0.01
    return value == wanted


@pytest.mark.parametrize(
    ("subject", "body", "wanted"), [row[1:] for row in ROWS], ids=[row[0] for row in ROWS]
)
def test_a_reply_is_read_with_what_it_relies_on(
    subject: str, body: str, wanted: list[tuple[object, ...]]
) -> None:
    message, said = reply(subject, body)
    assert said.kind is Kind.SIZES, said.why_kind
    read = [(r.od_mm, r.wall_mm, r.clr_mm, r.material, r.quantity) for r in said.requests]
    assert len(read) == len(wanted), read
    for values, row in zip(read, wanted, strict=True):
        assert all(map(same, values, row)), (values, row)
    for request in said.requests:
        for item in request.evidence:
            assert message.text[item.start : item.end] == item.surface
