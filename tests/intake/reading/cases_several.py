"""Corrections, things not wanted, several sizes with shared parts, and tables."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from .support import case, inch, mm

_SIZE = inch("1.75", "0.095", "5.25")

CORRECTIONS = [
    case("no-wait", "1.75 x .120, no wait, .095 wall, 5.25 clr", _SIZE),
    case("sorry", "OD 1.5, sorry, 1.75 x .095 wall, 5.25 CLR", _SIZE),
    case("not-but", "1.75 OD, not .120 but .095 wall, 5.25 clr", _SIZE),
    case("its-not", "1.75 x .095. The radius isn't 4, it's 5.25 inches CLR.", _SIZE),
    case("scratch-that", "1.75 x .095 wall on a 6 inch CLR.\n\nScratch that, make it 5.25 CLR.", _SIZE),
    case("ps", "1.75 x .120 wall, 5.25 clr.\n\nThanks\nPat\n\nP.S. The wall is .095, not .120.", _SIZE),
    case("correction-label", "1.75 x .095, CLR 6.\nCorrection: CLR is 5.25.", _SIZE),
    case("i-meant", "1.5 x .095, 5.25 clr. I meant 1.75 OD.", _SIZE),
    case("instead-of", "1.75 x .095 tube, 5.25 CLR instead of 7.", _SIZE),
    case("owned-other", "We already have the 1.5 x .095 mandrel. Need one for 1.75 x .095, 5.25 clr.", _SIZE),
    case("owned-other-wall", "We have the .120 one for our 1-3/4 die. Need the .095 one, 5.25 CLR.", _SIZE),
    case("last-time", "Last year you made us one for 2 x .065 on 4. This time it's 1.75 x .095 on a 5.25 CLR.", _SIZE),
    case("no-longer", "We no longer run 2 x .065. Please quote a mandrel for 1.75 x .095, 5.25 clr.", _SIZE),
    case("de-sondern", "Rohr 38 mm, Wand nicht 2 mm sondern 1,5 mm, Radius 57 mm", mm("38", "1.5", "57")),
    case("de-korrektur", "Rohr 38 x 2,0 mm, R 57 mm.\nKorrektur: Wandstärke 1,5 mm.", mm("38", "1.5", "57")),
    case("fr-pardon", "tube 38 x 2 mm, pardon, 38 x 1,5 mm, rayon 57 mm", mm("38", "1.5", "57")),
    case("not-the-material", "1.75 x .095 DOM, not 4130, 5.25 CLR", _SIZE),
]  # fmt: skip

SEVERAL = [
    case("two-od-one-radius", "1.5 x .095 and 1.75 x .095, both on 6 inch CLR", inch("1.5", "0.095", "6"), inch("1.75", "0.095", "6")),
    case("two-radii", "1.75 x .095 on 5.25 and 7 inch CLR", inch("1.75", "0.095", "5.25"), inch("1.75", "0.095", "7")),
    case("three-radii", "2 x .065 at 4, 6 and 8 inch CLR", inch("2", "0.065", "4"), inch("2", "0.065", "6"), inch("2", "0.065", "8")),
    case("radii-slash", "50,8 x 1,6 mm, R 76,2 / R 101,6", mm("50.8", "1.6", "76.2"), mm("50.8", "1.6", "101.6")),
    case("one-line-mm", "38x1.5 R57, 42.4x2 R85, 48.3x2 R100", mm("38", "1.5", "57"), mm("42.4", "2", "85"), mm("48.3", "2", "100")),
    case("items-same-tube", "a) 57 x 2.6 mm, R 142\nb) 57 x 2.6 mm, R 257", mm("57", "2.6", "142"), mm("57", "2.6", "257")),
    case("items-radius-first", "- R 105, tube 35 x 1.5 mm, E235\n- R 91, tube 45 x 3 mm", mm("35", "1.5", "105"), mm("45", "3", "91")),
    case("items-no-range", "- 1-5/8 x .134, bend radius 3-7/8, DOM\n- 1 inch radius, 1/4 x .049", inch("1.625", "0.134", "3.875"), inch("0.25", "0.049", "1")),
    case("lines-same-tube", "1.25 x .083, 2D bend\n1.25 x .083, bend radius 7.5 inches", inch("1.25", "0.083", "2.5"), inch("1.25", "0.083", "7.5")),
    case("lines-radius-of", "1.5 x .095 at 4.5 CLR 304\ncenterline radius of 6, 1.75 OD x .095", inch("1.5", "0.095", "4.5"), inch("1.75", "0.095", "6")),
    case("diameter-sign-next-line", "Ø45 x 1.5, 112 mm CLR\nØ50 x 1.5, 165 mm CLR", mm("45", "1.5", "112"), mm("50", "1.5", "165")),
    case("same-size-retold", "1.5 x .065 on a 4.5 CLR\nin metric: 38.1 x 1.651 on 114.3 mm CLR", inch("1.5", "0.065", "4.5")),
    case("numbered", "1) 1.5 x .065, 4.5 clr\n2) 2 x .083, 6 clr", inch("1.5", "0.065", "4.5"), inch("2", "0.083", "6")),
    case("bullets", "- 1.5 x .065 x 4.5 clr\n- 2 x .083 x 6 clr\n- 2.5 x .065 x 3.75 clr", inch("1.5", "0.065", "4.5"), inch("2", "0.083", "6"), inch("2.5", "0.065", "3.75")),
    case("all-dom", "all DOM: 1.5x.120 R6, 1.75x.120 R7, 2x.120 R8", inch("1.5", "0.12", "6"), inch("1.75", "0.12", "7"), inch("2", "0.12", "8")),
    case("d-for-all", "1-1/2, 1-5/8 and 1-3/4, all 18 ga 304, all 3D", inch("1.5", "0.049", "4.5"), inch("1.625", "0.049", "4.875"), inch("1.75", "0.049", "5.25")),
    case("same-wall-and-radius", "1.5 x .083 on 6 clr. Same wall and radius for 1-5/8 OD.", inch("1.5", "0.083", "6"), inch("1.625", "0.083", "6")),
    case("two-walls", "2 inch OD, walls .065 and .083, 4 inch clr", inch("2", "0.065", "4"), inch("2", "0.083", "4")),
    case("counted-each", "2 each: 1.0 x .065 x 3 clr and 1.25 x .065 x 3.75 clr", inch("1", "0.065", "3"), inch("1.25", "0.065", "3.75")),
    case("counted-apart", "One mandrel for 1.5 x .065, 4.5 clr and two for 2 x .065, 6 clr.", inch("1.5", "0.065", "4.5"), inch("2", "0.065", "6")),
    case("paragraphs", "First is 1.5 OD, .065 wall, 4.5 CLR.\n\nSecond is 2 OD, .083 wall, 6 CLR.", inch("1.5", "0.065", "4.5"), inch("2", "0.083", "6")),
    case("one-without-radius", "1.5 x .065 on 4.5 clr, and also 2 x .083 (radius to follow)", inch("1.5", "0.065", "4.5"), inch("2", "0.083")),
    case("labelled-blocks", "OD: 38 mm\nWall: 1.5 mm\nCLR: 57 mm\n\nOD: 50 mm\nWall: 2 mm\nCLR: 100 mm", mm("38", "1.5", "57"), mm("50", "2", "100")),
    case("mixed-units", "38 x 1.5 mm R57, and 1.75 x .095 on 5.25 inch clr", mm("38", "1.5", "57"), inch("1.75", "0.095", "5.25")),
    case("tube-a-b", "Tube A 1.5 x .065, tube B 2 x .065, 6 inch clr for both", inch("1.5", "0.065", "6"), inch("2", "0.065", "6")),
    case("respectively", "1.5 and 2 OD, .065 wall, 4.5 and 6 clr respectively", inch("1.5", "0.065", "4.5"), inch("2", "0.065", "6")),
    case("said-twice", "1.75 x .095, 5.25 clr. To repeat: 1-3/4 OD, .095 wall, 5-1/4 CLR.", _SIZE),
    case("pipe-and-tube", "1-1/2 sch 40 on 6 clr and 1.5 x .065 tube on 4.5 clr", inch("1.9", "0.145", "6"), inch("1.5", "0.065", "4.5")),
    case("de-zwei", "1. Rohr 38 x 1,5 mm, R 57 mm\n2. Rohr 42,4 x 2,0 mm, R 85 mm", mm("38", "1.5", "57"), mm("42.4", "2", "85")),
]  # fmt: skip

_TWO = (inch("1.5", "0.065", "4.5"), inch("2", "0.083", "6"))
_TWO_MM = (mm("38", "1.5", "57"), mm("42.4", "2", "85"))

TABLES = [
    case("spaces", "OD      WALL    CLR     QTY\n1.500   .065    4.500   1\n2.000   .083    6.000   2", *_TWO),
    case("tabs", "OD\tWall\tCLR\tQty\n1.5\t.065\t4.5\t1\n2\t.083\t6\t2", *_TWO),
    case("pipes", "| OD | Wall | CLR |\n|----|------|-----|\n| 1.5 | .065 | 4.5 |\n| 2 | .083 | 6 |", *_TWO),
    case("semicolons", "OD;Wall;CLR;Qty\n1.5;0.065;4.5;1\n2;0.083;6;2", *_TWO),
    case("comma-separated", "OD,Wall,CLR,Qty\n1.5,.065,4.5,1\n2,.083,6,2", *_TWO),
    case("unit-in-header", "OD (in)\tWall (in)\tCLR (in)\n1.5\t0.065\t4.5\n2\t0.083\t6", *_TWO),
    case("mm-in-header", "OD (mm)  Wall (mm)  CLR (mm)\n38       1.5        57\n42.4     2.0        85", *_TWO_MM),
    case("de-header", "Pos.\tØ außen\tWand\tRadius\tMenge\n1\t38\t1,5\t57\t2\n2\t42,4\t2,0\t85\t1", *_TWO_MM),
    case("item-numbers", "Item  OD    Wall  CLR\n10    1.5   .065  4.5\n20    2.0   .083  6.0", *_TWO),
    case("other-order", "Qty\tCLR\tOD\tWall\n1\t4.5\t1.5\t.065\n2\t6\t2\t.083", *_TWO),
    case("material-column", "Material\tOD\tWall\tCLR\n304\t1.5\t.065\t4.5\n4130\t2\t.083\t6", *_TWO),
    case("gauge-column", "OD\tGauge\tCLR\n1.5\t16\t4.5\n2\t14\t6", *_TWO),
    case("empty-cell", "OD\tWall\tCLR\n1.5\t.065\t4.5\n2\t\t6", inch("1.5", "0.065", "4.5"), inch("2", None, "6")),
    case("angle-column", "OD\tWall\tCLR\tAngle\n1.5\t.065\t4.5\t90\n2\t.083\t6\t45", *_TWO),
    case("length-column", "OD\tWall\tLength\tCLR\n1.5\t.065\t36\t4.5\n2\t.083\t48\t6", *_TWO),
    case("fractions", "OD      Wall    CLR\n1-1/2   .065    4-1/2\n2       .083    6", *_TWO),
    case("id-column", "OD\tID\tCLR\n1.5\t1.37\t4.5\n2\t1.834\t6", *_TWO),
    case("sideways", "Tube\tA\tB\nOD\t1.5\t2\nWall\t.065\t.083\nCLR\t4.5\t6", *_TWO),
    case("labels-in-lines", "Tube OD ........ 1.5\nWall ........... .065\nCLR ............ 4.5", inch("1.5", "0.065", "4.5")),
    case("size-cell", "Size\tCLR\tQty\n1.5 x .065\t4.5\t1\n2 x .083\t6\t2", *_TWO),
]  # fmt: skip
