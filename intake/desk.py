"""The way of an inquiry through the shop: taken in, looked at, a person's word, delivered.

Each function is one transaction: it happens whole or not at all. What it refuses, it refuses with
a DeskError whose message is the sentence for the person. ``correct`` and ``edit_draft`` stand in
``desk_change`` and can be had from here.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from . import message_keys as keys
from .desk_change import Changed, Rejudge, correct, edit_draft
from .desk_common import a_name, as_expected, as_read, earliest, in_short, the_inquiry, when
from .desk_deliver import Delivered, Delivery, Left, deliver
from .desk_errors import (
    AlreadyApprovedError,
    AlreadyDeliveredError,
    ClashError,
    DeskError,
    NoDraftError,
    NoReasonError,
    NoReplyError,
    SetAsideError,
    UndeliverableError,
)
from .desk_join import Joining, join, recalled
from .desk_pictures import PictureKind, refuse_undrawable
from .inquiry import BENDREPLY, Asking, Event, Inquiry, Row, Said, State, Word
from .letter import Mailbox, recipients
from .model import Kind, Message, Result

if TYPE_CHECKING:
    from .store import Store
    from .store_reader import Reader
    from .store_writer import Writer

__all__ = [
    "Approved",
    "Changed",
    "Delivered",
    "Delivery",
    "DeskError",
    "Joining",
    "Left",
    "PictureKind",
    "Rejudge",
    "Taken",
    "all_already_taken",
    "already_taken",
    "approve",
    "askings",
    "backlog",
    "begin",
    "correct",
    "deliver",
    "edit_draft",
    "history",
    "how_many_wait",
    "set_aside",
    "show",
    "take_in",
]


@dataclass(frozen=True, slots=True, kw_only=True)
class Taken:
    """What became of a message that came in."""

    inquiry: int
    new: bool
    state: State
    note: str = ""
    """For the person: a message known before has come back with other words."""
    joined: Result | None = None
    """What was made of the whole inquiry, where the message went to one that was there."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Approved:
    """An approval as it was recorded."""

    inquiry: int
    draft_number: int
    word: Word


def take_in(store: Store, result: Result, source: str, joining: Joining | None = None) -> Taken:
    """Keep a message with all that was made of it. Known before: nothing changes.

    ``source`` names the file or folder that it came from. With ``joining``, a further message of
    a customer goes to the inquiry that it belongs to, which is then judged and drafted again.
    """
    try:
        return _take_in(store, result, source, joining)
    except ClashError:  # should two look before either writes: look again
        return _take_in(store, result, source, joining)


def _take_in(store: Store, result: Result, source: str, joining: Joining | None) -> Taken:
    came = result.message
    with store.writing() as book:
        book.begin_collecting()
        like = list(book.messages_like(came))
        if known := _known(book, like, came, source):
            return known
        key = keys.key_of_its_own(came) if like else keys.usual_key(came)
        if joining is not None:
            if joined := join(book, result, source, joining, key=key):
                return Taken(
                    inquiry=joined.inquiry,
                    new=False,
                    state=book.state(joined.inquiry),
                    note="\n".join(joined.told),
                    joined=joined.result,
                )
            result = recalled(book, result, joining.reread)
        number, _ = begin(book, result, source, key)
        return Taken(inquiry=number, new=True, state=_at_first(result))


def _at_first(result: Result) -> State:
    return State.NO_REPLY if result.kind is Kind.AUTOMATIC else State.WAITING


def begin(book: Writer, result: Result, source: str, key: str) -> tuple[int, int]:
    """A new inquiry with its first message, kept under ``key``: the numbers of both rows."""
    state = _at_first(result)
    decision = in_short(result)
    number = book.add_inquiry(
        result, state=state, decision=decision, needed_by=earliest(result.assessments)
    )
    row = book.add_message(number, result, key=key, source=source)
    if result.draft is not None and result.kind in (Kind.SIZES, Kind.QUESTION):
        book.add_draft(number, 1, result.draft, by=BENDREPLY)
    book.log(
        number,
        BENDREPLY,
        "taken in",
        source=source,
        kind=result.kind,
        decision=decision,
        sizes=as_read(result),
    )
    return number, row


def already_taken(store: Store, came: Message, source: str) -> Taken | None:
    """What ``take_in`` would answer for a message that is kept already; None for any other.

    For whoever would have to read it first: its headers, bytes and words are enough to know it.
    """
    return all_already_taken(store, [(came, source)])[0]


def all_already_taken(store: Store, came: Sequence[tuple[Message, str]]) -> list[Taken | None]:
    """The same for several messages and where each came from, looked up at one moment."""
    with store.reading() as book:
        if not book.has_any_like([one for one, _ in came]):
            return [None] * len(came)
        return [_known(book, book.messages_like(one), one, source) for one, source in came]


def _known(
    book: Reader, like: Iterable[tuple[int, Message]], came: Message, source: str
) -> Taken | None:
    for number, stored in like:
        if not keys.same_message(stored, came):
            continue
        note = ""
        if keys.says_more(stored, came):
            note = (
                f"inquiry {number} holds this message with other words; it was left as it was: "
                f"look at {source}"
            )
        return Taken(inquiry=number, new=False, state=book.state(number), note=note)
    return None


def backlog(store: Store, most: int | None = None) -> list[Row]:
    """What waits for a person: earliest needed-by first, then what has waited longest.

    Not more than ``most``; None: all of it.
    """
    with store.reading() as book:
        return list(book.backlog(most))


def how_many_wait(store: Store) -> int:
    """How many inquiries wait for a person."""
    with store.reading() as book:
        return book.how_many(State.WAITING)


def askings(store: Store) -> Iterator[Asking]:
    """What every inquiry asks for, corrections included, in the order they came in."""
    with store.reading() as book:
        yield from book.askings()


def show(store: Store, id: int | str) -> Inquiry:
    """All that is kept for one inquiry. Raises UnknownInquiryError."""
    with store.reading() as book:
        return the_inquiry(book, id)


def history(store: Store, id: int | str) -> tuple[Event, ...]:
    """All that happened to one inquiry, oldest first. Raises UnknownInquiryError."""
    with store.reading() as book:
        return book.history(the_inquiry(book, id).id)


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
