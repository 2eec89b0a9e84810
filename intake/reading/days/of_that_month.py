"""A day named by its number alone beside another with its month: 'we start on December 7 and need
it by the 4th', 'arrancamos el 7 de diciembre, lo necesitamos el 4'."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

from dateutil.relativedelta import relativedelta

from ..text.phrases import Words, word_set
from . import day_words as d
from .counted import day_of
from .written import Written

_FAR = 16
"""Words between the two days."""
_ARTICLES = frozenset(("le", "el", "il"))
"""Before a bare number they make it a day: 'le 4'."""
_EARLIER = word_set("before earlier vorher früher davor avant antes prima eerder ervoor")
_STOPS = frozenset((".", ",", ";", "!", "?", ")", "\n", "\n\n", ""))
_MOST = 31


def bare_number(words: Words, at: int, last: Written | None) -> Written | None:
    """The day that a bare number behind an article names, beside one with its month."""
    word = words.at(at)
    if last is None or words.at(at - 1) not in _ARTICLES or words.at(at + 1) not in _STOPS:
        return None
    if not word.isdecimal() or not 0 < int(word[:3]) <= _MOST or words.at(at + 2).isdecimal():
        return None
    return _beside(Written(at, at + 1, "counted", last.days), int(word), last)


def so_long_before(words: Words, at: int, last: Written | None) -> Written | None:
    """'We start on December 1 and need it a week before', 'lo necesitamos una semana antes'."""
    if last is None or words.at(at + 2) not in _EARLIER:
        return None
    unit, word = d.SPANS.get(words.at(at + 1)), words.at(at)
    many = int(word[:2]) if word.isdecimal() else d.NUMBERS.get(word, 0)
    if not many or unit not in ("days", "weeks") or words.at(at + 3).isdecimal():
        return None
    if last.kind == "counted" or not 0 <= at - last.end <= _FAR or len(last.days) > 1:
        return None
    day = last.days[0] - timedelta(days=many * (7 if unit == "weeks" else 1))
    return Written(at, at + 3, "counted", (day,))


def of_that_month(words: Words, written: Written, last: Written | None) -> Written:
    """'The 4th' beside a day with its month is of that month, not of the mail's; any other day is
    itself."""
    word = words.at(written.start)
    if written.kind != "counted" or not word.isdecimal() or last is None:
        return written
    return _beside(written, int(word), last) or written


def _beside(written: Written, number: int, last: Written) -> Written | None:
    if last.kind == "counted" or not 0 <= written.start - last.end <= _FAR or len(last.days) > 1:
        return None
    named = last.days[0]
    day = day_of(named.year, named.month, number)
    if day is None:
        return None
    if day < named:
        return replace(written, days=(day,))
    month = named.replace(day=1) + relativedelta(months=-1)
    before: date | None = day_of(month.year, month.month, number)
    if before is None:
        return replace(written, days=(day,))
    why = f"the {number} may be of the month before {named.isoformat()}"
    return replace(written, days=(day, before), why=why)
