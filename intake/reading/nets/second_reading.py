"""A second reader: sizes whose figures are not spoken of as lengths that are asked for.

It knows figures only by what labelled mail has taught (``roles_learnt.py``), nothing of the rules,
and it states nothing: where it finds that the figures of a size are hardly lengths, or hardly of a
size that is asked for, the size is in doubt. What is said is what it goes by, so that it leaves
alone a size of a bare row or label, one whose figures a table names, and a single figure.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from math import log
from statistics import fmean

from ....rules.request import LENGTH_FIELDS, SizeRequest
from ..requests import wholly_doubted
from ..wanted.asked_outright import asked_outright
from .around_figure import Figures, overlapping
from .roles_learnt import shares

UNASKED = -2.0
"""A size whose figures score less [log odds] for being lengths that are asked for is in doubt.
Chosen on labelled mail that nothing was learnt from (tests/corpus/asked/README.md)."""
LONGEST = 20_000
"""Characters of a mail that is looked at."""
MOST = 300
"""Figures of a mail that are looked at: more is a price list or no mail."""
FEW_WORDS = 4
"""A line of fewer words says nothing of its figures."""
_WHY = "what is said around it sounds like something else than a size that is asked for"


def with_second_reading(
    requests: Sequence[SizeRequest], text: str, in_tables: Collection[int] = ()
) -> tuple[list[SizeRequest], float | None]:
    """The requests, in doubt where a second reader would not read them so; and the score [log odds]
    of the size that is most surely asked for, of those with a tube and a wall or a radius.

    ``text`` is the sender's own, which the evidence points into, and ``in_tables`` where figures
    begin that stand in rows: the words beside them are heads, labels, remarks.
    """
    if not requests or len(text) > LONGEST:
        return list(requests), None
    figures = Figures(text)
    if len(figures.at) > MOST:
        return list(requests), None
    places = [_places(request, figures) for request in requests]
    scores = [_score(one, figures) for one in places]
    sizes = zip(requests, scores, strict=True)
    said = [score for request, score in sizes if score is not None and _is_size(request)]
    outright = len(requests) == 1 and asked_outright(text, _begin(requests[0]))
    spoken_of = zip(places, scores, strict=True)
    asked = {line for at, s in spoken_of if s and s >= UNASKED for line in _lines(at, figures)}
    judged = [
        wholly_doubted(request, _WHY)
        if score is not None
        and score < UNASKED
        and _is_told(at, figures)
        and not outright
        and not _is_row(request, in_tables)
        # Of a list in one line the words are said of all.
        and not asked & _lines(at, figures)
        else request
        for request, score, at in zip(requests, scores, places, strict=True)
    ]
    return judged, max(said, default=None)


def _places(request: SizeRequest, figures: Figures) -> list[Sequence[int]]:
    """For each length that the text names in figures, which of its pieces these are."""
    own = (e for e in request.evidence if e.field in LENGTH_FIELDS and not e.message_id)
    found = (overlapping(figures, e.start, e.end) for e in own if e.surface)
    return [at for at in found if at]


def _score(places: Sequence[Sequence[int]], figures: Figures) -> float | None:
    """How surely the figures are lengths of a size, as the mean of their log odds."""
    shared = [max(sum(shares(figures.traits(at)).values()) for at in one) for one in places]
    return fmean(log(one / max(1 - one, 1e-9)) for one in shared) if shared else None


def _lines(places: Sequence[Sequence[int]], figures: Figures) -> set[int]:
    return {figures.line_of(at) for one in places for at in one}


def _is_told(places: Sequence[Sequence[int]], figures: Figures) -> bool:
    """Whether there are words on the size: a bare row of a list has none of its own."""
    spoken = any(figures.words_beside(at) >= FEW_WORDS for one in places for at in one)
    return spoken and len(places) > 1


def _is_row(request: SizeRequest, in_tables: Collection[int]) -> bool:
    own = [e for e in request.evidence if e.field in LENGTH_FIELDS and not e.message_id]
    return any(e.start in in_tables for e in own if e.surface)


def _is_size(request: SizeRequest) -> bool:
    return request.od_mm is not None and (request.wall_mm or request.clr_mm) is not None


def _begin(request: SizeRequest) -> int:
    """Where in the text the first of its lengths stands."""
    own = (e for e in request.evidence if e.field in LENGTH_FIELDS and not e.message_id)
    return min((e.start for e in own if e.surface), default=0)
