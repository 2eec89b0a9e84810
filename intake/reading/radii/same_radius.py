"""The radius of a tool that is owned, where the new size is on the same: 'we bought one for 1.25 x
.120 on a 4.5 CLR, now need one for 1.25 x .083, same CLR'."""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import whole_words
from ..text.roles import RADIUS_ROLES

_SAME_RADIUS = whole_words(
    r"(?:the )?same (?:bend |cent(?:er|re) ?line )?(?:radius|clr|rad|bend die|die|former)",
    r"gleiche[rnms]? (?:biege)?radius | selbe[rnms]? radius | demselben radius | même rayon",
    "mismo radio | stesso raggio | zelfde (?:straal|radius|mal)",
)
_BEHIND = 2
_THE_SAME = late_pattern(
    r"\b(?:same|that|gleichen?|selben?|denselben|demselben|dieselben?|mêmes?|mism[oa]|stess[oa]"
    r"|zelfde|dezelfde|hetzelfde)\s(?:r\s?)?$",
    re.IGNORECASE,
)
_AHEAD = 24


def keep_same_radius(layout: Layout) -> None:
    """Keep the one radius that was said of an owned tool, where a later sentence with a tube of its
    own and no radius says 'same radius'; of two such radii neither is kept."""
    radii = [f for f in layout.figures if _is_radius(layout, f)]
    gone = [f for f in radii if f.negated]
    if not gone or len({(f.number.value, f.unit) for f in gone}) > 1:
        return
    for sentence, figures in layout.by_sentence.items():
        if sentence <= gone[0].sentence or any(f in radii for f in figures):
            continue
        tube = any(f.link == "times" and not f.negated for f in figures)
        if tube and layout.says(sentence, _SAME_RADIUS):
            for figure in gone[:1]:
                figure.negated = figure.owned = False
                figure.context_only = True
            return


def hear_same_figure(layout: Layout) -> None:
    """'1-7/8 on a 3" CLR, and 2" on the same 3"': the radius, said again."""
    radii = {(f.number.value, f.unit) for f in layout.figures if f.role in RADIUS_ROLES}
    units = dict(radii)
    for figure in layout.figures:
        value = figure.number.value
        if figure.role is not None or value not in units:
            continue
        ahead = layout.text[max(0, figure.start - _AHEAD) : figure.start]
        if figure.unit in (None, units[value]) and _THE_SAME.search(ahead):
            figure.give("radius", "same")


def _is_radius(layout: Layout, figure: Figure) -> bool:
    own = layout.tokens[figure.token]
    beside = [*layout.tokens_before(figure, 1), *layout.tokens_after(figure, _BEHIND)]
    named = [own, *(token for token in beside if token.number is None)]
    return any(cue.role in RADIUS_ROLES for token in named for cue in token.cues)
