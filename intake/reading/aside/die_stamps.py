"""What is stamped on a bend die as two figures: 'a 1.5 inch die, stamped 1.50 / 4.50'."""

from __future__ import annotations

from decimal import Decimal

from ...late_pattern import late_pattern
from ..naming.chain_parts import RADIUS_OR_LENGTH
from ..naming.likeness import nearly
from ..text.figures import Figure, Layout
from ..text.patterns import whole_words

_STAMPED = late_pattern(
    r"\b(?:stamped|marked|engraved|gestempelt|eingeschlagen|gravée?s?|marquée?s?|marcad[oa]s?"
    r"|grabad[oa]s?|marcat[oaie]|stampigliat[oaie]|gestempeld|gemerkt)\W{0,3}$"
)
_DIE = whole_words("dies? | die set | former | shoe | biegeform | matrice | matriz | matrijs | mal")
_STAMP_BEFORE = 24
"""Characters before the first figure in which the word for the stamp stands."""
_PLAIN_MULTIPLES = frozenset(map(Decimal, ("1.5", "2", "2.5", "3", "3.5", "4", "5", "6")))


_SAYS = whole_words(
    "says | reads | stamped | marked | engraved | stamp | marking | gestempelt | eingeschlagen",
    "steht | gravée? | marquée? | marcad[oa] | grabad[oa] | scritto | marcat[oa] | stampigliat[oa]",
    "staat | gestempeld | gemerkt",
)
_R_BEHIND = late_pattern(r"\s?(?:mm|in|\"|”)?\s?r(?:ad|adius)?\b")
_FROM_TUBE = Decimal("1.5")
"""So many times the tube is the least radius that stands behind it on a die."""


def part_stamps(layout: Layout) -> None:
    """'One die is marked 1 3/4 - 5 1/4 R': the dash parts the tube and its radius."""
    for second in layout.figures:
        first = layout.before(second)
        if second.link != "range" or first is None or first.role is not None:
            continue
        wide = second.number.value >= first.number.value * _FROM_TUBE
        behind = layout.words(second.end, second.end + 8)
        words = layout.sentence_text(first.sentence).casefold()
        if wide and _R_BEHIND.match(behind) and _DIE.search(words) and _SAYS.search(words):
            second.link = "apart"
            first.give("od", "chain")


def trust_stamp(layout: Layout, first: Figure, second: Figure) -> None:
    """Take from a stamp's second figure the doubt whether it is a radius, where it plainly is."""
    if RADIUS_OR_LENGTH not in second.notes or second.role != "radius":
        return
    times = second.number.value / first.number.value if first.number.value else Decimal(0)
    if layout.says(first.sentence, _DIE) and is_stamped_bend(layout, first, times):
        second.notes.remove(RADIUS_OR_LENGTH)
        second.give("clr", "chain")


def is_stamped_bend(layout: Layout, first: Figure, times: Decimal) -> bool:
    """Whether the stamp repeats the tube, and its second figure is a plain multiple of it, as
    centreline radii of dies are."""
    again = any(
        other is not first and nearly(other, first) and other.role in (None, "od", "die", "label")
        for other in layout.figures
    )
    ahead = layout.words(max(0, first.start - _STAMP_BEFORE), first.start)
    return again and times in _PLAIN_MULTIPLES and _STAMPED.search(ahead) is not None
