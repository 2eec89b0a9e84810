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
from .store_later import elsewhere
from .store_schema import draft, inquiry, message, reply

MOST_LOOKED_AT = 20
"""Of one sender's messages, how many of the latest are compared."""
MOST_FORWARDS = 200


# Built once: building a statement takes longer than a small database takes to answer it.
_OF_IDS = elsewhere(
    sa.select(message.c.message_id, message.c.inquiry_id)
    .join_from(message, inquiry, message.c.inquiry_id == inquiry.c.id)
    .where(
        message.c.channel == "email",
        message.c.message_id.in_(sa.bindparam("ids", expanding=True)),
        inquiry.c.kind != "automatic",
    )
)
_OURS_OF_IDS = elsewhere(
    sa.select(reply.c.message_id, reply.c.inquiry_id).where(
        reply.c.message_id.in_(sa.bindparam("ids", expanding=True))
    )
)
_FIRST_WITH_DRAFT = (
    sa.select(message.c.message)
    .join_from(message, draft, message.c.inquiry_id == draft.c.inquiry_id)
    .where(
        draft.c.inquiry_id == sa.bindparam("of_inquiry"),
        draft.c.number == sa.bindparam("of_number"),
    )
    .order_by(message.c.id)
    .limit(1)
)
_REPLY = sa.select(reply.c.id).where(reply.c.message_id == sa.bindparam("of_id"))
_FROM_CUSTOMER = elsewhere(
    sa.select(message.c.id)
    .where(
        message.c.inquiry_id == sa.bindparam("of_inquiry"),
        message.c.sender.in_(sa.bindparam("spelled", expanding=True)),
    )
    .limit(1)
)
_ANSWERING = elsewhere(
    sa.select(message.c.inquiry_id)
    .where(
        message.c.thread == sa.bindparam("of_id"),
        message.c.message_id != sa.bindparam("of_id"),
        message.c.role == Role.CUSTOMER,
        message.c.kind != "automatic",
    )
    .order_by(message.c.id)
    .limit(1)
)
_LATELY_FROM = elsewhere(
    sa.select(message.c.inquiry_id, message.c.message)
    .where(
        message.c.sender.in_(sa.bindparam("spelled", expanding=True)),
        message.c.channel == "email",
        message.c.role != Role.COPY,
        message.c.kind != "automatic",
    )
    .order_by(message.c.id.desc())
    .limit(MOST_LOOKED_AT)
)
# LIKE only narrows it down (its idea of case is ASCII); the caller compares the words.
_WITH_TOPIC = elsewhere(
    sa.select(message.c.inquiry_id, message.c.message)
    .where(
        sa.func.lower(message.c.subject).like(sa.bindparam("ending"), escape="\\"),
        message.c.channel == "email",
        message.c.role == Role.CUSTOMER,
    )
    .order_by(message.c.id.desc())
    .limit(MOST_FORWARDS)
)


class ThreadsRead:
    """Looking threads up. Part of ``store_reader.Reader``."""

    _connection: sa.Connection

    def inquiry_of_ids(self, ids: Sequence[str]) -> int | None:
        """The inquiry of the message that is answered; of several, the one named last."""
        wanted = {as_key(one): place for place, one in enumerate(ids)}
        if not wanted:
            return None
        found = self._connection.execute(_OF_IDS, {"ids": list(wanted)}).all()
        ours = self._connection.execute(_OURS_OF_IDS, {"ids": list(wanted)}).all()
        named = max([*found, *ours], key=lambda row: wanted[row.message_id], default=None)
        return None if named is None else int(named.inquiry_id)

    def has_draft(self, name: DraftId) -> bool:
        """Whether a draft of ours is of this store: two stores can both have an inquiry 17."""
        row = self._connection.execute(
            _FIRST_WITH_DRAFT, {"of_inquiry": name.inquiry, "of_number": name.number}
        ).one_or_none()
        return row is not None and digest_of(packing.unpack_message(row.message)) == name.digest

    def has_reply(self, message_id: str) -> bool:
        """Whether a reply out of the Sent folder is known."""
        found = self._connection.execute(_REPLY, {"of_id": as_key(message_id)})
        return found.one_or_none() is not None

    def oldest_message(self) -> datetime | None:
        """When the first message of all was written."""
        query = sa.select(sa.func.min(message.c.received_at))
        found: datetime | None = self._connection.execute(query).scalar_one()
        return found

    def has_customer(self, number: int, address: str) -> bool:
        """Whether an inquiry has a message from that address."""
        asked = {"of_inquiry": number, "spelled": _spelled(address)}
        return self._connection.execute(_FROM_CUSTOMER, asked).one_or_none() is not None

    def answering(self, message_id: str) -> Iterator[int]:
        """Inquiries with a customer's message that answers the message of that id."""
        found = self._connection.execute(_ANSWERING, {"of_id": as_key(message_id)})
        yield from found.scalars()

    def lately_from(self, address: str) -> Iterator[tuple[int, Message]]:
        """(inquiry, message) of one sender's mail, the latest first; automatic mail left out."""
        for row in self._connection.execute(_LATELY_FROM, {"spelled": _spelled(address)}):
            yield row.inquiry_id, packing.unpack_message(row.message)

    def with_topic(self, topic: str) -> Iterator[tuple[int, Message]]:
        """(inquiry, message) of mail with that subject, whatever stands before it."""
        for row in self._connection.execute(_WITH_TOPIC, {"ending": f"%{_escaped(topic)}"}):
            yield row.inquiry_id, packing.unpack_message(row.message)


def _spelled(address: str) -> list[str]:
    return list({as_key(address), as_key(address.lower())})


def _escaped(text: str) -> str:
    kept = text.replace("\\", "\\\\").replace("%", "\\%").replace("_", "\\_")
    return keepable(kept)
