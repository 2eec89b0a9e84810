"""The customer's words cut into pieces: plain ones, and figures with what they were read as."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise

from ...rules.assessment import Assessment
from ...rules.request import LENGTH_FIELDS, Evidence, SizeRequest
from ...rules.units import format_in, format_mm
from ..cli_common import printable
from ..model import Message
from ..screen import FIELD_WORDS, material

LONG_LETTER = 3000
"""[characters] More than a screen; such a letter scrolls in its own place, so that the draft below
it stays in reach."""
MOST_PIECES = 2000
"""Of one message; what comes after is shown unmarked."""


@dataclass(frozen=True, slots=True)
class Piece:
    """A stretch of a message. ``name`` is empty for words that nothing was read from."""

    text: str
    name: str = ""
    """What the figure is: 'OD', 'wall', 'OD 1, 2' where several sizes share it."""
    told: tuple[str, ...] = ()
    """What it was read as, one line a reading."""
    target: str = ""
    """The field of the form that it leads to."""


@dataclass(frozen=True, slots=True)
class Marked:
    """One message with its figures marked."""

    subject: tuple[Piece, ...]
    body: tuple[Piece, ...]

    @property
    def is_long(self) -> bool:
        """Whether the body would push what comes after it off the screen."""
        return sum(len(one.text) + 60 * one.text.count("\n") for one in self.body) > LONG_LETTER


def marked(message: Message, assessments: Sequence[Assessment], message_id: str = "") -> Marked:
    """``message`` cut at the evidence that stands in it.

    ``message_id``: of an earlier message of the inquiry; empty for the one that is answered.
    """
    found = [
        (index, one.request, evidence)
        for index, one in enumerate(assessments)
        for evidence in one.request.evidence
        if evidence.surface and evidence.attachment is None and evidence.message_id == message_id
    ]
    text = message.text
    true = [hit for hit in found if text[hit[2].start : hit[2].end] == hit[2].surface]
    start = message.body_start
    return Marked(
        tuple(_pieces(text, 0, len(message.subject), true, len(assessments))),
        tuple(_pieces(text, start, len(text), true, len(assessments))),
    )


Hit = tuple[int, SizeRequest, Evidence]


def _pieces(text: str, start: int, end: int, hits: Sequence[Hit], sizes: int) -> Iterable[Piece]:
    inside = [hit for hit in hits if start <= hit[2].start and hit[2].end <= end]
    cuts = sorted({start, end, *(at for hit in inside for at in (hit[2].start, hit[2].end))})
    begin = start
    for left, right in pairwise(cuts[:MOST_PIECES]):
        here = [hit for hit in inside if hit[2].start <= left and right <= hit[2].end]
        if here:
            if begin < left:
                yield Piece(printable(text[begin:left]))
            yield _figure(text[left:right], here, sizes)
            begin = right
    if begin < end:
        yield Piece(printable(text[begin:end]))


def _figure(words: str, hits: Sequence[Hit], sizes: int) -> Piece:
    names: dict[str, list[int]] = {}
    for index, _, evidence in hits:
        names.setdefault(evidence.field, []).append(index + 1)
    named = []
    for field, numbers in names.items():
        which = "" if sizes == 1 or len(set(numbers)) == sizes else (
            " " + ", ".join(map(str, sorted(set(numbers))))
        )  # fmt: skip
        named.append(FIELD_WORDS.get(field, field.replace("_", " ")) + which)
    told = (_told(request, evidence) for _, request, evidence in hits)
    index, _, first = hits[0]
    return Piece(
        text=printable(words),
        name=" / ".join(named),
        told=tuple(dict.fromkeys(told)),
        target=f"{first.field}-{index + 1}",
    )


def _told(request: SizeRequest, evidence: Evidence) -> str:
    """``1.75 in, 44.45 mm; OD``, with how the words became that, and what is in doubt."""
    field = evidence.field
    name = FIELD_WORDS.get(field, field.replace("_", " "))
    parts = [f"{_value(request, evidence)}; {name}"]
    if evidence.how:
        parts.append(f"by {printable(evidence.how)}")
    if doubt := request.doubt_on(field):
        parts.append(f"in doubt: {printable(doubt.why)}")
    return ", ".join(parts)


def _value(request: SizeRequest, evidence: Evidence) -> str:
    field = evidence.field
    if field in LENGTH_FIELDS:
        length = request.length_mm(field)
        if length is None:
            return "not taken"
        both = [f"{format_in(length, wall=field == 'wall')} in", f"{format_mm(length)} mm"]
        return ", ".join(both if request.written_in == "in" else reversed(both))
    if field == "material":
        return material(request).removesuffix("?")
    value = getattr(request, field)
    return "not taken" if value is None else printable(str(value))
