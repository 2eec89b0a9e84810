"""What the words of a question are read as, across languages, endings and slips."""

from __future__ import annotations

import pytest

from bendreply.intake.heard import hear


@pytest.mark.parametrize(
    "question",
    [
        "Could we get by without a wiper here?",
        "Geht es ohne Faltenglätter?",
        "On peut se passer de lame anti-plis ?",
        "¿Puedo ir sin antiarrugas?",
        "Si può fare senza tassello antigrinza?",
        "Kan het zonder plooienstrijker?",
    ],
)
def test_one_question_in_six_languages_is_read_alike(question: str) -> None:
    assert {"SKIP", "WIPER"} <= hear(question).present


@pytest.mark.parametrize(
    ("words", "reading"),
    [
        ("1.5 x OD", "nd"),
        ("1 x diameter", "1d"),
        ("at 2.5D", "nd"),
        ("38 mm", "#mm"),
        ("1-1/2 in", "#in"),
        ("90 degrees", "#deg"),
        ("a 2 inch tube on a 2 inch centreline", "#twin"),
        ("spring back", "SPRINGBACK"),
        ("retour élastique", "SPRINGBACK"),
        ("Dornposition", "POSITION"),
        ("neccessary", "NECESSARY"),
    ],
)
def test_what_words_and_figures_are_read_as(words: str, reading: str) -> None:
    assert reading in hear(words).present


def test_a_size_that_is_named_asks_nothing_of_what_it_names() -> None:
    assert "RADIUS" not in hear("38 x 1.5 mm on 114 CLR").present
    assert "RADIUS" in hear("What is the smallest CLR?").present
