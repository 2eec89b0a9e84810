"""When a mandrel is likely to leave the shop, and whether that meets the date asked for.

The day of the message is an argument: the rules look at no clock.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from functools import lru_cache
from itertools import islice
from typing import TYPE_CHECKING

from .assessment import Finding

if TYPE_CHECKING:
    from .request import SizeRequest
    from .shop_lead_times import LeadTimes


@dataclass(frozen=True, slots=True)
class LeadTime:
    """A lead time against a date asked for."""

    working_days: int
    ready: date
    """The day on which a mandrel ordered at once is likely to leave."""
    needed_by: date
    likely: bool
    """Whether it leaves on or before the date asked for; the way to the customer is not counted."""


def judge(
    needed_by: date, today: date, lead_times: LeadTimes, *, from_stock: bool
) -> LeadTime | None:
    """Whether a mandrel ordered ``today`` is likely to leave by ``needed_by``.

    None where the closed days leave no such day. Source: the shop's own lead times.

    >>> from bendreply.rules.shop_lead_times import LeadTimes
    >>> week = LeadTimes(stock_working_days=2, custom_working_days=15)
    >>> judge(date(2026, 11, 20), date(2026, 11, 2), week, from_stock=False).ready
    datetime.date(2026, 11, 23)
    """
    days = lead_times.stock_working_days if from_stock else lead_times.custom_working_days
    ready = working_day_after(today, days, lead_times)
    return None if ready is None else LeadTime(days, ready, needed_by, likely=ready <= needed_by)


@lru_cache(maxsize=256)
def working_day_after(start: date, count: int, lead_times: LeadTimes) -> date | None:
    """The working day that is ``count`` working days after ``start``; for 0, ``start`` or the next.

    None where there is no such day before the year 10000.
    """
    # Late: only a request with a date needs it.
    from dateutil.rrule import DAILY, YEARLY, rrule, rruleset

    if count == 0:
        start, count = start - timedelta(days=1), 1
    begin = datetime.combine(start + timedelta(days=1), time())
    worked = rruleset()
    worked.rrule(rrule(DAILY, dtstart=begin, byweekday=lead_times.open_weekdays))
    for closure in lead_times.closed_days:
        first, last = (datetime.combine(day, time()) for day in (closure.first, closure.last))
        if closure.every_year:
            worked.exrule(rrule(YEARLY, dtstart=begin, bymonth=first.month, bymonthday=first.day))
        else:
            worked.exrule(rrule(DAILY, dtstart=first, until=last))
    found = next(islice(worked, count - 1, None), None)
    return None if found is None else found.date()


def lead_time_finding(
    request: SizeRequest, lead_times: LeadTimes, today: date, *, from_stock: bool
) -> Iterator[Finding]:
    """One sentence on the date asked for; nothing where none was, or where it is in doubt and the
    readings don't agree (the reply asks which is meant).
    """
    if request.needed_by is None:
        return
    judged = [judge(day, today, lead_times, from_stock=from_stock) for day in _dates_meant(request)]
    first = judged[0]
    if first is None or any(other is None or other.likely != first.likely for other in judged):
        return
    what = "A mandrel from stock" if from_stock else "A mandrel made to order"
    days = f"{first.working_days} working day{'s' if first.working_days != 1 else ''}"
    outcome = "is likely to be met" if first.likely else "is not likely to be met"
    yield Finding(
        rule="lead-time",
        effect="notes" if first.likely else "warns",
        text=(
            f"{what} takes about {days}, until about {_long(first.ready)} if ordered at once, so "
            f"your date of {_long(first.needed_by)} {outcome}."
        ),
        source="shop.toml, lead_times",
        field="needed_by",
    )


def _dates_meant(request: SizeRequest) -> list[date]:
    assert request.needed_by is not None, "asked only with a date"
    dates = [request.needed_by]
    if (doubt := request.doubt_on("needed_by")) is not None:
        dates += [day for day in map(_date, doubt.readings) if day is not None]
    return dates


def _date(reading: object) -> date | None:
    try:
        return date.fromisoformat(str(reading))
    except ValueError:
        return None


def _long(day: date) -> str:
    # The month in words: 04/12 is April to half of the customers.
    return f"{day.day} {day:%B %Y}"
