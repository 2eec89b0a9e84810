"""The shortest input found that still has the same fault."""

from __future__ import annotations

from collections.abc import Callable


def shrunk(raw: bytes, still: Callable[[bytes], bool], tries: int = 3000) -> bytes:
    """Pieces are left out, large ones first, while ``still`` says that the fault stays."""
    size = max(1, len(raw) // 2)
    while tries > 0:
        at, shorter = 0, False
        while at < len(raw) and tries > 0:
            candidate = raw[:at] + raw[at + size :]
            tries -= 1
            if still(candidate):
                raw, shorter = candidate, True
            else:
                at += size
        if size == 1 and not shorter:
            break
        size = max(1, size // 2)
    return raw
