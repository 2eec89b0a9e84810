"""The type of copper water tube beside its size: 'type L' says the wall (ASTM B88)."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import whole_words

COPPER_TYPES = {letter: f"copper, type {letter}" for letter in "KLM"}
"""A figure's notes that say of which type the tube is."""
_COPPER = whole_words("copper")
_NAMED = late_pattern(r"\btypes?\s([klm])\b|\b([klm])[ -]copper\b|\bcopper\s([klm])\b")
_DRAINAGE = whole_words("dwv | drainage")
"""Tube with a wall of its own (ASTM B306), whatever else is said."""
_BESIDE = late_pattern(r"^[\W\s]{0,3}([klm])\b")
_FAR = 30


def note_type(layout: Layout, figure: Figure) -> None:
    """Mark a tube's OD or trade size with the one type that is named beside it or anywhere."""
    if not layout.says_anywhere(_COPPER) or layout.says_anywhere(_DRAINAGE):
        return
    text = layout.text.casefold()
    behind = text[figure.end : figure.end + _FAR]
    beside = _BESIDE.match(behind) if layout.says(figure.sentence, _COPPER) else None
    named = {next(filter(None, found.groups())) for found in _NAMED.finditer(text)}
    if beside is not None:
        named = {beside[1]}
    elif len(named) > 1:
        named = {next(filter(None, found.groups())) for found in _NAMED.finditer(behind)}
    if len(named) == 1:
        figure.notes.append(COPPER_TYPES[named.pop().upper()])
