"""Long mail: sorted in good time, and by what stands at its end as well as at its beginning."""

from __future__ import annotations

from datetime import date

import pytest

from bendreply.intake.message import parse_message
from bendreply.intake.model import Kind
from bendreply.intake.own_text import mask
from bendreply.intake.pipeline import process, understand
from bendreply.intake.templates import default_templates
from bendreply.intake.triage import Found, automatic, classify

from ..pace import assert_quick
from .drafting_support import SHOP


def _mail(subject: str, body: str) -> bytes:
    return (
        f"From: Pat <pat@example.com>\nSubject: {subject}\nMessage-ID: <1@example.com>\n\n{body}"
    ).encode()


SNIPPETS = [
    "_",
    "1,",
    ".500,00",
    "a-",
    "[#1",
    "ticket #1",
    "order 1",
    "#1",
    "1",
    "a_b ",
    "- ",
    "\n",
]


@pytest.mark.parametrize("snippet", SNIPPETS, ids=repr)
def test_a_hundred_kilobytes_of_one_snippet_are_sorted_in_good_time(snippet: str) -> None:
    message = parse_message(_mail("x", snippet * (100_000 // len(snippet))))
    own = mask(message)

    def sort() -> None:
        automatic(message, own)
        classify(message, own, Found())

    assert_quick(sort, within=1.5)  # usually 0.3 s at most; a pattern that backtracks takes many


_NEWS = "Tube of the month: bright, round and straight as ever. " * 400  # 22,000 characters


def test_a_long_newsletter_is_known_by_its_footer() -> None:
    said = understand(
        parse_message(_mail("Autumn news", f"{_NEWS}\n\nUnsubscribe | View in browser\n"))
    )
    assert said.kind is Kind.AUTOMATIC, said.why_kind


def test_what_is_asked_below_a_long_table_counts() -> None:
    rows = "".join(f"{n}\t1.75\t.095\t{n / 2}\n" for n in range(8, 300))
    assert len(rows) > 4000
    body = f"Item\tOD\tWall\tCLR\n{rows}\nPlease quote one mandrel for each of the above.\n"
    said = understand(parse_message(_mail("list", body)))
    assert said.kind is Kind.SIZES, said.why_kind
    assert "asks" in said.why_kind


def test_the_day_below_a_very_long_list_counts() -> None:
    """Only so much of a list is read, which is told; by when it is wanted stands below it."""
    rows = "1.75 x .095 on 5.25 clr, as the last time\n" * 900
    body = f"Please quote mandrels:\n{rows}\nWe need them by 12 March 2027.\n"
    said = understand(parse_message(_mail("list", body)))
    assert {request.needed_by for request in said.requests} == {date(2027, 3, 12)}
    assert "very long" in " ".join(said.notes)


def test_what_is_asked_below_a_very_long_list_counts() -> None:
    rows = "1.75 x .095 on 5.25 clr, as the last time\n" * 900
    said = understand(parse_message(_mail("list", f"{rows}\nDo you ship to Canada?\n")))
    assert [question.surface for question in said.questions] == ["Do you ship to Canada?"]


def test_a_reply_to_a_very_long_list_says_that_it_goes_on() -> None:
    rows = "".join(f"{n / 8} x .095 on {n / 2} clr\n" for n in range(12, 300))
    mail = parse_message(_mail("list", f"Please quote mandrels:\n{rows}"))
    draft = process(mail, SHOP, default_templates()).draft
    assert draft is not None
    assert "Your list goes on" in draft.body
    few = parse_message(_mail("list", f"Please quote mandrels:\n{rows[:200]}\n"))
    draft = process(few, SHOP, default_templates()).draft
    assert draft is not None
    assert "Your list goes on" not in draft.body
