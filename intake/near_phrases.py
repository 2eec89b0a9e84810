"""How near a question comes to the phrases of each answer: a score from 0 to 100 or a bit more.

A word weighs the more, the fewer answers use it: 'wiper' tells much, 'mandrel' little, 'the'
nothing. The score of a phrase is

    100 x (share of the phrase that the question has) x (share of the question that the answer has)

each by weight, under a root, and less for phrases that weigh little altogether. Words that no
answer knows weigh against all of them: 'do you ship mandrels' is not 'do you make mandrels'.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property, lru_cache

from . import words_terms as words
from .answers import Answer
from .terms import nearest, plain_words, terms

UNKNOWN = 1.6
"""Weight of a word that no phrase of any answer has; a word of only one answer weighs some 3.7."""
ELSEWHERE_WEIGHT = 10.0
"""Weight of a word that asks for something else ('sell', 'repair'), for answers without it."""
ELSEWHERE = frozenset(term for word in words.ELSEWHERE.split() for term in terms(word))
SMALL = frozenset(term for word in words.SMALL_WORDS.split() for term in terms(word))
ASIDE = frozenset(term for word in words.ASIDE.split() for term in terms(word))
LITTLE = frozenset(term for word in words.LITTLE.split() for term in terms(word))
ASKING_WORDS = frozenset(term for word in words.ASKING_WORDS.split() for term in terms(word))
OTHERWISE_ASKED = 0.75
"""Times this where the question lacks the phrase's question word, or its weightiest word."""
HALF_MASS = 1.5
"""A phrase of this weight counts half as much as one of great weight."""
FULL_MASS = 8
"""A phrase of this weight, fully met, scores 100."""
_OF_FULL = (FULL_MASS + HALF_MASS) / FULL_MASS


@dataclass(frozen=True, slots=True)
class Near:
    """The phrase of an answer that a question comes nearest to."""

    score: float
    answer: str
    phrase: str


@dataclass(frozen=True, slots=True)
class _Phrase:
    text: str
    terms: frozenset[str]
    weight: float
    heaviest: str
    own: frozenset[str]
    """Its terms that don't stand in every request."""


class Phrases:
    """The phrases of a set of answers, weighed."""

    def __init__(self, answers: Sequence[Answer]) -> None:
        self._answers = tuple(answers)

    def told(self, question: str) -> list[str]:
        """The terms of a question that tell something, each once, put right where misspelt."""
        known = self._known(terms(question))
        return [term for term in dict.fromkeys(known) if term not in SMALL]

    def verbatim(self, question: str) -> str | None:
        """The answer that has a question word for word among its phrases."""
        return self._word_for_word.get(plain_words(question))

    def near(self, told: Sequence[str], least: int, worth: float = 0.0) -> list[Near]:
        """By answer the phrase that comes nearest, the nearest of all first.

        ``least``: so many words of its own must the question have of a phrase. Answers none of
        whose phrases can come to a score of ``worth`` are left out.
        """
        names = set().union(*(self._naming.get(term, ()) for term in told))
        found = (self._nearest(name, told, least, worth) for name in names)
        return sorted((n for n in found if n.score), key=lambda n: (-n.score, n.answer))

    def _nearest(self, name: str, told: Sequence[str], least: int, worth: float) -> Near:
        vocabulary = self.vocabulary[name]
        shared = sum(self._weights[term] for term in told if term in vocabulary)
        strange = sum(
            ELSEWHERE_WEIGHT if term in ELSEWHERE else self._weights.get(term, UNKNOWN)
            for term in told
            if term not in vocabulary and term not in ASIDE
        )
        best, best_text = 0.0, ""
        if not shared or _at_most(shared, strange) < worth:
            return Near(best, name, best_text)
        present = frozenset(told)
        phrases, by_term = self._phrases[name], self._by_term[name]
        having = set().union(*(by_term.get(term, ()) for term in told))
        for phrase in (phrases[at] for at in sorted(having)):
            if phrase.own.isdisjoint(present) and not phrase.terms <= present:
                # "clr 4.875" is no question of what a CLR is, nor "can you make a mandrel?" one of
                # what mandrels are made of.
                continue
            if phrase.own and sum(t.isalpha() for t in phrase.own & present) < least:
                continue
            mass = sum(self._weights[term] for term in phrase.terms & present)
            share = mass / phrase.weight * shared / (shared + strange)
            score = 100 * math.sqrt(share) * mass / (mass + HALF_MASS)
            if (asks := phrase.terms & ASKING_WORDS) and not asks & present:
                score *= OTHERWISE_ASKED
            if phrase.heaviest not in present:
                score *= OTHERWISE_ASKED
            if score > best:
                best, best_text = score, phrase.text
        return Near(best * _OF_FULL, name, best_text)

    def _known(self, asked: Iterable[str]) -> list[str]:
        """The terms, those misspelt put right where one term of the phrases is near."""
        return [
            term
            if term in self._weights or term in SMALL or term in ASIDE
            else nearest(term, self._by_letter.get(term[0], ())) or term
            for term in asked
        ]

    @cached_property
    def _word_for_word(self) -> Mapping[tuple[str, ...], str]:
        return {plain_words(one): a.name for a in self._answers for one in a.phrases}

    @cached_property
    def vocabulary(self) -> Mapping[str, frozenset[str]]:
        """The terms of each answer's phrases."""
        return {
            name: frozenset().union(*(found for _, found in split)) if split else frozenset()
            for name, split in self._split.items()
        }

    @cached_property
    def _split(self) -> Mapping[str, tuple[tuple[str, frozenset[str]], ...]]:
        return {
            answer.name: tuple((phrase, phrase_terms(phrase)) for phrase in answer.phrases)
            for answer in self._answers
        }

    @cached_property
    def _weights(self) -> Mapping[str, float]:
        used = Counter(term for terms_ in self.vocabulary.values() for term in terms_)
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
    def _naming(self) -> Mapping[str, frozenset[str]]:
        """By term the answers that have it in a phrase."""
        found: dict[str, set[str]] = {}
        for name, vocabulary in self.vocabulary.items():
            for term in vocabulary:
                found.setdefault(term, set()).add(name)
        return {term: frozenset(names) for term, names in found.items()}

    @cached_property
    def _by_term(self) -> Mapping[str, Mapping[str, list[int]]]:
        """By answer and term, which of its phrases have the term."""
        found: dict[str, dict[str, list[int]]] = {}
        for name, phrases in self._phrases.items():
            here = found[name] = {}
            for at, phrase in enumerate(phrases):
                for term in phrase.terms:
                    here.setdefault(term, []).append(at)
        return found

    @cached_property
    def _by_letter(self) -> Mapping[str, tuple[str, ...]]:
        """The terms of all phrases by their first letter."""
        found: dict[str, list[str]] = {}
        for term in sorted(self._weights):
            found.setdefault(term[0], []).append(term)
        return {letter: tuple(known) for letter, known in found.items()}


def says_little(sentence: str) -> bool:
    """Whether a sentence has no word of its own: 'Why?', 'Is that a problem?', 'Can you quote?'"""
    told = {term for term in terms(sentence) if term not in SMALL and term not in ASIDE}
    return told <= LITTLE


def _at_most(shared: float, strange: float) -> float:
    """The score of a phrase that has all of what the question shares with its answer, no more."""
    whole = math.sqrt(shared / (shared + strange)) * shared / (shared + HALF_MASS)
    return 100 * whole * _OF_FULL


@lru_cache(maxsize=4096)
def phrase_terms(phrase: str) -> frozenset[str]:
    """The terms of a phrase that tell it apart; two phrases of the same terms ask the same."""
    return frozenset(term for term in terms(phrase) if term not in SMALL)


def tells_something(phrase: str) -> bool:
    """Whether a phrase has a word that does not stand in every request: 'mandrel for 40 x 40' would
    fit them all."""
    return bool(phrase_terms(phrase) - ASIDE)


def is_barred(answer: Answer, question: str) -> bool:
    """Whether one of the answer's 'unless' words stands in the question."""
    if not answer.unless:
        return False
    said = _spaced(question)
    return any(_spaced(one) in said for one in answer.unless)


@lru_cache(maxsize=1024)
def _spaced(text: str) -> str:
    return f" {' '.join(plain_words(text))} "
