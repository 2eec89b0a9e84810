"""Pasted words as a message; apart from ``sources``, so that it need not load readers of mail."""

from __future__ import annotations

import hashlib
from datetime import date

from .charsets import clean_text
from .model import Address, Message
from .spacing import even_spaces


def text_message(text: str, today: date) -> Message:
    """Pasted words as a chat message from nobody known, written on ``today``."""
    body = clean_text(text).strip("\n")
    spelled = f"{today.isoformat()}\n{body}".encode()
    digest = hashlib.sha256(spelled).hexdigest()
    return Message(
        message_id=f"sha256-{digest[:32]}@local",
        channel="chat",
        sender=Address(name="", address=""),
        sent_on=today,
        body=even_spaces(body),
        raw_sha256=digest,
    )
