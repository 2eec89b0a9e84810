"""The weekly report: which week, its figures, as JSON and as plain text."""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime, tzinfo

from ..rules.assessment import Assessment, Decision
from .inquiry import Asking, State
from .model import Kind
from .report_count import Asked, SizeCount, Week, WeekCount, count_week, latest_week

SIZE_FIELDS = ("od", "wall", "clr", "material", "shape")
"""What has to be beyond doubt before a request is counted under its size."""


@dataclass(frozen=True, slots=True)
class Received:
    """One message in the store, with what it asked for."""

    at: datetime
    kind: Kind
    asked: tuple[Asked, ...] = ()
    waits: bool = False
    """Whether a person still has to say a word about it."""


def received(asking: Asking) -> Received:
    """What the store keeps of one inquiry, as it is counted.

    A customer is an address, whatever its capitals; who left none can't be told from others, so
    that each such message counts as a customer of its own.
    """
    at = asking.received_at or asking.created_at
    customer = asking.sender.address.casefold() or f"inquiry {asking.id}"
    return Received(
        at=at,
        kind=asking.kind,
        asked=tuple(_asked(assessment, at, customer) for assessment in asking.assessments),
        waits=asking.state is State.WAITING,
    )


def _asked(assessment: Assessment, at: datetime, customer: str) -> Asked:
    request = assessment.request
    return Asked(
        received_at=at,
        customer=customer,
        shape=request.shape,
        od_mm=request.od_mm,
        wall_mm=request.wall_mm,
        clr_mm=request.clr_mm,
        material=request.material,
        doubtful=any(doubt.field in SIZE_FIELDS for doubt in request.doubts),
        decision=assessment.decision,
    )


@dataclass(frozen=True, slots=True)
class Report:
    """One week's figures and what waits, whenever it came."""

    count: WeekCount
    kinds: Counter[Kind]
    waiting: int
    """Messages of any week that wait for a person."""
    zone: str
    why_week: str
    """Why it is this week, for whoever named none."""


def weekly_report(
    messages: Iterable[Received], *, zone: tzinfo, zone_name: str, now: datetime, week: Week | None
) -> Report:
    """The report for ``week``; without one, for the week of ``now``, or the latest before it that
    has messages where this week has none yet.
    """
    messages = list(messages)
    why = "as asked"
    if week is None:
        this_week = Week.of(now, zone)
        week = latest_week([r.at for r in messages], zone) or this_week
        why = "this week" if week == this_week else "the latest week with messages"
    in_week = [r for r in messages if Week.of(r.at, zone) == week]
    return Report(
        count=count_week((asked for r in in_week for asked in r.asked), week, zone),
        kinds=Counter(r.kind for r in in_week),
        waiting=sum(r.waits for r in messages),
        zone=zone_name,
        why_week=why,
    )


def as_json(report: Report) -> str:
    """The report as one JSON object; lengths in mm, every decision and kind named even at 0."""
    count = report.count
    return json.dumps(
        {
            "week": str(count.week),
            "from": count.week.monday.isoformat(),
            "to": count.week.sunday.isoformat(),
            "time_zone": report.zone,
            "messages": {kind: report.kinds[kind] for kind in Kind},
            "requests": count.requests,
            "customers": count.customers,
            "sizes": [_size_json(size) for size in count.sizes],
            "doubtful": [_size_json(size) for size in count.doubtful],
            "incomplete": count.incomplete,
            "outcomes": _outcomes_json(count.outcomes),
            "waiting": report.waiting,
        }
    )


def _size_json(count: SizeCount) -> dict[str, object]:
    return {
        "shape": count.shape,
        "od_mm": float(count.size.od_mm),
        "wall_mm": float(count.size.wall_mm),
        "clr_mm": float(count.size.clr_mm),
        "material": count.material,
        "requests": count.requests,
        "customers": count.customers,
        "outcomes": _outcomes_json(count.outcomes),
    }


def _outcomes_json(outcomes: Counter[Decision]) -> dict[str, int]:
    return {decision: outcomes[decision] for decision in Decision}
