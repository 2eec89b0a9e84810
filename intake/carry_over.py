"""A customer's next message joined to the sizes asked for before: fields filled, or replaced.

A gap that is filled, or a doubt settled by one of the readings that we offered, is plain. A figure
that takes the place of another is a doubt between the two, unless the customer says that it is a
correction. What fits nowhere is a note for the person, never dropped.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from decimal import Decimal
from typing import Any

from ..rules.request import Doubt, FieldName, Shape, SizeRequest

ATTRIBUTES: dict[FieldName, str] = {
    "od": "od_mm",
    "wall": "wall_mm",
    "clr": "clr_mm",
    "material": "material",
    "shape": "shape",
    "quantity": "quantity",
    "needed_by": "needed_by",
}
ONE_SIZE_MM = Decimal("0.05")
"""ODs as near as that are one: customers round to 0.1 mm (as in rules/catalogue.py)."""
_CORRECTS = re.compile(
    r"\b(?:sorry|instead|should\s(?:be|read|have\sbeen)|correct(?:ion|ed)?|change[ds]?|rather|"
    r"actually|wrong|mistake|typo|not|meant|statt|sondern|korrektur|nicht|falsch|pardon|plutôt|"
    r"erreur|perdón|error|scusa|errore|niet)\b",
    re.IGNORECASE,
)
_ADDS = re.compile(
    r"\b(?:also|another|as\swell|too|in\saddition|additional|plus|auch|außerdem|zusätzlich|noch|"
    r"aussi|également|también|anche|ook)\b",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class Change:
    """One field of one size (index from 0) that a message filled or replaced."""

    index: int
    field: FieldName
    before: object
    after: object


@dataclass(slots=True)
class Joined:
    """All sizes of an inquiry after a further message."""

    requests: list[SizeRequest]
    changes: list[Change] = field(default_factory=list)
    added: list[int] = field(default_factory=list)
    """Sizes (index from 0) that were not asked for before."""
    notes: list[str] = field(default_factory=list)


def carry_over(
    earlier: Sequence[SizeRequest], said: Iterable[SizeRequest], own_words: str
) -> Joined:
    """The sizes ``said`` in a further message joined to the ``earlier`` ones.

    ``own_words`` are what its sender newly wrote: they tell a correction from a further size.
    """
    joined = Joined(list(earlier))
    corrects, adds = _CORRECTS.search(own_words) is not None, _ADDS.search(own_words) is not None
    for new in said:
        if not given(new):
            continue
        targets = _targets(joined.requests, new, adds=adds)
        if targets is None:
            joined.notes.append(
                "the new message gives figures, and it is not clear for which size: read it"
            )
        elif not targets:
            joined.added.append(len(joined.requests))
            joined.requests.append(new)
        for index in targets or ():
            _fill(joined, index, new, corrects=corrects, shared=len(targets or ()) > 1)
    return joined


def given(request: SizeRequest) -> tuple[FieldName, ...]:
    """The fields that a message gives for a size."""
    return tuple(
        field
        for field, attribute in ATTRIBUTES.items()
        if getattr(request, attribute) is not None
        and (field != "shape" or request.shape is not Shape.ROUND)
    )


def _targets(
    requests: Sequence[SizeRequest], new: SizeRequest, *, adds: bool
) -> tuple[int, ...] | None:
    """Which sizes a message speaks of; empty: a further one; None: not clear."""
    if not requests:
        return ()
    if new.od_mm is None:
        return _without_od(requests, new)
    same = [i for i, one in enumerate(requests) if _near(one.od_mm, new.od_mm)]
    if len(same) == 1 and not _another(requests[same[0]], new, adds=adds):
        return (same[0],)
    if same:
        exact = [i for i in same if requests[i].wall_mm == new.wall_mm]
        return (exact[0],) if len(exact) == 1 else () if new.wall_mm and new.clr_mm else None
    open_od = [i for i, one in enumerate(requests) if one.od_mm is None or _offered(one, new)]
    if len(open_od) == 1 and not adds:
        return (open_od[0],)
    alone = new.wall_mm is None and new.clr_mm is None
    if len(requests) == 1 and alone and not adds:
        return (0,)  # "OD should be 1.625": nothing else was said, so it is no tube of its own
    return ()


def _without_od(requests: Sequence[SizeRequest], new: SizeRequest) -> tuple[int, ...] | None:
    if len(requests) == 1:
        return (0,)
    fields = given(new)
    lacking = tuple(
        i for i, one in enumerate(requests) if all(_open(one, field) for field in fields)
    )
    return lacking or None


def _another(one: SizeRequest, new: SizeRequest, *, adds: bool) -> bool:
    """Whether a whole size with the same OD is a further one: both other lengths differ."""
    if new.wall_mm is None or new.clr_mm is None or one.wall_mm is None or one.clr_mm is None:
        return False
    differ = (one.wall_mm != new.wall_mm) + (not _near(one.clr_mm, new.clr_mm))
    return differ == 2 or (adds and differ == 1)


def _open(request: SizeRequest, field: FieldName) -> bool:
    missing = getattr(request, ATTRIBUTES[field]) is None
    return missing or request.doubt_on(field) is not None


def _offered(one: SizeRequest, new: SizeRequest) -> bool:
    """Whether the new OD is one of the readings that were in doubt."""
    doubt = one.doubt_on("od")
    return doubt is not None and any(
        isinstance(reading, Decimal) and _near(reading, new.od_mm) for reading in doubt.readings
    )


def _near(one: Decimal | None, other: Decimal | None) -> bool:
    return one is not None and other is not None and abs(one - other) <= ONE_SIZE_MM


def _fill(joined: Joined, index: int, new: SizeRequest, *, corrects: bool, shared: bool) -> None:
    old = joined.requests[index]
    updates: dict[str, Any] = {}
    doubts = list(old.doubts)
    for name in given(new):
        attribute = ATTRIBUTES[name]
        before, after = getattr(old, attribute), getattr(new, attribute)
        was = old.doubt_on(name)
        doubts = [one for one in doubts if one.field != name]
        doubts += [one for one in new.doubts if one.field == name]
        updates[attribute] = after
        if name == "material" and (new.grade is not None or before != after):
            updates["grade"] = new.grade
        if before == after or (name in ("od", "clr") and _near(before, after)):
            if was is None:
                updates.pop(attribute)  # said again, perhaps rounded: the first figure stands
            continue
        joined.changes.append(Change(index, name, before, after))
        settles = was is not None and _text(after) in {_text(one) for one in was.readings}
        said_doubtful = any(one.field == name for one in doubts)
        if shared and not said_doubtful:
            doubts.append(_doubt(name, (after,), "said once, of several sizes"))
        elif before is not None and not (settles or corrects or said_doubtful):
            doubts.append(_doubt(name, (after, before), "your two messages differ"))
    if {"od_mm", "wall_mm"} & updates.keys():
        updates["nominal_pipe"] = new.nominal_pipe
    kept = [
        one
        for one in old.evidence
        if ATTRIBUTES[one.field] not in updates or one.field not in given(new)
    ]
    evidence = (*kept, *(one for one in new.evidence if ATTRIBUTES[one.field] in updates))
    joined.requests[index] = old.model_copy(
        update={**updates, "doubts": tuple(doubts), "evidence": evidence}
    )


def _doubt(field: FieldName, values: Iterable[object], why: str) -> Doubt:
    readings = (one if isinstance(one, Decimal) else _text(one) for one in values)
    return Doubt(field=field, readings=tuple(readings), why=why)


def _text(value: object) -> str:
    if isinstance(value, Decimal):
        return f"{value.normalize():f}"
    return str(getattr(value, "value", value))


def to_confirm(request: SizeRequest, why: str) -> SizeRequest:
    """A size that is taken from elsewhere: each length, and the material, is put for a yes."""
    fields: tuple[FieldName, ...] = ("od", "wall", "clr", "material")
    doubts = list(request.doubts)
    for name in fields:
        value = getattr(request, ATTRIBUTES[name])
        if value is not None and request.doubt_on(name) is None:
            doubts.append(_doubt(name, (value,), why))
    return request.model_copy(update={"doubts": tuple(doubts)})
