"""'One inch and 7/8 tube, one mandrel of each': whether that is one OD or two is in doubt."""

from __future__ import annotations

from ...late_pattern import late_pattern
from ..numbers.parted_inches import ONE_OR_TWO, is_joined, perhaps_two
from ..text.figures import Layout

_OF_EACH = late_pattern(
    r"\b(?:both|(?:one|two|1|2|mandrels?) (?:of|for) each|each of (?:them|the "
    r"two)|beide[rnm]?|je ein\w*"
    r"|les deux|de chaque|ambos|de cada|entrambi|di ciascuno|allebei|van elk)\b"
)


def doubt_parted(layout: Layout) -> None:
    """Note on an OD in whole inches and a fraction that it may be two, where the text hints at
    it."""
    ods = [figure for figure in layout.figures if figure.role == "od" and not figure.negated]
    for figure in ods:
        if not is_joined(layout.words(figure.start, figure.end)):
            continue
        each = len(ods) == 1 and _OF_EACH.search(" ".join(layout.text.casefold().split()))
        if each or perhaps_two(layout.text, figure.start, figure.end):
            figure.notes.append(ONE_OR_TWO)
