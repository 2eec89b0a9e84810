"""Radii behind the tubes they are for, all under one word: 'Radius beim 18er 36, beim 22er 55',
'rayon pour le 18 : 36, pour le 22 : 55'.

Only for tubes that stand elsewhere in the message: the word that ties makes no tube.
"""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..text.figures import Figure, Layout
from ..text.patterns import any_of
from ..text.roles import RADIUS_ROLES, Role

_FOR = late_pattern(
    r"\b(?:beim?|für|pour|para|per|voor|bij|for|with|mit|avec|con|met)\s"
    r"(?:(?:das|den|die|dem|der|le|la|les|el|los|il|lo|de|het|the|tube|tubo|rohr|buis)\s){0,3}"
    r"(?:(?:de|da|von|van)\s)?$"
)
_IS = late_pattern(
    r"^(?:er)?\s?(?:mm\b)?\s?(?:rohr|tube|tubo|buis)?\s?"
    + any_of(": | = | ist(?: er)? | is(?: it)? | est | es | è | sind | beträgt | -")
    + r"?\s?$"
)
_NAMED = late_pattern(
    r"\b(?:\w*radius|\w*radien|radii|rayons?|radios?|ragg[io]|\w*straal|\w*stralen)\b[^.;\d]{0,24}$"
)
_BACK = 48
_TUBE: tuple[Role | None, ...] = (None, "od", "label")


def hear_tied_ahead(layout: Layout) -> None:
    """Give each such figure the role of a radius."""
    for figures in layout.by_sentence.values():
        named = False
        for at in range(len(figures) - 1):
            tube, radius = figures[at], figures[at + 1]
            begin = max(layout.sentence_start(tube.sentence), tube.start - _BACK)
            ahead = layout.words(begin, tube.start)
            named = named or _NAMED.search(ahead) is not None
            if named and _FOR.search(ahead) and _is_pair(layout, tube, radius):
                radius.give("radius", "cue")
                radius.link = "apart"


def _is_pair(layout: Layout, tube: Figure, radius: Figure) -> bool:
    after = layout.after(radius)
    if tube.role not in _TUBE or radius.role is not None or tube.is_gauge or radius.is_gauge:
        return False
    if radius.link == "times" or (after is not None and after.link == "times"):
        return False
    if _IS.match(layout.words(tube.end, radius.start)) is None:
        return False
    return tube.number.value < radius.number.value * 2 and any(
        other.number.value == tube.number.value and other.role not in RADIUS_ROLES
        for other in layout.figures
        if other is not tube
    )
