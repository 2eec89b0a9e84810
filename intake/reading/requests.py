"""The requests of one part of a message: sizes settled, materials, counts and days beside them."""

from __future__ import annotations

from ...rules.request import Doubt, Evidence, SizeRequest
from ..model import Message, OwnText
from .angles import angles_of
from .dates import Needed, find_needed_by, needed_by_size
from .figures import Layout
from .groups import Group
from .habits import is_american
from .material_choice import MaterialChoice, choose_materials
from .quantity import find_counts
from .settle import Settler
from .shapes import shape_named
from .stretch import Stretch

_TOKENS_BESIDE = 4
"""So near to its figures a cross-section is named: '2 in square tube'."""


def requests_of(
    stretch: Stretch, own: OwnText, message: Message, beside: Stretch | None
) -> list[SizeRequest]:
    """The requests of one part; ``beside`` is the part that may say how many are wanted."""
    sizes = settled(stretch)
    if not sizes:
        return []
    groups = [group for group, _ in sizes]
    requests = [request for _, request in sizes]
    american = is_american(stretch.unit, message)
    days = needed_by_size(stretch.layout, groups, stretch.rows, message.sent_on, american=american)
    angles = angles_of(stretch.original, [_span(request, stretch.offset) for request in requests])
    finished = _finished(stretch, own, message, beside, groups, requests, days)
    return [
        request.model_copy(update={"angle_deg": angle})
        for request, angle in zip(finished, angles, strict=True)
    ]


def empty_request(
    stretch: Stretch, own: OwnText, message: Message, beside: Stretch | None
) -> SizeRequest:
    """A request whose every figure is on a drawing that can't be read."""
    return _finished(stretch, own, message, beside, [Group()], [SizeRequest()], [None])[0]


def settled(stretch: Stretch) -> list[tuple[Group, SizeRequest]]:
    """Each size of one part with the figures it is made of; lengths and their doubts only."""
    settler = Settler(stretch.original, stretch.plain, stretch.unit, stretch.offset)
    found: list[tuple[Group, SizeRequest]] = []
    for group in stretch.groups:
        if group.shape is None:
            group.shape = _shape_of(stretch.layout, group)
        request = settler.settle(group)
        if request is not None:
            found.append((group, request))
    # A stray wall or radius beside a whole size asks for no tube of its own.
    whole = [(g, r) for g, r in found if r.od_mm is not None or g.shape]
    return whole or found[:1]


def _shape_of(layout: Layout, group: Group) -> str | None:
    """'2 in square tube': a cross-section named right beside the OD."""
    anchor = group.anchor
    if anchor is None:
        return None
    last = max(figure.token for figures in group.slots.values() for figure in figures)
    first = max(0, anchor.token - _TOKENS_BESIDE)
    begin, end = layout.spans[anchor.sentence]
    near = layout.tokens[max(first, begin) : min(last + _TOKENS_BESIDE, end) + 1]
    return shape_named(layout.text[near[0].start : near[-1].end])


def _span(request: SizeRequest, offset: int) -> tuple[int, int]:
    """Where the words of a request stand in its part of the message."""
    starts = [evidence.start - offset for evidence in request.evidence]
    ends = [evidence.end - offset for evidence in request.evidence]
    return min(starts, default=0), max(ends, default=0)


def _finished(
    stretch: Stretch,
    own: OwnText,
    message: Message,
    beside: Stretch | None,
    groups: list[Group],
    requests: list[SizeRequest],
    days: list[Needed | None],
) -> list[SizeRequest]:
    """The requests with material, quantity and day. ``days`` are those of single sizes."""
    materials = choose_materials(stretch.layout, groups, stretch.rows)
    counts = find_counts(stretch.layout, groups, stretch.rows, beside.layout if beside else None)
    american = is_american(stretch.unit, message)
    whole = find_needed_by(own.text, message.sent_on, american=american)
    return [
        _finish(stretch, request, materials[n], counts.quantity(n), days[n] or whole)
        for n, request in enumerate(requests)
    ]


def _finish(
    stretch: Stretch,
    request: SizeRequest,
    material: MaterialChoice,
    quantity: int | None,
    needed: Needed,
) -> SizeRequest:
    doubts = list(request.doubts)
    if material.alternatives:
        named = tuple(family.value for family in material.alternatives)
        doubts.append(
            Doubt(field="material", readings=named, why="more than one material is named")
        )
    if needed.doubt is not None:
        doubts.append(needed.doubt)
    evidence = [*request.evidence, *(_placed(stretch, item) for item in material.evidence)]
    return request.model_copy(
        update={
            "material": material.family,
            "grade": material.grade,
            "quantity": quantity,
            "needed_by": needed.day,
            "doubts": tuple(doubts),
            "evidence": tuple(sorted(evidence, key=lambda item: item.start)),
        }
    )


def _placed(stretch: Stretch, evidence: Evidence) -> Evidence:
    """Evidence in the plain text led back to the message."""
    start, end = stretch.plain.span(evidence.start, evidence.end)
    return evidence.model_copy(
        update={
            "start": start + stretch.offset,
            "end": end + stretch.offset,
            "surface": stretch.original[start:end],
        }
    )
