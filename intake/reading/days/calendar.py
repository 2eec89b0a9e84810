"""A text with the day that it was sent, and the order in which its writer puts day and month."""

from __future__ import annotations

from datetime import date

from ..text.phrases import Words, words_of
from . import day_words as d
from .forms import Calendar

_FIRST_YEAR, _LAST_YEAR = 1970, 2999


def calendar_of(
    text: str, sent_on: date | None, *, american: bool, day_first: bool = False
) -> Calendar:
    """The words with what their days count from, and whose order of day and month holds."""
    words = words_of(text)
    if sent_on is not None and not _FIRST_YEAR <= sent_on.year <= _LAST_YEAR:
        sent_on = None  # a clock that is wrong by centuries: nothing can be counted from it
    habit = _habit(words)
    english = d.speaks_english(words.text)
    month_first = american and english if habit is None else habit
    sure = habit is not None or american or day_first or not english
    return Calendar(words, sent_on, month_first, sure, text)


def _habit(words: Words) -> bool | None:
    """Whether other days in the mail put the month first ('5/15/2026'), or None."""
    seen: set[bool] = set()
    for at, mark in enumerate(words.text):
        if mark not in ("/", "-") or words.at(at + 2) != mark:
            continue
        first, second = words.at(at - 1), words.at(at + 1)
        if first.isdecimal() and second.isdecimal() and max(len(first), len(second)) <= 2:
            if 12 < int(first) <= 31 and int(second) <= 12:
                seen.add(False)
            if 12 < int(second) <= 31 and int(first) <= 12:
                seen.add(True)
    return seen.pop() if len(seen) == 1 else None
