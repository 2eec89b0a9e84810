"""The ways of writing a day: in figures, with a month's name, or counted from the mail."""

from __future__ import annotations

from calendar import monthrange
from dataclasses import dataclass, field
from datetime import date, timedelta
from typing import Literal

from dateutil.easter import easter
from dateutil.relativedelta import TH, relativedelta, weekday

from . import date_words as d
from .phrases import Words

Kind = Literal["figures", "short", "named", "counted"]
"""With a year; without one; with a month's name; all else that counts from the mail."""
_INCH_PARTS = frozenset((2, 4, 8, 16, 32, 64))
_FAR_AHEAD = 1000
"""[days] A delivery further away was read in the wrong order."""


@dataclass(frozen=True, slots=True)
class Written:
    """A day as written: words ``start`` to ``end``, and the days it may mean, likeliest first."""

    start: int
    end: int
    kind: Kind
    days: tuple[date, ...]
    why: str = ""
    """Why there is more than one."""
    fraction: bool = False
    """'1/8' may as well be an eighth of an inch."""


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
        if word.isdigit():
            return self._figures(index) or self._day_month(index, index)
        if word in d.WEEKDAYS:
            return self._weekday(index)
        if word in d.MONTHS:
            return self._month_day(index)
        if word in d.ENDS or word in d.MIDDLES or word in d.BEGINNINGS:
            return self._part(index)
        if word in d.ORDINALS:
            return self._ordinal(index)
        if word in d.WEEK_NUMBERS:
            return self._week(index)
        if word in d.CHRISTMAS or word in d.EASTER or word in ("thanksgiving", "tomorrow"):
            return self._feast(index)
        return self._span(index) if word in d.IN_SPAN else None

    # --- figures --------------------------------------------------------------------------------

    def _glued(self, index: int) -> bool:
        """Whether a word follows the one before it without a space."""
        return (
            0 < index < len(self.words)
            and self.words.start[index] == self.words.end[index - 1]
        )

    def _figures(self, at: int) -> Written | None:
        """'2026-12-04', '12/4/26', '04.12.2026', '12/4', '26.12.'."""
        words = self.words
        mark = words.at(at + 1)
        if len(words.at(at)) == 8 and words.at(at).startswith("20"):
            whole = words.at(at)
            day = _day(int(whole[:4]), int(whole[4:6]), int(whole[6:]))
            return self._written(at, at + 1, "figures", day)
        if mark not in ("/", "-", ".") or not words.at(at + 2).isdigit():
            return None
        if not (self._glued(at + 1) and self._glued(at + 2)) or self._continues(at):
            return None
        end = at + 3
        third = ""
        if words.at(end) == mark and words.at(end + 1).isdigit() and self._glued(end):
            if not self._glued(end + 1):
                return None
            third, end = words.at(end + 1), end + 2
        if words.at(end) in ("/", "-", ".") and words.at(end + 1).isdigit() and self._glued(end + 1):
            if self._glued(end):
                return None
        parts = (words.at(at), words.at(at + 2), third)
        if third:
            return self._full(at, end, parts, dotted=mark == ".")
        return self._without_year(at, end, parts, mark) if mark != "-" else None

    def _continues(self, at: int) -> bool:
        """Whether the figures go on to the left: '1-10/2', '3.10/12'."""
        return self._glued(at) and self.words.at(at - 1) in ("/", "-", ".", ",", "$", "#")

    def _full(self, at: int, end: int, parts: tuple[str, str, str], *, dotted: bool) -> Written | None:
        a, b, c = (int(part) for part in parts)
        if len(parts[0]) == 4:
            return self._written(at, end, "figures", _day(a, b, c))
        if max(len(part) for part in parts[:2]) > 2 or len(parts[2]) not in (2, 4):
            return None
        year = c if len(parts[2]) == 4 else 2000 + c
        day_first, month_first = _day(year, b, a), _day(year, a, b)
        if dotted:
            backwards = _day(2000 + a, b, c) if len(parts[2]) == 2 else None  # '26.11.30
            if self._is_plausible(backwards) and not self._is_plausible(day_first):
                return self._written(at, end, "figures", backwards)
            return self._written(at, end, "figures", day_first or month_first)
        return self._either(at, end, "figures", day_first, month_first)

    def _without_year(
        self, at: int, end: int, parts: tuple[str, str, str], mark: str
    ) -> Written | None:
        if len(parts[0]) > 2 or len(parts[1]) > 2 or self.words.at(end) in d.MEASURES:
            return None
        a, b = int(parts[0]), int(parts[1])
        if mark == ".":
            if self.words.at(end) == ".":
                end += 1
            elif len(parts[1]) != 2:
                return None
            return self._written(at, end, "short", self._coming(b, a), fraction=True)
        found = self._either(at, end, "short", self._coming(b, a), self._coming(a, b))
        if found is None:
            return None
        fraction = b in _INCH_PARTS and a < 2 * b
        return Written(at, end, "short", found.days, found.why, fraction=fraction)

    def _either(
        self, at: int, end: int, kind: Kind, day_first: date | None, month_first: date | None
    ) -> Written | None:
        """A day whose figures may be swapped; the sender's habit decides, or leaves a doubt."""
        first, second = (
            (month_first, day_first) if self.month_first else (day_first, month_first)
        )
        if first is None or second is None or first == second:
            return self._written(at, end, kind, first or second)
        if self._is_past(first) and not self._is_past(second):
            first, second = second, first
        elif self.sure_order or (kind == "short" and not self._is_plausible(second, 270)):
            return self._written(at, end, kind, first)
        written = self.plain[self.words.start[at] : self.words.end[end - 1]]
        return Written(
            at, end, kind, (first, second), f"{written} may be day first or month first"
        )

    def _is_past(self, day: date) -> bool:
        return self.sent_on is not None and day < self.sent_on

    def _is_plausible(self, day: date | None, far: int = _FAR_AHEAD) -> bool:
        if day is None or self.sent_on is None:
            return day is not None
        return timedelta(0) <= day - self.sent_on <= timedelta(days=far)

    # --- a month's name -------------------------------------------------------------------------

    def _day_month(self, at: int, start: int) -> Written | None:
        """'4 December 2026', '4th of Dec', '4. Dezember', '14-nov-2025', '4 de diciembre'."""
        words = self.words
        if len(words.at(at)) > 2:
            return None
        if self._glued(at) and words.at(at - 1) in (".", ",", "/", "-"):
            return None
        number, after = int(words.at(at)), at + 1
        ordinal = words.at(after) in d.SUFFIXES and self._glued(after)
        after += ordinal
        point = words.at(after) == "." and self._glued(after)
        after += point or words.at(after) in ("º", "°")
        month = after
        while words.at(month) in d.OF_THE and month < after + 2:
            month += 1
        if words.at(month) in d.MONTHS:
            return self._month(start, month + 1, words.at(month), number)
        if ordinal and words.at(after) not in d.MEASURES:
            the = words.at(at - 1) in ("the", "le", "el", "den", "il", "de") or start < at
            return self._nth(start, after, number) if the else None
        if point and words.at(at - 1) in ("zum", "am", "bis", "den", "spatestens"):
            return None if words.at(after).isdigit() else self._nth(start, after, number)
        return None

    def _month_day(self, at: int) -> Written | None:
        """'December 4, 2026', 'Dec. 4th', 'May first'."""
        words = self.words
        after = at + 1 + (words.at(at + 1) == ".")
        after += words.at(after) in ("-", "the")
        word = words.at(after)
        number = int(word) if word.isdigit() and len(word) <= 2 else d.ORDINALS.get(word, 0)
        if not number:
            return None
        after += 1
        if words.at(after) in (".", ",") and words.at(after + 1).isdigit() and self._glued(after + 1):
            return None  # "Mar 1.5" is no day
        after += words.at(after) in d.SUFFIXES and self._glued(after)
        if words.at(after) in d.MEASURES - {"by", "in"}:
            return None
        return self._month(at, after, words.at(at), number)

    def _month(self, start: int, after: int, name: str, number: int) -> Written | None:
        month = d.MONTHS[name]
        year, end = self._year(after)
        day = _day(year, month, number) if year else self._coming(month, number)
        return self._written(start, end, "named", day)

    def _year(self, after: int) -> tuple[int, int]:
        """(year or 0, index behind it)."""
        at = after
        while self.words.at(at) in (".", ",", "-", "de", "del", "/") and at < after + 2:
            at += 1
        word = self.words.at(at)
        if word.isdigit() and len(word) == 4 and word.startswith("20"):
            return int(word), at + 1
        if word.isdigit() and len(word) == 2 and self._is_short_year(at):
            return 2000 + int(word), at + 1
        return 0, after

    def _is_short_year(self, at: int) -> bool:
        """'4-Dec-26', '4 Dec 26'; not '4 Dec 10 pcs'."""
        if self.sent_on is None or self.words.at(at + 1) in d.MEASURES | {".", "/", "-"}:
            return False
        return int(self.words.at(at)) - self.sent_on.year % 100 in (0, 1)

    def _ordinal(self, at: int) -> Written | None:
        """'The first of May'."""
        words = self.words
        if words.at(at + 1) == "of" and words.at(at + 2) in d.MONTHS:
            return self._month(at, at + 3, words.at(at + 2), d.ORDINALS[words.at(at)])
        return None

    # --- counted from the mail ------------------------------------------------------------------

    def _written(
        self, start: int, end: int, kind: Kind, day: date | None, *, fraction: bool = False
    ) -> Written | None:
        return None if day is None else Written(start, end, kind, (day,), fraction=fraction)

    def _coming(self, month: int, number: int) -> date | None:
        """The next such day from the mail on."""
        if self.sent_on is None or not 1 <= month <= 12:
            return None
        for year in (self.sent_on.year, self.sent_on.year + 1):
            day = _day(year, month, number)
            if day is not None and day >= self.sent_on:
                return day
        return None

    def _nth(self, start: int, end: int, number: int) -> Written | None:
        """'The 20th' of this month, or of the next that has one."""
        if self.sent_on is None:
            return None
        for step in (0, 1, 2):
            first = self.sent_on.replace(day=1) + relativedelta(months=step)
            day = _day(first.year, first.month, number)
            if day is not None and day >= self.sent_on:
                return self._written(start, end, "counted", day)
        return None

    def _weekday(self, at: int) -> Written | None:
        """'Friday', 'next Friday'; 'Friday 4 December' is the day with its name before it."""
        words, after = self.words, at + 1
        while words.at(after) in (",", "the", "den", "dem", "le", "el", "il", ".") and after < at + 4:
            after += 1
        named = d.WEEKDAYS[words.at(at)]
        dated = None
        if words.at(after).isdigit():
            dated = self._figures(after) or self._day_month(after, at)
        elif words.at(after) in d.MONTHS:
            dated = self._month_day(after)
        elif words.at(after) in d.ORDINALS:
            dated = self._ordinal(after)
        if dated is not None:
            return self._checked(at, dated, named)
        if self.sent_on is None:
            return None
        day = self.sent_on + relativedelta(days=1, weekday=named(1))
        if words.at(at - 1) in d.NEXT and day.isocalendar().week == self.sent_on.isocalendar().week:
            day += timedelta(days=7)
        return self._written(at, at + 1, "counted", day)

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

    def _part(self, at: int) -> Written | None:
        """'End of March' is its last day, 'mid March' the 15th, its beginning the 1st."""
        words, which = self.words, self.words.at(at)
        after = at + 1
        while words.at(after) in d.OF_THE and after < at + 4:
            after += 1
        coming = words.at(after) in ("next", "nachsten", "nachster", "prochain", "volgende")
        after += coming or words.at(after) == "this"
        unit = words.at(after)
        if unit in d.MONTHS:
            year, end = self._year(after + 1)
            month = d.MONTHS[unit]
            if not year:
                if self.sent_on is None:
                    return None
                year = self.sent_on.year + (month < self.sent_on.month)
            return self._written(at, end, "counted", _part_of_month(which, year, month))
        if self.sent_on is None:
            return None
        if d.SPANS.get(unit) == "weeks":
            monday = self.sent_on - timedelta(days=self.sent_on.weekday())
            friday = monday + timedelta(days=4 + 7 * coming)
            return self._written(at, after + 1, "counted", friday if which in d.ENDS else None)
        if d.SPANS.get(unit) == "months":
            first = self.sent_on.replace(day=1) + relativedelta(months=int(coming))
            day = _part_of_month(which, first.year, first.month)
            return self._written(at, after + 1, "counted", day)
        if unit in ("year", "jahres", "annee", "ano", "anno", "jaar") and which in d.ENDS:
            return self._written(at, after + 1, "counted", date(self.sent_on.year, 12, 31))
        return None

    def _span(self, at: int) -> Written | None:
        """'Within two weeks', 'in 10 days', 'innerhalb von 14 Tagen'."""
        used = self.words.phrase(at, d.IN_SPAN)
        if self.sent_on is None or not used:
            return None
        word, after = self.words.at(at + used), at + used + 1
        if word in ("about", "ca", "max", "approx", "les", "the", "next"):
            word, after = self.words.at(after), after + 1
        count = int(word) if word.isdigit() and len(word) <= 2 else d.NUMBERS.get(word, 0)
        after += self.words.at(after) == "of"
        span = d.SPANS.get(self.words.at(after))
        if not count or span is None:
            return None
        steps = {span: count}
        return self._written(
            at, after + 1, "counted", self.sent_on + relativedelta(**steps)  # type: ignore[arg-type]
        )

    def _week(self, at: int) -> Written | None:
        """'KW 14' ends on its Friday, ISO 8601."""
        words, after = self.words, at + 1
        if words.at(after) == "of":
            return self._week_around(at, after + 1 + (words.at(after + 1) == "the"))
        while words.at(after) in (".", "no", "nr", "n", "#") and after < at + 3:
            after += 1
        word = words.at(after)
        if self.sent_on is None or not word.isdigit() or len(word) > 2:
            return None
        number, year, end = int(word), self.sent_on.year, after + 1
        given = words.at(end + 1)
        if words.at(end) == "/" and given.isdigit() and len(given) in (2, 4):
            year, end = int(given) if len(given) == 4 else 2000 + int(given), end + 2
        elif number < self.sent_on.isocalendar().week:
            year += 1
        return self._written(at, end, "counted", _friday(year, number))

    def _week_around(self, at: int, day: int) -> Written | None:
        """'The week of December 7' ends on its Friday."""
        inside = self.at(day) if self.words.at(day) not in d.WEEK_NUMBERS else None
        if inside is None:
            return None
        friday = inside.days[0] + timedelta(days=4 - inside.days[0].weekday())
        return self._written(at, inside.end, inside.kind, friday)

    def _feast(self, at: int) -> Written | None:
        if self.sent_on is None:
            return None
        word = self.words.at(at)
        if word == "tomorrow":
            day: date | None = self.sent_on + timedelta(days=1)
        elif word in d.CHRISTMAS:
            day = self._coming(12, 24)
        elif word in d.EASTER:
            day = easter(self.sent_on.year)
            day = day if day >= self.sent_on else easter(self.sent_on.year + 1)
        else:
            day = self.sent_on.replace(month=11, day=1) + relativedelta(weekday=TH(4))
            if day < self.sent_on:
                return None
        return self._written(at, at + 1, "counted", day)


def _day(year: int, month: int, number: int) -> date | None:
    if not 1 <= month <= 12 or not 1 <= number <= 31 or not 1 <= year <= 9999:
        return None
    return date(year, month, number) if number <= monthrange(year, month)[1] else None


def _friday(year: int, week: int) -> date | None:
    try:
        return date.fromisocalendar(year, week, 5)
    except ValueError:
        return None  # not every year has a 53rd week


def _part_of_month(which: str, year: int, month: int) -> date:
    if which in d.ENDS:
        return date(year, month, monthrange(year, month)[1])
    return date(year, month, 15 if which in d.MIDDLES else 1)
