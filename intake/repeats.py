"""'Same as last time': whether a message points at an earlier order instead of giving sizes."""

from __future__ import annotations

import re

from .late_pattern import late_pattern

_AS_BEFORE = late_pattern(
    r"\b(?:same\s(?:as|again|one|size|thing)|as\s(?:last|before|previous\w*|usual)|last\s(?:time|order)"
    r"|(?:repeat|re-?order)\b|wie\s(?:letztes|beim\sletzten|gehabt|zuletzt)|comme\sla\sdernière"
    r"|como\sla\súltima|come\sl['’]ultima|hetzelfde|zelfde\sals)",
    re.IGNORECASE,
)


def as_before(text: str) -> bool:
    """Whether the sender's own words point at an earlier order."""
    return bool(_AS_BEFORE.search(text))
