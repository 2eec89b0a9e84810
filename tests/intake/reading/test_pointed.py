"""Sizes left out, or asked for alone, by words that only point to them."""

from __future__ import annotations

import pytest

from .cases_pointed import (
    ASKED_ALONE,
    BOTH,
    BY_RANK,
    COUNTS,
    DIES,
    LEFT_OUT,
    ONLY_TOLD,
    OTHER,
)
from .support import Size, read_text, written_down


@pytest.mark.parametrize(
    ("text", "sizes"), [*LEFT_OUT, *ASKED_ALONE, *OTHER, *BY_RANK, *DIES, *ONLY_TOLD]
)
def test_the_sizes_pointed_to_are_read_and_no_other(text: str, sizes: tuple[Size, ...]) -> None:
    requests = read_text(text)
    right = len(requests) == len(sizes) and all(map(Size.describes, sizes, requests))
    assert right, f"{text!r} was read as\n{written_down(requests)}"


@pytest.mark.parametrize("text", BOTH)
def test_no_size_is_left_out_that_may_be_wanted(text: str) -> None:
    assert len(read_text(text)) == 2


@pytest.mark.parametrize(("text", "counts"), COUNTS)
def test_each_size_has_its_own_count(text: str, counts: tuple[int, int]) -> None:
    requests = read_text(text)
    assert tuple(request.quantity for request in requests) == counts, written_down(requests)


@pytest.mark.parametrize(
    "text",
    [
        "Mandrel for 1.75 x .095. Our dies are 4, 5 and 6 CLR. Can we use the 5?",
        "Mandrel for 1.75 x .095. Our dies are 4, 5 and 6 CLR, we can't use the 5.",
    ],
)
def test_a_die_that_is_not_taken_leaves_all(text: str) -> None:
    assert len(read_text(text)) == 3
