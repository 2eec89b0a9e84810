"""A reply above the quoted question that is no more than its figures: '4 inch. And .065.' below
which the shop has asked 'What are the wall and the CLR?'.

Which figure answers what is told by their sizes alone, so in whatever order they come; where sizes
can't tell (an OD and a radius), nothing is taken.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from ..model import OwnText, Prompt
from .lexer import lex
from .plain import flatten
from .quoted import Relied
from .roles import LENGTH_ROLES
from .tokens import Token

_LONGEST = 240
"""Characters of a reply that says hardly more than its figures."""
_TIMES_THE_WALL = 4
"""An OD or a radius is at least so many walls."""
_QUESTION = {"od": "OD?", "wall": "Wall?", "clr": "CLR?"}
_IN_MM = {"in": Decimal("25.4"), "mm": Decimal(1), "cm": Decimal(10)}


def bare_replies(own: OwnText, relied: Relied | None) -> tuple[Prompt, ...]:
    """One answer for each of the two lengths that the quoted mail asks for, or none."""
    if relied is None or own.prompts:
        return ()
    asked = [field for field in ("od", "wall", "clr") if field in relied.asked]
    words = own.text[own.body_start :]
    if len(asked) != 2 or "wall" not in asked or len(words.strip()) > _LONGEST:
        return ()
    plain = flatten(words)
    tokens = lex(plain.text)
    if any(cue.role in LENGTH_ROLES for token in tokens for cue in token.cues):
        return ()  # the words say which is which
    numbers = [token for token in tokens if token.number is not None and not token.block]
    if len(numbers) != 2 or any(token.kind == "times" for token in tokens):
        return ()
    wall = _wall_of(numbers)
    if wall is None:
        return ()
    other = next(field for field in asked if field != "wall")
    found = []
    for token in numbers:
        start, end = plain.span(token.start, token.end)
        field = "wall" if token is wall else other
        found.append(
            Prompt(
                question=_QUESTION[field], start=start + own.body_start, end=end + own.body_start
            )
        )
    return tuple(found)


def _wall_of(numbers: Sequence[Token]) -> Token | None:
    """The one of two figures that is the wall by far, or None; a gauge is one by its unit."""
    gauges = [token for token in numbers if token.unit in ("ga", "bwg", "swg")]
    if gauges:
        return gauges[0] if len(gauges) == 1 else None
    unit = next((token.unit for token in numbers if token.unit), None)
    small, large = sorted(numbers, key=lambda token: _length(token, unit))
    return small if _length(small, unit) * _TIMES_THE_WALL <= _length(large, unit) else None


def _length(token: Token, other: str | None) -> Decimal:
    """In mm; a bare figure has the other one's unit, and two bare ones are alike."""
    value = token.number.value if token.number is not None else Decimal(0)
    return value * _IN_MM.get(token.unit or other or "", Decimal(1))
