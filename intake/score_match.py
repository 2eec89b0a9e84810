"""One message's requests against its labels: which answers which, and is each field right.

A value is right within 0.5 % or 0.03 mm, whichever is more; a grade is compared loosely (case,
spaces, punctuation; one within the other), because each sender writes it another way.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal
from typing import Literal

from pydantic import BaseModel, ConfigDict

from ..rules.request import SizeRequest
from .model import Kind

SIZE_FIELDS = ("od", "wall", "clr", "material", "shape")
COUNTED_FIELDS = (*SIZE_FIELDS, "quantity", "needed_by")
ALL_FIELDS = (*COUNTED_FIELDS, "grade")

Verdict = Literal["right", "empty", "missing", "doubted", "silent"]
Value = Decimal | int | str | None

SHARE = Decimal("0.005")
SLACK_MM = Decimal("0.03")


class GoldRequest(BaseModel):
    """One labelled request; lengths in mm."""

    model_config = ConfigDict(extra="ignore", frozen=True)

    shape: str = "round"
    od_mm: Decimal | None = None
    wall_mm: Decimal | None = None
    clr_mm: Decimal | None = None
    material: str | None = None
    grade: str | None = None
    quantity: int | None = None
    needed_by: str | None = None
    doubt: tuple[str, ...] = ()


class GoldMessage(BaseModel):
    """One labelled message."""

    model_config = ConfigDict(extra="ignore", frozen=True)

    file: str
    kind: Kind
    requests: tuple[GoldRequest, ...] = ()
    tags: tuple[str, ...] = ()
    lang: str | None = None


@dataclass(frozen=True, slots=True)
class Outcome:
    """One field of one request against its label."""

    file: str
    request: int | None
    """Number of the labelled request, from 1; None for a made-up one."""
    field: str
    stated: str | None
    gold: str | None
    verdict: Verdict
    needless_doubt: bool = False


def match(labels: Sequence[GoldRequest], requests: Sequence[SizeRequest]) -> list[int | None]:
    """For each label the index of the request that answers it, or None.

    Pairs with most agreeing fields first, then swapped while a swap makes more fields agree:
    good enough for mails of a few dozen sizes, and the order of the sender decides ties.
    """
    gain = [[_agreeing(label, request) for request in requests] for label in labels]
    order = sorted(
        ((g, r) for g in range(len(labels)) for r in range(len(requests))),
        key=lambda pair: (-gain[pair[0]][pair[1]], abs(pair[0] - pair[1]), pair),
    )
    pairs: list[int | None] = [None] * len(labels)
    free = set(range(len(requests)))
    for g, r in order:
        if pairs[g] is None and r in free:
            pairs[g] = r
            free.discard(r)

    def worth(g: int, r: int | None) -> int:
        return 0 if r is None else gain[g][r]

    improved = True
    while improved:
        improved = False
        for a in range(len(pairs)):
            for b in range(a + 1, len(pairs)):
                now = worth(a, pairs[a]) + worth(b, pairs[b])
                if worth(a, pairs[b]) + worth(b, pairs[a]) > now:
                    pairs[a], pairs[b] = pairs[b], pairs[a]
                    improved = True
    return pairs


def _agreeing(label: GoldRequest, request: SizeRequest) -> int:
    return sum(
        _gold(label, name) is not None and _same(name, stated(request, name), _gold(label, name))
        for name in COUNTED_FIELDS
    )


def compare(
    file: str, number: int | None, name: str, label: GoldRequest, found: SizeRequest | None
) -> Outcome:
    """One field of a request (None: not seen) against its label."""
    ours = None if found is None else stated(found, name)
    gold = _gold(label, name)
    doubted = found is not None and is_doubted(found, name)
    verdict: Verdict
    if ours is None:
        verdict = "empty" if gold is None else "missing"
    elif _same(name, ours, gold):
        verdict = "empty" if name == "shape" and ours == "round" and not doubted else "right"
    else:
        verdict = "doubted" if doubted else "silent"
    return Outcome(
        file=file,
        request=number,
        field=name,
        stated=_shown(ours),
        gold=_shown(gold),
        verdict=verdict,
        needless_doubt=verdict == "right" and doubted and name not in label.doubt,
    )


def stated(request: SizeRequest, name: str) -> Value:
    """The value of one field as read, None where not given."""
    match name:
        case "od":
            return request.od_mm
        case "wall":
            return request.wall_mm
        case "clr":
            return request.clr_mm
        case "material":
            return request.material.value if request.material else None
        case "shape":
            return request.shape.value
        case "quantity":
            return request.quantity
        case "needed_by":
            return request.needed_by.isoformat() if request.needed_by else None
        case _:
            return request.grade


def _gold(label: GoldRequest, name: str) -> Value:
    value: Value = getattr(label, f"{name}_mm" if name in ("od", "wall", "clr") else name)
    return value


def is_doubted(request: SizeRequest, name: str) -> bool:
    """Whether the field carries a doubt."""
    return any(doubt.field == name for doubt in request.doubts)


def _same(name: str, ours: Value, gold: Value) -> bool:
    if isinstance(ours, Decimal) and isinstance(gold, Decimal):
        return abs(ours - gold) <= max(SLACK_MM, abs(gold) * SHARE)
    if name == "grade" and ours is not None and gold is not None:
        a, b = (re.sub(r"[\W_]+", "", str(value)).casefold() for value in (ours, gold))
        return bool(a and b) and (a in b or b in a)
    return ours == gold


def _shown(value: Value) -> str | None:
    return None if value is None else f"{value:f}" if isinstance(value, Decimal) else str(value)
