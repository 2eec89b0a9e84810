"""Clauses of other sentences that name a figure of one size alone: 'a mandrel for the .049'."""

from __future__ import annotations

import re
from collections.abc import Sequence
from decimal import Decimal

from ...late_pattern import late_pattern
from ..sizes.groups import slot_of
from ..text.figures import Figure, Layout
from .words_on_size import Said, contrast_in, plain, sentence_end

_SO = late_pattern(
    r"[,;–-]\s(?:and\s)?(?:so|therefore|hence|deshalb|daher|darum|also|donc|alors|así que|por eso"
    r"|por lo que|quindi|perciò|dunque|dus|daarom)\b",
    re.IGNORECASE,
)


def name_elsewhere(layout: Layout, found: Sequence[Said]) -> None:
    """Give each size the clauses of other sentences that name a figure that it alone has."""
    taken = {figure.index for part in found for figure in part.figures}
    ours = {figure.sentence for part in found for figure in part.figures}
    values = [{figure.number.value for figure in part.figures} for part in found]
    for figure in layout.figures:
        _turn_to_other(layout, found, figure, taken)
        having = [n for n, own in enumerate(values) if figure.number.value in own]
        counts = figure.role == "noise" and figure.how == "count"
        if figure.index in taken or figure.sentence in ours or len(having) != 1 or figure.row:
            continue
        if counts:  # "the mandrel (1)" names no 1 in tube
            continue
        tube = layout.before(figure) if figure.link == "times" else None
        if tube is not None and tube.number.value not in values[having[0]]:
            continue  # "für 18 x 1 haben wir einen": that 1 is no wall of 16 x 1
        left = layout.sentence_start(figure.sentence)
        right = sentence_end(layout, figure.sentence)
        before, after = layout.before(figure), layout.after_in_sentence(figure)
        if before is not None and before.sentence == figure.sentence:
            left = before.end + (contrast_in(layout.text[before.end : figure.start]) or 0)
        if after is not None:
            cut = contrast_in(layout.text[figure.end : after.start])
            right = figure.end + cut if cut is not None else after.start
        part = found[having[0]]
        part.elsewhere.append(plain(layout.text[left:right]))
        whole = plain(layout.sentence_text(figure.sentence))
        for other in found:  # "for the 1 3/4, he lends me the 1 1/2" points at no size behind it
            other.behind = [words for words in other.behind if words != whole]


def _turn_to_other(layout: Layout, found: Sequence[Said], figure: Figure, taken: set[int]) -> None:
    """'You made us a 2 x .065 in May, now we want it in 2-1/4. 2.25 x .065, ...': the words on the
    first end where those begin that name a figure of the second."""
    if figure.index in taken or figure.row or figure.unit == "D":
        return
    having = [part for part in found if figure.number.value in _diameters(part)]
    if len(having) != 1:
        return
    here = next(
        (p for p in found if p.figures[-1].end <= figure.start < p.end and p is not having[0]), None
    )
    if here is None:
        return
    between = layout.text[here.figures[-1].end : figure.start]
    back = here.begin >= having[0].begin
    cut = _so_in(between) if back else contrast_in(between)
    if cut is None:
        return
    begin = here.figures[-1].end + cut
    having[0].elsewhere.append(plain(layout.text[begin : here.end]))
    here.end = begin
    here.words = plain(layout.text[here.begin : here.end])


def _so_in(between: str) -> int | None:
    """'I have a mandrel for that, so just the 3 inch please': what follows is of the other."""
    ends = [match.start() for match in _SO.finditer(between)]
    return ends[-1] if ends else None


def _diameters(part: Said) -> set[Decimal]:
    return {figure.number.value for figure in part.figures if slot_of(figure) == "od"}
