"""Every length a figure can mean, in mm, with what each reading costs in plausibility."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from typing import Literal

from ....rules import standards
from ....rules.units import to_mm
from ..text.figures import Figure
from ..text.roles import NOMINAL_ROLES
from .groups import Slot

System = Literal["", "in", "mm"]
_LENGTH_UNITS = ("in", "mm", "cm", "m", "ft")


@dataclass(frozen=True, slots=True)
class Value:
    """One reading of a figure. ``mm`` is a length, or the factor n where ``times_d``."""

    mm: Decimal
    cost: float = 0.0
    why: str = ""
    """Why this differs from what is written; a value with a reason is never stated undoubted."""
    system: System = ""
    """'in' or 'mm' as read; '' for gauges and multiples, which are neither."""
    assumed: bool = False
    """The unit was not written."""
    nominal: str = ""
    """NPS size, where the figure names a pipe."""


def readings(figure: Figure, slot: Slot, schedule: str | None = None) -> list[Value]:
    """All readings of one figure as written; the likeliest first where one is.

    ``schedule`` is what a pipe's wall is called, which makes its size a name.
    """
    if figure.is_gauge:
        return _gauge(figure)
    if figure.role in NOMINAL_ROLES or (slot == "od" and schedule is not None):
        return _pipe(figure, scheduled=schedule is not None)
    found: list[Value] = []
    for rank, value in enumerate(figure.number.values):
        cost = 0.6 * rank
        why = figure.number.why if rank else ""
        if figure.role == "times_d":
            found.append(Value(value, cost, why))
        elif figure.unit in _LENGTH_UNITS and not figure.weak_unit:
            found.append(Value(to_mm(value, figure.unit), cost, why, _system(figure.unit)))
        else:
            found.extend(_in_either_unit(figure, value, slot, cost, why))
    return found


def _in_either_unit(
    figure: Figure, value: Decimal, slot: Slot, cost: float, why: str
) -> list[Value]:
    """What a value without a unit, or with a doubtful one, is in inches and in mm."""
    style = figure.number.style
    parts = style == "words" and value != value.to_integral_value()
    fraction = style in ("fraction", "mixed") or parts
    inch = Value(to_mm(value, "in"), cost, why, "in", assumed=not fraction)
    unlikely = 0.7 if figure.weak_unit else 0.0
    if style in ("fraction", "mixed", "words"):
        unlikely += 1.5
    if slot == "wall" and style == "decimal" and value < Decimal("0.3"):
        unlikely += 1.5
    metric = Value(to_mm(value, "mm"), cost + unlikely, why, "mm", assumed=True)
    if slot == "wall" and _spoken_thousandths(figure, value):
        thousandths = Value(to_mm(value / 1000, "in"), cost + 0.2, why, "in", assumed=True)
        return [thousandths, inch, metric]
    return [inch, metric]


def _system(unit: str) -> System:
    return "in" if unit == "in" else "mm"


_MOST_THOUSANDTHS = 260
"""Thicker walls are not called so: '304' behind 'wall' is a stainless steel."""


def _spoken_thousandths(figure: Figure, value: Decimal) -> bool:
    """'120 wall', 'ninety five wall': a wall in thousandths of an inch."""
    whole = value == value.to_integral_value()
    return (
        whole
        and figure.unit is None
        and 20 <= value <= _MOST_THOUSANDTHS
        and figure.number.style in ("integer", "speech", "words")
    )


def _gauge(figure: Figure) -> list[Value]:
    gauge = str(figure.number.value)
    bwg, swg = standards.bwg_mm(gauge), standards.swg_mm(gauge)
    if figure.unit == "swg" or "swg" in figure.notes:
        return [Value(swg)] if swg is not None else []
    if "sheet" in figure.notes:
        sheet = standards.steel_sheet_mm(gauge)
        return [Value(sheet)] if sheet is not None else []
    return [Value(bwg)] if bwg is not None else []


def _pipe(figure: Figure, *, scheduled: bool) -> list[Value]:
    value = figure.number.value
    if figure.role == "dash":
        return [Value(to_mm(value / 16, "in"), system="in")]
    if figure.role == "dn":
        size = standards.nps_of_dn(int(value)) if value == value.to_integral_value() else None
        return _of_dn(size, scheduled)
    if figure.unit in ("mm", "cm") or (figure.unit is None and value > 12):
        mm = to_mm(value, figure.unit or "mm")
        nominal = standards.nps_of_od(mm, Decimal("0.5"))
        if nominal is None and value == value.to_integral_value():
            nominal = standards.nps_of_dn(int(value))
            if nominal is not None:
                return _of_dn(nominal, scheduled)
        return [Value(mm, system="mm", nominal=nominal or "")]
    size = standards.nps_of_inches(value)
    od = standards.pipe_od_mm(size) if size else None
    written = to_mm(value, "in")
    if od is not None:
        return [Value(od, system="in", nominal=size or "")]
    nominal = standards.nps_of_od(written, Decimal("0.4"))
    return [Value(written, system="in", nominal=nominal or "")]


def _of_dn(size: str | None, scheduled: bool) -> list[Value]:
    """The OD of a DN size: ASME where a schedule is named with it, else the ISO series."""
    if size is None:
        return []
    od = standards.pipe_od_mm(size) if scheduled else standards.iso_od_mm(size)
    return [Value(od, system="mm", nominal=size)] if od is not None else []
