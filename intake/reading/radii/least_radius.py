"""The least radius that a drawing allows, where another is told that the sender bends to: 'min bend
radius 1.5 CL per print; we bend at 1.75'. The first is no bend of its own."""

from __future__ import annotations

from decimal import Decimal

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of

_RADIUS = r"(?:bend(?:ing)? |biege)?(?:radius|radii|rad|r|clr|bend)"
_LEAST = late_pattern(
    r"\b"
    + any_of(
        rf"(?:min(?:imum)?\.?|smallest|tightest|least)(?: allow(?:ed|able)| permitted)? {_RADIUS}",
        rf"{_RADIUS} min(?:imum)?\.? | mindest(?:biege)?radius | kleinste[rn]? {_RADIUS}",
        r"rayon (?:de cintrage )?min(?:i|imum|imal)? | rayon minimal de cintrage",
        r"radio (?:de curvado |de doblado )?m[íi]nimo | raggio (?:di curvatura )?minimo",
        rf"(?:minimale|kleinste) (?:buig)?(?:straal|{_RADIUS})",
    )
    + r"(?: (?:is|of|per|to|as|laut|selon|según|da|volgens|nach|[a-z]{3,10}|=|:)){0,4}[ :=]*$"
)
_BENT_AT = late_pattern(
    r"\b"
    + any_of(
        r"(?:we|i|we'll|i'll|we're|i'm)(?: \w+){0,3}? (?:bend|run|go|use|do)(?:ing)?"
        r"(?: (?:it|them|this|these))?(?: (?:at|to|on|with|a|an|for))*",
        r"(?:will be|gets|is being|to be) bent(?: (?:at|to|on|with|a|an))*",
        r"biegen (?:wir|ich)? ?(?:ihn |es |das )?(?:mit|auf|um|nach)?",
        r"(?:wir|ich) biegen?(?: (?:ihn|es|das))?(?: (?:mit|auf|um))?",
        r"(?:on|nous|je) (?:le |les )?cintr\w+(?: (?:à|au|sur))?",
        r"(?:lo |los )?(?:dobl|curv)(?:amos|aremos|o)(?: (?:a|con|en))?",
        r"(?:lo |li )?(?:pieg|curv)(?:hiamo|iamo|heremo|o)(?: (?:a|con|su))?",
        r"(?:wij|we|ik) buig(?:en)?(?: (?:het|ze|hem))?(?: (?:op|met|naar|om))?",
    )
    + r"(?: r)?[ :=]*$"
)
_FAR = 48
_MOST = Decimal(3)
"""So many times the least radius may the one be that is bent."""


def set_least_radius_aside(layout: Layout) -> None:
    """Say of a least radius that it measures nothing, where the sender's own is told too."""
    if len(layout.figures) < 2:
        return
    least = [figure for figure in layout.figures if _LEAST.search(_ahead(layout, figure))]
    if len(least) != 1:
        return
    allowed = least[0]
    for figure in layout.figures:
        bent = figure is not allowed and figure.unit in (allowed.unit, None, "in", "mm")
        bent = bent and allowed.number.value < figure.number.value < allowed.number.value * _MOST
        if bent and not figure.is_gauge and _BENT_AT.search(_ahead(layout, figure)):
            allowed.give("noise", "cue")
            before = layout.figures[allowed.index - 1] if allowed.index else None
            if before is not None and "limit" in before.notes:
                before.notes.remove("limit")  # "42.4 x 2.6, minimum radius 85"
            return


def _ahead(layout: Layout, figure: Figure) -> str:
    before = layout.figures[figure.index - 1].end if figure.index else 0
    begin = max(before, figure.start - _FAR, layout.sentence_start(figure.sentence))
    return " ".join(layout.words(begin, figure.start).casefold().split()) + " "
