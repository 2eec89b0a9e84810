"""Attached files opened: each in a process of its own, and what came of it put into the message.

A workbook or a PDF can be made so that reading it takes hours or all memory. The libraries that
read them guard against much of that, not against all; a process that is stopped guards against the
rest. Nothing is ever written to disk.
"""

from __future__ import annotations

import os
import sys
import time
from typing import TYPE_CHECKING

from . import kinds
from .contents import MOST_SECONDS, TOO_MUCH, Contents

if TYPE_CHECKING:
    from ..model import Attachment, Message

MOST_FILES = 20
"""Files of one mail that are opened."""
MOST_SECONDS_A_MAIL = 40.0
"""No further file of a mail is opened after so long by the clock on the wall."""
_PATIENCE = 3 * MOST_SECONDS
"""Seconds by the clock on the wall for one file: others may be using the processor too."""
_CRASHED = "it is damaged: opening it failed"


def with_files_read(message: Message) -> Message:
    """The message with the words of its workbooks and PDFs, or why they could not be read.

    Never raises on any file. A message whose files were opened before comes back as it is.
    """
    if all(one.content is None for one in message.attachments):
        return message
    until = time.monotonic() + MOST_SECONDS_A_MAIL
    left = MOST_FILES
    done: list[Attachment] = []
    for attachment in message.attachments:
        if attachment.content is None:
            done.append(attachment)
            continue
        if left and time.monotonic() < until:
            left -= 1
            contents = open_file(attachment)
        elif not left:
            contents = Contents(why_unread=f"only {MOST_FILES} files of one message are opened")
        else:
            contents = Contents(why_unread="the message's other files took too long to open")
        done.append(_filled(attachment, contents))
    return message.model_copy(update={"attachments": tuple(done)})


def open_file(attachment: Attachment) -> Contents:
    """The words of one file, read in a process of its own. Never raises on any file."""
    content = attachment.content or b""
    kind = kinds.opened_kind(attachment.content_type, attachment.name, content[: kinds.HEAD])
    if kind is None:
        return Contents(why_unread=kinds.why_unread(attachment.content_type, attachment.name))
    if kind == "workbook" and kinds.is_locked_workbook(content):
        return Contents(why_unread="it is locked with a password, or of an old kind")
    try:
        said = _in_another_process(kind, content)
    except _GivenUp:
        return Contents(why_unread=TOO_MUCH)
    except OSError as error:
        return Contents(why_unread=f"it could not be opened ({error.strerror or error})")
    try:
        return Contents.unpacked(said)
    except ValueError:
        return Contents(why_unread=_CRASHED)


class _GivenUp(Exception):
    """Stopped by a limit, by our patience, or by a system out of memory."""


def _in_another_process(kind: str, content: bytes) -> bytes:
    """What ``child`` says of a file. Raises _GivenUp, or OSError."""
    if hasattr(os, "fork"):
        from .nursery import NURSERY, Stopped, TooSlow  # late: few messages have such a file

        try:
            return NURSERY.opened(kind, content)
        except (Stopped, TooSlow) as error:
            raise _GivenUp from error
    import subprocess

    command = [sys.executable, "-P", "-m", f"{__package__}.child", kind]
    try:
        done = subprocess.run(
            command,
            input=content,
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
            timeout=_PATIENCE,
            check=False,
        )
    except subprocess.TimeoutExpired as error:
        raise _GivenUp from error
    if done.returncode < 0:
        raise _GivenUp
    return done.stdout


def _filled(attachment: Attachment, contents: Contents) -> Attachment:
    if contents.why_unread:
        found: dict[str, object] = {"why_unread": contents.why_unread}
    else:
        found = {
            "text": "\f".join(text for _, text in contents.texts),
            "sheets": tuple(name for name, _ in contents.texts if name),
        }
    return attachment.model_copy(
        update={**found, "remarks": tuple(contents.remarks), "content": None}
    )
