"""Sizes left out, or asked for alone, by words that only point to them."""

from __future__ import annotations

import pytest

from .cases_pointed import ASKED_ALONE, BOTH, LEFT_OUT, OTHER
from .support import Size, read_text, written_down


@pytest.mark.parametrize(("text", "sizes"), [*LEFT_OUT, *ASKED_ALONE, *OTHER])
def test_the_sizes_pointed_to_are_read_and_no_other(text: str, sizes: tuple[Size, ...]) -> None:
    requests = read_text(text)
    right = len(requests) == len(sizes) and all(map(Size.describes, sizes, requests))
    assert right, f"{text!r} was read as\n{written_down(requests)}"


@pytest.mark.parametrize("text", BOTH)
def test_no_size_is_left_out_that_may_be_wanted(text: str) -> None:
    assert len(read_text(text)) == 2
