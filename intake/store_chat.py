"""Chat messages one by one in the store: which are known, and which burst they are part of."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta

import sqlalchemy as sa

from . import store_json as packing
from .chat import ChatLine, ChatSender
from .desk_errors import ClashError
from .model import Result
from .store_json import keepable
from .store_schema import chat_line, message

SENT_AGAIN_WITHIN = timedelta(days=1)
"""How long a sender's program may try to send a message again under the id that it gave it."""


@dataclass(frozen=True, slots=True)
class KnownLine:
    """A line that is kept: in which message of which inquiry."""

    inquiry: int
    message_row: int
    line: ChatLine


class ChatRead:
    """Looking chat messages up. Part of ``store_reader.Reader``."""

    _connection: sa.Connection

    def known_line(self, came: ChatLine) -> KnownLine | None:
        """The same chat message, if it is kept: by its id, or sent again by the sender's program.

        That id need not be unique (some programs count from 1 anew each day), so that the words
        have to be the same too.
        """
        by_key = self._lines(chat_line.c.key == came.key)
        if (found := next(by_key, None)) is not None or not came.origin_id:
            return found
        near = self._near(came, came.time - SENT_AGAIN_WITHIN, came.time + SENT_AGAIN_WITHIN)
        wanted = (came.origin_id, came.text)
        return next((one for one in near if (one.line.origin_id, one.line.text) == wanted), None)

    def burst_near(self, came: ChatLine, first: datetime, last: datetime) -> list[KnownLine]:
        """What is kept of the same chat from between two moments, earliest first."""
        return list(self._near(came, first, last))

    def lines_of(self, message_row: int) -> list[ChatLine]:
        """What a message was joined from, in the order in which it came in."""
        return [one.line for one in self._lines(chat_line.c.message_row == message_row)]

    def latest_line(self, channel: str) -> datetime | None:
        """When the latest message was written that came by a channel."""
        query = sa.select(sa.func.max(chat_line.c.at)).where(chat_line.c.channel == channel)
        found: datetime | None = self._connection.execute(query).scalar_one()
        return found

    def _near(self, came: ChatLine, first: datetime, last: datetime) -> Iterator[KnownLine]:
        channel, thread, who = map(keepable, came.chat)
        return self._lines(
            chat_line.c.channel == channel,
            chat_line.c.thread == thread,
            chat_line.c.who == who,
            chat_line.c.at.between(first, last),
            order=(chat_line.c.at, chat_line.c.id),
        )

    def _lines(
        self,
        *which: sa.ColumnElement[bool],
        order: tuple[sa.ColumnElement[object], ...] = (chat_line.c.id,),
    ) -> Iterator[KnownLine]:
        found = self._connection.execute(
            sa.select(message.c.inquiry_id, chat_line.c.message_row, chat_line.c.line)
            .join_from(chat_line, message, chat_line.c.message_row == message.c.id)
            .where(*which)
            .order_by(*order)
        )
        for row in found:
            line = ChatLine.model_validate_json(row.line)
            yield KnownLine(row.inquiry_id, row.message_row, line)


class ChatWrite:
    """Keeping chat messages. Part of ``store_writer.Writer``."""

    _connection: sa.Connection

    def add_chat_lines(self, message_row: int, lines: Iterable[ChatLine]) -> None:
        """What a message was joined from. Raises ClashError where one of it is kept already."""
        values = []
        for line in lines:
            channel, thread, who = map(keepable, line.chat)
            values.append(
                {
                    "message_row": message_row,
                    "key": line.key,
                    "channel": channel,
                    "thread": thread,
                    "who": who,
                    "at": line.time,
                    "line": keepable(line.model_dump_json()),
                }
            )
        try:
            self._connection.execute(sa.insert(chat_line), values)
        except sa.exc.IntegrityError as error:
            raise ClashError("this chat message is in the store already") from error

    def reduce_chat_lines(self, number: int, *, known_again: bool) -> None:
        """Take words and senders out of an inquiry's chat messages.

        ``known_again``: their keys stay, so that none of them is taken in a second time.
        """
        rows = sa.select(message.c.id).where(message.c.inquiry_id == number)
        found = self._connection.execute(
            sa.select(chat_line.c.id, chat_line.c.key, chat_line.c.at).where(
                chat_line.c.message_row.in_(rows)
            )
        ).all()
        for row in found:
            bare = ChatLine(sender=ChatSender(), time=row.at, text="")
            values = {
                "key": row.key if known_again else f"gone-{row.id}",
                "thread": "",
                "who": f"gone-{row.id}",  # like nobody's, so that nothing is joined to it
                "line": bare.model_dump_json(),
            }
            self._connection.execute(
                sa.update(chat_line).where(chat_line.c.id == row.id).values(values)
            )

    def replace_message(self, message_row: int, result: Result) -> None:
        """A message that has grown, in place of what it was; it keeps its key."""
        came = result.message
        self._connection.execute(
            sa.update(message)
            .where(message.c.id == message_row)
            .values(
                raw_sha256=came.raw_sha256 or None,
                sender_name=keepable(came.sender.name),
                sender=keepable(came.sender.address),
                received_at=came.received_at,
                kind=result.kind,
                why_kind=keepable(result.why_kind),
                message=packing.pack_message(came),
            )
        )
