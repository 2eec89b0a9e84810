"""Words that ask for all that is listed pick nothing out of it; tubes bought as elbows are not
asked for."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

import pytest

from .support import read_text, written_down

_LIST = "\n\n20 x 1.5, R 40, 304\n22 x 1.5, R 44, 304\n\n"
ALL_OF_THEM = [
    "Please quote mandrels for:" + _LIST + "Only these two, nothing else.",
    "Please quote these mandrels, nothing else needed." + _LIST,
    "Mandrels please:" + _LIST + "Only rows in this mail, nothing else.",
    "Mandrels please:" + _LIST + "Only what's listed above, nothing more.",
    "Bitte Dorne anbieten:" + _LIST + "Nur diese beiden, sonst nichts.",
    "Merci de chiffrer des mandrins :" + _LIST + "Uniquement ces deux lignes, rien d'autre.",
    "Por favor coticen mandriles:" + _LIST + "Solo estas dos medidas, nada más.",
    "Vorremmo un'offerta per mandrini:" + _LIST + "Solo questi due, nient'altro.",
    "Graag offerte voor doornen:" + _LIST + "Alleen deze twee, verder niets.",
]
SOME_OF_THEM = [
    "Mandrels please:\n\n20 x 1.5, R 40\n22 x 1.5, R 44\n25 x 1.5, R 50\n\nOnly these two, nothing else.",
    "Mandrels please:\n\n20 x 1.5, R 40\n22 x 1.5, R 44\n25 x 1.5, R 50\n\nOnly the two rows above, nothing else.",
]
_TWO = "\n\n30 x 2, R 60\n40 x 2, R 80\n\n"
BOUGHT_BENT = [
    "Mandrels, 2 pieces each:" + _TWO + "76.1 x 2 we buy as elbow.",
    "Mandrels please:" + _TWO + "The 76.1 x 2 we buy in as weld elbows.",
    "Mandrels please:" + _TWO + "76.1 x 2 is bought in as elbows.",
    "Mandrels please:" + _TWO + "76.1 x 2 we buy in bent.",
    "Dorne, je 1 Stück:" + _TWO + "76,1 x 2 kaufen wir als Bogen zu.",
    "Mandrins, 1 de chaque :" + _TWO + "Le 76,1 x 2 nous l'achetons en coudes.",
    "Cotizar mandriles:" + _TWO + "El 76,1 x 2 lo compramos en codos.",
    "Mandrini, 1 per tipo:" + _TWO + "Il 76,1 x 2 lo compriamo come curva.",
    "Doornen, 1 van elk:" + _TWO + "76,1 x 2 kopen we als bocht.",
]


@pytest.mark.parametrize("text", ALL_OF_THEM)
def test_nothing_is_picked_out(text: str) -> None:
    requests = read_text(text)
    assert [request.od_mm for request in requests] == [20, 22]
    assert not any(request.doubts for request in requests), written_down(requests)


@pytest.mark.parametrize("text", SOME_OF_THEM)
def test_two_of_three_are_picked_out(text: str) -> None:
    requests = read_text(text)
    assert len(requests) == 2 or any(request.doubts for request in requests), written_down(requests)


@pytest.mark.parametrize("text", BOUGHT_BENT)
def test_what_is_bought_bent_is_not_asked_for(text: str) -> None:
    requests = read_text(text)
    assert [request.od_mm for request in requests] == [30, 40], written_down(requests)
