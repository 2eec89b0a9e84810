"""Lines 'OD / wall / radius x2': the figure behind the x counts, and is no wall of the radius."""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text

LINES = [
    "50.8 / 1.5 / 100   x2\n38.1 / 1.5 / 76    x3\nOD / wall / centre radius in mm",
    "50.8 / 1.5 / 100 x 2\n38.1 / 1.5 / 76 x 3\n(OD / wall / CLR, mm)",
    "OD / wall / CLR mm\n50.8 / 1.5 / 100 x2\n38.1 / 1.5 / 76 x3",
    "50,8 / 1,5 / 100  x2\n38,1 / 1,5 / 76  x3\n(AD / Wand / Radius Mitte in mm)",
]


@pytest.mark.parametrize("lines", LINES)
def test_a_count_behind_slashes(lines: str) -> None:
    first, second = read_text(f"We need mandrels:\n\n{lines}\n")
    assert (first.od_mm, first.wall_mm, first.clr_mm) == (Decimal("50.8"), Decimal("1.5"), 100)
    assert (second.od_mm, second.wall_mm, second.clr_mm) == (Decimal("38.1"), Decimal("1.5"), 76)
    assert (first.quantity, second.quantity) == (2, 3)
