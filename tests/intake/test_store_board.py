"""What the review page asks of a store, on files and on a server."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, date, datetime

import pytest

from bendreply.intake import desk
from bendreply.intake.store import Store

CHANGES: dict[str, Callable[[Store], object]] = {
    "approved": lambda store: desk.approve(store, 1, "Kit"),
    "set aside": lambda store: desk.set_aside(store, 1, "Kit", "no"),
    "reworded": lambda store: desk.edit_draft(store, 1, "Hello", "Kit"),
}


@pytest.mark.parametrize("change", CHANGES)
def test_any_change_is_seen(store: Store, make_result, change: str) -> None:
    desk.take_in(store, make_result(), "1.eml")
    with store.reading() as book:
        before = book.last_event()
        assert book.last_event() == before
    CHANGES[change](store)
    with store.reading() as book:
        assert book.last_event() != before


def test_what_waits_comes_in_the_order_of_the_backlog(store: Store, make_result) -> None:
    for number in range(12):
        came = datetime(2026, 11, 1 + (number * 7) % 11, 8, tzinfo=UTC)
        needed = date(2026, 12, 1 + number % 4) if number % 3 else None
        desk.take_in(
            store, make_result(f"n{number}", needed_by=needed, received_at=came), f"{number}"
        )
    desk.approve(store, 3, "Kit")
    backlog = desk.backlog(store)
    with store.reading() as book:
        waiting = book.waiting()
        lines = {row.id: row for row in book.rows([number for number, _ in waiting])}
    assert waiting == [(row.id, row.version) for row in backlog]
    assert [lines[number] for number, _ in waiting] == backlog
