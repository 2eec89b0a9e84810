"""Word patterns that are compiled when first used: start-up must not pay for mail not yet seen.

Where there is much mail, patterns are not searched that a text has not the letters for; to find
out which letters those are is worth it only then.
"""

from __future__ import annotations

import re
import sys
from collections.abc import Iterator, Sequence
from functools import cached_property

from .late_pattern import for_text
from .letters_needed import letters_of, needs_of

WORTH_IT = 30
"""Searches after which it pays to know which letters a pattern needs."""


class Late:
    """Any of several patterns, without regard to case; matches as the one pattern they form.

    Where there are several, none of them has a group that is asked for by its number.
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
    def _each(self) -> list[_One]:
        return [_One(pattern, self._flags) for pattern in self._patterns]

    @cached_property
    def _nowhere_without(self) -> frozenset[str] | None:
        """Letters of which some are in every text with a match; None where that is not certain."""
        needs = [one.needs for one in self._each]
        known = [one.rarest for one in needs if one is not None]
        return frozenset().union(*known) if len(known) == len(needs) else None

    def search(self, text: str, start: int = 0, end: int = sys.maxsize) -> re.Match[str] | None:
        """As ``re.Pattern.search``: the leftmost, of several there the first pattern's."""
        if self._asked < WORTH_IT:
            self._asked += 1
            return for_text(self._patterns, self._flags, text).search(text, start, end)
        letters, some_of = letters_of(text), self._nowhere_without
        if some_of is not None and some_of.isdisjoint(letters):
            return None
        found: re.Match[str] | None = None
        for one in self._each:
            if one.needs is None or one.needs.met_by(letters):
                match = one.compiled.search(text, start, end)
                if match is not None and (found is None or match.start() < found.start()):
                    found = match
        return found

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
            return for_text(self._patterns, self._flags, text).finditer(text)
        letters, some_of = letters_of(text), self._nowhere_without
        if some_of is not None and some_of.isdisjoint(letters):
            return iter(())
        if any(one.needs is None or one.needs.met_by(letters) for one in self._each):
            return self._compiled.finditer(text)
        return iter(())


class _One:
    """One of the patterns, and what a text has to hold for it."""

    def __init__(self, pattern: str, flags: re.RegexFlag) -> None:
        self._pattern = pattern
        self._flags = flags
        self.needs = needs_of(pattern, flags)

    @cached_property
    def compiled(self) -> re.Pattern[str]:
        return re.compile(self._pattern, self._flags)
