"""The requests of one part of a message: sizes settled, materials, counts and days beside them."""

from __future__ import annotations

import re
from decimal import Decimal

from ...rules.request import Doubt, Evidence, FieldName, Shape, SizeRequest
from .. import words_errand
from ..late import Late
from ..model import Message, OwnText
from .aside.angles import angles_of
from .counts.quantity import find_counts
from .days.calendar import calendar_of
from .days.dates import Needed, find_needed_by, needed_by_size
from .days.several import with_days_told
from .lengths_settled import settled
from .material.choice import MaterialChoice, choose_materials, sole_material
from .sizes.groups import Group
from .sizes.habits import is_american, puts_day_first
from .stretch import MOST_CHARACTERS, Stretch
from .text.roles import LENGTH_ROLES
from .thread.quoted import Relied, unread

_TOOL = Late(words_errand.TOOL)
_ANOTHERS = "the material is named beside another size"
_AT_THE_END = 2000
"""Characters of a very long message's end in which a day is looked for, too."""


def requests_of(
    stretch: Stretch,
    own: OwnText,
    message: Message,
    beside: Stretch | None,
    relied: Relied | None = None,
) -> list[SizeRequest]:
    """The requests of one part; ``beside`` is the part that may say how many are wanted, and
    ``relied`` the mail that its words may rely on."""
    sizes = settled(stretch, relied)
    if not sizes:
        return []
    groups = [group for group, _ in sizes]
    requests = [request for _, request in sizes]
    days = needed_by_size(
        stretch.layout,
        groups,
        stretch.rows,
        message.sent_on,
        american=is_american(stretch.unit, message),
        day_first=puts_day_first(message),
    )
    for number, request in enumerate(requests):
        start = _span(request, 0)[0]
        if any(first <= start < end for first, end in _of_others(own)):
            days[number] = None
    calendar = calendar_of(
        _of_tooling(own, stretch),
        message.sent_on,
        american=is_american(stretch.unit, message),
        day_first=puts_day_first(message),
    )
    angles = angles_of(
        stretch.original[:MOST_CHARACTERS], [_span(request, stretch.offset) for request in requests]
    )
    finished = _finished(stretch, own, message, beside, groups, requests, days)
    finished = with_days_told(finished, [day is not None for day in days], calendar)
    if relied is not None:
        strange = unread(stretch.layout, relied.figures)
        finished = [relied.completed(r, g, strange) for r, g in zip(finished, groups, strict=True)]
    return [
        request.model_copy(update={"angle_deg": angle})
        for request, angle in zip(finished, angles, strict=True)
    ]


def empty_request(
    stretch: Stretch, own: OwnText, message: Message, beside: Stretch | None
) -> SizeRequest:
    """A request whose every figure stands elsewhere: on a drawing, in the quoted mail."""
    return _finished(stretch, own, message, beside, [Group()], [SizeRequest()], [None])[0]


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
    first = _first_said(requests)
    said_once = [group for number, group in enumerate(groups) if first[number] == number]
    places = {number: at for at, number in enumerate(sorted(set(first)))}
    counts = find_counts(stretch.layout, said_once, stretch.rows, beside.layout if beside else None)
    whole = find_needed_by(
        _of_tooling(own, stretch),
        message.sent_on,
        american=is_american(stretch.unit, message),
        day_first=puts_day_first(message),
    )
    finished = [
        _finish(stretch, request, materials[n], counts.quantity(places[first[n]]), days[n] or whole)
        for n, request in enumerate(requests)
    ]
    finished = [
        _of_another(request) if _is_of_others(material, group) else request
        for request, material, group in zip(finished, materials, groups, strict=True)
    ]
    return [
        wholly_doubted(request, group.doubtful) if group.doubtful else request
        for request, group in zip(finished, groups, strict=True)
    ]


def _is_of_others(material: MaterialChoice, group: Group) -> bool:
    """Whether the material is named only among words on sizes that are not asked for."""
    return bool(group.others_words and material.evidence) and all(
        any(begin <= item.start < end for begin, end in group.others_words)
        for item in material.evidence
    )


def _of_another(request: SizeRequest) -> SizeRequest:
    if request.material is None or request.doubt_on("material"):
        return request
    doubt = Doubt(field="material", readings=(request.material.value,), why=_ANOTHERS)
    return request.model_copy(update={"doubts": (*request.doubts, doubt)})


def _first_said(requests: list[SizeRequest]) -> list[int]:
    """For each request the number of the first that is the same size: one said twice counts
    once."""
    known: dict[tuple[object, ...], int] = {}
    return [
        known.setdefault((request.shape, request.od_mm, request.wall_mm, request.clr_mm), number)
        for number, request in enumerate(requests)
    ]


def wholly_doubted(request: SizeRequest, why: str) -> SizeRequest:
    """A size that may not be asked for: all that is stated of it is to be confirmed."""
    stated: tuple[tuple[FieldName, Decimal | str | None], ...] = (
        ("od", request.od_mm),
        ("wall", request.wall_mm),
        ("clr", request.clr_mm),
        ("shape", None if request.shape is Shape.ROUND else request.shape.value),
        ("material", None if request.material is None else request.material.value),
        ("quantity", None if request.quantity is None else str(request.quantity)),
        ("needed_by", None if request.needed_by is None else request.needed_by.isoformat()),
    )
    doubts = [
        *(doubt.model_copy(update={"why": _of_value(doubt.why, why)}) for doubt in request.doubts),
        *(
            Doubt(field=name, readings=(value,), why=why)
            for name, value in stated
            if value is not None and not request.doubt_on(name)
        ),
    ]
    if all(doubt.why != why for doubt in doubts):
        doubts = [*request.doubts]  # each value is in doubt by itself: then the reason stays there
    marked = (d.model_copy(update={"about": "size"}) if d.why == why else d for d in doubts)
    return request.model_copy(update={"doubts": tuple(marked)})


def _of_value(told: str, of_size: str) -> str:
    """The reasons why a value is in doubt, without that why the whole size is; unless it is the
    only one."""
    reasons = [reason for reason in told.split("; ") if reason != of_size]
    return "; ".join(reasons) or told


def _of_tooling(own: OwnText, stretch: Stretch) -> str:
    """The own words without forwarded ones that name no tooling: "26 rails by Nov 20" is a day of
    the customer's customer; nor is 1/2 below 'OD' one. Of a very long message its beginning and
    its end: below a long list stands by when it is wanted."""
    text = own.text
    for start, end in _of_others(own) + _fractions_in_tables(stretch):
        text = text[:start] + re.sub(r"\S", " ", text[start:end]) + text[end:]
    if len(text) <= MOST_CHARACTERS + _AT_THE_END:
        return text
    return f"{text[:MOST_CHARACTERS]}\n\n{text[-_AT_THE_END:]}"


def _fractions_in_tables(stretch: Stretch) -> list[tuple[int, int]]:
    """Where columns of lengths hold what elsewhere may be a day: '1/2' below 'OD'."""
    return [
        (start + stretch.offset, end + stretch.offset)
        for figure in stretch.layout.figures
        if figure.how == "table" and figure.role in LENGTH_ROLES
        for start, end in (stretch.plain.span(figure.start, figure.end),)
        if "/" in stretch.layout.text[figure.start : figure.end]
    ]


def _of_others(own: OwnText) -> list[tuple[int, int]]:
    """Where forwarded words stand that name no tooling."""
    parts = [(part.start, part.end) for part in own.parts if part.kind == "forwarded"]
    return [(start, end) for start, end in parts if not _TOOL.search(own.text[start:end])]


def _finish(
    stretch: Stretch,
    request: SizeRequest,
    material: MaterialChoice,
    quantity: int | None,
    needed: Needed,
) -> SizeRequest:
    doubts = [*request.doubts, *_open_materials(material)]
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


def with_material_of(requests: list[SizeRequest], other: Stretch | None) -> list[SizeRequest]:
    """The requests with the material that the other part of the message names, where they have
    none: '304 mandrel' in the subject. Two named for one size are a doubt, for several nothing."""
    if other is None or all(request.material for request in requests):
        return requests
    if len(requests) == 1:
        (choice,) = choose_materials(other.layout, [Group()], {})
    else:
        choice = sole_material(other.layout)
    evidence = tuple(_placed(other, item) for item in choice.evidence)
    doubts = _open_materials(choice)
    return [
        request
        if request.material or choice.family is None
        else request.model_copy(
            update={
                "material": choice.family,
                "grade": choice.grade,
                "doubts": (*request.doubts, *doubts),
                "evidence": tuple(
                    sorted((*request.evidence, *evidence), key=lambda item: item.start)
                ),
            }
        )
        for request in requests
    ]


def _open_materials(material: MaterialChoice) -> tuple[Doubt, ...]:
    if not material.alternatives:
        return ()
    named = tuple(family.value for family in material.alternatives)
    return (Doubt(field="material", readings=named, why="more than one material is named"),)
