"""One line of what waits: who, which sizes, the answer in words, what is in doubt."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime

from ...rules.assessment import Assessment, Decision
from ..cli_common import printable
from ..inquiry import Row
from ..model import Kind
from ..screen import ANSWERS, NO_SIZE_ANSWERS, material, one_line, size
from ..screen_desk import short_reason, shorten

MOST_SIZES = 4
"""Sizes of one message that its line names; the page of the inquiry has all."""
SUBJECT_SHOWN = 60

ORDER = (*(one.value for one in Decision), "question", "by-hand")
"""Answers as a filter names them, in the order they are offered."""
SPOKEN = {
    **{one.value: ANSWERS[one] for one in Decision},
    "question": "answer",
    "by-hand": "by hand",
}
"""The same in words."""


@dataclass(frozen=True, slots=True)
class Sized:
    """One size in a line."""

    text: str
    material: str
    answer: str
    """As ``ORDER`` has it: which mark stands before it."""
    why: str


@dataclass(frozen=True, slots=True)
class Line:
    """One inquiry that waits."""

    id: int
    version: int
    who: str
    subject: str
    since: datetime
    needed_by: date | None
    sizes: tuple[Sized, ...]
    more_sizes: int
    answer: str
    """For a message without sizes; else empty."""
    notes: tuple[str, ...]
    answers: frozenset[str]
    open_fields: frozenset[str]
    """Fields in doubt, or needed and not given."""
    searched: str
    """What a search by text looks at, in small letters."""


def line_of(row: Row) -> Line:
    """The line of one inquiry."""
    who = one_line(row.sender.name or row.sender.address) or "unknown"
    sizes = tuple(_sized(one) for one in row.assessments)
    answer = "" if sizes else ("question" if row.kind is Kind.QUESTION else "by-hand")
    notes = tuple(map(one_line, row.notes))
    subject = one_line(row.subject)
    words = [
        f"{row.id}", who, row.sender.address, subject, *notes,
        *(f"{s.text} {s.material} {SPOKEN[s.answer]} {s.why}" for s in sizes),
        NO_SIZE_ANSWERS[row.kind] if answer and row.kind in NO_SIZE_ANSWERS else "",
        *(one.stock.part for one in row.assessments if one.stock),
        *(e.words for one in row.assessments for e in one.request.evidence),
    ]  # fmt: skip
    return Line(
        id=row.id,
        version=row.version,
        who=who,
        subject=shorten(subject, SUBJECT_SHOWN) or "(no subject)",
        since=row.waiting_since,
        needed_by=row.needed_by,
        sizes=sizes[:MOST_SIZES],
        more_sizes=max(0, len(sizes) - MOST_SIZES),
        answer=answer,
        notes=notes,
        answers=frozenset((answer,) if answer else (s.answer for s in sizes)),
        open_fields=frozenset(_open_fields(row.assessments)),
        searched=printable(" ".join(words)).casefold(),
    )


def _sized(one: Assessment) -> Sized:
    return Sized(size(one.request), material(one.request), one.decision.value, short_reason(one))


def _open_fields(assessments: tuple[Assessment, ...]) -> set[str]:
    return {
        field
        for one in assessments
        for field in (*one.request.missing, *(doubt.field for doubt in one.request.doubts))
    }
