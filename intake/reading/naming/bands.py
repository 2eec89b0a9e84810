"""What a tube measures, told as a band: 'the tube measures .624 to .626', 'OD 1.498-1.502'.

Two figures so near each other are no two sizes: the band is of the size that is named besides, or
its middle is the size.
"""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal
from itertools import pairwise

from ....rules.standards import is_standard_od, is_standard_wall
from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of
from ..text.roles import Role

_WIDEST: dict[Role, Decimal] = {"od": Decimal("1.015"), "id": Decimal("1.015")}
_WIDEST_WALL = Decimal("1.25")
_WIDEST_UNSAID = Decimal("1.012")
"""How much more the upper end is than the lower."""
_BESIDE = Decimal("0.012")
_BESIDE_WALL = Decimal("0.12")
"""How far from the band the size lies that it is of."""
_FAR = 40
"""Figures to either side among which the size is that a band is of."""
_INCHES_TO = 8
_INCH = Decimal("25.4")
_MEASURED = late_pattern(
    r"\b"
    + any_of(
        "measur\\w+ | mics? | miked | mikes? | mic'd | calipers? | runs? | running | varies | vary",
        "varying | tolerances? | between | gauged? | reads? | anywhere | spec(?:s|ified)? | comes?",
        "schwankt | gemessen | misst | messe | zwischen | liegt | toleranz\\w* | mesur\\w+",
        "entre | varie | misur\\w+ | tra | varia | medid\\w+ | mide | oscila | gemeten | tussen",
        "varieert | min(?:imum)? | max(?:imum)? | actual\\w* | certs? | mill",
    )
    + r"\b"
)


def hear_bands(layout: Layout) -> None:
    """Make one size of a band, or nothing where it is of a size that is named besides."""
    for left, right in pairwise(layout.figures):
        if not _is_band(layout, left, right):
            continue
        nominal = _nominal(layout, left, right)
        if nominal is not None:
            left.give("noise", "same")
            right.give("noise", "same")
            left.notes.clear()
            right.notes.clear()
        elif left.role in ("od", "wall", "id"):
            _take_middle(left, right)


def _is_band(layout: Layout, left: Figure, right: Figure) -> bool:
    if left.sentence != right.sentence or {left.role, right.role} - {None, "od", "id", "wall"}:
        return False
    if left.is_gauge or right.is_gauge or right.link == "times":
        return False
    low, high = left.number.value, right.number.value
    if not 0 < low < high or not (left.unit == right.unit or left.unit is None):
        return False
    if not (left.number.style == right.number.style == "decimal"):
        return False
    before = layout.words(layout.sentence_start(left.sentence), left.start)
    said = _MEASURED.search(before[-60:]) is not None
    wide = _is_wall(left, right)
    if right.link == "range" or _dashed(layout, left, right):
        most = (_WIDEST_WALL if wide else _WIDEST["od"]) if said else _WIDEST_UNSAID
    elif said and right.link in ("list", "slash", "or"):
        most = Decimal("1.1") if wide else _WIDEST_UNSAID
    else:
        return False
    return high <= low * most and not _are_stock(left, right)


def _are_stock(left: Figure, right: Figure) -> bool:
    """'.058 to .065 wall' may well be two that are used."""
    stock = is_standard_wall if _is_wall(left, right) else is_standard_od
    scale = 1 if "mm" in (left.unit, right.unit) or left.number.value >= _INCHES_TO else _INCH
    return all(stock(figure.number.value * scale) for figure in (left, right))


def _dashed(layout: Layout, left: Figure, right: Figure) -> bool:
    return layout.text[left.end : right.start].strip(" \"'m") in ("-", "–", "—")


def _is_wall(left: Figure, right: Figure) -> bool:
    if "wall" in (left.role, right.role):
        return True
    metric = left.unit == "mm" or right.unit == "mm"
    return right.number.value < (6 if metric else Decimal("0.3"))


def _nominal(layout: Layout, left: Figure, right: Figure) -> Figure | None:
    """The size that the band is of, where another figure names it."""
    share = _BESIDE_WALL if _is_wall(left, right) else _BESIDE
    low, high = left.number.value * (1 - share), right.number.value * (1 + share)
    near = layout.figures[max(0, left.index - _FAR) : left.index + _FAR]
    for other in near:
        if other in (left, right) or other.negated or other.role not in ("od", "id", "wall"):
            continue
        if left.role is not None and (other.role == "wall") != (left.role == "wall"):
            continue
        if low <= _in_unit_of(other, right) <= high:
            return other
    return None


def _in_unit_of(other: Figure, figure: Figure) -> Decimal:
    value = other.number.value
    if figure.unit == "mm" and (other.unit == "in" or other.number.style in ("fraction", "mixed")):
        return value * _INCH
    if figure.unit != "mm" and other.unit == "mm":
        return value / _INCH
    return value


def _take_middle(left: Figure, right: Figure) -> None:
    """'OD 1.498-1.502' is 1.500, and asked about where that is no stock size."""
    middle = (left.number.value + right.number.value) / 2
    left.number = replace(left.number, values=(middle,))
    left.unit = left.unit or right.unit
    right.give("noise", "same")
    left.notes[:] = [note for note in left.notes if note != "range"]
    stock = is_standard_wall if left.role == "wall" else is_standard_od
    if left.role == "id" or not (stock(middle) or stock(middle * _INCH)):
        left.notes.append("its size is given as a band: what is it called?")
