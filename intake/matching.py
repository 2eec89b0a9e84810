"""How well each approved answer fits a question: a score from 0 to 100 that can be told.

The words of a question are held against the phrases of every answer. A word weighs the more, the
fewer answers use it: 'wiper' tells much, 'mandrel' little, 'the' nothing. The score of a phrase is

    100 x (share of the phrase that the question has) x (share of the question that the answer has)

each by weight, under a root, and less for phrases that weigh little altogether. Words that no
answer knows weigh against all of them: 'do you ship mandrels' is not 'do you make mandrels'.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cached_property, lru_cache

from . import words_terms as words
from .answers import Answer
from .must import APART, Heard, Line, hear, line
from .words_plain import PLAIN as PLAIN_WORDS
from .terms import nearest, plain_words, stem, terms

UNKNOWN = 1.6
"""Weight of a word that no phrase of any answer has; a word of only one answer weighs some 3.7."""
ELSEWHERE_WEIGHT = 10.0
"""Weight of a word that asks for something else ('sell', 'repair'), for answers without it."""
GENERAL = frozenset("CAN SHOULD NEED NECESSARY WHAT WHY STOP EXPLAIN MEAN OTHER ALSO SAME ONE TWO SKIP CALCULATE".split())
PLAIN = frozenset(PLAIN_WORDS.split())
ELSEWHERE = frozenset(term for word in words.ELSEWHERE.split() for term in terms(word))
SMALL = frozenset(term for word in words.SMALL_WORDS.split() for term in terms(word))
ASIDE = frozenset(term for word in words.ASIDE.split() for term in terms(word))
LITTLE = frozenset(term for word in words.LITTLE.split() for term in terms(word))
ASKING_WORDS = frozenset(term for word in words.ASKING_WORDS.split() for term in terms(word))
OTHERWISE_ASKED = 0.75
"""Times this where the question lacks the phrase's question word, or its weightiest word."""
ENOUGH = 58
ENOUGH_WITH_MUST = 100
ABOUT = 78
AGREES = 40
ODD = 15
BY_ITSELF = 90
HEAVY = 5.0
LIGHT = 4.2
LESS_CLEAR = 86
HEAVIER = 6.5
JOINED_ENOUGH = 75
"""From this score on an answer is used."""
AHEAD = 8
"""By so much the best answer has to be ahead of the next."""
MUST_ENOUGH = 76
MUST_AHEAD = 4
MASS_AHEAD = 1.0
RIVAL = 72
JOINED = 40
STRANGE = 0.3
APART_WEIGHT = 10.0
HALF_MASS = 1.5
"""A phrase of this weight counts half as much as one of great weight."""


@dataclass(frozen=True, slots=True)
class Match:
    """The answer that fits a question best, and how well."""

    answer: str | None
    """Its name; None where none fits well enough, or two fit alike."""
    score: int
    best: str | None
    """The name of the one that came nearest, whether or not it is used."""
    phrase: str = ""
    """The phrase of it that came nearest."""
    by_must: bool = False
    """Whether the words that the answer must have are in the question."""
    strange: bool = False
    """Whether the question has words that no answer knows."""


@dataclass(frozen=True, slots=True)
class _Phrase:
    text: str
    terms: frozenset[str]
    weight: float
    heaviest: str
    own: frozenset[str]
    """Its terms that don't stand in every request."""


class Matcher:
    """The phrases of a set of answers, weighed."""

    def __init__(self, answers: Sequence[Answer]) -> None:
        self._answers = tuple(answers)

    def match(self, question: str, *, offer: bool = False) -> Match:
        """The answer that fits ``question`` (one sentence). Never raises on any text.

        ``offer``: it asks for a price or a piece, so that one word of a topic in it ('a titanium
        tube') asks nothing.
        """
        asked = self._known(terms(question))
        said = f" {' '.join(plain_words(question))} "
        told = [term for term in dict.fromkeys(asked) if term not in SMALL]
        scored = self._scored(told, said, 2 if offer else 0)
        strange = any(t not in self._weights and t not in ASIDE and len(t) > 3 for t in told)
        found = self._by_must(question, said, scored)
        if found is not None and (found.answer is not None or not scored):
            return found
        if not scored:
            return Match(None, 0, None, strange=strange)
        score, name, phrase = scored[0]
        behind = scored[1][0] if len(scored) > 1 else 0.0
        enough = ENOUGH if not self._lines[name] else self._enough(name, hear(question))
        fits = score >= enough and score - behind >= AHEAD and name not in self._for_a_person
        fits = fits and (found is None or found.best == name)
        return Match(
            name if fits else None, min(round(score), 100), name, phrase, strange=strange
        )

    def _scored(
        self, told: Sequence[str], said: str, least: int
    ) -> list[tuple[float, str, str]]:
        return sorted(
            (
                (score, answer.name, phrase)
                for answer in self._answers
                for score, phrase in [self._best_phrase(answer.name, told, least)]
                if score > 0 and not self._barred(answer, said)
            ),
            reverse=True,
        )

    def _enough(self, name: str, heard: Heard) -> float:
        """What the nearness to a phrase has to be where the words that must be there are not."""
        about = any(one.about(heard) for one in self._lines[name])
        return ABOUT + ODD * self._odd(heard) if about and not heard.apart else ENOUGH_WITH_MUST

    def _odd(self, heard: Heard) -> int:
        """How many words no answer knows, everyday ones aside: what is asked may lie in them."""
        return sum(
            len(word) > 3
            and word not in PLAIN
            and not term_aside(word)
            and not any(concept in self._concept_weights for concept, _ in here)
            for word, here in zip(heard.words, heard.at, strict=True)
        )

    def joined(self, both: str, question: str) -> Match:
        """The answer that a question gets together with the sentence before it."""
        heard = hear(question)
        if heard.apart:
            return Match(None, 0, None)
        said = f" {' '.join(plain_words(both))} "
        told = [term for term in dict.fromkeys(self._known(terms(both))) if term not in SMALL]
        found = self._by_must(both, said, self._scored(told, said, 0), joined=True)
        if found is None or found.answer is None:
            return Match(None, 0, None)
        its_own = self._cover(found.answer, heard)
        others = any(
            one.met(heard)
            for name, lines in self._lines.items()
            if name != found.answer
            for one in lines
        )
        fits = not others and (its_own is None or its_own >= JOINED)
        return found if fits else Match(None, 0, None)

    def _by_must(
        self,
        question: str,
        said: str,
        scored: Sequence[tuple[float, str, str]],
        *,
        joined: bool = False,
    ) -> Match | None:
        heard = hear(question)
        met = sorted(
            (
                (50 + (self._cover(answer.name, heard) or 0) / 2, mass, answer.name, text)
                for answer in self._answers
                for mass, text in [self._heaviest(answer.name, heard)]
                if mass and not self._barred(answer, said)
            ),
            reverse=True,
        )
        if not met:
            return None
        near = sorted((one for one in met if met[0][0] - one[0] < MUST_AHEAD), key=lambda m: -m[1])
        score, mass, name, text = near[0]
        alone = len(near) == 1 or mass - near[1][1] >= MASS_AHEAD
        agrees = bool(scored) and scored[0][1] == name
        nearness = scored[0][0] if agrees else 0.0
        rival = max((s for s, n, _ in scored if n != name), default=0.0)
        odd = self._odd(heard)
        if agrees and nearness >= AGREES + ODD * odd:
            fits = score >= MUST_ENOUGH and alone
        else:
            clear = score >= BY_ITSELF and (mass >= HEAVY or (mass >= LIGHT and score >= 97))
            weighty = score >= LESS_CLEAR and mass >= HEAVIER
            fits = (clear or weighty) and rival < RIVAL and alone and not odd
        if joined:
            fits = alone and score >= JOINED_ENOUGH and mass >= LIGHT
        fits = fits and name not in self._for_a_person
        return Match(name if fits else None, min(round(score), 100), name, text, fits)

    def _best_phrase(self, name: str, told: Sequence[str], least: int) -> tuple[float, str]:
        vocabulary = self._vocabulary[name]
        shared = sum(self._weights[term] for term in told if term in vocabulary)
        strange = sum(
            ELSEWHERE_WEIGHT if term in ELSEWHERE else self._weights.get(term, UNKNOWN)
            for term in told
            if term not in vocabulary and term not in ASIDE
        )
        if not shared:
            return 0.0, ""
        of_question = shared / (shared + strange)
        present = frozenset(told)
        best, best_text = 0.0, ""
        for phrase in self._phrases[name]:
            if phrase.own.isdisjoint(present) and not phrase.terms <= present:
                # "clr 4.875" is no question of what a CLR is, nor "can you make a mandrel?" one of
                # what mandrels are made of.
                continue
            if phrase.own and sum(t.isalpha() for t in phrase.own & present) < least:
                continue
            mass = sum(self._weights[term] for term in phrase.terms & present)
            of_phrase = mass / phrase.weight
            score = 100 * math.sqrt(of_phrase * of_question) * mass / (mass + HALF_MASS)
            if (asks := phrase.terms & ASKING_WORDS) and not asks & present:
                score *= OTHERWISE_ASKED
            if phrase.heaviest not in present:
                score *= OTHERWISE_ASKED
            if score > best:
                best, best_text = score, phrase.text
        return best * self._scale, best_text

    def _heaviest(self, name: str, heard: Heard) -> tuple[float, str]:
        weights = self._concept_weights
        return max(
            ((one.mass(heard, weights), one.text) for one in self._lines[name] if one.met(heard)),
            default=(0.0, ""),
        )

    def _cover(self, name: str, heard: Heard) -> float | None:
        vocabulary = self._heard_words[name]
        shared = against = 0.0
        read = [{c for c, _ in here} for here in heard.at]
        for place, here in enumerate(heard.at):
            for concept, behind in here:
                for within in range(place, behind):
                    read[within].add(concept)
        for word, concepts in zip(heard.words, read, strict=True):
            if "APART" in concepts:
                against += APART_WEIGHT
            elif known := concepts & vocabulary:
                shared += max(self._concept_weights[one] for one in known)
            elif word in APART:
                against += APART_WEIGHT
            elif term_aside(word):
                continue
            else:
                others = [self._concept_weights[c] for c in concepts if c in self._topics]
                against += min(others) if others else STRANGE
        return 100 * shared / (shared + against) if shared + against else None

    @cached_property
    def _lines(self) -> Mapping[str, tuple[Line, ...]]:
        return {answer.name: tuple(line(one) for one in answer.must) for answer in self._answers}

    @cached_property
    def _heard_words(self) -> Mapping[str, frozenset[str]]:
        return {
            name: frozenset().union(self._vocabulary[name], *(one.concepts for one in lines))
            for name, lines in self._lines.items()
        }

    @cached_property
    def _topics(self) -> frozenset[str]:
        return frozenset(
            one
            for lines in self._lines.values()
            for line_ in lines
            for way in line_.groups[0]
            for step in way
            for one in step
        ) - LITTLE - GENERAL

    @cached_property
    def _concept_weights(self) -> Mapping[str, float]:
        used = Counter(one for words_ in self._heard_words.values() for one in words_)
        return {one: math.log(1 + len(self._answers) / n) for one, n in used.items()}

    def _known(self, asked: Iterable[str]) -> list[str]:
        """The terms, those misspelt put right where one term of the phrases is near."""
        return [
            term
            if term in self._weights or term in SMALL or term in ASIDE
            else nearest(term, self._by_letter.get(term[0], ())) or term
            for term in asked
        ]

    def _barred(self, answer: Answer, said: str) -> bool:
        return any(f" {words_} " in said for words_ in self._unless[answer.name] if words_)

    @cached_property
    def _unless(self) -> Mapping[str, tuple[str, ...]]:
        return {
            a.name: tuple(" ".join(plain_words(one)) for one in a.unless) for a in self._answers
        }

    @cached_property
    def _for_a_person(self) -> frozenset[str]:
        return frozenset(answer.name for answer in self._answers if answer.for_a_person)

    @cached_property
    def _scale(self) -> float:
        """So that a phrase of good weight, fully met, scores 100."""
        return (8 + HALF_MASS) / 8

    @cached_property
    def _split(self) -> Mapping[str, tuple[tuple[str, frozenset[str]], ...]]:
        return {
            answer.name: tuple((phrase, phrase_terms(phrase)) for phrase in answer.phrases)
            for answer in self._answers
        }

    @cached_property
    def _vocabulary(self) -> Mapping[str, frozenset[str]]:
        return {
            name: frozenset().union(*(found for _, found in split)) if split else frozenset()
            for name, split in self._split.items()
        }

    @cached_property
    def _weights(self) -> Mapping[str, float]:
        used = Counter(term for terms_ in self._vocabulary.values() for term in terms_)
        return {term: math.log(1 + len(self._answers) / n) for term, n in used.items()}

    @cached_property
    def _phrases(self) -> Mapping[str, tuple[_Phrase, ...]]:
        return {
            name: tuple(
                _Phrase(
                    text,
                    found,
                    sum(self._weights[t] for t in found),
                    max(found, key=lambda t: (self._weights[t], t)),
                    found - LITTLE - ASIDE,
                )
                for text, found in split
                if found
            )
            for name, split in self._split.items()
        }

    @cached_property
    def _by_letter(self) -> Mapping[str, tuple[str, ...]]:
        """The terms of all phrases by their first letter."""
        found: dict[str, list[str]] = {}
        for term in sorted(self._weights):
            found.setdefault(term[0], []).append(term)
        return {letter: tuple(known) for letter, known in found.items()}


def asks_apart(sentence: str) -> bool:
    """Whether a sentence has a word that asks for what no answer tells: to buy, to repair."""
    return hear(sentence).apart


def says_little(sentence: str) -> bool:
    """Whether a sentence has no word of its own: 'Why?', 'Is that a problem?', 'Can you quote?'"""
    told = {term for term in terms(sentence) if term not in SMALL and term not in ASIDE}
    return told <= LITTLE


@lru_cache(maxsize=4096)
def phrase_terms(phrase: str) -> frozenset[str]:
    """The terms of a phrase that tell it apart; two phrases of the same terms ask the same."""
    return frozenset(term for term in terms(phrase) if term not in SMALL)


def tells_something(phrase: str) -> bool:
    """Whether a phrase has a word that does not stand in every request: 'mandrel for 40 x 40' would
    fit them all."""
    return bool(phrase_terms(phrase) - ASIDE)


@lru_cache(maxsize=8)
def matcher(answers: tuple[Answer, ...]) -> Matcher:
    """The matcher of a set of answers, kept for the run."""
    return Matcher(answers)


def term_aside(word: str) -> bool:
    return word.startswith("#") or stem(word) in SMALL or stem(word) in ASIDE or len(word) < 2
