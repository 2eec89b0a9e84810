"""The k points on a line that meet intervals of the greatest total weight, solved exactly.

Each customer has a weight and any number of intervals, and counts once, however many of them are
met. With one interval each this is weighted interval stabbing, which dynamic programming solves.
With several, the same programme, counting a customer at each interval met, is never below the
truth: a bound. Points whose best company stays below what is reached already are left out for
good, and what is left is searched whole (branch and bound), so that the answer is proven.

All arithmetic is in whole numbers. No clock: the search is bounded by its steps.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from .stabbing_bound import MetAt, Programme, Run

MOST_WORK = 5_000_000
"""Figures compared before a search gives up and says that it is not proven: some five seconds."""


@dataclass(frozen=True, slots=True)
class Party:
    """Customers who are met at the very same positions: their weights in one."""

    weight: int
    runs: tuple[Run, ...]
    """Apart from each other, in order."""


@dataclass(frozen=True, slots=True)
class Choice:
    """The positions chosen and the weight that they meet."""

    positions: tuple[int, ...]
    value: int
    proven: bool = True
    """False where the search was given up: the value is reached, a better one not ruled out."""


def best_choices(parties: Sequence[Party], most: int) -> tuple[Choice, ...]:
    """The best choice of 1, 2 ... ``most`` positions; fewer entries where more add nothing.

    >>> a, b = Party(2, ((0, 3),)), Party(3, ((2, 4), (7, 7)))
    >>> best_choices([a, b], 2)[0]
    Choice(positions=(3,), value=5, proven=True)
    """
    parties = _merged(parties)
    positions = _worth_looking_at(parties)
    total = sum(party.weight for party in parties)
    if not total or most < 1:
        return ()
    weights = [party.weight for party in parties]
    met_at = _met_at(parties, positions)
    programme = Programme(weights, met_at, set(), positions, most)
    found: list[Choice] = []
    for k in range(1, most + 1):
        if found and found[-1].value == total:
            break
        choice = _Search(k, weights, met_at).run(positions, programme, found[-1] if found else None)
        if found and choice.value == found[-1].value:
            break
        found.append(choice)
    return tuple(found)


def _merged(parties: Sequence[Party]) -> list[Party]:
    weights: defaultdict[tuple[Run, ...], int] = defaultdict(int)
    for party in parties:
        if party.runs and party.weight:
            weights[party.runs] += party.weight
    return [Party(weight, runs) for runs, weight in sorted(weights.items())]


def _worth_looking_at(parties: Sequence[Party]) -> list[int]:
    """The last position of a run, where some run begins after the one before: any other position
    meets no more than one of these.
    """
    firsts = sorted({run[0] for party in parties for run in party.runs})
    kept: list[int] = []
    for last in sorted({run[1] for party in parties for run in party.runs}):
        begun = bisect_right(firsts, last)
        if not kept or begun > bisect_right(firsts, kept[-1]):
            kept.append(last)
    return kept


class _Search:
    """The search for the best ``k`` positions."""

    def __init__(self, k: int, weights: Sequence[int], met_at: MetAt) -> None:
        self._k = k
        self._weights = weights
        self._met_at = met_at
        self._best = Choice((), 0)
        self._work = 0
        self._given_up = False

    def run(self, positions: list[int], programme: Programme, fewer: Choice | None) -> Choice:
        """``programme``: of all positions. ``fewer``: the best choice of fewer, to start from."""
        if fewer is not None:
            self._try(fewer.positions)
        self._branch((), set(), positions, programme)
        chosen = tuple(sorted(self._best.positions))
        return Choice(chosen, self._best.value, not self._given_up)

    def _branch(
        self,
        chosen: tuple[int, ...],
        met: set[int],
        allowed: list[int],
        programme: Programme | None = None,
    ) -> None:
        """All choices that hold ``chosen`` and further positions of ``allowed`` only; ``met`` are
        the parties that ``chosen`` meets.
        """
        further = self._k - len(chosen)
        reached = self._weight(met)
        while allowed and not self._given_up:
            if programme is None:
                programme = Programme(self._weights, self._met_at, met, allowed, further)
            self._work += programme.work
            bound, solution = programme.best(further)
            company = [allowed[at] for at in solution]
            self._try((*chosen, *company))
            if reached + bound <= self._best.value or len(company) <= 1:
                return  # one further position meets no party twice: the bound is the truth
            if self._work > MOST_WORK:
                self._given_up = True
                return
            through = programme.through(further)
            programme = None
            allowed = [
                position
                for position, most in zip(allowed, through, strict=True)
                if reached + most > self._best.value
            ]
            promising = set(allowed).intersection(company)
            if not promising:
                continue
            heaviest = max(sorted(promising), key=lambda one: self._weight(self._met_at[one] - met))
            allowed.remove(heaviest)
            self._branch((*chosen, heaviest), met | self._met_at[heaviest], allowed)

    def _try(self, positions: tuple[int, ...]) -> None:
        value = self._weight(set[int]().union(*(self._met_at[one] for one in positions)))
        if value > self._best.value:
            self._best = Choice(positions, value)

    def _weight(self, parties: Iterable[int]) -> int:
        return sum(self._weights[party] for party in parties)


def _met_at(parties: Sequence[Party], positions: Sequence[int]) -> MetAt:
    """Which parties each of the positions meets."""
    met: dict[int, set[int]] = {position: set() for position in positions}
    for index, party in enumerate(parties):
        for first, last in party.runs:
            begin, end = bisect_left(positions, first), bisect_right(positions, last)
            for position in positions[begin:end]:
                met[position].add(index)
    return met
