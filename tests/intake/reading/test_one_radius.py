"""One radius told twice, and one of two that is still to be settled on: one size."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

import pytest

from .support import Size, inch, mm, read_text, row, written_down

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


@pytest.mark.parametrize(("text", "size"), TOLD_AGAIN + UNDECIDED)
def test_one_size_is_read(text: str, size: Size) -> None:
    requests = read_text(text)
    assert len(requests) == 1, written_down(requests)
    assert size.describes(requests[0]), written_down(requests)


def test_both_of_two_radii_stay_two_sizes() -> None:
    requests = read_text("1.5 x .065 304, 4.5 or 6 CLR, quote both please. Material not decided.")
    assert [r.clr_mm for r in requests] == [inch(clr="4.5").clr, inch(clr="6").clr]
