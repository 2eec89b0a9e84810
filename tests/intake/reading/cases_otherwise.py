"""Sizes put otherwise than by their names: a radius told twice, tube by the length, bore by OD,
what is past, what is put right among several; each beside words that must not be read so."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from .support import case, inch, mm

RADIUS_AGAIN = [
    case(
        "again-en",
        "tube is 2 x .083, the die is stamped 3R and that's 3 inches to the inside of the bend. One mandrel",
        inch("2", "0.083", "4"),
    ),  # 3 + 2 / 2
    case(
        "again-de",
        "Rohr 40 x 2, die Matrize hat 60 mm Radius, d.h. der Innenradius am Rohr ist 60. Einen Dorn bitte.",
        mm("40", "2", "80"),
    ),
    case(
        "again-fr",
        "un mandrin pour tube 40 x 2, rayon 60, c'est-à-dire rayon intérieur 60 mm",
        mm("40", "2", "80"),
    ),
    case(
        "again-es",
        "un mandril para tubo 40 x 2, radio 60, es decir radio interior 60 mm",
        mm("40", "2", "80"),
    ),
    case(
        "again-it",
        "un mandrino per tubo 40 x 2, raggio 60, cioè raggio interno 60 mm",
        mm("40", "2", "80"),
    ),
    case(
        "again-nl",
        "een doorn voor buis 40 x 2, straal 60, dus binnenradius 60 mm",
        mm("40", "2", "80"),
    ),
    case(
        "again-outside",
        "tube 40 x 2, radius 130, measured on the outside: outside radius 130 mm. One mandrel",
        mm("40", "2", "110"),
    ),
]
BY_THE_LENGTH = [
    case(
        "lengths-en",
        "I have three lengths of inch and a quarter 18 SWG tube, former is four inches to the centre. A mandrel please.",
        inch("1.25", "0.048", "4"),
    ),
    case(
        "lengths-sticks",
        "got two sticks of 1.5 x .065 here, bent on a 4.5 clr die, need a mandrel",
        inch("1.5", "0.065", "4.5"),
    ),
    case(
        "lengths-de",
        "zwei Stangen 38 x 1,5 sind zu biegen, Radius 76. Einen Dorn bitte.",
        mm("38", "1.5", "76"),
    ),
    case(
        "lengths-fr",
        "trois longueurs de 38 x 1,5 à cintrer, rayon 76, un mandrin svp",
        mm("38", "1.5", "76"),
    ),
    case(
        "lengths-es",
        "tres barras de 38 x 1,5, radio 76, un mandril por favor",
        mm("38", "1.5", "76"),
    ),
    case("lengths-it", "due barre da 38 x 1,5, raggio 76, un mandrino", mm("38", "1.5", "76")),
    case(
        "lengths-are-long",
        "38 x 1.5 in lengths of 600 mm, radius 76, one mandrel",
        mm("38", "1.5", "76"),
    ),
]
CLEAR_WIDTH = [
    case(
        "clear-de",
        "Kupferrohr mit 36 mm lichter Weite und 2 mm Wand, Radius 120. Einen Dorn bitte",
        mm("40", "2", "120"),
    ),  # 36 + 2 x 2
    case(
        "clear-es",
        "tubo de 36 mm de luz y 2 mm de pared, radio 120, un mandril",
        mm("40", "2", "120"),
    ),
    case(
        "clear-it", "tubo 36 mm di luce, parete 2 mm, raggio 120, un mandrino", mm("40", "2", "120")
    ),
    case("clear-nl", "buis inwendig 36 mm, wand 2 mm, straal 120, een doorn", mm("40", "2", "120")),
    case("copper-14-16", "un mandrin pour tube cuivre 14/16, rayon 40", mm("16", "1", "40")),
    case("copper-12-14", "cuivre 12/14, rayon 40 mm, un mandrin", mm("14", "1", "40")),
    case(
        "copper-day",
        "copper tube, delivery by 12/14 please, 1.5 x .065 on 4.5 clr, one mandrel",
        inch("1.5", "0.065", "4.5"),
    ),
    case(
        "copper-inch",
        'copper tube 5/8 outside, .035 wall, 1.25" radius, one mandrel',
        inch("0.625", "0.035", "1.25"),
    ),
    case(
        "thick-tube",
        "Das Rohr ist 25 mm dick mit 1,5 mm Wandung, Radius 70. Einen Dorn",
        mm("25", "1.5", "70"),
    ),
    case(
        "swg-told",
        '5/8" outside, 20 gauge (.036"), 1-1/4" radius, one mandrel',
        inch("0.625", "0.036", "1.25"),
    ),
    case(
        "bwg-told",
        '5/8" outside, 20 gauge (.035"), 1-1/4" radius, one mandrel',
        inch("0.625", "0.035", "1.25"),
    ),
    case(
        "gauge-of-neither",
        '2" tube, 16 gauge (.060), 4" radius, one mandrel',
        inch("2", "0.065", "4", "wall"),
    ),
    case(
        "weight",
        "tube 25 x 2 to save 300 g, bend is 60 mm radius, one mandrel",
        mm("25", "2", "60"),
    ),
    case(
        "roll",
        "tube 30 x 2.5 mm, and my roller has radius 90 mm in axis of tube. One mandrel",
        mm("30", "2.5", "90"),
    ),
]
NO_LONGER = [
    case(
        "past-en",
        "The frames used to be 28 x 2 but we've gone down to 25 x 2. Bend is 60 mm radius. Three mandrels please.",
        mm("25", "2", "60"),
    ),
    case(
        "past-de",
        "Früher haben wir 28 x 2 gebogen, aber jetzt ist es 25 x 2 mit Radius 60. Einen Dorn bitte.",
        mm("25", "2", "60"),
    ),
    case(
        "past-fr",
        "Avant, on faisait du 28 x 2 mais maintenant c'est du 25 x 2, rayon 60. Un mandrin svp",
        mm("25", "2", "60"),
    ),
    case(
        "past-year",
        "Last year we ran 28 x 2 and now it is 25 x 2, R 60. Need one mandrel",
        mm("25", "2", "60"),
    ),
]
PUT_RIGHT_LATE = [
    case(
        "late-de",
        "Zwei Dorne: 40 x 2, R 80 und 50 x 3, R 120. Korrektur: der Radius ist 90, nicht 80.",
        mm("40", "2", "90"),
        mm("50", "3", "120"),
    ),
    case(
        "late-last",
        "Two mandrels, 40 x 2 R 80 and 50 x 3 R 120. Sorry, the radius is 130 not 120",
        mm("40", "2", "80"),
        mm("50", "3", "130"),
    ),
    case(
        "late-fr",
        "Deux mandrins : 40 x 2 rayon 80 et 50 x 3 rayon 120. Erratum : paroi 2,5 et non 2.",
        mm("40", "2.5", "80"),
        mm("50", "3", "120"),
    ),
    case(
        "late-it",
        "Due mandrini: 40 x 2 raggio 80 e 50 x 3 raggio 120. Correzione: il raggio è 90 e non 80.",
        mm("40", "2", "90"),
        mm("50", "3", "120"),
    ),
    case(
        "late-es",
        "Dos mandriles: 40 x 2 radio 80 y 50 x 3 radio 120. Perdón: el radio es 90, no 80.",
        mm("40", "2", "90"),
        mm("50", "3", "120"),
    ),
    case(
        "late-nl",
        "Twee doornen: 40 x 2 straal 80 en 50 x 3 straal 120. Correctie: straal 90, niet 80.",
        mm("40", "2", "90"),
        mm("50", "3", "120"),
    ),
    case(
        "late-of-other",
        "Two mandrels: 40 x 2 on R 80. And a 50 x 3, not on R 80 but R 100.",
        mm("40", "2", "80"),
        mm("50", "3", "100"),
    ),
]
NEXT_SHAPE = [
    case(
        "shape-of-next",
        "Two mandrels: 1.5 x .065 on 4.5 clr, and square tube 2 x 2 x .083 on 6 clr",
        inch("1.5", "0.065", "4.5"),
        inch(None, "0.083", "6", shape="square"),
    ),
    case(
        "shape-of-next-fr",
        "deux mandrins: tube 22,2 x 0,8, rayon 65; et tube ovale 30 x 16 x 1, rayon 80.",
        mm("22.2", "0.8", "65"),
        mm(None, "1", "80", shape="other"),
    ),
    case(
        "shape-behind",
        "1.5 x .065 on 4.5 clr square tube, one mandrel",
        inch(None, "0.065", "4.5", shape="square"),
    ),
]
UNSURE = [
    case(
        "unsure-it",
        "Serve un mandrino, il diametro credo sia 35 ma potrebbe anche essere 34, lo spessore è 2 di sicuro, raggio 105",
        mm("35", "2", "105", "od"),
    ),
    case(
        "unsure-fr",
        "un mandrin svp, le diamètre je crois est 35 mais ça pourrait être 34, paroi 2, rayon 100",
        mm("35", "2", "100", "od"),
    ),
    case(
        "unsure-de",
        "Einen Dorn, der Durchmesser ist glaube ich 35, könnte aber auch 34 sein, Wand 2, Radius 105",
        mm("35", "2", "105", "od"),
    ),
    case(
        "unsure-es",
        "un mandril, el diámetro creo que es 35, pared 2, radio 105",
        mm("35", "2", "105", "od"),
    ),
    case(
        "unsure-nl",
        "een doorn, diameter is denk ik 35, wand 2, straal 105",
        mm("35", "2", "105", "od"),
    ),
    case(
        "unsure-radius",
        "un mandrin pour du tube en 60,3 x 2,9. Le rayon sera autour de 180 mm à l'axe",
        mm("60.3", "2.9", "180", "clr"),
    ),
    case(
        "unsure-wall",
        "Need a mandrel for 1.125 outside, I think the wall is .083 but it might as well be .095. 5 inch clr",
        inch("1.125", "0.083", "5", "wall"),
    ),
    case(
        "sure-round", "un mandrin, tube rond de 48 mm, paroi 2 mm, rayon 144", mm("48", "2", "144")
    ),
]
