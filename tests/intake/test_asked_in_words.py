"""Ways of asking for a piece that name neither a need nor a price, and what sounds like them."""

from __future__ import annotations

import pytest

from bendreply.intake.message import parse_message
from bendreply.intake.pipeline import understand

_HEAD = b"From: a@example.com\nContent-Type: text/plain; charset=utf-8\n\n"


def _kind(text: str) -> str:
    return understand(parse_message(_HEAD + text.encode())).kind.value


@pytest.mark.parametrize(
    "text",
    [
        "Please let us have your offer for a mandrel suiting 48.3 x 2 tube formed at R 72.5.",
        "Is there a mandrel available in 60.3 x 2.77? Thank you, Priya",
        "Vous faites le 50,8 x 1,65 ?",
        "Je passerais commande d'un 16 x 1, rayon 32, dès cette semaine.",
        "Armando un tubular con tubo 44,5 x 2,6 y dado de 152; falta el mandril.",
        "Hace falta un mandril para tubo 44,5 x 2,6, radio 152.",
        "Rohr 38 x 1,5, R 76. Es fehlt nur noch der Dorn.",
        "Zweimal 30 x 2,5, einmal 35 x 2,5, Radius immer 105.",
        "27,9 buiten, 1,25 wand, hart op 58. Wat kost zoiets?",
        "Da 57, s 1,5, Rm 85. Was kostet das?",
    ],
)
def test_it_asks_for_a_mandrel(text: str) -> None:
    assert _kind(text) == "sizes"


@pytest.mark.parametrize(
    "text",
    [
        "Is there a rule for how thin 2 x .049 can go?",
        "Could you make the invoice out to our works? It's for the 38 x 1,5 R 76.",
        "Je passerai commande lundi.",
        "Vous faites des visites d'usine ?",
        "¿Hace falta el mandril con bolas para 50 x 2, R 150?",
        "Il manque le mandrin dans le colis, commande 3312, 38 x 1,5 R 76.",
        "Im Paket fehlt ein Dorn, Auftrag 4711, 38 x 1,5 R 76.",
        "Le mandrin 33,7 x 2 livré hier ne rentre pas dans le tube. Que proposez-vous ?",
        "Wir haben zweimal 30 x 2,5 zurückgeschickt.",
        "Can do lunch at 12?",
    ],
)
def test_it_asks_for_none(text: str) -> None:
    assert _kind(text) != "sizes"
