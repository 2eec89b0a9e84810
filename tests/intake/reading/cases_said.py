"""What words around a figure say of it: what comes of bending, which of two counts, defaults."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from .support import case, inch, mm

_MM = mm("38", "1.5", "57")
_IN = inch("1.5", "0.065", "3")
_OVAL = mm(None, "2", "120", shape="other")

BENT_OVAL = [  # what becomes of a round tube in bending is no shape of it
    case("oval-becomes", "But now comes 38x1.5 in E355 with R 57 and it becomes oval, 14 %.\n\nPlease offer one mandrel for the 38x1.5.", _MM),
    case("oval-comes-out", "1.5 x .065 on 3 clr comes out oval", _IN),
    case("oval-went", "1.5 x .065 on 3 clr went oval on us", _IN),
    case("oval-turns-a-bit", "1.5 x .065 on 3 clr turns a bit oval", _IN),
    case("oval-de-wird", "38 x 1,5 R 57, wird uns beim Biegen oval, brauche Dorn", _MM),
    case("oval-de-gezogen", "Rohr 38 x 1,5 R 57, ist oval gezogen, brauche Dorn", _MM),
    case("oval-fr", "tube 38 x 1,5 R 57 devient ovale, mandrin svp", _MM),
    case("oval-es", "tubo 38 x 1,5 R 57 queda ovalado", _MM),
    case("oval-it", "tubo 38 x 1,5 R 57 diventa un po' ovale", _MM),
    case("oval-nl", "buis 38 x 1,5 R 57 wordt ovaal", _MM),
    case("oval-tube", "oval tube 60 x 30 x 2, R 120", _OVAL),
    case("oval-tube-bent", "We bend oval tube 60 x 30 x 2, R 120", _OVAL),
    case("oval-tube-gets", "The frame gets an oval tube 60 x 30 x 2, R 120", _OVAL),
    case("oval-tube-es", "tubo ovalado 60 x 30 x 2, R 120", _OVAL),
]  # fmt: skip

ANGLE_BEHIND = [  # the radius stands before its word, the angle of the bend behind it
    case("angle-centerline-90", "tube measures 1.370 inside and the wall is .065 (so one and a half outside). The bend is a 3\" centerline 90.", _IN),
    case("angle-clr-180", '1.5 x .065, 3" CLR 180', _IN),
    case("angle-no-unit", "1.5 x .065 304, 3 CLR 90", _IN),
    case("angle-radius-90", '1.5 x .065 304, a 3" radius 90', _IN),
    case("angle-radius-bend", "1.5 x .065, 3 radius 180 bend", _IN),
    case("angle-mm", "38 x 1.5, bend is 57 mm CLR 180", _MM),
    case("angle-de", "Rohr 38 x 1,5, Bogen mit 57 mm Mittenradius 90", _MM),
    case("angle-could-be-either", "38 x 1.5 mm, 57 CLR 90", mm("38", "1.5", "57", "clr")),
    case("angle-word-first", "1.5 x .065, CLR 3, 90", _IN),
    case("angle-none-clr-behind", "38 x 1.5 CLR 90", mm("38", "1.5", "90")),
    case("angle-none-od-named", "OD 38 wall 1.5, CLR 90", mm("38", "1.5", "90")),
    case("angle-none-wall-before", "38 x 1.5 wall 304 CLR 90", mm("38", "1.5", "90")),
]  # fmt: skip

_NO_CLR = inch("2.25", "0.065")

DIE_MARKS = [  # what is stamped on a die is the tube's OD, unless a word says radius
    case("die-just-says", "hi have you got a mandrel for 2 1/4 exhaust tube 16 gauge aluminised steel. not sure of the radius the die just says 2 1/4. cheers", _NO_CLR),
    case("die-marked", "2.25 x .065 tube. The die is marked 2 1/4.", _NO_CLR),
    case("die-on-our", "2.25 x .065 tube on our 2.25 die", _NO_CLR),
    case("die-other-unit", "2.25 x .065 tube. Die has 57 mm on it.", _NO_CLR),
    case("die-de", "Rohr 57 x 1,5, auf der Biegeform steht 57, Radius weiß ich nicht", mm("57", "1.5")),
    case("die-marked-clr-too", "2.25 x .065 tube. The die is marked 2 1/4 CLR 4.5.", inch("2.25", "0.065", "4.5")),
    case("die-marked-other", "2.25 x .065 tube. The die is marked 3 3/8.", inch("2.25", "0.065", "3.375", "clr")),
    case("die-radius-said", "2.25 x .065 tube, the die is 2 1/4 radius", inch("2.25", "0.065", "2.25", "clr")),
    case("die-of-clr", "57.15 x 1.65 tube on a 57.15 CLR die", mm("57.15", "1.65", "57.15")),
]  # fmt: skip

_17 = inch("1.875", "0.065", "3")

GIVEN_UP = [  # what was only thought of first is no size; what was settled on is
    case("given-up-make-it", "ok so I was going to go 2 inch but the collector is 1 7/8 so make it 1 7/8. still 16 gauge 409, still 3 inch radius. 1 mandrel", _17),
    case("given-up-go-with", "thought about 2 inch tube, go with 1 7/8 then. 16 gauge, 3 inch radius", _17),
    case("given-up-lets-say", "I was thinking 2 but let's say 1.875 OD. .065 wall, 3 inch radius", _17),
    case("given-up-twice-said", "was going to use 2 in tube, but 1 7/8 is what the flange takes so go with 1 7/8. .065 wall 3 clr", _17),
    case("given-up-de", "wollte erst 40 x 2 nehmen, aber der Flansch hat 38, also machen wir 38 x 1,5. Radius 57", _MM),
    case("given-up-de-lieber", "zuerst dachte ich 42,4, dann doch lieber 48,3. Wand 2, Radius 120", mm("48.3", "2", "120")),
    case("given-up-fr", "je pensais prendre du 40, mais finalement 38. épaisseur 1,5, rayon 57", _MM),
    case("given-up-es", "pensaba en 2 pulgadas pero mejor 1 7/8. pared .065, radio 3 pulgadas", _17),
    case("given-up-it", "pensavo al 42 ma facciamo 38. spessore 1,5, raggio 57", _MM),
    case("given-up-nl", "eerst wilde ik 42,4 maar doe maar 48,3. wand 2, radius 120", mm("48.3", "2", "120")),
    case("given-up-radius", "1.5 x .065, was going to do 4 inch clr but make it 3", _IN),
    case("given-up-wall", "1.5 tube, wall was going to be .083 but make it .065. 3 clr", _IN),
    case("settled-lets-say", "38 x 1.5, R 76. Hmm, let's say R 57.", _MM),
    case("given-up-nothing", "I was going to order 1.5 x .065 with 3 clr today. Please quote.", _IN),
    case("given-up-no-count", "was going to order 1.5 x .065 on 3 clr. make it 2 mandrels", _IN),
    case("given-up-neither", "I was going to ask for 1.5 x .065, 3 clr. Also 1.875 x .065, 3 clr.", _IN, _17),
    case("given-up-both-taken", "We were looking at 1.5 x .065 and 1.875 x .065, both on 3 clr. We'll take one mandrel of each.", _IN, _17),
]  # fmt: skip

_UNSURE = mm("38", "1.5", "57", "clr")

INSIDE_OR_CENTRE = [  # one radius, and the sender doesn't know where it is measured to
    case("unsure-my-3", "Tube 38 x 1.5. Radius 57 mm. I'm not sure if my 57 is to the inside of the bend or to the middle, got it off a sketch.", _UNSURE),
    case("unsure-dont-know", "38 x 1.5 mm, 57 radius. Don't know whether that is to the centre or to the inside.", _UNSURE),
    case("unsure-sketch", "38 x 1.5 mm, radius 57. The sketch doesn't say if the 57 is center or inside.", _UNSURE),
    case("unsure-de", "Rohr 38 x 1,5, Radius 57. Ich weiß nicht, ob die 57 auf Mitte oder innen gemessen sind.", _UNSURE),
    case("unsure-fr", "tube 38 x 1,5, rayon 57. Je ne sais pas si c'est à l'axe ou à l'intérieur.", _UNSURE),
    case("unsure-es", "tubo 38 x 1,5, radio 57. No sé si es al eje o interior.", _UNSURE),
    case("unsure-it", "tubo 38 x 1,5, raggio 57. Non so se è in asse o interno.", _UNSURE),
    case("unsure-nl", "buis 38 x 1,5, radius 57. Weet niet of dat hart of binnenkant is.", _UNSURE),
    case("sure-centre", "38 x 1.5 mm, 57 radius. It is to the middle, not the inside.", _MM),
    case("sure-inside", "38 x 1.5 mm, 38 radius to the inside. Not sure about the material though.", _MM),
]  # fmt: skip

_BOILER = mm("25.4", "2.11", "60")

MIN_WALL = [  # boiler tube is ordered by its minimum wall: that is the wall
    case("min-wall-mm", "tube 25.4 mm OD x 2.11 mm min wall, SA-213 TP304, CLR 60 mm", _BOILER),
    case("min-wall-point", "25.4 x 2.11 min. wall, CLR 60", _BOILER),
    case("min-wall-before", '1" OD, min wall .083, 3" CLR', inch("1", "0.083", "3")),
    case("min-wall-thickness", '1" OD, minimum wall thickness 0.083", 3" CLR', inch("1", "0.083", "3")),
    case("min-wall-de", "Rohr 25,4, Mindestwandstärke 2,11, R 60", _BOILER),
    case("min-wall-fr", "tube 25,4 x 2,11 mm paroi minimum, rayon 60", _BOILER),
    case("min-wall-es", "tubo 25,4, espesor mínimo 2,11 mm, radio 60", _BOILER),
    case("min-wall-it", "tubo 25,4, spessore minimo 2,11 mm, raggio 60", _BOILER),
    case("wall-at-least", '1" OD, wall at least .083, 3" CLR', inch("1", "0.083", "3", "wall")),
    case("wall-max", '1" OD, max wall .083, 3" CLR', inch("1", "0.083", "3", "wall")),
    case("clr-min", '1" OD x .083 wall, min 3" CLR', inch("1", "0.083", "3", "clr")),
]  # fmt: skip

_MIXED = mm("38.1", "1.5", "57.15")

SAID_TWICE = [  # a unit that is missing is told by the second form of the same radius
    case("twice-die-1.5d", 'OD 1 1/2", so 38,1. Wall 1,5 mm. Centreline radius 57,15 (our die is marked 1.5D)', _MIXED),
    case("twice-1.5d", 'OD 1 1/2". Wall 1,5 mm. CLR 57,15 (1.5D)', _MIXED),
    case("twice-equals", '1 1/2" x 1,5 mm, R 57,15 = 1.5 x D', _MIXED),
    case("twice-inch", '1 1/2" tube, 1.5 mm wall, CLR 57.15 = 2 1/4"', _MIXED),
    case("twice-not", 'OD 1 1/2". Wall 1,5 mm. CLR 57,15', mm("38.1", "1.5", "57.15", "clr")),
    case("twice-otherwise", 'OD 1 1/2", wall 1,5 mm, CLR 60 (1.5D)', mm("38.1", "1.5", "60", "clr")),
]  # fmt: skip

_50 = mm("50", "1.5", "100")
_2 = inch("2", "0.049", "4")
_ONLY = mm("50", "1.5", "100", "clr")

DRAWING_DEFAULTS = [  # the general note of a drawing is no radius of the tube
    case("default-quoted", 'On drawing there is default note "all radii R3 unless specified" - please ignore, this is for the edges. Tube is 50 x 1,5 mm, bending radius 100 mm in axis.', _50),
    case("default-capitals", 'The print says "UNLESS OTHERWISE SPECIFIED BEND RADIUS 3.00" but the callout on this part is R4.00 to centerline, so 4.00 it is. Tube 2.000 x .049, 6061-T4.', _2),
    case("default-note", "Tube 2.000 x .049, CLR 4.00. Note on print: unless otherwise noted all radii R3.00.", _2),
    case("default-behind", "Tube 50 x 1.5. Radius 100 mm. Title block: R3 unless stated otherwise.", _50),
    case("default-de", "Rohr 50 x 1,5, Radius 100 mm. Auf der Zeichnung: Radien R3 sofern nicht anders angegeben.", _50),
    case("default-de-unbemasst", "Rohr 50 x 1,5, Radius 100 mm. Im Schriftfeld steht: nicht bemaßte Radien R5.", _50),
    case("default-fr", "tube 50 x 1,5, rayon 100. Sur le plan : sauf indication contraire R3.", _50),
    case("default-es", "tubo 50 x 1,5, radio 100. Plano: radios no acotados R3, salvo indicación contraria.", _50),
    case("default-it", "tubo 50 x 1,5, raggio 100. Disegno: raggi R3 salvo diversa indicazione.", _50),
    case("default-nl", "buis 50 x 1,5, radius 100. Tekening: alle radii R3 tenzij anders vermeld.", _50),
    case("default-only", 'Tube 50 x 1.5. The print only says "unless otherwise specified bend radius 100".', _ONLY),
    case("default-only-de", "Rohr 50 x 1,5. Auf der Zeichnung steht nur: Biegeradius 100 sofern nicht anders angegeben.", _ONLY),
    case("default-only-fr", "tube 50 x 1,5. Le plan dit : rayon de cintrage 100 sauf indication contraire.", _ONLY),
    case("default-of-units", "All dimensions in mm unless otherwise stated. Tube 50 x 1.5, CLR 100.", _50),
    case("default-own-words", "Tube 50 x 1.5, CLR 100 unless noted, and the tail R 80.", _ONLY, mm("50", "1.5", "80")),
    case("default-none", "Tube 50 x 1.5, CLR 100 unless you think that is too tight.", _50),
]  # fmt: skip

_40 = mm("40", "1.5", "60")

REFERENCES = [  # numbers by which a file or an order is known are no sizes
    case("ref-it", "tubo Ø 40 x 1,5, raggio medio 60.\nRif. int. 26/1187-40", _40),
    case("ref-it-vs", "tubo 40 x 1,5, raggio 60.\nVs. rif. 26/40", _40),
    case("ref-fr", "tube 40 x 1,5, rayon 60.\nn/réf 24/118", _40),
    case("ref-fr-dots", "tube 40 x 1,5, rayon 60.\nV/réf 24.118", _40),
    case("ref-de", "Rohr 40 x 1,5, R 60.\nUnser Zeichen 26/44-2", _40),
    case("ref-de-akte", "Rohr 40 x 1,5, R 60.\nAktenzeichen 12/40", _40),
    case("ref-de-cost-centre", "Kostenstelle 40.12, Rohr 40 x 1,5, R 60", _40),
    case("ref-de-project", "Projekt 26/40: Rohr 40 x 1,5, R 60", _40),
    case("ref-en", "tube 40 x 1.5, clr 60.\nRef: 1187/26", _40),
    case("ref-en-your", "tube 40 x 1.5, clr 60.\nYour ref 44.5/2", _40),
    case("ref-es", "tubo 40 x 1,5, radio 60.\nSu ref: 24/118-3", _40),
    case("ref-nl", "buis 40 x 1,5, radius 60.\nOns kenmerk 26/40", _40),
    case("ref-none-job", "job: 2-3/8 x .154 pipe, 9 clr", inch("2.375", "0.154", "9")),
    case("ref-none-project", "project 1-1/2 tube .065 wall 3 clr", _IN),
    case("ref-none-tube", "Ref tube: 40 x 1.5 mm, clr 60", _40),
]  # fmt: skip

_OUTSIDE = inch("2.5", "0.083", "5.25", "clr")

OF_TWO = [  # 'inner' and 'outer' name two tubes, or where a radius is measured to
    case("two-tubes", "I'm looking at two tubes:\n inner: 1.000\" x 0.035\", bend 3.000\" CLR\n outer: 2.000\" x 0.065\", bend 6.000\" CLR", inch("1", "0.035", "3"), inch("2", "0.065", "6")),
    case("two-tubes-de", "Doppelrohr:\ninnen: 25 x 1,5, R 75\naußen: 50 x 2, R 150", mm("25", "1.5", "75"), mm("50", "2", "150")),
    case("bore-and-od", "inner: 1.870, outer: 2.000, bend 6.000 CLR", inch("2", "0.065", "6")),
    case("outside-or-centre", '2.5" OD x .083 wall, and the print just says "R 5.25" with the arrow to the outside edge of the bend. I\'d guess they mean centerline but it could be outside.', _OUTSIDE),
    case("outside-or-centre-de", "Rohr 38 x 1,5, Radius 76 außen. Vielleicht ist aber auch die Mitte gemeint, ich weiß es nicht, ob außen oder Mitte.", mm("38", "1.5", "76", "clr")),
    case("outside-sure", '2.5" OD x .083 wall, radius 5.25 to the outside of the bend.', inch("2.5", "0.083", "4")),
]  # fmt: skip

PLACES_AND_PARTS = [  # a street's block is no die block; a hoop with a gauge is tube
    case("block-of-a-street", "1.5 x .065 tube, 3 clr. Shipping to 73 hundred block, call the gate.", _IN),
    case("block-of-a-die", "1.5 x .065 on a 3 block", _IN),
    case("hoop-of-tube", "Main hoop is 1-1/2 in 16 gauge, 3 CLR, DOM", _IN),
    case("hoop-across", "The hoop is 24 in, tube 1.5 x .065", inch("1.5", "0.065", "12", "clr")),
]  # fmt: skip

IN_WORDS_TOO = [  # hundreds with an 'and', a radius that a drawing gives as so much
    case("hundred-and-five", "thirty-five mil diameter, two mil wall, one hundred and\nfive mil radius to the centre", mm("35", "2", "105")),
    case("two-hundred-and-ten", "38 mm tube, wall one and a half mm, radius two hundred and ten mm", mm("38", "1.5", "210")),
    case("radius-given-as", 'The tube is 1" OD x .065" wall and the drawing gives the radius to the INSIDE of the bend as 2".', inch("1", "0.065", "2.5")),
    case("radius-shown-as", "1.5 x .065 tube, the print shows the bend radius as 3 in.", _IN),
    case("radius-given-de", "38 x 1,5 Rohr, die Zeichnung gibt den Biegeradius mit 57 an", _MM),
]  # fmt: skip
