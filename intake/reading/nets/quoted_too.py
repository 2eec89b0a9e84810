"""A net: a reply that adds a size to the quoted one, and of which only the new one was read.

'Could you add one more of these but for the .083 wall? So the .065 and the .083, one of each.'
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from ....rules.request import SizeRequest
from ...late_pattern import late_pattern
from ..requests import wholly_doubted
from ..text.figures import Figure, Layout
from ..text.patterns import whole_words

_AND = late_pattern(
    r"\W{0,3}(?:mm|in|inch|wall|clr|od|radius|wand|paroi|pared|spessore)?\W{0,2}\b(?:and|und|et|y"
    r"|e|en|plus|besides"
    r"|beside|neben|zusätzlich zu)\b\W{0,2}(?:(?:for|the|der|die|das|den|dem|für|le|la|el|il|de"
    r"|voor|r)\W{1,2}){0,3}"
)
QUOTED_TOO = "the quoted size seems to be wanted too, beside the new one"

_ADDS = whole_words(
    r"one of each | each | both | one more | another | in addition | additional(?:ly)? | add |"
    r" adding | as well",
    r"je ein\w* | jeweils | beide\w* | noch ein\w* | zusätzlich\w* | außerdem | chacun\w* | les"
    r" deux | encore un",
    r"en plus | cada uno | los dos | ambos | además | otro | ciascuno | entrambi | un altro | in"
    r" più | inoltre",
    r"allebei | elk | nog een | ook een | daarnaast",
)


def with_quoted_doubted(
    requests: list[SizeRequest], layout: Layout, quoted: Sequence[Figure]
) -> list[SizeRequest]:
    """The one request doubted, where words join a figure of the quoted size to a new one."""
    if len(requests) != 1 or not _ADDS.search(layout.text.casefold()):
        return requests
    known = {figure.number.value for figure in quoted}
    lengths = [f for f in layout.figures if f.is_measure and f.unit not in ("D", "sch")]
    joined = any(
        (first.number.value in known) != (second.number.value in known)
        and first.sentence == second.sentence
        and first.line == second.line
        and (first.is_measured or second.is_measured)
        and _AND.fullmatch(layout.words(first.end, second.start).casefold())
        for first, second in pairwise(lengths)
    )
    return [wholly_doubted(requests[0], QUOTED_TOO)] if joined else requests
