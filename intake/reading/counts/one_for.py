"""A further mandrel for a further size, named by an article alone: 'zwei Dorne für 53 x 1,5 und
einen für 43 x 1,5'."""

from __future__ import annotations

import re
from collections.abc import Sequence

from ...late_pattern import late_pattern

_ONE_FOR = late_pattern(
    r"(?:\b(?:and|und|et|y|e|en|sowie|plus)|[,;:+&])\s(?:also\s|noch\s|auch\s|aussi\s|también\s|anche\s|ook\s)?"
    r"(?P<one>one|eine?n?|eins|une?|uno|una|één|een)\s(?:for|für|pour|para|per|voor)\s"
    r"(?:[^\W\d]+\s){0,3}?(?=[Øø]?\s?\.?\d)",
    re.IGNORECASE,
)


def ones_for(text: str, known: Sequence[tuple[int, int]]) -> list[tuple[int, int]]:
    """Where such articles stand that none of the ``known`` counts covers."""
    spans = [match.span("one") for match in _ONE_FOR.finditer(text)]
    return [(a, b) for a, b in spans if not any(a < end and start < b for start, end in known)]
