"""ODs listed beside a wall that was said for all of them: 'All 18 ga: 1-1/2 then 1-5/8 then 2'.

Only where nothing else names an OD, and a radius is named elsewhere: such a list could as well be
of radii.
"""

from __future__ import annotations

from itertools import pairwise

from ..text.figures import LISTED, Figure, Layout
from ..text.patterns import word_set
from ..text.roles import RADIUS_ROLES
from .place_tests import is_diameter, is_thin

_THEN = word_set(
    "then next dann danach puis ensuite luego después poi dopo dan daarna and und et y e en & , ;"
    " lastly finally"
)
_LEAST = 2
_WIDEST_IN, _NARROWEST_MM, _WIDEST_MM = 8, 6, 220
_RADII = RADIUS_ROLES | {"times_d"}


def hear_tubes_listed(layout: Layout) -> None:
    """Make ODs of a list that a wall stands beside, where nothing else in the text can be one."""
    if any(figure.role in ("od", "id", "nps", "dn") for figure in layout.figures):
        return
    if not any(figure.role in _RADII and figure.is_measure for figure in layout.figures):
        return
    for run in _runs(layout):
        if len(run) < _LEAST or not all(map(_may_be_od, run)):
            continue
        beside = layout.in_sentence(run[0].sentence)
        if any(f.role == "wall" and f.is_measure for f in beside):
            for figure in run:
                figure.give("od", "list")
            for figure in run[1:]:
                figure.link = "list"
            return


def _runs(layout: Layout) -> list[list[Figure]]:
    """Figures without a role that follow each other in one sentence, with a 'then' or a comma."""
    runs: list[list[Figure]] = [[]]
    for figure in layout.figures:
        if figure.role is None and not figure.negated:
            runs[-1].append(figure)
        else:
            runs.append([])
    found = []
    for run in runs:
        joined = all(
            left.sentence == right.sentence
            and (right.link in LISTED or {t.text for t in layout.between(left, right)} <= _THEN)
            for left, right in pairwise(run)
        )
        if run and joined:
            found.append(run)
    return found


def _may_be_od(figure: Figure) -> bool:
    value = figure.number.value
    if figure.unit == "mm" or (figure.unit is None and value > _WIDEST_IN):
        return _NARROWEST_MM <= value <= _WIDEST_MM
    return is_diameter(figure) or (not is_thin(figure) and value <= _WIDEST_IN)
