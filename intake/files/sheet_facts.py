"""What openpyxl does not tell of a sheet while it streams: what is hidden, merged, worked out.

Looked up in the sheet's XML with patterns over bytes, in one pass each: rows and merged cells have
one plain spelling there (ECMA-376 part 1, 18.3.1.73, 18.3.1.13, 18.3.1.55).
"""

from __future__ import annotations

import re
from dataclasses import dataclass

_MOST = 10_000
"""Hidden rows, hidden columns and merged cells that are kept in mind."""
_ROW = re.compile(rb"<(?:\w{1,20}:)?row\s([^<>]{0,500})>")
_COLUMN = re.compile(rb"<(?:\w{1,20}:)?col\s([^<>]{0,500})>")
_MERGED = re.compile(
    rb'<(?:\w{1,20}:)?mergeCell\s[^<>]{0,100}?ref="([A-Z]{1,3})(\d{1,7}):([A-Z]{1,3})(\d{1,7})"'
)
_CELL = re.compile(rb'<(?:\w{1,20}:)?c\s[^<>]{0,100}?\br="([A-Z]{1,3})\d')
_FORMULA = re.compile(rb"<(?:\w{1,20}:)?f[\s>/]")
_HIDDEN = re.compile(rb'\bhidden="(?:1|true)"')
_NUMBER = re.compile(rb'\b(r|min|max)="(\d{1,7})"')
_LAST_COLUMN = 16_384


@dataclass(frozen=True, slots=True)
class SheetFacts:
    """Rows and columns count from 1."""

    hidden_rows: frozenset[int]
    hidden_columns: frozenset[int]
    filled_down: frozenset[tuple[int, int]]
    """(row, column) of the cells below the first one of a merged cell, in each of its columns: they
    say what the first says."""
    has_formulas: bool
    columns: int
    """The last column that a cell stands in."""


def facts_of(xml: bytes) -> SheetFacts:
    """The facts of one sheet. Nothing in it raises; what is spelled oddly is not seen."""
    return SheetFacts(
        hidden_rows=frozenset(_hidden_rows(xml)),
        hidden_columns=frozenset(_hidden_columns(xml)),
        filled_down=frozenset(_filled_down(xml)),
        has_formulas=_FORMULA.search(xml) is not None,
        columns=max(map(_column_number, set(_CELL.findall(xml))), default=0),
    )


def _hidden_rows(xml: bytes) -> list[int]:
    if _HIDDEN.search(xml) is None:
        return []
    found: list[int] = []
    for match in _ROW.finditer(xml):
        if _HIDDEN.search(match[1]) and (at := dict(_NUMBER.findall(match[1])).get(b"r")):
            found.append(int(at))
    return found[:_MOST]


def _hidden_columns(xml: bytes) -> list[int]:
    found: list[int] = []
    for match in _COLUMN.finditer(xml):
        if not _HIDDEN.search(match[1]):
            continue
        span = dict(_NUMBER.findall(match[1]))
        first, last = int(span.get(b"min", 0)), int(span.get(b"max", 0))
        # All columns from the last used one on are often hidden: those hold nothing.
        found += range(first, min(last, _LAST_COLUMN) + 1)
        if len(found) > _LAST_COLUMN:
            break
    last_used = max(map(_column_number, set(_CELL.findall(xml))), default=0)
    return [column for column in found if column <= last_used]


def _filled_down(xml: bytes) -> list[tuple[int, int]]:
    found: list[tuple[int, int]] = []
    for match in _MERGED.finditer(xml):
        first, last = _column_number(match[1]), _column_number(match[3])
        top, bottom = int(match[2]), int(match[4])
        for column in range(first, min(last, first + 60) + 1):
            found += ((row, column) for row in range(top + 1, min(bottom, top + _MOST) + 1))
            if len(found) > _MOST:
                return found[:_MOST]
    return found


def _column_number(letters: bytes) -> int:
    """'A' is 1, 'AA' is 27."""
    number = 0
    for letter in letters:
        number = number * 26 + letter - 64
    return number
