"""Why a message was read as it was, on a terminal: its numbers, then the readings of each size."""

from __future__ import annotations

from decimal import Decimal
from typing import TYPE_CHECKING

from ..rules.units import format_in, format_mm
from .screen import Unit, one_line, said, table

if TYPE_CHECKING:
    from rich.console import Console

    from .reading.sizes.values import Value
    from .reading.why import PartWhy, Said, SizeWhy, Weighed

_HABIT = {
    "in": "Its marks and spellings speak for inches.",
    "mm": "Its marks and spellings speak for mm.",
    None: "Its marks and spellings speak for neither unit.",
}
_LEGEND = (
    "Costs in brackets: of a spelling, 0 the likeliest. Points: higher is likelier, they only rank "
    "readings; ? is near enough to the best to be asked about."
)


def why_view(out: Console, parts: tuple[PartWhy, ...]) -> None:
    """Every number of a message with its fate, every size with what else it might have been."""
    for part in parts:
        out.rule(f"why: {one_line(part.name)}", style="dim", align="left")
        out.print(_HABIT[part.usual_unit])
        _numbers(out, part)
        for number, size in enumerate(part.sizes, start=1):
            out.print()
            _size(out, number, size)
        out.print()
    out.print(_LEGEND if parts else "There is no number in it.", style="dim")
    out.print()


def _numbers(out: Console, part: PartWhy) -> None:
    rows = table("words", "taken for", "told by", "may be (cost)", "size")
    for number in part.numbers:
        rows.add_row(
            said(f"“{one_line(number.surface)}”"),
            number.what,
            number.told_by,
            _readings(number),
            ", ".join(map(str, number.sizes)) or "–",
        )
    out.print(rows)


def _readings(number: Said) -> str:
    return "\n".join(
        f"{_value(value, number.what)} ({value.cost:.1f})" + (f" {value.why}" if value.why else "")
        for value in number.readings
    )


def _value(value: Value, what: str) -> str:
    if "multiple" in what:
        return f"{format_mm(value.mm)} × OD"
    pipe = f", NPS {value.nominal}" if value.nominal else ""
    if value.system == "in":
        return f"{format_in(value.mm)} in{pipe}"
    return f"{format_mm(value.mm)} mm{pipe}"


def _size(out: Console, number: int, size: SizeWhy) -> None:
    if not size.weighed:
        out.print(f"Size {number}: a shape alone, nothing to weigh")
        return
    rows = table("", "OD", "wall", "CLR", "points", "for what; below, against the best")
    rows.title = f"Size {number} [{size.unit}]: what was weighed, the best first"
    rows.columns[4].justify = "right"
    for rank, weighed in enumerate(size.weighed):
        rows.add_row(
            "best" if not rank else "?" if weighed.doubted else "",
            *(_length(mm, unit, size.unit) for mm, unit in weighed.lengths),
            f"{weighed.score:.1f}",
            _points(weighed, best=not rank),
        )
    out.print(rows)
    if size.left_out:
        out.print(f"{size.left_out} more, further off", style="dim")


def _length(mm: Decimal | None, unit: str, usual: Unit) -> str:
    """A length in the size's unit; one that is read in the other unit is shown in that, named."""
    if mm is None:
        return "–"
    shown = unit or usual
    written = format_in(mm) if shown == "in" else format_mm(mm)
    return written if shown == usual else f"{written} {shown}"


def _points(weighed: Weighed, *, best: bool) -> str:
    told = "\n".join(f"{points:+.1f} {name}" for name, points in weighed.points)
    return told if best else told or "nothing sets it apart"
