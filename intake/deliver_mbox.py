"""Approved drafts laid in an mbox (RFC 4155), for mail programs that keep one file a folder."""

from __future__ import annotations

import mailbox
import os
import re
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from .deliver import HEADER_BYTES, DraftsFolder, Laid, TakenBack, draft_id_of, note_of_changed
from .desk_errors import DraftsPlaceError, UndeliverableError
from .letter import DraftId, Letter, digest

_FROM = re.compile(rb"^From ", re.MULTILINE)
_QUOTED_FROM = re.compile(rb"^>From ", re.MULTILINE)
_MARKS = re.compile(rb"\A((?:[^\r\n]+\r?\n)*?)(?:X-)?Status:[^\n]*\n", re.IGNORECASE)
"""What mail programs write into the header when a mail is looked at."""


class MboxDrafts:
    """An mbox; chat texts go to a folder of files, since no mbox holds them."""

    def __init__(self, file: Path, chat_folder: Path) -> None:
        if not file.parent.is_dir():
            raise DraftsPlaceError(f"the folder {file.parent} for the mbox does not exist")
        if file.exists() and not _is_mbox(file):
            raise DraftsPlaceError(f"{file} is not an mbox")
        self._file = file
        self._chats = DraftsFolder(chat_folder)

    def lay(self, letter: Letter) -> Laid:
        """Add the draft at the end; an earlier one goes where nobody has changed it."""
        if letter.channel == "chat":
            return self._chats.lay(letter)
        with self._locked(letter.id.inquiry) as box:
            lying = dict(_ours(box))
            if letter.id in lying:
                return Laid(str(self._file), was_there=True)
            self._append(letter.data)
            changed = []
            for earlier, key in lying.items():
                if letter.id.replaces(earlier):
                    if letter.may_replace(earlier, _as_laid(box.get_bytes(key))):
                        box.discard(key)
                    else:
                        changed.append(earlier)
            box.flush()
        return Laid(str(self._file), was_there=False, note=note_of_changed(changed))

    def take_back(self, name: DraftId, laid: str, channel: str) -> TakenBack:
        """As ``Target`` says."""
        if channel == "chat":
            return self._chats.take_back(name, laid, channel)
        if not self._file.exists():
            return TakenBack.GONE
        with self._locked(name.inquiry) as box:
            key = dict(_ours(box)).get(name)
            if key is None:
                return TakenBack.GONE
            if digest(_as_laid(box.get_bytes(key))) != laid:
                return TakenBack.CHANGED
            box.discard(key)
            box.flush()
        return TakenBack.DONE

    @contextmanager
    def _locked(self, inquiry: int) -> Iterator[mailbox.mbox]:
        """The file while no mail program writes to it."""
        box = mailbox.mbox(self._file, factory=None, create=True)
        try:
            try:
                box.lock()
            except mailbox.ExternalClashError as error:
                raise UndeliverableError(
                    f"another program is using {self._file}: the draft of inquiry {inquiry} was "
                    "left as it is; try again in a moment"
                ) from error
            yield box
        finally:
            box.close()

    def _append(self, data: bytes) -> None:
        """The whole mail in one write, or none of it: a half would look like a draft of ours."""
        mail = _FROM.sub(b">From ", data.replace(b"\r\n", b"\n")).rstrip(b"\n")
        moment = time.asctime(time.gmtime()).encode()
        with self._file.open("r+b", buffering=0) as file:
            end = file.seek(0, os.SEEK_END)
            entry = b"From bendreply %s\n%s\n\n" % (moment, mail)
            if end:  # an empty line parts the mails
                file.seek(-min(2, end), os.SEEK_END)
                last = file.read()
                entry = b"\n" * (2 - len(last) + len(last.rstrip(b"\n"))) + entry
            try:
                written = file.write(entry)
                if written != len(entry):
                    raise OSError(28, os.strerror(28))  # ENOSPC: the disk took only a part
                os.fsync(file.fileno())
            except OSError:
                file.truncate(end)
                raise


def _is_mbox(file: Path) -> bool:
    with file.open("rb") as start:
        return start.read(5) in (b"", b"From ")


def _ours(box: mailbox.mbox) -> Iterator[tuple[DraftId, str]]:
    for key in box.keys():  # noqa: SIM118 - a mailbox yields its mails where it is gone through
        with box.get_file(key) as file:
            if name := draft_id_of(file.read(HEADER_BYTES)):
                yield name, key


def _as_laid(found: bytes) -> bytes:
    """A mail of the file without what an mbox and looking at it put in."""
    while _MARKS.match(found):
        found = _MARKS.sub(rb"\1", found, count=1)
    return _QUOTED_FROM.sub(b"From ", found)
