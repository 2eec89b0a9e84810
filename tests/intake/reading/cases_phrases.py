"""What a whole phrase says of a figure; lists below each other; and near misses of both."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from .support import case, inch, mm

_SIZE = inch("1.75", "0.095", "5.25")

LEGS = [  # the legs of a half circle lie two centreline radii apart
    case("legs-apart", "7/8 OD x .065 brass. A full 180, the two legs end up 8 inches apart, centre to centre.", inch("0.875", "0.065", "4")),
    case("legs-distance", "Tube 16 x 1 mm. U-bends of 180 degrees, distance between the two straight legs\nis 76 mm from centre to centre.", mm("16", "1", "38")),
    case("legs-fr", "tube acier 26,9 x 2,3, cintrage à 180°, entraxe des deux branches 108 mm", mm("26.9", "2.3", "54")),
    case("legs-de", "Rohr 22 x 1,5 mm, 180°-Bogen, Abstand der Schenkel von Mitte zu Mitte 90 mm", mm("22", "1.5", "45")),
    case("legs-es", "tubo 25 x 1,5 mm, curva de 180°, distancia entre ejes de las dos ramas 100 mm", mm("25", "1.5", "50")),
    case("legs-on-centers", '1" x 16ga, bent on 2-1/2" centers (180 return)', inch("1", "0.065", "1.25")),
    case("legs-length", "1.75 x .095 wall, 5.25 CLR. The legs are 8 inches and 12 inches.", _SIZE),
    case("holes-centre-to-centre", "1.75 x .095 wall, 5.25 CLR. Bolt holes are 4 inches centre to centre.", _SIZE),
    case("centre-of-tube", "arms are brass tube, .500 outside, .035 wall, a radius of 1.25 (centre of tube). All inches.", inch("0.5", "0.035", "1.25")),
    case("centreline-per-leg", "25.4mm x 1.5mm ERW, Bend: 75mm centre line radius, 2 bends of 90 degrees per leg", mm("25.4", "1.5", "75")),
]  # fmt: skip

BORES = [
    case("bore-on-the-inside", "It is an inch and three-eighths on the inside and the wall is a sixteenth. CLR 4-1/2 in.", inch("1.5", "0.0625", "4.5")),
    case("bore-innen", "Rohr ist aussen 28 und innen 25 mm, Radius 70 mm Mitte", mm("28", "1.5", "70")),
    case("bore-es", "Tubo de diámetro exterior 50 mm e interior 46 mm, radio 150 mm al eje", mm("50", "2", "150")),
    case("bore-bracket", "buis Ø30/Ø26 mm (buiten/binnen), buigstraal 90 mm hart", mm("30", "2", "90")),
    case("bore-fr", "tube cuivre 12/14 mm (intérieur/extérieur), 35 mm de rayon à la fibre neutre", mm("14", "1", "35")),
    case("bore-contradicts", "Rohr 42,4 x 2 mm (innen gemessen 37,8 mm), Biegeradius 85 mm Rohrmitte", mm("42.4", "2", "85", "wall")),
    case("inside-of-tube", "tooling for the inside of 63.5 x 1.5 mm tube on a 95 mm centreline radius", mm("63.5", "1.5", "95")),
    case("radius-on-the-inside", "1.5 x .065 tube, bend radius 3 inches on the inside", inch("1.5", "0.065", "3.75")),
]  # fmt: skip

NO_PART_OF_IT = [
    case("machine-good-to", "Machine is good to 2-3/8. 1.75 x .095 wall, 5.25 CLR.", _SIZE),
    case("machine-takes", "We have a bender for tube to 60 mm and want to bend 40 x 2 mm, radius 80 mm mid.", mm("40", "2", "80")),
    case("machine-rated", 'Bender is rated 2-1/2" x .188. The job: 1.75 OD, .095 wall, 5.25 CLR.', _SIZE),
    case("from-the-end", '1.75 x .095 wall, bend starts 6" from the end, 5.25 CLR', _SIZE),
    case("length-third", 'The arm is 1" x .065" x 24" brass tube, on a 3" center line radius.', inch("1", "0.065", "3")),
    case("overall", '1.75 x .095 wall, 5.25 CLR. Overall 48" x 36".', _SIZE),
    case("table-top", "32 x 1.5 mm, radius 80 mm to the centre line. Table top is 1600 x 900.", mm("32", "1.5", "80")),
    case("box", "1.75 x .095 x 5.25 CLR. My shipping box limit is 24 x 6 x 6.", _SIZE),
    case("washers-in-list", "1. bending mandrel, tube 28 x 1.5 mm, R 70 (centre)\n2. washers 30 mm OD x 2 mm thick", mm("28", "1.5", "70")),
    case("so-many-at", "1.75 x .095 wall, 5.25 CLR, 45 at 90 deg and 15 at 30 deg", _SIZE),
    case("places", "1.75 x .095 wall, 5.25 CLR, 12 places", _SIZE),
    case("of-these", "1.75 x .095 wall, 5.25 CLR. I make about 40 of these a year.", _SIZE),
    case("sum", "OD 3.000, (3.000 - 2.870)/2 = .065 wall, CLR 4.5", inch("3", "0.065", "4.5")),
    case("ratio", "3.000 OD, .065 wall, so 3.000/.065 = 46. 4.5 CLR", inch("3", "0.065", "4.5")),
    case("mill-certs", "1.75 OD, .095 nominal wall (mill certs run .091 to .098), 5.25 CLR", _SIZE),
    case("stock-bars-it", "tubo Ø 30x2 mm, raggio medio 90 mm. Tubo in barre da 6 m.", mm("30", "2", "90")),
    case("da-capital", "Da 38 mm, s = 1,5 mm, R 57 mm", mm("38", "1.5", "57")),
    case("buyer-code", '1.75" x .095" W, 5.25" CLR. Buyer code D4, dock 3.', _SIZE),
    case("never-mind", "1.75 x .095, never mind the 6, the die is 5.25 CLR", _SIZE),
    case("have-and-need", "HAVE:\n  1.500 x .095   4.5 CLR\n  2 x .120   6 CLR\n\nNEED:\n  1.75 x .095   5.25 CLR", _SIZE),
    case("owned-die-and-mandrel", "1.75 x .095. I've got a 4.5 die with the mandrel already. Adding a 5.25 CLR die.", _SIZE),
]  # fmt: skip

BELOW_EACH_OTHER = [
    case("ods-below", "All 16 ga:\n\n2-1/4\n2-1/2\n3\n\nall of them on 6 inch CLR", inch("2.25", "0.065", "6"), inch("2.5", "0.065", "6"), inch("3", "0.065", "6")),
    case("ods-below-mm", "1.0 mm wall throughout, in these diameters:\n\n- 8 mm\n- 10 mm\n- 12 mm\n\nCentreline radius always 3 x the OD", mm("8", "1", "24"), mm("10", "1", "30"), mm("12", "1", "36")),
    case("three-answers", "1.75\n.095\n5.25", _SIZE),
    case("ods-in-words", "I run three tubes: inch and a quarter, inch and a half, and inch and three-quarters. All .065 wall on a 6 inch CLR.", inch("1.25", "0.065", "6"), inch("1.5", "0.065", "6"), inch("1.75", "0.065", "6")),
    case("tubes-in-words-far", "I run two tubes on the light bars: inch and a quarter and inch and a half. All of em .065 and all of em get bent at 3D.", inch("1.25", "0.065", "3.75"), inch("1.5", "0.065", "4.5")),
    case("exception-is-doubted", 'Wall is .095 on everything except the 2", that one is .120. Center line 6" across the board.\n\nODs: 1.5, 2', inch("1.5", "0.095", "6", "wall"), inch("2", "0.095", "6", "wall")),
    case("ods-are", '6061-T4, 1/8" wall, 4-1/2" centerline. ODs are 1-1/4 and 1-1/2.', inch("1.25", "0.125", "4.5"), inch("1.5", "0.125", "4.5")),
    case("letters-as-heads", "No.  D       s      R      pcs\n1    21.3    2.0    45     1\n2    48.3    2.6    150    2\nAll in mm.", mm("21.3", "2", "45"), mm("48.3", "2.6", "150")),
    case("letters-only", "D     s     R\n16    1,0   32\n22    1,5   44\nAngaben in mm", mm("16", "1", "32"), mm("22", "1.5", "44")),
    case("columns", "OD      1.500   1.750\nWall    .083    .095\nCLR     4.5     5.25", inch("1.5", "0.083", "4.5"), _SIZE),
    case("head-over-two-units", "Line\tOD\t\tWall\t\tCLR\t\nLine\tin\tmm\tin\tmm\tin\tmm\n1\t0.625\t15.875\t0.049\t1.2446\t1.875\t47.625", inch("0.625", "0.049", "1.875")),
    case("head-over-two-units-cut", "OD\t\tWall\t\tCLR\nin\tmm\tin\tmm\tin\tmm\n1\t25.4\t0.065\t1.651\t2.5\t63.5", inch("1", "0.065", "2.5")),
    case("in-that-order", "1-1/2, 1-5/8 and 1-3/4 OD, .095 wall. My dies in that order are 4.5, 5 and 5.25 centerline.", inch("1.5", "0.095", "4.5"), inch("1.625", "0.095", "5"), _SIZE),
]  # fmt: skip

STRAGGLERS = [  # the words that would rule them out are in no list of ours
    case("straggler", "1.75 OD x .095 wall, 5.25 CLR. The hutch is 4 x .5 all round.", _SIZE, inch("4", "0.5", None, "od wall")),
    case("no-straggler", "1.5 and 1.75 x .095, both on a 5.25 CLR", inch("1.5", "0.095", "5.25"), _SIZE),
]  # fmt: skip

FROM_AFAR = [
    case("limit-can-be", "1.75 OD, .095 wall, and the bend radius can be no more than 5.25 inches because of the caster.", inch("1.75", "0.095", "5.25", "clr")),
    case("limit-es", "tubo 60,3 x 2 mm. El radio no puede pasar de 120 mm. Es radio al eje.", mm("60.3", "2", "120", "clr")),
    case("given-with-de", "Dorn für 25 x 2 mm. Den Radius (Rohrmitte) hat der Kunde mit 62,5 mm angegeben.", mm("25", "2", "62.5")),
    case("wall-perhaps", "Tube 25.0 mm OD, CLR 62.5 mm. The wall I can't measure, the ends are welded, I think it's 1.5 mm but could be 1.2.", mm("25", "1.5", "62.5", "wall")),
    case("wall-maybe-nl", "buis 25 mm, ik denk dat de wanddikte 2 mm is maar misschien is het 1,5. straal 75 mm hart", mm("25", "2", "75", "wall")),
    case("asse", "tubo 28,6 x 0,8 mm. Raggio 140 in asse.", mm("28.6", "0.8", "140")),
    case("all-asse", "tubo Ø33,7 sp. 2,6 mm\nraggio di curvatura all'asse 100 mm", mm("33.7", "2.6", "100")),
    case("butted", "Butted main tube, 31.8 mm, 0.9/0.6/0.9. CLR 160 mm, 4130", mm("31.8", "0.9", "160", "wall")),
    case("about-nl", "buis 40 mm, wanddikte ongeveer 3 mm, straal 200 mm hart", mm("40", "3", "200", "wall")),
    case("in-material", "kart frames, 30mm x 2 in 25CrMo4, R 90 mm", mm("30", "2", "90")),
    case("in-both", "25 mm OD. Wall 1.5 in both bends, radius 50 mm centre", mm("25", "1.5", "50")),
    case("point-ends-sentence", "Mandrel for swingarm legs. The tube is 1-3/8 4130, .083 wall, CLR 4-1/8.", inch("1.375", "0.083", "4.125")),
    case("square-taken-back", '1-1/2" x .120 square?? no, round. CLR 5-1/2".', inch("1.5", "0.12", "5.5")),
    case("without-the-oval", "10 mm OD, 1.0 mm wall, 25 mm centerline radius without the oval look", mm("10", "1", "25")),
]  # fmt: skip
