"""Which of several sizes are wanted: straight ones, ones bent empty, done, or for later; lines picked
by rank, figure, letter or count; a second size said in one breath; and mails that only look so."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from .support import case, inch, mm

_ALL = "od wall clr"
_A, _B = inch("1.5", "0.065", "4.5"), inch("1.75", "0.095", "5.25")
_A_ALL, _B_ALL = inch("1.5", "0.065", "4.5", _ALL), inch("1.75", "0.095", "5.25", _ALL)
_WANTED = "Mandrel for 1.5 x .065 on 4.5 CLR please. "

NEEDS_NONE = [
    case("straight-but", _WANTED + "The collectors are 3.5 x .065 but they are straight.", _A),
    case("straight-gerade", "Dorn für 38 x 2 R 100 bitte. Die Pfosten sind 42 x 2, die bleiben gerade.", mm("38", "2", "100")),
    case("straight-droits", "Devis pour un mandrin 38 x 2, rayon 100. Les montants sont en 42 x 2, ils restent droits.", mm("38", "2", "100")),
    case("empty-en", _WANTED + "The links are 1.25 x .250, thick enough to bend empty.", _A),
    case("empty-de", "Dorn für 38 x 2 R 100 bitte. Die Halter sind 20 x 3, das biegen wir kalt ohne.", mm("38", "2", "100")),
    case("done-en", _WANTED + "The hoop is 1.75 x .120 but that's all done already.", _A),
    case("done-de", "Dorn für 38 x 2 R 100 bitte. Der Bügel ist 45 x 2,5, das ist alles schon fertig.", mm("38", "2", "100")),
    case("not-needed-two", "The pipe is 60.3 x 2 mm, radius 120. We also own dies for 42.4 and 76.1 but they are not needed in this project. Please offer 1 mandrel.", mm("60.3", "2", "120")),
    case("not-needed-after", _WANTED + "The braces are 1.25 x .083 and we don't need anything for those.", _A),
    case("if-it-works", _WANTED + "If that one works out I'll want one for the bumper (1.75 x .095) after Christmas.", _A),
    case("if-any-good", '1.5 x .065, 4.5 CLR.\n\nI\'ll have one mandrel to start with please, and if it\'s any good I\'ll be back for the 2-1/4 size next year.', _A),
    case("if-right", "38 x 2 mm, R 100. One mandrel please, and if it's right we'll be back for the 42 mm size.", mm("38", "2", "100")),
    case("wenn-er-gut-ist", "Rohr 38 x 2 mm, Radius 100. Erst mal ein Dorn, und wenn er gut ist, melde ich mich nächstes Jahr wegen der 42er.", mm("38", "2", "100")),
    case("bends-each", "Primaries are 1.5 x .065 on 4.5 CLR. Collectors are 3.5 x .065 but they are straight. Want a mandrel for the primaries. 8 tubes, 4 bends each.", _A),
]  # fmt: skip

ALL_THE_SAME = [  # these only look as if one were not wanted
    case("straight-legs", "Frame is 1.5 x .065 on 4.5 CLR, the legs stay straight. Braces 1.75 x .095 on 5.25 CLR. A mandrel each.", _A_ALL, _B),
    case("straight-cuts", "Tubes 1.5 x .065 on 4.5 CLR, they are straight cuts. Tubes 1.75 x .095 on 5.25 CLR. Mandrels please.", _A_ALL, _B),
    case("drawn", "38 x 2 R 100, das ist schon fertig gezeichnet. 42 x 2 R 120 auch. Bitte anbieten.", mm("38", "2", "100", _ALL), mm("42", "2", "120")),
    case("wiper", "Dorn 38 x 2 R 100, Abstreifer wird dafür nicht benötigt. Dorn 42 x 2 R 120 mit Abstreifer.", mm("38", "2", "100"), mm("42", "2", "120")),
    case("polish", "1.5 x .065 on 4.5 CLR: polishing is not required for that. 1.75 x .095 on 5.25 CLR: polish it. One mandrel each.", _A, _B),
    case("two-bends", "1.5 x .065 on 4.5 CLR for the hoop. It's done in two bends. 1.75 x .095 on 5.25 CLR for the rear. Please quote.", _A, _B),
    case("not-this-week", "Need 1.5 x .065 on 4.5 CLR. They are not needed this week, next week is fine. Also need 1.75 x .095 on 5.25 CLR.", _A, _B),
]  # fmt: skip

_THREE = "38 x 2, 42 x 2 {} 48 x 2, {} 120. "
_LEFT = mm("38", "2", "120"), mm("48", "2", "120")
_EVERY = mm("38", "2", "120"), mm("42", "2", "120"), mm("48", "2", "120")

LATER_BY_NAME = [
    case("inch-three", 'Looking at 304 stainless, 16 ga. Sizes: 2", 2.25", 2.5", 3". The 2.25 we\'d do later. CLR is 1.5 times the diameter on all of them. One mandrel for each of the three.', inch("2", "0.065", "3"), inch("2.5", "0.065", "3.75"), inch("3", "0.065", "4.5")),
    case("later-en", "Mandrels for " + _THREE.format("and", "R") + "The 42 we'll order later.", *_LEFT),
    case("later-de", "Dorne für " + _THREE.format("und", "R") + "Die 42 machen wir nächstes Jahr.", *_LEFT),
    case("later-fr", "Mandrins pour " + _THREE.format("et", "rayon") + "Le 42 sera pour plus tard.", *_LEFT),
    case("later-es", "Mandriles para " + _THREE.format("y", "radio") + "El 42 lo haremos más adelante.", *_LEFT),
    case("later-it", "Mandrini per " + _THREE.format("e", "raggio") + "Il 42 lo faremo più avanti.", *_LEFT),
    case("later-nl", "Doorns voor " + _THREE.format("en", "straal") + "De 42 doen we later.", *_LEFT),
]  # fmt: skip

NOT_LATER = [
    case("each-of-three", "Mandrels for " + _THREE.format("and", "R") + "The 42 we'd do later. One for each of the three please.", *_EVERY),
    case("quote-now", "Mandrels for " + _THREE.format("and", "R") + "The 42 we'd do later but quote it now please.", *_EVERY),
    case("price-on-both", "1.5 x .065 and 1.75 x .065, 1.5D. The 1.75 we'll order later. Price on both?", inch("1.5", "0.065", "2.25"), inch("1.75", "0.065", "2.625")),
    case("in-the-build", "1.5 x .065 on 4.5 CLR and 1.75 x .095 on 5.25 CLR. The 1.75 comes later in the build. One mandrel of each please.", _A, _B),
]  # fmt: skip

_AB = "Tube A: 25 x 1.0, R 63\nTube B: 35 x 3.0, R 105\n\n"
_T_A, _T_B = mm("25", "1", "63"), mm("35", "3", "105")

PICKED = [
    case("thinner-de", "Wir brauchen dafür 1 Dorn, aber nur für das dünnere Rohr.\n\n" + _AB, _T_A),
    case("smaller-fr", _AB + "Seulement pour le plus petit, merci.", _T_A),
    case("finer-es", _AB + "Necesitamos mandril solo para el más fino.", _T_A),
    case("bigger-it", _AB + "Ci serve solo per il più grande.", _T_B),
    case("thickest-nl", _AB + "Alleen voor de dikste graag.", _T_B),
    case("by-figure", _AB + "We only need the 35 mandrel at present.", _T_B),
    case("by-figure-de", _AB + "Bitte nur den 35er Dorn.", _T_B),
    case("by-letter", _AB + "Only tube B please.", _T_B),
    case("by-letter-de", "Rohr A: 25 x 1,0, R 63\nRohr B: 35 x 3,0, R 105\n\nNur Rohr B bitte.", _T_B),
    case("hi-both", "Hi both,\n\nwe only need the 35 mandrel.\n\n" + _AB, _T_B),
    case("by-name", "Rear hoop 1.75 x .095 5.25 CLR, front hoop 1.5 x .065 4.5 CLR. Just the rear hoop for now.", _B, _A_ALL),
    case("radius-behind", "Cage is 1.75 x .120 and the links are 1.5 x .250. Just a mandrel for the cage for now, 5.25 CLR.", inch("1.75", "0.120", "5.25"), inch("1.5", "0.250", None, "od wall")),
]  # fmt: skip

NOT_PICKED = [
    case("urgent", "One mandrel of each.\n" + _AB + "Only the 35 has a seam.", _T_A, _T_B),
    case("both-polished", _AB + "Only tube B needs polish, quote both.", _T_A, _T_B),
    case("drilled", _AB + "Only tube A, drilled. Tube B plain. One mandrel each.", _T_A, _T_B),
    case("stainless", _AB + "We need a mandrel for tube A and B. Only tube B is stainless.", _T_A, _T_B),
    case("thread-only-for", _AB + "Mandrels please. They need an M16 thread only for tube B.", _T_A, _T_B),
    case("drawings-only-for", _AB + "Mandrels please. Drawings attached only for tube B.", _T_A, _T_B),
    case("ball-only-for", _AB + "Mandrels please. Ball mandrel only for the 35.", mm("25", "1", "63", _ALL), _T_B),
    case("naht", "38 x 2 R 100\n42 x 2 R 120\n\nDorne bitte. Nur das dickere Rohr hat eine Naht.", mm("38", "2", "100"), mm("42", "2", "120")),
    case("rank-split", "Tube A: 25 x 3.0, R 63\nTube B: 35 x 1.0, R 105\n\nEin Dorn, nur für das dünnere Rohr.", mm("25", "3", "63", _ALL), mm("35", "1", "105", _ALL)),
]  # fmt: skip

_TABLE = "\n\nOD | Wall | CLR | Qty\n1.5 | .065 | 4.5 | 1\n1.75 | .095 | 5.25 | -\n"
_TABELLE = "\n\nRohr | Wand | Radius | Stück\n38 | 2 | 76 | 1\n42 | 2 | 84 | -\n"

COUNTED_ROWS = [
    case("have-a-quantity", "We want mandrels for all the rows that have a quantity." + _TABLE, _A),
    case("only-with-qty", "Only rows with a qty please." + _TABLE, _A),
    case("mit-stueckzahl", "Bitte nur die Zeilen mit Stückzahl anbieten." + _TABELLE, mm("38", "2", "76")),
    case("avec-quantite", "Un mandrin seulement pour les lignes avec une quantité.\n\nØ | ép. | rayon | qté\n38 | 2 | 76 | 2\n42 | 2 | 84 | -", mm("38", "2", "76")),
    case("dash-needs-none", "Rows with a dash need no mandrel." + _TABLE, _A),
    case("for-information", "Rows without a quantity are for information only." + _TABLE, _A),
    case("dash-unsaid", "Please quote:" + _TABLE, _A, _B_ALL),
    case("where-known", "Quote all sizes. Quantities where known." + _TABLE.replace("-", ""), _A, _B),
    case("also-lead-time", "Price each row, for those with quantity also give lead time." + _TABLE.replace("-", ""), _A, _B),
    case("in-bold", "We want mandrels, the rows with a number in bold are urgent." + _TABLE.replace("-", ""), _A, _B),
]  # fmt: skip

ONE_BREATH = [
    case("in-and-in", 'Tube is 409, 16 gauge, in 2.5" and in 3". Both dies are 1.5D. One mandrel for each size please.', inch("2.5", "0.065", "3.75"), inch("3", "0.065", "4.5")),
    case("in-und-in", "Rohr 1.4301, Wand 2, in 40 und in 50 mm. Radius 2D. Je ein Dorn.", mm("40", "2", "80"), mm("50", "2", "100")),
    case("mit-und-mit", "Für Rohre mit 42,4 und mit 48,3 mm, Wand 2, Radius 100 brauchen wir je einen Dorn.", mm("42.4", "2", "100"), mm("48.3", "2", "100")),
    case("one-in", '409 stainless, 16 gauge. One in 2.5" and one in 3", 1.5D dies.', inch("2.5", "0.065", "3.75"), inch("3", "0.065", "4.5")),
    case("instead-of-buying", "We bend our own instead of buying elbows. 304, 1.5 x .065 and 2 x .065, both 1.5D. One mandrel each.", inch("1.5", "0.065", "2.25"), inch("2", "0.065", "3")),
    case("but-also", '16ga 304 tube, mostly 2" but also 3". CLR 1.5D for both. 1 mandrel each.', inch("3", "0.065", "4.5", _ALL)),
    case("named-lost", "Primary 1 5/8, secondary 1 3/4, 18ga mild both. Both on 2 1/2 CLR.", inch("1.75", "0.049", "2.5", _ALL)),
    case("for-1-and-for-3", "We need a price for 1 and for 3 mandrels, 1.5 x .065 on 4.5 CLR.", _A),
]  # fmt: skip

SAME_OD = [
    case("different-job", _WANTED + "And a 1.5 OD for a different job.", inch("1.5", "0.065", "4.5", "od")),
    case("other-customer", _WANTED + 'One 1.5" for another customer, wall to follow.', inch("1.5", "0.065", "4.5", "od")),
    case("anderer-auftrag", "Ein Dorn für 38 x 2, R 100. Und einen für 38 mm für einen anderen Auftrag.", mm("38", "2", "100", "od")),
    case("autre-machine", "Un mandrin pour 38 x 2, rayon 100. Et un 38 pour une autre machine.", mm("38", "2", "100", "od")),
    case("thicker", _WANTED + "Same 1.5 in a thicker wall for another job.", inch("1.5", "0.065", "4.5", "od")),
    case("said-again", "Need a mandrel for 1.5 tube. It has an OD of 1.5 and a .065 wall, 4.5 CLR.", _A),
    case("die-of-it", "My die is 1.5, CLR 4.5. Need a mandrel for a 1.5 OD x .065.", _A),
]  # fmt: skip

STILL_OPEN = [
    case("come-down", "CLR no more than 100 mm but I don't have the die yet so it may come down to 95. One mandrel, 63.5 mm OD, 1.63 mm wall.", mm("63.5", "1.63", "100", "clr")),
    case("may-only-have-gauge", "2-1/2 OD, 7.5 clr. I'm told the tube will be 14 gauge but my supplier may only have 16. One mandrel.", inch("2.5", "0.083", "7.5", "wall")),
    case("might-only-have-gauge", "2-1/2 OD, 7.5 clr. The tube should be 14 gauge, though the mill might only have 16 gauge. One mandrel.", inch("2.5", "0.083", "7.5", "wall")),
    case("unless-they-only-have", "60 mm OD, 180 clr. Wall 2.0 mm, unless they only have 2.5. One mandrel.", mm("60", "2", "180", "wall")),
    case("hat-vielleicht-nur", "Rohr 60 mm, Radius 180. Wand wird 2,0 mm, aber der Händler hat vielleicht nur 2,5. Ein Dorn.", mm("60", "2", "180", "wall")),
    case("peut-etre-que-du", "Tube 60 mm, rayon 180. Épaisseur 2,0 mm mais le fournisseur n'a peut-être que du 2,5. Un mandrin.", mm("60", "2", "180", "wall")),
    case("quiza-solo-tenga", "Tubo 60 mm, radio 180. Espesor 2,0 mm pero el proveedor quizá solo tenga 2,5. Un mandril.", mm("60", "2", "180", "wall")),
    case("forse-ha-solo", "Tubo 60 mm, raggio 180. Spessore 2,0 mm ma il fornitore forse ha solo 2,5. Un mandrino.", mm("60", "2", "180", "wall")),
    case("misschien-alleen", "Buis 60 mm, straal 180. Wand 2,0 mm maar de leverancier heeft misschien alleen 2,5. Een doorn.", mm("60", "2", "180", "wall")),
    case("only-has-lengths", "2-1/2 OD x .083, 7.5 clr. My supplier may only have 2 lengths in stock. One mandrel.", inch("2.5", "0.083", "7.5")),
    case("go-to", "Need a mandrel 38 x 2, R 100. The radius could go to 120.", mm("38", "2", "100", "clr")),
    case("koennte", "Ein Dorn 38 x 2, Radius 100, der könnte noch auf 95 runter.", mm("38", "2", "100", "clr")),
    case("pourrait", "Un mandrin 38 x 2, rayon 100, il pourrait descendre à 95.", mm("38", "2", "100", "clr")),
    case("bender-can", "1.5 x .065 on 4.5 CLR. The bender can go up to 5 inch CLR.", _A),
    case("would-be", "Mandrels 1.5 x .065: front radius would be 4.5, rear radius would be 6.", _A, inch("1.5", "0.065", "6")),
    case("other-job", "Mandrels for 38 x 2 and R 76. The other job may need to go to R 120, same tube, please quote it too.", mm("38", "2", "76"), mm("38", "2", "120")),
    case("workshop-de", "Wir brauchen einen Dorn für Rohr 38 mm, Wand 2 mm, R 100. In der Werkstatt liegt 3 mm.", mm("38", "2", "100", "wall")),
    case("workshop-en", "Need one mandrel. Tube is 38 mm OD with 2 mm wall on R 100. What's lying in the workshop is 3 mm.", mm("38", "2", "100", "wall")),
    case("rack-whole", "Need one mandrel, drawing says 38 x 2, R 100. In the rack we have 38 x 3.", mm("38", "2", "100"), mm("38", "3", None, "od wall")),
    case("shop-plate", "Need one mandrel, 38 x 2, R 100. In the shop we have 3 mm plate too.", mm("38", "2", "100")),
    case("left-over", "Need one mandrel, 1.5 x .065 on 4.5 CLR. Left over: 1 x .083.", _A, inch("1", "0.083", None, "od wall")),
    case("radius-over", "Need one mandrel, 1.5 x .065, radius over 4.5.", inch("1.5", "0.065", "4.5", "clr")),
]  # fmt: skip

NOT_READ = [  # words that set aside a size that was never named leave the others alone
    case("den-mit-180", "Für Rohr 44,5x2 suchen wir je einen Dorn für die Radien 90 und 135 (Rohrmitte). Den mit 180 haben wir schon, den bitte nicht anbieten.", mm("44.5", "2", "90"), mm("44.5", "2", "135")),
    case("the-1.75", "Tubes 1.5 x .065 on 4.5 CLR and 2 x .065 on 6 CLR, mandrel for each. The 1.75 we already have.", _A, inch("2", "0.065", "6")),
    case("of-the-read", "Tubes 1.5 x .065 on 4.5 CLR and 2 x .065 on 6 CLR, mandrel for each. The 2 we already have.", _A_ALL, inch("2", "0.065", "6", _ALL)),
    case("the-one", "Tubes 1.5 x .065 on 4.5 CLR and 2 x .065 on 6 CLR, mandrels. The one we already have is not needed.", _A_ALL, inch("2", "0.065", "6", _ALL)),
]  # fmt: skip

FAMILIES = (
    NEEDS_NONE, ALL_THE_SAME, LATER_BY_NAME, NOT_LATER, PICKED, NOT_PICKED, COUNTED_ROWS, ONE_BREATH,
    SAME_OD, STILL_OPEN, NOT_READ,
)  # fmt: skip
