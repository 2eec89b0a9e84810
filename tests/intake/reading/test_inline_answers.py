"""Answers between our quoted questions: a bare grade, and the tube that the question names."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

import pytest

from bendreply.intake.message import parse_message
from bendreply.intake.pipeline import understand
from bendreply.rules.request import Material, SizeRequest


def _read(body: str) -> tuple[SizeRequest, ...]:
    head = "From: a@example.com\nSubject: Re: mandrel\nDate: Tue, 06 Oct 2026 10:00:00 +0000\nContent-Type: text/plain; charset=utf-8\nContent-Transfer-Encoding: 8bit\n\n"
    return understand(parse_message((head + body).encode())).requests


def _answered(*rows: tuple[str, str]) -> tuple[SizeRequest, ...]:
    between = "\n".join(f"> {question}\n\n{answer}\n" for question, answer in rows)
    return _read(f"See my answers.\n\nOn Mon, Sep 21, 2026, Mandrels wrote:\n{between}")


SIZE = (("Size?", "1.5 x .083"), ("Bend radius, to the centerline?", "4.5, yes"))


@pytest.mark.parametrize(
    ("question", "answer", "family"),
    [
        ("Material?", "1020 drawn", Material.CARBON_STEEL),
        ("Material?", "1018", Material.CARBON_STEEL),
        ("And what is the material?", "5052", Material.ALUMINIUM),
        ("Which steel is it?", "1026", Material.CARBON_STEEL),
        ("What alloy?", "6063", Material.ALUMINIUM),
        ("Welcher Werkstoff?", "C22", Material.CARBON_STEEL),
        ("Quel acier ?", "C22", Material.CARBON_STEEL),
        ("¿Qué material?", "5052", Material.ALUMINIUM),
        ("Che materiale?", "6082", Material.ALUMINIUM),
        ("Welk materiaal?", "6060", Material.ALUMINIUM),
    ],
)
def test_a_bare_grade_answers(question: str, answer: str, family: Material) -> None:
    (size,) = _answered(*SIZE, (question, answer))
    assert size.material is family
    (evidence,) = (item for item in size.evidence if item.field == "material")
    assert answer.startswith(evidence.surface)


@pytest.mark.parametrize(
    ("question", "answer"),
    [("How many parts?", "1020"), ("Material?", "360"), ("Material?", "not sure, 1020 or 5052")],
)
def test_other_figures_are_no_grade(question: str, answer: str) -> None:
    (size,) = _answered(*SIZE, (question, answer))
    assert size.material is None or size.doubt_on("material")


@pytest.mark.parametrize(
    ("question", "answer", "od", "wall"),
    [
        ("1) What wall is the 1-1/8 tube?", ".035, it's 4130 aircraft tube", 28.575, 0.889),
        ('What wall is your 1-1/8" tubing?', ".035, 4130", 28.575, 0.889),
        ("Which wall does the 1.125 OD pipe have?", ".035 4130", 28.575, 0.889),
        ("And the wall of the 28 mm tube?", "1.5 mm, 4130", 28, 1.5),
        ("Welche Wand hat das 28er Rohr?", "1,5 mm, S235", 28, 1.5),
        ("Welche Wandstärke hat das Rohr 28?", "1,5 mm, S235", 28, 1.5),
        ("Quelle est l'épaisseur du tube de 28 mm ?", "1,5 mm, inox", 28, 1.5),
        ("¿Qué espesor tiene el tubo de 28 mm?", "1,5 mm, inox", 28, 1.5),
        ("Che spessore ha il tubo da 28 mm?", "1,5 mm, inox", 28, 1.5),
        ("Welke wanddikte heeft de buis van 28 mm?", "1,5 mm, rvs", 28, 1.5),
    ],
)
def test_the_question_names_the_tube(question: str, answer: str, od: float, wall: float) -> None:
    (size,) = _answered((question, answer), ("What radius, to the centreline?", "100 mm, yes"))
    assert (float(size.od_mm or 0), float(size.wall_mm or 0)) == (od, wall)
    (evidence,) = (item for item in size.evidence if item.field == "od")
    assert "from the quoted mail" in evidence.how


@pytest.mark.parametrize(
    "body",
    [
        "The wall is .035, 4130. CLR 4 inches. One.\n\nOn Mon, Sep 21, 2026, Mandrels wrote:\n> What wall is the 1-1/8 tube, and the 1-1/4 tube?",
        "The wall is .035, 4130. CLR 4 inches. One.\n\nOn Mon, Sep 21, 2026, Mandrels wrote:\n> What wall is the tube?",
    ],
)
def test_no_tube_is_guessed(body: str) -> None:
    assert [size.od_mm for size in _read(body)] == [None]


def test_a_tube_of_its_own_counts() -> None:
    body = "It's 1.25 OD x .035, 4130. CLR 4 inches. One.\n\nOn Mon, Sep 21, 2026, Mandrels wrote:\n> What wall is the 1-1/8 tube, and what radius?"
    assert [float(size.od_mm or 0) for size in _read(body)] == [31.75]
