"""A radius in brackets within its tube: '2" (6" CLR) x .083" wall', '50 (R 100) x 2'."""

from __future__ import annotations

import re
from itertools import pairwise

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.roles import RADIUS_ROLES

_UNIT = r"\s?(?:mm|in(?:ch(?:es)?)?|[\"”″])?"
_RADIUS = r"(?P<radius>clr|c\.l\.r\.?|cl|rad(?:ius)?|cent(?:re|er)[ -]?line(?: rad(?:ius)?)?|r)"
_OPENS = late_pattern(
    _UNIT + r"\s?(?P<od>o\.?d\.?|tube|pipe)?\s?\((?:(?:on|at|with|bend)\s)?(?:(?:an?|the)\s)?"
    rf"(?:{_RADIUS}\b)?(?:\s?(?:[:=]|of|is))?\s?"
)
_CLOSES = late_pattern(_UNIT + rf"\s?(?:(?:bend )?{_RADIUS}\.?)?\s?\)\s?[x×*]\s?")
_THINNER = 4


def hear_bracketed_radii(layout: Layout) -> None:
    """Give the tube's two figures their roles, where a radius stands between them."""
    for (od, radius), wall in zip(pairwise(layout.figures), layout.figures[2:], strict=False):
        opens = _opens_within(layout, od, radius, wall)
        if opens is None:
            continue
        if not opens["od"]:
            od.give("od", "chain")
        wall.give("wall", "chain")
        radius.link = wall.link = "apart"


def _opens_within(layout: Layout, od: Figure, radius: Figure, wall: Figure) -> re.Match[str] | None:
    """The words that open the bracket, if it holds the radius of the tube around it."""
    if od.role not in (None, "label", "od") or wall.role is not None or od.is_gauge:
        return None
    thin = wall.is_gauge or wall.number.value * _THINNER < od.number.value
    like = od.unit == wall.unit or None in (od.unit, wall.unit)
    if not (thin and like) or radius.number.value <= od.number.value:
        return None
    opens = _OPENS.fullmatch(layout.words(od.end, radius.start))
    closes = _CLOSES.fullmatch(layout.words(radius.end, wall.start))
    if opens is None or closes is None:
        return None
    signed = any(cue.role in RADIUS_ROLES for cue in layout.tokens[radius.token].cues)
    return opens if signed or opens["radius"] or closes["radius"] else None
