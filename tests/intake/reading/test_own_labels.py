"""Lists numbered by a noun of their own ('Tube 1:', 'Rohr 2:', 'Job 3:'), radii told by places."""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text

_LINES = "{0} 1: 53 x 1,5 / R 80\n{0} 2: 70 x 2 / R 140\n{0} 3: 85 x 2 / R 170\n\n"

PICKED = [
    ("tube", "We own already the mandrel for tube 1. So offer for tube 2 and tube 3, 1 pc each."),
    ("Pipe", "Quote pipes 2 and 3 only, 1 off each."),
    ("Job", "Please quote jobs 2 and 3, one mandrel each. We already have the mandrel for job 1."),
    ("Rohr", "Den Dorn für Rohr 1 haben wir schon. Bitte Angebot für Rohr 2 und 3, je 1 Stück."),
    ("Tube", "Nous avons déjà le mandrin pour le tube 1. Merci de chiffrer les tubes 2 et 3."),
    ("Tubo", "Ya tenemos el mandril para el tubo 1. Precio para los tubos 2 y 3."),
    ("Tubo", "Abbiamo già il mandrino per il tubo 1. Preventivo per i tubi 2 e 3."),
    ("Buis", "De doorn voor buis 1 hebben we al. Graag offerte voor buis 2 en 3."),
]


@pytest.mark.parametrize(("noun", "words"), PICKED)
def test_lines_numbered_by_a_noun_are_picked_by_it(noun: str, words: str) -> None:
    requests = read_text(_LINES.format(noun) + words)
    assert [(r.od_mm, r.wall_mm, r.clr_mm) for r in requests] == [(70, 2, 140), (85, 2, 170)]


def test_the_number_of_one_such_line_counts_no_mandrels() -> None:
    lines = "Rohr 1: 53 x 1,5 / R 80\nRohr 2: 70 x 2 / R 140\n\n"
    words = "Den Dorn für Rohr 1 haben wir schon. Bitte Angebot für Rohr 2, 1 Stück."
    (request,) = read_text(lines + words)
    assert (request.od_mm, request.quantity) == (70, 1)
    assert not request.doubts


def test_a_grade_at_the_end_of_a_line_parts_it_from_the_next() -> None:
    lines = "item 1: 53 x 1,5 / R 80 / 1.4404\nitem 2: 70 x 2 / R 140 / 1.4404\n"
    requests = read_text(lines + "Please quote both, one mandrel each.")
    assert [(r.od_mm, r.clr_mm) for r in requests] == [(53, 80), (70, 140)]


BY_PLACE = [
    "two mandrels, one for 38 x 1.5 and one for 42.4 x 2, the first on 57 CLR, the second on 85 "
    "CLR.",
    "mandrels for 38 x 1.5 and 42.4 x 2, first one 57 CLR, second one 85 CLR.",
    "zwei Dorne, einen für 38 x 1,5 und einen für 42,4 x 2, der erste mit R 57, der zweite mit "
    "R 85 (Mitte).",
    "deux mandrins, un pour 38 x 1,5 et un pour 42,4 x 2, le premier sur rayon 57, le second sur "
    "rayon 85 à l'axe.",
    "dos mandriles, uno para 38 x 1,5 y otro para 42,4 x 2, el primero con radio 57, el segundo "
    "con radio 85 al eje.",
    "due mandrini, uno per 38 x 1,5 e uno per 42,4 x 2, il primo con raggio 57, il secondo con "
    "raggio 85 in asse.",
    "twee doornen, één voor 38 x 1,5 en één voor 42,4 x 2, de eerste met radius 57, de tweede "
    "met radius 85 hart.",
]


@pytest.mark.parametrize("words", BY_PLACE)
def test_radii_by_place_in_the_same_sentence(words: str) -> None:
    requests = read_text("RFQ: " + words)
    sizes = [(r.od_mm, r.wall_mm, r.clr_mm) for r in requests]
    assert sizes == [(38, Decimal("1.5"), 57), (Decimal("42.4"), 2, 85)]
