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

_TWO = (inch("1.5", "0.065", "4.5"), inch("2", "0.083", "6"))
_TWO_MM = (mm("40", "2", "100"), mm("25", "1.5", "50"))

TIED = [
    case("tied-the-od", "Mandrels for 1.5 x .065 and 2 x .083. The 1.5 is on a 4.5 CLR, the 2 on a 6 CLR.", *_TWO),
    case("tied-for-the-od", "Mandrels for 1.5 x .065 and 2 x .083. 4.5 CLR for the 1.5, 6 CLR for the 2.", *_TWO),
    case("tied-de-er", "Rohr 40 x 2 und 25 x 1,5. Für das 40er R 100, für das 25er R 50 mm.", *_TWO_MM),
    case("tied-parts", "Hoops are 1.5 OD x .065, braces 2 x .083; hoop die 4.5 CLR, brace die 6 CLR.", *_TWO),
    case("tied-radius-of", "Handrail 40 x 2, posts 25 x 1.5. Handrail radius 100, post radius 50 mm", *_TWO_MM),
    case("tied-radius-for", "Handrail is 40 x 2 and the posts are 25 x 1.5. Radius is 100 for the handrail and 50 for the posts.", *_TWO_MM),
    case("tied-for-parts", "1-1/2 x .065 for the frame, 2 x .083 for the stays. Frame radius 4.5, stays radius 6", *_TWO),
    case("tied-de-parts", "Holm 40 x 2, Sprosse 25 x 1,5. Radius Holm 100, Radius Sprosse 50 mm", *_TWO_MM),
    case("tied-fr-parts", "Montant 40 x 2, barreau 25 x 1,5. Rayon du montant 100, rayon du barreau 50 mm", *_TWO_MM),
    case("tied-one-open", "Main hoop is 1-3/4 in 11 gauge, the braces are 1-1/2 in 13 gauge. The hoop die is 5-1/2 CLR. For the braces I still have to buy a die.", inch("1.75", "0.12", "5.5"), inch("1.5", "0.095")),
    # Said for both.
    case("tied-both", "1-1/2 x .065 frame, 2 x .083 stays. Both on 6 CLR", inch("1.5", "0.065", "6"), inch("2", "0.083", "6")),
    case("tied-not-named", "Main hoop is 1.5 x .065, braces 2 x .083. Bend radius 6.", inch("1.5", "0.065", "6"), inch("2", "0.083", "6")),
    case("tied-urgent", "tube 30x2 and 40x2, all on 3D. The 40 is urgent.", mm("30", "2", "90"), mm("40", "2", "120")),
]  # fmt: skip

PLACES_OF_ONE_TUBE = [
    case("place-back-front", "22 x 1.5 mm tube, 60 mm radius in the back and 45 mm in the front. One of each.", mm("22", "1.5", "60"), mm("22", "1.5", "45")),
    case("place-before", "22 x 1.5 mm. In the back it bends with 60 mm radius and in the front 45 mm.", mm("22", "1.5", "60"), mm("22", "1.5", "45")),
    case("place-top", "22 x 1.5 mm tube, radius 60 at the top and 45 at the bottom", mm("22", "1.5", "60"), mm("22", "1.5", "45")),
]  # fmt: skip

CHANGED = [
    case("changed-wall", "We changed the wall from .095 to .120. Tube 1.75, 5.25 CLR", inch("1.75", "0.12", "5.25")),
    case("changed-has-gone", "The radius has gone from 150 to 76 mm. Tube 38 x 2 mm.", _TUBE),
    case("changed-switched", "We switched from 1.5 to 1.75 OD, .095 wall, 5.25 CLR", _SIZE),
    case("changed-de", "Der Radius ändert sich von 100 auf 76 mm. Rohr 38 x 2 mm.", _TUBE),
    case("changed-it", "tubo 38 x 2, il raggio passa da 100 a 76 (asse)", _TUBE),
    case("changed-fr", "tube 38 x 2, le rayon passe de 100 à 76 mm", _TUBE),
    case("changed-es", "tubo 38 x 2 mm, el radio cambia de 100 a 76 mm", _TUBE),
    case("changed-nl", "buis 38 x 2 mm, straal gaat van 100 naar 76 mm", _TUBE),
    case("changed-not-a-range", "Walls from .049 up to .065, 1.5 OD, 3 CLR", inch("1.5", "0.049", "3", "wall"), inch("1.5", "0.065", "3", "wall")),
    case("changed-angle", "The bend goes from 45 to 90 degrees. Tube 38 x 2 mm, R 76", _TUBE),
]  # fmt: skip

UNITS_FOR_ALL = [
    case("all-mm-first", "All sizes mm:\n- 6 x 1, R18\n- 8 x 1, R24", mm("6", "1", "18"), mm("8", "1", "24")),
    case("all-mm-last", "Please price (all bends 3 x OD to the centre line):\n\n- 6 x 1\n- 8 x 1\n\nAll mm.", mm("6", "1", "18"), mm("8", "1", "24")),
    case("everything-mm", "6 x 1 R 18 and 8 x 1 R 24, everything in millimetres", mm("6", "1", "18"), mm("8", "1", "24")),
    case("alle-masse-mm", "6 x 1, R18. Alle Maße mm.", mm("6", "1", "18")),
    case("m-point-colon", "Aussen-Ø: 38\nWandung: 2\nBiegeradius m.: 76", _TUBE),
]  # fmt: skip

MACHINES = [
    case("stroke", "Machine: 76 x 3 max capacity, stroke 3000 mm, draw bar M20. Tube: 38 x 2, R 76.", _TUBE),
    case("stroke-after", "Tube: 38 x 2 mm, R 76 mm. Stroke 3000 mm, rod M20", _TUBE),
    case("stroke-de", "Rohr 38 x 2, R 76 mm, Hub 2500 mm", _TUBE),
    case("inner-edge", "38 x 2 mm with 57 mm to the inner edge", _TUBE),
]  # fmt: skip

_ONE = inch("1.5", "0.065", "4.5")
_METRIC = mm("25", "1.5", "50")

PRICES_AND_TOOLS = [
    case("price-on", "1.5 x .065 on 4.5 CLR. Price on 1 and on 3?", _ONE),
    case("price-break", "1.5 x .065 on 4.5 CLR. What's the break at 5?", _ONE),
    case("pricing-at", "1.5 x .065 on 4.5 CLR, pricing at 1, 3 and 5 please", _ONE),
    case("preis-bei", "Rohr 25 x 1,5, R 50 mm. Preis bei 1 und bei 3 Stück?", _METRIC),
    case("prix-pour", "tube 25 x 1,5, R 50 mm. Prix pour 1 et pour 3 ?", _METRIC),
    case("price-for-tube", "price for 2, .083 wall, 6 clr", inch("2", "0.083", "6")),
    case("quote-on-tube", "Quote on 2 OD, .083 wall, 6 CLR", inch("2", "0.083", "6")),
    case("price-on-two", "Price on 2 inch and 3 inch, .083 wall, both 6 CLR", inch("2", "0.083", "6"), inch("3", "0.083", "6")),
    case("ball-mandrel-dia", "Need a ball mandrel 1.360 dia? tube is 1.5 x .065, 4.5 clr", _ONE),
    case("after-bending", "Tube 25 x 1.5 R 50, the wall must not go under 1.2 mm after bending", _METRIC),
    case("nach-dem-biegen", "Rohr 25 x 1,5 R 50, Wandstärke nach dem Biegen mind. 1,2 mm", _METRIC),
    case("lengths-of", "We have 400 lengths of 25 x 1.5 mild steel in the yard, each bent twice at R50 (centre).", _METRIC),
    case("we-own", "We bend 1.5 x .083 and 1.5 x .065, both at 4.5 CLR. Mandrel for the .083 we own. Please quote one for the .065.", _ONE),
]  # fmt: skip

MORE_LANGUAGES = [
    case("turkish", "Boru dış çap 25 mm, et kalınlığı 1,5 mm, büküm yarıçapı 50 mm (eksen)", _METRIC),
    case("finnish", "putki 25 x 1,5 mm, taivutussäde 50 mm keskilinja", _METRIC),
    case("romanian", "țeavă 25 x 1,5 mm, rază de îndoire 50 mm pe ax", _METRIC),
    case("russian", "труба 25 x 1,5 мм, радиус гиба 50 мм по оси", _METRIC),
    case("pouces", "tube de 1/2 de pouce, paroi 1/16 de pouce, rayon 2 pouces", inch("0.5", "0.0625", "2")),
]  # fmt: skip

_MM_TWO = (mm("38", "1.5", "57"), mm("42.4", "2", "85"))

TIED_BY_PLACE = [
    case("place-items", "Item 1: 38 x 1.5\nItem 2: 42.4 x 2\nItem 3: 48.3 x 2.6\n\nCLR 57 for items 1 and 2, 100 for item 3.", mm("38", "1.5", "57"), mm("42.4", "2", "57"), mm("48.3", "2.6", "100")),
    case("place-pos", "Pos. 1: 38 x 1,5\nPos. 2: 42,4 x 2\n\nRadius Pos. 1: 57 mm, Pos. 2: 85 mm", *_MM_TWO),
    case("place-item-on", "1. 38 x 1.5\n2. 42.4 x 2\n\nItem 1 on 57 mm CLR, item 2 on 85 mm.", *_MM_TWO),
    case("place-letters", "a) 38 x 1.5\nb) 42.4 x 2\nRadius a) 57, b) 85 mm", *_MM_TWO),
    case("place-teil", "Teil A: 38 x 1,5\nTeil B: 42,4 x 2\nA mit R 57, B mit R 85 mm", *_MM_TWO),
    case("place-inline", "1) 38x1.5, 2) 42.4x2, 3) 48.3x2.6; radius 57 for 1) and 2), 100 mm for 3)", mm("38", "1.5", "57"), mm("42.4", "2", "57"), mm("48.3", "2.6", "100")),
    case("place-first", "38 x 1.5\n42.4 x 2\n\nThe first on 57 CLR, the second on 85", *_MM_TWO),
    case("place-others", "38 x 1.5\n42.4 x 2\n48.3 x 2.6\n\nCLR 57 on the first, 85 on the others", mm("38", "1.5", "57"), mm("42.4", "2", "85"), mm("48.3", "2.6", "85")),
    case("place-fr", "1) 38 x 1.5\n2) 42.4 x 2\nRayon 57 pour 1) et 85 pour 2)", *_MM_TWO),
    case("place-ahead", "Radius 4.5 on the first and 6 on the second: 1.5 x .065, 2 x .083", *_TWO),
    # No radius, or one for all.
    case("place-parts", "1) 38 x 1.5, R 57\n2) 42.4 x 2, R 85\n\nItem 2 is for 100 parts", *_MM_TWO),
    case("place-weeks", "1) 38 x 1.5\n2) 42.4 x 2\nBoth on R 100. Item 2 in 2 weeks please.", mm("38", "1.5", "100"), mm("42.4", "2", "100")),
    case("place-dash-lines", "-12 line (3/4\" OD) .095 wall, 2-1/4\" CLR\n-16 line (1\" OD) .120 wall, 3\" CLR", inch("0.75", "0.095", "2.25"), inch("1", "0.12", "3")),
]  # fmt: skip

RADIUS_FIRST = [
    case("radius-first-two", "For R57 we need 38 x 1.5 and 38 x 2, for R85 42.4 x 2", mm("38", "1.5", "57"), mm("38", "2", "57"), mm("42.4", "2", "85")),
    case("radius-first-lines", "R57: 38 x 1.5\nR85: 42.4 x 2", *_MM_TWO),
    case("dies-list", "ODs are 1\", 1-1/4\" and 1-1/2\".  Wall is 16 ga on all of them and the dies are 3\", 3-3/4\" and 4-1/2\" CLR.", *(inch(od, "0.065", clr, "clr") for od, clr in (("1", "3"), ("1.25", "3.75"), ("1.5", "4.5")))),
]  # fmt: skip

SMALL_SIGNS = [
    case("t-colon", "OD:Φ25 T:1.5 R:50 please quote", _METRIC),
    case("pipe-size-star", "Pipe size 25*1.5, CLR 50", _METRIC),
    case("sp-comma", "tubo da 25 sp. 1,5 curva raggio 50", _METRIC),
    case("oh-nine-five", "one point seven five by oh nine five, clr five and a quarter", _SIZE),
    case("edit-colon", "1.75 x .095 on 5 CLR (edit: 5.25)", _SIZE),
    case("ignore-its", "Ignore the 4 inch CLR I gave on the phone, it's 5.25. Tube 1.75 x .095", _SIZE),
    case("hardness", "25 x 1.5, CLR 50 mm, hardness Rb 70 max, yield 35 ksi", _METRIC),
]  # fmt: skip

MULTIPLIED = [
    case("times-size", "1x 38x1,5 R57\n2x 42,4x2 R85", *_MM_TWO),
    case("times-size-after-colon", "Bitte anbieten: 2x 42,4x2 R85", mm("42.4", "2", "85")),
    case("times-size-spaced", "2 x 42,4 x 2 mm R85", mm("42.4", "2", "85")),
    case("times-dorn", "1x Dorn 38x1,5 R57\n2x Dorn 42,4x2 R85", *_MM_TWO),
    case("times-inches", "2x 1.5x.065 4.5 clr", _ONE),
    case("times-box", "2 x 2 x .120 wall", inch(wall="0.12", shape="square")),
    case("times-box-mm", "40x20x2, R 60", mm(None, "2", "60", shape="rectangular")),
]  # fmt: skip

TENTHS = [
    case("tenths-paroi", "Ø 25 mm, paroi 15/10, rayon 50", _METRIC),
    case("tenths-en", "tube 25 en 15/10, cintré R50", _METRIC),
    case("tenths-spessore", "tubo fi 25 spessore 15/10 raggio 50", _METRIC),
    case("tenths-times", "tube 25 x 15/10 R50", _METRIC),
    case("tenths-no-date", "Need it by 10/15. Tube 25 x 1.5 R50", _METRIC),
]  # fmt: skip

MORE_ORDERS = [
    case("order-slashes-listed", "Mandrel for tube OD/wall/CLR mm: 38/1.5/57, 42.4/2/85", *_MM_TWO),
    case("lists-one-for-all", "ODs: 1.5, 2.0\nWall: .065 all\nRadius: 4.5, 6.0", inch("1.5", "0.065", "4.5", "clr"), inch("2", "0.065", "6", "clr")),
    case("three-times-the-diameter", "The radius is 3 times the diameter, tube 2 x .083", inch("2", "0.083", "6")),
    case("but-we-run", "The drawing says 1.5 wall but we run 2.0. 42.4 OD, R 85 mm", mm("42.4", "2", "85")),
    case("tubeod", "tubeOD:1.75 wall:.095 clr:5.25 qty:1", _SIZE),
]  # fmt: skip

HEADS_OF_LINES = [
    case("walls-head-lines", "Wall 2 mm: 42.4 (R100), 48.3 (R120)\nWall 3 mm: 60.3 (R150)", mm("42.4", "2", "100"), mm("48.3", "2", "120"), mm("60.3", "3", "150")),
    case("radii-head-lines", "CLR 100: 42.4 x 2, 48.3 x 2\nCLR 150: 60.3 x 2", mm("42.4", "2", "100"), mm("48.3", "2", "100"), mm("60.3", "2", "150")),
    case("labels-without-head", "   OD    ID    R\na  38    35    57\nb  42.4  38.4  85", *_MM_TWO),
    case("pipe-names-in-rows", "Two jobs:\n\n      OD      GA    CLR    QTY\nA     2\"      14    7\"     1\nB     2-3/8\"  11    9\"     1\n", inch("2", "0.083", "7"), inch("2.375", "0.12", "9")),
    case("head-rc", "Ø ext. | ép. | Rc | Qté\n38 | 1,5 | 57 | 1\n42,4 | 2 | 85 | 2", *_MM_TWO),
    case("on-one-only", "38 x 1.5 on 57 CLR, 42.4 x 2 on 85 only", *_MM_TWO),
    case("die-by-its-tube", "Mandrel for a 1.75\" die, 5.25\" CLR, wall .095", _SIZE),
    case("hydraulic-line", "Hydraulic line 25 x 1.5, R 50 mm, stainless", _METRIC),
    case("times-d-equals", "101.6 x 2 mm, 1.5D = 152.4", mm("101.6", "2", "152.4")),
    case("soap-box", "A soap box racer with 3/4 inch tubing, .065 wall, 2 inch radius", inch("0.75", "0.065", "2")),
]  # fmt: skip

BESIDE_LIMITS = [
    case("max-ends-sentence", "Our bender will only take 2 inch max. Tube 1.5 x .065, radius 4.5", _ONE),
    case("long-before-tube", "pressure die 12 in long, tube 1.5 x .065, CLR 4.5", _ONE),
    case("radius-equals-times-d", "Rohr 33,7x2,6 Radius = 3 x D = 101,1", mm("33.7", "2.6", "101.1")),
    case("max-goes-on", "Tube 1.5 OD max., wall .065, 4.5 CLR", inch("1.5", "0.065", "4.5", "od")),
]  # fmt: skip
