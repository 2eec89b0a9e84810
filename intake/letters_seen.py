"""A text as word patterns see it: its letters made even, and which of them stand together.

Of all patterns a text has the letters for a few dozen. To ask each of hundreds for itself costs
more than to search those; so the letters of all are kept in one table, and the text is looked up in
it once. What is looked at next is mostly a piece of the same message, a sentence of it or a line:
such a piece has no letters but those of the whole, and is not looked up again.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterable, Mapping, Sequence
from functools import lru_cache
from typing import TYPE_CHECKING

from .letters_needed import Letters, evened

if TYPE_CHECKING:
    from .pattern_branches import Branch, Index

GRAM = 4
"""Letters looked up together."""
_MOST_PLACES = 40
_LEARNS_FROM = 300
_MOST_WHOLES = 3
"""Texts lately looked up of which the next may be a piece: the message, its body, its sender."""


class _Table:
    """What the branches of every pattern need, by a few of the letters."""

    def __init__(self) -> None:
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


class _Whole:
    """A text that has been looked up in the table."""

    __slots__ = ("flat", "found", "grams")

    def __init__(self, flat: str) -> None:
        # Blanks at both ends: there is more to be found in it than in any piece.
        self.flat = flat = f" {flat.strip(' ')} "
        self.grams = frozenset(grams_of(flat))
        if TABLE.to_learn_from:
            TABLE.learn(self.grams)
        self.found: dict[Index, dict[Branch, list[str]]] = {}
        """The branches of which letters in the table stand in the text, by their pattern."""
        found, by_gram = self.found, TABLE.by_gram
        for gram in by_gram.keys() & self.grams:
            for letters, index, branch in by_gram[gram]:
                if letters in flat:
                    if index not in found:
                        found[index] = {branch: [letters]}
                    elif branch in found[index]:
                        found[index][branch].append(letters)
                    else:
                        found[index][branch] = [letters]


_wholes: tuple[_Whole, ...] = ()


def _whole_of(flat: str) -> _Whole:
    """A text looked up in the table lately that has all of this one, or this one looked up."""
    global _wholes
    for whole in _wholes:
        if flat in whole.flat:
            return whole
    whole = _Whole(flat)
    _wholes = (whole, *_wholes[: _MOST_WHOLES - 1])
    return whole


class Seen:
    """A text as the patterns see it."""

    __slots__ = ("_is_piece", "_whole", "even", "flat", "found")

    def __init__(self, text: str) -> None:
        self.even = evened(text)
        self.flat = flattened(self.even)
        self._whole = _whole_of(self.flat)
        self._is_piece = len(self.flat) + 2 < len(self._whole.flat)
        self.found: Mapping[Index, Mapping[Branch, Sequence[str]]] = self._whole.found
        """The branches of which letters in the table may stand in the text, by their pattern."""

    def branches(self, index: Index) -> set[Branch]:
        """The branches of a pattern of which letters in the table do stand in the text."""
        found = self.found.get(index)
        if found is None:
            return set()
        if not self._is_piece:
            return set(found)
        flat = self.flat
        there = set()
        for branch, needs in found.items():
            for letters in needs:
                if letters in flat:
                    there.add(branch)
                    break
        return there

    def places(self, starts: Starts, since: int) -> list[int] | None:
        """Where, from ``since`` on, any of ``starts`` stands; None where that is in many places."""
        here = starts.short
        for gram in starts.grams & self._whole.grams:
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
        self.short: list[str] = []
        self.by_gram: dict[str, list[str]] = {}
        for one in starts:
            gram = one[:GRAM]
            if len(gram) < GRAM or "  " in gram:
                self.short.append(one)
            else:
                self.by_gram.setdefault(gram, []).append(one)
        self.grams = frozenset(self.by_gram)


def flattened(even: str) -> str:
    """An evened text with one blank for several: what stands in one stands in the other, too."""
    if "  " not in even:
        return even
    inner = " ".join(even.split())
    return f"{' ' * even.startswith(' ')}{inner}{' ' * (even.endswith(' ') and bool(inner))}"


def grams_of(flat: str) -> list[str]:
    """Every ``GRAM`` letters that stand together."""
    return [flat[at : at + GRAM] for at in range(len(flat) - GRAM + 1)]


@lru_cache(maxsize=256)
def seen(text: str) -> Seen:
    """A text as the patterns see it, the last few remembered."""
    return Seen(text)


def look_at_first(text: str) -> None:
    """Look up the whole of what is about to be looked at in pieces."""
    if TABLE.by_gram:
        seen(text)


def forget() -> None:
    """What was looked up before the table had all that it has now is looked up again."""
    global _wholes
    _wholes = ()
    seen.cache_clear()
