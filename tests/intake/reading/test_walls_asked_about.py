"""A question whether the mandrel also does another wall, and parts that are bought in."""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text

QUESTIONS = [
    "One mandrel for 38 x 1.5 mm, CLR 76, mild steel. Would the same one work on 1.2 mm wall too?",
    "One mandrel for 38 x 1.5 mm, CLR 76, mild steel. Can I use the same mandrel for 18 ga?",
    "I need a mandrel for 38 x 1.5 mm, CLR 76, mild steel. Would it also do 2 mm wall?",
    "Ein Dorn für 38 x 1,5, Radius 76, Stahl. Geht derselbe Dorn auch für 1,2 mm Wand?",
    "Un mandrin pour 38 x 1,5, rayon 76, acier. Le même mandrin irait-il aussi pour 1,2 mm "
    "d'épaisseur ?",
    "Un mandril para 38 x 1,5, radio 76, acero. ¿Serviría el mismo mandril para pared de 1,2 mm?",
    "Un'anima per 38 x 1,5, raggio 76, acciaio. La stessa anima va bene anche per spessore 1,2?",
    "Een doorn voor 38 x 1,5, radius 76, staal. Werkt dezelfde doorn ook voor 1,2 mm wand?",
    "Een doorn voor 38 x 1,5, radius 76. Kan dezelfde doorn ook gebruikt worden voor 2 mm wand?",
    "Ein Dorn für 38 x 1,5, Radius 76. Kann derselbe Dorn auch für 2 mm Wand verwendet werden?",
    "Ein Dorn für 38 x 1,5, Radius 76. Lässt sich der gleiche Dorn auch bei 2 mm Wandstärke "
    "einsetzen?",
    "Un mandrin pour 38 x 1,5, rayon 76. Le même mandrin peut-il aussi servir pour une paroi "
    "de 2 mm ?",
    "Un mandril para 38 x 1,5, radio 76. ¿Se puede usar el mismo mandril para 2 mm de espesor?",
    "One mandrel for 38 x 1.5 mm, CLR 76. Would I need a different mandrel for 2 mm wall?",
    "Ein Dorn für 38 x 1,5, Radius 76. Brauche ich einen anderen Dorn für 2 mm Wand?",
    "Un mandrin pour 38 x 1,5, rayon 76. Faut-il un autre mandrin pour 2 mm d'épaisseur ?",
]


@pytest.mark.parametrize("text", QUESTIONS)
def test_a_wall_only_asked_about(text: str) -> None:
    (request,) = read_text(text)
    assert (request.od_mm, request.wall_mm, request.clr_mm) == (38, Decimal("1.5"), 76)
    assert not request.doubts


def test_a_second_wall_that_is_to_be_quoted() -> None:
    text = "One mandrel for 38 x 1.5 mm, CLR 76. Could you quote the same one for 2 mm wall too?"
    assert [request.wall_mm for request in read_text(text)] == [Decimal("1.5"), 2]


BOUGHT = [
    'Primaries are 2-1/8" x .065, CLR 3.25". I need a mandrel. Collectors I buy in at 4" so don\'t '
    "worry about those.",
    'Primaries are 2-1/8" x .065, CLR 3.25". Need a mandrel. Tailpipes we buy at 3" already bent.',
    'Rohr 2-1/8" x .065, CLR 3.25". Ein Dorn bitte. Die Sammler mit 80 mm kaufen wir fertig zu.',
    'Tube 2-1/8" x .065, CLR 3.25". Un mandrin svp. Les collecteurs de 80 mm, nous les achetons '
    "tout faits.",
]


@pytest.mark.parametrize("text", BOUGHT)
def test_what_is_bought_in_is_no_size(text: str) -> None:
    (request,) = read_text(text)
    assert request.clr_mm == Decimal("82.55")
    assert not request.doubts


@pytest.mark.parametrize(
    "bracket",
    [
        "not pipe, not conduit, real 3/4 measured",
        "not pipe, real 3/4 measured",
        "not conduit but actual 3/4 across",
        "kein Rohrmaß, echte 3/4 gemessen",
    ],
)
def test_what_a_bracket_puts_against_the_denied_is_meant(bracket: str) -> None:
    text = f"A mandrel for 3/4 OD tube ({bracket}) with .049 wall, 1-1/2 inch radius to the middle."
    (request,) = read_text(text + " 2 off, please.")
    assert request.od_mm == Decimal("19.05")
    assert request.quantity == 2
