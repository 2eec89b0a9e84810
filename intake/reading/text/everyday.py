"""Words that say nothing of sizes, whatever follows them: most words of most mail."""

from __future__ import annotations

from functools import lru_cache

from ..numbers.foreign_multiples import begins_multiple
from ..numbers.foreign_numbers import begins_length
from ..numbers.multiples import MULTIPLE_STARTS
from ..numbers.number_words import WORDS
from .cues import longest_cue

_TIMES_OR_SCHEDULE = frozenset("xbmps")
"""What begins a times sign in letters ('by', 'per') or a schedule ('std', 'xs')."""


@lru_cache(maxsize=8192)
def says_nothing(word: str) -> bool:
    """Whether no number, unit, times sign or cue may begin with this word, casefolded."""
    return not (
        word[0] in _TIMES_OR_SCHEDULE
        or word[0] in MULTIPLE_STARTS
        or word in WORDS
        or word in ("inch", "an", "a", "extra", "double")  # 'extra heavy' is a schedule
        or begins_length(word)
        or begins_multiple(word)
        or longest_cue(word.removeprefix("l'").removesuffix("'s"))
    )
