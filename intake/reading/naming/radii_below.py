"""Figures alone on their lines, and the words above them that make them radii: 'Radii are to
centreline, in mm:', then '50', '62.5', '75'. Without such words they are diameters (``lists``)."""

from __future__ import annotations

from typing import Literal

from ..text.figures import Figure, Layout
from ..text.patterns import whole_words
from ..text.roles import RADII, Role
from ..text.tokens import Token
from .place_tests import is_diameter, is_thin

_HEAD = 24
"""Tokens of the words above a list that are looked at."""
_INCHES = whole_words("inch | inches | zoll | pouces? | pulgadas? | pollic[ei] | in[.:)]")
_MM = whole_words(r"mm | millim\w+")
_OTHERWISE = whole_words(
    "recommend\\w* | smallest | tightest | minimum | min | kleinste\\w* | empf\\w+ | minim[aeo]s?",
    "what",
)
"""'What radii would you recommend for': what stands below is no radius."""


def is_alone(layout: Layout, figure: Figure, *named: Role) -> bool:
    """Whether a diameter without any word stands alone on its line, but for the mark of an item.

    ``named`` are roles that it may have all the same.
    """
    if figure.role not in (None, "od", *named) or not is_diameter(figure) or is_thin(figure):
        return False
    before = layout.tokens[figure.token - 1] if figure.token else None
    if before is not None and before.block == "item":
        before = layout.tokens[figure.token - 2] if figure.token > 1 else None
    after = layout.tokens[figure.token + 1 : figure.token + 2]
    ends = (None, "line", "para")
    return (before.kind if before else None) in ends and (after[0].kind if after else None) in ends


def name_radii_below(layout: Layout) -> None:
    """Each figure of a list below words that name radii is one."""
    run: list[Figure] = []
    for figure in layout.figures:
        if run and not (figure.line == run[-1].line + 1 and is_alone(layout, figure)):
            _name(layout, run)
            run = []
        if run or is_alone(layout, figure, "clr", "radius"):
            run.append(figure)
    _name(layout, run)


def _name(layout: Layout, run: list[Figure]) -> None:
    role = _named_above(layout, run[0]) if len(run) > 1 else None
    if role is None:
        return
    for figure in run:
        figure.give(role, "list")
        figure.unit = figure.unit or _unit_above(layout, run[0])
    for figure in run[1:]:
        figure.link = "list"


def _named_above(layout: Layout, first: Figure) -> Literal["clr", "radius"] | None:
    """The kind of radius that the sentence above a list names, where it names no other length."""
    head = _head(layout, first)
    roles = {cue.role for token in head for cue in token.cues}
    if not head or not roles & {"clr", "radius"} or roles - RADII - {"die"}:
        return None
    before = layout.before(first)
    named = layout.tokens[before.token + 1].cues if before is not None else ()
    if any(cue.role in RADII for cue in named):
        return None  # "all of these on a 4 CLR:"
    if _OTHERWISE.search(layout.words(head[0].start, head[-1].end)):
        return None
    return "clr" if "clr" in roles else "radius"


def _unit_above(layout: Layout, first: Figure) -> str | None:
    head = _head(layout, first)
    words = layout.words(head[0].start, head[-1].end)
    if _MM.search(words):
        return "mm"
    return "in" if _INCHES.search(words) else None


def _head(layout: Layout, first: Figure) -> list[Token]:
    """The last sentence above a list, up to the figure before it."""
    last = first.token - 1
    while last >= 0 and (layout.tokens[last].kind in ("line", "para") or _is_mark(layout, last)):
        last -= 1
    before = layout.before(first)
    begin = max(last - _HEAD, before.token if before is not None else -1) + 1
    sentence = layout.sentence_of[last] if last >= 0 else -1
    return [
        layout.tokens[at] for at in range(begin, last + 1) if layout.sentence_of[at] == sentence
    ]


def _is_mark(layout: Layout, at: int) -> bool:
    return layout.tokens[at].block == "item"
