"""Messages read by several processes at once, and had back in the order in which they came.

Only what is made of a message is worked out there; the store is this process's alone. Each reader
ends by itself when this process is gone, however it ended.
"""

from __future__ import annotations

import multiprocessing
from collections import deque
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from queue import SimpleQueue
from threading import Thread
from types import TracebackType
from typing import TYPE_CHECKING, Self

if TYPE_CHECKING:
    from multiprocessing.connection import Connection

    from ..rules.shop import Shop
    from .model import Message, Result

Group = Sequence["Message"]

GROUPS_AT_A_TIME = 2
"""Groups that one reader has, or has read without its answer being fetched."""


@dataclass(frozen=True, slots=True)
class Unread:
    """Why nothing was made of a message: our own fault, or that of a template of the shop."""

    why: str
    template: bool = False


class ReaderStoppedError(Exception):
    """A process that was reading has been ended from outside."""


class Readers:
    """So many processes that read. Use it in a ``with``."""

    def __init__(self, count: int, shop: Shop) -> None:
        # Started afresh, not copied: a copy would have the store open, too.
        context = multiprocessing.get_context("spawn")
        self._ends: list[Connection[Group, list[Result | Unread]]] = []
        self._processes = []
        for _ in range(count):
            ours, theirs = context.Pipe()
            process = context.Process(target=_work, args=(theirs, shop), daemon=True)
            process.start()
            theirs.close()
            self._ends.append(ours)
            self._processes.append(process)

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        for end in self._ends:
            end.close()
        for process in self._processes:
            if kind is not None:
                process.kill()
            process.join()
            process.close()

    def read(self, groups: Iterable[Group]) -> Iterator[list[Result | Unread]]:
        """What is made of each message of each group. Raises ReaderStoppedError.

        A reader has two groups at a time: it goes on with the second while the answer to the first
        waits for that of an earlier group, or for whoever writes things down.
        """
        busy: deque[Connection[Group, list[Result | Unread]]] = deque()
        for group in groups:
            done = None
            end = min(self._ends, key=busy.count)
            if busy.count(end) == GROUPS_AT_A_TIME:
                end = busy.popleft()
                done = _answer(end)
            try:
                end.send(group)
            except ConnectionError as error:
                raise ReaderStoppedError from error
            busy.append(end)
            if done is not None:
                yield done
        while busy:
            yield _answer(busy.popleft())


def _answer(end: Connection[Group, list[Result | Unread]]) -> list[Result | Unread]:
    try:
        return end.recv()
    except (EOFError, ConnectionError) as error:
        raise ReaderStoppedError from error


def _work(end: Connection[list[Result | Unread], Group], shop: Shop) -> None:
    import signal

    from .late import much_mail_comes
    from .pipeline import process
    from .templates import BadTemplate, Templates

    much_mail_comes()
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # whoever started us ends us
    templates = Templates(shop.folder)

    def made_of(message: Message) -> Result | Unread:
        try:
            return process(message, shop, templates)
        except BadTemplate as error:
            return Unread(str(error), template=True)
        except Exception as error:  # noqa: BLE001 - our fault with one message must not stop the rest
            return Unread(f"internal fault ({type(error).__name__}: {error}); left out")

    came: SimpleQueue[Group | None] = SimpleQueue()
    # What comes is taken in beside the reading: else both ends of the pipe might wait until the
    # other takes what it has sent.
    Thread(target=_take_in, args=(end, came), daemon=True).start()
    try:
        while (group := came.get()) is not None:
            end.send([made_of(message) for message in group])
    except ConnectionError:
        return  # nobody wants to know any more


def _take_in(
    end: Connection[list[Result | Unread], Group], came: SimpleQueue[Group | None]
) -> None:
    try:
        while True:
            came.put(end.recv())
    except (EOFError, OSError):
        came.put(None)  # nothing more to read
