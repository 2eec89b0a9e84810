"""A person's word on an inquiry: its draft approved, or the inquiry put aside."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from .desk_common import a_name, as_expected, the_inquiry, when
from .desk_errors import (
    AlreadyApprovedError,
    AlreadyDeliveredError,
    NoDraftError,
    NoReasonError,
    NoReplyError,
    SetAsideError,
    UndeliverableError,
)
from .desk_pictures import PictureKind, refuse_undrawable
from .inquiry import Inquiry, Said, State, Word
from .letter import Mailbox, recipients

if TYPE_CHECKING:
    from .store import Store


@dataclass(frozen=True, slots=True, kw_only=True)
class Approved:
    """An approval as it was recorded."""

    inquiry: int
    draft_number: int
    word: Word


def approve(
    store: Store,
    id: int | str,
    by: str,
    *,
    people: Sequence[str] = (),
    expected_version: int | None = None,
    shop_address: str = "",
    picture: PictureKind | None = None,
) -> Approved:
    """A person's yes to the draft that stands. ``people``: who may; empty for anybody named.

    Refused where the reply could go nowhere, or only to the shop itself at ``shop_address``.
    ``expected_version``: the version the person looked at; ChangedMeanwhileError, and nothing is
    changed, where somebody else was first. ``picture``: bends are drawn and
    laid beside the words; refused where there is nothing to draw.
    """
    name = a_name(by, "approving", people)
    with store.writing() as book:
        inquiry = the_inquiry(book, id, to_change=True)
        as_expected(book, inquiry, expected_version)
        _refuse_settled(inquiry)
        draft = inquiry.draft
        if draft is None:
            raise NoDraftError(
                f"inquiry {inquiry.id} has no draft to approve: it waits for a reply by hand"
            )
        came, shop = inquiry.message, Mailbox("", shop_address)
        if came.channel == "email" and not recipients(came, shop):
            raise UndeliverableError(
                f"inquiry {inquiry.id} has no address to reply to, so its draft can't be laid down:"
                " answer in another way, then put it away with `bendreply set-aside "
                f'{inquiry.id} --by NAME --why "answered by phone"`'
            )
        if picture is not None:
            refuse_undrawable(inquiry)
        word = Word(said=Said.APPROVED, by=name, why="", at=book.now, draft_number=draft.number)
        book.move(inquiry, State.APPROVED)
        book.add_word(inquiry.id, word)
        book.log(inquiry.id, name, "approved", draft=draft.number, **_with(picture))
    return Approved(inquiry=inquiry.id, draft_number=draft.number, word=word)


def _with(picture: PictureKind | None) -> dict[str, object]:
    return {} if picture is None else {"picture": picture}


def set_aside(
    store: Store, id: int | str, by: str, why: str, *, expected_version: int | None = None
) -> Inquiry:
    """A person's word that an inquiry gets no reply from here. An approval is withdrawn by it."""
    name = a_name(by, "setting aside")
    reason = why.strip()
    if not reason:
        raise NoReasonError("setting aside needs a reason, for whoever looks later")
    with store.writing() as book:
        inquiry = the_inquiry(book, id, to_change=True)
        as_expected(book, inquiry, expected_version)
        if inquiry.state is not State.APPROVED:
            _refuse_settled(inquiry)
        number = inquiry.draft.number if inquiry.draft else None
        book.move(inquiry, State.SET_ASIDE)
        book.add_word(
            inquiry.id,
            Word(said=Said.SET_ASIDE, by=name, why=reason, at=book.now, draft_number=number),
        )
        book.log(inquiry.id, name, "set aside", why=reason, was=inquiry.state)
        return the_inquiry(book, inquiry.id)


def _refuse_settled(inquiry: Inquiry) -> None:
    """Refuse what has a person's word already, or needs none: who said what, when."""
    last = inquiry.words[-1] if inquiry.words else None
    match inquiry.state:
        case State.APPROVED if last:
            raise AlreadyApprovedError(
                f"inquiry {inquiry.id} was already approved by {last.by} on {when(last.at)}; "
                "nothing was changed"
            )
        case State.DELIVERED if last:
            raise AlreadyDeliveredError(
                f"inquiry {inquiry.id} was approved by {last.by} on {when(last.at)} and its draft "
                "has been delivered; nothing was changed"
            )
        case State.ANSWERED:
            raise AlreadyDeliveredError(
                f"inquiry {inquiry.id} is answered: the reply lies in the Sent folder; nothing was "
                "changed"
            )
        case State.SET_ASIDE if last:
            raise SetAsideError(
                f"inquiry {inquiry.id} was set aside by {last.by} on {when(last.at)} "
                f"({last.why}): `bendreply correct` takes it up again"
            )
        case State.NO_REPLY:
            raise NoReplyError(
                f"inquiry {inquiry.id} is an automatic message and gets no reply; if a person "
                f"wrote it, give its size with `bendreply correct {inquiry.id} od=...`"
            )
