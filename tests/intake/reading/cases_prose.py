"""One to three sizes in running prose: walls first, radii told behind, ODs listed with slashes,
bores beside another's OD, and what is told of beside them."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from .support import case, inch, mm

_A = inch("1.5", "0.065", "4.5")
_B = inch("2", "0.083", "6")
_BOTH = "Need mandrels for 1.5 x .065 on a 4.5 CLR and 2 x .083 on a 6 CLR. "

WALL_FIRST = [
    case("wall-first-second", 'Mandrels for 5/8" 20 gauge and 10 gauge 1-7/8", both at 3-3/4" CLR.', inch("0.625", "0.035", "3.75"), inch("1.875", "0.134", "3.75")),
    case("wall-first-both", 'Mandrels for .120 wall 2" and .065 wall 1.5", 5 CLR on both.', inch("2", "0.12", "5"), inch("1.5", "0.065", "5")),
    case("wall-first-then-times", 'Mandrels for 65 wall 2" and 4" x .109", both 12 centerline radius.', inch("2", "0.065", "12"), inch("4", "0.109", "12")),
    case("wall-first-alone", 'Please quote a mandrel for 10 gauge 1-7/8", 3-3/4" CLR.', inch("1.875", "0.134", "3.75")),
    case("wall-first-on-line", 'Need one for 1 x .049 with a 2 inch clr. And a second one for 16 gauge .875" bent to a 2.25" CLR', inch("1", "0.049", "2"), inch("0.875", "0.065", "2.25")),
    case("wall-of-tube-before", 'Need a mandrel for 1.5" tube, 16 ga 3" CLR', inch("1.5", "0.065", "3")),
    case("opens-behind-also", 'A mandrel for 1.5" .065 wall at a 4.5" CLR. We also need a mandrel for 3.5" .120 wall with a 10.5" radius.', _A, inch("3.5", "0.12", "10.5")),
    case("hoop-and-wall", 'Mandrels for:\nMain hoop: 1.25" .035 wall tube at 4.5 clr\nRear hoop: 2.5 inch 120 wall on a 7.5 radius die', inch("1.25", "0.035", "4.5"), inch("2.5", "0.12", "7.5")),
    case("hoop-and-sign", "Mandrels for:\nFrame: 40 OD 1.6 mm wall, CLR 137\nRear hoop: Ø28 x 2 on a 100 bend radius", mm("40", "1.6", "137"), mm("28", "2", "100")),
    case("lengths-of", "Bought 10 x 10' lengths of 1.25 .065 wall. Need a mandrel to bend it on a 3.75 clr.", inch("1.25", "0.065", "3.75")),
    case("wall-on-two-dies", "Mandrels for .75 inch .049 wall on 1.5 and 2.5 CLR dies.", inch("0.75", "0.049", "1.5"), inch("0.75", "0.049", "2.5")),
    case("od-wall-on-two-dies", "Mandrels for 1.625 OD x .120 wall on 3.25 and 4.25 CLR dies.", inch("1.625", "0.12", "3.25"), inch("1.625", "0.12", "4.25")),
    case("mm-behind-mm", "Mandrels for 45 OD 2.5mm wall and 12mm 1.2mm thick. The first is 90 CLR and the second 40 CLR.", mm("45", "2.5", "90"), mm("12", "1.2", "40")),
    case("pipe-by-chance", "Mandrels for 3-1/2 x .109 on 7 CLR and 4 in OD, .134 wall on 10 CLR", inch("3.5", "0.109", "7"), inch("4", "0.134", "10")),
]  # fmt: skip

RADII_BEHIND = [
    case("onward-bends", "Mandrels for 1.5 x .065 and 2 x .083. The 1.5 inch bends on a 4.5 CLR, the 2 inch on 6.", _A, _B),
    case("onward-is", "Mandrels for 1.5 x .065 and 2 x .083. The 1.5 is 4.5 CLR, the 2 is 6.", _A, _B),
    case("onward-elliptic", "Mandrels for 45 x 2.5 and 51 x 2.5. The 45 gets a 110 radius and the 51 mm a 179 radius.", mm("45", "2.5", "110"), mm("51", "2.5", "179")),
    case("onward-no-count", "Mandrels for 25 OD 2 thick and 22 OD 1.6 thick. The 25 bends on a 75 mm CLR, the 22mm on 74mm.", mm("25", "2", "75"), mm("22", "1.6", "74")),
    case("onward-de", "Dorne für 28 x 1,5 und 35 x 2. Das 28er wird auf Radius 56 gebogen, das 35er auf 70.", mm("28", "1.5", "56"), mm("35", "2", "70")),
    case("onward-two-and-one", "Mandrels for 38/42/45 tube, 2 wall. The 42 and the 45 are 95 clr, the 38 is 80.", mm("38", "2", "80"), mm("42", "2", "95"), mm("45", "2", "95")),
    case("slashes-first-two", "Mandrels for 1.25/1.375/2.5, 12 ga. The first two go on a 2.75 CLR and the last on a 6.25 CLR.", inch("1.25", "0.109", "2.75"), inch("1.375", "0.109", "2.75"), inch("2.5", "0.109", "6.25")),
    case("slashes-last-one", "Mandrels for 38/42/45, all 2 mm wall. First two are 80 CLR, the last one is 95.", mm("38", "2", "80"), mm("42", "2", "80"), mm("45", "2", "95")),
    case("slashes-one-tube", "Need a mandrel for 1.5/.065/4.5", _A),
    case("first-second-told", _BOTH.replace(" on a 4.5 CLR", "").replace(" on a 6 CLR", "") + 'The first is 4.5" CLR and the second 6 CLR. The .75 x .035 is for later.', _A, _B, inch("0.75", "0.035", None, "od wall")),
    case("respectively-wide", "Mandrels for 63.5 mm and 12 mm, both 1.2 mm wall, CLR 160 and 30 respectively.", mm("63.5", "1.2", "160"), mm("12", "1.2", "30")),
    case("respectively-twin", "Mandrels for 45 mm and 22 mm, 2.6 mm wall on both, 160 mm and 45 mm CLR respectively.", mm("45", "2.6", "160"), mm("22", "2.6", "45")),
    case("radius-no-lost-sign", "Mandrels for 1.875 x .120 and 1.125 x .065. The first is 4.75 CLR and the second 4 CLR. We have a mandrel for .75 x .095 already.", inch("1.875", "0.12", "4.75"), inch("1.125", "0.065", "4")),
]  # fmt: skip

BORES_BESIDE = [
    case("bore-then-od", 'A mandrel for .709 ID, .083 wall at 3" centerline radius? The bender does up to 2-1/2 x .188.', inch("0.875", "0.083", "3")),
    case("bore-behind-od", 'Need a mandrel for .805 ID with .035 wall at a 1.75" CLR. Our last order was for 13 ga 2".', inch("0.875", "0.035", "1.75")),
    case("bore-of-the-od", "Need a mandrel for 1.5 x .065 tube on a 4.5 CLR. ID 1.37, wall .065", _A),
    case("od-of-the-bore", "Need a mandrel for .805 ID with .035 wall at a 1.75 CLR. OD is .875", inch("0.875", "0.035", "1.75")),
]  # fmt: skip

TOLD_BESIDE = [
    case("put-off-pushed", "Need a mandrel for 1.5 x .065 on a 4.5 CLR. The 2 x .083 job got pushed to next year.", _A),
    case("put-off-spring", "Need a mandrel for 1.5 x .065 on a 4.5 CLR. Next spring we'll look at 2 x .083 on a 6 CLR.", _A),
    case("put-off-may", "Need a mandrel for 1.5 x .065 on a 4.5 CLR. We may also need one for 2 x .083 next year.", _A),
    case("die-and-wiper", _BOTH + "We already have the bend die and wiper.", _A, _B),
    case("made-another", _BOTH + "You made us a 1.25 mandrel two years ago.", _A, _B),
    case("bike-wheel", "Need a mandrel for 1.5 x .065 on a 4.5 CLR. For a bike frame, 29er.", _A),
    case("er-tube", "Dorn für ein 29er Rohr, Wand 1,5, Radius 60.", mm("29", "1.5", "60")),
    case("both-beside-told", 'Our other plant runs 1-5/8 x .065 on a 3-1/4" radius. Mandrels for 3 in and 2", both .095 wall, radius 7" and 5" respectively?', inch("1.625", "0.065", "3.25", "od wall clr"), inch("3", "0.095", "7"), inch("2", "0.095", "5")),
    case("counted-again", "Mandrels:\n1) 32 x 1.5 on 64 mm CLR\n2) 45 x 3 on 135 mm CLR\nTwo for the 32mm, one for the 45 mm.", mm("32", "1.5", "64"), mm("45", "3", "135")),
]  # fmt: skip

FAMILIES = (WALL_FIRST, RADII_BEHIND, BORES_BESIDE, TOLD_BESIDE)
