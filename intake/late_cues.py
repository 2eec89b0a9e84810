"""Many word patterns of which a text has few or none: all are asked at once which may stand."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING

from .letters_seen import seen

if TYPE_CHECKING:
    from .late import Late
    from .pattern_branches import Index


class Cues:
    """Word patterns, each with its weight."""

    def __init__(self, cues: Iterable[tuple[int, Late]]) -> None:
        self._cues = list(cues)
        self._unknown = set(range(len(self._cues)))
        """Those of which it is not known yet what they need."""
        self._always: set[int] = set()
        """Those that need what is not in the table."""
        self._by_index: dict[Index, int] = {}

    def that_may_stand(self, text: str) -> Sequence[tuple[int, tuple[int, Late]]]:
        """The cues that may be found in a text, in their order, each with its number."""
        if self._unknown:
            self._learn()
        found = [self._by_index[one] for one in seen(text).found.keys() & self._by_index.keys()]
        return [(at, self._cues[at]) for at in sorted({*found, *self._always, *self._unknown})]

    def _learn(self) -> None:
        for at in sorted(self._unknown):
            index = self._cues[at][1].index_if_known()
            if index is None:
                continue
            self._unknown.discard(at)
            if index.plain:
                self._by_index[index] = at
            else:
                self._always.add(at)
