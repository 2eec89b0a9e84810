"""What a question must have in it to get an answer: the 'must' lines of answer files.

    must = ["wiper + need / skip / what does but not grind / price"]

Between '+' stand groups, what the question is about first; of each group one has to be met. '/'
parts what does as well; several words in one place stand in this order, with nothing but small
words, asides and figures between. Behind 'but not' stands what shows that something else is asked.
The name of a row in ``words_alike_*.py`` stands for all in its row, in all languages; '#num',
'#mm', '#in', '#deg' and '#pct' stand for figures, '1d' and 'nd' for D of bend.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property, lru_cache

from .heard import Heard, Way, way

NOT = " but not "


@dataclass(frozen=True)
class Line:
    """One 'must' line, read."""

    text: str
    groups: tuple[tuple[Way, ...], ...]
    but_not: tuple[Way, ...]

    def met(self, heard: Heard) -> bool:
        """Whether each group has something in the question, and nothing speaks against."""
        if any(one.isdisjoint(heard.present) for one in self._last_words):
            return False
        return all(any(map(heard.has, group)) for group in self.groups) and not self._against(heard)

    def about(self, heard: Heard) -> bool:
        """Whether the first group has, what the question is about, and nothing speaks against."""
        return any(map(heard.has, self.groups[0])) and not self._against(heard)

    def mass(self, heard: Heard, weights: Mapping[str, float]) -> float:
        """How much the words tell by which it is met: the weightiest way of each group."""
        return sum(
            max(
                sum(max((weights.get(one, 0.0) for one in word), default=0.0) for word in way_)
                for way_ in group
                if heard.has(way_)
            )
            for group in self.groups
        )

    @cached_property
    def concepts(self) -> frozenset[str]:
        """All readings that its groups name."""
        return frozenset().union(*(word for group in self.groups for way in group for word in way))

    @cached_property
    def needs(self) -> frozenset[str]:
        """A few words of which one must be present for it to be met."""
        return min(self._last_words, key=len)

    @cached_property
    def _last_words(self) -> tuple[frozenset[str], ...]:
        """By group, the last words of its ways: where none is present, it can't be met."""
        return tuple(frozenset().union(*(way[-1] for way in group)) for group in self.groups)

    def _against(self, heard: Heard) -> bool:
        return any(map(heard.has, self.but_not))


@lru_cache(maxsize=4096)
def line(text: str) -> Line:
    """One 'must' line. Raises ValueError with one clause where a group is empty."""
    asked, _, others = f" {' '.join(text.split())}".partition(NOT)
    groups = tuple(_ways(group) for group in asked.split("+"))
    if not all(groups):
        raise ValueError("has a group without a word")
    return Line(" ".join(text.split()), groups, _ways(others))


def _ways(group: str) -> tuple[Way, ...]:
    return tuple(found for one in group.split("/") if (found := way(one)))
