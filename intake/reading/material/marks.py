"""A steel that may mark the tube is that of the mandrel: 'would polished steel mark the inside?'"""

from __future__ import annotations

import re

from ...late_pattern import late_pattern

_MARKS = late_pattern(
    r"\s(?:[^\W\d_]+\s){0,3}?(?:mark|marks|scratch|scratches"
    r"|gall|galls|score|scores|scuff|scuffs|hurt|damage|mar|rub|leave|pick\sup|zerkratzen|kratzen"
    r"|zerkratzt|rayer|rayerait|raye|marquer|marquerait|rayar|rayaría|raya|marcar|graffiare|graffia"
    r"|rigare|riga|krassen|krast|fressen)(?![^\W_])",
    re.I,
)
_ASKS_WHETHER = late_pattern(
    r"\b(?:would|will|does|do|could|can|might|may|würde|wird|kann|verkratzt|zerkratzt|kratzt|est-ce\sque"
    r"|l'acier|el|l'acciaio|zou|kan|krast)\s(?:(?:the|a|hard|hardened|polished|plain|soft|bare|ground"
    r"|polierter|blanker|poliert\w*|gepolijst)\s){0,3}$",
    re.I,
)


def marks_the_tube(before: str, after: str) -> bool:
    """Whether the words around 'steel' ask if it marks: 'kratzt polierter Stahl innen?'."""
    return bool(_ASKS_WHETHER.search(before) and _MARKS.match(after))
