"""Sizes that are named but not asked for, or only perhaps; figures told again; words far away."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from .support import case, inch, mm

_SIZE = inch("1.75", "0.095", "5.25")
_ALL = "od wall clr"

TAKEN_BACK = [  # sizes of a list named by their place
    case("drop-a-number", "1) 1 x .065, 3 CLR\n2) 1.5 x .065, 4.5 CLR\n3) 2 x .065, 6 CLR\n\nOn second thought drop 2.", inch("1", "0.065", "3"), inch("2", "0.065", "6")),
    case("leave-out-the-last", "1 x .065 x 3 CLR\n1.5 x .065 x 4.5 CLR\n\nPlease leave out the last one.", inch("1", "0.065", "3")),
    case("position-entfaellt", "Pos. 1: Rohr 25 x 2 mm, R 50\nPos. 2: Rohr 30 x 2 mm, R 60\n\nPos. 1 entfällt.", mm("30", "2", "60")),
    case("only-a-letter", "A) 20 x 1.5 mm, R 40\nB) 25 x 2 mm, R 50\n\nWe only need the mandrel for line B.", mm("25", "2", "50")),
    case("only-a-count", "1) 1 x .065, 3 CLR\n2) 1.5 x .065, 4.5 CLR\n\nWe need only 2 mandrels.", inch("1", "0.065", "3"), inch("1.5", "0.065", "4.5")),
    case("have-and-need", "38 x 1.5 mm   R 57   have 2\n42.4 x 2 mm  R 85   need 1\n50 x 2 mm    R 100  have 1", mm("42.4", "2", "85")),
    case("for-next-year", "Tube 28 x 1.5 mm, R 56. The 35 x 1.5 can wait.", mm("28", "1.5", "56")),
    case("refused", "Don't quote me the 2 x .120 again. I need 1.75 x .095 on 5.25 CLR.", _SIZE),
    case("owned-behind-the-number", "Rohr 42,4 x 2 mm, R 65 und R 85. Für R 200 haben wir schon einen.", mm("42.4", "2", "65"), mm("42.4", "2", "85")),
    case("dont-quote-the-owned", "1.75 x .120, 5.25 CLR. Already own the 1.75 x .095 so dont quote me that again.", inch("1.75", "0.120", "5.25")),
]  # fmt: skip

NOT_TAKEN_BACK = [  # words like those above that speak of something else
    case("delivery-not-urgent", "38 x 1.5 mm, R 57. 42.4 x 2 mm, R 85, not yet urgent.", mm("38", "1.5", "57"), mm("42.4", "2", "85")),
    case("price-later", "Tube 28 x 1.5 mm, R 56. Also 35 x 1.5 mm, R 70, but we'll see about the price.", mm("28", "1.5", "56"), mm("35", "1.5", "70")),
    case("status-of-another-kind", "25 x 2 mm R 50 need 1\n30 x 2 mm R 60 ok to ship later\n35 x 2 mm R 70 need 2", mm("25", "2", "50"), mm("30", "2", "60"), mm("35", "2", "70")),
    case("not-the-first-bought", "1 x .065 x 3 CLR\n1.5 x .065 x 4.5 CLR\nThis is not the first one we buy from you.", inch("1", "0.065", "3"), inch("1.5", "0.065", "4.5")),
    case("only-the-second-has", "Tubes 30 x 2 mm, R 60 and 40 x 2 mm, R 80. Only the second has a seam.", mm("30", "2", "60"), mm("40", "2", "80")),
    case("out-of-stock", "1) 1 x .065, 3 CLR\n2) 1.5 x .065, 4.5 CLR\n\nThe first one is out of stock at your dealer.", inch("1", "0.065", "3"), inch("1.5", "0.065", "4.5")),
    case("nothing-else-to-ask-for", "35 x 1.5 mm, R 70, can wait until spring. We are 12 people.", mm("35", "1.5", "70")),
]  # fmt: skip

PERHAPS = [  # a further size that nothing ties to the first is doubted as a whole
    case("vendor-of-another", "Inch and a quarter, 14 ga tube, 4 in CLR.\nIt goes to the vendor who did the 2 x .083 ones.", inch("1.25", "0.083", "4"), inch("2", "0.083", None, "od wall")),
    case("one-of-two-walls", "The drawing says 35 x 2, the parts list 35 x 1,5 mm. Radius 88. Please quote one mandrel.", mm("35", "2", "88", _ALL), mm("35", "1.5", "88", _ALL)),
    case("the-delivery-can-wait", "1.5 x .065, 4.5 CLR. And 1.75 x .095 on 5.25 CLR, delivery can wait.", inch("1.5", "0.065", "4.5"), inch("1.75", "0.095", "5.25", _ALL)),
    case("either-tube", "We don't know yet whether 30 x 3 or 30 x 4 mm. Radius 90.", mm("30", "3", "90", "od wall"), mm("30", "4", "90", _ALL)),
    case("inside-or-centre", "Tube 1.00 x .049, the drawing has R3.00 but the arrow could be at the inner edge or the centre.", inch("1", "0.049", "3", "clr")),
]  # fmt: skip

TOLD_AGAIN = [
    case("bracket-disagrees", 'tube 44.45 mm (1-5/8"), wall 1.5 mm, CLR 90 mm', mm("44.45", "1.5", "90", "od")),
    case("gauge-in-doubt", "5/8 x 18ga (I think its 18, could be 16), 2 in CLR", inch("0.625", "0.049", "2", "wall")),
    case("actual-od", '1-1/4" schedule 10 pipe. Actual OD 1.660. 5" CLR.', inch("1.660", "0.109", "5")),
    case("nominal-then-od", "5/4 Zoll Rohr, also 42,4 mm außen, 3,2 mm Wand, Radius 130 mm", mm("42.4", "3.2", "130")),
    case("walls-in-two-units", "tube 28.58 dia x 1.24 wall mm (1 1/8 x .049), CLR 57.15 mm", mm("28.58", "1.24", "57.15")),
    case("radius-of-another", "40 x 2 mm, R 80\n30 x 2 mm, R 60\n20 x 2 mm, same radius as the 40", mm("40", "2", "80"), mm("30", "2", "60"), mm("20", "2", "80")),
]  # fmt: skip

NAMED_FROM_AFAR = [
    case("rayon-ligne-neutre", "tube Ø ext. 45 mm, épaisseur 2,5 mm, rayon à la ligne neutre 135 mm", mm("45", "2.5", "135")),
    case("radio-de-curvado", "diámetro exterior 25 mm, espesor 1,2 mm, radio medio de curvado 50 mm", mm("25", "1.2", "50")),
    case("to-the-outer-side", "40 x 2 mm tube, the bend is dimensioned 120 mm to the outer side", mm("40", "2", "100")),
    case("hartradius", "buis 60,3 x 2,0 mm met een hartradius van 150", mm("60.3", "2", "150")),
    case("wrapped-label", "We have aluminium tube of 40 mm outside diameter, wall thickness\n3, and it is bent to a centreline radius of 160 mm.", mm("40", "3", "160")),
    case("wrapped-cue", "Get me one mandrel for inch and a quarter, 14 ga DOM tube on a four inch\ncenterline.", inch("1.25", "0.083", "4")),
    case("walls-from-up-to", "1.5 OD, wall is about .065, on a 3.0 CLR", inch("1.5", "0.065", "3", "wall")),
    case("list-below", "Tubes with 1.5 mm wall.\nHead: 32 mm, R 80\nSide: 20 mm, R 45", mm("32", "1.5", "80"), mm("20", "1.5", "45")),
    case("outside-inside", "25.4 outside, 22.1 inside, both mm. Centreline radius 63.5.", mm("25.4", "1.65", "63.5")),
    case("par-dehors-dedans", "Le tube fait 38 mm à l'extérieur, 36 mm à l'intérieur, rayon 76 mm à l'axe", mm("38", "1", "76")),
    case("er-suffix", "42er Rohr, 2 mm Wand, Radius 84 mm", mm("42", "2", "84")),
    case("left-for-the-od", "The wall is 1.2 mm on 40 mm stuff, bend radius 200 mm", mm("40", "1.2", "200")),
]  # fmt: skip

IN_WORDS = [  # lengths spelled out
    case("vierzig", "Das Rohr hat vierzig Millimeter Durchmesser, Wand 1,2 mm, Radius 200 mm", mm("40", "1.2", "200")),
    case("deux-millimetres", "tube rond de 48 mm avec une paroi de deux millimètres, rayon 144 mm à l'axe", mm("48", "2", "144")),
    case("due-e-mezzo", "tubo da 42 mm esterno, spessore due millimetri e mezzo, raggio medio 126 mm", mm("42", "2.5", "126")),
    case("dos-y-media", "tubo de dos pulgadas y media de diámetro exterior, pared 1,6 mm, radio 95 mm al eje", mm("63.5", "1.6", "95")),
    case("anderthalb", "Rohr 63,5 mm, anderthalb Millimeter Wand, Radius 95 mm", mm("63.5", "1.5", "95")),
    case("anderhalf", "buis van 43 mm, anderhalf dik, radius 120 mm hart", mm("43", "1.5", "120")),
    case("british-mil", "35 mil diameter, 2 mil wall, 105 mil radius to the centre", mm("35", "2", "105")),
    case("us-mil-behind-wall", "1.5 OD, wall is 65 mil, 4.5 CLR", inch("1.5", "0.065", "4.5")),
    case("us-mil", "1.5 OD, 65 mil wall, 4.5 CLR", inch("1.5", "0.065", "4.5")),
]  # fmt: skip

BESIDE = [  # numbers that stand beside a size
    case("length-of-tube", "22.2 dia, 0.8 wall tube on a 90 mm radius; is 410 mm of tube too short? All mm.", mm("22.2", "0.8", "90")),
    case("hoop-outside", "Tube fi 40 x 3 mm, radius 160 mm, so the outside of the hoop is 360 mm.", mm("40", "3", "160")),
    case("wall-factor", "25.4 x 0.71 mm, CLR 50.8 mm. Wall factor is about 36.", mm("25.4", "0.71", "50.8")),
    case("gap-to-the-wall", "1.75 x .095 wall, 5.25 CLR. The gap to the wall is 1-1/2 in.", _SIZE),
    case("cut-to", "1.75 x .095 wall, 5.25 CLR, ends are cut to 14-1/2 in and 22 in.", _SIZE),
    case("inside-as-preposition", "A mandrel to go inside 1.75 x .095, 5.25 CLR", _SIZE),
    case("four-inch-machine", '1.75 x .095 wall, 5.25 CLR. It is for the 4" machine.', _SIZE),
    case("old-mandrel", "Der alte Dorn hat 26,6 mm Durchmesser. Rohr 30 x 1,5 mm, Radius 75 mm.", mm("30", "1.5", "75")),
    case("old-one-is-the-tube", "We want another mandrel, the old one was 1.75 x .095 on a 5.25 CLR.", _SIZE),
    case("enquiry-number", "ENQ/26/0931: tube 60.3 x 3.9 mm, radius 180 mm", mm("60.3", "3.9", "180")),
    case("line-number", "Line 001\nTube 44.5 mm OD x 1.5 mm wall, CLR 67 mm", mm("44.5", "1.5", "67")),
]  # fmt: skip
