"""Commands that the README names in passing, and the line for cron, are ones that there are."""

from __future__ import annotations

import re
import shlex
from pathlib import Path

import pytest

from bendreply.intake.cli_commands import build_parser

README = (Path(__file__).parents[1] / "README.md").read_text("utf-8")
NAMED = sorted(set(re.findall(r"`(?:\S+/)?bendreply ([^`]+)`", README)))
IN_A_LINE = re.findall(r"^[\d* ]+\S+/bendreply (.+)$", README, re.MULTILINE)


@pytest.mark.parametrize("words", [*NAMED, *IN_A_LINE])
def test_it_can_be_called_like_that(words: str, capsys: pytest.CaptureFixture[str]) -> None:
    try:
        build_parser().parse_args(shlex.split(words))
    except SystemExit:
        # The bare name of a command is enough to speak of it.
        told = capsys.readouterr().err
        assert "are required" in told, told
        assert len(words.split()) == 1 or words.startswith("--shop")


def test_some_are_named() -> None:
    assert len(NAMED) >= 8
    assert len(IN_A_LINE) == 1
