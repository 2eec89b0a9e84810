"""How the weekly report looks in a terminal or a text file."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from rich.console import Console

from ..rules.assessment import Decision
from ..rules.request import SizeRequest
from ..rules.units import MM_PER_INCH
from .model import Kind
from .report import Report
from .report_count import Size, SizeCount
from .screen import ANSWERS, Unit, console, hanging, material, size, table

MOST_SHOWN = 10
"""Sizes in a table; the JSON has all of them."""


def report_view(out: Console, report: Report) -> None:
    """One week on one screen."""
    count = report.count
    days = f"{count.week.monday:%d %B} to {count.week.sunday:%d %B %Y}"
    out.print(f"Week {count.week}, {days} ({report.why_week}; {report.zone})", style="bold")
    out.print()
    kinds = [f"{kind} {report.kinds[kind]}" for kind in Kind if report.kinds[kind]]
    out.print(hanging("messages", f"{report.kinds.total()} ({', '.join(kinds) or 'none'})"))
    sizes = f"{_some(count.requests, 'request')} from {_some(count.customers, 'customer')}"
    if count.incomplete:
        sizes += f"; {count.incomplete} without OD, wall or CLR"
    out.print(hanging("sizes", sizes))
    out.print(hanging("answers", _outcomes(count.outcomes) or "none"))
    waiting = _some(report.waiting, "message")
    out.print(hanging("waiting", f"{waiting}, of this or any other week"))
    if count.sizes:
        out.print()
        _size_table(out, "Most requested", count.sizes)
    if count.doubtful:
        _size_table(out, "In doubt: counted apart until a person settles them", count.doubtful)


def report_text(report: Report) -> str:
    """The same as plain text for a file, 100 columns wide."""
    out = console(width=100)
    with out.capture() as capture:
        report_view(out, report)
    return "\n".join(line.rstrip() for line in capture.get().splitlines()) + "\n"


def _size_table(out: Console, title: str, counts: Sequence[SizeCount]) -> None:
    rows = table("OD × wall × CLR", "material", "customers", "requests", "answers", title=title)
    rows.columns[0].no_wrap = True
    for column in rows.columns[2:4]:
        column.justify = "right"
    for count in counts[:MOST_SHOWN]:
        request = SizeRequest(
            shape=count.shape,
            od_mm=count.size.od_mm,
            wall_mm=count.size.wall_mm,
            clr_mm=count.size.clr_mm,
            material=count.material,
            written_in=_units(count.size)[0],
        )
        rows.add_row(
            "\n".join(size(request, unit) for unit in _units(count.size)),
            material(request),
            str(count.customers),
            str(count.requests),
            _outcomes(count.outcomes),
        )
    out.print(rows)
    if len(counts) > MOST_SHOWN:
        out.print(f"and {_some(len(counts) - MOST_SHOWN, 'more size')}")
    out.print()


def _units(written: Size) -> tuple[Unit, Unit]:
    """Both units, the one first that the size is a plain figure in."""
    inches = [mm / MM_PER_INCH for mm in (written.od_mm, written.wall_mm)]
    plain = all(inch == round(inch, 4) for inch in inches)
    return ("in", "mm") if plain else ("mm", "in")


def _outcomes(outcomes: Counter[Decision]) -> str:
    return ", ".join(f"{outcomes[d]} {ANSWERS[d]}" for d in Decision if outcomes[d])


def _some(number: int, thing: str) -> str:
    return f"{number} {thing}{'' if number == 1 else 's'}"
