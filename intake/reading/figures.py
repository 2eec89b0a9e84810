"""Numbers that may be part of a size, with their place among the words around them."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from decimal import Decimal
from typing import Literal

from .lexer import Token
from .numbers import Number

Link = Literal["", "times", "slash", "list", "or", "range", "restate", "apart"]

_AND = frozenset("and & und et y e en och og i plus ,".split())
_OR = frozenset("or oder ou o u of eller lub ó".split())
_MAYBE = frozenset("might could may maybe perhaps".split())
_TO = frozenset("to until bis à hasta jusqu'à fino thru through tot till til".split())
_RESTATE = frozenset("= ie i.e so that's thats meaning equals == aka".split())
_PASS = frozenset(
    "be with \" ' mm . ) a the both each all about approx od wall clr radius either from".split()
)
_ABBREVIATIONS = frozenset(
    "approx ca max min no nr incl ext int ep sp dia mat matl qty zb bzw ggf inkl st ss s i e g ref "
    "dr mr mrs ms inc ltd co fig vs etc thk diam diam tel sch rad pos art abb din od id".split()
)


@dataclass(slots=True)
class Figure:
    """A number that may measure something. ``role`` is None until something says what it is."""

    token: int
    """Index in the token list."""
    start: int
    end: int
    number: Number
    unit: str | None
    weak_unit: bool = False
    role: str | None = None
    how: str = ""
    """What gave it the role: 'cue', 'chain', 'table', 'place'."""
    sentence: int = 0
    line: int = 0
    clause: int = 0
    """Lines and semicolons so far: where one item of a list may end."""
    paragraph: int = 0
    row: tuple[str, int, int] | None = None
    """('row' | 'column', table, index) for a figure in a table."""
    link: Link = ""
    """How it hangs on the figure before it."""
    notes: list[str] = field(default_factory=list)
    """Why its value is in doubt: 'limit', 'hedged', 'range' ... in a customer's words."""
    negated: bool = False
    context_only: bool = False
    """In a sentence about tooling already owned: names the die, asks for nothing."""
    corrects: bool = False
    shape: str | None = None
    chain: int = -1

    @property
    def is_measure(self) -> bool:
        """Whether it can still become a length."""
        return self.role != "noise" and not self.negated


@dataclass(slots=True)
class Layout:
    """Tokens with their figures and the sentence, line and paragraph each token lies in."""

    tokens: list[Token]
    figures: list[Figure]
    sentence_of: list[int]
    line_of: list[int]
    paragraph_of: list[int]
    text: str = ""
    spans: dict[int, tuple[int, int]] = field(default_factory=dict)
    """First and last token index of each sentence."""
    by_sentence: dict[int, list[Figure]] = field(default_factory=dict)
    starts: list[int] = field(default_factory=list)
    """Where each figure starts, for looking up neighbours."""

    def between(self, left: Figure, right: Figure) -> list[Token]:
        """Tokens strictly between two figures."""
        return self.tokens[left.token + 1 : right.token]

    def sentence_text(self, sentence: int) -> str:
        """The casefolded text of one sentence; empty where there is none of that number."""
        span = self.spans.get(sentence)
        if span is None:
            return ""
        return self.text[self.tokens[span[0]].start : self.tokens[span[1]].end].casefold()

    def sentence_start(self, sentence: int) -> int:
        """Where a sentence begins in the text."""
        return self.tokens[self.spans[sentence][0]].start

    def in_sentence(self, sentence: int) -> list[Figure]:
        """The figures of one sentence, in order."""
        return self.by_sentence.get(sentence, [])


def lay_out(tokens: list[Token], text: str) -> Layout:
    """Number sentences, lines and paragraphs, collect the figures and link neighbours."""
    sentences: list[int] = []
    lines: list[int] = []
    paragraphs: list[int] = []
    clauses: list[int] = []
    sentence = line = paragraph = clause = 0
    for index, token in enumerate(tokens):
        sentences.append(sentence)
        lines.append(line)
        paragraphs.append(paragraph)
        clauses.append(clause)
        clause += token.kind in ("line", "para") or token.text == ";"
        if token.kind == "para":
            sentence, line, paragraph = sentence + 1, line + 1, paragraph + 1
        elif token.kind == "line":
            line += 1
        elif token.text in ("!", "?") or (token.text == "." and _ends_sentence(tokens, index)):
            sentence += 1
    figures = [
        Figure(
            index, token.start, token.end, token.number, token.unit, token.weak_unit,
            sentence=sentences[index], line=lines[index], paragraph=paragraphs[index], clause=clauses[index],
            notes=list(token.notes),
        )
        for index, token in enumerate(tokens)
        if token.number is not None and token.block != "count"
        and (token.number.value or token.unit == "sch")
    ]  # fmt: skip
    layout = Layout(tokens, figures, sentences, lines, paragraphs, text)
    layout.starts.extend(figure.start for figure in figures)
    for index, where in enumerate(sentences):
        layout.spans[where] = (layout.spans.get(where, (index, index))[0], index)
    for figure in figures:
        layout.by_sentence.setdefault(figure.sentence, []).append(figure)
    for figure in figures:
        if (figure.unit or "").startswith("noise:"):
            figure.role, figure.how = "noise", "unit"
    for left, right in zip(figures, figures[1:], strict=False):
        right.link = _link(layout, left, right)
        units = {left.unit, right.unit}
        if right.link == "slash" and (units == {"in", "mm"} or _unmarked_inch(left, right)):
            right.link = "restate"  # '50.8mm/2" OD, 1.65mm/.065 wall'
        if right.link in ("list", "or", "range"):
            if not any(token.kind == "cue" for token in layout.between(left, right)):
                _share_gauge(left, right)
    _dashes(layout)
    return layout


def _unmarked_inch(left: Figure, right: Figure) -> bool:
    """'1.65mm/.065 wall': what stands after mm can only be the same in inches."""
    if left.unit != "mm" or right.unit is not None:
        return False
    return abs(left.number.value - right.number.value * Decimal("25.4")) <= left.number.value / 50


def _share_gauge(left: Figure, right: Figure) -> None:
    """'16 or 14 gauge', 'might be 16 gauge, might be 18': one word for both."""
    for plain, named in ((left, right), (right, left)):
        whole = plain.unit is None and plain.number.style == "integer" and plain.role is None
        if whole and named.unit in ("ga", "swg", "bwg") and plain.number.value <= 36:
            plain.unit = named.unit


def _dashes(layout: Layout) -> None:
    """'1.500-.065-4.500': dashes between an OD, a wall and a radius stand for times signs."""
    figures = layout.figures
    for position, (left, right) in enumerate(zip(figures, figures[1:], strict=False)):
        if right.role == "noise" or left.role == "noise" or not left.number.value:
            continue
        if left.unit in ("ga", "swg", "bwg") or right.unit == "D":
            continue
        if not _only_dash(layout, left, right) or right.number.style not in ("decimal", "fraction"):
            continue
        if right.number.value / left.number.value > Decimal("0.3"):
            continue
        right.link = "times"
        third = figures[position + 2] if position + 2 < len(figures) else None
        if third is not None and _only_dash(layout, right, third):
            third.link = "times"


def _only_dash(layout: Layout, left: Figure, right: Figure) -> bool:
    return layout.text[left.end : right.start].strip() == "-"


def _ends_sentence(tokens: list[Token], index: int) -> bool:
    if index and tokens[index - 1].text.strip(".") in _ABBREVIATIONS:
        after = tokens[index + 1] if index + 1 < len(tokens) else None
        return after is None or after.kind in ("para", "line")
    return True


def _link(layout: Layout, left: Figure, right: Figure) -> Link:
    """What joins two neighbouring figures: a times sign, a comma, a bracket, or nothing."""
    if left.role == "noise" or right.role == "noise":
        return "apart"
    seen: list[str] = []
    for token in _without_one(layout.between(left, right)):
        if token.kind == "times":
            seen.append("x")
        elif token.kind in ("gap", "material", "cue"):
            continue
        elif token.kind == "line":
            if not (seen and seen[-1] in ("x", "and", "or", "to")):
                seen.append("line")
        elif token.kind in ("para", "block", "number"):
            return "apart"
        elif token.text == "/" or token.text == "\\":
            seen.append("/")
        elif token.text in _AND:
            seen.append("and")
        elif token.text in _OR or token.text in _MAYBE:
            seen.append("or")
        elif token.text in _TO or token.text == "-":
            seen.append("to")
        elif token.text == "(" or token.text in _RESTATE:
            seen.append("same")
        elif token.text == ")" and "same" in seen:
            seen.remove("same")  # a bracket closed before the figure: "radius (centerline) 6-3/4"
        elif token.text in _PASS or token.text in ("~", "+"):
            continue
        else:
            return "apart"
    return _joined(seen, layout, left, right)


def _between_before(layout: Layout, figure: Figure) -> bool:
    """'between 16 and 14 gauge' is a range."""
    before = layout.tokens[max(0, figure.token - 2) : figure.token]
    return any(
        token.text in ("between", "zwischen", "entre", "tra", "fra", "tussen") for token in before
    )


_WHICH = frozenset(
    "small big bigger smaller larger large first second other latter former thin thick petit gros "
    "grand pequeño grande chico piccolo kleine kleinen große großen kleinste grote erste ersten "
    "zweite zweiten primero segundo primo secondo".split()
)
_FOR_THE = frozenset("on for pour para für per voor bei sur".split())
_THE = frozenset("the le la el il den das die de het lo".split())


def _without_one(tokens: list[Token]) -> list[Token]:
    """'1-1/8 on the small one and 1-1/2 on the big one' is a list like '1-1/8 and 1-1/2'."""
    for at in range(len(tokens) - 2):
        words = [token.text for token in tokens[at : at + 4]]
        if words[0] in _FOR_THE and words[1] in _THE and words[2] in _WHICH:
            end = at + 4 if words[3:] in (["one"], ["tube"], ["rohr"], ["tubo"]) else at + 3
            rest = tokens[:at] + tokens[end:]
            return [token for token in rest if token.text != "de"]
    return tokens


def _joined(seen: list[str], layout: Layout, left: Figure, right: Figure) -> Link:
    marks = [mark for mark in seen if mark != "line"]
    tight = not any(t.kind in ("cue", "material") for t in layout.between(left, right))
    if "same" in marks:
        return "restate"
    if marks == ["x"]:
        return "times"
    if marks == ["/"]:
        return "slash"
    if marks in (["to"], ["and", "to"]) and "line" not in seen:
        return "range" if right.number.value > left.number.value or not tight else "apart"
    if "or" in marks and set(marks) <= {"or", "and"}:
        return "or"
    if marks and set(marks) == {"and"} and "line" not in seen:
        between = layout.between(left, right)
        texts = [t.text for t in between]
        if any(t.kind == "material" for t in between) or ")" in texts and "(" not in texts:
            return "apart"
        return (
            "range"
            if _between_before(layout, left) and "," not in layout.text[left.end : right.start]
            else "list"
        )
    return "apart"


_SQUARE = re.compile(
    r"\b(?:square|sq|shs|quadratisch\w*|vierkant\w*|carr[ée]e?|cuadrad[oa]|quadr[oa])\b", re.I
)
_RECTANGLE = re.compile(
    r"\b(?:rectangular|rectangle|rect|rhs|box section|rechteck\w*|rectangulaire|rectangular|rettangolare|rechthoekig\w*)\b",
    re.I,
)
_OTHER_SHAPE = re.compile(
    r"\b(?:oval|flat[- ]oval|elliptical|ellipse|d[- ]section|hexagonal|hex tube|octagonal|flachoval\w*|ovaal|ovale)\b",
    re.I,
)


def shape_named(text: str) -> str | None:
    """The cross-section that a stretch of text names, or None."""
    if re.search(
        r"\bnot (?:a )?(?:square|rectangular|oval|box)|square (?:to|with|edge|cut|foot|feet|ends?)",
        text,
        re.I,
    ):
        return None
    if _RECTANGLE.search(text):
        return "rectangular"
    if _SQUARE.search(text):
        return "square"
    if _OTHER_SHAPE.search(text):
        return "other"
    return None
