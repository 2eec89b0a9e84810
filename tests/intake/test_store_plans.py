"""However many inquiries a store holds, what is asked of it goes by an index: no table is gone
through. Proven by the database's own plan of every statement, not by a clock.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest
import sqlalchemy as sa

from bendreply.intake import desk
from bendreply.intake.cli_collect import _joining
from bendreply.intake.deliver import DraftsFolder
from bendreply.intake.desk_sent import note_sent
from bendreply.intake.inquiry import State
from bendreply.intake.model import Address, Result
from bendreply.intake.store import Store
from bendreply.intake.store_marks import Mark
from bendreply.intake.templates import Templates
from bendreply.rules.shop import sample_shop

SHOP = Address(name="Fernhollow", address="sales@fernhollow.example.com")


@dataclass(frozen=True)
class Desk:
    """A store, what is put into it, and a folder for what is laid down."""

    store: Store
    make_result: Callable[..., Result]
    folder: Path


def taken(at: Desk) -> None:
    """New, known, a reply, and the same words again."""
    joining = _joining(sample_shop(), Templates(None))
    for name in ("ana", "ana", "bo"):
        desk.take_in(at.store, at.make_result(name), "x", joining)
    reply = at.make_result("cy", in_reply_to="ana-1@mail.example.net", references=("x@y", "z@y"))
    desk.take_in(at.store, reply, "x", joining)
    desk.already_taken(at.store, reply.message, "x")


def a_persons_word(at: Desk) -> None:
    desk.approve(at.store, 1, "Ann")
    desk.set_aside(at.store, 2, "Ann", "by phone")
    desk.edit_draft(at.store, 1, "Other words.", "Ann")
    desk.approve(at.store, 1, "Ann")


def delivered(at: Desk) -> None:
    desk.approve(at.store, 1, "Ann")
    desk.deliver(at.store, DraftsFolder(at.folder / "drafts"), SHOP)


def answered(at: Desk) -> None:
    sent = at.make_result("us", in_reply_to="ana-1@mail.example.net", message_id="us-1@example.com")
    assert note_sent(at.store, sent.message) is not None
    with at.store.reading() as book:
        book.oldest_message()


def marked(at: Desk) -> None:
    with at.store.writing() as book:
        book.set_mark("a", "INBOX", Mark(1, 2))
        book.hold_back("a", "INBOX", 1, 1, usable=False)
        book.mark("a", "INBOX")
        book.held_back("a", "INBOX", 1)


def listed(at: Desk) -> None:
    desk.backlog(at.store)
    desk.backlog(at.store, 200)
    desk.how_many_wait(at.store)
    desk.show(at.store, 1)
    desk.history(at.store, 1)
    with at.store.reading() as book:
        book.numbers(State.APPROVED)


GOES_THROUGH = re.compile(r"^SCAN |Seq Scan|\(channel=\?\)$")
"""A table, or all mail there is of it: there are two channels."""
STEPS = (taken, a_persons_word, delivered, answered, marked, listed)


@pytest.mark.parametrize("step", STEPS, ids=lambda step: step.__name__)
def test_no_table_is_gone_through(
    store: Store, make_result: Any, tmp_path: Path, step: Callable[[Desk], None]
) -> None:
    if step is not taken:
        for name in ("ana", "bo", "cy"):
            desk.take_in(
                store, make_result(name, received_at=datetime(2026, 11, 2, tzinfo=UTC)), "x"
            )
    said: list[tuple[str, Any]] = []

    def note(_c: object, _k: object, statement: str, given: Any, _x: object, many: bool) -> None:
        if statement.lstrip().startswith(("SELECT", "UPDATE", "DELETE")):
            said.append((statement, given[0] if many else given))

    engine = store._place.engine
    sa.event.listen(engine, "before_cursor_execute", note)
    step(Desk(store, make_result, tmp_path))
    sa.event.remove(engine, "before_cursor_execute", note)
    assert len(said) >= 4
    with engine.connect() as connection:
        on_server = connection.dialect.name == "postgresql"
        if on_server:  # so few rows are quicker gone through than looked up
            connection.exec_driver_sql("SET LOCAL enable_seqscan = off")
        for statement, given in said:
            ask = "EXPLAIN " if on_server else "EXPLAIN QUERY PLAN "
            plan = connection.exec_driver_sql(ask + statement, given).all()
            lines = [str(row[-1]).strip() for row in plan]
            assert [one for one in lines if GOES_THROUGH.search(one)] == [], statement
