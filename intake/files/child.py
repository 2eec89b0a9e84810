"""Opens files of strangers: run as a process of its own, which may fail without harm.

``python -P -m bendreply.intake.files.child KIND`` opens one: the file on standard input, its
contents as JSON on standard output. Without a kind it waits for one file after another, each with
a ``FRAME`` before it, and makes a copy of itself for each. Memory, time and writing are limited
where the system has such limits.
"""

from __future__ import annotations

import logging
import os
import select
import sys
from collections.abc import Callable

from .contents import FRAME, MOST_SECONDS, TOO_MUCH, Contents

_A_PIECE = 1 << 16
IDLE_S = 60.0
"""After so long without a file, the process that waits for one ends."""
MOST_MEMORY = 1 << 30
"""Bytes of address space; a workbook at our limits takes a fifth of that."""
# Both readers would load these for what nobody needs here; they take time and memory.
_NOT_NEEDED = ("numpy", "lxml", "PIL")


def main(kind: str | None) -> int:
    """Open the file on standard input, or all that come."""
    logging.disable(logging.CRITICAL)
    for name in _NOT_NEEDED:
        sys.modules[name] = None  # type: ignore[assignment]  # makes "import" say it is not there
    if kind is None:
        return _serve()
    sys.stdout.buffer.write(_contents(kind, sys.stdin.buffer.read()).packed())
    sys.stdout.flush()
    return 0


def _serve() -> int:
    """Open files until there are none any more, or none for long."""
    into, out = sys.stdin.fileno(), sys.stdout.fileno()
    while select.select([into], [], [], IDLE_S)[0]:
        frame = _all_of(into, FRAME.size)
        if len(frame) < FRAME.size:
            return 0
        kind, length = FRAME.unpack(frame)
        data = _all_of(into, length)
        if len(data) < length:
            return 0
        kind = kind.rstrip(b"\0").decode()
        _reader_of(kind)  # loaded here once, so that each copy has it
        said, answer = _in_a_copy(kind, data)
        rest = memoryview(FRAME.pack(said, len(answer)) + answer)
        while rest:
            rest = rest[os.write(out, rest) :]
    return 0


def _in_a_copy(kind: str, data: bytes) -> tuple[bytes, bytes]:
    """One file opened in a copy of this process: "done" and its contents, or "stopped"."""
    out, into = os.pipe()
    copy = os.fork()
    if copy == 0:
        status = 1
        try:
            os.close(out)
            os.closerange(0, 2)  # the next file, and what is said of this one, are not its to see
            with os.fdopen(into, "wb") as pipe:
                pipe.write(_contents(kind, data).packed())
            status = 0
        finally:
            os._exit(status)  # whatever happens, the copy must not go on in our place
    os.close(into)
    with os.fdopen(out, "rb") as pipe:
        answer = pipe.read()
    _, status = os.waitpid(copy, 0)
    return (b"stopped", b"") if os.WIFSIGNALED(status) else (b"done", answer)


def _all_of(into: int, length: int) -> bytes:
    """So many bytes, fewer only at the end of what there is."""
    pieces: list[bytes] = []
    while length and (piece := os.read(into, min(length, _A_PIECE))):
        pieces.append(piece)
        length -= len(piece)
    return b"".join(pieces)


Reader = Callable[[bytes], Contents]


def _reader_of(kind: str) -> Reader | Contents:
    """What reads such files; or why nothing does."""
    try:
        if kind == "workbook":
            from .workbook import read_workbook as reader
        else:
            from .pdf import read_pdf as reader
    except ModuleNotFoundError as error:
        package = (error.name or "").partition(".")[0]
        return Contents(why_unread=f"reading it needs {package}: pip install {package}")
    return reader


def _contents(kind: str, data: bytes) -> Contents:
    reader = _reader_of(kind)
    if isinstance(reader, Contents):
        return reader
    _limit()
    try:
        return reader(data)
    except (MemoryError, RecursionError):
        return Contents(why_unread=TOO_MUCH)
    except Exception as error:  # noqa: BLE001 - whatever a library makes of a stranger's bytes
        return Contents(why_unread=f"it is damaged ({type(error).__name__})")


def _limit() -> None:
    """Set the limits, once all that is needed was imported."""
    try:
        import resource
    except ImportError:  # Windows: there the time limit of whoever started us has to do
        return
    resource.setrlimit(resource.RLIMIT_AS, (MOST_MEMORY, MOST_MEMORY))
    resource.setrlimit(resource.RLIMIT_CPU, (MOST_SECONDS, MOST_SECONDS + 1))
    resource.setrlimit(resource.RLIMIT_FSIZE, (0, 0))
    resource.setrlimit(resource.RLIMIT_CORE, (0, 0))


if __name__ == "__main__":
    sys.exit(main(sys.argv[1] if len(sys.argv) > 1 else None))
