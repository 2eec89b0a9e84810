"""Tube materials: typical figures of grades, and the trade words that name a family.

The figures are catalogue minima or typical values, most from memory (see ``confidence``): they
serve advice, never a firm promise. 'DOM' or 'chromoly' without a grade is a family, not a number.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from functools import lru_cache
from typing import Literal, cast

from .request import Frozen, Material
from .tables import rows

WordKind = Literal["word", "base", "process", "coat", "weak"]


class MaterialEntry(Frozen):
    """One grade in one condition. None is 'not in the source'."""

    name: str
    aliases: tuple[str, ...]
    family: Material
    condition: str
    yield_mpa: Decimal | None
    ultimate_mpa: Decimal | None
    elongation_pct: Decimal | None
    e_gpa: Decimal | None
    density_g_cm3: Decimal | None
    value_kind: str
    """'min', 'typical', 'vendor table' ...: what the figures are."""
    source: str
    confidence: str
    """'seen' where the table was read, 'memory' where it was not."""
    note: str


@dataclass(frozen=True, slots=True)
class MaterialWord:
    """A phrase customers use for a family: casefolded words, as they follow one another."""

    words: tuple[str, ...]
    family: Material
    kind: WordKind
    """'base' is bare 'steel': any more exact steel beside it wins. 'process' (DOM, ERW) is a
    grade of its own, but gives way to a grade of another family ('304 ERW'); so does a 'coat'
    ('409 aluminized'), which is no grade. 'weak' ('type L')
    counts only beside another word or grade of its family."""
    is_symbol: bool
    """'Ti', 'Cu': only written so, and only where a sentence doesn't go on."""
    needs_tube: bool
    """'CS', 'iron': only right before a word for tube ('CS pipe') or after 'material'."""


@lru_cache(maxsize=1)
def entries() -> tuple[MaterialEntry, ...]:
    """All grades of materials.csv, each with its source and how sure it is."""
    return tuple(
        MaterialEntry(
            name=row["name"],
            aliases=tuple(filter(None, row["aliases"].split("|"))),
            family=Material(row["family"]),
            condition=row["condition"],
            yield_mpa=_figure(row["yield_mpa"]),
            ultimate_mpa=_figure(row["ultimate_mpa"]),
            elongation_pct=_figure(row["elongation_pct"]),
            e_gpa=_figure(row["e_gpa"]),
            density_g_cm3=_figure(row["density_g_cm3"]),
            value_kind=row["value_kind"],
            source=row["source"],
            confidence=row["confidence"],
            note=row["note"],
        )
        for row in rows("materials.csv")
    )


def entry_of(grade: str) -> MaterialEntry | None:
    """The entry a grade names, as the customer wrote it ('SS 316L' no, '316L', 'e235 +n' yes).

    None where no entry, or more than one, goes by that name.
    """
    found = _by_name().get(_plain(grade), ())
    return found[0] if len(found) == 1 else None


@lru_cache(maxsize=1)
def words() -> tuple[MaterialWord, ...]:
    """Every phrase of material_words.csv."""
    return tuple(
        MaterialWord(
            words=tuple(row["phrase"].casefold().split()),
            family=Material(row["family"]),
            kind=cast(WordKind, row["kind"]),
            is_symbol="symbol" in row["needs"],
            needs_tube="tube" in row["needs"],
        )
        for row in rows("material_words.csv")
    )


def _figure(text: str) -> Decimal | None:
    return Decimal(text) if text else None


@lru_cache(maxsize=1)
def _by_name() -> dict[str, tuple[MaterialEntry, ...]]:
    found: dict[str, tuple[MaterialEntry, ...]] = {}
    for entry in entries():
        for name in {_plain(name) for name in (entry.name, *entry.aliases)}:
            found[name] = (*found.get(name, ()), entry)
    return found


def _plain(name: str) -> str:
    return "".join(name.casefold().replace("-", " ").split())
