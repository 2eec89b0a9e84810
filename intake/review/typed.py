"""What a person typed into the fields of a size: which of it is a change, and what it means."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal
from typing import get_args

from ...rules.request import LENGTH_FIELDS, FieldName, SizeRequest
from ...rules.units import converted_in, format_in, format_mm
from ..corrections import CorrectionError, parse_changes
from ..desk_fields import Value
from ..screen import material

FIELDS: tuple[FieldName, ...] = (
    "od", "wall", "clr", "material", "quantity", "needed_by", "shape",
)  # fmt: skip
LONGEST = 200
"""[characters] No size takes more to write."""

Changes = dict[int, dict[str, Value]]
"""Index of the size, from 0, to field and value."""


class NoSuchReading(ValueError):
    """A button for a doubt that this inquiry does not have (any more)."""


@dataclass(frozen=True, slots=True)
class Typed:
    """The changes that were typed, and a sentence for each field that can't be read."""

    changes: Changes = field(default_factory=dict)
    wrong: dict[str, str] = field(default_factory=dict)


def key(name: str, index: int) -> str:
    """What a field of size ``index`` is called in the form: 'wall-1' for the first."""
    return f"{name}-{index + 1}"


def shown(request: SizeRequest, name: FieldName) -> str:
    """What stands in a field before anybody types: the value in the sender's own unit."""
    if name in LENGTH_FIELDS:
        length = request.length_mm(name)
        if length is None:
            return ""
        if request.written_in == "mm":
            return f"{format_mm(length)} mm"
        inches = format_in(length, wall=name == "wall")
        return f"{inches} in"
    if name == "material":
        return material(request).removesuffix("?").replace("–", "")
    value = getattr(request, name)
    return "" if value is None else str(value)


def other_unit(request: SizeRequest, name: FieldName) -> str:
    """A length in the unit that the sender did not use; empty for all else."""
    if name not in LENGTH_FIELDS or (length := request.length_mm(name)) is None:
        return ""
    if request.written_in == "in":
        return f"{format_mm(length)} mm"
    return f"{converted_in(length, wall=name == 'wall')} in"


def typed_changes(form: Mapping[str, str], requests: Sequence[SizeRequest]) -> Typed:
    """What of the form differs from the sizes as they stand. A field left out is no change."""
    typed = Typed()
    for index, request in enumerate(requests):
        for name in FIELDS:
            place = key(name, index)
            words = form.get(place, shown(request, name)).strip()
            if words == shown(request, name):
                continue
            try:
                found = _read(words, name, index, requests)
            except CorrectionError as error:
                typed.wrong[place] = str(error).partition(": ")[2] or str(error)
            else:
                typed.changes.setdefault(index, {}).update(found)
    return typed


def _read(
    words: str, name: FieldName, index: int, requests: Sequence[SizeRequest]
) -> Mapping[str, Value]:
    if len(words) > LONGEST:
        raise CorrectionError(f"{name}: this is too long for a figure")
    return parse_changes([f"{index + 1}.{name}={words}"], requests=requests)[1]


def settled(button: str, requests: Sequence[SizeRequest]) -> Changes:
    """The change that a click on one reading of a doubt makes: ``wall-1:0``.

    Raises NoSuchReading.
    """
    place, _, which = button.partition(":")
    for index, request in enumerate(requests):
        for name in get_args(FieldName):
            if key(name, index) != place:
                continue
            readings = list(readings_of(request, name))
            if which.isdecimal() and int(which) < len(readings):
                value = _as_value(readings[int(which)], name, index, request, requests)
                return {index: dict(value)}
    raise NoSuchReading("that doubt is not there any more: nothing was changed")


def readings_of(request: SizeRequest, name: FieldName) -> Iterator[Decimal | str]:
    """The readings that a doubt on the field leaves, the stated one first, each once."""
    doubt = request.doubt_on(name)
    if doubt is None:
        return
    stated = getattr(request, f"{name}_mm" if name in LENGTH_FIELDS else name)
    first = () if stated is None else (stated if isinstance(stated, Decimal) else str(stated),)
    yield from dict.fromkeys((*first, *doubt.readings))


def _as_value(
    reading: Decimal | str,
    name: FieldName,
    index: int,
    request: SizeRequest,
    requests: Sequence[SizeRequest],
) -> Mapping[str, Value]:
    stated = getattr(request, f"{name}_mm" if name in LENGTH_FIELDS else name)
    if stated is not None and str(stated) == str(reading):
        return {name: stated}  # as read, and its grade stays with it
    if name in LENGTH_FIELDS and isinstance(reading, Decimal):
        return {name: reading}
    if name == "quantity":
        return {name: int(reading)}
    if name == "needed_by":
        return {name: date.fromisoformat(str(reading))}
    try:
        return _read(str(reading), name, index, requests)
    except CorrectionError as error:
        raise NoSuchReading(f"that reading can't be taken as it stands: {error}") from error
