"""Words of a text with their places, and phrases looked up among them: always in linear time.

Accents and apostrophes are folded away ("q'ty", "quantité", "Stück" are typed without them too).
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache

PhraseTable = Mapping[str, tuple[tuple[str, ...], ...]]

# Figures, letters, a paragraph's end, a line's end, or one mark. Apostrophes only part words.
_WORD = re.compile(r"\d+|[^\W\d_]+|\n\s*\n\s*|\n|[^\s\w'’`]")
_PADDING = ("",) * 64
_ENDS = frozenset("! ? \n\n".split(" "))
# "2 pcs. mandrel", "qty. 3": the point closes the abbreviation, not the sentence.
_ABBREVIATED = frozenset(
    "pcs pc pce no nos nr n q qty stk st ca approx incl inkl ea szt pz ud uds cant ud od o d i e "
    "max min art pos ref tel fig vs bzw zb dia rad mr mrs ms dr z b ks ant aant deliv del nom est "
    "wt req lin lig itm".split()
)


@dataclass(frozen=True, slots=True)
class Words:
    """The words of a text in order, each with its place and the bounds of its sentence."""

    text: tuple[str, ...]
    """Followed by empty words, so that a look a little beyond either end finds nothing."""
    start: tuple[int, ...]
    end: tuple[int, ...]
    first: tuple[int, ...]
    """Index of the first word of the sentence that each word stands in."""
    behind: tuple[int, ...]
    """Index behind that sentence's last word."""

    def __len__(self) -> int:
        return len(self.start)

    def at(self, index: int) -> str:
        """The word there, or an empty one beyond either end."""
        return self.text[index] if index < len(self.text) else ""

    def together(self, left: int, right: int) -> bool:
        """Whether two words stand in one sentence."""
        inside = 0 <= right < len(self.start)
        return inside and self.first[right] <= left < self.behind[right]

    def before(self, index: int, far: int) -> range:
        """Up to ``far`` indexes before a word in its sentence, nearest first."""
        begin = self.first[index] if index < len(self.start) else 0
        return range(index - 1, max(begin, index - far) - 1, -1)

    def after(self, index: int, far: int) -> range:
        """Up to ``far`` indexes from one on, in the sentence of the word before it."""
        stop = self.behind[index - 1] if 0 < index <= len(self.start) else len(self.start)
        return range(index, min(stop, index + far))

    def phrase(self, index: int, table: PhraseTable) -> int:
        """How many words the longest phrase of ``table`` takes that begins there; 0 is none."""
        text = self.text
        if index >= len(text) or text[index] not in table:
            return 0
        for phrase in table[text[index]]:
            if text[index : index + len(phrase)] == phrase:
                return len(phrase)
        return 0


@lru_cache(maxsize=4096)
def fold(word: str) -> str:
    """Casefolded, without accents: 'Stück' is 'stuck'."""
    word = word.casefold()
    if word.isascii():
        return word
    return "".join(c for c in unicodedata.normalize("NFD", word) if not unicodedata.combining(c))


@lru_cache(maxsize=16)
def words_of(text: str) -> Words:
    """All words of ``text``. The last few texts are kept: several steps ask for the same."""
    matches = list(_WORD.finditer(text))
    start = tuple([match.start() for match in matches])
    end = tuple([match.end() for match in matches])
    found = [
        fold(written) if written[0] != "\n" else "\n\n" if written.count("\n") > 1 else "\n"
        for written in [match[0] for match in matches]
    ]
    first: list[int] = []
    behind: list[int] = []
    begin = 0
    for at, word in enumerate(found):
        if word in _ENDS or (word == "." and _closes(found, at, text, end[at])):
            many = at + 1 - begin
            first += [begin] * many
            behind += [at + 1] * many
            begin = at + 1
    many = len(found) - begin
    first += [begin] * many
    behind += [len(found)] * many
    return Words((*found, *_PADDING), start, end, tuple(first), tuple(behind))


def _closes(found: list[str], at: int, text: str, after: int) -> bool:
    following = text[after : after + 2]
    if following[:1] not in ("", " ", "\n", "\t", ")"):
        return False
    if at and found[at - 1] == ".":
        return False  # dots that lead from a label to its value
    return not (at and found[at - 1] in _ABBREVIATED and not following[1:].isupper())


_UMLAUTS = str.maketrans({"ä": "ae", "ö": "oe", "ü": "ue"})


def _spellings(text: str, mark: str | None) -> list[str]:
    """What ``mark`` parts, and once more as it is typed without umlauts: 'spaetestens'."""
    parts = text.split(mark)
    return parts + [part.translate(_UMLAUTS) for part in parts if set(part) & set("äöü")]


def phrases(*texts: str) -> PhraseTable:
    """A table of phrases written with bars between them: 'no required | qty | q.ty'."""
    table: dict[str, list[tuple[str, ...]]] = {}
    for text in texts:
        for written in _spellings(text, "|"):
            phrase = tuple(map(fold, _WORD.findall(written.strip())))
            if phrase:
                table.setdefault(phrase[0], []).append(phrase)
    return {first: tuple(sorted(found, key=len, reverse=True)) for first, found in table.items()}


def word_set(*texts: str) -> frozenset[str]:
    """Folded single words."""
    return frozenset(fold(word) for text in texts for word in _spellings(text, None))
