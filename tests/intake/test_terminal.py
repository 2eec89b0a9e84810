"""On a real terminal of 80 columns, no line is left for it to break in the middle of a word."""

from __future__ import annotations

import os
import pty
import subprocess
import sys
import termios
from pathlib import Path

import pytest

from bendreply.intake.cli import main

PROGRAM = [sys.executable, "-c", "from bendreply.intake.cli import main; raise SystemExit(main())"]
MAIL = """From: Ada Byrne <ada@example.com>
Subject: Mandrel
Date: Mon, 16 Nov 2026 10:00:00 -0500
Message-ID: <1@example.com>

Please quote a mandrel for 1.5 in OD x .095 wall 4130, 4.5 in CLR, for the long tailpipe of a truck.
"""


def on_terminal(*call: str) -> str:
    """What a person sees of a command at a terminal of 80 columns."""
    ours, theirs = pty.openpty()
    termios.tcsetwinsize(theirs, (40, 80))
    surroundings = {k: v for k, v in os.environ.items() if k not in ("COLUMNS", "BENDREPLY_SHOP")}
    with subprocess.Popen(
        [*PROGRAM, *call], stdin=theirs, stdout=theirs, stderr=theirs,
        env={**surroundings, "TERM": "dumb"},
    ):  # fmt: skip
        os.close(theirs)
        shown = b""
        try:
            while more := os.read(ours, 4096):
                shown += more
        except OSError:  # the other end is closed
            pass
    os.close(ours)
    return "\n".join(map(str.rstrip, shown.decode().splitlines()))


@pytest.fixture(scope="module")
def store(tmp_path_factory: pytest.TempPathFactory) -> str:
    folder: Path = tmp_path_factory.mktemp("terminal")
    (folder / "1.eml").write_text(MAIL, encoding="utf-8")
    assert main(["collect", "--store", str(folder / "s.sqlite"), str(folder / "1.eml")]) == 0
    return str(folder / "s.sqlite")


def test_no_word_is_broken(store: str) -> None:
    of_help, inquiry = on_terminal("--help"), on_terminal("show", "1", "--store", store)
    wrong = on_terminal("shwo")
    unknown = on_terminal("show", "77", "--store", store)
    for shown in (of_help, inquiry, wrong, unknown):
        assert max(map(len, shown.splitlines())) <= 80
    assert "judges the bend by your shop's\nlimits and shelf" in of_help
    assert "for the long\ntailpipe of a truck." in inquiry
    assert wrong.endswith("(see `bendreply --help`)")
    assert "shows the numbers that\nwait" in unknown


def test_lines_are_whole_where_they_are_piped(
    store: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["show", "1", "--store", store]) == 0
    assert "4.5 in CLR, for the long tailpipe of a truck.\n" in capsys.readouterr().out
