"""Lines of a table cut into cells, and what the head of a column says of it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from ..counts.words import is_mandrel
from ..text.figures import Layout
from ..text.patterns import word_set
from ..text.roles import LENGTH_ROLES, Role
from ..text.tokens import Token
from .heads import asks_stock, is_ratio, measures_else, names_references

ColumnRole = Role | Literal["", "material", "when", "wanted", "words", "code", "there"]
"""What a column holds; '' for what nobody here needs, 'wanted' for a count or a date, 'words' for a
description, which may tell a whole size, 'code' for what may be the number of a part,
'there' for whether a mandrel is there already."""
_SIZE_ROLES: frozenset[Role] = LENGTH_ROLES | {"times_d", "nps", "dn", "schedule"}
_COLUMN_ROLES: frozenset[Role] = _SIZE_ROLES | {"quantity"}
SIZE_ROLE_OF: dict[ColumnRole, Role] = {role: role for role in _SIZE_ROLES}
"""The role that a column gives its figures; none for columns that hold no size."""
_MATERIAL_STEMS = ("material", "werkstoff", "materiaal", "wkst")
_MATERIAL_WORDS = word_set(
    "material matl mat mat'l mtl grade werkstoff matière matiere material materiale materiaal",
    "alloy spec qualität kwaliteit nuance 材質 stoff güte werkst legierung matériau matériaux",
    "alliage calidad aleación qualità qualita lega legering qualité",
)
_DESCRIPTION_WORDS = word_set(
    "description descr desc bezeichnung beschreibung kurztext désignation descriptif descripción",
    "concepto descrizione omschrijving benaming",
)
_WANTED_WORDS = word_set("needed required reqd req'd wanted ordered")
_WHEN_WORDS = word_set(
    "date dates deliv delivery dock due need eta datum termin liefertermin wunschtermin",
    "lieferdatum lieferung bedarf livraison fecha entrega consegna data levering leverdatum",
    "dostawa 納期",
)
_LETTERS: dict[str, Role] = {
    "d": "od", "da": "od", "ø": "od", "do": "od", "s": "wall", "t": "wall", "e": "wall",
    "w": "wall", "wt": "wall", "wd": "wall", "wandd": "wall", "dikte": "wall",
    "ep": "wall", "ép": "wall", "epais": "wall", "stärke": "wall", "staerke": "wall",
    "di": "id", "rc": "radius", "ri": "inside_r",
}  # fmt: skip
"""What single letters head a column with, on drawings and in lists; R is a word of its own."""
_SHORTENED: dict[str, Role] = {
    "d e": "od", "d ext": "od", "d est": "od", "d ex": "od", "d aus": "od", "d i": "id",
    "d int": "id",
}  # fmt: skip
"""Diameters that a head shortens to single letters: 'D.E.', 'D. ext.'."""
GAUGE_WORDS = word_set("ga gauge gage")
SCHEDULE_WORDS = word_set("sch sched schedule schd")
_DIAMETER = ("diam", "diám", "dia", "durchm", "dm", "ø")
_OUTSIDE = ("ext", "est", "auß", "aus", "out", "buit", "uitw")
_INSIDE = ("int", "inn", "ins", "bin")
_UNITS = {
    "mm": "mm", "in": "in", "inch": "in", "inches": "in", "zoll": "in", '"': "in", "cm": "cm",
    "ga": "ga",
}  # fmt: skip
_ROUND_UNITS = frozenset(("(", ")", "[", "]", ",", "/", ""))
_BARS = frozenset(("|", ";"))


@dataclass(slots=True)
class Column:
    """A table's column: what it holds, its unit, and where it starts on the line."""

    role: ColumnRole
    unit: str | None
    offset: int


_COUNT_ENDS = ("anzahl", "menge", "bedarf", "stückzahl")
_POINTS = ".?:'’"
_COUNT_HEADS = frozenset(
    head.strip()
    for head in """how many | how many mandrels | how many off | how many needed | count |
    amount | q ty | q'ty | # mandrels | # of mandrels | mandrels # | nb mandrins | nbre mandrins |
    nombre de mandrins | nombre mandrins | tools | no of tools | number of tools | number wanted |
    to make | to order | wie viele | wieviel | wie viel | wieviele | bedarf |
    anzahl dorne | nombre |
    combien | combien de mandrins | nb | nbre | nbre de mandrins | nb de mandrins | qtà |
    bedarf stk | bedarf stück | cuántos | cuantos | cuántas | cuantas | quanti | quante |
    quanti mandrini | hoeveel | hoeveel stuks | hoeveelheid | à faire | a hacer |
    da fare""".split("|")
)
"""Heads that count the mandrels of a row; 'number' alone may number the rows."""


@dataclass(frozen=True, slots=True)
class Cell:
    """The token indexes of a cell, and where it starts on the line."""

    offset: int
    tokens: tuple[int, ...]


def cells_of(layout: Layout, indexes: Sequence[int]) -> list[Cell]:
    """The cells of a line, given its tokens; empty cells between bars are kept."""
    if not indexes:
        return []
    first = layout.tokens[indexes[0]].start
    begin = layout.text.rfind("\n", 0, first) + 1
    bars = any(layout.tokens[index].text in _BARS for index in indexes)
    # Tabs before the first word are empty cells, where others part the rest of the line.
    before = layout.text.count("\t", begin, first) if tabbed(layout, indexes) else 0
    cells = [Cell(number, ()) for number in range(before)]
    offset, current = first - begin, list[int]()
    for index in indexes:
        token = layout.tokens[index]
        tabs = token.text.count("\t") if token.kind == "gap" else 0
        if token.kind == "gap" and not tabs and index == indexes[-1]:
            continue  # blanks at the end of a line begin no cell
        if token.kind == "gap" and any(map(str.isdigit, token.text)):
            continue  # "±0.1" stands in a cell
        if token.text in _BARS or (token.kind == "gap" and (tabs or not bars)):
            cells.append(Cell(offset, tuple(current)))
            offset, current = token.end - begin, []
            cells.extend(Cell(offset, ()) for _ in range(tabs - 1))
        elif token.kind != "gap":  # between bars, wide blanks only fill up the cell
            current.append(index)
    cells.append(Cell(offset, tuple(current)))
    if bars:
        # The bars at both ends of "| 38 | 1.5 |" enclose the row.
        last = len(cells) - 1
        begins = -1 if layout.tokens[indexes[0]].text == ";" else 0
        cells = [cell for n, cell in enumerate(cells) if cell.tokens or begins < n < last]
    return cells


def tabbed(layout: Layout, indexes: Sequence[int]) -> bool:
    """Whether tabs or semicolons part the cells of a line: then its cells count from the left."""
    tokens = [layout.tokens[index] for index in indexes]
    return any(
        token.text == ";" or (token.kind == "gap" and "\t" in token.text) for token in tokens
    )


def column_of(layout: Layout, cell: Cell) -> Column | None:
    """What a column holds by the words of its head; None where it has figures or no words."""
    tokens = [layout.tokens[index] for index in cell.tokens]
    if not tokens or any(t.number is not None and t.block != "count" for t in tokens):
        return None
    head = _head(tokens)
    if asks_stock(head.rstrip(" ?")):
        return Column("there", None, cell.offset)
    if is_ratio(head):
        return Column("times_d", None, cell.offset)
    if _counts_tubes(tokens) or measures_else(head):
        return Column("noise", None, cell.offset)
    if head in _COUNT_HEADS:
        return Column("wanted", None, cell.offset)
    for token in tokens:
        for cue in token.cues:
            if cue.role in _COLUMN_ROLES:
                return Column(cue.role, _unit_of(tokens), cell.offset)
    role, unit = _by_other_words(tokens)
    if not role and any(cue.role == "label" for cue in tokens[0].cues):
        if any(cue.role == "noise" for token in tokens for cue in token.cues):
            return Column("noise", None, cell.offset)  # "Tube length"
        return Column("label", _unit_of(tokens), cell.offset)  # "Tube", but not "Tube material"
    if not role and names_references(head):
        return Column("code", None, cell.offset)
    return Column(role, unit, cell.offset)


def _counts_tubes(tokens: list[Token]) -> bool:
    """'pcs of tube', 'tube qty': a count, but not of mandrels."""
    roles = {t.cues[0].role for t in tokens if t.cues and not is_mandrel(t.text)}
    return "quantity" in roles and "label" in roles


def _by_other_words(tokens: list[Token]) -> tuple[ColumnRole, str | None]:
    words = {token.text.strip(".") for token in tokens}
    letter = _LETTERS.get(tokens[0].text.strip("."))
    if letter is not None and words <= {tokens[0].text.strip("."), *_UNITS, *_ROUND_UNITS}:
        return letter, _unit_of(tokens)
    bare = [
        token for token in tokens if token.text not in _UNITS and token.text not in _ROUND_UNITS
    ]
    across = _diameter_of(words) or _SHORTENED.get(_head(bare))
    if across is not None:
        return across, _unit_of(tokens)
    if words & _DESCRIPTION_WORDS:
        return "words", None
    if words & _WHEN_WORDS:
        return "when", None
    if words & _WANTED_WORDS:
        return "wanted", None
    if any(cue.role == "noise" for cue in tokens[0].cues):
        return "noise", None
    if words & GAUGE_WORDS:
        return "wall", "ga"
    if words & SCHEDULE_WORDS:
        return "schedule", "sch"
    if words & _MATERIAL_WORDS or any(token.kind == "material" for token in tokens):
        return "material", None
    named = (word for word in words if not word.endswith(("nummer", "nr", "no")))
    if any(stem in word for word in named for stem in _MATERIAL_STEMS):
        return "material", None  # "Rohrwerkstoff", "Materiaalsoort"
    if any(word.startswith("dorn") and word.endswith(_COUNT_ENDS) for word in words):
        return "quantity", None  # "Dornanzahl"
    return "", None


def _unit_of(tokens: list[Token]) -> str | None:
    """The unit that a head names; 'in' before another is the little word: 'OD in mm'."""
    units = [_UNITS[token.text] for token in tokens if token.text in _UNITS]
    return next((unit for unit in units if unit != "in"), units[0] if units else None)


def _head(tokens: list[Token]) -> str:
    """The words of a head without its points: 'how many'."""
    return " ".join(filter(None, (token.text.strip(_POINTS) for token in tokens)))


def _diameter_of(words: set[str]) -> Role | None:
    """'Diám. ext.', 'Durchm. innen', 'dia. out.': the diameter as a head shortens it."""
    if not any(stem in word for word in words for stem in _DIAMETER):
        return None
    if any(word.startswith(_OUTSIDE) for word in words):
        return "od"
    if any(word.startswith(_INSIDE) for word in words):
        return "id"
    return "od" if "durchm" in words else None


def inline_columns(layout: Layout, indexes: Sequence[int]) -> list[Column]:
    """'OD wall CLR qty' with single spaces, commas or slashes: only cue words, no figures.

    Nothing where other words stand between.
    """
    columns: list[Column] = []
    for index in indexes:
        token = layout.tokens[index]
        role: ColumnRole = ""
        if token.kind == "cue" and token.cues[0].role in _COLUMN_ROLES | {"label"}:
            role = token.cues[0].role
        elif token.text.strip(".") in _MATERIAL_WORDS or token.kind == "material":
            role = "material"
        elif token.text in ("t", "s"):
            role = "wall"  # as East Asian drawings call it
        elif token.text in _UNITS and columns:
            columns[-1].unit = _UNITS[token.text]
            continue
        elif token.kind in ("punct", "times", "gap"):
            continue
        elif token.kind != "cue":
            return []
        columns.append(Column(role, None, token.start))
    return columns


def names_wall(layout: Layout, cell: Cell) -> bool:
    """Whether a wall is named in a head, perhaps beside another length."""
    return any(cue.role == "wall" for index in cell.tokens for cue in layout.tokens[index].cues)


def names_mandrel(layout: Layout, cell: Cell) -> bool:
    """Whether a head names mandrels."""
    return any(is_mandrel(layout.tokens[index].text) for index in cell.tokens)


def has_unit(layout: Layout, cell: Cell) -> bool:
    """Whether a cell names a unit."""
    return any(layout.tokens[index].text in _UNITS for index in cell.tokens)


def take_units(layout: Layout, cells: list[Cell], columns: list[Column]) -> None:
    """A row of units below the head: 'in | in | in'."""
    if len(cells) == len(columns):
        for column, cell in zip(columns, cells, strict=True):
            for index in cell.tokens:
                column.unit = column.unit or _UNITS.get(layout.tokens[index].text)
