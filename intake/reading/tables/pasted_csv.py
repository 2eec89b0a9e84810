"""Rows of comma-separated values pasted into a message: their commas become tabs.

Else '2,0.083,6' would be read as 2.0, and 'OD, wall, CLR' above '2, .083, 6' as a list of three.
"""

from __future__ import annotations

import re

from ..text.cue_phrases import cue_phrase
from ..text.cues import WORD
from ..text.plain import Plain
from ..text.roles import LENGTH_ROLES, Role
from .cells import GAUGE_WORDS, SCHEDULE_WORDS

_GLUED = re.compile(r",(?=\S|$)")
_SPACED = re.compile(r",(?= |$)")
_QUOTED = re.compile(r'(?:(?<=,)|(?<=, )|^)"(?!,)(?P<said>(?:[^"\n]|""){1,200})"(?=,|$)')
_FEWEST = 2
"""Commas of a head; sizes that a head has to name, and figures a row has, where blanks stand
behind the commas: 'OD, wall and CLR' is the beginning of a sentence."""
_LONGEST_HEAD = 30
_NAMES: frozenset[Role] = LENGTH_ROLES | {"nps", "dn", "schedule"}


def tabulate(plain: Plain) -> Plain:
    """The same text with a tab for each comma between two cells.

    A block is a head without digits and rows of the same number of commas. Every place stays.
    """
    if "," not in plain.text:
        return plain
    lines = plain.text.split("\n")
    at = 0
    while at < len(lines):
        comma = _comma_of(lines[at])
        width = len(comma.findall(lines[at])) if comma is not None else 0
        end = at + 1
        while comma is not None and end < len(lines) and _is_row(lines[end], comma, width):
            end += 1
        if comma is not None and end > at + 1:
            for row in range(at, end):
                bare = _without_quotes(lines[row])
                lines[row] = comma.sub("\t", bare).replace(_KEPT, ",")
        at = end
    return Plain("\n".join(lines), plain.index)


_KEPT = "\x1a"
"""Stands for a comma within quotation marks."""


def _without_quotes(line: str) -> str:
    """A line with blanks for the marks around its cells, and the commas in them hidden."""
    if '"' not in line:
        return line
    return _QUOTED.sub(lambda m: m["said"].replace(",", _KEPT).replace('""', '" ') + "  ", line)


def _comma_of(head: str) -> re.Pattern[str] | None:
    """What parts the cells of a head; None where the line is none."""
    if head.count(",") < _FEWEST or any(char.isdigit() for char in head):
        return None
    bare = _without_quotes(head)
    if len(_GLUED.findall(bare)) >= _FEWEST and ", " not in bare:
        return _GLUED
    cells = _SPACED.split(bare)
    if len(cells) <= _FEWEST or any(len(cell) > _LONGEST_HEAD for cell in cells):
        return None
    return _SPACED if sum(map(_names_length, cells)) >= _FEWEST else None


def _is_row(line: str, comma: re.Pattern[str], width: int) -> bool:
    bare = _without_quotes(line)
    if len(comma.findall(bare)) != width:
        return False
    if comma is _GLUED:
        return ", " not in bare
    figures = sum(any(char.isdigit() for char in cell) for cell in comma.split(bare))
    return figures >= _FEWEST


def _names_length(cell: str) -> bool:
    """Whether the head of a cell names a length, or a size of pipe."""
    for word in WORD.finditer(cell):
        if word[0].casefold() in GAUGE_WORDS | SCHEDULE_WORDS:
            return True
        found = cue_phrase(cell, word.end(), word[0].casefold())
        if found is not None and any(cue.role in _NAMES for cue in found[1]):
            return True
    return False
