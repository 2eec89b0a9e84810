"""What the report says in words, the same on screen and on paper."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator
from datetime import timedelta
from decimal import Decimal

from ..rules.assessment import Decision
from ..rules.demand import WEIGHT_UNIT, ToMake
from ..rules.request import SizeRequest
from ..rules.units import MM_PER_INCH, converted_in, format_in, format_mm
from .addressing import one_line
from .report import WEEKS_COMPARED, Report
from .report_count import Asked, Size, SizeCount
from .report_declines import Declines, Step
from .report_demand import balls_wanted, tubes
from .screen import ANSWERS, Unit

MOST_NAMES, LONGEST_NAME = 8, 80
MOST_STEPS = 3
"""Limits told, of those that would let more declines pass."""
FIELDS = {"od": "OD", "wall": "wall", "clr": "CLR", "needed_by": "date"}


def some(number: int, thing: str) -> str:
    """``1 request``, ``2 requests``; ``thing`` may end in y."""
    if number == 1:
        return f"1 {thing}"
    return f"{number:,} {thing[:-1]}ies" if thing.endswith("iry") else f"{number:,} {thing}s"


def outcomes(counts: Counter[Decision]) -> str:
    """``3 from stock, 1 decline``."""
    return ", ".join(f"{counts[d]} {ANSWERS[d]}" for d in Decision if counts[d])


def request_of(count: SizeCount) -> SizeRequest:
    """A counted size as a request, to be written as requests are."""
    return SizeRequest(
        shape=count.shape,
        od_mm=count.size.od_mm,
        wall_mm=count.size.wall_mm,
        clr_mm=count.size.clr_mm,
        material=count.material,
        written_in=units(count.size)[0],
    )


def units(written: Size) -> tuple[Unit, Unit]:
    """Both units, the one first that the size is a plain figure in."""
    return ("in", "mm") if _plain_inches(*written) else ("mm", "in")


def _plain_inches(*lengths_mm: Decimal) -> bool:
    return all((mm / MM_PER_INCH) == round(mm / MM_PER_INCH, 4) for mm in lengths_mm)


def a_week_before(count: SizeCount) -> str:
    """Customers a week in the weeks before, on average: ``1.5``; ``–`` where there were none."""
    if not any(count.before):
        return "–"
    return f"{sum(count.before) / len(count.before):g}"


def lasting(time: timedelta) -> str:
    """A stretch of time as people say it: ``4 h 10 min``, ``3 days 2 h``."""
    minutes = round(time.total_seconds() / 60)
    if minutes < 60:
        return f"{minutes} min"
    hours, minutes = divmod(minutes, 60)
    if hours < 48:
        return f"{hours} h {minutes} min" if minutes else f"{hours} h"
    days, hours = divmod(hours, 24)
    return f"{days} days {hours} h" if hours else f"{days} days"


def response(report: Report) -> str:
    """How soon replies went out."""
    if report.response is None:
        return "no first reply was found in the Sent folder"
    found = report.response
    return (
        f"{some(found.answered, 'first reply')}: median {lasting(found.median)}, slowest "
        f"{lasting(found.slowest)}"
    ).replace("first replys", "first replies")


def waiting(report: Report) -> str:
    """What waits now."""
    waits = report.waiting
    said = f"{some(waits.messages, 'message')}, of this or any other week"
    if waits.oldest is not None:
        said += f"; the oldest since {waits.oldest.day} {waits.oldest:%B %Y}"
    if waits.urgent:
        said += f"; {waits.urgent} needed within a week"
    if waits.approved:
        said += f"; {waits.approved} approved and not laid down"
    return said


def corrections(report: Report) -> str:
    """How often people put readings right, and how those had been written."""
    fields = report.corrections.fields
    if not fields:
        return "none"
    parts = [
        f"{FIELDS.get(field, field)} {times} ({notation})"
        for (field, notation), times in sorted(fields.items(), key=lambda one: (-one[1], one[0]))
    ]
    return f"{some(report.corrections.inquiries, 'inquiry')}: {', '.join(parts)}"


def open_questions(report: Report) -> str:
    """Questions that no approved answer fits, and where they stand."""
    found = report.open_questions
    if not found:
        return "none"
    numbers = ", ".join(f"#{number}" for number in list(found)[:12])
    more = ", ..." if len(found) > 12 else ""
    return f"{sum(found.values())}, in {numbers}{more}"


def declines(report: Report) -> str:
    """By how far declines were out: ``of 20: 14 would pass at wall factor 32``."""
    found = report.declines
    return f"of {found.total}: {'; '.join(_declines(found))}" if found.total else "none"


def _declines(found: Declines) -> Iterator[str]:
    for kind, steps in (("wall factor", found.wall_factor_steps), ("D", found.d_of_bend_steps)):
        told = _worth_telling(steps)
        if told:
            first = f"{told[0].would_pass} would pass at {kind} {told[0].limit:f}"
            yield ", ".join([first, *(f"{s.would_pass} at {s.limit:f}" for s in told[1:])])
    if found.both:
        yield f"{found.both} beyond both limits"
    if found.untold:
        yield f"{found.untold} with a figure missing or in doubt, or by earlier limits"


def _worth_telling(steps: tuple[Step, ...]) -> list[Step]:
    """The first steps, and the one that lets all pass."""
    return [*steps[: MOST_STEPS - 1], *steps[-1:]] if len(steps) > MOST_STEPS else list(steps)


def mandrel(one: ToMake) -> str:
    """A mandrel to make: ``21.8–21.9 mm (0.8583–0.8622 in), 1 ball, chromed tool steel``."""
    return ", ".join(filter(None, (diameter(one), balls(one), one.surface)))


def diameter(one: ToMake) -> str:
    """The diameters that serve, in both units."""
    mm = f"{_span(format_mm(one.low_mm), format_mm(one.high_mm))} mm"
    inch = f"{_span(format_in(one.low_mm), format_in(one.high_mm))} in"
    plain = sum(
        _plain_inches(r.od_mm or Decimal(0), r.wall_mm or Decimal(0)) for r, _ in tubes(one)
    )
    return f"{inch} ({mm})" if 2 * plain > len(tubes(one)) else f"{mm} ({inch})"


def _span(low: str, high: str) -> str:
    return low if low == high else f"{low}–{high}"


def balls(one: ToMake) -> str:
    """How many balls, and how few would do for how many: ``2 balls (1 for 4 of 5)``."""
    if one.balls is None:
        return ""
    if one.balls == 0:
        return "no balls"
    wanted = balls_wanted(one)
    fewer, needs = min(wanted), wanted[min(wanted)]
    said = some(one.balls, "ball")
    if fewer < one.balls:
        said += f" ({fewer} for {needs} of {wanted.total()})"
    return said


def tube(row: Asked) -> str:
    """OD and wall of a request in the unit they are plain in."""
    if row.od_mm is None or row.wall_mm is None:
        return "–"
    if _plain_inches(row.od_mm, row.wall_mm):
        return f"{format_in(row.od_mm)} × {format_in(row.wall_mm, wall=True)} in"
    return f"{format_mm(row.od_mm)} × {format_mm(row.wall_mm)} mm"


def tubes_served(one: ToMake, most: int = 3) -> str:
    """The tubes that a mandrel would serve, those of most customers first."""
    found = tubes(one)
    said = ", ".join(tube(row) for row, _ in found[:most])
    return f"{said} (+{len(found) - most})" if len(found) > most else said


def die(od_mm: Decimal, clr_mm: Decimal) -> str:
    """A die that is missing: ``1.75 in at 4 in CLR``."""
    if _plain_inches(od_mm, clr_mm):
        return f"{format_in(od_mm)} in at {format_in(clr_mm)} in CLR"
    inches = f"{converted_in(od_mm)} at {converted_in(clr_mm)} in"
    return f"{format_mm(od_mm)} mm at {format_mm(clr_mm)} mm CLR ({inches})"


def weight(thousandths: int) -> str:
    """A weight with one decimal."""
    return f"{thousandths / WEIGHT_UNIT:.1f}"


def demand(report: Report) -> str:
    """On what the plans rest."""
    found = report.demand
    if not found.customers:
        said = f"in {some(found.weeks, 'week')}, nobody asked for what the shelf lacks"
    else:
        said = (
            f"in {some(found.weeks, 'week')}, {some(found.customers, 'customer')} asked for what "
            "can be made and is not on the shelf"
        )
    if found.unsettled:
        said += f"; {found.unsettled} more not counted in: in doubt, or still to be asked"
    if found.without_mandrel:
        said += f"; for {found.without_mandrel} more no mandrel can be named"
    return said


def looked_back(report: Report) -> str:
    """The weeks that demand is looked at: ``the 52 weeks up to 2026-W47``."""
    weeks = report.demand.weeks
    return (
        f"the week {report.weeks.last}"
        if weeks == 1
        else (f"the {weeks} weeks up to {report.weeks.last}")
    )


def named(who: Iterable[str]) -> str:
    """Customers by their addresses, the first of many: the JSON has all of them."""
    found = sorted(who)
    more = len(found) - MOST_NAMES
    said = ", ".join(one_line(one, LONGEST_NAME) for one in found[:MOST_NAMES])
    return f"{said} and {more:,} more" if more > 0 else said


def compared() -> str:
    """What the column of the trend says."""
    return f"a week, in the {WEEKS_COMPARED} weeks before"
