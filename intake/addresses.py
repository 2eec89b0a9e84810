"""Mailboxes out of From, To and Reply-To, however they are written (RFC 5322 3.4)."""

from __future__ import annotations

import re
import unicodedata
from functools import lru_cache

from .encoded_words import decode_words
from .model import Address

LONGEST_LIST = 16384

# Encoded word, quoted string, comment, <angle address>, separator, anything else. All bounded:
# linear time.
_TOKEN = re.compile(
    r"=\?[^?\s]{1,60}\?[bBqQ]\?[^?\s]{0,500}\?="
    r'|"(?:[^"\\]|\\.){0,500}"|\((?:[^()\\]|\\.){0,500}\)|<[^<>]{0,500}>|[,;:]|[^",;:<(=]+|.',
    re.S,
)
# The form that nearly all mail has; the rest is taken apart token by token.
_PLAIN = re.compile(
    r"\s*(?:([\w.' -]{0,80}|\"[\w.,' -]{0,80}\"\s?)<([\w.+-]{1,64}@[\w.-]{1,255})>"
    r"|([\w.+-]{1,64}@[\w.-]{1,255}))\s*",
    re.ASCII,
)
_CONTROLS = re.compile(r"[\x00-\x1f\x7f-\x9f\u2028\u2029]+")
_ESCAPED = re.compile(r"\\(.)")
_ADDRESS = re.compile(r'(?:[^\s@<>()",;:\\]{1,200}|"[^"\r\n]{1,200}")@[^\s@<>()",;:\\]{1,255}')


@lru_cache(maxsize=1024)  # nearly all mail is to the same few addresses: the shop's own
def parse_addresses(text: str) -> tuple[Address, ...]:
    """All mailboxes of an address list in order; what has no address in it comes as a name.

    ``text`` is unfolded but not decoded: a comma inside an encoded word separates nothing
    (RFC 2047 5). Groups ("undisclosed-recipients:;") give their members. A quoted name stays a
    name, whatever addresses it spells; of several angle brackets the last counts.
    """
    text = _CONTROLS.sub(" ", text[:LONGEST_LIST])
    if plain := _PLAIN.fullmatch(text):
        name, angled, bare = plain.groups("")
        return (Address(name=name.strip('" '), address=angled or bare),)
    found: list[Address] = []
    words: list[str] = []
    unquoted: list[str] = []
    """The same words without quoted and encoded ones: only here is an address looked for."""
    comment = angle = ""

    def add(word: str) -> None:
        words.append(word)
        unquoted.append(word)

    def close() -> None:
        nonlocal words, unquoted, comment, angle
        phrase = "".join(words)
        address = _clean(angle)
        if not address and angle:
            phrase += angle
        elif not address and (match := _ADDRESS.search("".join(unquoted))):
            address = match[0]
            before, _, after = phrase.rpartition(address)
            phrase = f"{before} {after}"
        name = one_line_name(phrase.strip(" \t<>")) or one_line_name(comment)
        if name or address:
            found.append(Address(name=name, address=address))
        words, unquoted, comment, angle = [], [], "", ""

    for match in _TOKEN.finditer(text):
        token = match[0]
        first = token[0]
        if first == '"' and len(token) > 1 and text.startswith("@", match.end()):
            add(token)  # "lou b"@example.net: quoted, but no name (RFC 5322 3.4.1)
        elif first == '"' and len(token) > 1:
            words.append(_ESCAPED.sub(r"\1", token[1:-1]))
            unquoted.append(" ")
        elif token.startswith("=?") and len(token) > 2:
            words.append(token)  # part of a name, though it may spell "Al: al@example.org,"
            unquoted.append(" ")
        elif first == "(" and len(token) > 1:
            comment = comment or _ESCAPED.sub(r"\1", token[1:-1])
        elif first == "<" and len(token) > 1:
            angle = token if _clean(token) or not angle else angle
        elif token == ":" and not angle and "@" not in "".join(unquoted):
            words, unquoted = [], []  # the name of a group
        elif token == "," and not angle and words and "@" not in "".join(unquoted):
            # "Dunaway, R. <rd@example.net>" without quotes: the comma is part of the name.
            add(",")
        elif token in (",", ";"):
            close()
        else:
            add(token)
    close()
    return tuple(found)


def one_line_name(text: str) -> str:
    """A display name as people see it: decoded, on one line, without invisible characters.

    A name that shows otherwise than it is stored could pass for another sender's.
    """
    seen = "".join(c for c in decode_words(text) if unicodedata.category(c) != "Cf")
    return " ".join(seen.split())


def _clean(angle: str) -> str:
    """The address inside angle brackets; empty where it is none."""
    inner = angle.strip("<> \t").removeprefix("mailto:")
    if inner.startswith("@"):  # an old source route, "<@a,@b:user@c>" (RFC 5322 4.4)
        inner = inner.rpartition(":")[2]
    return inner if _ADDRESS.fullmatch(inner) else ""
