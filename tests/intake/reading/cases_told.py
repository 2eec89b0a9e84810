"""Several sizes in prose, of which some are told of and not asked for: doubted as a whole."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from .support import case, inch, mm

_ALL = "od wall clr"
_SIZE = inch("1.75", "0.095", "5.25")
_TOLD = inch("2", "0.120", "6", _ALL)
_MM, _MM_TOLD = mm("35", "1.5", "70"), mm("30", "3", "90", _ALL)

ONLY_TOLD = [  # 35 x 1.5 or 1.75 x .095 is asked for, the other one is not
    case("bent-without-trouble", "Please quote 1.75 x .095 on 5.25 CLR. The 2 x .120 on 6 CLR goes round fine as it is.", _SIZE, _TOLD),
    case("for-reference", "Looking for a quote on 1.75 x .095, 5.25 CLR. For reference, our 2 x .120 is bent at 6 CLR.", _SIZE, _TOLD),
    case("never-needed-one", "1.75 x .095 on 5.25 CLR. We had no wrinkles with 2 x .120 on 6 CLR.", _SIZE, _TOLD),
    case("what-a-friend-has", "Quote me 1.75 x .095, 5.25 CLR please. My neighbour has 2 x .120 on 6 CLR and loves it.", _SIZE, _TOLD),
    case("arrived-already", "The 2 x .120 on 6 CLR arrived and works great. We now need 1.75 x .095 on 5.25 CLR.", _TOLD, _SIZE),
    case("gebogen-ohne-dorn", "Bitte bieten Sie 35 x 1,5 mm, R 70 an. 30 x 3 mm mit R 90 geht ohne Dorn.", _MM, _MM_TOLD),
    case("deja-cintre", "Il nous faut 35 x 1,5 mm, rayon 70 à l'axe. Le 30 x 3 mm, rayon 90, nous le cintrons bien.", _MM, _MM_TOLD),
    case("arrivato-ieri", "Ci serve 35 x 1,5 mm, raggio medio 70. Il 30 x 3 mm raggio medio 90 è arrivato ieri.", _MM, _MM_TOLD),
    case("ya-lo-hacemos", "Necesitamos 35 x 1,5 mm, radio 70 al eje. El 30 x 3 mm, radio 90 al eje, lo tenemos funcionando.", _MM, _MM_TOLD),
    case("gaat-goed", "Wij zoeken 35 x 1,5 mm, straal 70 mm hart. De 30 x 3 mm met straal 90 mm hart gaat goed.", _MM, _MM_TOLD),
]  # fmt: skip

ONE_OF_SEVERAL = [  # one mandrel for more than one size: which?
    case("two-tubes-one-mandrel", "My tubes are 1.75 x .095 on 5.25 CLR and 2 x .120 on 6 CLR. I'll take one mandrel.", inch("1.75", "0.095", "5.25", _ALL), _TOLD),
    case("ein-dorn", "Rohre 35 x 1,5 mm R 70 und 30 x 3 mm R 90. Was kostet ein Dorn?", mm("35", "1.5", "70", _ALL), _MM_TOLD),
    case("un-mandrin", "Tubes 35 x 1,5 mm rayon 70 et 30 x 3 mm rayon 90. Prix pour un mandrin ?", mm("35", "1.5", "70", _ALL), _MM_TOLD),
]  # fmt: skip

PICKED_OUT = [  # lines of a list, one of them meant, and which is not heard
    case("rows-marked", "1.75 x .095 x 5.25 CLR  N\n2 x .120 x 6 CLR  Y\n\nWe only want the rows marked Y.", inch("1.75", "0.095", "5.25", _ALL), _TOLD),
    case("was-and-is", "WAS: 1.75 x .095 x 5.25 CLR\nIS: 2 x .120 x 6 CLR", inch("1.75", "0.095", "5.25", _ALL), _TOLD),
    case("elsewhere", "1.75 x .095 x 5.25 CLR\n2 x .120 x 6 CLR - another supplier", _SIZE, _TOLD),
]  # fmt: skip

ALL_ASKED_FOR = [  # words like those above, and yet no doubt
    case("one-of-each", "Our tubes are 1.75 x .095 on 5.25 CLR and 2 x .120 on 6 CLR. One mandrel of each, please.", _SIZE, inch("2", "0.120", "6")),
    case("one-in-each-line", "1) 1.75 x .095, 5.25 CLR, 1 pc\n2) 2 x .120, 6 CLR, 1 pc", _SIZE, inch("2", "0.120", "6")),
    case("both-told", "We bend 1.75 x .095 on 5.25 CLR. We bend 2 x .120 on 6 CLR. Need mandrels.", _SIZE, inch("2", "0.120", "6")),
    case("also", "Quote 1.75 x .095 on 5.25 CLR. We also have 2 x .120 on 6 CLR to do.", _SIZE, inch("2", "0.120", "6")),
    case("two-lines-one-told", "Item 1: 1.75 x .095, 5.25 CLR, it is DOM\nItem 2: 2 x .120, 6 CLR", _SIZE, inch("2", "0.120", "6")),
    case("jeweils", "Wir biegen 35 x 1,5 mm R 70. Wir biegen 30 x 3 mm R 90. Bitte jeweils einen Dorn anbieten.", _MM, mm("30", "3", "90")),
]  # fmt: skip
