"""Counts that name the line they are for: '- the frame is 1.5 x .095 ... One for the frame'."""

from __future__ import annotations

import re
from collections.abc import Sequence

_WORD = re.compile(r"[^\W\d_]{4,}")
_STEM = 5
"""So many letters alike make two words one: 'brace' and 'braces', 'scroll' and 'scrollwork'."""
_COMMON = frozenset(
    "mandrel mandrels wall tube tubing pipe radius with that have want wants need needs each same "
    "please dorne biegedorn rohr radius wand mandrin mandrins rayon tubo mandril radio".split()
)


def counts_by_name(
    text: str, counts: Sequence[tuple[int, int, int | None]], places: Sequence[int]
) -> dict[int, int | None]:
    """The count of each size by a word that only its line has; nothing unless all have one.

    ``counts`` are (start, end, count) in ``text``, ``places`` where each size stands.
    """
    if len(counts) != len(places):
        return {}
    lines = [_line(text, place) for place in places]
    if len(set(lines)) < len(lines):
        return {}
    stems = [{_stem(word) for word in _words(line)} for line in lines]
    found: dict[int, int | None] = {}
    for number, (start, end, count) in enumerate(counts):
        before = counts[number - 1][1] if number else max(text.rfind("\n", 0, start), 0)
        after = counts[number + 1][0] if number + 1 < len(counts) else _sentence_end(text, end)
        behind = {_stem(word) for word in _words(text[end : _clause_end(text, end, after)])}
        ahead = {_stem(word) for word in _words(text[max(before, _clause(text, start)) : start])}
        meant = [at for at, own in enumerate(stems) if own & (behind | ahead)]
        if len(meant) != 1 or meant[0] in found:
            return {}
        found[meant[0]] = count
    return found


def _line(text: str, place: int) -> str:
    end = text.find("\n", place)
    return text[text.rfind("\n", 0, place) + 1 : end if end >= 0 else len(text)]


def _words(text: str) -> list[str]:
    return [word for word in _WORD.findall(text.casefold()) if word not in _COMMON]


def _stem(word: str) -> str:
    return word[:_STEM]


def _sentence_end(text: str, at: int) -> int:
    ends = [end for mark in (".", "\n") if (end := text.find(mark, at)) >= 0]
    return min(ends, default=len(text))


def _clause_end(text: str, at: int, most: int) -> int:
    ends = [end for mark in (",", ";", ".", "\n") if (end := text.find(mark, at, most)) >= 0]
    return min(ends, default=most)


def _clause(text: str, at: int) -> int:
    """Where the clause before a place begins."""
    return max(text.rfind(mark, 0, at) + 1 for mark in (",", ";", ".", "\n"))
