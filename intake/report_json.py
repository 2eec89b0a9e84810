"""The report as one JSON object, and the same figures as CSV: one figure a row."""

from __future__ import annotations

import csv
import io
import json
from collections import Counter
from collections.abc import Iterator
from typing import Any

from ..rules.assessment import Decision
from ..rules.demand import WEIGHT_UNIT, Plan
from .model import Kind
from .report import Report
from .report_count import SizeCount
from .report_demand import requests, tubes

CSV_HEAD = ("section", "item", "figure", "value")
_FORMULA_STARTS = ("=", "+", "-", "@", "\t", "\r")
"""A cell that begins so is worked out by a spreadsheet instead of shown."""


def as_json(report: Report, *, names: bool = False) -> str:
    """The report as one JSON object; lengths in mm, every decision and kind named even at 0.

    ``names``: with the customers' addresses; without, nothing in it tells who asked.
    """
    return json.dumps(figures(report, names=names), ensure_ascii=False)


def as_csv(report: Report, *, names: bool = False) -> str:
    """The same as CSV with the columns section, item, figure, value; lengths in mm."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\r\n")  # RFC 4180
    writer.writerow(CSV_HEAD)
    for section, value in figures(report, names=names).items():
        writer.writerows(_rows(section, value, ()))
    return out.getvalue()


def figures(report: Report, *, names: bool) -> dict[str, Any]:
    """All figures of the report as plain values."""
    count, weeks, waiting = report.count, report.weeks, report.waiting
    response = report.response
    return {
        "week": str(weeks),
        "from": weeks.first.monday.isoformat(),
        "to": weeks.last.sunday.isoformat(),
        "time_zone": report.zone,
        "messages": {kind: report.kinds[kind] for kind in Kind},
        "requests": count.requests,
        "customers": count.customers,
        "sizes": [_size(size, names) for size in count.sizes],
        "doubtful": [_size(size, names) for size in count.doubtful],
        "incomplete": count.incomplete,
        "outcomes": _outcomes(count.outcomes),
        "trend": [
            {"week": str(line.week), "requests": line.requests, "customers": line.customers}
            for line in report.trend
        ],
        "response": None
        if response is None
        else {
            "answered": response.answered,
            "median_seconds": int(response.median.total_seconds()),
            "slowest_seconds": int(response.slowest.total_seconds()),
        },
        "waiting": waiting.messages,
        "waiting_since": None if waiting.oldest is None else waiting.oldest.isoformat(),
        "waiting_needed_within_a_week": waiting.urgent,
        "approved_not_delivered": waiting.approved,
        "corrected_inquiries": report.corrections.inquiries,
        "corrections": [
            {"field": field, "notation": notation, "times": times}
            for (field, notation), times in sorted(report.corrections.fields.items())
        ],
        "open_questions": [
            {"inquiry": number, "questions": questions}
            for number, questions in report.open_questions.items()
        ],
        "declines": _declines(report),
        "demand": _demand(report, names),
        "missing_dies": [
            {
                "od_mm": float(die.od_mm),
                "clr_mm": float(die.clr_mm),
                "customers": die.customers,
                "requests": die.requests,
                **({"who": list(die.who)} if names else {}),
            }
            for die in report.demand.dies
        ],
    }


def _size(count: SizeCount, names: bool) -> dict[str, Any]:
    return {
        "shape": count.shape,
        "od_mm": float(count.size.od_mm),
        "wall_mm": float(count.size.wall_mm),
        "clr_mm": float(count.size.clr_mm),
        "material": count.material,
        "requests": count.requests,
        "customers": count.customers,
        "outcomes": _outcomes(count.outcomes),
        "customers_in_weeks_before": list(count.before),
        **({"who": list(count.who)} if names else {}),
    }


def _outcomes(outcomes: Counter[Decision]) -> dict[str, int]:
    return {decision: outcomes[decision] for decision in Decision}


def _declines(report: Report) -> dict[str, Any]:
    declines = report.declines
    return {
        "total": declines.total,
        "too_thin": declines.too_thin,
        "too_tight": declines.too_tight,
        "both": declines.both,
        "untold": declines.untold,
        "would_pass_at_wall_factor": [
            {"limit": float(step.limit), "declines": step.would_pass}
            for step in declines.wall_factor_steps
        ],
        "would_pass_at_d_of_bend": [
            {"limit": float(step.limit), "declines": step.would_pass}
            for step in declines.d_of_bend_steps
        ],
    }


def _demand(report: Report, names: bool) -> dict[str, Any]:
    demand = report.demand
    return {
        "weeks": demand.weeks,
        "customers": demand.customers,
        "weight": demand.weight / WEIGHT_UNIT,
        "without_mandrel": demand.without_mandrel,
        "unsettled": demand.unsettled,
        "plans": [_plan(plan, names) for plan in demand.plans],
    }


def _plan(plan: Plan, names: bool) -> dict[str, Any]:
    return {
        "customers": plan.customers,
        "weight": plan.weight / WEIGHT_UNIT,
        "proven": plan.proven,
        "mandrels": [
            {
                "diameter_low_mm": float(one.low_mm),
                "diameter_high_mm": float(one.high_mm),
                "balls": one.balls,
                "surface": one.surface,
                "customers": one.customers,
                "tubes": [
                    {
                        "od_mm": None if row.od_mm is None else float(row.od_mm),
                        "wall_mm": None if row.wall_mm is None else float(row.wall_mm),
                        "customers": customers,
                    }
                    for row, customers in tubes(one)
                ],
                "inquiries": sorted({row.inquiry for row in requests(one)}),
                **({"who": sorted({row.customer for row in requests(one)})} if names else {}),
            }
            for one in plan.mandrels
        ],
    }


def _rows(
    section: str, value: object, path: tuple[str, ...]
) -> Iterator[tuple[str, str, str, str]]:
    """Every single figure below ``value``; lists are numbered from 1."""
    if isinstance(value, (list, dict)):
        named = value.items() if isinstance(value, dict) else enumerate(value, start=1)
        for name, one in named:
            yield from _rows(section, one, (*path, str(name)))
    else:
        yield (section, " ".join(path[:-1]), path[-1] if path else section, _cell(value))


def _cell(value: object) -> str:
    text = "" if value is None else str(value)
    return f"'{text}" if isinstance(value, str) and text.startswith(_FORMULA_STARTS) else text
