"""Every day that is written, and whether the words around it make it one of delivery."""

from __future__ import annotations

from dataclasses import dataclass, replace

from ..text.phrases import Words
from . import words as d
from .after import asks_after, is_past
from .behind_words import DELIVERED, HERE
from .day_words import BEGINNINGS, ENDS, FOLLOWING, MEASURES
from .forms import Calendar
from .labelled import (
    ends_span,
    goes_on,
    is_asked_of_us,
    is_drawn,
    is_labelled,
    is_letter,
    is_too_early,
    stands_alone,
)
from .of_earlier_mail import heads_mail, was_then
from .of_that_month import bare_number, of_that_month, so_long_before
from .own_work import hands_over, is_date_asked, is_own_work, is_work_ahead, would_come_by
from .owner import (
    clause_before,
    is_anothers,
    is_before_occasion,
    is_for_papers,
    is_last_day,
    leans_on_things,
)
from .quotes import is_of_quotation
from .shifted import shifted
from .waiting import can_do_without_until, is_away_until
from .written import Written

_FAR = 40
"""Words looked back for what governs a day; keeps the search linear."""
_LEANS = 12
_NEAR = 6
"""Words that may explain one day by the next: 'KW 44, also 30.10.2026'."""


@dataclass(frozen=True, slots=True)
class Governed:
    """A written day and how surely it is the day of delivery; rank 0 is not at all."""

    written: Written
    rank: int
    corrects: bool
    explains: bool = False
    """Whether it only tells the day before it again."""
    loose: bool = False
    """Whether no word says what it is for, and one beside it that it is a limit: 'until', 'by'."""


def governed_days(calendar: Calendar) -> list[Governed]:
    """Every day that is written, in order, and what the words around it say of it."""
    found: list[Governed] = []
    behind = 0
    earlier: Written | None = None
    for written in written_days(calendar):
        governed = _govern(calendar, written, behind, found[-1] if found else None)
        if was_then(calendar, written, earlier):
            governed = Governed(written, 0, corrects=False)
        if heads_mail(calendar, written):
            earlier = written
        found.append(governed)
        behind = written.end
    return found


def written_days(calendar: Calendar) -> list[Written]:
    found: list[Written] = []
    at, size = 0, len(calendar.words)
    while at < size:
        last = found[-1] if found else None
        written = calendar.at(at) if calendar.may_begin(at) else None
        written = written or bare_number(calendar.words, at, last, calendar.sent_on)
        written = written or so_long_before(calendar.words, at, last)
        if written is None:
            at += 1
            continue
        at = written.end
        written = of_that_month(calendar.words, written, last, calendar.sent_on)
        written = shifted(calendar.words, written, calendar.sent_on)
        if written is None:
            continue
        if found and written.start < found[-1].end:  # "within 10 days from November 2"
            written = replace(written, start=found.pop().start)
        found.append(written)
        at = written.end
    return found


def _govern(calendar: Calendar, written: Written, behind: int, last: Governed | None) -> Governed:
    """What the words around a day say of it; ``behind`` is where the day before it ends."""
    words = calendar.words
    stop = _stop(words, written.start, behind)
    if is_of_quotation(words, written.start, written.end, stop):
        return Governed(written, 0, corrects=False)
    if ends_span(words, written.start) or is_too_early(words, written.start):
        return Governed(written, 0, corrects=False)
    asked = (last is None or not last.rank) and is_asked_of_us(words, written.start)
    if asked or is_labelled(calendar, written):
        return Governed(written, 4, corrects=False)
    if is_away_until(words, written.start, written.end):
        return Governed(written, 0, corrects=False)
    without = can_do_without_until(words, written.start, written.end, stop)
    if without is not None:
        return Governed(written, 4 if without else 0, corrects=False)
    turns = [at for at in range(stop, written.start) if _corrects(words, at, written)]
    if turns and last is not None and last.rank:
        stop = turns[-1]  # "by 12 June as we shut for the week, sorry, make that 29 May"
    cue, place = _cue_before(words, written.start, stop)
    corrects = bool(turns) or is_drawn(words, written.start)
    if cue is None and last is not None and last.rank and _explains(words, behind, written.start):
        return Governed(written, last.rank, corrects=False, explains=True)
    if cue is None and last is not None and last.rank and goes_on(words, behind, written.start):
        return Governed(written, last.rank, corrects=False)
    if cue in (None, "wish") and corrects and last is not None and last.rank:
        return Governed(written, last.rank, corrects=True)
    if cue != "other" and last is not None and last.rank and is_last_day(words, written.end):
        return Governed(written, last.rank, corrects=True)
    rank = _rank(calendar, written, cue, place)
    corrects = corrects or (rank > 0 and last is not None and _is_mounted(words, last, written))
    loose = cue != "other" and words.at(written.start - 1) in d.LEADS_LIMIT
    return Governed(
        written, rank, corrects and last is not None and last.rank > 0, loose=rank == 0 and loose
    )


def _corrects(words: Words, at: int, written: Written) -> bool:
    """'Sorry, make that the 4th'; 'sorry for the rush' takes nothing back, and 'mid-October, let's
    say the 15th' leaves the month to the first."""
    if words.phrase(at, d.MEANS):
        return written.kind != "counted"
    return words.phrase(at, d.CORRECTS) > 0 and words.at(at + 1) not in d.SORRY_FOR


def _is_mounted(words: Words, last: Governed, written: Written) -> bool:
    """'Tenerlo montado el 16 de noviembre, que llegue el 9': the first is the customer's own."""
    begin = max(words.first[last.written.start], last.written.start - _NEAR)
    mounted = any(word in d.SET_UP for word in words.text[begin : begin + _NEAR])
    return mounted and words.together(last.written.start, written.start)


def _stop(words: Words, start: int, behind: int) -> int:
    """Where the clause before a day begins."""
    return max(behind, start - _FAR, words.first[start])


def _cue_before(words: Words, start: int, stop: int) -> tuple[d.Cue | None, int]:
    """The nearest word that says what a day is for, and where it stands."""
    for at in range(start - 1, stop - 1, -1):
        best: tuple[int, d.Cue] | None = None
        for cue, table in d.CUES:
            used = words.phrase(at, table)
            if used and cue == "other" and is_before_occasion(words, at, start):
                continue
            if used and at + used <= start and (best is None or used > best[0]):
                best = used, cue
        if best is not None:
            return _understood(words, best[1], at, stop)
    return None, stop


def _understood(words: Words, cue: d.Cue, at: int, stop: int) -> tuple[d.Cue, int]:
    """A cue that leans on the words before it, in their light."""
    if cue == "other" and words.at(at) in d.DONE and _is_wanted(words, at, stop):
        return "delivery", at  # "we'll want two mandrels delivered on 7 July"
    if cue == "delivery" and words.at(at) in d.DONE and words.at(at - 1) in d.WAS:
        return "other", at  # "the old one was delivered end of November"
    if cue == "delivery" and words.at(at) in d.BY_THEN and _speaks_of_persons(words, at, stop):
        return "other", at  # "I'm available until Friday"
    if cue == "delivery" and words.at(at - 1) in d.NONE:
        return "other", at  # "no delivery on 12 November please"
    if cue == "delivery" and is_date_asked(words, at):
        return "other", at  # "I need a delivery date by Monday"
    if cue == "delivery" and words.at(at + 1) in d.SET_UP:
        return "due", at  # "tenerlo montado el 16": it has to come earlier, if that day is told
    if cue == "limit":
        leant, _ = _cue_before(words, at, max(stop, at - _LEANS))
        return ("other" if leant == "other" else "delivery"), at
    if cue == "passive":
        near = at if words.at(at - 1) == "\n" else max(stop, at - 2)
        return ("other" if _speaks_of_others(words, at, near) else "delivery"), at
    if cue == "due":
        owed = set(words.text[max(stop, at - 4) : at]) & d.ANOTHERS
        if owed - d.OCCASIONS or _speaks_of_others(words, at, max(stop, at - _LEANS)):
            return "other", at
    return cue, at


def _is_wanted(words: Words, at: int, stop: int) -> bool:
    """Whether what is delivered is wished for or has to be: 'must be delivered on'."""
    if words.at(at - 1) in d.WAS:
        return False
    near = range(max(stop, at - _LEANS), at)
    return any(words.phrase(index, d.WISH) for index in near)


def _speaks_of_persons(words: Words, at: int, stop: int) -> bool:
    return bool(set(words.text[max(stop, at - 3) : at]) & d.PRESENT)


def _speaks_of_others(words: Words, at: int, stop: int) -> bool:
    """'Quotes due', 'RFQ 26-1187 / tooling / due 10/30'."""
    return any(
        words.phrase(index, d.OTHER) and not is_before_occasion(words, index, at)
        for index in range(at - 1, stop - 1, -1)
    )


def _explains(words: Words, behind: int, start: int) -> bool:
    """'KW 44, also 30.10.2026', 'within 6 weeks i.e. on 22.12.2026'; not the next sentence."""
    between = words.text[behind:start]
    return (
        set(between) != {"."}
        and 0 < len(between) <= _NEAR
        and all(word in d.EXPLAINS for word in between)
    )


def _rank(calendar: Calendar, written: Written, cue: d.Cue | None, place: int) -> int:
    words = calendar.words
    if written.kind == "short" and written.fraction and not _is_direct(words, written.start):
        return 0
    if is_past(words, written, place) or hands_over(words, written.start, written.end):
        return 0
    if would_come_by(words, written.start, written.end):
        return 0
    if cue in (None, "wish") and is_work_ahead(words, written.start, written.end):
        return 0
    if cue in ("delivery", "wish", "passive") and is_anothers(words, written.start, place):
        return 0
    if cue == "delivery":
        return 3 if set(words.text[place : written.start]) & d.SET_UP else 4
    if words.phrase(written.end, DELIVERED):
        return 3
    if cue == "other":
        return 0
    if cue == "due" or words.phrase(written.end, HERE):
        return 3
    if asks_after(calendar, written):
        things = set(clause_before(words, written.start)) - d.LEADING
        alone = not things and leans_on_things(words, written.start)
        return 0 if alone or (things & d.THINGS and not things & d.TOOLS) else 3
    if cue is None and stands_alone(calendar, written):
        return 2
    if cue is None:
        at = written.start - 1
        at -= words.at(at) in d.ARTICLES  # "avant le 18/12"
        at -= written.kind != "counted" and words.at(at) in FOLLOWING  # "bis nächsten Mo, den 5."
        leads = words.at(at) in d.LEADING or (words.at(at) in d.FOR and _is_dated(words, written))
        if not leads or is_for_papers(words, written.start):
            return 0
        return 0 if leans_on_things(words, written.start) else 2
    if is_own_work(words, place, written):
        return 0
    # "Delivery should be 4 December": the wish is about what stands before it.
    leant, _ = _cue_before(words, place, _stop(words, place, 0))
    if words.at(place) in d.MODALS and leant == "other":
        return 0
    wished = _is_wished_for(words, place, written.start) or leant in ("delivery", "due")
    return 3 if wished else 0


def _is_dated(words: Words, written: Written) -> bool:
    """Whether a day is told as such: 'para el 6', 'pour fin octobre', and not 'pour Noël'."""
    told = written.kind == "named" or words.at(written.start) in ENDS | BEGINNINGS
    return told and not d.THINGS & set(clause_before(words, written.start))


def _is_wished_for(words: Words, wish: int, start: int) -> bool:
    """'Need it Friday', 'I want two of them by Friday', 'need it by Labor Day, so September 3'."""
    at = start - 1
    while at > wish and words.at(at) in d.ARTICLES | d.URGENTLY:
        at -= 1
    if at == wish or words.at(at) in d.LEADING | d.ON:
        return True
    lines = words.text[wish + 1 : at]
    if words.at(at) in d.ON_A_DAY and lines and all(map(is_letter, lines)):
        return True  # "we'd want A and B on 1 April"
    if words.at(at) == "for" and words.at(start).isdecimal():
        return True  # "we'd need one for the 20th of November"
    if words.at(at) in d.ON_OR_UNTIL and words.at(wish) in d.WISHED_TOOL:
        return bool(d.TOOLS & set(words.text[wish:at]))  # "need a new mandrel on Monday"
    between = words.text[wish + (words.phrase(wish, d.WISH) or 1) : start]
    if all(word in d.PRONOUNS for word in between[:4]):
        return len(between) <= 4
    if not between or between[0] not in d.PRONOUNS:
        return False
    behind = 2 if between[1:2] and between[1] in d.THERE else 1  # "I need it in by January 8"
    return any(word in d.LEADS_LIMIT for word in between[behind : behind + 1])


def _is_direct(words: Words, start: int) -> bool:
    """Whether figures that may be a fraction stand right behind 'by', 'on', a colon."""
    before, ahead = words.at(start - 1), words.at(start - 2)
    if before not in d.DIRECT:
        return False
    # "3/4 by 1/2" is a size.
    return not (before == "by" and (ahead.isdecimal() or ahead in MEASURES))
