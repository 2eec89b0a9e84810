"""Tables in a message: a header row names the columns, or a first column names the rows.

Works on text with tabs (what HTML and CSV tables become), bars, semicolons or wide spaces.
"""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..material.materials import MaterialMention
from ..text.figures import Layout, Row
from ..text.patterns import whole_words
from ..text.roles import LENGTH_ROLES
from .cells import (
    Cell,
    Column,
    cells_of,
    column_of,
    has_unit,
    inline_columns,
    names_mandrel,
    names_wall,
    tabbed,
    take_units,
)
from .dittos import take_from_above
from .heads import YES
from .label_blocks import blocks_from
from .rows import Placed, RowFacts, fill_row, note_form

__all__ = ["RowFacts", "read_tables"]

_WIDEST = 60
"""Columns of a table; a line with more cells is none."""
_LINES_BELOW_HEAD = 2
"""A rule of dashes and a row of units may stand between the head and the first row."""
_LONGEST_SECTION = 6
"""Tokens of a line that parts the rows of a table."""
_MOST_EMPTY = 3
_LONGEST_LABEL = 3
_RULE = late_pattern(r"(?=[^\n]*[-=_]{3})[-=_+|:* \t]{3,400}")
_NAMES_SIZE = LENGTH_ROLES | {"nps", "dn", "schedule", "label", "times_d"}
_OWNED_ROW = whole_words(
    "vorhanden | nichts anbieten | already have | we have | have this | have one | not required",
    "not needed | no quote | do not quote | don't quote | existing | on hand | déjà | ya tenemos",
    "già | aanwezig",
)


def read_tables(layout: Layout) -> dict[Row, RowFacts]:
    """Give figures in tables their roles and rows; the facts that go with each row."""
    return _Tables(layout).read()


class _Tables:
    def __init__(self, layout: Layout) -> None:
        self.layout = layout
        self.by_token = {figure.token: figure for figure in layout.figures}
        lines: dict[int, list[int]] = {}
        for index, line in enumerate(layout.line_of):
            if layout.tokens[index].kind not in ("line", "para"):
                lines.setdefault(line, []).append(index)
        self.lines = [lines[number] for number in sorted(lines) if not self._is_rule(lines[number])]
        """Token indexes of each line that is neither empty nor a rule."""
        self.cells: list[list[Cell] | None] = [None] * len(self.lines)
        self.facts: dict[Row, RowFacts] = {}
        self.no_labels_before = 0
        """Lines up to here have been found to begin no table with labels at the left."""
        self.no_blocks_before = 0
        """The same for forms of a label a line."""

    def _is_rule(self, indexes: list[int]) -> bool:
        """'+-----+-----+', '|:---|---:|', '======': it parts rows, and holds no cell."""
        begin, end = self.layout.tokens[indexes[0]].start, self.layout.tokens[indexes[-1]].end
        return _RULE.fullmatch(self.layout.text, begin, end) is not None

    def read(self) -> dict[Row, RowFacts]:
        """Look for a table at every line that has another below it."""
        at = 0
        while at + 1 < len(self.lines):
            at += self._with_header(at) or self._with_labels(at) or self._with_blocks(at) or 1
        return self.facts

    def _cells(self, at: int) -> list[Cell]:
        cells = self.cells[at]
        if cells is None:
            cells = self.cells[at] = cells_of(self.layout, self.lines[at])
        return cells

    def _fill(self, placed: Placed, row: Row) -> None:
        facts = self.facts.setdefault(row, RowFacts())
        fill_row(self.layout, placed, row, self.by_token, facts)
        above = self.facts.get((*row[:2], row[2] - 1))
        if above is not None:
            take_from_above(self.layout, placed, facts, above)

    # --- a header row ---------------------------------------------------------------------------

    def _with_header(self, at: int) -> int:
        """Lines used, if a header row with two size columns begins here, or with a description and
        a count."""
        columns = self._header(at)
        roles = {column.role for column in columns}
        if len(roles & _NAMES_SIZE) >= 2:
            for column in columns:
                column.role = "" if column.role == "words" else column.role
        elif not {"words", "quantity"} <= roles:
            return 0
        cells = self._cells(at)
        for number, column in enumerate(columns):
            if column.role == "od" and self._holds_multiples(at + 1, number, len(columns)):
                column.role = "times_d"  # "D" above "1.5D"
        ods = [number for number, column in enumerate(columns) if column.role == "od"]
        for number in ods if len(ods) > 1 and len(cells) == len(columns) else []:
            if names_wall(self.layout, cells[number]):
                columns[number].role = ""  # "OD/wall" beside an OD is their ratio
        if len(cells) == len(columns):
            self._count_mandrels(cells, columns)
        if ods:
            for column in columns:
                if column.role == "label":
                    column.role = "noise"  # beside an OD, "tube in stock" holds feet or names
        used, number = 1, 0
        section = self._section(at - 1) if at else None
        there, wanted = list[int](), list[int]()
        while at + used < len(self.lines):
            line = at + used
            placed = self._place(line, columns, at)
            if placed is not None:
                self._fill(placed, ("row", at, number))
                facts = self.facts["row", at, number]
                if not facts.has_material_column:
                    facts.material = facts.material or section
                self._negate_owned(line)
                (there if self._is_there(placed) else wanted).append(line)
                number += 1
            elif number == 0 and used <= _LINES_BELOW_HEAD and not self._has_figures(line):
                take_units(self.layout, self._cells(line), columns)
                section = self._section(line) or section
            elif number and self._section(line) and self._goes_on(line + 1, columns, at):
                section = self._section(line)
            else:
                break
            used += 1
        for owned in there if wanted else []:
            self._negate(owned)
        return used if number else 0

    def _holds_multiples(self, line: int, number: int, columns: int) -> bool:
        """Whether a line's cell under that column holds a multiple of the diameter."""
        cells = self._cells(line)
        held = cells[number].tokens if len(cells) == columns else ()
        figures = [self.by_token[token] for token in held if token in self.by_token]
        return bool(figures) and all(figure.unit == "D" for figure in figures)

    def _section(self, line: int) -> MaterialMention | None:
        """'304L:', '--- Alu ---', 'Material: St 37': the material of the rows below, alone on its
        line."""
        tokens = [self.layout.tokens[index] for index in self.lines[line]]
        found = [token.material for token in tokens if token.material is not None]
        short = len(tokens) <= _LONGEST_SECTION and not self._has_figures(line)
        alone = len({(one.family, one.grade) for one in found}) == 1
        return found[0] if short and alone and not found[0].rejected else None

    def _goes_on(self, line: int, columns: list[Column], head: int) -> bool:
        return line < len(self.lines) and self._place(line, columns, head) is not None

    def _count_mandrels(self, cells: list[Cell], columns: list[Column]) -> None:
        """Beside 'Cant. mandriles' what 'Cantidad piezas' counts is something else."""
        counts = [n for n, column in enumerate(columns) if column.role in ("quantity", "wanted")]
        own = [n for n in counts if names_mandrel(self.layout, cells[n])]
        for number in counts if own else []:
            if number not in own:
                columns[number].role = "noise"

    def _header(self, at: int) -> list[Column]:
        """The columns that a line names; none where it holds figures."""
        tokens = (self.layout.tokens[index] for index in self.lines[at])
        if any(token.number is not None and token.block != "count" for token in tokens):
            return []
        cells = self._cells(at)
        if len(cells) > _WIDEST:
            return []
        columns = [column_of(self.layout, cell) for cell in cells]
        if cells and not cells[0].tokens and len(cells) > 1:
            columns[0] = Column("", None, cells[0].offset)  # nothing heads the names of the rows
        written = len(cells)
        self._spread_heads(at, cells, columns)
        for place in range(written):
            if not cells[place].tokens:  # nothing heads this one: it holds remarks or numbers
                columns[place] = columns[place] or Column("", None, cells[place].offset)
        known = [column for column in columns if column is not None]
        if len(known) < len(columns) or len(columns) < 2:
            return inline_columns(self.layout, self.lines[at])
        return known

    def _spread_heads(self, at: int, cells: list[Cell], columns: list[Column | None]) -> None:
        """A head over two columns, as 'OD' over 'in' and 'mm', is the head of both."""
        below = self._cells(at + 1)
        missing = len(below) - len(cells)
        if not 0 <= missing <= _MOST_EMPTY or self._has_figures(at + 1):
            return
        if not any(has_unit(self.layout, cell) for cell in below):
            return  # a rule of dashes
        cells += [Cell(cell.offset, ()) for cell in below[len(cells) :]]
        columns += [None] * missing
        for place in range(1, len(cells)):
            left = columns[place - 1]
            empty = not cells[place].tokens and has_unit(self.layout, below[place])
            if empty and left is not None and left.role in LENGTH_ROLES:
                columns[place] = Column(left.role, None, cells[place].offset)

    def _has_figures(self, at: int) -> bool:
        return any(index in self.by_token for index in self.lines[at])

    def _place(self, at: int, columns: list[Column], head: int) -> Placed | None:
        """Each cell under its column, or None where the line is no row of this table."""
        cells, tokens = self._cells(at), self.layout.tokens
        if self._begins_with_bar(at) and not self._begins_with_bar(head):
            cells = [Cell(0, ()), *cells]  # 'OD | Wall' above ' | 1.5': the first cell is empty
        if not any(tokens[index].number is not None for index in self.lines[at]):
            return None
        headed = self._begins_with_bar(head) and not self._begins_with_bar(at)
        if headed and len(cells) + self._ends_with_bar(at) == len(columns) + 1:
            columns = [Column("", None, 0), *columns]  # ' | OD | Wall' above '1 | 38 | 1.5'
        if len(cells) == len(columns):
            return list(zip(columns, cells, strict=True))
        if 2 <= len(cells) < len(columns) <= len(cells) + _MOST_EMPTY:
            if tabbed(self.layout, self.lines[at]) and tabbed(self.layout, self.lines[head]):
                return list(zip(columns, cells, strict=False))
            if len(cells) == len(columns) - 1 and self._ends_with_bar(at):
                return list(zip(columns, cells, strict=False))
            return _by_offset(cells, columns)
        if len(cells) == len(columns) + 1 and self._is_remark(cells[-1]):
            return list(zip([*columns, Column("", None, cells[-1].offset)], cells, strict=True))
        if len(cells) == len(columns) + 1 and self._is_label(cells[0], columns[0]):
            return list(zip(columns, cells[1:], strict=True))
        flat = [i for i in self.lines[at] if tokens[i].kind in ("number", "material", "block")]
        if len(cells) <= 1 and len(flat) == len(columns):
            return [
                (column, Cell(tokens[index].start, (index,)))
                for column, index in zip(columns, flat, strict=True)
            ]
        return None

    def _is_label(self, cell: Cell, column: Column) -> bool:
        """'A', '1)', 'hoop' before the first column, which no head names."""
        words = [self.layout.tokens[index] for index in cell.tokens]
        short = len(words) <= _LONGEST_LABEL and cell.offset <= column.offset
        return short and all(word.number is None or word.block for word in words)

    def _is_remark(self, cell: Cell) -> bool:
        """'<-- wall .083 here': words behind the last column, which no head names."""
        words = [self.layout.tokens[index] for index in cell.tokens]
        return bool(words) and words[0].number is None and words[0].kind != "material"

    def _ends_with_bar(self, at: int) -> bool:
        """'25 | 1.5 | 50 |', with no bar before it: the last cell is empty."""
        text, first = self.layout.text, self.layout.tokens[self.lines[at][0]].start
        begin, end = text.rfind("\n", 0, first) + 1, text.find("\n", first)
        line = text[begin : end if end >= 0 else len(text)].strip()
        return line.endswith("|") and not line.startswith("|")

    def _begins_with_bar(self, at: int) -> bool:
        return self.layout.tokens[self.lines[at][0]].text == "|"

    def _negate_owned(self, at: int) -> None:
        """'38 | 1.5 | 57 | already have': a row that is not asked for."""
        indexes = self.lines[at]
        begin, end = self.layout.tokens[indexes[0]].start, self.layout.tokens[indexes[-1]].end
        if _OWNED_ROW.search(self.layout.words(begin, end)):
            self._negate(at)

    def _negate(self, at: int) -> None:
        for index in self.lines[at]:
            if index in self.by_token:
                self.by_token[index].negated = True

    def _is_there(self, placed: Placed) -> bool:
        """Whether a column asks if a mandrel is there, and the row says yes; neither answer is a
        status of the line by itself."""
        tokens = self.layout.tokens
        answers = [cell.tokens for column, cell in placed if column.role == "there" and cell.tokens]
        for answer in answers:
            self.layout.without_figure.append((tokens[answer[0]].start, tokens[answer[-1]].end))
        return any(tokens[answer[0]].text in YES for answer in answers)

    # --- labels at the left ---------------------------------------------------------------------

    def _with_labels(self, at: int) -> int:
        """Lines used, if lines begin with a label and hold two or more values: a column a size."""
        if at < self.no_labels_before:
            return 0
        rows: list[tuple[Column, list[Cell]]] = []
        while at + len(rows) < len(self.lines):
            cells = self._cells(at + len(rows))
            column = column_of(self.layout, cells[0]) if 3 <= len(cells) <= _WIDEST else None
            values = cells[1:]
            if column is None or not all(cell.tokens for cell in values):
                break
            if rows and len(values) != len(rows[0][1]):
                break
            rows.append((column, values))
        if len({column.role for column, _ in rows} & LENGTH_ROLES) < 2:
            # Nor does a later line of the same run begin one: it has fewer labels.
            self.no_labels_before = at + len(rows)
            return 0
        for place in range(len(rows[0][1])):
            self._fill([(column, values[place]) for column, values in rows], ("column", at, place))
        return len(rows)

    def _with_blocks(self, at: int) -> int:
        """Lines used, if they are forms of a label a line, one for each size. A single form is no
        table, but its labels name their figures all the same."""
        if at < self.no_blocks_before:
            return 0
        looked, blocks = blocks_from(self.layout, self.lines, at)
        self.no_blocks_before = at + looked
        if len(blocks) == 1:
            note_form(self.layout, blocks[0], self.by_token)
            return 0
        for number, placed in enumerate(blocks):
            self._fill(placed, ("block", at, number))
        return looked if blocks else 0


def _by_offset(cells: list[Cell], columns: list[Column]) -> Placed | None:
    """A cell was left empty: what stands under which header tells."""
    placed = [
        (min(columns, key=lambda column: abs(column.offset - cell.offset)), cell) for cell in cells
    ]
    return placed if len({id(column) for column, _ in placed}) == len(placed) else None
