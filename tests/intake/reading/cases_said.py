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
