"""What labelled questions have taught, as far as a person can follow it."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from bendreply.intake.learnt import known_answers, likeness, traits
from bendreply.intake.matching import matcher
from bendreply.intake.templates import default_templates


def test_the_answers_learnt_are_those_that_a_reply_may_use() -> None:
    usable = {one.name for one in default_templates().answers if not one.for_a_person}
    assert known_answers() == usable


def test_the_words_that_speak_for_an_answer_are_told() -> None:
    match = matcher(default_templates().answers).match(
        "Inside the curve I get little ripples, what should I look at first?"
    )
    assert match.answer == "wrinkles"
    assert "rippl" in match.phrase or "wrinkle" in match.phrase


def test_one_question_in_six_languages_gets_one_answer() -> None:
    asked = (
        "Can I do without a wiper die?",
        "Geht es auch ohne Faltenglätter?",
        "Peut-on se passer de lame anti-plis ?",
        "¿Se puede trabajar sin antiarrugas?",
        "Si può fare a meno del tassello antigrinza?",
        "Kan het ook zonder plooienstrijker?",
    )
    assert {likeness(question).best[0] for question in asked} == {"wiper-die"}


def test_an_answer_taken_out_of_the_shop_is_never_given() -> None:
    fewer = tuple(one for one in default_templates().answers if one.name != "wiper-die")
    assert matcher(fewer).match("Do I need a wiper die?").answer != "wiper-die"


@given(st.text(max_size=300))
def test_no_text_upsets_it(text: str) -> None:
    assert set(likeness(text).scores) == known_answers()
    assert all(amount > 0 for amount in traits(text).values())
