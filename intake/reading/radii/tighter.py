"""Radii that only a word for 'tighter' tells: 'the architects want tighter: 76 and also 102'."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of

_TIGHTER = late_pattern(
    r"\b(?:"
    + any_of(
        "tighter | gentler | enger | weiter | plus serrée?s? | plus doux | más cerrad[oa]s?",
        "más abiert[oa]s? | più strett[oaie] | più larg[oaie] | krapper | ruimer",
    )
    + r")(?:\s(?:ones?|bends?|corners?|now|werden|bögen|bochten))?\s?(?:[:,–-]|to|at)\s?r?\s?$"
)
_OF_TUBE = late_pattern(r"\s?(?:mm|in|inch|\"|”)?\s?(?:[x×*]|od\b|o\.d|tub|pipe|wall|rohr|buis|%)")
_LEAST, _MOST = 1, 8
"""So many ODs is a radius long."""
_BACK = 32


def hear_tighter(layout: Layout) -> None:
    """Make a radius of the first figure behind such words; those listed with it follow."""
    tubes = [figure.number.value for figure in layout.figures if figure.role == "od"]
    for figure in layout.figures:
        if figure.role is not None or figure.unit not in (None, "mm", "in") or not tubes:
            continue
        if any(_LEAST * od <= figure.number.value <= _MOST * od for od in tubes) and _is_told(
            layout, figure
        ):
            figure.give("radius", "cue")


def _is_told(layout: Layout, figure: Figure) -> bool:
    ahead = layout.words(max(0, figure.start - _BACK), figure.start)
    behind = layout.words(figure.end, figure.end + _BACK)
    return bool(_TIGHTER.search(ahead)) and not _OF_TUBE.match(behind)
