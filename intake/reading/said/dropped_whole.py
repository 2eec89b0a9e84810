"""A size that is taken back goes whole: 'forget the 2.5 OD .083 wall at 10 in CLR' denies its wall
and its radius too, and neither may go with the size that is asked for.

Behind words that can only take back ('forget', 'no longer need') whatever length is named right
behind the figure goes with it. A bare 'not' or 'instead of' takes along a radius only where another
one is left: in '1.5 x .095, not 1.5 x .065, on a 4.5 CLR' the radius is that of the first. Behind a
comma or in brackets a wall or a radius goes along where every tube that is left has its own:
'Bisher 38 x 2, R 76, nun 42,4 x 2, R 85'.
"""

from __future__ import annotations

from collections.abc import Callable

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.nearby import words_nearby
from ..text.patterns import any_of
from ..text.roles import RADII

_DROPS = late_pattern(
    r"\b"
    + any_of(
        r"never ?mind | scrap | drop | forget | ignore | skip | lose | disregard | scratch | scrub",
        r"no longer (?:run|use|need|make|bend|want) | vergessen sie | vergiss | vergesst",
        r"oubliez | oublie | olvid(?:e|en|ad|a) | dimenticat\w* | scordat\w* | vergeet",
    )
    + r"\b[^.;,:!?]{0,24}$"
)
_JOINED = late_pattern(
    r"[\s\"'″”,./()-]*(?:(?:mm|cm|in|inch|inches|od|o\.d\.|wall|wand\w*|wt|thick|gauge|ga|tube"
    r"|tubing|pipe|sch|schedule|rohr|tubo|buis|id|i\.d\.|on|at|with|to|an?|the|r|clr|radius|x"
    r"|center|centre|line|centerline|centreline|auf|mit|bei|einem?|radien|biegeradius|sur|avec|à"
    r"|un|une|rayon|mittenradius|con|en|radio|de|di|su|raggio|met|op|een|straal|of|von|und|and)"
    r"\b[\s\"'″”,./()=:-]*)*"
)
_COMMA = late_pattern(r",(?!\d)")
_RADIUS_BEHIND = late_pattern(
    r"[\"'″”]?\s?(?:mm|cm|in\.?|inch(?:es)?)?[\s-]?"
    r"(?:(?:cent(?:er|re)[ -]?line|bend(?:ing)?|mean)\s)?"
    r"(?:clr|radius|rad|r|rayon|radio|raggio|straal|biegeradius)\b"
)
_RADIUS_AHEAD = late_pattern(
    r"\b(?:clr|radius|rad|r|rayon|radio|raggio|straal|biegeradius)\s?(?:of|von|de|di|van|=|:)?\s?$"
)
_WALL_BEHIND = late_pattern(
    r"[\"'″”]?\s?(?:mm|in\.?|inch)?\s?(?:wall|wt|thick|wand\w*|paroi|d'épaisseur|épaisseur|(?:de )?"
    r"pared|(?:di )?spessore|ga(?:uge)?)\b"
)
_TUBE_BEHIND = late_pattern(
    r"[\"'″”]?\s?(?:mm|in\.?|inch)?\s?(?:tub(?:e|ing)|pipe|[oi]\.?d\b|rohr|tubo|buis)"
)
_STAYS = late_pattern(
    r"[^.;,:!?\d]{0,32}\b(?:is|stays?|remains?|ist|bleibt|est|reste|es|queda|è|resta|blijft)\b"
)
_NOT_IN_BRACKETS = late_pattern(
    r"\((?:not|nicht|pas|non|no|niet)(?: yet| jetzt)?\s"
    r"(?:(?:the|our|an?|die|das|den|le|la|el|il|lo|de|het)\s)?$"
)
_BACK = late_pattern(r"\b(?:back|again|wieder|zurück|retour|nouveau|vuelve|vuelta|torna|terug)\b")
_FAR = 32
_AROUND = 40
"""Figures to either side among which another length of the kind is looked for."""


def negate_dropped(layout: Layout) -> None:
    """Deny what else is named of a size that is taken back."""
    for figure in [f for f in layout.figures if f.negated and not f.owned]:
        before, _ = words_nearby(layout, figure)
        inside = _in_brackets(layout, figure)
        dropped = _DROPS.search(before) is not None or inside
        if not dropped and _is_chained(layout, figure):
            continue  # of '2 x .065' the first tells
        _deny_behind(layout, figure, dropped=dropped, inside=inside)


def deny_with(layout: Layout, figure: Figure) -> None:
    """Deny what else is named of the size of a figure that is given up for another."""
    _deny_behind(layout, figure, dropped=False, inside=False)


def _in_brackets(layout: Layout, figure: Figure) -> bool:
    """'(not the .065 wall 1.5 tubing on a 6 CLR yet)': all of it is denied."""
    opened = layout.words(max(0, figure.start - _FAR), figure.start)
    return _NOT_IN_BRACKETS.search(opened) is not None


def _is_chained(layout: Layout, figure: Figure) -> bool:
    before = layout.before(figure)
    return figure.link == "times" and before is not None and before.negated


def _deny_behind(layout: Layout, figure: Figure, *, dropped: bool, inside: bool) -> None:
    last, after = figure, layout.after_in_sentence(figure)
    while after is not None and (after.negated or _goes_along(layout, last, after, dropped)):
        if inside and ")" in layout.words(last.end, after.start):
            return  # "48.3 x 3 (not 2 mm), radius 140"
        after.negated = True
        if is_radius(layout, after):
            return
        last, after = after, layout.after_in_sentence(after)


def _goes_along(layout: Layout, last: Figure, after: Figure, dropped: bool) -> bool:
    """Whether a figure is named as one of the same size as the one before it."""
    between = layout.words(last.end, after.start)
    behind = layout.words(after.end, after.end + _FAR)
    if len(between) > _FAR or not _JOINED.fullmatch(between) or _STAYS.match(behind):
        return False
    apart = _COMMA.search(between) is not None or "(" in between
    if dropped and (is_radius(layout, after) or _is_wall(layout, after)):
        return True
    if apart and _BACK.search(layout.sentence_text(after.sentence)):
        return False  # "It used to be ..., then ..., and is back to the first"
    left = _all_have if apart else _another
    for is_alike in (is_radius, _is_wall):
        if is_alike(layout, after):
            return left(layout, after, is_alike)
    return not apart and is_tube(layout, after) and (dropped or _another(layout, after, is_tube))


def _another(layout: Layout, figure: Figure, is_alike: Callable[[Layout, Figure], bool]) -> bool:
    """Whether another length of the kind is left for the size that is asked for."""
    return any(
        other is not figure and not other.negated and is_alike(layout, other)
        for other in layout.figures[max(0, figure.index - _AROUND) : figure.index + _AROUND]
    )


def _all_have(layout: Layout, figure: Figure, is_alike: Callable[[Layout, Figure], bool]) -> bool:
    """Whether each tube that is left has such a length behind it, before the next tube begins."""
    lacks, found = False, False
    for other in layout.figures[max(0, figure.index - _AROUND) : figure.index + _AROUND]:
        if other is figure:
            continue
        if other.link != "times" and not is_alike(layout, other) and is_tube(layout, other):
            if lacks:
                return False
            lacks = not other.negated
        elif not other.negated and is_alike(layout, other):
            found, lacks = True, False
    return found and not lacks


def _is_wall(layout: Layout, figure: Figure) -> bool:
    """Whether it is a wall by its word, its place behind an 'x' or its schedule."""
    if figure.unit == "sch" or figure.link == "times" or figure.is_gauge:
        return True
    return _WALL_BEHIND.match(layout.words(figure.end, figure.end + _FAR)) is not None


def is_tube(layout: Layout, figure: Figure) -> bool:
    """Whether a word behind it, or an 'x' and a wall, make it a diameter."""
    after = layout.after(figure)
    if after is not None and after.link == "times":
        return True
    return _TUBE_BEHIND.match(layout.words(figure.end, figure.end + _FAR)) is not None


def is_radius(layout: Layout, figure: Figure) -> bool:
    """Whether a sign or a word right beside a figure calls it a radius."""
    if any(cue.role in RADII for cue in layout.tokens[figure.token].cues):
        return True
    after = layout.after(figure)
    until = figure.end + _FAR if after is None else min(figure.end + _FAR, after.start)
    if _RADIUS_BEHIND.match(layout.words(figure.end, until)):
        return True  # of '38 x 2 R 76' the sign is that of the 76
    return _RADIUS_AHEAD.search(layout.words(max(0, figure.start - 16), figure.start)) is not None
