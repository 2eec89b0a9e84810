"""Tubes that are bent elsewhere, need no mandrel, are seen to or made no more, beside one that is
asked for: they are left out."""

# ruff: noqa: E501 - a form stands on one line

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text, written_down

_EN, _DE, _FR = (
    "One mandrel for 27 x 2 on CLR 80 please. ",
    "Ein Dorn für 27 x 2, R 80, bitte. ",
    "Un mandrin pour 27 x 2, rayon moyen 80. ",
)
_ES, _IT, _NL = (
    "Un mandril para 27 x 2, radio medio 80. ",
    "Un mandrino per 27 x 2, raggio medio 80. ",
    "Eén doorn voor 27 x 2, hartlijnradius 80. ",
)


@pytest.mark.parametrize(
    "text",
    [
        _EN + "The ring is 42 x 3, rolled, no mandrel wanted for that.",
        _EN + "The 42 x 3 is subcontracted, nothing for that one.",
        _EN + "The 42 x 3 is already sorted.",
        _EN + "We bend the 42 x 3 without a mandrel already and that works fine.",
        _EN + "The 42 x 3 might come in 2028, no need to quote it yet.",
        _DE + "Das 42 x 3 lassen wir auswärts biegen.",
        _DE + "Das 42 x 3 biegen wir schon ohne Dorn, das geht gut.",
        _FR + "Le 42 x 3 est sous-traité.",
        _FR + "Le tube de 42 x 3 nous le faisons faire à l'extérieur, donc rien pour celui-là.",
        _ES + "El de 42 x 3 lo hacemos fuera.",
        _IT + "Il 42 x 3 lo facciamo fare fuori.",
        _NL + "De buis 42 x 3 laten we extern buigen.",
    ],
)
def test_left_out(text: str) -> None:
    requests = read_text(text)
    shown = f"{text}\n{written_down(requests)}"
    assert [r.od_mm for r in requests] == [Decimal(27)], shown
    assert not requests[0].doubts, shown


@pytest.mark.parametrize(
    "text",
    [
        _EN
        + "The 42 x 3 was subcontracted until now, we need a mandrel for that one too, CLR 100.",
        _EN + "And one for 42 x 3 on CLR 100, no wiper needed for that.",
        _EN + "Also one for 42 x 3 on CLR 100, the die is already sorted.",
        _DE
        + "Das 42 x 3 haben wir bisher ohne Dorn gebogen, dafür brauchen wir jetzt auch einen, R 100.",
    ],
)
def test_not_left_out(text: str) -> None:
    requests = read_text(text)
    shown = f"{text}\n{written_down(requests)}"
    assert [r.od_mm for r in requests] == [Decimal(27), Decimal(42)], shown
