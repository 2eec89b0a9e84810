"""Lines that set an OD on its radius, below a wall said once: '2 on 3', '1-1/2 @ 4.5', '38 auf 76'.

One such line may be anything; of two or more the first figure is the OD, the second the radius.
The same goes for two such pairs in one sentence: '2" on 6" centreline and 1-3/4 on 5-1/4'.
"""

from __future__ import annotations

from decimal import Decimal
from itertools import pairwise

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.roles import RADIUS_ROLES
from .place_tests import is_thin

_ON = late_pattern(
    r"^[\s\"']{0,3}(?:mm|in|inch(?:es)?)?\W{0,2}(?:od|dia|tube|tubing|rohr)?\s?"
    r"(?:on|onto|at|@|auf|um|over|around|round|with|w/|sur|su|sobre|op|om|mit|en)\s?"
    r"(?:an?\s|einen?\s|einem\s|un\s|une\s|een\s)?(?:r\s?|radius\s|clr\s)?$"
)
_RADIUS_BEHIND = late_pattern(
    r"^[\s\"']{0,3}(?:mm|in|inch(?:es)?)?\W{0,3}(?:clr|c\.l\.r|cl\b|cent(?:re|er)|rad|r\b|bend|die)"
)
_IN_A_LIST = late_pattern(r"\ben\s?$")
_LINE_BEGINS = late_pattern(r"^\W*(?:\w{1,2}[).:]\s*)?[øØ]?\W*$")
_TUBE_BEHIND = late_pattern(
    r"^[\s\"']{0,3}(?:mm|in|inch(?:es)?)?\W{0,2}(?:o\.?d\b|tub\w*|pipes?\b|rohr\w*|buis|wall\b|x\b|by\b)"
)
_MOST_COUNTED = 10
_LEAST, _MOST = Decimal("0.9"), Decimal(8)
"""How many ODs a radius is."""
_ALIKE = Decimal("0.25")
"""A figure listed before an OD that is less of it is a wall."""


def hear_on_lines(layout: Layout) -> None:
    """Give the two figures of each such line their roles, where there are two such lines."""
    lines: dict[int, list[Figure]] = {}
    for figure in layout.figures:
        if figure.role != "noise":
            lines.setdefault(figure.line, []).append(figure)
    pairs = [pair for pair in lines.values() if _is_on(layout, pair)]
    if len(pairs) < 2 or len({pair[0].paragraph for pair in pairs}) > 1:
        pairs = _in_one_sentence(layout)
    for od, radius in pairs:
        tubes = _listed(layout, od)
        for tube in tubes:
            if tube.role is None:
                tube.give("od", "list")
        if radius.role is None and not _RADIUS_BEHIND.match(_behind(layout, radius)):
            radius.give("radius", "list")
        tubes[0].link = "apart"


def _listed(layout: Layout, od: Figure) -> list[Figure]:
    """The OD right before the radius, and those of a list that ends with it: '38 and 42 on 100'."""
    found = [od]
    while found[0].link == "list":
        before = layout.before(found[0])
        if before is None or before.role not in (None, "od") or before.is_gauge:
            break
        if before.unit not in (None, od.unit) or before.sentence != od.sentence:
            break
        ahead = layout.before(before)
        if ahead is not None and _sets_on(layout, ahead, before):
            break  # the radius of the pair before
        if before.number.value < od.number.value * _ALIKE:
            break
        if len(found) == 1 and not _is_no_count([before]):
            break  # "I need 2, 38 on R 100"
        found.insert(0, before)
    return found


def _in_one_sentence(layout: Layout) -> list[list[Figure]]:
    """The pairs of sentences that hold two or more, each but the first behind a comma or 'and'."""
    found: dict[int, list[list[Figure]]] = {}
    for od, radius in pairwise(layout.figures):
        pairs = found.setdefault(od.sentence, [])
        if radius.sentence != od.sentence or not _sets_on(layout, od, radius):
            continue
        if _TUBE_BEHIND.match(_behind(layout, radius)):
            continue  # "one on 1.5 tube": a count
        if pairs and _listed(layout, od)[0].index != pairs[-1][1].index + 1:
            continue
        if _IN_A_LIST.search(layout.words(od.end, radius.start)):
            continue  # "60, 75 en 90 radius" is a Dutch list
        pairs.append([od, radius])
    several = [pairs for pairs in found.values() if len(pairs) > 1]
    sized = [pairs for pairs in several if any(map(_is_no_count, pairs))]
    if not sized and len(several) == 1 and not _others(layout, several[0]):
        sized = several  # "2 on 6 and 3 on 9, wall .120": counts would be of nothing
    return [pair for pairs in sized for pair in pairs]


def _others(layout: Layout, pairs: list[list[Figure]]) -> bool:
    """Whether some other figure can be the OD that the pairs count."""
    paired = {figure.index for pair in pairs for figure in pair}
    return any(
        figure.is_measure and not figure.is_gauge and not is_thin(figure)
        for figure in layout.figures
        if figure.index not in paired
    )


def _is_no_count(pair: list[Figure]) -> bool:
    """Whether the first figure of a pair can only be a length: '1-3/4', '2"', '38'."""
    od = pair[0]
    value = od.number.value
    whole = value == value.to_integral_value()
    return od.role == "od" or bool(od.unit) or not whole or value > _MOST_COUNTED


def _is_on(layout: Layout, figures: list[Figure]) -> bool:
    if len(figures) != 2:
        return False
    begin = layout.text.rfind("\n", 0, figures[0].start) + 1
    if not _LINE_BEGINS.match(layout.text[begin : figures[0].start]):
        return False
    return _sets_on(layout, *figures)


def _sets_on(layout: Layout, od: Figure, radius: Figure) -> bool:
    """Whether 'on' or its like stands between an OD and what can be its radius."""
    if od.role not in (None, "od") or radius.role not in (None, *RADIUS_ROLES):
        return False
    if od.is_gauge or radius.is_gauge or "D" in (od.unit, radius.unit):
        return False
    if not _ON.match(layout.words(od.end, radius.start)):
        return False
    alike = od.unit is None or radius.unit is None or od.unit == radius.unit
    return not alike or _LEAST <= radius.number.value / od.number.value <= _MOST


def _behind(layout: Layout, figure: Figure) -> str:
    end = layout.text.find("\n", figure.end)
    return layout.words(figure.end, end if end >= 0 else len(layout.text))
