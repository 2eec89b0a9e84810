"""The centreline radius as people measure, abbreviate and tabulate it; one size or several."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

import pytest

from .support import Size, case, inch, mm, read_text, written_down

_D = mm("30", "2", "75")
_H = inch("1.5", "0.065", "4.5")
_U = inch("0.75", "0.035", "1.5")

MEASURED = [
    case("in-middle", "Your offer for 2 mandrels: tube 30 x 2, radius in middle of tube 75.", _D),
    case("thru-middle", "One mandrel for 1-1/2 by .065. Radius, measured thru the middle of the pipe, 4 1/2.", _H),
    case("at-axis", "One mandrel 30 x 2, radius at axis of tube 75 mm.", _D),
    case("to-ctr", "One mandrel, 1-1/2 x .065 (die: 4-1/2 ctr).", _H),
    case("c-line", "One mandrel. Tube 30 wall 2, S235. Bend c/line = 75.", _D),
    case("cr", "Tube 30 x 2, CR 75, 2 mandrels.", _D),
    case("cr-is-steel", "A mandrel for 16 ga CR 1.5 OD tube, 4.5 rad.", inch("1.5", "0.065", "4.5")),
    case("which-is", 'The former has "75 CRS" cut into it which my dad says is centre radius. 30 x 2 tube. One mandrel.', _D),
    case("slip", "Tube 30mm x 2mm 304, centre redius 75mm, 2 mandrels.", _D),
    case("glued", "need 1 mandrel 30mmx2mm CLR75mm", _D),
    case("metres", "We have 30 x 2 304 and bend at 0.075 m centreline radius. One mandrel.", _D),
    case("one-foot", '3" x .120, 1 foot centerline radius. One mandrel.', inch("3", "0.120", "12")),
    case("feet-inches", "3\" x .120, CLR 1' 6\". One mandrel.", inch("3", "0.120", "18")),
    case("in-words-too", '3" x .120, one foot six inches radius. One mandrel.', inch("3", "0.120", "18")),
    case("said-in-figures", '1.5" x .065", four (4) inch centerline radius, one (1) mandrel.', inch("1.5", "0.065", "4")),
    case("length-of-stock", "3 m lengths, CLR 75, tube 30 x 2. One mandrel.", _D),
    case("in-bracket", '1.5" (4.5" CLR) x .065" 304, one mandrel.', _H),
    case("in-bracket-sign", "30 mm (CLR 75) x 2 mm 304, one mandrel.", _D),
    case("wall-in-od", '.065 304 in 1.5, 4.5" CLR, single mandrel.', _H),
    case("die-ends-it", "4.5 CLR die. 1.5 .065 DOM. 1 mandrel.", _H),
]  # fmt: skip

ON_THE_BENDER = [
    case("pivot", "One mandrel, 1.5 x .065 dom. From the pivot pin to the middle of the groove is 4.5 inches.", _H),
    case("hub", "One mandrel, 1.5 x .065, hub center to tube center 4.5 in.", _H),
    case("axes", "Tube 30 x 2. Distance from the rotation axis to the tube axis 75 mm. One mandrel.", _D),
    case("off-pivot", 'The center of the tube runs 4.5" off the pivot, tube 1.5 x .065. One mandrel.', _H),
    case("near-edge", "From pivot to near edge of tube 60 mm, tube 30 x 2 mild. One mandrel please.", _D),
    case("far-edge", "From pivot to the outer edge of the tube 90 mm, tube 30 x 2 mild. One mandrel please.", _D),
    case("drehachse", "Dorn für 30 x 2. Abstand von Drehpunkt bis Rohrmitte 75 mm.", _D),
    case("axe", "Mandrin pour 30 x 2. Distance de l'axe de rotation à l'axe du tube 75 mm.", _D),
    case("eje", "Mandril para 30 x 2. Distancia del eje de giro al eje del tubo 75 mm.", _D),
    case("asse", "Mandrino per 30 x 2. Distanza dall'asse di rotazione all'asse del tubo 75 mm.", _D),
    case("draaipunt", "Doorn voor 30 x 2. Afstand van draaipunt tot hart buis 75 mm.", _D),
    case("heel", "Heel radius (outside wall of the elbow) is 90mm, OD 30mm, thickness 2mm. One mandrel.", _D),
    case("the-heel", "The heel has a radius of 90 mm, OD 30, wall 2. One mandrel.", _D),
    case("throat", "Throat is 60 mm radius, OD 30, wall 2. One mandrel.", _D),
    case("block", "The block has a 60 radius, flat face, tube 30 x 2 against it, so CLR works out 75. One mandrel.", _D),
    case("stamp", "Former is stamped 30/75, tube size then centre radius. We run 2 mm wall 304 in it. One mandrel.", _D),
    case("plate-corner", "30 x 2, CLR 75. (The R5 on the print is the plate corner, ignore.) One mandrel.", _D),
]  # fmt: skip

ACROSS = [
    case("tube-centers", 'Half circle, 9" from tube center to tube center across the opening. 1.5 x .065. One mandrel.', _H),
    case("diameter", '1.5 x .065, die is 9" diameter measured center of tube to center of tube so 4.5" radius. One mandrel.', _H),
    case("follows", "The centreline of the tube follows a circle of 150 mm in diameter. Tube 30 x 2. One mandrel.", _D),
    case("pitch-circle", "The die has a pitch circle diameter of 150, so the tube centre is at 75. Tube 30 x 2. One mandrel.", _D),
    case("pitch-of-holes", "Tube 30 x 2, R 75. Flange has 4 holes on 120 PCD. One mandrel.", _D),
    case("mean-ring", "Tube 30 x 2, bent to a 150 mm mean diameter ring. One mandrel.", _D),
    case("their-centerlines", "Return bends, 3/4 x .035 304, legs parallel with 3 inches between their centerlines. 2 mandrels.", _U),
    case("on-centers", 'U, legs 3" on centers, tube 3/4 x .035. One mandrel.', _U),
    case("pitch", 'U-bends on 3" pitch. Tube 3/4 x .035. 2 mandrels.', _U),
    case("leg-to-leg", 'U-bends, 3" leg-to-leg (center to center). Tube 3/4 x .035. 2 mandrels.', _U),
]  # fmt: skip

SEVERAL = [
    case("factor", "Item | Tube | D-factor\n1 | 40x1 | 1.5\n2 | 45x1 | 2\nOne mandrel per item, 1.4301.", mm("40", "1", "60"), mm("45", "1", "90")),
    case("times-d", "OD | Wall | CLR (xD) | Qty\n40 | 1 | 1.5 | 1\n45 | 1 | 2 | 1", mm("40", "1", "60"), mm("45", "1", "90")),
    case("multiples", "Item | Tube | D\n1 | 40x1 | 1.5D\n2 | 45x1 | 2D\nOne mandrel per item.", mm("40", "1", "60"), mm("45", "1", "90")),
    case("listed-on", '1" and 1.25" on a 3" CLR, 1.5" on a 4.5" CLR. All .065 wall. One mandrel of each size.', inch("1", "0.065", "3"), inch("1.25", "0.065", "3"), inch("1.5", "0.065", "4.5")),
    case("listed-on-bare", "38 and 42 on 100, 48 and 51 on 150. All 2 mm wall. One mandrel of each size.", mm("38", "2", "100"), mm("42", "2", "100"), mm("48", "2", "150"), mm("51", "2", "150")),
]  # fmt: skip


@pytest.mark.parametrize(("text", "sizes"), MEASURED + ON_THE_BENDER + ACROSS + SEVERAL)
def test_the_radius_is_read(text: str, sizes: tuple[Size, ...]) -> None:
    requests = read_text(text)
    assert len(requests) == len(sizes), written_down(requests)
    assert all(s.describes(r) for s, r in zip(sizes, requests, strict=True)), written_down(requests)


@pytest.mark.parametrize("words", ["two (2) bend mandrels", "quantity two (2) bend mandrels"])
def test_bend_mandrels_are_counted(words: str) -> None:
    requests = read_text(f"Please quote {words} for 30 mm OD, 2 mm wall, CLR 75 mm.")
    assert [request.quantity for request in requests] == [2]


def test_a_pitch_is_that_of_the_figure_behind_its_label() -> None:
    requests = read_text('Hairpins, 1 mandrel:\ntube  3/4" OD\nwall  .035"\nleg pitch  3" c to c')
    assert _U.describes(requests[0]), written_down(requests)


@pytest.mark.parametrize(
    "text",
    [
        "Mandrel for 30 x 2. The R 60 is for the bracket bend, R 75 for the handle.",
        "Mandrel for 30 x 2. Radius R60 is on the corners, radius R75 on the straight.",
        "Mandrel for 30 x 2, the R 60 on the drawing is on the bend flange, R 75 for the rest.",
    ],
)
def test_a_bend_called_by_what_it_is_on_is_one(text: str) -> None:
    assert {request.clr_mm for request in read_text(text)} == {60, 75}
