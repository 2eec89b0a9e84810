"""One radius told twice, and one of two that is still to be settled on: one size."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

import pytest

from .support import Size, case, inch, mm, read_text, row, written_down

_70 = mm("28", "1.5", "70")

TOLD_AGAIN = [
    row("to-the-middle", "22.2 x 1.2 mm, 4130, on a 67 mm former, and 67 is to the middle of the tube. One mandrel.", mm("22.2", "1.2", "67")),
    row("measured-to", "Mandrel for 1.5 x .065 304, radius 4.5, and the 4.5 is measured to the centerline.", inch("1.5", "0.065", "4.5")),
    row("to-the-inside", "Mandrel for 1.5 x .065 304 with radius 4.5, and that 4.5 is to the inside of the tube. One.", inch("1.5", "0.065", "5.25")),
    row("bis-rohrmitte", "Dorn für 28 x 1,5 Edelstahl, Radius 70, die 70 sind bis Rohrmitte gemessen. 1 Stück.", _70),
    row("a-l-axe", "Mandrin pour 28 x 1,5 inox, rayon 70, et 70 c'est à l'axe du tube. Un seul.", _70),
    row("al-eje", "Mandril para 28 x 1,5 inox, radio 70, y los 70 son al eje del tubo. Uno.", _70),
    row("tot-hart", "Doorn voor 28 x 1,5 rvs, radius 70, en die 70 is tot hart buis. 1 stuk.", _70),
]  # fmt: skip

_EITHER = mm("50", "1.5", "75", "clr")

UNDECIDED = [
    row("have-not-decided", "A mandrel for 50 x 1.5 in 409 stainless. I've got the choice of a 75 or a 100 former, radius that is, haven't decided. I'd only get one.", _EITHER),
    row("which-would-you", "One mandrel for 50 x 1.5 mm 304, radius 75 or 100. Which would you recommend?", _EITHER),
    row("nicht-entschieden", "Brauche einen Dorn für 50 x 1,5 Edelstahl, Radius 75 oder 100, noch nicht entschieden.", _EITHER),
    row("pas-encore", "Il me faut un mandrin pour 50 x 1,5 inox, rayon 75 ou 100, pas encore décidé.", _EITHER),
    row("aun-no", "Necesito un mandril para 50 x 1,5 inox, radio 75 o 100, aún no he decidido.", _EITHER),
    row("non-ancora", "Mi serve un'anima per 50 x 1,5 inox, raggio 75 o 100, non ho ancora deciso.", _EITHER),
    row("nog-niet", "Ik heb een doorn nodig voor 50 x 1,5 rvs, radius 75 of 100, nog niet besloten.", _EITHER),
]  # fmt: skip


TWO_RADII = [
    case("and-also", "Mandrels for tube 1.5 x .065 304, radius 3 and also 4.5.", inch("1.5", "0.065", "3"), inch("1.5", "0.065", "4.5")),
    case("und-auch", "Rohr 40 x 2, Radien 80 und auch 120, Edelstahl. Je ein Dorn.", mm("40", "2", "80"), mm("40", "2", "120")),
    case("et-aussi", "Tube 40 x 2 inox, rayons 80 et aussi 120. Un mandrin par rayon.", mm("40", "2", "80"), mm("40", "2", "120")),
    case("y-tambien", "Tubo 40 x 2 inox, radios 80 y también 120. Un mandril para cada uno.", mm("40", "2", "80"), mm("40", "2", "120")),
    case("e-anche", "Tubo 40 x 2 inox, raggi 80 e anche 120. Un'anima per ciascuno.", mm("40", "2", "80"), mm("40", "2", "120")),
    case("en-ook", "Buis 40 x 2 rvs, radius 80 en ook 120. Van elk een doorn.", mm("40", "2", "80"), mm("40", "2", "120")),
    case("tighter", "We already have your mandrel for 50.8 x 1.6 at 152 CLR. Now the architects want tighter: 76 and also 102. Same tube, 50.8 x 1.6, 316. One mandrel for each please.", mm("50.8", "1.6", "76"), mm("50.8", "1.6", "102")),
    case("tighter-bends", "You made us a mandrel for 2 x .065 304, 6 CLR. New bends are tighter, 3 and 4. Same tube. One each please.", inch("2", "0.065", "3"), inch("2", "0.065", "4")),
    case("enger", "Wir haben Ihren Dorn für 50,8 x 1,6 mit R 152. Jetzt soll es enger werden: 76 und 102. Gleiches Rohr 50,8 x 1,6, 1.4404. Je ein Dorn bitte.", mm("50.8", "1.6", "76"), mm("50.8", "1.6", "102")),
    case("another-tube", "Mandrels for tube 1.5 x .065 304, radius 3 and also 1.75 x .065 on 4.5.", inch("1.5", "0.065", "3"), inch("1.75", "0.065", "4.5")),
]  # fmt: skip

NOT_TIGHTER = [
    row("also-mitte", "Rohr 40 x 2, 1.4301. Der Innenradius ist 60 mm, also Mitte 80. Bitte 1 Dorn anbieten.", mm("40", "2", "80")),
    row("on-2-inch-tube", "We need tighter bends on 2 inch tube, .065 wall, 304. CLR 3. One.", inch("2", "0.065", "3")),
    row("tolerance", "Tolerance tighter than .005 on the 1.5 x .065 304 tube, CLR 3. One mandrel.", inch("1.5", "0.065", "3")),
    row("a-tighter-bend", "We want a tighter 1.5 x .065 304 bend, 3 CLR. One mandrel.", inch("1.5", "0.065", "3")),
]  # fmt: skip


@pytest.mark.parametrize(("text", "size"), TOLD_AGAIN + UNDECIDED + NOT_TIGHTER)
def test_one_size_is_read(text: str, size: Size) -> None:
    requests = read_text(text)
    assert len(requests) == 1, written_down(requests)
    assert size.describes(requests[0]), written_down(requests)


@pytest.mark.parametrize(("text", "sizes"), TWO_RADII)
def test_each_of_two_radii_is_a_size(text: str, sizes: tuple[Size, ...]) -> None:
    requests = read_text(text)
    assert len(requests) == len(sizes), written_down(requests)
    assert all(s.describes(r) for s, r in zip(sizes, requests, strict=True)), written_down(requests)


def test_both_of_two_radii_stay_two_sizes() -> None:
    requests = read_text("1.5 x .065 304, 4.5 or 6 CLR, quote both please. Material not decided.")
    assert [r.clr_mm for r in requests] == [inch(clr="4.5").clr, inch(clr="6").clr]
