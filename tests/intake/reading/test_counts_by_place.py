"""Counts that name the lines of a list: 'One mandrel for (a). For (b) we'd take two'."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

import pytest

from .support import doubted, read_text

_LETTERS = "(a) 51 x 1.5, bend radius 76\n(b) 63.5 x 1.5, bend radius 95\n\n"
_NUMBERS = "1) 51 x 1.5, CLR 76\n2) 63.5 x 1.5, CLR 95\n\n"
_THREE = "1. 51 x 1.5, CLR 76\n2. 63.5 x 1.5, CLR 95\n3. 38 x 1.5, CLR 57\n\n"

COUNTS: list[tuple[str, tuple[int, ...]]] = [
    ("Please quote, both in 304:\n\n" + _LETTERS + "One mandrel for (a). For (b) we'd take two.", (1, 2)),
    ("Please quote:\n\n" + _LETTERS + "One of (a), two of (b) please.", (1, 2)),
    ("Please quote:\n\n" + _LETTERS + "One mandrel of each, but for (b) we'd take two.", (1, 2)),
    ("Please quote:\n\n" + _LETTERS + "We need two of (a) by June 5 and one of (b) by July 10.", (2, 1)),
    ("Please quote:\n\n" + _LETTERS + "One each. We make 200 of (a) and 50 of (b) a year.", (1, 1)),
    ("Please quote:\n\nA: 51 x 1.5, CLR 76\nB: 63.5 x 1.5, CLR 95\n\nFor A we need one mandrel, for B we need two.", (1, 2)),
    ("Please quote:\n\n" + _NUMBERS + "One mandrel for item 1, three for item 2.", (1, 3)),
    ("Please quote:\n\n" + _THREE + "Two mandrels for line 1, one for line 2 and one for line 3.", (2, 1, 1)),
    ("Bitte um Angebot:\n\na) 51 x 1,5, R 76\nb) 63,5 x 1,5, R 95\n\nEin Dorn für a). Für b) nehmen wir zwei.", (1, 2)),
    ("Merci de chiffrer :\n\na) 51 x 1,5, rayon 76\nb) 63,5 x 1,5, rayon 95\n\nUn mandrin pour a). Pour b) il en faut deux.", (1, 2)),
    ("Presupuesto para:\n\na) 51 x 1,5, radio 76\nb) 63,5 x 1,5, radio 95\n\nUn mandril para a). Para b) queremos dos.", (1, 2)),
    ("Chiediamo offerta per:\n\na) 51 x 1,5, raggio 76\nb) 63,5 x 1,5, raggio 95\n\nUn mandrino per a). Per b) ne servono due.", (1, 2)),
    ("Graag offerte:\n\na) 51 x 1,5, radius 76\nb) 63,5 x 1,5, radius 95\n\nEén doorn voor a). Voor b) twee.", (1, 2)),
]  # fmt: skip


@pytest.mark.parametrize(("text", "counts"), COUNTS)
def test_counts_by_letter_and_number(text: str, counts: tuple[int, ...]) -> None:
    requests = read_text(text)
    assert tuple(request.quantity for request in requests) == counts
    assert not any(map(doubted, requests))


def test_a_line_that_no_count_names_may_be_left_out() -> None:
    requests = read_text("Quote:\n\n" + _THREE + "One mandrel for item 1, two for item 3.")
    assert all(map(doubted, requests))


@pytest.mark.parametrize(
    "total",
    [
        "Total six mandrels.",
        "6 mandrels in all",
        "Gesamt 6 Dorne",
        "Total 6 mandrins",
        "In totaal 6 doorns",
    ],
)
def test_a_sum_below_a_list_is_no_lines_count(total: str) -> None:
    lines = "54 x 1.5 R 108 - 3 pcs\n60 x 1.5 R 120 - 2 pcs\n70 x 2 R 140 - 1 pc"
    assert [r.quantity for r in read_text(f"{lines}\n{total}")] == [3, 2, 1]
