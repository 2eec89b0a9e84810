"""Radii told later for tubes by what these are called: 'the main hoop gets a 6 CLR and the rest a
4-1/2'. The sentences are made up; no published source.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text

_INCH = Decimal("25.4")


@pytest.mark.parametrize(
    "tubes",
    [
        "1.5 x .120 for the main hoop and 1.25 x .083 for the rest.",
        "1.5 x .120 main hoop and 1.25 x .083 for the rest.",
        "main hoop 1.5 x .120, the rest 1.25 x .083.",
        "1.5 inch chromoly .120 main hoop and 1.25 inch chromoly .083 for the rest.",
    ],
)
@pytest.mark.parametrize(
    "radii",
    [
        "The main hoop gets 6 inch CLR and the rest 4-1/2 CLR.",
        "Main hoop is on a 6 CLR, the rest on 4.5 CLR.",
        "Main hoop radius 6, the rest 4-1/2.",
        "The rest bends on 4.5 CLR and the main hoop on 6 CLR.",
    ],
)
def test_a_name_of_two_words_behind_the_tube_ties_its_radius(tubes: str, radii: str) -> None:
    first, second = read_text(f"Need one mandrel each: {tubes} {radii}")
    assert (first.od_mm, first.clr_mm) == (Decimal("1.5") * _INCH, 6 * _INCH)
    assert (second.od_mm, second.clr_mm) == (Decimal("1.25") * _INCH, Decimal("4.5") * _INCH)
    assert not first.doubts
    assert not second.doubts


@pytest.mark.parametrize(
    "text",
    [
        "Je ein Dorn für 42,4 x 2 (oberer Holm) und 48,3 x 2,6 (Pfosten). "
        "Oberer Holm Radius 85, Pfosten Radius 120.",
        "Un mandrin pour chaque : 42,4 x 2 main courante haute, 48,3 x 2,6 pour le reste. "
        "La main courante est au rayon 85 et le reste au rayon 120.",
        "One mandrel each for 42.4 x 2 top rail and 48.3 x 2.6 corner posts. "
        "Top rail radius 85, corner posts radius 120.",
        "One mandrel each: 42.4 x 2 front hoop, 48.3 x 2.6 rear hoop. "
        "The front hoop gets radius 85 and the rear hoop 120.",
    ],
)
def test_names_that_share_a_word_are_told_apart_by_the_other(text: str) -> None:
    first, second = read_text(text)
    assert (first.od_mm, first.clr_mm) == (Decimal("42.4"), 85)
    assert (second.od_mm, second.clr_mm) == (Decimal("48.3"), 120)
