"""A line of the sheet: one figure with its formula, symbols, range and source."""

from __future__ import annotations

from collections.abc import Callable
from decimal import Decimal
from typing import Literal

from .formula import Outside, described
from .request import Frozen

Unit = Literal["-", "mm", "mm3", "mm4", "%", "deg", "MPa", "N m", "text"]
Value = Decimal | Outside | None


class Figure(Frozen):
    """One line of the sheet."""

    name: str
    values: tuple[Decimal, ...] = ()
    """One value, or the low and high end of a range; empty with ``outside`` or ``text``."""
    unit: Unit
    text: str = ""
    """For what is no number."""
    formula: str
    symbols: str = ""
    valid: str = ""
    source: str
    note: str = ""
    outside: str = ""
    """Why there is no figure."""


class Section(Frozen):
    """Figures that belong together."""

    title: str
    figures: tuple[Figure, ...]


def figure_of(
    formula: Callable[..., object],
    *values: Value,
    unit: Unit,
    note: str = "",
    times: Decimal = Decimal(1),
) -> Figure:
    """A line of the sheet, described by the docstring of its ``formula``."""
    words = described(formula)
    outside = next((v.reason for v in values if isinstance(v, Outside)), "")
    figures = [times * v for v in values if isinstance(v, Decimal)]
    return Figure(
        name=words.title,
        values=() if outside else tuple(dict.fromkeys(figures)),
        unit=unit,
        formula=words.formula,
        symbols=words.symbols,
        valid=words.valid,
        source=words.source,
        note=note,
        outside=outside,
    )
