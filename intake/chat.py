"""A chat message in an open JSON shape: from an export, a hook, or an account that listens.

One line: ``{"channel": "counter", "thread": "t-1", "id": "m-7", "sender": {"name": "Lou",
"address": "lou@example.net"}, "time": "2026-10-19T11:25:00+05:30", "text": "1.75 x .095",
"attachments": [{"name": "sketch.png", "content_type": "image/png", "size": 20481}]}``.
``sender``, ``time`` and ``text`` have to be there; ``sender`` may be a bare name.
``bendreply schema chat`` prints the JSON Schema. ``chat_bursts`` joins lines to what one person
meant to say.
"""

from __future__ import annotations

import hashlib
import json
from datetime import datetime
from typing import Annotated, Any

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field, ValidationError

from .charsets import clean_text
from .encoded_words import decode_words

MAX_TEXT = 100_000
_FIRST_YEAR, _LAST_YEAR = 1970, 9000


class ChatError(ValueError):
    """A line that is no chat message; its text is one clause for the person who exported it."""


def _moment(value: object) -> datetime:
    """ISO 8601 with an offset: a bare clock time would be a guess at someone's time zone."""
    if not isinstance(value, str | datetime):
        raise ValueError("must be an ISO 8601 text")
    moment = value if isinstance(value, datetime) else _as_written(value)
    if moment.tzinfo is None:
        raise ValueError("needs an offset from UTC, as in 2026-10-19T11:25:00+02:00")
    if not _FIRST_YEAR <= moment.year <= _LAST_YEAR:
        raise ValueError("lies outside the calendar")
    return moment


def _as_written(text: str) -> datetime:
    try:
        return datetime.fromisoformat(text.strip())
    except ValueError as error:
        raise ValueError(f"{text[:40]!r} is no time as in 2026-10-19T11:25:00+02:00") from error


def _sender(value: object) -> object:
    return {"name": value} if isinstance(value, str) else value


def _attachment(value: object) -> object:
    return {"name": value} if isinstance(value, str) else value


class _Shape(BaseModel):
    # A later exporter may say more than we know; that is no reason to refuse its messages.
    model_config = ConfigDict(frozen=True, extra="ignore", use_attribute_docstrings=True)


class ChatSender(_Shape):
    """Who wrote; the address may be of any kind the channel has, or empty."""

    name: str = ""
    address: str = ""

    @property
    def who(self) -> str:
        """What tells one sender from another: the address; without one, the name."""
        return one_line(self.address or self.name).casefold()


class ChatAttachment(_Shape):
    """A file named in the chat; its bytes are not part of the message."""

    name: str = ""
    content_type: str = "application/octet-stream"
    size: int = Field(default=0, ge=0)
    """In bytes; 0 where it is not known."""
    text: str | None = None
    """Its words, where the channel can give them; a table's rows as lines with tabs."""
    why_unread: str = ""
    """Without ``text``: why not, as a clause for a person."""


class ChatLine(_Shape):
    """One chat message."""

    channel: str = ""
    """Where it was written: a name for the chat system or the account."""
    thread: str = ""
    """The conversation or room; what one sender writes in two threads stays apart."""
    id: str | None = None
    """The channel's own id, by which a message that comes again is known."""
    origin_id: str | None = None
    """The id that the sender's program gave it, where the channel has one of its own besides: a
    message that was sent again bears the same."""
    sender: Annotated[ChatSender, BeforeValidator(_sender, json_schema_input_type=ChatSender | str)]
    time: Annotated[datetime, BeforeValidator(_moment, json_schema_input_type=datetime)]
    """When it was written: ISO 8601 with an offset from UTC, best that of the sender's clock."""
    text: str = Field(max_length=MAX_TEXT)
    """The words as they were typed, without markup."""
    attachments: tuple[
        Annotated[
            ChatAttachment,
            BeforeValidator(_attachment, json_schema_input_type=ChatAttachment | str),
        ],
        ...,
    ] = ()

    @property
    def message_id(self) -> str:
        """The channel's own id; else one made of thread, sender, time and text."""
        if self.id:
            return one_line(self.id)
        parts = (
            self.thread,
            self.sender.name,
            self.sender.address,
            self.time.isoformat(),
            self.text,
        )
        spelled = json.dumps(parts).encode("ascii")
        return f"sha256-{hashlib.sha256(spelled).hexdigest()[:32]}@local"

    @property
    def chat(self) -> tuple[str, str, str]:
        """Whose words where: what lines of one burst have in common."""
        return one_line(self.channel), one_line(self.thread), self.sender.who

    @property
    def key(self) -> str:
        """What the line is known by: an id counts within its chat only."""
        spelled = json.dumps([*self.chat, self.message_id]).encode("ascii")
        return hashlib.sha256(spelled).hexdigest()


def parse_chat_line(line: bytes) -> ChatLine:
    """One line of an export. Raises ChatError with the reason in one clause."""
    return chat_line_of(json_value(line))


def json_value(raw: bytes) -> Any:
    """What a JSON text says. Raises ChatError."""
    try:
        value: Any = json.loads(raw)
        if b"\\ud" in raw.lower():
            # Half of an emoji, where the exporter cut a long text: no reason to lose the rest.
            value = json.loads(json.dumps(value, ensure_ascii=False).encode("utf-8", "replace"))
    except (ValueError, RecursionError) as error:
        raise ChatError("not valid JSON") from error
    return value


def chat_line_of(value: object) -> ChatLine:
    """One message out of a JSON value. Raises ChatError, naming the field."""
    if not isinstance(value, dict):
        raise ChatError("not a JSON object")
    try:
        return ChatLine.model_validate(value)
    except ValidationError as error:
        first = error.errors()[0]
        where = ".".join(str(part) for part in first["loc"])
        why = first["msg"].removeprefix("Value error, ")
        raise ChatError(f"{where}: {why[:1].lower()}{why[1:]}") from error


def chat_schema() -> str:
    """JSON Schema of one message."""
    schema = ChatLine.model_json_schema(mode="validation")
    schema["title"] = "bendreply chat message"
    return json.dumps(schema, indent=2)


def one_line(text: str) -> str:
    """A stranger's text on one line, without control characters."""
    return decode_words(clean_text(text))
