"""What words around a figure say of it: what comes of bending, which of two counts, defaults."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from .support import case, inch, mm

_MM = mm("38", "1.5", "57")
_IN = inch("1.5", "0.065", "3")
_OVAL = mm(None, "2", "120", shape="other")

BENT_OVAL = [  # what becomes of a round tube in bending is no shape of it
    case("oval-becomes", "But now comes 38x1.5 in E355 with R 57 and it becomes oval, 14 %.\n\nPlease offer one mandrel for the 38x1.5.", _MM),
    case("oval-comes-out", "1.5 x .065 on 3 clr comes out oval", _IN),
    case("oval-went", "1.5 x .065 on 3 clr went oval on us", _IN),
    case("oval-turns-a-bit", "1.5 x .065 on 3 clr turns a bit oval", _IN),
    case("oval-de-wird", "38 x 1,5 R 57, wird uns beim Biegen oval, brauche Dorn", _MM),
    case("oval-de-gezogen", "Rohr 38 x 1,5 R 57, ist oval gezogen, brauche Dorn", _MM),
    case("oval-fr", "tube 38 x 1,5 R 57 devient ovale, mandrin svp", _MM),
    case("oval-es", "tubo 38 x 1,5 R 57 queda ovalado", _MM),
    case("oval-it", "tubo 38 x 1,5 R 57 diventa un po' ovale", _MM),
    case("oval-nl", "buis 38 x 1,5 R 57 wordt ovaal", _MM),
    case("oval-tube", "oval tube 60 x 30 x 2, R 120", _OVAL),
    case("oval-tube-bent", "We bend oval tube 60 x 30 x 2, R 120", _OVAL),
    case("oval-tube-gets", "The frame gets an oval tube 60 x 30 x 2, R 120", _OVAL),
    case("oval-tube-es", "tubo ovalado 60 x 30 x 2, R 120", _OVAL),
]  # fmt: skip

ANGLE_BEHIND = [  # the radius stands before its word, the angle of the bend behind it
    case("angle-centerline-90", "tube measures 1.370 inside and the wall is .065 (so one and a half outside). The bend is a 3\" centerline 90.", _IN),
    case("angle-clr-180", '1.5 x .065, 3" CLR 180', _IN),
    case("angle-no-unit", "1.5 x .065 304, 3 CLR 90", _IN),
    case("angle-radius-90", '1.5 x .065 304, a 3" radius 90', _IN),
    case("angle-radius-bend", "1.5 x .065, 3 radius 180 bend", _IN),
    case("angle-mm", "38 x 1.5, bend is 57 mm CLR 180", _MM),
    case("angle-de", "Rohr 38 x 1,5, Bogen mit 57 mm Mittenradius 90", _MM),
    case("angle-could-be-either", "38 x 1.5 mm, 57 CLR 90", mm("38", "1.5", "57", "clr")),
    case("angle-word-first", "1.5 x .065, CLR 3, 90", _IN),
    case("angle-none-clr-behind", "38 x 1.5 CLR 90", mm("38", "1.5", "90")),
    case("angle-none-od-named", "OD 38 wall 1.5, CLR 90", mm("38", "1.5", "90")),
    case("angle-none-wall-before", "38 x 1.5 wall 304 CLR 90", mm("38", "1.5", "90")),
]  # fmt: skip

_NO_CLR = inch("2.25", "0.065")

DIE_MARKS = [  # what is stamped on a die is the tube's OD, unless a word says radius
    case("die-just-says", "hi have you got a mandrel for 2 1/4 exhaust tube 16 gauge aluminised steel. not sure of the radius the die just says 2 1/4. cheers", _NO_CLR),
    case("die-marked", "2.25 x .065 tube. The die is marked 2 1/4.", _NO_CLR),
    case("die-on-our", "2.25 x .065 tube on our 2.25 die", _NO_CLR),
    case("die-other-unit", "2.25 x .065 tube. Die has 57 mm on it.", _NO_CLR),
    case("die-de", "Rohr 57 x 1,5, auf der Biegeform steht 57, Radius weiß ich nicht", mm("57", "1.5")),
    case("die-marked-clr-too", "2.25 x .065 tube. The die is marked 2 1/4 CLR 4.5.", inch("2.25", "0.065", "4.5")),
    case("die-marked-other", "2.25 x .065 tube. The die is marked 3 3/8.", inch("2.25", "0.065", "3.375", "clr")),
    case("die-radius-said", "2.25 x .065 tube, the die is 2 1/4 radius", inch("2.25", "0.065", "2.25", "clr")),
    case("die-of-clr", "57.15 x 1.65 tube on a 57.15 CLR die", mm("57.15", "1.65", "57.15", "clr")),
]  # fmt: skip
