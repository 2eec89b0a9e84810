"""Spares and shelves: how many mandrels are wanted beside the one that is bent with."""

from __future__ import annotations

import pytest

from .test_quantity import quantities

_IN = "1.75 x .095 wall, 5.25 clr"
_MM = "38 x 1,5 mm, R 57 mm"
_TWO = "main tube 30 x 1,5, R 75\npush handle 22 x 1,5, R 55\n"

ONE_SIZE = [
    (f"{_IN}. Need 1 right away and 1 for the shelf later.", 2),
    (f"{_IN}. Need one now and one for stock.", 2),
    (f"{_IN}. Need 2 now, and 1 for the shelf.", 3),
    (f"{_IN}. Need two mandrels asap and one as a spare.", 3),
    (f"Rohr {_MM}. Wir brauchen einen Dorn sofort und einen fürs Lager.", 2),
    (f"Tube {_MM}. Il nous faut 1 mandrin tout de suite et 1 de rechange.", 2),
    (f"{_IN}. We'll take two mandrels, one as a spare.", 2),  # of the two
    (f"{_IN}. One mandrel please. We have one on the shelf.", 1),
    (f"{_IN}. Need one now and a price for ten.", None),
]

OF_TWO = [
    (_TWO + "Please quote 1 mandrel of each and also 1 spare for the 22.", [1, 2]),
    (_TWO + "One of each plus a spare for the 30.", [2, 1]),
    (_TWO + "One mandrel per size, plus two spare mandrels for the 22 please.", [1, 3]),
    (_TWO + "One mandrel per size plus one spare set of balls for the 22.", [1, 1]),
    (_TWO + "One mandrel of each. A spare for the 25 is here.", [1, 1]),
    (_TWO + "I guess one mandrel does for the two? If not please price one for each.", [None] * 2),
]


@pytest.mark.parametrize(("text", "count"), ONE_SIZE)
def test_a_spare_is_one_more(text: str, count: int | None) -> None:
    assert quantities(text) == [count]


@pytest.mark.parametrize(("text", "counts"), OF_TWO)
def test_a_spare_of_one_size_is_only_of_that(text: str, counts: list[int | None]) -> None:
    assert quantities(text) == counts
