"""What is kept can be read back, checked, and turned into labels."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from bendreply.intake.cli import main
from bendreply.intake.score import score_folder

MAIL = (
    "From: Ada <ada@example.net>\nTo: sales@example.org\nSubject: Mandrel\n"
    "Date: Mon, 16 Nov 2026 10:00:00 -0500\nMessage-ID: <1@example.net>\n\n"
    "Please quote a mandrel for 1.5 in OD x .095 wall DOM, 4.5 in CLR.\n"
)
BY = ("--by", "Ann")


@pytest.fixture
def store(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A store with one inquiry, corrected by Ann."""
    monkeypatch.delenv("BENDREPLY_SHOP", raising=False)
    monkeypatch.setenv("COLUMNS", "100")
    (tmp_path / "1.eml").write_text(MAIL, "utf-8")
    path = tmp_path / "store.sqlite"
    assert main(["collect", "--store", str(path), str(tmp_path / "1.eml")]) == 0
    assert main(["correct", "1", "wall=.120", *BY, "--store", str(path)]) == 0
    return path


def printed(capsys: pytest.CaptureFixture[str], *call: str) -> tuple[int, str, str]:
    capsys.readouterr()
    status = main(list(call))
    return status, *capsys.readouterr()


def test_the_history_names_who_did_what_when(store: Path, capsys) -> None:
    status, out, _ = printed(capsys, "history", "1", "--store", str(store))
    lines = [line[22:] for line in out.splitlines() if " UTC  " in line]
    assert (status, lines) == (0, ["bendreply: taken in", "Ann: corrected"])
    assert "OD 1.5 in (38.1 mm), wall 0.095 in (2.413 mm), CLR 4.5 in (114.3 mm), material" in out
    assert "wall: 0.095 in (2.413 mm) to 0.120 in (3.048 mm)" in out
    assert "_" not in out.split("draft 1")[0].replace(str(store.parent), "")
    assert "draft 1 by bendreply" in out
    assert "draft 2 by bendreply" in out


def test_a_whole_store_is_said_to_be_whole(store: Path, capsys) -> None:
    status, out, _ = printed(capsys, "check", "--store", str(store))
    assert (status, out) == (0, f"The store {store} is whole: 1 inquiries looked at, none amiss.\n")


@pytest.mark.parametrize(
    ("harm", "fault"),
    [
        ("UPDATE inquiry SET assessments = '[{'", "inquiry 1 can't be read"),
        ("UPDATE inquiry SET state = 'approved'", "it is approved, and nobody has approved it"),
        ("UPDATE draft SET withdrawn = 0", "more than one of its drafts stands"),
        ("DELETE FROM event", "it has no history"),
        ("UPDATE message SET message = replace(message, '1.5 in OD', '1.9 in OD')",
         "the od of size 1 is not in the words it was read from"),
        ("UPDATE draft SET inquiry_id = 7", "a row of the table draft belongs to nothing"),
    ],
)  # fmt: skip
def test_what_is_amiss_is_named(store: Path, capsys, harm: str, fault: str) -> None:
    with closing(sqlite3.connect(store)) as connection, connection:
        connection.execute(harm)
    status, _, err = printed(capsys, "check", "--store", str(store))
    assert status == 1
    assert fault in err


def test_a_correction_becomes_a_label_that_score_measures_against(
    store: Path, tmp_path: Path, capsys
) -> None:
    out = tmp_path / "labels"
    assert printed(capsys, "export", str(out), "--store", str(store))[0] == 0
    assert b"ada@example.net" not in (out / "00001.eml").read_bytes()
    scored = score_folder(out)
    # The reader says .095 as the customer wrote; the person said .120: a silent misread by label.
    assert [(one.field, one.stated, one.gold) for one in scored.silent_misreads] == [
        ("wall", "2.413", "3.048")
    ]
    status, _, err = printed(capsys, "export", str(out), "--store", str(store))
    assert status == 1
    assert "holds a gold.jsonl already" in err
