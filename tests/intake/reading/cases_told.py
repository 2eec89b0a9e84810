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
    case("one-for-the-frame", "My tubes are 1.75 x .095 on 5.25 CLR and 2 x .120 on 6 CLR. One mandrel for the frame please.", inch("1.75", "0.095", "5.25", _ALL), _TOLD),
    case("radius-of-the-frame", "Please quote one mandrel for 42.4 x 2.6 mm, radius 130 mm. The corner of the frame is at 200 mm radius.", mm("42.4", "2.6", "130")),
    case("un-mandrin", "Tubes 35 x 1,5 mm rayon 70 et 30 x 3 mm rayon 90. Prix pour un mandrin ?", mm("35", "1.5", "70", _ALL), _MM_TOLD),
]  # fmt: skip

PICKED_OUT = [  # lines of a list, one of them meant, and which is not heard
    case("rows-marked", "1.75 x .095 x 5.25 CLR  N\n2 x .120 x 6 CLR  Y\n\nWe only want the highlighted rows, the ones marked.", inch("1.75", "0.095", "5.25", _ALL), _TOLD),
    case("was-and-is", "WAS: 1.75 x .095 x 5.25 CLR\nIS: 2 x .120 x 6 CLR", inch("1.75", "0.095", "5.25", _ALL), _TOLD),
    case("elsewhere", "1.75 x .095 x 5.25 CLR\n2 x .120 x 6 CLR - another supplier", _SIZE, _TOLD),
]  # fmt: skip

ALL_ASKED_FOR = [  # words like those above, and yet no doubt
    case("one-of-each", "Our tubes are 1.75 x .095 on 5.25 CLR and 2 x .120 on 6 CLR. One mandrel of each, please.", _SIZE, inch("2", "0.120", "6")),
    case("one-in-each-line", "1) 1.75 x .095, 5.25 CLR, 1 pc\n2) 2 x .120, 6 CLR, 1 pc", _SIZE, inch("2", "0.120", "6")),
    case("both-told", "We bend 1.75 x .095 on 5.25 CLR. We bend 2 x .120 on 6 CLR. Need mandrels.", _SIZE, inch("2", "0.120", "6")),
    case("one-for-the-and-one-for-the", "Backbone is 1.75 x .095, 5.25 CLR, it's thick I know. Downtubes 2 x .120, 6 CLR. One mandrel for the downtubes and one for the backbone.", _SIZE, inch("2", "0.120", "6")),
    case("einen-fuer-und-einen-fuer", "Der Holm ist 35 x 1,5 mm, R 70. Die Strebe hat 30 x 3 mm, R 90. Einen Dorn für den Holm und einen für die Strebe bitte.", _MM, mm("30", "3", "90")),
    case("each-radius", "We build frames from 42.4 x 2.6 mm tube. Some bends are made at radius 130 mm, others at 200 mm. One mandrel for each radius please.", mm("42.4", "2.6", "130"), mm("42.4", "2.6", "200")),
    case("zwei-radien", "Gleiches Rohr, zwei Radien: 42,4 x 2,0 mm, einmal R 64 und einmal R 106. Geht das mit einem Dorn?", mm("42.4", "2", "64"), mm("42.4", "2", "106")),
    case("les-deux-rayons", "Tube 42,4 x 2 mm. Certains coudes sont au rayon 64 mm, d'autres au rayon 106 mm. Un mandrin pour chaque rayon.", mm("42.4", "2", "64"), mm("42.4", "2", "106")),
    case("meme-rayon-que", "- Ø 33,7, rayon 50\n- Ø 42,4, rayon 65\n- Ø 48,3, même rayon que le 42,4\n\nÉpaisseur 1,5 mm, rayons à l'axe.", mm("33.7", "1.5", "50"), mm("42.4", "1.5", "65"), mm("48.3", "1.5", "65")),
    case("same-radius-as-the-first", "- 2 mandrels for 26.9 x 2.3 mm, R 60\n- 1 mandrel for 33.7 x 2.6 mm, R 70\n\nOh and also 1 for 21.3 x 2.0 mm, same radius as the 26.9.", mm("26.9", "2.3", "60"), mm("33.7", "2.6", "70"), mm("21.3", "2", "60")),
    case("also", "Quote 1.75 x .095 on 5.25 CLR. We also have 2 x .120 on 6 CLR to do.", _SIZE, inch("2", "0.120", "6")),
    case("two-lines-one-told", "Item 1: 1.75 x .095, 5.25 CLR, it is DOM\nItem 2: 2 x .120, 6 CLR", _SIZE, inch("2", "0.120", "6")),
    case("jeweils", "Wir biegen 35 x 1,5 mm R 70. Wir biegen 30 x 3 mm R 90. Bitte jeweils einen Dorn anbieten.", _MM, mm("30", "3", "90")),
]  # fmt: skip

BESIDE_A_BOX = [  # a round tube beside one that is not: each keeps its own cross-section
    case("square-first", "Square tube 2 x 2 x .120 on 8 CLR. Round tube 1.5 OD x .083 on 6 CLR.", inch(None, "0.120", "8", shape="square"), inch("1.5", "0.083", "6")),
    case("round-first", "1. round, 22 x 1.5 mm, R 60\n2. rectangular, 40 x 20 x 1.5 mm, R 80", mm("22", "1.5", "60"), mm(None, "1.5", "80", shape="rectangular")),
    case("rectangular-first", "1. rectangular, 40 x 20 x 1.5 mm, R 80\n2. round, 22 x 1.5 mm, R 60", mm(None, "1.5", "80", shape="rectangular"), mm("22", "1.5", "60")),
    case("rund-und-vierkant", "Rohr 30 x 2 mm, R 60\nVierkantrohr 30 x 30 x 2 mm, R 90", mm("30", "2", "60"), mm(None, "2", "90", shape="square")),
    case("round-a-box-b", "a) round 32 x 1.5, radius 80 to the centre line\nb) square 30 x 30 x 2, radius 120 to the centre line", mm("32", "1.5", "80"), mm(None, "2", "120", shape="square")),
    case("tubo-quadro-sotto", "- tondo 30 x 2, raggio asse 60\n- quadro 40 x 40 x 2, raggio asse 120", mm("30", "2", "60"), mm(None, "2", "120", shape="square")),
    case("box-in-passing", "Please quote 30 x 2 mm, R 60.\nOur customer's frame is a square tube 40 x 40 x 2 on R 120.", mm("30", "2", "60"), mm(None, "2", "120", "shape wall clr", shape="square")),
    case("box-of-the-machine", "Please quote 30 x 2 mm tube, R 60.\nThe tank is 600 x 300 x 2 mm.", mm("30", "2", "60"), mm(None, "2", None, "shape wall", shape="rectangular")),
]  # fmt: skip

OWNED_LISTS = [  # a heading says that what stands below it is there already
    case("in-our-drawer", "Here's what's in our drawer:\n1 x .065   3 CLR\n2 x .065   6 CLR\n\nMissing: 1.75 x .095 on a 5.25 CLR.", _SIZE),
    case("what-we-have", "What we have:\n1 x .065, 3 CLR\n2 x .065, 6 CLR\n\nWanted: 1.75 x .095, 5.25 CLR", _SIZE),
    case("onze-doornen", "Onze doornen:\n25 x 1,5 mm R 50\n30 x 2 mm R 60\n\nNu nodig: 35 x 1,5 mm, R 70", _MM),
    case("heading-of-wants", "What we need:\n1.75 x .095, 5.25 CLR\n2 x .120, 6 CLR", _SIZE, inch("2", "0.120", "6")),
]  # fmt: skip

DASHES = [  # an article behind a dash makes no count of the radius before it
    case("un-mandrino", "tondo 42,4 x 2 mm, raggio medio 85 - un mandrino", mm("42.4", "2", "85")),
    case("un-mandrin", "tube 42,4 x 2 mm, rayon 85 à l'axe - un mandrin", mm("42.4", "2", "85")),
    case("un-mandril", "tubo 42,4 x 2 mm, radio 85 al eje - un mandril", mm("42.4", "2", "85")),
]  # fmt: skip

HEADS = [  # heads of columns, shortened
    case("diam-ext", "Pos.  Diám. ext.  Espesor  Radio al eje\n1     25          1,5      50\n2     40          2        80", mm("25", "1.5", "50"), mm("40", "2", "80")),
    case("durchm-aussen", "Durchm. außen | Wand | Radius\n30 | 2 | 60\n40 | 2 | 80", mm("30", "2", "60"), mm("40", "2", "80")),
    case("diam-est", "Diam. est.;Spessore;Raggio\n42,4;2;85\n48,3;2;97", mm("42.4", "2", "85"), mm("48.3", "2", "97")),
]  # fmt: skip
