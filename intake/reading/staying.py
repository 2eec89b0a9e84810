"""Whether words say that what an earlier mail says stays: the rest of it, or a named field."""

from __future__ import annotations

import re
from typing import Literal

from .. import words_relying as words
from ..late import Late
from .quantity_words import COUNTS

Field = Literal["od", "wall", "clr", "material", "quantity"]
FIELDS: tuple[Field, ...] = ("od", "wall", "clr", "material", "quantity")

_CHANGES = Late(words.CHANGES)
_HOW_MANY, _NEEDS = Late(words.HOW_MANY), Late(words.NEEDS)
_REST, _STAYS, _SAME_BUT = Late(words.REST), Late(words.STAYS), Late(words.SAME_BUT)
_ALL_BUT = Late(words.ALL_BUT)
_NAMED = {field: Late([pattern]) for field, pattern in words.FIELDS.items()}
_SENTENCE = re.compile(r"(?<=[.?!;])\s+|\n\s*\n")
_DIGIT = re.compile(r"\d")
_WORD = re.compile(r"[^\W\d_]+")
_MOST_SENTENCES = 200


def fields_asked(text: str) -> frozenset[Field]:
    """What a quoted mail asks for: 'which material, and how many?'"""
    asking = [said for said in sentences(text) if said.endswith(("?", "？")) or _NEEDS.search(said)]
    found = {field for said in asking for field in FIELDS if _NAMED[field].search(said)}
    return frozenset(found | {"quantity"} if any(map(_HOW_MANY.search, asking)) else found)


def sentences(text: str) -> list[str]:
    """The sentences of a text, line wraps mended."""
    return [" ".join(part.split()) for part in _SENTENCE.split(text, _MOST_SENTENCES)]


def said_to_stay(said: str) -> list[Field]:
    """The fields that a sentence names as unchanged: not those of a clause with a new value."""
    all_but = _ALL_BUT.search(said)
    if all_but is not None:
        kept = said[all_but.end() :]
        return [field for field in FIELDS if _NAMED[field].search(kept)]
    if said.endswith("?") or not _STAYS.search(said):
        return []
    clauses = [c for c in said.split(", ") if not _DIGIT.search(c) and not _CHANGES.search(c)]
    return [field for field in FIELDS if any(map(_NAMED[field].search, clauses))]


def counts_anew(said: str) -> bool:
    """Whether a sentence gives a count: 'quantity now 3', 'Stückzahl bitte auf zwei erhöhen'."""
    counts = _DIGIT.search(said) is not None or any(
        COUNTS.get(word, 0) > 1 for word in _WORD.findall(said.casefold())
    )
    return counts and _NAMED["quantity"].search(said) is not None


def without_reliance(text: str) -> str:
    """The text without what only says that the rest stays: that is no business of its own."""
    kept: list[str] = []
    for part in _SENTENCE.split(text, _MOST_SENTENCES):
        if not takes_the_rest(" ".join(part.split())):
            kept.append(part)
            continue
        clauses = part.split(", ")
        left = [clause for clause in clauses if not takes_the_rest(clause)]
        kept.append(", ".join(left) if len(left) < len(clauses) else "")
    return "\n\n".join(kept)


def takes_the_rest(said: str) -> bool:
    """Whether a sentence says that all else stays as it was."""
    if _SAME_BUT.search(said):
        return True
    return _REST.search(said) is not None and _STAYS.search(said) is not None
