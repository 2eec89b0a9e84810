"""The most that points can meet where a party counts once for each of its intervals: a bound.

See ``stabbing``: with one interval a party it is the truth, with several never below it.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence

Run = tuple[int, int]
"""Positions first to last, both met."""
MetAt = dict[int, set[int]]
"""By position: the parties that it meets."""


class Programme:
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
