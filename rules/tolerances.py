"""How a tube is made, as the customer names it, and the tolerances on record for that make.

A make is a product standard with its condition ('DOM', 'ERW, flash in', 'EN 10305-1'): it says how
far OD, wall and bore may lie from the nominal. What a message doesn't say is None, never assumed.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from decimal import Decimal
from functools import lru_cache, partial
from typing import TYPE_CHECKING, Literal

from .request import Material
from .tables import rows
from .tube import SAME_SIZE_MM, SAME_WALL_MM
from .units import MM_PER_INCH

if TYPE_CHECKING:
    from .request import SizeRequest

Seam = Literal["none", "bead", "worked", ""]
"""'bead': left inside unless removed; 'worked': cold worked flat; '': the standard has both."""
State = Literal["A", "B", "C", "heat treated", ""]

_FERROUS_WORDS = {"steel": (Material.CARBON_STEEL, Material.ALLOY_STEEL)}
_FINISH = re.compile(r"\bfinish[ -]*([abc])\b")
_HEAT_TREATED = re.compile(r"\+ ?(?:sr|an?|n)\b|\b(?:bks|gbk|nbk|bkw)\b")


@dataclass(frozen=True, slots=True)
class TubeMake:
    """One way of making tube, as a row of tube_makes.csv, with the state the customer named."""

    key: str
    title: str
    seam: Seam
    could_be: tuple[str, ...] = ()
    """Keys of the makes that are meant by this word, where it doesn't say which."""
    note: str = ""
    state: State = ""
    """Weld finish of EN 10296-2 (A, B, C), or 'heat treated' of EN 10305-1; '' where not said."""


@dataclass(frozen=True, slots=True)
class Tolerance:
    """One row of tolerance.csv for one tube. Deviations in mm; None is 'no figure on record'."""

    od_plus_mm: Decimal
    od_minus_mm: Decimal
    id_plus_mm: Decimal | None
    id_minus_mm: Decimal | None
    wall_plus_mm: Decimal | None
    wall_minus_mm: Decimal | None
    source: str
    checked: bool
    """The figures were read somewhere; False: written down from memory."""


def make_of(request: SizeRequest) -> TubeMake | None:
    """The make that a request's grade, or the words of its material, name; None where none is.

    None also where two are named that exclude each other ('A53/A106'), and where the make named
    does not exist in that material ('304 DOM').
    """
    words = [e.words for e in request.evidence if e.field == "material"]
    if request.grade:
        words.insert(0, request.grade)
    return make_named(" ".join(words), request.material) if words else None


@lru_cache(maxsize=4096)
def make_named(text: str, material: Material | None = None) -> TubeMake | None:
    """The make that ``text`` names for a tube of ``material``; see ``make_of``.

    >>> make_named("1020 DOM").title
    'ASTM A513 Type 5 (DOM)'
    >>> make_named("E235") is None
    True
    """
    plain = " ".join(text.casefold().replace("–", "-").split())
    for rank in _patterns():
        found = [
            (make, families)
            for make, families, pattern in rank
            if pattern.search(plain) and (not families or material is None or material in families)
        ]
        if len(found) > 1:
            return None
        if found:
            return _with_state(found[0][0], plain)
    return None


def _with_state(make: TubeMake, plain: str) -> TubeMake:
    state: State = ""
    if make.key == "en10296-2" and (finish := _FINISH.search(plain)):
        state = {"a": "A", "b": "B", "c": "C"}[finish[1]]  # type: ignore[assignment]
    elif make.key == "en10305-1" and _HEAT_TREATED.search(plain):
        state = "heat treated"
    return TubeMake(make.key, make.title, make.seam, make.could_be, make.note, state)


@lru_cache(maxsize=1)
def makes() -> dict[str, TubeMake]:
    """Every make on record, by its key."""
    return {make.key: make for rank in _patterns() for make, _, _ in rank}


_Pattern = tuple[TubeMake, frozenset[Material], re.Pattern[str]]


@lru_cache(maxsize=1)
def _patterns() -> tuple[tuple[_Pattern, ...], ...]:
    """Makes by rank: a standard or a full description outranks 'ERW', which outranks 'welded'."""
    by_rank: dict[str, list[_Pattern]] = {}
    for row in rows("tube_makes.csv"):
        families: set[Material] = set()
        for word in row["families"].split():
            families.update(_FERROUS_WORDS.get(word) or (Material(word),))
        seam: Seam = row["seam"]  # type: ignore[assignment]
        make = TubeMake(
            row["make"], row["title"], seam, tuple(row["could_be"].split()), row["note"]
        )
        by_rank.setdefault(row["rank"], []).append(
            (make, frozenset(families), re.compile(row["pattern"]))
        )
    return tuple(tuple(by_rank[rank]) for rank in sorted(by_rank))


# -- the tolerances of a make ------------------------------------------------------------------


def tolerance_of(make: TubeMake, *, od_mm: Decimal, wall_mm: Decimal) -> Tolerance | None:
    """The tolerances on a tube of ``od_mm`` and ``wall_mm`` [mm] of that make.

    None where nothing is on record, or the size lies outside the table: nothing is clamped.
    Where an OD lies on the edge of two bands and the source doesn't say which holds, the wider
    tolerance is taken: it is the smallest bore that a mandrel has to go into.
    Source: data/tolerance.csv, each row its own.
    """
    found: Tolerance | None = None
    for band in _bands().get(make.key, ()):
        if band.holds(od_mm, wall_mm):
            tolerance = band.tolerance(od_mm, wall_mm, make.state)
            if found is None or tolerance.od_minus_mm > found.od_minus_mm:
                found = tolerance
    return found


@dataclass(frozen=True, slots=True)
class _Band:
    """A row of tolerance.csv in mm."""

    od_from_mm: Decimal
    od_to_mm: Decimal
    both_ends: bool
    wall_from_mm: Decimal | None
    wall_over_mm: Decimal | None
    wall_to_mm: Decimal | None
    od_plus_mm: Decimal | None
    od_minus_mm: Decimal | None
    od_pct: Decimal | None
    od_least_mm: Decimal | None
    id_plus_mm: Decimal | None
    id_minus_mm: Decimal | None
    wall_plus_pct: Decimal | None
    wall_minus_pct: Decimal | None
    wall_least_mm: Decimal | None
    thin_wall_pct: Decimal | None
    source: str
    checked: bool

    def holds(self, od_mm: Decimal, wall_mm: Decimal) -> bool:
        """Whether the row is for this tube; customers' rounding at closed ends is forgiven."""
        if self.both_ends:
            if not self.od_from_mm - SAME_SIZE_MM <= od_mm <= self.od_to_mm + SAME_SIZE_MM:
                return False
        elif not self.od_from_mm <= od_mm < self.od_to_mm:
            return False
        if self.wall_from_mm is not None and wall_mm < self.wall_from_mm - SAME_WALL_MM:
            return False
        if self.wall_over_mm is not None and wall_mm <= self.wall_over_mm + SAME_WALL_MM:
            return False
        return self.wall_to_mm is None or wall_mm <= self.wall_to_mm + SAME_WALL_MM

    def tolerance(self, od_mm: Decimal, wall_mm: Decimal, state: State) -> Tolerance:
        """The row's deviations for this tube."""
        plus, minus = self.od_plus_mm, self.od_minus_mm
        if self.od_pct is not None:
            plus = minus = max(od_mm * self.od_pct / 100, self.od_least_mm or Decimal(0))
        assert plus is not None, "tolerance.csv gives every row an OD tolerance"
        assert minus is not None, "tolerance.csv gives every row an OD tolerance"
        factor = Decimal(1)
        if state == "heat treated":
            factor = heat_treated_factor(od_mm=od_mm, wall_mm=wall_mm)
        elif self.thin_wall_pct is not None and 100 * wall_mm <= self.thin_wall_pct * od_mm:
            factor = Decimal(2)  # thin tube is oval: the smallest diameter counts here
        return Tolerance(
            od_plus_mm=plus * factor,
            od_minus_mm=minus * factor,
            id_plus_mm=None if self.id_plus_mm is None else self.id_plus_mm * factor,
            id_minus_mm=None if self.id_minus_mm is None else self.id_minus_mm * factor,
            wall_plus_mm=self._wall(self.wall_plus_pct, wall_mm),
            wall_minus_mm=self._wall(self.wall_minus_pct, wall_mm),
            source=self.source,
            checked=self.checked and not (state == "heat treated" and factor != 1),
        )

    def _wall(self, pct: Decimal | None, wall_mm: Decimal) -> Decimal | None:
        if pct is None:
            return None
        return max(wall_mm * pct / 100, self.wall_least_mm or Decimal(0))


def heat_treated_factor(*, od_mm: Decimal, wall_mm: Decimal) -> Decimal:
    """Factor on the diameter tolerances of heat treated EN 10305-1 tube: f = 1, 1.5 or 2 by t / OD.

    Symbols: f factor [-]; t wall [mm]; OD outside diameter [mm].
    Range: any possible wall: 1 for t/OD of 1/20 and more, 1.5 from 1/40, 2 below that.
    Source: EN 10305-1 for +SR, +A and +N, from memory (M), unverified.

    >>> heat_treated_factor(od_mm=Decimal(50), wall_mm=Decimal(2))
    Decimal('1.5')
    """
    if 20 * wall_mm >= od_mm:
        return Decimal(1)
    return Decimal("1.5") if 40 * wall_mm >= od_mm else Decimal(2)


def _figure(row: dict[str, str], column: str, *, scale: Decimal) -> Decimal | None:
    return Decimal(row[column]) * scale if row[column] else None


@lru_cache(maxsize=1)
def _bands() -> dict[str, tuple[_Band, ...]]:
    found: dict[str, tuple[_Band, ...]] = {}
    for row in rows("tolerance.csv"):
        scale = MM_PER_INCH if row["unit"] == "in" else Decimal(1)
        length = partial(_figure, row, scale=scale)
        figure = partial(_figure, row, scale=Decimal(1))
        band = _Band(
            od_from_mm=Decimal(row["od_from"]) * scale,
            od_to_mm=Decimal(row["od_to"]) * scale,
            both_ends=row["ends"] == "both",
            wall_from_mm=length("wall_from"),
            wall_over_mm=length("wall_over"),
            wall_to_mm=length("wall_to"),
            od_plus_mm=length("od_plus"),
            od_minus_mm=length("od_minus"),
            od_pct=figure("od_pct"),
            od_least_mm=length("od_least"),
            id_plus_mm=length("id_plus"),
            id_minus_mm=length("id_minus"),
            wall_plus_pct=figure("wall_plus_pct"),
            wall_minus_pct=figure("wall_minus_pct"),
            wall_least_mm=length("wall_least"),
            thin_wall_pct=figure("thin_wall_pct"),
            source=row["source"],
            checked=row["confidence"] != "memory",
        )
        found[row["make"]] = (*found.get(row["make"], ()), band)
    return found
