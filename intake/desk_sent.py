"""A reply in the Sent folder closes its inquiry: how soon it came, how near it is to the draft."""

from __future__ import annotations

from difflib import SequenceMatcher
from typing import TYPE_CHECKING

from .desk_common import the_inquiry
from .inquiry import BENDREPLY, Inquiry, Reply, State, StoredDraft
from .letter import DraftId
from .model import Message
from .own_text import mask

if TYPE_CHECKING:
    from .store import Store
    from .store_reader import Reader

MOST_WORDS = 5000
"""Of a longer reply only the beginning is compared."""


def inquiry_answered(book: Reader, sent: Message) -> int | None:
    """The inquiry that a mail of ours answers, by its ids alone; None where it is none of them."""
    draft = DraftId.parse(sent.message_id)
    if draft is not None and book.has_draft(draft):
        return draft.inquiry
    ids = [*sent.references, *([sent.in_reply_to] if sent.in_reply_to else [])]
    return book.inquiry_of_ids(ids)


def note_sent(store: Store, sent: Message) -> Inquiry | None:
    """Keep a mail of the Sent folder that answers an inquiry, and close that one.

    None where it answers none, or is known. An inquiry whose customer has written since stays open.
    """
    with store.writing() as book:
        number = inquiry_answered(book, sent)
        if number is None or book.has_reply(sent.message_id):
            return None
        inquiry = the_inquiry(book, number, to_change=True)
        draft = _draft_of(inquiry, sent)
        words = _newly_written(sent)
        came = inquiry.message.received_at
        late = came is not None and sent.received_at is not None and sent.received_at < came
        named = {sent.in_reply_to, *sent.references}
        seen = Reply(
            message_id=sent.message_id,
            sent_at=sent.received_at,
            after=sent.received_at - came
            if came is not None and sent.received_at is not None and not late
            else None,
            draft_number=draft.number if draft else None,
            likeness=likeness(draft.body, words) if draft else None,
            body=words,
        )
        book.add_reply(number, seen)
        closes = inquiry.message.message_id in named or not late
        if closes and inquiry.state in (State.WAITING, State.APPROVED, State.DELIVERED):
            book.move(inquiry, State.ANSWERED)
        book.log(
            number,
            BENDREPLY,
            "reply seen in Sent" if closes else "reply to an earlier message seen in Sent",
            was=inquiry.state,
            message_id=sent.message_id,
            after_s=None if seen.after is None else int(seen.after.total_seconds()),
            likeness=None if seen.likeness is None else round(seen.likeness, 3),
        )
        return the_inquiry(book, number)


def likeness(draft: str, sent: str) -> float:
    """How much of a draft is in what was sent, word by word in order: 0.0 to 1.0 (difflib)."""
    one, other = draft.split()[:MOST_WORDS], sent.split()[:MOST_WORDS]
    return SequenceMatcher(None, one, other, autojunk=False).ratio()


def _draft_of(inquiry: Inquiry, sent: Message) -> StoredDraft | None:
    """The draft that a reply was made of: the one it names, else the latest."""
    name = DraftId.parse(sent.message_id)
    named = (one for one in inquiry.drafts if name is not None and one.number == name.number)
    return next(named, inquiry.drafts[-1] if inquiry.drafts else None)


def _newly_written(sent: Message) -> str:
    """What we wrote, our signature included, without the customer's mail below it."""
    text = list(sent.text)
    for part in mask(sent).parts:
        if part.kind in ("quoted", "forwarded"):
            text[part.start : part.end] = " " * (part.end - part.start)
    return "".join(text[sent.body_start :]).strip()
