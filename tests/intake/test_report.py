"""The weekly report out of a store: which weeks, what is counted."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from decimal import Decimal

import pytest

from bendreply.intake import desk
from bendreply.intake.inquiry import Reply
from bendreply.intake.model import Address, Kind, Message, Question, Result
from bendreply.intake.report import LAST_WEEK
from bendreply.intake.report_words import declines
from bendreply.intake.store import Store
from bendreply.rules.assess import assess
from bendreply.rules.assessment import Decision
from bendreply.rules.request import Doubt, Evidence, SizeRequest
from bendreply.rules.shop import sample_shop

from .report_support import IN_47, NOW, SHOP, Take, report, tube


class TestWhichWeeks:
    def test_without_a_week_it_is_this_one_or_the_latest_with_messages(
        self, store: Store, take: Take
    ) -> None:
        empty = report(store)
        assert (str(empty.weeks), empty.why_weeks) == ("2026-W48", "this week")
        take(tube())
        take(tube(), at=datetime(2031, 1, 1, tzinfo=UTC))  # a wrong clock: no week to report on
        latest = report(store)
        assert (str(latest.weeks), latest.why_weeks) == (
            "2026-W47",
            "the latest week with messages",
        )
        take(tube(), at=NOW)
        assert (str(report(store).weeks), report(store).why_weeks) == ("2026-W48", "this week")
        asked_for = report(store, "2026-W03")
        assert (asked_for.count.requests, asked_for.why_weeks) == (0, "as asked")

    def test_on_a_monday_the_last_week_is_the_one_that_is_over(
        self, store: Store, take: Take
    ) -> None:
        take(tube())
        monday = datetime(2026, 11, 23, 6, tzinfo=UTC)
        take(tube(), at=monday)
        assert str(report(store, LAST_WEEK, monday).weeks) == "2026-W47"

    def test_a_message_without_a_date_counts_when_it_was_taken_in(
        self, store: Store, take: Take
    ) -> None:
        take(tube(), at=None)
        assert str(report(store).weeks) == "2026-W48"  # the clock of these tests: 25 November

    def test_the_shops_clocks_part_the_weeks(self, store: Store, take: Take) -> None:
        # Monday 16 November 05:59 UTC is Sunday 23:59 in Chicago (UTC-6 in winter)
        border = datetime(2026, 11, 16, 5, 59, tzinfo=UTC)
        take(tube(), at=border)
        take(tube(), sender="bo@example.com", at=border + timedelta(minutes=1))
        chicago = SHOP.model_copy(update={"time_zone": "America/Chicago"})
        assert report(store, "2026-W46", shop=chicago).count.customers == 1
        assert report(store, "2026-W47", shop=chicago).count.customers == 1
        assert report(store, "2026-W47").count.customers == 2
        assert report(store, "2026-W46..2026-W47", shop=chicago).count.customers == 2

    def test_a_clock_change_loses_and_doubles_nothing(self, store: Store, take: Take) -> None:
        # Chicago's clocks go back on Sunday 1 November 2026: 1:30 comes twice, 25 hours that day
        first = datetime(2026, 11, 1, 6, 30, tzinfo=UTC)
        for number in range(26):
            take(tube(), sender=f"{number}@example.com", at=first + timedelta(hours=number))
        chicago = SHOP.model_copy(update={"time_zone": "America/Chicago"})
        # Monday begins at 06:00 UTC: 6:30 on the 1st to 5:30 on the 2nd are 24 hours
        assert report(store, "2026-W44", shop=chicago).count.customers == 24
        assert report(store, "2026-W45", shop=chicago).count.customers == 2


class TestCounts:
    def test_a_doubt_on_the_size_counts_apart_but_one_on_the_quantity_does_not(
        self, store: Store, take: Take
    ) -> None:
        doubt = Doubt(field="wall", readings=(Decimal("2.4"), Decimal("2.5")), why="two ways")
        count = Doubt(field="quantity", readings=("1", "2"), why="two ways")
        take(tube(doubts=(doubt,)), tube(doubts=(count,)))
        found = report(store).count
        assert [s.requests for s in found.sizes] == [1]
        assert [s.requests for s in found.doubtful] == [1]

    def test_until_a_person_settles_it(self, store: Store, take: Take) -> None:
        doubt = Doubt(field="wall", readings=(Decimal("2.413"), Decimal("2.5")), why="two ways")
        number = take(tube(doubts=(doubt,)))

        def again(message: Message, sizes: tuple[SizeRequest, ...]) -> Result:
            assessments = tuple(assess(one, SHOP) for one in sizes)
            return Result(message=message, kind=Kind.SIZES, why_kind="", assessments=assessments)

        desk.correct(store, number, {"wall": Decimal("2.413")}, 0, again, "Ann")
        found = report(store)
        assert ([s.requests for s in found.count.sizes], found.count.doubtful) == ([1], ())

    @pytest.mark.parametrize(
        ("one", "other", "customers"),
        [
            ({"sender": "ada@example.com"}, {"sender": "ADA@Example.com"}, 1),
            ({"sender": ""}, {"sender": ""}, 2),  # nobody says that they are one
            # a web form writes for many: whom to answer tells them apart
            (
                {"sender": "form@shop.example.com", "reply_to": Address(name="", address="a@b.c")},
                {"sender": "form@shop.example.com", "reply_to": Address(name="", address="d@e.f")},
                2,
            ),
            # notes from the shop's own counter, each for somebody else
            (
                {"sender": "sales@fernhollow.example.com"},
                {"sender": "sales@fernhollow.example.com"},
                2,
            ),
        ],
    )
    def test_who_is_one_customer(
        self,
        store: Store,
        take: Take,
        one: dict[str, object],
        other: dict[str, object],
        customers: int,
    ) -> None:
        take(tube(), **one)
        take(tube(), **other)
        found = report(store).count
        assert (found.requests, found.customers) == (2, customers)

    def test_what_waits_is_counted_over_all_weeks(self, store: Store, take: Take) -> None:
        take(tube(), at=datetime(2026, 10, 1, tzinfo=UTC))
        take(tube(needed_by=datetime(2026, 12, 1).date()))
        desk.set_aside(store, take(tube()), "Ann", "answered by phone")
        waits = report(store).waiting
        # 25 November and a week: 2 December
        assert (waits.messages, waits.urgent) == (2, 1)
        assert waits.oldest == datetime(2026, 10, 1, tzinfo=UTC)

    def test_response_times_are_those_of_first_replies(self, store: Store, take: Take) -> None:
        for number, hours in enumerate((2, 5, 50), start=1):
            take(tube())
            with store.writing() as book:
                for later in (0, 100):
                    after = timedelta(hours=hours + later)
                    book.add_reply(
                        number,
                        Reply(
                            message_id=f"r{number}{later}", sent_at=IN_47 + after, after=after,
                            draft_number=None, likeness=None, body="",
                        ),
                    )  # fmt: skip
        found = report(store).response
        assert found is not None
        assert (found.answered, found.median, found.slowest) == (
            3,
            timedelta(hours=5),
            timedelta(hours=50),
        )
        assert report(store, "2026-W48").response is None  # only second replies came then

    def test_corrections_tell_how_the_figure_was_written(self, store: Store, take: Take) -> None:
        evidence = Evidence(field="wall", start=0, end=5, surface="13 ga", how="gauge, BWG")
        number = take(tube(evidence=(evidence,)))

        def again(message: Message, _: tuple[SizeRequest, ...]) -> Result:
            return Result(message=message, kind=Kind.SIZES, why_kind="")

        desk.correct(store, number, {"wall": Decimal("2.1"), "od": Decimal(45)}, 0, again, "Ann")
        found = report(store, "2026-W48").corrections  # when it was corrected
        assert found.inquiries == 1
        assert found.fields == {("wall", "gauge"): 1, ("od", "not read"): 1}

    def test_questions_that_no_answer_fits_are_told_by_inquiry(
        self, store: Store, take: Take
    ) -> None:
        take(tube(), questions=(Question(surface="who?"), Question(surface="p?", answer="price")))
        take(tube())
        assert report(store).open_questions == {1: 1}

    def test_declines_by_how_far_they_were_out(self, store: Store, take: Take) -> None:
        # limits: wall factor 30, D of bend 2.5. 50/1.6 = 31.25; 50/1.25 = 40; exactly 32: 48/1.5
        take(tube("50", "1.6", "150"), tube("50", "1.25", "150"), tube("48", "1.5", "144"))
        take(tube("50", "2", "100"))  # 25, 2 D
        take(tube("50", "1", "50"))  # 50, 1 D: both
        take(tube("50", "2", "125"))  # exactly 2.5 D: no decline
        found = report(store).declines
        assert (found.total, found.too_thin, found.too_tight, found.both) == (5, 3, 1, 1)
        steps = [(int(s.limit), s.would_pass) for s in found.wall_factor_steps]
        assert steps == [(32, 2), (40, 3)]
        assert [(s.limit, s.would_pass) for s in found.d_of_bend_steps] == [(Decimal("2.0"), 1)]
        assert declines(report(store)) == (
            "of 5: 2 would pass at wall factor 32, 3 at 40; 1 would pass at D 2; "
            "1 beyond both limits"
        )


class TestDemand:
    def test_what_the_shelf_lacks_is_to_be_made(self, store: Store, take: Take) -> None:
        take(tube("60", "3", "180"))  # bore 54, less 0.1 to 0.3: 53.7 to 53.9
        take(tube("60.1", "3", "180"), sender="bo@example.com")  # 53.8 to 54.0
        take(tube("60", "3", "180"), sender="bo@example.com")
        take(tube("30", "2", "90"), sender="cy@example.com")  # 26: 25.7 to 25.9
        take(tube(), sender="di@example.com")  # FM-1750-095 is on the shelf
        found = report(store).demand
        assert found.customers == 3
        assert [plan.customers for plan in found.plans] == [2, 3]
        first = found.plans[0].mandrels[0]
        assert (first.low_mm, first.high_mm) == (Decimal("53.8"), Decimal("53.9"))

    def test_what_came_onto_the_shelf_since_is_not_lacking(self, store: Store, take: Take) -> None:
        take(tube("60", "3", "180"))
        (one, *_) = sample_shop().catalogue
        new = one.model_copy(
            update={
                "part": "NEW", "tube_od_mm": Decimal(60), "tube_wall_min_mm": Decimal(3),
                "tube_wall_max_mm": Decimal(3), "mandrel_diameter_mm": Decimal("53.8"),
                "balls": 3, "clr_min_mm": Decimal(100), "clr_max_mm": Decimal(300), "on_hand": 1,
            }
        )  # fmt: skip
        later = SHOP.model_copy(update={"catalogue": (*SHOP.catalogue, new)})
        assert report(store).demand.customers == 1
        assert report(store, shop=later).demand.customers == 0

    def test_who_means_to_buy_outweighs_who_just_asks(self, store: Store, take: Take) -> None:
        take(tube("60", "3", "180"), sender="a@example.com", body="just curious what one costs")
        take(tube("60", "3", "180"), sender="b@example.com")
        take(tube("30", "2", "90"), sender="c@example.com", body="I'd like to order one")
        plan = report(store).demand.plans[0]
        # 3 against 1 + 1 (the sample shop's weights)
        assert {need.customer for need in plan.mandrels[0].serves} == {"c@example.com"}

    def test_doubtful_and_open_requests_are_told_and_not_counted(
        self, store: Store, take: Take
    ) -> None:
        doubt = Doubt(field="wall", readings=(Decimal("3"), Decimal("3.2")), why="two ways")
        take(tube("60", "3", "180", doubts=(doubt,)))
        found = report(store).demand
        assert (found.customers, found.unsettled, found.plans) == (0, 1, ())

    def test_dies_missing_most_come_first(self, store: Store, take: Take) -> None:
        take(tube(clr="140"))
        take(tube(clr="140.2"), sender="bo@example.com")  # the same die, read off a drawing
        take(tube("60", "3", "180"), sender="cy@example.com")
        take(tube(clr="133.35"), sender="di@example.com")  # FD-1750-525 is there
        dies = report(store).demand.dies
        assert [(float(d.od_mm), float(d.clr_mm), d.customers) for d in dies] == [
            (44.45, 140, 2),
            (60, 180, 1),
        ]


def test_a_decision_is_a_decision() -> None:
    """The figures above rest on these: what the sample shop says of the tubes."""
    decisions = {
        ("44.45", "2.413", "133.35"): Decision.STOCK,
        ("60", "3", "180"): Decision.CUSTOM_MAKE,
        ("30", "2", "90"): Decision.CUSTOM_MAKE,
        ("50", "1.6", "150"): Decision.DECLINE,
        ("50", "2", "125"): Decision.CUSTOM_MAKE,
    }
    for size, decision in decisions.items():
        assert assess(tube(*size), SHOP).decision is decision


def test_the_report_reads_narrow_rows_only(store: Store, take: Take) -> None:
    """Whole assessments and messages of two years can't be read in a few seconds."""
    from sqlalchemy import event

    take(tube())
    said: list[str] = []

    def hear(_c: object, _cursor: object, statement: str, *_: object) -> None:
        said.append(statement)

    engine = store._place.engine
    event.listen(engine, "before_cursor_execute", hear)
    try:
        report(store)
    finally:
        event.remove(engine, "before_cursor_execute", hear)
    assert any("FROM asked JOIN tally" in one for one in said)
    assert len(said) < 20  # however many requests there are
    for wide in ("assessments", "message.message", "draft.body", "reply.body"):
        assert not any(wide in one for one in said)
