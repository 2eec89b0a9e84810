"""The words of a question made alike: accents, endings, spellings and slips of the pen.

'Wrinkling?', 'wrinkles' and 'wrinckle' are one term. Figures say nothing of what is asked and are
left out, but '2D', 'T6' and the numbers of alloys are words.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Sequence
from functools import lru_cache

from . import words_terms as words

_TERM = re.compile(
    r"(?P<dofbend>(?<!\w)d of (?:the |a )?bend|(?<!\w)(?:the|das|de|el|la|le|il) d(?!\w|'))"
    r"|(?P<d>(?<![\w.,/])\d{1,2}(?:[.,]\d)?\s?d(?!\w))|(?P<temper>(?<!\w)t[4-6](?!\w))"
    r"|(?<!\w)(?P<alloy>60[68][123]|304|316|4130)(?!\w)|(?P<word>[^\W\d_]+)"
)
_WITH_UNIT = re.compile(
    r"(?<!\w)[\d.,/-]+\s?(?:mm|cm|in|inch|inches|\"|'')?"
    r"\s?(?:mm|cm|in|inch|inches|\"|''|clr|cl|od|id|radius|rad)(?!\w)"
)
_WORD = re.compile(r"[^\W_]+")
_CENTRE_LINE = re.compile(r"cent(?:er|re)[ -]line")
WHAT = re.compile(
    r"(?<!\w)(?:qué|(?:di|a|con) che|che cosa"
    r"|was(?= (?:ist|sind|kostet|kosten|bedeutet|heißt|heisst|versteht|für|genau|braucht|brauchen"
    r"|müssen)))(?!\w)"
)
"""Words for 'what' that mean something else without their accent or the word behind them."""
_ENDINGS = (
    "ements", "ations", "ement", "ation", "ungen", "ings", "ing", "ung", "ies", "ed", "es", "en",
    "s", "e", "n",
)  # fmt: skip
_SHORTEST = 4
"""Letters that a word keeps when its ending is cut."""
_NEAR = 6
"""Letters from which on a word with one slip in it is still known."""


@lru_cache(maxsize=8192)
def terms(text: str) -> tuple[str, ...]:
    """The terms of ``text``, in order. Never raises.

    >>> terms("Does the wall wrinkle at 2.5 D?")
    ('do', 'the', 'wall', 'wrinkl', 'at', 'nd')
    """
    return tuple(_term(found) for found in _TERM.finditer(_plain(text)))


def _term(found: re.Match[str]) -> str:
    kind, word = found.lastgroup, found.group()
    if kind == "d":
        times = float(word.rstrip("d ").replace(",", "."))
        return "1d" if times < 1.3 else "nd"
    if kind == "dofbend":
        return "dofbend"
    word = words.SAME.get(word, word)
    return stem(word)


@lru_cache(maxsize=8192)
def stem(word: str) -> str:
    """A word without its ending, cut alike in all languages: crude, but the same on both sides."""
    if not word.endswith(_ENDINGS):
        return word
    for ending in _ENDINGS:
        if word.endswith(ending) and len(word) - len(ending) >= _SHORTEST:
            return word.removesuffix(ending)
    return word


def nearest(term: str, known: Sequence[str]) -> str | None:
    """The one of ``known`` that ``term`` is a misspelling of; None where none is near.

    ``known`` are terms with the same first letter: people rarely get that one wrong.
    """
    if len(term) < _NEAR or not term.isalpha():
        return None
    from rapidfuzz.distance import OSA  # late: most questions are spelt right
    from rapidfuzz.process import extractOne

    most = 1 if len(term) < 8 else 2
    alike = [one for one in known if abs(len(one) - len(term)) <= most]
    found = extractOne(term, alike, scorer=OSA.distance, score_cutoff=most)
    return found[0] if found else None


@lru_cache(maxsize=1024)
def plain_words(text: str) -> tuple[str, ...]:
    """The words and figures of ``text`` as they stand, in small letters and without accents."""
    return tuple(_WORD.findall(_plain(text)))


@lru_cache(maxsize=256)
def _plain(text: str) -> str:
    bare = WHAT.sub("what", text.casefold().replace("’", "'"))
    if not bare.isascii():
        folded = unicodedata.normalize("NFKD", bare)
        bare = "".join(c for c in folded if not unicodedata.combining(c)).replace("ß", "ss")
    return _CENTRE_LINE.sub("centerline", _WITH_UNIT.sub(" ", bare))
