"""What a person writes after ``correct``: FIELD=VALUE, in any notation the reader knows."""

from __future__ import annotations

import re
from collections.abc import Sequence
from datetime import date
from decimal import Decimal

from ..rules.request import Shape, SizeRequest
from .reading import parse_field
from .reading.material.materials import find_materials
from .typed_lengths import NoLength, Unit, typed_length

Value = Decimal | str | int | date | None

FIELDS = ("od", "wall", "clr", "material", "grade", "shape", "quantity", "needed_by")
_COUNT = re.compile(r"-?\d{1,30}", re.ASCII)
_WRITTEN = re.compile(r"(?:(\d+)\.)?([\w-]+)\s*=(.*)", re.DOTALL | re.ASCII)


class CorrectionError(ValueError):
    """A correction that can't be understood; the message is the sentence for the person."""


def parse_changes(
    written: Sequence[str], *, requests: Sequence[SizeRequest]
) -> tuple[int, dict[str, Value]]:
    """(index of the size from 0, field -> value) of ``od="1 3/4 in"`` or ``2.wall=16ga``.

    ``requests`` are the inquiry's sizes: with several, the corrections say which one. An empty
    value says "not given". Lengths come back in mm, as typed: whether they can be is not judged
    here. Raises CorrectionError.
    """
    typed: dict[str, str] = {}
    numbers: set[int | None] = set()
    for one in written:
        match = _WRITTEN.fullmatch(one.strip())
        if match is None:
            raise CorrectionError(f"{one!r} is no correction: write e.g. wall=16ga or 2.od=38mm")
        name = match[2].casefold().replace("-", "_")
        if name not in FIELDS:
            raise CorrectionError(
                f"there is no field {match[2]!r}: the fields are {', '.join(FIELDS)}"
            )
        if name in typed:
            raise CorrectionError(f"{name} is given twice")
        numbers.add(int(match[1]) if match[1] else None)
        typed[name] = match[3].strip()
    if len(numbers) > 1:
        raise CorrectionError("one size at a time: these corrections name several")
    number = numbers.pop() if numbers else None
    if number is None and len(requests) > 1:
        raise CorrectionError(
            f"this inquiry has {len(requests)} sizes: say which one is meant, "
            f"e.g. 2.{written[0].strip()}"
        )
    index = 0 if number is None else number - 1
    unit = requests[index].written_in if 0 <= index < len(requests) else "in"
    changes: dict[str, Value] = {}
    for name, words in typed.items():
        changes |= _value(name, words, unit)
    return index, changes


def _value(name: str, words: str, unit: Unit) -> dict[str, Value]:
    if not words:
        return {name: None}
    match name:
        case "od" | "wall" | "clr":
            try:
                return {name: typed_length(name, words, unit)}
            except NoLength as error:
                why = str(error) or f"this can't be read as {_EXPECTED[name]}"
                raise CorrectionError(f"{name}={words}: {why}") from error
        case "quantity" if _COUNT.fullmatch(words):
            return {name: int(words)}
        case "grade":
            return {name: words}
        case "needed_by":
            try:
                return {name: date.fromisoformat(words)}
            except ValueError as error:
                raise CorrectionError(
                    f"needed_by={words}: write the date like 2026-12-01"
                ) from error
        case "shape":
            if words.casefold() not in set(Shape):
                raise CorrectionError(f"shape={words}: the shapes are {', '.join(Shape)}")
            return {name: words.casefold()}
    value = parse_field(name, words)
    if value is None:
        raise CorrectionError(f"{name}={words}: this can't be read as {_EXPECTED[name]}")
    if name == "material":
        # The grade goes with its family: "304" said of a tube read as carbon steel changes both.
        grades = [mention.grade for mention in find_materials(words)]
        return {name: value, "grade": next((grade for grade in grades if grade), None)}
    return {name: value}


_EXPECTED = {
    "od": 'one length, e.g. od="1 3/4 in"',
    "wall": "one wall, e.g. wall=.095 or wall=16ga",
    "clr": "one length, e.g. clr=57mm",
    "material": "a material, e.g. material=304",
    "quantity": "a number of mandrels, e.g. quantity=2",
}
