"""Header values with parameters: Content-Type and Content-Disposition (RFC 2045 5.1, RFC 2231)."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import lru_cache
from urllib.parse import unquote_to_bytes

from .charsets import decode_bytes
from .encoded_words import decode_words, unfold

# Bounded, so that a hostile header can't make the search run quadratically long.
_LONGEST = 8192
_PARAM = re.compile(r';\s{0,50}([^\s=;"]{1,200})\s{0,50}=\s{0,50}("(?:[^"\\]|\\.){0,2000}"|[^;]*)')
_TYPE = re.compile(r"[!#-'*+\-.0-9A-Z^-~]{1,100}/[!#-'*+\-.0-9A-Z^-~]{1,100}", re.I)
_PIECE = re.compile(r"([^*]+)(?:\*([0-9]{1,3}))?(\*?)")
_ESCAPED = re.compile(r"\\(.)")


@dataclass(frozen=True, slots=True)
class ContentType:
    """A media type in lower case, and its parameters, names in lower case."""

    name: str
    params: dict[str, str]


def parse_content_type(raw: bytes, default: str, faults: list[str]) -> ContentType:
    """The media type that a Content-Type field names; ``default`` where it names none.

    RFC 2045 5.2: a broken Content-Type is to be read as plain text.
    """
    name, params = parse_parameters(raw)
    match = _TYPE.match(name)
    if match is None:
        faults.append(f"the Content-Type {name[:40]!r} is broken: read as {default}")
        return ContentType(default, params)
    return ContentType(match[0].lower(), params)


@lru_cache(maxsize=512)
def parse_parameters(raw: bytes) -> tuple[str, dict[str, str]]:
    """The value before the first semicolon, and the parameters (callers must not change them)."""
    text = unfold(raw[:_LONGEST])
    main, semicolon, rest = text.partition(";")
    if not semicolon:
        return main.strip(), {}
    plain: dict[str, str] = {}
    pieces: dict[str, dict[int, tuple[bool, str]]] = {}
    for match in _PARAM.finditer(semicolon + rest):
        name, value = match[1].lower(), _unquoted(match[2])
        piece = _PIECE.fullmatch(name)
        if piece is None or piece[0] == piece[1]:
            plain.setdefault(name, decode_words(value))
        else:
            pieces.setdefault(piece[1], {})[int(piece[2] or 0)] = (bool(piece[3]), value)
    for name, numbered in pieces.items():
        plain[name] = _joined([numbered[number] for number in sorted(numbered)])
    return main.strip(), plain


def _unquoted(value: str) -> str:
    value = value.strip()
    if len(value) >= 2 and value[0] == value[-1] == '"':
        return _ESCAPED.sub(r"\1", value[1:-1])
    return value.strip('"')


def _joined(pieces: list[tuple[bool, str]]) -> str:
    """RFC 2231 3 and 4: ``name*0*=utf-8''R%C3%B6; name*1=hr.pdf`` is one value in pieces."""
    first_is_coded, first = pieces[0]
    charset = "utf-8"
    if first_is_coded and first.count("'") >= 2:
        charset, _, first = first.split("'", 2)
        pieces = [(True, first), *pieces[1:]]
    data = b"".join(
        unquote_to_bytes(value) if coded else value.encode("utf-8", "replace")
        for coded, value in pieces
    )
    return decode_bytes(data, charset or "utf-8", [])
