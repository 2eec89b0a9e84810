"""The alternatives of a word pattern, each searched only where its letters stand."""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Iterable, Sequence
from itertools import pairwise
from operator import attrgetter

from .letters_needed import Letters, needs_of, starts_of
from .letters_seen import GRAM, TABLE, Seen, Starts, flattened, forget

_SHORT = 500
"""Characters of a text that is searched sooner than it is found where a branch could begin."""


class Branch:
    """One of the alternatives of a pattern."""

    __slots__ = ("_compiled", "_flags", "_pattern", "_starts", "number")

    def __init__(self, number: int, pattern: str, flags: re.RegexFlag) -> None:
        self.number = number
        self._pattern = pattern
        self._flags = flags
        self._compiled: re.Pattern[str] | None = None
        self._starts: Starts | None = None

    def needs(self) -> Letters | None:
        """What a text must hold for it to be found there; None where nothing is certain."""
        return needs_of(self._pattern, self._flags)

    def search(self, looked: Seen, text: str, start: int) -> re.Match[str] | None:
        """As ``re.Pattern.search``."""
        if self._compiled is None:
            self._compiled = re.compile(self._pattern, self._flags)
            begun = starts_of(self._pattern, self._flags)
            self._starts = None if begun is None else Starts(begun)
        starts = self._starts if len(text) > _SHORT else None
        places = None if starts is None else looked.places(starts, start)
        if places is None:
            return self._compiled.search(text, start)
        for place in places:
            if (match := self._compiled.match(text, place)) is not None:
                return match
        return None


_number = attrgetter("number")


class Index:
    """Which branches of a pattern may be found in a text."""

    def __init__(self, patterns: Iterable[str], flags: re.RegexFlag) -> None:
        self._always: set[Branch] = set()
        self._by_short: dict[str, list[Branch]] = defaultdict(list)
        """By letters that are too few for the table."""
        pieces = [piece for pattern in patterns for piece in branches_of(pattern)]
        for number, piece in enumerate(pieces):
            branch = Branch(number, piece, flags)
            needs = branch.needs()
            if needs is None:
                self._always.add(branch)
                continue
            for letters in map(flattened, needs):
                if len(letters) < GRAM:
                    self._by_short[letters].append(branch)
                else:
                    TABLE.add(letters, self, branch)
        self.plain = not self._always and not self._by_short
        """Whether all that its branches need stands in the table."""

        forget()

    def to_search(self, looked: Seen) -> Sequence[Branch]:
        """The branches that may be found in a text, in their order."""
        found = looked.branches(self)
        if not self.plain:
            found |= self._always
            for short, branches in self._by_short.items():
                if short in looked.flat:
                    found.update(branches)
        return sorted(found, key=_number) if len(found) > 1 else tuple(found)


_PIECE = re.compile(
    r"(?P<escaped>\\.)|(?P<set>\[\^?\]?(?:\\.|[^\]\\])*\])|(?P<counts>\((?!\?)|\(\?P)|(?P<opens>\()"
    r"|(?P<closes>\))|(?P<bar>\|)",
    re.DOTALL,
)


def branches_of(pattern: str) -> list[str]:
    """A pattern cut at the bars outside all brackets; whole where it counts its groups."""
    cuts, depth = [-1], 0
    for piece in _PIECE.finditer(pattern):
        if piece.lastgroup == "counts":
            return [pattern]
        depth += (piece.lastgroup == "opens") - (piece.lastgroup == "closes")
        if piece.lastgroup == "bar" and not depth:
            cuts.append(piece.start())
    cuts.append(len(pattern))
    return [pattern[a + 1 : b] for a, b in pairwise(cuts)]
