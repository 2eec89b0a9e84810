"""The pieces that a text is cut into."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from ..material.materials import MaterialMention
from ..numbers.numbers import Number
from .cues import Cue

Kind = Literal[
    "number", "cue", "material", "block", "word", "times", "punct", "line", "para", "gap"
]


@dataclass(slots=True)
class Token:
    """A piece of the plain text. Spaces are dropped; 'gap' is a tab or a wide space in a table."""

    kind: Kind
    start: int
    end: int
    text: str
    """Casefolded."""
    number: Number | None = None
    unit: str | None = None
    """'in', 'mm', 'cm', 'ga', 'bwg', 'swg', 'D', 'sch'; 'noise:ft' and such measure no tube."""
    weak_unit: bool = False
    """'38 in 1.4301': the 'in' may be a preposition."""
    cues: tuple[Cue, ...] = ()
    material: MaterialMention | None = None
    block: str = ""
    """What a number counts or belongs to: 'count', 'grade', 'date', 'phone' ..."""
    notes: tuple[str, ...] = ()
    """The name of a schedule that is no number: 'STD'."""
