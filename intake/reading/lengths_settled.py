"""Each size of one part of a message with its figures: lengths, cross-section and doubts only."""

from __future__ import annotations

import re

from ...rules.request import SizeRequest
from .naming.shapes import shape_around, tube_is_round
from .sizes.groups import Group
from .sizes.settle import Settler
from .stretch import Stretch
from .text.figures import Layout
from .thread.quoted import Relied

_NEXT_ITEM = re.compile(r"[;\n]")
"""Behind it the next size begins: '22 x 0.8, R 65; oval tube 30 x 16'."""
_TOKENS_BESIDE = 4
"""So near to its figures a cross-section is named: '2 in square tube'."""
_BEHIND = 24
"""Characters behind it in which it is taken back: 'square? no, round'."""


def settled(stretch: Stretch, relied: Relied | None = None) -> list[tuple[Group, SizeRequest]]:
    """Each size of one part with the figures it is made of; lengths and their doubts only."""
    settler = Settler(stretch.original, stretch.plain, stretch.unit, stretch.offset)
    found: list[tuple[Group, SizeRequest]] = []
    for group in stretch.groups:
        if group.shape is None:
            group.shape = _shape_of(stretch.layout, group)
        request = settler.settle(relied.with_tube(group) if relied is not None else group)
        if request is not None:
            found.append((group, request))
    # A stray wall or radius beside a whole size asks for no tube of its own.
    whole = [(g, r) for g, r in found if g.has_tube or g.shape]
    # "Radius 50 and 75, the rest stays": two requests for the quoted tube.
    radii = [(g, r) for g, r in found if r.od_mm is not None and "clr" in g.slots]
    return whole or radii or found[:1]


def _shape_of(layout: Layout, group: Group) -> str | None:
    """'2 in square tube': a cross-section named right beside the OD."""
    anchor = group.anchor
    if anchor is None:
        return None
    own = [f for slot, fs in group.slots.items() if slot not in group.shared for f in fs]
    last = max(own or [anchor], key=lambda figure: figure.token)
    begin, end = layout.spans[anchor.sentence]
    first_token = layout.tokens[max(anchor.token - _TOKENS_BESIDE, begin, 0)]
    last_token = layout.tokens[min(last.token + _TOKENS_BESIDE, end)]
    text = layout.text
    following = layout.after(last)
    if following is not None and following.shape is not None:
        last_token = layout.tokens[last.token]  # "..., and square tube 2 x 2": that is the next
    shape = shape_around(
        text[min(first_token.start, anchor.start) : anchor.start],
        text[anchor.start : last.end],
        _NEXT_ITEM.split(text[last.end : last_token.end], maxsplit=1)[0],
        text[last_token.end : last_token.end + _BEHIND],
    )
    return None if shape is not None and tube_is_round(text) else shape
