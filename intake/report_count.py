"""Counting what was asked for: ISO weeks, one size in two units joined, customers told apart.

Pure: rows go in, counts come out, in any order of rows the same.
"""

from __future__ import annotations

import re
from collections import Counter, defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from datetime import date, datetime, timedelta, tzinfo
from decimal import Decimal
from itertools import product
from typing import NamedTuple, Self

from ..rules.assessment import Decision
from ..rules.demand import MandrelRange
from ..rules.request import Material, Shape

# How far apart two figures may lie and still be one size written twice. OD: an inch size rounded
# to a tenth of a mm (48.26 and 48.3) is the same tube, 38 and 38.1 are not. Wall: hundredths
# (0.065 in = 1.651 and 1.65), yet 1.2 and 1.25 are two. CLR: whole mm (3 in = 76.2 and 76), since
# dies do not come closer together than 1 mm. All house rules.
TWIN_OD_MM = Decimal("0.05")
TWIN_WALL_MM = Decimal("0.02")
TWIN_CLR_MM = Decimal("0.5")


class Week(NamedTuple):
    """An ISO week: Monday to Sunday; week 1 holds the year's first Thursday (ISO 8601)."""

    year: int
    number: int

    @classmethod
    def parse(cls, text: str) -> Self:
        """``2026-W47``. Raises ValueError, in one sentence, for anything else."""
        match = re.fullmatch(r"(\d{4})-?W(\d{1,2})", text.strip(), re.ASCII | re.IGNORECASE)
        if match is None:
            raise ValueError(f"{text!r} is not an ISO week: write it like 2026-W47")
        week = cls(int(match[1]), int(match[2]))
        try:
            week.monday  # noqa: B018 - asks whether the year has that week
        except ValueError as error:
            raise ValueError(f"{text!r} is not a week of that year") from error
        return week

    @classmethod
    def of(cls, moment: datetime, zone: tzinfo) -> Self:
        """The week that an aware moment falls in, by the clocks of ``zone``."""
        year, number, _ = moment.astimezone(zone).date().isocalendar()
        return cls(year, number)

    @property
    def monday(self) -> date:
        """Its first day."""
        return date.fromisocalendar(self.year, self.number, 1)

    @property
    def sunday(self) -> date:
        """Its last day."""
        return self.monday + timedelta(days=6)

    def __str__(self) -> str:
        return f"{self.year:04}-W{self.number:02}"


class Size(NamedTuple):
    """OD, wall and CLR in mm: what is asked for, all three known."""

    od_mm: Decimal
    wall_mm: Decimal
    clr_mm: Decimal


@dataclass(frozen=True, slots=True, kw_only=True)
class Asked:
    """One request of one customer, as it is counted. Lengths in mm."""

    received_at: datetime
    customer: str
    shape: Shape
    od_mm: Decimal | None
    wall_mm: Decimal | None
    clr_mm: Decimal | None
    material: Material | None
    doubtful: bool
    """Whether size or material is still in doubt: no person has settled it yet."""
    decision: Decision
    inquiry: int = 0
    wanted: int | None = None
    """How many mandrels."""
    buying: bool = False
    """Whether the customer seems prepared to buy."""
    mandrel: MandrelRange | None = None
    """Which mandrels serve it, where that could be worked out."""

    @property
    def size(self) -> Size | None:
        """The size, if nothing of it is missing."""
        if self.od_mm is None or self.wall_mm is None or self.clr_mm is None:
            return None
        return Size(self.od_mm, self.wall_mm, self.clr_mm)


@dataclass(frozen=True, slots=True)
class SizeCount:
    """One size of one material family: how often, by how many customers, what became of it."""

    size: Size
    """As most wrote it."""
    shape: Shape
    material: Material | None
    requests: int
    customers: int
    outcomes: Counter[Decision]
    before: tuple[int, ...] = ()
    """Customers in each of the weeks before, the latest last."""
    who: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Count:
    """Figures of some weeks. Every request stands in exactly one of sizes, doubtful, incomplete."""

    requests: int = 0
    customers: int = 0
    sizes: tuple[SizeCount, ...] = ()
    """Complete and beyond doubt, most customers first."""
    doubtful: tuple[SizeCount, ...] = ()
    """Complete, but a reading is still in doubt."""
    incomplete: int = 0
    """Requests that lack OD, wall or CLR."""
    outcomes: Counter[Decision] = field(default_factory=Counter)


def count(rows: Sequence[Asked], before: Sequence[Sequence[Asked]] = ()) -> Count:
    """The figures of ``rows``; ``before``: those of each of the weeks before, for the trend."""
    complete = [row for row in rows if row.size is not None]
    return Count(
        requests=len(rows),
        customers=len({row.customer for row in rows}),
        sizes=count_sizes(
            [row for row in complete if not row.doubtful],
            [[row for row in week if not row.doubtful] for week in before],
        ),
        doubtful=count_sizes([row for row in complete if row.doubtful]),
        incomplete=len(rows) - len(complete),
        outcomes=Counter(row.decision for row in rows),
    )


class _Group:
    """Requests of one size, those to be counted (None) and those of each week before."""

    __slots__ = ("asked", "before")

    def __init__(self, weeks: int) -> None:
        self.asked: list[Asked] = []
        self.before: list[set[str]] = [set() for _ in range(weeks)]


def count_sizes(
    asked: Iterable[Asked], before: Sequence[Iterable[Asked]] = ()
) -> tuple[SizeCount, ...]:
    """Requests joined by size and material family, most customers first. Gaps are left out."""
    families: defaultdict[tuple[Shape, Material | None], defaultdict[Size, _Group]]
    families = defaultdict(lambda: defaultdict(lambda: _Group(len(before))))
    for row in asked:
        if (size := row.size) is not None:
            families[row.shape, row.material][size].asked.append(row)
    for index, week in enumerate(before):
        for row in week:
            if (size := row.size) is not None:
                families[row.shape, row.material][size].before[index].add(row.customer)
    counts = []
    for (shape, material), groups in families.items():
        for twins in join_twins(groups):
            rows = [row for twin in twins for row in groups[twin].asked]
            if not rows:
                continue
            earlier = [
                set().union(*(groups[twin].before[index] for twin in twins))
                for index in range(len(before))
            ]
            who = {row.customer for row in rows}
            counts.append(
                SizeCount(
                    size=min(twins, key=lambda twin: (-len(groups[twin].asked), twin)),
                    shape=shape,
                    material=material,
                    requests=len(rows),
                    customers=len(who),
                    outcomes=Counter(row.decision for row in rows),
                    before=tuple(map(len, earlier)),
                    who=tuple(sorted(who)),
                )
            )
    return tuple(
        sorted(counts, key=lambda c: (-c.customers, -c.requests, c.size, c.material or "", c.shape))
    )


def join_twins(sizes: Iterable[Size]) -> list[list[Size]]:
    """Distinct sizes in groups: two are joined when OD, wall and CLR each lie within a twin's
    distance, and groups that share a size are one. The order of ``sizes`` changes nothing.
    """
    ordered = sorted(set(sizes))
    leader = list(range(len(ordered)))

    def find(index: int) -> int:
        while leader[index] != index:
            leader[index] = leader[leader[index]]
            index = leader[index]
        return index

    # A size's twins lie in its own cell of a grid or in one beside it: years of sizes would take
    # too long if each were compared with each of its OD.
    cells: defaultdict[tuple[int, int, int], list[int]] = defaultdict(list)
    for index, size in enumerate(ordered):
        x, y, z = _cell(size)
        for cell in product((x - 1, x, x + 1), (y - 1, y, y + 1), (z - 1, z, z + 1)):
            for earlier in cells.get(cell, ()):
                if _are_twins(size, ordered[earlier]):
                    leader[find(index)] = find(earlier)
        cells[x, y, z].append(index)
    groups: defaultdict[int, list[Size]] = defaultdict(list)
    for index, size in enumerate(ordered):
        groups[find(index)].append(size)
    return list(groups.values())


def _cell(size: Size) -> tuple[int, int, int]:
    return (
        int(size.od_mm // TWIN_OD_MM),
        int(size.wall_mm // TWIN_WALL_MM),
        int(size.clr_mm // TWIN_CLR_MM),
    )


def _are_twins(a: Size, b: Size) -> bool:
    return (
        abs(a.od_mm - b.od_mm) <= TWIN_OD_MM
        and abs(a.wall_mm - b.wall_mm) <= TWIN_WALL_MM
        and abs(a.clr_mm - b.clr_mm) <= TWIN_CLR_MM
    )
