"""Turns of phrase that only sound like taking a size back, in lists and in prose: nothing is doubted.
Beside each family stand words that do take something back, or may: there something is."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

import pytest

from .support import read_text, written_down

_LINES = (
    'Desk leg tube: 1-1/4" OD, .065 wall, CLR 4"\nChair back tube: 1" OD, .065 wall, CLR 3"\n'
    "Please quote two mandrels for the desk leg and four for the chair back.\n\n"
)
_PROSE = "Please quote mandrels for 38.1 x 1.65 on CLR 76.2 and 44.45 x 1.65 on CLR 88.9.\n\n"
_CODES = "Please quote mandrels for:\nHB-01 25 x 1.5 CLR 62.5\nHB-02 30 x 1.5 CLR 75\n\n"

NOTHING_TAKEN_BACK = (
    "The print is attached for reference but everything is here too.",
    "For reference only, a sketch is attached.",
    "I don't want to scrap any more tube.",
    "We don't want to wait until the summer.",
    "I don't want to share one between two dies.",
    "We do not want a used one.",
    "We don't need them chromed.",
    "Fred told me to drop you a line.",
    "Our scrap rate is too high.",
    "We scrap about one in ten right now.",
    "Our customer may cancel if we're late.",
    "Please disregard the earlier list.",
    "We already have a quote from another vendor.",
    "Somebody else recommended you.",
    "The line starts up next year.",
    "My brother runs the bender.",
    "We have 12 benders in the shop.",
    "We can't bend it without a mandrel.",
    "Without a mandrel it kinks.",
    "Funding is sorted.",
    "That's everything, nothing else to add.",
    "Das Rohr lässt sich so nicht mehr biegen.",
    "Bei Ihnen haben wir schon öfter bestellt.",
    "Bisher haben wir keinen Dorn.",
    "Das wär's, sonst nichts.",
    "Par ailleurs, merci d'indiquer le délai.",
    "Nous avons déjà travaillé avec vous en 2024.",
    "Un autre fournisseur annonce dix semaines.",
    "La production démarre l'an prochain.",
    "Adjunto el plano como referencia.",
    "No hace falta que llamen, con un correo basta.",
    "Nada más por ahora, gracias.",
    "Abbiamo già lavorato con voi.",
    "Non serve che chiamiate, basta una mail.",
    "La produzione parte l'anno prossimo.",
    "Dat hebben we al vaker bij jullie besteld.",
    "Op dit moment hebben we geen doorn.",
    "De productie start volgend jaar.",
)
TAKEN_BACK = (
    "On second thoughts we don't want the chair back any more.",
    "The smaller one is for reference.",
    "We already have a used one.",
    "The other job starts next year.",
    "My brother already has the first.",
    "Scrap the smaller one.",
    "Another vendor has the other one.",
)
OF_THIS_LIST = (
    "HB-02 has been cancelled.",
    "HB-02 to HB-09 have been cancelled.",
)


@pytest.mark.parametrize("words", NOTHING_TAKEN_BACK)
@pytest.mark.parametrize("asked", [_LINES, _PROSE])
def test_nothing_is_taken_back(asked: str, words: str) -> None:
    requests = read_text(asked + words)
    assert len(requests) == 2, written_down(requests)
    assert not any(request.doubts for request in requests), written_down(requests)


@pytest.mark.parametrize("words", TAKEN_BACK)
def test_what_may_take_back_is_doubted(words: str) -> None:
    requests = read_text(_PROSE + words)
    assert len(requests) < 2 or any(request.doubts for request in requests), written_down(requests)


@pytest.mark.parametrize("words", OF_THIS_LIST)
def test_a_line_of_this_list_is_doubted(words: str) -> None:
    requests = read_text(_CODES + words)
    assert len(requests) < 2 or any(request.doubts for request in requests), written_down(requests)


@pytest.mark.parametrize(
    "words",
    [
        "HB-06 to HB-09 have been cancelled by design.",
        "HB-06 and HB-07 have been dropped.",
        "HB-06 bis HB-09 sind gestrichen.",
    ],
)
def test_lines_of_another_list_are_not_these(words: str) -> None:
    requests = read_text(_CODES + words)
    assert len(requests) == 2, written_down(requests)
    assert not any(request.doubts for request in requests), written_down(requests)


def test_an_earlier_list_that_stands_here_is_doubted() -> None:
    requests = read_text(
        "Earlier list: 25 x 1.5 CLR 62.5 and 30 x 1.5 CLR 75. New: 32 x 2 CLR 80. Please quote"
        " mandrels, disregard the earlier list."
    )
    assert len(requests) < 3 or all(request.doubts for request in requests[:2])
