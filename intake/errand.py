"""What a person wants, by cue words weighed sentence by sentence: tooling, an answer, or neither.

Every weight that decided is told in the reason, so that a wrong kind is understood at a glance.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass

from . import words_elsewhere, words_errand

_READ_CHARACTERS = 20_000
_LONGEST_SENTENCE = 600
_SENTENCE_END = re.compile(r"(?<=[.!?？。])\s+|\n\s*\n|\n(?=\s*(?:[-•*・]|\d{1,2}[.)])\s)")


def _any(patterns: Sequence[str]) -> re.Pattern[str]:
    return re.compile("|".join(f"(?:{pattern})" for pattern in patterns), re.IGNORECASE)


_TOOL = _any(words_errand.TOOL)
_ASKS = _any(words_errand.ASKS)
_WANTS_TOOL = _any(words_errand.WANTS_TOOL)
_REPEATS = _any(words_errand.REPEATS)
_FEASIBLE = _any(words_errand.FEASIBLE)
_QUANTITY = _any(words_errand.QUANTITY)
_DRAWING = _any(words_errand.DRAWING)
_BENDING = _any(words_errand.BENDING)
_GENERAL = _any(words_errand.GENERAL)
_KNOWLEDGE = _any(words_errand.KNOWLEDGE)
_TRADE = _any(words_errand.TRADE)
_ASKING = _any(words_errand.ASKING)
_ELSEWHERE = [(group, [_any([cue]) for cue in group.cues]) for group in words_elsewhere.ELSEWHERE]
_DIGITS = re.compile(r"\d")
_MOST_OF_ONE_ERRAND = 2
"""So many cues of one errand count: a long pitch is no more a pitch than a short one."""


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
    wants_knowledge: bool
    """What a wall factor is, how long a mandrel lasts: sizes beside it are examples."""


def sentences(text: str) -> list[str]:
    """The sentences of a text, line wraps mended; list items count as sentences."""
    parts = _SENTENCE_END.split(text[:_READ_CHARACTERS])
    return [mended[:_LONGEST_SENTENCE] for part in parts if (mended := " ".join(part.split()))]


def _said(match: re.Match[str]) -> str:
    return " ".join(match.group().split())[:60]


def weigh(text: str, sizes_read: int, tooling_lines: int = 0) -> Errand:
    """Weighs the sender's own words (subject included where it counts)."""
    spoken = sentences(text)
    names_tool = any(_TOOL.search(sentence) for sentence in spoken)
    return Errand(
        tooling=_tooling(spoken, sizes_read, tooling_lines, names_tool=names_tool),
        question=_question(spoken),
        elsewhere=_elsewhere(text, names_tool=names_tool),
        wants_knowledge=any(_KNOWLEDGE.search(sentence) for sentence in spoken),
    )


def _tooling(
    spoken: Sequence[str], sizes_read: int, tooling_lines: int, *, names_tool: bool
) -> Leaning:
    whole = "\n".join(spoken)
    asks = _first(_ASKS, [s for s in spoken if not _is_general(s)])
    direct = next((s for s in spoken if _asks_for_tool(s)), None)
    repeats = _REPEATS.search(whole)
    tool = _TOOL.search(whole)
    weight = 0.0
    why: list[str] = []
    if direct is not None:
        weight += 5
        wanted = _WANTS_TOOL.search(direct) or _ASKS.search(direct)
        why.append(f'asks for tooling ("{_said(wanted)}")' if wanted else "asks for tooling")
    if repeats is not None:
        weight += 5
        why.append(f'a repeat order ("{_said(repeats)}")')
    if tool and asks and direct is None:
        weight += 4 if _DRAWING.search(whole) or _QUANTITY.search(whole) else 3
        why.append(f'names "{_said(tool)}" and asks ("{_said(asks)}")')
    if tooling_lines:
        weight += 1.5 * min(tooling_lines, 3)
        why.append("lines of tooling")
    if sizes_read:
        weight += 1
        why.append("one size read" if sizes_read == 1 else f"{sizes_read} sizes read")
        feasible = _first(_FEASIBLE, [s for s in spoken if not _KNOWLEDGE.search(s)])
        if asks is not None:
            weight += 3
            if direct is None:
                why.append(f'asks ("{_said(asks)}")')
        if feasible is not None:
            weight += 4
            why.append(f'asks whether it can be done ("{_said(feasible)}")')
        if names_tool:
            weight += 2
        if _BENDING.search(whole):
            weight += 2
        if _QUANTITY.search(whole):
            weight += 1
    return Leaning(weight, ", ".join(why))


def _first(pattern: re.Pattern[str], spoken: Sequence[str]) -> re.Match[str] | None:
    return next((match for sentence in spoken if (match := pattern.search(sentence))), None)


def _is_general(sentence: str) -> bool:
    return _GENERAL.search(sentence) is not None or _KNOWLEDGE.search(sentence) is not None


def _asks_for_tool(sentence: str) -> bool:
    """Does it ask for a tool? "Do you make mandrels?" and "how long do they last?" don't."""
    return _WANTS_TOOL.search(sentence) is not None or (
        _TOOL.search(sentence) is not None
        and _ASKS.search(sentence) is not None
        and not _is_general(sentence)
    )


def _question(spoken: Sequence[str]) -> Leaning:
    weight, why = 0.0, ""
    for sentence in spoken:
        asking = _ASKING.search(sentence)
        knowledge = _KNOWLEDGE.search(sentence)
        if asking is None and knowledge is None:
            continue
        trade = _TRADE.search(sentence)
        worth = 1.0 + (1.5 if trade else 0.0) + (1.5 if asking and knowledge else 0.0)
        if asking is None:
            worth = 1.0 if trade else 0.0
        weight += worth
        if worth and not why:
            said = _said(knowledge or trade or asking)  # type: ignore[arg-type]
            why = f'asks a question ("{said}")'
    return Leaning(weight, why)


def _elsewhere(text: str, *, names_tool: bool) -> Leaning:
    """The likeliest errand that is not for the mandrel desk."""
    text = text[:_READ_CHARACTERS]
    best = Leaning(0.0, "")
    for group, cues in _ELSEWHERE:
        if group.only_without_tool and names_tool:
            continue
        hits = [match for cue in cues if (match := cue.search(text))]
        weight = group.weight * min(len(hits), _MOST_OF_ONE_ERRAND)
        if weight > best.weight:
            best = Leaning(float(weight), f'{group.what} ("{_said(hits[0])}")')
    return best
