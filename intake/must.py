"""Which answers a question must be about, by the words that it must have.

An answer file's ``must`` lines say what has to stand in a question: what it is about, and what is
asked of it ::

    must = ["wiper + need / skip / what does but not grind / price"]

Between '+' stand groups; of each group one has to be met. Within a group '/' parts words that do
as well; several words in one place stand in this order, with nothing but small words, figures and
asides between. Behind 'but not' stands what shows that something else is asked. A word is met by
all that ``words_alike.py`` reads as the same, in all languages.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import cache, lru_cache

from . import words_terms
from .terms import _WHAT, nearest, stem
from .words_alike import ALIKE
from .words_apart import APART as APART_WORDS

NOT = " but not "
_MOST_BETWEEN = 4
"""Small words and asides that may stand between two words that belong together."""

_NAMED = r"(?:o\.?d\.?|i\.?d\.?|clr|cl|r|rad|radius|raggio|rayon|radio|straal|wall|wand|wt|angle|durchmesser)"
_TOKEN = re.compile(
    rf"(?P<named>(?<!\w){_NAMED}\s?[=:]?\s?(?=\d|[.,]\d)[\d.,/-]*\d(?!\s?d(?!\w))(?:\s?(?:mm|in|inch|\")(?!\w))?)"
    r"|(?P<figured>(?<!\w)[.,]?\d[\d.,/-]*\s?(?:mm|cm|in|inch|inches|\"|'')?\s?(?:clr|cl|od|id|radius|rad|wall)(?!\w))"
    r"|(?P<dofbend>(?<!\w)d[ -]of[ -](?:the |a )?bend|(?<!\w)(?:the|das|de|el|la|le|il) d(?!\w|')|(?<=many )d(?!\w|'))"
    r"|(?P<times>(?<![\w.,/])[1-9](?:[.,]\d)?\s?(?:x|\*|times|mal|fois|veces|volte|keer)\s?(?:the\s|den\s|le\s|el\s|il\s|de\s)?"
    r"(?:tube\s)?(?:od|o\.d\.|d|diameter|durchmesser|diametre|diametro)(?!\w))"
    r"|(?P<d>(?<![\w.,/])\d{1,2}(?:[.,]\d{1,2})?\s?-?d(?!\w))|(?P<temper>(?<!\w)t-?[04-6](?!\w))"
    r"|(?<!\w)(?P<alloy>60[68][123]|304|316|4130)(?!\w)"
    r"|(?P<number>(?<!\w)[.,]?\d[\d.,/-]*)\s?(?P<unit>(?:mm|millim\w+|inch(?:es)?|in|zoll|pouces?|pulgadas?|pollici|cm"
    r"|deg(?:ree)?s?|grad[is]?|degres|graden|grados|percent|prozent)(?!\w)|[\"”°%]|'')?"
    r"|(?P<word>[^\W\d_]+)"
)
_UNITS = {
    "mm": "#mm", "mi": "#mm", "cm": "#mm", "in": "#in", '"': "#in", "”": "#in", "''": "#in", "zo": "#in",
    "po": "#in", "pu": "#in", "de": "#deg", "gr": "#deg", "°": "#deg", "%": "#pct", "pe": "#pct",
    "pr": "#pct",
}  # fmt: skip

_SMALL = frozenset(words_terms.SMALL_WORDS.split())
_ASIDE = frozenset(words_terms.ASIDE.split())
_SKIPPED = (_SMALL | _ASIDE) - {"no", "not"}


@dataclass(frozen=True, slots=True)
class Heard:
    """A question's words: at each place what is read there, each with the place behind it."""

    words: tuple[str, ...]
    at: tuple[tuple[tuple[str, int], ...], ...]
    present: frozenset[str]

    @property
    def apart(self) -> bool:
        """Whether a word of it asks for what no answer tells."""
        return "APART" in self.present or not APART.isdisjoint(self.words)

    def has(self, wanted: Sequence[frozenset[str]]) -> bool:
        """Whether ``wanted`` stands in it, in order and together."""
        if not all(not one.isdisjoint(self.present) for one in wanted):
            return False
        return len(wanted) == 1 or any(
            self._from(wanted, 0, place) for place in range(len(self.words))
        )

    def _from(self, wanted: Sequence[frozenset[str]], step: int, place: int) -> bool:
        if step == len(wanted):
            return True
        for between in range(_MOST_BETWEEN if step else 1):
            here = place + between
            if here >= len(self.words):
                return False
            for concept, behind in self.at[here]:
                if concept in wanted[step] and self._from(wanted, step + 1, behind):
                    return True
            if self.words[here] not in _SKIPPED and not self.words[here].startswith("#"):
                return False
        return False


@dataclass(frozen=True, slots=True)
class Line:
    """One 'must' line, read."""

    text: str
    groups: tuple[tuple[tuple[frozenset[str], ...], ...], ...]
    but_not: tuple[tuple[frozenset[str], ...], ...]

    def met(self, heard: Heard) -> bool:
        return all(any(heard.has(way) for way in group) for group in self.groups) and not any(
            heard.has(way) for way in self.but_not
        )

    def about(self, heard: Heard) -> bool:
        """Whether its first group, what the question is about, is met, and nothing speaks against."""
        return any(heard.has(way) for way in self.groups[0]) and not any(
            heard.has(way) for way in self.but_not
        )

    def mass(self, heard: Heard, weights: Mapping[str, float]) -> float:
        """How much the words tell by which it is met: the weightiest way of each group."""
        return sum(
            max(
                sum(max((weights.get(one, 0.0) for one in step), default=0.0) for step in way)
                for way in group
                if heard.has(way)
            )
            for group in self.groups
        )

    @property
    def concepts(self) -> frozenset[str]:
        return frozenset().union(*(one for group in self.groups for way in group for one in way))


@cache
def _alike() -> tuple[Mapping[tuple[str, ...], frozenset[str]], Mapping[str, int]]:
    """What each word or row of words is read as; by first word, the longest row it opens."""
    read: dict[tuple[str, ...], set[str]] = {}
    rows = re.sub(r"\n +", " ", ALIKE).strip().split("\n")
    for row in rows:
        name, _, spellings = row.partition(":")
        for spelling in (name, *spellings.split(",")):
            read.setdefault(tuple(spelling.split()), set()).add(name.upper())
    for spelling, name in words_terms.SAME.items():
        read.setdefault((spelling,), set()).add(stem(name))
    longest: dict[str, int] = {}
    for row_ in read:
        if row_:
            longest[row_[0]] = max(len(row_), longest.get(row_[0], 0))
    return {key: frozenset(names) for key, names in read.items()}, longest


@cache
def _stems() -> Mapping[str, frozenset[str]]:
    found: dict[str, set[str]] = {}
    for row, names in _alike()[0].items():
        if len(row) == 1:
            found.setdefault(stem(row[0]), set()).update(names)
    return {key: frozenset(names) for key, names in found.items()}


@cache
def _spellings() -> Mapping[str, tuple[str, ...]]:
    found: dict[str, list[str]] = {}
    for row in _alike()[0]:
        if len(row) == 1 and len(row[0]) > 4:
            found.setdefault(row[0][0], []).append(row[0])
    return {letter: tuple(sorted(known)) for letter, known in found.items()}


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
            if re.search(r"r(?!ou)|stra", found.group()):
                marks.add("#radius")
        elif kind == "dofbend":
            words.append("dofbend")
        elif kind in ("d", "times"):
            times = float(re.match(r"\d+(?:[.,]\d+)?", found.group()).group().replace(",", "."))
            words.append("1d" if times < 1.3 else "nd")
        elif kind in ("number", "unit"):
            words.append("#num")
            numbers.append(found["number"].strip(".,"))
            if found["unit"]:
                marks.add(_UNITS[found["unit"][:2] if found["unit"][0].isalpha() else found["unit"]])
            if "/" in found["number"] and "#in" not in marks:
                marks.add("#in")
        else:
            words.append(found.group().replace("-", ""))
    if len(numbers) > len(set(numbers)):
        marks.add("#twin")
    at = tuple(_read_at(words, place) for place in range(len(words)))
    present = frozenset(concept for here in at for concept, _ in here) | marks
    return Heard(tuple(words), at, present)


def _read_at(words: Sequence[str], place: int) -> tuple[tuple[str, int], ...]:
    rows, longest = _alike()
    word = words[place]
    found: list[tuple[str, int]] = [(stem(word), place + 1)]
    for length in range(min(longest.get(word, 0), len(words) - place), 1, -1):
        names = rows.get(tuple(words[place : place + length]))
        found += [(name, place + length) for name in names or ()]
    names = rows.get((word,)) or _of_one(word)
    found += [(name, place + 1) for name in names if name != found[0][0]]
    return tuple(found)


@lru_cache(maxsize=4096)
def _of_one(word: str) -> frozenset[str]:
    rows = _alike()[0]
    if word in _SMALL or word in _ASIDE or word.startswith("#"):
        return frozenset()
    if (names := _stems().get(stem(word))) is not None:
        return names
    if len(word) >= 8:
        for cut in range(4, len(word) - 3):
            first, second = word[:cut], word[cut:]
            ahead = rows.get((first,)) or rows.get((first.removesuffix("s"),)) or rows.get((first.removesuffix("n"),))
            if ahead and (behind := rows.get((second,))):
                return ahead | behind
    if word in APART or len(word) < 6:
        return frozenset()
    if right := nearest(word, _spellings().get(word[0], ())):
        return rows[(right,)]
    return frozenset()


APART = frozenset(APART_WORDS.split())


@lru_cache(maxsize=4096)
def line(text: str) -> Line:
    """One 'must' line. Raises ValueError with one clause on a line without a word in a group."""
    asked, _, others = text.partition(NOT)
    groups = tuple(_ways(group) for group in asked.split("+"))
    if not all(groups):
        raise ValueError("a group has no word")
    return Line(text, groups, _ways(others))


def _ways(group: str) -> tuple[tuple[frozenset[str], ...], ...]:
    return tuple(way for one in group.split("/") if (way := _way(one.strip())))


@lru_cache(maxsize=8192)
def _way(text: str) -> tuple[frozenset[str], ...]:
    """The words of one way to say it; a row that is read as one counts as one."""
    words = text.casefold().split()
    longest = _alike()[1]
    names = _names()
    way: list[frozenset[str]] = []
    place = 0
    while place < len(words):
        for length in range(longest.get(words[place], 1), 0, -1):
            row = tuple(words[place : place + length])
            if len(row) == length and " ".join(row) in names:
                way.append(frozenset({" ".join(row).upper()}))
                break
        else:
            length = 1
            way.append(frozenset({stem(words[place])}))
        place += length
    return tuple(way)


@cache
def _names() -> frozenset[str]:
    return frozenset(row.partition(":")[0] for row in re.sub(r"\n +", " ", ALIKE).strip().split("\n"))


def _plain(text: str) -> str:
    folded = _WHAT.sub("what", text.casefold().replace("’", "'"))
    folded = folded.replace("w/o", "without").replace("w/out", "without")
    if not folded.isascii():
        decomposed = unicodedata.normalize("NFKD", folded)
        folded = "".join(c for c in decomposed if not unicodedata.combining(c)).replace("ß", "ss")
    return folded
