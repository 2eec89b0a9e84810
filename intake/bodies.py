"""The words of a mail out of its parts: which part speaks, what is a file, what is forwarded."""

from __future__ import annotations

import re

from .attachments import disposition, file_name, read_attachment
from .charsets import clean_text, decode_bytes
from .encoded_words import decode_header
from .flowed import unflow
from .lost_rows import lost_rows
from .mime import Entity
from .model import Attachment

MAX_TEXT = 2_000_000
_MAX_PART = 4 * MAX_TEXT
"""Bytes of one part that are looked at: HTML carries several times its words in markup."""
FORWARDED_LINE = "-------- Forwarded message --------"

# Text parts that are files, whatever their disposition says; all other text/* is read as words.
_TEXT_FILES = frozenset(
    "text/calendar text/csv text/tab-separated-values text/vcard text/x-vcard text/directory"
    " text/css text/rtf text/xml text/javascript text/x-amp-html text/x-watch-html".split()
)
_INNER_MAIL = frozenset(("message/rfc822", "message/global"))
# What a mailer puts into the plain part when it only writes HTML.
_STUB = re.compile(
    r"\b(?:view|see|read|open|display)\w*\b.{0,60}\b(?:html|browser|online)\b"
    r"|\bhtml\b.{0,60}\b(?:capable|compatible|enabled|support|reader|client|version|message|mail)"
    r"|(?:does|do) not support html"
    r"|html-?(?:f(?:ä|ae)hig|ansicht|version|format)|im browser (?:an|lesen|öffnen)"
    r"|dans votre navigateur|en el navegador|nel browser|in (?:uw|je|een) browser",
    re.I | re.S,
)
_LONGEST_STUB = 400
_LONGEST_NOTE = 200
_FIGURE = re.compile(r"\d+(?:[.,/]\d+)*")
_MORE = 3
"""So many figures more make a table that the plain words left out."""
_META_CHARSET = re.compile(
    rb"<meta[^>]{0,200}?charset\s{0,5}=\s{0,5}[\"']?([a-z0-9_.:-]{1,40})", re.I
)
_FIRST_BODY_BYTES = 2048


class Body:
    """Gathers a mail's words, files and part types; ``faults`` are the caller's."""

    def __init__(self, root: Entity, faults: list[str]) -> None:
        self.faults = faults
        self.attachments: list[Attachment] = []
        self.part_types: list[str] = []
        self._root = root
        self._room = MAX_TEXT
        self._struck: set[int] = set()
        """Where the HTML parts begin that have words struck out."""
        self.text = self._words(root).strip("\n")
        _note_types(root, self.part_types)

    def _words(self, entity: Entity) -> str:
        name = entity.type.name
        if name in _INNER_MAIL:
            return self._forwarded(entity)
        if name == "multipart/alternative":
            return self._alternative(entity)
        if name.startswith("multipart/"):
            return self._one_after_another(entity)
        return self._leaf(entity)

    def _leaf(self, entity: Entity) -> str:
        if entity is not self._root and not _speaks(entity):
            self._keep_file(entity)
            return ""
        if entity is self._root and not entity.type.name.startswith("text/"):
            self._keep_file(entity)
            return ""
        return self._limited(self._read(entity))

    def _keep_file(self, entity: Entity) -> None:
        if entity.type.name in ("application/pgp-encrypted", "application/pkcs7-mime"):
            self.faults.append("the mail is encrypted or sealed: its words can't be read here")
        self.attachments.append(read_attachment(entity, self.faults))

    def _read(self, entity: Entity) -> str:
        data = entity.content(self.faults)
        if len(data) > _MAX_PART:
            self.faults.append("a text part was too long: only its beginning was read")
            data = data[:_MAX_PART]
        charset = entity.type.params.get("charset")
        is_html = entity.type.name in ("text/html", "application/xhtml+xml")
        if is_html and charset is None and (meta := _META_CHARSET.search(data[:_FIRST_BODY_BYTES])):
            charset = meta[1].decode("ascii")
        text = clean_text(decode_bytes(data, charset, self.faults))
        if is_html:
            from .html_text import html_words

            words, struck = html_words(text)
            if struck:
                self._struck.add(entity.start)
                self._note_struck(struck)
            return words
        if entity.type.params.get("format", "").lower() == "flowed":
            return unflow(text, delsp=entity.type.params.get("delsp", "").lower() == "yes")
        return text

    def _note_struck(self, struck: list[str]) -> None:
        said = "; ".join(struck)
        said = said if len(said) <= _LONGEST_NOTE else f"{said[:_LONGEST_NOTE]}..."
        note = f"struck out in the message, and not read: {said}"
        if note not in self.faults:
            self.faults.append(note)

    def _limited(self, text: str) -> str:
        if len(text) > self._room:
            self.faults.append("the text is longer than 2 MB: the rest was not read")
            text = text[: self._room]
        self._room -= len(text)
        return text

    def _alternative(self, entity: Entity) -> str:
        """RFC 2046 5.1.4: the same words several times. The plain ones, if they say anything."""
        chosen = ""
        spoken: Entity | None = None
        stub = ""
        for child in entity.children:
            if child.type.name == "text/plain" and _speaks(child):
                text = self._read(child)
                if text.strip() and not (len(entity.children) > 1 and _is_stub(text)):
                    chosen, spoken = self._limited(text), child
                    break
                stub = stub or text
        if spoken is None:
            # Last is richest; each is tried, for the richest may be a calendar or a picture.
            for child in reversed(entity.children):
                if child.type.name == "text/plain":
                    continue
                if (text := self._words(child)).strip():
                    chosen, spoken = text, child
                    break
        richer = self._richer(entity, chosen) if spoken is not None else None
        if richer is not None:
            chosen, spoken = self._limited(richer[0]), richer[1]
        for child in entity.children:
            if child is not spoken:
                self._files_only(child)
        return chosen or self._limited(stub)

    def _richer(self, entity: Entity, chosen: str) -> tuple[str, Entity] | None:
        """The HTML branch, where it has a table of figures that the plain words lack or whose rows
        they have lost, or strikes out what they leave standing."""
        for child in entity.children:
            if child.type.name != "text/html" or not _speaks(child):
                continue
            text = self._read(child)
            if child.start in self._struck and text.strip():
                return text, child
            if "\t" not in text:
                continue
            more = len(_FIGURE.findall(text)) >= len(_FIGURE.findall(chosen)) + _MORE
            if more or lost_rows(text, chosen):
                return text, child
        return None

    def _files_only(self, entity: Entity) -> None:
        """Keep the files of a branch whose words are not taken (a drawing beside the HTML)."""
        if entity.type.name in _INNER_MAIL or entity.children:
            for child in entity.children:
                self._files_only(child)
        elif not _speaks(entity):
            self._keep_file(entity)

    def _one_after_another(self, entity: Entity) -> str:
        texts: list[str] = []
        is_report = entity.type.name == "multipart/report"
        for number, child in enumerate(entity.children):
            if is_report and number and child.type.name in _REPORT_PARTS:
                text = f"{FORWARDED_LINE}\n\n{self._limited(self._read(child)).strip()}"
            else:
                text = self._words(child)
            text = text.strip("\n")
            if text.strip() and not _same_words(text, child, texts):
                texts.append(text)
        return "\n\n".join(texts)

    def _forwarded(self, entity: Entity) -> str:
        """A mail inside the mail, below a line that says so."""
        if not entity.children:
            self._keep_file(entity)
            return ""
        inner = entity.children[0]
        if disposition(entity)[0] == "attachment" or file_name(entity):
            self._keep_file(entity)
        fallback = inner.type.params.get("charset")
        lines = [FORWARDED_LINE]
        for name in ("From", "Date", "Subject"):
            value = inner.raw(name.lower())
            if value is not None:
                lines.append(f"{name}: {decode_header(value, fallback)}")
        words = self._words(inner).strip("\n")
        return "\n".join([*lines, "", words])


_REPORT_PARTS = frozenset(
    "message/delivery-status message/global-delivery-status message/feedback-report"
    " message/disposition-notification text/rfc822-headers".split()
)


def _speaks(entity: Entity) -> bool:
    """Whether a part is words of the mail, not a file that came with it."""
    name = entity.type.name
    if not name.startswith("text/") or name in _TEXT_FILES:
        return False
    kind, _ = disposition(entity)
    return kind != "attachment" and not file_name(entity)


def _is_stub(text: str) -> bool:
    text = text.strip()
    return len(text) <= _LONGEST_STUB and _STUB.search(text) is not None


def _same_words(text: str, entity: Entity, before: list[str]) -> bool:
    """Whether an HTML part says what a plain part has said: sent as "mixed" by mistake."""
    if entity.type.name != "text/html" or not before:
        return False
    squeezed = "".join(text.split())
    return any("".join(earlier.split()) == squeezed for earlier in before)


def _note_types(entity: Entity, types: list[str]) -> None:
    """The types of the mail's own parts; those of a mail inside it are not its own."""
    types.append(entity.type.name)
    if entity.type.name not in _INNER_MAIL:
        for child in entity.children:
            _note_types(child, types)
