"""What shop.toml says of time: lead times in working days, and the days when the shop is closed."""

from __future__ import annotations

import re
from datetime import date
from typing import Annotated, Literal

from pydantic import BeforeValidator, Field, field_validator

from .request import Frozen
from .shop_fields import Days

LONGEST_CLOSURE_DAYS = 366
_WEEK = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
Weekday = Literal["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"]


class Closure(Frozen):
    """Days when nobody works: from one to another, both closed, or a day of every year."""

    first: date
    last: date
    every_year: bool = False
    """Only month and day of ``first`` count; the shop file writes it '12-25'."""


def _closure(value: object) -> object:
    if isinstance(value, date):
        return Closure(first=value, last=value)
    if isinstance(value, str):
        text = value.strip()
        if yearly := re.fullmatch(r"(\d\d)-(\d\d)", text):
            # 2024 is a leap year, so that 02-29 can be written.
            day = _day(f"2024-{yearly[0]}", value)
            return Closure(first=day, last=day, every_year=True)
        ends = [_day(part, value) for part in re.split(r"\s+to\s+", text, maxsplit=1)]
        closure = Closure(first=ends[0], last=ends[-1])
        if closure.last < closure.first:
            raise ValueError(f"{value!r} ends before it begins")
        if (closure.last - closure.first).days >= LONGEST_CLOSURE_DAYS:
            raise ValueError(f"{value!r} is longer than a year")
        return closure
    return value


def _day(text: str, written: str) -> date:
    try:
        return date.fromisoformat(text.strip())
    except ValueError:
        raise ValueError(
            f"{written!r} is no closed day: write '2026-12-24', '2026-12-24 to 2027-01-01', or "
            "'12-25' for every year"
        ) from None


def _weekday(value: object) -> object:
    return value.strip().casefold() if isinstance(value, str) else value


class LeadTimes(Frozen):
    """Working days until a mandrel leaves the shop, and which days are not worked."""

    stock_working_days: Days
    custom_working_days: Days
    closed_weekdays: tuple[Annotated[Weekday, BeforeValidator(_weekday)], ...] = Field(
        default=("saturday", "sunday")
    )
    closed_days: tuple[Annotated[Closure, BeforeValidator(_closure)], ...] = ()

    @field_validator("closed_weekdays")
    @classmethod
    def _works_some_day(cls, closed: tuple[Weekday, ...]) -> tuple[Weekday, ...]:
        if set(closed) == set(_WEEK):
            raise ValueError("leaves no day of the week to work on")
        return closed

    @property
    def open_weekdays(self) -> tuple[int, ...]:
        """Days of the week that are worked; Monday is 0."""
        return tuple(n for n, day in enumerate(_WEEK) if day not in self.closed_weekdays)
