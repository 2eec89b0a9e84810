"""A further OD that shares the rest: '..., also in 2.25 same radius', 'also a 2.5 at the same wall'."""

# ruff: noqa: E501 - lists of words stand on one line

from __future__ import annotations

from decimal import Decimal

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of
from .place_tests import is_diameter, is_thin

_ALSO = late_pattern(
    r"\b(?:also|auch|aussi|également|también|anche|ook|plus|another|and)\s"
    r"(?:(?:need|want|quote|price|one|in|for|an?|the|einen?|eins|für|pour|en|un|une|para|per|voor|een|some"
    r"|do|have|run|make|bend|is|at|do you|could you)\s){0,3}$"
)
_SAME = late_pattern(
    r"^\W{0,3}(?:mm|in|inch(?:es)?|zoll)?\W{0,2}\s?(?:od|o\.d\.|tube|version|size|one|er)?\s?[,(]?\s?"
    r"(?:(?:at|with|on|in|of|all|mit|bei|avec|con|met|a|à)\s)?(?:the\s|der\s|die\s|la\s|le\s|de\s|el\s|lo\s)?"
    + any_of(
        "same | gleiche[rnm]? | selbe[rn]? | dieselbe | identical | même | misma | mismo | stess[oa]",
        "zelfde | dezelfde",
    )
    + r"\s"
    + any_of(
        r"(?P<radius>clr | (?:bend |center ?line )?radius | bend | die | biegeradius | rayon | radio | raggio"
        r" | straal)",
        "wall(?: thickness)? | thickness | gauge | ga | material | everything | wand\\w* | épaisseur",
        "paroi | pared | espesor | parete | spessore",
    )
    + r"\b"
)
_RADIUS_TOO = late_pattern(
    r"^(?:\W|(?:and|und|et|y|e|en|the|der|die|la|le|de|el|lo|on|a)\b){0,6}"
    r"(?:same|gleiche[rnm]?|selbe[rn]?|même|mism[oa]|stess[oa]|zelfde|dezelfde)?\s?"
    r"(?:clr|(?:bend |center ?line )?radius|die|bend|biegeradius|rayon|radio|raggio|straal)\b"
)
"""'... same wall, same CLR', '... same wall and radius'."""
_SAME_IN = late_pattern(
    r"\b(?:(?:the|das|die|den|le|la|lo|el|il|het|de)\s)?"
    + any_of(
        "same | gleiche[ns]? | selbe[ns]? | dasselbe | dieselbe | denselben | identical | même(?: chose)?",
        "mism[oa] | stess[oa](?: cosa)? | hetzelfde | zelfde | dezelfde",
    )
    + r"\s(?:(?:again|too|thing|mandrel|one|tool|size|spec|setup|job|but|nochmal|noch mal|auch|noch"
    r" einmal|dorn|aussi|mandrin|también|mandril|anche|mandrino|ook|doorn)\s){0,2}"
    r"(?:in|for|für|en|pour|para|per|voor)\s(?:an?\s|ø\s?)?$"
)
"""'... and the same again in 2 inch.'"""
_NEAREST, _FARTHEST = Decimal("0.4"), Decimal("1.7")
"""How many times an OD that is named another is, where only the wall is the same."""
_BACK = 40


def hear_also_another(layout: Layout) -> None:
    """Give such a bare figure the role of an OD; it needs one named before."""
    for figure in layout.figures[1:]:
        if figure.role is not None or figure.negated or figure.link == "times":
            continue
        if figure.unit not in (None, "mm", "in") or layout.tokens[figure.token].cues:
            continue
        if is_diameter(figure) and not is_thin(figure) and _is_another(layout, figure):
            figure.give("od", "cue")
            figure.link = "apart"


def _is_another(layout: Layout, figure: Figure) -> bool:
    same = _SAME.match(layout.words(figure.end, figure.end + 2 * _BACK))
    begin = max(layout.sentence_start(figure.sentence), figure.start - _BACK)
    before = layout.before(figure)
    begin = max(begin, before.end if before is not None else 0)
    ahead = layout.words(begin, figure.start)
    same_in = same is None and _SAME_IN.search(ahead) is not None
    if not same_in and (same is None or _ALSO.search(ahead) is None):
        return False
    value = figure.number.value
    tubes = [
        f.number.value
        for f, wall in zip(layout.figures, layout.figures[1 : figure.index], strict=False)
        if wall.link == "times" and f.link != "times"
    ]
    if not tubes or value in tubes:
        return False
    if same is None:
        return all(_NEAREST < value / t < _FARTHEST for t in tubes if t)
    radius = same["radius"] or _RADIUS_TOO.match(
        layout.words(figure.end + same.end(), figure.end + same.end() + _BACK)
    )
    return radius is not None or any(_NEAREST < value / t < _FARTHEST for t in tubes if t)
