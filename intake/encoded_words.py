"""Header values to text: unfolding, encoded words (RFC 2047), raw 8-bit, no line breaks left."""

from __future__ import annotations

import binascii
import re

from .charsets import decode_bytes

LONGEST_VALUE = 65536

_FOLD = re.compile(rb"[\r\n]+[ \t]*")
# The text of an encoded word may hold no "?" (RFC 2047 2), but careless programs write
# "=?utf-8?q?can you quote??=": a few are let through, few enough to keep the search linear.
_WORD = re.compile(
    r"=\?([^?\s*]{1,60})(?:\*[^?\s]{0,20})?\?([bBqQ])\?([^?]*(?:\?(?!=)[^?]*){0,8})\?="
)
_CONTROLS = re.compile(r"[\x00-\x1f\x7f-\x9f\xa0\u2028\u2029\ud800-\udfff]+")
_DIRECTION = re.compile(r"[\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff]")
_SPACES = re.compile(r" {2,}")
_NOT_BASE64 = bytes(
    set(range(256)) - set(b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/")
)


def unfold(raw: bytes, fallback: str | None = None, faults: list[str] | None = None) -> str:
    """One header value as one line of text, encoded words not yet decoded (RFC 5322 2.2.3).

    Raw 8-bit bytes are read as UTF-8, else in the ``fallback`` charset, else as windows-1252.
    """
    if b"\n" in raw or b"\r" in raw:
        raw = _FOLD.sub(b" ", raw)
    if raw.isascii():
        return raw.decode("ascii")
    heard: list[str] = []
    try:
        text = raw.decode("utf-8")
    except UnicodeDecodeError:
        text = decode_bytes(raw, fallback or "windows-1252", heard)
    if faults is not None:
        faults.append("a header has raw 8-bit characters")
    return text


def decode_words(text: str) -> str:
    """``text`` with its encoded words decoded and every run of controls made one space.

    A line break may come out of an encoded word ("a=0ABcc: ..."): left in, it would become a
    header line of whatever is written from it.
    """
    if "=?" in text:
        text = _decode_all(text)
    if text.isascii() and text.isprintable():
        return text.strip()
    text = _DIRECTION.sub("", _CONTROLS.sub(" ", text))
    return _SPACES.sub(" ", text).strip()


def decode_header(raw: bytes, fallback: str | None = None, faults: list[str] | None = None) -> str:
    """A header value's words: unfolded, decoded, one line."""
    if len(raw) <= LONGEST_VALUE and raw.isascii() and b"=?" not in raw:
        text = raw.decode("ascii")
        if text.isprintable():  # most values: nothing to undo
            return text.strip()
    if len(raw) > LONGEST_VALUE:
        raw = raw[:LONGEST_VALUE]
        if faults is not None:
            faults.append(f"a header longer than {LONGEST_VALUE // 1024} kB was cut")
    return decode_words(unfold(raw, fallback, faults))


def _decode_all(text: str) -> str:
    """All encoded words; neighbours in one charset are joined as bytes before decoding.

    RFC 2047 5 (3) forbids to split a character over two words. Mailers do it, and then only the
    joined bytes can be read.
    """
    out: list[str] = []
    pending = b""
    pending_charset = ""
    end = 0
    for match in _WORD.finditer(text):
        between = text[end : match.start()]
        charset = match[1].lower()
        joins = bool(pending_charset) and not between.strip(" \t")
        if not (joins and charset == pending_charset):
            if pending_charset:
                out.append(decode_bytes(pending, pending_charset, []))
            pending, pending_charset = b"", charset
            if not joins:  # RFC 2047 6.2: blanks between two encoded words are not shown
                out.append(between)
        pending += _word_bytes(match[2], match[3])
        end = match.end()
    if pending_charset:
        out.append(decode_bytes(pending, pending_charset, []))
    out.append(text[end:])
    return "".join(out)


def _word_bytes(encoding: str, coded: str) -> bytes:
    data = coded.encode("utf-8", "replace")
    if encoding in "qQ":
        return binascii.a2b_qp(data, header=True)
    data = data.translate(None, _NOT_BASE64)
    if len(data) % 4 == 1:  # six bits: no byte can be made of them
        data = data[:-1]
    return binascii.a2b_base64(data + b"=" * (-len(data) % 4))
