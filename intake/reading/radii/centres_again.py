"""Legs so far apart from centre to centre 'so the bend is 0.875 CLR', a bend '112 diameter on the
centre line, so 56 radius': one radius, told twice.

The radius that is named counts; where it is not half the distance, it is in doubt.
"""

from __future__ import annotations

from decimal import Decimal

from ...late_pattern import late_pattern
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
_BENT = late_pattern(
    r"\b(?:ben[dt]s?|bending|bow|curved|rolled|biege\w*|gebogen|bogen|cintr\w+|coudé?|courb\w+"
    r"|curv\w+|dobl\w+|pieg\w+|buig\w*|bocht\w*)\b[^.;()]{0,60}$"
)
_DIAMETER_BEHIND = late_pattern(
    r"\W{0,3}(?:mm|cm|in|inch|inches)?\W{0,2}(?:cent(?:re|er)\s?-?line\s|bend\s|mittlere\w* )?"
    r"(?:dia\b|diam|durchmesser|diámetro|diametro)"
)
_DIAMETER_BEFORE = late_pattern(
    r"(?:\bdia\b|\bdiam\w*|durchmesser|diam[eè]tre|diámetro|\bø)\W{0,2}(?:(?:of|von|de|van|di|is|ist"
    r"|est|es|è)\s)?$"
)
_OTHER_SIDE = whole_words(
    r"inside | inner | outside | outer | innen\w* | au(?:ß|ss)en\w* | int[eé]ri\w+ | ext[eé]ri\w+",
    r"intern[oa] | estern[oa] | binnen\w* | buiten\w*",
)
_AROUND = 80
_MAY_BE_DIAMETER = (None, "od", "bend_dia", "clr", "radius")


def join_diameters(layout: Layout) -> None:
    """Set aside the diameter of a bend whose radius, half of it, is named beside it: no tube so
    wide could be bent to that."""
    for figure in layout.figures:
        if figure.role not in _MAY_BE_DIAMETER or figure.negated or figure.row is not None:
            continue
        if figure.link == "times" or not _is_diameter_of_bend(layout, figure):
            continue
        begin, end = max(0, figure.index - _NEAR), figure.index + _NEAR + 1
        for radius in layout.figures[begin:end]:
            if radius.role not in _NAMED or radius.negated or radius is figure:
                continue
            near = abs(radius.sentence - figure.sentence) < _NEAR
            if near and not _tube_between(layout, figure, radius) and _is_half(radius, figure):
                figure.give("noise", "same")
                break


def _is_diameter_of_bend(layout: Layout, figure: Figure) -> bool:
    """Whether its words call it a diameter, and speak of a bend before it."""
    before = layout.words(max(0, figure.start - _AROUND), figure.start).casefold()
    after = layout.words(figure.end, figure.end + _AROUND).casefold()
    if _OTHER_SIDE.search(before[-24:]) or _OTHER_SIDE.search(after[:24]):
        return False
    if figure.role == "bend_dia":
        return True
    named = _DIAMETER_BEHIND.match(after) or _DIAMETER_BEFORE.search(before)
    return named is not None and _BENT.search(before) is not None


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
    if _tube_between(layout, one, other) or last.link in LISTED:
        return True
    return _ADDS.search(layout.words(first.end, last.start)) is not None


def _tube_between(layout: Layout, one: Figure, other: Figure) -> bool:
    first, last = (one, other) if one.index < other.index else (other, one)
    between = layout.figures[first.index + 1 : last.index]
    return any(f.role in ("od", "id", "wall") for f in between)


def _is_half(radius: Figure, distance: Figure) -> bool:
    a, b = radius.number.value * 2, distance.number.value
    scales = [Decimal(1)]
    if radius.unit != distance.unit:
        scales += [_INCH, 1 / _INCH]
    return any(abs(a * scale - b) <= b * _SAME for scale in scales)
