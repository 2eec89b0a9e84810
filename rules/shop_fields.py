"""Kinds of values that the owner writes in shop files, each refused in one clear sentence."""

from __future__ import annotations

import re
from decimal import Decimal
from typing import Annotated

from pydantic import BeforeValidator, Field

from .units import parse_length


def _length(value: object) -> Decimal:
    if not isinstance(value, str):
        raise ValueError(f'{value} has no unit: write e.g. "1.75 in" or "38 mm", in quotes')
    return parse_length(value)


def _number(value: object) -> Decimal:
    if isinstance(value, bool) or not isinstance(value, (int, Decimal)):
        raise ValueError(f"{value!r} is not a number: write it without quotes")
    return Decimal(value)


def _cell_number(value: object) -> Decimal:
    """A bare number in a table, where everything is text."""
    text = str(value)
    if not re.fullmatch(r"\d{1,6}(?:\.\d{1,6})?", text):
        raise ValueError(f"{text!r} is not a number: write e.g. 2.5")
    return Decimal(text)


def _line(value: object) -> object:
    """Names go into headers of drafts, where a line break would start another header."""
    if isinstance(value, str):
        if not value.strip():
            raise ValueError("is empty")
        if not value.isprintable():
            raise ValueError(f"{value!r} holds a line break or another control character")
        return value.strip()
    return value


Length = Annotated[Decimal, BeforeValidator(_length), Field(gt=0)]
"""A length as written in a shop file, with its unit; kept as exact mm."""
Number = Annotated[Decimal, BeforeValidator(_number)]
CellNumber = Annotated[Decimal, BeforeValidator(_cell_number)]
Line = Annotated[str, BeforeValidator(_line)]
Days = Annotated[int, Field(strict=True, ge=0)]
Count = Annotated[int, Field(ge=0)]
