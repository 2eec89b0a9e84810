"""Sizes that only look told of: the next sentence asks for them, or their line counts them."""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import doubted, read_text

BEHIND = [
    "We're bending 44.5 x 1.5 CuNi, CLR 100 mm. Could you offer a mandrel? One off.\n\n"
    "Also a mandrel for 57 x 1.5, CLR 125, one off.",
    "We run 44.5 x 1.5 CuNi on CLR 100 mm. We need a mandrel for it, one off.\n\n"
    "And please the same again for 57 x 1.5, CLR 125, one off.",
]


@pytest.mark.parametrize("text", BEHIND)
def test_the_sentence_behind_asks(text: str) -> None:
    first, second = read_text(text)
    assert (first.od_mm, second.od_mm) == (Decimal("44.5"), 57)
    assert not first.doubts
    assert not second.doubts


def test_a_counted_line_is_asked_for_whatever_is_said_of_it() -> None:
    text = (
        "28 x 1.5 - R 42, one mandrel\n40 x 1.5 - R 60, one mandrel\n"
        "52 x 1.5 - R 78, one mandrel, and this is the one we are waiting for"
    )
    requests = read_text(text)
    assert [r.od_mm for r in requests] == [28, 40, 52]
    assert not any(r.doubts for r in requests)


@pytest.mark.parametrize(
    "text",
    [
        "We bend 30 x 3 on 75 CLR. It works well.\n\nPlease quote a mandrel for 38 x 2 on 76 CLR.",
        "We bend 30 x 3 on 75 CLR. Could you quote a mandrel for the new one: 38 x 2 on 76 CLR?",
    ],
)
def test_what_is_asked_for_behind_is_another(text: str) -> None:
    told = [r for r in read_text(text) if r.od_mm == 30]
    assert all("od" in doubted(r) for r in told)


JUST_THAT = [
    "I have a 3 inch exhaust build, 304 stainless .065, die is 4.5 CLR. I also have the 2.5 inch "
    "die but I already have a mandrel for that, so just the 3 inch please. Just one.",
    "It's a 3 inch exhaust, 304 stainless .065, die is 4.5 CLR. The 2.5 inch die came with a "
    "mandrel, so only the 3 inch please. Just one.",
]


@pytest.mark.parametrize("text", JUST_THAT)
def test_so_just_that_one_turns_back_to_it(text: str) -> None:
    requests = read_text(text)
    assert requests[0].od_mm == Decimal("76.2")
    assert not requests[0].doubts
    assert all("od" in doubted(other) for other in requests[1:])


def test_a_short_sentence_goes_on_from_one_on_no_size_read() -> None:
    text = (
        'Job 1: 2-3/8 x .154, CLR 9", one mandrel.\nJob 2: 2-7/8 x .203, CLR 11-1/2", one '
        "mandrel.\n\nJob 3, the 4 inch, is off. Customer cancelled."
    )
    requests = read_text(text)
    assert [r.clr_mm for r in requests] == [Decimal("228.6"), Decimal("292.1")]
    assert not any(r.doubts for r in requests)


@pytest.mark.parametrize(
    "bracket", ["80 x 40 profile ones before, now tube", "bisher 80 x 40 Profil, jetzt Rohr"]
)
def test_what_a_bracket_tells_as_made_until_now(bracket: str) -> None:
    (request,) = read_text(f"We make frames ({bracket}): 38 x 2, CLR 114 mm, one mandrel please.")
    assert (request.od_mm, request.wall_mm, request.clr_mm) == (38, 2, 114)
    assert not request.doubts
