"""The draft that stands: a new one in place of the old, an approval of the old taken back.

Nothing that a person has said or written is passed over in silence: each function says what to
tell them.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from .desk_common import when
from .desk_errors import EditedDraftError
from .inquiry import BENDREPLY, Inquiry, Said, State, StoredDraft, Word
from .model import Draft

if TYPE_CHECKING:
    from .store_writer import Writer


def withdraw_approval(book: Writer, inquiry: Inquiry, by: str, why: str) -> tuple[str, ...]:
    """Take back an approval whose draft has not gone out; what to tell the person about it."""
    if inquiry.state is not State.APPROVED:
        return ()
    approval = inquiry.approval
    if approval is None:
        return ()
    number = approval.draft_number
    book.add_word(
        inquiry.id,
        Word(said=Said.WITHDRAWN, by=by, why=why, at=book.now, draft_number=number),
    )
    book.log(inquiry.id, by, "approval withdrawn", why=why, draft=number)
    return (
        f"the approval by {approval.by} of {when(approval.at)} was withdrawn, since {why}: "
        "the draft waits for approval again",
    )


def redraft(
    book: Writer, inquiry: Inquiry, words: Draft | None, *, replace_edited: bool
) -> tuple[str, ...]:
    """The new draft in place of the old; what to tell the person about it."""
    old = inquiry.draft
    if old is not None and words is not None and _same_words(old, words):
        return ()
    if old is not None and old.edited and not replace_edited:
        raise EditedDraftError(
            f"draft {old.number} of inquiry {inquiry.id} is in the words of {old.made_by} and "
            "would be replaced; nothing was changed"
        )
    if words is None:
        book.withdraw_drafts(inquiry.id)
        return ("there is no draft any more: the reply is to be written by hand",) if old else ()
    number = next_draft(book, inquiry, words, by=BENDREPLY)
    if old is None or not old.edited:
        return ()
    return (
        f"draft {old.number}, in the words of {old.made_by}, was replaced by draft {number}; "
        "it is kept and can be read with the inquiry",
    )


def next_draft(book: Writer, inquiry: Inquiry, words: Draft, *, by: str) -> int:
    """One more wording in place of all before; its number."""
    number = 1 + max((one.number for one in inquiry.drafts), default=0)
    book.withdraw_drafts(inquiry.id)
    book.add_draft(inquiry.id, number, words, by=by)
    return number


def _same_words(old: StoredDraft, words: Draft) -> bool:
    return (old.subject, old.body) == (words.subject, words.body)
