"""An OD pointed at from its wall, or from its die: '.095 goes with the 1.75', 'my die is 1.5
tube'."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from .place_tests import is_diameter, is_thin

_GOES_WITH = late_pattern(
    r"^\W{0,3}(?:in(?:ch)?|mm)?\s?(?:wall\s)?"
    r"(?:goes with|belongs to|is for|is on|with|for|on|gehört zu|ist für|für|beim|zum|va con"
    r"|va avec|pour|con|para|per|hoort bij|voor|bij)\s"
    r"(?:the|our|my|das|dem|den|die|le|la|el|il|lo|de|het)?\s?$"
)
_ENDS = late_pattern(
    r"^\W{0,3}(?:in(?:ch)?|mm|er)?\s?(?P<tube>tub(?:e|ing)|pipe|od|rohr|tubo|buis)?\s?(?:$|[.,;)\n]"
    r"|(?:and|und|et|y|e|en)\b)"
)
_PLAINLY = late_pattern(r"\b(?:wall|goes with|belongs to|gehört|va con|va avec|hoort)\b")
_DIE_BEFORE = late_pattern(
    r"\b(?:dies?|die set|former|shoe|bend die|matrize|biegeform|matrice|matriz|matrijs)\b"
    r"(?:\s(?:is|are|says|marked|stamped|for|ist|für|est|pour|es|para|è|per|voor|a|an|eine?|ein|:)){0,3}"
    r"\s$"
)
_TUBE_BEHIND = late_pattern(
    r"^[\s\"'-]{0,2}(?:mm|in(?:ch)?|er)?\s?(?:tub(?:e|ing)|pipe|rohr|tubo|buis)\b"
)
_LEAD = 40


def hear_walls_of(layout: Layout) -> None:
    """Give the OD its role where a wall, or a die, points at it."""
    sure: set[int] = set()
    for figure in layout.figures:
        if figure.role is not None or figure.negated or not _may_be_od(layout, figure):
            continue
        behind = layout.words(figure.end, figure.end + _LEAD)
        before = layout.before(figure)
        if before is not None and before.sentence == figure.sentence and is_thin(before):
            joint = layout.words(before.end, figure.start)
            own = _has_tube_before(layout, before)
            if not own and _GOES_WITH.match(joint) and (end := _ENDS.match(behind)):
                plain = end["tube"] or _PLAINLY.search(joint) or figure.sentence in sure
                again = any(
                    f.number.value == figure.number.value for f in layout.figures[: before.index]
                )
                if again or not plain:
                    continue
                sure.add(figure.sentence)
                figure.give("od", "cue")
                if before.role is None and not before.negated:
                    before.give("wall", "cue")
                continue
        ahead = layout.words(max(0, figure.start - _LEAD), figure.start)
        if _DIE_BEFORE.search(ahead) and _TUBE_BEHIND.match(behind):
            figure.give("od", "cue")


def _has_tube_before(layout: Layout, wall: Figure) -> bool:
    """'.75 in .049 wall on 1.5 and 2.5 CLR dies': the wall is that of the tube right before it."""
    tube = layout.before(wall)
    if tube is None or tube.sentence != wall.sentence or not is_diameter(tube) or is_thin(tube):
        return False
    between = layout.between(tube, wall)
    plain = (
        t.kind in ("gap", "times", "material") or any(cue.role == "od" for cue in t.cues)
        for t in between
    )
    return tube.is_measured and all(plain)


def _may_be_od(layout: Layout, figure: Figure) -> bool:
    if layout.tokens[figure.token].cues or figure.unit not in (None, "mm", "in"):
        return False
    return is_diameter(figure) and not is_thin(figure)
