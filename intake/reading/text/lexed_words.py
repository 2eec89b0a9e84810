"""Words to tokens: numbers spelled out, cues, schedules of pipe, times signs."""

from __future__ import annotations

import re
from dataclasses import replace
from decimal import Decimal

from ...late_pattern import late_pattern
from ..numbers.foreign_multiples import begins_multiple
from ..numbers.foreign_numbers import begins_length, spelled_at
from ..numbers.multiples import MULTIPLE_STARTS, multiple_at
from ..numbers.number_words import WORDS, words_at
from ..numbers.numbers import Number
from ..numbers.part_millimetres import STARTS as PART_STARTS
from ..numbers.part_millimetres import may_be_tenths, part_at
from ..numbers.units_after import measures
from .cue_phrases import cue_phrase
from .cues import WORD, Cue
from .cutting import Cutting
from .everyday import says_nothing
from .schedule_names import STARTS as SCHEDULE_STARTS
from .schedule_names import schedule_at

_COUNTED = (
    r"\s(?:[a-z]+\s){0,2}(?:mandrels?|mandrills?|plugs?|biegedorne?|dorne?|mandrins?|mandril(?:es)?"
    r"|mandrin[oi]|anim[ae]|doorn(?:en)?|tubes?|pipes?|rohre?|tubos?|tub[oi]|buis|buizen|sets?|pcs)\b"
)
"""'1 x mandrel 1 x .065': the first sign counts what follows, and multiplies nothing."""
_TIMES = late_pattern(
    rf"x(?![a-z])(?!{_COUNTED})|"
    r"x(?=[tsr]\d|Ø)|\*|by\b|mal\b|p[eao]r\b(?=\s?[\d.])"
    r"|bij\b(?=\s?\d(?:[.,]\d+)?(?!\d))"
    r"|(?:par|por|per|bij)\b(?=\s(?:anderhal|(?:un|uno|deux|dos|due|trois|tres|tre|twee|drie)\b"
    r"(?:\s(?:et|y|e|ed|en)\s|\svirg|\scoma\s|\skomma\s|,|\.|$)))"
    rf"|(?:p[eao]r|sur)\b(?!{_COUNTED})(?=\s(?:un[oae]?|due|deux|dos|tre|trois|tres|quat(?:re|tro)"
    r"|cuatro)\b)"
    # "tube 25 sur 60 et 75 de rayon" sets it on two radii
    r"|sur\b(?=\s?[\d.])(?!\s?\d{2,4}(?:\s?mm)?(?:\s?(?:,|et|ou|/)\s?\d{2,4}(?:\s?mm)?){0,4}"
    r"\s(?:de |en )?rayons?\b)",
    re.IGNORECASE,
)
_AGAIN = re.compile(
    r"\s?\(\s?(?P<digits>\d{1,3})\s?\)(?=[\s-]?(?:inch(?:es)?|mm|millimet\w+|foot|feet|ft)\b)",
    re.IGNORECASE,
)
"""'four (4) inch': one number, and no second one that has the unit."""
_ELIDED = re.compile(r"(?:[ld]|(?:d|n|s)?ell|(?:d|n)?all|sull|coll)'(?=[^\W\d_])", re.IGNORECASE)
"""'L'épaisseur est de 2 mm', 'dell'acciaio': the article is no part of the word."""


def word_at(cutting: Cutting, at: int) -> int:
    """The token of the word at ``at``, or of the phrase that begins there, added; its end."""
    word = WORD.match(cutting.text, at)
    if word is None:
        return cutting.add("punct", at, at + 1)
    folded = word[0].casefold()
    if folded in PART_STARTS or may_be_tenths(cutting.text, word.end()):
        part = part_at(cutting.text, at)
        if part is not None:
            return cutting.with_unit(part, at).end
    elided = at + folded.find("'") + 1
    if elided > at and elided in cutting.materials and not folded.startswith("d'"):
        return cutting.add("word", at, elided)  # "de l'acier", "dell'alluminio"
    if says_nothing(folded):
        return _behind_article(cutting, at, word) or cutting.add("word", at, word.end())
    first = folded[0]
    if first in "xbmps":
        times = _TIMES.match(cutting.text, at)
        if times is not None and cutting.between_numbers():
            return cutting.add("times", at, times.end())
    if first in MULTIPLE_STARTS or begins_multiple(folded):
        multiple = multiple_at(cutting.text, at)
        if multiple is not None:
            return cutting.add_number(multiple, at, multiple.end, "D").end
    if first in SCHEDULE_STARTS:
        schedule = schedule_at(cutting.text, at)
        if schedule is not None:
            return _named_schedule(cutting, at, *schedule)
    if folded in WORDS or folded in ("inch", "an", "a"):
        end = _spoken(cutting, at)
        if end is not None:
            return end
    if begins_length(folded):
        number = spelled_at(cutting.text, at)
        if number is not None:
            return cutting.with_unit(number, at).end
    return _cue(cutting, at, word.end(), folded) or cutting.add("word", at, word.end())


def _behind_article(cutting: Cutting, at: int, word: re.Match[str]) -> int | None:
    """The cue that an elided article hides."""
    article = _ELIDED.match(word[0])
    if article is None:
        return None
    behind = at + article.end()
    cutting.add("word", at, behind)
    end = _cue(cutting, behind, word.end(), word[0][article.end() :].casefold())
    if end is None:
        cutting.tokens.pop()
    return end


def _named_schedule(cutting: Cutting, at: int, name: str, end: int) -> int:
    """'Std', 'sch 10S', 'extra heavy'."""
    token = cutting.add_number(Number(at, end, (Decimal(0),), "words"), at, end, "sch")
    token.cues = (Cue("schedule", "before"),)
    token.notes = (name,)
    return token.end


def _spoken(cutting: Cutting, at: int) -> int | None:
    """'Inch and a half', 'one twenty wall'."""
    number = words_at(cutting.text, at)
    if number is None:
        return None
    if number.style == "speech" and _names_grade(cutting, number):
        end = cutting.add("block", at, number.end)
        cutting.tokens[-1].block = "grade"
        return end
    again = _AGAIN.match(cutting.text, number.end)
    if again is not None and number.value == int(again["digits"]):
        number = replace(number, end=again.end())
    return cutting.with_unit(number, at).end if _measures(cutting, number) else None


def _names_grade(cutting: Cutting, number: Number) -> bool:
    """'three oh four stainless': figures spoken right before a material are its grade."""
    behind = (number.end + 1, number.end + 2)
    return number.value >= 200 and any(place in cutting.materials for place in behind)


def _measures(cutting: Cutting, number: Number) -> bool:
    """Whether number words measure something: 'one' alone is far more often a pronoun."""
    if number.unit is not None or number.value != number.value.to_integral_value():
        return True
    said = measures(cutting.text, number.end)
    return said if said is not None else number.style == "speech"


def _cue(cutting: Cutting, at: int, end: int, first: str) -> int | None:
    """The longest phrase that begins with the word at ``at`` and says what a number is."""
    found = cue_phrase(cutting.text, end, first)
    if found is None and first.startswith("l'"):
        found = cue_phrase(cutting.text, end, first[2:])  # "l'épaisseur est de 1,5"
        at = cutting.add("word", at, at + 2) if found is not None else at
    if found is None:
        return None
    cutting.add("cue", at, found[0])
    cutting.tokens[-1].cues = found[1]
    return found[0]
