"""What is stamped on a bend die is often the tube that it bends: 'the die just says 2 1/4'."""

from __future__ import annotations

from collections import deque

from ..naming.likeness import nearly
from ..text.figures import Figure, Layout
from ..text.patterns import whole_words
from ..text.roles import RADIUS_ROLES

_DIE = whole_words(
    "dies? | former | bend block | shoe | biegeform | biegewerkzeug | matrice | matrices | matriz",
    "forma | stampo | mal | buigmal",
)
_RADIUS = whole_words(
    r"radi(?:us|i) | clr | cent(?:re|er)\s?line | rayon | raggio | radio | straal | biegeradius"
)
_MOST_ODS = 8
"""So many ODs before the mark are compared with it."""
_BESIDE = 14
"""Characters right beside a figure in which the word for the radius speaks of it."""


def set_die_marks_aside(layout: Layout) -> None:
    """Say of a die's mark that is the tube's OD that it is no radius."""
    recent: deque[Figure] = deque(maxlen=_MOST_ODS)
    for figure in layout.figures:
        if figure.role == "od" and not figure.negated:
            recent.append(figure)
        elif figure.role in RADIUS_ROLES and any(_is_mark(layout, figure, od) for od in recent):
            figure.give("noise", "same")


def _is_mark(layout: Layout, figure: Figure, od: Figure) -> bool:
    if figure.unit == "D" or not nearly(od, figure):
        return False
    before, after = layout.before(figure), layout.after_in_sentence(figure)
    begin = max(layout.sentence_start(figure.sentence), before.end if before is not None else 0)
    last = layout.tokens[layout.spans[figure.sentence][1]].end
    ahead = layout.words(begin, figure.start)
    behind = layout.words(figure.end, after.start if after is not None else last)
    named = _RADIUS.search(ahead[-_BESIDE:]) or _RADIUS.search(behind[:_BESIDE])
    return not named and bool(_DIE.search(ahead) or _DIE.search(behind[:_BESIDE]))
