"""Lists that go with each other in order, lists of tubes that look like pipes, lines numbered.

An inch is 25.4 mm; 16 gauge of the Birmingham column is .065 in.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import doubted, read_text

METRIC = (("40", "2", "80"), ("50", "2", "100"), ("60", "2", "120"))
IN_ORDER: list[str] = [
    "Dorne für Rohr 40, 50 und 60 mm, Wand 2. Biegeradius 80, 100 und 120 in dieser Reihenfolge.",
    "Dorne für Rohr 40, 50 und 60, Wand 2, Radius 80, 100 und 120, gleiche Reihenfolge.",
    "Mandrins pour tubes de 40, 50 et 60, paroi 2, rayon 80, 100 et 120 dans cet ordre.",
    "Mandriles para tubo de 40, 50 y 60, pared 2. Radio 80, 100 y 120, mismo orden.",
    "Mandrini per tubi da 40, 50 e 60 mm, spessore 2. Raggio 80, 100 e 120 in quest'ordine.",
    "Doornen voor buis 40, 50 en 60 mm, wand 2. Straal 80, 100 en 120 in die volgorde.",
    "Doornen voor buis 40, 50 en 60 mm, wand 2. Radius 80, 100 en 120 respectievelijk.",
    "Mandrels for 40, 50 and 60 mm tube, wall 2. The dies are 80, 100 and 120 CLR, same order.",
]


@pytest.mark.parametrize("text", IN_ORDER)
def test_two_lists_in_order(text: str) -> None:
    requests = read_text(text)
    assert [(str(r.od_mm), str(r.wall_mm), str(r.clr_mm)) for r in requests] == list(METRIC)
    assert not any(doubted(request) for request in requests)


TUBES: list[tuple[str, tuple[str, ...]]] = [
    ("mandrels for 2.5, 3 and 3.5 inch tube, .065 wall, 6 CLR", ("2.5", "3", "3.5")),
    ("mandrels for 2-1/2, 3, 3-1/2 and 4 inch tube, .065 wall, 8 CLR", ("2.5", "3", "3.5", "4")),
    ("mandrels for 3 and 3-1/2 inch tube, .065 wall, 6 CLR", ("3", "3.5")),
    ("mandrels for 4 and 4-1/2 inch tube, .065 wall, 9 CLR", ("4", "4.5")),
    ("mandrel for 3 inch pipe, 3.5 OD, .120 wall, 9 CLR", ("3.5",)),
    ("mandrel for 1-1/4, 1.66 OD pipe, .140 wall, 5 CLR", ("1.66",)),
]


@pytest.mark.parametrize(("text", "inches"), TUBES)
def test_a_list_of_tubes_names_no_pipe(text: str, inches: tuple[str, ...]) -> None:
    requests = read_text(text)
    assert [r.od_mm for r in requests] == [Decimal(one) * Decimal("25.4") for one in inches]
    assert not any(doubted(request) for request in requests)


LINES: list[str] = [
    "Ln 1   Qty 2   Mandrel   {}\nLn 2   Qty 4   Mandrel   {}\nLn 3   Qty 1   Mandrel   {}",
    "LN 10  QTY 2  MANDREL {}\nLN 20  QTY 4  MANDREL {}\nLN 30  QTY 1  MANDREL {}",
    "Itm 1 - Mandrel {} - Qty 2\nItm 2 - Mandrel {} - Qty 4\nItm 3 - Mandrel {} - Qty 1",
    "1 Qty 2 Mandrel {}\n2 Qty 4 Mandrel {}\n3 Qty 1 Mandrel {}",
    "10  2 EA  Mandrel {}\n20  4 EA  Mandrel {}\n30  1 EA  Mandrel {}",
    "1  2 Stück  Dorn {}\n2  4 Stück  Dorn {}\n3  1 Stück  Dorn {}",
    "Lín. 1  Cant. 2  Mandril {}\nLín. 2  Cant. 4  Mandril {}\nLín. 3  Cant. 1  Mandril {}",
]


@pytest.mark.parametrize("lines", LINES)
def test_what_numbers_a_line_counts_nothing(lines: str) -> None:
    text = "Please quote:\n\n" + lines.format("40 x 2 R80", "50 x 2 R100", "60 x 2 R120")
    requests = read_text(text)
    assert [request.quantity for request in requests] == [2, 4, 1]


def test_a_count_that_opens_its_line_still_counts() -> None:
    (request,) = read_text("2 Qty Mandrel 2.000 OD x .065 W x 4.000 CLR")
    assert request.quantity == 2
