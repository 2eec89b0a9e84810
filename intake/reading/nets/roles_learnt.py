"""What a figure is, by what labelled mail has taught of the words around it.

How much each trait (``around_figure.py``) speaks for an OD, a wall or a radius, and against it,
was fitted to the open labelled mail and the marked messages of tests/corpus/asked, and stands in
``roles_learnt.txt``; ``fit.py`` beside those messages writes it anew.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Mapping
from functools import cache, lru_cache
from importlib import resources
from math import exp

ROLES = ("od", "wall", "clr")
FILE = "roles_learnt.txt"
START = "start"
"""Stands for what speaks for every figure, before a word is read."""


def shares(traits: Mapping[str, float]) -> dict[str, float]:
    """How likely a figure with these traits is each of ``ROLES``; what is left is none of them."""
    sums: list[float] = [*(_weights(START) or (0, 0, 0))]
    for trait, amount in traits.items():
        if (known := _weights(trait)) is not None:
            for number, weight in enumerate(known):
                sums[number] += amount * weight
    powers = [exp(min(one / 100, 50.0)) for one in sums]
    whole = 1.0 + sum(powers)
    return {role: power / whole for role, power in zip(ROLES, powers, strict=True)}


@lru_cache(maxsize=30_000)
def _weights(trait: str) -> tuple[int, ...] | None:
    rows, head = _rows(), f"{trait}\t"
    place = bisect_left(rows, head)
    if place == len(rows) or not rows[place].startswith(head):
        return None
    return tuple(map(int, rows[place][len(head) :].split("\t")))


@cache
def _rows() -> list[str]:
    """Looked up as they stand: to make numbers of all takes longer than to read one message."""
    text = resources.files(__package__).joinpath(FILE).read_text("utf-8")
    return sorted(line for line in text.split("\n") if line[:2] != "//")
