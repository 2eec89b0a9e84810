"""Counting the mandrels that are wanted of each of several sizes."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

import pytest

from .count_support import A, B, quantities

SEVERAL = [
    (f"- {A}: 2 off\n- {B}: 1 off", [2, 1]),
    (f"{A} - two mandrels\n{B} - three mandrels", [2, 3]),
    (f"(2) {A}\n(1) {B}", [2, 1]),
    (f"(1) {A}\n(2) {B}", [None, None]),  # the brackets number the lines
    (f"1. {A}, 3 pcs\n2. {B}, 4 pcs", [3, 4]),
    ("item,description,OD in,wall in\n10,mandrel,1.5,.065\n20,mandrel,2,.083", [None, None]),
    (f"1 MANDREL FOR {A}   2 EA\n2 MANDREL FOR {B}   1 EA", [2, 1]),  # the lines are numbered
    (f"1 mandrel for {A}\n2 mandrels for {B}", [1, 2]),
    (f"Ln\tDescription\tQty\tUnit\n1\tMANDREL {A}\t2\t$372.00\n2\tMANDREL {B}\t1\t$398", [2, 1]),
    (f"Pos | Bezeichnung | Menge\n10 | Dorn {A} | 3\n20 | Dorn {B} | 1", [3, 1]),
    (f"Item  Description        Qty\n1     {A}   2\n2     {B}   5", [2, 5]),
    (f"Item 1: {A}\n  Qty 2\nItem 2: {B}\n  Qty 4", [2, 4]),
    (f"1 pc {A}, 2 pcs {B}", [1, 2]),
    (f"{A}: one. {B}: two.", [1, 2]),
    (f"One mandrel per size: {A}; {B}", [1, 1]),
    (f"{A}\n{B}\nOne apiece.", [1, 1]),
    (f"Quantity 3 of each\n{A}\n{B}", [3, 3]),
    (f"Two mandrels: {A} and {B}", [1, 1]),
    (f"4 mandrels total: {A}, {B}", [None, None]),
    (f"need a mandrel for {A} and {B}", [None, None]),
    ("un mandrin pour chaque : 38 x 1,5 R 57 et 42,4 x 2 R 85", [1, 1]),
    ("je 2 Dorne: 38 x 1,5 R 57; 42,4 x 2 R 85", [2, 2]),
    ("OD\tWall\tCLR\tNeeded\n1.5\t.065\t4.5\t2\n2\t.083\t6\t1", [2, 1]),
    (
        "tube OD\tWall\tCLR\tpcs of tube\n1.5\t.065\t4.5\t40\n2\t.083\t6\t20\n\nOne mandrel of each.",
        [1, 1],
    ),
]  # fmt: skip


@pytest.mark.parametrize(("text", "counts"), SEVERAL)
def test_each_size_gets_its_own_count(text: str, counts: list[int | None]) -> None:
    assert quantities(text) == counts


MORE_SEVERAL = [
    (f"We would like two mandrels:\n a) {A}\n b) {B}\nOne of each please.", [1, 1]),
    (f"{A} and {B}. One of each please.", [1, 1]),
    (f"{A} and {B}. Two of each.", [2, 2]),
    (f"{A} und {B}. Je einen bitte.", [1, 1]),
    (f"{A}\n{B}\nUn de chaque, merci.", [1, 1]),
    (f"{A}\n{B}\nUno de cada, por favor.", [1, 1]),
    (f"{A}\n{B}\nUno per tipo, grazie.", [1, 1]),
    (f"{A}\n{B}\nVan elk één graag.", [1, 1]),
    (f"{A}\n{B}\nVon jedem einen.", [1, 1]),
    (f"{A}\n{B}\nOne mandrel each size.", [1, 1]),
    (f"{A}\n{B}\nOne mandrel for each.", [1, 1]),
    (f"{A}\n{B}\na mandrel for each size please", [1, 1]),
    (f"{A}\n{B}\nMay I have one mandrel for each diameter?", [1, 1]),
    (f"{A} and {B}. So two mandrels together.", [1, 1]),
    (f"{A} and {B}. So two mandrels in all.", [1, 1]),
    (f"{A} and {B}. That makes two mandrels.", [1, 1]),
    (f"Two mandrels, one per size. {A} and {B}", [1, 1]),
    (f"Ci servono due mandrini, uno per misura:\n{A}\n{B}", [1, 1]),
    (f"Zwei Dorne, je einer pro Größe:\n{A}\n{B}", [1, 1]),
    (f"Two mandrels per size. {A} and {B}", [2, 2]),
    (f"one pc of each size:\n{A}\n{B}", [1, 1]),
    (f"Size 1: {A}, 2 nos\nSize 2: {B}, 1 no", [2, 1]),
    ("1-7/8 and 2 in, 18 gauge, 3 clr. So that's a mandrel for the 1-7/8 and another for the 2.", [1, 1]),
    (f"{A} and {B}. In total 2 mandrels.", [1, 1]),
    (f"{A} und {B}. Also zwei Dorne zusammen.", [1, 1]),
    (f"{A} et {B}. Soit deux mandrins au total.", [1, 1]),
    (f"{A} and {B}. So four mandrels together.", [None, None]),
    (f"One mandrel per size to start.\n{A}\n{B}", [1, 1]),
    (f"need 1 for {A} and 2 for {B}, mandrels that is", [1, 2]),
]  # fmt: skip


@pytest.mark.parametrize(("text", "counts"), MORE_SEVERAL)
def test_everyday_wordings_for_several_sizes(text: str, counts: list[int | None]) -> None:
    assert quantities(text) == counts
