"""An inquiry's way through the shop: nothing twice, nothing lost, a person's word stands."""

from __future__ import annotations

import threading
from datetime import UTC, date, datetime
from decimal import Decimal
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from bendreply.intake import desk, desk_errors
from bendreply.intake.inquiry import State
from bendreply.intake.model import Address, Kind, Message
from bendreply.intake.store import Store, open_store
from bendreply.intake.store_writer import Writer
from bendreply.rules.assessment import Decision

from .desk_support import correct, taken

# Taking in


def test_taking_in_twice_changes_nothing(store: Store, make_result) -> None:
    first = desk.take_in(store, make_result(), "in/1.eml")
    seen = desk.show(store, first.inquiry)
    again = desk.take_in(store, make_result(draft="another wording"), "in/copy.eml")
    assert (first.new, again.new, again.inquiry) == (True, False, first.inquiry)
    assert desk.show(store, first.inquiry) == seen


def test_the_same_bytes_are_known_under_another_id(store: Store, make_result) -> None:
    first = taken(store, make_result())
    assert not desk.take_in(store, make_result(message_id="other@example.org"), "x").new
    assert [row.id for row in desk.backlog(store)] == [first]


def test_a_copy_with_a_footer_added_on_its_way_is_known_and_told(store: Store, make_result) -> None:
    number = taken(store, make_result())
    longer = make_result(body="1.75 x .095 on a 4.5 clr, lou\n--\nscanned", raw_sha256="ff" * 32)
    again = desk.take_in(store, longer, "in/2.eml")
    assert not again.new
    assert again.note.startswith(f"inquiry {number} holds this message with other words")


def test_two_customers_of_a_web_form_that_repeats_its_ids_are_two(
    store: Store, make_result
) -> None:
    form = {"message_id": "form@example.net", "sender": Address(name="", address="web@example.com")}
    one = make_result("ana", **form)
    two = make_result("bo", **form, received_at=datetime(2026, 11, 24, 9, 0, tzinfo=UTC))
    results = [one, two, two, one]
    assert [desk.take_in(store, result, "x").inquiry for result in results] == [1, 2, 2, 1]
    assert desk.show(store, 2).message.message_id == "form@example.net"


def test_two_programs_that_both_look_first_take_a_message_in_once(
    store: Store, make_result, monkeypatch
) -> None:
    """What a database server allows: the other one writes between our look and our writing."""
    desk.take_in(store, make_result(), "the other program")
    look, looks = Writer.messages_like, []

    def first_look_is_early(book: Writer, came: Message) -> object:
        looks.append(came)
        return look(book, came) if len(looks) > 1 else iter(())

    monkeypatch.setattr(Writer, "messages_like", first_look_is_early)
    taken_in = desk.take_in(store, make_result(), "ours")
    assert (taken_in.new, taken_in.inquiry) == (False, 1)
    assert [row.id for row in desk.backlog(store)] == [1]


def test_mail_and_chat_may_use_the_same_id(store: Store, make_result) -> None:
    assert taken(store, make_result("ana", message_id="7")) == 1
    assert taken(store, make_result("bo", message_id="7", channel="chat")) == 2


@settings(max_examples=25, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(order=st.lists(st.sampled_from(["ana", "bo", "cy", "di", "ed"]), min_size=1, max_size=12))
def test_any_order_and_repetition_gives_the_same_inquiries(
    order: list[str], make_result, new_place
) -> None:
    with open_store(new_place()) as store:
        for name in order:
            desk.take_in(store, make_result(name), name)
        rows = desk.backlog(store)
    assert sorted(row.sender.name for row in rows) == sorted({name.title() for name in order})


def test_automatic_mail_is_kept_without_draft_or_work(store: Store, make_result) -> None:
    number = taken(store, make_result(kind=Kind.AUTOMATIC))
    shown = desk.show(store, number)
    assert (shown.state, shown.draft, shown.decision) == (State.NO_REPLY, None, "no reply")
    assert desk.backlog(store) == []


def test_other_mail_waits_for_a_person_without_a_draft(store: Store, make_result) -> None:
    number = taken(store, make_result(kind=Kind.OTHER))
    (row,) = desk.backlog(store)
    assert (row.id, row.has_draft, row.decision) == (number, False, "by hand")


def test_a_failure_half_way_takes_nothing_in(store: Store, make_result, monkeypatch) -> None:
    def fail(*_: object, **__: object) -> None:
        raise RuntimeError("power cut")

    with monkeypatch.context() as broken:
        broken.setattr(Writer, "log", fail)
        with pytest.raises(RuntimeError, match="power cut"):
            desk.take_in(store, make_result(), "x")
    assert desk.backlog(store) == []
    assert desk.take_in(store, make_result(), "x").new


# The backlog


def test_most_urgent_first_then_longest_waiting(store: Store, make_result) -> None:
    def day(n: int) -> datetime:
        return datetime(2026, 11, n, 12, 0, tzinfo=UTC)

    taken(store, make_result("ana", received_at=day(20)))
    taken(store, make_result("bo", received_at=day(18)))
    taken(store, make_result("cy", received_at=day(24), needed_by=date(2026, 12, 24)))
    taken(store, make_result("di", received_at=day(24), needed_by=date(2026, 11, 30)))
    taken(store, make_result("ed", received_at=None))  # waits since it was taken in, on the 25th
    assert [row.sender.name for row in desk.backlog(store)] == ["Di", "Cy", "Bo", "Ana", "Ed"]


@pytest.mark.parametrize(
    ("decisions", "short"),
    [
        ((Decision.STOCK,), "stock"),
        ((Decision.STOCK, Decision.ASK, Decision.STOCK), "2 stock, 1 ask"),
        ((Decision.DECLINE, Decision.DECLINE), "2 decline"),
    ],
)
def test_several_decisions_in_short(store: Store, make_result, decisions, short: str) -> None:
    taken(store, make_result(decisions=decisions))
    assert desk.backlog(store)[0].decision == short


@pytest.mark.parametrize("asked", ["99", "abc", "", "0", "-1", "#4", "9" * 40, "1.5", 2**63])
def test_an_unknown_number_gets_one_sentence(store: Store, make_result, asked: str | int) -> None:
    taken(store, make_result())
    with pytest.raises(desk_errors.UnknownInquiryError, match="there is no inquiry") as refused:
        desk.show(store, asked)
    assert "\n" not in str(refused.value)


def test_a_number_may_be_written_as_people_do(store: Store, make_result) -> None:
    taken(store, make_result())
    assert desk.show(store, " #1 ").id == desk.show(store, 1).id == 1


# A person's yes


def test_an_approval_bears_name_and_time(store: Store, make_result) -> None:
    number = taken(store, make_result())
    approved = desk.approve(store, number, "  Ann\nMiller ")
    shown = desk.show(store, number)
    assert (shown.state, shown.approval) == (State.APPROVED, approved.word)
    assert (approved.word.by, approved.draft_number) == ("Ann Miller", 1)
    assert desk.backlog(store) == []
    assert [(one.who, one.what) for one in desk.history(store, number)] == [
        ("bendreply", "taken in"),
        ("Ann Miller", "approved"),
    ]


def test_a_second_approval_says_who_was_first_and_changes_nothing(
    store: Store, make_result
) -> None:
    number = taken(store, make_result())
    # The clock starts at 09:00 and a minute passes with each transaction: taken in 09:01.
    desk.approve(store, number, "Ann")
    before = desk.show(store, number)
    with pytest.raises(desk_errors.AlreadyApprovedError) as refused:
        desk.approve(store, number, "Bob")
    assert str(refused.value) == (
        "inquiry 1 was already approved by Ann on 2026-11-25 09:02 UTC; nothing was changed"
    )
    assert desk.show(store, number) == before


@pytest.mark.parametrize("by", ["", "  ", "\n", "\u200b"])
def test_nobody_approves_nothing(store: Store, make_result, by: str) -> None:
    number = taken(store, make_result())
    with pytest.raises(desk_errors.NoNameError, match="approving needs the name"):
        desk.approve(store, number, by)
    assert desk.show(store, number).state is State.WAITING


def test_where_the_shop_names_its_people_only_they_approve(store: Store, make_result) -> None:
    number = taken(store, make_result())
    with pytest.raises(desk_errors.NoNameError, match=r"Eve is not among .*: Ann, Bob"):
        desk.approve(store, number, "Eve", people=("Ann", "Bob"))
    assert desk.approve(store, number, "ann", people=("Ann", "Bob")).word.by == "Ann"


def test_without_a_draft_there_is_nothing_to_approve(store: Store, make_result) -> None:
    number = taken(store, make_result(kind=Kind.OTHER))
    with pytest.raises(desk_errors.NoDraftError, match="no draft to approve"):
        desk.approve(store, number, "Ann")


def test_an_automatic_message_is_not_approved(store: Store, make_result) -> None:
    number = taken(store, make_result(kind=Kind.AUTOMATIC))
    with pytest.raises(desk_errors.NoReplyError, match="automatic message"):
        desk.approve(store, number, "Ann")


def test_two_who_approve_at_once_one_wins_and_the_other_is_told(
    where: str | Path, make_result
) -> None:
    people = [f"Person {n}" for n in range(8)]
    with open_store(where) as store:
        number = taken(store, make_result())
    start = threading.Barrier(len(people))
    won: list[str] = []
    told: list[str] = []

    def work(name: str) -> None:
        with open_store(where) as own:
            start.wait()
            try:
                won.append(desk.approve(own, number, name).word.by)
            except desk_errors.AlreadyApprovedError as error:
                told.append(str(error))

    threads = [threading.Thread(target=work, args=(name,)) for name in people]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert len(won) == 1
    assert len(told) == len(people) - 1
    assert all(f"already approved by {won[0]} on" in sentence for sentence in told)
    with open_store(where) as store:
        assert [one.by for one in desk.show(store, number).words] == won


ACTS = {
    "approve": lambda store, n, **more: desk.approve(store, n, "Ann", **more),
    "set aside": lambda store, n, **more: desk.set_aside(store, n, "Ann", "by phone", **more),
    "edit": lambda store, n, **more: desk.edit_draft(store, n, "Ann's words.", "Ann", **more),
    "correct": lambda store, n, **more: correct(store, n, {"wall": Decimal(3)}, **more),
}


@pytest.mark.parametrize("act", ACTS)
@pytest.mark.parametrize(
    ("first", "told"),
    [
        ("approve", "(approved, Ann, 2026-11-25 09:02 UTC)"),
        ("set aside", "(set aside, Ann, 2026-11-25 09:02 UTC)"),
        ("edit", "(draft edited, Ann, 2026-11-25 09:02 UTC)"),
        ("correct", "(corrected, Ann, 2026-11-25 09:02 UTC)"),
    ],
)
def test_the_second_of_two_who_saw_one_version_is_told_and_changes_nothing(
    store: Store, make_result, act: str, first: str, told: str
) -> None:
    number = taken(store, make_result())
    seen = desk.show(store, number).version
    ACTS[first](store, number, expected_version=seen)
    after = (desk.show(store, number), desk.history(store, number))
    assert after[0].version > seen
    with pytest.raises(desk_errors.ChangedMeanwhileError) as refused:
        ACTS[act](store, number, expected_version=seen)
    assert str(refused.value) == (
        f"inquiry 1 was changed meanwhile {told}: look at it again; nothing was changed now"
    )
    assert (desk.show(store, number), desk.history(store, number)) == after


@pytest.mark.parametrize("act", ACTS)
def test_who_saw_the_latest_version_may_act(store: Store, make_result, act: str) -> None:
    number = taken(store, make_result())
    desk.edit_draft(store, number, "Better words.", "Bob", expected_version=1)
    ACTS[act](store, number, expected_version=2)
    assert desk.show(store, number).version == 3


def test_a_copy_that_came_in_meanwhile_stops_nobody(store: Store, make_result) -> None:
    """It changes nothing that a person looked at, and it is not what somebody is told of either."""
    number = taken(store, make_result())
    desk.edit_draft(store, number, "Better words.", "Bob")
    with store.writing() as book:
        book.log(number, "bendreply", "copy came in")
    with pytest.raises(desk_errors.ChangedMeanwhileError, match=r"\(draft edited, Bob, "):
        desk.approve(store, number, "Ann", expected_version=1)
    desk.approve(store, number, "Ann", expected_version=2)


def test_a_change_of_a_version_that_is_gone_is_refused(store: Store, make_result) -> None:
    """What a database does that lets two look before either writes."""
    number = taken(store, make_result())
    old = desk.show(store, number)
    desk.edit_draft(store, number, "Better words.", "Bob")
    with pytest.raises(desk_errors.ChangedMeanwhileError), store.writing() as book:
        book.move(old, State.APPROVED)


# Setting aside


def test_setting_aside_needs_a_name_and_a_reason(store: Store, make_result) -> None:
    number = taken(store, make_result())
    with pytest.raises(desk_errors.NoReasonError, match="needs a reason"):
        desk.set_aside(store, number, "Ann", "  ")
    with pytest.raises(desk_errors.NoNameError, match="setting aside needs the name"):
        desk.set_aside(store, number, "", "spam")
    assert desk.set_aside(store, number, "Ann", "answered by phone").state is State.SET_ASIDE
    assert desk.backlog(store) == []
    with pytest.raises(
        desk_errors.SetAsideError, match=r"set aside by Ann .*\(answered by phone\)"
    ):
        desk.approve(store, number, "Bob")


def test_an_approved_one_can_still_be_set_aside(store: Store, make_result) -> None:
    number = taken(store, make_result())
    desk.approve(store, number, "Ann")
    shown = desk.set_aside(store, number, "Bob", "customer cancelled")
    assert (shown.state, shown.approval) == (State.SET_ASIDE, None)
