"""How a message is known again: by its Message-ID, or by its very bytes."""

from __future__ import annotations

import hashlib

from .model import Message
from .store_json import keepable

LONGEST_KEY = 500
"""No id of an honest mail is longer; PostgreSQL indexes nothing beyond some 2,700 bytes."""


def as_key(text: str) -> str:
    """An id or address as the store keeps and finds it: one too long by its digest."""
    kept = keepable(text)
    if len(kept) <= LONGEST_KEY:
        return kept
    return f"sha256-{hashlib.sha256(kept.encode()).hexdigest()}"


def usual_key(message: Message) -> str:
    """What a message is kept under."""
    return as_key(message.message_id)


def key_of_its_own(message: Message) -> str:
    """What a message is kept under when another one has taken its Message-ID."""
    digest = message.raw_sha256 or hashlib.sha256(keepable(message.text).encode()).hexdigest()
    return f"{usual_key(message)} sha256-{digest[:16]}"


def same_message(stored: Message, came: Message) -> bool:
    """Whether two messages of one Message-ID (or of the same bytes) are one.

    A copy may have changed on its way: a gateway adds a footer to one of them. But there are web
    forms that give every message the same Message-ID: two customers must not become one.
    """
    if came.raw_sha256 and came.raw_sha256 == stored.raw_sha256:
        return True
    return not says_more(stored, came) or same_origin(stored, came)


def same_origin(stored: Message, came: Message) -> bool:
    """Whether two messages of one Message-ID were written by the same sender in the same second."""
    return (
        came.received_at is not None
        and came.received_at == stored.received_at
        and keepable(came.sender.address) == keepable(stored.sender.address)
    )


def says_more(stored: Message, came: Message) -> bool:
    """Whether a message known before has come back with other words."""
    return keepable(came.body) != keepable(stored.body)


def thread(message: Message) -> str:
    """The Message-ID that its conversation began with, as far as it says."""
    if message.references:
        return message.references[0]
    return message.in_reply_to or message.message_id
