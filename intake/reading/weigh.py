"""Weigh the readings of a tube's figures together: which OD, wall and radius go with each other.

A wall must be less than half the OD, a radius more than half; common stock sizes and one unit
for all figures are likelier than odd ones. Scores are house judgement, not physics: they only
rank readings, and what is close or had to be repaired comes out with a doubt.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from itertools import product

from ...rules import standards
from .values import INCH_SLIP, REPAIRS, UNIT_SLIP, Value

CLOSE = 1.2
"""A reading within this score of the best is a second plausible one."""
IMPLAUSIBLE = -2.5
"""A size that scores below this as written is looked at for slips."""


@dataclass(frozen=True, slots=True)
class Choice:
    """One reading of the whole size: mm for od, wall, clr (None where absent) and its score."""

    od: Value | None
    wall: Value | None
    clr: Value | None
    clr_mm: Decimal | None
    score: float
    repaired: tuple[tuple[str, str], ...] = ()

    def mm(self, field: str) -> Decimal | None:
        """The length of one field [mm]."""
        if field == "clr":
            return self.clr_mm
        value: Value | None = getattr(self, field)
        return value.mm if value is not None else None


Readings = dict[str, list[Value]]


def weigh(readings: Readings, radius_role: str, habit: str | None) -> list[Choice]:
    """All readings of a size, best first. ``habit`` is the unit the message otherwise uses."""
    choices = _choices(readings, radius_role, habit)
    if choices and (choices[0].score <= IMPLAUSIBLE or mixes(choices[0])):
        repaired = _repairs(choices[0], readings, radius_role, habit)
        choices = sorted([*choices, *repaired], key=lambda c: -c.score)
    return choices


def _choices(readings: Readings, radius_role: str, habit: str | None) -> list[Choice]:
    absent: list[Value | None] = [None]
    options = [list(readings.get(f) or absent) for f in ("od", "wall", "clr")]
    found = []
    for od, wall, clr in product(*options):
        clr_mm = radius(clr, radius_role, od.mm if od else None)
        score = -sum(value.cost for value in (od, wall, clr) if value is not None)
        score += plausibility(od.mm if od else None, wall.mm if wall else None, clr_mm)
        score -= _mixing(od, wall, clr, habit)
        found.append(Choice(od, wall, clr, clr_mm, score))
    return sorted(found, key=lambda choice: -choice.score)


def radius(value: Value | None, role: str, od_mm: Decimal | None) -> Decimal | None:
    """The centreline radius [mm] that a figure of this role gives; None where the OD is needed
    and unknown."""
    if value is None:
        return None
    if role in ("bend_dia", "centres"):
        return value.mm / 2
    if role in ("inside_r", "outside_r", "times_d"):
        if od_mm is None:
            return None
        if role == "times_d":
            return value.mm * od_mm
        return value.mm + od_mm / 2 if role == "inside_r" else value.mm - od_mm / 2
    return value.mm


def _mixing(od: Value | None, wall: Value | None, clr: Value | None, habit: str | None) -> float:
    """What it costs to read unmarked figures in another unit than their neighbours."""
    values = [value for value in (od, wall, clr) if value is not None and value.system]
    written = {value.system for value in values if not value.assumed}
    cost = 0.0
    for value in values:
        if not value.assumed:
            continue
        if written:
            cost += 0.0 if value.system in written else 2.0
        elif habit is not None and value.system != habit:
            cost += 1.3
    return cost + (2.6 if len({value.system for value in values if value.assumed}) > 1 else 0.0)


def mixes(choice: Choice) -> tuple[str, ...]:
    """Fields whose unit was not written and is read otherwise than that of their neighbours."""
    values = {
        f: v for f in ("od", "wall", "clr") if (v := getattr(choice, f)) is not None and v.system
    }
    if len({value.system for value in values.values()}) < 2:
        return ()
    return tuple(field for field, value in values.items() if value.assumed)


def plausibility(od: Decimal | None, wall: Decimal | None, clr: Decimal | None) -> float:
    """How likely a tube of these lengths [mm] is to be asked for. 0 is unremarkable."""
    score = 0.0
    if od is not None:
        score += _od_score(float(od)) + (1.5 if standards.is_standard_od(od) else 0.0)
    if wall is not None:
        score += 1.0 if standards.is_standard_wall(wall) else 0.0
        score += _wall_score(float(wall), float(od) if od is not None else None)
    if clr is not None:
        score += _clr_score(float(clr), float(od) if od is not None else None)
    return score


def _od_score(od: float) -> float:
    if od <= 0 or od > 700:
        return -8
    if od < 3 or od > 330:
        return -5
    return -1.0 if od > 170 or od < 4 else 0.0


def _wall_score(wall: float, od: float | None) -> float:
    if wall <= 0:
        return -9
    if od is None:
        return 0.0 if 0.2 <= wall <= 13 else -4.0
    factor = od / wall
    if factor <= 2:
        return -8
    if factor < 3.4:
        return -4.5
    if factor < 5:
        return -0.8
    if factor <= 100:
        return 0.0
    if factor <= 130:
        return -2.0
    return -4.6 if factor <= 200 else -6.0


def _clr_score(clr: float, od: float | None) -> float:
    if clr <= 0:
        return -9
    if od is None:
        return 0.0 if 5 <= clr <= 2000 else -3.0
    if od <= 0:
        return -9
    k = clr / od
    if k <= 0.5:
        return -7
    if k < 0.95:
        return -2.6
    if k <= 12:
        return 0.3 if k <= 8 else 0.0
    return -1.5 if k <= 25 else -5.0


_REPAIR_COST = 2.0


def _repairs(written: Choice, readings: Readings, role: str, habit: str | None) -> list[Choice]:
    """The size with one slip undone, where that makes it plausible."""
    found: list[Choice] = []
    for system, factor, why in (
        ("mm", Decimal("25.4"), UNIT_SLIP),
        ("in", 1 / Decimal("25.4"), INCH_SLIP),
    ):
        marked = _slipped(written, system)
        if len(marked) < 2:
            continue
        scaled = {
            field: [
                Value(v.mm * factor, v.cost) if field in marked and _is_length(field, role) else v
                for v in values
            ]
            for field, values in readings.items()
        }
        for choice in _choices(scaled, role, habit)[:1]:
            found.append(_repaired(choice, tuple((field, why) for field in marked), written))
    for field, factor, why in REPAIRS:
        if getattr(written, field) is None or (field == "clr" and role == "times_d"):
            continue
        other_unit = factor in (Decimal("25.4"), 1 / Decimal("25.4"))
        changed = dict(readings)
        changed[field] = [
            Value(v.mm * factor, v.cost, system=v.system, assumed=v.assumed)
            for v in readings[field]
            if not (other_unit and (v.assumed or not v.system))
        ]
        if field == "wall" and factor == 10:
            # A thin wall that is made is no slip; ten times it must be a wall that is.
            changed[field] = [
                v for v, old in zip(changed[field], readings[field], strict=True)
                if standards.is_standard_wall(v.mm) and not standards.is_standard_wall(old.mm)
            ]  # fmt: skip
        if not changed[field]:
            continue
        for other in ("od", "wall", "clr"):
            if other != field and getattr(written, other) is not None:
                changed[other] = [getattr(written, other)]
        for choice in _choices(changed, role, habit)[:1]:
            found.append(_repaired(choice, ((field, why),), written))
    margin = 0.0 if mixes(written) else 1.0
    return [choice for choice in found if choice.score > written.score + margin]


def _is_length(field: str, role: str) -> bool:
    """Whether a field is a length (a multiple of D has no unit to slip)."""
    return field != "clr" or role != "times_d"


def _slipped(written: Choice, system: str) -> list[str]:
    """Fields marked with the wrong unit: no tube is under 7 mm or of a wall under 0.3 mm with
    figures that look like inches, and none is 10 in with a wall above half an inch."""
    marked = [
        f for f in ("od", "wall", "clr")
        if (v := getattr(written, f)) is not None and v.system == system and not v.assumed
    ]  # fmt: skip
    lengths = {field: written.mm(field) for field in marked}
    od, wall = lengths.get("od"), lengths.get("wall")
    if system == "mm":
        slipped = (od is not None and od < 7) or (wall is not None and wall < Decimal("0.3"))
    else:
        slipped = (od is not None and od > 254) or (wall is not None and wall > 13)
    return marked if slipped else []


def _repaired(choice: Choice, why: tuple[tuple[str, str], ...], written: Choice) -> Choice:
    bonus = 1.0 if len(why) > 1 else 0.0
    return Choice(
        choice.od or written.od, choice.wall, choice.clr, choice.clr_mm,
        choice.score - _REPAIR_COST + bonus, why,
    )  # fmt: skip
