"""'Das Rohr ist 25 mm dick mit 1,5 mm Wand': thick is what a tube is across, where a wall is told
beside it."""

from __future__ import annotations

from decimal import Decimal

from ...late_pattern import late_pattern
from ..aside.phrases_beside import UNIT
from ..text.figures import Layout

_THICK = late_pattern(UNIT + r"(?:thick|dick|stark|épais|épaisse|de grueso|spesso|dik)\b")
_LEAST = Decimal(8)
"""mm: no wall of a tube to be bent is thicker (common practice, no source)."""
_THIN = Decimal("0.25")


def hear_thick_tubes(layout: Layout) -> None:
    """Make an OD of a 'wall' that is too thick for one, where its sentence has another wall."""
    for figure in layout.figures:
        if figure.role != "wall" or figure.unit not in (None, "mm") or figure.row is not None:
            continue
        if figure.negated or figure.number.value < _LEAST:
            continue
        near = layout.near_in_sentence(figure)
        thinner = [
            other
            for other in near
            if other.role == "wall" and other.number.value <= figure.number.value * _THIN
        ]
        behind = layout.text[figure.end : figure.end + 16].replace("\n", " ").casefold()
        if thinner and not any(f.role in ("od", "id") for f in near) and _THICK.match(behind):
            figure.give("od", "cue")
