"""The nearest feasible bends, put into a draft's words and taken out again."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from ..wording import size_words

if TYPE_CHECKING:
    from ...rules.assessment import Assessment
    from ...rules.shop import Shop

BULLETS = ("- ", "Nearest: ", "Or: ")
"""How the reply templates begin a line that lists an offer."""
LEAD = "We could make a mandrel for this instead:"


@dataclass(frozen=True, slots=True)
class Offer:
    """One alternative in the words of a reply."""

    summary: str
    why: str

    @property
    def line(self) -> str:
        """As the reply templates list it."""
        return f"- {self.summary} ({self.why})"

    def is_in(self, body: str) -> bool:
        """Whether a draft names it."""
        return self.summary in body


def offers_of(assessment: Assessment, shop: Shop) -> tuple[Offer, ...]:
    """The alternatives to one size."""
    words = size_words(assessment, shop, number=1)
    return tuple(Offer(one.summary, one.why) for one in words.alternatives)


def put_in(body: str, offer: Offer, beside: Sequence[Offer], signature: Sequence[str]) -> str:
    """The draft with the offer: below the others of its size, else before the signature."""
    if offer.is_in(body):
        return body
    lines = body.split("\n")
    last = max(_places(lines, beside), default=None)
    if last is not None:
        lines.insert(last + 1, offer.line)
        return "\n".join(lines)
    at = _signature(lines, signature)
    return "\n".join([*lines[:at], LEAD, offer.line, "", *lines[at:]])


def take_out(body: str, offer: Offer, beside: Sequence[Offer]) -> str:
    """The draft without the line that lists the offer; a list of nothing else goes with it."""
    lines = body.split("\n")
    at = next((number for number, line in enumerate(lines) if _lists(line, offer)), None)
    if at is None:
        return body
    first, end = _paragraph(lines, at)
    others = any(at != other for other in _places(lines[first:end], beside, first))
    if others or not lines[at].startswith("- "):
        first, end = at, at + 1
    elif end < len(lines):
        end += 1  # the empty line below it
    return "\n".join([*lines[:first], *lines[end:]])


def can_go(body: str, offer: Offer) -> bool:
    """Whether it stands in a line of its own, which can be taken out."""
    return any(_lists(one, offer) for one in body.split("\n"))


def _lists(line: str, offer: Offer) -> bool:
    return line.lstrip().startswith(BULLETS) and offer.summary in line


def _places(lines: Sequence[str], offers: Sequence[Offer], first: int = 0) -> Iterator[int]:
    for number, line in enumerate(lines, start=first):
        if any(_lists(line, one) for one in offers):
            yield number


def _paragraph(lines: Sequence[str], at: int) -> tuple[int, int]:
    """The lines around one up to the next empty ones."""
    first, end = at, at + 1
    while first and lines[first - 1].strip():
        first -= 1
    while end < len(lines) and lines[end].strip():
        end += 1
    return first, end


def _signature(lines: Sequence[str], signature: Sequence[str]) -> int:
    """Where the signature begins; the end where it can't be found."""
    for number in range(len(lines) - 1, -1, -1):
        if signature and lines[number].strip() == signature[0].strip():
            return number
    return len(lines)
