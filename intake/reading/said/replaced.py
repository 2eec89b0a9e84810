"""A figure whose time is past, and the one that took its place: 'it went bang at 150 CLR, so new
plan: 200', 'the 4 is gone, it'll be the 4.5 CLR', 'tube is 1.75 x .120 ... hang on ... going with
.095 from here on'.

Both halves must be heard, as in ``given_up``: what went wrong at one radius may be wanted in just
that radius, and a new radius alone may come beside the old one.
"""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal
from itertools import pairwise

from ..text.figures import Figure, Layout
from ..text.roles import LENGTH_ROLES, RADIUS_ROLES
from .replaced_words import BOTH, FAILED, GONE, NOW, NOW_BEHIND, STOPS, TOO

_FIGURES, _SENTENCES = 6, 4
"""So far back stands what is replaced."""
_AHEAD, _BEHIND = 48, 40
_REMARK = 60
"""Characters behind a figure in which the sender stops to think."""
_CALLED = 10
_NEAR = 3
"""Tokens around a figure in which a radius is named."""
_ALIKE = (Decimal("0.4"), Decimal("2.5"))


def hear_replaced(layout: Layout) -> None:
    """Deny what is past; what took its place puts it right."""
    for figure in layout.figures:
        if figure.negated or figure.is_gauge or not _is_new(layout, figure):
            continue
        old = next(_replaced(layout, figure), None)
        if old is None:
            continue
        figure.corrects = True
        layout.given_up.append((old, figure))
        for other in layout.figures[: figure.index]:
            if other.number.value == old.number.value and (
                other is old or _is_radius(layout, other) or _is_bare(layout, other)
            ):
                other.negated = True


def _is_new(layout: Layout, figure: Figure) -> bool:
    """Whether words right before it or behind it bring it in as what holds now."""
    before = layout.before(figure)
    begin = layout.sentence_start(figure.sentence)
    if before is not None and before.sentence == figure.sentence:
        begin = max(begin, before.end)
    ahead = layout.words(max(begin, figure.start - _AHEAD), figure.start)
    behind = layout.words(figure.end, figure.end + _BEHIND)
    if not NOW.search(ahead) and not NOW_BEHIND.search(behind):
        return False
    if TOO.search(f"{ahead} . {behind.split('.')[0]}"):
        return False
    return not any(layout.says(figure.sentence + further, BOTH) for further in (0, 1))


def _replaced(layout: Layout, figure: Figure) -> Iterator[Figure]:
    """Figures of like size and kind before it whose time the words in between say is past."""
    radius = _is_radius(layout, figure)
    for old in reversed(layout.figures[max(0, figure.index - _FIGURES) : figure.index]):
        if figure.sentence - old.sentence > _SENTENCES:
            return
        if old.is_gauge or not _are_alike(old, figure) or _brings_a_tube(layout, old, figure):
            continue
        begin = layout.sentence_start(old.sentence)
        said = layout.words(begin, figure.start)
        behind = layout.words(old.end, figure.start)
        stops = STOPS.search(behind[:_REMARK]) is not None
        if _is_radius(layout, old):
            past = stops or FAILED.search(said) or GONE.search(behind)
            if past and (radius or _is_bare(layout, figure)):
                yield old
        elif stops and not radius and _is_wall(layout, old):
            yield old


def _is_wall(layout: Layout, figure: Figure) -> bool:
    """Whether it is multiplied with what may be its tube."""
    before = layout.before(figure)
    return (
        before is not None
        and figure.link == "times"
        and figure.number.value * 3 < before.number.value
    )


def _brings_a_tube(layout: Layout, old: Figure, figure: Figure) -> bool:
    """Whether a tube that was not told up to the old figure stands between the two, or in the
    sentence of the new one."""
    known: set[Decimal] = {f.number.value for f in layout.figures[: old.index + 1]}
    if not any(f.link == "times" for f in layout.figures[: old.index + 1]):
        tubes = pairwise(layout.in_sentence(old.sentence))  # "with R 60 the 40 x 2 split"
        known |= {next((left.number.value for left, f in tubes if f.link == "times"), Decimal(0))}
    behind = [f for f in layout.in_sentence(figure.sentence) if f.index > figure.index]
    since = [*layout.figures[old.index + 1 : figure.index + 1], *behind]
    return any(
        right.link == "times" and left.number.value not in known for left, right in pairwise(since)
    )


def _is_bare(layout: Layout, figure: Figure) -> bool:
    """Whether no times sign stands beside it, and no word calls it another length."""
    after = layout.after_in_sentence(figure)
    if figure.link == "times" or (after is not None and after.link == "times"):
        return False
    near = [*layout.tokens_before(figure, _CALLED), *layout.tokens_after(figure, _NEAR)]
    return not any(cue.role in LENGTH_ROLES - RADIUS_ROLES for t in near for cue in t.cues)


def _is_radius(layout: Layout, figure: Figure) -> bool:
    near = [
        layout.tokens[figure.token],
        *layout.tokens_before(figure, _NEAR),
        *layout.tokens_after(figure, _NEAR - 1),
    ]
    return any(cue.role in RADIUS_ROLES for token in near for cue in token.cues)


def _are_alike(old: Figure, figure: Figure) -> bool:
    if old.number.value == figure.number.value or not old.number.value:
        return False
    return _ALIKE[0] < figure.number.value / old.number.value < _ALIKE[1]
