"""A further message of a customer joined to the inquiry that it belongs to, in one transaction.

What was drafted before is withdrawn and the reply drafted anew: it waits for a person again,
whatever was said of the inquiry so far. Nothing of that happens in silence.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from .addressing import one_line
from .bare_answers import asked_of
from .carry_over import Change
from .conversation import Conversation, placed
from .desk_common import as_read, earliest, in_short, the_inquiry
from .desk_drafts import next_draft, redraft, withdraw_approval
from .desk_fields import as_text
from .inquiry import BENDREPLY, Inquiry, Role, State
from .model import Kind, Message, Result
from .own_text import mask
from .repeats import as_before
from .threads import Belongs, How, find_inquiry

if TYPE_CHECKING:
    from .store_writer import Writer

Reread = Callable[[Message, Conversation], tuple[Result, tuple[Change, ...]]]
"""Reads a further message with what came before it; the result for the whole inquiry."""


@dataclass(frozen=True, slots=True)
class Joining:
    """What is needed to join messages: our own address, and the reading of a further message."""

    reread: Reread
    shop_address: str = ""


@dataclass(frozen=True, slots=True)
class JoinedTo:
    """The inquiry that a message was joined to, and sentences for the person."""

    inquiry: int
    result: Result
    told: tuple[str, ...]
    row: int | None = None
    """Where in the store a further message is kept."""


def join(
    book: Writer, result: Result, source: str, joining: Joining, *, key: str
) -> JoinedTo | None:
    """Join a message that is not known yet to its inquiry; None where it begins one of its own."""
    if result.kind is Kind.AUTOMATIC:
        return None
    found = find_inquiry(book, result.message, joining.shop_address)
    if found is None:
        return None
    inquiry = the_inquiry(book, found.inquiry, to_change=True)
    if found.how is How.COPY:
        return _copy(book, inquiry, result, source, key)
    if found.how is How.EARLIER:
        return _earlier(book, inquiry, result, source, key)
    return further(book, inquiry, found, result, source, joining.reread, key)


def _copy(book: Writer, inquiry: Inquiry, result: Result, source: str, key: str) -> JoinedTo:
    book.add_message(inquiry.id, result, key=key, source=source, role=Role.COPY)
    book.log(inquiry.id, BENDREPLY, "copy came in", source=source)
    return JoinedTo(inquiry.id, result, ())


def _earlier(book: Writer, inquiry: Inquiry, result: Result, source: str, key: str) -> JoinedTo:
    """The message that one of the inquiry's answers, come in after it. A person has to look: its
    sizes are not put into those that may have been corrected or approved since.
    """
    book.add_message(inquiry.id, result, key=key, source=source, role=Role.EARLIER)
    book.log(inquiry.id, BENDREPLY, "earlier message came in", source=source)
    return JoinedTo(
        inquiry.id,
        result,
        (
            f"inquiry {inquiry.id}: an earlier message of it came in only now; its sizes were not "
            f"taken over: look at {source}",
        ),
    )


def further(
    book: Writer,
    inquiry: Inquiry,
    found: Belongs,
    result: Result,
    source: str,
    reread: Reread,
    key: str,
) -> JoinedTo:
    """A customer's further message joined to what the inquiry asks for already."""
    doubtful = found.how is How.SUBJECT
    why = "taken from your earlier message with this subject" if doubtful else ""
    whole, changes = reread(result.message, conversation_of(inquiry, why))
    told = [f"inquiry {inquiry.id}: a further message of the customer was joined to it"]
    if doubtful:
        told[0] += ", by sender and subject only: look whether it belongs there"
        whole = whole.model_copy(
            update={"notes": (*whole.notes, "joined by sender and subject only: does it belong?")}
        )
    told += withdraw_approval(book, inquiry, BENDREPLY, "a further message came in")
    if inquiry.state is State.SET_ASIDE:
        told.append(f"inquiry {inquiry.id} was set aside, and waits again")
    if inquiry.state is State.DELIVERED:
        if whole.draft is not None:
            next_draft(book, inquiry, whole.draft, by=BENDREPLY)
        else:
            book.withdraw_drafts(inquiry.id)
        told.append(
            f"the draft of inquiry {inquiry.id} that was laid down does not know of it: don't "
            "send it as it is"
        )
    else:
        told += redraft(book, inquiry, whole.draft, replace_edited=True)
    row = book.add_message(inquiry.id, whole, key=key, source=source)
    book.judge_again(
        inquiry, whole, decision=in_short(whole), needed_by=earliest(whole.assessments)
    )
    book.log(
        inquiry.id,
        BENDREPLY,
        "further message joined",
        source=source,
        how=found.how,
        was=inquiry.state,
        changes=[
            {
                "size": one.index + 1,
                "field": one.field,
                "before": as_text(one.before),
                "after": as_text(one.after),
            }
            for one in changes
        ],
        decision=in_short(whole),
        sizes=as_read(whole),
    )
    return JoinedTo(inquiry.id, whole, tuple(told), row)


def conversation_of(inquiry: Inquiry, why_doubtful: str = "") -> Conversation:
    """An inquiry as the reading of a further message needs it."""
    return Conversation(
        requests=placed(
            tuple(one.request for one in inquiry.assessments), inquiry.message.message_id
        ),
        messages=(*inquiry.earlier, inquiry.message),
        questions=inquiry.questions,
        asked=asked_of(inquiry.assessments),
        answered=inquiry.state in (State.DELIVERED, State.ANSWERED),
        why_doubtful=why_doubtful,
    )


def recalled(book: Writer, result: Result, reread: Reread) -> Result:
    """The result for 'same as last time': the sender's last sizes, each put for a yes.

    As it is where the message says no such thing, gives its own OD, or nothing earlier is known.
    """
    came = result.message
    if result.kind is not Kind.SIZES or not came.sender.address or came.channel != "email":
        return result
    if any(one.request.od_mm is not None for one in result.assessments):
        return result
    if not as_before(mask(came).text):
        return result
    for number, earlier in book.lately_from(came.sender.address):
        inquiry = the_inquiry(book, number)
        sizes = tuple(
            one.request.model_copy(update={"quantity": None, "needed_by": None})
            for one in inquiry.assessments
            if one.request.od_mm is not None
        )
        if not sizes or earlier.reply_addresses != came.reply_addresses:
            continue
        day = (inquiry.message.received_at or inquiry.created_at).date()
        why = f"taken from your request of {day.day} {day:%B %Y}, as you asked for the same again"
        before = Conversation(
            requests=placed(sizes, inquiry.message.message_id), why_doubtful=why, recalled=True
        )
        again, _ = reread(came, before)
        note = f"sizes taken from inquiry {number}: {one_line(inquiry.message.subject, 60)}"
        return again.model_copy(update={"notes": (*again.notes, note)})
    return result
