"""Words before a figure that would name it, where a whole tube begins: 'legs are 1.25 x .065'."""

from __future__ import annotations

from ..text.cues import Cue
from ..text.figures import Figure, Layout
from ..text.patterns import word_set
from ..text.roles import RADIUS_ROLES
from .cue_sides import Found, begins_tube, cue_left, cue_right, names_other_thing
from .place_tests import is_diameter, is_thin

_PARTS = word_set(
    "leg legs straight straights schenkel axle axles shaft rod stange stang tige asta varilla",
    "barra hoop",
)
"""Parts that have a length, and may be made of tube."""
_THOSE = word_set(
    "the die den der les des pour los las para i gli le quelli quelle per de voor other andere"
)
_FOR = word_set("for für pour para per voor")
_BACK = 8
"""Tokens, blanks among them, from 'for' to the part."""
_INNER_OF_TWO = word_set("inner innen innere inneres intérieur interior interno binnen")
_ONE_TOOL = word_set("mandrel dorn mandrin mandrino mandril doorn")


def is_nominal(layout: Layout, figure: Figure, left: Found) -> bool:
    """'A mandrel 3 sch 10 pipe' counts nothing: the 3 is the pipe's size."""
    after = layout.after_in_sentence(figure)
    singular = layout.tokens[left.token].text in _ONE_TOOL
    return (
        singular and after is not None and after.unit == "sch" and after.token == figure.token + 1
    )


def heads_a_tube(layout: Layout, figure: Figure, left: Found) -> bool:
    """'Ein Rohr, zwei Radien: 42,4 x 2,0': what is multiplied by a wall is no radius; and the
    'inner: 1.000 x .035' of two tubes is no bore."""
    second = layout.after_in_sentence(figure)
    if left.cue.role == "bend_dia" and second is not None:
        part = layout.tokens[left.token].text in _PARTS and is_diameter(figure)
        thinner = part and _is_thinner(layout, figure, second)
        if second.is_gauge or thinner or _stands_beside(layout, figure, second):
            return True  # "the hoop is 1-3/4 in 11 gauge", "rear hoop: 1.25 in .035 wall"
    walled = second is not None and second.link == "times" and is_diameter(figure)
    if walled and left.cue == Cue("noise", "before") and _is_wall(layout, left, figure, second):
        return True  # "hydraulic line 12 x 1.5", "two sizes on this job: 28 x 2"
    if left.cue.role == "noise" and _stands_apart(layout, figure, left):
        return True
    if left.cue.role == "noise" and layout.tokens[left.token].text in _PARTS:
        # "legs are 1.25 x .065", "legs 1 x 18 ga": a length has no wall
        if second is not None and second.link == "times" and second.is_gauge:
            return True
        if walled and _is_wall(layout, left, figure, second):
            return True
        if walled and second is not None and _is_for_part(layout, figure, second, left):
            return True
    inner = left.cue.role == "id" and layout.tokens[left.token].text in _INNER_OF_TWO
    if not (inner or left.cue.role in RADIUS_ROLES) or second is None or second.link != "times":
        return False
    third = layout.after(second)
    if third is not None and third.link == "times":
        return False
    return second.role is None and second.number.value * 3 < figure.number.value


def _is_thinner(layout: Layout, figure: Figure, second: Figure) -> bool:
    """Whether a second figure is called or written like a wall, and can be that of the first."""
    behind = layout.tokens_after(second, 1)
    if behind and any(cue.role == "wall" for cue in behind[0].cues):
        return second.number.value * 4 < figure.number.value or second.number.style == "integer"
    written = is_thin(second) or second.unit == "mm"
    return written and second.number.value * 4 < figure.number.value


def _stands_beside(layout: Layout, figure: Figure, wall: Figure) -> bool:
    """Whether a wall in inches follows at once: 'main hoop is 1.75 .120 DOM'."""
    between = layout.text[figure.end : wall.start].strip(' ,"')
    thin = is_thin(wall) and wall.unit in (None, "in")
    return not between and thin and is_diameter(figure)


def _stands_apart(layout: Layout, figure: Figure, left: Found) -> bool:
    """'..., and one for the long ones, 28 x 1.5': a tube behind a comma; what is only told of how
    long or high its parts are."""
    if names_other_thing(layout, left.token) or not begins_tube(layout, figure):
        return False
    between = layout.text[layout.tokens[left.token].end : figure.start]
    ahead = layout.tokens[max(0, left.token - 2) : left.token]
    pointed = any(token.text in _THOSE for token in ahead)
    return pointed and is_diameter(figure) and between.strip() == ","


def _is_for_part(layout: Layout, figure: Figure, wall: Figure, left: Found) -> bool:
    """'One for the short legs 22 x 1, radius 90': a mandrel is for a tube, and so is a radius."""
    ahead = layout.tokens[max(0, left.token - _BACK) : left.token]
    radius = layout.after_in_sentence(wall)
    if radius is None or not any(token.text in _FOR for token in ahead):
        return False
    found = cue_left(layout, radius, set()) or cue_right(layout, radius)
    named = found is not None and found.cue.role in RADIUS_ROLES
    signed = any(cue.role in RADIUS_ROLES for cue in layout.tokens[radius.token].cues)
    return begins_tube(layout, figure) and (named or signed)


def _is_wall(layout: Layout, left: Found, figure: Figure, second: Figure | None) -> bool:
    """Whether what is multiplied can only be a wall: no order or drawing has that number."""
    if second is None or second.number.value * 3 >= figure.number.value:
        return False
    between = layout.text[layout.tokens[left.token].end : figure.start]
    return second.number.style in ("decimal", "fraction") or ":" in between
