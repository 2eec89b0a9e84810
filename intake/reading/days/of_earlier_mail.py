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
_LINE = 80
"""Characters before such a day: its line begins with what it heads."""
_YEAR = 4


def was_then(calendar: Calendar, written: Written, sent: Written | None) -> bool:
    """Whether a day without its year stands in a mail so old that it is past; ``sent`` is the day
    that heads that mail."""
    if calendar.sent_on is None or sent is None or _has_year(calendar, written):
        return False
    if sent.days[0] >= calendar.sent_on:
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


def heads_mail(calendar: Calendar, day: Written) -> bool:
    """'Sent: 14 April 2026', 'On Tue, 14 Apr 2026 ... wrote:'."""
    words = calendar.words
    begin = words.start[day.start]
    line = calendar.plain.rfind("\n", max(0, begin - _LINE), begin) + 1
    ahead = [
        at for at in range(max(0, day.start - _LOOKED_AT), day.start) if words.start[at] >= line
    ]
    return _has_year(calendar, day) and any(words.at(at) in _SENT for at in ahead[:2])
