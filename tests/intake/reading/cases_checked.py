"""Sizes told twice or put right in passing: a radius checked on its other side, a size run together,
ODs listed beside the wall of all, what another shop's dies can do.
"""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from .support import case, inch, mm

_MM = mm("38", "1.5", "76")
_SMALL = inch("0.25", "0.035", "0.5625")

OTHER_SIDE = [  # 76 - 38 / 2 = 57, 76 + 38 / 2 = 95; 9/16 - 1/8 = 7/16
    case("other-side-sums", ".250 in / .035 wall 316 SS, 9/16 radius (inside the bend it is 7/16 if my sums are right). One off.", _SMALL),
    case("other-side-thats", "One mandrel 1.5 x .065, 3 in radius (that's 2.25 to the inside). 304", inch("1.5", "0.065", "3")),
    case("other-side-inside-its", "1 mandrel 38 x 1.5, 76 radius (inside it's 57). 304", _MM),
    case("other-side-both", "1 mandrel 38 x 1.5, R 76 (the inside is 57, outside 95). 304", _MM),
    case("other-side-works-out", "1 mandrel 38 x 1.5, R 76, which works out to 57 on the inside. 304", _MM),
    case("other-side-de", "1 Dorn 38 x 1,5, Radius 76 (innen sind es 57). 1.4301", _MM),
    case("other-side-fr", "1 mandrin 38 x 1,5, rayon 76 (à l'intérieur ça fait 57). 304", _MM),
    case("other-side-es", "1 mandril 38 x 1,5, radio 76 (por dentro son 57). 304", _MM),
    case("other-side-it", "1 mandrino 38 x 1,5, raggio 76 (all'interno sono 57). 304", _MM),
    case("other-side-nl", "1 doorn 38 x 1,5, straal 76 (aan de binnenkant 57). 304", _MM),
    case("other-side-out-then-in", "ein Dorn für Rohr 35 x 2. Der Bogen hat außen gemessen 122,5 mm Radius, innen 87,5.", mm("35", "2", "105")),
    case("other-side-sums-wrong", "1 mandrel 38 x 1.5, 76 radius (inside it's 60). 304", mm("38", "1.5", "76", "clr")),
    case("other-side-none", "1 mandrel 38 x 1.5, 57 radius to the inside. 304", _MM),
    case("other-side-inside-first", "1 mandrel 38 x 1.5, 57 inside radius (so 76 to centre). 304", _MM),
    case("other-side-bore", "1 mandrel, tube is 38 outside, 35 inside, R 76", _MM),
    case("other-side-bore-behind", "1 mandrel 38 x 1.5, R 76 (inside dia 35). 304", _MM),
]  # fmt: skip

TO_INSIDE = [  # 38 + 25 / 2 = 50.5
    case("to-inside-bend-radius", "25 x 1.5, bend radius to the inside 38 mm.", mm("25", "1.5", "50.5")),
    case("to-inside-is", "25 x 1.5, bend radius to inside is 38 mm.", mm("25", "1.5", "50.5")),
    case("to-inside-bore-named", "ID is 22 mm and the wall is 1.5, bend radius to inside 38 mm.", mm("25", "1.5", "50.5")),
    case("to-inside-nl", "25 x 1,5, straal binnenkant 38 mm.", mm("25", "1.5", "50.5")),
    case("to-inside-it", "25 x 1,5, raggio all'interno 38 mm.", mm("25", "1.5", "50.5")),
]  # fmt: skip

OD_TIMES = [  # 1.625 x 1.5 = 2.4375; 40 x 1.5 = 60
    case("od-times", "1-5/8 x 18 ga 321, radius is the OD times 1.5", inch("1.625", "0.049", "2.4375")),
    case("od-times-equals", "1-5/8 x 18 ga 321, radius = OD x 1.5", inch("1.625", "0.049", "2.4375")),
    case("od-times-de", "40 x 1,5, Radius: Durchmesser mal 1,5", mm("40", "1.5", "60")),
    case("od-times-fr", "40 x 1,5, rayon = diamètre x 1,5", mm("40", "1.5", "60")),
    case("od-times-wall", "R 76, OD 38 x 1.5", _MM),
    case("od-times-size", "Radius 76. OD x wall is 38 x 1.5", _MM),
]  # fmt: skip

_TWO = mm("50", "2", "100")
NOW_SO = [  # the wall is put right, the rest stays
    case("now-so-lets-make", "It was for 44.5 x 1.5 ally tube (6082), 135 radius. If the machine takes it I'd sooner go to 2 mm wall, actually yes let's make it 2 mm. One mandrel.", mm("44.5", "2", "135")),
    case("now-so-after-all", "Need a mandrel for 50 x 1.5, R 100. Let's make the wall 2 mm after all.", _TWO),
    case("now-so-instead", "Mandrel for 50 x 1.5, R 100. Let's go with 2 mm wall instead.", _TWO),
    case("now-so-de", "Dorn für 50 x 1,5, R 100. Machen wir lieber 2 mm Wand.", _TWO),
    case("now-so-de-doch", "Dorn für 50 x 1,5, R 100. Nehmen wir doch 2 mm Wandstärke.", _TWO),
    case("now-so-fr", "Mandrin pour 50 x 1,5, R 100. Finalement on part sur 2 mm d'épaisseur.", _TWO),
    case("now-so-es", "Mandril para 50 x 1,5, R 100. Mejor pongamos 2 mm de pared.", _TWO),
    case("now-so-it", "Mandrino per 50 x 1,5, R 100. Anzi, facciamo 2 mm di spessore.", _TWO),
    case("now-so-nl", "Doorn voor 50 x 1,5, R 100. Doe maar 2 mm wand.", _TWO),
    case("now-so-another-tube", "Mandrel for 50 x 1.5, R 100. Let's also do 60.3 x 2, R 150.", mm("50", "1.5", "100"), mm("60.3", "2", "150")),
    case("now-so-machine-only", "Mandrel for 50 x 1.5, R 100. The machine takes up to 76 mm.", mm("50", "1.5", "100")),
]  # fmt: skip

_GA18 = [
    inch(od, "0.049", clr)
    for od, clr in (("1.5", "3"), ("1.625", "3.25"), ("1.75", "3.5"), ("2", "4"))
]
_MM15 = [mm(od, "1.5", clr) for od, clr in (("25", "50"), ("32", "64"), ("38", "76"))]
TUBES_LISTED = [  # each on twice its OD
    case("listed-then", "All 18ga 304: 1-1/2 then 1-5/8 then 1-3/4 then 2. Need one mandrel per size. Every one on a 2D die.", *_GA18),
    case("listed-commas", "All 18 ga 304: 1-1/2, 1-5/8, 1-3/4 and 2. One mandrel each. All on a 2D die.", *_GA18),
    case("listed-de", "1.4301, alles 1,5 Wand: erst 25, dann 32, dann 38. Je ein Dorn, alle 2D.", *_MM15),
    case("listed-radii", "1.5 x .065 tube, radii 3, 4.5 and 6", *(inch("1.5", "0.065", r) for r in ("3", "4.5", "6"))),
]  # fmt: skip

RUN_TOGETHER = [
    case("run-together-de", "brauche einen Dorn für 252,5 Rohr (Stahl, St 37), Radius 60. Also 25 dick mit 2,5 Wand. Preis?", mm("25", "2.5", "60")),
    case("run-together-en", "mandrel for 301.5 tube R60, so 30 mm with 1.5 wall", mm("30", "1.5", "60")),
    case("run-together-ref", "Mandrel 25 x 2.5 R 60. Ref 252.5 on the drawing.", mm("25", "2.5", "60")),
]  # fmt: skip

_BUTTED = mm("22.2", "0.9", "65")
BUTTED = [
    case("butted-walls-first", "Tube is Ti 3Al-2.5V, butted (0.9/0.6/0.9 x 22.2) but I bend only in the thick 0.9 end. Radius 65 mm. Please quote 1 pc.", _BUTTED),
    case("butted-thick-end", "butted tube (0.9/0.6/0.9 x 22.2), R 65 in the thick end, one mandrel", _BUTTED),
    case("butted-which-end", "butted 0.9/0.6/0.9 x 22.2, R 65, 1 mandrel", mm("22.2", "0.9", "65", "wall")),
    case("butted-none", "20x1.5 / 25x1.5, R 60 both", mm("20", "1.5", "60"), mm("25", "1.5", "60")),
]  # fmt: skip

FOOT_MARKS = [  # a foot mark behind a fraction or a decimal of a tube is an inch mark
    case("foot-mark-fraction", "7/8' x .058 chromoly, bent 2.625\" CLR", inch("0.875", "0.058", "2.625")),
    case("foot-mark-decimal", "mandrel for 1.5' x .065 tube, 4.5' clr", inch("1.5", "0.065", "4.5")),
    case("foot-mark-length", "1.5 x .065 tube, 4.5 clr, in 20' lengths and 12.5' pieces", inch("1.5", "0.065", "4.5")),
]  # fmt: skip

SMALLEST_DIE = [  # what somebody else can do is no radius asked for
    case("smallest-die-theirs", "Local muffler place quoted me $650 and their smallest die is 4 inch. I picked up a used die, 57mm to the middle of the groove. Mandrel for 38mm x 1.2mm 304 tube? Only need one.", mm("38", "1.2", "57")),
    case("smallest-die-other-guys", "Need a mandrel for 1.5 x .065 on a 3 inch CLR. The other guy's smallest die is 4 inch.", inch("1.5", "0.065", "3")),
    case("smallest-die-de", "Dorn für 38 x 1,2, R 57. Deren kleinste Biegeform hat 100 mm.", mm("38", "1.2", "57")),
    case("smallest-die-fr", "Mandrin 38 x 1,2, rayon 57. Leur plus petite forme fait 100 mm.", mm("38", "1.2", "57")),
    case("smallest-die-ours", "Our smallest die is 4 inch. Mandrel for 1.75 x .083 on that die.", inch("1.75", "0.083", "4", "clr")),
]  # fmt: skip

CENTRE_LINE = [
    case("bend-centre-line", '9/8" x .049 4130, 4" bend center line. 1 ea mandrel.', inch("1.125", "0.049", "4")),
    case("bend-centre-line-sheet", 'Spec sheet gives me the tube by its bore: 1.370" ID with .065" wall, so you work out the OD. Centerline radius 3".', inch("1.5", "0.065", "3")),
    case("inch-n-half", "inch n a half by oh six five wall, 4 and a half radius", inch("1.5", "0.065", "4.5")),
    case("before-was", "New spec is 1.5 x .083, 4.5 CLR (was 1.5 x .065, 4 CLR).", inch("1.5", "0.083", "4.5")),
]  # fmt: skip

_LIST = "\n\n1. 1.000 OD x .049 W, 304, 2.00 CLR\n2. 1.250 OD x .049 W, 304, 2.50 CLR\n3. 2.000 OD x .049 W, 304, 4.00 CLR"
_FIRST, _SECOND, _THIRD = (
    inch("1", "0.049", "2"),
    inch("1.25", "0.049", "2.5"),
    inch("2", "0.049", "4"),
)
_MM_LIST = "\n\n1. 25 x 1,5, R 50\n2. 30 x 1,5, R 60\n3. 50 x 1,5, R 100"
_PICKED = (mm("25", "1.5", "50"), mm("50", "1.5", "100"))
_STARRED = "\n\nA     19 x 1,2  R 57\nB  *  25 x 1,2  R 75\nC     25 x 1,5  R 75"
_STAR = mm("25", "1.2", "75")
SOME_LINES = [
    case("some-price-up", "Can you price up items 1 and 3? Item 2 we're buying bent. One mandrel each." + _LIST, _FIRST, _THIRD),
    case("some-please", "Items 1 and 3 please. Item 2 we buy in bent." + _LIST, _FIRST, _THIRD),
    case("some-de", "Könnt ihr Pos. 1 und 3 anbieten? Pos. 2 kaufen wir fertig gebogen zu." + _MM_LIST, *_PICKED),
    case("some-fr", "Pouvez-vous chiffrer les lignes 1 et 3 ? La ligne 2, on l'achète cintrée." + _MM_LIST, *_PICKED),
    case("some-es", "¿Pueden cotizar las líneas 1 y 3? La línea 2 la compramos ya curvada." + _MM_LIST, *_PICKED),
    case("some-it", "Potete quotare le voci 1 e 3? La voce 2 la compriamo già piegata." + _MM_LIST, *_PICKED),
    case("some-nl", "Kunt u regel 1 en 3 aanbieden? Regel 2 kopen we gebogen in." + _MM_LIST, *_PICKED),
    case("some-bend-not-asked", "Can you bend items 1 and 3 with a plug? One mandrel each for all." + _LIST, _FIRST, _SECOND, _THIRD),
    case("some-star-de", "Bitte nur die markierten Zeilen (*) anbieten:" + _STARRED, _STAR),
    case("some-star-fr", "Uniquement les lignes marquées d'un * :" + _STARRED, _STAR),
    case("some-star-es", "Solo las líneas marcadas (*):" + _STARRED, _STAR),
    case("some-star-it", "Solo le righe segnate con *:" + _STARRED, _STAR),
    case("some-star-nl", "Alleen de gemarkeerde regels (*) graag:" + _STARRED, _STAR),
    case("some-star-highlighted", "Just the highlighted lines please (marked *):\n\n  Ref   Tube            Radius\n  A     19 x 1.2        57\n  B  *  25 x 1.2        75\n  C     25 x 1.5        75\n  D  *  32 x 1.5        96\n\nOne mandrel for each marked line. A and C we have.", _STAR, mm("32", "1.5", "96")),
]  # fmt: skip

FAMILIES = (
    OTHER_SIDE, TO_INSIDE, OD_TIMES, NOW_SO, TUBES_LISTED, RUN_TOGETHER, BUTTED, FOOT_MARKS,
    SMALLEST_DIE, CENTRE_LINE, SOME_LINES,
)  # fmt: skip
