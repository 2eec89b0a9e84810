"""Where the words of an HTML mail go: lines, and tables as rows of tab-separated cells."""

from __future__ import annotations

import re
from bisect import bisect_left
from dataclasses import dataclass, field

MAX_COLUMNS = 100
"""No colspan is wider, and beyond this column nothing spans; cells themselves are all kept."""
_FILL_BUDGET = 200_000
"""How many characters the rowspans of a table may repeat: a hostile one could ask for any."""
_LINES_IN_A_CELL = 3
_BLANKS = re.compile(r"[ \t\n\r\f]+")


class Lines:
    """Text set line by line, white space collapsed as a browser does."""

    def __init__(self) -> None:
        self.lines: list[str] = []
        self.holds_table = False
        self._line: list[str] = []
        self._marker = ""
        self._gap = False

    @property
    def last_char(self) -> str:
        """The last character of the line being set; empty at its start."""
        return self._line[-1][-1] if self._line else ""

    def text(self, words: str) -> None:
        words = _BLANKS.sub(" ", words)
        if self.last_char in ("", " ") and words.startswith(" "):
            words = words[1:]
        if words:
            self._put(words)

    def preformatted(self, words: str) -> None:
        first, *others = words.split("\n")
        if first:
            self._put(first)
        for other in others:
            self.newline()
            if other:
                self._put(other)

    def mark(self, marker: str) -> None:
        """Begin the next line that has words with ``marker`` ("- " of a list)."""
        self.end_line()
        self._marker = marker

    def newline(self) -> None:
        """A <br>: ends the line, even an empty one."""
        self._close()

    def end_line(self) -> None:
        """The edge of a block: ends the line if it holds anything."""
        if self._line:
            self._close()

    def gap(self) -> None:
        """The edge of a paragraph: one empty line before what follows."""
        self.end_line()
        self._gap = True

    def add(self, line: str) -> None:
        """A line that is set already."""
        self.end_line()
        self._open_gap()
        self.lines.append(line)

    def finish(self) -> list[str]:
        """All lines, none empty at either end."""
        self.end_line()
        lines = self.lines
        start, end = 0, len(lines)
        while start < end and not lines[start]:
            start += 1
        while end > start and not lines[end - 1]:
            end -= 1
        return lines[start:end]

    def _put(self, words: str) -> None:
        if not self._line:
            self._open_gap()
            if self._marker:
                self._line.append(self._marker)
                self._marker = ""
        self._line.append(words)

    def _open_gap(self) -> None:
        if self._gap and self.lines and self.lines[-1]:
            self.lines.append("")
        self._gap = False

    def _close(self) -> None:
        line = "".join(self._line).replace("\xa0", " ")
        bare = line.rstrip()
        # "-- " with its blank is what says that a signature follows (RFC 3676 4.3).
        self.lines.append("-- " if bare == "--" and line != bare else bare)
        self._line = []


@dataclass(slots=True)
class Cell:
    lines: list[str]
    colspan: int
    rowspan: int
    holds_table: bool


@dataclass(slots=True)
class Table:
    """A table being read. Whether it holds data or only lays out a page shows row by row."""

    rows: list[list[Cell]] = field(default_factory=list)

    def render(self) -> list[str]:
        """Its lines: one a row with cells tab-separated; rows of long cells as blocks."""
        grid = self._filled()
        used = sorted({column for row in grid for column, words in enumerate(row) if words})
        out: list[str] = []
        for cells, row in zip(self.rows, grid, strict=True):
            alone = sum(map(bool, row)) <= 1
            if any(_is_block(cell, alone) for cell in cells):
                for cell in cells:
                    out += cell.lines
                continue
            reached = used[: bisect_left(used, len(row))]
            line = "\t".join([row[column] for column in reached])
            if line.strip():
                out.append(line.rstrip())
        return out

    def _filled(self) -> list[list[str]]:
        """The words of each cell in its place: a rowspan repeats them in each row it spans (the
        OD that three rows share), a colspan leaves the further columns empty."""
        grid: list[list[str]] = []
        carried: _Carried = {}
        budget = _FILL_BUDGET
        for cells in self.rows:
            row: list[str] = []
            following: _Carried = {}
            for cell in cells:
                _carry(row, carried, following)
                words = " ".join(line for line in cell.lines if line).replace("\t", " ")
                for number in range(cell.colspan if len(row) < MAX_COLUMNS else 1):
                    if cell.rowspan > 1 and len(row) < MAX_COLUMNS:
                        following[len(row)] = (cell.rowspan - 1, "" if number else words)
                    row.append("" if number else words)
            while carried and len(row) <= max(carried):
                if not _carry(row, carried, following):
                    row.append("")
            budget -= sum(len(words) for _, words in following.values())
            carried = following if budget > 0 else {}
            grid.append(row)
        return grid


_Carried = dict[int, tuple[int, str]]
"""Column -> how many more rows its words are repeated in, and the words."""


def _carry(row: list[str], carried: _Carried, following: _Carried) -> bool:
    """Append what rows above span down to the next columns of ``row``."""
    before = len(row)
    while (column := len(row)) in carried:
        left, words = carried[column]
        if left > 1:
            following[column] = (left - 1, words)
        row.append(words)
    return len(row) > before


def _is_block(cell: Cell, alone: bool) -> bool:
    """Whether the cell only lays out a page: more in it than fits beside others on one line."""
    if cell.holds_table:
        return len(cell.lines) > (0 if alone else 1)
    return len(cell.lines) > (1 if alone else _LINES_IN_A_CELL)
