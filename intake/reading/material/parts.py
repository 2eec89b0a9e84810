"""Words and designations of materials, one by one, before neighbours are joined.

A word counts where it can be the tube's: 'Ti' not in an Italian sentence, 'iron' only as 'iron
pipe', nothing inside a mail or web address.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise
from typing import Literal

from ....rules.materials import MaterialWord, words
from ....rules.request import Material
from ...late_pattern import late_pattern
from .context import strength_here
from .grades import grade_at

Kind = Literal["sure", "process", "word", "coat", "base", "weak"]


@dataclass(frozen=True, slots=True)
class Part:
    """One word or designation, before neighbours are joined; ``names`` are spans of its grade."""

    start: int
    end: int
    family: Material
    kind: Kind
    names: tuple[tuple[int, int], ...] = ()


_TOKEN = late_pattern(r"[^\W_\u3040-\u30ff\u4e00-\u9fff]+|[\u3040-\u30ff\u4e00-\u9fff]+")
_EAST_ASIAN_FAMILY = {
    **dict.fromkeys(("ステンレス", "不锈钢", "不銹鋼"), Material.STAINLESS_STEEL),
    **dict.fromkeys(("炭素鋼", "碳钢", "鋼管", "钢管"), Material.CARBON_STEEL),
    **dict.fromkeys(("アルミ", "铝", "鋁"), Material.ALUMINIUM),
    **dict.fromkeys(("銅管", "铜管", "紫铜"), Material.COPPER),
    **dict.fromkeys(("真鍮", "黄铜"), Material.BRASS),
    **dict.fromkeys(("チタン", "钛"), Material.TITANIUM),
}
_EAST_ASIAN = late_pattern("|".join(_EAST_ASIAN_FAMILY))
# German, Dutch, Scandinavian senders glue the tube to its material: 'Edelstahlrohr', 'koperbuis'.
_GLUED_TUBE = late_pattern(r"(?:rohr(?:e|en|es|s)?|rör(?:et)?|rør(?:et)?|buis|buizen|pijp(?:en)?)$")
TUBE = (
    r"(?:tub(?:e|es|ing|ings|o|os|i|a)|pip(?:e|es|ing)|rohre?n?|rör|rør|buis|buizen|pijp|tuyaux?|"
    r"rur[ay]?|rurka|conduit|seamless|smls)"
)
_BEFORE_TUBE = late_pattern(
    rf"[\s-]{{1,2}}(?:(?:seamless|welded|round|iron)\s)?{TUBE}(?![^\W_])", re.I
)
# 'Ti' also opens Italian sentences, and 'mild' may be the weather.
_BEFORE_TUBE_OR_STOP = late_pattern(
    rf"[\s-]{{1,2}}(?:\w{{1,12}}[\s-])?{TUBE}(?![^\W_])"
    r"|[ ]?(?:$|[,;)/.?\n]|-?\d|(?:or|and|oder)\b)"
    # "mild in 2 x .083"
    r"|[ ](?:in|for|at|on)[ ](?:(?:an?|the|R)[ ])?\.?\d",
    re.I,
)
_AFTER_MATERIAL = late_pattern(
    r"(?:material|mat'?l?|mtl|werkstoff|matière|matiere|materiale|materiaal|materiał)\.?"
    r"\s{0,8}[:=-]?\s{0,8}(?:is\s)?$",
    re.I,
)
# No request names this many; it keeps a hostile mail of 100 kB from costing seconds.
_MOST_PARTS = 500


@lru_cache(maxsize=1)
def _by_first_word() -> dict[str, tuple[MaterialWord, ...]]:
    table: dict[str, list[MaterialWord]] = {}
    for word in words():
        table.setdefault(word.words[0], []).append(word)
    return {
        first: tuple(sorted(group, key=lambda word: -len(word.words)))
        for first, group in table.items()
    }


@lru_cache(maxsize=8192)
def _words_like(first: str) -> tuple[tuple[MaterialWord, ...], MaterialWord | None]:
    """The material words that begin with a word, and the one that is glued to a tube in it."""
    group = _by_first_word().get(first)
    if group is not None:
        return group, None
    glued = _GLUED_TUBE.search(first)
    group = _by_first_word().get(first[: glued.start()], ()) if glued else ()
    return (), next((word for word in group if len(word.words) == 1), None)


def parts_of(text: str) -> Iterator[Part]:
    """Every word or designation of plain text, in order; the first 500."""
    tokens = [(match.start(), match.end()) for match in _TOKEN.finditer(text)]
    folded = [text[start:end].casefold() for start, end in tokens]
    reached = found = 0
    for at, (start, end) in enumerate(tokens):
        if start < reached:
            continue
        part = _designation(text, start) or _phrase(text, tokens, folded, at)
        if part is None and text[start] >= "\u3040":
            east = _EAST_ASIAN.search(text, start, end)
            if east:
                part = Part(*east.span(), _EAST_ASIAN_FAMILY[east[0]], "word")
        if part is not None and not _in_address(text, part.start, part.end):
            yield part
            reached = part.end
            found += 1
            if found == _MOST_PARTS:
                return


def _designation(text: str, start: int) -> Part | None:
    grade = grade_at(text, start)
    if grade is None:
        return None
    strength = strength_here(text, grade.start, grade.end, grade.strength)
    if strength is None:
        return None
    after_material = text[start].isdigit() and _AFTER_MATERIAL.search(
        text[max(0, start - 20) : start]
    )
    kind: Kind = "weak" if strength == "weak" and not after_material else "sure"
    name = (grade.name_start, grade.name_end)
    return Part(grade.start, grade.end, grade.family, kind, (name,))


def _phrase(text: str, tokens: list[tuple[int, int]], folded: list[str], at: int) -> Part | None:
    group, glued = _words_like(folded[at])
    if glued is not None:
        return Part(*tokens[at], glued.family, glued.kind)
    for word in group:
        count = len(word.words)
        if folded[at : at + count] != list(word.words):
            continue
        start, end = tokens[at][0], tokens[at + count - 1][1]
        if _spelled(text, tokens[at : at + count], word) and _placed(text, start, end, word):
            names = ((start, end),) if word.kind in ("process", "weak") else ()
            return Part(start, end, word.family, word.kind, names)
    return None


def _spelled(text: str, spans: list[tuple[int, int]], word: MaterialWord) -> bool:
    surface = text[spans[0][0] : spans[-1][1]]
    if len(word.words[0]) == 1 and text[max(0, spans[0][0] - 1) : spans[0][0]] in ("'", "’"):
        return False  # "it's steel" is no 's steel'
    if word.is_symbol and not surface.istitle() and not _is_small_symbol(text, spans[0][0], word):
        return False
    if surface in ("Dom", "RVs"):
        return False  # a first name, and motor homes; the trade writes DOM or dom, RVS or rvs
    gaps = [text[left[1] : right[0]] for left, right in pairwise(spans)]
    if len(word.words) > 2 and all(len(one) == 1 for one in word.words):
        return len(set(gaps)) == 1 and gaps[0] in (".", " ", "-", ". ")  # dictated 'D O M'
    if len(word.words) > 1 and all(len(one) == 1 for one in word.words[:2]):
        return all(gap in (".", "/", ". ") for gap in gaps)  # 'S.S.' but not 'it's s'
    return all(0 < len(gap) <= 2 and not gap.strip(" -'’\n.") for gap in gaps)


# 'Grade 2 ti', 'x .035 ti,': typed in haste; 'ti mando' and 'para ti' are no metal.
_BEFORE_SMALL_TI = late_pattern(
    r"(?:\bgr(?:ade|ado)?\.?\s?\d{1,2}|\bcp(?:[\s-]?[1-4])?|\d[\s-]?v|\b(?:the|in|of)"
    r"|\d[\"”]?(?:\s?(?:mm|wall|in))?,?)\s$",
    re.I,
)

_TI_GRADE = late_pattern(r"\b(?:gr(?:ade|ado)?\.?\s?\d{1,2}|cp(?:[\s-]?[1-4])?)\s$", re.I)

# 'A ti exhaust', 'Ti bars': what is made of titanium tube.
_TI_THING = late_pattern(
    r"[\s-](?:\w{1,12}[\s-])?(?:exhausts?|downpipes?|headers?|manifolds?|frames?|(?:handle)?bars?"
    r"|seat ?posts?|forks?|stays|stems?|silencers?|mufflers?|catback|turbo kits?)(?![^\W_])",
    re.I,
)


def _is_small_symbol(text: str, start: int, word: MaterialWord) -> bool:
    if word.words != ("ti",) or not text.startswith("ti", start):
        return False
    if _TI_THING.match(text, start + len("ti")):
        return True
    return _BEFORE_SMALL_TI.search(text[max(0, start - 16) : start]) is not None


def _placed(text: str, start: int, end: int, word: MaterialWord) -> bool:
    if not (word.needs_tube or word.is_symbol):
        return True
    if word.kind == "process" and text[start:end].isupper():
        return True  # "CREW" is a weld, "our crew" are people
    if _AFTER_MATERIAL.search(text[max(0, start - 20) : start]):
        return True
    if word.words == ("ti",) and (
        _TI_THING.match(text, end) or _TI_GRADE.search(text[max(0, start - 16) : start])
    ):
        return True
    if word.is_symbol or word.words == ("mild",):
        return _BEFORE_TUBE_OR_STOP.match(text, end) is not None
    if word.words[0] in _IRON and _IRON_ALONE.search(text[max(0, start - 16) : start]):
        talk = text[max(0, start - _TALK_OF_TUBE) : start]
        return _IRON_ENDS.match(text, end) is not None and _TUBE_NAMED.search(talk) is not None
    return _BEFORE_TUBE.match(text, end) is not None


_IRON = ("iron", "fer", "eisen")
_IRON_ALONE = late_pattern(
    r"(?:,\s|\d\s?(?:mm|in|wall|thick)\.?\s|\b(?:en|it'?s|is|of|in|aus|c'est du|ist|du)\s)$", re.I
)
_IRON_ENDS = late_pattern(r"\s?(?:[,.;!?)\n]|\d|$)")
_TUBE_NAMED = late_pattern(r"\b(?:tub(?:e|es|ing|o)|pipes?|rohre?)\b", re.I)
_TALK_OF_TUBE = 80
"""Characters before 'iron' in which a tube is named: 'the tube is 38 x 1.5, iron'."""
_ADDRESS = late_pattern(r"@|://|www\.", re.I)
_REACH = 60


def _in_address(text: str, start: int, end: int) -> bool:
    """Whether it is a piece of a mail or web address: 'sales@steel.example.com'."""
    left = text[max(0, start - _REACH) : start]
    right = text[end : end + _REACH]
    before = "" if not left or left[-1].isspace() else left.split()[-1]
    after = "" if not right or right[0].isspace() else right.split()[0]
    return bool(_ADDRESS.search(before + " " + after)) or bool(
        re.match(r"\.(?:com|org|net|de|eu|uk|co|io|info)(?![^\W_])", after, re.I)
    )
