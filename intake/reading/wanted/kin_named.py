"""Friends and kin that a story only names: 'been making gates with my uncle Dan, God rest him'.

Somebody else's size is taken back where the sentence has a figure or a tool, or says what he has,
runs or wants; else nothing is said of a size.
"""

from __future__ import annotations

import re

from ...late_pattern import late_pattern
from ..text.patterns import whole_words
from .told_words import HAS_MANDREL

_KIN = late_pattern(r"(?:my|mein\w*|mon|mi|mio|un mio|mijn)\s\w+$", re.IGNORECASE)
_HAS = whole_words(
    "has | have | had | got | uses? | used | runs? | ran | wants? | needs? | already | bought",
    "made | bends? | asks? | hat | hatte | braucht | fährt | nimmt | macht | biegt",
    "avait | utilise | veut | fait | cintre | en a | tiene | tenía | usa | quiere | hace | dobla",
    "aveva | vuole | piega | heeft | gebruikt | wil | maakt | buigt | mandrels? | tooling",
)
_STOP = re.compile(r"[.;!?](?!\d)|\n\s*\n")
_MOST = 300
"""Characters of a sentence that are looked at, on either side."""


def only_named(text: str, words: re.Match[str]) -> bool:
    """Whether the words are such a person's, and their sentence tells of no size or tool."""
    if not _KIN.fullmatch(words[0]):
        return False
    stops = list(_STOP.finditer(text, max(0, words.start() - _MOST), words.start()))
    begin = stops[-1].end() if stops else max(0, words.start() - _MOST)
    stop = _STOP.search(text, words.end(), words.end() + _MOST)
    end = stop.start() if stop else min(len(text), words.end() + _MOST)
    if any(char.isdigit() for char in text[begin:end]):
        return False
    behind = text[words.end() : end].casefold()
    return not (HAS_MANDREL.search(text[begin:end].casefold()) or _HAS.search(behind))
