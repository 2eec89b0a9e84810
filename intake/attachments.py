"""What came with a message as files: named, measured, and told apart by what can be read."""

from __future__ import annotations

import re

from .charsets import clean_text, decode_bytes
from .encoded_words import decode_words
from .files import kinds
from .mime import Entity
from .model import Attachment
from .params import parse_parameters
from .transfer import decode_transfer, decoded_size

MAX_ATTACHMENT_TEXT = 1_000_000
_TEXT_TYPES = frozenset(("text/plain", "text/csv", "text/tab-separated-values", "application/csv"))
# Browsers and mailers on Windows call a .csv file a spreadsheet, or say nothing about it.
_TEXT_ENDINGS = (".csv", ".tsv", ".txt")
_VAGUE_TYPES = frozenset(("application/octet-stream", "application/vnd.ms-excel"))
_FORBIDDEN_IN_NAME = re.compile(r'[<>:"|?*\x00-\x1f]')
_LONGEST_NAME = 200
_NO_TEXT = "it calls itself text, but is not"


def disposition(entity: Entity) -> tuple[str, dict[str, str]]:
    """("inline" or "attachment" or "", parameters) of a part (RFC 2183)."""
    raw = entity.raw("content-disposition")
    if raw is None:
        return "", {}
    kind, params = parse_parameters(raw)
    return kind.lower(), params


def file_name(entity: Entity) -> str:
    """The name the sender gave the file, without any folder; empty where there is none."""
    name = disposition(entity)[1].get("filename") or entity.type.params.get("name") or ""
    name = re.split(r"[/\\]", decode_words(name))[-1]
    name = _FORBIDDEN_IN_NAME.sub("_", name).strip(" .")
    return name[:_LONGEST_NAME]


def read_attachment(entity: Entity, faults: list[str]) -> Attachment:
    """One part as a file: its words where it is plain text or CSV; its bytes where it is a
    workbook or a PDF, to be opened when somebody wants to read it; else why it is not read.
    """
    name = file_name(entity)
    encoding = entity.raw("content-transfer-encoding")
    body = entity.buffer[entity.start : entity.end]
    content_type = entity.type.name
    size = decoded_size(body, encoding)
    found: dict[str, object]
    if _is_text(content_type, name):
        text = _text(entity, name, faults)
        found = {"text": text, "why_unread": _NO_TEXT if text is None else ""}
    else:
        head = decode_transfer(body[: 2 * kinds.HEAD], encoding, [])[: kinds.HEAD]
        if kinds.opened_kind(content_type, name, head) is None:
            found = {"why_unread": kinds.why_unread(content_type, name)}
        elif size > kinds.LARGEST:
            found = {"why_unread": f"it is too large ({size // 1_000_000} MB)"}
        else:
            found = {"content": entity.content(faults)}
    shape = {"name": name, "content_type": content_type, "size": size}
    return Attachment.model_validate({**shape, **found})


def _is_text(content_type: str, name: str) -> bool:
    return content_type in _TEXT_TYPES or (
        content_type in _VAGUE_TYPES and name.lower().endswith(_TEXT_ENDINGS)
    )


def _text(entity: Entity, name: str, faults: list[str]) -> str | None:
    data = entity.content(faults)
    if b"\0" in data[:4096] and not data.startswith((b"\xff\xfe", b"\xfe\xff")):
        faults.append(f"the attachment {name!r} calls itself text, but is not")
        return None
    if len(data) > MAX_ATTACHMENT_TEXT:
        faults.append(f"of the attachment {name!r} only the first megabyte was read")
        data = data[:MAX_ATTACHMENT_TEXT]
    heard: list[str] = []
    text = clean_text(decode_bytes(data, entity.type.params.get("charset"), heard))
    faults += [f"attachment {name!r}: {fault}" for fault in heard]
    return text
