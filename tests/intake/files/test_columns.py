"""Tables laid out with blanks: an empty cell must not shift a figure under another head."""

from __future__ import annotations

import pytest

from bendreply.intake.files.columns import tables_apart

RIGHT = """
  Pos   Description        OD (mm)     Wall (mm)    CLR (mm)     Qty
  1     Handrail                 38           1.5           57     2
  3                             60.3          2.6         180      4
"""
CENTRED = """
  Pos    Description      OD (mm)     Wall (mm)    CLR (mm)     Qty
   1      Handrail           38          1.5           57         2
   3                        60.3                      180         4
"""
OPEN = """
  OD        Wall      CLR
  38        1.5       57
  40    2,0 or 2,5    60
  42           63
       44   2
"""
PAGES = """
  OD        Wall      CLR
  38        1.5       57

  Page 1 of 2
  Workshop list
  40                  60
"""


@pytest.mark.parametrize(
    ("text", "rows", "unplaced"),
    [
        (RIGHT, ["Pos\tDescription\tOD (mm)\tWall (mm)\tCLR (mm)\tQty",
                 "1\tHandrail\t38\t1.5\t57\t2", "3\t-\t60.3\t2.6\t180\t4"], []),
        (CENTRED, ["1\tHandrail\t38\t1.5\t57\t2", "3\t-\t60.3\t-\t180\t4"], []),
        (OPEN, ["OD\tWall\tCLR", "38\t1.5\t57", "40\t2,0 or 2,5\t60", "42\t63\t-"], ["44  2"]),
        (PAGES, ["OD\tWall\tCLR", "38\t1.5\t57", "Workshop list", "OD\tWall\tCLR",
                 "40\t-\t60"], []),
    ],
    ids=["right", "centred", "open", "two pages"],
)  # fmt: skip
def test_each_figure_stands_under_its_head_or_is_named(
    text: str, rows: list[str], unplaced: list[str]
) -> None:
    found, lost = tables_apart(text)
    lines = found.split("\n")
    assert [line for line in lines if line in rows] == rows, found
    assert lost == unplaced


@pytest.mark.parametrize(
    "text",
    [
        "Please quote 38 x 1.5 mm, CLR 57.\nThanks, Lou",
        "Tel   Fax\n+49 30 1   +49 30 2   +49 30 3\n",  # more figures than heads
        "1.5   57\n38   2",
    ],
)
def test_what_is_no_table_stays_as_it_is(text: str) -> None:
    assert tables_apart(text) == (text, [])
