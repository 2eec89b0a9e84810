"""Header fields of a mail: which are kept, and what subject, sender, date and ids they give."""

from __future__ import annotations

import hashlib
import re
from dataclasses import dataclass
from datetime import date, datetime

from .addresses import LONGEST_LIST, one_line_name, parse_addresses
from .charsets import known_charset
from .dates import parse_date
from .encoded_words import decode_header, unfold
from .mime import Entity
from .model import Address

MAX_KEPT = 200
LONGEST_SUBJECT = 2000
"""Characters. What is read of a message is bounded: an endless subject would crowd out the body."""
_KEPT = frozenset(
    "from to cc reply-to sender return-path subject date message-id in-reply-to references"
    " auto-submitted precedence x-auto-response-suppress x-autoreply x-autorespond"
    " x-auto-reply-from x-autoreply-from x-failed-recipients content-type x-mailer user-agent"
    " thread-index thread-topic feedback-id disposition-notification-to content-class"
    " content-language delivered-to x-original-to x-loop x-mailing-list mailing-list"
    " x-mailinglist x-bulkmail x-mc-user x-spam-flag importance resent-from"
    " x-ms-exchange-generated-message-source x-ms-exchange-inbox-rules-loop".split()
)
_KEPT_BEGINNINGS = ("list-", "x-campaign", "x-auto")
_MESSAGE_ID = re.compile(r"<([^<>\s]{1,998})>")
_BARE_ID = re.compile(r"[^<>\s]{1,998}")


@dataclass(slots=True)
class Envelope:
    """What the header of a mail says."""

    message_id: str
    in_reply_to: str | None
    references: tuple[str, ...]
    sender: Address
    reply_to: tuple[Address, ...]
    to: tuple[Address, ...]
    subject: str
    received_at: datetime | None
    sent_on: date | None
    kept: tuple[tuple[str, str], ...]


def local_id(raw: bytes) -> str:
    """A message id made of the bytes themselves, for mail that carries none."""
    return f"sha256-{hashlib.sha256(raw).hexdigest()[:32]}@local"


def read_envelope(entity: Entity, raw: bytes, faults: list[str]) -> Envelope:
    """Read the header of a whole mail; each broken field costs only itself."""
    fallback = entity.type.params.get("charset")
    if fallback and known_charset(fallback) is None:
        fallback = None
    kept = _kept(entity, fallback, faults)
    first = dict(reversed(kept))
    received_at, sent_on = None, None
    if first.get("date"):
        received_at, sent_on = parse_date(first["date"], faults)
    else:
        faults.append("there is no Date")
    replied_to = _ids(first.get("in-reply-to", ""))
    return Envelope(
        message_id=_own_id(first.get("message-id", ""), raw, faults),
        in_reply_to=replied_to[0] if replied_to else None,
        references=_ids(first.get("references", "")),
        sender=_sender(entity, fallback, faults),
        reply_to=tuple(one for one in _mailboxes(entity, "reply-to", fallback) if one.address),
        to=tuple(one for one in _mailboxes(entity, "to", fallback) if one.address),
        subject=_subject(first.get("subject", ""), faults),
        received_at=received_at,
        sent_on=sent_on,
        kept=tuple(kept),
    )


def _kept(entity: Entity, fallback: str | None, faults: list[str]) -> list[tuple[str, str]]:
    kept: list[tuple[str, str]] = []
    for name, value in entity.fields:
        if name in _KEPT or name.startswith(_KEPT_BEGINNINGS):
            if len(kept) >= MAX_KEPT:
                faults.append(f"more than {MAX_KEPT} header fields: the rest was not kept")
                break
            kept.append((name, decode_header(value, fallback, faults)))
    return kept


def _subject(text: str, faults: list[str]) -> str:
    if len(text) > LONGEST_SUBJECT:
        faults.append(f"the subject is longer than {LONGEST_SUBJECT} characters: the rest was cut")
    return text[:LONGEST_SUBJECT]


def _own_id(text: str, raw: bytes, faults: list[str]) -> str:
    match = _MESSAGE_ID.search(text)
    if match:
        return match[1]
    if _BARE_ID.fullmatch(text):  # no angle brackets, but one word all the same
        return text
    faults.append("the Message-ID is broken" if text else "there is no Message-ID")
    return local_id(raw)


def _ids(text: str) -> tuple[str, ...]:
    return tuple(_MESSAGE_ID.findall(text))


def _mailboxes(entity: Entity, name: str, fallback: str | None) -> tuple[Address, ...]:
    raw = entity.raw(name)
    return () if raw is None else parse_addresses(unfold(raw[:LONGEST_LIST], fallback))


def _sender(entity: Entity, fallback: str | None, faults: list[str]) -> Address:
    """The first From with an address, one in angle brackets before a bare one; what the header
    says as a name where there is none.

    "a@example.com, Al <al@example.org>" is Al's mail, with an address for a name.
    """
    said = ""
    for name, value in entity.fields:
        if name != "from":
            continue
        text = unfold(value[:LONGEST_LIST], fallback)
        found = [one for one in parse_addresses(text) if one.address]
        if found:
            return next((one for one in found if f"<{one.address}>" in text), found[0])
        said = said or one_line_name(decode_header(value, fallback))
    faults.append("the From has no usable address" if said else "there is no From")
    return Address(name=said, address="")
