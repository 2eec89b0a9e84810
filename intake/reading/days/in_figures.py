"""Days written in figures, seen from one mail: '2026-12-04', '12/4/26', '04.12.2026', '26.12.'."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date, timedelta

from ..text.phrases import Words
from . import day_words as d
from .counted import (
    coming,
    day_of,
)
from .written import Kind, Written

_INCH_PARTS = frozenset((2, 4, 8, 16, 32, 64))
WHOLE = 8
"""Figures of a day written in one: 20261204."""
_MOST_OF_A_YEAR = 270
_FAR_AHEAD = 1000
"""[days] A delivery further away was read in the wrong order."""


@dataclass(slots=True)
class DaysInFigures:
    """Reads days in figures from the point of view of one mail."""

    words: Words
    sent_on: date | None
    month_first: bool
    sure_order: bool
    """Whether the sender's order of day and month is known."""
    plain: str = field(default="", repr=False)

    def in_figures(self, at: int) -> Written | None:
        """'2026-12-04', '12/4/26', '04.12.2026', '12/4', '26.12.'."""
        text = self.words.text
        whole, mark = text[at], text[at + 1]
        if len(whole) == WHOLE and whole.startswith("20"):
            day = day_of(int(whole[:4]), int(whole[4:6]), int(whole[6:]))
            return self.written(at, at + 1, "figures", day)
        if mark not in ("/", "-", ".") or not text[at + 2].isdecimal():
            return None
        if not (self.glued(at + 1) and self.glued(at + 2)) or self._continues(at):
            return None
        end = at + 3
        third = ""
        if text[end] == mark and text[end + 1].isdecimal() and self.glued(end):
            if not self.glued(end + 1):
                return None
            third, end = text[end + 1], end + 2
        if self._goes_on(end):
            return None
        parts = (whole, text[at + 2], third)
        if third:
            return self._full(at, end, parts, dotted=mark == ".")
        if mark == "-" and not (
            (len(parts[1]) == 2 and text[at - 1] in d.LIMITS)
            or self.words.at(at - 1) in d.DASHED_BEHIND
        ):
            return None
        return self._without_year(at, end, parts, mark)

    def _goes_on(self, end: int) -> bool:
        """Whether the figures go on to the right: '1/2/3/4'."""
        marked = self.words.at(end) in ("/", "-", ".") and self.words.at(end + 1).isdecimal()
        return marked and self.glued(end) and self.glued(end + 1)

    def _continues(self, at: int) -> bool:
        """Whether the figures go on to the left: '1-10/2', '3.10/12'."""
        return self.glued(at) and self.words.at(at - 1) in ("/", "-", ".", ",", "$", "#")

    def _full(
        self, at: int, end: int, parts: tuple[str, str, str], *, dotted: bool
    ) -> Written | None:
        a, b, c = (int(part) for part in parts)
        if len(parts[0]) == 4:
            return self.written(at, end, "figures", day_of(a, b, c))
        if max(len(part) for part in parts[:2]) > 2 or len(parts[2]) not in (2, 4):
            return None
        year = c if len(parts[2]) == 4 else 2000 + c
        day_first, month_first = day_of(year, b, a), day_of(year, a, b)
        if dotted:
            backwards = day_of(2000 + a, b, c) if len(parts[2]) == 2 else None  # '26.11.30
            if self._is_plausible(backwards) and not self._is_plausible(day_first):
                return self.written(at, end, "figures", backwards)
            return self.written(at, end, "figures", day_first or month_first)
        return self._either(at, end, "figures", day_first, month_first)

    def _without_year(
        self, at: int, end: int, parts: tuple[str, str, str], mark: str
    ) -> Written | None:
        if len(parts[0]) > 2 or len(parts[1]) > 2 or self.words.at(end) in d.MEASURES:
            return None
        if self.words.at(at - 1) in d.TUBES:
            return None  # "für Rohr 25/2 mit Radius 75"
        a, b = int(parts[0]), int(parts[1])
        if mark == ".":
            if self.words.at(end) == ".":
                end += 1
            elif len(parts[1]) != 2:
                return None
            return self.written(at, end, "short", coming(b, a, self.sent_on), fraction=True)
        found = self._either(
            at, end, "short", coming(b, a, self.sent_on), coming(a, b, self.sent_on)
        )
        if found is None:
            return None
        fraction = b in _INCH_PARTS and a < 2 * b
        return Written(at, end, "short", found.days, found.why, fraction=fraction)

    def _either(
        self, at: int, end: int, kind: Kind, day_first: date | None, month_first: date | None
    ) -> Written | None:
        """A day whose figures may be swapped; the sender's habit decides, or leaves a doubt."""
        first, second = (month_first, day_first) if self.month_first else (day_first, month_first)
        if first is None or second is None or first == second:
            return self.written(at, end, kind, first or second)
        if self._is_past(first) and not self._is_past(second):
            first, second = second, first
        elif kind == "short" and self._is_far(first) and not self._is_far(second):
            first, second = second, first  # "11/12", written on 25 November: hardly of next year
        elif self.sure_order or (kind == "short" and self._is_far(second)):
            return self.written(at, end, kind, first)
        written = self.plain[self.words.start[at] : self.words.end[end - 1]]
        return Written(at, end, kind, (first, second), f"{written} may be day first or month first")

    def _is_past(self, day: date) -> bool:
        return self.sent_on is not None and day < self.sent_on

    def _is_far(self, day: date) -> bool:
        return not self._is_plausible(day, _MOST_OF_A_YEAR)

    def _is_plausible(self, day: date | None, far: int = _FAR_AHEAD) -> bool:
        if day is None or self.sent_on is None:
            return day is not None
        return timedelta(0) <= day - self.sent_on <= timedelta(days=far)

    def glued(self, index: int) -> bool:
        """Whether a word follows the one before it without a space."""
        start = self.words.start
        return 0 < index < len(start) and start[index] == self.words.end[index - 1]

    def written(
        self, start: int, end: int, kind: Kind, day: date | None, *, fraction: bool = False
    ) -> Written | None:
        """A day that can mean no other; None where there is no such day."""
        return None if day is None else Written(start, end, kind, (day,), fraction=fraction)
