"""Days of an earlier mail that is quoted: '8 May' in what was sent on 14 April is past in October,
and not the next May."""

from __future__ import annotations

from datetime import date

from ..text.phrases import word_set
from .forms import Calendar
from .written import Written

_SENT = word_set(
    "sent date gesendet datum envoyé enviado fecha inviato data verzonden on am le el il op"
)
"""Before the day of an earlier mail, at the head of its line."""
_LOOKED_AT = 4
_YEAR = 4


def was_then(calendar: Calendar, written: Written, days: list[Written]) -> bool:
    """Whether a day without its year stands in a mail so old that it is past; ``days`` are those
    written before it."""
    if calendar.sent_on is None or _has_year(calendar, written):
        return False
    sent = next((day for day in reversed(days) if _heads_mail(calendar, day)), None)
    if sent is None or sent.days[0] >= calendar.sent_on:
        return False
    meant = written.days[0]
    try:
        then = meant.replace(year=sent.days[0].year)
    except ValueError:  # February 29
        return False
    if then < sent.days[0]:
        then = date(then.year + 1, then.month, min(then.day, 28))
    return then < calendar.sent_on


def _has_year(calendar: Calendar, written: Written) -> bool:
    return any(len(word) == _YEAR for word in calendar.words.text[written.start : written.end])


def _heads_mail(calendar: Calendar, day: Written) -> bool:
    """'Sent: 14 April 2026', 'On Tue, 14 Apr 2026 ... wrote:'."""
    words = calendar.words
    line = calendar.plain.rfind("\n", 0, words.start[day.start]) + 1
    ahead = [
        at for at in range(max(0, day.start - _LOOKED_AT), day.start) if words.start[at] >= line
    ]
    return _has_year(calendar, day) and any(words.at(at) in _SENT for at in ahead[:2])
