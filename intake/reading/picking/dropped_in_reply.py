"""Sizes of another mail's list that a reply strikes out by their figures: 'then drop the 25 x 2,
please offer only the other one'.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from ..sizes.groups import Group
from .by_rank import having, length_of
from .dropped_words import strikes_out, without_leaving_out
from .named_later import ALL_THE_SAME

_NUMBER = re.compile(
    r"(?<![\w.,/])(?P<times>[x×]\s?)?"
    r"(?P<figure>(?:\d{1,2}[ -])?\d{1,2}/\d{1,2}|\d{0,3}[.,]?\d{1,3})"
    r"(?![\w/]|[.,]\d)"
)
_SENTENCE = re.compile(r"(?<=[.!?;])\s|\n\s*\n|,\s(?=(?:just|only|please|bitte|nur|and|und)\s)")


def left_by_reply(told: str, groups: Sequence[Group]) -> list[int]:
    """Indexes of the sizes that the reply does not strike out; all where that isn't plain."""
    everything = list(range(len(groups)))
    gone: set[int] = set()
    for sentence in _SENTENCE.split(told.casefold().replace("’", "'")):
        words = " ".join(sentence.split())
        holes = _NUMBER.sub(lambda m: ("x " if m["times"] else "") + "#", words)
        if (
            "?" in words
            or not strikes_out(holes)
            or ALL_THE_SAME.search(without_leaving_out(holes))
        ):
            continue
        for match in _NUMBER.finditer(words):
            if match["times"]:
                continue
            found = having(groups, "od", length_of(match["figure"]))
            if len(found) != 1:
                return everything
            gone |= set(found)
    return [index for index in everything if index not in gone] or everything
