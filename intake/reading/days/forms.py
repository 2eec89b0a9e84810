"""The ways of writing a day: in figures, with a month's name, or counted from the mail."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date, timedelta

from dateutil.relativedelta import relativedelta, weekday

from ..text.phrases import Words
from . import day_words as d
from . import spelled
from .counted import (
    Counted,
    coming,
    day_of,
    feast,
    nth,
    on_weekday,
    part,
    span,
    week,
    year_at,
)
from .written import Kind, Written

_FOLLOW = frozenset(("/", "-", ".", "º", "°")).union(d.SUFFIXES, d.OF_THE, d.MONTHS)
_INCH_PARTS = frozenset((2, 4, 8, 16, 32, 64))
BEGINS: frozenset[str] = frozenset().union(
    d.WEEKDAYS, d.MONTHS, spelled.STARTS, ("week",), d.ENDS, d.MIDDLES, d.BEGINNINGS,
    d.WEEK_NUMBERS, d.FEASTS, d.IN_SPAN,
)  # fmt: skip
"""Every word, besides figures, that a day can begin with."""
_WHOLE = 8
"""Figures of a day written in one: 20261204."""
_MOST_OF_A_YEAR = 270
_FAR_AHEAD = 1000
"""[days] A delivery further away was read in the wrong order."""


@dataclass(slots=True)
class Calendar:
    """Reads days from the point of view of one mail."""

    words: Words
    sent_on: date | None
    month_first: bool
    sure_order: bool
    """Whether the sender's order of day and month is known."""
    plain: str = field(default="", repr=False)

    def at(self, index: int) -> Written | None:
        """The day written at that word, or None."""
        word = self.words.at(index)
        if word.isdecimal():
            return self._figures(index) or self._day_month(index, index)
        if word in d.WEEKDAYS:
            return self._weekday(index)
        if word in d.MONTHS:
            return self._month_day(index)
        if word in spelled.STARTS:
            return self._spelled(index)
        if word == "week" and self.words.at(index + 1) == "of":
            return self._week_around(index)
        return self._counted(index, word)

    def may_begin(self, index: int) -> bool:
        """Whether a day may be written at that word: most figures of a mail are none."""
        word = self.words.text[index]
        if word.isdecimal():
            return len(word) == _WHOLE or self.words.text[index + 1] in _FOLLOW
        return word in BEGINS

    def _counted(self, index: int, word: str) -> Written | None:
        found: Counted = None
        if word in d.ENDS or word in d.MIDDLES or word in d.BEGINNINGS:
            found = part(self.words, index, self.sent_on)
        elif word in d.WEEK_NUMBERS:
            found = week(self.words, index, self.sent_on)
        elif word in d.FEASTS and self.sent_on is not None:
            day = feast(word, self.sent_on)
            found = None if day is None else (index + 1, day)
        elif word in d.IN_SPAN:
            found = span(self.words, index, self.sent_on)
        return None if found is None else Written(index, found[0], "counted", (found[1],))

    # --- figures --------------------------------------------------------------------------------

    def _glued(self, index: int) -> bool:
        """Whether a word follows the one before it without a space."""
        start = self.words.start
        return 0 < index < len(start) and start[index] == self.words.end[index - 1]

    def _figures(self, at: int) -> Written | None:
        """'2026-12-04', '12/4/26', '04.12.2026', '12/4', '26.12.'."""
        text = self.words.text
        whole, mark = text[at], text[at + 1]
        if len(whole) == _WHOLE and whole.startswith("20"):
            day = day_of(int(whole[:4]), int(whole[4:6]), int(whole[6:]))
            return self._written(at, at + 1, "figures", day)
        if mark not in ("/", "-", ".") or not text[at + 2].isdecimal():
            return None
        if not (self._glued(at + 1) and self._glued(at + 2)) or self._continues(at):
            return None
        end = at + 3
        third = ""
        if text[end] == mark and text[end + 1].isdecimal() and self._glued(end):
            if not self._glued(end + 1):
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
        return marked and self._glued(end) and self._glued(end + 1)

    def _continues(self, at: int) -> bool:
        """Whether the figures go on to the left: '1-10/2', '3.10/12'."""
        return self._glued(at) and self.words.at(at - 1) in ("/", "-", ".", ",", "$", "#")

    def _full(
        self, at: int, end: int, parts: tuple[str, str, str], *, dotted: bool
    ) -> Written | None:
        a, b, c = (int(part) for part in parts)
        if len(parts[0]) == 4:
            return self._written(at, end, "figures", day_of(a, b, c))
        if max(len(part) for part in parts[:2]) > 2 or len(parts[2]) not in (2, 4):
            return None
        year = c if len(parts[2]) == 4 else 2000 + c
        day_first, month_first = day_of(year, b, a), day_of(year, a, b)
        if dotted:
            backwards = day_of(2000 + a, b, c) if len(parts[2]) == 2 else None  # '26.11.30
            if self._is_plausible(backwards) and not self._is_plausible(day_first):
                return self._written(at, end, "figures", backwards)
            return self._written(at, end, "figures", day_first or month_first)
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
            return self._written(at, end, "short", coming(b, a, self.sent_on), fraction=True)
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
            return self._written(at, end, kind, first or second)
        if self._is_past(first) and not self._is_past(second):
            first, second = second, first
        elif kind == "short" and self._is_far(first) and not self._is_far(second):
            first, second = second, first  # "11/12", written on 25 November: hardly of next year
        elif self.sure_order or (kind == "short" and self._is_far(second)):
            return self._written(at, end, kind, first)
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

    # --- a month's name -------------------------------------------------------------------------

    def _day_month(self, at: int, start: int) -> Written | None:
        """'4 December 2026', '4th of Dec', '4. Dezember', '14-nov-2025', '4 de diciembre'."""
        text = self.words.text
        if len(text[at]) > 2:
            return None
        if self._glued(at) and text[at - 1] in (".", ",", "/", "-"):
            return None
        number, after = int(text[at]), at + 1
        ordinal = text[after] in d.SUFFIXES and self._glued(after)
        after += ordinal
        point = text[after] == "." and self._glued(after)
        after += point or text[after] in ("º", "°")
        month = after
        while text[month] in d.OF_THE and month < after + 2:
            month += 1
        if text[month] in d.MONTHS:
            return self._month(start, month + 1, text[month], number)
        if ordinal and text[after] not in d.MEASURES:
            the = text[at - 1] in ("the", "le", "el", "den", "il", "de") or start < at
            return self._on_nth(start, after, number) if the else None
        if point and text[at - 1] in ("zum", "am", "bis", "den", "spatestens"):
            return None if text[after].isdecimal() else self._on_nth(start, after, number)
        return None

    def _month_day(self, at: int) -> Written | None:
        """'December 4, 2026', 'Dec. 4th', 'May first'."""
        words = self.words
        after = at + 1 + (words.at(at + 1) == ".")
        after += words.at(after) in ("-", "the")
        word = words.at(after)
        if word.isdecimal():
            number, after = (int(word) if len(word) <= 2 else 0), after + 1
        else:
            number, after, ordinal = spelled.day_in_words(words, after)
            number *= ordinal
        if not number:
            return None
        if (
            words.at(after) in (".", ",")
            and words.at(after + 1).isdecimal()
            and self._glued(after + 1)
        ):
            return None  # "Mar 1.5" is no day
        after += words.at(after) in d.SUFFIXES and self._glued(after)
        if words.at(after) in d.MEASURES - {"by", "in"}:
            return None
        return self._month(at, after, words.at(at), number)

    def _month(self, start: int, after: int, name: str, number: int) -> Written | None:
        month = d.MONTHS[name]
        year, end = year_at(self.words, after, self.sent_on)
        day = day_of(year, month, number) if year else coming(month, number, self.sent_on)
        return self._written(start, end, "named", day)

    def _spelled(self, at: int) -> Written | None:
        """'The first of May', 'zum zwanzigsten November', 'le quinze décembre'."""
        words = self.words
        number, after, ordinal = spelled.day_in_words(words, at)
        after += words.at(after) in ("of", "de")
        month = words.at(after)
        if not number or month not in d.MONTHS or not (ordinal or len(month) > 3):
            return None
        return self._month(at, after + 1, month, number)

    # --- counted from the mail ------------------------------------------------------------------

    def _written(
        self, start: int, end: int, kind: Kind, day: date | None, *, fraction: bool = False
    ) -> Written | None:
        return None if day is None else Written(start, end, kind, (day,), fraction=fraction)

    def _weekday(self, at: int) -> Written | None:
        """'Friday', 'next Friday'; 'Friday 4 December' is the day with its name before it."""
        words, after = self.words, at + 1
        while (
            words.at(after) in (",", "the", "den", "dem", "le", "el", "il", ".") and after < at + 4
        ):
            after += 1
        named = d.WEEKDAYS[words.at(at)]
        dated = None
        if words.at(after).isdecimal():
            dated = self._figures(after) or self._day_month(after, at)
        elif words.at(after) in d.MONTHS:
            dated = self._month_day(after)
        elif words.at(after) in spelled.STARTS:
            dated = self._spelled(after)
        if dated is not None:
            return self._checked(at, dated, named)
        if self.sent_on is None:
            return None
        day = on_weekday(named, self.sent_on, following=words.at(at - 1) == "next")
        return self._written(at, at + 1, "counted", day)

    def _on_nth(self, start: int, end: int, number: int) -> Written | None:
        day = nth(number, self.sent_on) if self.sent_on is not None else None
        return self._written(start, end, "counted", day)

    def _week_around(self, at: int) -> Written | None:
        """'The week of December 7' ends on its Friday."""
        first = at + 2 + (self.words.at(at + 2) == "the")
        inside = self.at(first) if self.words.at(first) not in d.WEEK_NUMBERS else None
        if inside is None:
            return None
        friday = inside.days[0] + timedelta(days=4 - inside.days[0].weekday())
        return self._written(at, inside.end, inside.kind, friday)

    def _checked(self, at: int, dated: Written, named: weekday) -> Written:
        """'Friday 5 December' where the 5th is a Saturday leaves a doubt."""
        day = dated.days[0]
        if day.weekday() == named.weekday or len(dated.days) > 1:
            return Written(at, dated.end, dated.kind, dated.days, dated.why)
        near = min(
            (day + relativedelta(weekday=named(step)) for step in (-1, 1)),
            key=lambda other: abs(other - day),
        )
        why = f"{day.isoformat()} is a {day:%A}, another day of the week than the one named"
        return Written(at, dated.end, dated.kind, (day, near), why)
