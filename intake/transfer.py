"""Undoes the transfer encoding of a body (RFC 2045 6), whatever is left of it."""

from __future__ import annotations

import binascii
import re

_ALPHABET = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/"
_NOT_ALPHABET = bytes(set(range(256)) - set(_ALPHABET))
_PADDING = re.compile(rb"=+")
_IDENTITY = frozenset((b"", b"7bit", b"8bit", b"binary", b"7-bit", b"8-bit"))


def decode_transfer(body: bytes, encoding: bytes | None, faults: list[str]) -> bytes:
    """The bytes that ``body`` carries; an unknown encoding leaves them as they are."""
    name = _name(encoding)
    if name in _IDENTITY:
        return body
    if name == b"quoted-printable":
        return binascii.a2b_qp(body)
    if name == b"base64":
        return _base64(body, faults)
    shown = name[:40].decode("ascii", "replace")
    faults.append(f"the transfer encoding {shown!r} is unknown: taken as it stands")
    return body


def decoded_size(body: bytes, encoding: bytes | None) -> int:
    """How many bytes ``decode_transfer`` would give, without decoding a 50 MB drawing."""
    if _name(encoding) == b"base64":
        return len(body.translate(None, _NOT_ALPHABET)) * 3 // 4
    return len(decode_transfer(body, encoding, []))


def _name(encoding: bytes | None) -> bytes:
    # "base64 (comment)" and "base64;" are seen in the wild.
    words = (encoding or b"").replace(b";", b" ").split(None, 1)
    return words[0].lower() if words else b""


def _base64(body: bytes, faults: list[str]) -> bytes:
    """Base64 read leniently. Padding may stand in the middle, where pieces were coded apart."""
    first, *others = [piece for piece in _PADDING.split(body.strip()) if piece.strip()] or [b""]
    foreign = _foreign(first)
    if foreign * 20 > len(first):
        faults.append("labelled base64, but it is not: taken as it stands")
        return body
    if foreign:
        faults.append("base64 with foreign characters in it: those were skipped")
    pieces = [first]
    for piece in others:
        if _foreign(piece):  # a footer that a gateway wrote below the base64
            faults.append("text after the end of the base64 was left out")
            break
        pieces.append(piece)
    if not body.rstrip().endswith(b"=") and len(pieces[-1].translate(None, _NOT_ALPHABET)) % 4:
        faults.append("base64 is cut off: read as far as it goes")
    return b"".join(_decoded(piece) for piece in pieces)


def _foreign(piece: bytes) -> int:
    """How many characters are neither of the alphabet nor line ends."""
    known = len(piece.translate(None, _NOT_ALPHABET))
    return len(piece.strip()) - known - piece.strip().count(b"\n") - piece.strip().count(b"\r")


def _decoded(piece: bytes) -> bytes:
    data = piece.translate(None, _NOT_ALPHABET)
    if len(data) % 4 == 1:  # six bits: no byte can be made of them
        data = data[:-1]
    return binascii.a2b_base64(data + b"=" * (-len(data) % 4))
