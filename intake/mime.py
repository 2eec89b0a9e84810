"""Cuts a mail into header fields and MIME parts, as bytes, decoding nothing (RFC 5322, RFC 2046).

Written out here, rather than taken from Python's email package, for three measured reasons: that
parser raises on some senders' bytes (``boundary*=`` with a NUL in its charset, a parameter number
of 5,000 digits), runs out of stack at 3,000 nested parts, and takes some four times as long.
Every cut is a pair of offsets into the one buffer, so a 50 MB drawing is never copied.
"""

from __future__ import annotations

import codecs
import re
from collections.abc import Iterator
from dataclasses import dataclass, field

from .params import ContentType, parse_content_type
from .transfer import decode_transfer

MAX_PARTS = 200
MAX_DEPTH = 20

# RFC 5322 2.2: a name of printable ASCII, a colon, a value that goes on in lines that begin with
# white space. A line of nothing but blanks is no continuation: see _stray.
_FIELD = re.compile(rb"([!-9;-~]+)[ \t]*:[ \t]*([^\n]*(?:\n[ \t]+[^ \t\n][^\n]*)*)\n?")
_KNOWN_FIELD = re.compile(
    rb"^(?:From|To|Cc|Subject|Date|Message-ID|MIME-Version|Received|Reply-To|Return-Path|References"
    rb"|In-Reply-To|Content-(?:Type|Transfer-Encoding|Disposition))[ \t]*:",
    re.I | re.M,
)
_GUESSED_BOUNDARY = re.compile(rb"^--([^\n]{1,100}?)[ \t]*\n(?=content-[a-z-]{1,40}:)", re.I | re.M)
_LONGEST_DELIMITER_TAIL = 80


@dataclass(slots=True)
class Entity:
    """A mail, or one part of one: its fields, and where its body lies in the buffer."""

    buffer: bytes
    fields: list[tuple[str, bytes]]
    """(lower-case name, raw value, still folded and encoded), in order."""
    start: int
    end: int
    type: ContentType
    children: list[Entity] = field(default_factory=list)
    """The parts of a multipart; the one mail inside a message/rfc822."""

    def raw(self, name: str) -> bytes | None:
        """The first field of that (lower-case) name."""
        for key, value in self.fields:
            if key == name:
                return value
        return None

    def content(self, faults: list[str]) -> bytes:
        """The body's bytes with the transfer encoding undone (RFC 2045 6)."""
        encoding = self.raw("content-transfer-encoding")
        return decode_transfer(self.buffer[self.start : self.end], encoding, faults)


class _Cutter:
    """Cuts one mail; holds what is counted over all of its parts."""

    def __init__(self, faults: list[str]) -> None:
        self.faults = faults
        self.parts = 0

    def cut(self, buffer: bytes, start: int, end: int, depth: int, default: str) -> Entity:
        self.parts += 1
        fields, body = read_fields(buffer, start, end, self.faults)
        entity = Entity(buffer, fields, body, end, ContentType(default, {}))
        declared = entity.raw("content-type")
        if declared is not None:
            entity.type = parse_content_type(declared, default, self.faults)
        name = entity.type.name
        if name.startswith("multipart/"):
            self._cut_multipart(entity, depth)
        elif name in ("message/rfc822", "message/global"):
            self._cut_inner_mail(entity, depth)
        elif declared is None and depth == 0 and (guess := _guess_boundary(entity)):
            self.faults.append("the Content-Type is missing: parts found by their delimiter lines")
            entity.type = ContentType("multipart/mixed", {})
            self._cut_parts(entity, guess, depth)
        return entity

    def _cut_multipart(self, entity: Entity, depth: int) -> None:
        boundary = entity.type.params.get("boundary", "").rstrip().encode("utf-8", "replace")
        if boundary or depth >= MAX_DEPTH:
            self._cut_parts(entity, boundary, depth)
        if entity.children or self.parts >= MAX_PARTS or depth >= MAX_DEPTH:
            return
        guess = _guess_boundary(entity)
        if guess is None:
            self.faults.append(f"{entity.type.name} without any part: read as plain text")
            entity.type = ContentType("text/plain", {})
            return
        self.faults.append(f"{entity.type.name} without a usable boundary: parts found by guess")
        self._cut_parts(entity, guess, depth)

    def _cut_parts(self, entity: Entity, boundary: bytes, depth: int) -> None:
        if depth >= MAX_DEPTH:
            self._too_deep(entity)
            return
        # RFC 2046 5.1.5: what lies in a digest is a mail unless it says otherwise.
        default = "message/rfc822" if entity.type.name == "multipart/digest" else "text/plain"
        for start, end in self._delimited(entity, boundary):
            if self.parts >= MAX_PARTS:
                self.faults.append(f"more than {MAX_PARTS} parts: the rest was not read")
                return
            entity.children.append(self.cut(entity.buffer, start, end, depth + 1, default))

    def _cut_inner_mail(self, entity: Entity, depth: int) -> None:
        if depth >= MAX_DEPTH:
            self._too_deep(entity)
            return
        if self.parts >= MAX_PARTS:
            self.faults.append(f"more than {MAX_PARTS} parts: the rest was not read")
            return
        buffer, start, end = entity.buffer, entity.start, entity.end
        encoding = (entity.raw("content-transfer-encoding") or b"").strip().lower()
        if encoding in (b"base64", b"quoted-printable"):
            # RFC 2046 5.2.1 forbids base64 here; some mailers do it all the same.
            buffer = entity.content(self.faults).replace(b"\r\n", b"\n")
            start, end = 0, len(buffer)
        entity.children.append(self.cut(buffer, start, end, depth + 1, "text/plain"))

    def _too_deep(self, entity: Entity) -> None:
        self.faults.append(f"parts nested deeper than {MAX_DEPTH}: the innermost were not read")
        entity.type = ContentType("application/octet-stream", {})

    def _delimited(self, entity: Entity, boundary: bytes) -> Iterator[tuple[int, int]]:
        """Where each part lies; the line break before a delimiter belongs to the delimiter."""
        buffer, end = entity.buffer, entity.end
        mark = b"--" + boundary
        pos, opened = entity.start, -1
        while (at := buffer.find(mark, pos, end)) >= 0:
            pos = at + len(mark)
            if at > entity.start and buffer[at - 1] != 0x0A:
                continue
            eol = buffer.find(b"\n", pos, min(end, pos + _LONGEST_DELIMITER_TAIL))
            if eol < 0:
                if end - pos > _LONGEST_DELIMITER_TAIL:
                    continue
                eol = end
            tail = buffer[pos:eol].strip()
            if tail not in (b"", b"--"):  # a longer boundary that begins with ours
                continue
            if opened >= 0:
                yield opened, max(opened, at - 1)
            if tail:
                return
            opened = pos = min(eol + 1, end)
        if opened >= 0:
            self.faults.append(f"{entity.type.name} is not closed: the mail may be cut off")
            yield opened, end


def cut_mail(raw: bytes, faults: list[str]) -> Entity:
    """The tree of a mail's parts. Never raises; faults and caps hit are named in ``faults``."""
    buffer = _in_line_feeds(raw, faults)
    start = 0
    while start < len(buffer) and buffer[start] in b"\n":
        start += 1
    if not buffer.startswith((b"From ", b">From "), start) and not _FIELD.match(buffer, start):
        second = _after_line(buffer, start, len(buffer))
        start = second if _KNOWN_FIELD.match(buffer, second) else 0
        faults.append("the first line is no header line" if start else "there is no header")
    return _Cutter(faults).cut(buffer, start, len(buffer), 0, "text/plain")


def looks_like_mail(raw: bytes) -> bool:
    """Whether the bytes begin with header fields, one of them a field that every mail knows."""
    head = raw[:65536].replace(b"\r\n", b"\n").lstrip(b"\n")
    fields, body = read_fields(head, 0, len(head), [])
    return bool(fields) and _KNOWN_FIELD.search(head, 0, body) is not None


def is_text(raw: bytes) -> bool:
    """Whether the bytes may be text: a picture or a program has zero bytes, as only UTF-16 has."""
    return b"\0" not in raw[:65536] or raw.startswith((codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE))


def read_fields(
    buffer: bytes, start: int, end: int, faults: list[str]
) -> tuple[list[tuple[str, bytes]], int]:
    """The header fields that begin at ``start``, and where the body after them begins."""
    fields: list[tuple[str, bytes]] = []
    pos = start
    if buffer.startswith((b"From ", b">From "), start):  # the envelope line of an mbox
        pos = _after_line(buffer, start, end)
    last_known = -1
    while pos < end:
        if buffer[pos] == 0x0A:
            return fields, pos + 1
        match = _FIELD.match(buffer, pos, end)
        if match:
            fields.append((match[1].decode("ascii").lower(), match[2]))
            pos = match.end()
            continue
        if not fields:
            return fields, pos
        after = _after_line(buffer, pos, end)
        line = buffer[pos:after].rstrip()
        if not line:
            # Blanks alone: the end of the header, or an old way of folding (RFC 5322 4.2).
            if not _KNOWN_FIELD.match(buffer, after, end):
                return fields, after
        elif pos > (last_known := _last_known_field(buffer, pos, end, last_known)):
            faults.append("no blank line between header and text")
            return fields, pos
        else:
            # A fold that lost its blank must not push the rest of the header into the text.
            faults.append("a header line without a name was joined to the one before")
            name, value = fields[-1]
            fields[-1] = (name, value + b"\n " + line[:4096] if len(value) < 4096 else value)
        pos = after
    return fields, end


def _last_known_field(buffer: bytes, pos: int, end: int, found: int) -> int:
    """Where the last well-known field begins before the first blank line; 0 where none is.

    ``found`` is the answer of an earlier call, -1 at the first: looked up once a header.
    """
    if found >= 0:
        return found
    stop = buffer.find(b"\n\n", pos, end)
    stop = end if stop < 0 else stop
    last = 0
    for match in _KNOWN_FIELD.finditer(buffer, pos, min(stop, pos + 65536)):
        last = match.start()
    return last


def _after_line(buffer: bytes, pos: int, end: int) -> int:
    eol = buffer.find(b"\n", pos, end)
    return end if eol < 0 else eol + 1


def _guess_boundary(entity: Entity) -> bytes | None:
    match = _GUESSED_BOUNDARY.search(entity.buffer, entity.start, entity.end)
    return match[1] if match else None


def _in_line_feeds(raw: bytes, faults: list[str]) -> bytes:
    """The mail with line feeds as line ends; a file saved as UTF-16 turned into UTF-8."""
    for mark, charset in ((b"\xff\xfe", "utf-16-le"), (b"\xfe\xff", "utf-16-be")):
        if raw.startswith(mark):
            faults.append("the file was saved as UTF-16")
            raw = raw[2:].decode(charset, "replace").encode("utf-8", "replace")
    raw = raw.removeprefix(b"\xef\xbb\xbf")
    if b"\r" not in raw:
        return raw
    if b"\n" not in raw:
        return raw.replace(b"\r", b"\n")
    return raw.replace(b"\r\n", b"\n")
