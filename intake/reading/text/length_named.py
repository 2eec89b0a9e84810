"""The one length that a few words name: wall, OD or radius."""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from .roles import Role

_NAMES: tuple[tuple[Role, re.Pattern[str]], ...] = (
    (
        "wall",
        late_pattern(
            r"\b(?:walls?(?: thickness)?|thickness|wand\w*|épaisseur|paroi|pared|espesor|spessore"
            r"|parete|wanddikte)\b"
        ),
    ),
    (
        "od",
        late_pattern(
            r"\b(?:od|o\.d\.|diameter|(?:außen)?durchmesser|diamètre|diámetro|diametro)(?!\w)"
        ),
    ),
    ("radius", late_pattern(r"\b(?:(?:biege)?radius|clr|rayon|radio|raggio|straal)\b")),
)


def length_named(words: str) -> Role | None:
    """The role that casefolded words name, where they name one alone."""
    named = [role for role, pattern in _NAMES if pattern.search(words)]
    return named[0] if len(named) == 1 else None
