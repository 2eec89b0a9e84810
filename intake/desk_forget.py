"""Forgetting: one person's messages at once, or all messages that have grown old.

What stays are the figures that the report counts, under a name that says nothing. Numbers of
inquiries stay too, since people quote them.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, tzinfo
from typing import TYPE_CHECKING

from .addressing import one_line
from .desk_common import a_name, the_inquiry
from .desk_errors import DeskError
from .inquiry import Said, State, Word
from .report_count import Week
from .report_weeks import start_of

if TYPE_CHECKING:
    from .store import Store


class NobodyError(DeskError):
    """No customer has that address."""


@dataclass(frozen=True, slots=True)
class Forgotten:
    """What was taken out."""

    inquiries: tuple[int, ...]
    messages: int
    mentioned: tuple[int, ...]
    """Inquiries of others in whose words the address still stands: for a person to look at."""


@dataclass(frozen=True, slots=True)
class Reduced:
    """What was reduced to its figures."""

    inquiries: int
    unsettled: int
    """As old, and left: somebody still has to act on them."""


def forget(store: Store, address: str, by: str | None = None) -> Forgotten:
    """Take out all that one customer wrote, and what was drafted for him; his counts stay.

    What still waited is set aside by it. Raises NobodyError where no customer has that address.
    """
    spelled = _bare(one_line(address, 254))
    if not spelled:
        raise NobodyError("whose messages are to be forgotten is not said: give a mail address")
    name = "somebody" if by is None else a_name(by, "forgetting")
    with store.erasing() as book:
        from .store_forget import SETTLED, anybody

        numbers = book.inquiries_of(spelled)
        if not numbers:
            raise NobodyError(f"no message of {spelled} is in the store")
        customer, messages = anybody(), 0
        for number in numbers:
            inquiry = the_inquiry(book, number, to_change=True)
            if inquiry.state not in SETTLED:
                book.move(inquiry, State.SET_ASIDE)
                word = Word(said=Said.SET_ASIDE, by=name, why="", at=book.now, draft_number=None)
                book.add_word(number, word)
            messages += book.reduce(number, customer, known_again=False, by=name)
        return Forgotten(numbers, messages, book.mentioning(spelled))


def _bare(address: str) -> str:
    """An address without the name that stands before it: 'Ada <ada@example.com>'."""
    _, bracket, inside = address.rpartition("<")
    return (inside.partition(">")[0] if bracket else address).strip()


def reduce_old(store: Store, months: int, zone: tzinfo) -> Reduced:
    """Reduce settled inquiries to their figures whose week ended more than ``months`` ago.

    Whole weeks, so that within a week one customer stays one.
    """
    from dateutil.relativedelta import relativedelta

    border = start_of(Week.of(store.clock() - relativedelta(months=months), zone), zone)
    if not _any_old(store, border):
        return Reduced(0, 0)
    from .store_forget import anybody

    with store.erasing() as book:
        called: dict[str, str] = {}
        count = 0
        for number, customer in book.old(border):
            book.reduce(number, called.setdefault(customer, anybody()), known_again=True)
            count += 1
        return Reduced(count, book.old_unsettled(border))


def _any_old(store: Store, border: datetime) -> bool:
    """Whether anything has its words and is as old: most runs have nothing to do."""
    with store.counting() as book:
        return book.any_named(border)
