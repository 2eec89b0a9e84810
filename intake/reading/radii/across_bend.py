"""A bend given by what is measured across it, and not by its radius.

'Distance between the legs inside 72 mm', 'the loop measures 120 from the middle of the tube to the
middle', 'the bend should have a diameter of 140', 'bent round a 6 in pulley'.
"""

from __future__ import annotations

import re
from decimal import Decimal
from functools import lru_cache

from ..naming.place_tests import is_thin
from ..text.figures import Figure, Layout
from ..text.roles import Role
from .across_words import (
    A_PIPE_AFTER,
    A_U,
    APART,
    APART_BEFORE,
    AT_CENTRE,
    BEND_DIAMETER,
    BENDS_IT,
    BENT_THING,
    BETWEEN_BENDS,
    CALLED_RADIUS,
    CENTRE,
    CENTRE_DIAMETER_AFTER,
    CENTRE_DIAMETER_BEFORE,
    DIAMETER_AFTER,
    DIAMETER_BEFORE,
    GAP,
    GROOVE_BOTTOM,
    HAS_HOLES,
    INSIDE,
    LEG_CENTRES,
    LEGS,
    MIDDLE_TO_MIDDLE,
    MIDDLE_TO_MIDDLE_BEFORE,
    NAMED_RADIUS,
    ON_CENTRE_LINE,
    OUTSIDE,
    OUTSIDE_PROPER,
    OWN_RADIUS_AFTER,
    OWN_RADIUS_BEFORE,
    PITCH_CIRCLE_AFTER,
    PITCH_CIRCLE_BEFORE,
    RADIUS_WORD,
    ROUND_A,
    ROUND_THING,
    ROUND_THING_AFTER,
    SIGNED,
    TUBE,
    WALL_BEHIND,
    WIDE_AFTER,
    WIDE_BEFORE,
    WRAPPED,
)

BETWEEN_LEGS = "between the legs: clear between them, or from centre to centre?"
OVERALL = "is the overall measure that across the bend, to the outsides of the tube?"
OVER_A_THING = "the bend is given by what the tube lies against: is it to the inside?"
_CLAUSE = re.compile(r"[,;:]")
_LEAST, _MOST = Decimal("1.4"), Decimal(26)
"""How many ODs a bend is across."""
_LEAST_OD_MM = 5
_FAR = 40
"""Figures to either side among which the tube's OD is."""
_INCH = Decimal("25.4")
_INCHES_TO = 8
"""A bare number up to that is likelier inches beside figures in inches."""
_NEAR = 90
"""Characters before a figure in which words say what it measures."""
_SIDES: tuple[tuple[re.Pattern[str], Role], ...] = (
    (CENTRE, "centres"),
    (INSIDE, "inside_d"),
    (OUTSIDE, "outside_d"),
)


def across_bend(layout: Layout, figure: Figure, before: str, after: str) -> Role | None:
    """What of a bend the figure measures across it, or None where it measures no bend.

    ``before`` and ``after`` are the words around it up to the figures beside it, casefolded. Notes
    the doubt where the words leave open from where to where.
    """
    before = before[-_NEAR:]
    following = layout.after(figure)
    if figure.link == "times" or (following is not None and following.link == "times"):
        return None
    if figure.unit == "D" or figure.is_gauge:
        return None
    if BETWEEN_BENDS.search(before):
        return "noise"
    role = (
        _pitch_circle(layout, figure, before, after)
        or _between_middles(layout, figure, before, after)
        or _between_legs(layout, figure, before, after)
        or (None if _is_of_tube(layout, following) else _diameter(before, after))
        or _around_thing(layout, figure, before, after)
        or _width(layout, figure, before, after)
    )
    return role if role is not None and _has_tube(layout, figure) else None


def is_own_radius(before: str, after: str) -> bool:
    """Whether the words around a figure, casefolded, call itself a radius: 'so it is a .875
    CLR'."""
    return bool(OWN_RADIUS_AFTER.match(after) or OWN_RADIUS_BEFORE.search(before))


def _pitch_circle(layout: Layout, figure: Figure, before: str, after: str) -> Role | None:
    """'The die has a pitch circle diameter of 200': that of the tube's centre line."""
    told = PITCH_CIRCLE_BEFORE.search(before) or PITCH_CIRCLE_AFTER.match(after)
    if told is None:
        return None
    return "noise" if layout.says(figure.sentence, HAS_HOLES) else "centres"


def _between_middles(layout: Layout, figure: Figure, before: str, after: str) -> Role | None:
    """'120 mm from the middle of the tube on one side to the middle of the tube on the other'."""
    if CALLED_RADIUS.search(before):
        return None  # "de straal is 180 mm hart op hart van de buis"
    behind = MIDDLE_TO_MIDDLE.match(after)
    if behind and behind["diameter"]:
        return "centres"
    spans = behind or MIDDLE_TO_MIDDLE_BEFORE.search(before)
    return "centres" if spans and _speaks_of(layout, figure, ROUND_THING, LEGS) else None


def _between_legs(layout: Layout, figure: Figure, before: str, after: str) -> Role | None:
    measured = APART.match(after) or APART_BEFORE.search(before)
    gap = GAP.search(before) or GAP.search(_CLAUSE.split(after, 1)[0])
    if not (measured or gap) or not _speaks_of(layout, figure, LEGS):
        return None
    side = _side(before, after)
    if side != "centres" and (_names_radius(layout.text) or not _is_of_u(layout.text)):
        return "noise"  # a table's legs
    if side is not None:
        return side
    if gap is None and LEG_CENTRES.search(before):
        return "centres"
    if gap is None:
        figure.notes.append(BETWEEN_LEGS)
    return "inside_d"


def _diameter(before: str, after: str) -> Role | None:
    """'The bend should have a diameter of 140 mm', 'rings of 240 mm inside diameter'."""
    ahead, behind = DIAMETER_BEFORE.search(before), DIAMETER_AFTER.match(after)
    if behind and RADIUS_WORD.search(before):
        behind = None  # "Bend radius = 0.5 in / Outside diameter = 0.25 in"
    if behind and BENDS_IT.search(before):
        behind = None  # "to bend a 1.5 dia .049 wall tube"
    words = ahead[0] if ahead else before if behind and BENT_THING.search(before) else ""
    if not words:
        named = BEND_DIAMETER.search(before)
        return _side(named[0], after[:24]) if named else None
    if TUBE.search(words):
        return None
    return _side(words, behind[0] if behind else after[:24]) or "bend_dia"


def _is_of_tube(layout: Layout, following: Figure | None) -> bool:
    """'Front hoop - 2" OD, .049 wall, 6 CLR': beside a wall and a radius of its own that is the
    tube's."""
    if following is None or not _names_radius(layout.text):
        return False
    thin = is_thin(following) and following.unit in (None, "in")
    return thin or WALL_BEHIND.match(layout.text, following.end) is not None


def _around_thing(layout: Layout, figure: Figure, before: str, after: str) -> Role | None:
    """'Bent round a 6 in pulley', 'the die is 140 dia at the bottom of the groove': the tube lies
    against it."""
    if GROOVE_BOTTOM.match(after):
        return "inside_d"
    wrapped = WRAPPED.search(before) and A_PIPE_AFTER.match(after)
    if not wrapped and not (ROUND_A.search(before) and ROUND_THING_AFTER.match(after)):
        return None
    if _names_radius(layout.text):
        return "noise"
    side = _side("", after)
    if side is None:
        figure.notes.append(OVER_A_THING)
    return side or "inside_d"


def _width(layout: Layout, figure: Figure, before: str, after: str) -> Role | None:
    """'The ring is 120 mm across, outside to outside'; with a radius named, a U may be of any
    width."""
    if not (WIDE_AFTER.match(after) or WIDE_BEFORE.search(before)):
        return None
    side = _side(before, after)
    if not _speaks_of(layout, figure, ROUND_THING, *((LEGS, A_U) if side else ())):
        return None
    if _names_radius(layout.text):
        return None
    if side == "outside_d" and not OUTSIDE_PROPER.search(f"{before} {after[:60]}"):
        figure.notes.append(OVERALL)
    return side or "bend_dia"


def settle_diameters(layout: Layout) -> None:
    """'The centreline follows a circle of 250', '12 in circle at the centre of the tube': words
    that say to where the diameter is measured leave no doubt."""
    for figure in layout.figures:
        if figure.role != "bend_dia":
            continue
        begin = layout.sentence_start(figure.sentence)
        end = begin + len(layout.sentence_text(figure.sentence))
        before, after = layout.before(figure), layout.after(figure)
        ahead = layout.words(max(begin, before.end if before else 0), figure.start)
        behind = layout.words(figure.end, min(end, after.start if after else end))
        named = CENTRE_DIAMETER_BEFORE.search(ahead) or CENTRE_DIAMETER_AFTER.match(behind)
        if named or ON_CENTRE_LINE.search(ahead) or AT_CENTRE.search(behind):
            figure.role = "centres"


def signed_diameter(layout: Layout, figure: Figure, before: str, after: str) -> Role | None:
    """'Ring inside Ø240', 'bent to Ø240': the sign says that it is a diameter, and not of what."""
    signs = layout.tokens[figure.token].cues
    following = layout.after(figure)
    if not signs or signs[0].role != "od" or not SIGNED.search(before[-_NEAR:]):
        return None
    if following is not None and following.link == "times":
        return None
    words = SIGNED.search(before[-_NEAR:])
    role = _side(words[0] if words else "", after[:24]) or "bend_dia"
    return role if _has_tube(layout, figure) else None


@lru_cache(maxsize=4)
def _names_radius(text: str) -> bool:
    return NAMED_RADIUS.search(text.casefold()) is not None


@lru_cache(maxsize=4)
def _is_of_u(text: str) -> bool:
    text = text.casefold()
    return ROUND_THING.search(text) is not None or A_U.search(text) is not None


def _side(before: str, after: str) -> Role | None:
    """From where to where, if the words say one of the three; the nearest words after first."""
    for words in (after[:60], before):
        found = [role for pattern, role in _SIDES if pattern.search(words)]
        if len(found) == 1:
            return found[0]
    return None


def _speaks_of(layout: Layout, figure: Figure, *things: re.Pattern[str]) -> bool:
    sentences = range(max(0, figure.sentence - 1), figure.sentence + 1)
    return any(layout.says(sentence, thing) for sentence in sentences for thing in things)


def _has_tube(layout: Layout, figure: Figure) -> bool:
    """Whether another figure can be the OD of the tube: so wide a thing is no tube then."""
    across = _mm(figure, figure)
    near = layout.figures[max(0, figure.index - _FAR) : figure.index + _FAR]
    for other in near:
        if other is figure or other.role not in (None, "od") or other.is_gauge or other.negated:
            continue
        od = _mm(other, figure)
        if od >= _LEAST_OD_MM and _LEAST <= across / od <= _MOST:
            return True
    return False


def _mm(figure: Figure, beside: Figure) -> Decimal:
    """Its length [mm]; without a unit, inches where small or a fraction."""
    value = figure.number.value
    unit = figure.unit
    if unit is None:
        exact = figure.number.style in ("fraction", "mixed")
        inches = exact or (value <= _INCHES_TO and beside.unit != "mm")
        unit = "in" if inches or (figure is beside and value <= _INCHES_TO) else "mm"
    return value * _INCH if unit == "in" else value * 10 if unit == "cm" else value
