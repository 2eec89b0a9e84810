"""Lengths told apart from their names: named in an order first, in a remark, changed, or set aside."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from .support import case, inch, mm

_SIZE = inch("1.75", "0.095", "5.25")
_TUBE = mm("38", "2", "76")

NAMED_ORDER = [
    case("order-colon", "OD, wall, CLR: 1.75, .095, 5.25", _SIZE),
    case("order-in-inches", "Here's OD, wall and centerline radius in inches: 1.75, .095, 5.25.", _SIZE),
    case("order-with-units", "Outside diameter, wall thickness, radius: 38 mm, 2 mm, 76 mm", _TUBE),
    case("order-fr", "diamètre, épaisseur, rayon : 38, 2, 76 mm", _TUBE),
    case("order-it", "diametro esterno, spessore e raggio: 38, 2 e 76 mm", _TUBE),
    case("order-de-slashes", "Durchmesser, Wand, Radius: 38 / 2 / 76 mm", _TUBE),
    case("order-another", "Wall, OD and CLR are .095, 1.75 and 5.25", _SIZE),
    case("order-in-words", "You asked for outside diameter, wall, and centerline radius so here goes: two inches, an eighth of an inch, and twelve inches.", inch("2", "0.125", "12")),
    case("order-of-two", "OD and CLR: 1.75 and 5.25. Wall .095.", _SIZE),
    case("order-bore", "ID, wall, radius = 34, 2, 76 mm", _TUBE),
    case("order-lines", "OD, wall, CLR:\n1.75, .095, 5.25\n2, .083, 6", _SIZE, inch("2", "0.083", "6")),
    # Names that have figures of their own.
    case("order-own-names", "OD, wall and CLR: 1.75 OD, .095 wall, 5.25 CLR", _SIZE),
    case("order-none", "Sizes: OD 1.75, wall .095, radius 5.25", _SIZE),
    case("order-behind-figure", "1.75 OD, wall is .095, radius 5.25 inches", _SIZE),
    case("order-see-list", "Diameter and wall: see list\n1.75 x .095, 5.25 clr", _SIZE),
]  # fmt: skip

REMARKS = [
    case("remark-wall", "Line   OD     CLR   Note\nA      1.000  2.0\nB      1.250  3.0   wall .083\nC      1.500  4.5\n\nAll .065 wall unless noted.", inch("1", "0.065", "2"), inch("1.25", "0.083", "3"), inch("1.5", "0.065", "4.5")),
    case("remark-no-head", "All .065 wall.\n\nOD      CLR\n1.000   2.0\n1.250   3.0   wall is .083\n1.500   4.5", inch("1", "0.065", "2"), inch("1.25", "0.083", "3"), inch("1.5", "0.065", "4.5")),
    case("remark-radius", "Rohr   Wand  Bemerkung\n28     1,5   R 56\n35     2     R 70", mm("28", "1.5", "56"), mm("35", "2", "70")),
    case("remark-csv", "OD;Wall;Remarks\n38;1.5;CLR 57\n50;2;CLR 100, two bends", mm("38", "1.5", "57"), mm("50", "2", "100")),
    case("remark-length", "OD    Wall   CLR   Notes\n38    1.5    57    legs 300 long\n50    2      100   needs 2 balls", mm("38", "1.5", "57"), mm("50", "2", "100")),
    case("remark-job", "OD    Wall   CLR\n38    1.5    57    for job 4471\n50    2      100   for job 4472", mm("38", "1.5", "57"), mm("50", "2", "100")),
]  # fmt: skip
