"""What every formula of the trade shares: a value for "outside its range", and its description.

A formula's docstring is the one place that says what it is: first line ``Title: formula.``, then
``Symbols:``, ``Range:`` and ``Source:``, then an example that is run as a test. ``described``
reads it, so that ``bendreply explain`` prints the very words that stand beside the code.
"""

from __future__ import annotations

import inspect
import re
from collections.abc import Callable
from dataclasses import dataclass
from decimal import Decimal
from functools import lru_cache

from .bend import is_possible_clr
from .tube import is_possible_wall

PI = Decimal("3.141592653589793238462643383279503")


@dataclass(frozen=True, slots=True)
class Outside:
    """No figure, because the inputs lie outside a formula's range or a table; ``reason`` says so.

    Never replaced by the nearest figure that the formula or table would give.
    """

    reason: str
    """One clause without a full stop, e.g. 'the table ends at 3 D'."""


@dataclass(frozen=True, slots=True)
class Described:
    """A formula in words, as its docstring has it."""

    title: str
    formula: str
    symbols: str
    """'OD outside diameter [mm]; CLR centreline radius [mm]'."""
    valid: str
    source: str


@lru_cache(maxsize=128)
def described(formula: Callable[..., object]) -> Described:
    """What the docstring of ``formula`` says of it.

    Raises ValueError where a part is missing: our own fault, which the tests look for.
    """
    text = inspect.getdoc(formula) or ""
    first, _, rest = text.partition("\n")
    title, _, law = first.rstrip(".").partition(": ")
    parts = {
        name: " ".join(body.split()).rstrip(".")
        for name, body in re.findall(r"^(\w+): (.*?)(?=^\w+: |^\s*$|\Z)", rest, re.M | re.S)
    }
    missing = [name for name in ("Symbols", "Range", "Source") if not parts.get(name)]
    if missing or not law:
        raise ValueError(
            f"{getattr(formula, '__name__', formula)}: its docstring lacks "
            f"{', '.join(missing) or 'the formula in its first line'}"
        )
    return Described(title, law, parts["Symbols"], parts["Range"], parts["Source"])


def no_bend(od_mm: Decimal, clr_mm: Decimal) -> Outside | None:
    """Why no tube can be bent so, or None where it can."""
    if is_possible_clr(od_mm=od_mm, clr_mm=clr_mm):
        return None
    return Outside("a CLR of half the OD or less leaves no inside radius")


def no_tube(od_mm: Decimal, wall_mm: Decimal) -> Outside | None:
    """Why no tube can have that wall, or None where it can."""
    if is_possible_wall(od_mm=od_mm, wall_mm=wall_mm):
        return None
    return Outside("the wall has to be above 0 and less than half the OD")


def not_positive(**values: Decimal) -> Outside | None:
    """Names the first of ``values`` that is 0 or less; None where all are above 0."""
    name = next((name for name, value in values.items() if value <= 0), None)
    return Outside(f"{name.replace('_', ' ')} has to be above 0") if name else None
