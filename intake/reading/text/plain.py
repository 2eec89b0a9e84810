"""Customer text made plain for the lexer, with the way back to the original place.

Mail holds full-width digits, unicode fractions, primes, non-breaking and zero-width spaces. The
lexer should know one spelling of each. The plain text may be shorter or longer than the original,
so an index leads every plain character back to where it came from.
"""

from __future__ import annotations

import re
import unicodedata
from dataclasses import dataclass
from functools import lru_cache

_SINGLE = {
    **dict.fromkeys("\u200b\u200c\u200d\u2060\ufeff\u00ad\u200e\u200f", ""),
    **dict.fromkeys("“”„‟″〃˝", '"'),
    **dict.fromkeys("‘’‚‛′´`", "'"),
    **dict.fromkeys("×✕✖╳⨯⨉", "x"),
    **dict.fromkeys("∗＊·•", "*"),
    **dict.fromkeys("‐‑‒–—―−", "-"),
    **dict.fromkeys(
        "\u00a0\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u205f\u3000",
        " ",
    ),
    **dict.fromkeys("⌀∅ΦφϕФø", "Ø"),
    **dict.fromkeys("⁄∕", "/"),
    **dict.fromkeys("│┃║", "|"),
    **dict.fromkeys("─━═┄┈", "-"),
    **dict.fromkeys("┌┬┐├┼┤└┴┘╔╦╗╠╬╣╚╩╝╭╮╰╯", "+"),
    "…": "...",
    "º": "°",
    "˚": "°",
    "\r": "",
    "\x0b": "\n",
    "\x0c": "\n",
    "\u2028": "\n",
    "\u2029": "\n",
}
# A bullet would otherwise read as a multiplication sign between two lines of a list.
_SINGLE["•"] = "-"
_SINGLE["·"] = "-"


@dataclass(frozen=True, slots=True)
class Plain:
    """Plain text and, for every character of it, its index in the original."""

    text: str
    index: tuple[int, ...] | None
    """None where the text was plain already: each character stands where it stood."""

    def span(self, start: int, end: int) -> tuple[int, int]:
        """The original's span for a non-empty plain span."""
        if self.index is None:
            return start, end
        return self.index[start], self.index[end - 1] + 1


def flatten(text: str) -> Plain:
    """One spelling for every character that is written in several. Never raises."""
    if text.isascii() and "\r" not in text and "\x0b" not in text and "\x0c" not in text:
        return Plain(text, None)
    if "х" in text or "Х" in text:
        text = _CYRILLIC_TIMES.sub("x", text)
    out: list[str] = []
    index: list[int] = []
    last, done = "", 0
    for found in _ODD.finditer(text):
        position = found.start()
        if position > done:
            out.append(text[done:position])
            index.extend(range(done, position))
            last = text[position - 1]
        plain = _plain_of(found[0])
        if len(plain) > 1 and plain[0].isdigit() and last.isdigit():
            plain = " " + plain  # "1½" is one and a half, not eleven halves
        if plain:
            out.append(plain)
            index.extend([position] * len(plain))
            last = plain[-1]
        done = position + 1
    out.append(text[done:])
    index.extend(range(done, len(text)))
    whole = "".join(out)
    # Of a text that was plain already, letters of other languages and all, each place is its own.
    return Plain(text, None) if whole == text else Plain(whole, tuple(index))


_CYRILLIC_TIMES = re.compile(
    r"(?:(?<=\d)|(?<=\d\s)|(?<=мм)|(?<=мм\s))[хХ](?=\s?\d[\d.,]*(?:[\s;)хХ]|мм|mm|$))"
)
"""'57х3,5': the letter kha between two lengths; but 12Х18Н10Т is a steel."""
_ODD = re.compile(r"[^\x00-\x7e]|[\r\x0b\x0c`]")


@lru_cache(maxsize=4096)
def _plain_of(char: str) -> str:
    if char in _SINGLE:
        return _SINGLE[char]
    folded = unicodedata.normalize("NFKC", char)
    if folded == char or len(folded) > 6:
        return char
    return "".join(_SINGLE.get(one, one) for one in folded)
