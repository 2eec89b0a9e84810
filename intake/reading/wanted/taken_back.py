"""Words that take some size back, own it or put it off, where no figure was found to be meant.

The sizes of the same sentence are doubted, or all where the sentence names none.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from decimal import Decimal

from ..counts.by_ordinal import counts_by_ordinal
from ..counts.by_place import counts_every_line
from ..sizes.groups import Group, own_figures
from ..text.figures import Layout
from ..text.roles import LENGTH_ROLES
from .kin_named import only_named
from .of_no_size import names_again, without_nothing
from .taken_back_words import (
    BUT,
    BY_PLACE,
    CALLED_BY_SIZE,
    FOR_THOSE,
    IS_OFF,
    JUST_ONE,
    NUMBERED,
    OF_DIE,
    OF_NO_SIZE,
    OF_OTHER_THINGS,
    OLD_AND_NEW,
    PRICED_BEFORE,
    SINCE,
    SOMEBODY_SAYS,
    TAKES_BACK,
    THE_ONE_WITH,
)
from .told import words_around
from .told_words import ABOUT_DIE, HAS_MANDREL

TAKEN_BACK = "some size seems to be taken back or owned already"

_SHORT = 40
_BACK = 16
_AHEAD = 32
_MEANT = frozenset({"od", "clr"})
_BELOW, _ABOVE = Decimal("0.4"), Decimal("2.5")
"""So far from the figures of the sizes lies another of their kind."""
_NEXT_WORDS = 24
_CLAUSE = 100
"""Characters of a clause that are looked at."""


def picks_out(text: str) -> bool:
    """Whether the words pick out some lines of a list: 'we only need the rows marked Y'."""
    found = any(
        not PRICED_BEFORE.search(text, max(0, match.start() - _BACK), match.start())
        for match in BY_PLACE.finditer(text)
    )
    return found and not counts_every_line(text)


def _is_of_no_size_read(
    layout: Layout, words: re.Match[str], held: set[Decimal], least: Decimal, most: Decimal
) -> bool:
    """'Den mit 180 haben wir schon, den bitte nicht anbieten': a size that was named before by
    nobody, so that no size that was read is meant."""
    text = layout.text.replace(" in. ", " in, ")  # "straight above 4 in. so nothing for those"
    begin = max(text.rfind(sign, 0, words.start()) for sign in ("!", "?", "\n", ". ")) + 1
    pointing = None
    for figure in layout.figures:
        if begin <= figure.start < words.start():
            value = figure.number.value
            if value in held or figure.unit in ("D", "ga"):
                return False
            if figure.role in (None, "noise", *LENGTH_ROLES) and least <= value <= most:
                pointing = figure
    if pointing is None:
        return _goes_on_of_another(layout, begin, words.end(), held, least, most)
    between = layout.words(pointing.end, words.end() + _NEXT_WORDS).casefold()
    if FOR_THOSE.search(between):
        return True
    ahead = layout.words(max(begin, pointing.start - _AHEAD), pointing.start).casefold()
    return THE_ONE_WITH.search(ahead) is not None


def _goes_on_of_another(
    layout: Layout, begin: int, end: int, held: set[Decimal], least: Decimal, most: Decimal
) -> bool:
    """'The 4 inch is off. Customer cancelled.': a short sentence that goes on from one that takes
    back a size which was named by nobody else."""
    ahead = layout.text[max(0, begin - _CLAUSE) : begin].rstrip()
    before = max(ahead.rfind(sign, 0, len(ahead) - 1) for sign in ("!", "?", "\n", ". ")) + 1
    start = max(0, begin - _CLAUSE) + before
    if end - begin > _SHORT or IS_OFF.search(ahead, before) is None:
        return False
    named = [f.number.value for f in layout.figures if start <= f.start < end]
    return bool(named) and not held & {*named} and any(least <= v <= most for v in named)


def _is_of_other_behind(layout: Layout, words: re.Match[str], held: set[Decimal]) -> bool:
    """'You made us a 1.25 mandrel two years ago': the tool is called by a size that is no other's
    and that was not read."""
    text = layout.text
    for figure in layout.figures:
        if words.end() <= figure.start <= words.end() + _AHEAD:
            between = text[words.end() : figure.start]
            if SINCE.search(between) or figure.number.value in held:
                return False
            return CALLED_BY_SIZE.match(text, figure.end) is not None
    return False


def taken_back(layout: Layout, groups: Sequence[Group], *, picked: bool) -> list[bool]:
    """Which of the sizes may be taken back; ``picked`` tells that some were put aside already."""
    layout = without_nothing(layout, len(groups))
    by_place = picks_out(layout.text) or _is_numbered_pick(layout.text)
    by_place = by_place and not counts_by_ordinal(layout.text, len(groups))
    if OLD_AND_NEW.search(layout.text) or (not picked and by_place):
        return [True] * len(groups)
    values = [fs[0].number.value for g in groups for slot, fs in g.slots.items() if slot in _MEANT]
    held = {fs[0].number.value for g in groups for fs in g.slots.values()}
    least, most = min(values, default=Decimal(0)) * _BELOW, max(values, default=Decimal(0)) * _ABOVE
    found = [
        words
        for words in TAKES_BACK.finditer(layout.text)
        if not OF_NO_SIZE.search(layout.text[max(0, words.start() - 12) : words.start()])
        and not OF_OTHER_THINGS.match(layout.text, words.end())
        and not _is_of_another_tool(layout.text, words)
        and not _is_overruled(layout.text, words)
        and not only_named(layout.text, words)
        and not _is_of_no_size_read(layout, words, held, least, most)
        and not _is_of_other_behind(layout, words, held)
    ]
    if not found:
        return [False] * len(groups)
    meant = [
        any(TAKES_BACK.search(said) for said in words_around(layout, own_figures(group)))
        for group in groups
    ]
    for words in found:
        begin, end = _clause(layout.text, words)
        named = names_again(layout, groups, begin, end)
        meant = [one or other for one, other in zip(meant, named, strict=True)]
    heard = picked or any(f.negated or f.context_only or f.put_off for f in layout.figures)
    return meant if heard or any(meant) else [True] * len(groups)


def _clause(text: str, words: re.Match[str]) -> tuple[int, int]:
    """Where the clause of some words begins and ends."""
    begin = max(0, words.start() - _CLAUSE)
    stops = list(SINCE.finditer(text, begin, words.start()))
    stop = SINCE.search(text, words.end())
    return stops[-1].end() if stops else begin, stop.start() if stop else len(text)


def _is_of_another_tool(text: str, words: re.Match[str]) -> bool:
    """'The wiper we already have', 'Il raschiatore lo abbiamo già': and no mandrel with it."""
    begin = max(0, words.start() - _CLAUSE)
    stops = list(SINCE.finditer(text, begin, words.start()))
    clause = text[stops[-1].end() if stops else begin : words.start()].casefold()
    _, end = _clause(text, words)
    rest = text[words.end() : end].casefold()
    behind = text[words.end() : words.end() + _NEXT_WORDS].casefold()
    if HAS_MANDREL.search(clause) or HAS_MANDREL.search(behind):
        return False
    if ABOUT_DIE.search(clause):
        return True
    return OF_DIE.match(rest) is not None and not HAS_MANDREL.search(rest)


def _is_overruled(text: str, words: re.Match[str]) -> bool:
    """Whether somebody else says it, and a 'but' follows."""
    begin = max(0, words.start() - _CLAUSE)
    if not SOMEBODY_SAYS.search(text, begin, words.start()):
        return False
    return BUT.match(text, words.end(), words.end() + _CLAUSE) is not None


def _is_numbered_pick(text: str) -> bool:
    """'Just 1': of a numbered list it may be the first; else it counts mandrels."""
    return JUST_ONE.search(text) is not None and NUMBERED.search(text) is not None
