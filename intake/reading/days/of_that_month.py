"""A day named by its number alone beside another with its month: 'we start on December 7 and need
it by the 4th', 'arrancamos el 7 de diciembre, lo necesitamos el 4'; or behind a month of its own:
'delivery in December, by the 4th at the latest'."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

from dateutil.relativedelta import relativedelta

from ..text.phrases import Words, phrases, word_set
from . import day_words as d
from .counted import coming, day_of, year_at
from .written import Written

_FAR = 16
"""Words between the two days."""
_ARTICLES = frozenset(("le", "el", "il"))
"""Before a bare number they make it a day: 'le 4'."""
_AT_LATEST = phrases("au plus tard | a más tardar | como muy tarde | como tarde | al più tardi")
_EARLIER = word_set("before earlier vorher früher davor avant antes prima eerder ervoor")
_STOPS = frozenset((".", ",", ";", "!", "?", ")", "\n", "\n\n", ""))
_MOST = 31
_NEAR = 10
"""Words between a month and the number of its day."""
_IN = frozenset("in im en a ad for i nel au early late".split())
"""Before a month that is told by itself."""
_TURNS = frozenset(
    "and or but und oder aber et ou mais y e o pero ma en of maar we i it wir ich es on nous "
    "lo ne het ik".split()
)
"""Behind these a clause of its own may speak of another month: 'we start in May and need it ...'"""
_LONG = 4
_SHORT_NAMES = frozenset(("may", "mai", "mei", "maj"))


def bare_number(
    words: Words, at: int, last: Written | None, sent_on: date | None
) -> Written | None:
    """The day that a bare number behind an article names, beside one with its month."""
    word = words.at(at)
    limited = words.phrase(at + 1, _AT_LATEST) > 0
    if words.at(at - 1) not in _ARTICLES or not (words.at(at + 1) in _STOPS or limited):
        return None
    if not word.isdecimal() or not 0 < int(word[:3]) <= _MOST or words.at(at + 2).isdecimal():
        return None
    named = _of_month_named(words, Written(at, at + 1, "counted", ()), last, sent_on)
    if named is not None or last is None:
        return named
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


def of_that_month(
    words: Words, written: Written, last: Written | None, sent_on: date | None
) -> Written:
    """'The 4th' beside a day with its month is of that month, not of the mail's; any other day is
    itself."""
    word = words.at(written.start)
    if written.kind != "counted" or not word.isdecimal():
        return written
    named = _of_month_named(words, written, last, sent_on)
    if named is not None or last is None:
        return named or written
    return _beside(written, int(word), last) or written


def _of_month_named(
    words: Words, written: Written, last: Written | None, sent_on: date | None
) -> Written | None:
    """'In December, by the 4th at the latest': the month stands alone before the number."""
    for at in words.before(written.start, _NEAR):
        word = words.at(at)
        if word in _TURNS or (last is not None and at < last.end):
            return None
        if word not in d.MONTHS:
            continue
        if words.at(at - 1) not in _IN or (len(word) <= _LONG and word not in _SHORT_NAMES):
            return None
        year, _ = year_at(words, at + 1, sent_on)
        number = int(words.at(written.start))
        month = d.MONTHS[word]
        day = day_of(year, month, number) if year else coming(month, number, sent_on)
        return None if day is None else replace(written, days=(day,))
    return None


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
