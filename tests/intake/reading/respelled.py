"""Labelled messages written in the other unit, or with one figure left out.

Both go by the evidence of the reading: what is shown as the words of a length is exchanged.
"""

from __future__ import annotations

import re
from decimal import Decimal

from bendreply.intake.model import Message
from bendreply.rules.request import LENGTH_FIELDS, Evidence, SizeRequest

from .support import doubted
from .unchanged import base, with_body

IN = Decimal("25.4")
_PLAIN_LENGTH = re.compile(r"|inch|mm|(?:.*, )?BWG|gauge, BWG")
"""How a length came about, where it is just a length [``Evidence.how``]."""
_MARK = re.compile(r"\s?(?:\"|”|″|''|-?inch(?:es)?\b|in\b\.?|mm\b)")
_OTHER_FIGURES = re.compile(r"(?<!\d)\.\d{2,3}\b|\bmm\b|\binch|\d\s?[\"”″]", re.IGNORECASE)
"""What would still stand in the old unit."""


def in_the_other_unit(file: str) -> Message | None:
    """Inch for mm, or mm for inch; None where it can't be done by exchanging figures alone."""
    message, own, requests = base(file)
    units = {request.written_in for request in requests}
    figures = _figures(requests, own.body_start)
    if figures is None or len(units) != 1:
        return None
    text = message.text
    rest = own.text
    for (start, end), mm in sorted(figures.items(), reverse=True):
        written = _inches(mm) if units == {"mm"} else f"{mm.normalize():f} mm"
        mark = _MARK.match(text, end)
        behind = mark.end() if mark else end
        rest = rest[:start] + " " * (behind - start) + rest[behind:]
        text = text[:start] + written + text[behind:]
    if _OTHER_FIGURES.search(rest):
        return None
    return with_body(message, text[message.body_start :])


def _inches(mm: Decimal) -> str:
    return f"{(mm / IN).quantize(Decimal('0.00001')).normalize():f} in"


def _figures(
    requests: tuple[SizeRequest, ...], body_start: int
) -> dict[tuple[int, int], Decimal] | None:
    """Where each length stands [mm]; None where one is doubted, worked out or said in the
    subject."""
    found: dict[tuple[int, int], Decimal] = {}
    for request in requests:
        if doubted(request) or request.nominal_pipe or request.shape != "round":
            return None
        for evidence in request.evidence:
            mm = _length(request, evidence)
            if mm is None:
                continue
            if not _PLAIN_LENGTH.fullmatch(evidence.how) or evidence.start < body_start:
                return None
            if found.setdefault((evidence.start, evidence.end), mm) != mm:
                return None
    return found or None


def _length(request: SizeRequest, evidence: Evidence) -> Decimal | None:
    fields = [field for field in LENGTH_FIELDS if field == evidence.field]
    return request.length_mm(fields[0]) if fields else None


def left_out(file: str, field: str) -> Message | None:
    """A message of one size without the words of one length; None where it has none in the body."""
    message, own, requests = base(file)
    if len(requests) != 1:
        return None
    spans = {(e.start, e.end) for e in requests[0].evidence if e.field == field}
    if not spans or min(spans)[0] < own.body_start:
        return None
    text = message.text
    for start, end in sorted(spans, reverse=True):
        text = text[:start] + text[end:]
    return with_body(message, text[message.body_start :])
