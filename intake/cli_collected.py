"""What one run of ``collect`` brought in, counted and told."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from .cli_common import printable

if TYPE_CHECKING:
    from .desk import Taken
    from .model import Kind


def _many(number: int, kind: Kind) -> str:
    if kind == "question":
        return f"{number} question" if number == 1 else f"{number} questions"
    return f"{number} with sizes" if kind == "sizes" else f"{number} {kind}"


@dataclass(slots=True)
class Collected:
    """What one run of ``collect`` brought in."""

    kinds: Counter[Kind] = field(default_factory=Counter)
    """New inquiries by their kind. Only counted: a long backlog would not fit into memory."""
    joined: int = 0
    """Further messages of inquiries that were there."""
    known: int = 0
    unusable: int = 0

    @property
    def new(self) -> int:
        """How many inquiries were begun."""
        return self.kinds.total()

    def counts(self) -> str:
        """How many of what, in one sentence."""
        detail = ", ".join(_many(number, kind) for kind, number in sorted(self.kinds.items()))
        joined = f"{self.joined} joined to earlier inquiries, " if self.joined else ""
        return (
            f"{self.new} new{f' ({detail})' if detail else ''}, {joined}"
            f"{self.known} known before, {self.unusable} not usable."
        )

    def count(self, taken: Taken, kind: Kind | None = None) -> None:
        """Count a message that the desk has seen, and say what a person should know of it."""
        if taken.joined is not None:
            self.joined += 1
        elif taken.new and kind is not None:
            self.kinds[kind] += 1
        else:
            self.known += 1
        if taken.note:
            print(printable(taken.note))
