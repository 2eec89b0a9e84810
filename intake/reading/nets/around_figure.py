"""What stands around each figure of a mail, as traits that can be counted.

What a figure is (OD, wall, radius, or none of them) is told by its neighbours in more ways than
rules can list. A trait is how it is written and how big it is, a word or a pair of words with its
place beside it, a word of its sentence, the figure before or behind and what stands between, or the
make of its line where the lines around are made alike. Nothing of the rules' reading is used, so
that what is learnt from traits is a second opinion.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import islice, pairwise
from math import log

_PIECE = re.compile(
    r"(?P<figure>\d+[ -]\d{1,2}/\d{1,2}|\d{1,2}/\d{1,2}(?!\d|[/.])|\d+[½¼¾⅛⅜⅝⅞]"
    r"|\d+(?:[.,]\d+)*|[.,]\d+|[½¼¾⅛⅜⅝⅞])|(?P<word>[^\W\d_]+)|(?P<line>\n\s*)|(?P<mark>[^\s\w])"
)
_NARROW = {0xFF01 + n: 0x21 + n for n in range(94)} | {0x3000: 0x20}
"""Full-width letters, digits and marks as plain ones, each in its place."""
_SIGNS = {"½": 1 / 2, "¼": 1 / 4, "¾": 3 / 4, "⅛": 1 / 8, "⅜": 3 / 8, "⅝": 5 / 8, "⅞": 7 / 8}
_MM = re.compile(r"\bmm\b")
_INCH = re.compile(r"[\"″”]|\bin(?:ch)?\b")
_LETTERS, _FEW_LETTERS = 9, 4
"""So many letters of a word count; in the make of a line, fewer."""
_SIGN = 2
"""Letters of a unit or a mark: 'mm', 'OD', 'x'."""
_NEAR, _SENTENCE, _LINE = 8, 14, 14
"""Pieces beside a figure, of its sentence on each side, and of a line that has a make."""
_LINE_BEGIN = 8
"""Pieces by which lines are compared."""
_BETWEEN = 6
"""So near the next figure stands, if at all."""
LONGEST = 20_000
"""Characters of a mail that is looked at."""
MOST = 300
"""Figures of a mail that are looked at: more is a price list or no mail."""
LINE, BLANK = "/", "//"
_ENDS, _BULLETS = frozenset(".!?;"), frozenset("-*•")


@dataclass(frozen=True, slots=True)
class Piece:
    """A figure, a word, a mark or the end of a line."""

    start: int
    end: int
    kind: str
    said: str
    """As it counts: a word's beginning, '#d' for a figure with decimals."""
    written: str


class Figures:
    """A text taken apart once, to tell what stands around each of its figures."""

    def __init__(self, text: str) -> None:
        self._pieces = pieces(text.translate(_NARROW))
        self._said = [piece.said for piece in self._pieces]
        self._unit = ("mm" if _MM.search(text) else "") + ("in" if _INCH.search(text) else "")
        self.at = [n for n, piece in enumerate(self._pieces) if piece.kind == "figure"]
        """Where among the pieces the figures are."""
        self._lines = list(self._cut_lines())
        self._sentences: list[int] = []
        self._line_of: dict[int, int] = {}
        for number, (first, last) in enumerate(self._lines):
            self._line_of.update(dict.fromkeys(range(first, last), number))

    def __getitem__(self, at: int) -> Piece:
        return self._pieces[at]

    def traits(self, at: int) -> dict[str, float]:
        """The traits of the figure that is piece number ``at``, each with its amount."""
        found: dict[str, float] = {}
        for trait, amount in self._traits(at):
            found[trait] = amount
        return found

    def line_of(self, at: int) -> int:
        """The number of its line."""
        return self._line_of[at]

    def sentence_of(self, at: int) -> int:
        """The number of its sentence; a line that begins anew begins one, too."""
        if not self._sentences:
            self._sentences = list(self._cut_sentences())
        return self._sentences[at]

    def make_of(self, line: int) -> str:
        """What a line begins with, in order: a list's lines begin alike."""
        return " ".join(self._made(line).split()[:_LINE_BEGIN])

    def words_beside(self, at: int) -> int:
        """How many words its line has; of one letter or two counts none."""
        first, last = self._lines[self._line_of[at]]
        line = self._pieces[first:last]
        return sum(piece.kind == "word" and len(piece.said) > _SIGN for piece in line)

    def _traits(self, at: int) -> Iterator[tuple[str, float]]:
        piece = self._pieces[at]
        size = _size(piece.written)
        own = piece.said + size
        yield from ((one, 1.0) for one in (piece.said, size, own, self._unit, self._unit + size))
        if len(piece.written) < _BETWEEN:
            yield f"={piece.written}", 1.0
        left, right = self._said[max(0, at - _NEAR) : at][::-1], self._said[at + 1 : at + 1 + _NEAR]
        for side, said in (("<", left), (">", right)):
            yield from ((f"{side}{n}{word}", 1.0) for n, word in enumerate(said[:5]))
            yield from ((f"{side}{word}", 0.6) for word in said)
            pairs = islice(pairwise(said), 3)
            yield from ((f"{side}{n}{one} {two}", 1.0) for n, (one, two) in enumerate(pairs))
        if left and right:
            yield f"<>{left[0]} {right[0]}", 1.0
        yield from ((f"<<{word}", 0.3) for word in self._sentence(at, -1))
        yield from ((f">>{word}", 0.3) for word in self._sentence(at, 1))
        yield from ((trait, 1.0) for trait in self._other_figure(at, -1, "p"))
        yield from ((trait, 1.0) for trait in self._other_figure(at, 1, "n"))
        yield from ((trait, 1.0) for trait in self._make(at, own))

    def _sentence(self, at: int, step: int) -> Iterator[str]:
        """The words of its sentence on one side, the nearest first."""
        for _ in range(_SENTENCE):
            at += step
            if not 0 <= at < len(self._said) or self._said[at] in (BLANK, "!", "?", ";"):
                return
            yield self._said[at]

    def _other_figure(self, at: int, step: int, side: str) -> Iterator[str]:
        """How the next figure on one side compares, and what stands between."""
        other = at + step
        ends = range(at + step * _BETWEEN, at + step * (_BETWEEN + 2), step)
        while 0 <= other < len(self._said) and other not in ends:
            if self._pieces[other].kind == "figure":
                ratio = _ratio(self._pieces[at].written, self._pieces[other].written)
                yield f"{side}{ratio}"
                yield f"{side}{ratio} {min(abs(other - at) - 1, 4)}"
                between = self._said[min(at, other) + 1 : max(at, other)][:4]
                yield f"{side}:{' '.join(between)}"
                return
            other += step
        yield f"{side}-"

    def _make(self, at: int, own: str) -> Iterator[str]:
        """The make of its line, its place in it, and whether a line beside it is made alike."""
        number = self._line_of[at]
        first, last = self._lines[number]
        if last - first >= _LINE:
            return
        place = sum(piece.kind == "figure" for piece in self._pieces[first:at])
        words = " ".join(
            "#" if p.kind == "figure" else p.said[:_FEW_LETTERS] if p.kind == "word" else p.said
            for p in self._pieces[first:last]
        )
        make = self._made(number)
        yield from (f"|{words}", f"|{place}{words}", f"|{place}{make}")
        beside = (n for n in (number - 1, number + 1) if 0 <= n < len(self._lines))
        if any(self._made(n) == make for n in beside):
            yield from ("||", f"||{place}", f"||{place}{own}", f"||{self._pieces[at].said}")

    def _made(self, number: int) -> str:
        first, last = self._lines[number]
        kinds = {"figure": "#", "word": "w"}
        return " ".join(kinds.get(p.kind, p.said) for p in self._pieces[first:last][:_LINE])

    def _cut_sentences(self) -> Iterator[int]:
        number, last = 0, None
        for piece in self._pieces:
            begins = piece.kind == "figure" or piece.written[:1].isupper() or piece.said in _BULLETS
            if last is not None and (
                last.said in _ENDS or last.said == BLANK or (last.said == LINE and begins)
            ):
                number += 1
            yield number
            last = piece

    def _cut_lines(self) -> Iterator[tuple[int, int]]:
        first = 0
        for number, piece in enumerate(self._pieces):
            if piece.kind == "line":
                yield first, number
                first = number + 1
        yield first, len(self._pieces)


def pieces(text: str) -> list[Piece]:
    """Figures, words, marks and ends of lines, in order."""
    return list(_cut(text))


def _cut(text: str) -> Iterator[Piece]:
    for found in _PIECE.finditer(text):
        kind, written = found.lastgroup or "", found.group()
        match kind:
            case "figure":
                said = _spelling(written)
            case "word":
                said = written.casefold()[:_LETTERS]
            case "line":
                said = BLANK if written.count("\n") > 1 else LINE
            case _:
                said = written
        yield Piece(found.start(), found.end(), kind, said, written)


def _spelling(written: str) -> str:
    if "/" in written or written[-1] in _SIGNS:
        return "#f"
    return "#d" if "." in written else "#c" if "," in written else "#"


def _size(written: str) -> str:
    value = _value(written)
    return f"~{round(log(value) / log(1.5))}" if value > 0 else "~"


def _ratio(one: str, other: str) -> str:
    a, b = _value(one), _value(other)
    return str(round(log(a / b) / log(1.6))) if a > 0 and b > 0 else "?"


@lru_cache(4096)
def _value(written: str) -> float:
    """About how much a figure is; 0 where that can't be told."""
    if written[-1] in _SIGNS:
        return float(written[:-1] or 0) + _SIGNS[written[-1]]
    if "/" in written:
        *whole, part = re.split(r"[ -]", written)
        above, below = part.split("/")
        return float(whole[0] if whole else 0) + float(above) / (float(below) or 1.0)
    if sum(map(written.count, ".,")) == 1:
        return float(written.replace(",", "."))
    return float(re.sub(r"[.,]", "", written))


def overlapping(figures: Figures, start: int, end: int) -> Sequence[int]:
    """The pieces that are figures within a span of the text, or one that it is a part of."""
    return [at for at in figures.at if figures[at].start < end and start < figures[at].end]
