"""Messages out of what a person names: files, folders, mailboxes, a chat export, standard input."""

from __future__ import annotations

import os
import re
import sys
from collections.abc import Container, Iterable, Iterator
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from pathlib import Path
from typing import BinaryIO

from .charsets import decode_bytes
from .chat import ChatLine
from .chat_bursts import QUIET, Burst, read_chat
from .message import parse_message
from .mime import is_text, looks_like_mail
from .model import Message
from .pasted import text_message

# The line between two mails of an mbox (RFC 4155): a sender and a time, or only a sender.
_ENVELOPE = re.compile(rb"From (?:[^\n]*\d\d:\d\d[^\n]*|\S+@\S+)\s*$")
_FIELD_BEGINS = re.compile(rb">?From |[!-9;-~]+[ \t]*:")
_QUOTED_FROM = re.compile(rb"^>(>*From )", re.M)


@dataclass(frozen=True, slots=True)
class SourceItem:
    """One message, or one sentence about what could not be used; never both."""

    file: str
    """As the person named it; 'name#3' for the third message of an mbox, or line 3 of a chat."""
    message: Message | None
    error: str | None = None
    lines: tuple[ChatLine, ...] = ()
    """Of a chat: what the message was joined from."""


def read_paths(
    paths: Iterable[str],
    *,
    today: date | None = None,
    stdin: BinaryIO | None = None,
    quiet: timedelta = QUIET,
) -> Iterator[SourceItem]:
    """All messages of all paths in the order given; what can't be used is an item with its reason.

    A path is an .eml file, an mbox, a Maildir, a folder of .eml (sorted, not its subfolders), a
    chat export (.jsonl), or "-" for standard input: a mail, or plain pasted words, written
    ``today`` (by default the day at this machine's clock). ``quiet`` is the pause that ends a burst
    of chat messages.
    """
    paths = list(paths)
    named = {os.path.abspath(path) for path in paths}
    for path in paths:
        try:
            if path == "-":
                raw = (stdin or sys.stdin.buffer).read()
                yield _pasted(raw, today or datetime.now().astimezone().date())
            else:
                yield from _read_path(path, quiet, named)
        except OSError as error:
            yield SourceItem(path, None, f"{path}: {_why(error)}")
        except ValueError:  # a NUL in the path
            yield SourceItem(path, None, f"{path!r}: no file can have this name")


def _pasted(raw: bytes, today: date) -> SourceItem:
    if not raw.strip():
        return SourceItem("-", None, "-: standard input is empty")
    if looks_like_mail(raw):
        return SourceItem("-", parse_message(raw))
    return SourceItem("-", text_message(decode_bytes(raw, None, []), today))


def _read_path(name: str, quiet: timedelta, named: Container[str]) -> Iterator[SourceItem]:
    path = Path(name)
    if path.is_dir():
        yield from _read_folder(name, path, named)
        return
    suffix = path.suffix.lower()
    with path.open("rb") as file:
        if suffix == ".jsonl":
            yield from _read_chat_export(name, file, quiet)
            return
        begins_as_mbox = file.read(5) == b"From "
        file.seek(0)
        # One mail saved with its envelope line is still one mail.
        if suffix == ".mbox" or (begins_as_mbox and suffix != ".eml"):
            yield from _read_mbox(name, file)
            return
        yield _mail(name, file.read(), by_name=suffix == ".eml")


def _mail(name: str, raw: bytes, *, by_name: bool) -> SourceItem:
    if not raw.strip():
        return SourceItem(name, None, f"{name}: the file is empty")
    if not looks_like_mail(raw) and (not by_name or not is_text(raw)):
        return SourceItem(name, None, f"{name}: this is no mail, no mbox and no chat export")
    return SourceItem(name, parse_message(raw))


def _read_folder(name: str, path: Path, named: Container[str]) -> Iterator[SourceItem]:
    is_maildir = (path / "cur").is_dir() and (path / "new").is_dir()
    # As strings: a hundred thousand paths as objects would be 40 MB.
    if is_maildir:
        # tmp/ holds what is still being delivered.
        files = [
            f"{box}/{one}"
            for box in ("new", "cur")
            for one in os.listdir(path / box)
            if not one.startswith(".")
        ]
        files.sort(key=os.path.basename)
        empty = "the Maildir holds no message"
    else:
        lie = sorted(os.listdir(path))
        files = [one for one in lie if os.path.splitext(one)[1].lower() == ".eml"]
        for one in map(path.joinpath, filter(_holds_messages, lie)):
            if os.path.abspath(one) not in named:
                left_out = "left out, since only .eml is read of a folder: name it, too"
                yield SourceItem(str(one), None, f"{one}: {left_out}")
        empty = "no .eml file lies in this folder"
    if not files:
        yield SourceItem(name, None, f"{name}: {empty}")
    for file in (path / one for one in files):
        try:
            yield _mail(str(file), file.read_bytes(), by_name=True)
        except OSError as error:
            yield SourceItem(str(file), None, f"{file}: {_why(error)}")


def _holds_messages(name: str) -> bool:
    """An mbox or a chat export by its name; the labels of a folder of messages are neither."""
    return os.path.splitext(name)[1].lower() in (".mbox", ".jsonl") and name != "gold.jsonl"


def _read_chat_export(name: str, file: BinaryIO, quiet: timedelta) -> Iterator[SourceItem]:
    count = 0
    for said in read_chat(file, quiet):
        count += 1
        if isinstance(said, Burst):
            place = f"{name}#{said.number}"
            yield SourceItem(place, said.message, lines=tuple(said.lines))
        else:
            number, error = said
            yield SourceItem(f"{name}#{number}", None, f"{name} line {number}: {error}")
    if not count:
        yield SourceItem(name, None, f"{name}: the file is empty")


def _read_mbox(name: str, file: BinaryIO) -> Iterator[SourceItem]:
    count = 0
    for count, raw in enumerate(split_mbox(file), start=1):
        yield _mail(f"{name}#{count}", raw, by_name=True)
    if not count:
        yield SourceItem(name, None, f"{name}: the mbox holds no message")


def split_mbox(lines: Iterable[bytes]) -> Iterator[bytes]:
    """The mails of an mbox one after another, each read only when it is asked for.

    A line "From ..." begins a mail only after an empty line, with a time or an address in it, and
    with a header line after it: customers begin sentences with "From" too.
    """
    mail: list[bytes] = []
    held: bytes | None = None
    """An envelope line, until the line after it shows whether it is one."""
    after_empty = True
    for line in lines:
        if held is not None:
            if _FIELD_BEGINS.match(line):
                if mail:
                    yield _unquoted(mail)
                mail = []
            else:
                mail.append(held)
            held = None
        if after_empty and _ENVELOPE.match(line):
            held = line
        else:
            mail.append(line)
        after_empty = not line.strip(b"\r\n")
    if held is not None:
        mail.append(held)
    if b"".join(mail).strip():
        yield _unquoted(mail)


def _unquoted(mail: list[bytes]) -> bytes:
    """The mail without the ">" that mbox writers put before "From " and without the last break."""
    if mail and not mail[-1].strip(b"\r\n"):
        mail.pop()
    return _QUOTED_FROM.sub(rb"\1", b"".join(mail))


def _why(error: OSError) -> str:
    if isinstance(error, FileNotFoundError):
        return "there is no such file"
    if isinstance(error, PermissionError):
        return "it may not be read (permission denied)"
    return f"it can't be read ({error.strerror or type(error).__name__})"
