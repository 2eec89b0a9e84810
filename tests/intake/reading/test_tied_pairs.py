"""'Radius 135 on the 45 and 120 on the 40': each tube has its own; arithmetic as written."""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text

METRIC = [("45", "2.5", "135"), ("40", "2", "120")]
INCHES = [("44.45", "2.413", "133.35"), ("38.1", "1.651", "114.3")]
"""1-3/4 x .095 on 5-1/4 and 1-1/2 x .065 on 4-1/2 in."""


@pytest.mark.parametrize(
    ("text", "sizes"),
    [
        ("Hoop 45 x 2.5, rest 40 x 2. Former radius is 135 on the 45 and 120 on the 40.", METRIC),
        ("Mandrels for 45 x 2.5 and 40 x 2. Radius is 135 for the 45 and 120 for the 40.", METRIC),
        ("45 x 2.5 mm and 40 x 2 mm. Radius 135 mm for the 45, 120 mm for the 40.", METRIC),
        ("We have 45 x 2.5 and 40 x 2. CLR 135 with the 45, 120 with the 40.", METRIC),
        ("40 x 2 and 45 x 2.5 please. R135 on the 45 and R120 on the 40.", METRIC),
        ("Dorne für 45 x 2,5 und 40 x 2. Radius 135 beim 45er und 120 beim 40er.", METRIC),
        ("Mandrins pour 45 x 2,5 et 40 x 2. Rayon 135 pour le 45 et 120 pour le 40.", METRIC),
        ("Mandriles para 45 x 2,5 y 40 x 2. Radio 135 para el 45 y 120 para el 40.", METRIC),
        ("Anime per 45 x 2,5 e 40 x 2. Raggio 135 per il 45 e 120 per il 40.", METRIC),
        ("Doorns voor 45 x 2,5 en 40 x 2. Straal 135 voor de 45 en 120 voor de 40.", METRIC),
        ("1.75 x .095 and 1.5 x .065, clr is 5.25 for the 1.75 and 4.5 for the 1.5", INCHES),
        ("1.75 x .095 and 1.5 x .065; 5.25 CLR on the 1.75 and 4.5 CLR on the 1.5", INCHES),
        ("1-3/4 x .095 and 1-1/2 x .065. CLR 5-1/4 for the 1-3/4, 4-1/2 for the 1-1/2.", INCHES),
    ],
)
def test_a_radius_goes_to_the_tube_that_it_is_said_for(
    text: str, sizes: list[tuple[str, str, str]]
) -> None:
    read = {(size.od_mm, size.wall_mm, size.clr_mm) for size in read_text(text)}
    assert read == {tuple(map(Decimal, size)) for size in sizes}


@pytest.mark.parametrize(
    "text",
    [
        "1.5 tube. 3 inch clr. 16ga. How much?",
        '1.5 in OD. 3" clr. 16 gauge.',
        "1.5 od. 3 in rad. .065 wall",
    ],
)
def test_a_radius_keeps_its_word_before_the_next_sentence(text: str) -> None:
    """16 gauge (BWG) is .065 in, 1.651 mm; 1.5 in is 38.1 mm, 3 in 76.2 mm."""
    (size,) = read_text(text)
    assert (size.od_mm, size.wall_mm, size.clr_mm) == tuple(map(Decimal, ("38.1", "1.651", "76.2")))


@pytest.mark.parametrize(
    ("text", "agree"),
    [
        ("33.4 x 2.77 mm, radius 1.5D i.e. 38 mm", False),
        ("33.4 x 2.77 mm, bend radius: 1.5D long radius i.e. 38 mm?? please advise", False),
        ("Rohr 40 x 2 mm, Biegeradius 3D, d.h. 120 mm", True),
        ("Tube 38 x 1,5 mm, rayon 2D, c'est-à-dire 76 mm", True),
        ("Tubo 38 x 1,5 mm, raggio 2D, cioè 76 mm", True),
        ("Tubo 38 x 1,5 mm, radio 2D, es decir 100 mm", False),
    ],
)
def test_a_radius_said_in_two_forms_has_to_agree(text: str, agree: bool) -> None:
    """1.5 times 33.4 mm is 50.1, not 38; 2 times 38 is 76."""
    (size,) = read_text(text)
    assert bool(size.doubt_on("clr")) is not agree
