"""Sizes that are left alone for now, and those of a mandrel that somebody has: beside the one that
is asked for they are no requests. The sentences are made up; no published source.
"""

from __future__ import annotations

import pytest

from .support import read_text


@pytest.mark.parametrize(
    "aside",
    [
        "We'll leave the 50 tube for now.",
        "The 50 mm tube we'll leave alone for now.",
        "Das 50er Rohr lassen wir vorerst.",
        "Das 50er lassen wir erst mal sein.",
        "Le tube de 50, on laisse tomber pour l'instant.",
        "El tubo de 50 de momento lo dejamos.",
        "Il tubo da 50 per adesso lo lasciamo stare.",
        "De 50 buis laten we voorlopig zitten.",
        "He has a mandrel for the 50 tube already and it works great.",
        "She already has one for 50 x 2.",
    ],
)
def test_what_is_left_alone_is_left_out(aside: str) -> None:
    (size,) = read_text(f"Quote 2 mandrels for 45x1.2 mm, CLR 67.5 mm. {aside}")
    assert size.od_mm == 45
    assert size.quantity == 2
    assert not size.doubts


@pytest.mark.parametrize(
    "text",
    [
        "We have 54 x 1.2 mm copper to bend at 108 mm CLR for a still-house. Quote a mandrel.",
        "We have 54 x 1.2 mm copper for our pot still, CLR 108 mm. Please quote a mandrel.",
        "He has 54 x 1.2 mm tube to bend on a 108 mm CLR die. Quote him one mandrel please.",
    ],
)
def test_tube_that_somebody_has_to_bend_is_asked_for(text: str) -> None:
    (size,) = read_text(text)
    assert (size.od_mm, size.clr_mm) == (54, 108)
    assert not size.doubts
