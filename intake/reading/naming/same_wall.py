"""A second OD told by its wall: 'at the back it goes down to 50 mm, same wall, radius 75'."""

from __future__ import annotations

from decimal import Decimal

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of
from .place_tests import is_diameter, is_thin

_SAME = any_of(
    r"same | gleiche[rnm]? | selbe[rn]? | dieselbe | identical | même | misma | mismo | stess[oa]",
    "zelfde | dezelfde | identische",
)
_WALL = any_of(
    r"wall(?: thickness)? | thickness | gauge | wand(?:stärke|dicke|dikte|ung)? | épaisseur",
    "paroi | pared | espesor | parete | spessore",
)
_SAME_WALL = late_pattern(
    r"^\W{0,2}(?:mm|in|inch(?:es)?|zoll)?\W{0,2}(?:od|o\.d\.|er|outside|rohr|tube|tubo)?\s?"
    r"(?:runter|herunter|hinunter|über|weiter|down)?"
    r"(?:\s?(?:at|on|in|vorne|hinten|oben|unten)\s?(?:the\s)?(?:back|rear|front|end|tail|top|bottom)?)?"
    r"\W{0,3}(?:with |mit |in |und |and |avec |y |con |e |en |met |et )?"
    r"(?:the |der |la |lo |de |le )?"
    rf"(?:{_SAME} {_WALL}|{_WALL} (?:is |ist |bleibt )?(?:the |la |de )?"
    rf"(?:{_SAME}|gleich|idem|ditto|unchanged|gelijk|igual|uguale|identique))\b"
)
_IS_RADIUS = late_pattern(
    r"\b(?:radi(?:us|i|en)|biegeradius|clr|r|rayon|raggio|radio|straal|bent|gebogen|cintré|curvado"
    r"|curvato|wand\w*|wall|paroi|épaisseur|pared|parete|spessore)\b[^,;.]{0,24}$"
    r"|\b(?:on|at|around|about|over|um|sur|su|sobre|op|by)\s(?:an?\s|the\s|ein\w*\s|une?\s|una?\s)?$"
)
_OF_BEFORE = late_pattern(r"^\W{0,3}(?:clr|radius|r|mm|wall|wand)\b")
"""'... on 4 CLR and it necks down to': that is of the figure before."""
_TIGHTEST = Decimal("0.7")
_WALL_TOLD = late_pattern(rf"\b(?:{_WALL}|ga)\b")
_FAR = 160
_NEAR = 40


def hear_same_wall(layout: Layout) -> None:
    """A bare figure with 'same wall' right behind it, and then a radius, is another tube's OD.

    Without a radius of its own it may be one: 'Radien 76 und 114, gleiche Wand'.
    """
    for figure in layout.figures[1:]:
        if figure.role is None and not figure.negated and _is_other_od(layout, figure):
            figure.give("od", "cue")
            figure.link = "apart"
            figure.notes = [note for note in figure.notes if note != "limit"]  # "down to 50"


def _is_other_od(layout: Layout, figure: Figure) -> bool:
    if figure.link == "times" or figure.unit not in (None, "mm", "in"):
        return False
    if layout.tokens[figure.token].cues or not is_diameter(figure) or is_thin(figure):
        return False
    if not _SAME_WALL.match(layout.words(figure.end, figure.end + 2 * _NEAR)):
        return False
    told = layout.words(max(0, figure.start - _FAR), figure.start)
    multiplied = any(f.link == "times" for f in layout.figures[: figure.index])
    if not (multiplied or _WALL_TOLD.search(told)):
        return False  # the same as what?
    radius = layout.after_in_sentence(figure)
    if radius is None or radius.number.value < figure.number.value * _TIGHTEST:
        return False
    begin = max(layout.sentence_start(figure.sentence), figure.start - _NEAR)
    before = layout.before(figure)
    if before is not None:
        begin = max(begin, before.end)
    ahead = _OF_BEFORE.sub(" ", layout.words(begin, figure.start))
    return not _IS_RADIUS.search(ahead)
