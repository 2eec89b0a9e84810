"""The likeliest reading of a size, and the others that are near enough to ask about."""

from __future__ import annotations

from ..text.roles import Role
from .choices import Choice, Readings, Unit, ranked_choices
from .slips import is_needle, repairs

CLOSE = 1.2
"""A reading within this score of the best is a second plausible one."""
_IMPLAUSIBLE = -2.5
"""A size that scores below this as written is looked at for slips."""


def weigh(readings: Readings, radius_role: Role, habit: Unit | None) -> list[Choice]:
    """All readings of a size, best first. ``habit`` is the unit the message otherwise uses."""
    choices = ranked_choices(readings, radius_role, habit)
    if choices and (choices[0].score <= _IMPLAUSIBLE or choices[0].mixed or is_needle(choices[0])):
        repaired = repairs(choices[0], readings, radius_role, habit)
        choices = sorted([*choices, *repaired], key=lambda choice: -choice.score)
    return choices
