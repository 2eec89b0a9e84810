"""Whether words say that what an earlier mail says stays: the rest of it, or a named field."""

from __future__ import annotations

import re
from typing import Literal

from ... import words_relying as words
from ...late import Late
from ...late_pattern import late_pattern
from ..counts.words import COUNTS
from ..material.materials import find_materials

Field = Literal["od", "wall", "clr", "material", "quantity"]
FIELDS: tuple[Field, ...] = ("od", "wall", "clr", "material", "quantity")

_CHANGES = Late(words.CHANGES)
_ACTUALLY = late_pattern(
    r"\b(?:actually|en fait|en réalité|eigentlich|tatsächlich|en realidad|in realtà|eigenlijk)\b",
    re.IGNORECASE,
)
_DENIED = late_pattern(
    r"\b(?:not|no longer|nicht|kein\w{0,2}|pas|non|niet|geen|no)"
    r"\s(?:in\s|en\s|de\s|van\s|aus\s|from\s)?(?P<denied>[^\s,.;][^,.;\n]{0,24})",
    re.IGNORECASE,
)
_HOW_MANY, _NEEDS = Late(words.HOW_MANY), Late(words.NEEDS)
_REST, _STAYS, _SAME_BUT = Late(words.REST), Late(words.STAYS), Late(words.SAME_BUT)
_ALL_BUT = Late(words.ALL_BUT)
_NAMED = {field: Late([pattern]) for field, pattern in words.FIELDS.items()}
_SENTENCE = re.compile(r"(?<=[.?!;])\s+|\n\s*\n")
_DIGIT = re.compile(r"\d")
_WORD = re.compile(r"[^\W\d_]+")
_MOST_SENTENCES = 200
SHORT = 200
"""Characters of a reply that changes one thing and says hardly more."""


def fields_asked(text: str) -> frozenset[Field]:
    """What a quoted mail asks for: 'which material, and how many?'"""
    asking: list[str] = []
    listed = False
    for said in sentences(text):
        needs = _NEEDS.search(said) is not None
        if listed or needs or said.endswith(("?", "？")):
            asking.append(said)
        listed = needs and said.endswith(":")  # "We still need to know:", and a list below
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


def says_otherwise(text: str) -> bool:
    """Whether a short reply puts a material right: 'make it 304', 'inox, no de acero'."""
    if len(text.strip()) > SHORT:
        return False
    if _CHANGES.search(text) is not None or _ACTUALLY.search(text) is not None:
        return True
    return any(find_materials(denied["denied"]) for denied in _DENIED.finditer(text))


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
