"""The words that settled something, as they are shown with the reason for it."""

from __future__ import annotations

import re

_MOST = 60


def said_words(match: re.Match[str]) -> str:
    """The words that were found, whole, on one line, 60 characters at most.

    Many a pattern ends within a word ('mandr'), so that it holds in several languages.
    """
    text, (start, end) = match.string, match.span()
    while 0 < start < end and text[start].isalnum() and text[start - 1].isalnum():
        start -= 1
    while start < end < len(text) and text[end - 1].isalnum() and text[end].isalnum():
        end += 1
    said = " ".join(text[start:end].split())
    if len(said) <= _MOST:
        return said
    whole, _, _ = said[:_MOST].rpartition(" ")
    return f"{whole or said[: _MOST - 2]} …"
