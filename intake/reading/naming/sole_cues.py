"""The one figure that is left for the one thing that a sentence speaks of.

'The wall I can't measure because the ends are welded shut, I think it's 1.5 mm': however far the
word stands from the number, nothing else in the sentence can be meant.
"""

from __future__ import annotations

from ..text.cues import Cue
from ..text.figures import LISTED, Figure, Layout
from ..text.roles import LENGTH_ROLES, RADIUS_ROLES, Role
from .cue_fits import fits
from .leftovers import is_said_of_tube
from .place_tests import is_diameter, is_thin

_NOT_ALONE = frozenset({"od", "id", "label"})
"""'Tube', 'outside' and 'diameter' are said of too many things to be sure from afar."""

_CLAUSE_ENDS = frozenset(
    {",", ";", ".", ":", "but", "and", "und", "et", "y", "e", "en", "if", "when"}
)


def assign_by_sole_cue(layout: Layout) -> bool:
    """Give the open figure of a sentence the one role that the sentence names and nothing has.

    True where a figure has been given one.
    """
    given = False
    for sentence, figures in layout.by_sentence.items():
        open_figures = [figure for figure in figures if _is_open(figure)]
        if not open_figures or any(f.link not in LISTED for f in open_figures[1:]):
            continue
        role = _sole_role(layout, sentence, figures, open_figures[0])
        if role is None:
            role = _role_of_clause(layout, figures, open_figures[0])
        if role is None and _are_tubes(layout, sentence, figures, open_figures):
            for figure in open_figures:
                figure.give("od", "place")
            if len(open_figures) == 1 and not is_said_of_tube(layout, open_figures[0]):
                open_figures[0].notes.append("taken for the OD, though no word says what it is")
            given = True
            continue
        if role is None or not all(fits(figure, Cue(role)) for figure in open_figures):
            continue
        for figure in open_figures:
            figure.give("times_d" if figure.unit == "D" else role, "cue")
        given = True
    return given


def _are_tubes(
    layout: Layout, sentence: int, figures: list[Figure], open_figures: list[Figure]
) -> bool:
    """'I run three tubes on the light bars: inch and a quarter and inch and a half': nothing but
    diameters in a sentence on tubes, before any OD was named."""
    first, last = layout.spans[sentence]
    roles = {cue.role for token in layout.tokens[first : last + 1] for cue in token.cues[:1]}
    tubes = "label" in roles and roles <= {"label", "quantity"}
    return (
        tubes
        and all(
            is_diameter(figure) and not is_thin(figure) and figure.unit != "D"
            for figure in open_figures
        )
        and not any(
            figure.role in ("od", "id", "nps") for figure in layout.figures[: figures[-1].index + 1]
        )
    )


def _is_open(figure: Figure) -> bool:
    return figure.role is None and not figure.negated and figure.is_measured


def _role_of_clause(layout: Layout, figures: list[Figure], figure: Figure) -> Role | None:
    """'..., épaisseur 2,5 mm, rayon à la ligne neutre 135 mm': the one length that is named
    between the figure before and this one, where nothing else of the sentence has it."""
    before = layout.before(figure)
    first = layout.spans[figure.sentence][0]
    if before is not None and before.sentence == figure.sentence:
        first = before.token + 1
    named: list[Role] = []
    for token in layout.tokens[first : figure.token]:
        cue = next((cue for cue in token.cues if cue.side != "after"), None)
        if cue is not None and cue.role in LENGTH_ROLES:
            named.append(cue.role)
        elif named and (cue is not None or token.text in _CLAUSE_ENDS or token.kind == "para"):
            return None
    if len(named) != 1 or named[0] in _NOT_ALONE:
        return None
    kind = "radius" if named[0] in RADIUS_ROLES else named[0]
    held = {"radius" if f.role in RADIUS_ROLES else f.role for f in figures if f.role is not None}
    return named[0] if kind not in held else None


def _sole_role(layout: Layout, sentence: int, figures: list[Figure], figure: Figure) -> Role | None:
    """The length that the sentence names before the figure, if it is one and no figure has it."""
    first, last = layout.spans[sentence]
    named: set[Role] = set()
    for index in range(first, last + 1):
        token = layout.tokens[index]
        cue = next((cue for cue in token.cues if cue.role in LENGTH_ROLES), None)
        if token.number is not None or cue is None:
            continue
        if index > figure.token or cue.side == "after":
            return None  # "2 inch round, center": the radius is left out
        named.add(cue.role)
    kinds: set[Role] = {"radius" if role in RADIUS_ROLES else role for role in named}
    held = {"radius" if f.role in RADIUS_ROLES else f.role for f in figures if f.role is not None}
    if len(kinds) != 1 or kinds & _NOT_ALONE or kinds & held:
        return None
    return named.pop() if len(named) == 1 else kinds.pop()
