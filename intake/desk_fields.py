"""Fields of a size put right by a person: what may be entered, and what it makes of the reading."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date, timedelta
from decimal import Decimal
from enum import Enum
from typing import Any, get_args

from pydantic import ValidationError

from ..rules.request import LENGTH_FIELDS, FieldName, SizeRequest
from .desk_errors import BadCorrectionError
from .inquiry import Inquiry

Value = Decimal | str | int | date | None
"""A corrected value: lengths in mm; None for 'not given'."""

MOST_MANDRELS = 999
"""More of one size is a slip of the finger (common practice, no source)."""

ATTRIBUTES = {f: f"{f}_mm" if f in LENGTH_FIELDS else f for f in (*get_args(FieldName), "grade")}


def corrected(request: SizeRequest, changes: Mapping[str, Value]) -> SizeRequest:
    """The request with fields put right: no doubt is left on them, and no words of the customer
    stand for them any more. Raises BadCorrectionError.
    """
    updates: dict[str, Any] = {}
    for field, value in changes.items():
        if field not in ATTRIBUTES:
            raise BadCorrectionError(
                f"there is no field {field!r}: the fields are {', '.join(ATTRIBUTES)}"
            )
        updates[ATTRIBUTES[field]] = value
    try:
        checked = SizeRequest(**updates)
    except ValidationError as error:
        first = error.errors()[0]
        where = str(first["loc"][0]).removesuffix("_mm")
        raise BadCorrectionError(
            f"{where} can't be {changes.get(where)!s}: {first['msg'].lower()}"
        ) from error
    for field in LENGTH_FIELDS:
        length = checked.length_mm(field)
        if field in changes and length is not None:
            if length <= 0:
                raise BadCorrectionError(
                    f"{field} can't be {length:f} mm: it has to be more than 0"
                )
            updates[f"{field}_mm"] = length.normalize()  # 44.450 and 44.45 are one size
    clean = {key: updates[key] if key.endswith("_mm") else getattr(checked, key) for key in updates}
    if any(f"{f}_mm" in clean and clean[f"{f}_mm"] != request.length_mm(f) for f in ("od", "wall")):
        clean["nominal_pipe"] = None  # it is not the pipe any more that the customer named
    clean["doubts"] = tuple(one for one in request.doubts if one.field not in changes)
    clean["evidence"] = tuple(
        one
        for one in request.evidence
        if one.field not in changes
        or clean[ATTRIBUTES[one.field]] == getattr(request, ATTRIBUTES[one.field])
    )
    after = request.model_copy(update=clean)
    _refuse_impossible(after, changes)
    return after


def _refuse_impossible(request: SizeRequest, changes: Mapping[str, Value]) -> None:
    """Refuse figures that make no tube or bend, where one of them was just put in."""
    od, wall, clr, count = request.od_mm, request.wall_mm, request.clr_mm, request.quantity
    if od is not None and wall is not None and {"od", "wall"} & changes.keys() and wall * 2 >= od:
        than = "half of" if wall * 2 == od else "more than half of"
        raise BadCorrectionError(
            f"that wall and OD make no tube: {wall:f} mm is {than} the OD {od:f} mm"
        )
    if od is not None and clr is not None and {"od", "clr"} & changes.keys() and clr * 2 < od:
        raise BadCorrectionError(
            f"that CLR and OD make no bend: {clr:f} mm is less than half of the OD {od:f} mm"
        )
    if "quantity" in changes and count is not None and not 1 <= count <= MOST_MANDRELS:
        raise BadCorrectionError(f"quantity can't be {count}: it has to be 1 to {MOST_MANDRELS}")


def refuse_past(inquiry: Inquiry, changes: Mapping[str, Value]) -> None:
    """Refuse a day that had passed when the message came. Raises BadCorrectionError."""
    needed = changes.get("needed_by")
    asked = inquiry.message.received_at or inquiry.created_at
    # A day's grace: the customer's day can be another than the day in UTC.
    if isinstance(needed, date) and needed < asked.date() - timedelta(days=1):
        raise BadCorrectionError(
            f"needed_by can't be {needed.isoformat()}: the message came on {asked:%Y-%m-%d}"
        )


def as_text(value: object) -> str | None:
    """A field's value as the store keeps it in corrections and history: lengths in mm."""
    match value:
        case None:
            return None
        case Decimal():
            return f"{value:f}"
        case Enum():
            return str(value.value)
        case date():
            return value.isoformat()
    return str(value)
