"""ODs that are said of the mandrels and not of the tubes: 'mandriles de 20, de 25 y de 30', 'do you
have 2-1/4" mandrels?'."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.figures import LISTED, Figure, Layout
from ..text.roles import NOMINAL_ROLES, RADIUS_ROLES, Role
from .place_tests import is_diameter, is_thin

_MANDRELS_OF = late_pattern(
    r"\b(?:mandrels?|(?:biege|rohr)?dorne?s?|mandrins?|mandrin[io]|mandril(?:es)?|(?:buig)?doorn(?:en)?)"
    r"\s(?:de|da|di|du|von|van|für|for|pour|para|per|voor)\s"
    r"(?:(?:tubes?|tubos?|tubi|rohre?|buis|buizen)\s(?:de|da|von|van)?\s?)?$"
)
_MANDREL_BEHIND = late_pattern(
    r"^[\s\"'-]{0,2}(?:(?:ball|plug|bending|hard)\s)?(?:mandrels?|(?:biege)?dorne?|doorn(?:en)?)\b"
)
_LEAD = 40
_TUBE_ROLES: frozenset[Role] = frozenset({"od", "id", "side", "dash", *NOMINAL_ROLES})
_OPEN: frozenset[Role | None] = frozenset({None, "quantity", "label"})


def hear_mandrels_for(layout: Layout) -> None:
    """Where no tube's OD is told: what follows 'mandrels for' is one, with the list it opens."""
    measures = [figure for figure in layout.figures if figure.is_measure]
    roles = {figure.role for figure in measures} | {figure.role for figure in layout.earlier}
    if roles & _TUBE_ROLES or not (roles & RADIUS_ROLES or "wall" in roles):
        return
    first = next((figure for figure in measures if _is_of_mandrels(layout, figure)), None)
    if first is None:
        return
    run = [first]
    while (after := layout.after(run[-1])) is not None and after.link in LISTED and _may_be(after):
        run.append(after)
    for figure in run:
        figure.give("od", "list" if len(run) > 1 else "place")
    by_tube = first.unit == "in" and first.number.value * 8 % 1 == 0
    if len(run) == 1 and not by_tube:  # a mandrel "of 2-1/2 in" goes by its tube
        first.notes.append("taken for the OD, though no word says what it is")


def _is_of_mandrels(layout: Layout, figure: Figure) -> bool:
    if not _may_be(figure):
        return False
    ahead = layout.words(max(0, figure.start - _LEAD), figure.start)
    behind = layout.words(figure.end, figure.end + _LEAD)
    called = figure.unit is not None and _MANDREL_BEHIND.match(behind) is not None
    return called or _MANDRELS_OF.search(ahead) is not None


def _may_be(figure: Figure) -> bool:
    if figure.role not in _OPEN or figure.negated or figure.unit not in (None, "mm", "in"):
        return False
    return is_diameter(figure) and not is_thin(figure)
