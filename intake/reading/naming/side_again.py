"""The side of a box that is only named again to tell how it is bent: '50 x 30 x 3, bent on the flat
(so the 30 mm is in the plane of the bend)'."""

from __future__ import annotations

from decimal import Decimal

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout

_PLANE = late_pattern(
    r"\b(?:plane|flat|edge|easy way|hard way|upright|inside of the bend|outside of the bend"
    r"|\w*ebene|flach|hochkant|liegend|stehend|plan|à plat|chant|plano|canto|piano|piatto|costa"
    r"|coltello|\w*vlak|plat|kant|hoogkant)\b"
)
_FAR = 60


def join_sides(layout: Layout) -> None:
    """A figure that repeats a side, and behind which stands how that side lies."""
    sides: set[Decimal] = set()
    for figure in layout.figures:
        if figure.shape:
            sides.add(figure.number.value)
        elif figure.number.value in sides and _is_alone(layout, figure):
            behind = layout.words(figure.end, figure.end + _FAR)
            if _PLANE.search(behind.split(")")[0].split(".")[0]):
                figure.give("noise", "same")


def _is_alone(layout: Layout, figure: Figure) -> bool:
    after = layout.after_in_sentence(figure)
    return figure.link != "times" and (after is None or after.link != "times")
