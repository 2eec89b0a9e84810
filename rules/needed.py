"""Is a mandrel needed at all? Published thresholds, with their sources and where they differ."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from functools import lru_cache
from typing import Literal

from .request import Material
from .tables import rows

Needed = Literal["needed", "either", "may not be needed"]


@dataclass(frozen=True, slots=True)
class MandrelNeed:
    """Whether a bend needs a mandrel, and by which thresholds."""

    needed: Needed
    why: str
    """What the sources say, one clause each."""
    source: str


@dataclass(frozen=True, slots=True)
class _Threshold:
    value: Decimal
    says: str
    source: str


def mandrel_need(
    *, wall_factor: Decimal, d_of_bend: Decimal, material: Material | None = None
) -> MandrelNeed:
    """Need for a mandrel: by W and k against published thresholds.

    Symbols: W wall factor [-]; k D of bend [-].
    Range: any possible round bend; no material but copper has thresholds of its own.
    Source: mandrel_thresholds.csv (S01, S03, S10; the empty bend from memory, M).

    k <= 1.5 or W > 20: needed; copper also for W > 15 at k <= 2.5. W from 15 to 20 at k >= 2:
    either. W < 15 at k >= 3, and W <= 10 at k >= 2: an empty bend may do. Else: either.

    >>> mandrel_need(wall_factor=Decimal(25), d_of_bend=Decimal(3)).needed
    'needed'
    """
    wf, k, limit = wall_factor, d_of_bend, _thresholds()
    if k <= limit["tight"].value:
        return _verdict("needed", "tight")
    if wf > limit["thin"].value:
        return _verdict("needed", "thin")
    if material is Material.COPPER and wf > limit["copper-thin"].value:
        if k <= limit["copper-tight"].value:
            return _verdict("needed", "copper-thin", "copper-tight")
        return _verdict("either", "copper-thin")
    if wf >= limit["thin-probably"].value:
        if k >= limit["wide-either"].value:
            return _verdict("either", "thin-probably", "thin", "wide-either")
        return _verdict("needed", "thin-probably")
    if k >= limit["heavy-wide"].value:
        return _verdict("may not be needed", "heavy-wide")
    if material is Material.COPPER and k >= limit["wide-either"].value:
        return _verdict("may not be needed", "copper-thin")
    if wf <= limit["heavier"].value and k >= limit["wide-either"].value:
        return _verdict("may not be needed", "heavier")
    return _verdict("either", "thin-probably", "heavy-wide")


@lru_cache(maxsize=64)
def _verdict(needed: Needed, *rules: str) -> MandrelNeed:
    found = [_thresholds()[rule] for rule in rules]
    sources = ", ".join(dict.fromkeys(t.source for t in found))
    return MandrelNeed(needed, "; ".join(f"{t.says} ({t.source})" for t in found), sources)


@lru_cache(maxsize=1)
def _thresholds() -> dict[str, _Threshold]:
    return {
        row["rule"]: _Threshold(Decimal(row["value"]), row["says"], row["source"])
        for row in rows("mandrel_thresholds.csv")
    }
