"""What a figure is, by what labelled mail has taught of the words around it.

How much each trait (``around_figure.py``) speaks for an OD, a wall or a radius, and against it,
was fitted to the open labelled mail and the marked messages of tests/corpus/asked, and stands in
``roles_learnt.txt``; ``fit.py`` beside those messages writes it anew.
"""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from importlib import resources
from math import exp

ROLES = ("od", "wall", "clr")
FILE = "roles_learnt.txt"
START = "start"
"""Stands for what speaks for every figure, before a word is read."""


def shares(traits: Mapping[str, float]) -> dict[str, float]:
    """How likely a figure with these traits is each of ``ROLES``; what is left is none of them."""
    weights = _weights()
    sums = list(weights[START])
    for trait, amount in traits.items():
        if (known := weights.get(trait)) is not None:
            for number, weight in enumerate(known):
                sums[number] += amount * weight
    powers = [exp(min(one / 100, 50.0)) for one in sums]
    whole = 1.0 + sum(powers)
    return {role: power / whole for role, power in zip(ROLES, powers, strict=True)}


@cache
def _weights() -> Mapping[str, tuple[int, ...]]:
    text = resources.files(__package__).joinpath(FILE).read_text("utf-8")
    rows = (line.split("\t") for line in text.split("\n") if line and line[:2] != "//")
    return {trait: tuple(map(int, weights)) for trait, *weights in rows}
