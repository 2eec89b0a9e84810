"""Sizes of a list that a sentence leaves out by pointing to them, without a figure of theirs: 'the
rear one is on hold', 'we found a mandrel in the shop for the second', 'the machine shop already
made us one for the frame tube'.

A place, a rank or what the line calls its tube must point to one size, and nothing in the sentence
may ask for it all the same.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from ...late_pattern import late_pattern
from ..sizes.groups import Group, Slot
from ..text.figures import Layout
from .left_by_pointer_words import (
    AHEAD,
    ALL_THE_SAME,
    BEHIND,
    GENERIC,
    RANKS,
    SIZE_NOUNS,
    THEIR_TOOL,
)
from .named_later import ASKS_FOR_ALL
from .picked import line_of
from .place_names import places
from .place_spoken import plainly_placed

_MOST = 12
"""Of longer lists nobody says in prose which is left out, but by its number."""
_LATTER = "latter"
"""'The former' may be a die."""
_PAIR = 2
_OTHERS = late_pattern(
    r"\b(?:others?|remaining|rest|übrigen|anderen|restlichen|autres|restant[es]{0,2}|otr[oa]s|demás"
    r"|restantes|altr[ie]|restanti|andere|overige)\b"
)
"""'Can one mandrel cover both of the other two?': all of those that are left."""
_ENDS = re.compile(r"(?<=[.!?;])\s|\n")
_STOP = re.compile(r"[.!?;](?=\s)")
_ORDER: tuple[Slot, ...] = ("od", "clr", "wall")


def left_by_pointer(layout: Layout, groups: Sequence[Group]) -> list[int]:
    """Indexes of the sizes that no sentence leaves out by pointing; all where that isn't plain."""
    everything = list(range(len(groups)))
    if not 1 < len(groups) <= _MOST or not all(group.slots for group in groups):
        return everything
    spans, called = _spans(layout, groups)
    sentences = _sentences(layout, spans)
    if any(ASKS_FOR_ALL.search(words) and not _OTHERS.search(words) for words in sentences):
        return everything
    gone: set[int] = set()
    for words in sentences:
        if ALL_THE_SAME.search(words):
            continue
        for pattern in (BEHIND, AHEAD, THEIR_TOOL):
            for match in pattern.finditer(words):
                gone |= _pointed(match["name"], groups, called)
    kept = [index for index in everything if index not in gone]
    return kept or everything


def _sentences(layout: Layout, spans: Sequence[tuple[int, int]]) -> list[str]:
    """The text without the words on its sizes, cut where sentences and lines end."""
    text = layout.text
    for begin, end in spans:
        text = text[:begin] + "\n" * (end - begin) + text[end:]
    found = (" ".join(words.split()).casefold() for words in _ENDS.split(text))
    return [plainly_placed(words.replace("’", "'")) for words in found if words]


def _spans(layout: Layout, groups: Sequence[Group]) -> tuple[list[tuple[int, int]], list[set[str]]]:
    """Where the words on each size stand, and what its line calls it: no words where two sizes
    stand on one line."""
    lines = [line_of(layout, group) for group in groups]
    if len({line.start for line in lines}) < len(lines):
        figures = (fs[0] for group in groups for fs in group.slots.values())
        return [(figure.start, figure.end) for figure in figures], [set() for _ in groups]
    spans: list[tuple[int, int]] = []
    called: list[set[str]] = []
    for line, group in zip(lines, groups, strict=True):
        figures = (fs[0] for slot, fs in group.slots.items() if slot not in group.shared)
        last = max((f.end for f in figures if f.end <= line.end), default=line.start)
        stop = _STOP.search(layout.text, last, line.end)
        spans.append((line.start, stop.start() if stop is not None else line.end))
        called.append(_words(layout.text[slice(*spans[-1])]))
    return spans, called


def _words(said: str) -> set[str]:
    words = ("".join(c for c in word if c.isalpha()) for word in said.casefold().split())
    return {word.removesuffix("s") for word in words if len(word) > 1} - GENERIC


def _pointed(name: str, groups: Sequence[Group], called: Sequence[set[str]]) -> set[int]:
    """The one size that a place, a rank or a name points to."""
    words = {*name.split()}
    if _LATTER in words:
        return {1} if len(groups) == _PAIR else set()
    first, *more = name.split()
    if not {*more} - SIZE_NOUNS:  # "my last mail" is no size
        found = places(None, first, [str(number) for number in range(len(groups))])
        if found:
            return set(found)
        rank = RANKS.get(first)
        if rank is not None:
            return _ranked(groups, least=rank)
    own = _words(name)
    alike = [index for index, words in enumerate(called) if own and own <= words]
    return set(alike) if len(alike) == 1 else set()


def _ranked(groups: Sequence[Group], *, least: bool) -> set[int]:
    """The biggest or smallest, by what alone differs, or by the OD."""
    for slot in _ORDER:
        figures = [group.slots[slot][0] for group in groups if slot in group.slots]
        values = [figure.number.value for figure in figures]
        if len(set(values)) == len(groups) and len({figure.unit for figure in figures}) == 1:
            return {values.index(min(values) if least else max(values))}
    return set()
