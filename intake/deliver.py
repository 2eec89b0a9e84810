"""Where approved drafts are laid: a folder of .eml files, or the Drafts folder of a Maildir.

Nothing is laid twice. A draft that was laid before a crash, but not yet recorded as delivered, is
found again by its Message-ID (a chat text by its words), and left as it lies.
"""

from __future__ import annotations

import mailbox
import os
from dataclasses import dataclass
from email.parser import BytesHeaderParser
from pathlib import Path
from typing import Protocol

from .desk_errors import DraftsPlaceError, UndeliverableError
from .letter import DraftId, Letter, digest

_HEADER_BYTES = 65536
"""How far into a mail its Message-ID is looked for."""


@dataclass(frozen=True, slots=True)
class Laid:
    """Where a draft lies, and whether it had lain there before."""

    place: str
    was_there: bool
    note: str = ""
    """For the person: an earlier draft that was left where it lies."""


class Target(Protocol):
    """A place for drafts."""

    def lay(self, letter: Letter) -> Laid:
        """Lay a draft down, unless it lies there already; an earlier one of the same inquiry goes.

        Raises UndeliverableError in one sentence; OSError where the disk refuses.
        """


class DraftsFolder:
    """Drafts as files to open in a mail program: ``17.eml``, for a chat ``17.txt``."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder

    def lay(self, letter: Letter) -> Laid:
        """Write the file whole or not at all; a file that is not ours is never replaced."""
        self._folder.mkdir(parents=True, exist_ok=True)
        if letter.channel == "chat":
            return self._lay_text(letter)
        path = self._folder / f"{letter.id.inquiry}.eml"
        if path.exists():
            lying = path.read_bytes()
            found = draft_id_of(lying[:_HEADER_BYTES])
            if found == letter.id:
                return Laid(str(path), was_there=True)
            if found is None or not letter.id.replaces(found):
                raise _in_the_way(path, letter)
            if not letter.may_replace(found, lying):
                raise _changed(path, letter)
        _write(path, letter.data)
        return Laid(str(path), was_there=False)

    def _lay_text(self, letter: Letter) -> Laid:
        path = self._folder / f"{letter.id.inquiry}.txt"
        for picture in letter.pictures:
            self._lay_file(
                self._folder / f"{letter.id.inquiry}-{picture.name}", picture.data, letter
            )
        return Laid(str(path), was_there=self._lay_file(path, letter.data, letter))

    def _lay_file(self, path: Path, data: bytes, letter: Letter) -> bool:
        """Whether the very same file lay there before."""
        if path.exists():
            lying = path.read_bytes()
            if lying == data:
                return True
            if digest(lying) not in letter.laid_before.values():
                raise _in_the_way(path, letter)
        _write(path, data)
        return False


class MaildirDrafts:
    """The Drafts folder of a Maildir; chat texts go to a folder, since no Maildir holds them."""

    def __init__(self, maildir: Path, chat_folder: Path) -> None:
        if not all((maildir / part).is_dir() for part in ("cur", "new", "tmp")):
            raise DraftsPlaceError(f"{maildir} is not a Maildir: it lacks cur, new or tmp")
        self._maildir = maildir
        self._chats = DraftsFolder(chat_folder)
        self._lying: dict[DraftId, str] | None = None

    def lay(self, letter: Letter) -> Laid:
        """Add the draft, flagged as one (D)."""
        if letter.channel == "chat":
            return self._chats.lay(letter)
        drafts = self._drafts()
        if self._lying is None:
            self._lying = dict(_ours(drafts))
        if letter.id in self._lying:
            return Laid(self._place(drafts, self._lying[letter.id]), was_there=True)
        mail = mailbox.MaildirMessage(letter.data)
        mail.set_subdir("cur")
        mail.set_flags("D")
        key = drafts.add(mail)
        note = ""
        for earlier in [one for one in self._lying if letter.id.replaces(one)]:
            if letter.may_replace(earlier, _bytes_of(drafts, self._lying[earlier])):
                drafts.discard(self._lying.pop(earlier))
            else:
                note = (
                    f"draft {earlier.number} of inquiry {earlier.inquiry} was changed in the mail "
                    "program and still lies beside the new one"
                )
        self._lying[letter.id] = key
        return Laid(self._place(drafts, key), was_there=False, note=note)

    def _drafts(self) -> mailbox.Maildir:
        """``Drafts`` where the mail program keeps one, else ``.Drafts`` (Maildir++)."""
        plain = self._maildir / "Drafts"
        if (plain / "cur").is_dir():
            return mailbox.Maildir(plain, factory=None, create=False)
        return mailbox.Maildir(self._maildir, factory=None, create=False).add_folder("Drafts")

    def _place(self, drafts: mailbox.Maildir, key: str) -> str:
        return f"{Path(drafts._path)} ({key})"


def _ours(drafts: mailbox.Maildir) -> list[tuple[DraftId, str]]:
    found = []
    for key in drafts.iterkeys():
        with drafts.get_file(key) as file:
            if name := draft_id_of(file.read(_HEADER_BYTES)):
                found.append((name, key))
    return found


def _bytes_of(drafts: mailbox.Maildir, key: str) -> bytes | None:
    try:
        return drafts.get_bytes(key)
    except KeyError:  # moved or deleted by the mail program meanwhile
        return None


def draft_id_of(start: bytes) -> DraftId | None:
    """Which draft of ours a mail is, by the Message-ID in its header; None where it is none."""
    value = BytesHeaderParser().parsebytes(start).get("Message-ID")
    return None if value is None else DraftId.parse(str(value))


def _in_the_way(path: Path, letter: Letter) -> UndeliverableError:
    return UndeliverableError(
        f"{path} is already there and is no draft of ours for inquiry {letter.id.inquiry}: move "
        "it away and deliver again; the draft stays approved"
    )


def _changed(path: Path, letter: Letter) -> UndeliverableError:
    return UndeliverableError(
        f"{path} holds an earlier draft of inquiry {letter.id.inquiry} that somebody has changed: "
        "move it away and deliver again; the draft stays approved"
    )


def _write(path: Path, data: bytes) -> None:
    """The whole file under its name, or none: also when the power fails half-way."""
    unfinished = path.with_name(f".{path.name}.unfinished")
    with unfinished.open("wb") as file:
        file.write(data)
        file.flush()
        os.fsync(file.fileno())
    unfinished.replace(path)
    folder = os.open(path.parent, os.O_RDONLY)
    try:
        os.fsync(folder)
    finally:
        os.close(folder)
