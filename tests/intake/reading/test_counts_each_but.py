"""One of each size but of one, which is named by its OD: that one has its own count."""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text, written_down

METRIC = "28 x 1,5 R 56\n35 x 1,5 R 70\n42 x 1,5 R 84\n\n"
INCH = "all 16 gauge 304:\n\n1-3/4 tube, 2-5/8 clr\n2-1/2 tube, 3-3/4 clr\n3 tube, 4-1/2 clr\n"
LONGER = INCH + "3-1/2 tube, 5-1/4 clr\n\n"


@pytest.mark.parametrize(
    ("text", "counts"),
    [
        (LONGER + "one of each except the 2-1/2, I want two of those", [1, 2, 1, 1]),
        (LONGER + "One each, but two of the 2-1/2.", [1, 2, 1, 1]),
        (INCH + "\nTwo of each, but just one of the 1-3/4.", [1, 2, 2]),
        (METRIC + "One of each except for the 35, please make that two.", [1, 2, 1]),
        (METRIC + "Je ein Dorn, außer vom 35er, davon bitte zwei.", [1, 2, 1]),
        (METRIC + "Von jedem einen, nur vom 35er zwei.", [1, 2, 1]),
        (METRIC + "Un mandrin de chaque, sauf le 35, deux pour celui-là.", [1, 2, 1]),
        (METRIC + "Uno di ciascuno tranne il 35, di quello due.", [1, 2, 1]),
        (METRIC + "Van elk een, behalve de 35, daar graag twee van.", [1, 2, 1]),
    ],
)
def test_the_size_that_is_excepted_has_its_own_count(text: str, counts: list[int]) -> None:
    requests = read_text(text)
    assert [r.quantity for r in requests] == counts, written_down(requests)
    assert not any(r.doubts for r in requests), written_down(requests)


@pytest.mark.parametrize(
    "words",
    [
        "One of each except the 35.",
        "One mandrel each, but not for the 35.",
        "A mandrel for each of these except for the 35 please.",
        "Je ein Dorn außer für das 35er.",
        "Un mandrin de chaque, sauf le 35.",
        "Uno de cada, menos el de 35.",
        "Uno per ciascuno tranne il 35.",
        "Van elk een doorn, behalve voor de 35.",
    ],
)
def test_without_a_count_it_is_not_wanted(words: str) -> None:
    requests = read_text(METRIC + words)
    assert [r.od_mm for r in requests] == [28, 42], written_down(requests)
    assert not any(r.doubts for r in requests), written_down(requests)


def test_a_pipes_name_is_none_where_each_line_has_its_radius() -> None:
    """What is called 3 as a pipe measures 3.5, which is here the next line's tube."""
    requests = read_text(LONGER + "One of each please.")
    ods = [Decimal(od) * Decimal("25.4") for od in ("1.75", "2.5", "3", "3.5")]
    assert [r.od_mm for r in requests] == ods
    assert not any(r.doubts for r in requests)
