"""Abbreviated names of a wall, parts of circles, references and cut lengths that name no size."""

from __future__ import annotations

import pytest

from .support import read_text

WALLS = [
    "Un mandrino per tubo in titanio grado 2, diam. 50 mm, spess. 1 mm, raggio asse 75.",
    "Un mandrin pour tube inox diam. 50 mm, épais. 1 mm, rayon à l'axe 75.",
    "Un mandril para tubo inox diám. 50 mm, espes. 1 mm, radio al eje 75.",
    "Een doorn voor rvs buis diam. 50 mm, wandd. 1 mm, straal hart 75.",
    "Ein Dorn für Rohr Durchm. 50 mm, Wandst. 1 mm, Radius Mitte 75.",
]


@pytest.mark.parametrize("text", WALLS)
def test_a_wall_by_a_short_name(text: str) -> None:
    (request,) = read_text(text)
    assert (request.od_mm, request.wall_mm, request.clr_mm) == (50, 1, 75)
    assert not request.doubts


CIRCLES = [
    "The bend is drawn as a half circle, 240 mm diameter over the centreline of the tube.",
    "It is a quarter circle, 120 mm radius on the centreline.",
    "We bend one half circle, CLR 120.",
]


@pytest.mark.parametrize("words", CIRCLES)
def test_a_part_of_a_circle_is_no_length(words: str) -> None:
    (request,) = read_text(f"One mandrel for 42.4 x 2.6 tube, mild steel. {words}")
    assert request.clr_mm == 120
    assert not request.doubts


@pytest.mark.parametrize("reference", ["our project 7714-2.5", "your project 814-3.5"])
def test_a_project_by_its_number_is_no_size(reference: str) -> None:
    (request,) = read_text(f"Ref. {reference}. One mandrel for 38 x 2 tube, CLR 57.")
    assert (request.od_mm, request.wall_mm) == (38, 2)


@pytest.mark.parametrize(
    "words", ["cut at 430 long", "cut to 316", "abgelängt auf 430", "coupés à 316", "430 long"]
)
def test_a_cut_length_is_no_grade(words: str) -> None:
    (request,) = read_text(f"One mandrel for 4130 tube 22.2 x 0.8 mm, {words}. CLR 130 mm.")
    assert request.grade == "4130"
    assert request.doubt_on("material") is None
