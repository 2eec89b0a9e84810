"""The weekly report: which week, what is counted, as JSON and as text."""

from __future__ import annotations

import json
from collections import Counter
from datetime import UTC, datetime
from decimal import Decimal

from bendreply.intake.inquiry import Asking, State
from bendreply.intake.model import Address, Kind
from bendreply.intake.report import Report, as_json, received, weekly_report
from bendreply.intake.report_count import Week
from bendreply.intake.screen_report import report_text
from bendreply.rules.assessment import Assessment, Decision
from bendreply.rules.request import Doubt, FieldName, Material, SizeRequest

NOW = datetime(2026, 11, 25, 12, tzinfo=UTC)  # a Wednesday of week 48


def asking(
    id: int,
    *sizes: SizeRequest,
    sender: str = "ada@example.com",
    at: datetime | None = datetime(2026, 11, 18, 12, tzinfo=UTC),
    kind: Kind = Kind.SIZES,
    state: State = State.WAITING,
) -> Asking:
    return Asking(
        id=id,
        state=state,
        kind=kind,
        channel="email",
        sender=Address(name="", address=sender),
        received_at=at,
        created_at=NOW,
        assessments=tuple(Assessment(request=s, decision=Decision.STOCK) for s in sizes),
        questions=(),
    )


def tube(od: str = "44.45", wall: str = "2.413", doubt: FieldName | None = None) -> SizeRequest:
    doubts = () if doubt is None else (Doubt(field=doubt, readings=(), why="two ways to read"),)
    return SizeRequest(
        od_mm=Decimal(od),
        wall_mm=Decimal(wall),
        clr_mm=Decimal("133.35"),
        material=Material.CARBON_STEEL,
        doubts=doubts,
    )


def report(*askings: Asking, week: Week | None = None, now: datetime = NOW) -> Report:
    messages = [received(one) for one in askings]
    return weekly_report(messages, zone=UTC, zone_name="UTC", now=now, week=week)


def test_without_a_week_it_is_this_one_or_the_latest_with_messages() -> None:
    latest = report(asking(1))
    assert (latest.count.week, latest.why_week) == (
        Week(2026, 47),
        "the latest week with messages",
    )
    now = report(asking(1, at=NOW))
    assert (now.count.week, now.why_week) == (Week(2026, 48), "this week")
    empty = report()
    assert (empty.count.week, empty.why_week) == (Week(2026, 48), "this week")
    asked_for = report(asking(1), week=Week(2026, 3))
    assert (asked_for.count.requests, asked_for.why_week) == (0, "as asked")


def test_a_message_without_a_date_counts_when_it_was_taken_in() -> None:
    assert report(asking(1, tube(), at=None)).count.week == Week(2026, 48)


def test_an_address_is_one_customer_whatever_its_capitals() -> None:
    count = report(asking(1, tube()), asking(2, tube(), sender="ADA@Example.com")).count
    assert (count.requests, count.customers) == (2, 1)


def test_messages_without_an_address_are_customers_of_their_own() -> None:
    count = report(asking(1, tube(), sender=""), asking(2, tube(), sender="")).count
    assert count.customers == 2


def test_a_doubt_on_the_size_counts_apart_but_one_on_the_quantity_does_not() -> None:
    count = report(asking(1, tube(doubt="wall"), tube(doubt="quantity"))).count
    assert [s.requests for s in count.sizes] == [1]
    assert [s.requests for s in count.doubtful] == [1]


def test_what_waits_is_counted_over_all_weeks() -> None:
    earlier = datetime(2026, 10, 1, tzinfo=UTC)
    counted = report(asking(1), asking(2, at=earlier), asking(3, state=State.APPROVED))
    assert counted.waiting == 2
    assert counted.kinds == Counter({Kind.SIZES: 2})


def test_the_json_names_every_kind_and_decision_even_at_zero() -> None:
    out = json.loads(as_json(report(asking(1, tube()), asking(2, tube("44.5", "2.41")))))
    assert (out["week"], out["from"], out["to"]) == ("2026-W47", "2026-11-16", "2026-11-22")
    assert out["messages"] == {"sizes": 2, "question": 0, "other": 0, "automatic": 0}
    assert out["outcomes"] == {"stock": 2, "custom-make": 0, "decline": 0, "ask": 0}
    assert out["sizes"] == [
        {
            "shape": "round",
            "od_mm": 44.45,
            "wall_mm": 2.413,
            "clr_mm": 133.35,
            "material": "carbon_steel",
            "requests": 2,
            "customers": 1,
            "outcomes": {"stock": 2, "custom-make": 0, "decline": 0, "ask": 0},
        }
    ]
    assert (out["doubtful"], out["incomplete"], out["waiting"]) == ([], 0, 2)


def test_the_text_says_the_week_and_the_size_in_both_units() -> None:
    text = report_text(report(asking(1, tube())))
    assert text.startswith("Week 2026-W47, 16 November to 22 November 2026 (the latest week")
    assert "1.75 × 0.095 × 5.25 in" in text
    assert "44.45 × 2.413 × 133.35 mm" in text
    assert max(map(len, text.splitlines())) <= 100


def test_an_empty_week_reads_plainly() -> None:
    lines = report_text(report(week=Week(2026, 53))).splitlines()
    assert lines == [
        "Week 2026-W53, 28 December to 03 January 2027 (as asked; UTC)",
        "",
        "messages  0 (none)",
        "sizes     0 requests from 0 customers",
        "answers   none",
        "waiting   0 messages, of this or any other week",
    ]
