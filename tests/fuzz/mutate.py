"""Inputs for the fuzzing: each made from its number alone, so that any one can be made again."""

# ruff: noqa: E501 - the oddities stand together, a kind on a line

from __future__ import annotations

import json
import random
from collections.abc import Callable
from dataclasses import dataclass
from typing import Literal

from seeds import BUILDS, drawn_sizes, labelled_messages, mail_of

Way = Literal["pasted", "mbox", "chat"]
"""How an input comes in: on standard input (a mail, or words), as an mbox, as a chat export."""

MOST = 100_000
"""The longest input [bytes]."""
_PIECES = [
    *"1.75 .095 5-1/4 1/2 15/8 38 1,5 R57 Ø42,4 2,0 16ga 0 00 000 1e9 999999999 1.500,00 1' 1\"".split(),
    *"x × by * / - + ± ( ) [ ] { } , . ; : | ~ @ # $ € % ° ² ' \" ” ½ ⅞ ⁄ ″ – — … • · \\ & < >".split(),
    *"OD ID wall CLR radius inside outside inch in mm cm ft sch NPS DN pipe tube square 2D 3xD".split(),
    *"no not sorry wait instead about max min or and to each both qty pcs mandrel 304 DOM".split(),
    *"Wandstärke Biegeradius épaisseur rayon raggio espesor doorn grubość Sollmaß".split(),
    *"today Friday 3/15/2027 20.11. KW14 due ASAP 330-555-0145 90deg 45° same but Re: Fwd: -- > >>".split(),
    "\n", "\n\n", "\r\n", "\r", "\t", "  ", "\x0b", "\x0c", "\x00", "\x1b[2J", "\u2028", "\xa0",
    "\u200b", "\ufeff", "\u202e", "\u0301", "\ufffd", "１．７５", "٣٨", "²³", "Ⅷ", "㎜", "㏌", "🔧", "İ", "ß",
    "\n-- \n", "\nOn Tue, Pat <pat@example.com> wrote:\n> ", "\nVon: x\nGesendet: y\n", "<td>", "<br>",
    "</table>", "<!--", "<style>", "&#x31;", "&frac12;", "=\n", "=3D", "=?utf-8?q?1=2E5?=", "--b\n",
    "Content-Type: text/html\n\n", "Content-Type: text/plain; charset=utf-7\n\n", "inch and a half",
]  # fmt: skip
_BYTES = [piece.encode() for piece in _PIECES]
_RAW = [
    b"\xff",
    b"\x80",
    b"\xc3",
    b"\xed\xa0\x80",
    b"\xf0\x9f",
    b"\xfe\xff",
    b"\x00\x31",
    b"\x1b$B",
]


@dataclass(frozen=True, slots=True)
class Input:
    """One input and the way it comes in."""

    raw: bytes
    way: Way


class Inputs:
    """Makes input number n of one seed; the pools are drawn once."""

    def __init__(self, seed: int, long: int, sizes: int = 1500) -> None:
        self.seed = seed
        self.long = long
        """One input in so many is grown to between a fifth of ``MOST`` and ``MOST``; 0: none."""
        self.mails = labelled_messages()
        self.sizes = drawn_sizes(sizes)

    def make(self, number: int) -> Input:
        """The input of that number: always the same bytes."""
        chance = random.Random(f"{self.seed} {number}")
        raw = self._start(chance)
        for _ in range(chance.choice((0, 1, 1, 2, 2, 3, 5, 8))):
            raw = chance.choice(_MUTATIONS)(raw, chance)
        if self.long and number % self.long == self.long - 1:
            raw = _grown(raw, chance)
        way: Way = chance.choices(("pasted", "mbox", "chat"), (90, 5, 5))[0]
        if way == "chat":
            raw = _chat(raw, chance)
        elif way == "mbox":
            raw = b"From pat@example.com Tue Nov 24 08:00:00 2026\n" + raw
        return Input(raw[:MOST], way)

    def _start(self, chance: random.Random) -> bytes:
        match chance.randrange(20):  # mostly short ones: what matters is how many
            case 0:
                return chance.choice(self.mails)
            case 1:  # a mail's head with a piece of another's words
                head, _, _ = chance.choice(self.mails).partition(b"\n\n")
                _, _, words = chance.choice(self.mails).partition(b"\n\n")
                at = chance.randrange(len(words) + 1)
                return head + b"\n\n" + words[at : at + chance.randrange(200)]
            case 2 | 3:
                return mail_of(chance.choice(self.sizes), chance.randrange(BUILDS))
            case 4:
                return chance.randbytes(chance.randrange(200))
            case 5 | 6 | 7 | 8:
                pieces = chance.choices(_BYTES, k=chance.randrange(1, 25))
                return chance.choice((b"", b" ")).join(pieces)
            case _:
                return chance.choice(self.sizes).encode()


Mutation = Callable[[bytes, random.Random], bytes]


def _span(raw: bytes, chance: random.Random, most: int = 30) -> tuple[int, int]:
    start = chance.randrange(len(raw) + 1)
    return start, min(len(raw), start + chance.randrange(most))


def _insert(raw: bytes, chance: random.Random) -> bytes:
    at = chance.randrange(len(raw) + 1)
    return raw[:at] + chance.choice(_BYTES) + raw[at:]


def _insert_raw(raw: bytes, chance: random.Random) -> bytes:
    at = chance.randrange(len(raw) + 1)
    return raw[:at] + chance.choice(_RAW) + raw[at:]


def _replace(raw: bytes, chance: random.Random) -> bytes:
    start, end = _span(raw, chance, 4)
    return raw[:start] + chance.choice(_BYTES) + raw[end:]


def _flip(raw: bytes, chance: random.Random) -> bytes:
    if not raw:
        return raw
    at = chance.randrange(len(raw))
    return raw[:at] + bytes([raw[at] ^ 1 << chance.randrange(8)]) + raw[at + 1 :]


def _delete(raw: bytes, chance: random.Random) -> bytes:
    start, end = _span(raw, chance)
    return raw[:start] + raw[end:]


def _double(raw: bytes, chance: random.Random) -> bytes:
    start, end = _span(raw, chance)
    return raw[:end] + raw[start:end] * chance.choice((1, 1, 2, 20)) + raw[end:]


def _move(raw: bytes, chance: random.Random) -> bytes:
    start, end = _span(raw, chance)
    rest = raw[:start] + raw[end:]
    at = chance.randrange(len(rest) + 1)
    return rest[:at] + raw[start:end] + rest[at:]


def _other_digit(raw: bytes, chance: random.Random) -> bytes:
    places = [at for at, byte in enumerate(raw) if 48 <= byte <= 57]
    if not places:
        return raw
    at = chance.choice(places)
    return (
        raw[:at] + chance.choice((b"0", b"1", b"9", b"", b"00", b".", b",", b"/")) + raw[at + 1 :]
    )


def _cut(raw: bytes, chance: random.Random) -> bytes:
    return raw[: chance.randrange(len(raw) + 1)]


def _twice(raw: bytes, chance: random.Random) -> bytes:
    _, _, words = raw.partition(b"\n\n")
    return raw + chance.choice((b"\n", b"\n\n", b" ")) + (words or raw)[:600]


def _case(raw: bytes, chance: random.Random) -> bytes:
    start, end = _span(raw, chance, 80)
    return raw[:start] + raw[start:end].swapcase() + raw[end:]


_MUTATIONS: tuple[Mutation, ...] = (
    _insert, _insert, _insert, _insert_raw, _replace, _replace, _flip, _delete, _double, _move,
    _other_digit, _other_digit, _cut, _twice, _case,
)  # fmt: skip


def _grown(raw: bytes, chance: random.Random) -> bytes:
    """A long input: the whole again and again, one piece of it, or a heap of pieces."""
    want = chance.randrange(MOST // 5, MOST)
    head, mark, words = raw.partition(b"\n\n")
    if not mark:
        head, words = b"", raw
    match chance.randrange(4):
        case 0:
            snippet = words or b"1 "
        case 1:
            start, end = _span(words, chance, 12)
            snippet = words[start:end] or b"1-"
        case 2:
            snippet = b"".join(chance.choices(_BYTES, k=chance.randrange(1, 4)))
        case _:
            snippet = b" ".join(chance.choices(_BYTES, k=2000))
    return head + mark + snippet * (want // len(snippet) + 1)


def _chat(raw: bytes, chance: random.Random) -> bytes:
    """The words as lines of a chat export, one of them perhaps broken."""
    lines = raw.decode("utf-8", "replace").splitlines() or [""]
    said = [
        json.dumps(
            {
                "sender": chance.choice(("pat", "pat", "lou", "", None, 7)),
                "time": chance.choice(("2026-11-24T08:00:00Z",) * 5 + ("2026-11-24 08:00", "soon")),
                "thread": chance.choice(("a", "a", "b", None)),
                "text": line,
            }
        )
        for line in lines[:60]
    ]
    return "\n".join(said).encode() + chance.choice((b"", b"\n", b"\n{", b"\n[]"))
