"""``explain``: the whole sheet on a terminal and as JSON."""

from __future__ import annotations

import json

import pytest

from bendreply.intake.cli import main

TUBE = "1.75 x .083 4130 on 4.5 clr, 90 deg"


@pytest.mark.parametrize("columns", [80, 120])
def test_the_sheet_is_legible_in_a_terminal(
    columns: int, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("COLUMNS", str(columns))
    assert main(["explain", TUBE]) == 0
    out = capsys.readouterr().out
    assert all(len(line) <= columns for line in out.splitlines())
    for said in (
        "WF = OD / t",
        "21.084",
        "e = OD / (2 x CLR)",
        "19.4 %",
        "8.9 to 18.5 %",
        "5.250 in (133.35 mm)",
        "bend a",
    ):
        assert said in out
    assert "…" not in out


def test_as_json_each_figure_has_value_unit_formula_and_source(
    capsys: pytest.CaptureFixture[str],
) -> None:
    assert main(["explain", "--json", TUBE]) == 0
    (one,) = json.loads(capsys.readouterr().out)
    assert one["request"]["od_mm"] == 44.45
    figures = {f["name"]: f for section in one["sections"] for f in section["figures"]}
    assert figures["Wall factor"]["values"] == [pytest.approx(1.75 / 0.083)]
    for figure in figures.values():
        assert figure["unit"]
        assert figure["formula"]
        assert figure["source"]


def test_each_size_has_its_sheet(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["explain", "--json", "1.75 x .095 DOM, 5.25 clr\n1.5 x .065 DOM, 4.5 clr"]) == 0
    assert len(json.loads(capsys.readouterr().out)) == 2


def test_a_size_with_gaps_says_what_is_needed(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["explain", "mandrel for 1.75 x .095 DOM"]) == 0
    assert "No sheet: OD, wall and CLR" in capsys.readouterr().out


def test_words_without_a_size_are_refused(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["explain", "hello there"]) == 1
    assert "no tube size could be read" in capsys.readouterr().err
