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
from .pattern_branches import Branch, Index

WORTH_IT = 30
"""Searches after which it pays to know which letters a pattern needs."""


def much_mail_comes() -> None:
    """Say that there is so much to read that it pays to know at once what each pattern needs."""
    global WORTH_IT
    WORTH_IT = 0


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
        index = self._index  # known before the text is looked up for it
        looked = seen(text)
        if index.plain and index not in looked.found:
            return None
        branches = index.to_search(looked)
        return _first(branches, looked, text, start) if branches else None

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
        index = self._index  # known before the text is looked up for it
        looked = seen(text)
        branches = index.to_search(looked)
        match = _first(branches, looked, text, 0)
        while match is not None:
            yield match
            match = _first(branches, looked, text, match.end())

    def index_if_known(self) -> Index | None:
        """What its branches need of a text; None before it is worth finding out."""
        return self._index if self._asked >= WORTH_IT else None


def _first(branches: Sequence[Branch], looked: Seen, text: str, start: int) -> re.Match[str] | None:
    """The leftmost match of any of the branches; of several there, the first one's."""
    found: re.Match[str] | None = None
    for branch in branches:
        match = branch.search(looked, text, start)
        if match is not None and (found is None or match.start() < found.start()):
            found = match
    return found
