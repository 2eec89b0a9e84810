"""Days that count from the day of the mail: 'in two weeks', 'KW 14', 'end of March', 'the 20th'.

Each function takes the words, the index where the expression begins and the mail's own day, and
returns the index behind it with the day, or None.
"""

from __future__ import annotations

from calendar import monthrange
from datetime import date, timedelta

from dateutil.easter import easter
from dateutil.relativedelta import TH, relativedelta, weekday

from ..text.phrases import Words
from . import day_words as d

Counted = tuple[int, date] | None


def day_of(year: int, month: int, number: int) -> date | None:
    """That day, or None where there is no such day."""
    try:
        return date(year, month, number)
    except (ValueError, OverflowError):  # a number of nine digits is no year either
        return None  # "31 February" is left for a person


def coming(month: int, number: int, sent_on: date | None) -> date | None:
    """The next such day from the mail on."""
    if sent_on is None:
        return None
    for year in (sent_on.year, sent_on.year + 1):
        day = day_of(year, month, number)
        if day is not None and day >= sent_on:
            return day
    return None


def year_at(words: Words, after: int, sent_on: date | None) -> tuple[int, int]:
    """(year, index behind it) where one follows a month's name; (0, ``after``) where none does."""
    at = after
    while words.at(at) in (".", ",", "-", "de", "del", "/") and at < after + 2:
        at += 1
    word = words.at(at)
    if word.isdecimal() and len(word) == 4 and word.startswith("20"):
        return int(word), at + 1
    if word.isdecimal() and len(word) == 2 and sent_on is not None:
        # "4-Dec-26", but not "4 Dec 10 pcs" or "Dec 27.5".
        goes_on = words.at(at + 1) in d.MEASURES | {".", "/", "-"}
        if not goes_on and int(word) - sent_on.year % 100 in (0, 1):
            return 2000 + int(word), at + 1
    return 0, after


def nth(number: int, sent_on: date) -> date | None:
    """'The 20th' of this month, or of the next that has one to come."""
    for step in (0, 1, 2):
        month = sent_on.replace(day=1) + relativedelta(months=step)
        day = day_of(month.year, month.month, number)
        if day is not None and day >= sent_on:
            return day
    return None


def on_weekday(named: weekday, sent_on: date, *, following: bool) -> date:
    """The coming Friday; with ``following`` ('next Friday') that of the next calendar week."""
    day = sent_on + relativedelta(days=1, weekday=named(1))
    if following and day.isocalendar().week == sent_on.isocalendar().week:
        day += timedelta(days=7)
    return day


def part(words: Words, at: int, sent_on: date | None, *, whole: bool = False) -> Counted:
    """'End of March' is its last day, 'mid March' the 15th, its beginning the 1st; ``whole``:
    'Monatsende'."""
    if whole:
        day = None if sent_on is None else sent_on + relativedelta(day=31)
        return None if day is None else (at + 1, day)
    which, after = words.at(at), at + 1
    while words.at(after) in d.OF_THE and after < at + 4:
        after += 1
    following = words.at(after) in d.FOLLOWING
    after += following or words.at(after) == "this"
    unit = words.at(after)
    if unit in d.MONTHS:
        year, end = year_at(words, after + 1, sent_on)
        if not year and which in d.BEGINNINGS and words.at(after + 1).isdecimal():
            return None  # "we start December 7"
        if not year and sent_on is not None:
            year = sent_on.year + (d.MONTHS[unit] < sent_on.month)
        return (end, _part_of_month(which, year, d.MONTHS[unit])) if year else None
    if sent_on is None:
        return None
    if d.SPANS.get(unit) == "months":
        month = sent_on.replace(day=1) + relativedelta(months=int(following))
        return after + 1, _part_of_month(which, month.year, month.month)
    if which not in d.ENDS:
        return None
    if d.SPANS.get(unit) == "weeks":
        monday = sent_on - timedelta(days=sent_on.weekday())
        return after + 1, monday + timedelta(days=4 + 7 * following)
    return (after + 1, date(sent_on.year, 12, 31)) if unit in d.YEARS else None


def _part_of_month(which: str, year: int, month: int) -> date:
    if which in d.ENDS:
        return date(year, month, monthrange(year, month)[1])
    return date(year, month, 15 if which in d.MIDDLES else 1)


def span(words: Words, at: int, sent_on: date | None) -> Counted:
    """'Within two weeks', 'in 10 days', 'innerhalb von 14 Tagen'."""
    used = words.phrase(at, d.IN_SPAN)
    if sent_on is None or not used:
        return None
    if words.text[at : at + 3] == ("within", "the", "week"):
        return at + 3, sent_on + timedelta(days=7)
    used += words.at(at + used) == "."  # "Lieferzeit max. 4 Wochen"
    word, after = words.at(at + used), at + used + 1
    if word in d.ROUGHLY:
        word, after = words.at(after), after + 1
    count = int(word) if word.isdecimal() and len(word) <= 2 else d.NUMBERS.get(word, 0)
    after += words.at(after) == "of"  # "a couple of weeks"
    if count and words.at(after) == "fortnight":
        return after + 1, sent_on + timedelta(days=14 * count)
    unit = d.SPANS.get(words.at(after))
    if not count or unit is None:
        return None
    if unit == "months":
        return after + 1, sent_on + relativedelta(months=count)
    return after + 1, sent_on + timedelta(days=count * (7 if unit == "weeks" else 1))


def in_a_month(words: Words, after: int, number: int, sent_on: date | None) -> Counted:
    """'(The 14th) of next month', '14 del mes que viene': that day of the month after the mail's;
    the words begin at ``after``."""
    used = words.phrase(after, d.OF_NEXT_MONTH)
    if not used or sent_on is None:
        return None
    month = sent_on.replace(day=1) + relativedelta(months=1)
    day = day_of(month.year, month.month, number)
    return None if day is None else (after + used, day)


def week(words: Words, at: int, sent_on: date | None) -> Counted:
    """'KW 14' ends on its Friday, ISO 8601."""
    after = at + 1
    name = words.at(at)
    shortened = len(name) <= len("kw") or name in d.WEEKS_SHORTENED
    if name in d.WEEK_LETTERS and words.at(at - 1) not in d.BEFORE_A_WEEK:
        return None
    marks = (".", "no", "nr", "n", "#") if shortened else ("no", "nr", "n", "#")
    while words.at(after) in marks and after < at + 3:
        after += 1
    word = words.at(after)
    if sent_on is None or not word.isdecimal() or len(word) > 2:
        return None
    number, year, end = int(word), sent_on.year, after + 1
    given = words.at(end + 1)
    if words.at(end) == "/" and given.isdecimal() and len(given) in (2, 4):
        year, end = int(given) if len(given) == 4 else 2000 + int(given), end + 2
    elif number < sent_on.isocalendar().week:
        year += 1
    try:
        return end, date.fromisocalendar(year, number, 5)
    except ValueError:
        return None  # not every year has a 53rd week


def feast(words: Words, at: int, sent_on: date) -> date | None:
    """The day of 'before Christmas', 'by Easter', 'by Thanksgiving', 'tomorrow'."""
    word = words.at(at)
    if word in d.TOMORROW:
        if words.at(at - 1) in d.OF_MORNING:
            return None  # "guten Morgen", "esta mañana"
        later = word in d.IN_TWO_DAYS or words.at(at - 1) in d.AFTER_TOMORROW
        return sent_on + timedelta(days=1 + later)
    if word in d.CHRISTMAS:
        return coming(12, 24, sent_on)
    if word in d.PENTECOST:
        this, following = (easter(sent_on.year + n) + timedelta(days=49) for n in (0, 1))
        return this if this >= sent_on else following
    if word in d.YEAR_ENDS:
        return coming(12, 31, sent_on)
    if word in d.EASTER:
        day = easter(sent_on.year)
        return day if day >= sent_on else easter(sent_on.year + 1)
    day = sent_on.replace(month=11, day=1) + relativedelta(weekday=TH(4))
    return day if day >= sent_on else None
