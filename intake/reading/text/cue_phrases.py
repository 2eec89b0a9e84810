"""Phrases of several words that say what a number is, as 'outside dia.'."""

from __future__ import annotations

import re

from .cues import WORD, Cue, cues_of, longest_cue, parts_phrase, point_belongs

_BETWEEN_WORDS = re.compile(r"[ .\-/'()·]{0,2}")


def cue_phrase(text: str, end: int, first: str) -> tuple[int, tuple[Cue, ...]] | None:
    """The longest phrase that begins with the word ``first``, which ends at ``end`` and is given
    in small letters: where the phrase ends, and what it says. None where the word begins none.
    """
    words, ends = [first.removesuffix("'s")], [end]
    longest = longest_cue(words[0])
    if not longest:
        return None
    while len(words) < longest:
        gap = _BETWEEN_WORDS.match(text, ends[-1])
        word = WORD.match(text, gap.end() if gap is not None else ends[-1])
        if word is None or (gap is not None and parts_phrase(words[-1], gap[0])):
            break
        words.append(word[0].casefold().removesuffix("'s"))
        ends.append(word.end())
    used, cues = cues_of(tuple(words))
    if not used:
        return None
    end = ends[used - 1]
    if text[end : end + 1] == ".":
        end += 1 if point_belongs(words[used - 1], text, end + 1) else 0
    return end, cues
