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

MOST_WORK = 5_000_000
"""Figures compared before a search gives up and says that it is not proven: some five seconds."""

Run = tuple[int, int]
"""Positions first to last, both met."""
MetAt = dict[int, set[int]]
"""By position: the parties that it meets."""


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
    programme = _Programme(weights, met_at, set(), positions, most)
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

    def run(self, positions: list[int], programme: _Programme, fewer: Choice | None) -> Choice:
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
        programme: _Programme | None = None,
    ) -> None:
        """All choices that hold ``chosen`` and further positions of ``allowed`` only; ``met`` are
        the parties that ``chosen`` meets.
        """
        further = self._k - len(chosen)
        reached = self._weight(met)
        while allowed and not self._given_up:
            if programme is None:
                programme = _Programme(self._weights, self._met_at, met, allowed, further)
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


class _Programme:
    """Dynamic programming over ``allowed`` positions, each run of a party counted by itself.

    Answers for choices of up to ``k`` positions, in indices of ``allowed``.
    """

    def __init__(
        self,
        weights: Sequence[int],
        met_at: MetAt,
        met: set[int],
        allowed: Sequence[int],
        k: int,
    ) -> None:
        count = len(allowed)
        self._begins: list[list[tuple[int, int, int]]] = [[] for _ in range(count)]
        for (first, last), weight in _runs_among(weights, met_at, met, allowed).items():
            self._begins[first].append((first, last, weight))
        self._windows: list[tuple[int, int, list[int]]] = []
        """By index: the weight met there; the first index that shares a run with it; and for each
        index from there on, the weight that is met here and not there."""
        self._look_around(count)
        self.work = k * sum(1 + len(only_here) for _, _, only_here in self._windows)
        self._reach, self._before = self._forward(count, k)
        self._ahead = self._backward(count, k)

    def best(self, k: int) -> tuple[int, list[int]]:
        """The most that up to ``k`` positions meet so, and which they are."""
        value, taken, at = max(
            (value, -taken, -at)
            for taken in range(1, k + 1)
            for at, value in enumerate(self._reach[taken])
        )
        solution, taken, at = [], -taken, -at
        while at >= 0:
            solution.append(at)
            at, taken = self._before[taken][at], taken - 1
        return value, solution[::-1]

    def through(self, k: int) -> list[int]:
        """For each position, the most that a choice of up to ``k`` with it can meet."""
        rows = [
            [here + later for here, later in zip(*pair, strict=True)]
            for pair in ((self._reach[taken], self._ahead[k - taken]) for taken in range(1, k + 1))
        ]
        return [max(values) for values in zip(*rows, strict=True)]

    def _look_around(self, count: int) -> None:
        active: list[tuple[int, int, int]] = []
        for at in range(count):
            active = [run for run in active if run[1] >= at] + self._begins[at]
            met = sum(run[2] for run in active)
            start = active[0][0] if active else at
            only_here: list[int] = []
            weight, index = 0, len(active) - 1
            for other in range(at - 1, start - 1, -1):
                while active[index][0] > other:
                    weight += active[index][2]
                    index -= 1
                only_here.append(weight)
            only_here.reverse()
            self._windows.append((met, start, only_here))

    def _forward(self, count: int, k: int) -> tuple[list[list[int]], list[list[int]]]:
        """reach[taken][at]: the most that ``taken`` positions meet, the last of them ``at`` (or
        fewer, where so many can't be had); before[taken][at]: the one before it, or -1.
        """
        reach = [[0] * count for _ in range(k + 1)]
        before = [[-1] * count for _ in range(k + 1)]
        best_until: list[list[tuple[int, int]]] = [[] for _ in range(k + 1)]
        for at, (met, start, only_here) in enumerate(self._windows):
            reach[1][at] = met
            for taken in range(2, k + 1):
                earlier = reach[taken - 1]
                best, where = met, -1
                if start and best_until[taken - 1][start - 1][0] + met > best:
                    value, where = best_until[taken - 1][start - 1]
                    best = value + met
                for other, weight in enumerate(only_here, start):
                    if earlier[other] + weight > best:
                        best, where = earlier[other] + weight, other
                reach[taken][at], before[taken][at] = best, where
            for taken in range(1, k + 1):
                so_far = best_until[taken][-1] if at else (-1, -1)
                here = (reach[taken][at], at)
                best_until[taken].append(here if here[0] > so_far[0] else so_far)
        return reach, before

    def _backward(self, count: int, k: int) -> list[list[int]]:
        """ahead[more][at]: the most that up to ``more`` positions after ``at`` add to it."""
        ahead = [[0] * count for _ in range(k)]
        apart = [[0] * (count + 1) for _ in range(k)]
        """What a position that shares no run with those up to an index adds, by that index."""
        running = [0] * k
        for at in range(count - 1, -1, -1):
            met, start, only_here = self._windows[at]
            for more in range(1, k):
                running[more] = max(running[more], apart[more][at])
                ahead[more][at] = max(ahead[more][at], running[more], ahead[more - 1][at])
            for more in range(1, k):
                beyond = ahead[more - 1][at]
                if start:
                    apart[more][start - 1] = max(apart[more][start - 1], met + beyond)
                row = ahead[more]
                for other, weight in enumerate(only_here, start):
                    if weight + beyond > row[other]:
                        row[other] = weight + beyond
        return ahead


def _runs_among(
    weights: Sequence[int], met_at: MetAt, met: set[int], allowed: Sequence[int]
) -> dict[Run, int]:
    """Runs in indices of ``allowed`` and their weight, of the parties that are not ``met`` yet.

    Positions left out part no run: what a party meets on both sides of them is one.
    """
    found: defaultdict[Run, int] = defaultdict(int)
    open_runs: dict[int, Run] = {}
    for at, position in enumerate(allowed):
        for party in met_at[position]:
            if party in met:
                continue
            run = open_runs.get(party)
            if run is None or run[1] != at - 1:
                if run is not None:
                    found[run] += weights[party]
                run = (at, at)
            open_runs[party] = (run[0], at)
    for party, run in open_runs.items():
        found[run] += weights[party]
    return found


def _met_at(parties: Sequence[Party], positions: Sequence[int]) -> MetAt:
    """Which parties each of the positions meets."""
    met: dict[int, set[int]] = {position: set() for position in positions}
    for index, party in enumerate(parties):
        for first, last in party.runs:
            begin, end = bisect_left(positions, first), bisect_right(positions, last)
            for position in positions[begin:end]:
                met[position].add(index)
    return met
