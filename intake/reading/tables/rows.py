"""The figures of a table's row take the roles of their columns; the row's other facts are kept."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from ....rules.grades import family_of_designation
from ....rules.request import Material
from ..material.materials import MaterialMention
from ..sizes.groups import Slot
from ..text.figures import LISTED, Figure, Layout, Row
from ..text.patterns import word_set
from ..text.roles import LENGTH_ROLES, RADIUS_ROLES, Role
from ..text.tokens import Token
from .cells import SIZE_ROLE_OF, Cell, Column

Placed = list[tuple[Column, Cell]]
_MOST_WANTED = 100
"""A larger number under 'Needed' counts no mandrels."""
_LONGEST_SIZE = 3
_PIECES = word_set("pcs pc ea each off stück stk pièces pcs uds pz pezzi stuks st")
_LONGEST_VALUE = 4
"""Tokens of a value in a form: more is prose."""
_DASHES = frozenset({"-", "--", "---", "–", "—", "n/a", "na", "none", "nil", "keine", "aucun"})
_GIVES_WAY: frozenset[Role | None] = frozenset({None, "label", "quantity", "noise", "die", "od"})


@dataclass(slots=True)
class RowFacts:
    """What a table row says beside its lengths."""

    quantity: int | None = None
    material: MaterialMention | None = None
    has_material_column: bool = False
    when: str = ""
    """A delivery date as written in the row."""
    like_above: set[Slot] = field(default_factory=set)
    """The lengths that a ditto mark takes over from the row above."""
    no_count: bool = False
    """Whether the table has a column of counts, and the row a dash in it."""


def fill_row(
    layout: Layout, placed: Placed, row: Row, by_token: Mapping[int, Figure], facts: RowFacts
) -> None:
    """Give the figures of one row their roles. ``by_token`` finds a figure by its token."""
    for column, cell in placed:
        figures = [by_token[index] for index in cell.tokens if index in by_token]
        for figure in figures:
            figure.row = row
        facts.has_material_column = facts.has_material_column or column.role == "material"
        if column.role in ("code", "noise"):
            _forget_grade(layout, cell)
            _note_other_counts(layout, cell)
        for index in cell.tokens:
            _take_fact(column, layout.tokens[index], facts)
        if column.role == "material" and facts.material is None:
            facts.material = _short_name(layout, cell)
        if column.role == "quantity":
            said = "".join(layout.tokens[index].text for index in cell.tokens)
            facts.no_count = said in _DASHES
        if column.role in ("when", "wanted") and cell.tokens:
            _take_when(layout, facts, cell, wanted=column.role == "wanted")
        role = SIZE_ROLE_OF.get(column.role)
        if column.role in LENGTH_ROLES and not figures:
            _note_lengths(layout, cell)
        if column.role in {*SIZE_ROLE_OF, "material"} and cell.tokens and not figures:
            first, last = layout.tokens[cell.tokens[0]], layout.tokens[cell.tokens[-1]]
            layout.without_figure.append((first.start, last.end))
        if role is not None:
            _take_column(role, column.unit, figures)
            if role == "schedule":
                _name_schedules(layout, figures)
        elif column.role == "words":
            continue
        elif column.role == "label" and len(figures) <= _LONGEST_SIZE:
            _take_size(column, figures)
        elif column.role in ("", "code") and _is_remark(layout, placed, cell, figures):
            continue
        else:
            _set_aside(column, figures)


def note_form(layout: Layout, placed: Placed, by_token: Mapping[int, Figure]) -> None:
    """Keep what the labels of a form, 'e = 1,5', say of its figures."""
    for column, cell in placed:
        figures = [by_token[index] for index in cell.tokens if index in by_token]
        role = SIZE_ROLE_OF.get(column.role)
        if column.role == "noise":
            _note_other_counts(layout, cell)
        if column.role == "quantity":
            layout.form_count = _bare_count(layout, cell)
        if role in LENGTH_ROLES and len(figures) == 1 and len(cell.tokens) <= _LONGEST_VALUE:
            layout.forms.append((figures[0], role, column.unit))


def fill_forms(layout: Layout) -> None:
    """Name the figures of forms by their labels, where no word beside them has."""
    for figure, role, unit in layout.forms:
        if figure.role is None:
            _take_column(role, unit, [figure])


def _is_remark(layout: Layout, placed: Placed, cell: Cell, figures: list[Figure]) -> bool:
    """Whether a cell of remarks names a wall or a radius: 'wall is .083', 'use R 80'; a radius only
    where no column has one."""
    if len(figures) != 1:
        return False
    roles = {cue.role for index in cell.tokens for cue in layout.tokens[index].cues} & LENGTH_ROLES
    if roles == {"wall"}:
        return True
    has_radius = any(column.role in RADIUS_ROLES and c.tokens for column, c in placed)
    return bool(roles) and roles <= RADIUS_ROLES and not has_radius


def _note_lengths(layout: Layout, cell: Cell) -> None:
    """'304' alone below 'CLR' is a radius, though elsewhere it would be a stainless steel."""
    alone = layout.tokens[cell.tokens[0]] if len(cell.tokens) == 1 else None
    if alone is not None and alone.kind == "material" and alone.text.isdigit():
        layout.lengths.add(alone.start)


def _bare_count(layout: Layout, cell: Cell) -> int | None:
    """'2', '2 pcs', but not '500 parts per year'."""
    tokens = [layout.tokens[index] for index in cell.tokens]
    numbers = [token.number for token in tokens if token.number is not None]
    rest = [token for token in tokens if token.number is None and token.kind != "punct"]
    if len(numbers) != 1 or any(token.text not in _PIECES for token in rest):
        return None
    count = numbers[0].value
    whole = count == count.to_integral_value() and 0 < count <= _MOST_WANTED
    return int(count) if whole else None


def _note_other_counts(layout: Layout, cell: Cell) -> None:
    numbers = (layout.tokens[index].number for index in cell.tokens)
    layout.counts_else.update(number.start for number in numbers if number is not None)


def _forget_grade(layout: Layout, cell: Cell) -> None:
    """'A96251' alone below 'Part' is no aluminium, though elsewhere it would be."""
    alone = layout.tokens[cell.tokens[0]] if len(cell.tokens) == 1 else None
    if alone is not None and any(map(str.isdigit, alone.text)) and alone.kind == "material":
        alone.kind, alone.block, alone.material = "block", "code", None


def _take_fact(column: Column, token: Token, facts: RowFacts) -> None:
    if facts.material is None:
        if token.kind == "material":
            facts.material = token.material
        elif column.role == "material":
            facts.material = _bare_grade(token)
    if column.role == "quantity" and token.number is not None and facts.quantity is None:
        count = token.number.value
        facts.quantity = int(count) if count == count.to_integral_value() else None


def _bare_grade(token: Token) -> MaterialMention | None:
    """'1010' in a material column is a grade, though a bare number elsewhere is none."""
    grade = token.text.upper()
    family = family_of_designation("number", grade) if token.number is not None else None
    if family is None:
        return None
    return MaterialMention(token.start, token.end, grade, family, grade)


_SHORT_NAMES = {
    **dict.fromkeys(("m/s", "ms", "c/s", "cs"), Material.CARBON_STEEL),
    **dict.fromkeys(("s/s", "ss", "va", "st.steel", "s.steel"), Material.STAINLESS_STEEL),
    **dict.fromkeys(("al", "alu"), Material.ALUMINIUM),
    "cu": Material.COPPER,
    "ti": Material.TITANIUM,
}
"""What names a material only where a column asks for one."""


def _short_name(layout: Layout, cell: Cell) -> MaterialMention | None:
    family = _SHORT_NAMES.get("".join(layout.tokens[index].text for index in cell.tokens))
    if family is None:
        return None
    start, end = layout.tokens[cell.tokens[0]].start, layout.tokens[cell.tokens[-1]].end
    return MaterialMention(start, end, layout.text[start:end], family, None)


def _take_when(layout: Layout, facts: RowFacts, cell: Cell, *, wanted: bool) -> None:
    """A day of delivery, or under 'Needed' a count of mandrels."""
    first, last = layout.tokens[cell.tokens[0]], layout.tokens[cell.tokens[-1]]
    count = first.number.value if first.number is not None and len(cell.tokens) == 1 else None
    if count is None or count != count.to_integral_value():
        facts.when = layout.text[first.start : last.end]
    elif wanted and facts.quantity is None and first.unit is None and 0 < count <= _MOST_WANTED:
        facts.quantity = int(count)


def _take_column(role: Role, unit: str | None, figures: list[Figure]) -> None:
    """The column's role and unit, for the first figure of a cell and what is listed with it."""
    for position, figure in enumerate(figures):
        if position and figure.link not in LISTED and figure.link not in ("restate", "slash"):
            continue
        noise = (figure.unit or "").startswith("noise:")
        if (figure.role in _GIVES_WAY or figure.how == "cue") and not noise:
            figure.give("times_d" if figure.unit == "D" else role, "table")
        if figure.unit is None and role in LENGTH_ROLES:
            figure.unit = unit


def _name_schedules(layout: Layout, figures: list[Figure]) -> None:
    """A schedule column's '10S' is a name, not a number."""
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
        figures[0].give("od", "table")


def _set_aside(column: Column, figures: list[Figure]) -> None:
    """Figures of other columns measure nothing, unless a cell holds a whole size: '38 x 1.5'."""
    whole = any(figure.link in ("times", "slash") for figure in figures[1:])
    for figure in figures:
        bare = figure.role in (None, "quantity", "label") and not whole
        if column.role == "noise" or bare:
            figure.give("noise", "table")
