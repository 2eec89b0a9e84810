"""Radii in pairs with ODs that are only said again: 'radius 135 on the 45 and 120 on the 40'."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from ..text.figures import Figure, Layout
from ..text.patterns import word_set
from ..text.roles import RADIUS_ROLES

_TO = word_set(
    "for on with at to für fürs auf aufs bei beim mit zum pour sur avec para con por per su",
    "voor bij met op",
)
_ARTICLES = word_set(
    "the our my die das den dem der le la les el los las il lo gli i l' de het tube rohr buis tubo"
)
_MOST_BETWEEN = 4
"""Tokens between a radius and the OD that it is for."""


def find_pairs(layout: Layout, tubes: Sequence[Figure]) -> list[tuple[Figure, Figure]]:
    """Each radius with the OD it is said for, where two tubes or more have one so; else none."""
    ties: list[tuple[Figure, Figure]] = []
    pointers: list[Figure] = []
    for radius, pointer in pairwise(layout.figures[tubes[0].index + 1 :]):
        goes_on = bool(ties) and ties[-1][0].sentence == radius.sentence
        if not (_is_radius(radius) or (goes_on and _is_open(radius))):
            continue
        meant = [tube for tube in tubes if _same(tube, pointer) and tube.index < radius.index]
        if len(meant) == 1 and _leads_to(layout, radius, pointer):
            ties.append((radius, meant[0]))
            pointers.append(pointer)
    if len({tube.index for _, tube in ties}) < 2:
        return []
    role = ties[0][0].role
    for (radius, _), pointer in zip(ties, pointers, strict=True):
        if not _is_radius(radius):
            radius.role = role
        pointer.give("noise", "same")
    return ties


def _is_radius(figure: Figure) -> bool:
    return figure.role in RADIUS_ROLES and figure.how != "place"


def _is_open(figure: Figure) -> bool:
    """Whether no word of its own says what a figure is: '..., 120 on the 40'."""
    named = figure.how in ("cue", "sign") and figure.role not in (*RADIUS_ROLES, "noise")
    return not named and not figure.negated


def _leads_to(layout: Layout, radius: Figure, pointer: Figure) -> bool:
    """'135 mm on the 45'"""
    if radius.sentence != pointer.sentence or pointer.row is not None:
        return False
    words = [token.text for token in layout.between(radius, pointer) if token.kind != "gap"]
    words = [word for word in words if word not in ("clr", "radius", "mm", "in", '"')]
    return 1 <= len(words) <= _MOST_BETWEEN and words[0] in _TO and set(words) <= _TO | _ARTICLES


def _same(tube: Figure, pointer: Figure) -> bool:
    return tube.number.value == pointer.number.value and (
        pointer.unit is None or tube.unit in (None, pointer.unit)
    )
