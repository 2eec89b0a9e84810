"""Counts that name their size by its place in the list: 'One mandrel for (a). For (b) we'd take
two', 'three for item 2'."""

from __future__ import annotations

import re
from collections.abc import Sequence

from ...late_pattern import late_pattern
from ..picking.place_names import ARTICLE, NOUN
from ..picking.places_there import labels_of
from ..picking.withdrawn import label_before
from . import words as w

MOST = 12
"""Of more, parts are meant."""
_SHY = frozenset("et en um uma fem another otro otra altro sex sept".split())
_WORDS = sorted((n for n, c in w.COUNTS.items() if c <= MOST and n not in _SHY), key=len)[::-1]
COUNT = (
    rf"(?P<count>\d{{1,2}}(?![.,/\d)]|\s?mm)|(?:{'|'.join(_WORDS)}|eine?n?|een|[eé]én|une?)(?!\w))"
)
TOOL = (
    r"(?:\s(?:mandrels?|pieces?|pcs?|off|\w*dorne?|stück|mandrins?|pièces?|mandril(?:es)?|piezas?"
    r"|mandrin[oi]|pezz[oi]|doorn(?:en|s)?|stuks?)\b)?"
)
_TO = r"(?:of|for|on|für|von|bei|zu|pour|de|para|per|di|voor|van)"
_PLACE = (
    rf"{ARTICLE}(?:{NOUN}\s?#?\(?(?P<name>\d{{1,2}}|[a-h])\)?|\(?(?P<letter>[a-h])\)"
    rf"|\((?P<number>\d{{1,2}})\)|(?P<bare>(?-i:[A-H])))(?![\w/]|[.,-]\d|\s?mm\b)"
)
_BEHIND = late_pattern(
    r"(?<![\w.,/(])(?<!make )(?<!bend )(?<!run )(?<!build )(?<!biegen )(?<!fertigen )"
    rf"{COUNT}{TOOL}\s{_TO}\s{_PLACE}",
    re.IGNORECASE,
)
_AHEAD = late_pattern(
    rf"(?<!\w)(?:{_TO}|but|aber|mais|pero|ma|maar)\s{_PLACE}\s?[,:]?\s?"
    rf"(?:[^\W\d]+(?:['’][^\W\d]+)?\s){{0,5}}?{COUNT}(?!\s?[x×]\s?\d)",
    re.IGNORECASE,
)


def counts_every_line(text: str) -> bool:
    """Whether each line of a numbered list has its count in such words: none is left out then."""
    matches = [*_BEHIND.finditer(text), *_AHEAD.finditer(text)]
    labels = labels_of(text)
    return bool(labels) and {*labels} <= {match["name"] for match in matches}


def value_of(said: str) -> int:
    """The number that a count says, in figures or as a word."""
    word = said.casefold()
    return int(word) if word.isdecimal() else w.COUNTS.get(word, 1)


def counts_by_place(text: str, places: Sequence[int]) -> dict[int, int]:
    """The count of each size that is named by the number or letter of its line.

    ``places`` tells where each size stands.
    """
    labels = [label_before(text, place) for place in places]
    if None in labels or len({*labels}) < len(labels):
        return {}
    found: dict[int, int] = {}
    taken: list[tuple[int, int]] = []
    for match in [*_BEHIND.finditer(text), *_AHEAD.finditer(text)]:
        if any(match.start() < end and begin < match.end() for begin, end in taken):
            continue
        name = match["name"] or match["letter"] or match["number"] or match["bare"]
        count = value_of(match["count"])
        if name.casefold() not in labels or count > MOST:
            continue
        at = labels.index(name.casefold())
        if found.setdefault(at, count) != count:
            return {}
        taken.append(match.span())
    return found
