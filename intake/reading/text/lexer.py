"""Plain text to tokens: numbers with their units, cues, materials, and what is no size at all."""

from __future__ import annotations

import re
from collections.abc import Collection

from ..numbers.multiples import bare_multiple, is_list_mark
from ..numbers.number_words import words_at
from ..numbers.numbers import Number, number_at
from ..numbers.part_millimetres import may_be_tenths, part_at
from ..numbers.parted_units import parted_at
from ..numbers.prefixes import PREFIX_STARTS, prefix_at
from ..numbers.tenths import tenths_at
from ..numbers.units_after import unit_after
from .cues import Cue
from .cutting import Cutting
from .lexed_words import word_at
from .schedule_names import whole_schedule
from .tokens import Token

MOST_NUMBERS = 450
"""So many numbers of a text are read, 150 whole sizes; that there are more is told."""

_DIGITS = re.compile(r"\d{1,2}(?!\d)")
_DEGREES = frozenset({"noise:°", "noise:deg", "noise:degrees", "noise:degree", "noise:grad"})
_SPACE = re.compile(r"[ \t]+")
_BREAK = re.compile(r"[ \t\n]+")
# "38 ±0.1 x 1.5": a tolerance stands aside, the figures around it stay neighbours.
_TOLERANCE = re.compile(
    r"[(]?(?:(?:±|\+\s?/?\s?-)\s?(?:\d{1,2}/\d{1,2}|\d{0,4}[.,]?\d{1,5})"
    # Both signed, or one of them zero: "- 1/2 in radius" is a dash and a half.
    r"|[+-]\s?\d{0,3}[.,]?\d{1,5}\s?/\s?(?:[+-]\s?\d{0,3}[.,]?\d{1,5}|0(?!\d|[.,]\d))"
    r"(?=\s?(?:mm|in\b|[xX×,;)\n]|[oOiI]\.?[dD]\b|dia|wall|tub|$))"
    r"|\+\s?\d?[.,]\d{1,5}\s{1,2}-\s?(?:\d?[.,]\d{1,5}|0)(?![\d.,/]\d))"
    r"(?:\s?(?:mm|in\b|\"|°|deg\b|%))?(?:\s?[)])?"
)
# '20 h9 x 2' is drawn to that fit (ISO 286); 'H14' behind a grade is its temper.
_FIT = re.compile(r"(?:(?<=\d)|(?<=\d )|(?<=mm )|(?<=\" ))[hH](?:[5-9]|1[0-3])(?!\w|[.,]\d)")
_LEADER = re.compile(r"[.·_-]{3,}(?!\d)|(?:\.\s){3,}")  # "Ext. diam. ........ 2.500 in"
_AND_PART = re.compile(
    r"\sand\s(?P<part>(?:an?|one|three|five|seven)\s(?:half|quarters?|eighths?|sixteenths?))\b",
    re.IGNORECASE,
)
_CELL_BEFORE = re.compile(r"[\t|;]|\S {2,}\S?")
_SUFFIX_S = re.compile(r"s\b", re.IGNORECASE)


def lex(plain: str, lengths: Collection[int] = ()) -> list[Token]:
    """All tokens of ``plain`` in order, up to the ``MOST_NUMBERS``th number.

    Never raises; linear in the length of the text. No material is looked for where one of
    ``lengths`` begins: the head of a table's column has said that its figures are lengths.
    """
    return _Lexer(plain, lengths).run()


class _Lexer(Cutting):
    def run(self) -> list[Token]:
        """Cut the text from left to right."""
        text, at = self.text, 0
        while at < len(text) and self.numbers < MOST_NUMBERS:
            if text[at] == " " and text[at + 1 : at + 2] not in (" ", "\t"):
                at += 1  # most steps are a single space
            else:
                at = self._step(at)
        return self.tokens

    def _step(self, at: int) -> int:
        char = self.text[at]
        if char in " \t":
            return self._space(at)
        if char == "\n":
            return self._line(at)
        if char in "(±+-":
            tolerance = _TOLERANCE.match(self.text, at)
            if tolerance is not None:
                return self.add("gap", at, tolerance.end())
        if char in "hH" and (fit := _FIT.match(self.text, at)) is not None:
            return self.add("gap", at, fit.end())
        if char in ".·_-":
            leader = _LEADER.match(self.text, at)
            if leader is not None:
                return self.add("gap", at, leader.end())
        if at in self.materials:
            end = self.add("material", at, self.materials[at].end)
            self.tokens[-1].material = self.materials[at]
            return end
        tenths = self._tenths(at) if char.isdigit() else None
        if tenths is not None:
            token = self.with_unit(tenths, at)
            token.cues = (Cue("wall", "before"),)
            return token.end
        if at in self.blocks and not self._reaches_down(at, self.blocks[at][0]):
            end, what = self.blocks[at]
            self.add("block", at, end)
            self.tokens[-1].block = what
            return end
        if char.isdigit() or (char in ".," and self.text[at + 1 : at + 2].isdigit()):
            return self._number(at) or self.add("punct", at, at + 1)
        if char == "*" and self.between_numbers() and not is_list_mark(self.text, at):
            return self.add("times", at, at + 1)
        if char.isalpha() or char in "Ø#-":
            prefixed = self._prefixed(at) if char in PREFIX_STARTS else None
            return prefixed or word_at(self, at)
        return self.add("punct", at, at + 1)

    def _tenths(self, at: int) -> Number | None:
        """'15/10', '8 dixièmes d'épaisseur'."""
        digits = _DIGITS.match(self.text, at)
        if digits is not None and may_be_tenths(self.text, digits.end()):
            return part_at(self.text, at)
        return tenths_at(self.text, at)

    def _space(self, at: int) -> int:
        match = _SPACE.match(self.text, at)
        end = match.end() if match is not None else at + 1
        if end - at > 1 or self.text[at] == "\t":
            self.add("gap", at, end)
        return end

    def _line(self, at: int) -> int:
        match = _BREAK.match(self.text, at)
        end = match.end() if match is not None else at + 1
        # Indentation after a break is not a table gap.
        return self.add("para" if self.text.count("\n", at, end) > 1 else "line", at, end)

    def _number(self, at: int) -> int | None:
        glued = at > 0 and self.text[at] in ".," and self.text[at - 1].isalnum()
        if glued and not self.after_times():
            return None  # the point of "no.5" is no decimal point; that of "1.75x.095" is
        number = number_at(self.text, at)
        if number is None:
            return None
        whole = parted_at(self.text, number) or self._and_a_half(number)
        multiple = bare_multiple(self.text, whole)
        if multiple is not None:
            return self.add_number(whole, at, multiple, "D").end
        return self.with_unit(whole, at).end

    def _and_a_half(self, number: Number) -> Number:
        """'2 and a quarter': digits with a fraction in words."""
        rest = _AND_PART.match(self.text, number.end) if number.style == "integer" else None
        part = words_at(self.text, rest.start("part")) if rest is not None else None
        if part is None or part.value >= 1:
            return number
        return Number(number.start, part.end, (number.value + part.value,), "words")

    def _prefixed(self, at: int) -> int | None:
        """A number with a sign before it: 'R57', 'sch 40'."""
        prefix = prefix_at(self.text, at, after_times=self.after_times())
        if prefix is None:
            return None
        if self._reaches_down(at, prefix.end):
            return None
        if prefix.assigns and prefix.name in ("od", "id", "clr") and self.after_number(at):
            return None  # '2" OD: .083 wall': the OD is the 2 in
        number = number_at(self.text, prefix.end)
        if prefix.name == "sch":
            number = whole_schedule(self.text, number) or words_at(
                self.text, prefix.end
            )  # "schedule forty"
        if number is None:
            return None
        if prefix.role == "radius" and self.after_number(at):
            unit = unit_after(self.text, number, self.materials)
            if unit is not None and unit.name in _DEGREES:
                return None  # "4.5 R 90 deg": the R is that of the 4.5
        token = self.with_unit(number, at, prefix)
        if prefix.unit:
            token.unit = token.unit or prefix.unit
        if prefix.name == "sch":
            suffix = _SUFFIX_S.match(self.text, number.end, number.end + 2)
            token.end, token.unit = number.end + (1 if suffix else 0), "sch"
        elif prefix.role == "od" and (token.unit or "").startswith("noise:"):
            token.unit = None
        return token.end

    def _reaches_down(self, at: int, end: int) -> bool:
        """Whether a sign is the head of a table's last column, and its figure the next row's first:
        'OD | Wall | Sch' above '48.3 | ...', 'Wall ; Part #' above '38 ; ...'."""
        if "\n" not in self.text[at:end]:
            return False
        begin = self.text.rfind("\n", 0, at) + 1
        return _CELL_BEFORE.search(self.text, begin, at) is not None
