"""A wall that is said for all sizes of a list without a word for it: 'all 304 and all .065'."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.figures import Layout
from .place_tests import is_thin

_ALL = late_pattern(
    r"\b(?:all|everything|alles|alle|tout|tous|toutes|todos?|todas?|tutt[oi]|allemaal)"
    r"(?:\s(?:of (?:it|them|these|this)|is|are|in|aus|ist|sind|est|sont|es|son|è|sono|van|the))*\s$"
)
_LEAST = 2
_AHEAD = 80


def hear_wall_for_all(layout: Layout) -> None:
    """Give the one figure that can be a wall its role, where no wall is named and 'all' is said."""
    ods = [figure for figure in layout.figures if figure.role == "od" and figure.is_measure]
    if len(ods) < _LEAST or any(figure.role in ("wall", "schedule") for figure in layout.figures):
        return
    thin = [f for f in layout.figures if f.role is None and f.is_measure and is_thin(f)]
    if len({figure.number.value for figure in thin}) != 1 or any(map(is_thin, ods)):
        return
    figure = thin[0]
    begin = max(layout.sentence_start(figure.sentence), figure.start - _AHEAD)
    if _ALL.search(layout.words(begin, figure.start).casefold()):
        figure.give("wall", "place")
