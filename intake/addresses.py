"""Mailboxes out of From, To and Reply-To, however they are written (RFC 5322 3.4)."""

from __future__ import annotations

import re
from functools import lru_cache

from .encoded_words import decode_words
from .model import Address

LONGEST_LIST = 16384

# Quoted string, comment, <angle address>, separator, anything else. All bounded: linear time.
_TOKEN = re.compile(
    r'"(?:[^"\\]|\\.){0,500}"|\((?:[^()\\]|\\.){0,500}\)|<[^<>]{0,500}>|[,;:]|[^",;:<(]+|.', re.S
)
# The form that nearly all mail has; the rest is taken apart token by token.
_PLAIN = re.compile(
    r"\s*(?:([\w.' -]{0,80}|\"[\w.,' -]{0,80}\"\s?)<([\w.+-]{1,64}@[\w.-]{1,255})>"
    r"|([\w.+-]{1,64}@[\w.-]{1,255}))\s*",
    re.ASCII,
)
_ESCAPED = re.compile(r"\\(.)")
_ADDRESS = re.compile(r'(?:[^\s@<>()",;:\\]{1,200}|"[^"\r\n]{1,200}")@[^\s@<>()",;:\\]{1,255}')


@lru_cache(maxsize=1024)  # nearly all mail is to the same few addresses: the shop's own
def parse_addresses(text: str) -> tuple[Address, ...]:
    """All mailboxes of an address list in order; what has no address in it comes as a name.

    ``text`` is unfolded but not decoded: a comma inside an encoded word separates nothing
    (RFC 2047 5). Groups ("undisclosed-recipients:;") give their members.
    """
    if plain := _PLAIN.fullmatch(text):
        name, angled, bare = plain.groups("")
        return (Address(name=name.strip('" '), address=angled or bare),)
    found: list[Address] = []
    words: list[str] = []
    comment = angle = ""

    def close() -> None:
        nonlocal words, comment, angle
        phrase = "".join(words)
        address = _clean(angle)
        if not address and (match := _ADDRESS.search(phrase)):
            address = match[0]
            phrase = phrase.replace(address, " ", 1)
        elif not address and angle:
            phrase += angle
        name = decode_words(phrase.strip(" \t<>")) or decode_words(comment)
        if name or address:
            found.append(Address(name=name, address=address))
        words, comment, angle = [], "", ""

    for token in _TOKEN.findall(text[:LONGEST_LIST]):
        first = token[0]
        if first == '"' and len(token) > 1:
            words.append(_ESCAPED.sub(r"\1", token[1:-1]))
        elif first == "(" and len(token) > 1:
            comment = comment or _ESCAPED.sub(r"\1", token[1:-1])
        elif first == "<" and len(token) > 1:
            angle = angle or token
        elif token == ":" and not angle and "@" not in "".join(words):
            words = []  # the name of a group
        elif token == "," and not angle and words and "@" not in "".join(words):
            # "Dunaway, R. <rd@example.net>" without quotes: the comma is part of the name.
            words.append(",")
        elif token in (",", ";"):
            close()
        else:
            words.append(token)
    close()
    return tuple(found)


def _clean(angle: str) -> str:
    """The address inside angle brackets; empty where it is none."""
    inner = angle.strip("<> \t").removeprefix("mailto:")
    if inner.startswith("@"):  # an old source route, "<@a,@b:user@c>" (RFC 5322 4.4)
        inner = inner.rpartition(":")[2]
    return inner if _ADDRESS.fullmatch(inner) else ""
