"""The words on one size of several, and the sign where those on the next begin."""

from __future__ import annotations

from dataclasses import dataclass, field

from ..text.figures import Figure, Layout
from .asked_words import CONTRAST


@dataclass(slots=True)
class Said:
    """The words on one size, casefolded, and where in the text they begin and end."""

    figures: list[Figure]
    begin: int
    end: int
    ahead: str = ""
    """Those before its last figure."""
    words: str = ""
    behind: list[str] = field(default_factory=list)
    """Sentences right behind them that name no size."""
    elsewhere: list[str] = field(default_factory=list)
    """Clauses of other sentences that name one of its figures: 'a mandrel for the .049'."""
    told: bool = False


def plain(text: str) -> str:
    """Casefolded, in one line, with straight apostrophes."""
    return " ".join(text.casefold().replace("’", "'").split())


def contrast_in(words: str) -> int | None:
    """Where the surest sign of a contrast stands, the last of several."""
    folded = words.lower()
    if len(folded) != len(words):
        return None
    for pattern in CONTRAST:
        cuts = list(pattern.finditer(folded))
        if cuts:
            return cuts[-1].start()
    return None


def sentence_end(layout: Layout, sentence: int) -> int:
    return layout.tokens[layout.spans[sentence][1]].end
