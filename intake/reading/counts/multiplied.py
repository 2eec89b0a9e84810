"""A count joined to a size by a times sign: '2x 42,4x2' is two of it, and no box."""

from __future__ import annotations

import re
from decimal import Decimal

from ...late_pattern import late_pattern
from ..naming.place_tests import is_thin
from ..text.figures import Figure, Layout
from ..text.roles import Role

_MOST_OF_A_SIZE = 20
_MANY_WALLS = 4
"""A tube is at least so many walls across."""
_LONGEST_BOX, _HALF, _THIN_INCH = 4, Decimal("0.5"), Decimal("0.3")
_CALLED: frozenset[Role] = frozenset({"od", "label"})
_THOUSANDTHS = 20
"""'49 wall'"""
_FAR = 12
_BEGINS = re.compile(r"(?:\b(?:mandrels?|and|plus|und|et|y|e|en)|[:;,&+])\s\Z", re.IGNORECASE)
"""Words behind which an item of a list in one line begins."""
_BOX = late_pattern(
    r"\b(?:rect\w*|squares?|box|oval|rechteck\w*|vierkant\w*|quadrat\w*|carrés?|cuadrad\w*)\b"
)
_NEAR_LINES = 16
"""So many figures to either side are looked at for lines that begin with a count beyond doubt."""
_BULLET = re.compile(r"\s*(?:[-*•–>]\s*|\(?(?:item\s)?#?\w{1,2}[.):]\s*)?", re.IGNORECASE)
_X_AND_SPACE = re.compile(r"[x×]\s", re.IGNORECASE)
"""'2x 42,4x2' and '2x 1.5 x .065' count; '2 x 42,4x2' may."""
_TIMES = re.compile(r"\s?[x×*]", re.IGNORECASE)


def sets_size_apart(layout: Layout, figure: Figure) -> bool:
    """Part a count from the size that it multiplies, and say so; to be called before roles."""
    od = _size_multiplied(layout, figure)
    if od is None:
        return False
    figure.give("noise", "count")
    od.link = "apart"
    return True


def sets_count_apart(layout: Layout, figure: Figure) -> bool:
    """'50.8 / 1.5 / 100 x2': behind an OD, a wall and a radius between slashes an x counts."""
    if figure.link != "times" or figure.number.style != "integer" or figure.unit:
        return False
    after = layout.after(figure)
    if after is not None and after.link in ("times", "slash"):
        return False
    radius = layout.before(figure)
    wall = layout.before(radius) if radius is not None and radius.link == "slash" else None
    od = layout.before(wall) if wall is not None and wall.link == "slash" else None
    if radius is None or wall is None or od is None or od.link in ("times", "slash"):
        return False
    least = wall.number.value * _MANY_WALLS
    if figure.number.value > _MOST_OF_A_SIZE or min(od.number.value, radius.number.value) < least:
        return False
    figure.give("noise", "count")
    figure.link = "apart"
    return True


def _size_multiplied(layout: Layout, figure: Figure) -> Figure | None:
    """The OD, or what else of a size comes first, that a figure multiplies: '2x 42,4x2'.

    Not '2 x 1.5 x .065', a box; but what has no room for the wall behind it is no side, and what
    is called an OD is none either.
    """
    first = layout.after(figure)
    if first is None or first.link != "times" or figure.link in ("times", "slash"):
        return None
    if figure.number.style != "integer" or figure.unit or figure.number.value > _MOST_OF_A_SIZE:
        return None
    if _opens_line(layout, figure) and _is_called(layout, first) and not is_thin(first):
        own = layout.tokens_after(figure, 1)
        return first if own and own[0].kind == "times" else None  # "2 OD x .120" counts nothing
    spread = _X_AND_SPACE.match(layout.text, figure.end, first.start) is not None
    if spread and (first.is_gauge or (_is_called(layout, first) and not is_thin(first))):
        return first  # "2x 13 gauge 1.25 in tube", "2x 16 mm OD, 1.2 mm wall"
    wall = layout.after(first)
    spread = spread and not _BOX.search(layout.sentence_text(figure.sentence))
    begins = _BEGINS.search(layout.text, max(0, figure.start - _FAR), figure.start)
    fits = is_thin(first) or (wall is not None and _fits(layout, first, wall))
    if spread and begins and fits:
        return first  # "mandrels: 2x .875 in 16 ga and 1x 88.9 mm 4 thick"
    if wall is None or wall.link != "times" or first.number.value < wall.number.value * _MANY_WALLS:
        return None
    glued = _X_AND_SPACE.match(layout.text, first.end, wall.start) is None
    room = figure.number.value > wall.number.value * 2
    counts = (spread and glued) or (not room and first.number.value > figure.number.value)
    if not counts and _opens_line(layout, figure):
        counts = not _may_be_sides(figure, first, wall) or _beside_counts(layout, figure)
    return first if counts else None


def _fits(layout: Layout, od: Figure, wall: Figure) -> bool:
    """Whether the second of two figures can be the wall of the first, and is written like one."""
    if wall.link == "times":
        return False
    called = any(cue.role == "wall" for t in layout.tokens_after(wall, 1) for cue in t.cues)
    if wall.is_gauge or (called and wall.number.value >= _THOUSANDTHS):
        return True
    thin = is_thin(wall) or wall.unit == "mm" or (od.unit == "mm" and wall.unit is None)
    return thin and wall.number.value * _MANY_WALLS < od.number.value


def _beside_counts(layout: Layout, figure: Figure) -> bool:
    """'4 x 1.75 x .095', then '3 x 2 x .120': 4 by 1.75 is no box, so that the 3 counts, too."""
    at = figure.index
    for other in layout.figures[max(0, at - _NEAR_LINES) : at + _NEAR_LINES]:
        if other.how == "count" and other.index < at and _opens_line(layout, other):
            return _TIMES.match(layout.text, other.end) is not None
        first = layout.after(other)
        wall = layout.after(first) if first is not None and first.link == "times" else None
        if other is figure or first is None or wall is None or wall.link != "times":
            continue
        whole = other.number.style == "integer" and other.unit is None
        if whole and _opens_line(layout, other) and not _may_be_sides(other, first, wall):
            return first.number.value >= wall.number.value * _MANY_WALLS
    return False


def _opens_line(layout: Layout, figure: Figure) -> bool:
    """Whether nothing but a bullet or an item's number stands before a figure on its line."""
    before = layout.text[layout.text.rfind("\n", 0, figure.start) + 1 : figure.start]
    return _BULLET.fullmatch(before) is not None


def _is_called(layout: Layout, figure: Figure) -> bool:
    """Whether a word or sign beside a figure says that it is an OD, a tube or a wall."""
    signs = layout.tokens[figure.token].cues
    ahead, behind = layout.tokens_before(figure, 1), layout.tokens_after(figure, 1)
    cues = [*signs, *(cue for token in behind for cue in token.cues)]
    cues += [cue for token in ahead for cue in token.cues if cue.side != "after"]
    return any(cue.role in _CALLED for cue in cues)


def _may_be_sides(a: Figure, b: Figure, wall: Figure) -> bool:
    """Whether two figures before a wall can be the sides of a box: both in half inches, or in mm,
    and neither much longer than the other."""
    small, large = sorted((a.number.value, b.number.value))
    if large > small * _LONGEST_BOX:
        return False
    thin = wall.number.value < _THIN_INCH
    return not thin or b.number.value % _HALF == 0
