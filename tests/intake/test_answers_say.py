"""What the approved answers say: every figure against the engine or its table, every claim against
the source that it names."""

from __future__ import annotations

import re
from collections.abc import Callable
from importlib import resources
from typing import Any

import pytest

from .answer_figures import FIGURES, TOLD, said


@pytest.mark.parametrize(
    ("name", "words", "figure"), FIGURES, ids=[f"{name}-{words[:40]}" for name, words, _ in FIGURES]
)
def test_a_figure_is_the_engines(name: str, words: str, figure: Callable[[], str]) -> None:
    assert words.format(figure()) in " ".join(said(name).split())


# Figures that are inputs or names, not results: sizes of examples, codes, alloys, list numbers.
NAMES = re.compile(
    r"B31\.1|Art\. 253|6061-T6|Ti-3Al-2\.5V|T[46]\b|OD / \(2 x CLR\)|plus 2 x OD|1-1/2 in"
    r"|38 mm|50 mm"
    r"|(?<=nor 50 mm )2 in|0\.01 mm|0\.001 in|90 degree|180 degrees|2 x 0\.065 in|1 x 0\.035 in"
    r"|15 to 70|(?:at|to|about|a|Below) [123](?:\.5)? D\b|At 1 D|2 in tube"
    r"|0\.100 in|4 in CLR|6 in CLR"
    r"|30 to 44 mm|54 to 84 mm|118 to 152 mm|^\d\. |\d{2} (?:gauge )?is|16 is|schedule 40",
    re.MULTILINE,
)


@pytest.mark.parametrize("answer", TOLD, ids=lambda a: a.name)
def test_no_figure_is_left_unchecked(answer: Any) -> None:
    text = " ".join(NAMES.sub(" ", said(answer.name)).split())
    checked = " ".join(
        " ".join(NAMES.sub(" ", words.format(figure())).split())
        for name, words, figure in FIGURES
        if name == answer.name
    )
    for figure in re.findall(r"\d+(?:\.\d+)?", text):
        assert re.search(rf"(?<![\d.]){re.escape(figure)}(?![\d.]*\d)", checked), (figure, text)


# -- claims against the source that they name ----------------------------------------------------


@pytest.mark.parametrize(
    ("name", "claim", "table_name", "row_has"),
    [
        (
            "bronze-or-chrome",
            "aluminium bronze would gall on aluminium",
            "mandrel_material.csv",
            "aluminium,aluminium bronze,never",
        ),
        (
            "bronze-or-chrome",
            "stainless: aluminium bronze, on most advice",
            "mandrel_material.csv",
            "stainless_steel,chromed tool steel,never",
        ),
        (
            "bronze-or-chrome",
            "either is used, and makers differ",
            "mandrel_material.csv",
            "carbon_steel,chromed tool steel,suits",
        ),
        (
            "bronze-or-chrome",
            "some jobs run better on chrome",
            "mandrel_material.csv",
            "titanium,chromed tool steel,sometimes",
        ),
        (
            "pick-up",
            "hard chrome inside aluminium, copper and brass",
            "mandrel_material.csv",
            "copper,chromed tool steel,suits",
        ),
        (
            "titanium",
            "mostly aluminium bronze",
            "mandrel_material.csv",
            "titanium,aluminium bronze,suits",
        ),
        (
            "mandrel-needed",
            "probably needed",
            "mandrel_thresholds.csv",
            "from a wall factor of 15 a mandrel is probably needed",
        ),
        (
            "mandrel-needed",
            "nearly always at 1.5 D or tighter",
            "mandrel_thresholds.csv",
            "at 1.5 D and tighter a mandrel is almost always needed",
        ),
        (
            "mandrel-needed",
            "Heavy wall on a large radius often goes without",
            "mandrel_thresholds.csv",
            "heavy wall at 3 D and wider is usually bent without a mandrel",
        ),
        ("weld-seam", "near the neutral axis", "rulebook.csv", "seam near neutral axis"),
        (
            "weld-seam",
            "DOM and seamless have none",
            "tube_makes.csv",
            "dom,ASTM A513 Type 5 (DOM),1,steel,none",
        ),
        (
            "rule-books",
            "Formula SAE want a CLR of at least 3 x OD",
            "rulebook.csv",
            "CLR of any bend >= 3 x OD",
        ),
        (
            "rule-books",
            "ASME B31.1 wants extra wall ordered for bends",
            "rulebook.csv",
            "order thickness before bending",
        ),
        (
            "aluminium-t6",
            "another mill's tube, or an extrusion, may snap",
            "materials.csv",
            "snaps lot to lot; ask for T4 or O",
        ),
        (
            "ovality",
            "boiler tube practice",
            "rulebook.csv",
            "departure from circularity of tube bends",
        ),
        (
            "d-of-bend",
            "some people count D as the nominal size",
            "rulebook.csv",
            "'diameter' = NOMINAL for pipe",
        ),
    ],
)
def test_a_claim_stands_in_its_source(name: str, claim: str, table_name: str, row_has: str) -> None:
    assert claim in " ".join(said(name).split())
    data = resources.files("bendreply.rules").joinpath("data", table_name).read_text("utf-8")
    assert row_has in data.replace('"', "")


def test_every_source_key_of_an_answer_is_on_record() -> None:
    known = resources.files("bendreply.rules").joinpath("data", "SOURCES.md").read_text("utf-8")
    for answer in TOLD:
        assert len(answer.source) > 20, answer.name
        for key in re.findall(r"\bS\d\d\b", answer.source):
            assert re.search(rf"\b{key}\b", known), (answer.name, key)


def test_what_has_no_source_says_so() -> None:
    assert "no published figure" in said("mandrel-life")
    assert "no published comparison" in said("lubricant")
    assert "no one published figure" in said("wiper-die")
    assert "no published figure was found" in said("mandrel-size")


@pytest.mark.parametrize("name", ["cracking", "aluminium-t6", "rule-books", "wall-thinning"])
def test_what_touches_safety_leaves_it_to_whom_it_belongs(name: str) -> None:
    assert re.search(r"for the (?:part's designer|code|rule book)|designer", said(name))
