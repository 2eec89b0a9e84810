"""Counts at the ends of lines that only their place tells: '1.5 x .065, 4.5 clr - 2', '3 clr -1',
'4.5 clr, 2'. Where a list says so line by line, they are no radii."""

from __future__ import annotations

import re

_RADIUS = r"(?:(?:\b|(?<=\d))clr|\b(?:radius|rad)\.?|\br\s?\d[\d.,]*)"
_AT_END = re.compile(
    rf"(?:{_RADIUS}[ \t]{{1,4}}[–-][ \t]{{0,2}}"
    r"|\d[\"”]?\s?(?:(?:mm|in|inch)\.?\s)?(?:clr|radius|rad),[ \t]{1,2})"
    r"(?P<count>[1-9])[ \t]{0,3}$",
    re.IGNORECASE | re.MULTILINE,
)


def counts_at_line_ends(text: str) -> dict[int, int]:
    """Such counts by the place of their figure; none where a single line has one."""
    found = {match.start("count"): int(match["count"]) for match in _AT_END.finditer(text)}
    return found if len(found) > 1 else {}
