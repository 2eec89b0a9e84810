"""What of an inquiry the report counts: when, which customer, and each size in plain figures."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from ..rules.assessment import Assessment
from ..rules.request import Evidence, SizeRequest
from .model import Message, Question
from .own_text import mask
from .threads import writes_for_many
from .words_buying import means_to_buy

SIZE_FIELDS = ("od", "wall", "clr", "material", "shape")
"""What has to be beyond doubt before a request is counted under its size."""
_TOLD_BY = (
    (("gauge", "bwg", "swg"), "gauge"),
    (("nominal pipe size", "schedule", "dn", "sixteenths"), "pipe size"),
    (("times od",), "multiple of OD"),
)
"""Words in ``Evidence.how``, and the notation that they tell of."""
_FRACTIONS = "½¼¾⅛⅜⅝⅞"
NOBODY = "somebody "
"""How a customer is called whose address is gone: this, and letters that mean nothing."""
BETWEEN = "|"
"""Between the surfaces of a mandrel in one column."""


def customer_of(message: Message, number: int) -> str:
    """Who asks, as told from others: an address, whatever its capitals.

    A web form writes for many: there it is the address that it names for replies. Who left no
    address can't be told from others, and each such inquiry counts as a customer of its own.
    """
    address = message.sender.address
    if writes_for_many(address):
        address = next((one.address for one in message.reply_addresses if one.address), address)
    return address.casefold() or alone(number)


def alone(number: int) -> str:
    """A customer that is known by the one inquiry only."""
    return f"inquiry {number}"


def open_questions(questions: Sequence[Question]) -> int:
    """Questions that no approved answer fits."""
    return sum(question.answer is None for question in questions)


def figures_of(assessment: Assessment, words: bool | None) -> dict[str, Any]:
    """One size as the columns of the table ``asked``; ``words`` as ``words_of`` gives it."""
    request, mandrel = assessment.request, assessment.mandrel
    return {
        "shape": request.shape,
        "od_mm": _text(request.od_mm),
        "wall_mm": _text(request.wall_mm),
        "clr_mm": _text(request.clr_mm),
        "material": request.material,
        "doubtful": any(doubt.field in SIZE_FIELDS for doubt in request.doubts),
        "decision": assessment.decision,
        "wanted": request.quantity,
        "buying": prepared_to_buy(request, words),
        "mandrel_low_mm": _text(mandrel.diameter_low_mm) if mandrel else None,
        "mandrel_high_mm": _text(mandrel.diameter_high_mm) if mandrel else None,
        "balls": mandrel.balls_low if mandrel else None,
        "surfaces": BETWEEN.join(mandrel.surfaces) if mandrel else "",
    }


def words_of(message: Message, own_words: str | None = None) -> bool | None:
    """Whether the customer's own words show that he means to buy, or only asks; None: neither.

    ``own_words``: the text as ``mask`` leaves it, where it is at hand.
    """
    return means_to_buy(mask(message).text if own_words is None else own_words)


def prepared_to_buy(request: SizeRequest, words: bool | None) -> bool:
    """Whether the customer seems prepared to buy: says so, wants several mandrels, or names a day.

    Who says that he only asks is taken at his word. House rule: "a mandrel" alone is no order.
    """
    if words is not None:
        return words
    return request.needed_by is not None or (request.quantity or 1) > 1


def _text(value: object) -> str | None:
    return None if value is None else str(value)


def notation_of(evidence: Evidence | None) -> str:
    """How a figure was written, in a word or two and without the customer's own words."""
    if evidence is None:
        return "not read"
    words, how = evidence.words.casefold(), evidence.how.casefold()
    for marks, notation in _TOLD_BY:
        if any(mark in how for mark in marks):
            return notation
    if not any(char.isdigit() or char in _FRACTIONS for char in words):
        return "words"
    if "/" in words or any(char in _FRACTIONS for char in words):
        return "fraction"
    if "," in words:
        return "decimal comma"
    return "decimal point" if "." in words else "whole number"
