"""The weekly report: every figure of it, worked out from the store's tally and the shop."""

from __future__ import annotations

from bisect import bisect_right
from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from statistics import median
from typing import TYPE_CHECKING

from ..rules.request import Shape
from .model import Kind
from .report_count import Asked, Count, Week, count
from .report_declines import Declines, declines
from .report_demand import Demand, demand
from .report_weeks import Weeks, later, start_of

if TYPE_CHECKING:
    from ..rules.shop import Shop
    from .store import Store
    from .store_tally import TallyRead, Waiting

WEEKS_COMPARED = 4
"""The trend of a size is told against so many weeks before."""
WEEKS_DRAWN = 13
URGENT_WITHIN = timedelta(days=7)
LAST_WEEK = "last"
"""What ``--week`` may say for the last whole week: what one wants to read on a Monday."""


@dataclass(frozen=True, slots=True)
class WeekLine:
    """One week of the trend."""

    week: Week
    requests: int
    customers: int


@dataclass(frozen=True, slots=True)
class Response:
    """How soon first replies were found in the Sent folder."""

    answered: int
    median: timedelta
    slowest: timedelta


@dataclass(frozen=True, slots=True)
class Corrections:
    """Readings that people put right."""

    inquiries: int
    fields: Mapping[tuple[str, str], int]
    """(field, notation it was written in): how often."""


@dataclass(frozen=True, slots=True)
class Spot:
    """Requests at one place of the map."""

    wall_factor: float
    d_of_bend: float
    requests: int
    """In the weeks that demand is looked at."""
    lately: int
    """In the weeks of the report."""


@dataclass(frozen=True, slots=True)
class Report:
    """Some weeks' figures, and what waits, whenever it came."""

    weeks: Weeks
    ends_at: datetime
    """The moment at which they are over."""
    zone: str
    why_weeks: str
    """Why it is these weeks, for whoever named none."""
    shop: str
    wall_factor_max: float
    d_of_bend_min: float
    count: Count
    kinds: Counter[Kind]
    trend: tuple[WeekLine, ...]
    waiting: Waiting
    response: Response | None
    corrections: Corrections
    open_questions: Mapping[int, int]
    """Inquiry: how many of its questions no approved answer fits."""
    declines: Declines
    demand: Demand
    spots: tuple[Spot, ...]


def weekly_report(store: Store, shop: Shop, now: datetime, weeks: Weeks | str | None) -> Report:
    """The report for ``weeks``; without any, for the week of ``now``, or the latest before it that
    has messages where this week has none yet. ``LAST_WEEK``: the last week that is over.
    """
    with store.counting() as book:
        chosen, why = _weeks(book, shop, now, weeks)
        return _report(book, shop, now, chosen, why)


def _weeks(
    book: TallyRead, shop: Shop, now: datetime, wanted: Weeks | str | None
) -> tuple[Weeks, str]:
    this_week = Week.of(now, shop.zone)
    if isinstance(wanted, Weeks):
        return wanted, "as asked"
    if wanted == LAST_WEEK:
        week = later(this_week, -1)
        return Weeks(week, week), "the last whole week"
    latest = book.latest(start_of(later(this_week, 1), shop.zone))
    week = this_week if latest is None else Week.of(latest, shop.zone)
    why = "this week" if week == this_week else "the latest week with messages"
    return Weeks(week, week), why


def _report(book: TallyRead, shop: Shop, now: datetime, weeks: Weeks, why: str) -> Report:
    start, end = weeks.start(shop.zone), weeks.end(shop.zone)
    far = max(
        shop.report.demand_weeks,
        weeks.number + WEEKS_COMPARED,
        WEEKS_DRAWN,
    )
    looked_at = list(Weeks(later(weeks.last, 1 - far), weeks.last).each())
    rows = _by_week(
        book.sizes(start_of(looked_at[0], shop.zone), end, shop.reply_address or ""),
        [start_of(week, shop.zone) for week in looked_at],
    )
    asked = [row for week in rows[far - weeks.number :] for row in week]
    earlier = rows[far - weeks.number - WEEKS_COMPARED : far - weeks.number]
    window = rows[far - shop.report.demand_weeks :]
    limits = shop.limits
    return Report(
        weeks=weeks,
        ends_at=end,
        zone=shop.time_zone,
        why_weeks=why,
        shop=shop.name,
        wall_factor_max=float(limits.wall_factor_max.value),
        d_of_bend_min=float(limits.d_of_bend_min.value),
        count=count(asked, earlier),
        kinds=Counter(book.kinds(start, end)),
        trend=tuple(
            WeekLine(week, len(of_week), len({row.customer for row in of_week}))
            for week, of_week in list(zip(looked_at, rows, strict=True))[-WEEKS_DRAWN:]
        ),
        waiting=_by_the_clocks_of(
            shop, book.waiting((now.astimezone(shop.zone) + URGENT_WITHIN).date())
        ),
        response=_response(book.response_seconds(start, end)),
        corrections=Corrections(book.corrected_inquiries(start, end), book.corrections(start, end)),
        open_questions=book.open_questions(start, end),
        declines=declines(asked, shop.limits),
        demand=demand(window, shop),
        spots=_spots(window, asked),
    )


def _by_the_clocks_of(shop: Shop, waiting: Waiting) -> Waiting:
    """With the day since when it waits as the shop's people know it."""
    oldest = waiting.oldest
    return waiting if oldest is None else waiting._replace(oldest=oldest.astimezone(shop.zone))


def _by_week(rows: Iterable[Asked], starts: list[datetime]) -> list[list[Asked]]:
    weeks: list[list[Asked]] = [[] for _ in starts]
    for row in rows:
        weeks[bisect_right(starts, row.received_at) - 1].append(row)
    return weeks


def _response(seconds: list[int]) -> Response | None:
    if not seconds:
        return None
    return Response(
        answered=len(seconds),
        median=timedelta(seconds=round(median(seconds))),
        slowest=timedelta(seconds=max(seconds)),
    )


def _spots(window: Iterable[Iterable[Asked]], lately: Iterable[Asked]) -> tuple[Spot, ...]:
    """Wall factor and D of bend of what was asked for, close ones taken together."""
    all_of_it = _places(row for week in window for row in week)
    recent = _places(lately)
    return tuple(
        Spot(*place, all_of_it[place], recent[place])
        for place in sorted(all_of_it.keys() | recent.keys())
    )


def _places(rows: Iterable[Asked]) -> Counter[tuple[float, float]]:
    sizes = Counter(row.size for row in rows if row.shape is Shape.ROUND and not row.doubtful)
    places: Counter[tuple[float, float]] = Counter()
    for size, requests in sizes.items():
        if size is not None and size.od_mm and size.wall_mm:
            od_mm = float(size.od_mm)  # a place on a picture
            wall_factor, d_of_bend = od_mm / float(size.wall_mm), float(size.clr_mm) / od_mm
            places[round(wall_factor, 1), round(d_of_bend, 2)] += requests
    return places


def utc_now() -> datetime:
    """The present moment."""
    return datetime.now(UTC)
