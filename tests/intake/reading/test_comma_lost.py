"""A size put right because its commas were left out: the second is the one asked for.

The sentences are made up; no published source.
"""

from __future__ import annotations

import pytest

from .support import read_text


@pytest.mark.parametrize(
    "text",
    [
        "Biegedorn für Rohr 250 x 20 mm, Radius 75. Ups, da fehlt je das Komma: 25,0 x 2,0 mm.",
        "Biegedorn für Rohr 250 x 20 mm, Radius 75. Komma vergessen: 25,0 x 2,0 mm natürlich.",
        "Mandrel for 250 x 20 mm tube, CLR 75. The decimal points went missing: 25.0 x 2.0 mm.",
        "Mandrel for 250 x 20 mm tube, CLR 75. I forgot the decimal points: 25.0 x 2.0 mm.",
        "Un mandrin pour tube 250 x 20 mm, rayon 75. Oups, il manque la virgule : 25,0 x 2,0 mm.",
        "Un mandril para tubo 250 x 20 mm, radio 75. Faltan las comas: 25,0 x 2,0 mm.",
        "Un mandrino per tubo 250 x 20 mm, raggio 75. Ops, manca la virgola: 25,0 x 2,0 mm.",
        "Een doorn voor buis 250 x 20 mm, straal 75. Oeps, de komma ontbreekt: 25,0 x 2,0 mm.",
        "Biegedorn für Rohr 250 x 20 mm, Radius 75.\n\nHoppla, 25,0 x 2,0 mm natürlich.",
    ],
)
def test_a_size_put_right_replaces_the_first(text: str) -> None:
    (size,) = read_text(text)
    assert (size.od_mm, size.wall_mm, size.clr_mm) == (25, 2, 75)
    assert not size.doubts


def test_the_carrier_puts_nothing_right() -> None:
    first, second = read_text(
        "A mandrel for 38 x 1.5 mm, CLR 76. Ship by UPS, and one for 50 x 2 mm, CLR 100."
    )
    assert (first.od_mm, second.od_mm) == (38, 50)


@pytest.mark.parametrize(
    "text",
    [
        "I had the wall wrong. It's not 1.5, it's 2. So:\n\n38 OD, 2 wall, CLR 76. One mandrel.",
        "Ich hatte die falsche Wand. Es sind 2 mm, nicht 1,5. Also: 38 x 2, Radius 76, ein Dorn.",
        "I gave you the wrong wall, it is 2 not 1.5. Correct: 38 OD, 2 wall, CLR 76, one mandrel.",
    ],
)
def test_what_is_put_right_and_told_whole_is_sure(text: str) -> None:
    (size,) = read_text(text)
    assert (size.od_mm, size.wall_mm, size.clr_mm) == (38, 2, 76)
    assert not size.doubts


def test_what_is_put_right_and_told_otherwise_is_not() -> None:
    (size,) = read_text("I gave you the wrong radius, it is 90. One mandrel 38 OD, 2 wall, CLR 76.")
    assert size.doubt_on("clr")
