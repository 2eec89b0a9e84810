"""Dies listed by their radii, and then what is bent on each: 'two dies, R100 and R150. On R100 we
bend 40 x 2 and 42 x 2, on R150 60 x 2'. The second time each opens the tubes behind it."""

from __future__ import annotations

from collections.abc import Sequence

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.roles import RADIUS_ROLES

_ON = late_pattern(
    r"\b(?:on|auf|mit|sur|avec|en|con|su|sul|sulla|op|met|with)\s"
    r"(?:(?:the|der|dem|den|die|le|la|les|el|il|lo|de|het|r)\s?){0,2}$"
)
_BACK = 16


def hear_dies_then_tubes(layout: Layout) -> None:
    """Say of the radii of such a list that they only repeat what stands behind."""
    for figures in layout.by_sentence.values():
        dies = [figure for figure in figures if figure.role in RADIUS_ROLES]
        if len(dies) < 2 or len(dies) != len(figures):
            continue
        again = [_again(layout, die, dies[-1]) for die in dies]
        found = [figure for figure in again if figure is not None]
        if len(found) < len(dies) or len({f.index for f in found}) < len(dies):
            continue
        if not all(_opens_tube(layout, figure) for figure in found):
            continue
        for die, figure in zip(dies, found, strict=True):
            figure.give(die.role, "same")
            die.give("noise", "same")
        return


def _again(layout: Layout, die: Figure, last: Figure) -> Figure | None:
    """The one figure behind the list that says a die's radius again, 'on' before it."""
    found = [
        figure
        for figure in layout.figures[last.index + 1 :]
        if figure.number.value == die.number.value
        and (figure.role is None or figure.role in RADIUS_ROLES)
        and _ON.search(layout.words(max(0, figure.start - _BACK), figure.start))
    ]
    return found[0] if len(found) == 1 else None


def _opens_tube(layout: Layout, figure: Figure) -> bool:
    """Whether a tube, 'OD x wall', is the next thing behind."""
    behind: Sequence[Figure] = layout.figures[figure.index + 1 : figure.index + 3]
    return len(behind) == 2 and behind[1].link == "times" and behind[0].link != "times"
