"""Chat messages in an open JSON shape, one object a line, joined into what one person meant to say.

One line: ``{"channel": "counter", "thread": "t-1", "id": "m-7", "sender": {"name": "Lou",
"address": "lou@example.net"}, "time": "2026-10-19T11:25:00+05:30", "text": "1.75 x .095",
"attachments": [{"name": "sketch.png", "content_type": "image/png", "size": 20481}]}``.
``id``, ``attachments`` and everything unknown may be absent; ``sender`` may be a bare name.
People write in bursts ("1.75" / ".095 wall" / "4.5 clr"): what one sender writes in one thread
within ten minutes is one message.
"""

from __future__ import annotations

import hashlib
import json
from collections import deque
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from typing import Annotated, Any

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field, ValidationError

from .charsets import clean_text
from .encoded_words import decode_words
from .model import Address, Attachment, Message

BURST = timedelta(minutes=10)
"""From the first message of a burst to its last."""
MAX_TEXT = 100_000
_LONGEST_TEXT_IN_BURST = 20_000


class ChatError(ValueError):
    """A line that is no chat message; its text is one clause for the person who exported it."""


def _moment(value: object) -> datetime:
    """ISO 8601 with an offset: a bare clock time would be a guess at someone's time zone."""
    if not isinstance(value, str):
        raise ValueError("must be an ISO 8601 text")
    moment = datetime.fromisoformat(value.strip())
    if moment.tzinfo is None:
        raise ValueError("needs an offset from UTC, as in 2026-10-19T11:25:00+02:00")
    try:
        moment.astimezone(UTC)
    except OverflowError as error:
        raise ValueError("lies outside the calendar") from error
    return moment


def _sender(value: object) -> object:
    return {"name": value} if isinstance(value, str) else value


def _attachment(value: object) -> object:
    return {"name": value} if isinstance(value, str) else value


class _Shape(BaseModel):
    # A later exporter may say more than we know; that is no reason to refuse its messages.
    model_config = ConfigDict(frozen=True, extra="ignore")


class ChatSender(_Shape):
    """Who wrote; the address may be of any kind the channel has, or empty."""

    name: str = ""
    address: str = ""


class ChatAttachment(_Shape):
    """A file named in the chat; its bytes are not part of the export."""

    name: str = ""
    content_type: str = "application/octet-stream"
    size: int = Field(default=0, ge=0)
    text: str | None = None


class ChatLine(_Shape):
    """One chat message as exported."""

    channel: str = ""
    thread: str = ""
    id: str | None = None
    sender: Annotated[ChatSender, BeforeValidator(_sender)]
    time: Annotated[datetime, BeforeValidator(_moment)]
    text: str = Field(max_length=MAX_TEXT)
    attachments: tuple[Annotated[ChatAttachment, BeforeValidator(_attachment)], ...] = ()

    @property
    def message_id(self) -> str:
        """The channel's own id; else one made of thread, sender, time and text."""
        if self.id:
            return _one_line(self.id)
        parts = (
            self.thread,
            self.sender.name,
            self.sender.address,
            self.time.isoformat(),
            self.text,
        )
        spelled = json.dumps(parts).encode("ascii")
        return f"sha256-{hashlib.sha256(spelled).hexdigest()[:32]}@local"


def parse_chat_line(line: bytes) -> ChatLine:
    """One line of an export. Raises ChatError with the reason in one clause."""
    try:
        value: Any = json.loads(line)
        if b"\\ud" in line.lower():
            # Half of an emoji, where the exporter cut a long text: no reason to lose the rest.
            value = json.loads(json.dumps(value, ensure_ascii=False).encode("utf-8", "replace"))
    except (ValueError, RecursionError) as error:
        raise ChatError("not valid JSON") from error
    if not isinstance(value, dict):
        raise ChatError("not a JSON object")
    try:
        return ChatLine.model_validate(value)
    except ValidationError as error:
        first = error.errors()[0]
        where = ".".join(str(part) for part in first["loc"])
        why = first["msg"].removeprefix("Value error, ")
        raise ChatError(f"{where}: {why[:1].lower()}{why[1:]}") from error


_Key = tuple[str, str, ChatSender]


@dataclass(slots=True, eq=False)
class _Burst:
    number: int
    key: _Key
    lines: list[ChatLine] = field(default_factory=list)
    size: int = 0

    def takes(self, line: ChatLine) -> bool:
        return (
            abs(line.time - self.lines[0].time) <= BURST
            and self.size + len(line.text) <= _LONGEST_TEXT_IN_BURST
        )

    def add(self, line: ChatLine) -> None:
        if line.message_id not in [earlier.message_id for earlier in self.lines]:
            self.lines.append(line)
            self.size += len(line.text)


def read_chat(lines: Iterable[bytes]) -> Iterator[tuple[int, Message | ChatError]]:
    """(number of the first line, message) for each burst, in order; (number, error) for bad lines.

    Lines may come out of order within a burst, or twice. Only bursts that may still grow are held.
    """
    waiting: deque[_Burst] = deque()
    growing: dict[_Key, _Burst] = {}
    for number, raw in enumerate(lines, start=1):
        if not raw.strip():
            continue
        try:
            line = parse_chat_line(raw)
        except ChatError as error:
            yield number, error
            continue
        while waiting and line.time - waiting[0].lines[0].time > BURST:
            done = waiting.popleft()
            if growing.get(done.key) is done:
                del growing[done.key]
            yield done.number, join(done.lines)
        key = (line.channel, line.thread, line.sender)
        burst = growing.get(key)
        if burst is None or not burst.takes(line):
            burst = growing[key] = _Burst(number, key)
            waiting.append(burst)
        burst.add(line)
    for burst in waiting:
        yield burst.number, join(burst.lines)


def join(lines: Iterable[ChatLine]) -> Message:
    """Several chat messages of one sender in one thread as one Message, earliest first.

    The header fields ``channel``, ``thread`` and, once a chat message, ``chat-id`` say where it
    came from, so that a repeated delivery can be recognised.
    """
    ordered = sorted(lines, key=lambda line: line.time)
    first = ordered[0]
    headers = [("channel", _one_line(first.channel)), ("thread", _one_line(first.thread))]
    headers += [("chat-id", line.message_id) for line in ordered]
    body = clean_text("\n".join(line.text for line in ordered)).strip("\n")
    spelled = json.dumps([line.model_dump(mode="json") for line in ordered])
    return Message(
        message_id=first.message_id,
        channel="chat",
        sender=Address(name=_one_line(first.sender.name), address=_one_line(first.sender.address)),
        received_at=first.time.astimezone(UTC),
        sent_on=first.time.date(),
        body=body,
        headers=tuple(headers),
        attachments=tuple(_file(one) for line in ordered for one in line.attachments),
        raw_sha256=hashlib.sha256(spelled.encode("utf-8", "surrogatepass")).hexdigest(),
    )


def _file(attachment: ChatAttachment) -> Attachment:
    text = attachment.text
    return Attachment(
        name=_one_line(attachment.name).replace("\\", "/").rpartition("/")[2],
        content_type=_one_line(attachment.content_type).lower(),
        size=attachment.size,
        text=None if text is None else clean_text(text),
        why_unread="the chat export does not hold it" if text is None else "",
    )


def _one_line(text: str) -> str:
    return decode_words(clean_text(text))
