"""Tables in a page that was laid out with blanks: each figure under its head, or named as unplaced.

A cell that is empty leaves nothing but a wider gap. Where its neighbours then belong is told by the
columns of the rows that are full; a row for which that stays open is left out and named, for read
by the order of its figures it would become another size.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass

from .grid import table_text

_CELL = re.compile(r"\S+(?: \S+)*")
_DIGIT = re.compile(r"\d")
_BEGINS_AS_FIGURE = re.compile(r"[.,(ØøR]?\s?\d")
_AHEAD = 4
"""So many lines may stand between the rows of a table: a page's foot and head, a row of words."""


@dataclass(frozen=True, slots=True)
class _Cell:
    start: int
    end: int
    text: str


_Line = list[_Cell]


def tables_apart(text: str) -> tuple[str, list[str]]:
    """The text with its tables as table text, and the lines of those that could not be placed."""
    lines = text.split("\n")
    cells = [[_Cell(m.start(), m.end(), m.group()) for m in _CELL.finditer(line)] for line in lines]
    out: list[str] = []
    unplaced: list[str] = []
    at = 0
    while at < len(lines):
        end = _end_of_table(cells, at)
        table = _table(cells[at:end]) if end > at + 1 else None
        if table is None:
            out.append(lines[at])
            at += 1
            continue
        rows, lost = table
        out += ["", table_text(rows), ""]
        unplaced += lost
        at = end
    return "\n".join(out), unplaced


def _is_head(cells: Sequence[_Line], at: int) -> bool:
    """Whether a line of words stands above lines of figures."""
    line = cells[at]
    if len(line) < 2 or any(_BEGINS_AS_FIGURE.match(cell.text) for cell in line):
        return False
    return any(_is_row(below) for below in cells[at + 1 : at + 3])


def _is_row(line: _Line) -> bool:
    return len(line) > 1 and sum(bool(_DIGIT.search(cell.text)) for cell in line) > 1


def _end_of_table(cells: Sequence[_Line], at: int) -> int:
    """The line after the last row of the table whose head stands at ``at``; ``at`` where none."""
    if not _is_head(cells, at):
        return at
    end, last = at + 1, at
    while end < len(cells) and end - last <= _AHEAD:
        if _is_row(cells[end]):
            last = end
        elif _is_head(cells, end):
            break
        end += 1
    return last + 1


def _table(lines: Sequence[_Line]) -> tuple[list[list[str]], list[str]] | None:
    """Rows of as many cells as the head has, and the lines left out; None where it is no table."""
    head = lines[0]
    full = [line for line in lines[1:] if len(line) == len(head)]
    starts = [min(line[n].start for line in (head, *full)) for n in range(len(head))]
    if starts != sorted(set(starts)):
        return None
    rows = [[cell.text for cell in head]]
    lost: list[str] = []
    for line in lines[1:]:
        placed = _placed(line, starts)
        if placed is None and _is_row(line):
            lost.append("  ".join(cell.text for cell in line))
        elif placed is None:  # words between the rows, whole
            rows.append([" ".join(cell.text for cell in line), *[""] * (len(head) - 1)])
        else:
            rows.append(placed)
    # A head whose words were torn apart fits no row: then nothing is known of the columns.
    return (rows, lost) if len(lost) * 2 < sum(map(_is_row, lines)) else None


def _placed(line: _Line, starts: Sequence[int]) -> list[str] | None:
    """Each cell of a row in its column; None where one may belong to either of two."""
    if len(line) == len(starts):
        return [cell.text for cell in line]
    if not _is_row(line):
        return None
    row = [""] * len(starts)
    for cell in line:
        column = sum(start <= cell.start + 1 for start in starts) - 1
        beyond = column + 1 < len(starts) and cell.end > starts[column + 1]
        if column < 0 or row[column] or beyond:
            return None
        row[column] = cell.text
    return row
