"""Which approved answer fits a question, and how well: a score from 0 to 100 that can be told.

Two readings of a question have to agree. One asks whether the words are there that an answer must
have (``must.py``), the other how near the question comes to one of its phrases
(``near_phrases.py``). Where both name the same answer, it is used; where only the first does, its
words must tell a lot and explain the question nearly whole; where only the second does, the
question must at least be about the same thing. A word that asks for something else, or that
nobody knows, speaks against. An answer without 'must' lines goes by its phrases alone.

The score of words that must be there is 50 + half of how much of the question the answer
explains, by weight, in per cent.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property, lru_cache

from .answers import Answer
from .heard import APART, Heard, hear, is_apart, is_small
from .must import Line, line
from .near_phrases import LITTLE, Near, Phrases, is_barred, says_little
from .terms import stem
from .words_plain import PLAIN

__all__ = ["Match", "Matcher", "asks_apart", "matcher", "says_little"]

# Read off the open question sets; see tests/corpus/questions/README.md.
ENOUGH = 58
"""From this nearness on an answer without 'must' lines is used,"""
ABOUT = 78
"""from this on one whose 'must' lines are met as far as what the question is about,"""
ANYHOW = 100
"""from this on any."""
AHEAD = 8
"""By so much the nearest answer has to be ahead of the next."""
AGREES = 40
"""So near has a phrase to come to agree with the words that must be there."""
ODD = 15
"""So much nearer for each word that nobody knows."""
EXPLAINED = 76
"""From this score on an answer on which both readings agree is used;"""
BY_ITSELF, WELL = 90, 97
"""from these on one by its 'must' line alone, if the line tells much, or a good deal;"""
MOSTLY = 86
"""from this on if it tells very much;"""
MUCH, GOOD_DEAL, VERY_MUCH = 5.0, 4.2, 6.5
"""What a 'must' line tells, by the weights of its words; a word of one answer weighs some 3.7."""
TELLS_MORE = 1.0
"""By so much a line has to tell more than another answer's, where both explain as much."""
AS_MUCH = 4
"""Scores that differ by less explain as much."""
RIVAL = 72
"""So near may a question come to another answer's phrase, and not nearer."""
MOST_ODD, ODD_RIVAL = 1, 25
STRANGE_WEIGHT = 0.3
APART_WEIGHT = 10.0
"""Weights against an answer: of a word it does not know, and of one that asks something else."""

_EVERYDAY = frozenset(map(stem, PLAIN.split()))
_GENERAL = frozenset(
    "CAN SHOULD NEED NECESSARY WHAT WHY STOP EXPLAIN MEAN OTHER ALSO SAME ONE TWO SKIP CALCULATE"
    .split()
)  # fmt: skip
"""Readings that say what is asked, and not of what."""


@dataclass(frozen=True, slots=True)
class Match:
    """The answer that fits a question best, and how well."""

    answer: str | None
    """Its name; None where none fits well enough, or two fit alike."""
    score: int
    best: str | None
    """The name of the one that came nearest, whether or not it is used."""
    phrase: str = ""
    """The phrase or the 'must' line of it that came nearest."""
    strange: bool = False
    """Whether the question has words that no answer knows."""


@dataclass(frozen=True, slots=True)
class _Met:
    """A 'must' line that is met: how well its answer explains the question, what the line tells."""

    score: float
    mass: float
    answer: str
    text: str


_NONE = Match(None, 0, None)


class Matcher:
    """A set of answers, to be matched with questions."""

    def __init__(self, answers: Sequence[Answer]) -> None:
        self._answers = {answer.name: answer for answer in answers}
        self._phrases = Phrases(answers)

    def match(self, question: str, *, offer: bool = False, must: bool = True) -> Match:
        """The answer that fits ``question`` (one sentence). Never raises on any text.

        ``offer``: it asks for a price or a piece, so that one word of a topic in it ('a titanium
        tube') asks nothing. Without ``must`` only nearness to a phrase counts.
        """
        near = self._near(question, least=2 if offer else 0)
        met = self._met(question) if must and not offer else []
        if met and (name := self._settled(question, met, near)):
            best = met[0] if met[0].answer == name else next(m for m in met if m.answer == name)
            return Match(name, min(round(best.score), 100), name, best.text)
        if not near:
            return Match(None, round(met[0].score), met[0].answer, met[0].text) if met else _NONE
        best_, behind = near[0], near[1].score if len(near) > 1 else 0.0
        verbatim = self._phrases.verbatim(question) == best_.answer
        enough = ENOUGH if verbatim else self._enough(best_.answer, question)
        fits = best_.score >= enough and best_.score - behind >= AHEAD
        fits = fits and (verbatim or not met or met[0].answer == best_.answer)
        fits = fits and self._may_be_used(best_.answer)
        return Match(
            best_.answer if fits else None,
            min(round(best_.score), 100),
            best_.answer,
            best_.phrase,
            strange=self._phrases.strange(self._phrases.told(question)),
        )

    def _settled(self, question: str, met: Sequence[_Met], near: Sequence[Near]) -> str | None:
        """The answer whose 'must' line is met, if the nearness to phrases does not deny it."""
        first = _first(met)
        if first is None or not self._may_be_used(first.answer):
            return None
        odd = self._odd(hear(question))
        if near and near[0].answer == first.answer and near[0].score >= AGREES + ODD * odd:
            return first.answer if first.score >= EXPLAINED else None
        rival = max((one.score for one in near if one.answer != first.answer), default=0.0)
        tells = (
            (first.score >= BY_ITSELF and first.mass >= MUCH)
            or (first.score >= WELL and first.mass >= GOOD_DEAL)
            or (first.score >= MOSTLY and first.mass >= VERY_MUCH)
        )
        most = RIVAL - ODD_RIVAL * odd
        return first.answer if tells and rival < most and odd <= MOST_ODD else None

    def _near(self, question: str, least: int) -> list[Near]:
        near = self._phrases.near(self._phrases.told(question), least)
        return [one for one in near if not is_barred(self._answers[one.answer], question)]

    def _met(self, question: str) -> list[_Met]:
        """By answer the 'must' line that is met and tells most, best explained first."""
        heard = hear(question)
        found = []
        by_answer: dict[str, list[Line]] = {}
        for word in self._lines_by_word.keys() & heard.present:
            for name, one in self._lines_by_word[word]:
                by_answer.setdefault(name, []).append(one)
        for name, lines in by_answer.items():
            told = [(one.mass(heard, self._weights), one) for one in lines if one.met(heard)]
            if told and not is_barred(self._answers[name], question):
                mass, best = max(told, key=lambda m: (m[0], m[1].text))
                score = 50 + (self._share(name, heard) or 0.0) / 2
                found.append(_Met(score, mass, name, best.text))
        return sorted(found, key=lambda m: (-m.score, -m.mass, m.answer))

    def _share(self, name: str, heard: Heard) -> float | None:
        """How much of a question an answer explains, in per cent; None where nothing tells."""
        vocabulary = self._vocabulary[name]
        shared = against = 0.0
        for word, read in heard.readings():
            known = read & vocabulary
            if APART in read or (is_apart(word) and not known):
                against += APART_WEIGHT
            elif known:
                shared += max(self._weights[one] for one in known)
            elif not is_small(word):
                others = [self._weights[one] for one in read & self._topics]
                against += min(others, default=STRANGE_WEIGHT)
        return 100 * shared / (shared + against) if shared + against else None

    def _enough(self, name: str, question: str) -> float:
        """How near a phrase has to be where the words that must be there are not."""
        if not self._lines[name]:
            return ENOUGH
        heard = hear(question)
        about = any(one.about(heard) for one in self._lines[name])
        return ABOUT + ODD * self._odd(heard) if about and not heard.apart else ANYHOW

    def _odd(self, heard: Heard) -> int:
        """How many words no answer knows, everyday ones aside: what is asked may lie in them."""
        return sum(
            len(word) > 3
            and stem(word) not in _EVERYDAY
            and not is_small(word)
            and not any(concept in self._weights for concept, _ in here)
            for word, here in zip(heard.words, heard.at, strict=True)
        )

    def _may_be_used(self, name: str) -> bool:
        return not self._answers[name].for_a_person

    @cached_property
    def _lines(self) -> Mapping[str, tuple[Line, ...]]:
        return {name: tuple(map(line, answer.must)) for name, answer in self._answers.items()}

    @cached_property
    def _lines_by_word(self) -> Mapping[str, list[tuple[str, Line]]]:
        """'Must' lines with the names of their answers, by words one of which has to be there."""
        found: dict[str, list[tuple[str, Line]]] = {}
        for name, lines in self._lines.items():
            for one in lines:
                for word in one.needs:
                    found.setdefault(word, []).append((name, one))
        return found

    @cached_property
    def _vocabulary(self) -> Mapping[str, frozenset[str]]:
        """All that the phrases and 'must' lines of each answer name."""
        return {
            name: self._phrases.vocabulary[name].union(*(one.concepts for one in lines))
            for name, lines in self._lines.items()
        }

    @cached_property
    def _weights(self) -> Mapping[str, float]:
        used = Counter(one for known in self._vocabulary.values() for one in known)
        return {one: math.log(1 + len(self._answers) / n) for one, n in used.items()}

    @cached_property
    def _topics(self) -> frozenset[str]:
        """What questions are about: the first groups of all 'must' lines."""
        lines = (one for lines_ in self._lines.values() for one in lines_)
        firsts = (word for one in lines for way in one.groups[0] for word in way)
        return frozenset().union(*firsts) - LITTLE - _GENERAL


def _first(met: Sequence[_Met]) -> _Met | None:
    """The one that explains most; of those that explain as much, the one that tells most; None
    where two tell alike."""
    near = [one for one in met if met[0].score - one.score < AS_MUCH]
    near.sort(key=lambda m: -m.mass)
    if not near or (len(near) > 1 and near[0].mass - near[1].mass < TELLS_MORE):
        return None
    return near[0]


def asks_apart(sentence: str) -> bool:
    """Whether a sentence has a word that asks for what no answer tells: to buy, to repair."""
    return hear(sentence).apart


@lru_cache(maxsize=8)
def matcher(answers: tuple[Answer, ...]) -> Matcher:
    """The matcher of a set of answers, kept for the run."""
    return Matcher(answers)
