"""Sizes put otherwise than by their names, and counts that are no mandrels."""

from __future__ import annotations

import pytest

from . import cases_otherwise as otherwise
from .support import Size, read_text, written_down

FAMILIES = (
    otherwise.RADIUS_AGAIN,
    otherwise.BY_THE_LENGTH,
    otherwise.CLEAR_WIDTH,
    otherwise.NO_LONGER,
    otherwise.PUT_RIGHT_LATE,
    otherwise.NEXT_SHAPE,
    otherwise.UNSURE,
)


@pytest.mark.parametrize(("text", "sizes"), [row for family in FAMILIES for row in family])
def test_it_is_read_as_meant(text: str, sizes: tuple[Size, ...]) -> None:
    requests = read_text(text)
    right = len(requests) == len(sizes) and all(
        size.describes(request) for size, request in zip(sizes, requests, strict=True)
    )
    assert right, f"{text}\n{written_down(requests)}"


@pytest.mark.parametrize(
    ("text", "quantity"),
    [
        ("Rohr 40 x 2, R 120, Bögen, ca. 14 Stück hintereinander. Wir suchen einen Dorn.", 1),
        ("180 degree bends, about 14 pieces. Tube 40 x 2, R 120. I need one mandrel", 1),
        ("coudes à 90°, environ 14 pièces. Tube 40 x 2, R 120. Prix d'un mandrin ?", 1),
        ("curve a 90°, circa 14 pezzi. Tubo 40 x 2, R 120. Mi serve un mandrino", 1),
        ("curvas de 90°, unas 14 piezas. Tubo 40 x 2, R 120. Necesito un mandril", 1),
        ("bochten van 90°, ongeveer 14 stuks. Buis 40 x 2, R 120. Ik zoek een doorn", 1),
        ("Rohr 40 x 2, R 120, 3 Stück, Angebot bitte", 3),
        ("Rohr 40 x 2, R 80. Stückzahl bitte auf zwei erhöhen.", 2),
        ("40 x 2, R 80. Please raise the quantity to two.", 2),
        ("40 x 2, R 80. Merci de porter la quantité à deux.", 2),
        ("40 x 2, R 80. Aantal graag naar twee.", 2),
    ],
)
def test_how_many_mandrels(text: str, quantity: int) -> None:
    (request,) = read_text(text)
    assert request.quantity == quantity


def test_a_section_that_is_bought_is_doubted() -> None:
    _, bought = read_text(
        "deux mandrins pour tube 22,2 x 0,8, rayon 65. Les bases en 30 x 16 ovales, je les achète "
        "toutes faites."
    )
    assert {doubt.field for doubt in bought.doubts} >= {"shape"}


@pytest.mark.parametrize(
    ("there", "need"),
    [
        ("Dorn vorhanden", "bitte anbieten, 1 Stück"),
        ("wird im Lohn gebogen", "bitte anbieten"),
        ("mandrel in stock", "please quote"),
        ("mandrin déjà en stock", "à chiffrer"),
        ("sous-traité", "à chiffrer"),
        ("mandril disponible", "cotizar"),
        ("mandrino già disponibile", "da quotare"),
        ("doorn aanwezig", "graag offerte"),
    ],
)
def test_lines_whose_mandrel_is_there_are_left_out(there: str, need: str) -> None:
    requests = read_text(
        f"Pos. 10   18 x 1,5   / 36    {there}\n"
        f"Pos. 20   22 x 2     / 44    {need}\n"
        f"Pos. 30   25 x 2     / 50    {there}\n"
        f"Pos. 40   30 x 3     / 75    {need}\n"
    )
    assert [request.od_mm for request in requests] == [22, 30]
