"""Which approved answer fits a question, and how well: a score from 0 to 100 that can be told.

Two readings. One is how near the question comes to a phrase of an answer (``near_phrases.py``):
word for word, or nearly so, settles it, and of an answer that nothing was learnt about, because its
owner added it, the phrases alone speak. Otherwise the other is asked, what labelled questions have
taught (``learnt.py``).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache

from .answers import Answer
from .heard import hear
from .learnt import Likeness, known_answers, likeness
from .near_phrases import Near, Phrases, is_barred, says_little

__all__ = ["Match", "Matcher", "asks_apart", "matcher", "says_little"]

# Read off the open question sets, each scored by what the others teach; see the README there.
SURE, OFFERED = 0.1, 0.7
"""From these likenesses on an answer is used: for a question, for what asks for a price or piece.
"""
ENOUGH = 58
"""From this nearness on a phrase counts,"""
NEARLY = 92
"""from this on as if it were the question word for word."""
AHEAD = 8
"""By so much the nearest answer has to be ahead of the next."""
MIDDLE, SPREAD = 50, 50
"""The score that is told: so much at a likeness of 0, and so much more at 1."""


@dataclass(frozen=True, slots=True)
class Match:
    """The answer that fits a question best, and how well."""

    answer: str | None
    """Its name; None where none fits well enough, or two fit alike."""
    score: int
    best: str | None
    """The name of the one that came nearest, whether or not it is used."""
    phrase: str = ""
    """Its phrase that came nearest, or the words that spoke for it."""
    asks: float = 0.0
    """How much more it is like questions that no answer tells than like what asks nothing."""


_NONE = Match(None, 0, None)


class Matcher:
    """A set of answers, to be matched with questions."""

    def __init__(self, answers: Sequence[Answer]) -> None:
        self._answers = {answer.name: answer for answer in answers}
        self._phrases = Phrases(answers)

    def match(
        self, question: str, *, offer: bool = False, around: str = "", phrases: bool = True
    ) -> Match:
        """The answer that fits ``question``, one sentence or a few. Never raises on any text.

        ``offer``: it asks for a price or a piece, so that one word of a topic in it ('a titanium
        tube') is near to no phrase. ``around``: what it is told with. Without ``phrases`` what was
        learnt counts alone.
        """
        near = self._near(question, least=2 if offer else 0)
        nearest = near[0] if near else None
        if nearest and phrases and self._settles(nearest, near, question, offer):
            return self._told(nearest.answer, nearest.score, nearest.phrase)
        alike = likeness(around or question)
        name = self._likeliest(alike, question)
        if name is None:
            return _NONE
        score, words = _score(alike.scores[name]), ", ".join(alike.telling(name))
        if alike.scores[name] >= (OFFERED if offer else SURE):
            return self._told(name, score, words)
        return Match(None, score, name, words, alike.asks)

    def _told(self, name: str, score: float, why: str) -> Match:
        used = None if self._answers[name].for_a_person else name
        return Match(used, min(round(score), 100), name, why)

    def _near(self, question: str, least: int) -> list[Near]:
        near = self._phrases.near(self._phrases.told(question), least, worth=ENOUGH - AHEAD)
        return [one for one in near if not is_barred(self._answers[one.answer], question)]

    def _settles(self, nearest: Near, near: Sequence[Near], question: str, offer: bool) -> bool:
        """Whether the nearest phrase alone says which answer it is."""
        behind = near[1].score if len(near) > 1 else 0.0
        if nearest.score < ENOUGH or nearest.score - behind < AHEAD:
            return False
        if offer or self._phrases.verbatim(question) == nearest.answer:
            return True
        if nearest.score >= NEARLY and not hear(question).apart:
            return True
        return nearest.answer not in known_answers()

    def _likeliest(self, alike: Likeness, question: str) -> str | None:
        known = (name for name in alike.best if name in self._answers)
        return next((n for n in known if not is_barred(self._answers[n], question)), None)


def _score(alike: float) -> int:
    return round(max(0.0, min(100.0, MIDDLE + SPREAD * alike)))


def asks_apart(sentence: str) -> bool:
    """Whether a sentence has a word that asks for what no answer tells: to buy, to repair."""
    return hear(sentence).apart


@lru_cache(maxsize=8)
def matcher(answers: tuple[Answer, ...]) -> Matcher:
    """The matcher of a set of answers, kept for the run."""
    return Matcher(answers)
