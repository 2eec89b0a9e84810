"""What stands around a size in a mail, as traits that can be counted.

Whether a size is asked for or only told of is said by the words around it, in more ways than rules
can list. A trait is a word or a pair of words with its place: right before or behind the size,
somewhat further off, in the same sentence, in the sentence before or behind. A size ('1.75 x .095
wall') is one piece, whatever figures it has, so that the words beside it are beside all of them.
"""

from __future__ import annotations

import re
from bisect import bisect_left, bisect_right
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Literal

Kind = Literal["figure", "part", "word", "mark", "line"]

_PIECE = re.compile(
    r"(?P<figure>(?:[øØ⌀∅]\s?|\b[rR](?=\d))?(?:\d+[.,/]?|[.,]\d|[½¼¾⅛⅜⅝⅞])[\d.,/½¼¾⅛⅜⅝⅞-]*"
    r"(?<![.,-])(?:er|ers|ern)?)"
    r"|(?P<word>[^\W\d_]+(?:'[a-z]+)?)|(?P<line>\n(?:[^\S\n]*\n)*)|(?P<mark>[^\s\w])"
)
_NAMES = frozenset(
    "mm in inch inches zoll cm ga gauge gage g swg bwg od o d wall wt clr cl radius rad r x by wand"
    " wandstärke wandstaerke épaisseur paroi rayon radio pared raggio parete spessore straal"
    " wanddikte thick centerline centreline thickness diameter outside pulgada pulgadas pouces"
    " pouce pollici sch schedule sched nps dn dom ø durchmesser radien calibre cal cédula".split()
) | frozenset("×*\"”′″")  # fmt: skip
"""Units and names of lengths: with a figure they are a size."""
_JOINTS = frozenset("auf mit con avec met on a with of ( ) - – / , : = @ ' ’".split())
"""May stand within a size, between two of its figures."""
_APART = 4
"""So many pieces apart two figures are two things."""
_ENDS = frozenset(".!?;")
_LETTERS = 9
"""So many letters of a word count: the rest is mostly its ending."""
_WRAPPED = 55
"""A line of more characters than this goes on in the next, which a mail program broke."""
_NEAR, _FAR = 6, 14
"""Pieces beside a size that count as near to it, and as further off."""
LINE, BLANK = "/", "//"
"""A line's end, and a blank line."""
BREAKS = frozenset({LINE, BLANK})


@dataclass(frozen=True, slots=True)
class _Piece:
    start: int
    end: int
    said: str
    is_size: bool
    sentence: int


class Surroundings:
    """A text taken apart once, to tell what stands around each of its sizes."""

    def __init__(self, text: str) -> None:
        self._pieces = list(_pieces(text))
        self._starts = [piece.start for piece in self._pieces]
        self._numbers = [piece.sentence for piece in self._pieces]
        self._sentences: list[list[str]] = []
        self._ends: list[str] = []
        """How each sentence ends: by a break, or otherwise."""
        self._rows: list[bool] = []
        for piece in self._pieces:
            if piece.sentence == len(self._sentences):
                self._sentences.append([])
                self._rows.append(False)
                self._ends.append(LINE)
            self._rows[-1] |= piece.is_size
            self._ends[-1] = piece.said
            if piece.said not in BREAKS:
                self._sentences[-1].append(piece.said)
        if self._ends and self._pieces[-1].said not in _ENDS:
            self._ends[-1] = BLANK
        for number, end in enumerate(self._ends):
            before = self._ends[number - 1] if number else LINE
            self._rows[number] &= before in BREAKS and end in BREAKS

    def traits(self, place: int) -> dict[str, float]:
        """The traits of the size that a figure at ``place`` belongs to, each with its amount."""
        at = max(0, bisect_right(self._starts, place) - 1)
        found: dict[str, float] = {}
        for trait, amount in self._traits(at) if self._pieces else ():
            found[trait] = found.get(trait, 0.0) + amount
        return found

    def _traits(self, at: int) -> Iterator[tuple[str, float]]:
        here = self._pieces[at].sentence
        own = self._sentences[here]
        first = bisect_left(self._numbers, here)
        yield from _beside("<", own[: at - first][::-1][:_FAR])
        yield from _beside(">", own[at - first + 1 :][:_FAR])
        yield from ((f"s {word}", 0.5) for word in sorted(set(own)))
        yield from ((f"s {one} {other}", 0.35) for one, other in sorted(set(pairwise(own))))
        for mark, step in (("p", -1), ("n", 1)):
            words = sorted(set(self._next(here, step)))
            yield from ((f"{mark} {word}", 0.3) for word in words)

    def _next(self, here: int, step: int) -> Sequence[str]:
        """The sentence before or behind one; of a row of a list, what stands before or behind the
        list, so that all its rows have the same. What stands behind a blank line is another
        matter."""
        number = here + step
        while self._rows[here] and 0 <= number < len(self._rows) and self._rows[number]:
            if step > 0 and self._ends[number - 1] == BLANK:
                return ()
            number += step
        if not 0 <= number < len(self._sentences):
            return ()
        if step > 0 and self._ends[number - 1] == BLANK:
            return ()
        return self._sentences[number]


def _beside(side: str, said: Sequence[str]) -> Iterator[tuple[str, float]]:
    """The pieces on one side of a size in its sentence, the nearest first."""
    yield from ((f"{side}{place} {word}", 1.0) for place, word in enumerate(said[:3]))
    yield from ((f"{side} {word}", 0.7) for word in said[:_NEAR])
    yield from ((f"{side}{side} {word}", 0.4) for word in said[_NEAR:])
    yield from ((f"{side} {one} {other}", 0.7) for one, other in pairwise(said[:_NEAR]))


def _pieces(text: str) -> Iterator[_Piece]:
    """Words and marks as they stand, a size as one piece, each with its sentence's number."""
    raw = list(_raw(text))
    sentence = 0
    at = 0
    while at < len(raw):
        start, end, said, kind = raw[at]
        last = at
        if kind == "figure":
            last, said = _size(raw, at)
            end = raw[last][1]
        yield _Piece(start, end, said, kind == "figure" and said != "#", sentence)
        numbers_row = at > 0 and raw[at - 1][3] == "figure" and (at < 2 or raw[at - 2][3] == "line")
        if kind == "line" or (kind == "mark" and said in _ENDS and not numbers_row):
            sentence += 1
        at = last + 1


def _size(raw: Sequence[tuple[int, int, str, Kind]], at: int) -> tuple[int, str]:
    """Where a size ends that begins with a figure, and what is kept of it."""
    last, ahead, figures, named = at, at + 1, 1, False
    while ahead < len(raw) and ahead - last <= _APART:
        _, _, said, kind = raw[ahead]
        if kind == "figure":
            last, figures = ahead, figures + 1
        elif kind == "part" and said in _NAMES:
            last, named = ahead, True
        elif kind != "part":
            break
        ahead += 1
    return last, "#S" if figures > 1 else "#U" if named else "#"


def _raw(text: str) -> Iterator[tuple[int, int, str, Kind]]:
    begin = 0
    for found in _PIECE.finditer(text):
        kind = found.lastgroup
        said = found.group().casefold()
        if kind == "figure":
            yield found.start(), found.end(), "#", "figure"
        elif kind == "line":
            wrapped = said.count("\n") == 1 and found.start() - begin > _WRAPPED
            begin = found.end()
            if not wrapped:
                yield found.start(), found.end(), LINE if said.count("\n") == 1 else BLANK, "line"
        elif said in _NAMES or said in _JOINTS:
            yield found.start(), found.end(), said, "part"
        else:
            yield found.start(), found.end(), said[:_LETTERS], "word" if kind == "word" else "mark"
