"""What waits, held ready: lines are made once and again only for inquiries that have changed.

Thousands may wait, and making a line takes a fraction of a millisecond. So the board asks the
store first whether anything has happened since, then which inquiries have another version.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from threading import Lock
from typing import TYPE_CHECKING

from .lines import Line, line_of

if TYPE_CHECKING:
    from ..store import Store

AT_ONCE = 500
"""Rows fetched with one statement."""


@dataclass(frozen=True, slots=True)
class Wanted:
    """A choice among what waits; empty fields let everything through."""

    answer: str = ""
    doubt: str = ""
    """A field that is in doubt or missing, or 'none'."""
    text: str = ""

    @classmethod
    def of(cls, query: Mapping[str, str]) -> Wanted:
        """As an address spells it."""
        return cls(
            query.get("answer", "")[:40], query.get("doubt", "")[:40], query.get("text", "")[:200]
        )

    def takes(self, line: Line) -> bool:
        """Whether a line is among those wanted."""
        if self.answer and self.answer not in line.answers:
            return False
        if self.doubt == "none" and line.open_fields:
            return False
        if self.doubt and self.doubt != "none" and self.doubt not in line.open_fields:
            return False
        return all(word in line.searched for word in self.text.casefold().split())

    def query(self) -> dict[str, str]:
        """For an address; what is empty is left out."""
        spelled = {"answer": self.answer, "doubt": self.doubt, "text": self.text}
        return {key: value for key, value in spelled.items() if value}


@dataclass(frozen=True, slots=True)
class Waiting:
    """All that waits at one moment, most urgent first, and how many of each kind."""

    lines: tuple[Line, ...] = ()
    answers: Mapping[str, int] = field(default_factory=Counter)
    open_fields: Mapping[str, int] = field(default_factory=Counter)

    def chosen(self, wanted: Wanted) -> tuple[Line, ...]:
        """The lines wanted, in order."""
        return tuple(filter(wanted.takes, self.lines)) if wanted != Wanted() else self.lines

    def around(self, number: int, wanted: Wanted) -> tuple[int | None, int | None]:
        """The inquiries before and after one, among those wanted.

        For one that waits no longer: none before, the most urgent after.
        """
        numbers = [line.id for line in self.chosen(wanted)]
        if number not in numbers:
            return None, numbers[0] if numbers else None
        at = numbers.index(number)
        return (
            numbers[at - 1] if at else None,
            numbers[at + 1] if at + 1 < len(numbers) else None,
        )


class Board:
    """What waits in one store. Safe to ask from several threads."""

    def __init__(self, store: Store) -> None:
        self._store = store
        self._lines: dict[int, Line] = {}
        self._state: tuple[int, int] | None = None
        self._waiting = Waiting()
        self._lock = Lock()

    def waiting(self) -> Waiting:
        """What waits now."""
        with self._lock, self._store.reading() as book:
            state = book.last_event()
            if state == self._state:
                return self._waiting
            order = book.waiting()
            stale = [
                number
                for number, version in order
                if number not in self._lines or self._lines[number].version != version
            ]
            for some in _in_pieces(stale):
                self._lines |= {row.id: line_of(row) for row in book.rows(some)}
            # A line of an inquiry that waits no longer would be kept for ever.
            self._lines = {number: self._lines[number] for number, _ in order}
            lines = tuple(self._lines.values())
            self._waiting = Waiting(
                lines,
                Counter(answer for line in lines for answer in line.answers),
                Counter(name for line in lines for name in line.open_fields or ("none",)),
            )
            self._state = state
            return self._waiting


def _in_pieces(numbers: list[int]) -> Iterator[list[int]]:
    for start in range(0, len(numbers), AT_ONCE):
        yield numbers[start : start + AT_ONCE]
