"""Multiples of the OD that are told to one side of the bend: 'Innenradius = 1,5 x D' is a
centreline radius of 2 x D."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

from ..text.figures import Figure, Layout
from ..text.roles import RADIUS_ROLES, Role
from ..text.tokens import Token
from .side_marks import Side

_HALF = Decimal("0.5")
_AHEAD = 8
_BEHIND = 2
_SIDED: dict[Role, Side] = {"inside_r": "inside", "outside_r": "outside"}


def measure_to_centre(layout: Layout, figure: Figure, marked: Side | None) -> None:
    """Make a sided multiple one of the centreline radius, half an OD from either side; what it
    comes to ('= 60 mm') is to the same side. ``marked`` is what the words right behind it say."""
    side = _side_by_cue(layout, figure) or marked
    if side is None:
        return
    step = _HALF if side == "inside" else -_HALF
    values = tuple(value + step for value in figure.number.values)
    figure.number = replace(figure.number, values=values)
    after = layout.after_in_sentence(figure)
    if after is not None and after.role == "radius" and after.how == "same":
        after.role = "inside_r" if side == "inside" else "outside_r"


def _side_by_cue(layout: Layout, figure: Figure) -> Side | None:
    """The side that the word for the radius names, ahead of the multiple or right behind it."""
    first, last = layout.spans[figure.sentence]
    ahead = layout.tokens[max(first, figure.token - _AHEAD) : figure.token]
    for token in reversed(ahead):
        if token.number is not None:
            break
        if _is_radius(token):
            return _named(token)
    behind = layout.tokens[figure.token + 1 : min(last, figure.token + _BEHIND) + 1]
    for token in behind:
        if token.number is not None or token.text == ",":
            break
        if _is_radius(token):
            return _named(token)
    return None


def _is_radius(token: Token) -> bool:
    return any(cue.role in RADIUS_ROLES for cue in token.cues)


def _named(token: Token) -> Side | None:
    return next((_SIDED[cue.role] for cue in token.cues if cue.role in _SIDED), None)
