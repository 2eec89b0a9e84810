"""Numbers in words, lists in an order, and the words by which a radius or a second tube is given."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from .support import case, inch, mm

_MM = mm("38", "1.5", "57")
_INSIDE = mm("30", "1.5", "75")  # 60 to the inside, and half of 30
_TWO = mm("22.2", "0.9", "66"), mm("25.4", "0.9", "76")
_THREE = mm("20", "1", "60"), mm("25", "1.5", "75"), mm("30", "2", "90")
_EACH = mm("20", "1.5", "60"), mm("25", "1.5", "60"), mm("30", "1.5", "60")

SIDES = [  # 3 in to the inside is 3 + 7/16 to the centre line of 7/8 tube
    case("inside-opens", "building bars 7/8 x .065 chromo. inside of the bend is 3 inch radius, need a mandrel", inch("0.875", "0.065", "3.4375")),
    case("outside-opens", "bars 1.5 x .065. outside of the bend is 6 inch radius", inch("1.5", "0.065", "5.25")),
    case("inside-not-centre-es", "tubo de 30 x 1,5 en AISI 316, el radio es 60 pero por DENTRO de la curva, no al eje", _INSIDE),
    case("inside-not-centre-en", "Tube 30 x 1.5 mm 304, radius is 60 but to the inside, not to the centreline.", _INSIDE),
    case("inside-not-centre-de", "Rohr 30 x 1,5 1.4301, Radius 60, aber innen gemessen, nicht auf Mitte.", _INSIDE),
    case("inside-not-centre-it", "Tubo 30 x 1,5 inox, raggio 60 ma interno, non in asse.", _INSIDE),
    case("inside-not-centre-nl", "Buis 30 x 1,5 rvs, radius 60 maar binnenkant, niet hartlijn.", _INSIDE),
    case("centre-not-inside", "Tube 30 x 1.5 mm 304, radius 60 to the centreline, not the inside.", mm("30", "1.5", "60")),
    case("not-centre", "Tube 30 x 1.5 mm radius 60, not the centreline as you assumed", mm("30", "1.5", "60", "clr")),
    case("inside-or-centre", "Tube 30 x 1.5 mm 304, radius 60 inside, or is it centreline?", mm("30", "1.5", "60", "clr")),
]  # fmt: skip

RADIUS_WORDS = [
    case("ray-of-bending", "We need mandrels for tube of 22,2 thickness 0,9 and tube of 25,4 thickness 0,9. The ray of bending is 66 at the axis for the first one and 76 for the second one.", *_TWO),
    case("ray-of-curvature", "Tube 38 x 1.5 inox, ray of curvature 57 at the axis", _MM),
    case("bending-ray", "Tube 38 x 1.5 inox, bending ray 57", _MM),
    case("ray-is-a-name", "Tube 38 x 1.5 inox, bend radius 57.\n\nRay\n66 Mill Lane", _MM),
    case("new-value", "OD 48.3, wall 3.2 mm, radius - please see new value 145 (was 150 in rev A).", mm("48.3", "3.2", "145")),
    case("is-correct", "yes, OD is correct at 48.3. Wall I confirm 3.2 mm. Radius 145.", mm("48.3", "3.2", "145")),
    case("new-value-de", "Rohr 48,3 x 3,2, Radius - neuer Wert 145 (vorher 150).", mm("48.3", "3.2", "145")),
    case("new-value-fr", "Tube 48,3 x 3,2, rayon - nouvelle valeur 145.", mm("48.3", "3.2", "145")),
    case("new-wall", "OD 48.3 mm, wall - updated figure 2.9 (was 3.2), radius 145.", mm("48.3", "2.9", "145")),
    case("in-rev", "OD 48.3 mm, wall 3.2, radius changed to 145 in rev B.", mm("48.3", "3.2", "145")),
    case("stays-de", "Rohr 42,4 x 2,6. Radius bleibt 150 auf Mitte.", mm("42.4", "2.6", "150")),
    case("stays-at-de", "Rohr 42,4 x 2,6. Radius bleibt bei 150.", mm("42.4", "2.6", "150")),
    case("stays-en", "Tube 42.4 x 2.6, radius stays 150", mm("42.4", "2.6", "150")),
    case("stays-wall", "Rohr 42,4, Wand bleibt 2,6, Radius 150", mm("42.4", "2.6", "150")),
    case("stays-fr", "Tube 42,4 x 2,6, le rayon reste à 150", mm("42.4", "2.6", "150")),
    case("stays-it", "Tubo 42,4 x 2,6, il raggio rimane 150", mm("42.4", "2.6", "150")),
    case("stays-nl", "Buis 42,4 x 2,6, radius blijft 150 hartlijn", mm("42.4", "2.6", "150")),
]  # fmt: skip

IN_ORDER = [
    case("order-up", "20x1, 25x1.5 and 30x2 mm, a mandrel for each. CLRs are 60, 75 and 90 going up in order.", *_THREE),
    case("order-same", "20x1, 25x1.5, 30x2 mm. The CLRs in the same order are 60, 75 and 90.", *_THREE),
    case("order-small", "20x1, 25x1.5, 30x2 mm. Radii 60, 75, 90 from small to large.", *_THREE),
    case("order-de", "Rohre 20x1, 25x1,5 und 30x2, Radien der Reihe nach 60, 75 und 90.", *_THREE),
    case("order-de-2", "Rohre 20x1, 25x1,5 und 30x2, Radien in dieser Reihenfolge 60, 75, 90.", *_THREE),
    case("order-fr", "tubes 20x1, 25x1,5 et 30x2, rayons dans l'ordre 60, 75 et 90.", *_THREE),
    case("order-es", "tubos 20x1, 25x1,5 y 30x2, radios por orden 60, 75 y 90.", *_THREE),
    case("order-nl", "buizen 20x1, 25x1,5 en 30x2, radius op volgorde 60, 75 en 90.", *_THREE),
    case("order-not-said", "20x1, 25x1.5 mm. Radii 60 and 75.", mm("20", "1", "60", "clr"), mm("25", "1.5", "75", "clr")),
    case("order-in-order-to", "20x1, 25x1.5 mm. Radii 60 and 75 in order to clear the frame.", mm("20", "1", "60", "clr"), mm("25", "1.5", "75", "clr")),
    case("list-then-wall", "Tubes 28 and 35 mm, radius 70 and 95 mm respectively, wall 1.5 mm", mm("28", "1.5", "70"), mm("35", "1.5", "95")),
    case("list-then-wall-us", "1.5 and 1.75 OD, CLR 4.5 and 5.25 respectively, wall .065", inch("1.5", "0.065", "4.5"), inch("1.75", "0.065", "5.25")),
    case("radius-then-tube", "CLR 3.25, 1.000 in x 14 gauge", inch("1", "0.083", "3.25")),
]  # fmt: skip

INCHES_IN_WORDS = [
    case("inch-first", "He says inch, inch and a quarter and inch and a half, all sixteen gauge, and the radiuses are 3, 4 and 5 inches in that order.", inch("1", "0.065", "3"), inch("1.25", "0.065", "4"), inch("1.5", "0.065", "5")),
    case("inch-and-inch", "inch and inch and a half tube, .065 wall, 4.5 CLR both", inch("1", "0.065", "4.5"), inch("1.5", "0.065", "4.5")),
    case("inch-is-unit", "38.1 mm is an inch and a half, .065 wall, 4.5 inch CLR", inch("1.5", "0.065", "4.5")),
]  # fmt: skip

MANDRELS_OF = [
    case("mandrels-es", "necesitamos mandriles de 20, de 25 y de 30, todos de pared 1,5, el radio es 60 en los tres al eje. uno de cada.", *_EACH),
    case("mandrels-fr", "mandrins de 20, de 25 et de 30, tous en paroi 1,5, rayon 60 à l'axe pour les trois", *_EACH),
    case("mandrels-it", "mandrini da 20, da 25 e da 30, tutti spessore 1,5, raggio 60 in asse", *_EACH),
    case("mandrels-de", "Dorne für 20, für 25 und für 30, alle Wand 1,5, Radius 60 Mitte. Je einer", *_EACH),
    case("tubes-es", "tubos de 20, de 25 y de 30, pared 1,5, radio 60 al eje", *_EACH),
    case("mandrel-one", "mandril de 38, pared 1,5, radio 57 al eje", mm("38", "1.5", "57", "od")),
    case("mandrel-beside-tube", "tubo 38 x 1,5, radio 57 al eje, mandril de 34 como el otro", _MM),
]  # fmt: skip

PARTED = [  # the unit where the comma would be
    case("mm-5", "tube inox 316L diametre 38 epaisseur 1 mm 5 rayon 57 fibre neutre", _MM),
    case("mm5-glued", "tube inox 38 épaisseur 1mm5 rayon 57 fibre neutre", _MM),
    case("mm5-times", "tube inox 38 x 1mm5, rayon 57", _MM),
    case("mm-7-od", "tube inox de 33 mm 7, épaisseur 2 mm, rayon 67 mm 5", mm("33.7", "2", "67.5")),
    case("mm-half", "épaisseur 1 mm et demi, tube diamètre 38 inox, rayon 57", _MM),
    case("mm-then-count", "tube inox 38 épaisseur 1 mm, 5 mandrins, rayon 57", mm("38", "1", "57")),
    case("mm-then-mandrels", "tube inox 38 épaisseur 1 mm 5 mandrins rayon 57", mm("38", "1", "57")),
    case("mm-then-item", "1) tube 6 x 0.8 mm, CLR 12 mm\n2) tube 8 x 1 mm, R18", mm("6", "0.8", "12"), mm("8", "1", "18")),
    case("od-and-wall", "Tube 38 mm 1.5 mm, R 57", _MM),
]  # fmt: skip

DICTATED = [
    case("dictated-de", "brauch an dorn für vierziger rohr zwei millimeter wand v2a radius achtzig rohrmitte einen bitte", mm("40", "2", "80")),
    case("dictated-de-two-words", "Rohr achtundzwanzig mal eins fünf, Radius sechsundfünfzig, Edelstahl", mm("28", "1.5", "56")),
    case("dictated-de-comma", "Rohr vierzig mal zwei Komma fünf, Biegeradius hundertzwanzig, Edelstahl", mm("40", "2.5", "120")),
    case("dictated-de-er", "Dorn für zwanziger und dreißiger Rohr, Wand zwei, Radius sechzig, je einen", mm("20", "2", "60"), mm("30", "2", "60")),
    case("dictated-fr", "tube de quarante-deux, paroi un virgule cinq, rayon cent vingt, inox", mm("42", "1.5", "120")),
    case("dictated-es", "tubo de cuarenta y dos, pared dos, radio ciento veinte, inox", mm("42", "2", "120")),
    case("dictated-it", "tubo da quaranta, spessore due, raggio ottanta, inox", mm("40", "2", "80")),
    case("dictated-nl", "buis van veertig, wand twee, straal tachtig, rvs", mm("40", "2", "80")),
    case("dictated-multiple", "Rohr 40 x 2, Radius zwei mal Durchmesser", mm("40", "2", "80")),
    case("dictated-counts", "Rohr 40 x 2, Radius 80, wir biegen zwanzig Rohre am Tag", mm("40", "2", "80")),
    case("dictated-article", "Rohr 40 mm, eine Wand 2 mm, Radius 100", mm("40", "2", "100")),
    case("dictated-once", "mandrel for 1.625 x .065 304L tube. Will confirm the radius once the die shows up.", inch("1.625", "0.065")),
    case("dictated-due", "mandrel for 1.625 x .065 304L tube, radius due tomorrow, wall due to be checked", inch("1.625", "0.065")),
    case("dictated-center", "1-1/2 OD by .065 wall, 4-1/2 center line radius", inch("1.5", "0.065", "4.5")),
]  # fmt: skip

_STEPPED = mm("60", "1.5", "90"), mm("50", "1.5", "75")

SECOND_TUBES = [
    case("goes-down-de", "das vordere ist 60 mm dick mit 1,5 Wand und wird mit Radius 90 gebogen, hinten geht es auf 50 mm runter, gleiche Wand, Radius 75. Ich bräuchte je einen Dorn.", *_STEPPED),
    case("goes-down-en", "the front is 60 x 1.5 mm on radius 90, at the back it goes down to 50 mm, same wall, radius 75. One mandrel each.", *_STEPPED),
    case("necks-down", "Front is 2.5 x .065 on 4 CLR and it necks down to 2.25 at the rear, same wall, 3.5 CLR. A mandrel for each.", inch("2.5", "0.065", "4"), inch("2.25", "0.065", "3.5")),
    case("wall-the-same", "Vorne 60 x 1,5 mit R 90, hinten wird es 50, Wand gleich, R 75. Je ein Dorn.", *_STEPPED),
    case("same-wall-radii", "Rohr 38 x 1,5, Radien 76 und 114, gleiche Wand. Je ein Dorn", mm("38", "1.5", "76"), mm("38", "1.5", "114")),
    case("same-wall-on", "2 x .120 on a 6 radius and also on 8, same wall. DOM", inch("2", "0.12", "6"), inch("2", "0.12", "8")),
    case("same-wall-again", "60 x 1.5 mm R 90, and the 50 with the same wall and R 75. One mandrel each", *_STEPPED),
    case("wall-goes-with", "Wall .095 goes with the 1.75 tube, .065 with the 1.5. CLR 5.25 and 4.5 respectively.", inch("1.75", "0.095", "5.25"), inch("1.5", "0.065", "4.5")),
    case("brackets", "CLRs are 5.25 (1.75 x .095) and 4.5 (1.5 x .065). One mandrel each", inch("1.75", "0.095", "5.25"), inch("1.5", "0.065", "4.5")),
    case("brackets-three", "Radien: 70 (35 x 1,5), 90 (45 x 2) und 120 (60 x 2). Je ein Dorn", mm("35", "1.5", "70"), mm("45", "2", "90"), mm("60", "2", "120")),
    case("bracket-in-mm", "1.75 x .095 (44.45 x 2.413 mm) on 5.25 CLR", inch("1.75", "0.095", "5.25")),
    case("bracket-radius", "Tube 25 x 1.5 mm, CLR 62.5 (inside radius 50)", mm("25", "1.5", "62.5")),
    case("die-of-tube", "My die is 1.5 tube, 4.5 clr. .065 304. one mandrel", inch("1.5", "0.065", "4.5")),
    case("pipe-again", "Tube's 2 3/8 OD .154 wall, yes I know that's 2 inch sch 40, used, 31 ft joints. Radius 10 inch at the center. Want a mandrel.", inch("2.375", "0.154", "10")),
    case("pipe-other", "I need 2-3/8 OD .154 wall, and also 2 inch sch 80, both 10 inch radius, one mandrel each", inch("2.375", "0.154", "10"), inch("2.375", "0.218", "10")),
    case("round-and-square", "Two tubes:\n\nthe round is 40 mm od x 2, the square is 40 x 40 x 2. Both get bent to 120 centre line radius. We'd want one mandrel for each.", mm("40", "2", "120"), mm(None, "2", "120", shape="square")),
]  # fmt: skip

BENDING_CENTRES = [
    case("centre-de", "Dorn, 3 Stück:\nRohr 33.7x2.0, 1.4404, R=67.4 (2D), CNC-Biegezentrum bis 52 mm.", mm("33.7", "2", "67.4")),
    case("cell-sign", "1 Dorn: Rohr 33.7x2.0, 1.4404, R=67.4, Biegezelle max. Ø 52.", mm("33.7", "2", "67.4")),
    case("centre-en", "1 mandrel: tube 33.7x2.0 mm, 1.4404, R=67.4, bending centre max 52 mm.", mm("33.7", "2", "67.4")),
    case("bend-center-r", "STS439, outer 42.7 mm, thick 1.2, bend center R 64.", mm("42.7", "1.2", "64")),
    case("for-the-machine", "Für unsere Biegemaschine Ø 33.7 x 2 R 67, ein Dorn", mm("33.7", "2", "67")),
    case("unknown-thing", "1 Dorn: Rohr 33.7x2.0 R=67.4, Richtbank bis 52 mm.", mm("33.7", "2", "67.4"), mm("33.7", "5.2", "67.4", "od wall clr")),
]  # fmt: skip

FAMILIES = (
    SIDES, RADIUS_WORDS, IN_ORDER, INCHES_IN_WORDS, MANDRELS_OF, PARTED, DICTATED, SECOND_TUBES,
    BENDING_CENTRES,
)  # fmt: skip
