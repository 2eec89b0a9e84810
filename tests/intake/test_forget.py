"""Words taken out of the store for good, and the figures that stay."""

from __future__ import annotations

import json
from datetime import UTC, datetime
from pathlib import Path

import pytest

from bendreply.intake import desk
from bendreply.intake.cli import main
from bendreply.intake.desk_forget import NobodyError, forget, reduce_old
from bendreply.intake.inquiry import State
from bendreply.intake.report import weekly_report
from bendreply.intake.report_json import figures
from bendreply.intake.report_weeks import Weeks
from bendreply.intake.store import Store, open_store
from bendreply.intake.store_check import check_store
from bendreply.rules.shop import sample_shop

SHOP = sample_shop().model_copy(update={"time_zone": "UTC"})
NOW = datetime(2026, 11, 25, 12, tzinfo=UTC)


def counted(store: Store, week: str = "2026-W48") -> dict[str, object]:
    """The report's figures, but for what waits: forgetting settles that."""
    found = figures(weekly_report(store, SHOP, NOW, Weeks.parse(week)), names=False)
    return {key: value for key, value in found.items() if not key.startswith("waiting")}


@pytest.fixture
def full(store: Store, make_result) -> Store:
    """Three inquiries, the first approved, the second with a further copy of its words."""
    return filled(store, make_result)


def filled(store: Store, make_result) -> Store:
    for name in ("quillon", "bo", "cy"):
        desk.take_in(store, make_result(name), f"{name}.eml")
    desk.approve(store, 1, "Ann")
    return store


class TestOnePerson:
    def test_nothing_of_the_person_is_left_in_the_file(self, store_file: Path, make_result) -> None:
        with open_store(store_file) as store:
            filled(store, make_result)
            assert b"quillon" in everything(store_file)
            gone = forget(store, "Quillon@Example.net", "Ann")
        assert (gone.inquiries, gone.messages, gone.mentioned) == ((1,), 1, ())
        assert b"quillon" not in everything(store_file).lower()
        assert b"cy@example.net" in everything(store_file)

    @pytest.mark.parametrize(
        "address", ["Quillon Ames <quillon@example.net>", " <QUILLON@example.net> "]
    )
    def test_an_address_as_mail_programs_show_it_will_do(self, full: Store, address: str) -> None:
        assert forget(full, address).inquiries == (1,)

    def test_the_counts_stay(self, full: Store) -> None:
        before = counted(full)
        assert before["customers"] == 3
        forget(full, "quillon@example.net")
        assert counted(full) == {**before, "approved_not_delivered": 0}

    def test_what_waited_waits_no_more_and_the_store_is_whole(self, full: Store) -> None:
        forget(full, "quillon@example.net", "Ann")
        inquiry = desk.show(full, 1)
        assert inquiry.state is State.SET_ASIDE
        assert inquiry.notes == ("its words are no longer kept",)
        assert [row.id for row in desk.backlog(full)] == [2, 3]
        assert check_store(full) == (3, [])
        assert desk.history(full, 1)[-1].what == "reduced to its figures"

    def test_two_inquiries_of_one_person_stay_one_customer(self, store: Store, make_result) -> None:
        desk.take_in(store, make_result("ada"), "x")
        desk.take_in(store, make_result("ada", message_id="2@x", raw_sha256="2", body="two"), "x")
        before = counted(store)
        assert (before["requests"], before["customers"]) == (2, 1)
        forget(store, "ada@example.net")
        assert counted(store) == before

    def test_an_address_in_the_words_of_others_is_told(self, full: Store, make_result) -> None:
        desk.take_in(full, make_result("di", body="ask quillon@example.net"), "x")
        assert forget(full, "quillon@example.net").mentioned == (4,)

    def test_an_address_that_nobody_has_is_refused(self, full: Store) -> None:
        for address in ("nobody@example.net", "%"):
            with pytest.raises(NobodyError, match=r"^no message of .* is in the store$"):
                forget(full, address)

    @pytest.mark.parametrize("address", ["", " ", "\n"])
    def test_no_address_is_told_as_such(self, full: Store, address: str) -> None:
        with pytest.raises(NobodyError, match="not said: give a mail address"):
            forget(full, address)

    def test_on_the_command_line(
        self, store_file: Path, make_result, capsys: pytest.CaptureFixture[str]
    ) -> None:
        with open_store(store_file) as store:
            filled(store, make_result)
        call = ["store", "forget", "quillon@example.net", "--store", str(store_file)]
        assert main(call) == 0
        assert capsys.readouterr().out.startswith(
            "1 message of quillon@example.net forgotten, in 1 inquiry (1); the counts stay"
        )
        assert main(call) == 1
        assert "no message of quillon@example.net" in capsys.readouterr().err


class TestAge:
    def test_whole_weeks_older_than_the_months_are_reduced(self, store: Store, make_result) -> None:
        # 25 November less one month: 25 October, a Sunday. Its week began on the 19th.
        for name, day in (("old", 18), ("young", 19)):
            at = datetime(2026, 10, day, 12, tzinfo=UTC)
            desk.take_in(store, make_result(name, received_at=at), "x")
            desk.set_aside(store, 1 if name == "old" else 2, "Ann", "by phone")
        before = counted(store, "2026-W42"), counted(store, "2026-W43")
        assert reduce_old(store, 1, UTC).inquiries == 1
        assert desk.show(store, 1).message.body == ""
        assert desk.show(store, 2).message.body != ""
        assert (counted(store, "2026-W42"), counted(store, "2026-W43")) == before
        assert reduce_old(store, 1, UTC) == type(reduce_old(store, 1, UTC))(0, 0)

    def test_what_still_waits_is_left_and_told(self, store: Store, make_result) -> None:
        at = datetime(2026, 1, 5, tzinfo=UTC)
        desk.take_in(store, make_result("old", received_at=at), "x")
        done = reduce_old(store, 1, UTC)
        assert (done.inquiries, done.unsettled) == (0, 1)
        assert desk.show(store, 1).message.body != ""

    def test_a_reduced_message_is_known_when_it_comes_again(
        self, store: Store, make_result
    ) -> None:
        came = make_result("old", received_at=datetime(2026, 1, 5, tzinfo=UTC))
        desk.take_in(store, came, "x")
        desk.set_aside(store, 1, "Ann", "by phone")
        reduce_old(store, 1, UTC)
        again = desk.already_taken(store, came.message, "x")
        assert again is not None
        assert (again.inquiry, again.new) == (1, False)

    def test_collect_does_it_where_shop_toml_says_so(
        self, tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
    ) -> None:
        monkeypatch.delenv("BENDREPLY_SHOP", raising=False)
        shop = tmp_path / "shop"
        main(["shop", "new", str(shop)])
        mail = tmp_path / "1.eml"
        mail.write_text(
            "From: <ada@example.net>\nSubject: x\nDate: Mon, 6 Jan 2020 10:00:00 +0000\n"
            "Message-ID: <1@example.net>\n\nA mandrel for 1.75 x .095, 5.25 clr, please.\n"
        )
        collect = ["--shop", str(shop), "collect", str(mail)]
        assert main(collect) == 0
        assert main(["--shop", str(shop), "set-aside", "1", "--by", "Kit", "--why", "x"]) == 0
        assert main(["--shop", str(shop), "store", "reduce"]) == 2
        with (shop / "shop.toml").open("a") as file:
            file.write("\n[keep]\nmessages_months = 24\n")
        assert main(["shop", "check", str(shop)]) == 0
        capsys.readouterr()
        assert main(collect) == 0
        assert "1 inquiry older than 24 months reduced" in capsys.readouterr().out
        with open_store(shop / "store.sqlite") as store:
            assert desk.show(store, 1).message.sender.address == ""
        capsys.readouterr()
        main(["--shop", str(shop), "report", "--week", "2020-W02", "--json"])
        assert json.loads(capsys.readouterr().out)["customers"] == 1


@pytest.mark.parametrize("months", ["0", '"24"', "1.5"])
def test_months_that_are_none_are_named(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], months: str
) -> None:
    shop = tmp_path / "shop"
    main(["shop", "new", str(shop)])
    with (shop / "shop.toml").open("a") as file:
        file.write(f"\n[keep]\nmessages_months = {months}\n")
    assert main(["shop", "check", str(shop)]) != 0
    assert "messages_months" in capsys.readouterr().err


def everything(store_file: Path) -> bytes:
    """All bytes of the store: its file and what lies beside it."""
    return b"".join(one.read_bytes() for one in store_file.parent.glob(f"{store_file.name}*"))
