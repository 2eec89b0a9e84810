"""What a question must have in it: the 'must' lines of answers, and what words are read as."""

from __future__ import annotations

from pathlib import Path

import pytest

from bendreply.intake.heard import hear
from bendreply.intake.must import line
from bendreply.intake.template_check import check_templates

WIPER = "wiper + need / skip / what does but not grind / price"

ANSWER = """+++
title = "Wiper"
phrases = ["do I need a wiper"]
must = ["{must}"]
source = "house"
approved_by = "Pat"
approved_on = 2026-09-01
review_by = 2027-09-01
+++
Some bends need one.
"""


@pytest.mark.parametrize(
    ("question", "met"),
    [
        ("Do I need a wiper die?", True),
        ("Could we get by without a wiper here?", True),
        ("Brauche ich einen Faltenglätter?", True),
        ("Faut-il une lame anti-plis ?", True),
        ("¿Hace falta antiarrugas?", True),
        ("Serve il tassello antigrinza?", True),
        ("Heb ik een plooienstrijker nodig?", True),
        ("What on earth does the wiper do?", False),  # 'what does' has a word between
        ("What does a wiper do?", True),
        ("Do I need to grind my wiper?", False),
        ("Is a wiper needed, and at what price?", False),
        ("Do I need a mandrel?", False),
    ],
)
def test_a_line_is_met_by_its_words_in_any_language(question: str, met: bool) -> None:
    assert line(WIPER).met(hear(question)) is met


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


@pytest.mark.parametrize("text", ["", "+", "wiper + ", " but not price"])
def test_a_line_with_an_empty_group_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match="group without a word"):
        line(text)


def test_shop_check_names_a_line_that_cannot_be_read(tmp_path: Path) -> None:
    folder = tmp_path / "reply_templates" / "answers"
    folder.mkdir(parents=True)
    (folder / "wiper-die.md").write_text(ANSWER.format(must="wiper + "), "utf-8")
    told = [str(fault) for fault in check_templates(tmp_path)]
    assert any("wiper-die.md" in one and "group without a word" in one for one in told)
    (folder / "wiper-die.md").write_text(ANSWER.format(must=WIPER), "utf-8")
    assert check_templates(tmp_path) == []
