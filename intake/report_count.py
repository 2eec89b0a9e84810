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
from typing import NamedTuple, Self

from ..rules.assessment import Decision
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


@dataclass(frozen=True, slots=True)
class WeekCount:
    """One week's figures. Every request stands in exactly one of sizes, doubtful, incomplete."""

    week: Week
    requests: int = 0
    customers: int = 0
    sizes: tuple[SizeCount, ...] = ()
    """Complete and beyond doubt, most customers first."""
    doubtful: tuple[SizeCount, ...] = ()
    """Complete, but a reading is still in doubt."""
    incomplete: int = 0
    """Requests that lack OD, wall or CLR."""
    outcomes: Counter[Decision] = field(default_factory=Counter)


def count_week(asked: Iterable[Asked], week: Week, zone: tzinfo) -> WeekCount:
    """The figures of one week, by the clocks of ``zone``."""
    rows = [row for row in asked if Week.of(row.received_at, zone) == week]
    complete = [row for row in rows if row.size is not None]
    return WeekCount(
        week=week,
        requests=len(rows),
        customers=len({row.customer for row in rows}),
        sizes=count_sizes(row for row in complete if not row.doubtful),
        doubtful=count_sizes(row for row in complete if row.doubtful),
        incomplete=len(rows) - len(complete),
        outcomes=Counter(row.decision for row in rows),
    )


def count_sizes(asked: Iterable[Asked]) -> tuple[SizeCount, ...]:
    """Requests joined by size and material family, most customers first. Gaps are left out."""
    families: defaultdict[tuple[Shape, Material | None], defaultdict[Size, list[Asked]]]
    families = defaultdict(lambda: defaultdict(list))
    for row in asked:
        if (size := row.size) is not None:
            families[row.shape, row.material][size].append(row)
    counts = []
    for (shape, material), by_size in families.items():
        for twins in join_twins(by_size):
            rows = [row for twin in twins for row in by_size[twin]]
            counts.append(
                SizeCount(
                    size=min(twins, key=lambda twin: (-len(by_size[twin]), twin)),
                    shape=shape,
                    material=material,
                    requests=len(rows),
                    customers=len({row.customer for row in rows}),
                    outcomes=Counter(row.decision for row in rows),
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

    start = 0
    for index, size in enumerate(ordered):
        while size.od_mm - ordered[start].od_mm > TWIN_OD_MM:
            start += 1
        for earlier in range(start, index):
            if _are_twins(size, ordered[earlier]):
                leader[find(index)] = find(earlier)
    groups: defaultdict[int, list[Size]] = defaultdict(list)
    for index, size in enumerate(ordered):
        groups[find(index)].append(size)
    return list(groups.values())


def _are_twins(a: Size, b: Size) -> bool:
    return (
        abs(a.od_mm - b.od_mm) <= TWIN_OD_MM
        and abs(a.wall_mm - b.wall_mm) <= TWIN_WALL_MM
        and abs(a.clr_mm - b.clr_mm) <= TWIN_CLR_MM
    )


def latest_week(moments: Sequence[datetime], zone: tzinfo) -> Week | None:
    """The latest week in which anything was received, or None."""
    return max((Week.of(moment, zone) for moment in moments), default=None)
