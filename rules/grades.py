"""Which family a grade's number belongs to, in each naming system.

grades.csv holds what is made as tube or asked for as tube, mostly from memory (SOURCES.md). A
number that isn't there has no family: never a guess from its first digits.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import Literal

from .request import Material
from .tables import rows

System = Literal["number", "werkstoff", "astm", "uns"]


def family_of_designation(system: System, designation: str) -> Material | None:
    """The family of '304' or '6061' (number: AISI, SAE, Aluminum Association), '1.4301'
    (werkstoff: EN 10027-2), 'A513' (astm) or 'S30403' (uns); None where it is not in the table.
    """
    table = _families()
    if system != "uns":
        return table.get((system, designation))
    # UNS codes are told by how they begin: S stainless, C70 copper-nickel.
    for length in (3, 2, 1):
        family = table.get(("uns", designation[:length]))
        if family is not None:
            return family
    return None


def is_known_alone(system: System, designation: str) -> bool:
    """Whether trade mail writes it with no other word for the material: '304', 'A513'."""
    return (system, designation) in _known_alone()


@dataclass(frozen=True, slots=True)
class WrittenForm:
    """How a designation that names its family itself is written: 'E235+N', 'St 37', 'CuNi10'."""

    first: str
    """The character it starts with, in small letters."""
    family: Material
    strength: Literal["sure", "weak"]
    """'weak' counts only beside a word for the same family: 'T6', 'grade 2', '90/10'."""
    any_case: bool
    pattern: str
    """A regular expression in verbose syntax; ``<temper>`` stands for an aluminium temper."""


@lru_cache(maxsize=1)
def written_forms() -> tuple[WrittenForm, ...]:
    """Every form of grade_patterns.csv."""
    return tuple(
        WrittenForm(
            first=row["first"],
            family=Material(row["family"]),
            strength="sure" if row["strength"] == "sure" else "weak",
            any_case=row["case"] == "any",
            pattern=row["pattern"],
        )
        for row in rows("grade_patterns.csv")
    )


@lru_cache(maxsize=1)
def _rows() -> tuple[dict[str, str], ...]:
    return rows("grades.csv")


@lru_cache(maxsize=1)
def _families() -> dict[tuple[str, str], Material]:
    return {(row["system"], row["designation"]): Material(row["family"]) for row in _rows()}


@lru_cache(maxsize=1)
def _known_alone() -> frozenset[tuple[str, str]]:
    return frozenset((row["system"], row["designation"]) for row in _rows() if row["known_alone"])
