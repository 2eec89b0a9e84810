"""The report as one page to be printed: self-contained, the pictures inside."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import TYPE_CHECKING

from ..rules.demand import ToMake
from . import report_words as words
from .model import Kind
from .report import Report
from .report_charts import pictures
from .report_count import SizeCount
from .report_demand import requests
from .screen import material, size

if TYPE_CHECKING:
    from jinja2 import Template

PAGE = "report_page.html.j2"
MOST_SIZES = 8
MOST_DOUBTFUL = 3
MOST_DIES = 4
MOST_MANDRELS = 7
MOST_NUMBERS = 2
"""Inquiries in one cell; the JSON has all of them."""


@dataclass(frozen=True, slots=True)
class SizeRow:
    """A line of the table of sizes."""

    size: str
    other_unit: str
    material: str
    customers: int
    requests: int
    before: str
    outcomes: str
    who: str


@dataclass(frozen=True, slots=True)
class MandrelRow:
    """A mandrel of one or more plans."""

    diameter: str
    balls: str
    surface: str
    tubes: str
    customers: int
    inquiries: str
    who: str
    plans: tuple[bool, ...]


def as_html(report: Report, *, names: bool = False) -> str:
    """The whole page. ``names``: with the customers' addresses."""
    drawn = pictures(report)
    plans = report.demand.plans
    mandrels = _mandrels(report, names)
    return _page().render(
        report=report,
        words=words,
        pictures=drawn,
        key=_key_figures(report),
        sizes=_sizes(report.count.sizes[:MOST_SIZES], names),
        more_sizes=max(0, len(report.count.sizes) - MOST_SIZES),
        doubtful=_sizes(report.count.doubtful[:MOST_DOUBTFUL], names),
        more_doubtful=max(0, len(report.count.doubtful) - MOST_DOUBTFUL),
        mandrels=mandrels[:MOST_MANDRELS],
        more_mandrels=max(0, len(mandrels) - MOST_MANDRELS),
        plans=plans,
        unproven=any(not plan.proven for plan in plans),
        dies=report.demand.dies[:MOST_DIES],
        more_dies=max(0, len(report.demand.dies) - MOST_DIES),
        names=names,
    )


@lru_cache(maxsize=1)
def _page() -> Template:
    from jinja2 import Environment, StrictUndefined

    text = Path(__file__).with_name(PAGE).read_text("utf-8")
    page = Environment(
        autoescape=True, undefined=StrictUndefined, trim_blocks=True, lstrip_blocks=True
    )
    return page.from_string(text)


def _key_figures(report: Report) -> list[tuple[str, str, str]]:
    """(figure, what it is, more about it)."""
    count, waits = report.count, report.waiting
    kinds = ", ".join(f"{kind} {report.kinds[kind]}" for kind in Kind if report.kinds[kind])
    out = [
        (f"{report.kinds.total():,}", _or_one("messages", report.kinds.total()), kinds),
        (
            f"{count.requests:,}",
            "size asked for" if count.requests == 1 else "sizes asked for",
            f"{count.incomplete} without OD, wall or CLR" if count.incomplete else "",
        ),
        (f"{count.customers:,}", _or_one("customers", count.customers), "each counted once"),
    ]
    if report.response is None:
        out.append(("–", "median reply", "no first reply found in Sent"))
    else:
        found = report.response
        out.append(
            (words.lasting(found.median), "median reply", f"slowest {words.lasting(found.slowest)}")
        )
    oldest = waits.oldest
    since = f"oldest since {oldest.day} {oldest:%b %Y}" if oldest else ""
    urgent = f"{waits.urgent} needed within a week" if waits.urgent else ""
    waiting = "waits now" if waits.messages == 1 else "wait now"
    out.append((f"{waits.messages:,}", waiting, "; ".join(filter(None, (since, urgent)))))
    return out


def _or_one(things: str, number: int) -> str:
    return things.removesuffix("s") if number == 1 else things


def _sizes(counts: Sequence[SizeCount], names: bool) -> list[SizeRow]:
    rows = []
    for count in counts:
        request = words.request_of(count)
        first, other = words.units(count.size)
        rows.append(
            SizeRow(
                size=size(request, first),
                other_unit=size(request, other),
                material=material(request),
                customers=count.customers,
                requests=count.requests,
                before=words.a_week_before(count),
                outcomes=words.outcomes(count.outcomes),
                who=words.named(count.who) if names else "",
            )
        )
    return rows


def _mandrels(report: Report, names: bool) -> list[MandrelRow]:
    """Every mandrel of any plan once, those of the smaller plans first."""
    found: dict[tuple[object, ...], tuple[ToMake, list[bool]]] = {}
    plans = report.demand.plans
    for index, plan in enumerate(plans):
        for one in plan.mandrels:
            key = (one.low_mm, one.high_mm, one.balls, one.surface)
            found.setdefault(key, (one, [False] * len(plans)))[1][index] = True
    return [
        MandrelRow(
            diameter=words.diameter(one),
            balls=words.balls(one),
            surface=one.surface,
            tubes=words.tubes_served(one, 2),
            customers=one.customers,
            inquiries=_inquiries(one),
            who=words.named({row.customer for row in requests(one)}) if names else "",
            plans=tuple(marks),
        )
        for one, marks in found.values()
    ]


def _inquiries(one: ToMake) -> str:
    numbers = sorted({row.inquiry for row in requests(one)})
    shown = " ".join(f"#{number}" for number in numbers[:MOST_NUMBERS])
    more = len(numbers) - MOST_NUMBERS
    return f"{shown} (+{more:,})" if more > 0 else shown
