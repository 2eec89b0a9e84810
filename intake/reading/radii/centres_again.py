"""Legs so far apart from centre to centre 'so the bend is 0.875 CLR': one radius, told twice.

The radius that is named counts; where it is not half the distance, it is in doubt.
"""

from __future__ import annotations

from decimal import Decimal

from ..text.figures import LISTED, Figure, Layout
from ..text.patterns import whole_words

NOT_HALF = "the radius is not half the distance between the legs"

_NAMED = ("clr", "radius")
_SAME = Decimal("0.02")
_NEAR = 2
"""Figures to either side of the distance among which the radius is."""
_INCH = Decimal("25.4")
_ADDS = whole_words(
    "also | another | and one | plus | auch | noch | aussi | también | anche | ook | or | oder | ou"
)
_TO_CENTRES = whole_words(
    r"cent(?:re|er)s?(?:lines?)? | ax[ie]s | c[ -]?to[ -]?c | mitte | \w*achs\w* | entraxe | axes?",
    r"ejes? | entre centros | interass[ei] | ass[ei] | hart | harten",
)


def join_centres(layout: Layout) -> None:
    """Set aside a distance between legs whose radius is named beside it."""
    for figure in layout.figures:
        if figure.role != "centres" or figure.negated or figure.row is not None:
            continue
        radius = _radius_beside(layout, figure)
        if radius is None:
            continue
        figure.give("noise", "same")
        if not _is_half(radius, figure):
            radius.notes.append(NOT_HALF)
        elif "hedged" not in figure.notes and layout.says(figure.sentence, _TO_CENTRES):
            # "50 between the axes of the legs, so I think radius 25": the sender reckoned right
            radius.notes = [note for note in radius.notes if note != "hedged"]


def _radius_beside(layout: Layout, figure: Figure) -> Figure | None:
    begin, end = max(0, figure.index - _NEAR), figure.index + _NEAR + 1
    near = [f for f in layout.figures[begin:end] if f.role in _NAMED and not f.negated]
    near = [f for f in near if f.paragraph == figure.paragraph and not _parted(layout, figure, f)]
    halves = [f for f in near if _is_half(f, figure)]
    if halves:
        return halves[0]
    beside = [f for f in near if f.sentence == figure.sentence]
    return beside[0] if len(near) == 1 and beside else None


def _parted(layout: Layout, one: Figure, other: Figure) -> bool:
    """Whether a tube stands between the two, or words say that the second is a further one."""
    first, last = (one, other) if one.index < other.index else (other, one)
    between = layout.figures[first.index + 1 : last.index]
    if any(f.role in ("od", "id", "wall") for f in between) or last.link in LISTED:
        return True
    return _ADDS.search(layout.words(first.end, last.start)) is not None


def _is_half(radius: Figure, distance: Figure) -> bool:
    a, b = radius.number.value * 2, distance.number.value
    scales = [Decimal(1)]
    if radius.unit != distance.unit:
        scales += [_INCH, 1 / _INCH]
    return any(abs(a * scale - b) <= b * _SAME for scale in scales)
