"""Words that used to mislead in silence: read as meant now, or doubted; with what must not be."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from .support import case, inch, mm

_ALL = "od wall clr"

PUT_RIGHT = [  # what is said to be wrong gives way
    case("no-thats-wrong", "Tube 1.75, quarter inch wall?? no thats wrong, its .125. Bend radius 7 inches.", inch("1.75", "0.125", "7")),
    case("gave-you-the-wrong", "Mandrel for 2 x .120 wall at 6 inch. I gave you the wrong radius, the die is a 7 inch CLR.", inch("2", "0.120", "7")),
    case("that-was-wrong", "2 x .120 wall, CLR 6. That was wrong, the wall is .095.", inch("2", "0.095", "6")),
    case("das-war-falsch", "Rohr 38 x 2, Radius 100. Das war falsch, der Radius ist 114.", mm("38", "2", "114")),
    case("trompe", "Tube 38 x 2, rayon 100. Je me suis trompé, le rayon est de 114.", mm("38", "2", "114")),
    case("equivoque", "Tubo 38 x 2, radio 100. Me equivoqué, el radio es 114.", mm("38", "2", "114")),
    case("sbagliato", "Tubo 38 x 2, raggio 100. Mi sono sbagliato, il raggio è 114.", mm("38", "2", "114")),
    case("klopt-niet", "Buis 38 x 2, straal 100. Dat klopt niet, de straal is 114.", mm("38", "2", "114")),
]  # fmt: skip

ADDED = [  # a further size replaces none, whatever slip is told beside it
    case("wrong-last-time", "1.5 x .065, 4.5 CLR. We had the wrong wall on the last job. Also 2 x .065, 6 CLR.", inch("1.5", "0.065", "4.5"), inch("2", "0.065", "6")),
    case("actually-also", "1.5 x .065, 4.5 CLR. Actually also 2 x .065, 6 CLR.", inch("1.5", "0.065", "4.5"), inch("2", "0.065", "6")),
    case("oops-another", "1.5 x .065, 4.5 CLR. Oops, forgot: another for 2 x .065, 6 CLR.", inch("1.5", "0.065", "4.5"), inch("2", "0.065", "6")),
    case("noch-vergessen", "38 x 2, R 100. Entschuldigung, noch vergessen: 42 x 2, R 120.", mm("38", "2", "100"), mm("42", "2", "120")),
    case("pardon-aussi", "38 x 2, R 100. Pardon, il nous faut aussi 42 x 2, R 120.", mm("38", "2", "100"), mm("42", "2", "120")),
    case("no-wait", "1.5 x .065, 4.5 CLR. No wait, 2 x .065, 6 CLR.", inch("2", "0.065", "6")),
    case("item-no", "Item no 3: 1.5 x .065, 4.5 CLR\nItem no 4: 1.75 x .095, 5.25 CLR", inch("1.5", "0.065", "4.5"), inch("1.75", "0.095", "5.25")),
    case("job-no", "Tube 1.5 x .065 on 4.5 CLR. Job no 3 is 1.75 x .095 on 5.25 CLR.", inch("1.5", "0.065", "4.5"), inch("1.75", "0.095", "5.25")),
    case("but-we-use", "Handrails are 1.5 x .065 on 4.5 clr but we use 1.75 x .095 on 5.25 clr for gates. One mandrel for each please.", inch("1.5", "0.065", "4.5"), inch("1.75", "0.095", "5.25")),
    case("but-we-bend", "Most is 38 x 2 R 76, but we bend 42,4 x 2 R 100 as well. Need both mandrels.", mm("38", "2", "76"), mm("42.4", "2", "100")),
    case("but-we-get", "Two sizes: 1.5 x .065, 4.5 clr but we get 1.75 x .095 on 5.25 clr from another mill.", inch("1.5", "0.065", "4.5"), inch("1.75", "0.095", "5.25")),
    case("no-and-comma", "Mandrel for 1.5 x .065 on a 4.5 CLR. No, 1.75 x .065.", inch("1.75", "0.065", "4.5")),
    case("wrong-for-our-job", "The old tooling is 1.5 x .065 on 4.5, that is wrong for our job. We need 1.75 x .095 on 5.25 clr.", inch("1.5", "0.065", "4.5", _ALL), inch("1.75", "0.095", "5.25")),
    case("also-scratch-that", "1.5 x .065, 4.5 CLR. Also, scratch that wall, it's .083.", inch("1.5", "0.083", "4.5")),
]  # fmt: skip

OFFERED = [  # a figure offered instead
    case("maybe-40", "Tube 38 mm (maybe 40), wall 2, R 100", mm("38", "2", "100", "od")),
    case("could-be", "38 x 2, R 100 (could also be 105)", mm("38", "2", "100", "clr")),
    case("not-sure", "Tube 38 mm (not sure, maybe 40), wall 2, R 100", mm("38", "2", "100", "od")),
    case("vielleicht", "R 100 (vielleicht 114), Rohr 38 x 2", mm("38", "2", "100", "clr")),
    case("i-think", "38 x 2 (I think, could be 1.5), R 100", mm("38", "2", "100", "wall")),
    case("forse", "38 x 2 mm (forse 2,5 mm), raggio 100", mm("38", "2", "100", "wall")),
    case("next-year-maybe", "Need one for 1-3/4 x .065 on 3-1/2 CLR. Next year maybe 2 too but not now.", inch("1.75", "0.065", "3.5")),
    case("or-call", "38 x 2, R 100, or call me", mm("38", "2", "100")),
]  # fmt: skip

DENIED = [  # a bracket that opens with a 'not'
    case("non-il-gas", 'Tubo alluminio, diametro esterno 32 mm (non il gas da 1" 1/4!), spessore 2 mm, raggio interno di curvatura 48 mm.', mm("32", "2", "64")),
    case("not-the-pipe", "Tube OD 1.5 (not the 1-1/2 pipe), wall .065, 4.5 CLR", inch("1.5", "0.065", "4.5")),
    case("nicht-das-gasrohr", 'Rohr 33,7 x 2 (nicht das 1" Gasrohr), R 100', mm("33.7", "2", "100")),
    case("pas-le-40", "Tube 38 mm (pas le 40), ép. 2, R 100", mm("38", "2", "100")),
    case("no-el-de-40", "Tubo 38 (no el de 40), pared 2, radio 100", mm("38", "2", "100")),
    case("niet-die-van-40", "Buis 38 (niet die van 40), wand 2, straal 100", mm("38", "2", "100")),
    case("not-to-scale", "38 x 2, R 100 (not to scale)", mm("38", "2", "100")),
]  # fmt: skip

SIDES = [  # radii to a side of the bend, diameters across a side of the tube
    case("inside-of-bend", 'Tube 40 x 2 mm in S235, 90° bend, with "R100 INSIDE OF BEND" i.e. to the inner wall of the bend.', mm("40", "2", "120")),
    case("inside-of-curve", "Tube 40 x 2 mm, R 100 inside of curve", mm("40", "2", "120")),
    case("inner-wall", "I got 40 x 2, R100 measured to the inner wall of the bend", mm("40", "2", "120")),
    case("outside-of-bend", "Tube 40 x 2 mm, R 140 outside of bend", mm("40", "2", "120")),
    case("up-to-some-side", "40 x 2, R 100, the inward one", mm("40", "2", "100", "clr")),
    case("side-behind", "2.000 OD x .049 wall, bend radius 2.50 inside. Please quote.", inch("2", "0.049", "3.5")),
    case("thats-to-inside", "32mm x 1.5 wall with 48mm radius, that's to inside.", mm("32", "1.5", "64")),
    case("inside-the-shop", "40 x 2, R 100, the bender is inside the shop", mm("40", "2", "100")),
    case("across-the-sides", "its 30.0 across the outside and 26.0 across the inside. It goes round the 75 centre radius former.", mm("30", "2", "75")),
    case("over-the-sides", "38 mm over the outside and 34 over the inside, R 100", mm("38", "2", "100")),
    case("two-radii", "R 100 on the outside and R 62 on the inside, tube 38 x 2", mm("38", "2", "81")),
    case("zwei-radien", "Rohr 38 x 2, Radius außen 100 und innen 62", mm("38", "2", "81")),
    case("raggi", "Tubo 38 x 2, raggio esterno 100 e interno 62", mm("38", "2", "81")),
    case("int-ext", "Tube Ø 20 int. / 25 ext., rayon 60", mm("25", "2.5", "60")),
    case("ext-int", "Tube 25 ext. / 20 int., rayon 60", mm("25", "2.5", "60")),
    case("interno-esterno", "Tubo 20 interno, 25 esterno, raggio 60", mm("25", "2.5", "60")),
    case("innen-aussen", "Rohr 20 innen 25 außen, R 60", mm("25", "2.5", "60")),
    case("radii-in-out", "Radius 60 innen, 85 außen, Rohr 25 x 2", mm("25", "2", "72.5")),
    case("radius-then-tube", "Radius 75, außen 38, innen 34", mm("38", "2", "75")),
]  # fmt: skip

LISTS_OF_TWO = [  # lists whose parts are of one kind
    case("three-dies", "Got one tube size, 1-1/4 x .058 4130, and three dies: 2-1/2, 3-3/4 and 5 inch CLR.", inch("1.25", "0.058", "2.5"), inch("1.25", "0.058", "3.75"), inch("1.25", "0.058", "5")),
    case("formers-of", "Tube 30 x 2, formers of 60, 90 and 120 radius", mm("30", "2", "60"), mm("30", "2", "90"), mm("30", "2", "120")),
    case("matrizen", "Rohr 30 x 2. Matrizen: 60, 90 und 120 mm Radius", mm("30", "2", "60"), mm("30", "2", "90"), mm("30", "2", "120")),
    case("matrices", "Tubo 30 x 2. Matrices: 60, 90 y 120 de radio", mm("30", "2", "60"), mm("30", "2", "90"), mm("30", "2", "120")),
    case("on-and-on", "1.5 x .065 on 4.5, 1.75 x .065 on 5.25 and 2 x .065 on 6", inch("1.5", "0.065", "4.5"), inch("1.75", "0.065", "5.25"), inch("2", "0.065", "6")),
    case("at-and-at", '1" x .049 at 3", 7/8 x .049 at 2-5/8, 3/4 x .049 at 2-1/4.', inch("1", "0.049", "3"), inch("0.875", "0.049", "2.625"), inch("0.75", "0.049", "2.25")),
    case("auf-und-auf", "25 x 1,5 mm auf 50 mm, 30 x 1,5 mm auf 60 mm, 35 x 2 mm auf 70 mm.", mm("25", "1.5", "50"), mm("30", "1.5", "60"), mm("35", "2", "70")),
    case("sur-et-sur", "25 x 1,5 sur 50, 30 x 1,5 sur 60", mm("25", "1.5", "50"), mm("30", "1.5", "60")),
    case("named-on-a", "1.5 OD .065 wall on a 4.5, 1.75 OD .065 wall on a 5.25", inch("1.5", "0.065", "4.5"), inch("1.75", "0.065", "5.25")),
    case("ods-on-one", "Mandrels for 1.5, 1.75 x .065 on 6", inch("1.5", "0.065", "6"), inch("1.75", "0.065", "6")),
    case("bars-with-walls", 'We bend 1" bars, .120 wall, 3 inch centerline radius, and 7/8" bars, .095 wall, 2.5 inch centerline radius.', inch("1", "0.120", "3"), inch("0.875", "0.095", "2.5")),
    case("then-step", "Primaries 1.75 then step to 1.875, both .049 wall, both on 2.625 centerline dies", inch("1.75", "0.049", "2.625"), inch("1.875", "0.049", "2.625")),
    case("stepped-to", "Tubes 1.75 stepped to 1.875, both .065, CLR 3", inch("1.75", "0.065", "3"), inch("1.875", "0.065", "3")),
    case("gestuft", "Krümmer 40 mm gestuft auf 42 mm, Wand 1,5, R 63", mm("40", "1.5", "63"), mm("42", "1.5", "63")),
    case("etage", "Primaires 40 mm, étagé à 42 mm, épaisseur 1,5, rayon 63", mm("40", "1.5", "63"), mm("42", "1.5", "63")),
    case("stepped-wholes", "1-5/8 x .065, stepped to 1-3/4 x .065, 3 in CLR", inch("1.625", "0.065", "3"), inch("1.75", "0.065", "3")),
    case("bzw", "Zwei Rohre, Ø 30 mit 1,5 Wand und Ø 35 mit 2 Wand. Radien 60 bzw. 70 mm.", mm("30", "1.5", "60"), mm("35", "2", "70")),
    case("radius-then-angle", "Bögen 42,4 x 2,6, Radius 63, 90°", mm("42.4", "2.6", "63")),
    case("inch-and-a-half", "1 inch and a half x .065, 4 inch and a half CLR", inch("1.5", "0.065", "4.5")),
    case("pollice-e-mezzo", "tubo da 1 pollice e mezzo, spessore .065, raggio 4.5 pollici", inch("1.5", "0.065", "4.5")),
    case("two-marked", '1" and 7/8", both .065 wall, 3 CLR', inch("1", "0.065", "3"), inch("0.875", "0.065", "3")),
]  # fmt: skip

MULTIPLES = [  # a multiple beside the length that it comes to
    case("3d-colon", "Tube 48.3 x 2.0 mm\nBending radius 3D: 145 mm", mm("48.3", "2", "145")),
    case("3d-equals", "Rohr 48,3 x 2, R = 3D = 145", mm("48.3", "2", "145")),
    case("3d-first", "Rayon 3D : 145 mm, tube 48,3 x 2", mm("48.3", "2", "145")),
    case("3d-otherwise", "Tube 48.3 x 2 mm, bend radius 3D: 150 mm", mm("48.3", "2", "150", "clr")),
    case("1.5d-inches", "tube 2 x .065, 1.5D: 3 in", inch("2", "0.065", "3")),
    case("3d-of-two", "una per tubo rame 18x1 e una per 22x1, tutte e due con raggio 3D (54 e 66)", mm("18", "1", "54"), mm("22", "1", "66")),
    case("3d-drawing", "3D: see drawing. 38 x 2, R 100", mm("38", "2", "100")),
    case("bracket-between", "Tubo de 33,7 mm de diámetro exterior y 2 mm de espesor, con radio de curvatura (a eje) de 67 mm.", mm("33.7", "2", "67")),
]  # fmt: skip

DIE_STAMPS = [  # a die is marked with its tube and its radius
    case("second-number", "Three dies, they say 1 x 3 and 1-1/2 x 4-1/2 (the second number is the center line radius). Tube is .065 wall.", inch("1", "0.065", "3"), inch("1.5", "0.065", "4.5")),
    case("zweite-zahl", "Auf den Matrizen steht 30 x 90 und 40 x 120, die zweite Zahl ist der Biegeradius. Wand 2 mm.", mm("30", "2", "90"), mm("40", "2", "120")),
    case("deuxieme-chiffre", "Mes formes : 30 x 90 et 40 x 120, le deuxième chiffre est le rayon. Epaisseur 2 mm.", mm("30", "2", "90"), mm("40", "2", "120")),
    case("stamped", "Dies are stamped 2 x 6, tube .120 wall", inch("2", "0.120", "6", "clr")),
    case("a-made-thing", "The gate has two tubes:\n - the frame is 2-3/8\" OD x .154 wall, on 9 inch CLR\n - the scrollwork is 3/4\" x .065 with 2-1/4\" CLR", inch("2.375", "0.154", "9"), inch("0.75", "0.065", "2.25")),
    case("frame-of-tube", "The frame is 38 x 2, R 90", mm("38", "2", "90")),
    case("frame-in-gauge", "The frame is 1.5 in 16 ga on a 6 clr", inch("1.5", "0.065", "6")),
    case("a-rack", "Rack is 400 x 300 mm. Tube 25 x 2, R 60", mm("25", "2", "60")),
]  # fmt: skip

DOUBTED = [  # what cannot be told is doubted, all of it
    case("two-ods", "Need 1.75 on 1.875, .049 wall", inch("1.75", "0.049", "1.875", _ALL)),
    case("sizes-said", "We have two sizes. 1 x .065, 3 CLR. 1.5 x .065, 4.5 CLR. 2 x .065, 6 CLR.", inch("1", "0.065", "3", _ALL), inch("1.5", "0.065", "4.5", _ALL), inch("2", "0.065", "6", _ALL)),
    case("three-sizes", "We have three sizes. 1 x .065, 3 CLR. 1.5 x .065, 4.5 CLR. 2 x .065, 6 CLR.", inch("1", "0.065", "3"), inch("1.5", "0.065", "4.5"), inch("2", "0.065", "6")),
    case("drei-groessen", "Drei Größen: 38 x 2, R 100. 42 x 2, R 120.", mm("38", "2", "100", _ALL), mm("42", "2", "120", _ALL)),
    case("only-the-last", "Dies marked 1 x 3 CLR and 1-1/2 x 4-1/2 CLR, tube .065 wall. We only want mandrels for the 1-1/2.", inch("1", "0.065", "3", _ALL), inch("1.5", "0.065", "4.5")),
    case("goes-from", "Change of plan, tube goes from 50 x 2 to 50 x 1.5, R100 as before.", mm("50", "2", "100", _ALL), mm("50", "1.5", "100", _ALL)),
    case("aenderung", "Änderung: Rohr 50 x 2, R 100. Rohr 50 x 1,5, R 100.", mm("50", "2", "100", _ALL), mm("50", "1.5", "100", _ALL)),
    case("wrong-radius-bare", "Tube 1.5 x .065, CLR 4.5. I gave you the wrong radius, it is 5.", inch("1.5", "0.065", "5")),
    case("wrong-radius-then", "Tube 1.5 x .065, CLR 4.5. Wrong radius, sorry. It should be 5.", inch("1.5", "0.065", "5")),
    case("falscher-radius-bare", "Rohr 38 x 2, Radius 100. Falscher Radius, es sind 114.", mm("38", "2", "114")),
    case("mauvais-rayon-bare", "Tube 38 x 2, rayon 100. Mauvais rayon, c'est 114.", mm("38", "2", "114")),
    case("wrong-size-whole", "1.5 x .065 on 4.5 CLR. I gave you the wrong size, it's 1.75 x .065. One mandrel.", inch("1.5", "0.065", "4.5", _ALL), inch("1.75", "0.065", None, "od wall")),
    case("previously-asked", "Tube 51 x 1.5, CLR 102. We previously asked for 51 x 2, CLR 102.", mm("51", "1.5", "102")),
    case("previously-in-prose", "Tube 51 x 1.5, CLR 102 - we previously asked you to look at 51 x 2 but that project is dead.", mm("51", "1.5", "102"), mm("51", "2", None, "od wall")),
    case("frueher", "Rohr 51 x 1,5, R 102. Früher hatten wir 44 x 2, R 90.", mm("51", "1.5", "102")),
    case("which-of-two", "One machine with 38 mm tooling R 95, one with 42.4 tooling R 127. Mandrel is needed for the second, wall 2 mm.", mm("38", "2", "95", _ALL), mm("42.4", "2", "127", _ALL)),
    case("own-diameter", "Mandrel for 2.25 OD, .065 wall, 3.375 CLR. Can you match the one I have, it's 2.085 diameter.", inch("2.25", "0.065", "3.375"), inch("2.085", None, None, "od")),
    case("solo-para", "Tubos 38 x 2 radio 100 y 42 x 2 radio 120. Solo necesitamos mandriles para el de 42.", mm("38", "2", "100", _ALL), mm("42", "2", "120")),
]  # fmt: skip

FAMILIES = (
    PUT_RIGHT, ADDED, OFFERED, DENIED, SIDES, LISTS_OF_TWO, MULTIPLES, DIE_STAMPS, DOUBTED,
)  # fmt: skip
