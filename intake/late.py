"""Word patterns that are compiled when first used: start-up must not pay for mail not yet seen.

Nor is a pattern searched, or compiled, that a text has not the letters for.
"""

from __future__ import annotations

import re
import sys
from collections.abc import Iterator, Sequence
from functools import cached_property

from .letters_needed import letters_of, needs_of


class Late:
    """Any of several patterns, without regard to case; matches as the one pattern they form.

    Where there are several, none of them has a group that is asked for by its number.
    """

    def __init__(
        self, patterns: Sequence[str], flags: re.RegexFlag = re.IGNORECASE | re.MULTILINE
    ) -> None:
        self._patterns = patterns
        self._flags = flags

    @cached_property
    def _compiled(self) -> re.Pattern[str]:
        return re.compile("|".join(f"(?:{one})" for one in self._patterns), self._flags)

    @cached_property
    def _each(self) -> list[_One]:
        return [_One(pattern, self._flags) for pattern in self._patterns]

    def search(self, text: str, start: int = 0, end: int = sys.maxsize) -> re.Match[str] | None:
        """As ``re.Pattern.search``: the leftmost, of several there the first pattern's."""
        letters = letters_of(text)
        found: re.Match[str] | None = None
        for one in self._each:
            if one.needs is None or one.needs.met_by(letters):
                match = one.compiled.search(text, start, end)
                if match is not None and (found is None or match.start() < found.start()):
                    found = match
        return found

    def match(self, text: str, start: int = 0, end: int = sys.maxsize) -> re.Match[str] | None:
        """As ``re.Pattern.match``."""
        return self._compiled.match(text, start, end)

    def finditer(self, text: str) -> Iterator[re.Match[str]]:
        """As ``re.Pattern.finditer``."""
        letters = letters_of(text)
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
