"""Counting: weeks, twins, customers, doubts apart."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from datetime import UTC, date, datetime, timedelta, tzinfo
from decimal import Decimal

import pytest
from dateutil.tz import gettz, tzstr
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from bendreply.intake.report_count import Asked, Count, Size, Week, count, join_twins
from bendreply.intake.report_weeks import Weeks, later, start_of
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


def count_week(rows: Iterable[Asked], week: Week, zone: tzinfo) -> Count:
    return count([row for row in rows if Week.of(row.received_at, zone) == week])


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

    @pytest.mark.parametrize(
        ("zone", "week", "begins"),
        [
            # New York, clocks forward on Sunday 2026-03-08: Monday 0:00 is UTC-4 by then
            ("America/New_York", "2026-W11", "2026-03-09T04:00"),
            ("America/New_York", "2026-W10", "2026-03-02T05:00"),
            # and back on Sunday 2026-11-01
            ("America/New_York", "2026-W45", "2026-11-02T05:00"),
            ("America/New_York", "2026-W44", "2026-10-26T04:00"),
            # Berlin: 2026-03-29 and 2026-10-25, both Sundays
            ("Europe/Berlin", "2026-W14", "2026-03-29T22:00"),
            ("Europe/Berlin", "2026-W44", "2026-10-25T23:00"),
            # Santiago put its clocks forward at 0:00 of Sunday 2022-09-11: UTC-3 on Monday
            ("America/Santiago", "2022-W37", "2022-09-12T03:00"),
            # Cairo put them forward at 0:00 of Friday 2024-04-26: UTC+3 on Monday
            ("Africa/Cairo", "2024-W18", "2024-04-28T21:00"),
            # Kathmandu is 5 h 45 min ahead; week 53 of 2026
            ("Asia/Kathmandu", "2026-W53", "2026-12-27T18:15"),
        ],
    )
    def test_a_week_begins_at_the_shops_midnight(self, zone: str, week: str, begins: str) -> None:
        clocks = gettz(zone)
        assert clocks is not None
        expected = datetime.fromisoformat(begins).replace(tzinfo=UTC)
        assert start_of(Week.parse(week), clocks) == expected

    def test_a_midnight_that_is_skipped_begins_with_the_first_moment_there_is(self) -> None:
        # Invented clocks that go forward at 0:00 on a Monday, from UTC to UTC+1.
        clocks = tzstr("AAA0BBB,M11.3.1/0,M12.3.1/0")  # third Monday of November 2026: the 16th
        assert start_of(WEEK, clocks) == datetime(2026, 11, 16, 0, tzinfo=UTC)
        assert Week.of(datetime(2026, 11, 15, 23, 59, tzinfo=UTC), clocks) == Week(2026, 46)
        assert Week.of(datetime(2026, 11, 16, 0, 0, tzinfo=UTC), clocks) == WEEK

    # A busy machine is no fault of the weeks.
    @settings(suppress_health_check=[HealthCheck.too_slow])
    @given(
        st.datetimes(datetime(2000, 1, 1), datetime(2037, 12, 1), timezones=st.just(UTC)),
        st.sampled_from("America/Chicago Europe/Berlin Africa/Cairo Australia/Lord_Howe".split()),
    )
    def test_every_moment_lies_in_the_week_that_its_local_date_says(
        self, moment: datetime, zone: str
    ) -> None:
        clocks = gettz(zone)
        assert clocks is not None
        week = Week.of(moment, clocks)
        assert start_of(week, clocks) <= moment < start_of(later(week, 1), clocks)

    def test_some_weeks_on_end(self) -> None:
        weeks = Weeks.parse("2026-W52..2027-W02")
        # 2026 has 53 weeks: 52, 53, 1, 2
        assert [str(w) for w in weeks.each()] == ["2026-W52", "2026-W53", "2027-W01", "2027-W02"]
        assert (weeks.number, str(weeks)) == (4, "2026-W52..2027-W02")
        assert weeks.days == "21 December 2026 to 17 January 2027"
        assert weeks.before(4) == Weeks(Week(2026, 48), Week(2026, 51))
        assert Weeks.parse("2026-W47").days == "16 to 22 November 2026"
        with pytest.raises(ValueError, match=r"ends before it begins$"):
            Weeks.parse("2026-W47..2026-W46")


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

    @given(
        st.lists(
            st.tuples(
                st.integers(32, 256),  # OD in 64ths of an inch
                st.sampled_from("0.028 0.035 0.049 0.065 0.083 0.095 0.109 0.120 0.134".split()),
                st.integers(4, 48),  # CLR in quarters of an inch
            ),
            min_size=1,
            max_size=20,
        )
    )
    def test_a_size_and_its_metric_twin_are_never_split(
        self, inches: list[tuple[int, str, int]]
    ) -> None:
        mm = Decimal("25.4")
        sizes = [Size(mm * od / 64, mm * Decimal(wall), mm * clr / 4) for od, wall, clr in inches]
        # as a metric shop writes them: OD to 0.1, wall to 0.01, CLR to 1 mm
        twins = [Size(round(od, 1), round(wall, 2), round(clr, 0)) for od, wall, clr in sizes]
        rows = [asked("ada@example.com", (str(a), str(b), str(c))) for a, b, c in sizes]
        rows += [asked("bo@example.com", (str(a), str(b), str(c))) for a, b, c in twins]
        for counted in count_week(rows, WEEK, UTC).sizes:
            assert counted.customers == 2
            assert counted.requests % 2 == 0

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

    @given(
        st.lists(
            st.builds(
                asked,
                st.sampled_from(["ada@example.com", "bo@example.com", "cy@example.com"]),
                st.sampled_from([("38.1", "1.651", "114.3"), ("48.26", "3.683", "152.4")]),
            ),
            min_size=1,
        ),
        st.data(),
    )
    def test_a_follow_up_changes_no_count_of_customers(
        self, rows: list[Asked], data: st.DataObject
    ) -> None:
        again = data.draw(st.sampled_from(rows))
        before, after = (count_week(r, WEEK, UTC) for r in (rows, [*rows, again]))
        assert before.customers == after.customers
        assert {s.size: s.customers for s in before.sizes} == {
            s.size: s.customers for s in after.sizes
        }
        assert after.requests == before.requests + 1

    def test_the_weeks_before_are_counted_by_customer_and_twin(self) -> None:
        metric = ("44.5", "2.41", "133")
        weeks = [[], [asked(), asked()], [asked("bo@example.com", metric), asked()], [asked("cy")]]
        (size,) = count([asked()], weeks).sizes
        assert (size.customers, size.before) == (1, (0, 1, 2, 1))
        assert count([], weeks).sizes == ()  # nobody asked for it now
