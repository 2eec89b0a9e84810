"""What a person wants, weighed sentence by sentence: tooling, an answer, or neither.

A size alone is no request: a refund names one too. What counts is what is done with it. A price or
a piece asked for, a bend doubted, a mandrel counted lean to tooling; an order under way, an offer
made to us, a complaint lean elsewhere, and take the force out of an asking in the same sentence
("please confirm the ship date of 1 mandrel"). Every weight that decided is told in the reason, so
that a wrong kind is understood at a glance.
"""

from __future__ import annotations

import re
from bisect import bisect_right
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import accumulate, groupby

from . import words_errand, words_knowledge
from .asking import Sentence, act, counting
from .late import Late
from .late_cues import Cues
from .late_pattern import late_pattern
from .said_words import said_words
from .words_elsewhere import ELSEWHERE
from .words_orders import ORDERS
from .words_repeats import REPEATS
from .words_replies import REPLIES
from .words_selling import SELLING
from .words_unwanted import UNWANTED

_BEGINNING, _END = 4_000, 1_500
"""People say what they want in their first few thousand characters, or below a long table [so many
characters are looked at]."""
_LONGEST_SENTENCE = 600
_MOST_SENTENCES = 300
_DIGIT = re.compile(r"\d")
_SENTENCE_END = late_pattern(
    r"(?<=[.!?？。])(?<!\b[nv]s\.)(?<!\bn[or]\.)(?<!\bca\.)(?<!\bqty\.)(?<!\bpcs\.)(?<!\b[a-z]\.)\s+"
    r"|\n\s*\n|\n(?=\s*(?:[-•*・]|\d{1,2}[.)])\s)",
    re.IGNORECASE,
)

_TOOL = Late(words_errand.TOOL)
_WANTS_TOOL = Late(words_errand.WANTS_TOOL)
_REPEATS = Late(REPEATS)
_DRAWING = Late(words_errand.DRAWING)
_BENDING = Late(words_errand.BENDING)
_TUBE = Late(words_errand.TUBE)
_RADIUS = Late(words_errand.RADIUS)
_NAMED = Late(words_errand.NAMED_FIGURES)
_FIGURES = Late([words_errand.TUBE_FIGURES])
_DEFINITE = Late(words_errand.DEFINITE)
_HABIT = Late(words_errand.HABIT)
_SOLID = Late(words_errand.SOLID)
_KNOWLEDGE = Late(words_knowledge.KNOWLEDGE)
_TRADE = Late(words_knowledge.TRADE)
_ASKING = Late(words_knowledge.ASKING)
_GROUPS = (*ORDERS, *REPLIES, *SELLING, *ELSEWHERE, *UNWANTED)
_GROUP_OF = [group for group in _GROUPS for _ in group.cues]
_ELSEWHERE = Cues((weight, Late([cue])) for group in _GROUPS for weight, cue in group.cues)
_MOST_OF_ONE_ERRAND = 10
"""A long pitch is no more a pitch than a short one."""
_HARDLY_A_WORD = 8
_SPOILS = 3
"""A cue of this weight takes the force out of an asking in its own sentence."""


@dataclass(frozen=True)
class Leaning:
    """How strongly the words lean one way, and the words that say so."""

    weight: float
    why: str


@dataclass(frozen=True)
class Errand:
    """The three leanings of one person's message."""

    tooling: Leaning
    question: Leaning
    elsewhere: Leaning
    asks: bool
    """Whether tooling is asked for in so many words: a price, a piece, the same again, can it be
    bent."""
    sizes: int
    """Sizes read, none where nothing says that the figures are those of a tube."""
    only_mentioned: bool
    """Whether each size is but that of "the 2 x .083 you sent", and no mandrel is counted."""
    specified: bool
    """Whether the sizes look like an order: a radius or a dimension named, mandrels counted, or
    hardly a word besides. "The 1.75 one" is none."""
    wants_knowledge: bool
    """What a wall factor is, how long a mandrel lasts: sizes beside it are examples."""


def sentences(text: str) -> list[str]:
    """The sentences of a text, line wraps mended; list items count as sentences."""
    if len(text) > _BEGINNING + _END:
        text = f"{text[:_BEGINNING]}\n\n{text[-_END:]}"
    parts = _SENTENCE_END.split(text, maxsplit=_MOST_SENTENCES)
    return [mended[:_LONGEST_SENTENCE] for part in parts if (mended := " ".join(part.split()))]


def weigh(text: str, sizes_read: int, tooling_lines: int = 0, *, in_files: bool = False) -> Errand:
    """Weighs the sender's own words (subject included where it counts).

    ``in_files``: the sizes were read in attached files, which name them more fully than any words.
    """
    spoken = sentences(text)
    whole = "\n".join(spoken)
    names_tool = _TOOL.search(whole) is not None
    of_tubes = names_tool or _TUBE.search(whole) is not None or _BENDING.search(whole) is not None
    of_tubes = of_tubes or in_files
    if not of_tubes or (_SOLID.search(whole) and not _WANTS_TOOL.search(whole)):
        sizes_read = 0  # a baking tin's, a flat bar's, a machine's
    elsewhere, business = _elsewhere(spoken, whole, names_tool=names_tool)
    heard = [
        Sentence(
            text=said,
            names_tool=_TOOL.search(said) is not None,
            touched=number in business,
            spoilt=business.get(number, 0) >= _SPOILS,
        )
        for number, said in enumerate(spoken)
    ]
    only_mentioned = _only_mentioned(heard)
    asks, tooling = _tooling(heard, whole, sizes_read, tooling_lines, only_mentioned=only_mentioned)
    return Errand(
        tooling=tooling,
        question=_question(heard, of_tubes=of_tubes),
        elsewhere=elsewhere,
        asks=asks,
        sizes=sizes_read,
        only_mentioned=only_mentioned,
        specified=in_files or _specified(heard, whole),
        wants_knowledge=any(_KNOWLEDGE.search(said) and _ASKING.search(said) for said in spoken),
    )


def _tooling(
    heard: Sequence[Sentence],
    whole: str,
    sizes_read: int,
    tooling_lines: int,
    *,
    only_mentioned: bool,
) -> tuple[bool, Leaning]:
    names_tool = any(sentence.names_tool for sentence in heard)
    about_tool = names_tool or _RADIUS.search(whole) is not None
    acts = [act(sentence, sizes_read, about_tool=about_tool) for sentence in heard]
    weight, why = max(acts, key=lambda act: act[0], default=(0.0, ""))
    reasons = [why] if why else []
    repeats = _REPEATS.search(whole)
    if repeats is not None:
        weight += 7
        reasons.append(f'a repeat order ("{said_words(repeats)}")')
    counted = names_tool or sizes_read > 0
    counts = counting(heard) if counted else None
    if counts is not None:
        weight += 2
        reasons.append(f'counts them ("{said_words(counts)}")')
    asks = weight >= 3
    if tooling_lines:
        weight += 2.0 * min(tooling_lines, 3)
        reasons.append("lines of tooling")
        asks = True
    if sizes_read:
        reasons.append("one size read" if sizes_read == 1 else f"{sizes_read} sizes read")
        weight += 2 if _BENDING.search(whole) or _RADIUS.search(whole) else 1
        if not only_mentioned:
            weight += 3 if _RADIUS.search(whole) else 2
    weight += names_tool + bool(names_tool and _DRAWING.search(whole))
    return asks, Leaning(weight, ", ".join(reasons))


def _only_mentioned(heard: Sequence[Sentence]) -> bool:
    """Does every size stand in a sentence of other business, or as that of a certain mandrel, and
    is none counted?"""
    sized = [
        s for s in heard if _FIGURES.search(s.text) or (s.names_tool and _DIGIT.search(s.text))
    ]
    return (
        bool(sized)
        and all(s.touched or _DEFINITE.search(s.text) for s in sized)
        and counting(heard) is None
    )


def _specified(heard: Sequence[Sentence], whole: str) -> bool:
    return (
        _RADIUS.search(whole) is not None
        or _NAMED.search(whole) is not None
        or counting(heard) is not None
        or sum(word.isalpha() for word in whole.split()) <= _HARDLY_A_WORD
    )


def _question(heard: Sequence[Sentence], *, of_tubes: bool) -> Leaning:
    weight, why = 0.0, ""
    for sentence in heard:
        asking = _ASKING.search(sentence.text)
        knowledge = _KNOWLEDGE.search(sentence.text)
        habit = asking and _HABIT.search(sentence.text)
        if not (asking or knowledge) or (sentence.spoilt and not (knowledge or habit)):
            continue
        trade = _TRADE.search(sentence.text)
        if asking is None:
            worth = 1.0 if trade else 0.0
        else:
            worth = float(of_tubes) + (2.0 if trade else 0.0) + (1.5 if knowledge else 0.0)
            worth = max(worth, 5.0 if habit else 0.0)
        weight += worth
        if worth and not why:
            telling = knowledge or trade or asking
            why = f'asks a question ("{said_words(telling)}")' if telling else ""
    return Leaning(weight, why)


def _elsewhere(
    spoken: Sequence[str], whole: str, *, names_tool: bool
) -> tuple[Leaning, dict[int, int]]:
    """The likeliest errand that is not for the mandrel desk; by sentence, the weightiest cue."""
    starts = [0, *accumulate(len(said) + 1 for said in spoken)]
    best = Leaning(0.0, "")
    business: dict[int, int] = {}
    may_stand = groupby(_ELSEWHERE.that_may_stand(whole), key=lambda one: _GROUP_OF[one[0]])
    for group, cues in may_stand:
        if group.only_without_tool and names_tool:
            continue
        total, heaviest, said = 0, 0, ""
        for _, (weight, cue) in cues:
            matches = list(cue.finditer(whole))
            for match in matches:
                number = bisect_right(starts, match.start()) - 1
                business[number] = max(weight, business.get(number, 0))
            if matches:
                total += weight
            if matches and weight > heaviest:
                said, heaviest = said_words(matches[0]), weight
        total = min(total, _MOST_OF_ONE_ERRAND)
        if total > best.weight:
            best = Leaning(float(total), f'{group.what} ("{said}")')
    return best, business
