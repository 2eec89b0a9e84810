"""How well questions get their answers, over the labelled ones of tests/corpus/questions.

Right is what stands in the draft; a question without an answer has to be told as one. The bars are
what is reached; see the README beside the rows for what they are worth.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from functools import lru_cache
from pathlib import Path

import pytest

from bendreply.intake.pasted import text_message
from bendreply.intake.pipeline import process
from bendreply.intake.templates import default_templates
from bendreply.rules.shop import sample_shop

FOLDER = Path(__file__).parents[1] / "corpus" / "questions"


@dataclass(frozen=True)
class Score:
    wanted: int
    right: int
    messages: int
    wrong: int
    unknown: int
    reported: int


def rows(half: str) -> list[tuple[frozenset[str], str]]:
    lines = (FOLDER / f"{half}.tsv").read_text("utf-8").splitlines()
    labelled = (line.split("\t") for line in lines)
    by_hand = {one.name for one in default_templates().answers if one.for_a_person}
    return [
        (
            frozenset(filter(None, map(str.strip, names.split(",")))) - by_hand,
            words.replace("\\n", "\n"),
        )
        for names, words in labelled
    ]


@lru_cache
def score(half: str) -> Score:
    shop, templates = sample_shop(), default_templates()
    wanted = right = wrong = unknown = reported = messages = 0
    for names, words in rows(half):
        result = process(text_message(words, date(2026, 11, 25)), shop, templates)
        told = set(result.draft.answers) if result.draft else set()
        messages += 1
        wanted += len(names)
        right += len(names & told)
        wrong += bool(told - names)
        if not names:
            unknown += 1
            reported += not told and any(one.answer is None for one in result.questions)
    return Score(wanted, right, messages, wrong, unknown, reported)


@pytest.mark.parametrize(
    ("half", "right_pct", "wrong_pct", "reported_pct"),
    [
        ("closed", 65, 2, 90),
        ("strangers", 68, 1, 97),
        ("tuning", 93, 1, 95),
        ("harder", 90, 1, 95),
        ("evaluation", 88, 1, 95),
        ("voices", 80, 1, 95),
        ("nearby", 95, 0, 98),
        ("imagined", 77, 2, 95),
    ],
)
def test_questions_get_the_right_answer_or_are_told(
    half: str, right_pct: int, wrong_pct: int, reported_pct: int
) -> None:
    found = score(half)
    assert 100 * found.right >= right_pct * found.wanted
    assert 100 * found.wrong <= wrong_pct * found.messages
    assert 100 * found.reported >= reported_pct * found.unknown


def test_there_are_questions_enough_and_each_answer_is_asked_for() -> None:
    both = rows("tuning") + rows("evaluation")
    assert sum(bool(names) for names, _ in both) >= 150
    assert sum(not names for names, _ in both) >= 60
    answers = {one.name for one in default_templates().answers if not one.for_a_person}
    assert len(answers) >= 30
    assert frozenset().union(*(names for names, _ in both)) == answers
