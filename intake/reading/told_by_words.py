"""Which sizes are asked for, by how mail speaks of what it asks for and of what it only tells of.

What was learnt (``asked_learnt.py``) only raises doubts: to take one away it was tried, too, and
was wrong where a few words ("the thick stuff") turn a mail round.
"""

from __future__ import annotations

from collections.abc import Sequence
from statistics import fmean

from ...rules.request import LENGTH_FIELDS, SizeRequest
from .around_size import Surroundings
from .asked_learnt import asked_score
from .asked_outright import asked_outright
from .requests import wholly_doubted

UNLIKELY = -2.0
"""A size that scores less is in doubt. Chosen on labelled mail that nothing was learnt from
(tests/corpus/asked/README.md)."""
MOST = 300
"""Figures of a mail that are looked at: more is a price list or no mail."""
_WHY = "what is said around it sounds like a size that is only told of"


def with_told_by_words(
    requests: Sequence[SizeRequest], text: str
) -> tuple[list[SizeRequest], float | None]:
    """The requests, those in doubt that are spoken of as if not asked for, and the score of the
    one that most surely is: of those with a tube and a wall or a radius, if any has words.

    ``text`` is the sender's own, which the evidence points into.
    """
    if not requests or sum(map(len, map(_places, requests))) > MOST:
        return list(requests), None
    around = Surroundings(text)
    scores = [_score(request, around) for request in requests]
    scored = list(zip(requests, scores, strict=True))
    said = [score for request, score in scored if score is not None and _is_size(request)]
    likeliest = max(said, default=None)
    if len(requests) == 1 and asked_outright(text, min(_places(requests[0]), default=0)):
        return list(requests), likeliest
    return [_judged(*one) for one in scored], likeliest


def _is_size(request: SizeRequest) -> bool:
    return request.od_mm is not None and (request.wall_mm or request.clr_mm) is not None


def _score(request: SizeRequest, around: Surroundings) -> float | None:
    """The mean over its figures; None for one that has none in the text."""
    places = _places(request)
    return fmean(asked_score(around, place) for place in places) if places else None


def _places(request: SizeRequest) -> list[int]:
    lengths = (e for e in request.evidence if e.field in LENGTH_FIELDS)
    return [e.start for e in lengths if e.surface and not e.message_id]


def _judged(request: SizeRequest, score: float | None) -> SizeRequest:
    return request if score is None or score >= UNLIKELY else wholly_doubted(request, _WHY)
