"""The roles that a number can have in a message, and which of them measure what."""

from __future__ import annotations

from typing import Literal

Role = Literal[
    "od", "id", "wall", "clr", "radius", "inside_r", "outside_r", "bend_dia", "centres",
    "inside_d", "outside_d", "times_d", "nps", "dn", "dash", "schedule", "side", "die", "noise",
    "quantity", "label",
]  # fmt: skip
"""'radius' is one not said to be inside, outside or centre; 'centres' the distance between two
legs; 'inside_d' and 'outside_d' what is measured across a bend inside and outside; 'dash' a size
in sixteenths; 'side' that of a square tube; 'label' the number beside a word like 'tube'; 'noise'
what is no part of any size."""

RADII: frozenset[Role] = frozenset(
    {"clr", "radius", "inside_r", "outside_r", "bend_dia", "centres", "inside_d", "outside_d"}
)
"""What gives a bend in a length."""
LENGTH_ROLES: frozenset[Role] = RADII.union(("od", "id", "wall"))
RADIUS_ROLES: frozenset[Role] = RADII.union(("times_d",))
NOMINAL_ROLES: frozenset[Role] = frozenset({"nps", "dn", "dash"})
"""Sizes that are names: the OD stands in a table."""

GAUGES = frozenset({"ga", "bwg", "swg"})
"""Units that name a wall."""
