"""One group of figures becomes one size request: the likeliest reading, each doubt beside it."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from typing import Literal

from ...rules import standards
from ...rules.request import Doubt, Evidence, Shape, SizeRequest
from ...rules.units import tidy
from .figures import Figure
from .gather import Group
from .pipes import CONDUIT, COPPER, PIPE
from .plain import Plain
from .roles import RADIUS_ROLES
from .values import Value, readings
from .weigh import CLOSE, Choice, Readings, mixes, radius, weigh

Length = Literal["od", "wall", "clr"]
_LENGTHS: tuple[Length, ...] = ("od", "wall", "clr")
_SAME_MM = Decimal("0.011")
"""Two forms of one value may differ by this share before they contradict (38 mm / 1-1/2 in)."""

_SAME_OD = Decimal("0.004")
"""ODs nearer than this are one size in two units (38 mm / 1-1/2 in differ by 0.26 %)."""

_NOTE_WHY = {
    "limit": "given as a limit, not as a value",
    "hedged": "the message is not sure of it",
    "range": "given as a range: its ends are read as two requests",
    "choice": "two values offered",
}


class Settler:
    """Settles groups of one message; holds what the message as a whole says of units and pipe."""

    def __init__(self, original: str, plain: Plain, habit: str | None, offset: int = 0) -> None:
        self.original = original
        self.plain = plain
        self.habit = habit
        self.offset = offset

    def settle(self, group: Group) -> SizeRequest | None:
        """The request, or None where nothing of the group can be a size."""
        slots = group.slots
        schedule = next((f for f in slots.get("wall", []) if f.role == "schedule"), None)
        radius_figure = _main_radius(slots.get("clr", []))
        role = radius_figure.role or "radius" if radius_figure else "radius"
        options = self._options(slots, schedule, radius_figure)
        if group.shape:
            options.pop("od", None)
        choices = weigh(options, role, self.habit) if options else []
        if not choices and not group.shape:
            return None
        best = choices[0] if choices else Choice(None, None, None, None, 0.0)
        lengths = {field: best.mm(field) for field in _LENGTHS}
        doubts = _Doubts()
        self._bore(slots, lengths, best, doubts)
        if radius_figure is not None and lengths["clr"] is None and best.clr is not None:
            lengths["clr"] = radius(best.clr, role, lengths["od"])
        self._doubt_choices(choices, lengths, doubts)
        self._doubt_notes(slots, group, lengths, doubts)
        nominal = best.od.nominal if best.od is not None else ""
        self._doubt_restatements(slots, lengths, doubts, radius_figure, nominal)
        self._doubt_pipe(slots, best, lengths, doubts, role)
        if all(value is None for value in lengths.values()) and not group.shape:
            return None
        return SizeRequest(
            shape=Shape(group.shape) if group.shape else Shape.ROUND,
            od_mm=_tidy(lengths["od"]) if not group.shape else None,
            wall_mm=_tidy(lengths["wall"]),
            clr_mm=_tidy(lengths["clr"]),
            doubts=doubts.all(),
            evidence=self._evidence(slots),
            nominal_pipe=self._pipe_name(best, slots, schedule),
            written_in=self._unit(best),
        )

    def _options(
        self, slots: dict[str, list[Figure]], schedule: Figure | None, radius_figure: Figure | None
    ) -> Readings:
        options: Readings = {}
        if "od" in slots:
            # "DN32 (42,4 x 2,6)": the OD itself says more than its nominal name.
            real = [f for f in slots["od"] if f.role == "od"]
            named = slots["od"][0].role in ("nps", "dn") and schedule is None
            main = real[0] if named and real else slots["od"][0]
            options["od"] = readings(main, "od", _schedule(schedule) if schedule else None)
        if schedule is not None:
            walls = self._schedule_walls(schedule, options.get("od", []))
            plain = [f for f in slots["wall"] if f.role != "schedule"]
            options["wall"] = walls or [v for f in plain[:1] for v in readings(f, "wall")]
        elif "wall" in slots:
            options["wall"] = readings(slots["wall"][0], "wall")
        if radius_figure is not None:
            options["clr"] = readings(radius_figure, "clr")
        return {field: values for field, values in options.items() if values}

    def _schedule_walls(self, schedule: Figure, ods: list[Value]) -> list[Value]:
        for od in ods:
            wall = standards.pipe_wall_mm(od.nominal, _schedule(schedule)) if od.nominal else None
            if wall is not None:
                return [Value(wall)]
        return []

    def _bore(
        self,
        slots: dict[str, list[Figure]],
        lengths: dict[Length, Decimal | None],
        best: Choice,
        doubts: _Doubts,
    ) -> None:
        """A bore gives the missing wall or OD, or must agree with both."""
        if "id" not in slots:
            return
        system = next(
            (v.system for v in (best.od, best.wall) if v is not None and v.system),
            self.habit or "in",
        )
        values = readings(slots["id"][0], "id")
        bore = next((v.mm for v in values if v.system == system), values[0].mm if values else None)
        if bore is None:
            return
        od, wall = lengths["od"], lengths["wall"]
        if od is not None and od < bore and wall is None:
            lengths["od"], bore = bore, od
            od = lengths["od"]
        if od is not None and wall is None:
            lengths["wall"] = (od - bore) / 2
        elif od is None and wall is not None:
            lengths["od"] = bore + 2 * wall
        elif (
            od is not None
            and wall is not None
            and abs((od - bore) / 2 - wall) > wall * Decimal("0.02")
        ):
            doubts.add(
                "wall", [wall, (od - bore) / 2], "OD and bore give another wall than the one stated"
            )

    def _doubt_choices(
        self, choices: list[Choice], lengths: dict[Length, Decimal | None], doubts: _Doubts
    ) -> None:
        if not choices:
            return
        best = choices[0]
        for field, why in best.repaired:
            written = next((c for c in choices if not c.repaired), best)
            doubts.add(field, [lengths[field], written.mm(field)], why)  # type: ignore[index]
        for field in _LENGTHS:
            value: Value | None = getattr(best, field)
            if value is not None and value.why:
                doubts.add(field, [lengths[field]], value.why)
        for field in mixes(best) if not best.repaired else ():
            doubts.add(
                field,
                [lengths[field]],
                "its unit is not given, and only another than the rest fits",
            )  # type: ignore[index]
        for other in choices[1:]:
            if other.score < best.score - CLOSE:
                break
            if other.repaired:
                continue
            for field in _LENGTHS:
                a, b = lengths[field], other.mm(field)
                if a is not None and b is not None and abs(a - b) > a * Decimal("0.02"):
                    other_value: Value | None = getattr(other, field)
                    why = (
                        other_value.why
                        if other_value is not None and other_value.why
                        else "the unit is not given"
                    )
                    doubts.add(field, [a, b], why)

    def _doubt_notes(
        self,
        slots: dict[str, list[Figure]],
        group: Group,
        lengths: dict[Length, Decimal | None],
        doubts: _Doubts,
    ) -> None:
        for slot, figures in slots.items():
            field: Length = "od" if slot == "od" else "clr" if slot == "clr" else "wall"
            for figure in figures:
                if len(figure.number.values) > 1 and figure.number.style == "mixed":
                    doubts.add(field, [lengths[field]], figure.number.why)
                if figure.role == "bend_dia" and figure is slots["clr"][0]:
                    doubts.add("clr", [lengths["clr"]], "the bend is given as a diameter")
                for note in figure.notes:
                    self._doubt_note(note, figure, field, lengths, doubts)
        for name, why in group.notes:
            doubts.add(name, [lengths.get(name)], why)  # type: ignore[call-overload]

    def _doubt_note(
        self,
        note: str,
        figure: Figure,
        field: Length,
        lengths: dict[Length, Decimal | None],
        doubts: _Doubts,
    ) -> None:
        value, od = lengths[field], lengths["od"]
        if note == "lost decimal":
            doubts.add("wall", [lengths["wall"]], "a lost decimal point, or a rectangular tube?")
            doubts.add(
                "shape", ["round", "rectangular"], "two sides of a rectangle, or OD and wall?"
            )
        elif note.startswith("bore and OD"):
            doubts.add("od", [value], note)
            doubts.add("wall", [lengths["wall"]], note)
        elif note.startswith("inside") and value is not None and od is not None:
            doubts.add("clr", [value, value + od / 2], f"{note}?")
        elif note in _NOTE_WHY:
            doubts.add(field, [value], _NOTE_WHY[note])
        elif note not in ("same", "swg", "sheet", PIPE, COPPER, CONDUIT) and not note.isupper():
            doubts.add(field, [value], note)

    def _doubt_restatements(
        self,
        slots: dict[str, list[Figure]],
        lengths: dict[Length, Decimal | None],
        doubts: _Doubts,
        radius_figure: Figure | None,
        best_nominal: str,
    ) -> None:
        """A value given twice must agree with itself."""
        for slot in ("od", "wall", "clr"):
            stated = lengths[slot]  # type: ignore[index]
            for figure in slots.get(slot, [])[0 if slot == "clr" else 1 :]:
                if stated is None or figure is radius_figure or figure.role == "schedule":
                    continue
                others = [
                    radius(v, figure.role or "radius", lengths["od"]) if slot == "clr" else v.mm
                    for v in readings(figure, slot)
                ]
                if slot == "od" and best_nominal:
                    others.append(
                        standards.pipe_od_mm(standards.nps_of_inches(figure.number.value) or "")
                    )
                apart = [o for o in others if o is not None]
                near = _SAME_OD if slot == "od" else _SAME_MM
                if apart and all(abs(o - stated) > stated * near for o in apart):
                    doubts.add(slot, [stated, apart[0]], "given in two forms that do not agree")

    def _doubt_pipe(
        self,
        slots: dict[str, list[Figure]],
        best: Choice,
        lengths: dict[Length, Decimal | None],
        doubts: _Doubts,
        role: str,
    ) -> None:
        od = lengths["od"]
        if best.od is None or od is None:
            return
        self._doubt_names(slots["od"][0], "wall" in slots or "id" in slots, lengths, doubts)
        nominal = best.od.nominal or self._named_size(slots["od"])
        if nominal and role == "times_d" and best.clr is not None and lengths["clr"] is not None:
            size = standards.pipe_od_mm(nominal)
            name = Decimal("25.4") * _size_in(nominal)
            if size is not None and abs(size - name) > name * Decimal("0.01"):
                doubts.add(
                    "clr",
                    [lengths["clr"], best.clr.mm * name],
                    "D of nominal pipe: times the real OD or times the nominal size?",
                )
        if (
            nominal
            and len(slots["od"]) == 1
            and slots["od"][0].role == "dn"
            and not any(f.role == "schedule" for f in slots.get("wall", []))
        ):
            asme = standards.pipe_od_mm(nominal)
            if asme is not None and abs(asme - od) > od * Decimal("0.005"):
                doubts.add(
                    "od", [od, asme], "the ISO and the ASME pipe of this nominal size differ"
                )

    def _named_size(self, figures: list[Figure]) -> str:
        """The NPS size of 'DN 40' beside a real OD, or nothing."""
        for figure in figures:
            if figure.role in ("nps", "dn"):
                return next((v.nominal for v in readings(figure, "od")), "")
        return ""

    def _doubt_names(
        self, figure: Figure, has_wall: bool, lengths: dict[Length, Decimal | None], doubts: _Doubts
    ) -> None:
        """A size by its trade name: the likelier OD is stated, both are named."""
        written, size = lengths["od"], standards.nps_of_inches(figure.number.value)
        if written is None or size is None:
            return
        named: Decimal | None = None
        if CONDUIT in figure.notes:
            named = standards.emt_od_mm(size)
        elif COPPER in figure.notes:
            named = standards.copper_tube_od_mm(size)
        elif PIPE in figure.notes:
            named = standards.pipe_od_mm(size)
            wall = lengths["wall"]
            if has_wall and wall is not None and standards.bwg_of(wall) is not None:
                return  # ".095 wall pipe" is tube called pipe: walls of pipe are no gauges
        if named is not None:
            lengths["od"] = named
            doubts.add("od", [named, written], "trade or nominal size, or real OD?")

    def _evidence(self, slots: dict[str, list[Figure]]) -> tuple[Evidence, ...]:
        found = []
        for slot, figures in slots.items():
            field: Length = "od" if slot == "od" else "clr" if slot == "clr" else "wall"
            for figure in figures:
                start, end = self.plain.span(figure.start, figure.end)
                found.append(
                    Evidence(
                        field=field, start=start + self.offset, end=end + self.offset,
                        surface=self.original[start:end], how=_how(figure),
                    )
                )  # fmt: skip
        return tuple(sorted(found, key=lambda e: e.start))

    def _pipe_name(
        self, best: Choice, slots: dict[str, list[Figure]], schedule: Figure | None
    ) -> str | None:
        if best.od is None or not best.od.nominal:
            return None
        name = f"NPS {best.od.nominal}"
        return f"{name} schedule {_schedule(schedule)}" if schedule is not None else name

    def _unit(self, best: Choice) -> Literal["in", "mm"]:
        for value in (best.od, best.clr, best.wall):
            if value is not None and value.system in ("in", "mm"):
                return "in" if value.system == "in" else "mm"
        return "mm" if self.habit == "mm" else "in"


class _Doubts:
    """Doubts by field, readings joined, reasons kept apart by semicolons."""

    def __init__(self) -> None:
        self._readings: dict[str, list[Decimal | str]] = {}
        self._why: dict[str, list[str]] = {}

    def add(self, field: str, values: Sequence[Decimal | str | None], why: str) -> None:
        held = self._readings.setdefault(field, [])
        for value in values:
            if value is None:
                continue
            shown = (
                tidy(value.quantize(Decimal("0.00001"))) if isinstance(value, Decimal) else value
            )
            if shown not in held:
                held.append(shown)
        reasons = self._why.setdefault(field, [])
        if why not in reasons:
            reasons.append(why)

    def all(self) -> tuple[Doubt, ...]:
        return tuple(
            Doubt(field=field, readings=tuple(values), why="; ".join(self._why[field]))  # type: ignore[arg-type]
            for field, values in self._readings.items()
        )


def _main_radius(figures: list[Figure]) -> Figure | None:
    """A radius in a length says more than '2D'; the first of its kind counts."""
    lengths = [f for f in figures if f.role in RADIUS_ROLES and f.role != "times_d"]
    return next(iter(lengths or figures), None)


def _schedule(figure: Figure) -> str:
    if figure.notes and figure.notes[0].isupper():
        return figure.notes[0]
    return str(figure.number.value)


def _size_in(nominal: str) -> Decimal:
    whole, _, rest = nominal.partition("-")
    total = Decimal(0)
    for piece in (whole, rest):
        if "/" in piece:
            top, under = piece.split("/")
            total += Decimal(top) / Decimal(under)
        elif piece:
            total += Decimal(piece)
    return total


def _tidy(value: Decimal | None) -> Decimal | None:
    return tidy(value.quantize(Decimal("0.0000001"))) if value is not None else None


_HOW = {
    "ga": "gauge, BWG", "bwg": "BWG", "swg": "SWG", "in": "inch", "mm": "mm", "cm": "cm",
    "sch": "schedule", "D": "times OD",
}  # fmt: skip
_ROLE_HOW = {
    "id": "bore", "inside_r": "inside radius", "outside_r": "outside radius", "centres": "half the leg centres",
    "bend_dia": "half the bend diameter", "times_d": "times OD", "nps": "nominal pipe size", "dn": "DN", "dash": "sixteenths of an inch",
}  # fmt: skip


def _how(figure: Figure) -> str:
    parts = [_ROLE_HOW.get(figure.role or "", ""), _HOW.get(figure.unit or "", "")]
    return ", ".join(part for part in dict.fromkeys(parts) if part)
