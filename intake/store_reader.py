"""Looking things up in the store, all as it was at one moment."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

import sqlalchemy as sa

from . import store_json as packing
from . import store_rows as rows
from .inquiry import Asking, Event, Inquiry, Row, State
from .message_keys import key_of_its_own, usual_key
from .model import Message
from .store_board import BoardRead
from .store_chat import ChatRead
from .store_later import elsewhere
from .store_marks import MarksRead
from .store_schema import correction, draft, event, inquiry, message, reply, word
from .store_threads import ThreadsRead

# Built once: building a statement takes longer than a small database takes to answer it.
# The channel stands in both halves: before them, it alone would be looked up by its index, which
# half of all messages are found by.
_MESSAGES_LIKE = elsewhere(
    sa.select(message.c.inquiry_id, message.c.message)
    .where(
        sa.or_(
            sa.and_(
                message.c.channel == sa.bindparam("through"),
                message.c.message_id.in_((sa.bindparam("usual"), sa.bindparam("own"))),
            ),
            sa.and_(
                message.c.channel == sa.bindparam("through"),
                message.c.raw_sha256 == sa.bindparam("sha256"),
            ),
        )
    )
    .order_by(message.c.id)
)

_ANY_OF_IDS = (
    sa.select(message.c.id)
    .where(
        message.c.channel == sa.bindparam("through"),
        message.c.message_id.in_(sa.bindparam("ids", expanding=True)),
    )
    .limit(1)
)
_ANY_OF_BYTES = (
    sa.select(message.c.id)
    .where(
        message.c.channel == sa.bindparam("through"),
        message.c.raw_sha256.in_(sa.bindparam("digests", expanding=True)),
    )
    .limit(1)
)
_INQUIRY = sa.select(inquiry).where(inquiry.c.id == sa.bindparam("number"))
_STATE = elsewhere(sa.select(inquiry.c.state).where(inquiry.c.id == sa.bindparam("number")))
_ALL_OF = {
    one.name: sa.select(one).where(one.c.inquiry_id == sa.bindparam("number")).order_by(one.c.id)
    for one in (correction, draft, event, message, reply, word)
}


class Reader(MarksRead, ThreadsRead, ChatRead, BoardRead):
    """What can be looked up within one transaction. Made by ``Store.reading``."""

    def __init__(self, connection: sa.Connection) -> None:
        self._connection = connection

    def has_any_like(self, came: Sequence[Message]) -> bool:
        """Whether ``messages_like`` finds any for one of these."""
        for through in {one.channel for one in came}:
            those = [one for one in came if one.channel == through]
            ids = {key for one in those for key in (usual_key(one), key_of_its_own(one))}
            digests = {one.raw_sha256 for one in those if one.raw_sha256}
            for query, asked in (
                (_ANY_OF_IDS, {"through": through, "ids": list(ids)}),
                (_ANY_OF_BYTES, {"through": through, "digests": list(digests)}),
            ):
                if self._connection.execute(query, asked).first() is not None:
                    return True
        return False

    def messages_like(self, came: Message) -> Iterator[tuple[int, Message]]:
        """(inquiry, message) of stored messages with its Message-ID, or with its very bytes."""
        found = self._connection.execute(
            _MESSAGES_LIKE,
            {
                "through": came.channel,
                "usual": usual_key(came),
                "own": key_of_its_own(came),
                "sha256": came.raw_sha256 or None,  # equal to nothing where there is none
            },
        )
        for row in found:
            yield row.inquiry_id, packing.unpack_message(row.message)

    def inquiry(self, number: int, *, to_change: bool = False) -> Inquiry | None:
        """One inquiry with all that belongs to it, or None. ``to_change`` makes others wait."""
        # Not in SQLite: there, all of a writer waits.
        query = _INQUIRY.with_for_update() if to_change else _INQUIRY
        found = self._connection.execute(query, {"number": number}).one_or_none()
        if found is None:
            return None
        return rows.inquiry_of(
            found,
            messages=self._of(message, number),
            drafts=self._of(draft, number),
            corrections=self._of(correction, number),
            words=self._of(word, number),
            replies=self._of(reply, number),
        )

    def state(self, number: int) -> State:
        """Where an inquiry stands."""
        return State(self._connection.execute(_STATE, {"number": number}).scalar_one())

    def history(self, number: int) -> tuple[Event, ...]:
        """All that happened to an inquiry, oldest first."""
        return tuple(rows.event_of(row) for row in self._of(event, number))

    def backlog(self, most: int | None = None) -> Iterator[Row]:
        """What waits: earliest needed-by first, then what has waited longest. None: all of it."""
        has_draft = sa.exists().where(draft.c.inquiry_id == inquiry.c.id, ~draft.c.withdrawn)
        query = (
            _with_first_message(has_draft.label("has_draft"))
            .where(inquiry.c.state == State.WAITING)
            .order_by(
                inquiry.c.needed_by.is_(None),  # where NULLs go by themselves differs
                inquiry.c.needed_by,
                inquiry.c.waiting_since,
                inquiry.c.id,
            )
            .limit(most)
        )
        return map(rows.row_of, self._connection.execute(query))

    def laid_and_open(self) -> tuple[int, ...]:
        """Inquiries that wait, or are set aside, though a draft of them was laid down."""
        was_laid = sa.exists().where(
            event.c.inquiry_id == inquiry.c.id, event.c.what == "delivered"
        )
        query = sa.select(inquiry.c.id).where(
            inquiry.c.state.in_((State.WAITING, State.SET_ASIDE)), was_laid
        )
        return tuple(self._connection.execute(query.order_by(inquiry.c.id)).scalars())

    def how_many(self, state: State) -> int:
        """How many inquiries stand there."""
        query = sa.select(sa.func.count()).where(inquiry.c.state == state)
        found: int = self._connection.execute(query).scalar_one()
        return found

    def askings(self) -> Iterator[Asking]:
        """What every inquiry asks for, in the order they came in."""
        query = _with_first_message().order_by(inquiry.c.id)
        return map(rows.asking_of, self._connection.execute(query))

    def numbers(self, state: State) -> tuple[int, ...]:
        """The inquiries that stand there, in the order they came in."""
        query = sa.select(inquiry.c.id).where(inquiry.c.state == state).order_by(inquiry.c.id)
        return tuple(self._connection.execute(query).scalars())

    def all_numbers(self) -> tuple[int, ...]:
        """Every inquiry, in the order they came in."""
        return tuple(
            self._connection.execute(sa.select(inquiry.c.id).order_by(inquiry.c.id)).scalars()
        )

    def damage(self) -> list[str]:
        """What the database itself finds amiss with its file; PostgreSQL keeps watch by itself."""
        if self._connection.dialect.name != "sqlite":
            return []
        found = self._connection.exec_driver_sql("PRAGMA integrity_check(20)").scalars()
        faults = [f"the store's file is damaged: {one}" for one in found if one != "ok"]
        lost = self._connection.exec_driver_sql("PRAGMA foreign_key_check").all()
        return [*faults, *(f"a row of the table {row[0]} belongs to nothing" for row in lost)]

    def rows(self, numbers: Sequence[int]) -> Iterator[Row]:
        """One line each of these inquiries (some hundreds at most), in any order."""
        has_draft = sa.exists().where(draft.c.inquiry_id == inquiry.c.id, ~draft.c.withdrawn)
        query = _with_first_message(has_draft.label("has_draft")).where(inquiry.c.id.in_(numbers))
        return map(rows.row_of, self._connection.execute(query))

    def _of(self, table: sa.Table, number: int) -> Sequence[sa.Row[Any]]:
        return self._connection.execute(_ALL_OF[table.name], {"number": number}).all()


def _with_first_message(*more: sa.ColumnElement[Any]) -> sa.Select[Any]:
    """Every inquiry, with who wrote it and how: what one line about it needs."""
    another = message.alias()
    first = (
        sa.select(sa.func.min(another.c.id))
        .where(another.c.inquiry_id == inquiry.c.id)
        .scalar_subquery()
    )
    return sa.select(
        inquiry,
        message.c.channel,
        message.c.sender_name,
        message.c.sender,
        message.c.subject,
        message.c.received_at,
        message.c.why_kind,
        *more,
    ).join_from(inquiry, message, message.c.id == first)
