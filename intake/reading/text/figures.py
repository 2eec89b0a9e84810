"""Numbers that may be part of a size, with their place among the words around them."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from typing import Literal

from ..numbers.numbers import Number
from .roles import GAUGES, Role
from .tokens import Token

Link = Literal["", "times", "slash", "list", "or", "range", "restate", "apart"]
LISTED: frozenset[Link] = frozenset({"list", "or", "range"})
"""Links between values of one thing: '1.5 and 2', '16 or 14', '57 to 76'."""
Row = tuple[str, int, int]
"""A size's line or column in a table: ('row' | 'column', table, index)."""
How = Literal[
    "",
    "sign",
    "cue",
    "unit",
    "header",
    "chain",
    "same",
    "list",
    "table",
    "place",
    "count",
    "asked",
    "changes",
    "quoted",
]
"""What gave a figure its role."""


@dataclass(slots=True, eq=False)
class Figure:
    """A number that may measure something. ``role`` is None until something says what it is."""

    token: int
    """Index in the token list."""
    index: int
    """Index among the figures."""
    start: int
    end: int
    number: Number
    unit: str | None
    weak_unit: bool = False
    role: Role | None = None
    how: How = ""
    sentence: int = 0
    line: int = 0
    clause: int = 0
    """Lines and semicolons so far: where one item of a list may end."""
    paragraph: int = 0
    item: int = 0
    """Marks of list items so far: '1)', '-'."""
    row: Row | None = None
    link: Link = ""
    """How it hangs on the figure before it."""
    notes: list[str] = field(default_factory=list)
    """Why its value is in doubt: 'limit', 'hedged', 'range' ... in a customer's words."""
    negated: bool = False
    owned: bool = False
    """Negated because it is there already: no other figure takes its place."""
    context_only: bool = False
    """In a sentence about tooling already owned: names the die, asks for nothing."""
    put_off: bool = False
    """Its size is for later, refused, or on the sender's shelf."""
    points: bool = False
    """It only says which other size is meant: 'same radius as the 26.9'."""
    corrects: bool = False
    shape: str | None = None

    @property
    def is_measure(self) -> bool:
        """Whether it can still become a length."""
        return self.role != "noise" and not self.negated

    @property
    def is_gauge(self) -> bool:
        """Whether it is the number of a gauge."""
        return self.unit in GAUGES

    @property
    def is_measured(self) -> bool:
        """Whether it looks measured: a unit, a decimal, a fraction."""
        part = self.number.value % 1 != 0  # "two and a quarter"
        return self.unit in ("in", "mm", "cm") or self.number.style in _EXACT or part

    @property
    def schedule(self) -> str:
        """What a pipe schedule is called: 'STD', '10S', '40'."""
        named = bool(self.notes) and self.notes[0].isupper()
        return self.notes[0] if named else str(self.number.value)

    def give(self, role: Role | None, how: How) -> None:
        """Say what the figure is, and what told it."""
        self.role, self.how = role, how


_EXACT = frozenset({"decimal", "fraction", "mixed"})


_ANYWHERE = -1


@dataclass(slots=True)
class Layout:
    """Tokens with their figures and the sentence and line that each token lies in."""

    text: str
    tokens: list[Token]
    figures: list[Figure]
    sentence_of: list[int]
    line_of: list[int]
    spans: dict[int, tuple[int, int]]
    """First and last token index of each sentence."""
    by_sentence: dict[int, list[Figure]]
    lengths: set[int] = field(default_factory=set)
    """Where a table's column holds a length that was taken for a grade: '304' below 'CLR'."""
    earlier: tuple[Figure, ...] = ()
    """What the mail says that this one answers: 'make it .120' changes its wall."""
    given_up: list[tuple[Figure, Figure]] = field(default_factory=list)
    """What was only thought of first, with what was settled on."""
    left_out: list[str] = field(default_factory=list)
    """Words of sizes that were taken as not asked for, to be told to the person."""
    owned: list[str] = field(default_factory=list)
    """Words of sizes whose tool is there already, to be told to the person."""
    aside: list[str] = field(default_factory=list)
    """Words that look like a size, but are of a machine, a sheet, a tube that is not bent."""
    places: list[tuple[int, int]] = field(default_factory=list)
    """Where lines of a list are named by bare numbers."""
    without_figure: list[tuple[int, int]] = field(default_factory=list)
    """Cells that stand for a length or a material and tell none: 'n/a' below 'Wall'."""
    forms: list[tuple[Figure, Role, str | None]] = field(default_factory=list)
    """What the labels of a single form say of its figures, and in which unit."""
    form_count: int | None = None
    """How many mandrels a single form says are wanted."""
    counts_else: set[int] = field(default_factory=set)
    """Where numbers begin that a table or a form says to count no mandrels: 'Balls: 2'."""
    lines_out: list[tuple[int, int]] = field(default_factory=list)
    """Where whole lines of such sizes stand: their material and count go with them."""
    _folded: str | None = None
    _texts: dict[int, str] = field(default_factory=dict)
    _said: dict[tuple[int, re.Pattern[str]], bool] = field(default_factory=dict)

    def between(self, left: Figure, right: Figure) -> list[Token]:
        """Tokens strictly between two figures."""
        return self.tokens[left.token + 1 : right.token]

    def words(self, begin: int, end: int) -> str:
        """The casefolded text between two places of ``text``."""
        folded = self._folded
        if folded is None:
            folded = self._folded = self.text.casefold()
        # A letter may become two ("ß"), never none: where no place moved, all is done at once.
        if len(folded) == len(self.text):
            return folded[begin:end]
        return self.text[begin:end].casefold()

    def before(self, figure: Figure) -> Figure | None:
        """The figure before, wherever it stands."""
        return self.figures[figure.index - 1] if figure.index else None

    def after(self, figure: Figure) -> Figure | None:
        """The figure after, wherever it stands."""
        following = figure.index + 1
        return self.figures[following] if following < len(self.figures) else None

    def after_in_sentence(self, figure: Figure) -> Figure | None:
        """The next figure of the same sentence."""
        after = self.after(figure)
        return after if after is not None and after.sentence == figure.sentence else None

    def in_sentence(self, sentence: int) -> list[Figure]:
        """The figures of one sentence, in order."""
        return self.by_sentence.get(sentence, [])

    def near_in_sentence(self, figure: Figure, far: int = 60) -> list[Figure]:
        """Figures of the same sentence, at most ``far`` to either side, itself among them."""
        around = self.figures[max(0, figure.index - far) : figure.index + far + 1]
        return [other for other in around if other.sentence == figure.sentence]

    def sentence_text(self, sentence: int) -> str:
        """The casefolded text of one sentence, in one line; empty where there is none of that
        number."""
        text = self._texts.get(sentence)
        if text is None:
            span = self.spans.get(sentence)
            text = ""
            if span is not None:
                begin, end = self.tokens[span[0]].start, self.tokens[span[1]].end
                text = self.text[begin:end].replace("\n", " ").casefold()
            self._texts[sentence] = text
        return text

    def says(self, sentence: int, words: re.Pattern[str]) -> bool:
        """Whether a sentence holds any of the words; looked up once for each sentence."""
        said = self._said.get((sentence, words))
        if said is None:
            said = words.search(self.sentence_text(sentence)) is not None
            self._said[sentence, words] = said
        return said

    def says_anywhere(self, words: re.Pattern[str]) -> bool:
        """Whether the text holds any of the words; looked up once."""
        said = self._said.get((_ANYWHERE, words))
        if said is None:
            said = words.search(self.words(0, len(self.text))) is not None
            self._said[_ANYWHERE, words] = said
        return said

    def sentence_start(self, sentence: int) -> int:
        """Where a sentence begins in the text."""
        return self.tokens[self.spans[sentence][0]].start

    def tokens_before(self, figure: Figure, most: int) -> list[Token]:
        """Up to that many tokens before a figure, within its sentence."""
        found: list[Token] = []
        for at in range(figure.token - 1, max(-1, figure.token - 1 - most), -1):
            if self._ends(at, figure):
                break
            found.append(self.tokens[at])
        found.reverse()
        return found

    def tokens_after(self, figure: Figure, most: int) -> list[Token]:
        """Up to that many tokens after a figure, within its sentence."""
        found: list[Token] = []
        for at in range(figure.token + 1, min(len(self.tokens), figure.token + 1 + most)):
            if self._ends(at, figure):
                break
            found.append(self.tokens[at])
        return found

    def _ends(self, at: int, figure: Figure) -> bool:
        return self.sentence_of[at] != figure.sentence or self.tokens[at].kind == "para"
