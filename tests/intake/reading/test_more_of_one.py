"""'One each, two of the last': more mandrels of one size of a list than of the others."""

from __future__ import annotations

import pytest

from .support import read_text

LIST = "38 x 1.5 R 76\n42.4 x 2 R 85\n50 x 2 R 100\n"
"""Walls of at least 1.5 mm and bends of 2 D: nothing about them is unlikely."""


@pytest.mark.parametrize(
    ("words", "counts"),
    [
        ("Mandrels, one of each, two of the last.", [1, 1, 2]),
        ("Mandrels: one each, and of the last one please two.", [1, 1, 2]),
        ("Mandrels, 1 each, 2 of the first.", [2, 1, 1]),
        ("Mandrels, one each but three of the second.", [1, 3, 1]),
        ("Mandrels, one each, two of the 50.", [1, 1, 2]),
        ("Two mandrels each, four of the 42.4.", [2, 4, 2]),
        ("Je Größe 1 Dorn, von der letzten bitte 2.", [1, 1, 2]),
        ("Je ein Dorn, vom ersten zwei.", [2, 1, 1]),
        ("Un mandrin de chaque, deux du dernier.", [1, 1, 2]),
        ("Un mandril de cada, del último dos.", [1, 1, 2]),
        ("Un mandrino per misura, dell'ultimo due.", [1, 1, 2]),
        ("Qty 1 pc each, except 50 which is 2 pcs.", [1, 1, 2]),
        ("Mandrels, one each, apart from the 50: 3 pcs.", [1, 1, 3]),
        ("Je 1 Dorn, außer 50: 2 Stück.", [1, 1, 2]),
        ("Un mandrin de chaque, sauf le 50 : 2 pièces.", [1, 1, 2]),
        ("Van elk één doorn, van de laatste twee.", [1, 1, 2]),
    ],
)
def test_one_size_of_a_list_gets_more_than_the_others(words: str, counts: list[int]) -> None:
    requests = read_text(LIST + words)
    assert [request.quantity for request in requests] == counts
    assert [str(request.clr_mm) for request in requests] == ["76", "85", "100"]


@pytest.mark.parametrize(
    "words",
    [
        "Mandrels, one each. Two of the last batch were scratched.",
        "Mandrels, one each. Two of the 60 arrived bent.",
    ],
)
def test_what_only_sounds_like_it_counts_nothing(words: str) -> None:
    assert [request.quantity for request in read_text(LIST + words)][:3] == [1, 1, 1]


@pytest.mark.parametrize("closing", ["", "\n\nMit freundlichen Grüßen\nMaßwerk Nord"])
def test_a_sharp_s_elsewhere_in_the_text_changes_no_count(closing: str) -> None:
    text = LIST + "Zwei Dorne von der ersten und je einer von den anderen." + closing
    assert [request.quantity for request in read_text(text)] == [2, 1, 1]
