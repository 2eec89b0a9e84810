"""Which sizes are asked for, by how mail speaks of what it asks for and of what it only tells of.

What was learnt (``asked_learnt.py``) raises doubts; it takes one away only where one mandrel is
asked for, several sizes are named, and one of them is far the likeliest.
"""

from __future__ import annotations

from collections.abc import Sequence
from statistics import fmean

from ...rules.request import LENGTH_FIELDS, SizeRequest
from .around_size import Surroundings
from .asked_learnt import asked_score
from .requests import wholly_doubted
from .told import ONE_OF_THESE

UNLIKELY = -0.5
"""A size that scores less is in doubt, whatever else the mail says,"""
UNLIKE, WEAK = 1.5, 2.0
"""and so is one that scores less than WEAK, and by UNLIKE less than another of the same mail.

Chosen on labelled mail that nothing was learnt from (tests/corpus/asked/README.md)."""
LIKELY, APART = 2.0, 1.0
"""The one of several that is meant scores as much, and by so much more than each other."""
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
    known = sorted((score for score in scores if score is not None), reverse=True)
    scored = list(zip(requests, scores, strict=True))
    said = [score for request, score in scored if score is not None and _is_size(request)]
    return [_judged(*one, known) for one in scored], max(said, default=None)


def _is_size(request: SizeRequest) -> bool:
    return request.od_mm is not None and (request.wall_mm or request.clr_mm) is not None


def _score(request: SizeRequest, around: Surroundings) -> float | None:
    """The mean over its figures; None for one that has none in the text."""
    places = _places(request)
    return fmean(asked_score(around, place) for place in places) if places else None


def _places(request: SizeRequest) -> list[int]:
    lengths = (e for e in request.evidence if e.field in LENGTH_FIELDS)
    return [e.start for e in lengths if e.surface and not e.message_id]


def _judged(request: SizeRequest, score: float | None, known: Sequence[float]) -> SizeRequest:
    """``known`` are the scores of all, the highest first."""
    if score is None:
        return request
    if score < UNLIKELY or (score < WEAK and score < known[0] - UNLIKE):
        return wholly_doubted(request, _WHY)
    if score >= LIKELY and len(known) > 1 and score >= known[1] + APART:
        return _surely_meant(request)
    return request


def _surely_meant(request: SizeRequest) -> SizeRequest:
    """Without the doubt which of several is meant; the others keep it."""
    rest = tuple(doubt for doubt in request.doubts if doubt.why != ONE_OF_THESE)
    return request.model_copy(update={"doubts": rest})
