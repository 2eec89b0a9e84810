"""Messages read by several processes at once, and had back in the order in which they came.

Only what is made of a message is worked out there; the store is this process's alone. Each reader
ends by itself when this process is gone, however it ended.
"""

from __future__ import annotations

import multiprocessing
from collections import deque
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from types import TracebackType
from typing import TYPE_CHECKING, Self

if TYPE_CHECKING:
    from multiprocessing.connection import Connection

    from ..rules.shop import Shop
    from .model import Message, Result

Group = Sequence["Message"]


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

        A reader has one group at a time, and gets the next before the answer to the last is used:
        it need not wait for whoever writes things down.
        """
        idle = deque(self._ends)
        busy: deque[Connection[Group, list[Result | Unread]]] = deque()
        for group in groups:
            done = None
            if not idle:
                idle.append(busy.popleft())
                done = _answer(idle[0])
            try:
                idle[0].send(group)
            except ConnectionError as error:
                raise ReaderStoppedError from error
            busy.append(idle.popleft())
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

    from .pipeline import process
    from .templates import BadTemplate, Templates

    signal.signal(signal.SIGINT, signal.SIG_IGN)  # whoever started us ends us
    templates = Templates(shop.folder)

    def made_of(message: Message) -> Result | Unread:
        try:
            return process(message, shop, templates)
        except BadTemplate as error:
            return Unread(str(error), template=True)
        except Exception as error:  # noqa: BLE001 - our fault with one message must not stop the rest
            return Unread(f"internal fault ({type(error).__name__}: {error}); left out")

    try:
        while True:
            end.send([made_of(message) for message in end.recv()])
    except (EOFError, ConnectionError):
        return  # nothing more to read
