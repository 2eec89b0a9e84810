"""Which inquiry a message belongs to: by what it answers, by its words, by sender and subject.

In that order of certainty. What only sender and subject say is a guess, and is told as one.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import timedelta
from enum import StrEnum
from typing import TYPE_CHECKING

from .letter import DraftId
from .model import Message
from .quote_lines import subject_prefixes

if TYPE_CHECKING:
    from .store_reader import Reader

SAME_WORDS_WITHIN = timedelta(days=30)
"""After that, the same words are asked again, not sent twice."""
SAME_SUBJECT_WITHIN = timedelta(days=60)
MOST_REFERENCES = 100
_MACHINES = re.compile(
    r"(?:no-?reply|do-?not-?reply|web|www|form|forms|contact|mailer|wordpress|notification\w*)@",
    re.IGNORECASE,
)
"""Addresses that write for many people: sender and subject say nothing there."""


def writes_for_many(address: str) -> bool:
    """Whether an address is a web form's or a machine's: it says nothing of who asks."""
    return _MACHINES.match(address) is not None


class How(StrEnum):
    """What says that a message belongs to an inquiry."""

    REFERENCE = "it answers a message of it"
    EARLIER = "a message of it answers this one"
    COPY = "it is a copy of a message of it"
    SUBJECT = "sender and subject are the same"
    CHAT = "it fills what was open, hours later in the same chat"


@dataclass(frozen=True, slots=True)
class Belongs:
    """The inquiry that a message belongs to, and what says so."""

    inquiry: int
    how: How


def find_inquiry(book: Reader, came: Message, shop_address: str) -> Belongs | None:
    """The inquiry that a mail belongs to; None for a new one (and for chat, which has no ids)."""
    if came.channel != "email":
        return None
    own = bool(shop_address) and _address(came) == shop_address.strip().casefold()
    answered = _by_reference(book, came)
    if answered is not None:
        forwarded = _is_forward(came) and not book.has_customer(answered, came.sender.address)
        return Belongs(answered, How.COPY if own or forwarded else How.REFERENCE)
    if own:
        return None
    for number in book.answering(came.message_id):
        return Belongs(number, How.EARLIER)
    return _by_words(book, came)


def _by_reference(book: Reader, came: Message) -> int | None:
    ids = [*came.references[-MOST_REFERENCES:], *([came.in_reply_to] if came.in_reply_to else [])]
    for one in ids:
        if (draft := DraftId.parse(one)) and book.has_draft(draft):
            return draft.inquiry
    return book.inquiry_of_ids(ids)


def _by_words(book: Reader, came: Message) -> Belongs | None:
    if not came.sender.address or came.received_at is None:
        return None
    topic = subject_topic(came.subject)
    reply, forward, _ = subject_prefixes(came.subject)
    for number, stored in book.lately_from(came.sender.address):
        if stored.received_at is None or stored.reply_addresses != came.reply_addresses:
            continue
        apart = abs(came.received_at - stored.received_at)
        if apart <= SAME_WORDS_WITHIN and plain_words(stored) == plain_words(came):
            return Belongs(number, How.COPY)
        same = topic and topic == subject_topic(stored.subject)
        one_person = not writes_for_many(came.sender.address)
        if same and reply and one_person and apart <= SAME_SUBJECT_WITHIN:
            return Belongs(number, How.SUBJECT)
    if forward and topic:
        words = plain_words(came)
        for number, stored in book.with_topic(topic):
            if (said := plain_words(stored)) and said in words:
                return Belongs(number, How.COPY)
    return None


def subject_topic(subject: str) -> str:
    """A subject without 'Re:' and 'Fwd:', spaces and case."""
    _, _, start = subject_prefixes(subject)
    return " ".join(subject[start:].split()).casefold()


def plain_words(message: Message) -> str:
    """The words of a message without spaces and quote marks: what a copy or forward keeps."""
    lines = (line.lstrip("> \t") for line in message.body.splitlines())
    return " ".join(" ".join(lines).split())


def _is_forward(came: Message) -> bool:
    return subject_prefixes(came.subject)[1]


def _address(came: Message) -> str:
    return came.sender.address.strip().casefold()
