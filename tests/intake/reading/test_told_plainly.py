"""Sizes that a mail plainly only tells of: left out and told to the person, and never else."""

from __future__ import annotations

from decimal import Decimal

import pytest

from bendreply.intake.reading import read

from .cases_told_plainly import LEFT_OUT, NOT_LEFT_OUT, OWNED_IS_TOLD
from .support import Size, read_text, whole, written_down


@pytest.mark.parametrize(("text", "told", "sizes"), LEFT_OUT)
def test_what_is_only_told_of_is_left_out_with_a_note(
    text: str, told: str, sizes: tuple[Size, ...]
) -> None:
    message, own = whole(text)
    reading = read(own, message)
    shown = f"{text!r} was read as\n{written_down(reading.requests)}\n{reading.notes}"
    assert len(reading.requests) == len(sizes), shown
    assert all(s.describes(r) for s, r in zip(sizes, reading.requests, strict=True)), shown
    told_of = [note for note in reading.notes if "only told of" in note]
    assert [note.partition(": ")[2].startswith(told) for note in told_of] == [True], shown


@pytest.mark.parametrize(("text", "od"), NOT_LEFT_OUT)
def test_what_may_be_wanted_all_the_same_stays(text: str, od: str) -> None:
    requests = read_text(text)
    assert Decimal(od) in {r.od_mm for r in requests}, f"{text!r}:\n{written_down(requests)}"


@pytest.mark.parametrize(("text", "words"), OWNED_IS_TOLD)
def test_what_is_owned_already_is_told_to_the_person(text: str, words: str) -> None:
    message, own = whole(text)
    reading = read(own, message)
    assert len(reading.requests) == 1
    assert f"a size was taken as owned already, not asked for: {words}" in reading.notes
