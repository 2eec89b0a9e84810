"""One radius said twice, the second time with the side that it is measured to.

'The die is stamped 3R and I put a tape on it, that's 3 inches to the inside of the bend': two
figures of one radius. Where the first bears no side of its own, the second says which it is.
"""

from __future__ import annotations

from itertools import pairwise

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of, whole_words

_FAR = 160
"""So many characters behind the first stands the second."""
_SAME_SIGNS = late_pattern(
    r"\b"
    + any_of(
        "that's | that is | which is | i\\.e | meaning | means | in other words | so | it's",
        "it is",
        "measured | measures | d\\.h | das heißt | also | sprich | das ist | gemessen | heißt",
        "c'est-à-dire | soit | donc | c'est | mesuré | es decir | o sea | así que | medido",
        "eso es",
        "cioè | ossia | quindi | misurato | vale a dire | dus | oftewel | d\\.w\\.z | gemeten",
        "dat is",
    )
    + r"(?![\w'])"
)
_SIDE = 32
_TOOL_BEHIND = late_pattern(
    r"^\s?(?:(?:mm|in|inch(?:es)?|cm|\")\b)?\s?(?:bend\s)?"
    r"(?:radius|rad|r|die|former|clr|biegeform|matrice|matriz|mal)?\b"
)
"""What the first is called: '67 mm former, and ...'."""
_ANOTHER = whole_words(
    "another | second | other | also | and one | each | both | noch ein\\w* | zweite\\w* | beide",
    "autre | deuxième | aussi | otro | segundo | también | altro | secondo | anche | ander",
    "tweede",
)


_AND_THAT = late_pattern(
    r"[\s,;.(]*(?:(?:and|with|where|und|wobei|et|y|e|ed|en|waarbij)\s)?"
    r"(?:(?:the|that|this|these|those|die|diese|ce|les?|el|los|il|i|de)\s)?r?\s?"
)
_IS_TO = late_pattern(
    r"\s?(?:mm|in|inch(?:es)?|\"|cm)?\s?(?:mm\s|radius\s)?"
    + any_of("is | are | being | ist | sind | c'est | est | es | son | è | sono | zijn")
    + r"\s(?:\w+\s)?"
    + any_of(
        "to | at | from | bis | zur? | bezogen | auf | à | jusqu'à | au | a | al | hasta | all'",
        "fino | tot | op | over",
    )
    + r"(?![\w'])|\s?(?:mm\s)?è\sall'"
)
"""'..., and 67 is to the middle of the tube'."""


def join_radii(layout: Layout) -> None:
    """Give a radius that is told again the side that is told with it then, and drop the second."""
    radii = [f for f in layout.figures if f.role in ("radius", "clr", "inside_r", "outside_r")]
    for first, again in pairwise(radii):
        if _is_told_to(layout, first, again) and _agree(first, again):
            first.role = again.role if first.role == "radius" else first.role
            again.give("noise", "same")
    radii = [f for f in radii if f.role in ("radius", "inside_r", "outside_r")]
    for first, again in pairwise(radii):
        if first.role != "radius" or again.role == "radius" or first.unit == "D":
            continue
        if first.negated or again.negated or first.row is not None or again.row is not None:
            continue
        if again.start - first.end > _FAR or not _agree(first, again):
            continue
        between = layout.text[first.end : again.start].casefold().replace("’", "'")
        tubes = [f for f in layout.figures[first.index + 1 : again.index] if f.role == "od"]
        if tubes or _ANOTHER.search(between) or not _SAME_SIGNS.search(between):
            continue
        first.role = again.role
        first.unit = first.unit or again.unit
        first.notes = [note for note in first.notes if not note.startswith("taken for the radius")]
        again.give("noise", "same")


def _is_told_to(layout: Layout, first: Figure, again: Figure) -> bool:
    """Whether the second figure only takes up the first to say what it is measured to."""
    if first.row is not None or again.row is not None or again.index != first.index + 1:
        return False
    between = layout.words(first.end, again.start)
    between = _TOOL_BEHIND.sub(" ", between)
    return bool(
        _AND_THAT.fullmatch(between) and _IS_TO.match(layout.words(again.end, again.end + _SIDE))
    )


def _agree(first: Figure, again: Figure) -> bool:
    same_unit = first.unit is None or again.unit is None or first.unit == again.unit
    return same_unit and first.number.value == again.number.value
