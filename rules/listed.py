"""Which listed materials a customer's grade may mean, and what they are listed with.

'DOM', 'ERW', 'chromoly' or 'mild steel' alone name a family, not a material: nothing is listed for
them. '4130' or '6061' without a temper may mean any condition in the table, so figures come as a
range over all of them.
"""

from __future__ import annotations

import re
from decimal import Decimal
from functools import lru_cache

from .materials import MaterialEntry, entries, words
from .request import Material


@lru_cache(maxsize=512)
def listed(grade: str | None, family: Material | None) -> tuple[MaterialEntry, ...]:
    """Every entry of materials.csv that ``grade`` may mean; () where none, or only a family is
    named. An entry of another family than ``family`` is never meant.

    >>> [entry.name for entry in listed("4130", Material.ALLOY_STEEL)]
    ['4130 normalized', '4130 annealed']
    >>> listed("DOM", Material.CARBON_STEEL)
    ()
    """
    if grade is None or (asked := _tokens(grade)) in _family_words():
        return ()
    known = [e for e in entries() if family is None or e.family is family]
    for wanted in (asked, asked - {word for phrase in _family_words() for word in phrase}):
        if exact := [e for e in known if _tokens(e.name) == wanted]:
            return tuple(exact)
        if any(map(_is_number, wanted)):
            part = [e for e in known if any(wanted <= name for name in _names(e))]
        else:  # 'Grade 2': too short a number to be looked for inside other names
            part = [e for e in known if _has_digit(wanted) and wanted in _names(e)]
        if part:
            return tuple(part)
    return ()


def elongation_range(listed_entries: tuple[MaterialEntry, ...]) -> tuple[Decimal, Decimal] | None:
    """Least and most elongation [%] of the entries; None where none lists any."""
    figures = [e.elongation_pct for e in listed_entries if e.elongation_pct is not None]
    return (min(figures), max(figures)) if figures else None


def _names(entry: MaterialEntry) -> list[frozenset[str]]:
    return [_tokens(name) for name in (entry.name, *entry.aliases)]


@lru_cache(maxsize=1)
def _family_words() -> frozenset[frozenset[str]]:
    return frozenset(frozenset(word.words) for word in words())


@lru_cache(maxsize=1024)
def _tokens(name: str) -> frozenset[str]:
    return frozenset(re.split(r"[\s\-+/]+", name.casefold().strip()))


def _is_number(token: str) -> bool:
    """'4130', '316l', 'e235': a designation, where 't6' or '5' alone would match too much."""
    return len(token) >= 3 and any(char.isdigit() for char in token)


def _has_digit(tokens: frozenset[str]) -> bool:
    return any(char.isdigit() for token in tokens for char in token)
