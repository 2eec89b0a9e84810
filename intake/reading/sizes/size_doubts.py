"""What of a size is to be confirmed: several readings, limits and hedges."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from ....rules import standards
from ....rules.request import LENGTH_FIELDS
from ..naming.chain_parts import BORE_OR_SIDES, LOST_DECIMAL
from ..naming.copper_types import COPPER_TYPES
from ..naming.pipes import CONDUIT, COPPER, PIPE, REAL_D
from ..radii.across_bend import BETWEEN_LEGS
from ..radii.inside_of_die import OF_DIE
from ..text.figures import Figure
from .choices import Choice, Length, centreline_radius
from .evidence import LENGTH_OF
from .pipe_doubts import add_wall_of_type, doubt_names, doubt_nominal
from .plain_units import is_plainly_in
from .sizing import Sizing
from .unlikely import doubt_unlikely
from .values import readings
from .weigh import CLOSE

_SAME = Decimal("0.011")
"""Two forms of one value may differ by this share before they contradict (38 mm / 1-1/2 in)."""
_SAME_OD = Decimal("0.004")
"""ODs nearer than this are one size in two units (38 mm / 1-1/2 in differ by 0.26 %)."""
_APART = Decimal("0.02")
"""Readings that differ by less than this share are no two readings."""
_INCH = Decimal("25.4")
_WIDE, _THICK = Decimal(170), Decimal(13)
"""Tube over so much OD, or wall [mm], is not bent on a mandrel in a small shop (no source)."""
_THIN = Decimal("0.5")
"""A figure below this is a wall in inches, not in mm: '8.625 x .322' is pipe."""
_WHY = {
    "limit": "given as a limit, not as a value",
    "hedged": "the message is not sure of it",
    "range": "given as a range: its ends are read as two requests",
    "choice": "two values offered",
}
_NO_DOUBT = frozenset(
    {"same", "swg", "sheet", PIPE, COPPER, CONDUIT, REAL_D, *COPPER_TYPES.values()}
)
"""Notes that say how a figure is read."""


def doubt_size(size: Sizing) -> None:
    """Add every doubt to a size whose lengths are settled; a trade name may change its OD."""
    if size.choices:
        _doubt_repairs(size)
        _doubt_other_choices(size)
        _doubt_large(size)
    _doubt_notes(size)
    _doubt_restatements(size)
    if size.best.od is not None and size.lengths["od"] is not None:
        doubt_names(size, size.slots["od"][0])
        add_wall_of_type(size, size.slots["od"][0])
        doubt_nominal(size)


def _doubt_repairs(size: Sizing) -> None:
    """Values that are not what is written."""
    best = size.best
    written = next((choice for choice in size.choices if not choice.repaired), best)
    for field, why in best.repaired:
        size.doubt(field, why, written.mm(field))
    if best.repaired and size.group.shared and not size.group.doubtful:
        # "33.7 x 2, R 67, our machine takes 52 mm": the tube again, with what is no wall of it.
        size.group.doubtful = "it has the tube of another, and a figure that hardly fits"
    for field in LENGTH_FIELDS:
        value = best.value(field)
        if value is not None and value.why:
            size.doubt(field, value.why)
    if not best.repaired:
        for field in best.mixed:
            if _is_confirmed(size, field) or is_plainly_in(size, field):
                continue
            size.doubt(field, "its unit is not given, and only another than the rest fits")


def _doubt_large(size: Sizing) -> None:
    """A tube that is large only because a figure without a unit was taken for inches."""
    bare = {
        field: value.mm / _INCH
        for field in LENGTH_FIELDS
        if (value := size.best.value(field)) is not None
        and value.assumed
        and value.system == "in"
        and size.lengths[field] is not None
    }
    od, wall = bare.get("od"), bare.get("wall")
    large = (od is not None and od * _INCH > _WIDE) or (wall is not None and wall * _INCH > _THICK)
    if not large or (wall is not None and wall < _THIN):
        return
    for field in LENGTH_FIELDS:
        if size.lengths[field] is not None:
            why = "so large a tube is rare: in mm, or in inches?"
            size.doubt(field, why, bare.get(field))


def _is_confirmed(size: Sizing, field: Length) -> bool:
    """Whether a second figure with a unit says the same: '57,15 (the die is marked 1.5D)'."""
    stated = size.lengths[field]
    figures = size.slots.get(field, []) if field != "od" else []
    return stated is not None and any(
        abs(other - stated) <= stated * _SAME_OD
        for figure in figures
        if figure is not size.radius and figure.unit is not None
        for other in _other_lengths(size, field, figure)
    )


def _doubt_other_choices(size: Sizing) -> None:
    """Readings of the whole size that are nearly as likely as the best."""
    for other in size.choices[1:]:
        if other.score < size.best.score - CLOSE:
            break
        if not other.repaired:
            _doubt_other(size, other)


def _doubt_other(size: Sizing, other: Choice) -> None:
    for field in LENGTH_FIELDS:
        stated, length = size.lengths[field], other.mm(field)
        if stated is None or length is None or abs(stated - length) <= stated * _APART:
            continue
        value = other.value(field)
        why = value.why if value is not None else ""
        size.doubt(field, why or "the unit is not given", length)


def _doubt_notes(size: Sizing) -> None:
    """What was heard around the figures."""
    for slot, figures in size.slots.items():
        field = LENGTH_OF[slot]
        for figure in figures:
            if len(figure.number.values) > 1 and figure.number.style == "mixed":
                size.doubt(field, figure.number.why)
            if figure.role == "bend_dia" and figure is size.slots["clr"][0]:
                size.doubt("clr", "the bend is given as a diameter")
            for note in figure.notes:
                if note != "hedged" or not _is_aside(size, figure):
                    _doubt_note(size, note, field)
    for slot, why in size.group.notes:
        size.doubt(LENGTH_OF[slot], why)
    doubt_unlikely(size)


def _is_aside(size: Sizing, figure: Figure) -> bool:
    """'CLR 267 (it is about 3D but take 267)': what is unsure only tells a sure radius again."""
    radius, stated = size.radius, size.lengths["clr"]
    if figure.role != "times_d" or radius is None or radius is figure or stated is None:
        return False
    others = _other_lengths(size, "clr", figure)
    return "hedged" not in radius.notes and any(abs(o - stated) <= stated * _SAME for o in others)


def _doubt_note(size: Sizing, note: str, field: Length) -> None:
    value, od = size.lengths[field], size.lengths["od"]
    if note == LOST_DECIMAL:
        size.doubt("wall", "a lost decimal point, or a rectangular tube?")
        sides = "two sides of a rectangle, or OD and wall?"
        size.doubts.add("shape", ["round", "rectangular"], sides)
    elif note == BORE_OR_SIDES:
        size.doubt("od", note)
        size.doubt("wall", note)
    elif note.startswith("outside or") and value is not None and od is not None:
        size.doubt("clr", f"{note}?", value - od / 2)
    elif note == OF_DIE and value is not None and od is not None:
        inner = value - od / 2
        size.doubt("clr", note, inner, (inner + od) / 2)
    elif note == BETWEEN_LEGS and value is not None and od is not None:
        size.doubt("clr", note, value - od / 2)
    elif note.startswith("inside") and value is not None and od is not None:
        size.doubt("clr", f"{note}?", value + od / 2)
    elif note not in _NO_DOUBT and not note.isupper():
        size.doubt(field, _WHY.get(note, note))


def _doubt_restatements(size: Sizing) -> None:
    """A value given twice must agree with itself."""
    for field in LENGTH_FIELDS:
        stated = size.lengths[field]
        if stated is None:
            continue
        near = _SAME_OD if field == "od" else _SAME
        for figure in size.slots.get(field, [])[0 if field == "clr" else 1 :]:
            if figure is size.radius or figure.role == "schedule":
                continue
            others = _other_lengths(size, field, figure)
            if others and all(abs(other - stated) > stated * near for other in others):
                why = (
                    _WHY["choice"]
                    if figure.link == "or"
                    else "given in two forms that do not agree"
                )
                size.doubt(field, why, _likest(others, stated))


def _likest(others: Sequence[Decimal], stated: Decimal) -> Decimal:
    """Of what '2,6' beside a wall of 2 may mean, the value that is nearest: 2.6 mm, not 66 mm."""
    likeness = {other: max(other, stated) / min(other, stated) for other in others if other}
    return min(likeness, key=lambda other: likeness[other]) if likeness else others[0]


def _other_lengths(size: Sizing, field: Length, figure: Figure) -> list[Decimal]:
    """All that a restatement may mean [mm]; beside a nominal pipe it may be a nominal size."""
    if field == "clr":
        role, od = figure.role or "radius", size.lengths["od"]
        found = [centreline_radius(value, role, od) for value in readings(figure, field)]
        if role == "times_d" and size.best.od is not None and size.best.od.nominal:
            # "3 volte il diametro nominale, cioè 76,2": three times the inch that 1" pipe is called
            found += [
                figure.number.value * named.number.value * _INCH
                for named in size.slots.get("od", ())
                if named.unit in (None, "in")
            ]
    else:
        found = [value.mm for value in readings(figure, field)]
    if field == "od" and size.best.od is not None and size.best.od.nominal:
        found.append(standards.pipe_od_mm(standards.nps_of_inches(figure.number.value) or ""))
    return [length for length in found if length is not None]
