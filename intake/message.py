"""Bytes of a mail to a ``Message``: never raises, and every recoverable fault is named."""

from __future__ import annotations

import hashlib

from .bodies import Body
from .headers import read_envelope
from .mime import cut_mail
from .model import Message
from .spacing import even_spaces

_MAX_FAULTS = 50


def parse_message(raw: bytes) -> Message:
    """Decode one mail as far as it can be decoded.

    Any bytes give a message: what is missing is None or empty, what was broken stands in
    ``faults``, each in one clause. Caps: 200 parts, 20 levels, 2 MB of text, 1 MB of words in one
    attachment; a cap that was hit is a fault too.
    """
    faults: list[str] = []
    root = cut_mail(raw, faults)
    envelope = read_envelope(root, raw, faults)
    body = Body(root, faults)
    report_type = None
    if root.type.name == "multipart/report":
        report_type = root.type.params.get("report-type", "").lower() or None
    return Message(
        message_id=envelope.message_id,
        in_reply_to=envelope.in_reply_to,
        references=envelope.references,
        sender=envelope.sender,
        reply_to=envelope.reply_to[0] if envelope.reply_to else None,
        reply_to_all=envelope.reply_to,
        to=envelope.to,
        subject=envelope.subject,
        received_at=envelope.received_at,
        sent_on=envelope.sent_on,
        body=even_spaces(body.text),
        headers=envelope.kept,
        attachments=tuple(body.attachments),
        part_types=tuple(body.part_types),
        report_type=report_type,
        faults=tuple(dict.fromkeys(faults))[:_MAX_FAULTS],
        raw_sha256=hashlib.sha256(raw).hexdigest(),
    )
