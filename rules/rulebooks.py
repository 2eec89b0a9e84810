"""What rule books say of bends for safety-relevant uses: told, never judged by.

We make tooling and certify nothing. Each finding names the clause and leaves it to the customer to
check the edition in force with the authority and licensed practice. The rows, with how sure we are
of each, stand in data/rulebook.csv.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from decimal import Decimal
from functools import lru_cache
from typing import TYPE_CHECKING, Literal, cast

from .assessment import Finding
from .bend import is_possible_clr
from .checks import ratio_text
from .formula import Outside
from .ovality import boiler_tube_limit_pct, smallest_diameter_faa
from .pipe import nominal_size_mm
from .tables import rows
from .thinning import b31_1_order_factor
from .units import both_units

if TYPE_CHECKING:
    from .request import SizeRequest

Measure = Literal["", "clr_min_d", "smallest_diameter", "order_wall", "circularity"]

USE_WORDS: dict[str, str] = {
    "cage": "a safety cage",
    "seat": "a race seat",
    "chassis": "suspension or steering",
    "brake": "brake lines",
    "pressure": "pressure service",
    "aircraft": "aircraft",
    "steam": "steam",
    "hydraulic": "hydraulic lines",
    "gas": "gas",
    "boiler": "boilers",
}
"""Every use that a message may name, as a sentence calls it."""

_CHECK = {
    "cage": "please check the edition in force with your club or authority",
    "seat": "please check the edition in force with your club or authority",
    "aircraft": "please check the edition in force and have a licensed mechanic or engineer decide",
}
_CHECK_CODE = "please check the edition in force with your authority and a licensed engineer"


@dataclass(frozen=True, slots=True)
class RuleBookLine:
    """One row of rulebook.csv."""

    id: str
    book: str
    """Name and clause."""
    says: str
    uses: tuple[str, ...]
    measure: Measure
    limit: Decimal | None
    source: str
    how_sure: str

    @property
    def is_sure(self) -> bool:
        """Whether a text was read that says so, rather than memory or hearsay."""
        return self.how_sure.startswith(("high", "medium"))


@lru_cache(maxsize=1)
def rule_book_lines() -> tuple[RuleBookLine, ...]:
    """All rows of rulebook.csv."""
    return tuple(
        RuleBookLine(
            id=row["id"],
            book=row["book"],
            says=row["says"],
            uses=tuple(filter(None, row["uses"].split("|"))),
            measure=cast(Measure, row["measure"]),
            limit=Decimal(row["limit"]) if row["limit"] else None,
            source=row["source"],
            how_sure=row["how_sure"],
        )
        for row in rows("rulebook.csv")
    )


def rule_book_findings(
    request: SizeRequest, uses: Iterable[str], *, can_be_bent: bool
) -> Iterator[Finding]:
    """What the rule books for ``uses`` say of this bend: warns where a limit is not met.

    ``can_be_bent``: our own tooling can, which is said beside a rule book that forbids it.
    Everything else is a note, and so is a limit that we are not sure of. Nothing where OD or CLR is
    missing or impossible. Never declines and never certifies.
    """
    od_mm, clr_mm = request.od_mm, request.clr_mm
    if od_mm is None or clr_mm is None or not is_possible_clr(od_mm=od_mm, clr_mm=clr_mm):
        return
    told: set[str] = set()
    for use in dict.fromkeys(uses):
        lines = [line for line in rule_book_lines() if use in line.uses]
        radius = [line for line in lines if line.measure == "clr_min_d" and line.limit is not None]
        if not told.issuperset(line.id for line in radius):  # a race seat in a cage: said once
            told.update(line.id for line in radius)
            yield _radius_finding(use, radius, od_mm, clr_mm, can_be_bent=can_be_bent)
        for line in lines:
            if line.measure == "order_wall":
                nominal_mm = nominal_size_mm(request.nominal_pipe or "") or od_mm
                yield _order_wall_finding(line, use, clr_mm / nominal_mm)
            elif line.measure == "circularity":
                yield _circularity_finding(line, use, clr_mm / od_mm)
            elif line.measure == "smallest_diameter":
                yield _smallest_diameter_finding(line, use, od_mm, request.written_in)


def _radius_finding(
    use: str, lines: list[RuleBookLine], od_mm: Decimal, clr_mm: Decimal, *, can_be_bent: bool
) -> Finding:
    """One finding for all books that set the same limit for a use: the strictest speaks."""
    strictest = max(line.limit for line in lines if line.limit is not None)
    books = [line for line in lines if line.limit == strictest]
    names = " and ".join(line.book for line in books[:2])
    verb = "ask" if len(books) > 1 else "asks"
    ratio, limit = ratio_text(clr_mm / od_mm, strictest), ratio_text(strictest)
    wanted = f"{names} {verb} for a CLR of at least {limit} x OD in {USE_WORDS[use]}"
    check = _CHECK.get(use, _CHECK_CODE)
    # Products, so that exactly 3 x OD never counts as less.
    below = clr_mm < strictest * od_mm
    if below:
        can = "our tooling can bend that, but " if can_be_bent else ""
        text = f"This bend is {ratio} x OD: {can}{wanted}; {check}."
    else:
        text = f"{wanted}, and this bend is {ratio} x OD; {check}."
        text = text[0].upper() + text[1:]
    return Finding(
        rule=f"rule-book-{use}",
        effect="warns" if below and any(line.is_sure for line in books) else "notes",
        text=text,
        source=_sources(books),
        measured=clr_mm / od_mm,
        limit=strictest,
    )


def _order_wall_finding(line: RuleBookLine, use: str, diameters: Decimal) -> Finding:
    factor = b31_1_order_factor(diameters=diameters)
    if isinstance(factor, Outside):
        text = (
            f"{factor.reason}, and this bend is at {ratio_text(diameters)}: how much wall to allow "
            f"before bending is for the code in force and a licensed engineer to say."
        )
    else:
        text = (
            f"ASME B31.1 Table 102.4.5 suggests ordering about {ratio_text(factor)} times the wall "
            f"needed after bending at {ratio_text(diameters)} diameters; {_CHECK_CODE}."
        )
    return Finding(
        rule=f"rule-book-{use}-wall",
        effect="notes",
        text=text,
        source=_sources([line]),
        measured=diameters,
        limit=line.limit,
    )


def _circularity_finding(line: RuleBookLine, use: str, d_of_bend: Decimal) -> Finding:
    limit = boiler_tube_limit_pct(d_of_bend=d_of_bend)
    assert isinstance(limit, Decimal), "asked only for a possible CLR"
    return Finding(
        rule=f"rule-book-{use}-circularity",
        effect="notes",
        text=(
            f"For boiler tubes, limits of the {line.book} allow about {ratio_text(limit)} % "
            f"out of round at this radius; {_CHECK_CODE}."
        ),
        source=_sources([line]),
        limit=limit,
    )


def _smallest_diameter_finding(
    line: RuleBookLine, use: str, od_mm: Decimal, first: Literal["in", "mm"]
) -> Finding:
    smallest_mm = smallest_diameter_faa(od_mm=od_mm)
    assert isinstance(smallest_mm, Decimal), "asked only for an OD above 0"
    return Finding(
        rule=f"rule-book-{use}",
        effect="notes",
        text=(
            f"{line.book} want at least 75 % of the OD left in the flattest part of a bend, "
            f"{both_units(smallest_mm, first)} here; {_CHECK['aircraft']}."
        ),
        source=_sources([line]),
        limit=smallest_mm,
    )


def _sources(lines: list[RuleBookLine]) -> str:
    return "; ".join(f"{line.book}: {line.source}, {line.how_sure}" for line in lines)
