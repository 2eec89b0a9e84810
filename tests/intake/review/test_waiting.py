"""What waits: one line each, most urgent first, chosen by answer, doubt and words."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest

from bendreply.intake import desk
from bendreply.intake.cli import main
from bendreply.intake.model import Address
from bendreply.rules.assessment import Decision

from ...servers.page import ROBIN, Answer, Browser, Page, new_shop, running
from ..conftest import made_result

START = datetime(2026, 11, 1, 8, 0, tzinfo=UTC)


def names(answer: Answer) -> list[str]:
    return answer.all_words(".list .who a")


@pytest.fixture
def empty(tmp_path: Path) -> Iterator[Page]:
    """A shop that nobody has written to."""
    new_shop(tmp_path / "shop")
    with running(tmp_path / "shop", create=True) as page:
        yield page


def test_nothing_waits(empty: Page) -> None:
    assert "Nothing waits." in empty.browser().get("/").words()


def test_each_line_tells_who_which_size_the_answer_and_what_is_in_doubt(robin: Browser) -> None:
    answer = robin.get("/")
    lines = answer.all_words(".list tbody")
    assert any(
        "Ada" in one
        and "2.75 × 0.083 × 8.25 in" in one
        and "stainless steel, 304" in one
        and "decline" in one
        and "wall factor 33.13, limit 30" in one  # 2.75 / .083
        for one in lines
    )
    assert any("1.625? × 0.083 × 5 in" in one and "ask first" in one for one in lines)
    assert any("Mandrel for bob" in one and "by hand" in one for one in lines)


def test_the_most_urgent_is_first(empty: Page) -> None:
    came_in = [
        ("late", None, 1),
        ("soon", date(2026, 12, 1), 9),
        ("old", None, 0),
        ("now", date(2026, 11, 25), 8),
    ]
    for number, (name, needed, waited) in enumerate(came_in):
        came = START + timedelta(days=waited, minutes=number)
        desk.take_in(empty.store, made_result(name, needed_by=needed, received_at=came), name)
    assert names(empty.browser().get("/")) == ["Now", "Soon", "Old", "Late"]


@pytest.mark.parametrize(
    ("query", "wanted"),
    [
        ("answer=decline", ["Ada"]),
        ("answer=ask", ["Ned"]),
        ("answer=question", ["Flo"]),
        ("answer=by-hand", ["Bob"]),
        ("answer=stock", []),
        ("doubt=od", ["Ned"]),
        ("doubt=none", ["Ada", "Bob", "Flo"]),
        ("text=ada", ["Ada"]),
        ("text=ADA+2.75", ["Ada"]),
        ("text=15/8", ["Ned"]),
        ("text=moly", ["Ned"]),
        ("text=304+decline", ["Ada"]),
        ("text=nobody", []),
        ("text=mandrel+for&answer=ask", ["Ned"]),
        ("answer=nonsense", []),
        ("from=999", ["Ada", "Bob", "Flo", "Ned"]),
        ("from=-1", ["Ada", "Bob", "Flo", "Ned"]),
    ],
)
def test_a_choice_among_what_waits(robin: Browser, query: str, wanted: list[str]) -> None:
    assert sorted(names(robin.get(f"/?{query}"))) == wanted


def test_counts_stand_with_each_choice(robin: Browser) -> None:
    counts = robin.get("/").words(".filters")
    assert counts == "all 4 decline 1 ask first 1 answer 1 by hand 1"
    assert "1 inquiry of 4" in robin.get("/?answer=ask").words("caption")


def test_a_choice_stays_from_one_inquiry_to_the_next(empty: Page) -> None:
    for number in range(6):
        decision = Decision.DECLINE if number % 2 else Decision.STOCK
        came = START + timedelta(days=number)
        made = made_result(f"n{number}", decisions=(decision,), received_at=came)
        desk.take_in(empty.store, made, f"{number}")
    robin = empty.browser(ROBIN)
    second = robin.get("/inquiry/2?answer=decline")
    follow = second.page.css_first("a[rel=next]").attributes["href"]
    assert follow == "/inquiry/4?answer=decline"
    after = robin.submit("/inquiry/2?answer=decline", {}, press="do=approve")
    assert after.words(".number") == "Inquiry 4"
    assert after.page.css_first("a[rel=prev]") is None


def test_long_lists_come_in_pages(empty: Page) -> None:
    for number in range(120):
        made = made_result(f"n{number}", received_at=START + timedelta(minutes=number))
        desk.take_in(empty.store, made, f"{number}")
    browser = empty.browser()
    seen = []
    path = "/?answer=stock"
    while True:
        answer = browser.get(path)
        seen += names(answer)
        more = answer.page.css_first(".pages a[rel=next]")
        if more is None:
            break
        path = more.attributes["href"]
    assert seen == [f"N{number}" for number in range(120)]


def test_what_another_program_changes_is_seen_at_once(page: Page, robin: Browser) -> None:
    assert "Ada" in names(robin.get("/"))
    call = ["--shop", str(page.folder), "correct", "1", "wall=.095"]
    assert main(call) == 0
    assert "custom make" in robin.get("/?text=ada").words(".list tbody")
    assert main(["--shop", str(page.folder), "approve", "1", "--by", ROBIN]) == 0
    assert "Ada" not in names(robin.get("/"))
    desk.take_in(page.store, made_result("zoe"), "zoe")
    assert "Zoe" in names(robin.get("/"))


def test_a_date_that_has_passed_says_so(empty: Page) -> None:
    desk.take_in(empty.store, made_result("due", needed_by=date(2026, 1, 5)), "due")
    assert "5 Jan past" in empty.browser().get("/").words(".list tbody")


def test_a_sender_without_a_name_is_shown_by_address(empty: Page) -> None:
    sender = Address(name="", address="shop@example.org")
    desk.take_in(empty.store, made_result("x", sender=sender, subject=""), "x")
    assert names(empty.browser().get("/")) == ["shop@example.org"]
