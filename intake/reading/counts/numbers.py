"""Whole numbers that could count something: in figures or in words, and part of no size."""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass

from ...late_pattern import late_pattern
from ..text.figures import Layout
from ..text.phrases import words_of
from ..text.roles import LENGTH_ROLES
from . import words as w

_GLUED_BEFORE = frozenset("-/:.,+")
_ITEMS = frozenset(
    "pos position positie posizione posicion item line ligne linea riga zeile partida regel ln itm"
    " lin lig poste rij fila voce clin slin".split()
)
_MACHINES = frozenset(
    "machine maschine anlage cintreuse bender curvadora dobladora curvatubi piegatubi curvatrice"
    " macchina maquina buigmachine hall halle hal cell zelle cellule celda cella bay building plant"
    " werk usine planta stabilimento fabriek platz arbeitsplatz".split()
)
_BEGINS = frozenset(("", "\n", "\n\n"))
_EACH = frozenset(("each", "every", "per", "je", "por", "par"))
_REVISIONS = frozenset("rev revision revisie version ver edition index indice ausgabe".split())
_PAGES = frozenset("blatt sheet sht page hoja foglio blad".split())
_ITEM_POINTS = (".", "#", ":")
_BEHIND_PAIR = frozenset(("de", "", "\n", "\n\n", ".", ",", ";"))
"""'Un par de mandriles', 'un par.', but not 'un par taille'."""
_TIMES = frozenset("x×")
_MONEY = frozenset("$€£#§")
_OF_A_SIZE = frozenset(("er", "ers", "erd", "ner"))
_THE = frozenset("the that this our my your den der dem".split())
_ONE_TOOL = frozenset("mandrel dorn biegedorn tool".split())
_OPENS_CHAIN = late_pattern(r" ?/ ?\d{1,3}(?:[.,]\d{1,3})? ?/ ?\d")
"""Behind 'mandrels:' the 16 of '16 / 1.5 / 30' is an OD."""
_LEAST_NAME = 4
"""'The 2 mandrel' may lack its 's'."""
_SETS = frozenset("set satz sätze pack packung serie reihe".split())
"""'Ein 3er Satz' counts; 'den 15er Dorn' names a size."""


@dataclass(frozen=True, slots=True)
class Count:
    """A number by the indexes of its words."""

    first: int
    after: int
    value: int
    shy: bool = False
    """An everyday word as well ('par', 'due'): counts only before a piece or a mandrel."""
    bracket: bool = False
    """'(2)'."""


class Numbers:
    """The numbers among the words of a layout."""

    def __init__(self, layout: Layout, sizes: frozenset[int]) -> None:
        self.plain = layout.text
        self.words = words_of(layout.text)
        self.text = self.words.text
        self.tokens = layout.tokens
        self.starts = [token.start for token in layout.tokens]
        self.sizes = sizes

    def written(self, index: int) -> str:
        """The word as it was written, casefolded but with its accents."""
        return self.plain[self.words.start[index] : self.words.end[index]].casefold()

    def at(self, index: int) -> Count | None:
        """The number that begins there, its brackets and its repetition in figures included."""
        bracket = self.words.at(index) == "("
        if bracket:
            return None  # read from the figure in it, so that "(2)" is found once
        value, after, shy = self._value(index)
        if not value:
            return None
        if self.words.at(after) == "(" and self.words.at(after + 2) == ")":
            again = self._value(after + 1)[0]
            if again == value:
                after += 3  # "three (3)"
        first = index
        if self.words.at(index - 1) == "(" and self.words.at(after) in _TIMES:
            after += self.words.at(after + 1) == ")"  # "mandrel (2x)"
        if self.words.at(index - 1) == "(" and self.words.at(after) == ")":
            return Count(index - 1, after + 1, value, shy, bracket=True)
        return Count(first, after, value, shy)

    def _value(self, index: int) -> tuple[int, int, bool]:
        """(value, index behind it, whether shy); a value of 0 is no number."""
        word = self.words.at(index)
        if word.isdecimal():
            if len(word) > 3 or not self._is_plain(index):
                return 0, index, False
            return self._dozens(int(word), index + 1)
        if after := self._half_dozen(index):
            return 6, after, False
        if after := self._pair(index):
            return 2, after, False
        if word == "half" and self.words.at(index + 1) == "a":
            return 0, index, False
        value = w.COUNTS.get(word, 0)
        if not value or not self._is_plain(index):
            return 0, index, False
        after = index + 1
        if (word == "another" or word in w.UNIT_SINGLE) and self.words.at(after) == "one":
            after += 1
        if word in w.TENS:
            dash = self.words.at(after) == "-"
            unit = w.COUNTS.get(self.words.at(after + dash), 0)
            if 0 < unit < 10:
                value, after = value + unit, after + dash + 1
        if word in w.SHY:
            return value, after, True
        return self._dozens(value, after)

    def _pair(self, index: int) -> int:
        """'Ein Paar Dorne', which 'ein paar' are some, and 'un par de mandriles': the place behind
        it, or 0."""
        first, second = self.words.at(index), self.words.at(index + 1)
        if (first, second) == ("un", "par") and self.words.at(index + 2) in _BEHIND_PAIR:
            return index + 2
        if (first, second) == ("un", "paio"):
            return index + 2
        if first == "ein" and second == "paar":
            return index + 2 if self.plain[self.words.start[index + 1]] == "P" else 0
        return 0

    def _half_dozen(self, index: int) -> int:
        """'Half a dozen', 'ein halbes Dutzend', 'une demi-douzaine': the place behind it, or 0."""
        at = index + (self.words.at(index) in w.ARTICLES)
        if self.words.at(at) not in w.HALF:
            return 0
        at += 1
        at += self.words.at(at) in ("a", "-")
        return at + 1 if self.words.at(at) in w.DOZENS else 0

    def _dozens(self, value: int, after: int) -> tuple[int, int, bool]:
        if self.words.at(after) in w.DOZENS:
            return value * 12, after + 1, False
        if self.words.at(after) in w.PAIRS and self.words.at(after) not in w.SHY:
            return value * 2, after + 1, False
        return value, after, False

    def is_size(self, index: int) -> bool:
        """Whether a figure that belongs to a size begins there."""
        return index < len(self.words) and self.words.start[index] in self.sizes

    def ends_at(self, index: int) -> bool:
        """Whether a plain number stands right before that word."""
        return index > 0 and bool(self._value(index - 1)[0])

    def _is_plain(self, index: int) -> bool:
        """Whether the word is a number of its own, not a piece of a size, a date or a price."""
        start, end = self.words.start[index], self.words.end[index]
        before = self.words.at(index - 1)
        if self._numbers_an_item(index) or self._numbers_its_line(index):
            return False
        if self._is_called_by_size(index):
            return False
        if before in w.EACH and self.words.at(index - 2) in w.MEASURES - {"x"}:
            return False  # "Wand je 1"
        if index and self.words.end[index - 1] == start:
            if before in _MONEY:
                return False
            if before.isalpha() and before != "x":
                return False
            if before in _GLUED_BEFORE and index > 1:
                ahead = self.words.end[index - 2] == self.words.start[index - 1]
                label = before == ":" and self.text[index - 2].isalpha()  # "Qty:2"
                if (
                    ahead
                    and not label
                    and self.text[index - 2].isalnum()
                    and not self._ends_range(index)
                ):
                    return False
        if _OPENS_CHAIN.match(self.plain, end):
            return False
        return self._is_whole_token(start, end, digits=self.text[index].isdecimal())

    def _numbers_an_item(self, index: int) -> bool:
        """'Pos. 10 Biegedorn', 'Line 2: mandrel': which item or issue, not how many."""
        named = index - 1
        while named > 0 and self.text[named] in _ITEM_POINTS:
            named -= 1
        if named < 0 or index - named > len(_ITEM_POINTS):
            return False
        if not self.words.together(named, index):
            return False
        if self.text[named] in _REVISIONS or self.text[named] in _PAGES:
            return True  # "per our print rev 4 please quote (3) mandrels"
        if self._names_machine(named, index):
            return True
        return self.text[named] in _ITEMS and not self._is_of_each(named)

    def _names_machine(self, named: int, index: int) -> bool:
        """'For bender 4 I need 3 mandrels', 'Biegemaschine 2': which one; but 'for my machine 2
        mandrels' counts."""
        word, after = self.text[named], index + 1
        if word not in _MACHINES and not word.endswith(("maschine", "anlage")):
            return False
        return not w.names_tool(self.words.at(after)) and not self.words.phrase(after, w.PIECES)

    def _numbers_its_line(self, index: int) -> bool:
        """'10  2 EA  Mandrel', '3 Qty 1 Mandrel': it opens a line that has a count of its own."""
        if index and self.words.at(index - 1) not in _BEGINS:
            return False
        behind = index + 1
        label = self.words.phrase(behind, w.LABELS)
        behind += label
        behind += label > 0 and self.words.at(behind) in _ITEM_POINTS
        if not self.words.at(index).isdecimal() or not self.words.at(behind).isdecimal():
            return False
        return label > 0 or self.words.phrase(behind + 1, w.PIECES) > 0

    def _is_called_by_size(self, index: int) -> bool:
        """'Den 15er Dorn haben wir schon', 'the 35 mandrel': no 15 mandrels, nor 35."""
        behind = index + 1
        word = self.text[index]
        if word.isdecimal() and int(word) >= _LEAST_NAME and self.words.at(behind) in _ONE_TOOL:
            return self.words.at(index - 1) in _THE
        if self.words.at(behind) not in _OF_A_SIZE or behind >= len(self.words):
            return False
        if self.words.start[behind] != self.words.end[index]:
            return False
        behind += 1 + (self.words.at(behind + 1) == "-")
        return self.words.at(behind) not in _SETS

    def _is_of_each(self, index: int) -> bool:
        """Whether 'each' or 'per' stands before: 'each item 2 sets' counts."""
        return index > 0 and self.text[index - 1] in _EACH

    def _ends_range(self, index: int) -> bool:
        """'2-3 mandrels', 'n.3'."""
        left = self.text[index - 2]
        if self.text[index - 1] != "-":
            return left == "n"
        first = index == 2 or self.words.end[index - 3] < self.words.start[index - 2]
        return first and left.isdecimal() and len(left) <= 2 and len(self.text[index]) <= 2

    def _is_whole_token(self, start: int, end: int, *, digits: bool) -> bool:
        place = bisect_right(self.starts, start) - 1
        token = self.tokens[place] if place >= 0 else None
        if token is None or token.end <= start:
            return True
        if token.start in self.sizes or token.kind in ("block", "material"):
            return token.text == f"({self.plain[start:end]})"  # "(2)" at the start of a line
        number = token.number
        if number is None:
            return True
        if token.unit is not None and not token.weak_unit:
            return False
        if number.start != start or (digits and number.end != end):
            return False
        if token.cues and token.cues[0].role in LENGTH_ROLES:
            return False  # "R 100 tool"
        return number.value == number.value.to_integral_value()
