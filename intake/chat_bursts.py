"""Chat lines joined into what one person meant to say.

People write in bursts ("1.75" / ".095 wall" / "4.5 clr"): what one sender writes in one thread
without a long pause is one message.
"""

from __future__ import annotations

import hashlib
import json
from collections import deque
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta

from .charsets import clean_text
from .chat import ChatAttachment, ChatError, ChatLine, one_line, parse_chat_line
from .model import Address, Attachment, Message

QUIET = timedelta(minutes=10)
"""A longer pause ends a burst. Counted from line to line, so that the order in which lines come in
makes no difference."""
LATE = timedelta(hours=1)
"""How much later than its neighbours a line may stand in an export and still be put among them."""
LONGEST_TEXT = 20_000
"""Characters of a burst: more is no burst, but a transcript."""


@dataclass(slots=True, eq=False)
class Burst:
    """Lines of one sender in one thread."""

    number: int
    """Where in its source the first of them stands, from 1."""
    lines: list[ChatLine] = field(default_factory=list)

    @property
    def first(self) -> datetime:
        """When it begins."""
        return min(line.time for line in self.lines)

    @property
    def last(self) -> datetime:
        """When it ends, so far."""
        return max(line.time for line in self.lines)

    @property
    def message(self) -> Message:
        """What was said in it."""
        return join(self.lines)


class Bursts:
    """Lines as they come, in any order, put into bursts."""

    def __init__(self, quiet: timedelta = QUIET) -> None:
        self._quiet = quiet
        self._open: deque[_Growing] = deque()
        self._of: dict[tuple[str, str, str], list[_Growing]] = {}

    def add(self, number: int, line: ChatLine) -> None:
        """One more line, which may fill the pause between two bursts."""
        same_chat = self._of.setdefault(line.chat, [])
        if any(line.key in one.keys for one in same_chat):
            return
        near = [one for one in same_chat if one.reaches(line, self._quiet)]
        burst = near[0] if near else None
        if burst is None:
            burst = _Growing(number)
            same_chat.append(burst)
            self._open.append(burst)
        burst.add(line)
        for other in near[1:]:
            if burst.size + other.size <= LONGEST_TEXT:
                for one in other.lines:
                    burst.add(one)
                same_chat.remove(other)
                self._open.remove(other)

    def done(self, now: datetime | None) -> Iterator[Burst]:
        """Bursts that hardly anything comes for when it is ``now``; with None, all the others."""
        wait = self._quiet + LATE
        while self._open and (now is None or now - self._open[0].last > wait):
            burst = self._open.popleft()
            same_chat = self._of[burst.lines[0].chat]
            same_chat.remove(burst)
            if not same_chat:
                del self._of[burst.lines[0].chat]
            yield burst


@dataclass(slots=True, eq=False)
class _Growing(Burst):
    size: int = 0
    keys: set[str] = field(default_factory=set)
    _first: datetime | None = None
    _last: datetime | None = None

    @property
    def first(self) -> datetime:
        assert self._first is not None, "a burst has a line"
        return self._first

    @property
    def last(self) -> datetime:
        assert self._last is not None, "a burst has a line"
        return self._last

    def reaches(self, line: ChatLine, quiet: timedelta) -> bool:
        near = line.time - self.last <= quiet and self.first - line.time <= quiet
        return near and self.size + len(line.text) <= LONGEST_TEXT

    def add(self, line: ChatLine) -> None:
        self.keys.add(line.key)
        self.lines.append(line)
        self.size += len(line.text)
        self._first = min(self._first or line.time, line.time)
        self._last = max(self._last or line.time, line.time)


def read_chat(
    lines: Iterable[bytes], quiet: timedelta = QUIET
) -> Iterator[Burst | tuple[int, ChatError]]:
    """The bursts of an export in order of their first lines; (line number, error) for bad lines.

    Lines may come out of order, or twice. Only bursts that may still grow are held.
    """
    bursts = Bursts(quiet)
    for number, raw in enumerate(lines, start=1):
        if not raw.strip():
            continue
        try:
            line = parse_chat_line(raw)
        except ChatError as error:
            yield number, error
            continue
        yield from bursts.done(line.time)
        bursts.add(number, line)
    yield from bursts.done(None)


def bursts_of(lines: Iterable[ChatLine], quiet: timedelta = QUIET) -> list[Burst]:
    """Lines that came in together, as bursts."""
    bursts = Bursts(quiet)
    for number, line in enumerate(lines, start=1):
        bursts.add(number, line)
    return list(bursts.done(None))


def join(lines: Iterable[ChatLine], message_id: str | None = None) -> Message:
    """Several chat messages of one sender in one thread as one Message, earliest first.

    The header fields ``channel``, ``thread`` and, once a chat message, ``chat-id`` say where it
    came from. ``message_id``: that of the message before it grew, so that it keeps its name.
    """
    ordered = sorted(lines, key=lambda line: line.time)  # of one second: as they came
    first = ordered[0]
    channel, thread, _ = first.chat
    headers = [("channel", channel), ("thread", thread)]
    headers += [("chat-id", line.message_id) for line in ordered]
    body = clean_text("\n".join(line.text for line in ordered)).strip("\n")
    spelled = json.dumps([line.model_dump(mode="json") for line in ordered])
    return Message(
        message_id=message_id or first.message_id,
        channel="chat",
        sender=Address(name=one_line(first.sender.name), address=one_line(first.sender.address)),
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
        name=one_line(attachment.name).replace("\\", "/").rpartition("/")[2],
        content_type=one_line(attachment.content_type).lower(),
        size=attachment.size,
        text=None if text is None else clean_text(text),
        why_unread=(one_line(attachment.why_unread) or "the chat message only names it")
        if text is None
        else "",
    )
