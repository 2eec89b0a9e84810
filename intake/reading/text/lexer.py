"""Plain text to tokens: numbers with their units, cues, materials, and what is no size at all."""

from __future__ import annotations

import re
from bisect import bisect_right
from collections.abc import Collection
from decimal import Decimal

from ..material.materials import find_materials
from ..numbers.foreign_numbers import begins_length, spelled_at
from ..numbers.multiples import MULTIPLE_STARTS, bare_multiple, is_list_mark, multiple_at
from ..numbers.number_words import WORDS, words_at
from ..numbers.numbers import Number, number_at, scaled
from ..numbers.part_millimetres import STARTS as PART_STARTS
from ..numbers.part_millimetres import may_be_tenths, part_at
from ..numbers.parted_units import parted_at
from ..numbers.prefixes import PREFIX_STARTS, Prefix, prefix_at
from ..numbers.tenths import tenths_at
from ..numbers.units_after import counted_after, measures, unit_after
from .cue_phrases import cue_phrase
from .cues import WORD, Cue
from .everyday import says_nothing
from .protected import protected_spans
from .schedule_names import STARTS as SCHEDULE_STARTS
from .schedule_names import schedule_at, whole_schedule
from .tokens import Kind, Token

MOST_NUMBERS = 1000
"""So many numbers of a text are read, some 250 sizes; that there are more is told."""

_COUNTED = (
    r"\s(?:[a-z]+\s){0,2}(?:mandrels?|mandrills?|plugs?|biegedorne?|dorne?|mandrins?|mandril(?:es)?"
    r"|mandrin[oi]|anim[ae]|doorn(?:en)?|tubes?|pipes?|rohre?|tubos?|tub[oi]|buis|buizen|sets?|pcs)\b"
)
"""'1 x mandrel 1 x .065': the first sign counts what follows, and multiplies nothing."""
_TIMES = re.compile(
    rf"x(?![a-z])(?!{_COUNTED})|"
    r"x(?=[tsr]\d|Ø)|\*|by\b|mal\b|p[eao]r\b(?=\s?[\d.])"
    # "tube 25 sur 60 et 75 de rayon" sets it on two radii
    r"|sur\b(?=\s?[\d.])(?!\s?\d{2,4}(?:\s?mm)?(?:\s?(?:,|et|ou|/)\s?\d{2,4}(?:\s?mm)?){0,4}"
    r"\s(?:de |en )?rayons?\b)",
    re.IGNORECASE,
)
_DIGITS = re.compile(r"\d{1,2}(?!\d)")
_DEGREES = frozenset({"noise:°", "noise:deg", "noise:degrees", "noise:degree", "noise:grad"})
_SPACE = re.compile(r"[ \t]+")
_BREAK = re.compile(r"[ \t\n]+")
# "38 ±0.1 x 1.5": a tolerance stands aside, the figures around it stay neighbours.
_TOLERANCE = re.compile(
    r"[(]?(?:(?:±|\+\s?/?\s?-)\s?(?:\d{1,2}/\d{1,2}|\d{0,4}[.,]?\d{1,5})"
    # Both signed, or one of them zero: "- 1/2 in radius" is a dash and a half.
    r"|[+-]\s?\d{0,3}[.,]?\d{1,5}\s?/\s?(?:[+-]\s?\d{0,3}[.,]?\d{1,5}|0(?![\d.,]))"
    r"(?=\s?(?:mm|in\b|[xX×,;)]|[oOiI]\.?[dD]\b|dia|wall|tub|$)))"
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
_THICK_T = re.compile(r"[tT](?!\w)")
_SUFFIX_S = re.compile(r"s\b", re.IGNORECASE)
_ELIDED = re.compile(r"(?:[ld]|(?:d|n|s)?ell|(?:d|n)?all|sull|coll)'(?=[^\W\d_])", re.IGNORECASE)
"""'L'épaisseur est de 2 mm', 'dell'acciaio': the article is no part of the word."""


def lex(plain: str, lengths: Collection[int] = ()) -> list[Token]:
    """All tokens of ``plain`` in order, up to the ``MOST_NUMBERS``th number.

    Never raises; linear in the length of the text. No material is looked for where one of
    ``lengths`` begins: the head of a table's column has said that its figures are lengths.
    """
    return _Lexer(plain, lengths).run()


class _Lexer:
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

    def run(self) -> list[Token]:
        """Cut the text from left to right."""
        text, at = self.text, 0
        while at < len(text) and self.numbers < MOST_NUMBERS:
            if text[at] == " " and text[at + 1 : at + 2] not in (" ", "\t"):
                at += 1  # most steps are a single space
            else:
                at = self._step(at)
        return self.tokens

    def _add(self, kind: Kind, start: int, end: int) -> int:
        self.tokens.append(Token(kind, start, end, self.text[start:end].casefold()))
        return end

    def _step(self, at: int) -> int:
        char = self.text[at]
        if char in " \t":
            return self._space(at)
        if char == "\n":
            return self._line(at)
        if char in "(±+-":
            tolerance = _TOLERANCE.match(self.text, at)
            if tolerance is not None:
                return self._add("gap", at, tolerance.end())
        if char in "hH" and (fit := _FIT.match(self.text, at)) is not None:
            return self._add("gap", at, fit.end())
        if char in ".·_-":
            leader = _LEADER.match(self.text, at)
            if leader is not None:
                return self._add("gap", at, leader.end())
        if at in self.materials:
            end = self._add("material", at, self.materials[at].end)
            self.tokens[-1].material = self.materials[at]
            return end
        tenths = self._tenths(at) if char.isdigit() else None
        if tenths is not None:
            token = self._with_unit(tenths, at)
            token.cues = (Cue("wall", "before"),)
            return token.end
        if at in self.blocks and not self._reaches_down(at, self.blocks[at][0]):
            end, what = self.blocks[at]
            self._add("block", at, end)
            self.tokens[-1].block = what
            return end
        if char.isdigit() or (char in ".," and self.text[at + 1 : at + 2].isdigit()):
            return self._number(at) or self._add("punct", at, at + 1)
        if char == "*" and self._between_numbers() and not is_list_mark(self.text, at):
            return self._add("times", at, at + 1)
        if char.isalpha() or char in "Ø#-":
            prefixed = self._prefixed(at) if char in PREFIX_STARTS else None
            return prefixed or self._worded(at)
        return self._add("punct", at, at + 1)

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
            self._add("gap", at, end)
        return end

    def _line(self, at: int) -> int:
        match = _BREAK.match(self.text, at)
        end = match.end() if match is not None else at + 1
        # Indentation after a break is not a table gap.
        return self._add("para" if self.text.count("\n", at, end) > 1 else "line", at, end)

    # --- numbers --------------------------------------------------------------------------------

    def _number(self, at: int) -> int | None:
        glued = at > 0 and self.text[at] in ".," and self.text[at - 1].isalnum()
        if glued and not self._after_times():
            return None  # the point of "no.5" is no decimal point; that of "1.75x.095" is
        number = number_at(self.text, at)
        if number is None:
            return None
        whole = parted_at(self.text, number) or self._and_a_half(number)
        multiple = bare_multiple(self.text, whole)
        if multiple is not None:
            return self._add_number(whole, at, multiple, "D").end
        return self._with_unit(whole, at).end

    def _after_times(self) -> bool:
        return bool(self.tokens) and self.tokens[-1].kind == "times"

    def _after_number(self, at: int) -> bool:
        """Whether the token before, on the same line, is a number."""
        last = self.tokens[-1] if self.tokens else None
        return last is not None and last.number is not None and "\n" not in self.text[last.end : at]

    def _and_a_half(self, number: Number) -> Number:
        """'2 and a quarter': digits with a fraction in words."""
        rest = _AND_PART.match(self.text, number.end) if number.style == "integer" else None
        part = words_at(self.text, rest.start("part")) if rest is not None else None
        if part is None or part.value >= 1:
            return number
        return Number(number.start, part.end, (number.value + part.value,), "words")

    def _with_unit(self, number: Number, at: int, prefix: Prefix | None = None) -> Token:
        """Add the number that its spelling or ``prefix`` begins at ``at``, unit and all."""
        counts = counted_after(self.text, number)
        unit = None if counts else unit_after(self.text, number, self.materials)
        name, end = (unit.name, unit.end) if unit is not None else (number.unit, number.end)
        if name == "thou":
            number, name = scaled(number, Decimal("0.001")), "in"
        end = max(end, number.end)
        weak = unit is not None and unit.weak
        token = self._add_number(number, at, end, name)
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

    def _add_number(self, number: Number, at: int, end: int, unit: str | None) -> Token:
        self._add("number", at, end)
        self.numbers += 1
        token = self.tokens[-1]
        token.number, token.unit = number, unit
        return token

    def _prefixed(self, at: int) -> int | None:
        """A number with a sign before it: 'R57', 'sch 40'."""
        prefix = prefix_at(self.text, at, after_times=self._after_times())
        if prefix is None:
            return None
        if self._reaches_down(at, prefix.end):
            return None
        if prefix.assigns and prefix.name in ("od", "id", "clr") and self._after_number(at):
            return None  # '2" OD: .083 wall': the OD is the 2 in
        number = number_at(self.text, prefix.end)
        if prefix.name == "sch":
            number = whole_schedule(self.text, number) or words_at(
                self.text, prefix.end
            )  # "schedule forty"
        if number is None:
            return None
        if prefix.role == "radius" and self._after_number(at):
            unit = unit_after(self.text, number, self.materials)
            if unit is not None and unit.name in _DEGREES:
                return None  # "4.5 R 90 deg": the R is that of the 4.5
        token = self._with_unit(number, at, prefix)
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

    # --- words ----------------------------------------------------------------------------------

    def _worded(self, at: int) -> int:
        word = WORD.match(self.text, at)
        if word is None:
            return self._add("punct", at, at + 1)
        folded = word[0].casefold()
        if folded in PART_STARTS or may_be_tenths(self.text, word.end()):
            part = part_at(self.text, at)
            if part is not None:
                return self._with_unit(part, at).end
        elided = at + folded.find("'") + 1
        if elided > at and elided in self.materials and not folded.startswith("d'"):
            return self._add("word", at, elided)  # "de l'acier", "dell'alluminio"
        if says_nothing(folded):
            return self._behind_article(at, word) or self._add("word", at, word.end())
        first = folded[0]
        if first in "xbmps":
            times = _TIMES.match(self.text, at)
            if times is not None and self._between_numbers():
                return self._add("times", at, times.end())
        if first in MULTIPLE_STARTS:
            multiple = multiple_at(self.text, at)
            if multiple is not None:
                return self._add_number(multiple, at, multiple.end, "D").end
        if first in SCHEDULE_STARTS:
            schedule = schedule_at(self.text, at)
            if schedule is not None:
                return self._named_schedule(at, *schedule)
        if folded in WORDS or folded in ("inch", "an", "a"):
            end = self._spoken(at)
            if end is not None:
                return end
        if begins_length(folded):
            number = spelled_at(self.text, at)
            if number is not None:
                return self._with_unit(number, at).end
        return self._cue(at, word.end(), folded) or self._add("word", at, word.end())

    def _behind_article(self, at: int, word: re.Match[str]) -> int | None:
        """The cue that an elided article hides."""
        article = _ELIDED.match(word[0])
        if article is None:
            return None
        behind = at + article.end()
        self._add("word", at, behind)
        end = self._cue(behind, word.end(), word[0][article.end() :].casefold())
        if end is None:
            self.tokens.pop()
        return end

    def _named_schedule(self, at: int, name: str, end: int) -> int:
        """'Std', 'sch 10S', 'extra heavy'."""
        token = self._add_number(Number(at, end, (Decimal(0),), "words"), at, end, "sch")
        token.cues = (Cue("schedule", "before"),)
        token.notes = (name,)
        return token.end

    def _spoken(self, at: int) -> int | None:
        """'Inch and a half', 'one twenty wall'."""
        number = words_at(self.text, at)
        if number is None:
            return None
        if number.style == "speech" and self._names_grade(number):
            end = self._add("block", at, number.end)
            self.tokens[-1].block = "grade"
            return end
        return self._with_unit(number, at).end if self._measures(number) else None

    def _between_numbers(self) -> bool:
        """Whether the token before is something a multiplication sign may follow."""
        for token in reversed(self.tokens[-7:]):
            if token.kind == "number":
                noise = (token.unit or "").startswith("noise:")
                return not noise or token.unit in ("noise:'", "noise:ft")
            if token.kind in ("cue", "material", "gap") or token.text in ("(", ")", ".", "mm", '"'):
                continue
            return False
        return False

    def _names_grade(self, number: Number) -> bool:
        """'three oh four stainless': figures spoken right before a material are its grade."""
        behind = (number.end + 1, number.end + 2)
        return number.value >= 200 and any(place in self.materials for place in behind)

    def _measures(self, number: Number) -> bool:
        """Whether number words measure something: 'one' alone is far more often a pronoun."""
        if number.unit is not None or number.value != number.value.to_integral_value():
            return True
        said = measures(self.text, number.end)
        return said if said is not None else number.style == "speech"

    def _cue(self, at: int, end: int, first: str) -> int | None:
        """The longest phrase that begins with the word at ``at`` and says what a number is."""
        found = cue_phrase(self.text, end, first)
        if found is None and first.startswith("l'"):
            found = cue_phrase(self.text, end, first[2:])  # "l'épaisseur est de 1,5"
            at = self._add("word", at, at + 2) if found is not None else at
        if found is None:
            return None
        self._add("cue", at, found[0])
        self.tokens[-1].cues = found[1]
        return found[0]
