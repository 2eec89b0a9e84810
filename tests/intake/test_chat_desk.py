"""Chat in the store: a burst is one inquiry however it comes in, and nothing comes twice."""

from __future__ import annotations

import itertools
import json
import sqlite3
from collections.abc import Sequence
from contextlib import closing
from decimal import Decimal
from pathlib import Path

import pytest

from bendreply.intake import desk
from bendreply.intake.chat import chat_line_of
from bendreply.intake.cli import main
from bendreply.intake.inquiry import Inquiry, State
from bendreply.intake.store import open_store
from bendreply.intake.store_check import check_store

LOU = {"name": "Lou", "address": "lou@example.net"}
BURST = ("1.75", ".095 wall", "4.5 clr oh and its 4130", "2 mandrels pls")
BY = ("--by", "Robin Ashdown")
# 1.75 in = 44.45 mm, .095 in = 2.413 mm, 4.5 in = 114.3 mm
SIZE = (Decimal("44.45"), Decimal("2.413"), Decimal("114.3"), "4130", 2)


def said(minute: float, text: str, *, sender: object = None, **more: object) -> dict[str, object]:
    """A chat message some minutes after 11:00."""
    seconds = round(minute * 60)
    at = f"2026-11-19T{11 + seconds // 3600}:{seconds // 60 % 60:02}:{seconds % 60:02}Z"
    line = {"channel": "counter", "thread": "t-1", "id": f"m{minute}", "time": at, "text": text}
    return {**line, "sender": sender or LOU, **more}


WHOLE = [said(2 * number, text) for number, text in enumerate(BURST)]


class Desk:
    """A shop folder, and chat exports that come in one by one."""

    def __init__(self, folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
        self.folder, self.capsys, self.count = folder, capsys, 0
        assert main(["shop", "new", str(folder)]) == 0

    def run(self, *call: str) -> str:
        self.capsys.readouterr()
        assert main(["--shop", str(self.folder), *call]) == 0
        return self.capsys.readouterr().out

    def comes(self, *lines: dict[str, object]) -> str:
        """An export comes in; what the command said."""
        self.count += 1
        file = self.folder / f"{self.count}.jsonl"
        file.write_text("".join(f"{json.dumps(line)}\n" for line in lines), "utf-8")
        return self.run("collect", str(file))

    def inquiries(self) -> list[Inquiry]:
        with open_store(self.folder / "store.sqlite") as store:
            assert check_store(store)[1] == []
            return [desk.show(store, one.id) for one in desk.askings(store)]

    def one(self) -> Inquiry:
        (inquiry,) = self.inquiries()
        return inquiry


@pytest.fixture
def shop(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> Desk:
    return Desk(tmp_path / "shop", capsys)


def size(inquiry: Inquiry) -> tuple[object, ...]:
    (request,) = (one.request for one in inquiry.assessments)
    return request.od_mm, request.wall_mm, request.clr_mm, request.grade, request.quantity


def deliveries(lines: Sequence[dict[str, object]]) -> dict[str, list[list[dict[str, object]]]]:
    """Ways in which one burst may come in."""
    ways = {
        "-".join(str(one["id"]) for one in order): [[one] for one in order]
        for order in list(itertools.permutations(lines))[::5]
    }
    ways |= {
        "at once": [list(lines)],
        "backwards in one file": [list(reversed(lines))],
        "repeated": [list(lines), list(lines), [lines[2], lines[2]]],
        "growing exports": [list(lines[:number]) for number in range(1, len(lines) + 1)],
        "overlapping": [list(lines[2:]), list(lines[:3])],
    }
    return ways


WAYS = deliveries(WHOLE)


@pytest.mark.parametrize("way", WAYS)
def test_a_burst_is_one_request_however_it_comes_in(shop: Desk, way: str) -> None:
    for lines in WAYS[way]:
        shop.comes(*lines)
    inquiry = shop.one()
    assert size(inquiry) == SIZE
    assert inquiry.message.body == "\n".join(BURST)
    assert sum(not one.withdrawn for one in inquiry.drafts) == 1
    assert "known before" in shop.comes(*WHOLE)
    assert shop.one() == inquiry


def test_a_longer_pause_is_a_request_of_its_own(shop: Desk) -> None:
    shop.comes(said(0, "1.75 x .095, 4.5 clr"), said(10.1, "2 x .120, 6 clr"))
    assert len(shop.inquiries()) == 2


def test_the_shop_says_how_long_a_pause_may_be(shop: Desk) -> None:
    with (shop.folder / "shop.toml").open("a", encoding="utf-8") as file:
        file.write("\n[chat]\nquiet_minutes = 30\n")
    shop.comes(said(0, "1.75 x .095"))
    shop.comes(said(29, "4.5 clr"))
    assert shop.one().message.body == "1.75 x .095\n4.5 clr"


def test_two_senders_and_two_threads_stay_apart(shop: Desk) -> None:
    shop.comes(
        said(0, "1.75 x .095, 4.5 clr"),
        said(1, "2 x .120, 6 clr", sender="Ann"),
        said(2, "1.5 x .065, 4.5 clr", thread="t-2"),
    )
    assert len(shop.inquiries()) == 3


@pytest.mark.parametrize(
    ("first", "later", "inquiries"),
    [
        ("1.75 x .095, 4130", "4.5 clr", 1),  # just what we ask for
        ("1.75 x .095, 4130", "4.5", 1),  # a bare answer to our one question: put for a yes
        ("1.75 x .095, 4130", "thanks!", 2),
        ("1.75 x .095, 4.5 clr, 4130", "what about 6 clr?", 2),  # perhaps another job
        ("1.75 x .095, 4130", "2 x .120, 6 clr", 2),
        ("do you sell lubricant?", "4.5 clr", 2),
    ],
)
def test_an_hour_later_only_a_gap_is_filled(
    shop: Desk, first: str, later: str, inquiries: int
) -> None:
    shop.comes(said(0, first))
    shop.comes(said(70, later))
    shop.comes(said(0, first), said(70, later))  # known
    found = shop.inquiries()
    assert len(found) == inquiries
    if inquiries == 1:
        # 1.75 in = 44.45 mm, .095 in = 2.413 mm, 4.5 in = 114.3 mm
        assert size(found[0])[:3] == (Decimal("44.45"), Decimal("2.413"), Decimal("114.3"))
        doubts = [one.field for one in found[0].assessments[0].request.doubts]
        assert doubts == (["clr"] if later == "4.5" else [])


def test_a_day_later_nothing_is_filled(shop: Desk) -> None:
    shop.comes(said(0, "1.75 x .095, 4130"))
    shop.comes(said(1, "4.5 clr", time="2026-11-20T11:01:00Z"))
    assert len(shop.inquiries()) == 2


def test_an_approval_falls_when_more_comes(shop: Desk) -> None:
    shop.comes(said(0, "1.75 x .095, 4.5 clr, 4130"))
    shop.run("approve", "1", *BY)
    assert "approval by Robin Ashdown" in shop.comes(said(3, "make that 3 mandrels"))
    assert shop.one().state is State.WAITING
    assert shop.one().assessments[0].request.quantity == 3


def test_a_correction_outlives_what_comes_after_it(shop: Desk) -> None:
    shop.comes(said(0, "1.75 x .095, 4130"))
    shop.run("correct", "1", "od=2 in", *BY)
    shop.comes(said(3, "4.5 clr"))
    # 2 in = 50.8 mm, as the person said; the radius as the customer did.
    assert size(shop.one())[:3] == (Decimal("50.8"), Decimal("2.413"), Decimal("114.3"))
    assert "known before" in shop.comes(said(3, "4.5 clr"))
    assert len(shop.one().messages) == 2


def test_a_draft_that_lies_ready_is_not_sent_as_it_is(shop: Desk) -> None:
    shop.comes(said(0, "1.75 x .095, 4.5 clr, 4130"))
    shop.run("approve", "1", *BY)
    shop.run("deliver")
    assert "don't send it as it is" in shop.comes(said(3, "sorry, 5.25 clr, not 4.5"))
    shop.run("approve", "1", *BY)
    shop.run("deliver")
    (file,) = (shop.folder / "drafts").iterdir()
    assert file.name == "1.txt"
    assert "5.25 in (133.35 mm) CLR" in file.read_text("utf-8")


def test_a_draft_that_a_person_changed_is_left_alone(shop: Desk) -> None:
    shop.comes(said(0, "1.75 x .095, 4.5 clr, 4130"))
    shop.run("approve", "1", *BY)
    shop.run("deliver")
    (file,) = (shop.folder / "drafts").iterdir()
    file.write_text("my own words", "utf-8")
    shop.comes(said(3, "sorry, 5.25 clr, not 4.5"))
    shop.run("approve", "1", *BY)
    assert main(["--shop", str(shop.folder), "deliver"]) == 1
    assert file.read_text("utf-8") == "my own words"


def test_a_message_changed_afterwards_is_told(shop: Desk) -> None:
    shop.comes(said(0, "1.75 x .095, 4.5 clr", id="a"))
    assert "with other words" in shop.comes(said(0, "1.75 x .083, 4.5 clr", id="a"))
    assert shop.one().message.body == "1.75 x .095, 4.5 clr"


@pytest.mark.parametrize(
    ("later", "more", "inquiries"),
    [
        (5, {"id": "srv-2", "origin_id": "o-1"}, 1),  # the sender's program tried again
        (5, {"id": "srv-2", "origin_id": "o-2"}, 1),  # the same words, but in one burst
        (60, {"id": "srv-2", "origin_id": "o-1"}, 1),
        (60, {"id": "srv-2", "origin_id": "o-2"}, 2),
        (60, {"id": "srv-2", "origin_id": "o-1", "text": "2 x .120, 6 clr"}, 2),  # counts anew
    ],
)
def test_what_the_senders_program_sent_again_is_known(
    shop: Desk, later: int, more: dict[str, object], inquiries: int
) -> None:
    shop.comes(said(0, "1.75 x .095, 4.5 clr", id="srv-1", origin_id="o-1"))
    shop.comes(said(later, "1.75 x .095, 4.5 clr") | more)
    found = shop.inquiries()
    assert len(found) == inquiries
    assert [len(one.assessments) for one in found] == [1] * inquiries


def test_what_was_sent_again_and_comes_in_at_once_is_kept_once(shop: Desk) -> None:
    shop.comes(
        said(0, "1.75 x .095, 4.5 clr", id="srv-1", origin_id="o-1"),
        said(1, "1.75 x .095, 4.5 clr", id="srv-2", origin_id="o-1"),
    )
    (inquiry,) = shop.inquiries()
    assert inquiry.message.body == "1.75 x .095, 4.5 clr"


def test_a_line_between_two_inquiries_goes_to_the_first_and_is_told(shop: Desk) -> None:
    shop.comes(said(0, "1.75 x .095"))
    shop.comes(said(18, "2 mandrels please"))
    told = shop.comes(said(9, "4.5 clr"))
    assert "inquiry 2 is of the same sender" in told
    first, _ = shop.inquiries()
    assert first.message.body == "1.75 x .095\n4.5 clr"


def test_a_long_export_is_collected_once(shop: Desk) -> None:
    lines = [
        said(
            number * 15 % 720 + number // 48,
            f"1.75 x .095, {4 + number / 100} clr",
            thread=f"t{number}",
        )
        for number in range(60)
    ]
    assert "60 new" in shop.comes(*lines)
    assert "60 known before" in shop.comes(*reversed(lines))


@pytest.mark.parametrize("known_again", [True, False])
def test_chat_messages_reduced_to_nothing_are_known_again_or_not(
    shop: Desk, known_again: bool
) -> None:
    shop.comes(*WHOLE)
    with open_store(shop.folder / "store.sqlite") as store:
        with store.writing() as book:
            book.reduce_chat_lines(1, known_again=known_again)
        with closing(sqlite3.connect(shop.folder / "store.sqlite")) as file:
            kept = str(file.execute("SELECT * FROM chat_line").fetchall())
        assert "Lou" not in kept
        assert "lou@" not in kept
        assert "4130" not in kept
        with store.reading() as book:
            found = [book.known_line(chat_line_of(one)) for one in WHOLE]
    assert [one is not None for one in found] == [known_again] * len(WHOLE)
    if known_again:
        assert "0 new, 1 known before" in shop.comes(*WHOLE)


@pytest.mark.parametrize(
    ("settings", "missing", "why"),
    [
        ("", False, "shop.toml has no [chat.account]"),
        (
            '[chat.account]\njid = "shop@example.com"\npassword_env = "P"',
            True,
            "needs the package slixmpp",
        ),
    ],
)
def test_listening_that_can_not_begin_says_what_is_missing(
    shop: Desk, monkeypatch: pytest.MonkeyPatch, settings: str, missing: bool, why: str
) -> None:
    with (shop.folder / "shop.toml").open("a", encoding="utf-8") as file:
        file.write(f"\n{settings}\n")
    if missing:
        monkeypatch.setattr("bendreply.intake.cli_listen.find_spec", lambda _: None)
    assert main(["--shop", str(shop.folder), "listen"]) == 2
    assert why in shop.capsys.readouterr().err
