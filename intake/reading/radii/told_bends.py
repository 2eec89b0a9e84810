"""A radius told by a word of bending alone: 'je le cintre à 44', 'with a 4-1/4" bend', 'matrijs 120'.

Only where the message names no radius at all, one figure is so told, and it is as long as the
radius of a bend of that tube. A bare number that is an angle in most mails stays in doubt.
"""

# ruff: noqa: E501 - lists of words stand on one line

from __future__ import annotations

from decimal import Decimal

from ...late_pattern import late_pattern
from ..text.figures import LISTED, Figure, Layout
from ..text.patterns import any_of
from ..text.roles import RADIUS_ROLES

PERHAPS_ANGLE = "taken for the radius, though it may be the angle of the bend"
SIZE_OF_BEND = "the size of the bend is told: is it its radius?"
_ANGLES = frozenset(map(Decimal, (15, 30, 45, 60, 90, 120, 135, 150, 180)))
_INCH = Decimal("25.4")
_LEAST, _MOST = Decimal("1.1"), Decimal(8)
"""How many ODs a radius is that no word calls one; an OD said again is none."""
_MOST_LOOSE = Decimal(6)
_BACK = 90
_SMALLEST_MM = 10
_TO = r"(?:an?|the|our|my|un|une|una|uno|einen?|einem|een|le|la|il|el)?\s?"
_VERB = late_pattern(
    r"\b"
    + any_of(
        # English wants its preposition; what stands between is the tube.
        r"(?:bent|bend|bending|bends|rolled|curved|curving|formed|swept)\s(?:it\s|this\s|them\s|that\s)?(?:to|at|around|round|over|on)",
        r"(?:wrinkl\w+|kink\w*|flatten\w*|collaps\w+|ripples?|buckl\w+|goes oval)\s(?:\w+\s)?(?:at|on|around)",
        r"(?:what )?it goes a?round(?: is)?",
        r"(?:bend|bending)\s(?:[^.;,?!:]|\.\d){3,60}\s(?:to|around|round)",
        r"(?:cintr\w+|courb\w+)\s(?:[^\W\d]+\s){0,2}?(?:à|sur)",
        r"(?:dobl\w+|curv(?:o|amos|ado|ados|ar|arlo|an?))\s(?:[^\W\d]+\s){0,2}?(?:a|sobre)",
        r"(?:pieg\w+|curv(?:o|ato|ati|are|iamo|arlo)|girat[oi])\s(?:[^\W\d]+\s){0,2}?(?:a|su)",
        r"(?:bieg(?:e|en|t)|gebogen|boge)\s(?:[^\W\d]+\s){0,2}?(?:auf|um)",
        r"(?:buig|buigen|buigt|gebogen)\s(?:[^\W\d]+\s){0,2}?(?:op|naar|om)",
        r"(?:buig|buigen)\s(?:hem|het|ze|die|dit|deze)",
    )
    + r"\s"
    + _TO
    + r"$"
)
_IS = any_of(
    r"is | will be | would be | = | : | sarà | sarebbe | è | es | sería | será | est | serait",
    "sera | ist | wäre | wird | zou | wordt | zou zijn",
)
_NOUN = late_pattern(
    r"(?:^|[\s,;(])(?:"
    + rf"(?:the|my|our|its) bend\s?{_IS}|"
    + any_of(
        "bend size | size of (?:the )?bend | (?:la |una |con )?curva | (?:le |un |au )?coude",
        "(?:le )?cintre | cintrage | (?:der |im )?bogen | (?:de |een )?bocht",
    )
    + rf"\s?{_IS}?)\s?$"
)
_DIE = late_pattern(
    r"\b(?:die (?:says|reads)(?: it's| a)?\s$|"
    + any_of(
        "matrijs | buigmatrijs | buigmal | dado | matriz | horma | matrice | biegeform",
        "biegesegment | biegeschablone | buigsegment | forme de cintrage",
    )
    + r"(?:\s(?:de|di|da|van|von|mit|is|est|es|è|ist|à|auf|op|a|del|una|un))?\s?[:=]?\s?$)"
)
_UNIT = (
    r"^[\"”″']{0,2}\s?(?:mm\b|in\b\.?|inch(?:es)?\b|zoll\b|pouces?\b|pulgadas?\b|pollici\b|\")?\s?"
)
_CALM = (
    r"(?:$|[.,;:?!)\n]|-\s|–|(?:"
    r"and|but|with|without|for|please|thanks|in|so|which|what|how|can|is|as|or|on"
    r"|et|mais|pour|avec|sans|en|und|aber|mit|ohne|für|aus|y|pero|para|con|sin|e|ma|per|senza"
    r"|maar|met|zonder|voor|gebogen|biegen|buigen|do|does|any|what"
    r")\b)"
)
"""What may stand behind: anything else ('from', 'pieces', 'fois') would say what is counted."""
_CALMLY = late_pattern(_UNIT + _CALM)
_BEND_BEHIND = late_pattern(
    r"^[\"”″']{0,2}\s?(?:mm|in\.?|inch(?:es)?|-inch|\")?[\s-]?(?:bends?|corners?)(?=\s?"
    + _CALM
    + r")"
)
_BEFORE_BEND = late_pattern(
    r"(?:^|[,;:]\s?|\b(?:with|on|at|over|around|round|into|to|through|and|w/)\s)"
    r"(?:(?:an?|the|our|my|its|tight|nice)\s){0,2}$"
)
_TURNED_BY = late_pattern(r"\b(?:um|auf|op|à|a)\s$")
_BENT_BEHIND = late_pattern(
    r"^\s?(?:gebogen|biegen|gebogene[nrs]?|buigen|cintr\w+|piegat\w|doblad\w)\b"
)
"""'wird um 90 gebogen'"""
_STARTS = late_pattern(
    r"\b(?:starts?|begins?|first|every|spac\w+|angle|degrees?|length|long|cut|legs?|straights?|tail|trim\w*|winkel|grad|angolo|gradi|ángulo|grados|angle|degrés|hoek|graden|länge|longueur|largo|lungo|lang|between|apart|temper\w*|heat\w*|press\w*|speed|rpm|age|price)\b"
)
_ITS = late_pattern(
    r"^\W*(?:[^\W\d]{1,20}:\s)?(?:yes\W{1,3}|ja\W{1,3}|oui\W{1,3}|sí\W{1,3}|sì\W{1,3})?"
    + any_of(
        "it's | it’s | it is | that's | that’s | that is | mine is | mine's | it would be | es ist | das ist | bei mir",
        "c'est | c’est | il est | ce serait | es de | es | è | è di | sarebbe | het is | dat is",
    )
    + r"\s$|^\W*[^\W\d]{1,20}:\s$"  # "Radius please?", and on the next line of the chat "Jo: 3 inch"
)
_ENDS = late_pattern(_UNIT + r"[^\w\n]*(?:$|\n)")
_ASKS_RADIUS = late_pattern(
    r"\b(?:radius|clr|rayon|radio|raggio|straal|biegeradius|buigradius|buigstraal)"
    r"(?:\s(?:then|please|too|denn|alors|exactly))?\s?\?\s*$"
)


def hear_told_bends(layout: Layout) -> None:
    """Make a radius of the one figure that is so told, where the message has none."""
    radii = [f for f in (*layout.figures, *layout.earlier) if f.role in RADIUS_ROLES]
    if radii:
        _doubt_angles(layout, [figure for figure in radii if figure in layout.figures])
        return
    told = [figure for figure in layout.figures if _is_told(layout, figure)]
    if len(told) != 1:
        return
    (figure,) = told
    perhaps = figure.unit is None and figure.number.value in _ANGLES
    before, after = _around(layout, figure)
    figure.give("radius", "place")
    if _BEND_BEHIND.match(after):
        figure.notes.append(SIZE_OF_BEND)
    elif perhaps and not _DIE.search(before) and not _ITS.match(before):
        figure.notes.append(PERHAPS_ANGLE)


def _doubt_angles(layout: Layout, radii: list[Figure]) -> None:
    """'Tube 40 x 2 gebogen auf 90': taken by its place, and an angle as well as a radius."""
    for figure in radii:
        bare = figure.unit is None and figure.number.value in _ANGLES
        if bare and figure.how == "place" and not figure.notes:
            before, after = _around(layout, figure)
            told = _VERB.search(before) and _CALMLY.match(after)
            if told or (_TURNED_BY.search(before) and _BENT_BEHIND.match(after)):
                figure.notes.append(PERHAPS_ANGLE)


def _is_told(layout: Layout, figure: Figure) -> bool:
    free = figure.role in (None, "die") or (figure.role, figure.how) in (
        ("noise", "cue"),
        ("od", "place"),
    )
    if not free or figure.negated or figure.row is not None or layout.tokens[figure.token].cues:
        return False
    before, after = layout.before(figure), layout.after(figure)
    if figure.unit not in (None, "in", "mm") or figure.link in ("times", "slash"):
        return False
    if figure.link in LISTED and (before is None or before.role != "wall"):
        return False  # '.083" wall, 4" bend' is no list
    if after is not None and after.link in ("times", "slash", *LISTED):
        return False
    tube = _tube(layout, figure)
    if tube is None:
        return False
    ratio = _ratio(figure, tube)
    return ratio is not None and _LEAST < ratio <= _MOST and _says(layout, figure, ratio)


def _says(layout: Layout, figure: Figure, ratio: Decimal) -> bool:
    before, after = _around(layout, figure)
    if _STARTS.search(before[-_BACK // 2 :]):
        return False
    if _BEND_BEHIND.match(after) and _BEFORE_BEND.search(before):
        return figure.is_measured and ratio <= _MOST_LOOSE
    if figure.role == "noise":
        return False
    if _ITS.match(before) and _ENDS.match(after):
        begin = layout.sentence_start(figure.sentence)
        return _ASKS_RADIUS.search(layout.words(max(0, begin - _BACK), begin)) is not None
    if not _CALMLY.match(after):
        return False
    return any(words.search(before) for words in (_VERB, _NOUN, _DIE))


def _tube(layout: Layout, figure: Figure) -> Figure | None:
    """The one OD of the message, or of several the nearest before the figure."""
    tubes = [
        other
        for other in layout.figures
        if other.role == "od" and other is not figure and not other.negated and other.is_measure
    ]
    before = [other for other in tubes if other.index < figure.index]
    if before:
        return before[-1]
    return tubes[0] if tubes else None


def _ratio(figure: Figure, tube: Figure) -> Decimal | None:
    """How many ODs the figure is long; None where that can't be told."""
    if not tube.number.value:
        return None
    ratio = figure.number.value / tube.number.value
    units = figure.unit, tube.unit
    if units in (("in", "mm"), ("mm", "in")):
        return ratio * (_INCH if figure.unit == "in" else 1 / _INCH)
    if None in units and "mm" not in units and tube.number.value < _SMALLEST_MM < _MOST * 2:
        return ratio if figure.number.value < 4 * _SMALLEST_MM else None
    return ratio


def _around(layout: Layout, figure: Figure) -> tuple[str, str]:
    """The words of its sentence before and behind the figure, in one line each."""
    first, last = layout.spans[figure.sentence]
    begin, end = layout.tokens[first].start, layout.tokens[last].end
    before = layout.words(max(begin, figure.start - _BACK), figure.start).replace("\n", " ")
    after = layout.words(figure.end, max(figure.end, min(end, figure.end + _BACK)))
    return before, after
