"""Schedules of pipe by name: 'Std', 'sch 10S', 'extra heavy' (ASME B36.10M: STD, XS, XXS)."""

from __future__ import annotations

import re
from decimal import Decimal

from ..numbers.numbers import Number

_NAMED = re.compile(
    r"(?:(?:sch(?:[ée]d(?:ul[aeo])?)?|c[ée]d(?:ul[ae])?)\.?\s?)?(?P<name>std|xs|xxs|xh|xxh|10s|40s|80s|5s)\b",
    re.IGNORECASE,
)
_SPELLED = re.compile(
    r"(?:(?P<XXS>(?:double extra|xx)[- ](?:strong|heavy))|(?P<XS>(?:extra|x)[- ](?:strong|heavy))"
    r"|(?P<STD>(?:standard|std)\.?[- ](?:weight|wt|wall)))\b(?!\s?duty)\.?",
    re.IGNORECASE,
)
_PIPE = re.compile(r"\b(?:pipes?|nps|black iron)\b(?! rack| bender)", re.IGNORECASE)
_BESIDE_PIPE = 40
"""Characters from 'extra heavy' to the 'pipe' that it goes with: tube has no weights."""
_WHOLE = re.compile(r"\d{1,3}")
STARTS = frozenset("sxdec")
"""What the names that begin with a letter begin with."""


def schedule_at(text: str, at: int) -> tuple[str, int] | None:
    """The schedule named in words at a place, as the pipe table calls it, and where it ends."""
    if at and text[at - 1].isalpha():
        return None
    spelled = _SPELLED.match(text, at, at + _BESIDE_PIPE)
    if spelled is not None and spelled.lastgroup is not None:
        begin = max(0, at - _BESIDE_PIPE)
        if _PIPE.search(text, begin, spelled.end() + _BESIDE_PIPE):
            return spelled.lastgroup, spelled.end()
    named = _NAMED.match(text, at)
    return None if named is None else (named["name"].upper(), named.end())


def whole_schedule(text: str, number: Number | None) -> Number | None:
    """A schedule's number alone: 'sch 40 3/4 pipe' is no 40-3/4."""
    if number is None or number.style != "mixed":
        return number
    whole = _WHOLE.match(text, number.start)
    if whole is None:
        return number
    return Number(whole.start(), whole.end(), (Decimal(whole[0]),), "integer")
