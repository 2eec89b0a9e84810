"""What questions that people have labelled tell of a new one: a score for each approved answer.

A question is taken apart into traits: the words, what each is read as in six languages
(``heard.py``), and those that stand side by side or in one sentence. How much each trait speaks for
or against an answer was fitted to the labelled questions of tests/corpus/questions, and stands in
``learnt.txt``, one trait a line; ``fit.py`` beside the questions writes it anew. Answers that an
owner adds are not in it: for them the phrases alone count.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from importlib import resources
from itertools import pairwise

from .heard import Heard, hear, is_small

FILE = "learnt.txt"
NOTHING, PLAIN = "-", "."
"""Stand among the names of answers for 'no answer tells that' and for 'asks nothing'."""
MOST_PAIRED = 14
"""Readings in a question from which on pairs of them tell nothing: it is a letter, not a question.
"""
_WORD, _SMALL, _MARK, _BESIDE, _TOGETHER = 1.0, 0.5, 0.3, 0.7, 0.4
"""What a trait counts before it is weighed by how seldom it is."""


@dataclass(frozen=True, slots=True)
class Likeness:
    """How like a question is to those that each answer was the right one for."""

    scores: Mapping[str, float]
    """By answer: above 0 is more like those than like all others, and 1 is typical."""
    asks: float
    """The same for 'a question that no answer tells', less that for 'asks nothing'."""
    _met: Sequence[tuple[str, float, Mapping[str, float]]]
    """Each trait of the question that is known, what it counts here, its weight by answer."""

    @property
    def best(self) -> list[str]:
        """The answers, the likeliest first."""
        return sorted(self.scores, key=lambda name: (-self.scores[name], name))

    def telling(self, answer: str) -> tuple[str, ...]:
        """The words that speak for an answer most, the weightiest first."""
        shares: dict[str, float] = {}
        for trait, amount, weights in self._met:
            if (share := weights.get(answer, 0.0) * amount) > 0:
                shares[_shown(trait)] = share
        return tuple(sorted(shares, key=lambda one: (-shares[one], one))[:3])


def likeness(question: str) -> Likeness:
    """Scores for one question or a few sentences. Never raises on any text."""
    fitted = _fitted()
    met = [(trait, amount * found[0], found[1]) for trait, amount in traits(question).items()
           if (found := fitted.trait(trait))]  # fmt: skip
    length = math.sqrt(sum(amount * amount for _, amount, _ in met)) or 1.0
    scores = dict(fitted.start)
    for _, amount, weights in met:
        counted = amount / length
        for name, weight in weights.items():
            scores[name] += weight * counted
    asks = scores.pop(NOTHING) - scores.pop(PLAIN)
    return Likeness(scores, asks, met)


def traits(question: str) -> dict[str, float]:
    """The traits of a question, each with what it counts.

    >>> traits("do ripples matter?")["?"]
    0.5
    """
    return dict(_traits(hear(question), asks="?" in question))


@cache
def known_answers() -> frozenset[str]:
    """The answers that questions were labelled with."""
    return frozenset(_fitted().start) - {NOTHING, PLAIN}


def _traits(heard: Heard, *, asks: bool) -> Iterator[tuple[str, float]]:
    telling: list[list[str]] = []
    for word, here in zip(heard.words, heard.at, strict=True):
        read = sorted(set(here))
        yield from ((one, _WORD) for one in read)
        if is_small(word):
            yield f"~{word}", _SMALL
        else:
            telling.append(read)
    for before, after in pairwise(telling):
        yield from ((f"{one} {other}", _BESIDE) for one in before for other in after)
    read = sorted(one for one in heard.present if one.isupper())
    if len(read) < MOST_PAIRED:
        for place, one in enumerate(read):
            yield from ((f"{one}&{other}", _TOGETHER) for other in read[place + 1 :])
    yield from ((mark, _MARK) for mark in sorted(heard.present) if mark.startswith("#"))
    if asks:
        yield "?", _SMALL


def _shown(trait: str) -> str:
    return trait.lstrip("~").replace("&", " + ").casefold()


class _Fitted:
    """The file, read; a trait's weights are taken apart when it is first met."""

    def __init__(self, text: str) -> None:
        lines = (one for one in text.split("\n") if one and not one.startswith("//"))
        self._names = next(lines).split()
        self._lines = dict(one.split("\t", 1) for one in lines)
        self.start = dict.fromkeys(self._names, 0.0) | self._weights(self._lines.pop(""))
        self._read: dict[str, tuple[float, Mapping[str, float]]] = {}

    def trait(self, name: str) -> tuple[float, Mapping[str, float]] | None:
        """How seldom a trait is, and its weight by answer; None for one that was never met."""
        if (line := self._lines.get(name)) is None:
            return None
        if name not in self._read:
            seldom, _, weights = line.partition("\t")
            self._read[name] = int(seldom) / 100, self._weights(weights)
        return self._read[name]

    def _weights(self, line: str) -> dict[str, float]:
        pairs = (one.split(":") for one in line.split())
        return {self._names[int(place)]: int(weight) / 100 for place, weight in pairs}


@cache
def _fitted() -> _Fitted:
    return _Fitted(resources.files(__package__).joinpath(FILE).read_text("utf-8"))
