"""What stands beside a tube that is told already, and is none of its lengths: its pipe's name, what
a rule book asks for, the bore of what it goes into, a product worked out, a radius still open."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

import pytest

from .support import Size, case, inch, mm, read_text, written_down

PIPE_CALLED = [  # NPS 1-1/2 is 1.9 in, 2 is 2.375, 1 is 1.315, 3/4 is 1.05; sch 40 of 2 is .154, of 1 .133
    case("thats-just", "Loop is 1.9 OD .145 wall, that's just inch and a half black pipe. Radius 7 inch at center. One mandrel.", inch("1.9", "0.145", "7")),
    case("plain-old", "2.375 OD, .154 wall - plain old 2 inch pipe. 8 inch CLR. One mandrel.", inch("2.375", "0.154", "8")),
    case("in-bracket", "It's 1.315 OD, .133 wall (that is 1 inch pipe). CLR 4. One mandrel.", inch("1.315", "0.133", "4")),
    case("just-black", 'The tube measures 1.05 x .113, it\'s just 3/4 black pipe. 3" CLR. One mandrel.', inch("1.05", "0.113", "3")),
    case("form-then-name", 'OD: 2.375\nwall: .154\ncenter line: 8\n\nIt\'s 2" schedule 40 steel pipe. We\'d like two mandrels.', inch("2.375", "0.154", "8")),
    case("next-sentence", "OD 1.315, wall .133, CLR 4. This is 1 inch schedule 40. One mandrel.", inch("1.315", "0.133", "4")),
    case("das-ist", 'OD 60,3, Wand 3,9, Radius 200. Das ist 2" sch 40 Rohr. Ein Dorn.', mm("60.3", "3.9", "200")),
]  # fmt: skip

RULES = [
    case("rules-say", '4130, 1" OD x .095 wall (rules say 0.095 minimum). CLR 3". One mandrel.', inch("1", "0.095", "3")),
    case("rule-book", "1.5 x .120 wall (rule book minimum is .120), CLR 4.5. One mandrel.", inch("1.5", "0.120", "4.5")),
    case("class-rules", "1.5 x .095 wall, the class rules call for .095 minimum. CLR 4.5. One mandrel.", inch("1.5", "0.095", "4.5")),
    case("reglement", "Rohr 38 x 2 (laut Reglement mindestens 2 mm), Radius 100. Ein Dorn.", mm("38", "2", "100")),
    case("own-limit", "1.5 x .095 minimum, CLR 4.5. One mandrel.", inch("1.5", "0.095", "4.5", "wall")),
]  # fmt: skip

BORES = [
    case("shell", "Shell is 42 ID x 20 ft. Tube is 3/4 OD x .065 wall, CLR 3. One mandrel.", inch("0.75", "0.065", "3")),
    case("header", "Tube 25 x 1.5, R 50. It sits in a header of 60 ID. One mandrel.", mm("25", "1.5", "50")),
    case("gates", "1.66 od .109 wall galv steel, 5 in clr, one mandrel. bending bows for gates, 64 in inside.", inch("1.66", "0.109", "5")),
]  # fmt: skip

PRODUCTS = [  # 3 x 26.9 = 80.7, 3 x 33.7 = 101.1; 2 x 1.5 = 3, 2 x 2 = 4
    case("so", "26.9 x 2.3 and 33.7 x 2.6, both on the 3x OD radius - so 80.7 and 101.1. One mandrel each.", mm("26.9", "2.3", "80.7"), mm("33.7", "2.6", "101.1")),
    case("in-bracket-d", "26.9 x 2.3 and 33.7 x 2.6, both 3D bends (80.7 and 101.1 CLR). One mandrel each.", mm("26.9", "2.3", "80.7"), mm("33.7", "2.6", "101.1")),
    case("inches", "1.5 x .065 and 2 x .065, both at 2D, i.e. 3 and 4. One mandrel each.", inch("1.5", "0.065", "3"), inch("2", "0.065", "4")),
]  # fmt: skip

STILL_OPEN = [
    case("still-open", "42.4 x 2.6 P235 the radius is still open. 1 mandrel.", mm("42.4", "2.6")),
    case("nog-niet", "Buis 42,4 x 2,6 de radius is nog niet bekend. Eén doorn.", mm("42.4", "2.6")),
    case("steht", "Ein Dorn für Rohr 42,4 x 2,6 P235 der Radius steht noch nicht fest.", mm("42.4", "2.6")),
]  # fmt: skip

POLISH = [
    case("w-osi", "proszę o ofertę na trzpień do rury fi 32 x 2, promień gięcia w osi 80 mm, ilość 1 szt.", mm("32", "2", "80")),
    case("do-osi", "proszę o ofertę na trzpień do rury fi 32 x 2, promień gięcia do osi: 80 mm, 1 szt.", mm("32", "2", "80")),
    case("średni", "proszę o ofertę na trzpień do rury 32 x 2, średni promień gięcia 80 mm, 1 szt.", mm("32", "2", "80")),
]  # fmt: skip

PIPE_ON_METRIC = [  # sch 40 of NPS 2: 2.375 x .154 in = 60.325 x 3.9116 mm
    case("r200", '2" pipe sched 40, 316, R=200 c/l. One mandrel.', mm("60.325", "3.9116", "200")),
    case("r8", '2" pipe sched 40, 316, radius 8. One mandrel.', inch("2.375", "0.154", "8")),
]  # fmt: skip

DENIED = [
    case("parentesis", "El tubo es 48,3 x 3 mm (no 2 mm), radio 140 mm al eje, 1 mandril.", mm("48.3", "3", "140")),
    case("radio", "Tubo 48,3 x 3 mm, 1 mandril. El radio es 140 mm (no 120 mm).", mm("48.3", "3", "140")),
    case("punto-y-coma", "Espesor 3 mm; no 2 mm. Tubo 48,3, radio 140 mm al eje, 1 mandril.", mm("48.3", "3", "140")),
]  # fmt: skip

MONEY = [
    case("rand-each", "Please quote 2 mandrels: 38 x 2, CLR 114. We have a quote at R 4,800 each.", mm("38", "2", "114")),
    case("rand-excl", "Please quote 2 mandrels: 38 x 2, CLR 114. Last time we paid R4 800 excl. VAT.", mm("38", "2", "114")),
]  # fmt: skip

BY_RANK_AND_NAME = [
    case("small-and-inch", 'One mandrel for 7/8" OD x .049 and one for 1" OD x .065. The small one goes on a 3" radius and the one inch on 4-1/2".', inch("0.875", "0.049", "3"), inch("1", "0.065", "4.5")),
    case("metric", "One mandrel for 22 x 1.5 and one for 25 x 2. The smaller goes on a 66 radius and the 25 on 75.", mm("22", "1.5", "66"), mm("25", "2", "75")),
    case("name-then-rank", 'One mandrel for 7/8" OD x .049 and one for 1" OD x .065. The 7/8 is on 3" radius and the big one on 4-1/2".', inch("0.875", "0.049", "3"), inch("1", "0.065", "4.5")),
]  # fmt: skip

ACROSS = [
    case("middle-of-tube", 'Tubing 2-1/2" OD, .065 wall, bent on a 10" diameter, middle of tube to middle of tube. One mandrel.', inch("2.5", "0.065", "5")),
    case("sur-un-diamètre", "Un mandrin. Tube 38 x 1,5, cintré sur un diamètre de 200 mm, d'axe en axe.", mm("38", "1.5", "100")),
    case("su-un-diametro", "Un mandrino. Tubo 38 x 1,5, curvato su un diametro di 200 mm, da asse ad asse.", mm("38", "1.5", "100")),
]  # fmt: skip

BOTH_WANTED = [
    case("for-each", "1.125 inch tube, CLR 3.375. I don't know yet if .058 or .065 wall so we want a mandrel for each.", inch("1.125", "0.058", "3.375"), inch("1.125", "0.065", "3.375")),
    case("each-wall", "1.5 inch tube, CLR 4.5. Not sure whether .065 or .083 wall, so one mandrel for each wall please.", inch("1.5", "0.065", "4.5"), inch("1.5", "0.083", "4.5")),
    case("each-radius", "1.5 x .065, CLR 3 or 3.5. One mandrel for each radius.", inch("1.5", "0.065", "3"), inch("1.5", "0.065", "3.5")),
]  # fmt: skip

NO_APOSTROPHE = [  # 3,2 d épaisseur is a wall, and no 3.2 D
    case("en-d-epaisseur", "besoin d un mandrin pour du 42,4 en 3,2 d epaisseur, rayon 150 a l axe. un seul mandrin.", mm("42.4", "3.2", "150")),
    case("d-épaisseur", "un mandrin pour tube 42,4, 3,2 d épaisseur, rayon 150 à l'axe.", mm("42.4", "3.2", "150")),
]  # fmt: skip

AS_READ = [
    case("how-i-took-it", 'Tubing 2-1/2" OD, .065 wall, bent on a 10" diameter, middle of tube to middle of tube is how I took it. One mandrel.', inch("2.5", "0.065", "5", "clr")),
    case("if-i-read-it-right", "One mandrel 2.5 OD, .065 wall, CLR 5, if I read it right.", inch("2.5", "0.065", "5", "clr")),
]  # fmt: skip

CLOSED = [
    case("mondays", "One mandrel for 1.5 x .065 on 4.5 CLR and one for 2 x .065 on 6 CLR. We are closed Mondays.", inch("1.5", "0.065", "4.5"), inch("2", "0.065", "6")),
    case("shop", "1.5 x .065 on 4.5 CLR and 2 x .065 on 6 CLR, one mandrel each. The shop is closed Fridays.", inch("1.5", "0.065", "4.5"), inch("2", "0.065", "6")),
]  # fmt: skip

NEXT_LINE = [
    case("for-the-second", "33.7 x 2.6, CLR 84: 1 mandrel\nFor the second 42.4 x 2.6, CLR 100. Also 1 mandrel.", mm("33.7", "2.6", "84"), mm("42.4", "2.6", "100")),
]  # fmt: skip
TABLES = [
    *PIPE_CALLED, *RULES, *BORES, *PRODUCTS, *STILL_OPEN, *POLISH, *PIPE_ON_METRIC, *DENIED, *MONEY,
    *BY_RANK_AND_NAME, *ACROSS, *BOTH_WANTED, *NO_APOSTROPHE, *AS_READ, *CLOSED, *NEXT_LINE,
]  # fmt: skip


@pytest.mark.parametrize(("text", "sizes"), TABLES)
def test_the_tube_alone(text: str, sizes: tuple[Size, ...]) -> None:
    requests = read_text(text)
    shown = f"{text}\n{written_down(requests)}"
    assert len(requests) == len(sizes), shown
    assert all(s.describes(r) for s, r in zip(sizes, requests, strict=True)), shown
