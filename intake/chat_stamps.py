"""Chat that was pasted into a mail: who wrote a line, and when, are no words of it."""

from __future__ import annotations

import re
from collections.abc import Sequence

from .late_pattern import late_pattern

DAY = r"\d{1,4}[/.-]\d{1,2}(?:[/.-]\d{2,4})?\.?"
TIME = r"\d{1,2}[:.]\d{2}(?:[:.]\d{2})?(?:\s?[ap]\.?m\.?)?"
_WHO = r"[^\W\d_][^:\n\d]{0,30}:"
_STAMP = late_pattern(
    rf"[ \t\u200e]*(?:\[(?:{DAY},?\s{{1,2}})?{TIME}(?:,?\s{{1,2}}{DAY})?\]\s{{0,2}}(?:{_WHO})?"
    rf"|{DAY},?\s{{1,2}}{TIME}\s-\s{_WHO}"
    rf"|[^\W\d_][^:\n\d\[]{{0,30}},?\s\[{DAY},?\s{{1,2}}{TIME}\]:?)[ \t]*",
    re.IGNORECASE,
)
"""'[26/10, 13:02] Toby: ', '26/10/2026, 13:02 - Toby: ', 'Toby, [26.10.2026 13:02]'."""
_FEWEST = 2


def stamp_widths(lines: Sequence[str]) -> dict[int, int]:
    """How many characters of each line are such a stamp; nothing where only one line has it."""
    widths = {
        number: found.end()
        for number, line in enumerate(lines)
        if ":" in line[:60] and (found := _STAMP.match(line)) is not None
    }
    return widths if len(widths) >= _FEWEST else {}
