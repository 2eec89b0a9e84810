"""Messages whose asked-for sizes stand in double square brackets, one a line ('\\n' is a break)."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

_MARKED = re.compile(r"\[\[(.*?)\]\]", re.DOTALL)


@dataclass(frozen=True, slots=True)
class Marked:
    """A message without its brackets, and where they were."""

    text: str
    asked: tuple[tuple[int, int], ...]

    def asks_at(self, place: int) -> bool:
        """Whether what stands at a place is asked for."""
        return any(begin <= place < end for begin, end in self.asked)


def messages(file: Path) -> Iterator[Marked]:
    """Every message of a file, in order."""
    for line in file.read_text("utf-8").splitlines():
        if line.strip():
            yield marked(line.replace("\\n", "\n"))


def marked(line: str) -> Marked:
    """One message taken apart.

    >>> marked("not [[38]], 42").asked
    ((4, 6),)
    """
    text, asked, at = "", [], 0
    for found in _MARKED.finditer(line):
        text += line[at : found.start()]
        asked.append((len(text), len(text) + len(found[1])))
        text += found[1]
        at = found.end()
    return Marked(text + line[at:], tuple(asked))
