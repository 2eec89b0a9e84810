"""Grade designations: how each naming system writes its grades, and what family they are.

Every pattern is tried only where a word starts, and every repetition is bounded, so a long text of
anything costs little. Designations are from the naming systems themselves (AISI, ASTM, EN 10027,
JIS, UNS); which number belongs to which family is from memory unless materials.csv has it.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import lru_cache
from typing import Literal

from ....rules.grades import family_of_designation, is_known_alone, written_forms
from ....rules.request import Material
from ...late_pattern import late_pattern

Strength = Literal["sure", "bare", "weak"]
_CS, _AS, _SS = Material.CARBON_STEEL, Material.ALLOY_STEEL, Material.STAINLESS_STEEL
_AL, _TI, _CU = Material.ALUMINIUM, Material.TITANIUM, Material.COPPER
_BR, _NI = Material.BRASS, Material.NICKEL_ALLOY


@dataclass(frozen=True, slots=True)
class Grade:
    """A designation in plain text; ``start:end`` is all of it, ``name_start:name_end`` the grade.

    They differ where a system's prefix is no part of the grade: 'alloy 260', 'SS 316L'.
    """

    start: int
    end: int
    name_start: int
    name_end: int
    family: Material
    strength: Strength
    """sure: can't be anything else. bare: figures that need a clean neighbourhood. weak: counts
    only beside a word or grade of the same family ('brass, 260')."""


# --- numbers that are grades --------------------------------------------------------------------

_NICKEL_WORDS = r"inconel|incoloy|monel|hastelloy|haynes|nickel|alloy"

_END = r"(?![^\W_])"
_TEMPER = rf"(?:(?:\s?[-/]?\s?(?:T\d{{1,4}}|H\d{{2,3}})|\s?-\s?[O0F]){_END})?"
_STAINLESS_TAIL = r"(?:LN|Ti|Cb|L|H|S|N|F)?(?:T[PKB]{1,2}(?:-?[A-Z])?)?"  # 'SUS304TP': JIS pipe


_FIGURE_NEAR = late_pattern(r"[^\W_][^\d\n]{0,17}\d")  # no designation is without figures


def _compile(pattern: str, *, case: bool = False) -> re.Pattern[str]:
    return late_pattern(pattern, re.VERBOSE if case else re.VERBOSE | re.IGNORECASE)


_PREFIXED = _compile(
    rf"""(?: (?P<whole>sus|tp|cres|aisi|sae|en\s?-?\s?aw|aw|aa|al|a(?=[1-7]\d{{3}}))
           | (?P<apart>sst|ss|s/s|s\.s\.?|type|typ|ty\.?|grade|gr\.?|stainless|rvs|inox|alloy) )
        [\s.:-]{{0,2}}
        (?P<name>(?P<number>\d{{3,4}})
          (?:{_STAINLESS_TAIL}(?:/3\d\dL?)?(?={_END}|[-/ ]?[TH]\d)|A(?=\s?-?T\d)|(?=T\d))
          {_TEMPER})
        {_END}"""
)
_NUMBER = _compile(
    rf"""(?P<name>(?P<number>\d{{3,4}})
          (?: (?P<sure>LN|Ti|Cb|L|H
                |A?\s?[-/]?\s?(?:T\d{{1,4}}|H\d{{2,3}})|\s?-\s?[OF]|-T?0(?![\d.]))
            | (?=\s?/?\s?(?:SS|S/S|sst){_END}) | [SN]? )
          (?:/3\d\dL?)?)
        (?:\s?(?P<ss>SS|S/S|sst))?
        {_END}"""
)
# '409 tubing' is a grade; '625 tube' is a size, and '1020 tubes' are many.
_BY_NUMBER_AND_TUBE = (_SS, _CS, _AS, _AL)
_ONE_TUBE = late_pattern(r"\s(?:tube|tubing|pipe|alloy|aluminium|aluminum)(?![^\W_])", re.I)
_MODIFIED = _compile(rf"(?P<name>21-6-9|17-7\s?PH|904L|15-5\s?PH|17-4\s?PH){_END}")

# --- designations that name their family themselves ---------------------------------------------

# Exact numbers, not a range: '1.4375 OD' is 1-7/16 in and must not turn a tube into stainless.
_WERKSTOFF_NUMBER = late_pattern(
    rf"(?:EN\s?|W\.?-?Nr\.?:?\s?)?(?P<name>([1-3])[.,](\d{{4}}){_END})", re.I
)

_ASTM_GRADE = _compile(
    r"""(?P<name>(?P<astm>ASTM[\s-]{0,2}|ASME[\s-]{0,2})?(?P<s>S(?=[AB]))?(?P<number>[AB][\s-]?\d{2,4})
        (?:M(?![^\W_]))?
        (?: [\s,]{0,2}(?:gr(?:ade)?\.?|type|ty\.?)\s?(?P<of>[A-C]|[1-9])(?![^\W_])
          | [A-C](?![^\W_]) | -[1-9](?![^\W_]|[-.]\d) )?)(?![^\W_])"""
)

# "2 3/8 x .154 a53": who writes in small letters names the grade right behind the wall.
_BEHIND_A_SIZE = late_pattern(
    r"\d[\"”]?\s?(?:wall|wt|thk|mm|in|ga|gauge)?[,;]?\s$|\b(?:material|mat'?l)\W{1,12}$", re.I
)

_IS_LENGTH = late_pattern(
    r"\s?(?:mm\b|in\b|inch|\"|clr\b|r\b|rad(?:ius)?\b|cent(?:er|re)|bend|die\b)", re.I
)

_UNS_NUMBER = late_pattern(r"(?P<name>(?:UNS\s?)?([SNRACGK])(\d{5}))(?![^\W_])")

_NICKEL = _compile(
    rf"""(?:(?P<brand>{_NICKEL_WORDS})[\s-]{{0,2}})
        (?P<name>(?P<number>\d{{3}}|[BCX]-?\d{{0,3}}|K-?500)(?:LCF|H|HT)?){_END}"""
)


@lru_cache(maxsize=1)
def _named_by_first() -> dict[str, tuple[tuple[Material, Strength, re.Pattern[str]], ...]]:
    """The forms of grade_patterns.csv, those of a kind made one pattern, by first character."""
    alike: dict[tuple[str, Material, Strength, bool], list[str]] = {}
    for form in written_forms():
        key = (form.first, form.family, form.strength, form.any_case)
        alike.setdefault(key, []).append(form.pattern.replace("<temper>", _TEMPER))
    table: dict[str, tuple[tuple[Material, Strength, re.Pattern[str]], ...]] = {}
    for (first, family, strength, any_case), forms in alike.items():
        pattern = _compile(f"(?P<name>{'|'.join(forms)}){_END}", case=not any_case)
        table[first] = (*table.get(first, ()), (family, strength, pattern))
    return table


def grade_at(text: str, position: int) -> Grade | None:
    """The longest designation that starts at ``position`` of plain text, or None."""
    first = text[position].lower()
    if not first.isdigit() and _FIGURE_NEAR.match(text, position) is None:
        return None
    found = [_named(text, position, first)]
    if first.isdigit():
        found += [_number(text, position), _werkstoff(text, position)]
    else:
        found += [_prefixed(text, position, first), _astm(text, position, first)]
        found += [_werkstoff(text, position)] if first in "ew" else []
        found += [_uns(text, position, first), _nickel(text, position, first)]
    return max(filter(None, found), key=_rank, default=None)


def _rank(grade: Grade) -> tuple[int, int]:
    return grade.end, ("weak", "bare", "sure").index(grade.strength)


def _made(match: re.Match[str], family: Material, strength: Strength) -> Grade:
    return Grade(*match.span(), *match.span("name"), family, strength)


def _named(text: str, position: int, first: str) -> Grade | None:
    best: Grade | None = None
    for family, strength, pattern in _named_by_first().get(first, ()):
        match = pattern.match(text, position)
        made = _made(match, family, strength) if match else None
        if made and (best is None or _rank(made) > _rank(best)):
            best = made  # "T304" is stainless before it is an aluminium temper
    if best is None and first.isdigit():
        modified = _MODIFIED.match(text, position)
        return _made(modified, _SS, "sure") if modified else None
    return best


def _number(text: str, position: int) -> Grade | None:
    match = _NUMBER.match(text, position)
    family = family_of_designation("number", match["number"]) if match else None
    if match is None or family is None:
        return None
    if match["ss"] or (match["sure"] and _suits(match["sure"], family)):
        return _made(match, _SS if match["ss"] else family, "sure")
    if match["sure"]:
        return None
    known = is_known_alone("number", match["number"]) or (
        family in _BY_NUMBER_AND_TUBE and _ONE_TUBE.match(text, match.end()) is not None
    )
    return _made(match, family, "bare" if known else "weak")


def _suits(suffix: str, family: Material) -> bool:
    """'304L' and '6061-T6' are grades; '304-T6' and '1020L' are not."""
    tail = suffix.strip().upper()
    if tail in ("L", "LN", "TI", "CB", "H"):
        return family is _SS
    return family is _AL


def _prefixed(text: str, position: int, first: str) -> Grade | None:
    if first not in "sctaegriu":
        return None
    match = _PREFIXED.match(text, position)
    family = family_of_designation("number", match["number"]) if match else None
    if match is None or family is None:
        return None
    prefix = (match["whole"] or match["apart"]).lower()
    if (
        prefix in ("stainless", "ss", "sst", "s/s", "rvs", "inox", "sus", "tp", "cres")
        and family is not _SS
    ):
        return None
    if prefix[0] == "a" and prefix not in ("aisi", "alloy") and family is not _AL:
        return None
    if prefix == "alloy" and family not in (_BR, _NI, _AL, _CU):
        return None
    whole = match.start() if match["whole"] else match.start("name")
    return Grade(*match.span(), whole, match.end("name"), family, "sure")


def _werkstoff(text: str, position: int) -> Grade | None:
    match = _WERKSTOFF_NUMBER.match(text, position)
    if match is None:
        return None
    family = family_of_designation("werkstoff", f"{match[2]}.{match[3]}")
    return _made(match, family, "bare") if family else None


def _astm(text: str, position: int, first: str) -> Grade | None:
    if first not in "abs":
        return None
    match = _ASTM_GRADE.match(text, position)
    if match is None:
        return None
    number = re.sub(r"[\s-]", "", match["number"]).upper()
    family = family_of_designation("astm", number)
    alone = is_known_alone("astm", number) and match["number"] == number
    small = is_known_alone("astm", number) and _BEHIND_A_SIZE.search(
        text, max(0, position - 16), position
    )
    if small and not alone and _IS_LENGTH.match(text, match.end()):
        return None  # "the 45 on a 110 and the 51 mm a 179 radius"
    if family is None or not (alone or small or match["astm"] or match["s"]):
        return None
    return _made(match, family, "sure")


def _uns(text: str, position: int, first: str) -> Grade | None:
    if first not in "snracgku":
        return None
    match = _UNS_NUMBER.match(text, position)
    if match is None:
        return None
    family = family_of_designation("uns", match[2] + match[3])
    return _made(match, family, "sure") if family else None


def _nickel(text: str, position: int, first: str) -> Grade | None:
    if first not in "imhna":
        return None
    match = _NICKEL.match(text, position)
    if match is None:
        return None
    brand, number = match["brand"].lower(), match["number"]
    if brand in ("alloy", "nickel") and family_of_designation("number", number) is not _NI:
        return None
    whole = match.start() if brand not in ("alloy", "nickel") else match.start("name")
    return Grade(*match.span(), whole, match.end("name"), _NI, "sure")
