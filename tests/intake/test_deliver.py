"""Approved drafts laid down for a person to send: threaded, once, and no customer's header in them.

Header rules are of RFC 5322 (3.6.2 reply address, 3.6.4 threading); what is checked is the mail
read back by the standard library, not our own idea of it.
"""

from __future__ import annotations

import mailbox
from datetime import UTC, datetime
from pathlib import Path

import pytest

from bendreply.intake import desk, desk_errors
from bendreply.intake.deliver import DraftsFolder, MaildirDrafts
from bendreply.intake.inquiry import State
from bendreply.intake.letter import DraftId
from bendreply.intake.model import Address
from bendreply.intake.store import Store
from bendreply.intake.store_writer import Writer

from .deliver_support import SHOP, approved, delivered, parse, words


def test_a_draft_opens_as_a_reply_in_the_customers_thread(
    store: Store, tmp_path: Path, make_result
) -> None:
    result = make_result(
        message_id="c3@mail.example.net",
        references=("a1@mail.example.net", "b2@shop.example.com"),
        subject="RE: Mandrel for 1½ × .095",
        draft="Grüße,\n\nwe have it — 44.45 mm.\n",
    )
    draft = result.draft.model_copy(update={"subject": "Re: Mandrel for 1½ × .095"})
    mail = delivered(store, tmp_path / "drafts", result.model_copy(update={"draft": draft}))
    assert mail["From"] == "Quill Bend Tooling <desk@shop.example.com>"
    assert mail["To"] == "Lou <lou@example.net>"
    assert mail["Subject"] == "Re: Mandrel for 1½ × .095"
    assert mail["In-Reply-To"] == "<c3@mail.example.net>"
    assert mail["References"].split() == [
        "<a1@mail.example.net>",
        "<b2@shop.example.com>",
        "<c3@mail.example.net>",
    ]
    assert mail["Date"].datetime == datetime(2026, 11, 25, 9, 2, tzinfo=UTC)  # of the approval
    assert mail["X-Unsent"] == "1"
    assert mail["Bcc"] is None
    assert mail["Cc"] is None
    assert words(mail) == "Grüße,\n\nwe have it — 44.45 mm.\n"


def test_lines_end_as_mail_has_them(store: Store, tmp_path: Path, make_result) -> None:
    delivered(store, tmp_path, make_result())
    data = (tmp_path / "1.eml").read_bytes()
    assert data.count(b"\n") == data.count(b"\r\n") > 8


def test_in_reply_to_alone_is_passed_on(store: Store, tmp_path: Path, make_result) -> None:
    result = make_result(message_id="b@example.net", in_reply_to="a@example.net")
    mail = delivered(store, tmp_path, result)
    assert mail["References"].split() == ["<a@example.net>", "<b@example.net>"]


def test_a_mail_without_an_id_is_answered_without_a_made_up_one(
    store: Store, tmp_path: Path, make_result
) -> None:
    mail = delivered(store, tmp_path, make_result(message_id=f"sha256-{'ab' * 32}@local"))
    assert mail["In-Reply-To"] is None
    assert mail["References"] is None


def test_long_ids_stay_whole(store: Store, tmp_path: Path, make_result) -> None:
    """Of 90 to 200 characters, as some servers make them: folding would break the thread."""
    ids = [f"{letter * 80 * n}@{'x' * 40}.example.net" for n, letter in enumerate("abc", 1)]
    mail = delivered(store, tmp_path, make_result(message_id=ids[2], references=tuple(ids[:2])))
    assert mail["References"].split() == [f"<{one}>" for one in ids]
    assert mail["In-Reply-To"] == f"<{ids[2]}>"
    assert f"In-Reply-To: <{ids[2]}>\r\n".encode() in (tmp_path / "1.eml").read_bytes()


def test_an_endless_thread_keeps_its_first_and_last_ids(
    store: Store, tmp_path: Path, make_result
) -> None:
    earlier = tuple(f"m{n}@example.net" for n in range(500))
    mail = delivered(store, tmp_path, make_result(references=earlier))
    kept = mail["References"].split()
    assert (kept[0], kept[-1]) == ("<m0@example.net>", "<lou-1@mail.example.net>")
    assert len(kept) == 40


def test_without_an_address_the_draft_stays_and_the_rest_goes_on(
    store: Store, tmp_path: Path, make_result
) -> None:
    # What has no address at all is not approved; the shop's own can become so afterwards.
    lost = approved(store, make_result("ana", sender=Address(name="Ana", address=SHOP.address)))
    fine = approved(store, make_result("bo"))
    delivery = desk.deliver(store, DraftsFolder(tmp_path), SHOP)
    assert [one.inquiry for one in delivery.delivered] == [fine]
    why = f"inquiry {lost} has no address to reply to but the shop's own; its draft stays approved"
    assert [(one.inquiry, one.why) for one in delivery.left] == [(lost, why)]
    assert desk.show(store, lost).state is State.APPROVED


def test_only_approved_drafts_are_laid(store: Store, tmp_path: Path, make_result) -> None:
    desk.take_in(store, make_result(), "x")
    assert desk.deliver(store, DraftsFolder(tmp_path / "drafts"), SHOP).delivered == ()
    assert not (tmp_path / "drafts").exists()


def test_delivering_twice_lays_nothing_twice(store: Store, tmp_path: Path, make_result) -> None:
    number = approved(store, make_result())
    desk.deliver(store, DraftsFolder(tmp_path), SHOP)
    (tmp_path / "1.eml").unlink()  # sent and tidied away
    again = desk.deliver(store, DraftsFolder(tmp_path), SHOP)
    assert (again.delivered, again.left) == ((), ())
    assert not (tmp_path / "1.eml").exists()
    with pytest.raises(desk_errors.AlreadyDeliveredError, match=r"approved by Ann .* delivered"):
        desk.approve(store, number, "Bob")


def test_after_delivery_nothing_is_corrected_reworded_or_set_aside(
    store: Store, tmp_path: Path, make_result
) -> None:
    number = approved(store, make_result())
    desk.deliver(store, DraftsFolder(tmp_path), SHOP)
    before = desk.show(store, number)
    with pytest.raises(desk_errors.AlreadyDeliveredError, match="can't be corrected any more"):
        desk.correct(store, number, {"quantity": 2}, 0, lambda *_: make_result(), "Bob")
    with pytest.raises(desk_errors.AlreadyDeliveredError, match="can't be reworded any more"):
        desk.edit_draft(store, number, "Other words.", "Bob")
    with pytest.raises(desk_errors.AlreadyDeliveredError):
        desk.set_aside(store, number, "Bob", "too late")
    assert desk.show(store, number) == before


def crash_before_recording(monkeypatch) -> None:
    def crash(*_: object, **__: object) -> None:
        raise KeyboardInterrupt

    monkeypatch.setattr(Writer, "log", crash)


@pytest.mark.parametrize("kind", ["folder", "maildir", "chat"])
def test_a_crash_between_laying_and_recording_is_settled_by_looking(
    store: Store, tmp_path: Path, make_result, monkeypatch, kind: str
) -> None:
    number = approved(store, make_result(channel="chat" if kind == "chat" else "email"))

    def target() -> DraftsFolder | MaildirDrafts:
        if kind != "maildir":
            return DraftsFolder(tmp_path / "drafts")
        mailbox.Maildir(tmp_path / "mail", create=True)
        return MaildirDrafts(tmp_path / "mail", tmp_path / "drafts")

    with monkeypatch.context() as patched:
        crash_before_recording(patched)
        with pytest.raises(KeyboardInterrupt):
            desk.deliver(store, target(), SHOP)
    assert desk.show(store, number).state is State.APPROVED
    lying = sorted(
        path for path in tmp_path.rglob("*") if path.is_file() and "sqlite" not in path.name
    )
    times = [path.stat().st_mtime_ns for path in lying]
    (done,) = desk.deliver(store, target(), SHOP).delivered
    assert (done.inquiry, done.was_there) == (number, True)
    again = sorted(
        path for path in tmp_path.rglob("*") if path.is_file() and "sqlite" not in path.name
    )
    assert (again, [path.stat().st_mtime_ns for path in again]) == (lying, times)
    assert desk.show(store, number).state is State.DELIVERED


@pytest.mark.parametrize("kind", ["folder", "maildir"])
def test_a_draft_laid_before_a_crash_and_then_reworded_is_replaced(
    store: Store, tmp_path: Path, make_result, monkeypatch, kind: str
) -> None:
    number = approved(store, make_result())
    mailbox.Maildir(tmp_path / "mail", create=True)

    def target() -> DraftsFolder | MaildirDrafts:
        if kind == "folder":
            return DraftsFolder(tmp_path / "drafts")
        return MaildirDrafts(tmp_path / "mail", tmp_path / "drafts")

    with monkeypatch.context() as patched:
        crash_before_recording(patched)
        with pytest.raises(KeyboardInterrupt):
            desk.deliver(store, target(), SHOP)
    desk.edit_draft(store, number, "New words.", "Bob")
    desk.approve(store, number, "Ann")
    (done,) = desk.deliver(store, target(), SHOP).delivered
    assert not done.was_there
    files = [
        path for path in tmp_path.rglob("*") if path.suffix == ".eml" or path.parent.name == "cur"
    ]
    (only,) = files
    assert words(parse(only.read_bytes())) == "New words.\n"


def test_what_the_person_changed_in_a_draft_is_left_alone(
    store: Store, tmp_path: Path, make_result, monkeypatch
) -> None:
    approved(store, make_result())
    with monkeypatch.context() as patched:
        crash_before_recording(patched)
        with pytest.raises(KeyboardInterrupt):
            desk.deliver(store, DraftsFolder(tmp_path), SHOP)
    path = tmp_path / "1.eml"
    path.write_bytes(path.read_bytes() + b"P.S. by hand\r\n")
    (done,) = desk.deliver(store, DraftsFolder(tmp_path), SHOP).delivered
    assert done.was_there
    assert path.read_bytes().endswith(b"by hand\r\n")


@pytest.mark.parametrize(
    ("channel", "name", "content"),
    [
        ("email", "1.eml", b"Message-ID: <1.1.0123456789abcdef.bendreply@x>\r\n\r\nother store"),
        ("email", "1.eml", b"not a mail at all"),
        ("chat", "1.txt", b"notes of my own"),
    ],
)
def test_a_file_that_is_not_ours_is_never_replaced(
    store: Store, tmp_path: Path, make_result, channel: str, name: str, content: bytes
) -> None:
    number = approved(store, make_result(channel=channel))
    drafts = tmp_path / "drafts"
    drafts.mkdir()
    (drafts / name).write_bytes(content)
    (left,) = desk.deliver(store, DraftsFolder(drafts), SHOP).left
    assert "is already there and is no draft of ours for inquiry 1" in left.why
    assert (drafts / name).read_bytes() == content
    assert desk.show(store, number).state is State.APPROVED


def test_the_name_of_a_draft_is_the_same_each_time_and_differs_between_drafts(
    store: Store, make_result
) -> None:
    number = approved(store, make_result())
    first = desk.show(store, number)
    assert first.draft is not None
    assert DraftId.of(first, first.draft) == DraftId.of(first, first.draft)
    assert DraftId.parse(f"<{DraftId.of(first, first.draft)}@shop.example.com>") == DraftId.of(
        first, first.draft
    )
    other = desk.show(store, approved(store, make_result("bo")))
    assert other.draft is not None
    assert str(DraftId.of(other, other.draft)) != str(DraftId.of(first, first.draft))


def test_a_full_disk_leaves_the_draft_approved_and_no_half_file(
    store: Store, tmp_path: Path, make_result, monkeypatch
) -> None:
    number = approved(store, make_result())

    def full(*_: object) -> None:
        raise OSError(28, "No space left on device")

    drafts = tmp_path / "drafts"
    with monkeypatch.context() as patched:
        patched.setattr("os.fsync", full)
        (left,) = desk.deliver(store, DraftsFolder(drafts), SHOP).left
    assert left.why == (
        "the draft of inquiry 1 could not be laid down: No space left on device; it stays approved"
    )
    assert list(drafts.glob("*.eml")) == []
    assert [one.inquiry for one in desk.deliver(store, DraftsFolder(drafts), SHOP).delivered] == [
        number
    ]
    assert [path.name for path in drafts.iterdir()] == ["1.eml"]


@pytest.mark.parametrize("layout", [".Drafts", "Drafts"])
def test_in_a_maildir_it_lies_in_drafts_flagged_as_one(
    store: Store, tmp_path: Path, make_result, layout: str
) -> None:
    mail = tmp_path / "mail"
    mailbox.Maildir(mail, create=True)
    mailbox.Maildir(mail / layout, create=True)
    approved(store, make_result(draft="Grüße"))
    approved(store, make_result("bo", channel="chat"))
    delivery = desk.deliver(store, MaildirDrafts(mail, tmp_path / "chats"), SHOP)
    assert len(delivery.delivered) == 2
    (laid,) = mailbox.Maildir(mail / layout, create=False)
    assert laid.get_flags() == "D"
    assert laid["X-Unsent"] == "1"
    (file,) = (mail / layout / "cur").iterdir()
    assert words(parse(file.read_bytes())) == "Grüße\n"
    assert (tmp_path / "chats" / "2.txt").read_text("utf-8").startswith("Hello,")
    assert list((mail / "new").iterdir()) == []


def test_a_folder_that_is_no_maildir_is_refused(tmp_path: Path) -> None:
    with pytest.raises(desk_errors.DraftsPlaceError, match="is not a Maildir"):
        MaildirDrafts(tmp_path, tmp_path)


def test_a_chat_draft_is_a_text_to_copy(store: Store, tmp_path: Path, make_result) -> None:
    approved(
        store, make_result(channel="chat", sender=Address(name="Lou", address=""), draft="Hi — ok")
    )
    desk.deliver(store, DraftsFolder(tmp_path), SHOP)
    assert (tmp_path / "1.txt").read_text("utf-8") == "Hi — ok\n"


def test_a_shop_without_a_usable_address_is_told(store: Store, tmp_path: Path, make_result) -> None:
    approved(store, make_result())
    with pytest.raises(desk_errors.ShopAddressError, match=r"reply address 'desk' can't be used"):
        desk.deliver(store, DraftsFolder(tmp_path), Address(name="", address="desk"))


def test_odd_words_in_a_draft_arrive(store: Store, tmp_path: Path, make_result) -> None:
    body = "From here\n.\n" + "long " * 400 + "\ntab\there \x1b[31mred\x07 \ud800\r\nend"
    mail = delivered(store, tmp_path, make_result(draft=body))
    assert words(mail) == (
        "From here\n.\n" + "long " * 400 + "\ntab\there [31mred \N{REPLACEMENT CHARACTER}\nend\n"
    )
