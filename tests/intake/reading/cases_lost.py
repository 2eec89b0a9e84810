"""Whole sizes that used to be lost in silence, and radii said of an OD that is named again."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from .support import case, inch, mm

_ALL = "od wall clr"

OWNED_BESIDE = [  # what 'we have' speaks of gives way to nothing, and takes no other's place
    case("have-a-version", '    Ø5/8" x .035 W 304L (SMLS)\n    bend R 1 1/4" C.L.\n\nWe also have a 3/4" version, Ø3/4" x .035, R 1 1/2" C.L. Quote a mandrel for each.', inch("0.625", "0.035", "1.25"), inch("0.75", "0.035", "1.5")),
    case("have-a-version-plain", '5/8 x .035, 1.25 CLR. We also have a 3/4" version, 3/4" x .035, 1.5 CLR. A mandrel for each please.', inch("0.625", "0.035", "1.25"), inch("0.75", "0.035", "1.5")),
    case("not-that", "The tube is 1.75, not 1.5, x .065 wall, 4.5 CLR.", inch("1.75", "0.065", "4.5")),
    case("no-wait", "1.5 x .065, 4.5 CLR. No wait, 2 x .065, 6 CLR.", inch("2", "0.065", "6")),
]  # fmt: skip

NAMED_AGAIN = [  # one sentence gives both radii, each behind its OD
    case("is-and-is", "Front is 1.75 x .120, rear is 1.5 x .120, both dom on the same style die, 1.75 is 5.5 clr and the 1.5 is 4.5 clr. A mandrel for each.", inch("1.75", "0.120", "5.5"), inch("1.5", "0.120", "4.5")),
    case("is-is-bare", "Tubes 1.5 x .065 and 1.75 x .065. 1.5 is 4.5 clr, 1.75 is 6 clr. A mandrel for each.", inch("1.5", "0.065", "4.5"), inch("1.75", "0.065", "6")),
    case("has-has", "Tubes 1.5 x .065 and 1.75 x .065, 1.5 has a 4.5 clr, 1.75 has a 6 clr. A mandrel for each.", inch("1.5", "0.065", "4.5"), inch("1.75", "0.065", "6")),
    case("das-38er-hat", "Zwei Rohre, 38 x 2 und 42 x 2. Das 38er hat Radius 76 und das 42er Radius 84. Je ein Dorn.", mm("38", "2", "76"), mm("42", "2", "84")),
    case("le-38-a-un", "Deux tubes, 38 x 2 et 42 x 2. Le 38 a un rayon de 76 et le 42 un rayon de 84. Un mandrin pour chaque.", mm("38", "2", "76"), mm("42", "2", "84")),
    case("el-de-38", "Dos tubos: 38 x 2 y 42 x 2. El de 38 tiene radio 76 y el de 42 radio 84. Un mandril de cada.", mm("38", "2", "76"), mm("42", "2", "84")),
    case("two-radii-two-tubes", "Tube 2 x .065 on 3 and 4 CLR, tube 3 x .065 on 6 clr. One each.", inch("2", "0.065", "3"), inch("2", "0.065", "4"), inch("3", "0.065", "6")),
]  # fmt: skip

OTHER_LATER = [  # one to start with, the other another time: both are asked back
    case("start-with-front", "Front 1.75 x .120, 5.5 clr, rear 1.5 x .120, 4.5 clr. Lets start with a mandrel for the front. I will be back for the other in the spring.", inch("1.75", "0.120", "5.5"), inch("1.5", "0.120", "4.5", _ALL)),
    case("other-can-wait", "1.75 x .120, 5.5 clr and 1.5 x .120, 4.5 clr. Need a mandrel, the other can wait.", inch("1.75", "0.120", "5.5", _ALL), inch("1.5", "0.120", "4.5", _ALL)),
    case("get-the-other-later", "1.75 x .120, 5.5 clr and 1.5 x .120, 4.5 clr. Price both, we might order the other later.", inch("1.75", "0.120", "5.5", _ALL), inch("1.5", "0.120", "4.5", _ALL)),
    case("back-next-week", "1.75 x .120, 5.5 clr and 1.5 x .120, 4.5 clr. A mandrel for each. I am back next week.", inch("1.75", "0.120", "5.5"), inch("1.5", "0.120", "4.5")),
]  # fmt: skip

INCH_BY_MM = [  # an inch tube whose wall is told in mm: asked back, and no bore of 1 in in 1.6 in
    case("1-in-by-1.6", '1" x 1.6, CLR 1.5". One mandrel.', mm("25.4", "1.6", "38.1", "wall shape")),
    case("three-lines", '1" x 1.6\n1.5" x 1.6\n2" x 1.6\nEvery bend is 1.5D. One mandrel per size.', mm("25.4", "1.6", "38.1", "wall shape"), mm("38.1", "1.6", "57.15", "wall shape"), mm("50.8", "1.6", "76.2", "wall shape")),
    case("both-marked", '1" x 1.25", 4 CLR. One mandrel.', inch("1.25", "0.125", "4", "od wall")),
]  # fmt: skip

NONE_WANTED = [  # a row with a count of 0 is not asked for
    case("qty-0", "Please quote:\n\nTube OD   Wall   CLR   Qty\n38.1   1.65   57.15   1\n50.8   1.65   76.2   0\n76.2   2.1   152.4   2", mm("38.1", "1.65", "57.15"), mm("76.2", "2.1", "152.4")),
    case("anzahl-0", "| OD | Wand | Radius | Anzahl |\n| 38 | 2 | 76 | 2 |\n| 42 | 2 | 84 | 0 |\n\nBitte Angebot für Dorne.", mm("38", "2", "76")),
    case("csv-0", "Mandrels please\nOD,wall,CLR,qty\n1.5,.065,4.5,10\n2,.065,6,0", inch("1.5", "0.065", "4.5")),
    case("all-0", "Please quote:\n\nTube OD   Wall   CLR   Qty\n38.1   1.65   57.15   0\n50.8   1.65   76.2   0", mm("38.1", "1.65", "57.15", _ALL), mm("50.8", "1.65", "76.2", _ALL)),
    case("on-hand-0", "Mandrels please\nOD,wall,CLR,qty on hand\n1.5,.065,4.5,10\n2,.065,6,0", inch("1.5", "0.065", "4.5"), inch("2", "0.065", "6")),
]  # fmt: skip

BY_ITEM = [  # a figure behind the numbers of items is none of them
    case("wall-of-item-3", "Please quote three mandrels:\n1) 38 mm OD, R 76\n2) 42 mm OD, R 84\n3) 60 mm OD, R 120\nWall 1.5 for items 1 and 2, 2.6 for item 3.", mm("38", "1.5", "76"), mm("42", "1.5", "84"), mm("60", "2.6", "120")),
    case("wand-pos-3", "1) 38 mm, R 76\n2) 42 mm, R 84\n3) 60 mm, R 120\nWand 1,5 für Pos. 1 und 2, 2,6 für Pos. 3. Je ein Dorn.", mm("38", "1.5", "76"), mm("42", "1.5", "84"), mm("60", "2.6", "120")),
]  # fmt: skip

TOLD_TWICE = [  # two sources that do not agree: both are asked about
    case("zeichnung-stueckliste", "Ein Dorn bitte: laut Zeichnung 35 x 2, laut Stückliste 35 x 1,5, R 70.", mm("35", "1.5", "70", _ALL)),
    case("drawing-bom", "One mandrel: drawing 38 x 2, parts list 38 x 1.5, R 76.", mm("38", "1.5", "76", _ALL)),
    case("drawing-number", "One mandrel: drawing 35, 38 x 1.5, R 76.", mm("38", "1.5", "76")),
]  # fmt: skip

FAMILIES = (BY_ITEM, TOLD_TWICE, OWNED_BESIDE, NAMED_AGAIN, OTHER_LATER, INCH_BY_MM, NONE_WANTED)
