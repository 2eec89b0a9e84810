"""A radius before its word and the bend's angle behind it: '3.75" centerline 90', '4.5 CLR 180'."""

from __future__ import annotations

from decimal import Decimal

from ..text.figures import Figure, Layout
from ..text.roles import LENGTH_ROLES, NOMINAL_ROLES, RADIUS_ROLES, Role

_ANGLES = frozenset(
    Decimal(angle) for angle in "15 20 22.5 30 45 60 75 90 105 110 120 135 150 180".split()
)
_SMALLEST = Decimal("0.75")
"""A radius is at least so many times the largest figure of its tube; a wall never is."""
_NEARLY = 8
"""An angle that is no more than so many times the radius could be one itself."""
_OF_TUBES = (LENGTH_ROLES - RADIUS_ROLES) | NOMINAL_ROLES | {"label", "side"}
_EITHER = "two figures stand beside the word for the radius"


def set_angles_aside(layout: Layout) -> None:
    """Say of an angle behind the word for the radius that it is no length; heard before that
    word is given to a figure."""
    named = False
    largest = Decimal(0)
    for figure in layout.figures:
        before = layout.before(figure)
        cued = _is_after_radius_word(layout, before, figure)
        if cued and not named and before is not None and _is_angle(layout, figure):
            free = largest and before.link != "times" and not _is_named(layout, before)
            if free and before.number.value >= largest * _SMALLEST:
                figure.give("noise", "cue")
                before.give(_role_between(layout, before, figure), "cue")
                if before.unit is None and figure.number.value < before.number.value * _NEARLY:
                    before.notes.append(_EITHER)
        named = named or cued
        if before is not None and before.is_measure and not cued:
            largest = max(largest, before.number.value)


def _is_after_radius_word(layout: Layout, before: Figure | None, figure: Figure) -> bool:
    """Whether nothing but a word for the radius stands between two figures."""
    if before is None or before.sentence != figure.sentence:
        return False
    between = layout.between(before, figure)
    return bool(between) and all(
        any(cue.role in RADIUS_ROLES for cue in token.cues) and token.number is None
        for token in between
    )


def _role_between(layout: Layout, before: Figure, figure: Figure) -> Role:
    """What the words between the two say of the first."""
    cues = [cue for token in layout.between(before, figure) for cue in token.cues]
    return next(cue.role for cue in cues if cue.role in RADIUS_ROLES)


def _is_angle(layout: Layout, figure: Figure) -> bool:
    if figure.unit is not None or figure.number.value not in _ANGLES:
        return False
    following = layout.after(figure)
    return following is None or following.link != "times"


def _is_named(layout: Layout, figure: Figure) -> bool:
    """Whether a word or sign right before the figure says what it is: 'OD 63.5 CLR 95'."""
    if layout.tokens[figure.token].cues:
        return True
    ahead = layout.tokens_before(figure, 2)
    cues = [cue for token in ahead for cue in token.cues]
    named = any(cue.role in _OF_TUBES for cue in cues)
    return named or any(token.text == "=" for token in ahead)
