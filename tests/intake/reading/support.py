"""Reading a bare text, as the tests here want it: no headers, no masking, only the words."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal

import pytest
from _pytest.mark import ParameterSet

from bendreply.intake.model import Address, Message, OwnText
from bendreply.intake.reading import read
from bendreply.rules.request import SizeRequest

from .known_faults import KNOWN_FAULTS


def whole(text: str, subject: str = "") -> tuple[Message, OwnText]:
    """A message whose every word is the sender's own and new."""
    message = Message(
        message_id="x@example.com",
        sender=Address(name="Pat", address="pat@example.com"),
        subject=subject,
        body=text,
    )
    own = OwnText(text=message.text, body_start=message.body_start, subject_counts=True)
    return message, own


def read_text(text: str, subject: str = "") -> tuple[SizeRequest, ...]:
    """What the reader makes of a text that the sender wrote all by himself."""
    message, own = whole(text, subject)
    return read(own, message).requests


@dataclass(frozen=True)
class Size:
    """What a careful sales engineer would write down: lengths in mm, and what he would confirm."""

    od: Decimal | None
    wall: Decimal | None
    clr: Decimal | None
    doubts: frozenset[str]
    shape: str = "round"
    twin: bool = False
    """Pipe by DN: the ISO and the ASME diameter are both right (they differ by up to 0.35 mm)."""

    def describes(self, request: SizeRequest) -> bool:
        """Whether that is what was read."""
        return (
            request.shape.value == self.shape
            and (self._twins(request.od_mm) if self.twin else request.od_mm == self.od)
            and request.wall_mm == self.wall
            and request.clr_mm == self.clr
            and doubted(request) == self.doubts
        )

    def _twins(self, od: Decimal | None) -> bool:
        return od is not None and self.od is not None and abs(od - self.od) <= Decimal("0.35")


def doubted(request: SizeRequest) -> frozenset[str]:
    """The doubted fields that say what tube and bend it is; material has tests of its own."""
    return frozenset(d.field for d in request.doubts if d.field in ("od", "wall", "clr", "shape"))


def inch(
    od: str | None = None, wall: str | None = None, clr: str | None = None, doubts: str = "",
    shape: str = "round",
) -> Size:  # fmt: skip
    """A size from inches, as written in decimals: 1 in is 25.4 mm exactly."""
    return Size(
        _mm(od, "25.4"), _mm(wall, "25.4"), _mm(clr, "25.4"), frozenset(doubts.split()), shape
    )


def mm(
    od: str | None = None, wall: str | None = None, clr: str | None = None, doubts: str = "",
    shape: str = "round", *, twin: bool = False,
) -> Size:  # fmt: skip
    """A size from millimetres."""
    return Size(_mm(od, "1"), _mm(wall, "1"), _mm(clr, "1"), frozenset(doubts.split()), shape, twin)


def _mm(value: str | None, factor: str) -> Decimal | None:
    return None if value is None else Decimal(value) * Decimal(factor)


def case(name: str, text: str, *sizes: Size) -> ParameterSet:
    """One row of a table of notations: a name, the words, what they mean."""
    return row(name, text, sizes)


def row(name: str, *values: object) -> ParameterSet:
    """A named row; what is known to be misread still is a strict xfail, so that a fix shows."""
    why = KNOWN_FAULTS.get(name)
    marks = [] if why is None else [pytest.mark.xfail(strict=True, reason=why)]
    return pytest.param(*values, id=name, marks=marks)


def written_down(requests: Sequence[SizeRequest]) -> str:
    """What was read, one size a line, for a failing test to show."""
    lines = [
        f"  {r.shape.value} {r.od_mm} x {r.wall_mm} R {r.clr_mm}, doubts {sorted(doubted(r))}"
        for r in requests
    ]
    return "\n".join(lines) or "  nothing"
