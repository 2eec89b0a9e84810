"""Days that no word of need leads to, but a label, a sentence or an item of their own: 'When: 20
November', 'KW 46.', '38 x 1.5, R 76, 6 Nov.'; and days that are none to come by: the last of a span
('closed from 1 to 22 May'), the first that suits ('not before 6 November').
"""

from __future__ import annotations

from datetime import timedelta

from ..text.phrases import PhraseTable, Words, phrases, word_set
from . import day_words as w
from . import words as d
from .forms import Calendar
from .written import Written

_WHEN = phrases(
    "when | when needed | when required | day | by when | for when | wann | bis wann | quand",
    "pour quand | cuándo | cuando | para cuándo | quando | per quando | wanneer | tegen wanneer",
    "target | target date | wunsch | wunschtag | liefertag | ziel | zieltermin | objetivo",
    "objectif",
    "streefdatum | needed | wanted | timing | term | datum levering",
)
_DATE = word_set("date datum fecha data")
"""The letter's own date has that label, too."""
_SIGNS = frozenset((":", "=", "-", "?"))
_OPENS = frozenset(("", "\n", "\n\n", ".", "-", "*", ";"))
_ENDS = frozenset(("", "\n", "\n\n", ".", "!", ";"))
_LEADS = d.LEADING | d.ARTICLES | d.ON | d.UNTIL | word_set("on latest am um")
_LONGEST = 3
_SPANS = w.ENDS | w.MIDDLES | w.BEGINNINGS | w.WEEK_NUMBERS | word_set("week") | {*w.IN_SPAN}
_BEFORE_SPAN = (
    word_set(
        "in en dans courant nella op der la the heute today hoy oggi vandaag aujourd hui for zum am"
    )
    | d.LEADING
    | d.FOR
)
_PARTED = frozenset((",", "/", "|"))
_ITEM = 10
"""Words of the item before a day in a list of what makes a size."""
_SOON = timedelta(days=200)
_LATER_THAN = phrases(
    "not before | no sooner than | not sooner than | no earlier than | not earlier than",
    "not until | nicht vor | nicht vor dem | frühestens am | frühestens | pas avant | pas avant le",
    "no antes de | no antes del | non prima di | non prima del | niet voor | niet eerder dan",
)
_CAN_YOU = phrases(
    "can you make | could you make | can you do | could you do | can you manage | can you hit",
    "happy with | shall we say | let us say | let s say | how about | what about | sagen wir",
    "disons",
    "digamos | diciamo | laten we zeggen | could you manage | can you meet | schaffen sie",
    "schafft ihr | schaffen sie das bis",
)
_POLITE = phrases(
    "please | if possible | if humanly possible | if you can | at the latest | latest | bitte",
    "wenn möglich | wenn es geht | spätestens | svp | s il vous plaît | si possible | au plus tard",
    "por favor | si es posible | a ser posible | a más tardar | per favore | se possibile",
    "al più tardi | graag | aub | alstublieft | indien mogelijk | als het kan | uiterlijk",
)
_FROM = word_set("from between vom von du del dal van zwischen entre tra tussen")
_TO = frozenset("to until till through thru and bis au al tot und et y e en".split()) | {"-", "–"}
_FIRST_DAY = 6
"""Words from the beginning of a span to its end: 'from Monday 1 to'."""


_LAST_WORDS = frozenset(
    phrase[-1] for table in (_LATER_THAN, _CAN_YOU) for found in table.values() for phrase in found
)


def is_labelled(calendar: Calendar, written: Written) -> bool:
    """'When: the 30th', 'Wann = KW 46', 'date: 28.11.2026' in a list of what is wanted."""
    words, at = calendar.words, written.start - 1
    while words.at(at) in _LEADS and at > 0:
        at -= 1
    while words.at(at) in _SIGNS and at > 0:
        at -= 1
    if not set(words.text[at + 1 : written.start]) & _SIGNS:
        return False
    for used in range(1, _LONGEST + 1):
        first = at - used + 1
        if first < 0 or words.at(first - 1 if first else len(words)) not in _OPENS:
            continue
        if words.phrase(first, _WHEN) == used:
            return True
        if used == 1 and words.at(at) in _DATE and first:  # a letter's own date opens it
            return calendar.sent_on is not None and written.days[0] > calendar.sent_on
    return False


def stands_alone(calendar: Calendar, written: Written) -> bool:
    """'KW 46.', 'End of next week if possible': a week or a part of a month for a sentence; of a
    list of figures any day may be the last: '38 x 1.5, R 76, 6 Nov.'. A day that has its sentence
    for itself may be the letter's own."""
    words, at, end = calendar.words, written.start - 1, written.end
    polite = words.phrase(end + (words.at(end) == ","), _POLITE)
    end += polite + (words.at(end) == "," if polite else 0)
    first = words.at(written.start)
    counted = written.kind == "counted" and (first in w.NUMBERS or first.isdecimal())
    if first in _SPANS or polite or counted:
        while words.at(at) in _BEFORE_SPAN and at > 0:
            at -= 1
        if words.at(at) in _OPENS and words.at(end) in _ENDS:
            return first in _SPANS or counted
    elif words.at(at) in ("zum", "for"):
        at -= 1
    if words.at(at) not in _PARTED or words.at(end) not in _ENDS | _PARTED:
        return False
    item = words.text[max(words.first[at], at - _ITEM) : at]
    told = any(word.isdecimal() or word in d.TOOLS for word in item)
    sent_on = calendar.sent_on
    return told and sent_on is not None and sent_on < written.days[0] < sent_on + _SOON


def is_asked_of_us(words: Words, start: int) -> bool:
    """'Can you make 6 November?', 'schaffen Sie den 6.?'."""
    return _ends_with(words, start - (words.at(start - 1) in d.ARTICLES), _CAN_YOU)


def is_too_early(words: Words, start: int) -> bool:
    """'Not before 6 November', 'frühestens am 6.'."""
    article = words.at(start - 1) in d.ARTICLES
    if article and _ends_with(words, start - 1, _LATER_THAN):
        return True
    return _ends_with(words, start, _LATER_THAN)


def _ends_with(words: Words, behind: int, table: PhraseTable) -> bool:
    """Whether a phrase of ``table`` ends right before ``behind``."""
    if words.at(behind - 1) not in _LAST_WORDS:
        return False
    return any(
        words.phrase(at, table) == behind - at
        for at in range(max(0, behind - _LONGEST - 1), behind)
    )


def ends_span(words: Words, start: int) -> bool:
    """Whether the day that begins at ``start`` is the last of a span: 'vom 1. bis 22. Mai'."""
    if words.at(start - 1) not in _TO:
        return False
    ahead = range(start - 2, max(-1, start - 2 - _FIRST_DAY), -1)  # the point of '1.' ends nothing
    opened = next((at for at in ahead if words.at(at) in _FROM), None)
    if opened is None:
        return False
    between = words.text[opened + 1 : start - 1]
    return any(word.isdecimal() or word in w.MONTHS or word in w.WEEKDAYS for word in between)


def goes_on(words: Words, behind: int, start: int) -> bool:
    """'A on 19 November and B on 4 December': the next of several lines, named by its letter."""
    between = words.text[behind:start]
    if not 2 <= len(between) <= _FIRST_DAY or between[-1] not in d.ON_A_DAY:
        return False
    return between[0] in d.CLAUSES and all(is_letter(word) for word in between[1:-1])


def is_letter(word: str) -> bool:
    return (len(word) == 1 and word.isalnum()) or word in d.CLAUSES


def is_drawn(words: Words, start: int) -> bool:
    """'Before the Easter weekend, so Thursday April 2': the day before is only where it is from."""
    at = start - 1
    while words.at(at) in d.ARTICLES | d.LEADING or words.at(at) == "on":
        at -= 1
    return words.at(at) in d.SO and words.at(at - 1) in (",", "-", "–")
