"""Inch sizes as they are written and spoken in the US, gauges, pipe, and the ways to give a radius."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from .support import case, inch, mm

SLANG = [
    case("spoken", "Need a mandrel for inch and three quarter tube, ninety five wall, five and a quarter radius.", inch("1.75", "0.095", "5.25")),
    case("by-one-twenty", "inch and a half by one twenty wall DOM on a six inch radius", inch("1.5", "0.12", "6")),
    case("oh-eighty-three", "two inch OD, oh eighty three wall, 304, six inch clr", inch("2", "0.083", "6")),
    case("no-separator", "1-3/4 .095 DOM on a 5-1/4 CLR", inch("1.75", "0.095", "5.25")),
    case("wall-first-thousandths", "120 wall 1-1/2 DOM, 4.5 radius", inch("1.5", "0.12", "4.5")),
    case("sixteen-gauge-words", "an inch and a quarter OD, sixteen gauge, on a 3-3/4 radius", inch("1.25", "0.065", "3.75")),
    case("seven-eighths", "seven eighths OD x .049 wall, three inch clr", inch("0.875", "0.049", "3")),
    case("exhaust", "2 1/2 inch sixteen gauge tube on a four inch CLR", inch("2.5", "0.065", "4")),
    case("thou-and-3d", "three inch OD tube, sixty five thou wall, 3D bend", inch("3", "0.065", "9")),
    case("eighths-suffix", "5/8ths OD, .049 wall, 2in centerline radius", inch("0.625", "0.049", "2")),
    case("inch-and-fraction", "inch-and-5/8 x .083 4130 on a 4-7/8 clr", inch("1.625", "0.083", "4.875")),
    case("marks", '1" OD 0.065" wall 3" bend radius', inch("1", "0.065", "3")),
    case("curly-marks", "1.25” x .095” wall, 4” CLR", inch("1.25", "0.095", "4")),
    case("double-prime", "1½″ x .120″, 4½″ CLR", inch("1.5", "0.12", "4.5")),
    case("fraction-sign-with-space", "1 ½ x .083 wall, 4 ½ clr", inch("1.5", "0.083", "4.5")),
    case("half-inch", "half inch tube, .035 wall, inch and a half radius", inch("0.5", "0.035", "1.5")),
    case("and-fraction", "1 and 3/4 od, .134 wall, 7 clr", inch("1.75", "0.134", "7")),
    case("quarter-inch", "quarter inch OD x .028 wall 316, 9/16 radius", inch("0.25", "0.028", "0.5625")),
    case("wall-an-eighth", "1.625 OD, wall is an eighth, radius six inches", inch("1.625", "0.125", "6")),
    case("two-and-a-quarter", "Tube is 2 and a quarter OD, wall .120, clr 8", inch("2.25", "0.12", "8")),
    case("rad", "1-7/8 x 95 thou wall x 6 rad", inch("1.875", "0.095", "6")),
    case("dotted-clr", '3/4" x 18 GA on 2-1/4" C.L.R.', inch("0.75", "0.049", "2.25")),
    case("leading-zero-only", "OD 1 1/2, wall 083, CLR 4.5", inch("1.5", "0.083", "4.5")),
    case("glued", 'Looking for a 1.75x.120 mandrel, 7"clr', inch("1.75", "0.12", "7")),
    case("slashed-od", "3/16 O/D x .028 wall, 1/2 inch radius", inch("0.1875", "0.028", "0.5")),
    case("hyphen-inch", "1-1/2-inch OD by .065-inch wall, 4-1/2-inch center line radius", inch("1.5", "0.065", "4.5")),
    case("inch-mark-inside", '1" 3/4 od x .095 wall, 5" 1/4 clr', inch("1.75", "0.095", "5.25")),
    case("line-break-in-fraction", "OD is 1-\n1/8\", wall .065, clr 3.5", inch("1.125", "0.065", "3.5")),
    case("dia", "2 dia tube .083 thick, radius of eight inches", inch("2", "0.083", "8")),
    case("no-radius", "Do you have a mandrel for 1.75 x .095?", inch("1.75", "0.095")),
    case("no-wall", 'What would a mandrel for 2" OD tube on an 8" CLR cost?', inch("2", None, "8")),
    case("only-od", "Can you make a mandrel for 1-5/8 OD tubing?", inch("1.625")),
    case("thin-wall-has-no-number", '2-1/2" OD thin wall stainless, 3-3/4" CLR', inch("2.5", None, "3.75")),
    case("upper-case", "NEED MANDREL 1.500 OD X .065 WALL X 4.500 CLR", inch("1.5", "0.065", "4.5")),
    case("clr-first", "an 8 inch CLR bend on some 3/4 x .120", inch("0.75", "0.12", "8")),
    case("radius-first-in-tube", "90 degree bends, 1 inch radius, in 5/16 tube, .028 wall", inch("0.3125", "0.028", "1")),
    case("improper-fraction", '9/8" OD x .065 wall, 3-1/2 clr', inch("1.125", "0.065", "3.5")),
    case("trailing-zeros", "1.7500 OD x 0.0950 wall x 5.2500 CLR", inch("1.75", "0.095", "5.25")),
]  # fmt: skip

CHAINS = [
    case("three-x", "Mandrel for 1.75 x .095 x 5.25 clr please", inch("1.75", "0.095", "5.25")),
    case("capital-x", "1-3/4 X .095 X 5-1/4 CLR", inch("1.75", "0.095", "5.25")),
    case("asterisk", "2.0*0.065*4.0R", inch("2", "0.065", "4")),
    case("times-sign", "1.5×.083×4.5 CLR", inch("1.5", "0.083", "4.5")),
    case("slashes-labelled", "1.500 OD / .095 wall / 6 CLR", inch("1.5", "0.095", "6")),
    case("legend-after", "1.75, .095, 5.25 (OD, wall, CLR)", inch("1.75", "0.095", "5.25")),
    case("legend-before", "OD / wall / CLR: 1.5 / .065 / 4.5", inch("1.5", "0.065", "4.5")),
    case("legend-x", "OD x wall x CLR = 1.5 x .065 x 4.5", inch("1.5", "0.065", "4.5")),
    case("length-not-radius", '1" x .065 x 24" long, 304', inch("1", "0.065")),
    case("feet-not-radius", "1.5 x .095 x 20 ft DOM sticks, 6 clr", inch("1.5", "0.095", "6")),
    case("grade-first", '6061T6 2" OD .135 wall, 6" CLR', inch("2", "0.135", "6")),
    case("grade-runs-in", '6063 1 1/2" x .125 wall alu, 4.5 clr', inch("1.5", "0.125", "4.5")),
    case("material-between", '1.125" 6061T6 .125" wall, 4" CLR', inch("1.125", "0.125", "4")),
    case("grade-after", "1.75\" .035\" 321 stainless, 3.5\" CLR", inch("1.75", "0.035", "3.5")),
    case("rectangle", "2 x 1 x .083 rectangular tube, 6 clr", inch(None, "0.083", "6", shape="rectangular")),
    case("square", "1-1/2 x 1-1/2 x .120 square tube, 6\" CLR", inch(None, "0.12", "6", shape="square")),
    case("square-one-side", "2 in square tube, .120 wall, 8 in CLR", inch(None, "0.12", "8", shape="square")),
    case("at-sign", "1.5 x .065 @ 4.5 CLR", inch("1.5", "0.065", "4.5")),
    case("dashes-as-separators", "1.5 OD - .065 wall - 4.5 CLR", inch("1.5", "0.065", "4.5")),
    case("colon-fields-one-line", "OD: 1.5 WALL: .065 CLR: 4.5 MATL: 304", inch("1.5", "0.065", "4.5")),
    case("equals-fields", "OD=1.5, WT=.065, CLR=4.5", inch("1.5", "0.065", "4.5")),
]  # fmt: skip

# BWG in inches: 11 .120, 12 .109, 14 .083, 16 .065, 18 .049, 20 .035, 22 .028 (gauge.csv)
GAUGES = [
    case("ga", "1-1/2 x 16 ga, 4.5 clr", inch("1.5", "0.065", "4.5")),
    case("ga-glued", "1.5x16ga 304 on 4.5 CLR", inch("1.5", "0.065", "4.5")),
    case("gage", "2 inch 14 gage 304L at 4 inch CLR", inch("2", "0.083", "4")),
    case("hyphen", "1-3/4 OD 11-gauge DOM, 7 clr", inch("1.75", "0.12", "7")),
    case("g", "1 1/4 od 14g, 3.75 clr", inch("1.25", "0.083", "3.75")),
    case("bwg-after", "7/8 OD 18 BWG, 2-5/8 clr", inch("0.875", "0.049", "2.625")),
    case("bwg-before", "7/8 OD, BWG 18, 2-5/8 clr", inch("0.875", "0.049", "2.625")),
    case("same-value-twice", "1-1/2 OD 16 gauge (.065), 4.5 clr", inch("1.5", "0.065", "4.5")),
    case("value-then-gauge", "1-1/2 OD x .065 (16 ga) wall, 4.5 clr", inch("1.5", "0.065", "4.5")),
    case("swg", "1 inch OD x 18 swg, 3 inch radius", inch("1", "0.048", "3")),
    case("swg-22", "3/4 OD tube 22 SWG, 2-1/4 clr", inch("0.75", "0.028", "2.25")),
    case("gauge-first", "16 gauge by 1 3/8 OD, 4 inch clr", inch("1.375", "0.065", "4")),
    case("no-12-gage", "No. 12 gage, 2 inch OD, 6 inch clr", inch("2", "0.109", "6")),
    case("gauge-for-all", "all 18ga: 1-1/2 on 4.5 clr and 1-3/4 on 5.25 clr", inch("1.5", "0.049", "4.5"), inch("1.75", "0.049", "5.25")),
    case("gauge-20-metric-od", "25.4 mm tube, 20 gauge, 76.2 mm CLR", mm("25.4", "0.889", "76.2")),
]  # fmt: skip

# ASME: NPS 1-1/2 is 1.900 x .145 (40), .109 (10); NPS 2 2.375 x .154, .109 (10S), .218 (80);
# NPS 1 1.315 x .133, .179 (80); NPS 1-1/4 1.660 x .140 (std); NPS 3/4 1.050 x .113, .154 (XS)
PIPE = [
    case("sch-40", "1-1/2 sch 40 pipe on a 6 inch CLR", inch("1.9", "0.145", "6")),
    case("sch-dot", '2" Sch. 10 304 pipe, 6" CLR', inch("2.375", "0.109", "6")),
    case("schedule-80", "1 inch schedule 80 pipe, 4 inch radius", inch("1.315", "0.179", "4")),
    case("nps-10s", "NPS 2 sch 10S, 316L, CLR 8 in", inch("2.375", "0.109", "8")),
    case("std", "1-1/4 std pipe, 5 inch clr", inch("1.66", "0.14", "5")),
    case("xs", "3/4 XS pipe, 3 inch clr", inch("1.05", "0.154", "3")),
    case("sch-40-tubing", "1-1/2 sch 40 tubing, 6 clr", inch("1.9", "0.145", "6")),
    case("decimal-name", "1.25 schedule 40 pipe, 5 clr", inch("1.66", "0.14", "5")),
    case("glued-sch40", "2in sch40 A53, 8in clr", inch("2.375", "0.154", "8")),
    case("s40-real-od", "1.900 OD sch 40 handrail pipe, 6 CLR", inch("1.9", "0.145", "6")),
    case("dn-sch", "DN 50 sch 40, R 152 mm", mm("60.325", "3.9116", "152", twin=True)),
    case("dn-wall", "pipe DN40 x 2,6 mm, R 145 mm", mm("48.3", "2.6", "145", twin=True)),
    case("words-forty", "inch and a half schedule forty, six inch clr", inch("1.9", "0.145", "6")),
    case("sch-first", "Schedule 40, 2 inch, on an 8 inch CLR", inch("2.375", "0.154", "8")),
    case("pipe-no-schedule", "2 inch 304 pipe, 6 inch clr", inch("2.375", None, "6", "od")),
    case("black-pipe", '1.5" black pipe on a 6" radius', inch("1.9", None, "6", "od")),
    case("3d-of-pipe", "2 inch sch 40 pipe, 3D bend", inch("2.375", "0.154", "7.125", "clr")),
    case("1.5d-of-pipe", "NPS 3 sch 10, 1.5D", inch("3.5", "0.12", "5.25", "clr")),
    case("tube-called-pipe", "1.75 stainless pipe x .065 wall, 5.25 clr", inch("1.75", "0.065", "5.25")),
    case("copper-trade-size", '1/2" copper water pipe, 2" CLR', inch("0.625", None, "2", "od")),
    case("emt", "3/4 EMT conduit, 4-1/2 inch radius", inch("0.922", None, "4.5", "od")),
    case("copper-od-said", "5/8 OD copper tube x .040 wall, 2 in CLR", inch("0.625", "0.04", "2")),
]  # fmt: skip

RADIUS = [
    case("inside", "2 in OD x .065, inside radius 4 in", inch("2", "0.065", "5")),
    case("inside-of-bend", "1.5 x .095, 4-1/4 inch radius to the inside of the bend", inch("1.5", "0.095", "5")),
    case("outside", "2 in OD x .065, outside radius 7 in", inch("2", "0.065", "6")),
    case("leg-centres", '1" OD x .065 U-bends, 6" center to center', inch("1", "0.065", "3")),
    case("on-centers", "180 deg bends on 3 inch centers, 3/4 x .049 tube", inch("0.75", "0.049", "1.5")),
    case("2d", "2 inch OD x .083 tube, 2D bend", inch("2", "0.083", "4")),
    case("times-od", "1.5 OD x .065, radius is 2 x OD", inch("1.5", "0.065", "3")),
    case("times-in-words", "1.5 OD x .065 wall, bent to three times the tube diameter", inch("1.5", "0.065", "4.5")),
    case("d-with-value", "1.5 OD x .065 tube, 3D (4.5 in) CLR", inch("1.5", "0.065", "4.5")),
    case("d-of-bend-label", "1.5 OD x .065 tube, D of bend 2", inch("1.5", "0.065", "3")),
    case("die-radius", "1.75 x .120 DOM, die radius 5.25", inch("1.75", "0.12", "5.25")),
    case("both-units", '38.1 mm (1-1/2") OD x 1.651 mm (.065") wall, 114.3 mm (4.5") CLR', inch("1.5", "0.065", "4.5")),
    case("bend-radius-of", "1.75 x .095 wall tubing with a bend radius of 5.25 inches", inch("1.75", "0.095", "5.25")),
    case("r-prefix", "1.75 x .095 R5.25", inch("1.75", "0.095", "5.25")),
    case("od-and-id", '2" OD x 1.834" ID, 6" CLR', inch("2", "0.083", "6")),  # (2 - 1.834)/2
    case("od-id-wall", '2" OD x 1.834" ID x .083" wall, 6" CLR', inch("2", "0.083", "6")),
    case("id-and-wall", "ID 1.37, wall .065, CLR 4.5", inch("1.5", "0.065", "4.5")),  # 1.37 + .13
    case("id-od-mix", "1.56 ID 1.75 OD DOM, 5.25 clr", inch("1.75", "0.095", "5.25")),
]  # fmt: skip
