"""Working days to a date: weekends, closed days, the edges, and what is told of them."""

from __future__ import annotations

from datetime import date, timedelta
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import ValidationError

from bendreply.rules.lead_time import judge, lead_time_finding, working_day_after
from bendreply.rules.request import Doubt, SizeRequest
from bendreply.rules.shop_lead_times import LeadTimes

MONDAY = date(2026, 11, 2)


def week(**more: Any) -> LeadTimes:
    return LeadTimes(**{"stock_working_days": 2, "custom_working_days": 15, **more})


@pytest.mark.parametrize(
    ("start", "days", "more", "ready"),
    [
        (MONDAY, 1, {}, date(2026, 11, 3)),
        (MONDAY, 0, {}, MONDAY),
        (date(2026, 11, 7), 0, {}, date(2026, 11, 9)),  # a Saturday: the Monday after
        (date(2026, 11, 6), 1, {}, date(2026, 11, 9)),  # Friday to Monday
        (MONDAY, 15, {}, date(2026, 11, 23)),  # three weeks
        (MONDAY, 15, {"closed_days": ["2026-11-11"]}, date(2026, 11, 24)),
        (MONDAY, 15, {"closed_days": ["2026-11-14"]}, date(2026, 11, 23)),  # a Saturday anyway
        (date(2026, 12, 24), 1, {"closed_days": ["12-25"]}, date(2026, 12, 28)),
        (date(2026, 12, 23), 2, {"closed_days": ["2026-12-24 to 2027-01-03"]}, date(2027, 1, 5)),
        (MONDAY, 4, {"closed_weekdays": ["Friday", "saturday", "sunday"]}, date(2026, 11, 9)),
        (MONDAY, 7, {"closed_weekdays": []}, date(2026, 11, 9)),  # works every day
    ],
)
def test_working_days(start: date, days: int, more: dict[str, Any], ready: date) -> None:
    assert working_day_after(start, days, week(**more)) == ready


def test_the_day_itself_is_still_in_time() -> None:
    for needed, likely in (("2026-11-22", False), ("2026-11-23", True)):
        found = judge(date.fromisoformat(needed), MONDAY, week(), from_stock=False)
        assert found is not None
        assert found.likely is likely


def asked(needed: str | None, *doubtful: str) -> SizeRequest:
    doubts = (Doubt(field="needed_by", readings=doubtful, why="which"),) if doubtful else ()
    return SizeRequest(needed_by=date.fromisoformat(needed) if needed else None, doubts=doubts)


def told(request: SizeRequest, *, from_stock: bool = False) -> list[tuple[str, str]]:
    found = lead_time_finding(request, week(), MONDAY, from_stock=from_stock)
    return [(finding.effect, finding.text) for finding in found]


def test_a_date_too_early_is_warned_of_and_a_later_one_noted() -> None:
    ((effect, text),) = told(asked("2026-11-13"))
    assert effect == "warns"
    assert "about 15 working days" in text
    assert "23 November 2026" in text
    assert "13 November 2026 is not likely to be met" in text
    ((effect, text),) = told(asked("2026-11-13"), from_stock=True)
    assert effect == "notes"
    assert "about 2 working days" in text
    assert "is likely to be met" in text


def test_a_date_in_doubt_is_judged_only_where_its_readings_agree() -> None:
    assert told(asked("2026-12-04", "2026-12-04", "2026-04-12")) == []
    assert len(told(asked("2026-12-04", "2026-12-04", "2026-12-05"))) == 1
    assert told(asked(None)) == []


@given(
    st.dates(date(2020, 1, 1), date(2100, 1, 1)),
    st.integers(0, 60),
    st.sets(st.sampled_from(["monday", "friday", "sunday"])),
)
def test_more_days_never_end_sooner_and_never_on_a_closed_day(
    start: date, days: int, closed: set[str]
) -> None:
    lead = week(closed_weekdays=sorted(closed), closed_days=["12-25"])
    ready, next_one = (working_day_after(start, n, lead) for n in (days, days + 1))
    assert ready is not None
    assert next_one is not None
    assert start <= ready
    assert next_one >= ready + timedelta(days=1) or days == 0
    assert f"{ready:%A}".casefold() not in closed
    assert (ready.month, ready.day) != (12, 25)


@pytest.mark.parametrize(
    ("more", "says"),
    [
        ({"closed_days": ["25 December"]}, "no closed day"),
        ({"closed_days": ["2026-13-01"]}, "no closed day"),
        ({"closed_days": ["2026-12-24 to 2026-12-01"]}, "ends before it begins"),
        ({"closed_days": ["2026-12-24 to 2028-12-01"]}, "longer than a year"),
        ({"closed_weekdays": ["caturday"]}, "monday"),
        (
            {"closed_weekdays": "monday tuesday wednesday thursday friday saturday sunday".split()},
            "no day of the week",
        ),
    ],
)
def test_faults_in_the_shop_file_are_said(more: dict[str, Any], says: str) -> None:
    with pytest.raises(ValidationError, match=says):
        week(**more)
