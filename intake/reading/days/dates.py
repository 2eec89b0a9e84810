"""When the mandrel is needed: the day of delivery, not the day a quotation is due."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date

from ....rules.request import Doubt
from ..counts.several import places_of
from ..sizes.groups import Group
from ..tables.text_tables import RowFacts
from ..text.figures import Layout
from ..text.phrases import words_of
from . import words as d
from .calendar import calendar_of
from .forms import Calendar
from .governing import Governed, governed_days, written_days
from .written import Written


@dataclass(frozen=True, slots=True)
class Needed:
    """The day, and a doubt where its spelling fits two days."""

    day: date | None = None
    doubt: Doubt | None = None


def find_needed_by(
    text: str, sent_on: date | None, *, american: bool, day_first: bool = False
) -> Needed:
    """The day by which the tooling is wanted, or nothing. ``sent_on`` is the mail's own day.

    ``american`` and ``day_first`` say that the sender surely writes 4/5 for April 5, or for May 4;
    where neither does, May 4 is likelier.
    """
    calendar = calendar_of(text, sent_on, american=american, day_first=day_first)
    best: Governed | None = None
    for governed in governed_days(calendar):
        if governed.rank == 0 or (sent_on is not None and governed.written.days[0] < sent_on):
            continue
        if best is None or governed.corrects or _weight(governed) > _weight(best):
            best = governed
    return _needed(best.written) if best is not None else Needed()


def needed_by_size(
    layout: Layout,
    groups: list[Group],
    rows: Mapping[tuple[str, int, int], RowFacts],
    sent_on: date | None,
    *,
    american: bool,
    day_first: bool = False,
) -> list[Needed | None]:
    """The day that a table row, or the line of a list, names for its own size; None elsewhere."""
    found: list[Needed | None] = []
    for group in groups:
        facts = rows.get(group.row) if group.row is not None else None
        when = facts.when if facts is not None else ""
        found.append(
            _first(calendar_of(when, sent_on, american=american, day_first=day_first))
            if when
            else None
        )
    if len(groups) < 2 or any(found):
        return found
    return (
        _by_line(layout.text, places_of(groups), sent_on, american=american, day_first=day_first)
        or found
    )


def _by_line(
    text: str, places: list[int], sent_on: date | None, *, american: bool, day_first: bool = False
) -> list[Needed | None]:
    """A day on every size's own line; something must say that it is one of delivery."""
    starts = [text.rfind("\n", 0, place) + 1 for place in places]
    if len(set(starts)) < len(starts):
        return []
    before = words_of(text[: text.find("\n", min(starts)) + 1 or len(text)])
    if not any(before.phrase(at, d.DELIVERY) for at in range(len(before))):
        return []
    found: list[Needed | None] = []
    for start in starts:
        end = text.find("\n", start)
        line = text[start : end if end >= 0 else len(text)]
        needed = _first(calendar_of(line, sent_on, american=american, day_first=day_first))
        if needed is None:
            return []
        found.append(needed)
    return found


def _first(calendar: Calendar) -> Needed | None:
    for written in written_days(calendar):
        past = calendar.sent_on is not None and written.days[0] < calendar.sent_on
        if not past and not written.fraction:
            return _needed(written)
    return None


def _weight(governed: Governed) -> tuple[int, bool]:
    return governed.rank, governed.written.kind != "counted"


def _needed(written: Written) -> Needed:
    if len(written.days) == 1:
        return Needed(written.days[0])
    readings = tuple(day.isoformat() for day in written.days)
    return Needed(written.days[0], Doubt(field="needed_by", readings=readings, why=written.why))
