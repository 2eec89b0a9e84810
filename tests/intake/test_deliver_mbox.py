"""Drafts laid in an mbox: what was there stays as it was, byte for byte, and nothing lies twice."""

from __future__ import annotations

import mailbox
import subprocess
import sys
from contextlib import closing
from email import policy
from email.parser import BytesParser
from pathlib import Path

import pytest

from bendreply.intake import desk
from bendreply.intake.deliver_mbox import MboxDrafts
from bendreply.intake.desk_errors import DraftsPlaceError
from bendreply.intake.model import Address
from bendreply.intake.sources import read_paths
from bendreply.intake.store import Store

HOLD = """
import fcntl, sys
with open(sys.argv[1], "r+b") as file:
    fcntl.lockf(file, fcntl.LOCK_EX)
    print("held", flush=True)
    sys.stdin.read()
"""
SHOP = Address(name="Fernhollow Sales", address="sales@fernhollow.example.com")
OTHER = (
    b"From somebody@example.org Mon Nov  2 08:00:00 2026\nFrom: somebody@example.org\n"
    b"Message-ID: <other@example.org>\nX-Status: T\n\n>From here on\n\nof the shelf\n"
)


def approved(store: Store, result) -> int:
    number = desk.take_in(store, result, "in/1.eml").inquiry
    desk.approve(store, number, "Ann")
    return number


@pytest.mark.parametrize("before", [b"", OTHER, OTHER + b"\n", OTHER.rstrip(b"\n")])
def test_a_draft_is_added_at_the_end(
    store: Store, tmp_path: Path, make_result, before: bytes
) -> None:
    file = tmp_path / "Drafts"
    file.write_bytes(before)
    body = "From our shelf:\n\nFrom 3 on, less.\nGrüße\n"
    approved(store, make_result(draft=body))
    (done,) = desk.deliver(store, MboxDrafts(file, tmp_path / "chats"), SHOP).delivered
    assert (done.place, done.was_there) == (str(file), False)
    assert file.read_bytes().startswith(before)
    with closing(mailbox.mbox(file, create=False)) as box:
        *others, laid = box
    assert len(others) == bool(before)
    assert "<lou@example.net>" in laid["To"]
    # As our own reader, and whoever takes ">From " for "From " at a line's beginning, has it.
    *_, item = read_paths([str(file)])
    assert item.message is not None
    assert item.message.body.strip() == body.strip()
    laid_text = BytesParser(policy=policy.default).parsebytes(laid.as_bytes()).get_content()
    assert laid_text.replace(">From", "From").strip() == body.strip()


def test_delivering_again_finds_it(store: Store, tmp_path: Path, make_result, monkeypatch) -> None:
    file = tmp_path / "Drafts"
    approved(store, make_result())
    with monkeypatch.context() as patched:  # killed after it was laid, before that was recorded
        patched.setattr("bendreply.intake.store_writer.Writer.log", lambda *_, **__: 1 / 0)
        with pytest.raises(ZeroDivisionError):
            desk.deliver(store, MboxDrafts(file, tmp_path), SHOP)
    laid = file.read_bytes()
    (done,) = desk.deliver(store, MboxDrafts(file, tmp_path), SHOP).delivered
    assert done.was_there
    assert file.read_bytes() == laid


def test_while_a_mail_program_holds_it_the_draft_stays_approved(
    store: Store, tmp_path: Path, make_result
) -> None:
    file = tmp_path / "Drafts"
    file.write_bytes(OTHER)
    number = approved(store, make_result())
    with subprocess.Popen(
        [sys.executable, "-c", HOLD, str(file)], stdin=subprocess.PIPE, stdout=subprocess.PIPE
    ) as other:
        assert other.stdout is not None
        assert other.stdin is not None
        assert other.stdout.readline() == b"held\n"
        (left,) = desk.deliver(store, MboxDrafts(file, tmp_path), SHOP).left
        other.stdin.close()
    assert left.inquiry == number
    assert "another program is using" in left.why
    assert file.read_bytes() == OTHER
    assert len(desk.deliver(store, MboxDrafts(file, tmp_path), SHOP).delivered) == 1


def test_a_full_disk_leaves_no_half_draft(
    store: Store, tmp_path: Path, make_result, monkeypatch
) -> None:
    file = tmp_path / "Drafts"
    file.write_bytes(OTHER)
    approved(store, make_result())

    def full(*_: object) -> None:
        raise OSError(28, "No space left on device")

    with monkeypatch.context() as patched:
        patched.setattr("bendreply.intake.deliver_mbox.os.fsync", full)
        (left,) = desk.deliver(store, MboxDrafts(file, tmp_path), SHOP).left
    assert "No space left on device; it stays approved" in left.why
    assert file.read_bytes() == OTHER
    assert len(desk.deliver(store, MboxDrafts(file, tmp_path), SHOP).delivered) == 1


@pytest.mark.parametrize(
    ("content", "sentence"), [(b"part,od\n", "is not an mbox"), (None, "does not exist")]
)
def test_what_is_no_mbox_is_refused_and_left(
    tmp_path: Path, content: bytes | None, sentence: str
) -> None:
    file = tmp_path / "Drafts" if content is not None else tmp_path / "nowhere" / "Drafts"
    if content is not None:
        file.write_bytes(content)
    with pytest.raises(DraftsPlaceError, match=sentence):
        MboxDrafts(file, tmp_path)
    assert content is None or file.read_bytes() == content
