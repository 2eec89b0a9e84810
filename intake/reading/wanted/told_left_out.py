"""Sizes that were plainly only told of are no requests; the person is told which they were."""

from __future__ import annotations

from collections.abc import Sequence

from ....rules.request import LENGTH_FIELDS, SizeRequest
from ..nets.tallies import counts_more
from .told_plainly import PLAINLY_TOLD


def without_told(requests: Sequence[SizeRequest], text: str) -> tuple[list[SizeRequest], list[str]]:
    """The requests without those plainly only told of, and a note on each of these.

    None is left out where no whole size is left that is sure, or where the text counts more sizes
    than would be left. ``text`` is the sender's own.
    """
    told = [request for request in requests if _is_told(request)]
    rest = [request for request in requests if not _is_told(request)]
    if not told or not any(map(_is_sure, rest)):
        return list(requests), []
    if counts_more(text, left=len(rest), read=len(requests)):
        return list(requests), []
    return rest, [
        f"a size was taken as only told of, not asked for: {_words(r, rest)}" for r in told
    ]


def _is_told(request: SizeRequest) -> bool:
    return any(d.about == "size" and d.why == PLAINLY_TOLD for d in request.doubts)


def _is_sure(request: SizeRequest) -> bool:
    """Whether it has all its lengths, and is asked for beyond doubt."""
    lengths = (request.od_mm, request.wall_mm, request.clr_mm)
    return None not in lengths and all(doubt.about != "size" for doubt in request.doubts)


def _words(request: SizeRequest, others: Sequence[SizeRequest]) -> str:
    """Its lengths as the sender wrote them, but for those that it may have of the others."""
    lengths = [evidence for evidence in request.evidence if evidence.field in LENGTH_FIELDS]
    theirs = {evidence.start for other in others for evidence in other.evidence}
    own = [evidence for evidence in lengths if evidence.start not in theirs]
    return ", ".join(evidence.surface for evidence in own or lengths)
