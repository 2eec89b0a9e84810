"""Every length a figure can mean, in mm, with what each reading costs in plausibility."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from ...rules import standards
from ...rules.units import to_mm
from .figures import Figure


@dataclass(frozen=True, slots=True)
class Value:
    """One reading of a figure. ``mm`` is a length, or the factor n where ``times_d``."""

    mm: Decimal
    cost: float = 0.0
    why: str = ""
    """Why this differs from what is written; a value with a reason is never stated undoubted."""
    system: str = ""
    """'in' or 'mm' as read; '' for gauges and multiples, which are neither."""
    assumed: bool = False
    """The unit was not written."""
    nominal: str = ""
    """NPS size, where the figure names a pipe."""


def readings(figure: Figure, slot: str, schedule: str | None = None) -> list[Value]:
    """All readings of one figure as written; the likeliest first where one is."""
    if figure.unit in ("ga", "bwg", "swg"):
        return _gauge(figure)
    if figure.role in ("nps", "dn", "dash") or (slot == "od" and schedule is not None):
        return _pipe(figure, scheduled=schedule is not None)
    found: list[Value] = []
    for rank, value in enumerate(figure.number.values):
        cost = 0.6 * rank
        why = figure.number.why if rank else ""
        if figure.role == "times_d":
            found.append(Value(value, cost, why))
            continue
        if figure.unit in ("in", "mm", "cm", "m") and not figure.weak_unit:
            found.append(Value(to_mm(value, figure.unit), cost, why, _system(figure.unit)))
            continue
        if slot == "wall" and _spoken_thousandths(figure, value):
            found.append(Value(to_mm(value / 1000, "in"), cost + 0.2, why, "in", assumed=True))
        for unit in ("in", "mm"):
            weak = 0.7 if figure.weak_unit and unit == "mm" else 0.0
            style = (
                1.5
                if unit == "mm" and figure.number.style in ("fraction", "mixed", "words")
                else 0.0
            )
            if (
                unit == "mm"
                and slot == "wall"
                and figure.number.style == "decimal"
                and value < Decimal("0.3")
            ):
                style += 1.5
            parts = figure.number.style == "words" and value != value.to_integral_value()
            fraction = unit == "in" and (figure.number.style in ("fraction", "mixed") or parts)
            total = cost + weak + style
            found.append(Value(to_mm(value, unit), total, why, unit, assumed=not fraction))
    return found


def _system(unit: str) -> str:
    return "in" if unit == "in" else "mm"


def _spoken_thousandths(figure: Figure, value: Decimal) -> bool:
    """'120 wall', 'ninety five wall': a wall in thousandths of an inch."""
    whole = value == value.to_integral_value()
    return (
        whole
        and figure.unit is None
        and 20 <= value <= 750
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


REPAIRS: tuple[tuple[str, Decimal, str], ...] = (
    (
        "wall",
        Decimal("0.1"),
        "the wall as written can hardly be in a tube of that OD: a slipped decimal point?",
    ),
    (
        "wall",
        Decimal("0.01"),
        "the wall as written can hardly be in a tube of that OD: a lost decimal point?",
    ),
    (
        "wall",
        Decimal("0.001"),
        "the wall as written can hardly be in a tube of that OD: thousandths?",
    ),
    (
        "wall",
        Decimal("10"),
        "the wall as written is thinner than any tube of that OD: a slipped decimal point?",
    ),
    ("wall", Decimal("25.4"), "the wall only fits the tube if its unit is not the one written"),
    ("wall", 1 / Decimal("25.4"), "the wall only fits the tube if its unit is not the one written"),
    ("od", Decimal("0.01"), "the OD as written does not go with the wall: a lost decimal point?"),
    ("od", Decimal("0.1"), "the OD as written does not go with the wall: a lost decimal point?"),
    ("od", Decimal("25.4"), "the OD only fits the rest if its unit is not the one written"),
    (
        "clr",
        Decimal("0.1"),
        "the radius as written does not go with the tube: a lost decimal point?",
    ),
    ("clr", Decimal("25.4"), "the radius only fits the tube if its unit is not the one written"),
    (
        "clr",
        1 / Decimal("25.4"),
        "the radius only fits the tube if its unit is not the one written",
    ),
)
"""(field, factor, why): what a slip of the pen does to a figure. Tried only where the size as
written is all but impossible; a repaired value always carries a doubt."""

UNIT_SLIP = "these figures only make sense in inches, but are marked mm"
INCH_SLIP = "these figures only make sense in mm, but are marked inch"
