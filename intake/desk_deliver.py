"""Approved drafts laid where a person will find them, each in a transaction of its own."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from .desk_common import the_inquiry
from .desk_errors import UndeliverableError
from .desk_pictures import asked_for, drawn
from .inquiry import BENDREPLY, State
from .letter import DraftId, compose, digest
from .model import Address

if TYPE_CHECKING:
    from .deliver import Target
    from .store import Store
    from .store_reader import Reader
    from .store_writer import Writer


@dataclass(frozen=True, slots=True, kw_only=True)
class Delivered:
    """A draft that lies where a person will find it."""

    inquiry: int
    place: str
    was_there: bool
    """It had been laid before, and only the record of it was missing."""
    note: str = ""
    """For the person: an earlier draft that was left where it lies."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Left:
    """An approved draft that could not be laid down; it stays approved."""

    inquiry: int
    why: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Delivery:
    """One run of ``deliver``."""

    delivered: tuple[Delivered, ...]
    left: tuple[Left, ...]


def deliver(store: Store, target: Target, sender: Address) -> Delivery:
    """Lay every approved draft in ``target``, from the shop's reply address ``sender``.

    Each in its own transaction, held open while it is laid: nobody can withdraw the approval in
    between. What can't be laid stays approved and is named with its reason.
    """
    with store.reading() as book:
        approved = book.numbers(State.APPROVED)
    delivered: list[Delivered] = []
    left: list[Left] = []
    for number in approved:
        try:
            with store.writing() as book:
                done = _deliver_one(book, number, target, sender)
        except UndeliverableError as error:
            left.append(Left(inquiry=number, why=str(error)))
        except OSError as error:
            why = f"the draft of inquiry {number} could not be laid down: {error.strerror or error}"
            left.append(Left(inquiry=number, why=f"{why}; it stays approved"))
        else:
            delivered += [done] if done else []
    return Delivery(delivered=tuple(delivered), left=tuple(left))


def _deliver_one(book: Writer, number: int, target: Target, sender: Address) -> Delivered | None:
    inquiry = the_inquiry(book, number, to_change=True)
    if inquiry.state is not State.APPROVED:  # delivered or withdrawn by somebody else just now
        return None
    kind = asked_for(book, inquiry)
    pictures = () if kind is None else drawn(inquiry, kind)
    letter = replace(compose(inquiry, sender, pictures), laid_before=laid_before(book, number))
    laid = target.lay(letter)
    book.move(inquiry, State.DELIVERED)
    book.log(
        number,
        BENDREPLY,
        "delivered",
        draft=letter.id.number,
        name=str(letter.id),
        place=laid.place,
        was_there=laid.was_there,
        sha256=digest(letter.data),
    )
    return Delivered(inquiry=number, place=laid.place, was_there=laid.was_there, note=laid.note)


def laid_before(book: Reader, number: int) -> dict[DraftId, str]:
    """The inquiry's drafts that were laid so far, with the digest of their bytes."""
    laid: dict[DraftId, str] = {}
    for event in book.history(number):
        name, sha256 = event.detail.get("name"), event.detail.get("sha256")
        if event.what == "delivered" and isinstance(name, str) and isinstance(sha256, str):
            draft = DraftId.parse(name)
            if draft is not None:
                laid[draft] = sha256
    return laid
