"""How long work takes, told apart from how slow the machine is just now.

A bound in plain seconds fails on a slow or busy machine, whatever the work does. So a fixed piece
of work of the same sort is timed right before and after, and the time compared is what a machine
would take that needs `USUAL_S` for that piece.
"""

from __future__ import annotations

import re
import time
from collections.abc import Callable

import pytest

USUAL_S = 0.02  # the fixed piece on the machine where the bounds were chosen

_WORD = re.compile(r"(?:\d+[.,/]?)+|[a-z]+(?:'s)?")
_TEXT = "need 1 mandrel for 1.75 x .095 wall, 5 1/4 clr; what's the price\n" * 800


def fixed_piece() -> float:
    """Processor seconds of a piece of searching, splitting and counting."""
    start = time.process_time()
    seen: dict[str, int] = {}
    for found in _WORD.finditer(_TEXT):
        word = found.group().casefold()
        seen[word] = seen.get(word, 0) + 1
    lines = [line.split(" ") for line in _TEXT.splitlines()]
    sorted((len(line), word) for line in lines for word in line)
    return time.process_time() - start


def usual_seconds(work: Callable[[], object]) -> float:
    """Processor seconds of `work`, as they would be at the usual pace."""
    before = fixed_piece()
    start = time.process_time()
    work()
    took = time.process_time() - start
    return took * USUAL_S / max(before, fixed_piece(), 1e-9)


def assert_quick(work: Callable[[], object], within: float, tries: int = 5) -> None:
    """Fails if the best of up to `tries` times takes `within` seconds or more at the usual pace."""
    took = []
    for _ in range(tries):
        took.append(usual_seconds(work))
        if took[-1] < within:
            return
    pytest.fail(f"took {min(took):.2f} s at the usual pace, best of {tries}; allowed: {within} s")
