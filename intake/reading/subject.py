"""What the subject line adds to the body: it fills gaps, and contradictions become doubts."""

from __future__ import annotations

import re
from decimal import Decimal

from ...rules.request import LENGTH_FIELDS, Doubt, FieldName, SizeRequest

_APART = Decimal("0.01")
"""Lengths that differ by more than this share are two."""
_INCH = Decimal("25.4")
_UNIT = re.compile(r"mm|cm|in(?:ch|\b)|zoll|pouce|pollic|pulgada|duim|[\"″”']|\d/\d", re.IGNORECASE)
_WHY = "the subject says otherwise"
_OTHER_UNIT = "it stands alone in the subject, read in another unit than the rest"
_FILLED: tuple[tuple[str, FieldName | None], ...] = (
    ("od_mm", "od"), ("wall_mm", "wall"), ("clr_mm", "clr"), ("material", "material"),
    ("grade", None), ("quantity", "quantity"), ("nominal_pipe", None), ("angle_deg", None),
)  # fmt: skip
"""Attributes that the subject may fill, and the field whose doubts come along."""


def with_subject(body: list[SizeRequest], subject: list[SizeRequest]) -> list[SizeRequest]:
    """The subject fills gaps; where it contradicts the body, the body stands with a doubt."""
    if not body:
        return subject
    if len(subject) != 1:
        return body
    named = subject[0]
    if len(body) == 1:
        return [filled(contradicted(body[0], named, _WHY), named)]
    if all(_agrees(request, named) for request in body):
        return [filled(request, named) for request in body]
    return body


def _agrees(request: SizeRequest, named: SizeRequest) -> bool:
    return not any(
        differ(request.length_mm(field), named.length_mm(field)) for field in LENGTH_FIELDS
    )


def differ(stated: Decimal | None, other: Decimal | None) -> bool:
    """Whether two lengths [mm] are both given, and two."""
    return stated is not None and other is not None and abs(stated - other) > stated * _APART


def contradicted(request: SizeRequest, named: SizeRequest, why: str) -> SizeRequest:
    """The request with a doubt on each length or material that ``named`` says otherwise."""
    doubts = list(request.doubts)
    for field in LENGTH_FIELDS:
        stated, other = request.length_mm(field), named.length_mm(field)
        if stated is not None and other is not None and differ(stated, other):
            if _says_another_length(request, named) or _is_same_figure(stated, other, named, field):
                continue
            doubts.append(Doubt(field=field, readings=(stated, other), why=why))
    if request.material and named.material and request.material != named.material:
        families = (request.material.value, named.material.value)
        doubts.append(Doubt(field="material", readings=families, why=why))
    return request.model_copy(update={"doubts": _merged(doubts)})


def _says_another_length(request: SizeRequest, named: SizeRequest) -> bool:
    """'One for the 5 inch die', where the radius is 5 inch: the one figure of the subject is that
    of another length of the size."""
    said = [value for field in LENGTH_FIELDS if (value := named.length_mm(field)) is not None]
    own = [value for field in LENGTH_FIELDS if (value := request.length_mm(field)) is not None]
    return len(said) == 1 and any(not differ(value, said[0]) for value in own)


def _is_same_figure(stated: Decimal, other: Decimal, named: SizeRequest, field: FieldName) -> bool:
    """'R 76 bends' says no unit: taken for inches by itself, it is the 76 mm of the body."""
    if _INCH not in (other / stated, stated / other):
        return False
    return not any(_UNIT.search(item.surface) for item in named.evidence if item.field == field)


def filled(request: SizeRequest, named: SizeRequest) -> SizeRequest:
    """The request with what only ``named`` says, its doubts and evidence too."""
    update: dict[str, object] = {}
    doubts = list(request.doubts)
    for attribute, field in _FILLED:
        if getattr(request, attribute) is None and getattr(named, attribute) is not None:
            update[attribute] = getattr(named, attribute)
            doubts.extend(doubt for doubt in named.doubts if doubt.field == field)
            value = named.length_mm(field) if field in LENGTH_FIELDS else None
            if field is not None and value is not None and _in_other_unit(request, named):
                doubts.append(Doubt(field=field, readings=(value,), why=_OTHER_UNIT))
    if not update:
        return request
    evidence = sorted((*request.evidence, *named.evidence), key=lambda item: item.start)
    update |= {"evidence": tuple(evidence), "doubts": _merged(doubts)}
    return request.model_copy(update=update)


def _in_other_unit(request: SizeRequest, named: SizeRequest) -> bool:
    """A wall of '.65' alone may be mm; beside a 1.25 in tube it hardly is."""
    return None not in (request.written_in, named.written_in) and (
        request.written_in != named.written_in
    )


def _merged(doubts: list[Doubt]) -> tuple[Doubt, ...]:
    """One doubt a field: readings and reasons joined."""
    by_field: dict[FieldName, Doubt] = {}
    for doubt in doubts:
        held = by_field.get(doubt.field)
        if held is None:
            by_field[doubt.field] = doubt
            continue
        extra = tuple(reading for reading in doubt.readings if reading not in held.readings)
        by_field[doubt.field] = held.model_copy(
            update={"readings": held.readings + extra, "why": f"{held.why}; {doubt.why}"}
        )
    return tuple(by_field.values())
