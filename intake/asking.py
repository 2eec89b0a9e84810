"""What one sentence asks for, and how plainly: a tool, a price, a bend, our offer made anew."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass

from . import words_asking, words_errand, words_knowledge, words_prices
from .late import Late
from .said_words import said_words

_ANEW = Late(words_asking.ANEW)
_ASKS_PIECE = Late(words_asking.ASKS_PIECE)
_ASKS_PRICE = Late(words_prices.ASKS_PRICE)
_COUNTS = Late(words_asking.COUNTS_TOOLS)
_DO_I_NEED = Late(words_knowledge.DO_I_NEED)
_FEASIBLE = Late(words_asking.FEASIBLE)
_ENQUIRY = Late(words_asking.ENQUIRY)
_FIGURES = Late([words_errand.TUBE_FIGURES])
_GENERAL = Late(words_knowledge.GENERAL)
_KNOWLEDGE = Late(words_knowledge.KNOWLEDGE)
_SEEKS_SUPPLIER = Late(words_asking.SEEKS_SUPPLIER)
_PREPARES = Late(words_prices.PREPARES)
_PRICE_GIVEN = Late(words_knowledge.PRICE_GIVEN)
_PUTS_RIGHT = Late(words_asking.PUTS_RIGHT)
_REQUOTE = Late(words_prices.REQUOTE)
_TWO_QUESTIONS = re.compile(
    r",?\s(?:and|und|et|y|e|en)\s(?=(?:how|what|where|why|which|wie|was|wo|warum|welche[rs]?|comment|"
    r"quel(?:le)?s?|pourquoi|cómo|qué|cuál|dónde|come|quale|che|dove|hoe|wat|waar|welke?)\b)",
    re.IGNORECASE,
)
_WANTS_TOOL = Late(words_errand.WANTS_TOOL)


@dataclass(frozen=True)
class Sentence:
    """One sentence of the sender's own, and what else it is about."""

    text: str
    names_tool: bool
    touched: bool
    """It has a word of other business."""
    spoilt: bool
    """Its business is plainly another: an asking in it is not for tooling."""


def act(sentence: Sentence, sizes_read: int, *, about_tool: bool) -> tuple[float, str]:
    """How much one sentence asks for tooling, and by which words."""
    said = sentence.text
    wanted = _WANTS_TOOL.search(said)
    if _DO_I_NEED.search(said):
        return 0.0, ""
    if wanted is not None:
        return (3.0 if sentence.spoilt else 8.0), f'asks for tooling ("{said_words(wanted)}")'
    requote = _REQUOTE.search(said)
    if requote is not None:
        weight = 3.0 if sentence.spoilt else 6.0
        return weight, f'wants our offer changed ("{said_words(requote)}")'
    right = _PUTS_RIGHT.search(said) if sizes_read else None
    if right is not None:
        return 6.0, f'puts a figure right ("{said_words(right)}")'
    enquiry = _ENQUIRY.search(said) if sizes_read else None
    if enquiry is not None and not sentence.spoilt:
        return 6.0, f'asks for tooling ("{said_words(enquiry)}")'
    price = _ASKS_PRICE.search(said)
    if price is not None and not sizes_read:
        given = _PRICE_GIVEN.search(said) or _PREPARES.search(said)
        price = None if given else price
    if len(said.split()) > 4 and (_GENERAL.search(said) or _KNOWLEDGE.search(said)):
        return _act_beside_a_question(sentence, sizes_read, price)
    about = 1.0 if about_tool or sizes_read else 0.0
    if price is not None:
        weight = 8.0 if sentence.names_tool or sizes_read else 4.0
        spoilt = sentence.spoilt and not _ANEW.search(said)
        return about * (3.0 if spoilt else weight), f'asks a price ("{said_words(price)}")'
    feasible = _FEASIBLE.search(said) if sizes_read else None
    if feasible is not None and not sentence.spoilt:
        return 6.0, f'asks whether it can be done ("{said_words(feasible)}")'
    piece = _ASKS_PIECE.search(said)
    if piece is not None and not sizes_read and _SEEKS_SUPPLIER.search(said):
        return 0.0, ""
    if piece is not None:
        sized = sizes_read and (about_tool or _FIGURES.search(said))
        weight = 6.0 if sentence.names_tool else 5.0 if sized else 3.0 if about_tool else 2.0
        return about * (1.0 if sentence.spoilt else weight), f'asks ("{said_words(piece)}")'
    return 0.0, ""


def _act_beside_a_question(
    sentence: Sentence, sizes_read: int, price: re.Match[str] | None
) -> tuple[float, str]:
    """How much a sentence asks for tooling that asks to be told something as well."""
    if not sizes_read or sentence.spoilt:
        return 0.0, ""
    if _KNOWLEDGE.search(sentence.text):
        for clause in _TWO_QUESTIONS.split(sentence.text):
            price = None if _KNOWLEDGE.search(clause) else _ASKS_PRICE.search(clause)
            if price is not None:
                return 5.0, f'asks a price ("{said_words(price)}")'
        return 0.0, ""
    feasible = _FEASIBLE.search(sentence.text)
    if feasible is not None:
        return 5.0, f'asks whether it can be done ("{said_words(feasible)}")'
    if price is not None:
        return 5.0, f'asks a price ("{said_words(price)}")'
    piece = _ASKS_PIECE.search(sentence.text)
    return (5.0, f'asks ("{said_words(piece)}")') if piece is not None else (0.0, "")


def counting(heard: Sequence[Sentence]) -> re.Match[str] | None:
    """The first count of mandrels in a sentence that has no other business."""
    return next(
        (
            counts
            for sentence in heard
            if not sentence.spoilt
            and (counts := _COUNTS.search(sentence.text))
            and not _KNOWLEDGE.search(sentence.text)
            and not _DO_I_NEED.search(sentence.text)
        ),
        None,
    )
