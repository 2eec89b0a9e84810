"""A figure put right by 'not this but that', and told anew in the whole size: nothing is left to
ask. Where the size has another than the one that puts it right, all is in doubt."""

# ruff: noqa: E501 - a message stands on one line

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text


@pytest.mark.parametrize(
    "text",
    [
        "I sent you an RFQ on Friday and the wall was wrong. It is not 2 but 2.5. To have it all in one place:\n\n48.3 mm OD x 2.5 mm wall\n120 mm CLR\n1 mandrel",
        "The wall in my last mail was wrong, it's 2.5 mm. So: 48.3 x 2.5 mm, 120 mm CLR, 1 mandrel.",
        "Die Wand war falsch angegeben, es sind nicht 2 sondern 2,5 mm. Noch einmal alles: Rohr 48,3 x 2,5, R 120, 1 Dorn.",
        "L'épaisseur était fausse, une erreur : ce n'est pas 2 mais 2,5. Donc tube 48,3 x 2,5, rayon 120 à l'axe, 1 mandrin.",
        "C'est du 48,3 x 2,5 et non du 48,3 x 2. Rayon 120 à l'axe, 1 mandrin.",
        "C'est du 48,3 x 2,5 et pas du 48,3 x 2. Rayon 120 à l'axe, 1 mandrin.",
        "It's 48.3 x 2.5 mm and not 48.3 x 2 as I wrote. 120 mm CLR, 1 mandrel.",
        "Es ist 48,3 x 2,5 und nicht 48,3 x 2 wie geschrieben. R 120 Mitte, 1 Dorn.",
    ],
)
def test_told_anew(text: str) -> None:
    (size,) = read_text(text)
    lengths = (size.od_mm, size.wall_mm, size.clr_mm)
    assert lengths == (Decimal("48.3"), Decimal("2.5"), Decimal(120))
    assert not size.doubts


def test_another_than_the_one_that_puts_it_right() -> None:
    (size,) = read_text('I gave you the wrong radius, it is 5. 1-7/8" OD x .083" wall, CLR 6.')
    assert size.doubt_on("clr")
