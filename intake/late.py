"""Word patterns that are compiled when first used: start-up must not pay for mail not yet seen."""

from __future__ import annotations

import re
import sys
from collections.abc import Iterator, Sequence
from functools import cached_property


class Late:
    """Any of several patterns, without regard to case; matches as the one pattern they form."""

    def __init__(
        self, patterns: Sequence[str], flags: re.RegexFlag = re.IGNORECASE | re.MULTILINE
    ) -> None:
        self._patterns = patterns
        self._flags = flags

    @cached_property
    def _compiled(self) -> re.Pattern[str]:
        return re.compile("|".join(f"(?:{one})" for one in self._patterns), self._flags)

    def search(self, text: str, start: int = 0, end: int = sys.maxsize) -> re.Match[str] | None:
        """As ``re.Pattern.search``."""
        return self._compiled.search(text, start, end)

    def match(self, text: str, start: int = 0, end: int = sys.maxsize) -> re.Match[str] | None:
        """As ``re.Pattern.match``."""
        return self._compiled.match(text, start, end)

    def finditer(self, text: str) -> Iterator[re.Match[str]]:
        """As ``re.Pattern.finditer``."""
        return self._compiled.finditer(text)
