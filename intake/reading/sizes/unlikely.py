"""Lengths that no tube for a mandrel is likely to have: whatever was misread, they are asked about.

Bounds are common practice, no published source: of 5,000 labelled sizes, three are outside one.
"""

from __future__ import annotations

from decimal import Decimal

from .sizing import Sizing

_TIGHTEST = Decimal("1.05")
"""No mandrel bends tube on so small a multiple of its OD (common practice, no source)."""
_TIGHT_UNNAMED = Decimal("1.35")
"""Where no word says that a figure is the radius, it is doubted up to that multiple."""
_TIGHT_TO_CENTRE = Decimal("0.97")
"""Where words say that it is to the centreline, only below: 1D is rare, and meant so then."""
_THINNEST = Decimal("0.1")
"""No tube that is bent on a mandrel has a thinner wall [mm] (common practice, no source)."""
_THICKEST = 5
"""OD per wall: a tube of less is hardly bent over a mandrel (common practice, no source)."""
_SMALLEST = Decimal(4)
"""Millimetres; a smaller tube is hardly ever bent over a mandrel (common practice, no source)."""
_WIDEST_BEND = 15
"""CLR per OD: tube is bent on so large a radius without a mandrel, or it is another figure."""
_FARTHEST = Decimal(1000)
"""Millimetres; a larger centreline radius is bent on rolls."""
_LARGEST = Decimal(250)
"""Millimetres; larger tube is bent by induction."""


def doubt_unlikely(size: Sizing) -> None:
    """Doubt each length that is hardly ever asked for, with what else it may be."""
    _doubt_tight(size)
    _doubt_wide(size)
    _doubt_large(size)
    _doubt_thin(size)
    _doubt_thick(size)
    _doubt_needle(size)


def _doubt_tight(size: Sizing) -> None:
    """A radius hardly larger than the tube: likelier another figure, or to the inside."""
    od, clr = size.lengths["od"], size.lengths["clr"]
    if od is None or clr is None or size.radius_role == "times_d":
        return
    if any(figure.role == "times_d" for figure in size.slots["clr"]):
        return  # "1D bend, the die is 3 in to the centre": meant so
    radius = size.radius
    unnamed = radius is not None and radius.how in ("place", "chain")
    to_centre = radius is not None and radius.role == "clr" and not unnamed
    if clr <= od * (_TIGHT_UNNAMED if unnamed else _TIGHT_TO_CENTRE if to_centre else _TIGHTEST):
        size.doubt("clr", "so tight a bend is rare: is it the radius, and to the centreline?")


def _doubt_wide(size: Sizing) -> None:
    """A radius that is many times the OD: likelier a part's number, or the bend of a whole arch."""
    od, clr = size.lengths["od"], size.lengths["clr"]
    if clr is not None and (clr > _FARTHEST or (od is not None and clr > od * _WIDEST_BEND)):
        size.doubt("clr", "so wide a bend is hardly made over a mandrel: is it the radius?")


def _doubt_large(size: Sizing) -> None:
    """A tube larger than a small shop's benders take."""
    od = size.lengths["od"]
    if od is not None and od > _LARGEST:
        size.doubt("od", "so large a tube is hardly bent over a mandrel: is it the OD?")


def _doubt_thin(size: Sizing) -> None:
    """A wall of no tube: likelier what it may differ by, 'within a half thousandth'."""
    wall = size.lengths["wall"]
    if wall is not None and wall < _THINNEST:
        size.doubt("wall", "so thin a wall is hardly made: is it the wall?")


def _doubt_thick(size: Sizing) -> None:
    """A wall of more than a fifth of the OD: likelier the wall was taken for the bore, as in
    'Rohr 30 x 2 innen roh'."""
    od, wall = size.lengths["od"], size.lengths["wall"]
    if od is not None and wall is not None and 2 * wall < od < _THICKEST * wall:
        size.doubt("wall", "so thick a wall is hardly bent over a mandrel: is it the wall?")


def _doubt_needle(size: Sizing) -> None:
    """A tube with no bore, or so small that its wall was taken for a slip: likelier the OD is but a
    part of a figure, as the '1/8' of '1" + 1/8"'."""
    od, wall = size.lengths["od"], size.lengths["wall"]
    if od is None:
        return
    if wall is not None and 2 * wall >= od:
        size.doubt("wall", "with that wall such a tube has no bore")
        size.doubt("od", "with that wall such a tube has no bore")
    elif od < _SMALLEST and size.best.repaired:  # as written it may be a capillary tube
        size.doubt("od", "so small a tube is hardly bent over a mandrel: is it the OD?")
