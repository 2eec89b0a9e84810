"""A reply is completed from the mail that it quotes, and never in silence."""

from __future__ import annotations

from datetime import UTC, date, datetime

import pytest

from bendreply.intake.model import Address, Kind, Message
from bendreply.intake.pipeline import Understanding, understand

from .picked_rows import NOT_PICKED, PICKED
from .reliance_rows import NOT_ASKED, ROWS


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


@pytest.mark.parametrize("body", NOT_ASKED, ids=[body.split("\n")[0] for body in NOT_ASKED])
def test_a_quoted_size_that_nobody_asks_for_anew_is_no_request(body: str) -> None:
    _, said = reply("Re: your enquiry", body)
    assert said.kind is not Kind.SIZES, said.why_kind
    assert said.requests == ()


def test_each_value_taken_over_says_where_it_is_from() -> None:
    message, said = reply(
        "Re: Quote",
        "Wall .120 please, everything else as quoted. Price?\n\nOn 3 March 2026 Pat wrote:\n"
        '> one mandrel, 1.75 OD x .095 wall DOM, 6" CLR\n',
    )
    (request,) = said.requests
    told = {
        item.field: (item.surface, "from the quoted mail" in item.how) for item in request.evidence
    }
    assert told == {
        "wall": (".120", False),
        "od": ("1.75", True),
        "clr": ('6"', True),
        "material": ("DOM", True),
    }
    quoted_at = message.text.index("one mandrel")
    assert all(item.start > quoted_at for item in request.evidence if item.field != "wall")


def test_a_day_in_a_forwarded_mail_without_tooling_is_no_day_of_ours() -> None:
    _, said = reply(
        "Fwd: rails",
        "See below, please price one mandrel.\n\n---------- Forwarded message ----------\n"
        "From: Kim\nDate: 3 March 2026\nSubject: rails\n\n26 rails, 1.5 OD x .083 304 on 4.5 CLR. "
        'Overall 48" x 36". We need them by April 20, 2026.\n',
    )
    (request,) = said.requests
    assert request.needed_by is None
    assert request.quantity == 1


def test_a_day_in_a_forwarded_order_for_mandrels_counts() -> None:
    _, said = reply(
        "Fwd: mandrels",
        "Please quote this.\n\n---------- Forwarded message ----------\nFrom: Kim\n"
        "Date: 3 March 2026\nSubject: mandrels\n\nTwo mandrels for 1.5 OD x .083 304 on 4.5 CLR, "
        "needed by April 20, 2026.\n",
    )
    (request,) = said.requests
    assert request.needed_by == date(2026, 4, 20)
    assert request.quantity == 2


@pytest.mark.parametrize("own", ["38 x 2.0 cost?", "Rather 2.0 mm, everything else as quoted?"])
def test_a_new_figure_that_is_not_understood_leaves_the_quoted_one_in_doubt(own: str) -> None:
    """Never the old wall in silence: the new one may be meant to replace it."""
    _, said = reply(
        "Re: Quote", own + " Price?\n\n> 1 mandrel for 38 x 1.5 mm 304 tube, CLR 57 mm, each 240\n"
    )
    (request,) = said.requests
    assert request.wall_mm == 2 or request.doubt_on("wall") is not None


@pytest.mark.parametrize(
    ("body", "wanted"), PICKED, ids=[body.split("\n")[0] for body, _ in PICKED]
)
def test_lines_of_a_quoted_list_are_read_where_they_are_picked_out(
    body: str, wanted: list[tuple[object, ...]]
) -> None:
    test_a_reply_is_read_with_what_it_relies_on("Re: your enquiry", body, wanted)


@pytest.mark.parametrize("body", NOT_PICKED, ids=[body.split("\n")[0] for body in NOT_PICKED])
def test_a_line_that_is_only_spoken_of_is_no_request(body: str) -> None:
    test_a_quoted_size_that_nobody_asks_for_anew_is_no_request(body)
