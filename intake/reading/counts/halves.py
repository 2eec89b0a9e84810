"""Counts of two sizes told as halves: 'a dozen mandrels, half for 1.5 x .065 and half for 2 x
.083'."""

from __future__ import annotations

from ...late_pattern import late_pattern

_HALF_FOR = late_pattern(
    r"\b(?:half|(?:die )?hälfte|(?:la )?moitié|(?:la )?mitad|(?:la )?metà|(?:de )?helft)"
    r"(?: (?:of (?:them|these|those|it)|davon|d'entre eux|de ellos|di questi|ervan|hiervan))?"
    r" (?:for|to fit|in|für|pour|para|per|voor) "
)
_HALVES = 2


def counts_by_halves(folded: str, places: list[int], total: int | None) -> list[int]:
    """The counts of two sizes, whose ``places`` are in order; none where nothing halves a total."""
    if total is None or total % _HALVES or len(places) != _HALVES:
        return []
    halves = [match.end() for match in _HALF_FOR.finditer(folded)]
    if len(halves) != _HALVES or not halves[0] <= places[0] < halves[1] <= places[1]:
        return []
    return [total // _HALVES] * _HALVES
