"""Patterns that are compiled when first needed, and at first only what a text has the words for."""

from __future__ import annotations

import re
import sys
from collections.abc import Callable, Iterator, Sequence
from functools import lru_cache
from typing import Any, cast

from .ends import Ending
from .may_stand import that_may_stand, without_case

_NOWHERE = re.compile(r"(?!)")
_WORTH_IT = 10
"""Texts looked at for the words of a pattern; from then on it is cheaper to have all compiled."""

LONG = 20_000
"""Characters of a text in which looking for the words of a pattern costs more than compiling it."""


def late_pattern(pattern: str, flags: re.RegexFlag = re.NOFLAG) -> re.Pattern[str]:
    """As ``re.compile``, but compiled when first needed; a slip in it is told only then."""
    return cast("re.Pattern[str]", _Late(pattern, flags))


def for_text(patterns: Sequence[str], flags: re.RegexFlag, text: str) -> re.Pattern[str]:
    """A pattern that finds in this text what any of the patterns finds, quick to compile."""
    if len(text) > LONG:
        return _compiled("|".join(f"(?:{one})" for one in patterns), flags)
    looked = without_case(text)
    there = [one for pattern in patterns if (one := that_may_stand(pattern, looked)) is not None]
    return _compiled("|".join(f"(?:{one})" for one in there), flags) if there else _NOWHERE


@lru_cache(maxsize=2000)
def _compiled(pattern: str, flags: re.RegexFlag) -> re.Pattern[str]:
    return re.compile(pattern, flags)


class _Late:
    """What stands in for a compiled pattern, until that is there and its own methods take over."""

    def __init__(self, pattern: str, flags: re.RegexFlag) -> None:
        self._pattern = pattern
        self._flags = flags
        self._looked_at = _WORTH_IT if flags & re.VERBOSE else 0
        self._text: str | None = None
        self._for_text = _NOWHERE

    def __getattr__(self, name: str) -> Any:
        if name.startswith("__"):
            raise AttributeError(name)
        return getattr(self._whole(), name)

    def search(self, text: str, start: int = 0, end: int = sys.maxsize) -> re.Match[str] | None:
        return self._for(text).search(text, start, end)

    def match(self, text: str, start: int = 0, end: int = sys.maxsize) -> re.Match[str] | None:
        return self._for(text).match(text, start, end)

    def fullmatch(self, text: str, start: int = 0, end: int = sys.maxsize) -> re.Match[str] | None:
        return self._for(text).fullmatch(text, start, end)

    def finditer(
        self, text: str, start: int = 0, end: int = sys.maxsize
    ) -> Iterator[re.Match[str]]:
        return self._for(text).finditer(text, start, end)

    def sub(self, repl: str | Callable[[re.Match[str]], str], text: str, count: int = 0) -> str:
        there = self._for(text)
        return text if there is _NOWHERE else there.sub(repl, text, count)

    def _for(self, text: str) -> re.Pattern[str]:
        if text is self._text:
            return self._for_text
        if self._looked_at == _WORTH_IT:
            return self._whole()
        self._looked_at += 1
        self._text, self._for_text = text, for_text([self._pattern], self._flags, text)
        return self._for_text

    def _whole(self) -> re.Pattern[str]:
        whole = re.compile(self._pattern, self._flags)
        for name in ("search", "match", "fullmatch", "finditer", "findall", "sub", "split"):
            setattr(self, name, getattr(whole, name))
        if self._pattern.endswith("$"):
            self.__dict__["search"] = Ending(whole).search
        return whole
