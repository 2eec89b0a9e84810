"""Taking customers' words out of the store and leaving the figures that the report counts."""

from __future__ import annotations

import secrets
from collections.abc import Iterator
from datetime import datetime

import sqlalchemy as sa

from . import store_json as packing
from .inquiry import BENDREPLY, State
from .model import Address, Message
from .store_schema import draft, event, inquiry, message, reply, tally, word
from .store_writer import Writer
from .tally import NOBODY

GONE = "its words are no longer kept"
SETTLED = (State.DELIVERED, State.ANSWERED, State.SET_ASIDE, State.NO_REPLY)


def anybody() -> str:
    """A name for a customer who is to be told from others, and from whom nothing is to be told."""
    return f"{NOBODY}{secrets.token_hex(8)}"


class Eraser(Writer):
    """What can be taken out within one transaction. Made by ``Store.erasing``."""

    def inquiries_of(self, address: str) -> tuple[int, ...]:
        """Inquiries that a customer of that address asked, or wrote a message of."""
        spelled = address.casefold()
        by_sender = sa.select(message.c.inquiry_id).where(
            sa.func.lower(message.c.sender) == spelled
        )
        by_tally = sa.select(tally.c.inquiry_id).where(tally.c.customer == spelled)
        found = self._connection.execute(sa.union(by_sender, by_tally))
        return tuple(sorted(found.scalars()))

    def mentioning(self, address: str) -> tuple[int, ...]:
        """Inquiries in whose messages or drafts the address still stands."""
        like = f"%{_escaped(address.casefold())}%"
        found = [
            self._connection.execute(
                sa.select(table.c.inquiry_id).where(sa.func.lower(column).like(like, escape="\\"))
            ).scalars()
            for table, column in (
                (message, message.c.message),
                (draft, draft.c.body),
                (reply, reply.c.body),
                (event, event.c.detail),
            )
        ]
        return tuple(sorted({number for rows in found for number in rows if number is not None}))

    def old(self, before: datetime) -> Iterator[tuple[int, str]]:
        """(inquiry, customer) of what came before a moment, is settled, and has its words yet."""
        found = self._connection.execute(
            sa.select(tally.c.inquiry_id, tally.c.customer)
            .join_from(tally, inquiry, inquiry.c.id == tally.c.inquiry_id)
            .where(*_old(before), inquiry.c.state.in_(SETTLED))
            .order_by(tally.c.inquiry_id)
        ).all()
        yield from ((number, customer) for number, customer in found)

    def old_unsettled(self, before: datetime) -> int:
        """How many that are as old wait for a person, or for being laid down."""
        query = (
            sa.select(sa.func.count())
            .select_from(tally.join(inquiry, inquiry.c.id == tally.c.inquiry_id))
            .where(*_old(before), inquiry.c.state.not_in(SETTLED))
        )
        return int(self._connection.execute(query).scalar_one())

    def reduce(self, number: int, customer: str, *, known_again: bool, by: str = BENDREPLY) -> int:
        """Leave of an inquiry its figures; how many messages have lost their words.

        ``customer``: what to call him from now on. ``known_again``: the messages' ids and digests
        stay, so that none of them is taken in a second time.
        """
        of_it = self._connection.execute(
            sa.select(
                message.c.id, message.c.message_id, message.c.raw_sha256, message.c.channel,
                message.c.received_at,
            ).where(message.c.inquiry_id == number)
        ).all()  # fmt: skip
        for row in of_it:
            key = row.message_id if known_again else f"gone-{row.id}@local"
            digest = (row.raw_sha256 or "") if known_again else ""
            bare = Message(
                message_id=key,
                channel=row.channel,
                sender=Address(name="", address=""),
                received_at=row.received_at,
                raw_sha256=digest,
            )
            self._connection.execute(
                sa.update(message)
                .where(message.c.id == row.id)
                .values(
                    message_id=key,
                    raw_sha256=digest or None,
                    thread=key,
                    in_reply_to=None,
                    sender_name="",
                    sender="",
                    subject="",
                    why_kind="",
                    source="",
                    message=packing.pack_message(bare),
                )
            )
        self.reduce_chat_lines(number, known_again=known_again)
        self._reduce_rest(number, customer, known_again=known_again)
        self.log(number, by, "reduced to its figures")
        return len(of_it)

    def _reduce_rest(self, number: int, customer: str, *, known_again: bool) -> None:
        stored = self._connection.execute(
            sa.select(inquiry.c.assessments).where(inquiry.c.id == number)
        ).scalar_one()
        bare = [
            one.model_copy(
                update={
                    "request": one.request.model_copy(
                        update={
                            "evidence": (),
                            "doubts": tuple(
                                doubt.model_copy(update={"why": GONE})
                                for doubt in one.request.doubts
                            ),
                        }
                    )
                }
            )
            for one in packing.unpack_assessments(stored)
        ]
        of_it = {"inquiry_id": number}
        for table, values in (
            (draft, {"subject": "", "body": "", "answers": "[]"}),
            (event, {"detail": "{}"}),
            (word, {"why": ""}),
            (reply, {"body": ""}),
        ):
            self._connection.execute(sa.update(table).filter_by(**of_it).values(values))
        if not known_again:
            gone = sa.literal("gone-") + sa.cast(reply.c.id, sa.String)
            self._connection.execute(sa.update(reply).filter_by(**of_it).values(message_id=gone))
        self._connection.execute(
            sa.update(inquiry)
            .where(inquiry.c.id == number)
            .values(
                version=inquiry.c.version + 1,
                assessments=packing.pack_assessments(bare),
                questions="[]",
                notes=packing.pack_words([GONE]),
            )
        )
        self._connection.execute(sa.update(tally).filter_by(**of_it).values(customer=customer))


def _old(before: datetime) -> tuple[sa.ColumnElement[bool], ...]:
    return tally.c.at < before, ~tally.c.customer.like(f"{NOBODY}%")


def _escaped(text: str) -> str:
    return text.replace("\\", "\\\\").replace("%", "\\%").replace("_", "\\_")
