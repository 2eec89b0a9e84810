"""Word patterns that are compiled when first used: start-up must not pay for mail not yet seen.

Where there is much mail, only those branches of a pattern are searched that a text has the letters
for; to find out which letters those are is worth it only then.
"""

from __future__ import annotations

import re
import sys
from collections.abc import Iterator, Sequence
from functools import cached_property

from .late_pattern import LONG, for_text
from .letters_seen import Seen, seen
from .pattern_branches import Index

WORTH_IT = 30
"""Searches after which it pays to know which letters a pattern needs."""


class Late:
    """Any of several patterns, without regard to case; matches as the one pattern they form.

    Where there are several, none of them has a group that is asked for by its number. None is ever
    found empty.
    """

    def __init__(
        self, patterns: Sequence[str], flags: re.RegexFlag = re.IGNORECASE | re.MULTILINE
    ) -> None:
        self._patterns = patterns
        self._flags = flags
        self._asked = 0

    @cached_property
    def _compiled(self) -> re.Pattern[str]:
        return re.compile("|".join(f"(?:{one})" for one in self._patterns), self._flags)

    @cached_property
    def _index(self) -> Index:
        return Index(self._patterns, self._flags)

    def search(self, text: str, start: int = 0, end: int = sys.maxsize) -> re.Match[str] | None:
        """As ``re.Pattern.search``: the leftmost, of several there the first pattern's."""
        if self._asked < WORTH_IT:
            self._asked += 1
            return for_text(self._patterns, self._flags, text).search(text, start, end)
        if end < len(text) or len(text) > LONG:
            return self._compiled.search(text, start, end)
        return self._next(seen(text), text, start)

    def match(self, text: str, start: int = 0, end: int = sys.maxsize) -> re.Match[str] | None:
        """As ``re.Pattern.match``."""
        if self._asked < WORTH_IT:
            self._asked += 1
            return for_text(self._patterns, self._flags, text).match(text, start, end)
        return self._compiled.match(text, start, end)

    def finditer(self, text: str) -> Iterator[re.Match[str]]:
        """As ``re.Pattern.finditer``."""
        if self._asked < WORTH_IT:
            self._asked += 1
            yield from for_text(self._patterns, self._flags, text).finditer(text)
            return
        if len(text) > LONG:
            yield from self._compiled.finditer(text)
            return
        looked = seen(text)
        match = self._next(looked, text, 0)
        while match is not None:
            yield match
            match = self._next(looked, text, match.end())

    def stands_nowhere_in(self, looked: Seen) -> bool:
        """Whether it is certain, before any search, that nothing is found."""
        return self._asked >= WORTH_IT and not self._index.to_search(looked)

    def _next(self, looked: Seen, text: str, start: int) -> re.Match[str] | None:
        found: re.Match[str] | None = None
        for branch in self._index.to_search(looked):
            match = branch.search(looked, text, start)
            if match is not None and (found is None or match.start() < found.start()):
                found = match
        return found
