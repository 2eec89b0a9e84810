"""Days named by their place in a month: 'the first Monday in November', 'der letzte Freitag',
'le premier lundi de mars'.
"""

from __future__ import annotations

from datetime import date

from dateutil.relativedelta import relativedelta, weekday

from ..text.phrases import Words, word_set
from . import day_words as d
from .counted import year_at
from .written import Written

_PLACES = {
    **dict.fromkeys(
        word_set("first 1st erster ersten erste premier primer primero primo eerste"), 1
    ),
    **dict.fromkeys(word_set("second zweiter zweiten zweite deuxième segundo secondo tweede"), 2),
    **dict.fromkeys(word_set("third dritter dritten dritte troisième tercer terzo derde"), 3),
    **dict.fromkeys(word_set("last letzter letzten letzte dernier último ultimo laatste"), -1),
}
_IN = word_set("in of im des de du del di van der") | {"d"}
_THE_MONTH = word_set("month monats mois mes mese maand")
_ARTICLES = word_set("the this le la el il lo het diesem diesen ce este questo deze")


def nth_weekday(words: Words, at: int, named: weekday, sent_on: date | None) -> Written | None:
    """The day where a weekday at ``at`` has its place before it and a month behind it."""
    place = _PLACES.get(words.at(at - 1)) if at else None
    behind = at + 1 + (words.at(at + 1) in _IN)
    behind += words.at(behind) in _ARTICLES
    if place is None or sent_on is None or behind == at + 1:
        return None
    name = words.at(behind)
    if name in d.MONTHS:
        year, end = year_at(words, behind + 1, sent_on)
        year = year or sent_on.year + (d.MONTHS[name] < sent_on.month)
        start = date(year, d.MONTHS[name], 1)
    elif name in _THE_MONTH:
        start, end = sent_on.replace(day=1), behind + 1
    else:
        return None
    if place < 0:
        day = start + relativedelta(day=31, weekday=named(-1))
    else:
        day = start + relativedelta(weekday=named(place))
    return Written(at - 1, end, "named", (day,))
