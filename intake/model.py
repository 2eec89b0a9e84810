"""The types that cross between the steps of intake: a message, its kind, what was made of it."""

from __future__ import annotations

from datetime import date, datetime
from enum import StrEnum
from typing import Literal

from pydantic import Field

from ..rules.assessment import Assessment
from ..rules.request import Frozen


class Kind(StrEnum):
    """What sort of message it is; decides whether and how it is answered."""

    SIZES = "sizes"
    QUESTION = "question"
    OTHER = "other"
    AUTOMATIC = "automatic"


class Address(Frozen):
    """A mailbox: display name (may be empty) and address (may be empty where unreadable)."""

    name: str
    address: str


class Attachment(Frozen):
    """A file that came with the message. Never written to disk under its own name."""

    name: str
    content_type: str
    size: int
    text: str | None = None
    """Its words, a table's rows as lines with tabs between their cells; None where it was not
    read."""
    sheets: tuple[str, ...] = ()
    """The names of a workbook's sheets; in ``text`` a form feed stands between two of them."""
    why_unread: str = ""
    """Why a person has to look at it, in one clause: 'it is a picture'."""
    remarks: tuple[str, ...] = ()
    """What of it was left out, each in one clause: 'only the first 30 pages were read'."""
    content: bytes | None = Field(default=None, exclude=True, repr=False)
    """Its bytes, until it is known that somebody wants to read it. Never stored."""

    @property
    def is_unread(self) -> bool:
        """Whether it may hold words that nobody here has read."""
        return self.text is None and self.content_type not in _NOTHING_TO_READ


_NOTHING_TO_READ = frozenset(
    "application/pkcs7-signature application/x-pkcs7-signature application/pgp-signature"
    " application/pgp-keys text/vcard text/x-vcard text/directory"
    " message/rfc822 message/global".split()
)
"""Seals and visiting cards; and mails, whose words stand in the message already."""


class Message(Frozen):
    """One message, decoded as far as it can be; ``faults`` names what could not."""

    message_id: str
    """Without angle brackets. Where the mail has none: 'sha256-<hex of the raw bytes>@local'."""
    in_reply_to: str | None = None
    references: tuple[str, ...] = ()
    channel: Literal["email", "chat"] = "email"
    sender: Address
    reply_to: Address | None = None
    reply_to_all: tuple[Address, ...] = ()
    """All addresses of the Reply-To, ``reply_to`` first; empty in what was stored without them."""
    to: tuple[Address, ...] = ()
    subject: str = ""
    received_at: datetime | None = None
    """Aware, UTC. None where the message carries no readable date."""
    sent_on: date | None = None
    """The calendar day at the sender's own clock: what 'by Friday' counts from."""
    body: str = ""
    """The words of the message: plain text, or HTML turned to text (table cells tab-separated)."""
    headers: tuple[tuple[str, str], ...] = ()
    """(lower-case name, decoded value), in order, folded lines joined."""
    attachments: tuple[Attachment, ...] = ()
    part_types: tuple[str, ...] = ()
    """Content types of all MIME parts, in order: what triage looks at ('text/calendar', ...)."""
    report_type: str | None = None
    """For multipart/report: its report-type parameter."""
    faults: tuple[str, ...] = ()
    raw_sha256: str = ""

    @property
    def text(self) -> str:
        """Subject, blank line, body: the one text that all spans and evidence count in."""
        return f"{self.subject}\n\n{self.body}"

    @property
    def body_start(self) -> int:
        """Where the body starts in ``text``."""
        return len(self.subject) + 2

    @property
    def reply_addresses(self) -> tuple[Address, ...]:
        """Where the sender wants replies to go; empty where no Reply-To says so."""
        return self.reply_to_all or ((self.reply_to,) if self.reply_to else ())

    def header(self, name: str) -> str | None:
        """The first header of that (lower-case) name, or None."""
        return next((value for key, value in self.headers if key == name), None)


class Part(Frozen):
    """A stretch of ``Message.text`` and whose words they are."""

    start: int
    end: int
    kind: Literal["subject", "own", "quoted", "forwarded", "signature", "footer"]


class QuotedMail(Frozen):
    """One earlier mail that a message quotes: a slice of ``Message.text``, blanked like OwnText."""

    start: int
    text: str
    by_sender: bool = False
    """Whether who wrote the message wrote this one too, as far as its head or its end tells."""


class Prompt(Frozen):
    """A quoted line with an answer right below it; ``start`` and ``end`` are the answer's."""

    start: int
    end: int
    question: str


class OwnText(Frozen):
    """``Message.text`` with all that the sender did not newly write blanked, length unchanged.

    Blanks are spaces; line breaks stay. Made only by ``own_text.mask``, so that the reader can't
    be handed quoted mail by accident.
    """

    text: str
    body_start: int
    subject_counts: bool
    """False where the subject belongs to an earlier mail (Re:, AW:, SV: ...)."""
    parts: tuple[Part, ...] = ()
    attachment_texts: tuple[tuple[str, str], ...] = ()
    """(name, text) of readable attachments."""
    quoted: tuple[QuotedMail, ...] = ()
    """Earlier mails that are not handed to us, newest first: the new words may rely on them."""
    prompts: tuple[Prompt, ...] = ()
    refers_to_quoted: bool = False
    """Whether "the same as below, but ..." changes what is quoted."""


class Question(Frozen):
    """A question in the sender's words, and the approved answer that fits, if any."""

    surface: str
    answer: str | None = None
    """The name of a file in reply_templates/answers, without its suffix."""
    score: int | None = None
    """How well the best answer fits, 0 to 100, whether or not that was enough; None in what was
    stored without it."""


class Draft(Frozen):
    """A reply for a person to approve. Nothing in this project can send it."""

    subject: str
    body: str
    template: str
    answers: tuple[str, ...] = ()


class Result(Frozen):
    """All that was made of one message; the pipeline's product."""

    message: Message
    kind: Kind
    why_kind: str
    assessments: tuple[Assessment, ...] = ()
    questions: tuple[Question, ...] = ()
    draft: Draft | None = None
    notes: tuple[str, ...] = ()
    """What a person should look at though no field is in doubt, e.g. an attachment not read."""
    own_words: str | None = Field(default=None, exclude=True, repr=False)
    """The message's text as ``own_text.mask`` leaves it, where it is at hand. Never stored."""
