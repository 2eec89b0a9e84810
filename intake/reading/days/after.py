"""Words behind a day: the mandrel is wanted then ('12 December is your date'), or came then."""

from __future__ import annotations

from ..text.phrases import Words, word_set
from . import words as d
from .behind_words import AFTER
from .forms import Calendar
from .written import Written

_AHEAD = 8
_NEW_CLAUSE = word_set("i we my our ich wir je nous yo io ik wij") | {"\n"}


def asks_after(calendar: Calendar, written: Written) -> bool:
    """Whether they say so: '... 12 December is your date', 'by the 18th in our hands'."""
    words = calendar.words
    for at in _behind(calendar, written):
        if words.at(at).isdecimal() or words.at(at) == ";":
            return False
        used = words.phrase(at, AFTER)
        if used:
            if _leads_to_day(calendar, at + used):
                return False  # "the job starts Nov 30 so I need it by Nov 23"
            return not any(words.phrase(at - far, d.CONDITIONED) for far in (2, 3))
        if words.at(at) == "," and not words.phrase(at + 1, AFTER):
            return False
    return False


def _behind(calendar: Calendar, written: Written) -> range:
    """The words behind a day in its sentence, which the point of '20.11.' does not end."""
    words, end = calendar.words, written.end
    dotted = words.at(end - 1) == "." and end < len(words) and words.at(end) != "\n"
    if dotted and calendar.plain[words.start[end]].islower():
        return range(end, min(words.behind[end], end + _AHEAD))
    return words.after(end, _AHEAD)


def _leads_to_day(calendar: Calendar, at: int) -> bool:
    """Whether a further day stands there, with 'by' or 'on' before it."""
    words = calendar.words
    if words.at(at) not in d.LEADING | d.ON:
        return False
    ahead = range(at + 1, min(at + 2 + (words.at(at + 1) in d.ARTICLES), len(words)))
    return any(calendar.may_begin(day) and calendar.at(day) is not None for day in ahead)


def is_past(words: Words, written: Written, place: int) -> bool:
    """'You delivered in two weeks last time'; not 'need it by Nov 13, we broke the last one'."""
    if words.at(written.start) == "last":
        return False  # "by the last Friday in May"
    first = max(words.first[written.start], min(place, written.start) - 3)
    if any(words.phrase(at, d.PAST) for at in range(first, written.end)):
        return True
    for at in words.after(written.end, 4):
        if words.at(at) in _NEW_CLAUSE:
            return False
        if words.phrase(at, d.PAST):
            return True
    return False
