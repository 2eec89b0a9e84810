"""Spaces that say nothing, taken out of a message's words: two behind a sentence, those at a line's
end. Columns that spaces set apart stay as they are.
"""

from __future__ import annotations

import re

_RUN = re.compile(r"(?<=\S) {2,}(?=\S)")
_BEHIND_SENTENCE = re.compile(r"(?<=[^\W\d_]{2}[.!?]|\d\d[.!?]) {2,3}(?=[^\W\d_\s]|[\d\"'(])")
_SHORTEST = 6
"""Characters of a sentence, at least: less numbers a line."""
_DELIMITER = "--"
"""A signature's first line is '-- ' (RFC 3676 4.3): its space counts."""


def even_spaces(text: str) -> str:
    """The words with one space behind each sentence, and none at the ends of their lines."""
    if "  " not in text and " \n" not in text and not text.endswith(" "):
        return text
    return "\n".join(map(_even, text.split("\n")))


def _even(line: str) -> str:
    bare = line.rstrip(" ")
    if bare.endswith(_DELIMITER):
        bare = line
    runs = sum(1 for _ in _RUN.finditer(bare.strip()))
    ends = [match for match in _BEHIND_SENTENCE.finditer(bare) if match.start() >= _SHORTEST]
    if not ends or len(ends) < runs:
        return bare  # columns
    return _BEHIND_SENTENCE.sub(" ", bare)
