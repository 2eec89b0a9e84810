"""Holds the figures of ``bendreply score --json`` (standard input) against a bar.

``bar.py NAME RIGHT SILENT CAUGHT RIGHTLY``, in per cent: sizes fully right at least, silent
misreads of stated values at most, automatic mail caught at least, and of what was taken for
automatic at least so much rightly. Exit status 1 where one is missed.
"""

from __future__ import annotations

import json
import sys
from decimal import Decimal

FIGURES = (
    ("fully_right", "sizes fully right", "at least"),
    ("silent_misreads", "silent misreads", "at most"),
    ("automatic_recall", "automatic caught", "at least"),
    ("automatic_precision", "rightly automatic", "at least"),
)


def main(name: str, *bars: str) -> int:
    """Print one line of figures, and one for each that misses its bar."""
    score = json.load(sys.stdin)
    shares = [100 * Decimal(str(score[key])) for key, _, _ in FIGURES]
    told = ", ".join(
        f"{what} {share:.1f} %" for (_, what, _), share in zip(FIGURES, shares, strict=True)
    )
    print(f"{name} ({score['messages']} messages): {told}")
    missed = 0
    for (_, what, side), share, bar in zip(FIGURES, shares, map(Decimal, bars), strict=True):
        if share < bar if side == "at least" else share > bar:
            print(f"  BELOW THE BAR: {what} {share:.1f} %, wanted {side} {bar} %")
            missed = 1
    return missed


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
