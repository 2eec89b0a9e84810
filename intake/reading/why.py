"""Why a message was read as it was: each number, what it was taken for, and what else was weighed.

For a person who looks into a misreading (``read --why``). Nothing here runs otherwise: the same
steps are taken once more, and what they leave behind is told.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal

from ...rules.request import LENGTH_FIELDS
from ..model import Message, OwnText
from .lengths_settled import settled
from .sizes.choices import Choice, Length, Unit
from .sizes.groups import Group, Slot
from .sizes.plausibility import plausibility
from .sizes.settle import Settler
from .sizes.values import System, Value, readings
from .sizes.weigh import CLOSE
from .stretch import Stretch, read_stretch
from .text.figures import Figure, How
from .text.roles import Role
from .text.tokens import Token

_MOST_LOSERS = 4
"""Further readings of a size are left out: they are further off still."""
_FELT = 0.05
"""Differences of score smaller than this decided nothing."""
_TOLD_BY: dict[How, str] = {
    "": "",
    "sign": "a sign right before it",
    "cue": "a word beside it",
    "unit": "its unit",
    "header": "the heading above it",
    "chain": "its place in a chain of figures",
    "same": "the figure it repeats",
    "list": "the list it stands in",
    "table": "its column",
    "place": "its place and size",
    "count": "what it counts",
}
_ROLES: dict[Role, str] = {
    "od": "OD", "id": "bore", "wall": "wall", "clr": "CLR", "radius": "radius",
    "inside_r": "inside radius", "outside_r": "outside radius", "bend_dia": "bend diameter",
    "inside_d": "across the bend inside", "outside_d": "across the bend outside",
    "centres": "leg centres", "times_d": "radius as a multiple of the OD",
    "nps": "nominal pipe size", "dn": "DN", "dash": "OD in sixteenths", "schedule": "schedule",
    "side": "side of a square", "die": "of a die", "noise": "no size", "quantity": "a count",
    "label": "a count or a label",
}  # fmt: skip

_HEARD = {
    "limit": "as a limit",
    "hedged": "not sure",
    "range": "an end of a range",
    "choice": "one of two offered",
}
"""What the sender says about a figure, by its notes."""


@dataclass(frozen=True, slots=True)
class Said:
    """One number of the text."""

    surface: str
    start: int
    """Where it stands in the message; for an attachment, in its own text."""
    what: str
    """'OD', 'wall', or why it is no length: 'date', 'count', 'ruled out by the sender'."""
    told_by: str
    readings: tuple[Value, ...]
    """What it may be, with cost and reason; empty for what is no length."""
    sizes: tuple[int, ...]
    """The sizes it is part of, by number from 1."""


@dataclass(frozen=True, slots=True)
class Weighed:
    """One reading of a whole size, its score, and where it gains or loses against the best."""

    lengths: tuple[tuple[Decimal | None, System], ...]
    """OD, wall and CLR [mm], each with the unit that it is read in ('' where it has none)."""
    score: float
    """Higher is likelier. The scores only rank."""
    points: tuple[tuple[str, float], ...]
    """(what for, how much): of the best all that count, of the others what sets them apart."""
    doubted: bool
    """Near enough to the best to be asked about."""


@dataclass(frozen=True, slots=True)
class SizeWhy:
    """The readings of one size, best first."""

    unit: Unit
    weighed: tuple[Weighed, ...]
    left_out: int
    """So many more were weighed, all further off."""


@dataclass(frozen=True, slots=True)
class PartWhy:
    """Numbers and sizes of the body, the subject or an attachment."""

    name: str
    numbers: tuple[Said, ...]
    sizes: tuple[SizeWhy, ...]
    usual_unit: Unit | None
    """What the part's marked figures mostly use."""


def explain(own: OwnText, message: Message) -> tuple[PartWhy, ...]:
    """The parts of a message that ``read`` looks at, in its order. Never raises on any text."""
    parts = [_part("body", own.text[own.body_start :], own.body_start)]
    if own.subject_counts and message.subject:
        parts.append(_part("subject", own.text[: own.body_start - 2], 0))
    if not any(part.sizes for part in parts):
        parts.extend(_part(f"attachment {name}", text, 0) for name, text in own.attachment_texts)
    return tuple(part for part in parts if part.numbers)


def _part(name: str, text: str, offset: int) -> PartWhy:
    stretch = read_stretch(text, offset)
    settler = Settler(stretch.original, stretch.plain, stretch.unit, stretch.offset)
    groups = [group for group, _ in settled(stretch)]
    return PartWhy(
        name=name,
        numbers=tuple(_numbers(stretch, groups)),
        sizes=tuple(_size(settler, group) for group in groups),
        usual_unit=stretch.unit,
    )


# --- numbers -------------------------------------------------------------------------------------


def _numbers(stretch: Stretch, groups: list[Group]) -> Iterator[Said]:
    figures = {figure.token: figure for figure in stretch.layout.figures}
    for index, token in enumerate(stretch.layout.tokens):
        figure = figures.get(index)
        if figure is not None:
            yield _figure(stretch, figure, groups)
        elif token.number is not None or _has_digits(token):
            what = {"": "nothing", "count": "a count"}.get(token.block, token.block)
            what = "a material" if token.material is not None else what
            yield Said(*_place(stretch, token), what, "", (), ())


def _has_digits(token: Token) -> bool:
    """A date, a phone number, a grade: digits that the lexer knew for no size."""
    return token.kind in ("block", "material") and any(char.isdigit() for char in token.text)


def _place(stretch: Stretch, at: Token | Figure) -> tuple[str, int]:
    start, end = stretch.plain.span(at.start, at.end)
    return stretch.original[start:end], start + stretch.offset


def _figure(stretch: Stretch, figure: Figure, groups: list[Group]) -> Said:
    held = [
        (number, slot, group)
        for number, group in enumerate(groups, start=1)
        for slot, figures in group.slots.items()
        if figure in figures
    ]
    found = _readings(figure, held[0][1], held[0][2]) if held else []
    return Said(
        *_place(stretch, figure),
        _what(figure, in_a_size=bool(held)),
        _TOLD_BY[figure.how],
        tuple(sorted(found, key=lambda value: value.cost)),
        tuple(number for number, _, _ in held),
    )


def _readings(figure: Figure, slot: Slot, group: Group) -> list[Value]:
    if figure.role == "schedule":
        return []  # a wall only with the pipe's size
    schedule = next((f for f in group.slots.get("wall", []) if f.role == "schedule"), None)
    return readings(figure, slot, schedule.schedule if schedule and slot == "od" else None)


def _what(figure: Figure, *, in_a_size: bool) -> str:
    said = _ROLES[figure.role] if figure.role is not None else "nothing says what it is"
    heard = [_HEARD[note] for note in dict.fromkeys(figure.notes) if note in _HEARD]
    said = ", ".join([said, *heard])
    if figure.negated:
        return f"{said}, ruled out by the sender"
    if figure.context_only:
        return f"{said}, of tooling that is there already"
    if in_a_size or figure.role in (None, "noise", "quantity", "label"):
        return said
    return f"{said}, but in no size: no OD goes with it, or another figure took its place"


# --- sizes ---------------------------------------------------------------------------------------


def _size(settler: Settler, group: Group) -> SizeWhy:
    size = settler.weighed(group)
    choices = size.choices if size is not None else []
    if size is None or not choices:
        return SizeWhy(settler.habit or "in", (), 0)
    best = _points(choices[0])
    shown = choices[: 1 + _MOST_LOSERS]
    systems = [_system(choices[0].value(field)) for field in LENGTH_FIELDS]
    return SizeWhy(
        unit=next((unit for unit in systems if unit), settler.habit or "in"),
        weighed=tuple(
            Weighed(
                lengths=tuple((choice.mm(f), _system(choice.value(f))) for f in LENGTH_FIELDS),
                score=choice.score,
                points=_told(_points(choice), best if rank else {}),
                doubted=rank > 0 and choice.score >= choices[0].score - CLOSE,
            )
            for rank, choice in enumerate(shown)
        ),
        left_out=len(choices) - len(shown),
    )


def _system(value: Value | None) -> System:
    return value.system if value is not None else ""


def _points(choice: Choice) -> dict[str, float]:
    """The score of a choice taken apart; the parts add up to it."""
    od, wall, clr = (choice.mm(field) for field in LENGTH_FIELDS)
    alone = plausibility(od, None, None)
    points = {
        "how usual the OD is": alone,
        "how the wall suits the OD": plausibility(od, wall, None) - alone,
        "how the radius suits the OD": plausibility(od, None, clr) - alone,
    }
    for field in LENGTH_FIELDS:
        value = choice.value(field)
        if value is not None and value.cost:
            points[_reading_of(field, value)] = -value.cost
    rest = choice.score - sum(points.values())
    if choice.repaired:
        points[f"a slip undone ({choice.repaired[0][1]})"] = rest
    else:
        points["units mixed, or other than elsewhere in the message"] = rest
    return points


def _reading_of(field: Length, value: Value) -> str:
    name = {"od": "OD", "wall": "wall", "clr": "radius"}[field]
    if value.why:
        return f"{name}: {value.why}"
    unit = {"in": " in inches", "mm": " in mm", "": ""}[value.system if value.assumed else ""]
    return f"{name}: seldom spelled so{unit}"


def _told(points: dict[str, float], best: dict[str, float]) -> tuple[tuple[str, float], ...]:
    """What a choice gains (+) and loses (-) against the best, the largest first."""
    found = [
        (name, difference)
        for name in dict.fromkeys([*points, *best])
        if abs(difference := points.get(name, 0.0) - best.get(name, 0.0)) >= _FELT
    ]
    return tuple(sorted(found, key=lambda one: -abs(one[1])))
