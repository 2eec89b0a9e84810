"""What kind of message it is: that decides whether it is answered, and how."""

from __future__ import annotations

from .automatic import automatic
from .errand import Errand, weigh
from .model import Kind, Message, OwnText
from .quote_lines import subject_prefixes

__all__ = ["automatic", "classify"]

_CLEAR = 3.0
"""A leaning of less than this is a word that happened to fall."""


def classify(
    message: Message, own: OwnText, sizes_read: int, tooling_lines: int = 0
) -> tuple[Kind, str]:
    """The kind and a plain reason for it, the deciding words quoted.

    ``sizes_read`` is how many sizes the reading found in the own text, ``tooling_lines`` how many
    lines name tooling without a size that could be read.
    """
    reason = automatic(message, own)
    if reason is not None:
        return Kind.AUTOMATIC, reason
    if not own.text.strip() and not own.attachment_texts:
        return Kind.OTHER, "nothing newly written"
    return _of_person(message, own, sizes_read, tooling_lines)


def _of_person(
    message: Message, own: OwnText, sizes_read: int, tooling_lines: int
) -> tuple[Kind, str]:
    errand = weigh(own.text, sizes_read, tooling_lines)
    tooling, question, elsewhere = errand.tooling, errand.question, errand.elsewhere
    if not own.subject_counts and not any((tooling.weight, question.weight, elsewhere.weight)):
        # "Re: invoice 118" and "any news on this one": the old subject tells what it is about.
        _, _, earlier_at = subject_prefixes(message.subject)
        elsewhere = weigh(message.subject[earlier_at:], 0).elsewhere
    if elsewhere.weight >= max(_CLEAR, tooling.weight, _counted(question.weight, errand)):
        return Kind.OTHER, elsewhere.why
    if tooling.weight >= _CLEAR and not _only_wants_to_know(errand, sizes_read):
        return Kind.SIZES, tooling.why
    if sizes_read and not errand.wants_knowledge:
        return Kind.SIZES, tooling.why
    if question.weight:
        return Kind.QUESTION, question.why
    if elsewhere.weight:
        return Kind.OTHER, elsewhere.why
    return Kind.OTHER, "neither tooling nor a question in it"


def _counted(question_weight: float, errand: Errand) -> float:
    # "Has it shipped?" is a question about an order: only a clear one about the trade outweighs.
    return question_weight if errand.elsewhere.weight < 2 * _CLEAR - 1 else 0.0


def _only_wants_to_know(errand: Errand, sizes_read: int) -> bool:
    """Sizes beside "how many bends does one last, 1000 or 10000?" are no request."""
    return bool(sizes_read) and errand.tooling.weight <= 5 and errand.question.weight >= 4
