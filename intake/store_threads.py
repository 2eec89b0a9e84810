"""Looking up what a message may belong to: by ids, by sender, by subject."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import datetime

import sqlalchemy as sa

from . import store_json as packing
from .inquiry import Role
from .letter import DraftId, digest_of
from .message_keys import as_key
from .model import Message
from .store_json import keepable
from .store_schema import draft, inquiry, message, reply

MOST_LOOKED_AT = 20
"""Of one sender's messages, how many of the latest are compared."""
MOST_FORWARDS = 200


class ThreadsRead:
    """Looking threads up. Part of ``store_reader.Reader``."""

    _connection: sa.Connection

    def inquiry_of_ids(self, ids: Sequence[str]) -> int | None:
        """The inquiry of the message that is answered; of several, the one named last."""
        wanted = {as_key(one): place for place, one in enumerate(ids)}
        if not wanted:
            return None
        found = self._connection.execute(
            sa.select(message.c.message_id, message.c.inquiry_id)
            .join_from(message, inquiry, message.c.inquiry_id == inquiry.c.id)
            .where(
                message.c.channel == "email",
                message.c.message_id.in_(wanted),
                inquiry.c.kind != "automatic",
            )
        ).all()
        ours = self._connection.execute(
            sa.select(reply.c.message_id, reply.c.inquiry_id).where(reply.c.message_id.in_(wanted))
        ).all()
        named = max([*found, *ours], key=lambda row: wanted[row.message_id], default=None)
        return None if named is None else int(named.inquiry_id)

    def has_draft(self, name: DraftId) -> bool:
        """Whether a draft of ours is of this store: two stores can both have an inquiry 17."""
        row = self._connection.execute(
            sa.select(message.c.message)
            .join_from(message, draft, message.c.inquiry_id == draft.c.inquiry_id)
            .where(draft.c.inquiry_id == name.inquiry, draft.c.number == name.number)
            .order_by(message.c.id)
            .limit(1)
        ).one_or_none()
        return row is not None and digest_of(packing.unpack_message(row.message)) == name.digest

    def has_reply(self, message_id: str) -> bool:
        """Whether a reply out of the Sent folder is known."""
        query = sa.select(reply.c.id).where(reply.c.message_id == as_key(message_id))
        return self._connection.execute(query).one_or_none() is not None

    def oldest_message(self) -> datetime | None:
        """When the first message of all was written."""
        query = sa.select(sa.func.min(message.c.received_at))
        found: datetime | None = self._connection.execute(query).scalar_one()
        return found

    def has_customer(self, number: int, address: str) -> bool:
        """Whether an inquiry has a message from that address."""
        spelled = (as_key(address), as_key(address.lower()))
        query = sa.select(message.c.id).where(
            message.c.inquiry_id == number, message.c.sender.in_(spelled)
        )
        return self._connection.execute(query.limit(1)).one_or_none() is not None

    def answering(self, message_id: str) -> Iterator[int]:
        """Inquiries with a customer's message that answers the message of that id."""
        found = self._connection.execute(
            sa.select(message.c.inquiry_id)
            .where(
                message.c.thread == as_key(message_id),
                message.c.message_id != as_key(message_id),
                message.c.role == Role.CUSTOMER,
                message.c.kind != "automatic",
            )
            .order_by(message.c.id)
            .limit(1)
        )
        yield from found.scalars()

    def lately_from(self, address: str) -> Iterator[tuple[int, Message]]:
        """(inquiry, message) of one sender's mail, the latest first; automatic mail left out."""
        spelled = (as_key(address), as_key(address.lower()))
        found = self._connection.execute(
            sa.select(message.c.inquiry_id, message.c.message)
            .where(
                message.c.sender.in_(spelled),
                message.c.channel == "email",
                message.c.role != Role.COPY,
                message.c.kind != "automatic",
            )
            .order_by(message.c.id.desc())
            .limit(MOST_LOOKED_AT)
        )
        for row in found:
            yield row.inquiry_id, packing.unpack_message(row.message)

    def with_topic(self, topic: str) -> Iterator[tuple[int, Message]]:
        """(inquiry, message) of mail with that subject, whatever stands before it."""
        # LIKE only narrows it down (its idea of case is ASCII); the caller compares the words.
        ending = sa.func.lower(message.c.subject).like(f"%{_escaped(topic)}", escape="\\")
        found = self._connection.execute(
            sa.select(message.c.inquiry_id, message.c.message)
            .where(ending, message.c.channel == "email", message.c.role == Role.CUSTOMER)
            .order_by(message.c.id.desc())
            .limit(MOST_FORWARDS)
        )
        for row in found:
            yield row.inquiry_id, packing.unpack_message(row.message)


def _escaped(text: str) -> str:
    kept = text.replace("\\", "\\\\").replace("%", "\\%").replace("_", "\\_")
    return keepable(kept)
