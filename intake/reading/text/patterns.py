"""Lists of words made into patterns, so that a notation is added by adding a word to a list."""

from __future__ import annotations

import re

from ...late_pattern import late_pattern

_BAR = late_pattern(r"\s+\|\s+")


def any_of(*lists: str) -> str:
    """A pattern for any phrase of the lists, which are written with bars: 'no wait | oops'.

    A phrase may itself be a small pattern ('gleiche[rnms]?'); only a bar between spaces parts two.
    Casefolded, and in Switzerland, 'größer' is 'grösser': a sharp s stands for both.
    """
    lists = tuple(words.replace("ß", "(?:ß|ss)") for words in lists)
    phrases = [phrase for words in lists for phrase in _BAR.split(words.strip())]
    return f"(?:{'|'.join(phrases)})"


def whole_words(*lists: str) -> re.Pattern[str]:
    """Any phrase of the lists between word boundaries. The text searched is casefolded."""
    return late_pattern(rf"\b{any_of(*lists)}\b")


def word_set(*lists: str) -> frozenset[str]:
    """Single words parted by spaces."""
    return frozenset(word for words in lists for word in words.split())
