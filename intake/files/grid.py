"""Rows of cells to the plain table text that the reader of sizes knows: tabs between the cells."""

from __future__ import annotations

import csv
import re
from collections import Counter
from collections.abc import Iterable, Sequence

LONGEST_CELL = 5_000
"""Characters of one cell that are kept."""
EMPTY = "-"
"""What an empty cell is written as, so that every row has as many cells as the head."""

_DELIMITERS = "\t;,|"
_MOST_ALIKE = 0.8
"""Share of the lines that have to have the same number of cells, or it is no table."""
_GAPS = re.compile(r"[\s\x00-\x1f\x7f]+")
_DIGIT = re.compile(r"\d")
_WORD_WITH_DIGIT = re.compile(r"\S*\d\S*")
_WORD = re.compile(r"[^\W\d_]{3}")
_BEGINS_WITH_LETTER = re.compile(r"[\s(\[]*[^\W\d_]")

Cells = list[str]


def table_text(rows: Iterable[Sequence[str]]) -> str:
    """A line a row, ``EMPTY`` for empty cells; columns and rows without any words left out.

    Below a row that stands between the rows of a table ("Stainless"), the table's head is said
    again, for there the reader takes the table to end.
    """
    clean = [[_clean(cell) for cell in row] for row in rows]
    used = sorted({at for row in clean for at, cell in enumerate(row) if cell})
    table = [[row[at] if at < len(row) else "" for at in used] for row in clean]
    lines: list[str] = []
    head: Cells | None = None
    broken = after_gap = False
    for at, row in enumerate(table):
        if not any(row):
            after_gap = True
            continue
        if _is_head(table, at) and (head is None or after_gap or _repeats(row, head)):
            head, broken = _without_digits(row), False
            row = head
        elif head is not None and (_is_between(row) or not _has_figures(row)):
            if not _is_units(table, at, head):
                lines.append("")  # what stands between belongs to the rows below, not above
                broken = True
        elif broken and head is not None:
            lines.append(_line(head))
            broken = False
        lines.append(_line(row))
        after_gap = False
    return "\n".join(lines)


def csv_text(text: str) -> str:
    """A text of separated values as table text; as it stands where its lines are no table."""
    for delimiter in _DELIMITERS:
        rows = _split(text, delimiter)
        widths = Counter(len(row) for row in rows if row)
        if not widths:
            continue
        width, alike = widths.most_common(1)[0]
        head = next((row for row in rows if len(row) > 1), [])
        # Of '38,0;1,5' the commas are alike in all lines too, but not in the head.
        if width == len(head) > 1 and alike >= _MOST_ALIKE * widths.total():
            return table_text(rows)
    return text


def _split(text: str, delimiter: str) -> list[Cells]:
    reader = csv.reader(text.split("\n"), delimiter=delimiter, skipinitialspace=True)
    try:
        return list(reader)
    except csv.Error:  # a cell of over 131,072 characters: a quotation mark was never closed
        return []


def _clean(cell: str) -> str:
    return _GAPS.sub(" ", cell[:LONGEST_CELL]).strip()


def _line(row: Cells) -> str:
    filled = [cell for cell in row if cell]
    # A title over the table is a line, no row of it.
    return filled[0] if len(filled) == 1 else "\t".join(cell or EMPTY for cell in row)


def _has_figures(row: Cells) -> bool:
    return _figures(row) > 0


def _is_between(row: Cells) -> bool:
    """Whether a row is one of words over the next rows: "Stainless 304" alone in its row."""
    filled = [cell for cell in row if cell]
    return len(filled) == 1 < len(row) and _WORD.search(filled[0]) is not None


def _is_head(table: Sequence[Cells], at: int) -> bool:
    """Whether a row names columns: words in it, hardly a figure, and more figures below."""
    filled = [cell for cell in table[at] if cell]
    with_digits = [cell for cell in filled if _DIGIT.search(cell)]
    if len(filled) < 2 or len(with_digits) * 2 > len(filled):
        return False
    if not all(_BEGINS_WITH_LETTER.match(cell) for cell in with_digits):
        return False
    return any(_figures(row) > len(with_digits) for row in table[at + 1 : at + 3])


def _figures(row: Cells) -> int:
    return sum(bool(_DIGIT.search(cell)) for cell in row)


def _repeats(row: Cells, head: Cells) -> bool:
    """Whether a row says the head of the table again, or one much like it."""
    return sum(a != "" and a.casefold() == b.casefold() for a, b in zip(row, head, strict=True)) > 1


def _without_digits(row: Cells) -> Cells:
    """The head without "EN 10305" or "Rev 2": a line with figures is no head to the reader."""
    return [_clean(_WORD_WITH_DIGIT.sub(" ", cell)) for cell in row]


def _is_units(table: Sequence[Cells], at: int, head: Cells) -> bool:
    """Whether a row of units stands right below the head."""
    return at > 0 and [_clean(_WORD_WITH_DIGIT.sub(" ", cell)) for cell in table[at - 1]] == head
