"""Patterns that end with a text's end, sought only so far back as they reach.

"What stands right before a figure" is asked of all that stands before it: a pattern of thirty
letters need not be tried at each letter of a sentence of thousands.
"""

from __future__ import annotations

import importlib
import re
import sys
from typing import Any

_LONG_ENOUGH = 200
"""Characters from which on it pays not to search all of a text."""
_LETTERS, _SIGNS = 60, 40
"""Letters and figures, other signs in a row, that ``\\w*``, ``\\W*`` are taken to match at the most
where no more stand together."""
_MORE = re.compile(rf"\w{{{_LETTERS + 1}}}|\W{{{_SIGNS + 1}}}")
# A repeated set without an upper bound, of letters and figures alone or of none.
_RUN = re.compile(r"(?P<set>\\(?:(?P<letters>[wd])|[sW])|\[(?:\\s|[ :=.,;#-])+\])(?P<least>[*+])")

# How a pattern is built, as Python's own ``re`` reads it; documented nowhere, steady since 2.0.
_parser: Any = importlib.import_module("re._parser")


class Ending:
    """A compiled pattern that ends with "$"."""

    __slots__ = ("_least", "_reach", "_whole")

    def __init__(self, whole: re.Pattern[str]) -> None:
        self._whole = whole
        self._reach: int | None = None
        self._least = _LONG_ENOUGH

    def search(self, text: str, start: int = 0, end: int = sys.maxsize) -> re.Match[str] | None:
        """As ``re.Pattern.search``."""
        if len(text) > self._least and end >= len(text):
            if self._reach is None:
                self._reach = reach_from_end(self._whole.pattern, self._whole.flags)
                self._least = max(_LONG_ENOUGH, self._reach)
            first = len(text) - self._reach
            if first > start and not _MORE.search(text, first):
                start = first
        return self._whole.search(text, start, end)


def reach_from_end(pattern: str, flags: int) -> int:
    """The most characters from a text's end on that a match takes where ``_MORE`` is nowhere among
    them; ``sys.maxsize`` where it need not end there, or may be of any length."""
    if r"\\" in pattern:
        return sys.maxsize  # a backslash of its own: "\\s" might be no set
    parsed = _parser.parse(_RUN.sub(_bounded, pattern), flags)
    if not _ends(parsed) or parsed.state.flags & re.MULTILINE:
        return sys.maxsize
    most = int(parsed.getwidth()[1])
    # "$" stands before a last line's end, too; and one more of a run shows that it goes on.
    return most + 2 if most < _parser.MAXREPEAT else sys.maxsize


def _bounded(run: re.Match[str]) -> str:
    most = _LETTERS if run["letters"] else _SIGNS
    return f"{run['set']}{{{int(run['least'] == '+')},{most}}}"


def _ends(parsed: Any) -> bool:
    """Whether a pattern, or each of its branches, ends with "$"."""
    if not parsed:
        return False
    name, value = parsed[-1]
    if str(name) == "BRANCH":
        return all(map(_ends, value[1]))
    return str(name) == "AT" and str(value) == "AT_END"
