"""A text while it is cut into tokens: those so far, and how a number joins them, unit and all."""

from __future__ import annotations

import re
from bisect import bisect_right
from collections.abc import Collection
from decimal import Decimal

from ..material.materials import find_materials
from ..numbers.numbers import Number, scaled
from ..numbers.prefixes import Prefix
from ..numbers.units_after import counted_after, unit_after
from .cues import Cue
from .protected import protected_spans
from .tokens import Kind, Token

_THICK_T = re.compile(r"[tT](?!\w)")


class Cutting:
    """The tokens of a text so far, and where its materials and its digits of no size stand."""

    def __init__(self, plain: str, lengths: Collection[int]) -> None:
        self.text = plain
        self.tokens: list[Token] = []
        self.numbers = 0
        self.materials = {
            mention.start: mention
            for mention in find_materials(plain)
            if mention.start not in lengths
        }
        starts = sorted(self.materials)
        self.blocks: dict[int, tuple[int, str]] = {}
        for start, end, what in protected_spans(plain):
            # "en DC01" is Spanish before a grade, not a standard.
            inside = bisect_right(starts, start)
            cut = starts[inside] if inside < len(starts) else end
            self.blocks[start] = (min(cut, end), what)

    def add(self, kind: Kind, start: int, end: int) -> int:
        """A token from ``start`` to ``end`` added; its end."""
        self.tokens.append(Token(kind, start, end, self.text[start:end].casefold()))
        return end

    def add_number(self, number: Number, at: int, end: int, unit: str | None) -> Token:
        """The token of a number added."""
        self.add("number", at, end)
        self.numbers += 1
        token = self.tokens[-1]
        token.number, token.unit = number, unit
        return token

    def with_unit(self, number: Number, at: int, prefix: Prefix | None = None) -> Token:
        """Add the number that its spelling or ``prefix`` begins at ``at``, unit and all."""
        counts = counted_after(self.text, number)
        unit = None if counts else unit_after(self.text, number, self.materials)
        name, end = (unit.name, unit.end) if unit is not None else (number.unit, number.end)
        if name == "thou":
            number, name = scaled(number, Decimal("0.001")), "in"
        end = max(end, number.end)
        weak = unit is not None and unit.weak
        token = self.add_number(number, at, end, name)
        token.weak_unit = weak
        if prefix is not None:
            token.cues = (Cue(prefix.role, "before"),)
            return token
        if counts:
            token.block = "count"
        if name is None and number.value < 25 and _THICK_T.match(self.text, number.end):
            # "1.6t", as Japanese and Korean drawings have it
            token.cues = (Cue("wall", "before"),)
            token.end = number.end + 1
        return token

    def after_times(self) -> bool:
        """Whether the token before is a multiplication sign."""
        return bool(self.tokens) and self.tokens[-1].kind == "times"

    def after_number(self, at: int) -> bool:
        """Whether the token before, on the same line, is a number."""
        last = self.tokens[-1] if self.tokens else None
        return last is not None and last.number is not None and "\n" not in self.text[last.end : at]

    def between_numbers(self) -> bool:
        """Whether the token before is something a multiplication sign may follow."""
        for token in reversed(self.tokens[-7:]):
            if token.kind == "number":
                noise = (token.unit or "").startswith("noise:")
                return not noise or token.unit in ("noise:'", "noise:ft")
            if token.kind in ("cue", "material", "gap") or token.text in ("(", ")", ".", "mm", '"'):
                continue
            return False
        return False
