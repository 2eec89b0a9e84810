"""Days counted from another: 'two days before December 10', 'a week from Friday', 'Friday week'.

What is counted from is no day of delivery by itself.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

from dateutil.relativedelta import relativedelta

from ..text.phrases import Words, phrases, word_set
from . import day_words as d
from .written import Written

_BEFORE = word_set("before vor avant antes prima voor prior ahead")
_AFTER = word_set("after from nach après apres después despues dopo na past")
_EVES = word_set("eve vortag vortage vorabend veille víspera vigilia vooravond")
_ON = word_set("on am")
_LINKS = word_set("to of the de del di du le la el dem der den het")
_ARTICLES = word_set("the le la el il de het der die das")
"""'The day before' is one day before."""
_BEHIND = phrases("in | en | over | tra | fra | dentro de")
_FORTNIGHT = word_set("quinze quindici quince")
_FROM_CHRISTMAS = "Christmas Eve or Christmas Day may be what it is counted from"
_WHICH_WEEK = "this week or the next may be what it is counted from"
_MOST = 99


def shifted(words: Words, written: Written, sent_on: date | None) -> Written | None:
    """The day that words around ``written`` count from it; itself where they count nothing, None
    where they name no day: 'the week after Thanksgiving'."""
    if _is_weekday(words, written) and sent_on is not None:
        later = _weeks_behind(words, written, sent_on)
        if later is not None:
            return later
    return _counted_ahead(words, written)


def _counted_ahead(words: Words, written: Written) -> Written | None:
    at = written.start - 1
    while at >= 0 and words.at(at) in _LINKS:
        at -= 1
    sign = words.at(at)
    if sign in _EVES and at >= 0:
        return _eve(words, written, at)
    day_by_day = sign in _ON and _is_weekday(words, written)  # "a week on Friday"
    if at <= 1 or not (sign in _BEFORE or sign in _AFTER or day_by_day):
        return written
    unit, count = d.SPANS.get(words.at(at - 1)), _count(words.at(at - 2))
    if unit is None or not count or not words.together(at - 2, written.start):
        return written
    if words.at(at - 2) in _ARTICLES and unit != "days":
        return None
    back = -1 if sign in _BEFORE else 1
    days = [_moved(day, back * count, unit) for day in written.days]
    why = written.why
    if words.at(written.start) in d.CHRISTMAS and words.at(written.start + 1) != "eve":
        days, why = [days[0] + timedelta(days=1), days[0]], _FROM_CHRISTMAS
    return replace(written, start=at - 2, days=tuple(days), why=why)


def _eve(words: Words, written: Written, at: int) -> Written:
    """'La vigilia di Natale', which Christmas in a mail means anyway; 'la veille du 5 décembre'."""
    if words.at(written.start) in d.CHRISTMAS:
        return replace(written, start=at)
    days = tuple(day - timedelta(days=1) for day in written.days)
    return replace(written, start=at, days=days)


def _weeks_behind(words: Words, written: Written, sent_on: date) -> Written | None:
    """'Friday week' is a week behind the coming Friday; of 'Montag in zwei Wochen' nobody can be
    sure which Monday counts as the first."""
    at = written.end
    if words.at(at) == "week":
        return replace(written, end=at + 1, days=(written.days[0] + timedelta(days=7),))
    used = words.phrase(at, _BEHIND)
    if not used:
        return None
    if words.at(at + used) in _FORTNIGHT:  # "lundi en quinze"
        return replace(written, end=at + used + 1, days=(written.days[0] + timedelta(days=7),))
    count, unit = _count(words.at(at + used)), d.SPANS.get(words.at(at + used + 1))
    if not count or unit != "weeks":
        return None
    near, far = (written.days[0] + timedelta(days=7 * n) for n in (count - 1, count))
    first = near if near - sent_on >= timedelta(days=7 * count) else far
    days = (first, far if first == near else near)
    return replace(written, end=at + used + 2, days=days, why=_WHICH_WEEK)


def _is_weekday(words: Words, written: Written) -> bool:
    return written.kind == "counted" and words.at(written.start) in d.WEEKDAYS


def _count(word: str) -> int:
    if word.isdecimal():
        return int(word) if int(word) <= _MOST else 0
    return 1 if word in _ARTICLES else d.NUMBERS.get(word, 0)


def _moved(day: date, count: int, unit: str) -> date:
    if unit == "months":
        return day + relativedelta(months=count)
    return day + timedelta(days=count * (7 if unit == "weeks" else 1))
