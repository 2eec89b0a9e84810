"""A person's correction of one field, in any notation that the reader knows."""

from __future__ import annotations

from datetime import date
from decimal import Decimal, InvalidOperation

from ...rules.request import Material
from ...rules.units import tidy
from .material.materials import find_materials
from .sizes.choices import Length
from .sizes.settle import length_of
from .text.layout import lay_out
from .text.lexer import lex
from .text.plain import flatten

_LENGTHS: dict[str, Length] = {"od": "od", "wall": "wall", "clr": "clr"}


def parse_field(field: str, text: str) -> Decimal | Material | str | int | date | None:
    """The value of a field as a person writes it; None where it can't be read.

    Lengths in mm: '1 3/4 in', '16ga', '57mm'. '2D' gives None: it needs the OD.
    """
    words = text.strip()
    if field in _LENGTHS:
        return _length(_LENGTHS[field], words)
    if field == "material":
        return _material(words)
    if field == "quantity":
        return int(words) if words.isdecimal() else None
    return words or None


def _material(words: str) -> Material | None:
    try:
        return Material(words.casefold().replace(" ", "_"))
    except ValueError:
        found = find_materials(words)
        return found[0].family if found else None


def _length(field: Length, words: str) -> Decimal | None:
    plain = flatten(words)
    figures = [
        figure for figure in lay_out(lex(plain.text), plain.text).figures if figure.is_measure
    ]
    if len(figures) != 1 or figures[0].unit in ("D", "sch"):
        return None
    figures[0].give(field, "sign")
    try:
        value = length_of(figures[0], field)
    except InvalidOperation:
        return None
    return tidy(value) if value is not None else None
