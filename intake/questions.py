"""The questions in a message, and the approved answer that fits each, if one does.

Sentence by sentence, from the sender's own words. Which answer fits is scored in ``matching.py``;
a question that none fits well enough is listed for a person, and counted by the weekly report.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from enum import Enum
from itertools import islice

from . import words_questions as words
from .answers import Answer
from .late import Late
from .late_pattern import late_pattern
from .matching import Match, asks_apart, matcher, says_little
from .model import OwnText, Question
from .templates import default_templates

_ASKS = Late(words.ASKS_WITHOUT_MARK, re.IGNORECASE)
_ASKS_ANYWHERE = Late(words.ASKS_ANYWHERE, re.IGNORECASE)
_ASKS_PRICE = Late(words.ASKS_PRICE, re.IGNORECASE)
_ASKS_WITHIN = Late(words.ASKS_WITHIN, re.IGNORECASE)
_REQUEST = Late(words.REQUESTS, re.IGNORECASE)
_PLEASANTRY = Late(words.PLEASANTRIES, re.IGNORECASE)
_GREETING = late_pattern(
    rf"\s*{words.GREETINGS}\b[^,!.?:\n]{{0,40}}(?:[,!.:](?!\d)[ \t]*\n?|\n)\s*(?=\S)", re.IGNORECASE
)
_LEAD_IN = re.compile(
    r"\s*(?:[-*•–>]\s+|\(?\d{1,2}[.)]\s+|[a-h]\)\s+|(?:and|also|so|but|ok|oh|well|then|und|et|y|e|en)\b,?\s+"
    r"|(?:one\s(?:more\s)?|another\s|quick\s|first\s|second\s)?question:?\s+)",
    re.IGNORECASE,
)
_FIGURE = re.compile(r"\d\s?(?:x|×|mm|in|\"|od|ga)|[./]\d", re.IGNORECASE)
_SERVICE = re.compile(words.SERVICE, re.IGNORECASE)
_OFFER = re.compile(words.OFFER, re.IGNORECASE)
_OTHER_GOODS = re.compile(words.OTHER_GOODS, re.IGNORECASE)
_TOOL = re.compile(
    rf"{_FIGURE.pattern}|\b(?:mandr|dorn|doorn|anima)",
    re.IGNORECASE,
)
"""What a plain request for tooling has in it: figures, or the tool."""
_NEEDS_NONE = re.compile(words.NEEDS_NONE, re.IGNORECASE)
_WORD = re.compile(r"[^\W\d_]{2,}")

_ABBREVIATIONS = frozenset(words.ABBREVIATIONS.split())
_JOINT = re.compile(
    r",?\s(?:and|und|et|y|e|en|&|plus|also)\s|,\s|\s?/\s?(?=[^\W\d_])", re.IGNORECASE
)
"""What may part two questions in one sentence."""
_BREAK = late_pattern(
    r"\n[ \t\r\f\v]*\n|[?!]+(?=[\s\"'”’)]|$)"
    r"|(?<=[\w\"”’)])\.[\"”’)]?(?=\s|$)"
    r"|\n[ \t]*(?=[-*•–]\s|\(?\d{1,2}[.)]\s)"
)
PLAIN = 84
"""From this score on the second half of a sentence asks without a question word of its own."""
MOST_AROUND = 3
"""Sentences told around one that asks,"""
LONGEST_AROUND = 400
"""and characters of all of them."""
MOST_ASKED = 60
"""Sentences that are looked at as questions; a message with more is no letter."""
MOST_JOINTS = 3
LONGEST_SENTENCE = 600
"""Characters; a longer stretch without a stop is a table or a list, not a question."""


def find_questions(
    own: OwnText, answers: Iterable[Answer] | None = None, *, statements: bool = False
) -> tuple[Question, ...]:
    """The questions in the sender's own words, in order; ``surface`` is a slice of ``own.text``.

    The plain request ("can you make a mandrel for ...?") and pleasantries are no questions.
    ``answers`` are the approved answers to look among, those of the package by default. With
    ``statements`` what asks nothing openly is answered, too, where it surely wants an answer ("the
    inside of my bend is all ripples"). Never raises on any text.
    """
    known = tuple(default_templates().answers if answers is None else answers)
    found: list[Question] = []
    # Asked in the subject and again in the body, or twice in the body: once is enough.
    said: set[str] = set()
    sentences = list(_sentences(own))
    asking = [_asking(" ".join(own.text[place].split())) for place in sentences]
    for number in _worth_a_look(asking, statements=statements):
        sentence, ask = own.text[sentences[number]], asking[number]
        spaced = " ".join(sentence.split())
        if spaced in said:
            continue
        said.add(spaced)
        around = _around(own.text, sentences, asking, number)
        for part in _parts(sentence, known) if ask is Asking.OPENLY else [sentence]:
            whole = around if part == sentence else ""
            offer = _wants_an_offer(part)
            # A phrase in a statement asks nothing: "We won't need a wiper".
            asks = ask is not Asking.NOT
            match = matcher(known).match(part, offer=offer, around=whole, phrases=asks)
            if not _counts(ask, match, part):
                continue
            answer = match.answer
            if answer is not None and _SERVICE.match(" ".join(part.split())):
                # "Can you anneal it for us?" is asked of the shop, not of the trade.
                match, answer = replace(match, answer=None), None
            if _asks(" ".join(part.split()), match) and (answer is None or answer not in said):
                found.append(Question(surface=part, answer=answer, score=match.score))
                said.add(answer or spaced)
    return tuple(found)


class Asking(Enum):
    """How a sentence asks."""

    OPENLY = "by its form"
    WITHIN = "by a word in it"
    NOT = "not at all"


LEAST = {Asking.OPENLY: 0, Asking.WITHIN: 50, Asking.NOT: 75}
"""From these scores on a sentence that asks so is given an answer."""
FEWEST_TOLD = 3
"""Words of a statement that wants an answer."""
ASKS = 0.2
"""So much more like a question without an answer than like plain mail is told as one."""


def _asking(spaced: str) -> Asking:
    # "We need a mandrel for this", "I don't know the radius": the words alone ask nothing.
    if _asks_openly(spaced):
        return Asking.OPENLY
    return Asking.WITHIN if _ASKS_WITHIN.search(spaced) else Asking.NOT


def _counts(ask: Asking, match: Match, part: str) -> bool:
    """Whether what asks like that is a question, by what is known of its words."""
    if ask is Asking.NOT and (len(_WORD.findall(part)) < FEWEST_TOLD or _NEEDS_NONE.search(part)):
        return False  # a subject: "retour", "Wiper die"; "we won't need a wiper"
    if match.answer is None:
        return ask is Asking.OPENLY or match.asks >= ASKS
    return match.score >= LEAST[ask]


def _worth_a_look(asking: Sequence[Asking], *, statements: bool) -> Iterator[int]:
    """The numbers of the sentences that are looked at, in order."""
    asks = [number for number, ask in enumerate(asking) if ask is not Asking.NOT]
    if statements and not asks:
        asks = list(range(len(asking)))
    yield from asks[:MOST_ASKED]


def _around(text: str, sentences: Sequence[slice], asking: Sequence[Asking], number: int) -> str:
    """A sentence that asks, with what is told before it, or behind the last one that asks.

    "There are small waves inside. What is the first thing to check?" asks with both sentences.
    """
    first = last = number
    while first > 0 and _belongs(text, sentences, asking, first - 1, (first - 1, last)):
        first -= 1
    behind = range(number + 1, len(sentences))
    if all(asking[n] is Asking.NOT for n in behind):
        while last + 1 < len(sentences) and _belongs(
            text, sentences, asking, last + 1, (first, last + 1)
        ):
            last += 1
    return text[sentences[first].start : sentences[last].stop]


def _belongs(
    text: str,
    sentences: Sequence[slice],
    asking: Sequence[Asking],
    number: int,
    span: tuple[int, int],
) -> bool:
    whole = text[sentences[span[0]].start : sentences[span[1]].stop]
    return (
        asking[number] is Asking.NOT
        and span[1] - span[0] <= MOST_AROUND
        and len(whole) <= LONGEST_AROUND
        and "\n\n" not in whole
    )


def _parts(sentence: str, known: tuple[Answer, ...]) -> list[str]:
    """A sentence that asks two things with two answers as two slices, any other whole."""
    for joint in islice(_JOINT.finditer(sentence), MOST_JOINTS):
        halves = [sentence[: joint.start()].strip(), sentence[joint.end() :].strip()]
        if not _ASKS.match(halves[0]):
            continue
        first, second = (matcher(known).match(half) for half in halves)
        if first.answer == second.answer:
            continue
        # "How much thinning and springback?" has one question word for both. "How thick is 16 ga
        # and do you take cards?" is for a person as far as its second half goes.
        both_answered = first.answer is not None and second.answer is not None
        if _ASKS.match(halves[1]) or (both_answered and second.score >= PLAIN):
            return halves
    return [sentence]


def _sentences(own: OwnText) -> Iterator[slice]:
    """Where the sentences of the sender's own words stand, without their greetings."""
    # The subject of an earlier mail asks what was asked then, not what is asked now.
    start = 0 if own.subject_counts else min(own.body_start, len(own.text))
    text = own.text
    for found in [*_BREAK.finditer(text, start), None]:
        if found is None:
            end = stop = len(text)
        elif found.group()[0] == "." and _is_abbreviation(text, found.start()):
            continue
        else:
            end = found.end() if found.group().strip() else found.start()
            stop = found.end()
        place = _without_lead_in(text, start, end)
        if 0 < place.stop - place.start <= LONGEST_SENTENCE:
            yield place
        start = stop


def _is_abbreviation(text: str, stop: int) -> bool:
    word = re.search(r"[^\W_]+\Z", text[max(0, stop - 20) : stop])
    if word is None:
        return True
    # A single letter ("O.D.") or a list's number ("1. What ...") ends no sentence; ".095." does.
    before = word.group()
    opens_line = not text[text.rfind("\n", 0, stop) + 1 : stop].removesuffix(before).strip(" \t(")
    return (
        (before.isalpha() and len(before) == 1)
        or before.casefold() in _ABBREVIATIONS
        or (before.isdigit() and len(before) <= 2 and opens_line)
    )


def _without_lead_in(text: str, start: int, end: int) -> slice:
    """The sentence without the greeting, bullet or 'also,' that it begins with."""
    for pattern in (_GREETING, _LEAD_IN, _LEAD_IN):
        if lead := pattern.match(text, start, end):
            start = lead.end()
    while start < end and text[start].isspace():
        start += 1
    while end > start and text[end - 1].isspace():
        end -= 1
    return slice(start, end)


def _asks_openly(spaced: str) -> bool:
    """Whether a sentence may ask by its form alone, or asks for what is not our trade."""
    if _may_ask(spaced) or _ASKS_PRICE.search(spaced):
        return True
    return _REQUEST.match(spaced) is not None and asks_apart(spaced)


def _may_ask(spaced: str) -> bool:
    return (
        "?" in spaced
        or _ASKS.match(spaced) is not None
        or _ASKS_ANYWHERE.search(spaced) is not None
    )


def _asks(spaced: str, match: Match) -> bool:
    """Whether a sentence is a question, given the approved answer that would fit it."""
    if _PLEASANTRY.match(spaced):
        return False
    if match.answer is not None:
        return True
    # Unmatched single words ("Tuesday?") and plain requests are settled by the sizes' own reply.
    if len(_WORD.findall(spaced)) < 2:
        return False
    apart = asks_apart(spaced) or _OTHER_GOODS.search(spaced) or _SERVICE.match(spaced)
    if not _may_ask(spaced):
        return bool(apart) and _REQUEST.match(spaced) is not None
    if not _requests(spaced) or apart:
        return True
    return not (_TOOL.search(spaced) or says_little(spaced))


def _wants_an_offer(part: str) -> bool:
    """Whether it asks for a price, or for a piece with its figures."""
    spaced = " ".join(part.split())
    if _ASKS_PRICE.search(spaced) or _OFFER.search(spaced):
        return True
    return _requests(spaced) and (says_little(spaced) or _FIGURE.search(spaced) is not None)


def _requests(spaced: str) -> bool:
    """Whether it is the plain request: 'can you make ...', '1.75 x .083, do you have it?'."""
    return any(_REQUEST.match(clause) for clause in (spaced, spaced.rpartition(", ")[2]))
