"""A message's whole way through the house, on one screen.

What the sender did not newly write is masked; automatic mail stops there; sizes are read; the
kind of message is settled; questions are found; each size is judged against the shop; a reply is
worded. Nothing here touches the world: a message comes in, a ``Result`` goes out.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from .model import Kind, Message, OwnText, Question, Result
from .own_text import mask
from .questions import find_questions
from .reading import read
from .triage import automatic, classify

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import date

    from ..rules.request import SizeRequest
    from ..rules.shop import Shop
    from .answers import Answer
    from .templates import Templates


@dataclass(frozen=True, slots=True)
class Understanding:
    """What a message says, before any shop has judged it."""

    own: OwnText
    kind: Kind
    why_kind: str
    requests: tuple[SizeRequest, ...] = ()
    questions: tuple[Question, ...] = ()
    notes: tuple[str, ...] = ()


def understand(message: Message, answers: Iterable[Answer] | None = None) -> Understanding:
    """Read one message: whose words, what kind, which sizes, which questions.

    ``answers`` are the approved ones to match questions with; None means our own.
    """
    own = mask(message)
    if reason := automatic(message, own):
        return Understanding(own, Kind.AUTOMATIC, reason)
    reading = read(own, message)
    kind, why = classify(
        message,
        own,
        len(reading.requests),
        completes=reading.completes,
        tube_quoted=reading.tube_quoted,
    )
    questions = find_questions(own, answers)
    # A size in a refund or a complaint is not asked for: it must not be judged nor counted.
    requests = reading.requests if kind is Kind.SIZES else ()
    return Understanding(own, kind, why, requests, questions, reading.notes)


def process(message: Message, shop: Shop, templates: Templates) -> Result:
    """Read one message, judge each size by the shop's limits and shelf, word the reply."""
    return _answered(message, understand(message, templates.answers), shop, templates)


def process_again(
    message: Message, requests: tuple[SizeRequest, ...], shop: Shop, templates: Templates
) -> Result:
    """Judge and word anew with the sizes as a person has put them right."""
    said = understand(message, templates.answers)
    if said.kind is not Kind.SIZES:
        said = replace(said, kind=Kind.SIZES, why_kind="a person entered a size")
    return _answered(message, replace(said, requests=requests), shop, templates)


def _day_of(message: Message, shop: Shop) -> date | None:
    """The day, at the shop, on which the message came in: what lead times count from."""
    if message.received_at is not None:
        return message.received_at.astimezone(shop.zone).date()
    return message.sent_on


def _answered(message: Message, said: Understanding, shop: Shop, templates: Templates) -> Result:
    from ..rules.assess import assess  # late, with drafting: scoring the reading needs neither
    from .drafting import draft
    from .uses import safety_uses

    uses, today = safety_uses(said.own.text), _day_of(message, shop)
    assessments = tuple(assess(request, shop, uses, today=today) for request in said.requests)
    return Result(
        message=message,
        kind=said.kind,
        why_kind=said.why_kind,
        assessments=assessments,
        questions=said.questions,
        draft=draft(message, said.kind, assessments, said.questions, said.own, shop, templates),
        notes=said.notes,
    )
