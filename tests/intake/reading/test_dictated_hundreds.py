"""Sizes dictated in words in German, French, Spanish, Italian and Dutch: hundreds of several words,
walls behind a times sign in words. The sentences are made up; no published source.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text


@pytest.mark.parametrize(
    ("words", "wall", "clr"),
    [
        ("Rohr vierzig mal zwei, Radius hundertundfünf", "2", 105),
        ("Rohr vierzig mal zwei, Radius dreihundertfünfzig", "2", 350),
        ("Rohrdurchmesser vierzig, Wanddicke zwei, Radius hundertfünf", "2", 105),
        ("tube quarante par deux, rayon cent cinq", "2", 105),
        ("tube quarante par deux, rayon trois cent vingt", "2", 320),
        ("tube quarante par un et demi, rayon quatre-vingt-quinze", "1.5", 95),
        ("tube quarante sur deux, rayon soixante-quinze", "2", 75),
        ("tubo cuarenta por dos, radio ciento cuarenta y cinco", "2", 145),
        ("tubo cuarenta por dos, radio doscientos cincuenta y cinco", "2", 255),
        ("tubo cuarenta por uno y medio, radio ciento veinticinco", "1.5", 125),
        ("tubo quaranta per due, raggio centocinque", "2", 105),
        ("tubo quaranta per uno e mezzo, raggio trecento", "1.5", 300),
        ("buis veertig bij twee, radius honderd en vijf", "2", 105),
        ("buisdiameter veertig, wand twee, straal driehonderd", "2", 300),
    ],
)
def test_a_size_in_words(words: str, wall: str, clr: int) -> None:
    (size,) = read_text(words)
    assert (size.od_mm, size.wall_mm, size.clr_mm) == (40, Decimal(wall), clr)
    assert not size.doubts


@pytest.mark.parametrize(
    "words",
    [
        "tubo 40 x 2 mm, radio 80, dos mandriles por dos semanas",
        "tubo 40 x 2 mm, raggio 80, per due mandrini",
        "tube 40 x 2 mm, rayon 80, un mandrin par deux mois",
    ],
)
def test_a_little_word_that_multiplies_nothing(words: str) -> None:
    (size,) = read_text(words)
    assert (size.od_mm, size.wall_mm, size.clr_mm) == (40, 2, 80)
