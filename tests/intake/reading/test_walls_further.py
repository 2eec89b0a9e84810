"""Walls and ODs in further words: plurals and small words abroad, sizes dictated, walls listed each
with its material."""

from __future__ import annotations

import pytest

from .support import Size, inch, mm, read_text

SAID: list[tuple[str, Size]] = [
    ("Ø 40, wandje van 1,5, RVS, hartlijn 90. Eén doorn.", mm("40", "1.5", "90")),
    ("Tubo diametro 40, spesso 2, S235, raggio 100 all'asse.", mm("40", "2", "100")),
    ("Il tubo è di diametro quaranta, spesso due. Raggio cento, asse.", mm("40", "2", "100")),
    ("De buis is 40 in doorsnee, 2 dik, S235, straal 100 hart.", mm("40", "2", "100")),
    # dictated, without a unit
    (
        "Tube is seven eighths by sixty five, centreline two and a half.",
        inch(".875", ".065", "2.5"),
    ),
    ("One and a half by one twenty, DOM, four and a half CLR. One.", inch("1.5", ".120", "4.5")),
    ("One and three quarters by ninety five, 5.25 CLR. One mandrel.", inch("1.75", ".095", "5.25")),
    ("Tube inox, vingt-deux par un et demi, rayon quarante-quatre à l'axe.", mm("22", "1.5", "44")),
    ("Tube inox, quarante par deux, rayon quatre-vingts à l'axe.", mm("40", "2", "80")),
    (
        "Tubo inox, veintidós por uno y medio, radio cuarenta y cuatro al eje.",
        mm("22", "1.5", "44"),
    ),
    ("Tubo inox, quaranta per due, raggio ottanta all'asse.", mm("40", "2", "80")),
    ("Buis RVS, tweeëntwintig bij anderhalf, straal 44 hart.", mm("22", "1.5", "44")),
]
WALLS: list[tuple[str, list[Size]]] = [
    (f"{said} Radius 80. {each}", [mm("40", "1.5", "80"), mm("40", "2", "80")])
    for said, each in (
        ("Zwei Wandstärken: 1,5 und 2. Durchmesser 40.", "Je Wandstärke ein Dorn."),
        ("Deux épaisseurs : 1,5 et 2. Diamètre 40.", "Un mandrin par épaisseur."),
        ("Dos espesores: 1,5 y 2. Diámetro 40.", "Un mandril por espesor."),
        ("Due spessori: 1,5 e 2. Diametro 40.", "Un mandrino per ogni spessore."),
        ("Twee wanddiktes: 1,5 en 2. Diameter 40.", "Eén doorn per wanddikte."),
        ("Diametro 40, spessore 1,5 AISI 304 e 2 S235.", "Un mandrino ciascuno."),
    )
]


@pytest.mark.parametrize(("text", "size"), SAID)
def test_one_size(text: str, size: Size) -> None:
    (request,) = read_text(text)
    assert size.describes(request), request


@pytest.mark.parametrize(("text", "sizes"), WALLS)
def test_two_walls(text: str, sizes: list[Size]) -> None:
    requests = read_text(text)
    assert len(requests) == len(sizes)
    for size, request in zip(sizes, requests, strict=True):
        assert size.describes(request), request
