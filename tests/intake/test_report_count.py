"""Counting: weeks, twins, customers, doubts apart."""

from __future__ import annotations

from collections import Counter
from datetime import UTC, date, datetime, timedelta
from decimal import Decimal

import pytest
from dateutil.tz import gettz
from hypothesis import given
from hypothesis import strategies as st

from bendreply.intake.report_count import Asked, Size, Week, count_week, join_twins, latest_week
from bendreply.rules.assessment import Decision
from bendreply.rules.request import Material, Shape

CHICAGO = gettz("America/Chicago")
assert CHICAGO is not None
WEEK = Week(2026, 47)


def asked(
    customer: str = "ada@example.com",
    size: tuple[str, str, str | None] = ("44.45", "2.413", "133.35"),
    at: datetime = datetime(2026, 11, 18, 12, tzinfo=UTC),
    material: Material | None = Material.CARBON_STEEL,
    doubtful: bool = False,
    decision: Decision = Decision.STOCK,
) -> Asked:
    od, wall, clr = size
    return Asked(
        received_at=at,
        customer=customer,
        shape=Shape.ROUND,
        od_mm=Decimal(od),
        wall_mm=Decimal(wall),
        clr_mm=None if clr is None else Decimal(clr),
        material=material,
        doubtful=doubtful,
        decision=decision,
    )


class TestWeeks:
    def test_a_week_runs_from_monday_to_sunday(self) -> None:
        # ISO 8601: 2026-W47 holds Thursday 19 November (calendar, by hand)
        assert (WEEK.monday, WEEK.sunday) == (date(2026, 11, 16), date(2026, 11, 22))
        assert Week.parse("2026-W47") == WEEK
        assert str(Week.parse("2026w7")) == "2026-W07"

    def test_a_year_with_53_weeks(self) -> None:
        # 2026 starts on a Thursday, so it has 53 weeks (ISO 8601); 2025 has 52
        assert Week.parse("2026-W53").sunday == date(2027, 1, 3)
        with pytest.raises(ValueError, match=r"^'2025-W53' is not a week of that year$"):
            Week.parse("2025-W53")

    @pytest.mark.parametrize("text", ["", "W47", "2026", "2026-47", "2026-W", "2026-W٤٧"])
    def test_anything_else_is_refused_in_one_sentence(self, text: str) -> None:
        with pytest.raises(ValueError, match=r"is not an ISO week: write it like 2026-W47$"):
            Week.parse(text)

    def test_the_clocks_of_the_shop_decide(self) -> None:
        # Monday 16 November 05:59 UTC is Sunday 23:59 in Chicago (UTC-6 in winter)
        border = datetime(2026, 11, 16, 5, 59, tzinfo=UTC)
        assert Week.of(border, CHICAGO) == Week(2026, 46)
        assert Week.of(border + timedelta(minutes=1), CHICAGO) == WEEK
        assert Week.of(border, UTC) == WEEK

    def test_the_latest_week_of_nothing_is_none(self) -> None:
        assert latest_week([], CHICAGO) is None
        moments = [datetime(2026, 11, 18, tzinfo=UTC), datetime(2026, 11, 2, tzinfo=UTC)]
        assert latest_week(moments, CHICAGO) == WEEK


class TestTwins:
    @pytest.mark.parametrize(
        ("inch", "metric"),
        [
            # inch figures x 25.4 beside what a metric shop writes for the same tube
            (("38.1", "1.651", "114.3"), ("38.1", "1.65", "114")),
            (("48.26", "3.683", "152.4"), ("48.3", "3.68", "152.4")),
            (("44.45", "2.1082", "133.35"), ("44.5", "2.11", "133")),
            (("25.4", "3.048", "76.2"), ("25.4", "3.05", "76")),
        ],
    )
    def test_one_size_in_two_units_is_one(
        self, inch: tuple[str, str, str], metric: tuple[str, str, str]
    ) -> None:
        count = count_week([asked(size=inch), asked("bo@example.com", metric)], WEEK, UTC)
        assert [(s.requests, s.customers) for s in count.sizes] == [(2, 2)]

    @pytest.mark.parametrize(
        ("one", "other"),
        [
            (("38", "1.5", "114"), ("38.1", "1.5", "114")),
            (("42.164", "2.5", "114"), ("42.4", "2.5", "114")),
            (("38.1", "1.2", "114"), ("38.1", "1.25", "114")),
            (("38.1", "1.5", "114"), ("38.1", "1.5", "115")),
        ],
    )
    def test_neighbours_stay_two(
        self, one: tuple[str, str, str], other: tuple[str, str, str]
    ) -> None:
        count = count_week([asked(size=one), asked(size=other)], WEEK, UTC)
        assert len(count.sizes) == 2

    def test_the_size_shown_is_what_most_wrote(self) -> None:
        metric = ("38.1", "1.65", "114.3")
        rows = [asked(size=("38.1", "1.651", "114.3")), asked(size=metric), asked(size=metric)]
        assert count_week(rows, WEEK, UTC).sizes[0].size == Size(*map(Decimal, metric))

    @given(
        st.lists(
            st.builds(
                Size,
                st.decimals(5, 60, places=2),
                st.decimals(1, 2, places=2),
                st.decimals(90, 92, places=1),
            ),
            max_size=30,
        )
    )
    def test_every_size_is_in_exactly_one_group_whatever_the_order(self, sizes: list[Size]) -> None:
        groups = {frozenset(group) for group in join_twins(sizes)}
        assert groups == {frozenset(group) for group in join_twins(reversed(sizes))}
        assert Counter(size for group in groups for size in group) == Counter(set(sizes))


class TestCounts:
    def test_a_customer_who_writes_three_times_is_one(self) -> None:
        count = count_week([asked(), asked(), asked(), asked("bo@example.com")], WEEK, UTC)
        assert (count.requests, count.customers) == (4, 2)
        assert (count.sizes[0].requests, count.sizes[0].customers) == (4, 2)

    def test_sizes_with_most_customers_come_first(self) -> None:
        often = ("50.8", "2.413", "152.4")
        rows = [asked(size=often), asked(size=often), asked(size=often)]
        rows += [asked(), asked("bo@example.com")]
        assert [s.customers for s in count_week(rows, WEEK, UTC).sizes] == [2, 1]

    def test_doubtful_and_incomplete_requests_are_counted_apart(self) -> None:
        rows = [asked(), asked(doubtful=True), asked(size=("44.45", "2.413", None))]
        count = count_week(rows, WEEK, UTC)
        assert [s.requests for s in count.sizes] == [1]
        assert [s.requests for s in count.doubtful] == [1]
        assert (count.incomplete, count.requests) == (1, 3)

    def test_material_families_are_told_apart(self) -> None:
        rows = [asked(), asked(material=Material.TITANIUM), asked(material=None)]
        assert [s.material for s in count_week(rows, WEEK, UTC).sizes] == [
            None,
            Material.CARBON_STEEL,
            Material.TITANIUM,
        ]

    def test_outcomes_by_decision(self) -> None:
        rows = [asked(), asked(decision=Decision.DECLINE), asked(decision=Decision.DECLINE)]
        count = count_week(rows, WEEK, UTC)
        assert count.outcomes == {Decision.STOCK: 1, Decision.DECLINE: 2}
        assert count.sizes[0].outcomes == {Decision.STOCK: 1, Decision.DECLINE: 2}

    def test_an_empty_week_is_all_zeros(self) -> None:
        count = count_week([asked()], Week(2026, 46), UTC)
        assert (count.requests, count.customers, count.sizes, count.incomplete) == (0, 0, (), 0)

    @given(
        st.permutations(
            [
                asked(c, s)
                for c in "ab"
                for s in (
                    ("48.26", "3.683", "152.4"),
                    ("48.3", "3.68", "152"),
                    ("38.1", "1.651", "114.3"),
                )
            ]
        )
    )
    def test_the_order_of_arrival_changes_nothing(self, rows: list[Asked]) -> None:
        assert count_week(rows, WEEK, UTC) == count_week(rows[::-1], WEEK, UTC)

    def test_a_follow_up_changes_no_count_of_customers(self) -> None:
        rows = [asked(), asked("bo@example.com")]
        before, after = (count_week(r, WEEK, UTC) for r in (rows, [*rows, asked()]))
        assert before.customers == after.customers
        assert before.sizes[0].customers == after.sizes[0].customers
