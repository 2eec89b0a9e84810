"""Rows that are written for several messages at once are there whenever somebody looks."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from bendreply.intake import desk
from bendreply.intake.model import Result
from bendreply.intake.store import Store


def test_what_was_taken_in_is_seen_before_the_whole_is_final(
    store: Store, make_result: Callable[..., Result]
) -> None:
    with store.together():
        taken = desk.take_in(store, make_result("ana"), "x")
        assert [one.what for one in desk.history(store, taken.inquiry)] == ["taken in"]
        assert desk.show(store, taken.inquiry).draft is not None
        desk.approve(store, taken.inquiry, "Ann")
    said = [one.what for one in desk.history(store, taken.inquiry)]
    assert said == ["taken in", "approved"]


def test_of_a_message_that_fails_nothing_is_written_with_the_others(
    store: Store, make_result: Callable[..., Result]
) -> None:
    with store.together():
        first = desk.take_in(store, make_result("ana"), "x")
        with pytest.raises(ZeroDivisionError):
            _fail(store, first.inquiry)
        second = desk.take_in(store, make_result("bo"), "x")
    for one in (first, second):
        assert [event.what for event in desk.history(store, one.inquiry)] == ["taken in"]


def _fail(store: Store, inquiry: int) -> None:
    with store.writing() as book:
        book.log(inquiry, "Ann", "never said")
        raise ZeroDivisionError
