"""One tube told twice because its wall is still open: 'either 38 x 1.5 or 38 x 2, can't decide'.

One mandrel is asked for: the second OD tells the first again, and its wall is the other reading.
"""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from .leaning import LIKELIER
from .one_of_two import settles_on_one

_EITHER = late_pattern(
    rf"\b(?:either|whichever|entweder|soit|bien|ofwel|hetzij|going with|{LIKELIER})\b"
)
_SOIT = late_pattern(r"\W{0,3}(?:soit|ofwel|hetzij|o bien|ou bien)\s(?:(?:en|de)\s)?")


def hear_either_tube(layout: Layout) -> None:
    """Join the wall of such a second tube to that of the first."""
    for second in layout.figures[2:]:
        first, wall = layout.figures[second.index - 2 : second.index]
        other = layout.after(second)
        offered = second.link == "or" or _SOIT.fullmatch(layout.text, wall.end, second.start)
        if (
            not offered
            or other is None
            or other.link != "times"
            or wall.link != "times"
            or first.link == "times"
        ):
            continue
        same = first.number.value == second.number.value and first.unit == second.unit
        behind = layout.after(other)
        alone = behind is None or behind.link not in ("times", "slash", "or", "list")
        walls = (wall.number.value, other.number.value)
        if same and alone and walls[0] != walls[1] and _is_open(layout, second):
            second.give("noise", "same")
            if behind is not None and behind.number.value in walls:
                behind.give("noise", "same")  # "... leaning to the .083", "the 2, most likely"
            other.give("wall", "chain")
            other.link = "or"


def _is_open(layout: Layout, figure: Figure) -> bool:
    """Whether the sentence, or the next, says that one of two will be settled on."""
    words = " ".join(
        layout.sentence_text(at) for at in (figure.sentence, figure.sentence + 1)
        if at < len(layout.spans)
    ).casefold()  # fmt: skip
    return settles_on_one(words) or _EITHER.search(words) is not None
