"""The one figure that is left for the one thing that a sentence speaks of.

'The wall I can't measure because the ends are welded shut, I think it's 1.5 mm': however far the
word stands from the number, nothing else in the sentence can be meant.
"""

from __future__ import annotations

from .cue_roles import fits
from .cues import Cue
from .figures import LISTED, Figure, Layout
from .roles import LENGTH_ROLES, RADIUS_ROLES, Role

_NOT_ALONE = frozenset({"od", "id", "label"})
"""'Tube', 'outside' and 'diameter' are said of too many things to be sure from afar."""


def assign_by_sole_cue(layout: Layout) -> None:
    """Give the open figure of a sentence the one role that the sentence names and nothing has."""
    for sentence, figures in layout.by_sentence.items():
        open_figures = [figure for figure in figures if _is_open(figure)]
        if not open_figures or any(f.link not in LISTED for f in open_figures[1:]):
            continue
        role = _sole_role(layout, sentence, figures)
        if role is None or not all(fits(figure, Cue(role)) for figure in open_figures):
            continue
        for figure in open_figures:
            figure.give("times_d" if figure.unit == "D" else role, "cue")


def _is_open(figure: Figure) -> bool:
    return figure.role is None and not figure.negated and figure.is_measured


def _sole_role(layout: Layout, sentence: int, figures: list[Figure]) -> Role | None:
    """The length that the sentence names, if it is one and no figure of the sentence has it."""
    first, last = layout.spans[sentence]
    named = {
        cue.role
        for token in layout.tokens[first : last + 1]
        for cue in token.cues[:1]
        if token.number is None and cue.role in LENGTH_ROLES
    }
    kinds: set[Role] = {"radius" if role in RADIUS_ROLES else role for role in named}
    held = {"radius" if f.role in RADIUS_ROLES else f.role for f in figures if f.role is not None}
    if len(kinds) != 1 or kinds & _NOT_ALONE or kinds & held:
        return None
    return named.pop() if len(named) == 1 else kinds.pop()
