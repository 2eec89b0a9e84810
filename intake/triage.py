"""What kind of message it is: that decides whether it is answered, and how."""

from __future__ import annotations

from .automatic import automatic
from .errand import weigh
from .model import Kind, Message, OwnText
from .quote_lines import subject_prefixes

__all__ = ["automatic", "classify"]

_CLEAR = 5.0
"""A leaning of less than this is a word that happened to fall."""


def classify(
    message: Message,
    own: OwnText,
    sizes_read: int,
    tooling_lines: int = 0,
    *,
    in_files: bool = False,
    radius_only: bool = False,
) -> tuple[Kind, str]:
    """The kind and a plain reason for it, the deciding words quoted.

    ``sizes_read`` is how many sizes the reading found in the own text, ``tooling_lines`` how many
    lines name tooling without a size that could be read, ``in_files`` whether an attached file has
    sizes among those, ``radius_only`` whether the sizes are no more than radii.
    """
    reason = automatic(message, own)
    if reason is not None:
        return Kind.AUTOMATIC, reason
    if not own.text.strip() and not own.attachment_texts:
        return Kind.OTHER, "nothing newly written"
    return _of_person(
        message, own, sizes_read, tooling_lines, in_files=in_files, radius_only=radius_only
    )


def _of_person(
    message: Message,
    own: OwnText,
    sizes_read: int,
    tooling_lines: int,
    *,
    in_files: bool,
    radius_only: bool,
) -> tuple[Kind, str]:
    errand = weigh(own.text, sizes_read, tooling_lines, in_files=in_files)
    tooling, question, elsewhere = errand.tooling, errand.question, errand.elsewhere
    if not own.subject_counts and not any((tooling.weight, question.weight, elsewhere.weight)):
        # "Re: invoice 118" and "any news on this one": the old subject tells what it is about.
        _, _, earlier_at = subject_prefixes(message.subject)
        elsewhere = weigh(message.subject[earlier_at:], 0).elsewhere
    other = Kind.OTHER, elsewhere.why
    if elsewhere.weight >= max(_CLEAR, tooling.weight) and elsewhere.weight > question.weight:
        return other
    if elsewhere.weight > _CLEAR and not errand.asks and elsewhere.weight > question.weight:
        return other
    if errand.asks and tooling.weight >= _CLEAR and tooling.weight >= elsewhere.weight:
        return Kind.SIZES, tooling.why
    # Nobody asks: "we ordered 1.5 x .065" is no request, "1.5 x .065, 4.5 CLR, 4130" is.
    if elsewhere.weight >= max(1.0, tooling.weight) and elsewhere.weight > question.weight:
        return other
    # "My drawing says R80. Is that to the inside?" has no tube yet.
    example = radius_only and question.weight > 0
    spoken_of = errand.only_mentioned or not errand.specified or example
    if errand.sizes and not errand.wants_knowledge and not spoken_of:
        return Kind.SIZES, tooling.why
    if question.weight:
        return Kind.QUESTION, question.why
    if elsewhere.weight:
        return other
    if errand.sizes:
        return Kind.OTHER, "a size is mentioned, but nothing asked"
    return Kind.OTHER, "neither tooling nor a question in it"
