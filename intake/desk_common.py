"""What every step at the desk needs: finding the inquiry, a person's name, dates in sentences."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from datetime import UTC, date, datetime
from typing import TYPE_CHECKING

from ..rules.assessment import Assessment
from .addressing import one_line
from .desk_errors import ChangedMeanwhileError, NoNameError, UnknownInquiryError
from .inquiry import Inquiry
from .model import Kind, Result

if TYPE_CHECKING:
    from .store_reader import Reader

LONGEST_NAME = 80
NO_CHANGE = frozenset(
    ("copy came in", "earlier message came in", "reply to an earlier message seen in Sent")
)
"""Events after which an inquiry is still the version that it was."""
_LARGEST_NUMBER = 2**31 - 1  # what the column holds in every database


def the_inquiry(book: Reader, id: int | str, *, to_change: bool = False) -> Inquiry:
    """The inquiry of that number, also as a person writes it (``17`` or ``#17``).

    Raises UnknownInquiryError where there is none.
    """
    spelled = str(id).strip().removeprefix("#")
    number = int(spelled) if spelled.isdecimal() and len(spelled) <= 10 else 0
    found = None
    if 0 < number <= _LARGEST_NUMBER:
        found = book.inquiry(number, to_change=to_change)
    if found is None:
        asked = one_line(spelled, 40) or "without a number"
        raise UnknownInquiryError(
            f"there is no inquiry {asked}: `bendreply backlog` shows the numbers that wait"
        )
    return found


def as_expected(book: Reader, inquiry: Inquiry, version: int | None) -> None:
    """Refuse where a person acts on a version that is no longer the latest, saying who was first.

    None: the person acts on whatever there is.
    """
    if version is None or version == inquiry.version:
        return
    changes = (one for one in reversed(book.history(inquiry.id)) if one.what not in NO_CHANGE)
    raise ChangedMeanwhileError.of(inquiry.id, next(changes, None))


def a_name(by: str, doing: str, people: Sequence[str] = ()) -> str:
    """A person's name on one line. ``people``: who may say so; empty for anybody with a name."""
    name = one_line(by, LONGEST_NAME)
    if not name:
        raise NoNameError(f"{doing} needs the name of the person who does it")
    if not people:
        return name
    for known in people:
        if known.casefold() == name.casefold():
            return known
    raise NoNameError(f"{name} is not among the people who may do that: {', '.join(people)}")


def when(moment: datetime) -> str:
    """A moment as a sentence needs it."""
    return f"{moment.astimezone(UTC):%Y-%m-%d %H:%M} UTC"


def in_short(result: Result) -> str:
    """The decisions of an inquiry in a word or two."""
    match result.kind:
        case Kind.AUTOMATIC:
            return "no reply"
        case Kind.OTHER:
            return "by hand"
        case Kind.QUESTION if not result.assessments:
            return "question"
    counts = Counter(one.decision.value for one in result.assessments)
    if len(result.assessments) == 1:
        return next(iter(counts))
    return ", ".join(f"{count} {decision}" for decision, count in counts.items()) or "by hand"


def as_read(result: Result) -> list[dict[str, str]]:
    """The sizes of a reading as the history keeps them: lengths in mm."""
    return [
        {
            name: str(value)
            for name, value in (
                ("od_mm", one.request.od_mm),
                ("wall_mm", one.request.wall_mm),
                ("clr_mm", one.request.clr_mm),
                ("material", one.request.material),
                ("decision", one.decision),
            )
            if value is not None
        }
        for one in result.assessments
    ]


def earliest(assessments: Sequence[Assessment]) -> date | None:
    """The first date that any of the sizes is needed by."""
    dates = [one.request.needed_by for one in assessments if one.request.needed_by is not None]
    return min(dates, default=None)
