"""The way of an inquiry through the shop: taken in, looked at, a person's word, delivered.

Each function is one transaction: it happens whole or not at all. What it refuses, it refuses with
a DeskError whose message is the sentence for the person. ``correct`` and ``edit_draft`` stand in
``desk_change``, ``approve`` and ``set_aside`` in ``desk_word``, and can be had from here.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from . import message_keys as keys
from .desk_change import Changed, Rejudge, correct, edit_draft
from .desk_common import as_read, earliest, in_short, the_inquiry
from .desk_deliver import Delivered, Delivery, Left, deliver
from .desk_errors import (
    ClashError,
    DeskError,
)
from .desk_join import Joining, join, recalled
from .desk_pictures import PictureKind
from .desk_word import Approved, approve, set_aside
from .inquiry import BENDREPLY, Asking, Event, Inquiry, Row, State
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
