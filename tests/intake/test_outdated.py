"""A laid draft outdated by a further message is taken back while it is ours; else told of."""

from __future__ import annotations

import mailbox
from collections.abc import Callable
from pathlib import Path

import pytest

from bendreply.intake import desk
from bendreply.intake.deliver import DraftsFolder, MaildirDrafts, Target
from bendreply.intake.deliver_mbox import MboxDrafts
from bendreply.intake.desk_outdated import any_outdated, take_back_outdated
from bendreply.intake.desk_sent import note_sent
from bendreply.intake.inquiry import State
from bendreply.intake.letter import DraftId
from bendreply.intake.model import Address
from bendreply.intake.store import Store

SHOP = Address(name="Fernhollow Sales", address="sales@fernhollow.example.com")
TAKEN = "inquiry 1: its laid draft was outdated, and was taken back"


def new_target(kind: str, folder: Path) -> Target:
    if kind == "maildir":
        mailbox.Maildir(folder / "mail", create=True)
        return MaildirDrafts(folder / "mail", folder / "drafts")
    if kind == "mbox":
        return MboxDrafts(folder / "Drafts", folder / "drafts")
    return DraftsFolder(folder / "drafts")


def laid_file(kind: str, folder: Path) -> list[Path]:
    """Where a laid draft's words stand."""
    match kind:
        case "maildir":
            return list((folder / "mail" / ".Drafts" / "cur").iterdir())
        case "mbox":
            file = folder / "Drafts"
            return [file] if b"Message-ID" in file.read_bytes() else []
    return list((folder / "drafts").glob("1.*"))


def redecide(store: Store, make_result: Callable[..., object]) -> None:
    """What a customer's further message does to a delivered inquiry."""
    result = make_result("lou", draft="We have another one.\n")
    with store.writing() as book:
        inquiry = book.inquiry(1, to_change=True)
        assert inquiry is not None
        desk_draft = result.draft  # type: ignore[attr-defined]
        book.withdraw_drafts(1)
        book.add_draft(1, 1 + len(inquiry.drafts), desk_draft, by="bendreply")
        book.judge_again(inquiry, result, decision="stock", needed_by=None)  # type: ignore[arg-type]


KINDS = ["folder", "maildir", "mbox", "chat"]


@pytest.fixture(params=KINDS)
def kind(request: pytest.FixtureRequest) -> str:
    return str(request.param)


@pytest.fixture
def laid(store: Store, make_result, tmp_path: Path, kind: str) -> Target:
    """Inquiry 1, delivered."""
    channel = "chat" if kind == "chat" else "email"
    body = "From our shelf, today:\n\nFrom 3 on, less.\n"
    desk.take_in(store, make_result("lou", draft=body, channel=channel), "x")
    desk.approve(store, 1, "Ann")
    target = new_target(kind, tmp_path)
    (done,) = desk.deliver(store, target, SHOP).delivered
    assert not done.was_there
    assert len(laid_file(kind, tmp_path)) == 1
    return target


def test_while_it_is_as_it_was_laid_it_goes_once(
    store: Store, make_result, tmp_path: Path, kind: str, laid: Target
) -> None:
    assert not any_outdated(store)
    redecide(store, make_result)
    assert any_outdated(store)
    assert list(take_back_outdated(store, laid)) == [TAKEN]
    assert laid_file(kind, tmp_path) == []
    assert not any_outdated(store)
    assert list(take_back_outdated(store, laid)) == []
    assert [one.what for one in desk.history(store, 1)][-1] == "outdated draft taken back"
    desk.approve(store, 1, "Ann")
    assert len(desk.deliver(store, new_target(kind, tmp_path), SHOP).delivered) == 1
    assert len(laid_file(kind, tmp_path)) == 1


def test_changed_by_a_person_it_stays_and_is_told_of_once(
    store: Store, make_result, tmp_path: Path, kind: str, laid: Target
) -> None:
    (file,) = laid_file(kind, tmp_path)
    changed = file.read_bytes().replace(b"From our shelf", b"From OUR shelf")
    file.write_bytes(changed)
    redecide(store, make_result)
    assert list(take_back_outdated(store, laid)) == [
        "inquiry 1: its laid draft is outdated, and was left since somebody has changed it: don't "
        "send it as it is"
    ]
    assert file.read_bytes() == changed
    assert list(take_back_outdated(store, laid)) == []


def test_one_that_is_gone_is_told_of(
    store: Store, make_result, tmp_path: Path, kind: str, laid: Target
) -> None:
    (file,) = laid_file(kind, tmp_path)
    file.write_bytes(b"") if kind == "mbox" else file.unlink()
    redecide(store, make_result)
    assert list(take_back_outdated(store, laid)) == [
        "inquiry 1: its laid draft is outdated, and no longer lies among the drafts"
    ]


def test_what_was_sent_or_stands_is_not_touched(
    store: Store, make_result, tmp_path: Path, kind: str, laid: Target
) -> None:
    assert list(take_back_outdated(store, laid)) == []  # it stands
    shown = desk.show(store, 1)
    assert shown.draft is not None
    name = DraftId.of(shown, shown.draft)
    sent = make_result("us", message_id=f"{name}@fernhollow.example.com").message
    assert note_sent(store, sent) is not None
    redecide(store, make_result)
    assert desk.show(store, 1).state is State.WAITING
    assert list(take_back_outdated(store, laid)) == []
    assert len(laid_file(kind, tmp_path)) == 1


def test_killed_between_taking_back_and_writing_it_down(
    store: Store, make_result, tmp_path: Path, kind: str, laid: Target, monkeypatch
) -> None:
    redecide(store, make_result)
    with monkeypatch.context() as patched:
        patched.setattr("bendreply.intake.store_writer.Writer.log", lambda *_, **__: 1 / 0)
        with pytest.raises(ZeroDivisionError):
            list(take_back_outdated(store, laid))
    assert laid_file(kind, tmp_path) == []
    assert len(list(take_back_outdated(store, laid))) == 1
    assert not any_outdated(store)
