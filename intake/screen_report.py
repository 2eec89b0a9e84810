"""How the weekly report looks in a terminal or a text file: the short form."""

from __future__ import annotations

from collections.abc import Sequence

from rich.console import Console

from . import report_words as words
from .model import Kind
from .report import Report
from .report_count import SizeCount
from .screen import console, hanging, material, size, table

MOST_SHOWN = 10
"""Sizes in a table; the JSON has all of them."""
MOST_PLANS = 3
MOST_DIES = 3


def report_view(out: Console, report: Report, *, names: bool = False) -> None:
    """Some weeks on one screen."""
    count, weeks = report.count, report.weeks
    named = "Week" if weeks.number == 1 else "Weeks"
    about = f"({report.why_weeks}; {report.zone})"
    out.print(f"{named} {weeks}, {weeks.days} {about}", style="bold")
    out.print()
    kinds = [f"{kind} {report.kinds[kind]}" for kind in Kind if report.kinds[kind]]
    out.print(hanging("messages", f"{report.kinds.total()} ({', '.join(kinds) or 'none'})"))
    sizes = f"{words.some(count.requests, 'request')} from "
    sizes += words.some(count.customers, "customer")
    if count.incomplete:
        sizes += f"; {count.incomplete} without OD, wall or CLR"
    out.print(hanging("sizes", sizes))
    out.print(hanging("answers", words.outcomes(count.outcomes) or "none"))
    if report.declines.total:
        out.print(hanging("declines", words.declines(report)))
    if report.response is not None:
        out.print(hanging("replies", words.response(report)))
    if report.corrections.fields:
        out.print(hanging("readings", f"corrected: {words.corrections(report)}"))
    if report.open_questions:
        out.print(hanging("open", f"questions without an answer: {words.open_questions(report)}"))
    out.print(hanging("waiting", words.waiting(report)))
    if count.sizes:
        out.print()
        _size_table(out, "Most requested", count.sizes, names)
    if count.doubtful:
        _size_table(
            out, "In doubt: counted apart until a person settles them", count.doubtful, names
        )
    _make_next(out, report, names)


def report_text(report: Report, *, names: bool = False) -> str:
    """The same as plain text for a file, 100 columns wide."""
    out = console(width=100)
    with out.capture() as capture:
        report_view(out, report, names=names)
    return "\n".join(line.rstrip() for line in capture.get().splitlines()) + "\n"


def _size_table(out: Console, title: str, counts: Sequence[SizeCount], names: bool) -> None:
    trend = any(any(count.before) for count in counts)
    heads = ["OD × wall × CLR", "material", "customers", "requests"]
    rows = table(*heads, *(["before"] if trend else []), "answers", title=title)
    rows.columns[0].no_wrap = True
    for column in rows.columns[2 : 5 if trend else 4]:
        column.justify = "right"
    for count in counts[:MOST_SHOWN]:
        request = words.request_of(count)
        rows.add_row(
            "\n".join(size(request, unit) for unit in words.units(count.size)),
            material(request),
            str(count.customers),
            str(count.requests),
            *([words.a_week_before(count)] if trend else []),
            words.outcomes(count.outcomes),
        )
    out.print(rows)
    if trend:
        out.print(f"before: customers {words.compared()}")
    if len(counts) > MOST_SHOWN:
        out.print(f"and {words.some(len(counts) - MOST_SHOWN, 'more size')}")
    if names:
        _who_asked(out, counts[:MOST_SHOWN])
    out.print()


def _who_asked(out: Console, counts: Sequence[SizeCount]) -> None:
    """Names in a table of their own: beside the figures, addresses would break anywhere."""
    out.print()
    rows = table("OD × wall × CLR", "material", "who")
    rows.columns[0].no_wrap = True
    for count in counts:
        request = words.request_of(count)
        rows.add_row(
            size(request, words.units(count.size)[0]), material(request), words.named(count.who)
        )
    out.print(rows)


def _make_next(out: Console, report: Report, names: bool) -> None:
    demand = report.demand
    if not demand.plans:
        return
    rows = table("make", "customers", "which", title="What to make next")
    for column in rows.columns[:2]:
        column.justify = "right"
    for plan in demand.plans[:MOST_PLANS]:
        lines = []
        for one in plan.mandrels:
            lines.append(words.mandrel(one))
            lines.append(f"  for {words.tubes_served(one)}: {one.customers}")
            if names:
                lines.append(f"  {words.named({need.customer for need in one.serves})}")
        rows.add_row(str(len(plan.mandrels)), str(plan.customers), "\n".join(lines))
    out.print(rows)
    out.print(words.demand(report))
    if demand.dies:
        missing = "; ".join(
            f"{words.die(die.od_mm, die.clr_mm)}: {die.customers}"
            for die in demand.dies[:MOST_DIES]
        )
        out.print(f"dies missing most: {missing}")
    out.print()
