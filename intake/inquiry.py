"""What is kept for one customer's request: its messages, drafts, corrections, a person's word."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from enum import StrEnum

from ..rules.assessment import Assessment
from .model import Address, Kind, Message, Question


class State(StrEnum):
    """Where an inquiry stands."""

    WAITING = "waiting"
    """A person has to look at it."""
    APPROVED = "approved"
    DELIVERED = "delivered"
    ANSWERED = "answered"
    """A reply lies in the Sent folder."""
    SET_ASIDE = "set aside"
    NO_REPLY = "no reply"
    """An automatic message: kept, never answered."""


class Said(StrEnum):
    """A person's word on an inquiry."""

    APPROVED = "approved"
    WITHDRAWN = "approval withdrawn"
    SET_ASIDE = "set aside"


class Role(StrEnum):
    """What a message is to its inquiry."""

    CUSTOMER = "customer"
    COPY = "copy"
    """The same words once more, or our own: kept so that it is known, and not answered."""
    EARLIER = "earlier"
    """The customer's, but written before one that came in first."""


BENDREPLY = "bendreply"
"""Who made a draft that no person has touched."""


@dataclass(frozen=True, slots=True, kw_only=True)
class StoredMessage:
    """A message as it came, and from which file or folder."""

    message: Message
    kind: Kind
    why_kind: str
    source: str
    taken_at: datetime
    role: Role = Role.CUSTOMER


@dataclass(frozen=True, slots=True, kw_only=True)
class StoredDraft:
    """One wording of the reply. Numbers count up from 1; a withdrawn draft is kept to be read."""

    number: int
    subject: str
    body: str
    template: str
    answers: tuple[str, ...]
    made_at: datetime
    made_by: str
    withdrawn: bool

    @property
    def edited(self) -> bool:
        """Whether the words are a person's."""
        return self.made_by != BENDREPLY


@dataclass(frozen=True, slots=True, kw_only=True)
class Correction:
    """One field put right. Values as text (lengths in mm), None where it was or is not given."""

    index: int
    field: str
    before: str | None
    after: str | None
    by: str | None
    at: datetime
    notation: str | None = None
    """How the customer had written it ('gauge', 'fraction'); None where nobody noted it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Word:
    """What a person said, when, of which draft."""

    said: Said
    by: str
    why: str
    at: datetime
    draft_number: int | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Reply:
    """A reply to the customer as it was found in the Sent folder."""

    message_id: str
    sent_at: datetime | None
    after: timedelta | None
    """Since the customer's message; None where one of the two bears no date."""
    draft_number: int | None
    likeness: float | None
    """1.0: the draft's words as they were; 0.0: none of them. None where there was no draft."""
    body: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Event:
    """One line of the history. ``who`` is a person's name or the program's."""

    at: datetime
    who: str
    what: str
    detail: Mapping[str, object]


@dataclass(frozen=True, slots=True, kw_only=True)
class Inquiry:
    """All that is kept for one customer's request."""

    id: int
    version: int
    """Counts changes: whoever acts on what they saw can say which version that was."""
    state: State
    kind: Kind
    decision: str
    """All decisions in short: 'stock', '2 stock, 1 ask', 'question', 'by hand', 'no reply'."""
    created_at: datetime
    waiting_since: datetime
    needed_by: date | None
    """The earliest date that any of its sizes is needed by."""
    assessments: tuple[Assessment, ...]
    questions: tuple[Question, ...]
    notes: tuple[str, ...]
    messages: tuple[StoredMessage, ...]
    drafts: tuple[StoredDraft, ...]
    corrections: tuple[Correction, ...]
    words: tuple[Word, ...]
    replies: tuple[Reply, ...] = ()

    @property
    def message(self) -> Message:
        """The customer's latest message: the one that is answered."""
        return self.latest.message

    @property
    def latest(self) -> StoredMessage:
        """The customer's latest message with its kind and source."""
        return next(
            (one for one in reversed(self.messages) if one.role is Role.CUSTOMER), self.messages[-1]
        )

    @property
    def earlier(self) -> tuple[Message, ...]:
        """The customer's messages before the latest."""
        latest = self.latest
        return tuple(
            one.message for one in self.messages if one is not latest and one.role is not Role.COPY
        )

    @property
    def remarks(self) -> tuple[str, ...]:
        """What a person should look at. A store of before has what could not be decoded with the
        message only.
        """
        return tuple(dict.fromkeys((*self.message.faults, *self.notes)))

    @property
    def draft(self) -> StoredDraft | None:
        """The draft that stands, or None."""
        return next((d for d in reversed(self.drafts) if not d.withdrawn), None)

    @property
    def approval(self) -> Word | None:
        """The approval that stands, or None."""
        if self.state not in (State.APPROVED, State.DELIVERED):
            return None
        return next((w for w in reversed(self.words) if w.said is Said.APPROVED), None)


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """One line of the backlog."""

    id: int
    version: int
    kind: Kind
    decision: str
    sender: Address
    subject: str
    received_at: datetime | None
    waiting_since: datetime
    needed_by: date | None
    assessments: tuple[Assessment, ...]
    why_kind: str
    notes: tuple[str, ...]
    has_draft: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Asking:
    """What one customer's message asked for, as it stands after corrections: for the report."""

    id: int
    state: State
    kind: Kind
    channel: str
    sender: Address
    received_at: datetime | None
    created_at: datetime
    assessments: tuple[Assessment, ...]
    questions: tuple[Question, ...]
