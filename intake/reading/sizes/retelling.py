"""Whether a figure tells again what another has told: in another form, doubted, carried over."""

from __future__ import annotations

from collections.abc import Sequence

from ..naming.likeness import nearly
from ..text.figures import LISTED, Figure, Layout
from ..text.patterns import whole_words
from ..text.roles import NOMINAL_ROLES, RADIUS_ROLES
from .groups import Group, Slot

_WHICH_ONE = whole_words(
    r"small | big | petit | gros | grand | kleine\w* | große\w* | pequeño | grande | piccolo",
    "grote | large | first | second | other | larger | smaller | bigger | latter",
)
_NAMED_WALLS = frozenset({"ga", "bwg", "swg", "sch"})
_BEHIND = 40
"""Characters behind the last figure of a list in which 'the big one' stands."""


def is_other_form(slot: Slot, figure: Figure, held: Sequence[Figure]) -> bool:
    """The radius as '2D' beside the radius as a length, a gauge beside its wall, 'DN 40' its OD.

    ``held`` are the figures that the slot has already.
    """
    if slot == "clr":
        # As a length and as a multiple of D, once each.
        multiple = figure.role == "times_d"
        return not any((other.role == "times_d") == multiple for other in held)
    if slot == "wall":
        named = figure.unit in _NAMED_WALLS
        return named != any(other.unit in _NAMED_WALLS for other in held)
    if slot == "od":
        return (figure.role in NOMINAL_ROLES) != any(o.role in NOMINAL_ROLES for o in held)
    return False


def was_carried_over(group: Group, slot: Slot, figure: Figure) -> bool:
    """'.083 wall on 4 CLR, .120 wall on 6 CLR': the 4 was only carried over to the second."""
    return slot in group.shared and any(
        own.line == figure.line and own.sentence == figure.sentence
        for other, figures in group.slots.items()
        if other not in group.shared
        for own in figures
    )


def is_perhaps(group: Group, slot: Slot, figure: Figure) -> bool:
    """'Schedule forty I believe, although it could be schedule ten': one value in doubt."""
    held = group.slots.get(slot)
    same = held is not None and held[-1].sentence == figure.sentence
    return same and "hedged" in figure.notes


def contradicts(groups: Sequence[Group], slot: Slot, figure: Figure) -> bool:
    """'The tag says 1-7/8, my caliper 48 mm': one OD in two nearly equal values, nothing of the
    tube told in between."""
    if slot != "od" or any(set(group.slots) != {"od"} for group in groups):
        return False
    held = groups[-1].slots["od"][-1]
    if figure.sentence != held.sentence or figure.link in LISTED or figure.link == "times":
        return False
    return nearly(held, figure)


def says_which(layout: Layout, run: list[Figure]) -> bool:
    """'1-1/8 on the small one and 1-1/2 on the big one' says which goes with which."""
    between = layout.words(run[0].end, run[-1].start + _BEHIND)
    return _WHICH_ONE.search(between) is not None


def is_other_kind(held: Figure, figure: Figure) -> bool:
    """'R 55 inside' put right as 'R 55 is to the axis': one number, another radius."""
    return held.role in RADIUS_ROLES and held.role != figure.role
