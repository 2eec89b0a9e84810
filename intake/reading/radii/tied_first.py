"""Radii given to the first so many of a list, and to each of the rest by its OD: 'the first two are
3 CLR, the 1-7/8 goes on a 3.5'.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.roles import RADIUS_ROLES
from .tied_items import SEVERAL, several_of

_LEADS = late_pattern(
    rf"(?<![\w.]){SEVERAL}[^,;.\n\d]{{0,24}}$",
    re.IGNORECASE,
)
_POINTS = late_pattern(
    r"(?:^|\s)(?:the|das|die|den|der|le|la|el|il|lo|de|het)\s(?:(?:de|da|van|ø)\s?)?$",
    re.IGNORECASE,
)
_FAR = 60
_LEAST = 3
"""Tubes in a list of which some are the first."""


def find_first_ties(layout: Layout, tubes: Sequence[Figure]) -> list[tuple[Figure, Figure]]:
    """Each radius with the OD that it is said for; none unless every tube of the list has one."""
    for radius in layout.figures[tubes[0].index + 1 :]:
        if radius.role not in RADIUS_ROLES:
            continue
        begin = max(tubes[0].end, radius.start - _FAR)
        lead = _LEADS.search(layout.text[begin : radius.start])
        listed = [tube for tube in tubes if tube.index < radius.index]
        if lead is None or len(listed) < _LEAST:
            return []
        meant = several_of(lead["several"].casefold(), len(listed))
        if meant is None:
            return []
        return _with_rest(layout, listed, [listed[n] for n in meant], radius)
    return []


def _with_rest(
    layout: Layout, listed: Sequence[Figure], meant: Sequence[Figure], radius: Figure
) -> list[tuple[Figure, Figure]]:
    rest = {tube.number.value: tube for tube in listed if tube not in meant}
    ties = [(radius, tube) for tube in meant]
    pointers: list[Figure] = []
    behind = [f for f in layout.figures[radius.index + 1 :] if f.sentence == radius.sentence]
    for pointer, other in pairwise(behind):
        ahead = layout.text[max(0, pointer.start - _FAR) : pointer.start]
        tube = rest.get(pointer.number.value) if _POINTS.search(ahead) else None
        if tube is not None and other.role in RADIUS_ROLES:
            pointers.append(pointer)
            ties.append((other, tube))
    taken = {f.index for f, _ in ties} | {f.index for f in pointers}
    further = any(f.role in RADIUS_ROLES and f.index not in taken for f in layout.figures)
    each_once = len({tube.index for _, tube in ties}) == len(ties) == len(listed)
    if further or not each_once or len(rest) != len(listed) - len(meant):
        return []
    for pointer in pointers:
        pointer.give("noise", "same")
    return ties
