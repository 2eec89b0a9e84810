"""A bend given by what is measured across it; figures that measure no tube; the other unit.

Across a bend: the centreline radius is half of what lies between the middles, half of (inside + OD),
half of (outside - OD).
"""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from .support import case, inch, mm

ACROSS = [
    case("legs-inside", "Tube 18 x 1 mm. We bend U-shapes, the distance between the legs inside is 72 mm.", mm("18", "1", "45")),
    case("legs-gap", "Steel tube Ø20 x 1.5 mm, bent 180 degrees, gap between the legs 80 mm.", mm("20", "1.5", "50")),
    case("legs-clear", "U-bends 1 x .065, 2 inch clear between the legs", inch("1", "0.065", "1.5")),
    case("legs-outside", "U-bends 1 x .065, 7 inches outside to outside of the legs", inch("1", "0.065", "3")),
    case("legs-de-clear", "Rohr 20 x 1,5 mm, U-Bogen, lichter Abstand der Schenkel 80 mm", mm("20", "1.5", "50")),
    case("legs-de-outside", "Rohr 20 x 1,5 mm, U-Bogen, Abstand der Schenkel außen 120 mm", mm("20", "1.5", "50")),
    case("legs-de-middle", "Rohr 20 x 1,5 mm, U-Bogen, Mitte-Mitte 100 mm", mm("20", "1.5", "50")),
    case("legs-fr", "Tube 20 x 1,5 mm, coude en U, écartement intérieur des branches 80 mm", mm("20", "1.5", "50")),
    case("legs-it", "Tubo 20 x 1,5 mm, curva a U, distanza interna tra i rami 80 mm", mm("20", "1.5", "50")),
    case("legs-es", "Tubo 20 x 1,5 mm, curva en U, separación entre ramas por dentro 80 mm", mm("20", "1.5", "50")),
    case("legs-nl", "Buis 20 x 1,5 mm, U-bocht, afstand tussen de benen binnenwerks 80 mm", mm("20", "1.5", "50")),
    case("legs-unsaid", "Tube 20 x 1.5 mm, U-bend, distance between the legs 80 mm", mm("20", "1.5", "50", "clr")),
    case("loop-middles", "The tube is 19 mm across and 1 mm thick. The loop measures 120 mm from the middle of the tube on one side to the middle of the tube on the other.", mm("19", "1", "60")),
    case("ring-across-middles", "Tube 19 x 1 mm. The ring is 120 mm across, centre of tube to centre of tube.", mm("19", "1", "60")),
    case("ring-outside", "Tube 19 x 1 mm. Ring outside diameter 239 mm.", mm("19", "1", "110")),
    case("ring-inside", "Tube 19 x 1 mm bent into a ring with 241 mm inside diameter", mm("19", "1", "130")),
    case("ring-of", "The outside diameter of the ring has to be 8 inches, tube 1/2 x .035", inch("0.5", "0.035", "3.75")),
    case("coil-colon", "Coil: inside diameter 150 mm, tube 10 x 1 mm", mm("10", "1", "80")),
    case("ring-sign", "Tube Ø25 x 1.5 mm. Ring inside Ø240.", mm("25", "1.5", "132.5")),
    case("bend-dia", "28 x 1.5 mm tube. The bend should have a diameter of 140 mm.", mm("28", "1.5", "70", "clr")),
    case("bend-dia-de", "Rohr 28 x 1,5 mm. Der Bogen soll einen Durchmesser von 140 mm haben.", mm("28", "1.5", "70", "clr")),
    case("bend-dia-fr", "Tube 28 x 1,5 mm. Le cintre doit avoir un diamètre de 140 mm.", mm("28", "1.5", "70", "clr")),
    case("bend-dia-nl", "Buis 28 x 1,5 mm. De bocht moet een diameter van 140 mm hebben.", mm("28", "1.5", "70", "clr")),
    case("bend-dia-inside", "28 x 1.5 mm. The bend needs an inside diameter of 140 mm.", mm("28", "1.5", "84")),
    case("bend-dia-inside-de", "Rohr 20 x 1,5 mm, Biegedurchmesser innen 100 mm", mm("20", "1.5", "60")),
    case("half-circle-inside", 'A half circle of 12" inside, tube 1 x .065', inch("1", "0.065", "6.5")),
    case("u-overall", "25 x 1.5 mm. U-bend, 200 mm overall.", mm("25", "1.5", "87.5", "clr")),
    case("u-outside", "25 x 2 mm tube, a U of 200 mm outside to outside", mm("25", "2", "87.5")),
    case("pulley", 'We bend 1/2 x .035 round a 6" diameter pulley.', inch("0.5", "0.035", "3.25", "clr")),
    case("groove-bottom", "28 x 1.5 mm, former is 140 mm dia at the bottom of the groove", mm("28", "1.5", "84")),
    case("throat", "28 x 1.5 mm, throat radius 70 mm", mm("28", "1.5", "84")),
    case("heel", "28 x 1.5 mm, heel radius 98 mm", mm("28", "1.5", "84")),
    case("plywood-form", "1.315 OD, .083 wall, I got an 18 inch radius form made of plywood", inch("1.315", "0.083", "18", "clr")),
    case("buck", "28 x 1.5 mm, we bend over a 70 mm radius buck", mm("28", "1.5", "70", "clr")),
]  # fmt: skip

NOT_ACROSS = [  # near misses: another thing's legs, the tube's own diameter
    case("table-legs", "Table legs stand 24 inches apart. Tube 1-1/2 x .065, 4.5 CLR.", inch("1.5", "0.065", "4.5")),
    case("legs-with-radius", "Chair: 25 x 1.5 mm, bends R 70, distance between the legs 420.", mm("25", "1.5", "70")),
    case("legs-long", "22mm OD 1.0mm wall. Legs are 88mm apart centre to centre and 600 long, 180 return bends.", mm("22", "1", "44")),
    case("u-wide-with-radius", "The U is 600 wide, tube 25 x 1.5 mm, CLR 75 mm.", mm("25", "1.5", "75")),
    case("hoop-wide", "Main hoop is 48 inches wide, tube 1.75 x .095, 6 inch CLR.", inch("1.75", "0.095", "6")),
    case("between-bends", "Distance between the bends 300 mm, tube 25 x 1.5 mm.", mm("25", "1.5", None)),
    case("ring-of-tube", "The ring is made of 28 mm diameter tube, 1.5 wall, CLR 84.", mm("28", "1.5", "84")),
    case("hoops-of-dia", "Hoops of 28 mm diameter, 1.5 wall, CLR 84.", mm("28", "1.5", "84")),
    case("bends-of-dia", "Bends of 1-1/2 dia x .065 on a 4.5 CLR.", inch("1.5", "0.065", "4.5")),
    case("legs-are-tube", "Legs are 1.25 x .065 with 4 inch clr.", inch("1.25", "0.065", "4")),
    case("die-radius", "28 x 1.5 mm, bend die radius 70 mm", mm("28", "1.5", "70")),
]  # fmt: skip

BANDS = [  # what a tube measures is no two sizes
    case("band-of-fraction", "5/8 x .028 on 1.25 CLR. The tube measures .624 to .626.", inch("0.625", "0.028", "1.25")),
    case("band-slash", "5/8 x .028 on 1.25 CLR. OD runs .6245/.6255.", inch("0.625", "0.028", "1.25")),
    case("bands-mm", "25.4 x 1.65, CLR 76.2 mm. OD measured 25.35-25.45, wall 1.60-1.70.", mm("25.4", "1.65", "76.2")),
    case("band-of-wall", "2 x .120, CLR 6. The wall varies from .116 to .124 around the tube.", inch("2", "0.120", "6")),
    case("band-de", "Rohr 30 x 2 mm, Radius 90 mm. Gemessen 29,95 bis 30,05.", mm("30", "2", "90")),
    case("band-alone", "OD 1.498-1.502, wall .065, CLR 4.5", inch("1.5", "0.065", "4.5")),
    case("worn-mandrel", "Our mandrel is worn to 1.360, need a new one for 1.5 x .065 on 4.5 CLR.", inch("1.5", "0.065", "4.5")),
    case("worn-down-to", "Old mandrel is down to 1.352 dia. New one for 1.5 x .065 on 4.5 CLR.", inch("1.5", "0.065", "4.5")),
    case("two-walls", "We run .058 to .065 wall on 1.5 OD, 4.5 CLR.", inch("1.5", "0.058", "4.5", "wall"), inch("1.5", "0.065", "4.5", "wall")),
    case("two-near-ods", "1.500 and 1.505 OD (chromed), .065 wall, 4.5 CLR.", inch("1.5", "0.065", "4.5"), inch("1.505", "0.065", "4.5")),
]  # fmt: skip

OTHER_UNIT = [  # stock in one unit and no tube in the other needs no question
    case("inch-od-in-mm", "Tube 38.1 x 3.0, 4 1/2 inch CLR.", mm("38.1", "3", "114.3")),
    case("metric-tube", 'Tube 25 x 2, 3" radius.', mm("25", "2", "76.2")),
    case("metric-wall", '1 7/8 (47.6mm) x 1.6 wall, 5" CLR.', mm("47.625", "1.6", "127")),
    case("inch-tube", "Tube 1.75 x .095, 133 mm radius.", mm("44.45", "2.413", "133")),
    case("radius-asked", "Tube 38 x 1.5, 4.5 CLR.", mm("38", "1.5", "114.3", "clr")),
    case("whole-wall-asked", '2" x 2 wall, 6" CLR.', mm("50.8", "2", "152.4", "wall")),
    case("sides-asked", '2" x 1.5, 6" CLR.', mm("50.8", "1.5", "152.4", "wall shape")),
    case("two-units-asked", "OD 1.625, wall 1.65, CLR 63.5 mm.", mm("41.275", "1.65", "63.5", "od wall")),
]  # fmt: skip

NO_TUBE = [
    case("cart", 'Handle is 1" x .065 with a 3 inch clr. Cart is 48 x 24.', inch("1", "0.065", "3")),
    case("gate", "Gate is 120 x 48 overall, tube 1-5/8 x .065, 6 inch radius.", inch("1.625", "0.065", "6")),
    case("bench-three", "Our bench is 48 x 24 x 36 tall, tube 1.5 x .065, 4.5 CLR.", inch("1.5", "0.065", "4.5")),
    case("gestell", "Das Gestell ist 800 x 600, Rohr 25 x 1,5 mm, Radius 75 mm.", mm("25", "1.5", "75")),
    case("tables-are-tube", "The tables are 30 x 2 and 25 x 2 mm tube, R 75.", mm("30", "2", "75"), mm("25", "2", "75")),
    case("thousand-pieces", "Tube 33.7 x 2.6 mm, radius 70 mm. The tubes are 1.200 pieces per year.", mm("33.7", "2.6", "70")),
    case("thousand-tubes", "We bend 2.500 tubes per month. Tube 33.7 x 2.6 mm, CLR 70.", mm("33.7", "2.6", "70")),
    case("thousand-de", "1.200 Rohre im Jahr. Rohr 33,7 x 2,6 mm, Radius 70.", mm("33.7", "2.6", "70")),
    case("inch-tubes", "1.500 tubes, .065 wall, 4.5 CLR.", inch("1.5", "0.065", "4.5")),
    case("called-by-wall", "Would the 2 mm one run in the 1.2 tube? Mandrel for 38 x 1.2, CLR 76 mm.", mm("38", "1.2", "76")),
    case("serves-wall", "Does a mandrel for .065 work in .049 tube? I need one for 1.5 x .065 on 4.5 CLR.", inch("1.5", "0.065", "4.5")),
    case("wall-wanted-too", "Mandrel for 1.5 x .065 on 4.5 CLR and one for the .083 tube.", inch("1.5", "0.065", "4.5"), inch("1.5", "0.083", "4.5")),
]  # fmt: skip

WRITTEN = [
    case("od-over-bore", "tube 20/16, bending radius 60 mm", mm("20", "2", "60")),
    case("od-over-bore-near", "Rohr 18/16 mm, R 54 mm", mm("18", "1", "54")),
    case("down-to", "We want to go down to .058 wall on the same die, 1 OD, 3 CLR.", inch("1", "0.058", "3")),
    case("up-to-from", "Need to go up to .095 wall from .065. Tube 1.5 OD, 4.5 CLR.", inch("1.5", "0.095", "4.5")),
    case("as-low-as", "We want to go as low as 3 inch CLR with 1.5 x .065.", inch("1.5", "0.065", "3", "clr")),
    case("lines-on", "All 16 gauge:\n\n1-1/2 on a 2-1/4 CLR\n2 on 3\n2-1/2 on 3-3/4", inch("1.5", "0.065", "2.25"), inch("2", "0.065", "3"), inch("2.5", "0.065", "3.75")),
    case("lines-at", ".065 wall:\n1.5 @ 4.5 CLR\n1.75 @ 5.25", inch("1.5", "0.065", "4.5"), inch("1.75", "0.065", "5.25")),
    case("lines-auf", "Wand 2 mm:\n30 auf 90\n40 auf 120", mm("30", "2", "90"), mm("40", "2", "120")),
    case("star-marks", "25.4 x 2.0, CLR 100\n* 38.1 x 1.6, CLR 90\n50.8 x 2.5, CLR 200", mm("25.4", "2", "100"), mm("38.1", "1.6", "90"), mm("50.8", "2.5", "200")),
    case("tube-not-pipe", "1-1/2 OD tube? It's sch 40 right? No. It's tube not pipe, mic says 1.500. Wall .125, 6 CLR.", inch("1.5", "0.125", "6")),
    case("pipe-measured", "1-1/2 pipe, .125 wall, 6 CLR. Calipers say 1.500.", inch("1.5", "0.125", "6")),
    case("die-says", '2" OD, 1.5 mm wall, and the die says 4" on it, centre line.', mm("50.8", "1.5", "101.6")),
    case("die-says-bare", '2" OD, 1.5 mm wall, die marked 4 in.', mm("50.8", "1.5", "101.6", "clr")),
    case("pipe-thin", '1-1/2" pipe, .065 wall, 4" radius', inch("1.5", "0.065", "4", "od")),
    case("but-not-now", "Tubo 28 x 1,5 mm, raggio medio 90 mm. Più avanti anche 32 x 1,5 ma per ora no.", mm("28", "1.5", "90")),
]  # fmt: skip

FAMILIES = (ACROSS, NOT_ACROSS, BANDS, OTHER_UNIT, NO_TUBE, WRITTEN)
