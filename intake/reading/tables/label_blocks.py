"""Forms that are filled in again and again: lines 'OD: 1.5', 'Wall: .065', 'Qty: 2' for each size.

Each block is a row of a table whose heads are its labels: a value that is missing ('CLR: -') is not
looked for in the next line, and what a label tells to be no length ('Annual volume: 500') is none.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

from ..text.figures import Layout
from ..text.roles import LENGTH_ROLES, Role
from .cells import Cell, Column, ColumnRole, column_of, has_unit
from .rows import Placed

_SIZES = LENGTH_ROLES | {"nps", "dn", "schedule", "times_d"}
_FEWEST_LENGTHS = 2
_FEWEST_BLOCKS = 2
_FEWEST_CELLS = 3
"""Of a line whose labels have no colon."""
_LONGEST_CELL = 8
"""Tokens of such a label and its value."""
_LONGEST_LABEL = 6
"""Tokens of a label, its unit and brackets among them."""
_LONGEST_HEADING = 5
"""Tokens of a line that parts two blocks: 'Item 3:', '--- 3 ---', 'Tube 2'."""
_LONGEST_NUMBER = 4
"""Tokens before a line's first label: 'n', '°', '1', ':'."""
_ASSIGNS = frozenset((":", "="))
_PARTS = frozenset(("|", ";", "/", ","))


@dataclass(slots=True)
class _Run:
    """Blocks right below each other."""

    blocks: list[Placed] = field(default_factory=list)
    lines: int = 0

    def sizes(self) -> list[Placed]:
        return [block for block in self.blocks if _lengths(block) >= _FEWEST_LENGTHS]


def blocks_from(layout: Layout, lines: Sequence[list[int]], at: int) -> tuple[int, list[Placed]]:
    """How many lines from the one at ``at`` on need not be looked at again, and what each of their
    blocks says that tells a size."""
    told = _lines_of_labels(layout, lines, at)
    if len(told) < _FEWEST_BLOCKS:
        told = _lines_alike(layout, lines, at)
    if told:
        return len(told), told
    if _labelled(layout, lines[at], dashes=True) is None:
        return 1, []
    run = _run(layout, lines, at)
    return run.lines, run.sizes()


def _run(layout: Layout, lines: Sequence[list[int]], at: int) -> _Run:
    run, block, labels = _Run(), list[tuple[Column, Cell]](), set[str]()
    for number in range(at, len(lines)):
        if _lengths(list(_pairs(layout, lines[number]))) >= _FEWEST_LENGTHS:
            break  # a size on one line
        pair = _labelled(layout, lines[number], dashes=True, known=number == at)
        if pair is None:
            if len(lines[number]) > _LONGEST_HEADING or not _goes_on(layout, lines, number):
                break
            run.blocks.append(block)
            block, labels = [], set()
            continue
        label = _words(layout, lines[number], pair[1])
        if label in labels or (pair[0].role in _SIZES and _has(block, pair[0])):
            run.blocks.append(block)
            block, labels = [], set()
        labels.add(label)
        block.append(pair)
        run.lines = number + 1 - at
    run.blocks.append(block)
    return run


def _goes_on(layout: Layout, lines: Sequence[list[int]], number: int) -> bool:
    """Whether a label stands right below the line, or below one more of its kind."""
    below = lines[number + 1 : number + 3]
    return any(_labelled(layout, line, dashes=True) is not None for line in below)


def _lines_of_labels(layout: Layout, lines: Sequence[list[int]], at: int) -> list[Placed]:
    """'OD: 1.5 / Wall: .065 / Qty: 2': each line a block of its own."""
    found: list[Placed] = []
    for indexes in lines[at:]:
        placed = list(_pairs(layout, indexes))
        if _lengths(placed) < _FEWEST_LENGTHS:
            break
        found.append(placed)
    return found


def _lines_alike(layout: Layout, lines: Sequence[list[int]], at: int) -> list[Placed]:
    """'OD 38 | Wall 2 | Qty 1' above 'OD 40 | Wall 2 | Qty 3': the same labels, line by line, and
    nothing but a blank behind each."""
    found: list[Placed] = []
    labels: list[str] = []
    whole = True
    for indexes in lines[at:]:
        cells = list(_parted(layout, indexes[_numbered(layout, indexes) :]))
        firsts = [_first_word(layout, cell) for cell in cells]
        if len(cells) < _FEWEST_CELLS or (found and firsts != labels):
            break
        if max(map(len, cells)) > _LONGEST_CELL:
            break  # prose
        headed = [_headed(layout, cell) for cell in cells]
        placed = [pair for pair in headed if pair is not None]
        if _lengths(placed) < _FEWEST_LENGTHS or _has_bare(layout, cells, headed):
            break
        found.append(placed)
        whole = whole and len(placed) == len(cells)
        labels = firsts
    return found if whole or len(found) >= _FEWEST_BLOCKS else []


def _has_bare(
    layout: Layout, cells: Sequence[list[int]], headed: Sequence[tuple[Column, Cell] | None]
) -> bool:
    """'76 CLR' beside 'OD 38': not every figure stands behind its label."""
    return any(
        pair is None and any(layout.tokens[index].number is not None for index in cell)
        for cell, pair in zip(cells, headed, strict=True)
    )


def _parted(layout: Layout, indexes: Sequence[int]) -> Iterator[list[int]]:
    """The cells of one line, between bars, commas, strokes or wide blanks."""
    cell: list[int] = []
    for index in indexes:
        token = layout.tokens[index]
        spaced = token.text not in ("/", ",") or layout.text[token.end : token.end + 1].isspace()
        if token.kind == "gap" or (token.text in _PARTS and spaced):
            if cell:
                yield cell
            cell = []
        else:
            cell.append(index)
    if cell:
        yield cell


def _first_word(layout: Layout, cell: Sequence[int]) -> str:
    token = layout.tokens[cell[0]]
    return layout.text[token.start : token.number.start if token.number else token.end].casefold()


def _headed(layout: Layout, cell: Sequence[int]) -> tuple[Column, Cell] | None:
    """'Wall 2': the words before the first figure or material head it."""
    for place, index in enumerate(cell[: _LONGEST_LABEL + 1]):
        token = layout.tokens[index]
        if token.number is not None and token.cues and not place:
            column = Column(_column_role(token.cues[0].role), None, token.start)
            return column, Cell(token.number.start, tuple(cell))  # "Ø 38 x 1.5" has a wall too
        if token.number is not None or token.kind in ("material", "block"):
            if token.unit == "D":
                return Column("times_d", None, token.start), Cell(token.start, (index,))
            column_found = column_of(layout, Cell(0, tuple(cell[:place]))) if place else None
            if column_found is None:
                return None
            return column_found, Cell(token.start, tuple(cell[place:]))
    return None


def _pairs(layout: Layout, indexes: Sequence[int]) -> Iterator[tuple[Column, Cell]]:
    """The labels of one line, each with what stands behind it up to the next."""
    indexes = indexes[_numbered(layout, indexes) :]
    starts = [0]
    for place, index in enumerate(indexes):
        token = layout.tokens[index]
        parts = token.text in _PARTS or token.kind == "gap"
        if token.text == "/" and not layout.text[token.start - 1 : token.start].isspace():
            continue  # "D/e = 12"
        behind = indexes[place + 1 : place + 2 + _LONGEST_LABEL]
        if parts and _labelled(layout, behind, dashes=False) is not None:
            starts.append(place + 1)
    for begin, end in zip(starts, [*starts[1:], len(indexes) + 1], strict=True):
        pair = _labelled(layout, indexes[begin : end - 1], dashes=False)
        if pair is not None:
            yield pair


def _numbered(layout: Layout, indexes: Sequence[int]) -> int:
    """How many tokens number the line: '1) ', '2. ', '- ', 'No. 2: ', 'n° 1: '."""
    texts = [layout.tokens[index].text for index in indexes[:_LONGEST_NUMBER]]
    if not texts:
        return 0
    at = 2 if texts[0] == "n" and texts[1:2] and texts[1] in (".", "°") else 1
    cues = layout.tokens[indexes[0]].cues
    if (at > 1 or (cues and cues[0].role == "noise")) and texts[at + 1 : at + 2] == [":"]:
        told = layout.tokens[indexes[at]]
        return at + 2 if texts[at].isdecimal() and not told.cues else 0
    first = layout.tokens[indexes[0]]
    if texts[0] in ("-", "*") or first.block == "item":
        return 1
    number = first.number is not None and not first.cues
    return 2 if number and len(texts) > 1 and texts[1] in (")", ".", ":") else 0


def _labelled(
    layout: Layout, indexes: Sequence[int], *, dashes: bool, known: bool = True
) -> tuple[Column, Cell] | None:
    """The label that a line begins with, and its value; None where it begins with none."""
    for place, index in enumerate(indexes[: _LONGEST_LABEL + 1]):
        token = layout.tokens[index]
        tab = token.kind == "gap" and ("\t" in token.text or "..." in token.text)
        if token.text in _ASSIGNS or (dashes and (token.text == "-" or tab)):
            head = indexes[:place]
            label = Cell(0, tuple(head))
            column = column_of(layout, label) if head else None
            if column is None or (len(head) == 1 and has_unit(layout, label)):
                return None  # "OD, mm: 38"
            value = tuple(i for i in indexes[place + 1 :] if layout.tokens[i].kind != "gap")
            if known and token.text not in _ASSIGNS and not column.role:
                return None  # "Thanks - Jo"
            return column, Cell(token.end, value)
        if token.number is not None:
            sign = layout.text[token.start : token.number.start].rstrip()[-1:]
            if not (sign in _ASSIGNS or (dashes and sign == "-")) or not token.cues:
                return None
            # "CLR: 4.5", "Tube Ø: 38": label and figure are one token
            column = Column(_column_role(token.cues[0].role), None, token.start)
            return column, Cell(token.number.start, tuple(indexes[place:]))
    return None


def _column_role(role: Role) -> ColumnRole:
    return role if role in _SIZES else ""


def _words(layout: Layout, indexes: Sequence[int], cell: Cell) -> str:
    return " ".join(
        layout.tokens[index].text for index in indexes if layout.tokens[index].start < cell.offset
    )


def _has(block: Placed, column: Column) -> bool:
    return any(one.role == column.role for one, _ in block)


def _lengths(block: Placed) -> int:
    """How many different lengths, or names of sizes, a block tells."""
    return len({column.role for column, cell in block if column.role in _SIZES})
