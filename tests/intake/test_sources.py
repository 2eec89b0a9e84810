"""What a person names -> messages; what can't be used gives one sentence, and the rest goes on."""

from __future__ import annotations

import io
import json
import mailbox
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest

from bendreply.intake.sources import SourceItem, read_paths, split_mbox, text_message

MAIL = b"From: lou@example.net\nSubject: %b\nMessage-ID: <%b@x>\n\n1.75 x .095\n"


def eml(name: bytes) -> bytes:
    return MAIL % (name, name)


def read(*paths: Path | str, stdin: bytes = b"") -> list[SourceItem]:
    names = [str(path) for path in paths]
    return list(read_paths(names, today=date(2026, 10, 19), stdin=io.BytesIO(stdin)))


def subjects(items: list[SourceItem]) -> list[str | None]:
    return [item.message.subject if item.message else None for item in items]


def errors(items: list[SourceItem]) -> list[str]:
    return [item.error for item in items if item.error]


def test_a_file(tmp_path: Path) -> None:
    path = tmp_path / "a.eml"
    path.write_bytes(eml(b"a"))
    (item,) = read(path)
    assert (item.file, item.error) == (str(path), None)
    assert item.message is not None
    assert item.message.message_id == "a@x"


def test_what_can_not_be_used_is_named_and_the_rest_goes_on(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "a.eml").write_bytes(eml(b"a"))
    (tmp_path / "empty.eml").write_bytes(b" \n")
    (tmp_path / "photo.png").write_bytes(b"\x89PNG\r\n\x1a\n\0\0")
    (tmp_path / "photo.eml").write_bytes(b"\x89PNG\r\n\x1a\n\0\0")
    (tmp_path / "folder").mkdir()
    monkeypatch.chdir(tmp_path)
    items = read("no-such.eml", "empty.eml", "photo.png", "photo.eml", "folder", "a\0b", "a.eml")
    assert errors(items) == [
        "no-such.eml: there is no such file",
        "empty.eml: the file is empty",
        "photo.png: this is no mail, no mbox and no chat export",
        "photo.eml: this is no mail, no mbox and no chat export",
        "folder: no .eml file lies in this folder",
        "'a\\x00b': no file can have this name",
    ]
    assert subjects(items)[-1] == "a"


def test_a_file_that_may_not_be_read(monkeypatch: pytest.MonkeyPatch) -> None:
    def refuse(*_: object) -> None:
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr(Path, "open", refuse)
    (item,) = read("a.eml")
    assert item.error == "a.eml: it may not be read (permission denied)"


def test_a_folder_is_read_in_order_and_not_its_subfolders(tmp_path: Path) -> None:
    for name in ("b.eml", "a.eml", "c.EML", "gold.jsonl", "notes.txt"):
        (tmp_path / name).write_bytes(eml(name[:1].encode()))
    (tmp_path / "sub").mkdir()
    (tmp_path / "sub" / "d.eml").write_bytes(eml(b"d"))
    assert subjects(read(tmp_path)) == ["a", "b", "c"]


def test_a_mailbox_in_a_folder_is_named_as_left_out_unless_it_is_read_too(tmp_path: Path) -> None:
    (tmp_path / "a.eml").write_bytes(eml(b"a"))
    (tmp_path / "old.mbox").write_bytes(b"From lou@example.net\n" + eml(b"b"))
    (tmp_path / "chat.jsonl").write_bytes(b"{}\n")
    (tmp_path / "gold.jsonl").write_bytes(b"{}\n")
    items = read(tmp_path, tmp_path / "old.mbox")
    assert [one for one in subjects(items) if one] == ["a", "b"]
    why = "left out, since only .eml is read of a folder: name it, too"
    assert errors(items) == [f"{tmp_path / 'chat.jsonl'}: {why}"]
    assert len(errors(read(tmp_path))) == 2


def test_a_maildir_as_the_standard_library_writes_it(tmp_path: Path) -> None:
    box = mailbox.Maildir(tmp_path / "box")
    for name in (b"a", b"b"):
        box.add(eml(name))
    seen = mailbox.MaildirMessage(eml(b"c"))
    seen.set_subdir("cur")
    box.add(seen)
    (tmp_path / "box" / "tmp" / "half").write_bytes(eml(b"half"))
    assert sorted(filter(None, subjects(read(tmp_path / "box")))) == ["a", "b", "c"]
    (tmp_path / "none" / "cur").mkdir(parents=True)
    (tmp_path / "none" / "new").mkdir()
    assert errors(read(tmp_path / "none")) == [f"{tmp_path / 'none'}: the Maildir holds no message"]


def test_an_mbox_as_the_standard_library_writes_it(tmp_path: Path) -> None:
    path = tmp_path / "old-mail"  # no suffix: known by its first line
    box = mailbox.mbox(path)
    body = b"\nFrom the drawing: 1.75\n\nFrom 10:30 we are here\nFrom: me\n"
    for name in (b"a", b"b", b"c"):
        box.add(eml(name) + body)
    box.close()
    items = read(path)
    assert [item.file for item in items] == [f"{path}#1", f"{path}#2", f"{path}#3"]
    assert subjects(items) == ["a", "b", "c"]
    for item in items:
        assert item.message is not None
        assert item.message.body == ("1.75 x .095\n" + body.decode()).rstrip("\n")


@pytest.mark.parametrize(
    ("mbox", "count"),
    [
        (b"From lou@example.net\nFrom: a\n\nhi\n\nFrom lou@example.net\nFrom: b\n\nho\n", 2),
        (b"From - Mon Oct 19 11:25:00 2026\r\nFrom: a\r\n\r\nhi\r\n", 1),
        # Sentences are no envelope: no time, no empty line before, no header after.
        (b"From a Mon Oct 19 11:25 2026\nFrom: a\n\nFrom the drawing\nOD: 1.75\n", 1),
        (b"From a Mon Oct 19 11:25 2026\nFrom: a\n\nhi\nFrom 10:30 on\nOD: 1.75\n", 1),
        (b"From a Mon Oct 19 11:25 2026\nFrom: a\n\nhi\n\nFrom 10:30 on we are here\n", 1),
        (b"", 0),
    ],
)
def test_where_an_mbox_is_cut(mbox: bytes, count: int) -> None:
    assert len(list(split_mbox(io.BytesIO(mbox)))) == count


def test_an_mbox_is_read_as_it_is_asked_for() -> None:
    asked = 0

    def lines() -> Iterator[bytes]:
        nonlocal asked
        for _ in range(1000):
            asked += 1
            yield from (b"From a@example.com\n", b"From: a\n", b"\n", b"hi\n", b"\n")

    mails = split_mbox(lines())
    next(mails)
    assert asked <= 2


def test_one_mail_with_its_envelope_line_is_one_mail(tmp_path: Path) -> None:
    path = tmp_path / "a.eml"
    path.write_bytes(b"From lou@example.net Mon Oct 19 11:25:00 2026\n" + eml(b"a"))
    (item,) = read(path)
    assert (item.file, subjects([item])) == (str(path), ["a"])


def test_a_chat_export(tmp_path: Path) -> None:
    path = tmp_path / "chat.jsonl"
    said = {"sender": "Lou", "time": "2026-10-19T11:00:00Z", "text": "1.75"}
    path.write_bytes(b"{\n" + json.dumps(said).encode() + b"\n")
    bad, good = read(path)
    assert bad.error == f"{path} line 1: not valid JSON"
    assert good.file == f"{path}#2"
    assert good.message is not None
    assert good.message.body == "1.75"
    path.write_bytes(b"\n")
    assert errors(read(path)) == [f"{path}: the file is empty"]


def test_standard_input() -> None:
    (mail,) = read("-", stdin=eml(b"a"))
    assert subjects([mail]) == ["a"]
    (pasted,) = read("-", stdin="OD: 1¾\nwall: .095".encode())
    assert pasted.message == text_message("OD: 1¾\nwall: .095", date(2026, 10, 19))
    (nothing,) = read("-", stdin=b"\n")
    assert nothing.error == "-: standard input is empty"


def test_pasted_words_are_a_chat_message_from_nobody_known() -> None:
    message = text_message("1.75 x .095\r\non 5.25\r\n", date(2026, 10, 19))
    assert message.channel == "chat"
    assert (message.sender.name, message.sender.address) == ("", "")
    assert message.text == "\n\n1.75 x .095\non 5.25"
    assert (message.received_at, message.sent_on) == (None, date(2026, 10, 19))
