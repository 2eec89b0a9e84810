"""A day as somebody wrote it, and the days that it may mean."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Literal

Kind = Literal["figures", "short", "named", "counted"]
"""With a year; without one; with a month's name; all else that counts from the mail."""


@dataclass(frozen=True, slots=True)
class Written:
    """A day as written: words ``start`` to ``end``, and the days it may mean, likeliest first."""

    start: int
    end: int
    kind: Kind
    days: tuple[date, ...]
    why: str = ""
    """Why there is more than one."""
    fraction: bool = False
    """'1/8' may as well be an eighth of an inch."""
