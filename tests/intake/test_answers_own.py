"""The asker's own figures in an answer, the same words for everybody, and nothing said twice."""

from __future__ import annotations

import re
from datetime import date
from typing import Any

import pytest

from bendreply.intake.bend_words import BendWords
from bendreply.intake.drafting import draft
from bendreply.intake.model import Kind, Question
from bendreply.intake.own_text import mask
from bendreply.intake.pasted import text_message
from bendreply.intake.pipeline import process
from bendreply.intake.reading import read
from bendreply.intake.reply_facts import AMERICAN, BRITISH, Facts
from bendreply.intake.wording import shop_words
from bendreply.rules.assess import assess
from bendreply.rules.request import Material, SizeRequest
from bendreply.rules.shop import sample_shop

from .answer_figures import INCH, TEMPLATES, TOLD, D, said

TODAY = date(2026, 11, 25)

REQUEST = SizeRequest(
    od_mm=2 * INCH,
    wall_mm=D("0.065") * INCH,
    clr_mm=6 * INCH,
    angle_deg=D(90),
    material=Material.STAINLESS_STEEL,
    grade="304",
)


def bend(request: SizeRequest = REQUEST) -> BendWords:
    shop = sample_shop()
    return BendWords(assess(request, shop), shop, BRITISH)


def test_the_figures_of_a_bend_are_the_engines() -> None:
    found = bend()
    assert found.tube == "2 x 0.065 in"
    assert found.wall_factor == "30.8"  # 2 / 0.065 = 30.77
    assert found.d_of_bend == "3.0"
    assert found.stretch == "16.7"  # 100 / 6
    # 3 D: TEMA 1/13 = 7.7 %, B31.1 order factor 1 - 1/1.25 = 20 %.
    assert found.thinning == "8 to 20"
    assert found.wall_left == "0.052 to 0.06 in (1.32 to 1.52 mm)"  # 0.065 x 0.8, x 12/13
    assert found.clamp == "6 in (152.4 mm)"  # 3 x 2
    # pi x 6 x 90 / 180 + 2 x 2 = 13.42 in
    assert found.pressure_die == "13.4 in (341 mm)"
    assert found.smallest_clr == "5 in (127 mm)"  # 2.5 x 2
    assert found.thinnest_wall == "0.067 in (1.7 mm)"  # 2 / 30 = 0.0667, 1.693 mm, rounded up
    assert found.boiler_limit == "6.7"  # 20 / 3
    assert found.need == "needed"  # wall factor above 20
    low, high = (D(end) for end in found.springback.split(" to "))
    assert D("0.5") < low < high < D("3")


def test_a_thinnest_wall_is_never_rounded_below_the_limit() -> None:
    for thousandths in range(500, 3000, 37):
        od = D(thousandths) / 1000 * INCH
        words = bend(SizeRequest(od_mm=od)).thinnest_wall
        inches = D(words.split(" in")[0])
        mm = D(re.search(r"\(([\d.]+) mm\)", words)[1])  # type: ignore[index]
        assert inches * INCH >= od / 30
        assert mm >= od / 30


def test_what_is_not_known_is_left_out() -> None:
    empty = BendWords(None, None, BRITISH)
    properties = [n for n in dir(BendWords) if isinstance(getattr(BendWords, n), property)]
    assert len(properties) > 20
    assert all(not getattr(empty, name) for name in properties)
    only_od = bend(SizeRequest(od_mm=2 * INCH))
    assert only_od.smallest_clr
    assert not any((only_od.wall_factor, only_od.springback, only_od.thinning, only_od.balls))


def reply(text: str) -> str:
    made = process(text_message(text, TODAY), sample_shop(), TEMPLATES).draft
    assert made is not None, text
    return made.body


ASKERS = [
    ("1.75 x .083", "4.5"),
    ("2 x .065", "6"),
    ("1.5 x .095", "4.5"),
    ("1 x .049", "3"),
    ("2.5 x .120", "10"),
    ("1.625 x .065", "5"),
    ("3 x .120", "9"),
    ("1.25 x .065", "4"),
    ("2.25 x .083", "7"),
    ("1.375 x .058", "4.125"),
]


@pytest.mark.parametrize(
    ("question", "key"),
    [
        ("How much will the wall thin on the outside of the bend with {} on {} clr?", "thins by"),
        ("How much does the outside stretch with {} on a {} clr?", "stretches by"),
        ("Where do I set the mandrel for {} stainless on {} clr?", "between shank and nose"),
        ("{} stainless, {} clr. How long does the clamp die need to be?", "The clamp wants"),
    ],
)
def test_ten_people_get_the_same_words_apart_from_their_figures(question: str, key: str) -> None:
    told = set()
    for asker in ASKERS:
        body = reply(question.format(*asker))
        (answer,) = [part for part in body.split("\n\n") if key in part]
        told.add(re.sub(r"\d[\d.]*(?: to [\d.]+)?", "#", answer))
    assert len(told) == 1


@pytest.mark.parametrize(
    "asked",
    [
        "What is a wall factor?",
        "can you explain the wall factor",
        "Was bedeutet Wandfaktor?",
        "hi, whats a wall factor",
        "Qu'est-ce que le facteur de paroi ?",
        "Please explain wall factor.",
        "How do you work out the wall factor?",
        "¿Qué es el factor de pared?",
        "meaning of wall factor?",
        "Could you tell me what wall factor means?",
    ],
)
def test_however_it_is_asked_the_answer_is_the_same(asked: str) -> None:
    assert said("wall-factor").strip() in reply(asked)


def test_the_asker_finds_his_own_figures() -> None:
    # 1.75 / 0.083 = 21.08; 4.375 = 2.5 x 1.75
    assert "Your 1.75 x 0.083 in has 21.1." in reply("What is the wall factor of 1.75 x .083?")
    assert "4.375 in" in reply("What is the smallest radius you can do with 1.75 OD tube?")


def test_a_doubtful_size_gets_no_figures_of_its_own() -> None:
    text = reply("How much does the wall thin, about 1.75 or maybe 2 OD, .083 wall, 6 clr?")
    assert "3 D bend the wall thins by 8 to 20 %" in text


# -- spelling, and nothing said twice ------------------------------------------------------------


@pytest.mark.parametrize("answer", TOLD, ids=lambda a: a.name)
def test_an_answer_is_spelled_as_the_shop_spells(answer: Any) -> None:
    for words, foreign in ((BRITISH, "aluminum|centerline"), (AMERICAN, "aluminium|centreline")):
        facts = Facts(first_name="", shop=shop_words(sample_shop()), words=words).as_variables()
        text = TEMPLATES.render(f"answers/{answer.name}.md", facts)
        assert not re.search(foreign, text, re.IGNORECASE)


@pytest.mark.parametrize("answer", TOLD, ids=lambda a: a.name)
@pytest.mark.parametrize(
    "size", ["1.75 x .095 DOM 5.25 clr", "2 x .049 304 4 clr", "1.6 x .083 3003"]
)
def test_a_reply_with_sizes_says_no_sentence_twice(answer: Any, size: str) -> None:
    shop = sample_shop()
    message = text_message(f"Please quote a mandrel, {size}.", TODAY)
    own = mask(message)
    assessments = tuple(assess(one, shop, today=TODAY) for one in read(own, message).requests)
    asked = (Question(surface="?", answer=answer.name),)
    made = draft(message, Kind.SIZES, assessments, asked, own, shop)
    assert made is not None
    sentences = [s.strip() for s in re.split(r"(?<=[.:?])\s", made.body) if len(s.split()) > 3]
    assert len(sentences) == len(set(sentences))
    for fact in (r"wall factor [\d.]+, our limit", r"our limit is", r"Our own limit"):
        assert len(re.findall(fact, made.body, re.IGNORECASE)) <= 1
    assert len(made.body.split()) < 250
