"""Counts of two sizes that are told apart by how big they are, or by an article alone."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

from datetime import date

import pytest

from bendreply.intake.pasted import text_message
from bendreply.intake.pipeline import understand


@pytest.mark.parametrize(
    ("text", "counts"),
    [
        ("Tube is 1½″ × 0.095″ HREW, and 1¼″ × 0.083″ HREW for the cross pieces. Both on 4½″ center line. I need 2 of the big one, 1 of the small one.", [2, 1]),
        ("1.75 x .120 and 1.5 x .095, both 5 CLR. Two of the bigger, one of the smaller.", [2, 1]),
        ("40 x 2 R 80 and 50 x 2 R 100. Three of the larger one and one of the smaller one.", [1, 3]),
        ("50 x 2 R 100 und 40 x 2 R 80. Zwei vom großen, einen vom kleinen.", [2, 1]),
        ("50 x 2 R 100 et 40 x 2 R 80. Deux du gros, un du petit.", [2, 1]),
        ("50 x 2 R 100 y 40 x 2 R 80. Dos del grande, uno del pequeño.", [2, 1]),
        ("50 x 2 R 100 e 40 x 2 R 80. Due del grande, uno del piccolo.", [2, 1]),
        ("50 x 2 R 100 en 40 x 2 R 80. Twee van de grote, één van de kleine.", [2, 1]),
        ("50 x 2 R 100 and 40 x 2 R 80, one mandrel each. One of the small ones is urgent.", [1, 1]),
        ("50 x 2 R 100 and 40 x 2 R 80. 2 of the big one. One of the big one goes to Ohio.", [None, None]),
        ("Two mandrels for 2 x .065, 3 CLR and one for 1.75 x .065, 2.625 CLR.", [2, 1]),
        ("Two mandrels: one for 53 x 1.5, R 80, and one for 43 x 1.5, R 65.", [1, 1]),
        ("Zwei Dorne für 53 x 1,5, R 80 und einen für 43 x 1,5, R 65.", [2, 1]),
        ("Deux mandrins pour 53 x 1,5, R 80 et un pour 43 x 1,5, R 65.", [2, 1]),
        ("Dos mandriles para 53 x 1,5, R 80 y uno para 43 x 1,5, R 65.", [2, 1]),
        ("Due anime per 53 x 1,5, R 80 e una per 43 x 1,5, R 65.", [2, 1]),
        ("Ci servono due anime, una per tubo rame 18x1 e una per 22x1, tutte e due con raggio 3D.", [1, 1]),
        ("Twee doornen voor 53 x 1,5, R 80 en één voor 43 x 1,5, R 65.", [2, 1]),
    ],
)  # fmt: skip
def test_each_size_gets_its_count(text: str, counts: list[int | None]) -> None:
    understood = understand(text_message(text, today=date(2026, 11, 26)))
    assert [request.quantity for request in understood.requests] == counts


@pytest.mark.parametrize("word", ["mandrl", "madrel", "manderl", "mandrelle"])
def test_a_misspelt_mandrel_is_counted(word: str) -> None:
    text = f"need 1 {word} for 18 gauge by 5/8 tube, 1018 steel, 1 7/8 clr"
    (request,) = understand(text_message(text, today=date(2026, 11, 26))).requests
    assert request.quantity == 1
