"""Tube materials in a text: family, grade as written, and whether it is what is wanted.

Words and designations are found one by one, then neighbours of one family become one mention
('DOM mild steel', 'stainless 1.4541'), and the more exact word wins over bare 'steel'.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import lru_cache

from ....rules.request import Material
from ...late_pattern import late_pattern
from ..text.plain import flatten
from .also import is_also_wanted
from .context import (
    are_alternatives,
    is_put_right,
    is_rejected,
    shares_rejection,
)
from .later import is_for_later
from .of_part import is_of_part
from .of_tool import is_about_tool
from .parts import TUBE, Kind, Part, parts_of


@dataclass(frozen=True, slots=True)
class MaterialMention:
    """A material at a place: ``text[start:end] == surface`` always."""

    start: int
    end: int
    surface: str
    family: Material
    grade: str | None
    """Whole, as the sender wrote it ('1020 DOM', '6061-T6'); None for a word ('stainless')."""
    rejected: bool = False
    """'not 304 this time', 'instead of steel', 'we used to use 4130 but'."""
    alternative: bool = False
    """One of two that the sender leaves open: '304 or 316', 'mild, stainless'."""
    base: bool = False
    """No more than 'steel', which may be any steel."""
    also: bool = False
    """'It must do stainless too': beside the one named before, not in its stead."""
    about_tool: bool = False
    """Not the tube's: the mandrel's, a flange's, a firm's name ('bronze mandrel', 'steel yard')."""


STEELS = (Material.CARBON_STEEL, Material.ALLOY_STEEL, Material.STAINLESS_STEEL)


# What may stand between two words for one and the same material.
_JOINT = late_pattern(r"[ -]{1,2}|[ ]?[/(,][ ]?|[ ]?\n[ ]?")
_LOOSE_JOINT = late_pattern(
    rf"[\s,:;()/=-]{{0,4}}(?:(?:round|welded|seamless)\s)?(?:{TUBE}[\s,:;()/=-]{{0,4}})?", re.I
)
_LONGEST_JOINT = 30
_THE_SAME = late_pattern(
    r"\b(?:same|identical|m[êe]me|gleiche[rnsm]?|selbe[rnsm]?|derselbe|demselben|mism[oa]|stess[oa]"
    r"|medesimo|zelfde|hetzelfde|ditto)\s$",
    re.I,
)
_BEFORE_STEEL = 14
"""Characters before 'steel' in which 'same' may stand."""
_MOST_NAMES = 4


@lru_cache(maxsize=4)
def find_materials(text: str) -> tuple[MaterialMention, ...]:
    """Every tube material the text names, in order: the first 500 words for one.

    Never raises on any text.
    """
    plain = flatten(text)
    parts = [part for part in _joined(plain.text, parts_of(plain.text)) if part.kind != "weak"]
    parts = [p for at, p in enumerate(parts) if not at or not _is_the_same(plain.text, p)]
    mentions = _judged(plain.text, parts)
    if plain.index is None:
        return tuple(mentions)
    placed = []
    for mention in mentions:
        start, end = plain.span(mention.start, mention.end)
        placed.append(replace(mention, start=start, end=end, surface=text[start:end]))
    return tuple(placed)


def _is_the_same(text: str, part: Part) -> bool:
    """'14 x 0.8, same steel': it names no steel, but the one that was named before."""
    before = text[max(0, part.start - _BEFORE_STEEL) : part.start]
    return part.kind == "base" and _THE_SAME.search(before) is not None


# --- neighbours ---------------------------------------------------------------------------------


def _joined(text: str, parts: Iterator[Part]) -> list[Part]:
    out: list[Part] = []
    for part in parts:
        both = _join(text, out[-1], part) if out else None
        if both is None:
            out.append(part)
        else:
            out[-1] = both
    return out


_RADIUS_BEFORE = late_pattern(
    r"(?:\br|radi(?:us|i|en)|rayon|radio|raggio|straal|clr)\.?\s?[:=]?\s?$", re.I
)
_LABEL = 12
"""Characters before a number in which its label stands."""


def _join(text: str, left: Part, right: Part) -> Part | None:
    """One part for two neighbours that speak of one material, or None."""
    if not 0 <= right.start - left.end <= _LONGEST_JOINT:
        return None
    gap = text[left.end : right.start]
    if _RADIUS_BEFORE.search(text, max(0, left.start - _LABEL), left.start) and "," in gap:
        return None  # "R 110, Kupfer" is no alloy 110
    if any(mark in gap for mark in "\t|;"):
        return None  # two cells of a table: in '110; copper' the first is a radius
    abbreviated = gap == ". " and text[left.end - 2] == "."  # 'S.S. 304'
    close = gap == "" or abbreviated or _JOINT.fullmatch(gap) is not None
    if not close and _LOOSE_JOINT.fullmatch(gap) is None:
        return None
    family = _common_family(left, right, close=close and "," not in gap and "/" not in gap)
    if family is None or "\n\n" in gap:
        return None
    if left.names and right.names and not _one_grade(left, right, gap):
        return None
    if len(left.names) >= _MOST_NAMES:
        return None
    kinds = (left.kind, right.kind)
    kind: Kind = next(k for k in ("sure", "process", "word", "coat", "base", "weak") if k in kinds)
    names = tuple(name for part in (left, right) if part.family is family for name in part.names)
    return Part(left.start, right.end, family, kind, names)


def _common_family(left: Part, right: Part, *, close: bool) -> Material | None:
    if left.family is right.family:
        return left.family
    for one, other in ((left, right), (right, left)):
        gives_way = (one.kind == "base" and other.family in STEELS) or (
            one.kind in ("process", "coat") and (other.names or other.kind == "word")
        )
        if gives_way and other.kind != "weak" and (close or other.names):
            return other.family
    return None


def _one_grade(left: Part, right: Part, gap: str) -> bool:
    """Whether two designations are one grade: '1020 DOM', '304/304L'; not '304, 316' or rows."""
    if left.family is not right.family:
        return True
    if "(" in gap:
        return False  # 'CuNi10 (90/10)' says the same again
    if "weak" in (left.kind, right.kind) or "process" in (left.kind, right.kind):
        return "\n" not in gap and "\t" not in gap
    return gap in ("", " ", "-", "/", " / ")


# --- what the sentence says of it ---------------------------------------------------------------


def _judged(text: str, parts: list[Part]) -> Iterator[MaterialMention]:
    previous: tuple[Part, bool] | None = None
    named = False
    """Whether a material was named that is wanted now."""
    for at, part in enumerate(parts):
        following = parts[at + 1] if at + 1 < len(parts) else None
        rejected = is_rejected(text, part.start, part.end) or (
            previous is not None
            and previous[1]
            and shares_rejection(text, previous[0].end, part.start)
        )
        if named and is_for_later(text, part.start, part.end):
            rejected = True
        named = named or not rejected
        if following is not None and is_put_right(text, part.end, following.start):
            rejected = True
        open_choice = (previous is not None and _is_choice(text, previous[0], part)) or (
            following is not None and _is_choice(text, part, following)
        )
        yield MaterialMention(
            part.start,
            part.end,
            text[part.start : part.end],
            part.family,
            _grade(text, part.names),
            rejected=rejected,
            alternative=open_choice and not rejected,
            base=part.kind == "base",
            also=is_also_wanted(text, part.start, part.end),
            about_tool=is_of_part(text, part.start, part.end)
            or is_about_tool(
                text, part.start, part.end, family=part.family, graded=bool(part.names)
            ),
        )
        previous = (part, rejected)


def _is_choice(text: str, left: Part, right: Part) -> bool:
    between = text[left.end : right.start]
    if left.family is right.family and not any(char.isalpha() for char in between):
        return False  # '316L (1.4404)' and '304, 316' leave no family open
    return are_alternatives(text, left.end, right.start)


def _grade(text: str, names: tuple[tuple[int, int], ...]) -> str | None:
    """The designation as written; pieces with other words between them are put side by side."""
    pieces: list[tuple[int, int]] = []
    for start, end in names:
        if pieces and not text[pieces[-1][1] : start].strip(" -/"):
            pieces[-1] = (pieces[-1][0], end)
        else:
            pieces.append((start, end))
    return " ".join(text[start:end] for start, end in pieces) or None
