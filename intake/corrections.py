"""What a person writes after ``correct``: FIELD=VALUE, in any notation the reader knows."""

from __future__ import annotations

import re
from collections.abc import Sequence
from datetime import date
from decimal import Decimal

from ..rules.request import Shape
from .reading import parse_field
from .reading.materials import find_materials

Value = Decimal | str | int | date | None

FIELDS = ("od", "wall", "clr", "material", "grade", "shape", "quantity", "needed_by")
_WRITTEN = re.compile(r"(?:(\d+)\.)?([\w-]+)\s*=(.*)", re.DOTALL | re.ASCII)


class CorrectionError(ValueError):
    """A correction that can't be understood; the message is the sentence for the person."""


def parse_changes(written: Sequence[str], *, sizes: int) -> tuple[int, dict[str, Value]]:
    """(index of the size from 0, field -> value) of ``od="1 3/4 in"`` or ``2.wall=16ga``.

    ``sizes`` is how many the inquiry has: with several, the corrections say which one. An empty
    value says "not given". Lengths come back in mm. Raises CorrectionError.
    """
    changes: dict[str, Value] = {}
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
        if name in changes:
            raise CorrectionError(f"{name} is given twice")
        numbers.add(int(match[1]) if match[1] else None)
        changes |= _value(name, match[3].strip())
    if len(numbers) > 1:
        raise CorrectionError("one size at a time: these corrections name several")
    number = numbers.pop() if numbers else None
    if number is None and sizes > 1:
        raise CorrectionError(
            f"this inquiry has {sizes} sizes: say which one is meant, e.g. 2.{written[0].strip()}"
        )
    return (number or 1) - 1, changes


def _value(name: str, words: str) -> dict[str, Value]:
    if not words:
        return {name: None}
    match name:
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
