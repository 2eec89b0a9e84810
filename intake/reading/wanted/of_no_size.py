"""Clauses that put off, own or take back what is none of the sizes read.

'Please disregard my email of yesterday', 'we have the machine already', 'the 2-1/4 comes next
year': blanked before anybody asks which size they may mean, so that the others stay undoubted.
Nothing is blanked that names a size read, or that points to one in words.
"""

from __future__ import annotations

import re
from bisect import bisect_left
from collections.abc import Iterator, Sequence
from dataclasses import replace
from decimal import Decimal

from ...late_pattern import late_pattern
from ..picking.place_names import NOUN
from ..sizes.groups import Group
from ..text.figures import Figure, Layout
from ..text.roles import LENGTH_ROLES
from ..text.small_letters import small_letters
from .all_of_these import spans_of_all_listed
from .asked_words import TROUBLE
from .of_no_size_words import (
    ASKS_TOO,
    AT_CLAUSE,
    BENT_EMPTY,
    HELD_BY_NAME,
    NO_TROUBLE,
    NOT_OFFERED,
    OF_NO_SIZE,
    POINTS_TO_SIZE,
    TELLS_OF_OTHER,
    WAITS,
    WORDS_WITH_MANDREL,
)
from .of_nothing_words import NOTHING, NOTHING_BY_ITSELF
from .of_other_lists import spans_of_other_lists
from .told_words import TELLS, TELLS_NOT

_STOP = re.compile(r"(?<=[.!?;])(?=\s+[^a-zäöüß\s]|\s*$)|\n(?=\s*[^a-zäöüéèàñ\s])|\n\s*\n")
"""Where a clause ends; a line that goes on with a small letter was broken by a mail program."""
_PART = late_pattern(
    r",\s|\s[-–]\s|\s(?=(?:but|aber|mais|pero|ma|maar|(?:i|we)(?:'ll| will"
    r"| may| might))\s)",
    re.IGNORECASE,
)
_TOOL = late_pattern(
    r"\b(?:\w*mandr[ie]l(?:es|s)?|\w*dorne?s?|mandrins?|mandrin[oi]|doorn(?:en)?"
    r"|radius|rayon|radio|raggio|wall|od|this one|one (?=each|of each|mandrel))\b"
)
"""'Your mail of yesterday, please ignore it, only the smaller one': the rest of a sentence may say
which size is meant, and does so in no more than the tool's name."""
_NAMES = late_pattern(
    r"(?:\b(?:the|an?|that|another|some|any|my|our|den|der|die|das|dem|einen?|einem|ein|eine|fürs"
    r"|la|le|un|une|du|au|el|una?|uno|il|lo|del|al|de|het|een|l)\s|^\s*|l['’])"
    r"(?:(?:tube|tubes|pipe|tubing|rohr|tubo|buis|one|ones|size|celui|quello|mandrin|mandril"
    r"|mandrino|dorn|doorn|stacks?|exhausts?|radius|rayon|radio|raggio)\s)?"
    r"(?:(?:in|with|for|of|on|at|above|mit|für|von|zu|de|da|van|en|avec|con|per|para|pour|voor)\s"
    r"(?:the\s|den\s|das\s|die\s|le\s|el\s|il\s|de\s)?)?(?:(?:r|ø|clr)\s?)?$"
)
"""What stands before the figure of a size that is only named: 'a 2-1/4', 'il 38', 'den mit 180'."""
_ABOVE_IT = late_pattern(
    r"\b(?:above|over|bigger than|larger than|über|größer als|ab|au-dessus de|plus de|más de"
    r"|por encima de|oltre|sopra|boven|vanaf)\s(?:the\s)?(?:ø\s?)?$"
)
"""'Stacks are straight above 4 in.': of none of the sizes where all are smaller."""
_BEHIND = late_pattern(
    r"(?:\s?(?:x|×|by|of|pcs|pieces|off|stück|stk|days?|weeks?|months?|years?|%|°|deg\w*|ga|gauge"
    r"|wall|d\b|kg|lbs?|dollars?|eur|usd|\$|€|mandrels?|dies?|machines?|men|and|or|und|oder|et|ou|y|e"
    r"|en|o|to|bis|wochen|jahre|semaines|semanas|settimane|weken)\b|\s?[x×%°$€/])"
)
_PLACE = late_pattern(rf"\b{NOUN}\s?$|#$")
_NEAR, _NEAR_CONVERTED = Decimal("0.03"), Decimal("0.08")
"""Lengths that lie so near each other may be one: '38' for 38.1, '1-1/2' for it."""
_INCH = Decimal("25.4")
_SCALES = (Decimal(1), _INCH, 1 / _INCH, *(Decimal(10) ** power for power in (-3, -1, 1, 3)))
_WALL_SCALES = (Decimal(1), _INCH, 1 / _INCH, Decimal("0.001"))
Held = tuple[Decimal, bool]
"""A figure of a size read, and whether it is a wall."""
_BELOW, _ABOVE = Decimal("0.4"), Decimal("2.5")
_AHEAD = 32
_LONGEST_SENTENCE = 1000
"""Characters; what is longer is no sentence, and its parts are not weighed one by one."""


def without_others(layout: Layout, groups: Sequence[Group]) -> Layout:
    """The layout with all such clauses blanked at equal length; itself where there is none."""
    taken = {figure.index for group in groups for fs in group.slots.values() for figure in fs}
    held = {
        (layout.figures[index].number.value, layout.figures[index].role == "wall")
        for index in taken
    }
    lengths = [
        fs[0].number.value for g in groups for slot, fs in g.slots.items() if slot in ("od", "clr")
    ]
    ods = [g.slots["od"][0].number.value for g in groups if "od" in g.slots]
    text = layout.text
    named = HELD_BY_NAME.search(text.lower()) is not None
    starts = [figure.start for figure in layout.figures]
    for begin, end, part in _clauses(layout.text):
        figures = layout.figures[bisect_left(starts, begin) : bisect_left(starts, end)]
        if any(figure.index in taken for figure in figures):
            continue
        words = layout.text[begin:end].lower().replace("’", "'")
        put_off = part and WAITS.search(words)  # "1.75 x .095 on 5.25 CLR, delivery can wait"
        if (not put_off and _of_thing(words, figures, held)) or (
            not named and _of_other_size(layout, (begin, words), figures, held, (lengths, ods))
        ):
            text = text[:begin] + " " * (end - begin) + text[end:]
    if text == layout.text:
        return layout
    return replace(layout, text=text, _folded=None, _texts={}, _said={})


def _clauses(text: str) -> Iterator[tuple[int, int, bool]]:
    """Sentences, and the parts of each, and whether it is a part."""
    begin = 0
    for stop in [*(match.end() for match in _STOP.finditer(text)), len(text)]:
        if stop > begin:
            yield begin, stop, False
            prose = stop - begin <= _LONGEST_SENTENCE
            cuts = [match.end() for match in _PART.finditer(text, begin, stop)] if prose else []
            for left, right in zip([begin, *cuts], [*cuts, stop], strict=True):
                rest = f"{text[begin:left]} {text[right:stop]}".lower()
                if cuts and not POINTS_TO_SIZE.search(_TOOL.sub(" ", rest)):
                    yield left, right, True
        begin = stop


def _of_thing(words: str, figures: Sequence[Figure], held: set[Held]) -> bool:
    """'Please disregard my email', 'shipping can wait', 'don't need them before March'."""
    if any(_may_be_held(figure, held) for figure in figures):
        return False
    if BENT_EMPTY.search(words):
        points = POINTS_TO_SIZE.search(BENT_EMPTY.sub(" ", words)) or NO_TROUBLE.search(words)
        return TROUBLE.search(words) is not None and not points
    rest = WORDS_WITH_MANDREL.sub("things", words)
    found = OF_NO_SIZE.search(rest) or NOTHING_BY_ITSELF.search(rest)
    return found is not None and not POINTS_TO_SIZE.search(rest)


def without_nothing(layout: Layout, sizes: int) -> Layout:
    """The layout with all turns of phrase blanked that only sound like taking something back, or
    that take back what is none of the so many sizes."""
    said = small_letters(layout.text).replace("’", "'").replace("\n", " ")
    found = [match.span() for match in NOTHING.finditer(said)]
    found += spans_of_other_lists(said, sizes)
    found += spans_of_all_listed(said, sizes)
    if not found:
        return layout
    text = layout.text
    for begin, end in found:
        text = text[:begin] + " " * (end - begin) + text[end:]
    return replace(layout, text=text, _folded=None, _texts={}, _said={})


def _of_other_size(
    layout: Layout,
    clause: tuple[int, str],
    figures: Sequence[Figure],
    held: set[Held],
    lengths: tuple[Sequence[Decimal], Sequence[Decimal]],
) -> bool:
    """'Il 38 lo compriamo già curvato', where no 38 is among the sizes."""
    begin, words = clause
    if any(_may_be_held(f, held) for f in figures):
        return False
    named = [figure for figure in figures if _names_size(layout, begin, figure, *lengths)]
    if len(named) != 1:
        return False
    told = any(pattern.search(words) for pattern in (TELLS, TELLS_NOT, TELLS_OF_OTHER))
    return told and not AT_CLAUSE.search(words) and not ASKS_TOO.search(NOT_OFFERED.sub(" ", words))


def _names_size(
    layout: Layout,
    begin: int,
    figure: Figure,
    lengths: Sequence[Decimal],
    ods: Sequence[Decimal],
) -> bool:
    if figure.role not in (None, "noise", *LENGTH_ROLES) or figure.unit in ("D", "ga"):
        return False
    value = figure.number.value
    least = min(lengths, default=Decimal(0)) * _BELOW
    if not (figure.number.style in ("fraction", "mixed") or figure.unit == "in" or value >= least):
        return False
    if value > max(lengths, default=Decimal(0)) * _ABOVE:
        return False
    ahead = layout.words(max(begin, figure.start - _AHEAD), figure.start)
    behind = layout.words(figure.end, figure.end + _AHEAD)
    if _BEHIND.match(behind):
        return False
    if _ABOVE_IT.search(ahead):
        return value > max(ods, default=value)
    return _NAMES.search(ahead) is not None


def names_again(layout: Layout, groups: Sequence[Group], begin: int, end: int) -> list[bool]:
    """Which size the figures between two places name that are none of its own: 'the 2 inch can
    wait'. None where they name more than one, or something else too."""
    taken = {figure.index for group in groups for fs in group.slots.values() for figure in fs}
    there = [
        figure
        for figure in layout.figures
        if begin <= figure.start < end
        and figure.role in (None, "noise", *LENGTH_ROLES)
        and figure.how != "count"
        and not _PLACE.search(layout.words(max(0, figure.start - _AHEAD), figure.start))
    ]
    places = any(f.unit is None and f.number.value in range(1, len(groups) + 1) for f in there)
    if not there or places or any(figure.index in taken for figure in there):
        return [False] * len(groups)
    having = [
        [
            any(
                _may_be_held(figure, {(fs[0].number.value, False)})
                for slot, fs in group.slots.items()
                if slot in ("od", "clr")
            )
            for group in groups
        ]
        for figure in there
    ]
    named = [all(each) for each in zip(*having, strict=True)]
    alone = sum(named) == 1 and all(sum(each) == 1 for each in having)
    return named if alone else [False] * len(groups)


def _may_be_held(figure: Figure, held: set[Held]) -> bool:
    """Whether a figure may be a length of a size read, in another unit or rounded."""
    value = figure.number.value
    return any(
        abs(value * scale - other) <= other * (_NEAR if scale == 1 else _NEAR_CONVERTED)
        for other, is_wall in held
        for scale in (_WALL_SCALES if is_wall else _SCALES)
    )
