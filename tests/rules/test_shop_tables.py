"""The tables of a shop folder: every fault is named by file, row and column."""

from __future__ import annotations

import re
from decimal import Decimal
from pathlib import Path

import pytest

from bendreply.rules.shop import (
    load_shop,
)

from .shop_support import GOOD, HEADER, edit, faults_of


def write_catalogue(folder: Path, *rows: str, header: str = HEADER) -> None:
    (folder / "catalogue.csv").write_text("\n".join((header, *rows)) + "\n", "utf-8")


# column, cell put there, sentence expected (in row 3, after a good row 2)
CELL_FAULTS = [
    ("tube_od", "1.5", "'1.5' has no unit: write '1.5 in' or '1.5 mm'."),
    ("tube_od", "38,1 mm", "'38,1 mm' has a comma: write decimals with a point"),
    ("tube_od", "", "is empty"),
    ("tube_od", "0 in", "0 in is not more than 0"),
    ("tube_wall_max", "0.95 in", "0.95 in is more than half of the tube's OD 1.5 in"),
    ("tube_wall_max", "0.75 in", "0.75 in is half of the tube's OD 1.5 in"),
    ("tube_wall_min", "0.130 in", "0.130 in is more than tube_wall_max 0.121 in"),
    (
        "mandrel_diameter",
        "1.258 in",  # bore = 1.5 - 2 x 0.121 = 1.258 in
        "1.258 in does not go into the smallest bore, 1.258 in (31.953 mm)",
    ),
    ("balls", "two", "two is not a whole number"),
    ("surface", "nylon", "'nylon' is not a surface we know"),
    ("clr_min", "12 in", "12 in is more than clr_max 9 in"),
    ("clr_min", "0.75 in", "0.75 in is not more than half of the tube's OD 1.5 in"),
    ("on_hand", "-1", "-1 is less than 0"),
    ("on_hand", "1.5", "1.5 is not a whole number"),
    ("part", "m1", "m1 stands in row 2 already"),
]


@pytest.mark.parametrize(("column", "cell", "told"), CELL_FAULTS)
def test_a_faulty_cell_is_named_with_row_and_column(
    folder: Path, column: str, cell: str, told: str
) -> None:
    cells = dict(zip(HEADER.split(","), GOOD.replace("M1", "M2").split(","), strict=True))
    cells[column] = f'"{cell}"' if "," in cell else cell
    write_catalogue(folder, GOOD, ",".join(cells.values()))
    (sentence,) = faults_of(folder)
    assert sentence.startswith(f"catalogue.csv, row 3, column {column}: {told}")


def test_every_planted_fault_is_named_at_once(folder: Path) -> None:
    edit(folder, "shop.toml", "value = 2.5", 'value = "tight"')
    edit(folder, "shop.toml", "people =", "poeple =")
    write_catalogue(
        folder,
        GOOD,
        "M2,1.5 in,0.118 in,0.95 in,1.253 in,1,chrome,3.75 in,9 in,2,",
        "",
        "M1,1.5,0.118 in,0.121 in,1.253 in,x,chrome,9 in,3.75 in,-2,",
        "M4,1.5 in",
    )
    (folder / "dies.csv").write_text("part,tube_od,clr,on_hand\nD1,2 in,1 in,1\nD1,2 in,,1\n")
    told = [sentence.split(": ")[0] for sentence in faults_of(folder)]
    assert [place.split(", ", 2)[-1] for place in told[:2]] == [
        "key poeple",
        "key limits.d_of_bend_min.value",
    ]
    assert told[2:] == [
        "catalogue.csv, row 3, column tube_wall_max",
        "catalogue.csv, row 5, column part",
        "catalogue.csv, row 5, column clr_min",
        "catalogue.csv, row 5, column tube_od",
        "catalogue.csv, row 5, column balls",
        "catalogue.csv, row 5, column on_hand",
        "catalogue.csv, row 6",
        "dies.csv, row 2, column clr",
        "dies.csv, row 3, column part",
        "dies.csv, row 3, column clr",
    ]


BALLS = (
    "wall_factor_over,wall_factor_to,d_over,d_to,angle_to,"
    "tube,nose,balls_low,balls_high,pitch,wiper"
)
GOOD_BALLS = "10,20,1.75,2.5,180,ferrous,plug or ball,0,1,regular,no"

# column, cell put there, sentence expected (in row 4: a remark, the header, a good row, this one)
BALL_FAULTS = [
    ("wall_factor_over", "", "is empty"),
    ("wall_factor_to", "thirty", "'thirty' is not a number: write e.g. 2.5"),
    ("wall_factor_to", "20", "20 is no less than wall_factor_to 20"),
    ("d_to", "2,5", "'2,5' is not a number: write e.g. 2.5"),
    ("d_over", "3", "3 is more than d_to 2.5"),
    ("angle_to", "-180", "'-180' is not a number"),
    ("tube", "steel", "'steel' is not one of 'ferrous' or 'soft non-ferrous'"),
    ("nose", "flat", "'flat' is not one of 'none', 'none or plug', 'plug'"),
    ("balls_low", "2", "2 is more than balls_high 1"),
    ("balls_high", "one", "one is not a whole number"),
    ("pitch", "wide", "'wide' is not one of 'regular'"),
    ("wiper", "perhaps", "'perhaps' is not one of 'no', 'maybe' or 'yes'"),
]


def write_balls(folder: Path, *rows: str) -> None:
    text = "\n".join(("# House chart, of our own making", BALLS, GOOD_BALLS, *rows))
    (folder / "balls.csv").write_text(text + "\n", "utf-8")


@pytest.mark.parametrize(("column", "cell", "told"), BALL_FAULTS)
def test_a_faulty_cell_of_the_ball_chart_is_named(
    folder: Path, column: str, cell: str, told: str
) -> None:
    row = GOOD_BALLS.replace("10,20", "20,30")
    cells = dict(zip(BALLS.split(","), row.split(","), strict=True)) | {column: cell}
    write_balls(folder, ",".join(f'"{c}"' if "," in c else c for c in cells.values()))
    (sentence,) = faults_of(folder)
    where = "wall_factor_over" if "no less than" in told else column
    assert sentence.startswith(f"balls.csv, row 4, column {where}: {told}")


def test_two_rows_for_the_same_bends_are_named_and_touching_ones_are_not(folder: Path) -> None:
    write_balls(folder, GOOD_BALLS.replace("10,20", "20,30"), GOOD_BALLS.replace("ferrous", "x"))
    assert len(faults_of(folder)) == 1  # the tube alone
    write_balls(folder, GOOD_BALLS.replace("1.75,2.5", "2.4,4"))
    assert faults_of(folder) == [
        "balls.csv, row 4, column wall_factor_over: "
        "this row covers bends that an earlier row covers already"
    ]
    write_balls(
        folder, GOOD_BALLS.replace("10,20", "20,30"), GOOD_BALLS.replace("1.75,2.5", "2.5,4")
    )
    assert len(load_shop(folder).balls.rows) == 3


def test_a_shop_needs_no_ball_chart(folder: Path) -> None:
    (folder / "balls.csv").unlink()
    assert load_shop(folder).balls.rows == ()


def test_remarks_above_a_header_keep_the_row_numbers_of_the_spreadsheet(folder: Path) -> None:
    text = f'"# Our shelf, counted in May",,\n# by Kit\n{HEADER}\n{GOOD}\n'
    (folder / "catalogue.csv").write_text(text.replace(GOOD, f"{GOOD}\nM2,1.5 in"), "utf-8")
    assert faults_of(folder) == ["catalogue.csv, row 5: has 2 cells where the header has 11"]
    (folder / "catalogue.csv").write_text(text, "utf-8")
    assert [m.part for m in load_shop(folder).catalogue] == ["M1"]


def test_twenty_planted_faults_are_all_named(folder: Path) -> None:
    edit(folder, "shop.toml", "value = 2.5", 'value = "tight"')  # 1
    edit(folder, "shop.toml", "people =", "poeple =")  # 2
    edit(folder, "shop.toml", '[{ low = "0.10 mm"', '[{ low = "0.10"')  # 3
    edit(folder, "shop.toml", "wiper_dies = false", 'wiper_dies = "none"')  # 4
    edit(folder, "shop.toml", "stock_working_days = 2", "stock_working_days = -2")  # 5
    write_catalogue(
        folder,
        GOOD,
        "M2,1.5 in,0.118 in,0.95 in,1.253 in,1,chrome,3.75 in,9 in,2,",  # 6: wall over OD/2
        "M3,1.5,0.118 in,0.121 in,1.253 in,1,chrome,3.75 in,9 in,2,",  # 7: no unit
        "M1,1.5 in,0.118 in,0.121 in,1.253 in,1,chrome,3.75 in,9 in,2,",  # 8: part twice
        "M5,1.5 in,0.118 in,0.121 in,1.3 in,1,nylon,3.75 in,9 in,2,",  # 9: too big; 10: surface
        "M6,1.5 in,0.118 in,0.121 in,1.253 in,two,chrome,9 in,3.75 in,-2,",  # 11, 12, 13
        "M7,1.5 in",  # 14: cells missing
    )
    (folder / "dies.csv").write_text(
        "part,tube_od,clr,on_hand\nD1,2 in,1 in,1\nD1,2 in,,some\n", "utf-8"
    )  # 15: CLR of OD/2; 16: part twice; 17: no CLR; 18: no count
    write_balls(
        folder,
        GOOD_BALLS.replace("10,20", "20,15"),  # 19: upside down
        GOOD_BALLS.replace("1.75,2.5", "2,3"),  # 20: same bends
    )
    told = [sentence.split(": ")[0] for sentence in faults_of(folder)]
    places = {re.sub(r"line \d+, ", "", place) for place in told}
    assert places == {
        "shop.toml, key limits.d_of_bend_min.value",
        "shop.toml, key poeple",
        "shop.toml, key mandrel_clearance.bands[1].low",
        "shop.toml, key wiper_dies",
        "shop.toml, key lead_times.stock_working_days",
        "catalogue.csv, row 3, column tube_wall_max",
        "catalogue.csv, row 4, column tube_od",
        "catalogue.csv, row 5, column part",
        "catalogue.csv, row 6, column mandrel_diameter",
        "catalogue.csv, row 6, column surface",
        "catalogue.csv, row 7, column balls",
        "catalogue.csv, row 7, column clr_min",
        "catalogue.csv, row 7, column on_hand",
        "catalogue.csv, row 8",
        "dies.csv, row 2, column clr",
        "dies.csv, row 3, column part",
        "dies.csv, row 3, column clr",
        "dies.csv, row 3, column on_hand",
        "balls.csv, row 4, column wall_factor_over",
        "balls.csv, row 5, column wall_factor_over",
    }
    assert len(told) == len(places) == 20


HEADER_FAULTS = {
    "missing": (HEADER.replace(",balls", ""), "column balls: this column is missing"),
    "extra": (HEADER + ",colour", "column colour: this column is not one we know"),
    "twice": (HEADER + ",part", "column part: this column is there twice"),
    "semicolons": (HEADER.replace(",", ";"), "columns are separated by semicolons"),
    "tabs": (HEADER.replace(",", "\t"), "columns are separated by tabs"),
}


@pytest.mark.parametrize("fault", HEADER_FAULTS)
def test_a_faulty_header_is_named(folder: Path, fault: str) -> None:
    header, told = HEADER_FAULTS[fault]
    write_catalogue(folder, GOOD + "," * (fault in ("extra", "twice")), header=header)
    (sentence,) = faults_of(folder)
    assert sentence.startswith("catalogue.csv, row 1")
    assert told in sentence


def test_what_spreadsheets_add_does_no_harm(folder: Path) -> None:
    # A mark of the encoding in front, DOS line ends, spaces, empty cells and rows behind.
    text = f"\ufeff{HEADER},\r\n {GOOD.replace(',', ' , ')} ,\r\n,,,,\r\n\r\n"
    (folder / "catalogue.csv").write_bytes(text.encode())
    (mandrel,) = load_shop(folder).catalogue
    assert (mandrel.part, mandrel.tube_od_mm) == ("M1", Decimal("38.1"))


def test_text_that_is_not_utf8_is_named_with_its_line(folder: Path) -> None:
    text = f"{HEADER}\n{GOOD}\n{GOOD.replace('M1', 'Größe')}\n"
    (folder / "catalogue.csv").write_bytes(text.encode("latin-1"))
    (sentence,) = faults_of(folder)
    assert sentence.startswith("catalogue.csv, row 3: this is not UTF-8 text")


def test_an_empty_table_lacks_its_columns_but_a_bare_header_is_an_empty_shelf(folder: Path) -> None:
    (folder / "dies.csv").write_text("")
    assert len(faults_of(folder)) == 4
    (folder / "dies.csv").write_text("part,tube_od,clr,on_hand\n")
    assert load_shop(folder).dies == ()
