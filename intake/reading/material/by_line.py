"""Materials in a list of one size a line: a heading is of the lines below it ('STAINLESS' over
three sizes), a remark is of its own line ('(this one in aluminium)'), and what is said apart from
the lines is of every line that has none."""

from __future__ import annotations

from collections.abc import Sequence

from ..sizes.groups import Group, own_figures
from ..text.figures import Layout
from .materials import MaterialMention

_MOST_WORDS = 9
"""So many words a heading has at most: 'For the stainless job:'."""


def materials_by_line(
    layout: Layout, groups: Sequence[Group], mentions: Sequence[MaterialMention]
) -> dict[int, list[MaterialMention]]:
    """The materials of each size, by its number; empty where the sizes are no such list, or where
    the lines leave it open."""
    lines = _lines_of_sizes(groups)
    at = {token.start: layout.line_of[number] for number, token in enumerate(layout.tokens)}
    if lines is None or any(mention.start not in at for mention in mentions):
        return {}
    own: dict[int, list[MaterialMention]] = {line: [] for line in lines}
    apart: dict[int, list[MaterialMention]] = {}
    for mention in mentions:
        line = at[mention.start]
        (own[line] if line in own else apart.setdefault(line, [])).append(mention)
    headings = [line for line in apart if _is_heading(layout, line, lines, apart[line])]
    # One heading is said of all: it is what the lines without a remark take over.
    if len({apart[line][0].family for line in headings}) < 2:
        headings = []
        if not any(own.values()) or len({m.family for said in apart.values() for m in said}) != 1:
            return {}
    elif min(headings) > min(lines):
        return {}
    of_all = [mention for said in apart.values() for mention in said]
    return {
        number: own[line] or (apart[max(h for h in headings if h < line)] if headings else of_all)
        for number, line in enumerate(lines)
    }


def _lines_of_sizes(groups: Sequence[Group]) -> list[int] | None:
    """The line of each size; None where one has figures of its own on several lines, or shares its
    line with another."""
    lines: list[int] = []
    for group in groups:
        own = {figure.line for figure in own_figures(group)}
        if len(own) != 1:
            return None
        lines += own
    return lines if len(set(lines)) == len(lines) > 1 else None


def _is_heading(
    layout: Layout, line: int, lines: Sequence[int], said: Sequence[MaterialMention]
) -> bool:
    """Whether a line says little more than a material, right above the line of a size."""
    below = min((other for other in layout.line_of if other > line), default=line)
    words = [token for token, of in zip(layout.tokens, layout.line_of, strict=True) if of == line]
    return (
        below in lines
        and len(words) <= _MOST_WORDS
        and len({mention.family for mention in said}) == 1
    )
