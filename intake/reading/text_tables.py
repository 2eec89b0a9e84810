"""Tables in a message: a header row names the columns, or a first column names the rows.

Works on text with tabs (what HTML and CSV tables become), bars, semicolons or wide spaces.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from ...rules.grades import family_of_designation
from .figures import Figure, Layout
from .lexer import Token
from .materials import MaterialMention
from .quantity_words import is_mandrel
from .roles import LENGTH_ROLES

_COLUMN_ROLES = LENGTH_ROLES | {"quantity", "times_d", "nps", "dn", "schedule"}
_MATERIAL_WORDS = frozenset(
    "material matl mat mat'l mtl grade werkstoff matière matiere material materiale materiaal alloy matl. spec qualität kwaliteit nuance 材質 stoff güte".split()
)
_WANTED_WORDS = frozenset("needed required reqd req'd wanted ordered".split())
"""Head of a column of counts, or of dates."""
_WHEN_WORDS = frozenset(
    "date dates deliv delivery dock due need eta datum termin liefertermin wunschtermin lieferdatum "
    "lieferung bedarf livraison fecha entrega consegna data levering leverdatum dostawa 納期".split()
)
_UNIT_WORDS = {
    "mm": "mm",
    "in": "in",
    "inch": "in",
    "inches": "in",
    "zoll": "in",
    '"': "in",
    "cm": "cm",
    "ga": "ga",
}


@dataclass(slots=True)
class Column:
    """A table's column: what it holds, its unit, and where it starts on the line."""

    role: str
    unit: str | None
    offset: int


@dataclass(slots=True)
class RowFacts:
    """What a table row says beside its lengths."""

    quantity: int | None = None
    material: MaterialMention | None = None
    when: str = ""
    """A delivery date as written in the row."""


Cell = list[Token]
_MOST_WANTED = 100
"""A larger number under 'Needed' counts no mandrels."""


def read_tables(layout: Layout) -> dict[tuple[str, int, int], RowFacts]:
    """Give figures in tables their roles and rows; the facts that go with each row."""
    lines: dict[int, list[int]] = {}
    for index, line in enumerate(layout.line_of):
        if layout.tokens[index].kind not in ("line", "para"):
            lines.setdefault(line, []).append(index)
    facts: dict[tuple[str, int, int], RowFacts] = {}
    by_token = {figure.token: figure for figure in layout.figures}
    numbers = sorted(lines)
    at = 0
    while at < len(numbers):
        used = _header_table(layout, lines, numbers, at, by_token, facts) or _label_table(
            layout, lines, numbers, at, by_token, facts
        )
        at += used or 1
    return facts


def _cells(layout: Layout, indexes: list[int]) -> list[tuple[int, list[int]]]:
    """(offset on the line, token indexes) of each cell; empty cells between bars are kept."""
    if not indexes:
        return []
    begin = layout.text.rfind("\n", 0, layout.tokens[indexes[0]].start) + 1
    cells: list[tuple[int, list[int]]] = [(layout.tokens[indexes[0]].start - begin, [])]
    bars = any(layout.tokens[i].text in ("|", ";") for i in indexes)
    for index in indexes:
        token = layout.tokens[index]
        tabs = token.text.count("\t") if token.kind == "gap" else 0
        splits = token.text in ("|", ";") or (token.kind == "gap" and (not bars or tabs))
        if not splits:
            cells[-1][1].append(index)
            continue
        for _ in range(max(1, tabs)):
            cells.append((token.end - begin, []))
    if bars:
        cells = [cell for n, cell in enumerate(cells) if cell[1] or 0 < n < len(cells) - 1]
    return cells


def _column_of(layout: Layout, cell: list[int], offset: int) -> Column | None:
    tokens = [layout.tokens[index] for index in cell]
    if not tokens or any(t.number is not None and t.block != "count" for t in tokens):
        return None
    unit = next((_UNIT_WORDS[t.text] for t in tokens if t.text in _UNIT_WORDS), None)
    if _counts_tubes(tokens):
        return Column("noise", None, offset)
    for token in tokens:
        for cue in token.cues:
            if cue.role in _COLUMN_ROLES or (cue.role == "label" and token is tokens[0]):
                return Column(cue.role, unit, offset)
    words = {t.text.strip(".") for t in tokens}
    if words & (_WANTED_WORDS | _WHEN_WORDS):
        return Column("when" if words & _WHEN_WORDS else "wanted", None, offset)
    if any(cue.role == "noise" for cue in tokens[0].cues):
        return Column("noise", None, offset)
    if any(t.text.strip(".") in ("ga", "gauge", "gage") for t in tokens):
        return Column("wall", "ga", offset)
    if any(t.text.strip(".") in ("sch", "sched", "schedule", "schd") for t in tokens):
        return Column("schedule", "sch", offset)
    if any(t.text.strip(".") in _MATERIAL_WORDS or t.kind == "material" for t in tokens):
        return Column("material", None, offset)
    return Column("", None, offset)


def _counts_tubes(tokens: Cell) -> bool:
    """'pcs of tube', 'tube qty': a count, but not of mandrels."""
    roles = {t.cues[0].role for t in tokens if t.cues and not is_mandrel(t.text)}
    return "quantity" in roles and "label" in roles


def _header_table(
    layout: Layout,
    lines: dict[int, list[int]],
    numbers: list[int],
    at: int,
    by_token: dict[int, Figure],
    facts: dict[tuple[str, int, int], RowFacts],
) -> int:
    """Rows used, if a header row with two size columns begins here."""
    header = _cells(layout, lines[numbers[at]])
    columns = [_column_of(layout, cell, offset) for offset, cell in header]
    if any(column is None for column in columns) or len(columns) < 2:
        columns = _inline_header(layout, lines[numbers[at]])
    known = [c for c in columns if c is not None]
    if len({c.role for c in known if c.role in LENGTH_ROLES | {"nps", "label"}}) < 2:
        return 0
    used, row = 1, 0
    for number in numbers[at + 1 :]:
        cells = _cells(layout, lines[number])
        placed = _place(layout, cells, known, lines[number])
        if placed is None:
            if row == 0 and used <= 2 and not any(i in by_token for i in lines[number]):
                used += 1  # a rule of dashes, or a row of units
                _units_row(layout, cells, known)
                continue
            break
        key = ("row", numbers[at], row)
        _fill(layout, placed, key, by_token, facts)
        if _OWNED_ROW.search(_row_text(layout, lines[number])):
            for index in lines[number]:
                if index in by_token:
                    by_token[index].negated = True
        used, row = used + 1, row + 1
    return used if row else 0


_OWNED_ROW = re.compile(
    r"\b(?:vorhanden|nichts anbieten|already have|we have|have this|have one|not required|not needed|no quote|do not quote|don't quote|existing|on hand|déjà|ya tenemos|già|aanwezig)\b"
)


def _row_text(layout: Layout, indexes: list[int]) -> str:
    return layout.text[layout.tokens[indexes[0]].start : layout.tokens[indexes[-1]].end].casefold()


def _inline_header(layout: Layout, indexes: list[int]) -> list[Column | None]:
    """'OD wall CLR qty' with single spaces, commas or slashes: only cue words, no figures."""
    columns: list[Column | None] = []
    for index in indexes:
        token = layout.tokens[index]
        if token.kind == "cue" and token.cues[0].role in _COLUMN_ROLES:
            columns.append(Column(token.cues[0].role, None, token.start))
        elif token.text.strip(".") in _MATERIAL_WORDS or token.kind == "material":
            columns.append(Column("material", None, token.start))
        elif token.text in ("t", "s"):
            columns.append(Column("wall", None, token.start))  # as East Asian drawings call it
        elif token.text in _UNIT_WORDS and columns and columns[-1] is not None:
            columns[-1].unit = _UNIT_WORDS[token.text]
        elif token.kind == "cue":
            role = "label" if token.cues[0].role == "label" else ""
            columns.append(Column(role, None, token.start))
        elif token.kind in ("punct", "times", "gap"):
            continue
        else:
            return []
    return columns


def _units_row(layout: Layout, cells: list[tuple[int, list[int]]], columns: list[Column]) -> None:
    if len(cells) != len(columns):
        return
    for column, (_, cell) in zip(columns, cells, strict=True):
        for index in cell:
            column.unit = column.unit or _UNIT_WORDS.get(layout.tokens[index].text)


def _place(
    layout: Layout, cells: list[tuple[int, list[int]]], columns: list[Column], indexes: list[int]
) -> list[tuple[Column, list[int]]] | None:
    """Each cell under its column, or None where the line is no row of this table."""
    if not any(layout.tokens[index].number is not None for index in indexes):
        return None
    if len(cells) == len(columns):
        return [(column, cell) for column, (_, cell) in zip(columns, cells, strict=True)]
    if len(cells) >= 2 and len(cells) < len(columns) and abs(len(cells) - len(columns)) <= 3:
        # A cell was left empty: what stands under which header tells.
        placed = []
        for offset, cell in cells:
            nearest = min(columns, key=lambda column: abs(column.offset - offset))
            placed.append((nearest, cell))
        if len({id(column) for column, _ in placed}) == len(placed):
            return placed
        return None
    flat = [i for i in indexes if layout.tokens[i].kind in ("number", "material", "block")]
    if len(cells) <= 1 and len(flat) == len(columns):
        return [(column, [index]) for column, index in zip(columns, flat, strict=True)]
    return None


def _fill(
    layout: Layout,
    placed: list[tuple[Column, list[int]]],
    key: tuple[str, int, int],
    by_token: dict[int, Figure],
    facts: dict[tuple[str, int, int], RowFacts],
) -> None:
    row = facts.setdefault(key, RowFacts())
    for column, cell in placed:
        figures = [by_token[index] for index in cell if index in by_token]
        for figure in figures:
            figure.row = key
        for index in cell:
            token = layout.tokens[index]
            if token.kind == "material" and row.material is None:
                row.material = token.material
            elif column.role == "material" and row.material is None:
                row.material = _bare_grade(token)
            if column.role == "quantity" and token.number is not None and row.quantity is None:
                whole = token.number.value
                row.quantity = int(whole) if whole == whole.to_integral_value() else None
        if column.role in ("when", "wanted") and cell:
            _take_when(layout, row, cell, wanted=column.role == "wanted")
        if column.role in LENGTH_ROLES | {"times_d", "nps", "dn", "schedule"}:
            _take_column(column, figures)
            _name_schedules(layout, column, figures)
        elif column.role == "label" and len(figures) <= 3:
            _take_size(column, figures)
        elif column.role == "noise":
            for figure in figures:
                figure.role, figure.how = "noise", "table"
        else:
            for figure in figures:
                if figure.role is None or figure.role in ("quantity", "label"):
                    figure.role, figure.how = (
                        ("noise", "table") if not _sizes(figures) else (figure.role, figure.how)
                    )


def _take_when(layout: Layout, row: RowFacts, cell: list[int], *, wanted: bool) -> None:
    """A day of delivery, or under 'Needed' a count of mandrels."""
    first, last = layout.tokens[cell[0]], layout.tokens[cell[-1]]
    count = first.number.value if first.number is not None and len(cell) == 1 else None
    if count is None or count != count.to_integral_value():
        row.when = layout.text[first.start : last.end]
    elif wanted and row.quantity is None and first.unit is None and 0 < count <= _MOST_WANTED:
        row.quantity = int(count)


def _bare_grade(token: Token) -> MaterialMention | None:
    """'1010' in a material column is a grade, though a bare number elsewhere is none."""
    family = (
        family_of_designation("number", token.text.upper()) if token.number is not None else None
    )
    if family is None:
        return None
    grade = token.text.upper()
    return MaterialMention(token.start, token.end, grade, family, grade)


def _sizes(figures: list[Figure]) -> bool:
    """Whether a cell of an unnamed column holds a whole size ('38 x 1.5')."""
    return any(figure.link in ("times", "slash") for figure in figures[1:])


def _name_schedules(layout: Layout, column: Column, figures: list[Figure]) -> None:
    """A schedule column's '10S' is a name, not a number."""
    if column.role != "schedule":
        return
    for figure in figures:
        figure.unit = "sch"
        if layout.text[figure.number.end : figure.number.end + 1] in ("s", "S"):
            figure.notes = [f"{figure.number.value}S"]


def _take_size(column: Column, figures: list[Figure]) -> None:
    """A 'Tube' column holds an OD, or a whole size that the chain step reads."""
    for figure in figures:
        if figure.unit is None:
            figure.unit = column.unit
    if len(figures) == 1 and figures[0].role is None:
        figures[0].role, figures[0].how = "od", "table"


def _take_column(column: Column, figures: list[Figure]) -> None:
    for position, figure in enumerate(figures):
        if position and figure.link not in ("list", "or", "restate", "slash", "range"):
            continue
        if (
            figure.role is None
            or figure.role in ("label", "quantity", "noise", "die", "od")
            or figure.how == "cue"
        ):
            if figure.unit == "D":
                figure.role, figure.how = "times_d", "table"
            elif not (figure.unit or "").startswith("noise:"):
                figure.role, figure.how = column.role, "table"
        if figure.unit is None and column.unit is not None and column.role in LENGTH_ROLES:
            figure.unit = column.unit


def _label_table(
    layout: Layout,
    lines: dict[int, list[int]],
    numbers: list[int],
    at: int,
    by_token: dict[int, Figure],
    facts: dict[tuple[str, int, int], RowFacts],
) -> int:
    """Rows used, if lines begin with a label and hold two or more values: one column a size."""
    rows: list[tuple[Column, list[list[int]]]] = []
    width = 0
    for number in numbers[at:]:
        cells = _cells(layout, lines[number])
        column = _column_of(layout, cells[0][1], 0) if len(cells) >= 3 else None
        values = [cell for _, cell in cells[1:]]
        if column is None or not all(values) or (width and len(values) != width):
            break
        width = len(values)
        rows.append((column, values))
    roles = {column.role for column, _ in rows if column.role in LENGTH_ROLES}
    if len(roles) < 2:
        return 0
    for place in range(width):
        placed = [(column, values[place]) for column, values in rows]
        _fill(layout, placed, ("column", numbers[at], place), by_token, facts)
    return len(rows)
