"""Mandrels that were had before count none of those wanted now; 'one of each, but where a number
stands'; a count that is put right."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

import pytest

from .support import read_text

HAD_BEFORE = [
    (
        "The two mandrels you made us last year are still going strong. We now need a mandrel for 63.5 x 2 mm, 160 mm centre line. Could you quote for one please?",
        1,
    ),
    (
        "We were very happy with the three mandrels you supplied in spring. Now we need one for 63.5 x 2 mm, CLR 160 mm.",
        1,
    ),
    (
        "Those four mandrels from last summer are great. Please quote two for 63.5 x 2 mm, CLR 160 mm.",
        2,
    ),
    (
        "Die zwei Dorne vom letzten Jahr laufen noch prima. Jetzt brauchen wir einen Dorn für 63,5 x 2, Radius 160 mm.",
        1,
    ),
    (
        "Les deux mandrins de l'an dernier tournent bien. Il nous faut maintenant un mandrin pour 63,5 x 2, rayon 160 mm.",
        1,
    ),
    (
        "Los dos mandriles del año pasado van bien. Ahora necesitamos un mandril para 63,5 x 2, radio 160 mm.",
        1,
    ),
    (
        "I due mandrini dell'anno scorso vanno bene. Ora ci serve un mandrino per 63,5 x 2, raggio 160 mm.",
        1,
    ),
    (
        "De twee doornen van vorig jaar doen het nog prima. Nu hebben we een doorn nodig voor 63,5 x 2, radius 160 mm.",
        1,
    ),
    (
        "We need the two mandrels you made us last year again: 63.5 x 2 mm, 160 mm centre line radius.",
        2,
    ),
]
_LINES = "\n\n30 x 2  R 60\n35 x 2  R 70  (2)\n40 x 2  R 80\n"
EACH_UNLESS = [
    "One mandrel per line except where I put a number." + _LINES,
    "Mandrels please, one of each unless noted." + _LINES,
    "Mandrels please, one each unless a number stands behind." + _LINES.replace("(2)", "2"),
    "Mandrels please, one each except where marked." + _LINES.replace("(2)", "x2"),
    "Mandrels please, one of each unless noted." + _LINES.replace("(2)", "(qty 2)"),
    "Je ein Dorn, wo nichts anderes steht." + _LINES,
    "Un mandrin par ligne sauf indication." + _LINES,
    "Un mandril por línea salvo donde se indica." + _LINES,
    "Un mandrino per riga salvo dove indicato." + _LINES,
]
_TUBE = " 20 x 1 mm brass tube, radius 50 mm to the centreline. We need 1 mandrel."
PUT_RIGHT = [
    "The right quantity is 2, not 1." + _TUBE,
    "Quantity should be 2 instead of 1." + _TUBE,
    "It should say two mandrels, not one." + _TUBE,
    "Die richtige Menge ist 2, nicht 1." + _TUBE,
    "Richtig sind 2 Stück, nicht 1." + _TUBE,
    "La bonne quantité est 2, pas 1." + _TUBE,
    "La cantidad correcta es 2, no 1." + _TUBE,
    "La quantità giusta è 2, non 1." + _TUBE,
    "Servono 2 pezzi, non 1." + _TUBE,
    "Het juiste aantal is 2, niet 1." + _TUBE,
]
NAMED_BY_OD = [
    ("Please quote:\n1.75 x .095, 5 clr\n2 x .095, 6 clr\nOnly the 2 please.", None),
    ("Please quote:\n20 x 1.5, R 40\n22 x 1.5, R 44\nJust the 22 for now.", None),
    ("Please quote:\n20 x 1.5, R 40\n22 x 1.5, R 44\nQuote only the 22, 2 pcs.", 2),
    ("Please quote mandrels for 2 x .095, 6 clr. Just the 2 mandrels.", 2),
]


@pytest.mark.parametrize(("text", "count"), HAD_BEFORE)
def test_mandrels_of_before_count_none_of_now(text: str, count: int) -> None:
    (request,) = read_text(text)
    assert request.quantity == count
    assert request.doubt_on("quantity") is None


@pytest.mark.parametrize("text", EACH_UNLESS)
def test_one_of_each_line_but_where_it_says_otherwise(text: str) -> None:
    assert [request.quantity for request in read_text(text)] == [1, 2, 1]


@pytest.mark.parametrize("text", PUT_RIGHT)
def test_a_count_that_is_put_right_holds(text: str) -> None:
    (request,) = read_text(text)
    assert request.quantity == 2


@pytest.mark.parametrize(("text", "count"), NAMED_BY_OD)
def test_a_tube_called_by_its_od_is_no_count(text: str, count: int | None) -> None:
    (request,) = read_text(text)
    assert request.quantity == count
    assert request.doubt_on("quantity") is None
