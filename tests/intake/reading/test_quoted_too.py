"""A reply that adds a size to the quoted one: where only one of the two was read, it is doubted."""

from __future__ import annotations

import pytest

from bendreply.intake.message import parse_message
from bendreply.intake.pipeline import understand
from bendreply.rules.request import SizeRequest

QUOTED = """

On Mon, 12 Oct 2026 at 16:20, Mandrel Desk <mandrels@example.com> wrote:
> 1 pc mandrel for 2.000" OD x .065" wall 304, CLR 4.000"   $412.00
"""
HEAD = "From: a@example.com\nTo: b@example.com\nSubject: Re: Quote\nContent-Type: text/plain\n\n"


def reply(words: str) -> tuple[SizeRequest, ...]:
    return understand(parse_message((HEAD + words + QUOTED).encode())).requests


@pytest.mark.parametrize(
    "words",
    [
        "Add one more for the .083 wall. So the .065 and the .083, one of each. Rest as quoted.",
        "Please quote both the .065 and .083 wall. Everything else stays.",
    ],
)
def test_a_size_beside_the_quoted_one_is_not_lost_in_silence(words: str) -> None:
    assert len(reply(words)) > 1 or all(request.doubt_on("wall") for request in reply(words))


@pytest.mark.parametrize(
    "words",
    [
        "The wall is .083, not .065. Rest as quoted.",
        "Sorry, .083 wall instead of .065, everything else stays. One each of mandrel and wiper.",
        "Make it .083 wall, rest as quoted. Add a wiper.",
    ],
)
def test_a_changed_figure_stays_a_change(words: str) -> None:
    (request,) = reply(words)
    assert f"{request.wall_mm:f}" == "2.1082"
    assert not request.doubts
