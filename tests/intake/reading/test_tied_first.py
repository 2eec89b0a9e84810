"""'The first two on 3 CLR, the 1-7/8 on 3.5': radii for the first so many, and for the rest by OD."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text

_INCHES = "prices on mandrels please\n\n1-1/2\n1-5/8\n2\n\nall .065 wall 304. "
MIXED = [
    (_INCHES + 'first two are 3" clr, the 2 goes on a 4" clr. one of each', "76.2 76.2 101.6"),
    (_INCHES + 'The first two are 3" clr, the 2 is on a 4" clr.', "76.2 76.2 101.6"),
    (_INCHES + 'Last two are 4" clr, the 1-1/2 is 3" clr.', "76.2 101.6 101.6"),
    ("Mandrels for 38, 42 and 45, all 1.5 wall 304. First two R 80, the 45 is R 95.", "80 80 95"),
    ("Dorne für 38, 42 und 45, alle 1,5 Wand. Die ersten beiden mit Radius 80, das 45 mit Radius 95.", "80 80 95"),
    ("Mandrins pour 38, 42 et 45, tous épaisseur 1,5. Les deux premiers sur rayon 80, le 45 sur rayon 95.", "80 80 95"),
    ("Mandriles para 38, 42 y 45, todos espesor 1,5. Los dos primeros con radio 80, el 45 con radio 95.", "80 80 95"),
    ("Mandrini per 38, 42 e 45, tutti spessore 1,5. I primi due con raggio 80, il 45 con raggio 95.", "80 80 95"),
    ("Doorns voor 38, 42 en 45, alle wanddikte 1,5. De eerste twee op radius 80, de 45 op radius 95.", "80 80 95"),
]  # fmt: skip


@pytest.mark.parametrize(("text", "radii"), MIXED)
def test_each_tube_has_the_radius_said_for_it(text: str, radii: str) -> None:
    assert [r.clr_mm for r in read_text(text)] == [Decimal(radius) for radius in radii.split()]
