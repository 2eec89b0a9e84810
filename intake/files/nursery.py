"""The process that makes the processes which open files: it has their libraries loaded already.

To start Python and load a library costs some 0.3 s, which a run over many mails pays once. Each
file is still opened in a process of its own, a copy made by ``fork``, that has its own limits, may
fail without harm, and has seen no other file.
"""

from __future__ import annotations

import atexit
import os
import select
import signal
import subprocess
import sys
import threading
import time

from .contents import FRAME, MOST_SECONDS

PATIENCE_S = 3 * MOST_SECONDS
"""Seconds by the clock on the wall for one file: others may be using the processor too."""
_A_PIECE = 1 << 16


class TooSlow(Exception):
    """The file was given up."""


class Stopped(Exception):
    """The process that opened the file was stopped by a signal: a limit, or memory ran out."""


class Nursery:
    """The process, started when there is a first file, and again where it is gone."""

    def __init__(self) -> None:
        self._one_at_a_time = threading.Lock()
        self._process: subprocess.Popen[bytes] | None = None
        self._owner = 0

    def opened(self, kind: str, data: bytes) -> bytes:
        """What ``child`` says of a file. Raises TooSlow, Stopped, or OSError."""
        with self._one_at_a_time:
            until = time.monotonic() + PATIENCE_S
            try:
                return self._ask(kind, data, until)
            except (BrokenPipeError, EOFError):  # it ends when it has had nothing to do for long
                self._end()
            try:
                return self._ask(kind, data, until)
            except EOFError as error:
                self._end()
                raise Stopped from error

    def close(self) -> None:
        """End it. The next file starts another."""
        with self._one_at_a_time:
            self._end()

    def _ask(self, kind: str, data: bytes, until: float) -> bytes:
        process = self._running()
        assert process.stdin is not None
        assert process.stdout is not None
        into, out = process.stdin.fileno(), process.stdout.fileno()
        try:
            _write(into, FRAME.pack(kind.encode(), len(data)) + data, until)
            said, length = FRAME.unpack(_read(out, FRAME.size, until))
            answer = _read(out, length, until)
        except TimeoutError as error:
            self._end()
            raise TooSlow from error
        if said.rstrip(b"\0") != b"done":
            raise Stopped
        return answer

    def _running(self) -> subprocess.Popen[bytes]:
        """The process; not that of whoever made a copy of us, whose pipes it is."""
        if self._owner != os.getpid() or (self._process and self._process.poll() is not None):
            self._end()
        if self._process is None:
            self._process = subprocess.Popen(
                [sys.executable, "-P", "-m", f"{__package__}.child"],
                stdin=subprocess.PIPE,
                stdout=subprocess.PIPE,
                stderr=subprocess.DEVNULL,
                bufsize=0,
                start_new_session=True,  # so that it can be ended with all that it has made
            )
            self._owner = os.getpid()
        return self._process

    def _end(self) -> None:
        process, self._process = self._process, None
        if process is None:
            return
        if self._owner == os.getpid() and process.poll() is None:
            os.killpg(process.pid, signal.SIGKILL)
            process.wait()
        for pipe in (process.stdin, process.stdout):
            if pipe is not None:
                pipe.close()


def _write(into: int, data: bytes, until: float) -> None:
    os.set_blocking(into, False)
    rest = memoryview(data)
    while rest:
        _, ready, _ = select.select([], [into], [], max(0.0, until - time.monotonic()))
        if not ready:
            raise TimeoutError
        rest = rest[os.write(into, rest[:_A_PIECE]) :]


def _read(out: int, length: int, until: float) -> bytes:
    pieces: list[bytes] = []
    while length:
        ready, _, _ = select.select([out], [], [], max(0.0, until - time.monotonic()))
        if not ready:
            raise TimeoutError
        piece = os.read(out, min(length, _A_PIECE))
        if not piece:
            raise EOFError
        pieces.append(piece)
        length -= len(piece)
    return b"".join(pieces)


NURSERY = Nursery()
atexit.register(NURSERY.close)
