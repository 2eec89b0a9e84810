"""Sizes that are hardly two, or that one odd figure makes: doubted as a whole."""

from __future__ import annotations

import pytest

from .support import read_text


@pytest.mark.parametrize(
    "text",
    [
        "We call it 51 x 1.5 mm, the caliper shows 50.8. CLR 76 mm. One mandrel, and one for 50.8.",
        "Tube 42.4 x 2 mm, R 120 mm. Also 42 x 2 mm.",
    ],
)
def test_two_ods_nearly_one_are_doubted(text: str) -> None:
    sizes = read_text(text)
    assert len(sizes) == 2
    assert all(size.doubt_on("od") for size in sizes)


@pytest.mark.parametrize(
    "text",
    [
        "Mandrels for 1.5 x .065 and 1.75 x .065, both on 5.25 CLR.",
        "OD 42.4 wall 2 CLR 120\nOD 44.5 wall 2 CLR 120\nmandrels please",
        "Mandrels for 38 x 1.5 mm on R 76 mm and 38.1 x 1.65 mm on R 95 mm.",
    ],
)
def test_sizes_apart_are_not_doubted_for_being_near(text: str) -> None:
    assert len(read_text(text)) == 2
    assert not any("so near" in d.why for size in read_text(text) for d in size.doubts)


@pytest.mark.parametrize("wall", ["52", "23"])
def test_a_size_made_by_an_odd_figure_is_doubted_as_a_whole(wall: str) -> None:
    """No wall of 23 or 52 mm is in a tube of 33.7 mm: whatever it is, it makes no size for sure."""
    sure, odd = read_text(f"Tube 33.7 x 2.0 mm, R 67.4 mm, and wall {wall}.")
    assert not sure.doubts
    assert {"od", "wall", "clr"} <= {doubt.field for doubt in odd.doubts}
