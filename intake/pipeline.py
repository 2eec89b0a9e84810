"""A message's whole way through the house, on one screen.

What the sender did not newly write is masked; automatic mail stops there; sizes are read; the
kind of message is settled; questions are found; each size is judged against the shop; a reply is
worded. Nothing here touches the world: a message comes in, a ``Result`` goes out. (Attached files
are opened in processes of their own, which get bytes and give words.)
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from .files.opened import with_files_read
from .files.words import attached_texts, file_notes
from .model import Kind, Message, OwnText, Question, Result
from .own_text import mask
from .questions import find_questions
from .reading import read
from .reading.stretch import MOST_CHARACTERS
from .triage import Found, automatic, classify_person
from .unasked import with_unasked_doubted

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence
    from datetime import date

    from ..rules.request import SizeRequest
    from ..rules.shop import Shop
    from .answers import Answer
    from .carry_over import Change
    from .conversation import Conversation
    from .templates import Templates

PRICE = "price-and-lead-time"
"""The answer that fits what anybody may ask, whatever he wants to buy."""
PLAIN = 60
"""From this score on an answer that fits tells what kind of message it is."""
_AT_THE_END = 2000
"""Characters of a very long message's end that tell what it asks, too."""


@dataclass(frozen=True, slots=True)
class Understanding:
    """What a message says, before any shop has judged it."""

    message: Message
    """The message, with what stands in its attached files."""
    own: OwnText
    kind: Kind
    why_kind: str
    requests: tuple[SizeRequest, ...] = ()
    questions: tuple[Question, ...] = ()
    notes: tuple[str, ...] = ()
    goes_on: bool = False
    """Whether there is more than was read: sizes may be missing."""
    spoken_of: tuple[SizeRequest, ...] = ()
    """Sizes that a question is about, though none is asked for: for the figures of its answer."""


def understand(message: Message, answers: Iterable[Answer] | None = None) -> Understanding:
    """Read one message: whose words, what kind, which sizes, which questions.

    ``answers`` are the approved ones to match questions with; None means our own.
    """
    own = mask(message)
    if reason := automatic(message, own):
        return Understanding(message, own, Kind.AUTOMATIC, reason)
    message = with_files_read(message)
    own = own.model_copy(update={"attachment_texts": attached_texts(message)})
    reading = read(own, message)
    sizes = reading.requests
    in_files = sum(any(e.attachment for e in one.evidence) for one in sizes)
    radii = all(one.od_mm is None and one.wall_mm is None and one.shape == "round" for one in sizes)
    whole = any(None not in (one.od_mm, one.wall_mm, one.clr_mm) for one in sizes)
    ends = _ends(own)
    questions = find_questions(ends, answers, statements=not whole)
    found = Found(
        sizes=len(sizes),
        whole=whole,
        in_files=in_files > 0,
        radius_only=bool(sizes) and radii,
        no_more_than_one_length=all(
            sum(length is not None for length in (one.od_mm, one.wall_mm, one.clr_mm)) < 2
            for one in sizes
        ),
        no_tube=all(one.od_mm is None and one.shape == "round" for one in sizes),
        completes=reading.completes,
        picked=reading.picked,
        tube_quoted=reading.tube_quoted,
        likeliest=reading.likeliest,
        answered=any(q.answer not in (None, PRICE) and (q.score or 0) >= PLAIN for q in questions),
        hinted=any(q.answer is not None for q in questions),
    )
    kind, why = classify_person(message, ends, found)
    # A size in a refund or a complaint is not asked for: it must not be judged nor counted.
    requests = sizes if kind is Kind.SIZES else ()
    if not (reading.completes or reading.picked or reading.tube_quoted or in_files):
        requests = with_unasked_doubted(requests, ends.text)
    notes = file_notes(message) + reading.notes
    if in_files and not requests:
        notes += (f"sizes in attached files, not taken as asked for: {in_files}",)
    spoken_of = sizes if kind is Kind.QUESTION else ()
    return Understanding(
        message, own, kind, why, requests, questions, notes, reading.goes_on, spoken_of
    )


def _ends(own: OwnText) -> OwnText:
    """Of a very long message as much as its sizes are read of, and its end: what is asked may
    stand below a long list."""
    end = own.body_start + MOST_CHARACTERS
    if len(own.text) <= end + _AT_THE_END:
        return own
    text = f"{own.text[:end]}\n\n{own.text[-_AT_THE_END:]}"
    return own.model_copy(update={"text": text})


def process(message: Message, shop: Shop, templates: Templates) -> Result:
    """Read one message, judge each size by the shop's limits and shelf, word the reply."""
    return _answered(understand(message, templates.answers), shop, templates)


def process_again(
    message: Message,
    requests: tuple[SizeRequest, ...],
    shop: Shop,
    templates: Templates,
    earlier: Sequence[Message] = (),
) -> Result:
    """Judge and word anew with the sizes as a person has put them right.

    ``earlier``: the customer's messages before this one, whose named uses still count.
    """
    said = understand(message, templates.answers)
    if said.kind is not Kind.SIZES:
        said = replace(said, kind=Kind.SIZES, why_kind="a person entered a size")
    return _answered(replace(said, requests=requests), shop, templates, earlier)


def process_reply(
    message: Message, before: Conversation, shop: Shop, templates: Templates
) -> tuple[Result, tuple[Change, ...]]:
    """A customer's further message joined to what was asked for before; what it changed.

    The sizes are judged anew and the reply is worded anew. Where the message changes no size and
    the earlier ones are answered, it is answered for itself.
    """
    from .bare_answers import (
        bare_answers,  # late, as what follows: one pasted message needs neither
    )
    from .carry_over import carry_over, to_confirm

    said = understand(message, templates.answers)
    joined = carry_over(before.requests, said.requests, said.own.text[said.own.body_start :])
    if not (joined.changes or joined.added or said.requests):
        bare = bare_answers(said.own.text, said.own.body_start, before.asked, before.requests)
        for index, told in bare.items():
            one = carry_over([before.requests[index]], [told], said.own.text)
            joined.requests[index] = one.requests[0]
            joined.changes += [replace(change, index=index) for change in one.changes]
    changed = bool(joined.changes or joined.added)
    requests = tuple(joined.requests)
    if before.why_doubtful:
        requests = tuple(
            one if index in joined.added else to_confirm(one, before.why_doubtful)
            for index, one in enumerate(requests)
        )
    kind, why = said.kind, said.why_kind
    if requests and (changed or not before.answered):
        kind = Kind.SIZES
        why = "it adds to what was asked before" if changed else "what was asked before still waits"
        if before.recalled:
            why = "it points at an earlier request"
    notes = (*joined.notes, *said.notes)
    if not changed and kind is Kind.SIZES and not before.recalled:
        notes = (*notes, "the new message changes no size that could be read: look at its words")
    questions = said.questions
    if not before.answered:
        new = {one.answer or one.surface for one in questions}
        kept = (one for one in before.questions if (one.answer or one.surface) not in new)
        questions = (*kept, *questions)
    whole = replace(
        said, kind=kind, why_kind=why, requests=requests, questions=questions, notes=notes
    )
    return _answered(whole, shop, templates, before.messages), tuple(joined.changes)


def _day_of(message: Message, shop: Shop) -> date | None:
    """The day, at the shop, on which the message came in: what lead times count from."""
    if message.received_at is not None:
        return message.received_at.astimezone(shop.zone).date()
    return message.sent_on


def _answered(
    said: Understanding,
    shop: Shop,
    templates: Templates,
    earlier: Sequence[Message] = (),
) -> Result:
    from ..rules.assess import assess  # late, with drafting: scoring the reading needs neither
    from .drafting import draft
    from .uses import safety_uses

    words = (said.own.text, *(mask(one).text for one in earlier))
    uses = safety_uses("\n\n".join(words))
    message, today = said.message, _day_of(said.message, shop)
    assessments = tuple(assess(request, shop, uses, today=today) for request in said.requests)
    about = said.spoken_of if any(question.answer for question in said.questions) else ()
    spoken_of = tuple(assess(request, shop, uses, today=today) for request in about)
    return Result(
        message=message,
        kind=said.kind,
        why_kind=said.why_kind,
        assessments=assessments,
        questions=said.questions,
        draft=draft(
            message,
            said.kind,
            assessments,
            said.questions,
            said.own,
            shop,
            templates,
            uses,
            spoken_of,
            goes_on=said.goes_on,
        ),
        notes=said.notes,
        own_words=said.own.text,
    )
