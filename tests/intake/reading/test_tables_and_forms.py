"""Tables, pasted rows and filled-in forms as customers send them: each cell is what its head says.

The same two or three sizes stand in every layout, so that what is read is known: 38 x 1.5 on
R 76 (two mandrels) and 50 x 2 on R 150 (one).
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from bendreply.intake.lost_rows import lost_rows
from bendreply.rules.request import Material

from .support import read_text

SIZES = [(Decimal(38), Decimal("1.5"), Decimal(76)), (Decimal(50), Decimal(2), Decimal(150))]
OTHER_HEADS = (
    "Pcs per year", "Annual qty", "Unit price", "Wt/ft", "KG/M", "Weight (KG)", "OD/t", "Part #",
    "# bends", "Balls", "Mandrel type", "Jahresbedarf", "Anzahl Biegungen", "Stück/Jahr",
    "Nb de cintres", "Pièces par an", "Curvas por pieza", "Piezas al año", "Pezzi/anno",
    "N. curve", "Aantal bochten", "Stuks per jaar", "Cod. pezzo",
)  # fmt: skip


def _read(text: str) -> list[tuple[Decimal | None, ...]]:
    requests = read_text(text)
    assert not any(one.doubts for one in requests)
    return [(one.od_mm, one.wall_mm, one.clr_mm) for one in requests]


@pytest.mark.parametrize("head", OTHER_HEADS)
def test_other_columns_measure_and_count_nothing(head: str) -> None:
    rows = "38\t1.5\t76\t2\t4\n50\t2\t150\t1\t3"
    text = f"Please quote mandrels\n\nOD\tWall\tCLR\tQty\t{head}\n{rows}\n"
    assert _read(text) == SIZES
    assert [one.quantity for one in read_text(text)] == [2, 1]


@pytest.mark.parametrize(
    "rows",
    [
        "OD, wall thickness, CLR, Qty\n38, 1.5, 76, 2\n50, 2, 150, 1",
        'Part,OD,Wall,"CLR, mm",Qty\n"A, left",38,1.5,76,2\nB,50,2,150,1',
        "Wall;CLR;Qty;OD\n1.5;76;2;38\n2;150;1;50",
        "Qty\tCLR\tOD\tWall\n2\t76\t38\t1.5\n1\t150\t50\t2",
    ],
)
def test_pasted_rows(rows: str) -> None:
    text = f"Please quote mandrels, all in mm\n\n{rows}\n"
    assert _read(text) == SIZES
    assert [one.quantity for one in read_text(text)] == [2, 1]


def test_the_last_head_takes_no_figure_from_below() -> None:
    text = "Please quote mandrels\n\nWall;CLR;Ø\n1.5;76;38\n2;150;50\n"
    assert _read(text) == SIZES


@pytest.mark.parametrize(
    "form",
    [
        "OD: {o} mm\nWall: {w} mm\nCLR: {r} mm\nMandrels: {q}\nAnnual volume: 500\n\n",
        "Size\nTube Ø = {o}\nThk = {w}\nRadius = {r}\nQty = {q}\nPrice = 185\n\n",
        "AD - {o}\nWandst. - {w}\nBiegeradius - {r}\nStück - {q}\nGewicht - 2.1\n\n",
        "OD: {o} / Wall: {w} / CLR: {r} / Qty: {q}\n",
    ],
)
def test_forms_filled_in_for_each_size(form: str) -> None:
    blocks = form.format(o=38, w="1.5", r=76, q=2) + form.format(o=50, w=2, r=150, q=1)
    text = f"Please quote mandrels, dimensions in mm.\n\n{blocks}\nThanks\n"
    assert _read(text) == SIZES
    assert [one.quantity for one in read_text(text)] == [2, 1]


def test_a_blank_in_a_form_stays_open() -> None:
    text = (
        "Please quote mandrels, dimensions in mm.\n\nOD: 38\nWall: 1.5\nCLR: -\nAnnual qty: 120\n\n"
        "OD: 50\nWall: 2\nCLR: 150\nAnnual qty: 900\n"
    )
    assert _read(text) == [(*SIZES[0][:2], None), SIZES[1]]


@pytest.mark.parametrize("mark", ['"', "''", "ditto", "do.", "same", "idem", "dito", "s.o."])
def test_ditto_marks_have_what_stands_above(mark: str) -> None:
    text = (
        "Please quote mandrels, dimensions in mm.\n\nOD\tWall\tCLR\tMaterial\tQty\n"
        f"38\t2\t76\t304\t2\n50\t{mark}\t150\t{mark}\t{mark}\n"
    )
    assert _read(text) == [(Decimal(38), Decimal(2), Decimal(76)), SIZES[1]]
    assert [(one.material, one.quantity) for one in read_text(text)] == [
        (Material.STAINLESS_STEEL, 2)
    ] * 2


@pytest.mark.parametrize(
    "said",
    [
        "All lines qty 3.", "qty 3 for all", "3x each", "Pro Position 3 Dorne.", "Menge jeweils 3",
        "3 mandrins par ligne.", "Quantité 3 par référence.", "3 de cada uno",
        "3 mandriles por línea.", "3 mandrini per riga.", "Per regel 3 stuks",
    ],
)  # fmt: skip
def test_a_count_said_once_for_all_rows(said: str) -> None:
    table = "OD\tWall\tCLR\n38\t1.5\t76\n50\t2\t150"
    text = f"Please quote mandrels, dimensions in mm.\n\n{table}\n\n{said}\n\nThanks\n"
    assert [one.quantity for one in read_text(text)] == [3, 3]


@pytest.mark.parametrize(
    "note",
    [
        "We already have line 2.", "Line 2 can wait.", "No need to quote item 2.",
        "Line 2 - already have that one.", "Pos. 2 ist vorhanden.", "Pos. 2 kann noch warten.",
        "La ligne 2 peut attendre.", "La línea 2 puede esperar.", "La riga 2 può aspettare.",
        "Regel 2 kan wachten.",
    ],
)  # fmt: skip
def test_lines_set_aside_by_a_note(note: str) -> None:
    table = "Item\tOD\tWall\tCLR\n1\t38\t1.5\t76\n2\t42.4\t2\t100\n3\t50\t2\t150"
    assert _read(f"Please quote mandrels, all in mm.\n\n{table}\n\n{note}\n\nThanks\n") == SIZES


def test_a_radius_is_no_grade_of_the_next_cell() -> None:
    rows = "54; 1,5; 110; koper\n38; 2; 90; staal"
    text = f"Graag offerte doorns\n\nØ; Wand; Straal; Materiaal\n{rows}\n"
    assert [one.clr_mm for one in read_text(text)] == [Decimal(110), Decimal(90)]


@pytest.mark.parametrize(
    ("plain", "lost"),
    [
        ("OD\nWall\nCLR\n38\n1.5\n76", True),
        ("OD Wall CLR\n38 1.5 76", True),
        ("OD | Wall | CLR\n38 | 1.5 | 76", False),
        ("OD   Wall  CLR\n38   1.5   76", False),
        ("something else", False),
    ],
)
def test_rows_that_the_plain_words_lost(plain: str, lost: bool) -> None:
    assert lost_rows("OD\tWall\tCLR\n38\t1.5\t76", plain) is lost
