"""What the reader is given of a message's files, and what a person is told of the rest."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from .grid import csv_text

if TYPE_CHECKING:
    from ..model import Attachment, Message

_CSV_TYPES = frozenset(("text/csv", "text/tab-separated-values", "application/csv"))
_CSV_ENDINGS = (".csv", ".tsv")
_MOST_NAMED = 8
"""Files of one message that could not be read and are named one by one."""


def attached_texts(message: Message) -> tuple[tuple[str, str], ...]:
    """(name, text) of every file that was read, sheet by sheet, tables with tabs between cells."""
    return tuple(found for one in message.attachments for found in _texts(one))


def _texts(attachment: Attachment) -> Iterator[tuple[str, str]]:
    text = attachment.text
    if text is None:
        return
    name = attachment.name or "without a name"
    if len(attachment.sheets) > 1:
        for sheet, words in zip(attachment.sheets, text.split("\f"), strict=True):
            yield f"{name}, sheet {sheet}", words
    elif attachment.content_type in _CSV_TYPES or name.lower().endswith(_CSV_ENDINGS):
        yield name, csv_text(text)
    else:
        yield name, text


def file_notes(message: Message) -> tuple[str, ...]:
    """What a person has to look at: each file that was not read, or not whole, and why."""
    unread = [one for one in message.attachments if one.is_unread]
    notes = [_unread(one) for one in unread[:_MOST_NAMED]]
    if len(unread) > _MOST_NAMED:
        notes.append(f"{len(unread) - _MOST_NAMED} more attachments were not read")
    notes += [f"{_named(one)}: {said}" for one in message.attachments for said in one.remarks]
    return tuple(notes)


def _unread(attachment: Attachment) -> str:
    why = f": {attachment.why_unread}" if attachment.why_unread else ""
    return f"{_named(attachment)} was not read{why}"


def _named(attachment: Attachment) -> str:
    if attachment.name:
        return f"the attachment {attachment.name}"
    return f"an attachment without a name ({attachment.content_type})"
