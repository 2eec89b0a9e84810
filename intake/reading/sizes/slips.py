"""Slips of the pen undone: lost decimal points, wrong units. A repaired value is always doubted.

Tried only where the size as written is all but impossible.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from decimal import Decimal

from ....rules import standards
from ....rules.request import LENGTH_FIELDS
from ..text.roles import Role
from .choices import Choice, Length, Readings, Unit, ranked_choices
from .values import Value

_INCH = Decimal("25.4")
_WALL = "the wall as written can hardly be in a tube of that OD"
_THIN = "the wall as written is thinner than any tube of that OD"
_OD = "the OD as written does not go with the wall"
_SLIPS: tuple[tuple[Length, Decimal, str], ...] = (
    ("wall", Decimal("0.1"), f"{_WALL}: a slipped decimal point?"),
    ("wall", Decimal("0.01"), f"{_WALL}: a lost decimal point?"),
    ("wall", Decimal("0.001"), f"{_WALL}: thousandths?"),
    ("wall", Decimal(10), f"{_THIN}: a slipped decimal point?"),
    ("wall", _INCH, "the wall only fits the tube if its unit is not the one written"),
    ("wall", 1 / _INCH, "the wall only fits the tube if its unit is not the one written"),
    ("od", Decimal("0.01"), f"{_OD}: a lost decimal point?"),
    ("od", Decimal("0.1"), f"{_OD}: a lost decimal point?"),
    ("od", _INCH, "the OD only fits the rest if its unit is not the one written"),
    (
        "clr",
        Decimal("0.1"),
        "the radius as written does not go with the tube: a lost decimal point?",
    ),
    ("clr", _INCH, "the radius only fits the tube if its unit is not the one written"),
    ("clr", 1 / _INCH, "the radius only fits the tube if its unit is not the one written"),
)
"""(field, factor, why): what a slip of the pen does to one figure."""
_UNIT_SLIPS: tuple[tuple[Unit, Decimal, str], ...] = (
    ("mm", _INCH, "these figures only make sense in inches, but are marked mm"),
    ("in", 1 / _INCH, "these figures only make sense in mm, but are marked inch"),
)
_WRITTEN: dict[Decimal, Unit] = {_INCH: "mm", 1 / _INCH: "in"}
"""The mark that is wrong: '.065 mm' may be inches, '7/8 in' is no bigger than it says."""
_POINTS = frozenset({Decimal("0.1"), Decimal("0.01")})
_WIDEST = 8
_NEEDLE_OD, _NEEDLE_WALL = Decimal(5), Decimal("0.2")
"""Millimetres; no mandrel goes into less (common practice, no source)."""
_COST = 2.0
_LESS_FOR_ALL = 1.0
"""One wrong mark on all figures is likelier than a slip in one."""


def repairs(written: Choice, readings: Readings, role: Role, habit: Unit | None) -> list[Choice]:
    """The size with one slip undone, where that makes it more plausible than as written."""
    margin = 0.0 if written.mixed or is_needle(written) else 1.0
    return [
        choice
        for choice in (
            *_units_undone(written, readings, role, habit),
            *_slips_undone(written, readings, role, habit),
        )
        if choice.score > written.score + margin
    ]


def is_needle(written: Choice) -> bool:
    """OD, wall and radius in mm that would be those of a hypodermic needle: inches, marked mm."""
    od, wall = written.mm("od"), written.mm("wall")
    return od is not None and wall is not None and od < _NEEDLE_OD and wall < _NEEDLE_WALL


def _units_undone(
    written: Choice, readings: Readings, role: Role, habit: Unit | None
) -> Iterator[Choice]:
    for system, factor, why in _UNIT_SLIPS:
        marked = _wrongly_marked(written, system)
        if len(marked) < 2:
            continue
        scaled = {
            field: [
                Value(value.mm * factor, value.cost)
                if field in marked and _is_length(field, role)
                else value
                for value in values
            ]
            for field, values in readings.items()
        }
        for choice in ranked_choices(scaled, role, habit)[:1]:
            yield _repaired(choice, tuple((field, why) for field in marked), written)


def _wrongly_marked(written: Choice, system: Unit) -> list[Length]:
    """Fields marked with the wrong unit: no tube is under 7 mm or of a wall under 0.3 mm with
    figures that look like inches, and none is 10 in with a wall above half an inch."""
    marked = [
        field for field in LENGTH_FIELDS
        if (value := written.value(field)) and value.system == system and not value.assumed
    ]  # fmt: skip
    od = written.mm("od") if "od" in marked else None
    wall = written.mm("wall") if "wall" in marked else None
    if system == "mm":
        slipped = (od is not None and od < 7) or (wall is not None and wall < Decimal("0.3"))
    else:
        slipped = (od is not None and od > 254) or (wall is not None and wall > 13)
    return marked if slipped else []


def _slips_undone(
    written: Choice, readings: Readings, role: Role, habit: Unit | None
) -> Iterator[Choice]:
    for field, factor, why in _SLIPS:
        if written.value(field) is None or not _is_length(field, role):
            continue
        values = _slipped(field, factor, readings[field])
        if field == "clr" and factor == _INCH:
            values = [value for value in values if not _is_far_too_wide(value, written)]
        if not values:
            continue
        changed: dict[Length, list[Value]] = {
            other: [value] for other in LENGTH_FIELDS if (value := written.value(other))
        }
        changed[field] = values
        for choice in ranked_choices(changed, role, habit)[:1]:
            yield _repaired(choice, ((field, why),), written)


def _slipped(field: Length, factor: Decimal, values: list[Value]) -> list[Value]:
    """The readings of one field times the factor, where the slip is a likely one."""
    other_unit = factor in (_INCH, 1 / _INCH)
    found = []
    for value in values:
        if field == "wall" and not value.system:
            continue  # a gauge or a schedule is looked up: no point and no unit slips in it
        if other_unit and (value.assumed or value.system != _WRITTEN[factor]):
            continue
        if field != "wall" and factor in _POINTS and _as_written(value) * factor < 1:
            continue  # a point is lost from '15', and not from '3'
        scaled = Value(value.mm * factor, value.cost, system=value.system, assumed=value.assumed)
        if not (field == "wall" and factor == 10) or _is_ten_times_thin(value.mm, scaled.mm):
            found.append(scaled)
    return found


def _as_written(value: Value) -> Decimal:
    return value.mm / _INCH if value.system == "in" else value.mm


def _is_far_too_wide(radius: Value, written: Choice) -> bool:
    """Whether no such tube is bent on such a radius: nobody slips from 22 inches to 22 mm."""
    od = written.mm("od")
    return od is not None and radius.mm > _WIDEST * od


def _is_ten_times_thin(written: Decimal, scaled: Decimal) -> bool:
    """A thin wall that is made is no slip; ten times it must be a wall that is."""
    return standards.is_standard_wall(scaled) and not standards.is_standard_wall(written)


def _is_length(field: Length, role: Role) -> bool:
    """Whether a field is a length (a multiple of D has no unit to slip)."""
    return field != "clr" or role != "times_d"


def _repaired(choice: Choice, why: tuple[tuple[Length, str], ...], written: Choice) -> Choice:
    score = choice.score - _COST + (_LESS_FOR_ALL if len(why) > 1 else 0.0)
    score += _COST if is_needle(written) else 0.0
    return replace(choice, od=choice.od or written.od, score=score, repaired=why)
