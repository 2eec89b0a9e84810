"""What changed in an inquiry in words: fields, lengths and decisions as ``show`` has them."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from decimal import Decimal

from ..rules.request import LENGTH_FIELDS
from ..rules.units import both_units
from .addressing import one_line
from .inquiry import Event, Inquiry
from .screen import ANSWERS, FIELD_WORDS, Unit

LONGEST_DETAIL = 160
_DECISIONS = {decision.value: words for decision, words in ANSWERS.items()}


def change(field: str, before: str | None, after: str | None, unit: Unit) -> str:
    """``wall: 0.083 in (2.108 mm) to 0.095 in (2.413 mm)``, or that the value read was right."""
    was, now = (_value(field, one, unit) for one in (before, after))
    label = FIELD_WORDS.get(field, field.replace("_", " "))
    return f"{label}: {now}, as read" if was == now else f"{label}: {was} to {now}"


def _value(field: str, value: str | None, unit: Unit) -> str:
    """A value as a person reads it: lengths in both units, the sender's first."""
    if value is None:
        return "not given"
    if field in LENGTH_FIELDS:
        return both_units(Decimal(value), unit, wall=field == "wall")
    return value.replace("_", " ") if field == "material" else value


def details(event: Event, inquiry: Inquiry) -> Iterator[str]:
    """The particulars of one line of the history, a line each."""
    number = event.detail.get("size")
    for key, value in event.detail.items():
        if key == "changes" and isinstance(value, dict):
            for name, (before, after) in value.items():
                yield change(name, before, after, _unit(inquiry, number))
        elif key == "changes" and isinstance(value, list):
            for one in value:
                told = change(
                    one["field"], one["before"], one["after"], _unit(inquiry, one["size"])
                )
                yield one_line(f"size {one['size']} {told}", LONGEST_DETAIL)
        elif key == "sizes" and isinstance(value, list):
            for index, one in enumerate(value, start=1):
                yield one_line(_size(one, _unit(inquiry, index)), LONGEST_DETAIL)
        elif key == "decision":
            yield f"decision: {_decision(str(value))}"
        elif key not in ("sha256", "name") and value not in (None, "", False):
            yield one_line(f"{key.replace('_', ' ')}: {value}", LONGEST_DETAIL)


def _unit(inquiry: Inquiry, number: object) -> Unit:
    """The unit that a size (from 1) is written in; mm where the inquiry has it no more."""
    sizes = inquiry.assessments
    if isinstance(number, int) and 0 < number <= len(sizes):
        return sizes[number - 1].request.written_in
    return "mm"


def _size(one: Mapping[str, str], unit: Unit) -> str:
    """``OD 1.5 in (38.1 mm), wall 0.095 in (2.413 mm), material alloy steel, decision decline``."""
    words = []
    for name, value in one.items():
        field = name.removesuffix("_mm")
        label = FIELD_WORDS.get(field, field)
        words.append(
            f"{label} {_decision(value) if field == 'decision' else _value(field, value, unit)}"
        )
    return ", ".join(words)


def _decision(short: str) -> str:
    """``2 from stock, 1 ask first``, of what the store has: ``2 stock, 1 ask``."""
    return ", ".join(
        " ".join(_DECISIONS.get(word, word) for word in part.split(" "))
        for part in short.split(", ")
    )
