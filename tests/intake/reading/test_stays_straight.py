"""Tube that is told to stay straight, beside what a mandrel is asked for: no request of it.

The sentences are made up; no published source.
"""

from __future__ import annotations

import pytest

from .support import read_text


@pytest.mark.parametrize(
    "straight",
    [
        "Also bought 4 sticks of 25 x 1.5 but thats straight runs, no bends.",
        "We also have some 25 x 1.5 but it's all straight, no bends in it.",
        "There's 25 x 1.5 in it too but that's only straight runs.",
        "I also got a bunch of 25 x 1.5 for the uprights, nothing to bend on those.",
        "The 25 x 1.5 is just straight pieces.",
        "The 25 x 1.5 uprights are straight.",
        "Gekauft haben wir auch 25 x 1,5, das sind aber nur gerade Stücke, keine Bögen.",
        "Nous avons aussi du 25 x 1,5, mais rien à cintrer.",
        "También hay 25 x 1,5 pero son tramos rectos, sin curvas.",
        "C'è anche del 25 x 1,5 ma sono tratti dritti, niente curve.",
        "We hebben ook 25 x 1,5 maar dat zijn rechte stukken, geen bochten.",
    ],
)
@pytest.mark.parametrize(
    "asked",
    [
        "Need a mandrel for 38 x 1.5, CLR 76.",
        "Need one mandrel for each: 38 x 1.5, CLR 76 and 50 x 2, CLR 150.",
    ],
)
def test_tube_without_bends_is_no_request(asked: str, straight: str) -> None:
    sizes = read_text(f"{asked} {straight}")
    assert 25 not in [size.od_mm for size in sizes]
    assert all(not size.doubts for size in sizes)


def test_straight_legs_are_of_the_tube_that_is_bent() -> None:
    sizes = read_text("Mandrels for 38 x 1.5 and 50 x 2, both CLR 150. Legs are straight, 10 inch.")
    assert [size.od_mm for size in sizes] == [38, 50]
    assert all(not size.doubts for size in sizes)
