"""A picture of the bend beside the reply: asked for with the approval, laid down with the draft."""

from __future__ import annotations

import email
import email.policy
import mailbox
import sys
from decimal import Decimal
from email.message import EmailMessage
from pathlib import Path

import pytest

from bendreply.intake import desk, desk_errors
from bendreply.intake.cli import main
from bendreply.intake.deliver import DraftsFolder, MaildirDrafts
from bendreply.intake.inquiry import State
from bendreply.intake.letter import DraftId
from bendreply.intake.model import Address, Result
from bendreply.intake.store import Store

pytest.importorskip("matplotlib", reason="pictures are drawn with matplotlib: the extra 'charts'")

SHOP = Address(name="Quill Bend Tooling", address="desk@shop.example.com")
STARTS = {"png": b"\x89PNG\r\n\x1a\n", "pdf": b"%PDF-"}


def taken(store: Store, result: Result) -> int:
    return desk.take_in(store, result, "x").inquiry


def laid(store: Store, folder: Path, number: int) -> EmailMessage:
    delivery = desk.deliver(store, DraftsFolder(folder), SHOP)
    assert [one.inquiry for one in delivery.delivered] == [number], delivery.left
    data = (folder / f"{number}.eml").read_bytes()
    assert data.count(b"\n") == data.count(b"\r\n")
    return email.message_from_bytes(data, policy=email.policy.default)


def without(result: Result, field: str) -> Result:
    """The same message, one length not given."""
    (one,) = result.assessments
    request = one.request.model_copy(update={field: None})
    return result.model_copy(update={"assessments": (one.model_copy(update={"request": request}),)})


@pytest.mark.parametrize("kind", ["png", "pdf"])
def test_the_draft_holds_the_words_and_the_picture(
    store: Store, tmp_path: Path, make_result, kind: str
) -> None:
    number = taken(store, make_result(draft="Grüße,\n\nwe have it — 44.45 mm.\n"))
    desk.approve(store, number, "Ann", picture=kind)
    mail = laid(store, tmp_path, number)
    assert mail.get_content_type() == "multipart/mixed"
    body, picture = mail.iter_parts()
    assert body.get_content().replace("\r\n", "\n") == "Grüße,\n\nwe have it — 44.45 mm.\n"
    assert picture.get_filename() == f"bend.{kind}"
    assert picture.get_content_disposition() == "attachment"
    assert picture["Content-Description"] == "1.75 in OD, 0.095 in wall, 4.5 in CLR"
    assert picture.get_content().startswith(STARTS[kind])
    assert not [one.defects for one in mail.walk() if one.defects]
    draft = desk.show(store, number)
    assert draft.draft is not None
    assert mail["Message-ID"] == f"<{DraftId.of(draft, draft.draft)}@shop.example.com>"
    assert mail["X-Unsent"] == "1"
    assert mail["In-Reply-To"] == "<lou-1@mail.example.net>"


def test_without_being_asked_for_no_picture_goes(store: Store, tmp_path: Path, make_result) -> None:
    number = taken(store, make_result())
    desk.approve(store, number, "Ann")
    assert laid(store, tmp_path, number).get_content_type() == "text/plain"


def test_each_size_has_a_picture_but_those_that_cannot_be_drawn(
    store: Store, tmp_path: Path, make_result
) -> None:
    (one,) = make_result().assessments
    open_ = one.model_copy(update={"request": one.request.model_copy(update={"clr_mm": None})})
    wider = one.model_copy(
        update={"request": one.request.model_copy(update={"clr_mm": Decimal("152.4")})}
    )
    result = make_result().model_copy(update={"assessments": (one, open_, wider)})
    number = taken(store, result)
    desk.approve(store, number, "Ann", picture="png")
    _, *pictures = laid(store, tmp_path, number).iter_parts()
    assert [(one.get_filename(), one["Content-Description"]) for one in pictures] == [
        ("bend-1.png", "1.75 in OD, 0.095 in wall, 4.5 in CLR"),
        ("bend-3.png", "1.75 in OD, 0.095 in wall, 6 in CLR"),
    ]


def test_what_cannot_be_drawn_is_refused_at_the_approval(store: Store, make_result) -> None:
    number = taken(store, without(make_result(), "clr_mm"))
    with pytest.raises(desk_errors.NoPictureError, match=r"CLR is not given\. Approve without"):
        desk.approve(store, number, "Ann", picture="png")
    assert desk.show(store, number).state is State.WAITING
    desk.approve(store, number, "Ann")
    assert desk.show(store, number).state is State.APPROVED


def test_more_pictures_than_anybody_looks_at_are_refused(store: Store, make_result) -> None:
    result = make_result()
    number = taken(store, result.model_copy(update={"assessments": result.assessments * 13}))
    with pytest.raises(desk_errors.NoPictureError, match="has 13 sizes, and at most 12"):
        desk.approve(store, number, "Ann", picture="pdf")


def test_without_matplotlib_the_approval_says_what_is_missing(
    store: Store, tmp_path: Path, make_result, monkeypatch: pytest.MonkeyPatch
) -> None:
    first, second = taken(store, make_result()), taken(store, make_result("bo"))
    desk.approve(store, first, "Ann", picture="png")
    monkeypatch.setitem(sys.modules, "matplotlib", None)  # uninstalled meanwhile
    with pytest.raises(desk_errors.NoPictureError, match="its extra 'charts'"):
        desk.approve(store, second, "Ann", picture="png")
    (left,) = desk.deliver(store, DraftsFolder(tmp_path), SHOP).left
    assert left.why.startswith("inquiry 1 was approved with a picture, but pictures are drawn with")
    assert left.why.endswith("it stays approved")
    assert desk.show(store, first).state is State.APPROVED
    monkeypatch.undo()
    assert len(desk.deliver(store, DraftsFolder(tmp_path), SHOP).delivered) == 1


def test_the_picture_belongs_to_the_approval_it_was_asked_for_with(
    store: Store, tmp_path: Path, make_result
) -> None:
    number = taken(store, make_result())
    desk.approve(store, number, "Ann", picture="png")
    desk.edit_draft(store, number, "In other words.\n", "Ann")  # takes the approval back
    desk.approve(store, number, "Ann")
    assert laid(store, tmp_path, number).get_content_type() == "text/plain"


def test_the_same_draft_has_the_same_bytes_and_is_known_again(
    store: Store, tmp_path: Path, make_result, monkeypatch: pytest.MonkeyPatch
) -> None:
    number = taken(store, make_result())
    desk.approve(store, number, "Ann", picture="png")
    with monkeypatch.context() as patched:

        def crash(*_: object, **__: object) -> None:
            raise KeyboardInterrupt

        patched.setattr("bendreply.intake.store_writer.Writer.move", crash)
        for folder in ("a", "b"):
            with pytest.raises(KeyboardInterrupt):
                desk.deliver(store, DraftsFolder(tmp_path / folder), SHOP)
    first, second = ((tmp_path / folder / "1.eml").read_bytes() for folder in ("a", "b"))
    assert first == second
    (done,) = desk.deliver(store, DraftsFolder(tmp_path / "a"), SHOP).delivered
    assert done.was_there


def test_a_body_cannot_end_its_own_part(store: Store, tmp_path: Path, make_result) -> None:
    number = taken(store, make_result())
    desk.approve(store, number, "Ann", picture="png")
    boundary = laid(store, tmp_path, number).get_boundary()
    draft = f"Hello,\n--{boundary}\nContent-Type: text/html\n\n<b>no</b>\n--{boundary}--\n"
    other = taken(store, make_result("bo", draft=draft))
    desk.approve(store, other, "Ann", picture="png")
    body, picture = laid(store, tmp_path, other).iter_parts()
    assert body.get_content().replace("\r\n", "\n") == draft
    assert picture.get_filename() == "bend.png"


def test_in_a_maildir_it_lies_in_drafts(store: Store, tmp_path: Path, make_result) -> None:
    mailbox.Maildir(tmp_path / "mail", create=True)
    number = taken(store, make_result())
    desk.approve(store, number, "Ann", picture="pdf")
    target = MaildirDrafts(tmp_path / "mail", tmp_path / "chats")
    assert len(desk.deliver(store, target, SHOP).delivered) == 1
    (mail,) = mailbox.Maildir(tmp_path / "mail").get_folder("Drafts")
    assert [part.get_content_type() for part in mail.walk()] == [
        "multipart/mixed",
        "text/plain",
        "application/pdf",
    ]


def test_beside_a_chat_text_the_picture_is_a_file(
    store: Store, tmp_path: Path, make_result
) -> None:
    number = taken(store, make_result(channel="chat"))
    desk.approve(store, number, "Ann", picture="png")
    assert len(desk.deliver(store, DraftsFolder(tmp_path), SHOP).delivered) == 1
    names = {path.name for path in tmp_path.glob("1*")}
    assert names == {"1.txt", "1-bend.png"}
    assert (tmp_path / "1-bend.png").read_bytes().startswith(STARTS["png"])


def test_a_file_in_the_way_of_a_picture_is_not_replaced(
    store: Store, tmp_path: Path, make_result
) -> None:
    number = taken(store, make_result(channel="chat"))
    desk.approve(store, number, "Ann", picture="png")
    (tmp_path / "1-bend.png").write_bytes(b"the owner's")
    (left,) = desk.deliver(store, DraftsFolder(tmp_path), SHOP).left
    assert "1-bend.png is already there" in left.why
    assert (tmp_path / "1-bend.png").read_bytes() == b"the owner's"
    assert not (tmp_path / "1.txt").exists()


@pytest.fixture
def shop(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> Path:
    """A shop folder with one inquiry of two sizes, the second without a CLR."""
    folder = tmp_path / "shop"
    assert main(["shop", "new", str(folder)]) == 0
    mail = EmailMessage()
    mail["From"], mail["Subject"] = "Ada <ada@example.net>", "Mandrels"
    mail["Message-ID"] = "<ada-1@example.net>"
    mail.set_content(
        "Please quote mandrels for 1.75 in OD x .095 in wall DOM tube, 5.25 in CLR, and for\n"
        "1.5 in OD x .065 in wall DOM tube.\n"
    )
    (tmp_path / "1.eml").write_bytes(mail.as_bytes())
    assert main(["--shop", str(folder), "collect", str(tmp_path / "1.eml")]) == 0
    capsys.readouterr()
    return folder


@pytest.mark.parametrize(
    ("name", "start"), [("a.svg", b"<svg "), ("a.PNG", STARTS["png"]), ("a.pdf", STARTS["pdf"])]
)
@pytest.mark.parametrize("map_", [[], ["--map"]], ids=["bend", "map"])
def test_a_size_drawn_into_a_file(
    shop: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str], name: str, start: bytes, map_
) -> None:
    file = tmp_path / name
    assert main(["--shop", str(shop), "picture", "1", "--out", str(file), *map_]) == 0
    assert file.read_bytes().startswith(start)
    out, err = capsys.readouterr()
    assert out.startswith("Map of wall factor" if map_ else "Section along the bend")
    assert out.endswith(f"The picture lies in {file}.\n")
    assert err == ""


@pytest.mark.parametrize(
    ("call", "status", "said"),
    [
        (["1", "--out", "a.gif"], 2, "'a.gif' has to end in .svg, .png or .pdf"),
        (["1", "--out", "a.svg", "--size", "3"], 1, "inquiry 1 has 2 sizes: there is no size 3"),
        (["1", "--out", "a.svg", "--size", "2"], 1, "CLR is not given"),
        (["7", "--out", "a.svg"], 1, "there is no inquiry 7"),
        (["1", "--out", "nowhere/a.svg"], 1, "the picture can't be written"),
    ],
)
def test_no_picture_is_a_sentence_and_no_file(
    shop: Path,
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
    call: list[str],
    status: int,
    said: str,
) -> None:
    monkeypatch.chdir(tmp_path)
    assert main(["--shop", str(shop), "picture", *call]) == status
    assert said in capsys.readouterr().err
    assert not list(tmp_path.glob("a.*"))


def test_approve_and_deliver_with_a_picture(shop: Path, capsys: pytest.CaptureFixture[str]) -> None:
    call = ["--shop", str(shop), "approve", "1", "--by", "Robin Ashdown", "--picture", "pdf"]
    assert main(call) == 0
    assert "is approved by Robin Ashdown, with the bend as a PDF." in capsys.readouterr().out
    assert main(["--shop", str(shop), "deliver"]) == 0
    mail = email.message_from_bytes(
        (shop / "drafts" / "1.eml").read_bytes(), policy=email.policy.default
    )
    assert [part.get_filename() for part in mail.iter_attachments()] == ["bend-1.pdf"]
    assert main(["--shop", str(shop), "history", "1"]) == 0
    assert "picture: pdf" in capsys.readouterr().out
