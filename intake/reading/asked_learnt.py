"""How a size is spoken of: what marked mail tells of whether it is asked for or only told of.

How much each trait of its surroundings (``around_size.py``) speaks for either was fitted to the
messages of tests/corpus/asked and the open labelled mail, and stands in ``asked_learnt.txt``, one
trait a line; ``fit.py`` beside those messages writes it anew.
"""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from importlib import resources

from .around_size import Surroundings

FILE = "asked_learnt.txt"
START = "start"
"""Stands for what speaks for every size, before a word is read."""


def asked_score(around: Surroundings, place: int) -> float:
    """How the words around a figure speak of its size: above 0 is more likely asked for.

    In units of log odds, of mail in which as many sizes are told of as in what was learnt from.
    """
    weights = _weights()
    told = sum(amount * weights.get(t, 0.0) for t, amount in around.traits(place).items())
    return weights[START] + told


def telling(around: Surroundings, place: int) -> tuple[str, ...]:
    """The traits that speak most against a size's being asked for, the weightiest first."""
    weights = _weights()
    shares = {t: amount * weights.get(t, 0.0) for t, amount in around.traits(place).items()}
    return tuple(sorted((t for t in shares if shares[t] < 0), key=lambda t: (shares[t], t))[:3])


@cache
def _weights() -> Mapping[str, float]:
    text = resources.files(__package__).joinpath(FILE).read_text("utf-8")
    lines = (line.rpartition("\t") for line in text.split("\n") if line and line[:2] != "//")
    return {trait: int(weight) / 100 for trait, _, weight in lines}
