"""One group of figures becomes one size request: the likeliest reading, each doubt beside it."""

from __future__ import annotations

from decimal import Decimal

from ....rules import standards
from ....rules.request import LENGTH_FIELDS, Shape, SizeRequest
from ....rules.units import tidy
from ..text.figures import Figure
from ..text.plain import Plain
from ..text.roles import RADIUS_ROLES
from .choices import Choice, Length, Readings, Unit, centreline_radius
from .evidence import evidence_of
from .groups import Group, Slot
from .size_doubts import doubt_size
from .sizing import Sizing
from .values import Value, readings
from .weigh import weigh

_STEP = Decimal("0.0000001")
"""Lengths are rounded to that [mm]: thirds of an inch have no end."""


class Settler:
    """Settles groups of one message; holds what the message as a whole says of its unit."""

    def __init__(self, original: str, plain: Plain, habit: Unit | None, offset: int = 0) -> None:
        self.original = original
        self.plain = plain
        self.habit = habit
        self.offset = offset

    def settle(self, group: Group) -> SizeRequest | None:
        """The request, or None where nothing of the group can be a size."""
        size = self.weighed(group)
        if size is None:
            return None
        self._use_bore(size)
        if size.radius is not None and size.lengths["clr"] is None and size.best.clr is not None:
            role, od = size.radius_role, size.lengths["od"]
            size.lengths["clr"] = centreline_radius(size.best.clr, role, od)
        size.drop_impossible()
        doubt_size(size)
        if all(value is None for value in size.lengths.values()) and not group.shape:
            return None
        return SizeRequest(
            shape=Shape(group.shape) if group.shape else Shape.ROUND,
            od_mm=_tidy(size.lengths["od"]) if not group.shape else None,
            wall_mm=_tidy(size.lengths["wall"]),
            clr_mm=_tidy(size.lengths["clr"]),
            doubts=size.doubts.all(),
            evidence=evidence_of(group.slots, self.original, self.plain, self.offset),
            nominal_pipe=_pipe_name(size),
            written_in=self._unit_of(size.best),
        )

    def weighed(self, group: Group) -> Sizing | None:
        """The group's figures with their likeliest readings; None where they have none."""
        slots = group.slots
        schedule = next((f for f in slots.get("wall", []) if f.role == "schedule"), None)
        radius = _main_radius(slots.get("clr", []))
        role = radius.role if radius is not None and radius.role is not None else "radius"
        options = _options(slots, schedule, radius)
        if group.shape:
            options.pop("od", None)
        choices = weigh(options, role, self.habit) if options else []
        if not choices and not group.shape:
            return None
        best = choices[0] if choices else Choice(None, None, None, None, 0.0)
        lengths = {field: best.mm(field) for field in LENGTH_FIELDS}
        return Sizing(group, schedule, radius, role, choices, best, lengths)

    def _use_bore(self, size: Sizing) -> None:
        """A bore gives the missing wall or OD, or must agree with both."""
        if "id" not in size.slots:
            return
        best = size.best
        systems = (v.system for v in (best.od, best.wall) if v is not None and v.system)
        system = next(systems, self.habit or "in")
        values = readings(size.slots["id"][0], "id")
        bore = next((v.mm for v in values if v.system == system), values[0].mm if values else None)
        if bore is None:
            return
        od, wall = size.lengths["od"], size.lengths["wall"]
        if od is not None and wall is None:
            larger, smaller = max(od, bore), min(od, bore)  # named the wrong way round
            size.lengths["od"], size.lengths["wall"] = larger, (larger - smaller) / 2
        elif od is None and wall is not None:
            size.lengths["od"] = bore + 2 * wall
        elif od is not None and wall is not None:
            between = (od - bore) / 2
            if abs(between - wall) > wall * Decimal("0.02"):
                why = "OD and bore give another wall than the one stated"
                size.doubts.add("wall", [wall, between], why)

    def _unit_of(self, best: Choice) -> Unit:
        for value in (best.od, best.clr, best.wall):
            if value is not None and value.system:
                return value.system
        return self.habit or "in"


def _options(
    slots: dict[Slot, list[Figure]], schedule: Figure | None, radius: Figure | None
) -> dict[Length, list[Value]]:
    """The readings of each length."""
    options: dict[Length, list[Value]] = {}
    if "od" in slots:
        # "DN32 (42,4 x 2,6)": the OD itself says more than its nominal name.
        real = [figure for figure in slots["od"] if figure.role == "od"]
        named = slots["od"][0].role in ("nps", "dn") and schedule is None
        main = real[0] if named and real else slots["od"][0]
        options["od"] = readings(main, "od", schedule.schedule if schedule else None)
    if schedule is not None:
        walls = _schedule_walls(schedule, options.get("od", []))
        plain = [figure for figure in slots["wall"] if figure.role != "schedule"]
        options["wall"] = walls or [v for figure in plain[:1] for v in readings(figure, "wall")]
    elif "wall" in slots:
        options["wall"] = readings(slots["wall"][0], "wall")
    if radius is not None:
        options["clr"] = readings(radius, "clr")
    return {field: values for field, values in options.items() if values}


def _schedule_walls(schedule: Figure, ods: list[Value]) -> list[Value]:
    for od in ods:
        wall = standards.pipe_wall_mm(od.nominal, schedule.schedule) if od.nominal else None
        if wall is not None:
            return [Value(wall)]
    return []


def _main_radius(figures: list[Figure]) -> Figure | None:
    """A radius in a length says more than '2D'; the first of its kind counts."""
    lengths = [f for f in figures if f.role in RADIUS_ROLES and f.role != "times_d"]
    return next(iter(lengths or figures), None)


def _pipe_name(size: Sizing) -> str | None:
    """'NPS 1-1/2 schedule 40'; None where the size is no pipe by name."""
    if size.best.od is None or not size.best.od.nominal:
        return None
    name = f"NPS {size.best.od.nominal}"
    return name if size.schedule is None else f"{name} schedule {size.schedule.schedule}"


def _tidy(value: Decimal | None) -> Decimal | None:
    return tidy(value.quantize(_STEP)) if value is not None else None


def length_of(figure: Figure, field: Length) -> Decimal | None:
    """The likeliest length [mm] of one figure by itself, read as that field; None for none."""
    options: Readings = {field: readings(figure, field)}
    choices = weigh(options, "radius", None)
    return choices[0].mm(field) if choices else None
