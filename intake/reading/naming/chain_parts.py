"""What the figures of one chain are, by their sizes: 'OD x wall', 'wall x OD', 'A x B x wall'."""

from __future__ import annotations

from decimal import Decimal

from ..text.figures import Figure, Layout
from ..text.patterns import word_set
from ..text.roles import LENGTH_ROLES, RADIUS_ROLES, Role
from .shapes import is_called_round, shape_near

LONGEST_RATIO = Decimal(10)
"""A third figure more than 10 x OD is a cut length, not a radius (house rule)."""
_HALF = Decimal("0.5")
_LEAST_ANGLE = 15
_LIKELY_RATIO = 6
"""Bends beyond 6 x OD are rare enough to ask whether the figure is a length."""
_LARGEST_IN, _LARGEST_MM = 9, 330
_THICKEST = Decimal("0.15")
_THICKEST_MM = 4
_THIN_SHARE = Decimal("0.3")
_LENGTH_WORDS = word_set("long lg length pieces lang longueur tall")
BORE_OR_SIDES = "bore and OD, or the two sides of a rectangle"
LOST_DECIMAL = "lost decimal"
LOST_IN_ROUND = "a lost decimal point?"
"""The same where the tube is called round."""
RADIUS_OR_LENGTH = "the second figure may be the radius or a length"


def set_role(figure: Figure, role: Role) -> None:
    """Give a figure the role of its place, unless a word has given it a surer one."""
    if figure.role is None or figure.role in ("label", "die", "quantity"):
        figure.give(role, "chain")


def comparable(figure: Figure, others: list[Figure]) -> Decimal:
    """A value in inches where any unit is known, else as written; gauges count as thin walls."""
    if figure.is_gauge or figure.unit == "sch":
        return Decimal("0.001")
    unit, value = figure.unit, figure.number.value
    if unit is None:
        # An inch mark on the OD says nothing about a wall written ".065" or "1.6" after it.
        unit = next((o.unit for o in reversed(others) if o.unit in ("in", "mm", "cm")), None)
        if unit == "mm" and value < Decimal("0.35") and figure.number.style == "decimal":
            unit = None
    mixed = any(other.unit == "in" for other in others)
    if unit == "mm" and mixed:
        return value / Decimal("25.4")
    if unit == "cm":
        return value * (Decimal("0.3937") if mixed else 10)
    return value


# --- two figures --------------------------------------------------------------------------------


def read_pair(chain: list[Figure]) -> None:
    """'38 x 1.5', '.065 x 1.5', '38/34', '1.75 x 2D', '2 x sch 40'."""
    first, second = chain
    if second.unit == "D":
        set_role(first, "od")
        second.role = "times_d"
    elif first.role in LENGTH_ROLES and second.role in LENGTH_ROLES:
        return
    elif second.is_gauge or first.is_gauge:
        set_role(first, "wall" if first.is_gauge else "od")
        set_role(second, "wall" if second.is_gauge else "od")
    elif second.unit == "sch":
        if first.role in (None, "od", "label"):
            first.give("nps", "chain")
    else:
        _read_lengths(first, second, comparable(first, chain), comparable(second, chain))


def hear_round(layout: Layout, chain: list[Figure]) -> None:
    """'Tubo tondo 25 x 15': these are no sides of a rectangle, whatever else they are."""
    first, second = chain
    if second.notes and is_called_round(layout.text, first.start):
        notes = [LOST_IN_ROUND if note == LOST_DECIMAL else note for note in second.notes]
        second.notes = [note for note in notes if note != BORE_OR_SIDES]


def _read_lengths(first: Figure, second: Figure, a: Decimal, b: Decimal) -> None:
    if _is_furniture(first, a, b):
        set_role(first, "noise")
        set_role(second, "noise")
    elif first.role in LENGTH_ROLES or second.role in LENGTH_ROLES:
        _complete(first, second, a, b)
    elif a and b / a < _HALF:
        set_role(first, "od")
        set_role(second, "wall")
    elif a and b / a > 2:
        _small_first(first, second, a, b)
    elif "slash" in (first.link, second.link):
        set_role(first, "od" if a >= b else "id")
        set_role(second, "id" if a >= b else "od")
    elif a == b:
        _make_sides(first, second, "square")
    else:
        _near(first, second, a, b)


def _is_furniture(first: Figure, a: Decimal, b: Decimal) -> bool:
    """'Overall 48" x 36"', 'table top 1600 x 900': no tube is as large, and no wall as thick."""
    largest = _LARGEST_IN if first.unit == "in" else _LARGEST_MM
    return first.role in (None, "label") and a > largest and _THICKEST < b / a < 1 / _THICKEST


def _complete(first: Figure, second: Figure, a: Decimal, b: Decimal) -> None:
    """One of the two has its role from a cue: the other follows."""
    known, other = (first, second) if first.role in LENGTH_ROLES else (second, first)
    whole, part = (a, b) if known is first else (b, a)
    ratio = part / whole if whole else Decimal(0)
    if known.role == "od":
        if ratio < _HALF:
            set_role(other, "wall")
        elif ratio <= 1:
            set_role(other, "id" if "slash" in (other.link, first.link) else "wall")
        elif other is second and ratio <= LONGEST_RATIO:
            set_role(other, "noise")
    elif known.role == "id" and other is second and ratio < _THIN_SHARE:
        set_role(other, "wall")  # "bore 1.37 x .065"
    elif known.role in ("wall", "id"):
        set_role(other, "od")
    elif known.role in RADIUS_ROLES:
        # "6.00 CLR x 90": what follows a radius is the angle, not a tube.
        angle = other is second and other.number.value >= _LEAST_ANGLE
        set_role(other, "noise" if angle else "od")


def _small_first(first: Figure, second: Figure, a: Decimal, b: Decimal) -> None:
    """'.065 x 1.5' is wall first; '1.5 x 24' is OD and a cut length; '1.75 x 5.25' OD and CLR."""
    spoken = second.number.style == "speech" and second.unit is None
    if spoken and _is_said_in_inches(first) and _is_thousandths(first, second):
        set_role(first, "od")
        set_role(second, "wall")  # "inch and a half by ninety-five", "seven eighths by sixty-five"
        return
    if _is_thin(first, a, b):
        set_role(first, "wall")
        set_role(second, "od")
        return
    set_role(first, "od")
    if second.role is None:
        if b / a <= 8 and second.unit == first.unit and second.number.style != "integer":
            set_role(second, "radius")
            second.notes.append(RADIUS_OR_LENGTH)
        else:
            set_role(second, "noise")


def _is_said_in_inches(figure: Figure) -> bool:
    """'Inch and a half'; parts spelled out, 'seven eighths', are parts of an inch too."""
    parted = figure.number.value != figure.number.value.to_integral_value()
    return figure.unit == "in" or (
        figure.unit is None and figure.number.style == "words" and parted
    )


def _is_thousandths(first: Figure, second: Figure) -> bool:
    """Whether the second figure, in thousandths of an inch, is a wall of the first."""
    return 20 <= second.number.value <= 250 and second.number.value < first.number.value * 400


def _is_thin(first: Figure, a: Decimal, b: Decimal) -> bool:
    """Whether the smaller, first figure is a wall."""
    bare, style = first.unit is None, first.number.style
    inches = first.unit == "in" or (
        bare and (a < Decimal("0.35") or style in ("fraction", "mixed"))
    )
    if not (b >= 8 or inches):
        return False
    if inches and style == "fraction" and a >= Decimal("0.1875"):
        return False
    return a < Decimal("0.3") if inches and not (bare and style == "integer") else a <= 8


def _make_sides(first: Figure, second: Figure, shape: str) -> None:
    for figure in (first, second):
        figure.shape = shape
        set_role(figure, "side")


def _near(first: Figure, second: Figure, a: Decimal, b: Decimal) -> None:
    """'12 x 14' is a bore and an OD; '22 x 15' may have lost a decimal comma."""
    if b > a and not _is_metric_wall(first, second):
        set_role(first, "id")
        set_role(second, "od")
        second.notes.append(BORE_OR_SIDES)
        return
    set_role(first, "od")
    set_role(second, "wall")
    second.notes.append(LOST_DECIMAL)


def _is_metric_wall(first: Figure, second: Figure) -> bool:
    """'1" x 1.6': tube sold by the inch with its wall in millimetres, as dairy tube is."""
    marked = first.unit == "in" and not first.weak_unit and second.unit is None
    return marked and second.number.style == "decimal" and 1 <= second.number.value <= _THICKEST_MM


# --- three and more -----------------------------------------------------------------------------


def read_triple(layout: Layout, chain: list[Figure]) -> None:
    """'1.75 x .095 x 5.25', '38 x 34 x 2', '40 x 20 x 2', '1.5 x .065 x 24 long'."""
    first, _, third = chain
    a, b, c = (comparable(figure, chain) for figure in chain)
    named = [figure.role for figure in chain]
    if third.unit == "D":
        third.role = "times_d"
        read_pair(chain[:2])
        return
    if third.role in RADIUS_ROLES or third.role == "noise":
        read_pair(chain[:2])
        return
    if set(named) == {"od", "id", "wall"}:
        return
    sides = a and c and b / a >= Decimal("0.4") and c / b < _HALF
    if sides and "id" not in named and "od" not in named[1:]:
        _read_sides_and_wall(layout, chain, a, b, c)
        return
    read_pair(chain[:2])
    if third.role in (None, "label"):
        _read_third(layout, third, c, a if first.role in ("od", "nps") else b)


def _read_sides_and_wall(
    layout: Layout, chain: list[Figure], a: Decimal, b: Decimal, c: Decimal
) -> None:
    """'38 x 34 x 2': bore and OD if the wall fits between them, else two sides and a wall."""
    if b < a and abs((a - b) / 2 - c) <= c * Decimal("0.12"):
        roles: tuple[Role, Role, Role] = ("od", "id", "wall")
        for figure, role in zip(chain, roles, strict=True):
            set_role(figure, role)
        return
    other = shape_near(layout.text, chain[0].start, chain[-1].end) == "other"
    for figure in chain[:2]:
        if figure.role in (None, "od", "label", "die"):
            figure.role, figure.shape = "side", "square" if a == b else "rectangular"
        if other:
            figure.shape = "other"  # "60 x 30 x 2 oval"
    set_role(chain[2], "wall")


def _read_third(layout: Layout, third: Figure, c: Decimal, od: Decimal) -> None:
    """A radius if it is between half the OD and ten times it, else a cut length."""
    if third.is_gauge:
        set_role(third, "wall")
    elif od and _HALF < c / od <= LONGEST_RATIO and not _length_follows(layout, third):
        set_role(third, "clr")
        if c / od > _LIKELY_RATIO:
            third.notes.append("the third figure may be the radius or a length")
    else:
        set_role(third, "noise")


def _length_follows(layout: Layout, figure: Figure) -> bool:
    following = layout.tokens[figure.token + 1 : figure.token + 3]
    return any(token.text in _LENGTH_WORDS for token in following)


def read_four(layout: Layout, chain: list[Figure]) -> None:
    """'40 x 20 x 2 x 60': sides, wall, radius; else three that are read and lengths behind."""
    a, b, c = (comparable(figure, chain) for figure in chain[:3])
    if a and b / a >= Decimal("0.4") and c < b / 2 and chain[0].role is None:
        for figure in chain[:2]:
            figure.role, figure.shape = "side", "square" if a == b else "rectangular"
        set_role(chain[2], "wall")
        set_role(chain[3], "radius")
        return
    read_triple(layout, chain[:3])
    for figure in chain[3:]:
        set_role(figure, "noise")


def counts_in_list(chain: list[Figure], figure: Figure) -> bool:
    """'18 x 1.5 / CLR 36 / qty 2': a count that a slash parts from the size."""
    if (figure.role, figure.how) != ("noise", "count"):
        return False
    if figure is chain[0]:
        return chain[1].link == "slash"
    return figure is chain[-1] and figure.link == "slash"
