"""What the command line refuses: one sentence, the right exit status, nothing stored."""

from __future__ import annotations

import shutil
import sqlite3
import subprocess
import sys
from contextlib import closing
from pathlib import Path

import pytest

from bendreply.intake.cli import main

MAIL = """{sender}To: sales@example.org
Subject: Mandrel
Date: Mon, 16 Nov 2026 10:00:00 -0500
Message-ID: <1@example.com>

Please quote a mandrel for 1.5 in OD x .095 wall DOM, 4.5 in CLR.
"""
ADA = "From: Ada Byrne <ada@example.com>\n"
PROGRAM = [sys.executable, "-c", "from bendreply.intake.cli import main; raise SystemExit(main())"]


@pytest.fixture(autouse=True)
def _surroundings(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delenv("BENDREPLY_SHOP", raising=False)
    monkeypatch.setenv("COLUMNS", "100")


@pytest.fixture(scope="module")
def kept(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A store with one inquiry: 1.5 in (38.1 mm) OD."""
    folder = tmp_path_factory.mktemp("kept")
    (folder / "1.eml").write_text(MAIL.format(sender=ADA), encoding="utf-8")
    assert main(["collect", "--store", str(folder / "store.sqlite"), str(folder / "1.eml")]) == 0
    return folder / "store.sqlite"


@pytest.fixture
def store(kept: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> str:
    shutil.copy(kept, tmp_path / "store.sqlite")
    capsys.readouterr()
    return str(tmp_path / "store.sqlite")


@pytest.mark.parametrize(
    ("change", "status", "sentence"),
    [
        ("wall=30mm", 1, "30 mm is more than half of the OD 38.1 mm"),
        ("wall=3in", 1, "76.2 mm is more than half of the OD 38.1 mm"),
        ("wall=.75in", 1, "19.05 mm is half of the OD 38.1 mm"),
        ("clr=5mm", 1, "5 mm is less than half of the OD 38.1 mm"),
        ("od=-5in", 1, "od can't be -127 mm: it has to be more than 0"),
        ("quantity=0", 1, "quantity can't be 0: it has to be 1 to 999"),
        ("quantity=-2", 1, "quantity can't be -2: it has to be 1 to 999"),
        ("quantity=99999999999999", 1, "it has to be 1 to 999"),
        ("needed_by=1999-01-01", 1, "needed_by can't be 1999-01-01: the message came on 2026-11-1"),
        ("od=banana", 2, "od=banana: this can't be read as one length"),
    ],
)
def test_a_correction_that_cannot_be(
    store: str, change: str, status: int, sentence: str, capsys: pytest.CaptureFixture[str]
) -> None:
    main(["show", "1", "--store", store])
    before = capsys.readouterr().out
    assert main(["correct", "1", change, "--store", store]) == status
    (line,) = capsys.readouterr().err.splitlines()
    assert sentence in line
    main(["show", "1", "--store", store])
    assert capsys.readouterr().out == before


def test_a_correction_is_shown_in_both_units_and_the_way_on_stands_alone(
    store: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["correct", "1", "wall=.120", "--store", store]) == 0
    lines = [line.rstrip() for line in capsys.readouterr().out.splitlines()]
    # .095 x 25.4 = 2.413; .120 x 25.4 = 3.048
    assert "corrected  wall: 0.095 in (2.413 mm) to 0.120 in (3.048 mm)" in lines
    assert lines[-1] == "`bendreply show 1` has the new draft"


def test_show_says_where_the_reply_goes(store: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["show", "1", "--store", store]) == 0
    lines = [line.rstrip() for line in capsys.readouterr().out.splitlines()]
    assert 'to        "Ada Byrne" <ada@example.com>' in lines


@pytest.mark.parametrize(("number", "status"), [("abc", 2), ("1.5", 2), ("77", 1)])
def test_no_number_is_a_wrong_call_and_an_unknown_one_is_refused(
    store: str, number: str, status: int
) -> None:
    call = ["approve", number, "--by", "Kit Lindgren", "--store", store]
    assert main(call) == status


@pytest.mark.parametrize("port", ["99999", "-1", "http"])
def test_a_port_that_there_is_none_of(port: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["review", f"--port={port}"]) == 2
    assert capsys.readouterr().err == (
        f"bendreply: argument --port: {port!r} is not a number from 0 to 65535 "
        "(see `bendreply review --help`)\n"
    )


def test_a_draft_to_nobody_is_not_approved(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    mail, store = tmp_path / "1.eml", str(tmp_path / "store.sqlite")
    mail.write_text(MAIL.format(sender=""), encoding="utf-8")
    assert main(["collect", "--store", store, str(mail)]) == 0
    capsys.readouterr()
    assert main(["approve", "1", "--by", "Kit Lindgren", "--store", store]) == 1
    (line,) = capsys.readouterr().err.splitlines()
    assert "inquiry 1 has no address to reply to" in line
    assert "`bendreply set-aside 1 --by NAME --why" in line


def test_what_was_set_aside_names_a_command_that_there_is(
    store: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["set-aside", "1", "--by", "Kit", "--why", "by phone", "--store", store]) == 0
    assert main(["approve", "1", "--by", "Kit Lindgren", "--store", store]) == 1
    assert "`bendreply correct` takes it up again" in capsys.readouterr().err


@pytest.mark.parametrize("command", [["backlog"], ["show", "1"], ["report"]])
def test_an_empty_file_is_no_store_yet(
    tmp_path: Path, command: list[str], capsys: pytest.CaptureFixture[str]
) -> None:
    empty = tmp_path / "store.sqlite"
    empty.touch()
    assert main([*command, "--store", str(empty)]) == 1
    assert capsys.readouterr().err == (
        f"bendreply: there is no store at {empty} yet: collect some messages first\n"
    )
    assert empty.stat().st_size == 0


def test_a_database_without_tables_is_no_store_yet(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    bare = tmp_path / "store.sqlite"
    with closing(sqlite3.connect(bare)) as made:
        made.execute("VACUUM")
        made.execute("PRAGMA user_version = 1")
    assert main(["backlog", "--store", str(bare)]) == 1
    assert "there is no store at" in capsys.readouterr().err


@pytest.mark.parametrize(
    "damage",
    [
        "DELETE FROM alembic_version",
        "ALTER TABLE alembic_version RENAME COLUMN version_num TO n",
        "UPDATE alembic_version SET version_num = ''",
    ],
)
@pytest.mark.parametrize("command", [["backlog"], ["collect", "nothing.eml"]])
def test_a_damaged_version_is_named(
    store: str, damage: str, command: list[str], capsys: pytest.CaptureFixture[str]
) -> None:
    with closing(sqlite3.connect(store)) as opened, opened:
        opened.execute(damage)
    assert main([*command, "--store", store]) == 1
    assert capsys.readouterr().err == (
        f"bendreply: the store {store} is damaged: it doesn't say of which version it is; put a "
        "backup copy in its place\n"
    )


@pytest.mark.parametrize(
    ("call", "streams", "sentence"),
    [
        (["answer"], "<&-", "standard input is closed: give the words as TEXT"),
        (["explain"], "<&-", "standard input is closed: give the words as TEXT"),
        (["read", "-"], "<&-", "standard input is closed: name a file instead of -"),
        (["schema"], ">&-", "the output can't be written: standard output is closed"),
        (["schema"], ">/dev/full", "the output can't be used: No space left on device"),
        (
            ["answer", "1.75 x .095 DOM, 5.25 clr"],
            ">/dev/full",
            "the output can't be used: No space left on device",
        ),
    ],
)
def test_streams_that_cannot_be_used(call: list[str], streams: str, sentence: str) -> None:
    if "full" in streams and not Path("/dev/full").exists():
        pytest.skip("this system has no /dev/full")
    done = subprocess.run(
        ["/bin/sh", "-c", f'"$@" {streams}', "sh", *PROGRAM, *call],
        capture_output=True,
        text=True,
        check=False,
    )
    assert (done.returncode, done.stderr) == (1, f"bendreply: {sentence}\n")


def test_the_demo_names_the_command_as_it_was_called(monkeypatch: pytest.MonkeyPatch) -> None:
    from bendreply.intake.demo import _as_called

    monkeypatch.setattr(sys, "argv", [".venv/bin/bendreply", "demo"])
    assert _as_called() == ".venv/bin/bendreply"
    monkeypatch.setattr(sys, "argv", ["bendreply", "demo"])
    assert _as_called() == "bendreply"
