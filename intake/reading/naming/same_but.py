"""A size told by the one before it: 'the same thing in 2-1/2"', 'one for 1-3/4, same wall and
radius', 'the same but 1.5 mm' is an OD or a wall, as its length says.
"""

from __future__ import annotations

from decimal import Decimal

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of
from .place_tests import is_diameter, is_thin

_SAME = any_of(
    r"(?:the )?(?:exact )?same | (?:das|den|dem|die) ?gleichen? | dasselbe | denselben",
    r"(?:la|le) même | pareil | l[oa] mism[oa] | el mismo | l[ao] stess[oa] | hetzelfde | dezelfde",
)
_ALL_OF_IT = any_of(
    r"again | thing | one | mandrel | tool | setup | set[- ]up | deal | bend | (?:noch ?mal)",
    r"dorn | chose | mandrin | cosa | mandril | mandrino | doorn",
)
_WALL = r"(?:wall(?: thickness)?|wand\w*|épaisseur|paroi|espesor|pared|spessore|parete)"
_RADIUS = (
    r"(?:(?:bend |centre ?line |centerline )?radius|clr|die|biegeradius|rayon|radio|raggio|straal)"
)
_AND = (
    r"(?:,| and| &| und| et| y| e| en)"
    r"(?: (?:the )?(?:same|gleicher?|même|mism[oa]|stess[oa]|zelfde))?"
)
_BOTH = rf"(?:{_WALL}{_AND} {_RADIUS}|{_RADIUS}{_AND} {_WALL})"
_BUT = late_pattern(
    rf"\b{_SAME}(?: {_ALL_OF_IT}| {_BOTH})?,?\s"
    + any_of(
        "but | in | for | only | just | except | with | aber | nur | für | mit | mais | en | pour",
        "avec | pero | para | con | ma | per | maar | voor | met",
    )
    + r"(?:\s(?:only|in|for|with|an?|the|nur|mit|für|en|pour|avec|de|un|una|con|per|da|met|voor"
    r"|een)"
    r"){0,2}\s$"
)
_FOR = late_pattern(
    r"\b"
    + any_of(
        r"(?:one|mandrel|need|price|quote|looking) (?:for |on )?(?:an? |the )?",
        r"(?:einen|dorn|brauche\w*|benötige\w*) (?:für )?(?:ein )?",
        r"(?:un|mandrin|faut|besoin) (?:pour |en )?(?:du |un )?",
        r"(?:uno|mandril|necesit\w+) (?:para |de )?(?:tubo )?(?:de )?",
        r"(?:uno|mandrino|serve) (?:per |da )?(?:tubo )?(?:da )?",
        r"(?:een|doorn|nodig) (?:voor )?(?:buis )?",
    )
    + "$"
)
_BOTH_BEHIND = late_pattern(
    r"[\"'″”]?\s?(?:mm|in\.?|inch(?:es)?)?\s?(?:od|o\.d\.|tube|tubing|rohr|tubo|buis)?\s?[,(]\s?"
    rf"(?:with |mit |avec |con |met )?(?:the )?{_SAME.replace('(?:the )?', '')} {_BOTH}\b"
    rf"|[\"'″”]?\s?(?:mm|in\.?|inch(?:es)?)?\s?(?:od|tube|tubing)?\s?[,(]\s?"
    rf"(?:gleicher?|même|mism[oa]|stess[oa]|zelfde) {_BOTH}\b"
)
_ENDS = late_pattern(
    r"[\"'″”]?\s?(?:mm|in\.?|inch(?:es)?|zoll|pouces?)?\s?(?:od|o\.d\.|tube|tubing|pipe|rohr|tubo|buis)?"
    r"(?:\s?(?:instead|please|pls|thanks|too|as well|bitte|anbieten|auch|aussi|svp|por favor|graag"
    r"|per favore))?\s?(?:[.,;:!?()\n]|$)"
)
"""What is other is said with that: '... with 3 balls' and '... in 6 weeks' name something else."""
_BACK = 64
_LOOK_BACK = 24
"""Characters, and figures, before one in which words and a tube are looked for."""
_NEAREST, _FARTHEST = Decimal("0.25"), Decimal("4")
"""How many times the OD before it an OD is that takes over its wall and radius."""
_OF_WALL = (Decimal("0.25"), Decimal("4"))
_THIRD = Decimal("0.3")


def hear_same_but(layout: Layout) -> None:
    """Give a figure that nothing names the role of what alone is other than before."""
    for figure in layout.figures[2:]:
        if figure.role is not None or figure.negated or figure.link == "times" or figure.points:
            continue
        if figure.unit not in (None, "mm", "in") or layout.tokens[figure.token].cues:
            continue
        after = layout.after(figure)
        if after is not None and after.link in ("times", "slash"):
            continue
        begin = max(layout.sentence_start(figure.sentence), figure.start - _BACK)
        ahead = layout.words(begin, figure.start)
        behind = layout.words(figure.end, figure.end + _BACK)
        but = _BUT.search(ahead) is not None and _ENDS.match(behind) is not None
        if not but and not (_FOR.search(ahead) and _BOTH_BEHIND.match(behind)):
            continue
        tube = _tube_before(layout, figure)
        if tube is not None:
            _take(figure, *tube, but=but)


def _take(figure: Figure, od: Figure, wall: Figure, *, but: bool) -> None:
    """Name a figure an OD, or behind 'the same but' a wall, by its length beside those before."""
    value = figure.number.value
    if value in (od.number.value, wall.number.value):
        return
    share = value / od.number.value
    if is_diameter(figure) and not is_thin(figure) and _NEAREST < share < _FARTHEST:
        figure.give("od", "cue")
        figure.link = "apart"
    elif (
        but
        and not wall.is_gauge
        and share < _THIRD
        and _OF_WALL[0] < value / wall.number.value < _OF_WALL[1]
    ):
        figure.give("wall", "cue")


def _tube_before(layout: Layout, figure: Figure) -> tuple[Figure, Figure] | None:
    """The last tube of an earlier sentence, with its wall, in the figure's unit."""
    for at in range(figure.index - 1, max(0, figure.index - 1 - _LOOK_BACK), -1):
        od, wall = layout.figures[at - 1], layout.figures[at]
        if wall.sentence == figure.sentence or not od.number.value or not wall.number.value:
            continue
        if wall.unit == "sch" or wall.sentence != od.sentence or not is_diameter(od):
            continue
        thin = wall.number.value < od.number.value * _THIRD and (
            wall.link == "times" or is_thin(wall) or wall.role == "wall"
        )
        if wall.is_gauge or thin:
            units = {od.unit, None if wall.is_gauge else wall.unit}
            alike = figure.unit is None or units & {figure.unit, None}
            return (od, wall) if alike else None
    return None
