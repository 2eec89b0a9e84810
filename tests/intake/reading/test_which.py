"""Which of several sizes are wanted, as ``cases_which`` tells; and picks above quoted lists."""

from __future__ import annotations

import pytest

from bendreply.intake.message import parse_message
from bendreply.intake.pipeline import understand

from .cases_which import FAMILIES
from .support import Size, read_text, written_down


@pytest.mark.parametrize(("text", "sizes"), [row for family in FAMILIES for row in family])
def test_the_sizes_wanted_are_read_and_no_other(text: str, sizes: tuple[Size, ...]) -> None:
    requests = read_text(text)
    right = len(requests) == len(sizes) and all(map(Size.describes, sizes, requests))
    assert right, f"{text!r} was read as\n{written_down(requests)}"


_QUOTED = """On 1 Oct 2026, Graham wrote:
> Please quote for mandrels as follows, one of each:
> 33.7 x 2 mm, 304, R 100 mm centreline
> 48.3 x 2 mm, 304, R 145 mm centreline
"""


@pytest.mark.parametrize(
    ("words", "size"),
    [
        ("It's 316L, not 304, and we only need the 33.7 mandrel at present.", ("33.7", "2", "100")),
        ("Only the 48.3 one please, the rest is on hold.", ("48.3", "2", "145")),
        ("Bitte nur den 33,7er Dorn.", ("33.7", "2", "100")),
        ("Nur für das dickere Rohr, danke.", ("48.3", "2", "145")),
    ],
)
def test_a_line_of_a_quoted_list_is_picked(words: str, size: tuple[str, str, str]) -> None:
    head = (
        "From: Ivo <ivo@example.com>\nSubject: Re: Mandrel enquiry\nMessage-ID: <a@example.com>\n"
    )
    head += "In-Reply-To: <b@example.com>\nContent-Type: text/plain; charset=utf-8\n\n"
    mail = parse_message(f"{head}Hi both,\n\n{words}\n\nIvo\n\n{_QUOTED}".encode())
    (request,) = understand(mail).requests
    assert tuple(map(str, (request.od_mm, request.wall_mm, request.clr_mm))) == size
    assert request.quantity == 1


def test_an_article_before_a_size_and_one_tool_count_nothing() -> None:
    """'The 35 mandrel' is the one for that tube: no 35 are wanted."""
    (request,) = read_text("25 x 1.0, R 63\n35 x 3.0, R 105\n\nWe only need the 35 mandrel now.")
    assert request.quantity is None
