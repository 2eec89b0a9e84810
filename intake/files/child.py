"""Opens one file of a stranger's: run as a process of its own, which may fail without harm.

``python -P -m bendreply.intake.files.child KIND``: the file on standard input, its contents as
JSON on standard output. Memory, time and writing are limited where the system has such limits.
"""

from __future__ import annotations

import logging
import sys

from .contents import MOST_SECONDS, TOO_MUCH, Contents

MOST_MEMORY = 1 << 30
"""Bytes of address space; a workbook at our limits takes a fifth of that."""
# Both readers would load these for what nobody needs here; they take time and memory.
_NOT_NEEDED = ("numpy", "lxml", "PIL")


def main(kind: str) -> int:
    """Read the file on standard input and print what is in it."""
    data = sys.stdin.buffer.read()
    logging.disable(logging.CRITICAL)
    for name in _NOT_NEEDED:
        sys.modules[name] = None  # type: ignore[assignment]  # makes "import" say it is not there
    sys.stdout.buffer.write(_contents(kind, data).packed())
    sys.stdout.flush()
    return 0


def _contents(kind: str, data: bytes) -> Contents:
    try:
        if kind == "workbook":
            from .workbook import read_workbook as reader
        else:
            from .pdf import read_pdf as reader
    except ModuleNotFoundError as error:
        package = (error.name or "").partition(".")[0]
        return Contents(why_unread=f"reading it needs {package}: pip install {package}")
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
    sys.exit(main(sys.argv[1]))
