"""Rows of the store as the types that the rest of the program knows."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta
from typing import Any

import sqlalchemy as sa

from . import store_json as packing
from .inquiry import (
    Asking,
    Correction,
    Event,
    Inquiry,
    Reply,
    Role,
    Row,
    Said,
    State,
    StoredDraft,
    StoredMessage,
    Word,
)
from .model import Address, Kind

Found = sa.Row[Any]


def inquiry_of(
    row: Found,
    *,
    messages: Sequence[Found],
    drafts: Sequence[Found],
    corrections: Sequence[Found],
    words: Sequence[Found],
    replies: Sequence[Found] = (),
) -> Inquiry:
    """One inquiry with all that belongs to it."""
    return Inquiry(
        id=row.id,
        version=row.version,
        state=State(row.state),
        kind=Kind(row.kind),
        decision=row.decision,
        created_at=row.created_at,
        waiting_since=row.waiting_since,
        needed_by=row.needed_by,
        assessments=packing.unpack_assessments(row.assessments),
        questions=packing.unpack_questions(row.questions),
        notes=packing.unpack_words(row.notes),
        messages=tuple(map(_message, messages)),
        drafts=tuple(map(_draft, drafts)),
        corrections=tuple(map(_correction, corrections)),
        words=tuple(map(_word, words)),
        replies=tuple(map(_reply, replies)),
    )


def row_of(row: Found) -> Row:
    """One line of the backlog."""
    return Row(
        id=row.id,
        version=row.version,
        kind=Kind(row.kind),
        decision=row.decision,
        sender=Address(name=row.sender_name, address=row.sender),
        subject=row.subject,
        received_at=row.received_at,
        waiting_since=row.waiting_since,
        needed_by=row.needed_by,
        assessments=packing.unpack_assessments(row.assessments),
        why_kind=row.why_kind,
        notes=packing.unpack_words(row.notes),
        has_draft=bool(row.has_draft),
    )


def asking_of(row: Found) -> Asking:
    """One inquiry as the report counts it."""
    return Asking(
        id=row.id,
        state=State(row.state),
        kind=Kind(row.kind),
        channel=row.channel,
        sender=Address(name=row.sender_name, address=row.sender),
        received_at=row.received_at,
        created_at=row.created_at,
        assessments=packing.unpack_assessments(row.assessments),
        questions=packing.unpack_questions(row.questions),
    )


def event_of(row: Found) -> Event:
    """One line of the history."""
    return Event(at=row.at, who=row.who, what=row.what, detail=packing.unpack_detail(row.detail))


def _message(row: Found) -> StoredMessage:
    return StoredMessage(
        message=packing.unpack_message(row.message),
        kind=Kind(row.kind),
        why_kind=row.why_kind,
        source=row.source,
        taken_at=row.taken_at,
        role=Role(row.role),
    )


def _draft(row: Found) -> StoredDraft:
    return StoredDraft(
        number=row.number,
        subject=row.subject,
        body=row.body,
        template=row.template,
        answers=packing.unpack_words(row.answers),
        made_at=row.made_at,
        made_by=row.made_by,
        withdrawn=row.withdrawn,
    )


def _correction(row: Found) -> Correction:
    return Correction(
        index=row.request_index,
        field=row.field,
        before=row.before,
        after=row.after,
        by=row.by,
        at=row.at,
        notation=row.notation,
    )


def _reply(row: Found) -> Reply:
    return Reply(
        message_id=row.message_id,
        sent_at=row.sent_at,
        after=None if row.after_s is None else timedelta(seconds=row.after_s),
        draft_number=row.draft_number,
        likeness=row.likeness,
        body=row.body,
    )


def _word(row: Found) -> Word:
    return Word(
        said=Said(row.said), by=row.by, why=row.why, at=row.at, draft_number=row.draft_number
    )
