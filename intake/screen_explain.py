"""The sheet of a bend on a terminal: a figure a paragraph, legible at 80 columns."""

from __future__ import annotations

from decimal import ROUND_HALF_UP, Decimal
from typing import TYPE_CHECKING

from rich.padding import Padding
from rich.table import Table

from ..rules.units import MM_PER_INCH
from .cli_common import printable
from .screen import Unit, request_view

if TYPE_CHECKING:
    from rich.console import Console

    from ..rules.assessment import Assessment
    from ..rules.sheet import Figure, Section

_DECIMALS = {"%": 1, "deg": 1, "-": 3}
_SIGNIFICANT = 4
_WHERE = (
    'Sources S01 and so on are told in rules/data/SOURCES.md; M and "memory" mean that no page '
    "was read. Figures are for information; what the shop decides by are its two limits."
)


def explain_view(out: Console, assessment: Assessment, sections: tuple[Section, ...]) -> None:
    """One size: what was read and decided, then every figure with where it comes from."""
    request_view(out, assessment)
    if not sections:
        out.print()
        out.print("No sheet: OD, wall and CLR of a possible round bend are needed for it.")
    for section in sections:
        out.print()
        out.rule(section.title, style="dim", align="left")
        for figure in section.figures:
            _figure_view(out, figure, assessment.request.written_in)
    if sections:
        out.print()
        out.print(_WHERE, style="dim")


def value_words(figure: Figure, first: Unit) -> str:
    """'19.4 %', '0.5 to 1.1 deg', '41.0 mm'; why there is none where there is none."""
    if figure.outside:
        return f"no figure: {figure.outside}"
    if figure.unit == "text":
        return figure.text
    if figure.unit == "mm":
        return _lengths(figure.values, first)
    unit = "" if figure.unit == "-" else f" {figure.unit}"
    return f"{' to '.join(_number(value, figure.unit) for value in figure.values)}{unit}"


def _figure_view(out: Console, figure: Figure, first: Unit) -> None:
    head = Table.grid(padding=(0, 2), expand=True)
    head.add_column(ratio=1, overflow="fold")
    head.add_column(ratio=1, overflow="fold", style="bold")
    head.add_row(figure.name, printable(value_words(figure, first)))
    out.print(head)
    rows = Table.grid(padding=(0, 2))
    rows.add_column(min_width=8, no_wrap=True, style="dim")
    rows.add_column(overflow="fold", style="dim")
    for label, text in (
        ("formula", figure.formula),
        ("symbols", figure.symbols),
        ("range", figure.valid),
        ("source", figure.source),
        ("note", figure.note),
    ):
        if text:
            rows.add_row(label, printable(text))
    out.print(Padding(rows, (0, 0, 0, 2)))


def _lengths(values: tuple[Decimal, ...], first: Unit) -> str:
    """'1.572 to 1.580 in (39.93 to 40.13 mm)': to 0.001 in and 0.01 mm, as tools are measured."""
    written: dict[Unit, str] = {
        "in": " to ".join(f"{value / MM_PER_INCH:.3f}" for value in values) + " in",
        "mm": " to ".join(f"{value:.2f}" for value in values) + " mm",
    }
    return f"{written[first]} ({written['mm' if first == 'in' else 'in']})"


def _number(value: Decimal, unit: str) -> str:
    """Rounded for reading: fixed decimals for ratios and angles, four digits for the rest."""
    places = _DECIMALS.get(unit, max(0, _SIGNIFICANT - 1 - value.adjusted()))
    text = format(value.quantize(Decimal(1).scaleb(-places), ROUND_HALF_UP), "f")
    return text.rstrip("0").rstrip(".") if unit == "-" and "." in text else text
