"""What kind of message it is: that decides whether it is answered, and how."""

from __future__ import annotations

from .automatic import automatic
from .errand import weigh
from .model import Kind, Message, OwnText
from .quote_lines import subject_prefixes
from .reading.staying import without_reliance

__all__ = ["automatic", "classify"]

_CLEAR = 5.0
"""A leaning of less than this is a word that happened to fall."""


def classify(
    message: Message,
    own: OwnText,
    sizes_read: int,
    tooling_lines: int = 0,
    *,
    completes: bool = False,
    tube_quoted: bool = False,
) -> tuple[Kind, str]:
    """The kind and a plain reason for it, the deciding words quoted.

    ``sizes_read`` is how many sizes the reading found in the own text, ``tooling_lines`` how many
    lines name tooling without a size that could be read. ``completes`` says that the words answer
    or change the request in the mail they quote, ``tube_quoted`` that its tube stands there alone.
    """
    reason = automatic(message, own)
    if reason is not None:
        return Kind.AUTOMATIC, reason
    if not own.text.strip() and not own.attachment_texts:
        return Kind.OTHER, "nothing newly written"
    if completes and _business(own.text[own.body_start :]) < _CLEAR:
        return Kind.SIZES, "answers or changes the request in the mail it quotes"
    kind, why = _of_person(message, own, own.text, sizes_read, tooling_lines)
    if tube_quoted and kind is Kind.OTHER:
        kind, why = _of_person(message, own, without_reliance(own.text), sizes_read, tooling_lines)
    if tube_quoted and kind is Kind.OTHER and "?" not in own.text and _business(own.text) < 1:
        return Kind.SIZES, "answers the mail it quotes, which names the tube"
    return kind, why


def _business(text: str) -> float:
    """How much the words are of an order, an invoice or a complaint, what stays left aside."""
    return weigh(without_reliance(text), 0).elsewhere.weight


def _of_person(
    message: Message, own: OwnText, text: str, sizes_read: int, tooling_lines: int
) -> tuple[Kind, str]:
    errand = weigh(text, sizes_read, tooling_lines)
    tooling, question, elsewhere = errand.tooling, errand.question, errand.elsewhere
    if not own.subject_counts and not any((tooling.weight, question.weight, elsewhere.weight)):
        # "Re: invoice 118" and "any news on this one": the old subject tells what it is about.
        _, _, earlier_at = subject_prefixes(message.subject)
        elsewhere = weigh(message.subject[earlier_at:], 0).elsewhere
    other = Kind.OTHER, elsewhere.why
    if elsewhere.weight >= max(_CLEAR, tooling.weight) and elsewhere.weight > question.weight:
        return other
    if errand.asks and tooling.weight >= _CLEAR and tooling.weight >= elsewhere.weight:
        return Kind.SIZES, tooling.why
    # Nobody asks: "we ordered 1.5 x .065" is no request, "1.5 x .065, 4.5 CLR, 4130" is.
    if elsewhere.weight >= max(1.0, tooling.weight) and elsewhere.weight > question.weight:
        return other
    spoken_of = errand.only_mentioned or not errand.specified
    if errand.sizes and not errand.wants_knowledge and not spoken_of:
        return Kind.SIZES, tooling.why
    if question.weight:
        return Kind.QUESTION, question.why
    if elsewhere.weight:
        return other
    if errand.sizes:
        return Kind.OTHER, "a size is mentioned, but nothing asked"
    return Kind.OTHER, "neither tooling nor a question in it"
