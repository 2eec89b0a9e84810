"""Reading the files of a shop folder so that every fault is found and named, not only the first.

A fault is a value with file, row and column; ``ShopFaults`` carries all of them at once. Rows are
counted as a spreadsheet shows them: the header is row 1.
"""

from __future__ import annotations

import csv
import io
import re
import tomllib
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass
from decimal import Decimal
from typing import TYPE_CHECKING, Any, TypeVar

from pydantic import BaseModel, ValidationError
from pydantic_core import ErrorDetails

from .request import Frozen

if TYPE_CHECKING:
    from importlib.resources.abc import Traversable

M = TypeVar("M", bound=BaseModel)


class ShopFault(Frozen):
    """One fault in a shop folder. ``str`` is the sentence to print."""

    file: str
    row: int | None = None
    column: str | None = None
    """Column of a table, or dotted key of shop.toml."""
    text: str

    def __str__(self) -> str:
        toml = self.file.endswith(".toml")
        place = self.file
        if self.row is not None:
            place += f", {'line' if toml else 'row'} {self.row}"
        if self.column is not None:
            place += f", {'key' if toml else 'column'} {self.column}"
        return f"{place}: {self.text}"


class ShopFaults(Exception):
    """A shop folder that can't be used; ``faults`` holds every fault found in it."""

    def __init__(self, faults: Iterable[ShopFault]) -> None:
        self.faults = tuple(faults)
        super().__init__("\n".join(map(str, self.faults)))


@dataclass(frozen=True, slots=True)
class Row:
    """One row of a table: its number in the spreadsheet, and its cells that are not empty."""

    number: int
    cells: Mapping[str, str]


def read_text(folder: Traversable, name: str, faults: list[ShopFault]) -> str | None:
    """The text of one file, or None with the reason added to ``faults``.

    UTF-8 with or without the mark that spreadsheets put in front.
    """
    try:
        data = folder.joinpath(name).read_bytes()
    except FileNotFoundError:
        faults.append(ShopFault(file=name, text=f"there is no such file in {folder}"))
        return None
    except OSError as error:
        faults.append(ShopFault(file=name, text=f"can't be read: {error.strerror or error}"))
        return None
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        line = data.count(b"\n", 0, error.start) + 1
        text = "this is not UTF-8 text; save the file as UTF-8 ('CSV UTF-8' in a spreadsheet)"
        faults.append(ShopFault(file=name, row=line, text=text))
        return None


# -- shop.toml ---------------------------------------------------------------------------------


def read_toml(text: str, file: str, faults: list[ShopFault]) -> dict[str, Any] | None:
    """The tables of a TOML text, numbers with a point as exact Decimal; None if it is broken."""
    try:
        return tomllib.loads(text, parse_float=Decimal)
    except tomllib.TOMLDecodeError as error:
        message = re.sub(r" \(at .*\)$", "", str(error))
        line = re.search(r"\(at line (\d+)", str(error))
        lines = text.splitlines()
        row = int(line[1]) if line else len(lines)
        key = _KEY.match(lines[row - 1]) if 0 < row <= len(lines) else None
        told = f"{message[0].lower()}{message[1:]}"
        if message == "Invalid value":  # most often a word as it stands
            told += ": text is written in quotes"
        faults.append(ShopFault(file=file, row=row, column=key[1] if key else None, text=told))
        return None


def validated(
    model: type[M], data: Mapping[str, Any], text: str, file: str, faults: list[ShopFault]
) -> M | None:
    """``data`` of a TOML ``text`` as ``model``; None with every fault added, each with its line."""
    try:
        return model.model_validate(data)
    except ValidationError as error:
        for detail in error.errors():
            path = detail["loc"]
            faults.append(
                ShopFault(
                    file=file,
                    row=_line_of(text, [part for part in path if isinstance(part, str)]),
                    column=_dotted(path),
                    text=_sentence(detail, model),
                )
            )
        return None


def _dotted(path: tuple[int | str, ...]) -> str | None:
    text = ""
    for part in path:
        text += f"[{part + 1}]" if isinstance(part, int) else f".{part}"
    return text.lstrip(".") or None


_HEADER = re.compile(r"\s*\[{1,2}\s*([^\[\]]+?)\s*\]{1,2}")
_KEY = re.compile(r"\s*([\w\-.\"]+)\s*=")


def _line_of(text: str, path: list[str]) -> int | None:
    """The line where ``path`` stands, or the line of what it should stand in."""
    section: list[str] = []
    best, best_length = None, 0
    for number, line in enumerate(text.splitlines(), 1):
        if header := _HEADER.match(line):
            section = found = header[1].split(".")
        elif key := _KEY.match(line):
            found = [*section, *key[1].replace('"', "").split(".")]
        else:
            continue
        if len(found) > best_length and path[: len(found)] == found:
            best, best_length = number, len(found)
    return best


# -- tables ------------------------------------------------------------------------------------


def read_table(
    text: str, columns: tuple[str, ...], file: str, faults: list[ShopFault]
) -> list[Row]:
    """The rows of a CSV text with just these ``columns``, in any order; faults are added.

    Lines that start with '#' above the header are remarks. Rows are left out only with a fault, or
    when every cell is empty. Without a usable header no rows come back: each would be faulty for
    the same reason.
    """
    reader = csv.reader(io.StringIO(text, newline=""), strict=True)
    try:
        lines = list(reader)
    except csv.Error as error:
        faults.append(ShopFault(file=file, row=reader.line_num, text=f"broken CSV: {error}"))
        return []
    top = next((n for n, line in enumerate(lines) if not _is_remark(line)), len(lines))
    header = [cell.strip().casefold() for cell in lines[top]] if lines[top:] else []
    before = len(faults)
    faults.extend(_header_faults(header, columns, file, top + 1))
    if any(fault.text != _UNKNOWN_COLUMN for fault in faults[before:]):
        return []
    return list(_rows(header, list(enumerate(lines, 1))[top + 1 :], columns, file, faults))


def _is_remark(line: list[str]) -> bool:
    return bool(line) and line[0].lstrip().startswith("#")


_UNKNOWN_COLUMN = "this column is not one we know; take it out"


def _header_faults(
    header: list[str], columns: tuple[str, ...], file: str, row: int
) -> Iterator[ShopFault]:
    for mark, name in ((";", "semicolons"), ("\t", "tabs")):
        if any(mark in cell for cell in header):
            text = f"columns are separated by {name}; save the file with commas between columns"
            yield ShopFault(file=file, row=row, text=text)
            return
    for column in columns:
        if column not in header:
            yield ShopFault(file=file, row=row, column=column, text="this column is missing")
        elif header.count(column) > 1:
            yield ShopFault(file=file, row=row, column=column, text="this column is there twice")
    for column in dict.fromkeys(header):
        if column and column not in columns:
            yield ShopFault(file=file, row=row, column=column, text=_UNKNOWN_COLUMN)


def _rows(
    header: list[str],
    lines: list[tuple[int, list[str]]],
    columns: tuple[str, ...],
    file: str,
    faults: list[ShopFault],
) -> Iterator[Row]:
    for number, line in lines:
        cells = [cell.strip() for cell in line]
        if not any(cells):
            continue
        if len(cells) < len(header) or any(cells[len(header) :]):
            text = f"has {len(cells)} cells where the header has {len(header)}"
            faults.append(ShopFault(file=file, row=number, text=text))
            continue
        named = zip(header, cells, strict=False)
        yield Row(number, {name: cell for name, cell in named if cell and name in columns})


def validated_rows(
    model: type[M],
    rows: list[Row],
    file: str,
    faults: list[ShopFault],
    inconsistencies: Callable[[Mapping[str, str]], Iterable[tuple[str, str]]],
) -> tuple[M, ...]:
    """Each row as ``model``; every bad cell and every inconsistency (column, text) is a fault."""
    good: list[M] = []
    part_rows: dict[str, int] = {}
    for row in rows:
        part = row.cells.get("part", "")
        first = part_rows.setdefault(part.casefold(), row.number)
        if part and first != row.number:
            text = f"{part} stands in row {first} already"
            faults.append(ShopFault(file=file, row=row.number, column="part", text=text))
        for where, text in inconsistencies(row.cells):
            faults.append(ShopFault(file=file, row=row.number, column=where, text=text))
        try:
            good.append(model.model_validate(dict(row.cells)))
        except ValidationError as error:
            for detail in error.errors():
                column = str(detail["loc"][0]) if detail["loc"] else None
                text = "is empty" if detail["type"] == "missing" else _sentence(detail, model)
                faults.append(ShopFault(file=file, row=row.number, column=column, text=text))
    return tuple(good)


# -- wording -----------------------------------------------------------------------------------


def _sentence(detail: ErrorDetails, model: type[BaseModel]) -> str:
    """A validation error in the owner's words."""
    given, context = detail["input"], detail.get("ctx", {})
    match detail["type"]:
        case "value_error":
            return str(context["error"])
        case "missing":
            return "is missing"
        case "extra_forbidden":
            return f"is not a key we know{_near_key(detail, model)}"
        case "bool_type":
            return f"{given!r} is neither true nor false"
        case "int_parsing" | "int_type" | "int_from_float":
            return f"{given} is not a whole number"
        case "greater_than":
            return f"{given} is not more than {context['gt']}"
        case "greater_than_equal":
            return f"{given} is less than {context['ge']}"
        case "string_type":
            return f"{given} should be text in quotes"
        case "tuple_type":
            return "should be a list in square brackets"
        case "model_type" | "model_attributes_type":
            return "should be a section of its own"
        case "literal_error":
            return f"{given!r} is not one of {context['expected']}"
        case _:
            return f"{given!r}: {detail['msg']}"


def _near_key(detail: ErrorDetails, model: type[BaseModel]) -> str:
    """', did you mean people?' where a known key of the same section looks alike."""
    import difflib  # late: most shop files have no fault

    *sections, key = (str(part) for part in detail["loc"] if isinstance(part, str))
    known: type[BaseModel] | None = model
    for section in sections:
        known = _model_in(known, section) if known else None
    keys = [field.alias or name for name, field in known.model_fields.items()] if known else []
    near = difflib.get_close_matches(key, keys, n=1)
    return f", did you mean {near[0]}?" if near else ""


def _model_in(model: type[BaseModel], section: str) -> type[BaseModel] | None:
    for name, field in model.model_fields.items():
        if (field.alias or name) == section:
            inner = [field.annotation, *getattr(field.annotation, "__args__", ())]
            return next(
                (t for t in inner if isinstance(t, type) and issubclass(t, BaseModel)), None
            )
    return None
