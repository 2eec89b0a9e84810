"""A workbook (.xlsx) to table text, a stretch a sheet: what a person would see when opening it.

Runs in a process with limits (``child``); whatever a damaged file raises is told there.
"""

from __future__ import annotations

import io
import re
import time
import zipfile
from collections.abc import Iterator
from datetime import date, datetime
from decimal import Decimal
from typing import TYPE_CHECKING, Any

import openpyxl

from .contents import ENOUGH_SECONDS, Contents
from .grid import table_text
from .sheet_facts import SheetFacts, facts_of

if TYPE_CHECKING:
    from openpyxl.workbook import Workbook

MOST_ROWS = 2_000
MOST_COLUMNS = 60
"""Of one sheet. The reader of sizes takes no wider line for a table."""
MOST_SHEETS = 20
MOST_UNZIPPED = 30_000_000
"""Bytes of all XML in the file. A sheet of 2,000 rows and 60 columns has some 8 million."""
MOST_TAGS = 1_500_000
"""Tags in all XML of the file, four a cell: openpyxl reads so many in some two seconds."""
_MOST_MEMBERS = 5_000
_ENCRYPTED = 1
"""The flag of a zip member that is locked."""


def read_workbook(data: bytes) -> Contents:
    """The visible cells of each visible sheet, formulas by the values they had when saved.

    Raises whatever a damaged file makes zipfile or openpyxl raise.
    """
    with zipfile.ZipFile(io.BytesIO(data)) as archive:
        members = archive.infolist()
        if any(member.flag_bits & _ENCRYPTED for member in members):
            return Contents(why_unread="it is locked with a password")
        # zipfile stops at the size that the directory declares: no member can be larger than it.
        spoken = [m for m in members if m.filename.endswith((".xml", ".rels"))]
        unzipped = sum(member.file_size for member in spoken)
        if unzipped > MOST_UNZIPPED or len(members) > _MOST_MEMBERS:
            return Contents(why_unread=f"unzipped it is too large ({unzipped // 1_000_000} MB)")
        if sum(archive.read(member).count(b"<") for member in spoken) > MOST_TAGS:
            return Contents(why_unread="it has too many cells to open")
        return _Reader(data, archive).read()


class _Reader:
    """One workbook being read; holds what is counted over all of its sheets."""

    def __init__(self, data: bytes, archive: zipfile.ZipFile) -> None:
        self._data = data
        self._archive = archive
        self._found = Contents()

    def read(self) -> Contents:
        values, formulas = self._open(data_only=True), None
        sheets: list[Any] = list(values.worksheets)
        shown = [sheet for sheet in sheets if sheet.sheet_state == "visible"]
        if hidden := len(sheets) - len(shown):
            self._remark(f"{_number(hidden, 'hidden sheet')} left out")
        if len(shown) > MOST_SHEETS:
            self._remark(f"only the first {MOST_SHEETS} of {len(shown)} sheets were read")
        for sheet in shown[:MOST_SHEETS]:
            if time.process_time() > ENOUGH_SECONDS:
                self._remark(f"it took too long: sheet {sheet.title} and those after were not read")
                break
            facts = facts_of(self._archive.read(sheet._worksheet_path))
            if facts.has_formulas and formulas is None:
                formulas = self._open(data_only=False)
            as_typed = formulas[sheet.title] if formulas and facts.has_formulas else None
            text = table_text(self._rows(sheet, as_typed, facts))
            if text:
                self._found.texts.append((sheet.title, text))
        if not self._found.texts and not self._found.remarks:
            return Contents(why_unread="it is empty")
        return self._found

    def _open(self, *, data_only: bool) -> Workbook:
        return openpyxl.load_workbook(
            io.BytesIO(self._data), read_only=True, data_only=data_only, keep_links=False
        )

    def _remark(self, said: str) -> None:
        self._found.remarks.append(said)

    def _rows(self, sheet: Any, as_typed: Any, facts: SheetFacts) -> Iterator[list[str]]:
        """The cells of a sheet as text; what is left out is remarked on at the end."""
        unworked = dates = broken = 0
        above: dict[int, str] = {}
        for number, (row, typed) in enumerate(_pairs(sheet, as_typed), start=1):
            if number > MOST_ROWS or time.process_time() > ENOUGH_SECONDS:
                self._remark(f"only the first {number - 1} rows of sheet {sheet.title} were read")
                break
            if number in facts.hidden_rows:
                continue
            cells: list[str] = []
            for column, cell in enumerate(row, start=1):
                value = cell.value
                if value is None and typed and len(typed) >= column:
                    unworked += typed[column - 1].data_type == "f"
                if cell.data_type == "e":
                    broken, value = broken + 1, None
                if column in facts.hidden_columns:
                    value = None
                text = _text(value, cell)
                dates += isinstance(value, date) and _YEARLESS in _format(cell)
                if not text and (number, column) in facts.filled_down:
                    text = above.get(column, "")
                above[column] = text
                cells.append(text)
            yield cells
        if facts.hidden_rows or facts.hidden_columns:
            rows, columns = len(facts.hidden_rows), len(facts.hidden_columns)
            told = [_number(rows, "hidden row")] if rows else []
            told += [_number(columns, "hidden column")] if columns else []
            self._remark(f"{' and '.join(told)} of sheet {sheet.title} left out")
        if facts.columns > MOST_COLUMNS:
            self._remark(f"only the first {MOST_COLUMNS} columns of sheet {sheet.title} were read")
        if unworked:
            self._remark(
                f"{_number(unworked, 'cell')} of sheet {sheet.title}"
                " with a formula whose result was not saved"
            )
        if broken:
            self._remark(f"{_number(broken, 'cell')} of sheet {sheet.title} with an error in it")
        if dates:
            self._remark(
                f"{_number(dates, 'cell')} of sheet {sheet.title} with a day and month:"
                " perhaps a fraction, which spreadsheets turn into dates"
            )


_YEARLESS = "d-mmm"
"""What a spreadsheet makes of a typed "3/4" or "1-3" is shown in this format, without a year."""


def _pairs(sheet: Any, as_typed: Any) -> Iterator[tuple[Any, Any]]:
    """Each row with its values, and beside it as typed where there are formulas."""
    sheet.reset_dimensions()
    # One row more than is read, so that it shows that there is more.
    limits = {"max_row": MOST_ROWS + 1, "max_col": MOST_COLUMNS}
    rows = sheet.iter_rows(**limits)
    if as_typed is None:
        yield from ((row, None) for row in rows)
        return
    as_typed.reset_dimensions()
    yield from zip(rows, as_typed.iter_rows(**limits), strict=False)


def _number(count: int, what: str) -> str:
    return f"{count} {what}" + ("" if count == 1 else "s")


def _format(cell: Any) -> str:
    return str(cell.number_format or "").lower()


def _text(value: object, cell: Any) -> str:
    """One value as it is shown, near enough: a number with the unit that its format puts to it."""
    match value:
        case None:
            return ""
        case bool():
            return "yes" if value else "no"
        case int() | float():
            # 0.1 + 0.2 is kept as 0.30000000000000004, and shown as 0.3.
            return f"{_plain(value)}{_unit(_format(cell))}"
        case Decimal():
            return f"{_plain(value)}{_unit(_format(cell))}"
        case datetime():
            return value.date().isoformat()
        case date():
            return value.isoformat()
        case _:
            return str(value)


def _plain(value: float | Decimal) -> str:
    text = f"{value:.10g}"
    return format(Decimal(text), "f") if "e" in text else text


def _unit(shown_as: str) -> str:
    """The unit that a number format writes behind each number, as in ``0.0" mm"``."""
    return next((unit for pattern, unit in _FORMAT_UNITS if pattern.search(shown_as)), "")


_FORMAT_UNITS = (
    (re.compile(r'"\s*mm\s*"|\\m\\m'), " mm"),
    (re.compile(r'"\s*(?:in|inch|″)\.?\s*"|\\"|""""|″'), " in"),
)
