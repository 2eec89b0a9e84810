"""Tools of a shelf looked up by the tube's OD, so that a large shelf costs no more than a small."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from decimal import Decimal
from functools import lru_cache
from typing import Generic, Protocol, TypeVar

from .by_value import Itself
from .tube import SAME_SIZE_MM


class HasOd(Protocol):
    """A tool for tubes of one OD."""

    @property
    def tube_od_mm(self) -> Decimal:
        """OD of the tube [mm]."""


T = TypeVar("T", bound=HasOd)


class ByOd(Generic[T]):
    """The tools of one shelf in the order of their tube's OD."""

    def __init__(self, tools: tuple[T, ...]) -> None:
        self._tools = tuple(sorted(tools, key=lambda tool: tool.tube_od_mm))
        self._ods = tuple(tool.tube_od_mm for tool in self._tools)

    def near(self, od_mm: Decimal) -> tuple[T, ...]:
        """The tools for a tube of ``od_mm`` [mm], both edges of SAME_SIZE_MM included."""
        first = bisect_left(self._ods, od_mm - SAME_SIZE_MM)
        return self._tools[first : bisect_right(self._ods, od_mm + SAME_SIZE_MM, lo=first)]


def tools_near(tools: tuple[T, ...], od_mm: Decimal) -> tuple[T, ...]:
    """Those of ``tools`` that are for a tube of ``od_mm`` [mm]; same OD, same order."""
    found: ByOd[T] = _sorted(Itself(tools))  # type: ignore[assignment]  # lru_cache knows no T
    return found.near(od_mm)


@lru_cache(maxsize=16)  # mandrels and dies of a few shops
def _sorted(tools: Itself[tuple[HasOd, ...]]) -> ByOd[HasOd]:
    return ByOd(tools.value)
