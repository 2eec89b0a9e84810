"""Sizes as customers write them, to put a count beside, and the counts that are read."""

from __future__ import annotations

from .reading.support import read_text

IN = "1.75 x .095 wall, 5.25 clr"
MM = "38 x 1,5 mm, R 57 mm"
A = "1.5 x .065, 4.5 clr"
B = "2 x .083, 6 clr"


def quantities(text: str, subject: str = "") -> list[int | None]:
    return [request.quantity for request in read_text(text, subject)]
