"""The readings of a tube's figures put together: which OD, wall and radius go with each other.

One unit for all figures is likelier than two, and the one that is written likelier than another.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal
from itertools import product
from typing import Literal

from ....rules.request import LENGTH_FIELDS
from ..text.roles import Role
from .plausibility import plausibility
from .values import Value

Length = Literal["od", "wall", "clr"]
Readings = Mapping[Length, list[Value]]
Unit = Literal["in", "mm"]
_BY_OD: frozenset[Role] = frozenset({"inside_r", "outside_r", "inside_d", "outside_d", "times_d"})
"""What gives the centreline radius only with the OD."""


@dataclass(frozen=True, slots=True)
class Choice:
    """One reading of the whole size: values for od, wall, clr (None where absent), its score."""

    od: Value | None
    wall: Value | None
    clr: Value | None
    clr_mm: Decimal | None
    score: float
    repaired: tuple[tuple[Length, str], ...] = ()
    """Fields that are not read as written, and why."""

    def value(self, field: Length) -> Value | None:
        """The reading of one field."""
        if field == "clr":
            return self.clr
        return self.od if field == "od" else self.wall

    def mm(self, field: Length) -> Decimal | None:
        """The length of one field [mm]."""
        if field == "clr":
            return self.clr_mm
        value = self.value(field)
        return value.mm if value is not None else None

    @property
    def mixed(self) -> tuple[Length, ...]:
        """Fields whose unit was not written and is read otherwise than that of their neighbours."""
        values = [(field, value) for field in LENGTH_FIELDS if (value := self.value(field))]
        if len({value.system for _, value in values if value.system}) < 2:
            return ()
        return tuple(field for field, value in values if value.system and value.assumed)


def ranked_choices(readings: Readings, radius_role: Role, habit: Unit | None) -> list[Choice]:
    """Every combination of readings, best first. ``habit`` is the message's usual unit."""
    absent: list[Value | None] = [None]
    options = [list(readings.get(field) or absent) for field in LENGTH_FIELDS]
    found = []
    for od, wall, clr in product(*options):
        od_mm = od.mm if od is not None else None
        clr_mm = centreline_radius(clr, radius_role, od_mm)
        score = -sum(value.cost for value in (od, wall, clr) if value is not None)
        score += plausibility(od_mm, wall.mm if wall is not None else None, clr_mm)
        score -= _cost_of_mixing(od, wall, clr, habit)
        found.append(Choice(od, wall, clr, clr_mm, score))
    return sorted(found, key=lambda choice: -choice.score)


def centreline_radius(value: Value | None, role: Role, od_mm: Decimal | None) -> Decimal | None:
    """The centreline radius [mm] that a figure of this role gives.

    None where the OD is needed and unknown.
    """
    if value is None:
        return None
    if role in ("bend_dia", "centres"):
        return value.mm / 2
    if role not in _BY_OD:
        return value.mm
    if od_mm is None:
        return None
    if role == "times_d":
        return value.mm * od_mm
    if role in ("inside_d", "outside_d"):
        return (value.mm + od_mm if role == "inside_d" else value.mm - od_mm) / 2
    return value.mm + od_mm / 2 if role == "inside_r" else value.mm - od_mm / 2


def _cost_of_mixing(
    od: Value | None, wall: Value | None, clr: Value | None, habit: Unit | None
) -> float:
    """What it costs to read unmarked figures in another unit than their neighbours."""
    values = [value for value in (od, wall, clr) if value is not None and value.system]
    written = {value.system for value in values if not value.assumed}
    assumed = [value.system for value in values if value.assumed]
    cost = 0.0
    for system in assumed:
        if written:
            cost += 0.0 if system in written else 2.0
        elif habit is not None and system != habit:
            cost += 1.3
    return cost + (2.6 if len(set(assumed)) > 1 else 0.0)
