"""The ways of writing a day besides figures: with a month's name, or counted from the mail."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta

from dateutil.relativedelta import relativedelta, weekday

from . import day_words as d
from . import spelled
from .counted import (
    Counted,
    coming,
    day_of,
    feast,
    in_a_month,
    nth,
    on_weekday,
    part,
    span,
    week,
    year_at,
)
from .in_figures import WHOLE, DaysInFigures
from .nth_weekday import nth_weekday
from .written import Written

_FOLLOW = frozenset(("/", "-", ".", "º", "°")).union(d.SUFFIXES, d.OF_THE, d.MONTHS)
_BY = frozenset("by before on delivery deliver delivered latest until till : ca around".split())
_BEHIND_NTH = frozenset(
    ("", "\n", "\n\n", *". , ; ) ? ! or at latest please if and thanks".split())
)
"""'By 24th', 'delivery 24th or earlier', but not 'by 2nd shift'."""
BEGINS: frozenset[str] = frozenset().union(
    d.WEEKDAYS, d.MONTHS, spelled.STARTS, ("week",), d.ENDS, d.MIDDLES, d.BEGINNINGS,
    d.WEEK_NUMBERS, d.FEASTS, d.MONTH_ENDS, ("month",), d.IN_SPAN, d.TODAY,
)  # fmt: skip
"""Every word, besides figures, that a day can begin with."""


@dataclass(slots=True)
class Calendar(DaysInFigures):
    """Reads days from the point of view of one mail."""

    def at(self, index: int) -> Written | None:
        """The day written at that word, or None."""
        word = self.words.at(index)
        if word.isdecimal():
            return self.in_figures(index) or self._day_month(index, index)
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
            return len(word) == WHOLE or self.words.text[index + 1] in _FOLLOW
        return word in BEGINS

    def _counted(self, index: int, word: str) -> Written | None:
        found: Counted = None
        if word in d.ENDS or word in d.MIDDLES or word in d.BEGINNINGS:
            found = part(self.words, index, self.sent_on)
        elif word in d.WEEK_NUMBERS:
            found = week(self.words, index, self.sent_on)
        elif word in d.FEASTS and self.sent_on is not None:
            day = feast(self.words, index, self.sent_on)
            found = None if day is None else (index + 1, day)
        elif word == "month" and self.words.at(index + 1) == "end":
            found = part(self.words, index + 1, self.sent_on, whole=True)
        elif word in d.MONTH_ENDS:
            found = part(self.words, index, self.sent_on, whole=True)
        elif word in d.IN_SPAN:
            found = span(self.words, index, self.sent_on)
        elif word in d.TODAY and self.sent_on is not None and self._is_counted_from(index):
            found = index + 1, self.sent_on  # "two weeks from today": counted on in shifted.py
        return None if found is None else Written(index, found[0], "counted", (found[1],))

    def _is_counted_from(self, index: int) -> bool:
        return self.words.at(index - 1) == "from" and self.words.at(index - 2) in d.SPANS

    # --- a month's name -------------------------------------------------------------------------

    def _day_month(self, at: int, start: int) -> Written | None:
        """'4 December 2026', '4th of Dec', '4. Dezember', '14-nov-2025', '4 de diciembre'."""
        text = self.words.text
        if len(text[at]) > 2:
            return None
        if self.glued(at) and text[at - 1] in (".", ",", "/", "-"):
            return None
        number, after = int(text[at]), at + 1
        ordinal = text[after] in d.SUFFIXES and self.glued(after)
        after += ordinal
        point = text[after] == "." and self.glued(after)
        after += point or text[after] in ("º", "°")
        month = after
        while text[month] in d.OF_THE and month < after + 2:
            month += 1
        if text[month] in d.MONTHS:
            return self._month(start, month + 1, text[month], number)
        found = in_a_month(self.words, after, number, self.sent_on)
        if found is not None:
            return Written(start, found[0], "counted", (found[1],))
        if ordinal and text[after] not in d.MEASURES:
            the = text[at - 1] in ("the", "le", "el", "den", "il", "de") or start < at
            the = the or (text[at - 1] in _BY and text[after] in _BEHIND_NTH)
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
            and self.glued(after + 1)
        ):
            return None  # "Mar 1.5" is no day
        after += words.at(after) in d.SUFFIXES and self.glued(after)
        if words.at(after) in d.MEASURES - {"by", "in"}:
            return None
        return self._month(at, after, words.at(at), number)

    def _month(self, start: int, after: int, name: str, number: int) -> Written | None:
        month = d.MONTHS[name]
        year, end = year_at(self.words, after, self.sent_on)
        day = day_of(year, month, number) if year else coming(month, number, self.sent_on)
        return self.written(start, end, "named", day)

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

    def _weekday(self, at: int) -> Written | None:
        """'Friday', 'next Friday'; 'Friday 4 December' is the day with its name before it."""
        words, after = self.words, at + 1
        while (
            words.at(after) in (",", "the", "den", "dem", "le", "el", "il", ".") and after < at + 4
        ):
            after += 1
        named = d.WEEKDAYS[words.at(at)]
        placed = nth_weekday(words, at, named, self.sent_on)
        if placed is not None:
            return placed
        dated = None
        if words.at(after).isdecimal():
            dated = self.in_figures(after) or self._day_month(after, at)
        elif words.at(after) in d.MONTHS:
            dated = self._month_day(after)
        elif words.at(after) in spelled.STARTS:
            dated = self._spelled(after)
        if dated is not None:
            return self._checked(at, dated, named)
        if self.sent_on is None:
            return None
        day = on_weekday(named, self.sent_on, following=words.at(at - 1) == "next")
        return self.written(at, at + 1, "counted", day)

    def _on_nth(self, start: int, end: int, number: int) -> Written | None:
        day = nth(number, self.sent_on) if self.sent_on is not None else None
        return self.written(start, end, "counted", day)

    def _week_around(self, at: int) -> Written | None:
        """'The week of December 7' ends on its Friday."""
        first = at + 2 + (self.words.at(at + 2) == "the")
        inside = self.at(first) if self.words.at(first) not in d.WEEK_NUMBERS else None
        if inside is None:
            return None
        friday = inside.days[0] + timedelta(days=4 - inside.days[0].weekday())
        return self.written(at, inside.end, inside.kind, friday)

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
