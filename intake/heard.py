"""The words of a question and what each of them is read as.

'Do I get by without a wiper?' and 'Geht es ohne Faltenglätter?' both have SKIP and WIPER in them.
What is read as the same stands in ``words_alike_*.py``, one row a reading; a word may have several
readings, and is always itself besides. Compounds ('Dornposition') are taken apart, long words
with one slip in them are put right. Figures are no words, but that there are some is kept.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache, lru_cache

from . import words_alike_asking, words_alike_bends, words_alike_tools, words_apart, words_terms
from .late_pattern import late_pattern
from .terms import WHAT, nearest, stem

APART = "APART"
"""The reading of what asks for something else than any answer tells."""
_LONG = 8
"""Letters of a word that may be a compound."""
_PART = 4
"""Letters that each part of a compound has at least."""
_MISSPELT = 6
"""Letters of a word that is put right where it is near to a known one."""

_NAMED = (
    r"(?:o\.?d\.?|i\.?d\.?|clr|cl|r|rad|radius|raggio|rayon|radio|straal|wall|wand|wt|angle"
    r"|durchmesser)"
)
_UNIT = (
    r"(?:mm|millim\w+|inch(?:es)?|in|zoll|pouces?|pulgadas?|pollici|cm|deg(?:ree)?s?|grad[is]?"
    r"|degres|graden|grados|percent|prozent)(?!\w)|[\"”°%]|''"
)
_TOKEN = late_pattern(
    # 'CLR 4.5', '4.5 in radius': a size that is named asks nothing about what it names.
    rf"(?P<named>(?<!\w){_NAMED}\s?[=:]?\s?(?=\d|[.,]\d)[\d.,/-]*\d(?!\s?d(?!\w))"
    r"(?:\s?(?:mm|in|inch|\")(?!\w))?)"
    r"|(?P<figured>(?<!\w)[.,]?\d[\d.,/-]*\s?(?:mm|cm|in|inch|inches|\"|'')?"
    r"\s?(?:clr|cl|od|id|radius|rad|wall)(?!\w))"
    r"|(?P<dofbend>(?<!\w)d[ -]of[ -](?:the |a )?bend"
    r"|(?<!\w)(?:the|das|de|el|la|le|il) d(?!\w|')|(?<=many )d(?!\w|'))"
    r"|(?P<times>(?<![\w.,/])[1-9](?:[.,]\d)?\s?(?:x|\*|times|mal|fois|veces|volte|keer)\s?"
    r"(?:the\s|den\s|le\s|el\s|il\s|de\s)?(?:tube\s)?"
    r"(?:od|o\.d\.|d|diameter|durchmesser|diametre|diametro)(?!\w))"
    r"|(?P<d>(?<![\w.,/])\d{1,2}(?:[.,]\d{1,2})?\s?-?d(?!\w))|(?P<temper>(?<!\w)t-?[04-6](?!\w))"
    r"|(?<!\w)(?P<alloy>60[68][123]|304|316|4130)(?!\w)"
    rf"|(?P<number>(?<!\w)[.,]?\d[\d.,/-]*)\s?(?P<unit>{_UNIT})?"
    r"|(?P<word>[^\W\d_]+)"
)
_MARKS = {
    "mm": "#mm", "mi": "#mm", "cm": "#mm", "in": "#in", '"': "#in", "”": "#in", "''": "#in",
    "zo": "#in", "po": "#in", "pu": "#in", "de": "#deg", "gr": "#deg", "°": "#deg", "%": "#pct",
    "pe": "#pct", "pr": "#pct",
}  # fmt: skip
"""What is kept of a unit, by its first two letters."""
_RADIUS = re.compile(r"r(?!ou)|stra")

_SMALL = frozenset(words_terms.SMALL_WORDS.split())
_ASIDE = frozenset(words_terms.ASIDE.split())
_NOTHING_SAID = (_SMALL | _ASIDE) - {"no", "not"}
_APART = frozenset(words_apart.APART.split())
_ROWS = (words_alike_asking.ALIKE, words_alike_bends.ALIKE, words_alike_tools.ALIKE)


@dataclass(frozen=True, slots=True)
class Heard:
    """A question's words, and what is read at each place."""

    words: tuple[str, ...]
    at: tuple[tuple[str, ...], ...]
    """By word, itself in all its endings and the names of rows that begin with it."""
    present: frozenset[str]
    """All that is read in it, and '#mm', '#in', '#deg', '#pct', '#num' for its figures."""

    @property
    def apart(self) -> bool:
        """Whether some of it asks for what no answer tells."""
        return APART in self.present or not _APART.isdisjoint(self.words)


@lru_cache(maxsize=2048)
def hear(text: str) -> Heard:
    """The words of ``text`` and what they are read as. Never raises."""
    words: list[str] = []
    marks: set[str] = set()
    numbers: list[str] = []
    for found in _TOKEN.finditer(_plain(text)):
        kind = found.lastgroup
        if kind in ("named", "figured"):
            words.append("#size")
            if _RADIUS.search(found.group()):
                marks.add("#radius")
        elif kind == "dofbend":
            words.append("dofbend")
        elif found["d"] or found["times"]:
            number = re.match(r"\d+(?:[.,]\d+)?", found.group())
            tight = number is not None and float(number.group().replace(",", ".")) < 1.3
            words.append("1d" if tight else "nd")
        elif found["number"]:
            words.append("#num")
            numbers.append(found["number"].strip(".,"))
            if unit := found["unit"]:
                marks.add(_MARKS[unit[:2] if unit[0].isalpha() else unit])
            elif "/" in found["number"]:
                marks.add("#in")
        else:
            words.append(found.group().replace("-", ""))
    if len(numbers) > len(set(numbers)):
        marks.add("#twin")
    at = tuple(tuple(_read_at(words, place)) for place in range(len(words)))
    present = marks.union(*at)
    return Heard(tuple(words), at, frozenset(present))


def is_small(word: str) -> bool:
    """Whether a word says nothing of what is asked, or is none."""
    short = len(word) < 2 or word.startswith("#")
    return short or word in _NOTHING_SAID or stem(word) in _SMALL_STEMS


_SMALL_STEMS = frozenset(stem(word) for word in _SMALL | _ASIDE)


def _read_at(words: Sequence[str], place: int) -> Iterator[str]:
    rows, longest = _alike()
    word = words[place]
    yield stem(word)
    for length in range(min(longest.get(word, 0), len(words) - place), 1, -1):
        yield from rows.get(tuple(words[place : place + length]), ())
    yield from rows.get((word,)) or _of_one(word)


@lru_cache(maxsize=4096)
def _of_one(word: str) -> frozenset[str]:
    """What a word is read as that stands in no row: by its stem, its parts, or put right."""
    rows = _alike()[0]
    if word in _SMALL or word in _ASIDE or word in _APART or word.startswith("#"):
        return frozenset()
    if (names := _by_stem().get(stem(word))) is not None:
        return names
    for cut in range(_PART, len(word) - _PART + 1) if len(word) >= _LONG else ():
        first, second = word[:cut], rows.get((word[cut:],))
        ahead = next(
            (rows[(one,)] for one in (first, first.removesuffix("s"), first.removesuffix("n"))
             if (one,) in rows),
            None,
        )  # fmt: skip
        if ahead and second:
            return ahead | second
    if len(word) >= _MISSPELT and (right := nearest(word, _spellings().get(word[0], ()))):
        return rows[(right,)]
    return frozenset()


@cache
def _alike() -> tuple[Mapping[tuple[str, ...], frozenset[str]], Mapping[str, int]]:
    """What each word or row of words is read as; by first word, the longest row it opens."""
    read: dict[tuple[str, ...], set[str]] = {}
    longest: dict[str, int] = {}
    for name, spellings in _rows():
        for spelling in (name, *spellings):
            words = tuple(spelling.split())
            read.setdefault(words, set()).add(name.upper())
            longest[words[0]] = max(len(words), longest.get(words[0], 0))
    for spelling, name in words_terms.SAME.items():
        read.setdefault((spelling,), set()).add(stem(name))
    return {words: frozenset(names) for words, names in read.items()}, longest


@cache
def _rows() -> tuple[tuple[str, tuple[str, ...]], ...]:
    rows = (row.partition(":") for text in _ROWS for row in _UNWRAP.sub(" ", text).split("\n"))
    return tuple((name, tuple(spellings.split(","))) for name, _, spellings in rows if spellings)


_UNWRAP = re.compile(r"\n +")


@cache
def _by_stem() -> Mapping[str, frozenset[str]]:
    found: dict[str, set[str]] = {}
    for words, names in _alike()[0].items():
        if len(words) == 1:
            found.setdefault(stem(words[0]), set()).update(names)
    return {key: frozenset(names) for key, names in found.items()}


@cache
def _spellings() -> Mapping[str, tuple[str, ...]]:
    """The single words of all rows by their first letter."""
    found: dict[str, list[str]] = {}
    for words in _alike()[0]:
        if len(words) == 1 and len(words[0]) >= _MISSPELT - 1:
            found.setdefault(words[0][0], []).append(words[0])
    return {letter: tuple(sorted(known)) for letter, known in found.items()}


def _plain(text: str) -> str:
    folded = WHAT.sub("what", text.casefold().replace("’", "'"))
    folded = re.sub(r"(?<!\w)w/(?:o|out)(?!\w)", "without", folded)
    if not folded.isascii():
        decomposed = unicodedata.normalize("NFKD", folded)
        folded = "".join(c for c in decomposed if not unicodedata.combining(c)).replace("ß", "ss")
    return folded
