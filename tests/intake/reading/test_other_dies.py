"""Radii of other dies, said to be for something else, ask for nothing; those that may be meant do."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text

_EN = "A mandrel for 42 x 2 mm steel tube please, CLR 84. "
ASIDE = [
    _EN + "The other dies I've got (R=100, R=126) are for conduit.",
    _EN + "My other formers (100 and 126 CLR) don't matter today.",
    _EN + "Our other shoes, R 100 and R 126, are irrelevant here.",
    "Ein Dorn für Rohr 42 x 2, Radius 84. Meine übrigen Formen (R 100, R 126) sind nicht wichtig.",
    "Un mandrin pour tube 42 x 2, rayon 84. Mes autres sabots (R 100, R 126) sont pour tuyaux d'eau.",
    "Un mandril para tubo 42 x 2, radio 84. Las demás matrices (R 100, R 126) no importan ahora.",
    "Un mandrino per tubo 42 x 2, raggio 84. Le altre matrici (R 100, R 126) non contano.",
    "Een doorn voor buis 42 x 2, radius 84. De andere mallen (R 100, R 126) doen er niet toe.",
]
PERHAPS = [
    _EN + "The other dies I've got (R=100, R=126) are for the same tube.",
    _EN + "Please quote the other shoes (R=100, R=126) as well.",
    _EN + "The other dies are R=100 and R=126.",
]


@pytest.mark.parametrize("text", ASIDE)
def test_dies_for_something_else_are_no_sizes(text: str) -> None:
    [request] = read_text(text)
    assert (request.od_mm, request.wall_mm, request.clr_mm) == (42, 2, Decimal(84))


@pytest.mark.parametrize("text", PERHAPS)
def test_dies_that_may_be_meant_are_read(text: str) -> None:
    assert len(read_text(text)) == 3
