"""A figure that a later line strikes, and the one that line gives in its place."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text

_EN = "Need a mandrel for 42.4 x 2.6 steel, CLR 120.\n\nCheers\nAl\n\n"
STRUCK = [
    _EN + "Edit - scrub the 120, just had another look and it's stamped 130 CLR",
    _EN + "Edit: scrap the 120, I put a tape on it and it's 130 CLR",
    _EN + "Scratch the 120, found the old sheet and it is marked 130 CLR.",
    _EN + "PS scrub the CLR 120, the former reads 130 CLR.",
    "Necesito un mandril para 42,4 x 2,6 acero, radio 120.\n\nPD: olvidad el 120, pone radio 130.",
    "Mi serve un mandrino per 42,4 x 2,6 acciaio, raggio 120.\n\nPS: scordate il 120, c'è scritto raggio 130.",
    "Il me faut un mandrin pour 42,4 x 2,6 acier, rayon 120.\n\nPS : oubliez le 120, c'est marqué rayon 130.",
    "Graag een doorn voor 42,4 x 2,6 staal, radius 120.\n\nPS: vergeet de 120, er staat radius 130 op.",
]


@pytest.mark.parametrize("text", STRUCK)
def test_the_figure_that_is_struck_asks_for_nothing(text: str) -> None:
    requests = read_text(text)
    assert [r.clr_mm for r in requests] == [Decimal(130)]
    assert [(r.od_mm, r.wall_mm) for r in requests] == [(Decimal("42.4"), Decimal("2.6"))]
