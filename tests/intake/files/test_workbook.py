"""Attached workbooks: what a person would see in them is read; the rest is named."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from decimal import Decimal

import pytest
from openpyxl.workbook import Workbook

from bendreply.intake.model import Kind
from bendreply.rules.request import Material

from .made import Rows, lengths, said, saved, workbook

MM: Rows = [["OD mm", "Wall mm", "CLR mm"], [38, 1.5, 57]]
ONE = [("38", "1.5", "57")]


def test_a_mail_with_thirty_sizes_in_a_sheet_is_read_whole() -> None:
    # 1 in, 1 1/16 in, ... in sixteenths; walls of 0.065 and 0.083 in in turn; CLR three times OD.
    ods = [Decimal(16 + n) / 16 for n in range(30)]
    rows = [
        [float(od), 0.065 if n % 2 else 0.083, float(3 * od), "304", n % 3 + 1]
        for n, od in enumerate(ods)
    ]
    head = [["OD (in)", "Wall (in)", "CLR (in)", "Material", "Qty"]]
    heard = said("sizes.xlsx", saved(workbook(Tubes=head + rows)))
    assert heard.kind is Kind.SIZES
    assert [r.od_mm for r in heard.requests] == [od * Decimal("25.4") for od in ods]
    assert [r.clr_mm for r in heard.requests] == [3 * od * Decimal("25.4") for od in ods]
    assert [r.wall_mm for r in heard.requests[:2]] == [Decimal("2.1082"), Decimal("1.651")]
    assert [r.quantity for r in heard.requests] == [n % 3 + 1 for n in range(30)]
    assert {r.material for r in heard.requests} == {Material.STAINLESS_STEEL}
    assert not any(r.doubts for r in heard.requests)
    assert heard.notes == ()


def test_each_value_says_which_sheet_it_is_from() -> None:
    heard = said("rfq.xlsx", saved(workbook(Inch=[["OD in", "Wall in", "CLR in"], [2, 0.12, 6]],
                                            Metric=MM)))  # fmt: skip
    assert lengths(heard.requests) == [("50.8", "3.048", "152.4"), *ONE]
    first, second = heard.requests
    assert {e.attachment for e in first.evidence} == {"rfq.xlsx, sheet Inch"}
    assert [(e.field, e.written) for e in second.evidence] == [
        ("od", "38"), ("wall", "1.5"), ("clr", "57"),
    ]  # fmt: skip
    assert all(e.surface == "" and e.start == e.end for e in first.evidence)


ODD_TABLES: list[tuple[str, Rows, list[tuple[str, ...]]]] = [
    ("title, gap and total", [["Tube list 2026"], [], *MM, [40, 2, 60], ["Total", None, 2]],
     [*ONE, ("40", "2", "60")]),
    ("units in a row of their own", [["OD", "Wall", "CLR"], ["mm", "mm", "in"], [38, 1.5, 2]],
     [("38", "1.5", "50.8")]),
    ("figures in the head", [["Part 7", "OD mm", "Wall mm (EN 10305)", "CLR mm"],
                             ["A-1", 38, 1.5, 57]], ONE),
    ("numbers as text", [["Rohr-Ø mm", "Wanddicke mm", "Radius mm"], ["38,0", "1,5", "57,0"]], ONE),
    ("fractions, gauges and D", [["OD", "Wall", "CLR"], ["1-3/4", "14 ga", "2D"]],
     # 14 BWG is 0.083 in: 0.083 x 25.4 = 2.1082; 2 x 1.75 x 25.4 = 88.9
     [("44.45", "2.1082", "88.9")]),
    ("a row between", [*MM, ["Second batch", None, None], [40, 2, 60], [42, 2, 63]],
     [*ONE, ("40", "2", "60"), ("42", "2", "63")]),
    ("two tables", [*MM, [], ["OD in", "Wall in", "CLR in"], [2, 0.12, 6]],
     [*ONE, ("50.8", "3.048", "152.4")]),
    ("an empty cell", [*MM, [40, None, 60]], [*ONE, ("40", "", "60")]),
    ("other columns", [["No", "Remark", "OD mm", "Wall mm", "CLR mm", "Ordered"],
                       [1, "leg 300 long", 38, 1.5, 57, datetime(2026, 10, 1)],
                       [2, None, 40, 2, 60, None]], [*ONE, ("40", "2", "60")]),
    ("worked out", [["OD mm", "Wall mm", "CLR mm"], [38, 0.1 + 0.2 + 1.2, 57]], ONE),
]  # fmt: skip


@pytest.mark.parametrize(
    ("rows", "sizes"), [row[1:] for row in ODD_TABLES], ids=[row[0] for row in ODD_TABLES]
)
def test_a_sheet_as_people_fill_it(rows: Rows, sizes: list[tuple[str, ...]]) -> None:
    assert lengths(said("list.xlsx", saved(workbook(List=rows))).requests) == sizes


def test_a_row_between_belongs_to_the_rows_below() -> None:
    rows = [["Carbon steel"], *MM, ["Stainless 304"], [40, 2, 60]]
    heard = said("list.xlsx", saved(workbook(List=rows)))
    assert [r.material for r in heard.requests] == [Material.CARBON_STEEL, Material.STAINLESS_STEEL]


def hide_row(book: Workbook) -> None:
    book["List"].append([99, 2, 300])
    book["List"].row_dimensions[3].hidden = True


def hide_column(book: Workbook) -> None:
    book["List"]["D1"], book["List"]["D2"] = "OD in", 2
    book["List"].column_dimensions["D"].hidden = True


def hide_sheet(book: Workbook) -> None:
    book.create_sheet("Old").append(["OD mm", "Wall mm"])
    book["Old"].append([99, 2])
    book["Old"].sheet_state = "hidden"


def formula(book: Workbook) -> None:
    # openpyxl saves no results, as other programs that write workbooks do not.
    book["List"].append(["=2*20", 2, 60])


def error(book: Workbook) -> None:
    book["List"].append(["#DIV/0!", 2, 60])


def fraction(book: Workbook) -> None:
    book["List"].append([datetime(2026, 3, 4), 2, 60])
    book["List"]["A3"].number_format = "d-mmm"


def wide(book: Workbook) -> None:
    book["List"].cell(2, 70, 12)


def long(book: Workbook) -> None:
    book["List"].cell(2500, 1, 40)


@pytest.mark.parametrize(
    ("change", "note"),
    [
        (hide_row, "1 hidden row of sheet List left out"),
        (hide_column, "1 hidden column of sheet List left out"),
        (hide_sheet, "1 hidden sheet left out"),
        (formula, "1 cell of sheet List with a formula whose result was not saved"),
        (error, "1 cell of sheet List with an error in it"),
        (fraction, "1 cell of sheet List with a day and month: perhaps a fraction"),
        (wide, "only the first 60 columns of sheet List were read"),
        (long, "only the first 2000 rows of sheet List were read"),
    ],
)
def test_what_is_left_out_is_named(change: Callable[[Workbook], None], note: str) -> None:
    book = workbook(List=MM)
    change(book)
    heard = said("list.xlsx", saved(book))
    assert lengths(heard.requests)[:1] == ONE
    assert ("99", "2", "300") not in lengths(heard.requests)
    assert any(one.startswith(f"the attachment list.xlsx: {note}") for one in heard.notes)


def test_a_merged_cell_speaks_for_all_its_rows() -> None:
    book = workbook(List=[*MM, [None, 2, 57], [None, 1.5, 76]])
    book["List"].merge_cells("A2:A4")
    assert lengths(said("list.xlsx", saved(book)).requests) == [
        ("38", "1.5", "57"), ("38", "2", "57"), ("38", "1.5", "76"),
    ]  # fmt: skip


@pytest.mark.parametrize("shown_as", ['0.0" mm"', '0.00"mm"', r"0.0\ \m\m"])
def test_a_unit_that_only_the_number_format_shows_counts(shown_as: str) -> None:
    book = workbook(List=[["OD", "Wall", "CLR"], [8, 1, 24]])  # inches are as likely, else
    for cell in book["List"][2]:
        cell.number_format = shown_as
    (request,) = said("list.xlsx", saved(book)).requests
    assert lengths([request]) == [("8", "1", "24")]
    assert request.doubts == ()


def test_a_row_that_gave_no_size_is_counted() -> None:
    heard = said("list.xlsx", saved(workbook(List=[*MM, ["tbd", "tbd", 60]])))
    assert lengths(heard.requests) == ONE
    assert heard.notes == (
        "the attachment list.xlsx: 2 rows with figures, a size read in 1 of them",
    )
