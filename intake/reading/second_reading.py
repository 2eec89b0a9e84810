"""A second reader: a figure that was taken for what words like those around it do not say.

It knows figures only by what labelled mail has taught (``roles_learnt.py``), nothing of the rules,
and it states nothing. Where it finds it unlikely that the figures of a size are lengths at all, or
of a size that is asked for, the whole size is in doubt; where it finds that one of them is hardly
what the rules took it for, that value is.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import log
from statistics import fmean
from typing import Literal

from ...rules.request import LENGTH_FIELDS, Doubt, SizeRequest
from .around_figure import Figures, overlapping
from .asked_outright import asked_outright
from .requests import wholly_doubted
from .roles_learnt import shares

LengthField = Literal["od", "wall", "clr"]
UNLIKELY = 0.05
"""A value is in doubt where its figure has a smaller share for what it was taken for,"""
UNASKED = -1.0
"""and a whole size whose figures score less [log odds] for being lengths that are asked for. Both
chosen on labelled mail that nothing was learnt from (tests/corpus/asked/README.md)."""
MOST = 300
"""Figures of a mail that are looked at: more is a price list or no mail."""
_NO_SIZE = "what is said around it sounds like something else than a size that is asked for"
_NO_ROLE = "what stands around it sounds like something else"


def with_second_reading(
    requests: Sequence[SizeRequest], text: str
) -> tuple[list[SizeRequest], float | None]:
    """The requests, in doubt where a second reader would not read them so; and the score [log odds]
    of the size that is most surely asked for, of those with a tube and a wall or a radius.

    ``text`` is the sender's own, which the evidence points into.
    """
    if not requests:
        return [], None
    figures = Figures(text)
    if len(figures.at) > MOST:
        return list(requests), None
    learnt = _Learnt(figures)
    scores = [learnt.asked(request) for request in requests]
    sizes = zip(requests, scores, strict=True)
    said = [score for request, score in sizes if score is not None and _is_size(request)]
    likeliest = max(said, default=None)
    if len(requests) == 1 and asked_outright(text, _begin(requests[0])):
        return list(requests), likeliest
    return [_judged(*one, learnt) for one in zip(requests, scores, strict=True)], likeliest


def _begin(request: SizeRequest) -> int:
    """Where in the text the first of its lengths stands."""
    own = (e for e in request.evidence if e.field in LENGTH_FIELDS and not e.message_id)
    return min((e.start for e in own if e.surface), default=0)


def _judged(request: SizeRequest, score: float | None, learnt: _Learnt) -> SizeRequest:
    if score is not None and score < UNASKED:
        return wholly_doubted(request, _NO_SIZE)
    doubts = [
        Doubt(field=field, readings=(value,), why=_NO_ROLE)
        for field, share in learnt.shares_of(request).items()
        if share < UNLIKELY
        and request.doubt_on(field) is None
        and (value := request.length_mm(field)) is not None
    ]
    return request.model_copy(update={"doubts": (*request.doubts, *doubts)})


def _is_size(request: SizeRequest) -> bool:
    return request.od_mm is not None and (request.wall_mm or request.clr_mm) is not None


class _Learnt:
    """What is learnt of each figure of a text, each looked at once."""

    def __init__(self, figures: Figures) -> None:
        self._figures = figures
        self._known: dict[int, dict[str, float]] = {}

    def shares_of(self, request: SizeRequest) -> dict[LengthField, float]:
        """For each length that figures stand for, the share of the likeliest of them."""
        found: dict[LengthField, float] = {}
        for field, shares_at in self._evidence(request):
            found[field] = max(found.get(field, 0.0), *(one[field] for one in shares_at))
        return found

    def asked(self, request: SizeRequest) -> float | None:
        """How surely its figures are lengths of a size, as the mean of their log odds."""
        found = [max(sum(one.values()) for one in found) for _, found in self._evidence(request)]
        return fmean(log(one / max(1 - one, 1e-9)) for one in found) if found else None

    def _evidence(
        self, request: SizeRequest
    ) -> Iterator[tuple[LengthField, list[dict[str, float]]]]:
        for evidence in request.evidence:
            field = evidence.field
            if field not in LENGTH_FIELDS or not evidence.surface or evidence.message_id:
                continue
            if ats := overlapping(self._figures, evidence.start, evidence.end):
                yield field, [self._shares(at) for at in ats]

    def _shares(self, at: int) -> dict[str, float]:
        if at not in self._known:
            self._known[at] = shares(self._figures.traits(at))
        return self._known[at]
