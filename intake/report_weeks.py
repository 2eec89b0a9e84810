"""Weeks by the shop's clocks: where each begins, and stretches of several."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime, time, timedelta, tzinfo
from typing import NamedTuple, Self

from .report_count import Week

FIRST_YEAR, LAST_YEAR = 1970, 9998
"""Years that can be reported on: no mail is older, and the weeks around them are dates, too."""


def start_of(week: Week, zone: tzinfo) -> datetime:
    """The moment at which a week begins by the clocks of ``zone``, in UTC.

    Where Monday's midnight is skipped (clocks put forward at 0:00), the week begins with the first
    moment there is; where it comes twice, with the first of the two.
    """
    from dateutil.tz import resolve_imaginary

    midnight = datetime.combine(week.monday, time(), zone)
    return resolve_imaginary(midnight).astimezone(UTC)


class Weeks(NamedTuple):
    """Some weeks on end, the last one included."""

    first: Week
    last: Week

    @classmethod
    def parse(cls, text: str) -> Self:
        """``2026-W47``, or ``2026-W44..2026-W47``. Raises ValueError in one sentence."""
        first, dots, last = text.partition("..")
        weeks = cls(Week.parse(first), Week.parse(last if dots else first))
        if weeks.last < weeks.first:
            raise ValueError(f"{text!r} ends before it begins")
        if weeks.first.year < FIRST_YEAR or weeks.last.year > LAST_YEAR:
            raise ValueError(f"{text!r} lies outside the years {FIRST_YEAR} to {LAST_YEAR}")
        return weeks

    def start(self, zone: tzinfo) -> datetime:
        """When they begin, in UTC."""
        return start_of(self.first, zone)

    def end(self, zone: tzinfo) -> datetime:
        """When the week after them begins, in UTC."""
        return start_of(later(self.last, 1), zone)

    def before(self, count: int) -> Weeks:
        """So many weeks right before the first."""
        return Weeks(later(self.first, -count), later(self.first, -1))

    def each(self) -> Iterator[Week]:
        """Every one of them, in order."""
        week = self.first
        while week <= self.last:
            yield week
            week = later(week, 1)

    @property
    def number(self) -> int:
        """How many."""
        return (self.last.monday - self.first.monday).days // 7 + 1

    @property
    def days(self) -> str:
        """The days in words: '16 to 22 November 2026'."""
        monday, sunday = self.first.monday, self.last.sunday
        begin = f"{monday.day}"
        if (monday.year, monday.month) != (sunday.year, sunday.month):
            begin += f" {monday:%B}"
        if monday.year != sunday.year:
            begin += f" {monday.year}"
        return f"{begin} to {sunday.day} {sunday:%B} {sunday.year}"

    def __str__(self) -> str:
        return str(self.first) if self.first == self.last else f"{self.first}..{self.last}"


def later(week: Week, weeks: int) -> Week:
    """The week so many weeks later, or earlier where negative."""
    year, number, _ = (week.monday + timedelta(weeks=weeks)).isocalendar()
    return Week(year, number)
