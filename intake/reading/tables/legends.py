"""Rows without a head, and elsewhere a legend that names what stands in them: '14 x 1.5 → 35' above
'(OD x wall → CLR, mm)', rows of bars above 'Columns are OD, wall, CLR, number of mandrels'."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field
from itertools import groupby, pairwise

from ..naming.cue_fits import fits
from ..text.cues import Cue
from ..text.figures import Figure, Layout, Row
from ..text.patterns import word_set
from ..text.roles import LENGTH_ROLES, RADIUS_ROLES
from .rows import RowFacts

_JOINTS = word_set(
    "x × * / , - – — → > = @ ( ) [ ] & + ; mm in inch inches by at on and then number"
)
_JOINTS |= word_set("of auf bei und dann zoll à sur et puis a en y luego su e poi op dan no nr qty")
_JOINTS |= {"|", "->", "=>"}
_MATERIALS = word_set("material grade werkstoff material matière materiale materiaal alloy güte")
_ITEMS = word_set("item pos line position row # posizione regel ligne zeile partida riga poste")
_OPENS = word_set("( [ : - – = columns column cols spalten colonnes columnas colonne kolommen are")
_OPENS |= word_set("format order is sind sont son sono zijn numbers figures each line ist es è est")
_MOST_WORDS = 4
"""A row holds hardly any words: 'the box limit is 24 x 6 x 6' is none."""
_LENGTHS = 3
"""An OD, a wall and a radius: fewer say too little."""


@dataclass(slots=True)
class _Legend:
    """The lengths that rows hold, in order, and what may stand around them."""

    cues: list[Cue] = field(default_factory=list)
    tokens: list[int] = field(default_factory=list)
    counted: bool = False
    """Whether the last column counts mandrels."""
    numbered: bool = False
    """Whether the first one numbers the rows."""


def assign_by_legend(layout: Layout, rows: dict[Row, RowFacts]) -> None:
    """Give the figures of such rows their roles, and the rows their counts."""
    legend = _legend(layout)
    if legend is None:
        return
    table = layout.line_of[legend.tokens[0]] + 1
    found = _by_line(layout, legend) or _in_a_run(layout, legend)
    for number, (lengths, count) in enumerate(found):
        row: Row = ("row", -table, number)
        rows[row] = RowFacts(quantity=count)
        for figure, cue in zip(lengths, legend.cues, strict=True):
            figure.give("times_d" if figure.unit == "D" else cue.role, "table")
            figure.link, figure.row = "apart", row
    for at in legend.tokens if found else ():
        if layout.tokens[at].cues:  # they name no other figure
            layout.tokens[at].kind, layout.tokens[at].cues = "word", ()


def _legend(layout: Layout) -> _Legend | None:
    """The one legend of a text."""
    at = 0
    found: list[_Legend] = []
    while at < len(layout.tokens):
        legend, end = _legend_from(layout, at)
        if legend is not None:
            found.append(legend)
        at = max(end, at + 1)
    return found[0] if len(found) == 1 else None


def _legend_from(layout: Layout, begin: int) -> tuple[_Legend | None, int]:
    legend = _Legend()
    for at in range(begin, len(layout.tokens)):
        token = layout.tokens[at]
        cue = next((cue for cue in token.cues if cue.side != "after"), None)
        if token.number is not None:
            return None, at
        if cue is not None and cue.role in LENGTH_ROLES and not legend.counted:
            legend.cues.append(cue)
        elif legend.cues and cue is not None and cue.role == "quantity":
            legend.counted = True
        elif token.text in _ITEMS and not legend.cues:
            legend.numbered = True
        elif token.text not in (_JOINTS | _MATERIALS) and token.kind not in ("times", "gap"):
            break
        elif not legend.cues and not legend.numbered:
            return None, at
        legend.tokens.append(at)
    kinds = ["radius" if cue.role in RADIUS_ROLES else cue.role for cue in legend.cues]
    whole = sorted(kinds) in (["od", "radius", "wall"], ["id", "radius", "wall"])
    ahead = layout.tokens[begin - 1] if begin else None
    opened = ahead is None or ahead.kind in ("line", "para") or ahead.text in _OPENS
    end = legend.tokens[-1] + 1 if legend.tokens else begin
    return (legend if whole and opened else None), end


_Found = list[tuple[list[Figure], int | None]]


def _by_line(layout: Layout, legend: _Legend) -> _Found:
    """Each row on a line of its own, two at the least."""
    named = {
        layout.line_of[at]
        for at, token in enumerate(layout.tokens)
        if any(cue.role in LENGTH_ROLES for cue in token.cues)
    }
    found: _Found = []
    numbers: list[int] = []
    for line, run in groupby(layout.figures, key=lambda figure: figure.line):
        figures = list(run)
        words = sum(
            token.kind == "word" and of == line
            for token, of in zip(layout.tokens, layout.line_of, strict=True)
        )
        if (
            line in named
            or words > _MOST_WORDS
            or any(figure.row is not None for figure in figures)
        ):
            continue
        more = len(figures) - _LENGTHS - legend.counted
        if more not in (0, 1) or (legend.numbered and not more):
            continue
        if more:
            numbers.append(int(figures[0].number.value) if _is_whole(figures[0]) else 0)
        count = figures[-1] if legend.counted else None
        if count is not None and not _is_whole(count):
            continue
        lengths = figures[more : more + _LENGTHS]
        if _fit(lengths, legend):
            found.append((lengths, int(count.number.value) if count is not None else None))
    if len(found) < 2 or (numbers and not _counts_up(numbers, len(found))):
        return []
    for lengths, _ in found:
        line = lengths[0].line
        for figure in layout.figures:
            if figure.line == line and figure not in lengths:
                figure.give("noise", "place")
    return found


def _in_a_run(layout: Layout, legend: _Legend) -> _Found:
    """'28 x 1.5 at 56, 35 x 1.5 at 70 and 42 x 2 at 84 (OD x wall at CLR)': all parted alike."""
    behind = [f for f in layout.figures if f.token < legend.tokens[0]]
    sentence = layout.sentence_of[legend.tokens[0]]
    run = [f for f in behind if f.sentence == sentence and f.row is None]
    if legend.counted or not run or len(run) % _LENGTHS or len(run) == _LENGTHS:
        return []
    found = [(run[at : at + _LENGTHS], None) for at in range(0, len(run), _LENGTHS)]
    parted = {tuple(_words(layout, *pair) for pair in pairwise(row)) for row, _ in found}
    alike = len(parted) == 1 and all(_fit(row, legend) for row, _ in found)
    named = any(t.cues for t in layout.tokens[run[0].token : run[-1].token + 1])
    return [] if named or not alike else list(found)


def _words(layout: Layout, left: Figure, right: Figure) -> str:
    return re.sub(r"\s", "", layout.text[left.end : right.start]).casefold()


def _fit(lengths: Sequence[Figure], legend: _Legend) -> bool:
    """Whether figures can be what the legend says, and nothing else has named them."""
    if any(figure.role is not None for figure in lengths):
        return False
    if not all(fits(figure, cue) for figure, cue in zip(lengths, legend.cues, strict=True)):
        return False
    by_role = {cue.role: f for cue, f in zip(legend.cues, lengths, strict=True)}
    wall, od = by_role.get("wall"), by_role.get("od")
    if wall is None or od is None or wall.is_gauge or wall.unit != od.unit:
        return True
    return wall.number.value * 2 < od.number.value


def _is_whole(figure: Figure) -> bool:
    whole = figure.number.value == figure.number.value.to_integral_value()
    return whole and figure.unit is None and figure.number.style == "integer"


def _counts_up(numbers: Sequence[int], rows: int) -> bool:
    steps = {b - a for a, b in pairwise(numbers)}
    return len(numbers) == rows and len(steps) == 1 and steps <= {1, 10, 100}
