"""The rules on the size itself: is all of it given, can such a tube and bend exist."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from .assessment import Finding
from .case import Case
from .request import LENGTH_FIELDS, FieldName, Shape

_GEOMETRY = "geometry"
_NAMES: dict[FieldName, str] = {"od": "tube's OD", "wall": "tube's wall", "clr": "CLR"}


def shape(case: Case) -> Iterator[Finding]:
    """Only round tube is judged here: anything else goes to a person."""
    if case.reading.shape is Shape.ROUND:
        return
    kind = "This" if case.reading.shape is Shape.OTHER else f"A {case.reading.shape.value} tube"
    yield Finding(
        rule="shape",
        effect="asks",
        text=f"{kind} is not a round tube: a person here has to look at it.",
        source="house rule: only round tube is judged by figures",
        field="shape",
        # Who wrote 'square' need not be asked whether it is round.
        question="Is the tube round?" if case.reading.shape is Shape.OTHER else None,
    )


def missing_od(case: Case) -> Iterator[Finding]:
    """No mandrel without an OD."""
    if case.reading.od_mm is None and case.reading.shape is Shape.ROUND:
        yield _missing("od", "The tube's OD is not given.", "What is the tube's OD?")


def missing_wall(case: Case) -> Iterator[Finding]:
    """No bore, so no mandrel, without a wall."""
    if case.reading.wall_mm is None and case.reading.shape is Shape.ROUND:
        yield _missing("wall", "The tube's wall is not given.", "What is the tube's wall?")


def missing_clr(case: Case) -> Iterator[Finding]:
    """No D of bend without a centreline radius."""
    if case.reading.clr_mm is None and case.reading.shape is Shape.ROUND:
        text = "The centreline radius (CLR) of the bend is not given."
        yield _missing("clr", text, "What is the centreline radius (CLR) of the bend?")


def _missing(field: FieldName, text: str, question: str) -> Finding:
    return Finding(
        rule=f"missing-{field}",
        effect="asks",
        text=text,
        source="needed to judge the bend",
        field=field,
        question=question,
    )


def positive_sizes(case: Case) -> Iterator[Finding]:
    """No tube has a size of nothing."""
    given = zip(LENGTH_FIELDS, case.reading.lengths_mm, strict=True)
    for field, value in given:
        if value is not None and value <= 0:
            name = _NAMES[field]
            yield Finding(
                rule="positive-sizes",
                effect="asks",
                text=f"The {name} can't be {case.length(value)}.",
                source=_GEOMETRY,
                measured=value,
                limit=Decimal(0),
                field=field,
                question=f"What is the {name}?",
            )


def possible_wall(case: Case) -> Iterator[Finding]:
    """A wall of OD/2 leaves no bore."""
    r = case.reading
    if r.od_mm is None or r.wall_mm is None or r.possible_wall or min(r.od_mm, r.wall_mm) <= 0:
        return
    share = "half" if 2 * r.wall_mm == r.od_mm else "more than half"
    yield Finding(
        rule="possible-wall",
        effect="asks",
        text=(
            f"A wall of {case.length(r.wall_mm, wall=True)} is {share} of the tube's OD, "
            f"{case.length(r.od_mm)}: one of the two must be meant otherwise."
        ),
        source=_GEOMETRY,
        measured=r.wall_mm,
        limit=r.od_mm / 2,
        field="wall",
        question="What are the tube's OD and wall?",
    )


def possible_clr(case: Case) -> Iterator[Finding]:
    """A CLR of OD/2 leaves no inside radius."""
    r = case.reading
    if r.od_mm is None or r.clr_mm is None or r.possible_clr or min(r.od_mm, r.clr_mm) <= 0:
        return
    yield Finding(
        rule="possible-clr",
        effect="asks",
        text=(
            f"A CLR of {case.length(r.clr_mm)} is not more than half of the tube's OD, "
            f"{case.length(r.od_mm)}: one of the two must be meant otherwise."
        ),
        source=_GEOMETRY,
        measured=r.clr_mm,
        limit=r.od_mm / 2,
        field="clr",
        question="What is the radius to the tube's centreline (CLR)?",
    )
