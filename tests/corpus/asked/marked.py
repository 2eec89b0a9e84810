"""Messages in which it is marked what is asked for, one a line ('\\n' is a break).

In most files the sizes asked for stand in double square brackets. In ``roles/*.txt`` each figure of
them says what it is: ``<o 38>`` OD, ``<w 1.5>`` wall, ``<r 4 1/2">`` radius, ``<n two>`` mandrels,
``<t 3 weeks>`` by when, ``<x 35 ID>`` a size put in another form.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

ROLE_FILES = "roles/*.txt"
NONE, LEFT_OUT = "none", "left out"
_MARKED = re.compile(r"\[\[(.*?)\]\]", re.DOTALL)
_ROLE = re.compile(r"<([owrntx]) ([^<>]*)>")
_ROLES = {"o": "od", "w": "wall", "r": "clr", "n": "count", "t": NONE, "x": LEFT_OUT}


@dataclass(frozen=True, slots=True)
class Marked:
    """A message without its brackets, and where they were."""

    text: str
    asked: tuple[tuple[int, int], ...]

    def asks_at(self, place: int) -> bool:
        """Whether what stands at a place is asked for."""
        return any(begin <= place < end for begin, end in self.asked)


@dataclass(frozen=True, slots=True)
class Named:
    """A message without its marks, and what they said of which places."""

    text: str
    roles: tuple[tuple[int, int, str], ...]

    def role_at(self, begin: int, end: int) -> str:
        """What the figure there is: a length, a count, 'none' or 'left out'."""
        found = (role for first, last, role in self.roles if first < end and begin < last)
        return next(found, NONE)


def messages(file: Path) -> Iterator[Marked]:
    """Every message of a file, in order."""
    return map(marked, _lines(file))


def named_messages(file: Path) -> Iterator[Named]:
    """Every message of a file with roles, in order."""
    return map(named, _lines(file))


def marked(line: str) -> Marked:
    """One message taken apart.

    >>> marked("not [[38]], 42").asked
    ((4, 6),)
    """
    text, asked = "", []
    for part, inside in _parts(line, _MARKED):
        if inside is not None:
            asked.append((len(text), len(text) + len(part)))
        text += part
    return Marked(text, tuple(asked))


def named(line: str) -> Named:
    """One message with roles taken apart.

    >>> named("<n two> for <o 38>").roles
    ((0, 3, 'count'), (8, 10, 'od'))
    """
    text, roles = "", []
    for part, inside in _parts(line, _ROLE):
        if inside is not None:
            roles.append((len(text), len(text) + len(part), _ROLES[inside]))
        text += part
    return Named(text, tuple(roles))


def _parts(line: str, mark: re.Pattern[str]) -> Iterator[tuple[str, str | None]]:
    """What stands outside of marks (None), and inside of them with the first group of the mark."""
    at = 0
    for found in mark.finditer(line):
        yield line[at : found.start()], None
        yield found[mark.groups], found[1]
        at = found.end()
    yield line[at:], None


def _lines(file: Path) -> Iterator[str]:
    for line in file.read_text("utf-8").splitlines():
        if line.strip():
            yield line.replace("\\n", "\n")
