"""An approved draft as bytes: a mail for the shop's Drafts folder, or a text to paste in a chat.

The customer's subject, name and addresses are a stranger's text on its way into header lines.
Whatever could start another line, or another recipient, is taken out before the mail is built.
"""

from __future__ import annotations

import hashlib
import re
import unicodedata
from collections.abc import Mapping
from dataclasses import dataclass, field
from email.headerregistry import BaseHeader, HeaderRegistry
from email.message import EmailMessage
from email.policy import SMTP, EmailPolicy, Policy
from typing import Any, ClassVar, Literal, NamedTuple, Self

from .addressing import one_line, reply_subject
from .desk_errors import ShopAddressError, UndeliverableError
from .inquiry import Inquiry, StoredDraft
from .model import Address, Message

LONGEST_NAME = 60
LONGEST_ADDRESS = 254  # RFC 5321 4.5.3.1.3
LONGEST_ID = 900  # an id is never folded, and a line ends at 998 (RFC 5322 2.1.1)
MOST_REFERENCES = 40

_ATOM = r"[A-Za-z0-9!#$%&'*+/=?^_`{|}~\u00a0-\U0010ffff-]+"
_LOCAL_PART = re.compile(rf"{_ATOM}(?:\.{_ATOM})*")  # RFC 5322 3.2.3 dot-atom, RFC 6532 letters
_DOMAIN = re.compile(r"[A-Za-z0-9_-]+(?:\.[A-Za-z0-9_-]+)*")
_MESSAGE_ID = re.compile(r"[\x21-\x3b\x3d\x3f-\x7e]+")
_MADE_UP_ID = re.compile(r"sha256-[0-9a-f]+@local")
_KEPT_IN_NAMES = frozenset(" .'’&/+-")


def digest_of(first: Message) -> str:
    """What in a ``DraftId`` stands for the message that an inquiry began with."""
    spelled = f"{first.channel}\n{first.message_id}\n{first.raw_sha256}".encode("utf-8", "replace")
    return hashlib.sha256(spelled).hexdigest()[:16]


@dataclass(frozen=True, slots=True)
class DraftId:
    """Which draft of which inquiry: the same each time, so that one laid down is known again."""

    inquiry: int
    number: int
    digest: str
    """Of the customer's first message: two stores can both have an inquiry 17."""

    _SPELLED = re.compile(r"(\d{1,10})\.(\d{1,10})\.([0-9a-f]{16})\.bendreply")

    @classmethod
    def of(cls, inquiry: Inquiry, draft: StoredDraft) -> Self:
        """The name of a draft."""
        first = inquiry.messages[0].message  # the same for all drafts of an inquiry
        return cls(inquiry.id, draft.number, digest_of(first))

    @classmethod
    def parse(cls, message_id: str) -> Self | None:
        """The draft that a Message-ID names, or None where it is none of ours."""
        local_part = message_id.strip().removeprefix("<").partition("@")[0]
        match = cls._SPELLED.fullmatch(local_part)
        return cls(int(match[1]), int(match[2]), match[3]) if match else None

    def replaces(self, other: DraftId | None) -> bool:
        """Whether ``other`` is an earlier draft of the same inquiry."""
        return (
            other is not None
            and (other.inquiry, other.digest) == (self.inquiry, self.digest)
            and other.number < self.number
        )

    def __str__(self) -> str:
        return f"{self.inquiry}.{self.number}.{self.digest}.bendreply"


class Picture(NamedTuple):
    """A picture laid beside the words of a draft."""

    name: str
    media_type: tuple[str, str]
    description: str
    data: bytes


@dataclass(frozen=True, slots=True)
class Letter:
    """A draft ready to be laid down."""

    id: DraftId
    channel: Literal["email", "chat"]
    data: bytes
    """RFC 5322 with CRLF for mail; UTF-8 text for chat."""
    pictures: tuple[Picture, ...] = ()
    """Of a chat; those of a mail are in its bytes."""
    laid_before: Mapping[DraftId, str] = field(default_factory=dict)
    """Earlier drafts of the inquiry as they were laid, each with the ``digest`` of its bytes."""

    def may_replace(self, earlier: DraftId, found: bytes | None) -> bool:
        """Whether ``found``, which bears the name of an earlier draft, is still as it was laid.

        Words that a person has changed in the mail program are never thrown away.
        """
        if found is None or not self.id.replaces(earlier):
            return False
        laid = self.laid_before.get(earlier)
        return laid is None or laid == digest(found)


def digest(data: bytes) -> str:
    """What tells whether a draft was changed, however a server or folder ends its lines."""
    return hashlib.sha256(data.replace(b"\r\n", b"\n").rstrip()).hexdigest()


def compose(inquiry: Inquiry, sender: Address, pictures: tuple[Picture, ...] = ()) -> Letter:
    """The approved draft of an inquiry, from the shop's reply address ``sender``.

    The same inquiry gives the same bytes each time. Raises UndeliverableError where the customer
    left no usable address, ShopAddressError where the shop's own is none.
    """
    draft, approval, came = inquiry.draft, inquiry.approval, inquiry.message
    assert draft is not None, "approve refuses an inquiry without a draft"
    assert approval is not None, "only approved inquiries are delivered"
    name = DraftId.of(inquiry, draft)
    body = _body(draft.body)
    if came.channel == "chat":
        return Letter(name, "chat", body.encode(), pictures)
    from_line = _mailbox(sender)
    if from_line is None:
        raise ShopAddressError(
            f"the shop's reply address {sender.address!r} can't be used: see shop.toml"
        )
    to_line = recipients(came, from_line)
    if not to_line:
        own = " but the shop's own" if recipient(came) else ""
        raise UndeliverableError(
            f"inquiry {inquiry.id} has no address to reply to{own}; its draft stays approved"
        )
    # Names can be encoded in plain ASCII (RFC 2047), addresses can't (RFC 6532).
    specs = "".join(one.spec for one in (from_line, *to_line))
    mail = EmailMessage(policy=mail_policy(utf8=not specs.isascii()))
    mail["From"] = str(from_line)
    mail["To"] = ", ".join(map(str, to_line))
    mail["Subject"] = _header_text(reply_subject(draft.subject))
    mail["Date"] = approval.at
    mail["Message-ID"] = f"<{name}@{from_line.spec.rpartition('@')[2]}>"
    parent, references = _thread(came)
    if parent:
        mail["In-Reply-To"] = parent
    if references:
        mail["References"] = " ".join(references)
    mail["X-Unsent"] = "1"  # mail programs open it to be edited and sent, not as mail received
    mail.set_content(body, charset="utf-8")
    _attach(mail, name, body, pictures)
    return Letter(name, "email", mail.as_bytes())


def _attach(mail: EmailMessage, name: DraftId, body: str, pictures: tuple[Picture, ...]) -> None:
    """Pictures as further parts of the mail."""
    for picture in pictures:
        main, sub = picture.media_type
        mail.add_attachment(picture.data, main, sub, filename=picture.name)
        *_, part = mail.iter_attachments()
        del part["MIME-Version"]  # the whole mail says it
        part["Content-Description"] = picture.description
    if pictures:
        # Python would draw lots for it, and the same draft would differ each time. No words can
        # hold their own digest, so no line of the body can be taken for the boundary.
        mail.set_boundary(f"{name}.{digest(body.encode())[:24]}")


class Mailbox(NamedTuple):
    """A name and an address that a header can carry."""

    name: str
    spec: str

    def __str__(self) -> str:
        return f'"{self.name}" <{self.spec}>' if self.name else self.spec


def recipient(message: Message) -> Mailbox | None:
    """The first of ``recipients``, or None where there is no usable address."""
    return next(iter(recipients(message)), None)


def recipients(message: Message, shop: Mailbox | None = None) -> tuple[Mailbox, ...]:
    """Where a reply goes: all of Reply-To that can be used, else From (RFC 5322 3.6.2).

    Each address once, and never that of ``shop``: a shop doesn't write to itself.
    """
    for addresses in (message.reply_addresses, (message.sender,)):
        usable: dict[str, Mailbox] = {}
        for box in filter(None, map(_mailbox, addresses)):
            usable.setdefault(box.spec.casefold(), box)
        if shop is not None:
            usable.pop(shop.spec.casefold(), None)
        if usable:
            return tuple(usable.values())
    return ()


def _mailbox(address: Address) -> Mailbox | None:
    """The address made safe, or None where it is none that a header can carry."""
    local_part, _, domain = address.address.strip().rpartition("@")
    try:
        domain = domain if domain.isascii() else domain.encode("idna").decode("ascii")
    except UnicodeError:
        return None
    if not (_LOCAL_PART.fullmatch(local_part) and _DOMAIN.fullmatch(domain)):
        return None
    # "=?" would be taken for an encoded word, and decoded to anything.
    if "=?" in local_part or any(unicodedata.category(c)[0] in "CZ" for c in local_part):
        return None
    if len(local_part) + len(domain) >= LONGEST_ADDRESS:
        return None
    # Folding long quoted names has lost their quotes in some versions of Python's email package,
    # and a comma without quotes is a second recipient: so no name needs any.
    kept = (c if _fits_in_a_name(c) else " " for c in address.name)
    name = one_line("".join(kept)[:LONGEST_NAME], LONGEST_NAME)
    return Mailbox(name, f"{local_part}@{domain}")


def _fits_in_a_name(char: str) -> bool:
    return unicodedata.category(char)[0] in "LMN" or char in _KEPT_IN_NAMES


def _header_text(text: str) -> str:
    # Text that spells an encoded word would be decoded when the header is built.
    return text.replace("=?", "= ?")


def _body(text: str) -> str:
    lines = "".join(c for c in text if c in "\n\t" or unicodedata.category(c) not in ("Cc", "Cs"))
    return lines.rstrip() + "\n"


def _thread(came: Message) -> tuple[str | None, list[str]]:
    """In-Reply-To and References of a reply (RFC 5322 3.6.4)."""
    parent = None if _MADE_UP_ID.fullmatch(came.message_id) else _bracketed(came.message_id)
    earlier = came.references or ((came.in_reply_to,) if came.in_reply_to else ())
    ids = [_bracketed(one) for one in (*earlier, *([came.message_id] if parent else ()))]
    known = list(dict.fromkeys(one for one in ids if one))
    if len(known) > MOST_REFERENCES:  # the first names the thread, the last ones the place in it
        known = [known[0], *known[1 - MOST_REFERENCES :]]
    return parent, known


def _bracketed(message_id: str) -> str | None:
    fits = len(message_id) <= LONGEST_ID and _MESSAGE_ID.fullmatch(message_id)
    return f"<{message_id}>" if fits else None


class _MessageIds(BaseHeader):
    """A header of message ids, one a line. The standard library folds a long id into an encoded
    word, which no mail program recognises as the id of the message answered.
    """

    max_count: ClassVar[Literal[1] | None] = 1

    @classmethod
    def parse(cls, value: str, kwds: dict[str, Any]) -> None:
        kwds["decoded"], kwds["parse_tree"] = value, None

    def fold(self, *, policy: Policy) -> str:
        return f"{self.name}: {f'{policy.linesep} '.join(self.split())}{policy.linesep}"


def mail_policy(*, utf8: bool) -> EmailPolicy[EmailMessage]:
    """How mails are written: as SMTP has it, but ids never folded."""
    registry = HeaderRegistry()
    for name in ("message-id", "in-reply-to", "references"):
        registry.map_to_type(name, _MessageIds)
    return SMTP.clone(header_factory=registry, utf8=utf8)
