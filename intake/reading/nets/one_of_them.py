"""Nets: words that seem to ask for one of the sizes only, where several were read as asked for."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from decimal import Decimal

from ...late_pattern import late_pattern
from ..sizes.groups import Group
from ..text.figures import Layout
from .words import (
    MANDREL,
    OF_WHICH,
    ONLY,
    OTHER_LATER,
    WANTED,
)

ONLY_ONE = "the message seems to ask for one of its sizes only"
_ONLY_FAR = 60
_NEW_LINE = re.compile(r"\n(?=\W{0,3}[A-ZÀ-Þ])")
_CLAUSE_END = late_pattern(
    r"[.;:?!\n]|,(?! (?:those|these|they|that|it|which|die|diese|das|ceux|celles|c'est|es[ao]s?"
    r"|quell[aei]|dat)\b)"
)
"""'A mandrel for the lead-in bends only, those are 1-7/8 CLR' is one clause."""

_AND = late_pattern(
    r"\W{0,2}(?:mm|in(?:ch)?|er)?\s?(?:,|(?:,\s)?(?:and|&|und|et|y|e|en))\s"
    r"(?:(?:the|das|die|den|le|la|les|el|los|il|i|de|het)\s)?"
)
"""'Only for the 38 and the 48': both are meant."""


def not_that(layout: Layout, groups: Sequence[Group]) -> Iterator[tuple[Group, str]]:
    """'I only need a mandrel for the 1-1/2': the other sizes are hardly asked for."""
    named: dict[Decimal, set[int]] = {}
    radii: dict[Decimal, set[int]] = {}
    for number, group in enumerate(groups):
        for held in (*group.slots.get("od", ()), *group.slots.get("wall", ())):
            named.setdefault(held.number.value, set()).add(number)
        for held in group.slots.get("clr", ()):
            radii.setdefault(held.number.value, set()).add(number)
    meant: set[int] = set()
    last = -1
    for figure in layout.figures:
        if figure.sentence not in layout.spans or not layout.says(figure.sentence, WANTED):
            continue
        begin = max(layout.sentence_start(figure.sentence), figure.start - _ONLY_FAR)
        before = layout.before(figure)
        begin = max(begin, before.end if before is not None else 0)
        said = _CLAUSE_END.split(layout.words(begin, figure.start))[-1]
        goes_on = before is not None and before.index == last and _AND.fullmatch(said)
        if ONLY.search(said) or goes_on:
            last = figure.index
            meant |= named.get(figure.number.value, set())
            if MANDREL.search(said):  # "a mandrel for the lead-in bends only, those are 1-7/8 CLR"
                meant |= radii.get(figure.number.value, set())
    if meant:
        yield from ((g, ONLY_ONE) for number, g in enumerate(groups) if number not in meant)


def of_which(layout: Layout, groups: Sequence[Group]) -> Iterator[tuple[Group, str]]:
    """'One with R 95 and one with R 127. The mandrel is needed for the second', 'start with the
    front, I will be back for the other': which is meant was not heard where all are left."""
    if len(groups) > 1 and not layout.left_out:
        # "... 1 mandrel / For the second frame 42.4 x 2.6": a line of its own says so of no other.
        text = " ".join(_NEW_LINE.sub(" . ", layout.text).casefold().split())
        one = len({found[0] for found in OF_WHICH.finditer(text)}) == 1
        picked = sum(not group.doubtful for group in groups) == 1
        if one or (not picked and OTHER_LATER.search(text)):
            yield from ((group, ONLY_ONE) for group in groups)
