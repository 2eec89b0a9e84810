"""A text as word patterns see it: its letters made even, and which of them stand together.

Of all patterns a text has the letters for a few dozen. To ask each of hundreds for itself costs
more than to search those; so the letters of all are kept in one table, and the text is looked up in
it once.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterable
from functools import lru_cache
from typing import TYPE_CHECKING

from .letters_needed import Letters, evened

if TYPE_CHECKING:
    from .pattern_branches import Branch, Index

_NONE: set[Branch] = set()

GRAM = 4
"""Letters looked up together."""
_MOST_PLACES = 40
_LEARNS_FROM = 1000


class _Table:
    """What the branches of every pattern need, by a few of the letters."""

    def __init__(self) -> None:
        self.version = 0
        self.by_gram: dict[str, list[tuple[str, Index, Branch]]] = defaultdict(list)
        self.to_learn_from = _LEARNS_FROM
        """Texts still to be counted."""
        self._common: Counter[str] = Counter()

    def add(self, letters: str, index: Index, branch: Branch) -> None:
        """Under the letters that are the most seldom.

        At first that is what the fewest others need, then what stands in the fewest texts.
        """
        grams = grams_of(letters)
        if self.to_learn_from:
            self._common.update(grams)
        rarest = min(grams, key=self._common.__getitem__)
        self.by_gram[rarest].append((letters, index, branch))
        self.version += 1

    def learn(self, grams: Iterable[str]) -> None:
        """Count what stands in a text; after the last one all is put in its best place."""
        self._common.update(grams)
        self.to_learn_from -= 1
        if not self.to_learn_from:
            entries = [one for those in self.by_gram.values() for one in those]
            self.by_gram.clear()
            for entry in entries:
                self.add(*entry)


TABLE = _Table()


class Seen:
    """A text as the patterns see it."""

    __slots__ = ("_found", "_version", "even", "grams")

    def __init__(self, text: str) -> None:
        self.even = evened(text)
        self.grams = frozenset(grams_of(self.even))
        self._version = -1
        self._found: dict[Index, set[Branch]] = {}

    def branches(self, index: Index) -> set[Branch]:
        """The branches of a pattern of which letters in the table stand in the text."""
        if self._version != TABLE.version:
            self._look()
        return self._found.get(index, _NONE)

    def _look(self) -> None:
        if TABLE.to_learn_from:
            TABLE.learn(self.grams)
        found: dict[Index, set[Branch]] = {}
        even, by_gram = self.even, TABLE.by_gram
        for gram in by_gram.keys() & self.grams:
            for letters, index, branch in by_gram[gram]:
                if letters in even:
                    if index in found:
                        found[index].add(branch)
                    else:
                        found[index] = {branch}
        self._found = found
        self._version = TABLE.version

    def places(self, starts: Starts, since: int) -> list[int] | None:
        """Where, from ``since`` on, any of ``starts`` stands; None where that is in many places."""
        here = starts.short
        for gram in starts.grams & self.grams:
            here = here + starts.by_gram[gram]
        found: list[int] = []
        for start in here:
            at = self.even.find(start, since)
            while at >= 0:
                found.append(at)
                if len(found) > _MOST_PLACES:
                    return None
                at = self.even.find(start, at + 1)
        found.sort()
        return found


class Starts:
    """What the matches of a pattern begin with, by the first letters of it."""

    __slots__ = ("by_gram", "grams", "short")

    def __init__(self, starts: Letters) -> None:
        self.short = [one for one in starts if len(one) < GRAM]
        self.by_gram: dict[str, list[str]] = {}
        for one in starts:
            if len(one) >= GRAM:
                self.by_gram.setdefault(one[:GRAM], []).append(one)
        self.grams = frozenset(self.by_gram)


def grams_of(even: str) -> list[str]:
    """Every ``GRAM`` letters that stand together."""
    return [even[at : at + GRAM] for at in range(len(even) - GRAM + 1)]


@lru_cache(maxsize=256)
def seen(text: str) -> Seen:
    """A text as the patterns see it, the last few remembered."""
    return Seen(text)
