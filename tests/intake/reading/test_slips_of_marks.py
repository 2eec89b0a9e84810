"""A wrong mark or a lost point is undone only where it can be what was meant."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

import pytest

from .support import Size, inch, mm, read_text, row, written_down

TIGHT_OR_THIN = [
    # An inch mark can stand for mm, but a figure in inches is no 25.4 times as many of them.
    row("tight", '2.00" OD, .065 wall, 304, centerline radius 7/8". One mandrel.', inch("2", "0.065", "0.875", "clr")),
    row("tight-of-an-inch", "2 in OD, .065 wall, 304, and the radius is 7/8 of an inch. One mandrel.", inch("2", "0.065", "0.875", "clr")),
    row("tight-mm", "Rohr 50 x 1,5 mm, Radius 22 mm Mitte. Ein Dorn.", mm("50", "1.5", "22", "clr")),
    # '3"' has no second digit before which a point could be lost.
    row("thin", '3" OD x .010" wall inconel 625 on a 3" CLR. Yes ten thousandths. Two mandrels.', inch("3", "0.010", "3")),
    row("thin-bare", '4" x .012 wall 321, 4" clr. One.', inch("4", "0.012", "4")),
    row("lost-point", "175 x .095, 5.25 CLR DOM. One mandrel.", inch("1.75", "0.095", "5.25", "od")),
    row("lost-comma", "Tube 38 x 15, R 57.", mm("38", "1.5", "57", "wall")),
]  # fmt: skip


@pytest.mark.parametrize(("text", "size"), TIGHT_OR_THIN)
def test_slips_that_may_be_and_those_that_may_not(text: str, size: Size) -> None:
    requests = read_text(text)
    assert len(requests) == 1, written_down(requests)
    assert size.describes(requests[0]), written_down(requests)
