"""Chat messages taken in: a burst is one request, also where it comes in piece by piece.

More of a burst makes its inquiry be read, decided and drafted again from all its words, as if they
had come in together. Where a person has put a reading right, or the draft has been laid down, what
comes is joined like a further mail instead, so that no correction is lost. So is, hours later, what
only fills a gap of the chat's latest inquiry ("4.5 clr", when we asked). Each call is one
transaction.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from datetime import timedelta
from typing import TYPE_CHECKING, Self

from . import message_keys as keys
from .chat import ChatLine
from .chat_bursts import LONGEST_TEXT, QUIET, bursts_of, join
from .desk import Taken, begin
from .desk_common import as_read, earliest, in_short, the_inquiry
from .desk_drafts import redraft, withdraw_approval
from .desk_errors import ClashError
from .desk_join import Reread, conversation_of, further
from .inquiry import BENDREPLY, Inquiry, State
from .model import Kind, Message, Result
from .threads import Belongs, How

if TYPE_CHECKING:
    from ..rules.shop import Shop
    from .store import Store
    from .store_chat import KnownLine
    from .store_writer import Writer
    from .templates import Templates


ANSWER_WITHIN = timedelta(days=1)
"""How long a chat waits for what an inquiry of it lacks."""


@dataclass(frozen=True, slots=True)
class ChatReading:
    """How chat is read: a message for itself, or with what an inquiry asks for already."""

    read: Callable[[Message], Result]
    reread: Reread
    quiet: timedelta = QUIET

    @classmethod
    def of(cls, shop: Shop, templates: Templates) -> Self:
        """As a shop reads it."""
        from .pipeline import process, process_reply

        return cls(
            lambda message: process(message, shop, templates),
            lambda message, before: process_reply(message, before, shop, templates),
            timedelta(minutes=shop.chat.quiet_minutes),
        )


@dataclass(frozen=True, slots=True)
class TakenChat:
    """What became of the lines of one burst."""

    taken: Taken
    kind: Kind | None
    """Of a new inquiry; None for any other."""
    keys: frozenset[str]
    """Which lines, by ``ChatLine.key``."""


def take_in_chat(
    store: Store, lines: Sequence[ChatLine], source: str, reading: ChatReading
) -> list[TakenChat]:
    """Keep chat messages in the inquiries that they belong to; known ones change nothing."""
    done = []
    for burst in bursts_of(lines, reading.quiet):
        try:
            one = _take_burst(store, burst.lines, source, reading)
        except ClashError:  # a database server lets two look before either writes: look again
            one = _take_burst(store, burst.lines, source, reading)
        done.append(one)
    return done


def _is_sent_again(line: ChatLine, fresh: Sequence[ChatLine]) -> bool:
    """Whether a program sent a message twice, its server having broken off, and both came now."""
    said = (line.origin_id, line.text, line.sender.address)
    others = ((one.origin_id, one.text, one.sender.address) for one in fresh)
    return line.origin_id is not None and said in others


def _take_burst(
    store: Store, lines: Sequence[ChatLine], source: str, reading: ChatReading
) -> TakenChat:
    came = frozenset(line.key for line in lines)
    with store.writing() as book:
        book.begin_collecting()
        fresh: list[ChatLine] = []
        known = []
        for line in lines:
            found = book.known_line(line)
            if found is None:
                if not _is_sent_again(line, fresh):
                    fresh.append(line)
            else:
                known.append((line, found))
        notes = [_changed(line, found, source) for line, found in known if _differs(line, found)]
        if not fresh:
            number = known[0][1].inquiry
            taken = Taken(
                inquiry=number, new=False, state=book.state(number), note="\n".join(notes)
            )
            return TakenChat(taken, None, came)
        first, last = min(one.time for one in fresh), max(one.time for one in fresh)
        near = book.burst_near(fresh[0], first - reading.quiet, last + reading.quiet)
        near = [one for one in near if _fits(book, one, fresh)]
        if not near and (open_one := _lacking(book, fresh, reading)) is not None:
            taken, kind = _join(book, open_one, How.CHAT, fresh, source, reading), None
        elif near:
            taken = _more(book, near, fresh, source, reading)
            kind = None
        else:
            taken, kind = _new(book, fresh, source, reading)
    note = "\n".join(filter(None, (taken.note, *notes)))
    return TakenChat(replace(taken, note=note), kind, came)


def _differs(came: ChatLine, found: KnownLine) -> bool:
    return came.key == found.line.key and came.text != found.line.text


def _changed(came: ChatLine, found: KnownLine, source: str) -> str:
    return (
        f"inquiry {found.inquiry} holds the chat message {came.message_id} with other words; it "
        f"was left as it was: look at {source}"
    )


def _fits(book: Writer, near: KnownLine, fresh: Sequence[ChatLine]) -> bool:
    size = sum(len(line.text) for line in (*book.lines_of(near.message_row), *fresh))
    return size <= LONGEST_TEXT


def _new(
    book: Writer, lines: Sequence[ChatLine], source: str, reading: ChatReading
) -> tuple[Taken, Kind | None]:
    came = join(lines)
    like = list(book.messages_like(came))
    for number, stored in like:
        # Kept by a version that did not yet keep chat messages one by one.
        if stored.channel == "chat" and stored.body == came.body:
            return Taken(inquiry=number, new=False, state=book.state(number)), None
    result = reading.read(came)
    key = keys.key_of_its_own(came) if like else keys.usual_key(came)
    number, row = begin(book, result, source, key)
    book.add_chat_lines(row, lines)
    return Taken(inquiry=number, new=True, state=book.state(number)), result.kind


def _more(
    book: Writer,
    near: Sequence[KnownLine],
    fresh: Sequence[ChatLine],
    source: str,
    reading: ChatReading,
) -> Taken:
    """More of a burst that has an inquiry already."""
    target = near[0]
    inquiry = the_inquiry(book, target.inquiry, to_change=True)
    if _may_read_anew(inquiry):
        taken = _grow(book, inquiry, target.message_row, fresh, source, reading)
    else:
        taken = _join(book, inquiry, How.REFERENCE, fresh, source, reading)
    others = sorted({one.inquiry for one in near} - {inquiry.id})
    told = [
        f"inquiry {other} is of the same sender in the same chat, minutes later: look whether it "
        f"belongs to inquiry {inquiry.id}"
        for other in others
    ]
    return replace(taken, note="\n".join((taken.note, *told)))


def _lacking(book: Writer, fresh: Sequence[ChatLine], reading: ChatReading) -> Inquiry | None:
    """The inquiry of the same chat that lacks just what was said now; None where there is none.

    Only gaps count. What would replace a figure, or add a size, is a request of its own: the
    earlier one may be settled since, and nothing says that this belongs to it.
    """
    first = min(line.time for line in fresh)
    before = book.burst_near(fresh[0], first - ANSWER_WITHIN, first)
    if not before:
        return None
    inquiry = the_inquiry(book, before[-1].inquiry, to_change=True)
    if inquiry.kind is not Kind.SIZES or inquiry.state is State.SET_ASIDE:
        return None
    whole, changes = reading.reread(join(fresh), conversation_of(inquiry))
    more = len(whole.assessments) > len(inquiry.assessments)
    fills = bool(changes) and all(one.before is None for one in changes)
    return inquiry if fills and not more else None


def _join(
    book: Writer,
    inquiry: Inquiry,
    how: How,
    fresh: Sequence[ChatLine],
    source: str,
    reading: ChatReading,
) -> Taken:
    """What came joined to an inquiry as a further message of its customer."""
    came = join(fresh)
    known = any(True for _ in book.messages_like(came))
    joined = further(
        book,
        inquiry,
        Belongs(inquiry.id, how),
        Result(message=came, kind=Kind.OTHER, why_kind="more of a chat"),
        source,
        reading.reread,
        keys.key_of_its_own(came) if known else keys.usual_key(came),
    )
    assert joined.row is not None, "a further message is kept"
    book.add_chat_lines(joined.row, fresh)
    return _taken(book, inquiry, joined.result, joined.told)


def _taken(book: Writer, inquiry: Inquiry, whole: Result, told: Sequence[str]) -> Taken:
    return Taken(
        inquiry=inquiry.id,
        new=False,
        state=book.state(inquiry.id),
        note="\n".join(told),
        joined=whole,
    )


def _may_read_anew(inquiry: Inquiry) -> bool:
    """Whether nothing would be lost that a person has said, or that has gone out."""
    untouched = not inquiry.corrections and len(inquiry.messages) == 1
    return untouched and inquiry.state not in (State.DELIVERED, State.ANSWERED)


def _grow(
    book: Writer,
    inquiry: Inquiry,
    row: int,
    fresh: Sequence[ChatLine],
    source: str,
    reading: ChatReading,
) -> Taken:
    """The inquiry read anew with all its words, in place of what it was."""
    lines = [*book.lines_of(row), *fresh]
    whole = reading.read(join(lines, inquiry.message.message_id))
    if whole.kind is Kind.AUTOMATIC:
        # It waits for a person from now on: no program writes on after its own message.
        whole = whole.model_copy(update={"kind": Kind.OTHER})
    told = [f"inquiry {inquiry.id}: more of this chat came in; it was read and decided anew"]
    told += withdraw_approval(book, inquiry, BENDREPLY, "more of the chat came in")
    if inquiry.state is State.SET_ASIDE:
        told.append(f"inquiry {inquiry.id} was set aside, and waits again")
    told += redraft(book, inquiry, whole.draft, replace_edited=True)
    book.replace_message(row, whole)
    book.add_chat_lines(row, fresh)
    decision = in_short(whole)
    book.judge_again(inquiry, whole, decision=decision, needed_by=earliest(whole.assessments))
    book.log(
        inquiry.id,
        BENDREPLY,
        "more of the chat joined",
        source=source,
        was=inquiry.state,
        lines=len(fresh),
        decision=decision,
        sizes=as_read(whole),
    )
    return _taken(book, inquiry, whole, told)
