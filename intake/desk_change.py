"""A person's hand on an inquiry: a reading put right, a draft reworded.

Neither passes over what a person has said in silence: an approval is withdrawn and an edited draft
replaced only with a sentence that says so, and what was delivered is not touched any more.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING

from ..rules.request import SizeRequest
from .addressing import reply_subject
from .desk_common import a_name, as_expected, earliest, in_short, the_inquiry
from .desk_drafts import next_draft, redraft, withdraw_approval
from .desk_errors import AlreadyDeliveredError, BadCorrectionError, NoDraftError
from .desk_fields import ATTRIBUTES, Value, as_text, corrected, refuse_past
from .inquiry import BENDREPLY, Correction, Inquiry, State
from .model import Draft, Message, Result
from .tally import notation_of

if TYPE_CHECKING:
    from .store import Store

Rejudge = Callable[[Message, tuple[SizeRequest, ...]], Result]
"""Judges and words anew what a message asks for, given its sizes as a person has put them right."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Changed:
    """An inquiry after a person's change, and what else that meant."""

    inquiry: Inquiry
    corrections: tuple[Correction, ...] = ()
    told: tuple[str, ...] = ()
    """Sentences for the person: an approval withdrawn, an edited draft replaced."""


def correct(
    store: Store,
    id: int | str,
    changes: Mapping[str, Value],
    index: int,
    rejudge: Rejudge,
    by: str | None,
    *,
    replace_edited: bool = True,
    expected_version: int | None = None,
) -> Changed:
    """Put fields of size ``index`` (from 0) right, then decide and draft again.

    Settles the doubt on a field even where its value stays. With ``replace_edited=False`` a draft
    in a person's own words is refused (EditedDraftError) instead of being replaced. Where nothing
    was read, index 0 makes the first size. Raises BadCorrectionError for a field, size or value
    that can't be.
    """
    name = None if by is None else a_name(by, "correcting")
    with store.writing() as book:
        inquiry = the_inquiry(book, id, to_change=True)
        as_expected(book, inquiry, expected_version)
        _refuse_delivered(inquiry, "corrected")
        requests = [one.request for one in inquiry.assessments] or [SizeRequest()]
        if not 0 <= index < len(requests):
            sizes = "1 size" if len(requests) == 1 else f"{len(requests)} sizes"
            raise BadCorrectionError(
                f"inquiry {inquiry.id} has {sizes}: there is no size {index + 1}"
            )
        before, after = requests[index], corrected(requests[index], changes)
        refuse_past(inquiry, changes)
        if after == before:
            fields = " and ".join(changes) or "nothing"
            return Changed(
                inquiry=inquiry,
                told=(f"inquiry {inquiry.id} says so already ({fields}): nothing was changed",),
            )
        requests[index] = after
        result = rejudge(inquiry.message, tuple(requests))
        told = withdraw_approval(book, inquiry, name or BENDREPLY, "a reading was corrected")
        told += redraft(book, inquiry, result.draft, replace_edited=replace_edited)
        made = tuple(
            Correction(
                index=index,
                field=field,
                before=as_text(getattr(before, ATTRIBUTES[field])),
                after=as_text(getattr(after, ATTRIBUTES[field])),
                by=name,
                at=book.now,
                notation=notation_of(
                    next((one for one in before.evidence if one.field == field), None)
                ),
            )
            for field in changes
        )
        for one in made:
            book.add_correction(inquiry.id, one)
        decision = in_short(result)
        book.judge_again(inquiry, result, decision=decision, needed_by=earliest(result.assessments))
        book.log(
            inquiry.id,
            name or "somebody",
            "corrected",
            size=index + 1,
            changes={one.field: [one.before, one.after] for one in made},
            decision=decision,
        )
        return Changed(inquiry=the_inquiry(book, inquiry.id), corrections=made, told=told)


def edit_draft(
    store: Store,
    id: int | str,
    body: str,
    by: str,
    *,
    subject: str | None = None,
    expected_version: int | None = None,
) -> Changed:
    """A person's own wording of the reply; also the first one, where nothing was drafted."""
    name = a_name(by, "editing a draft")
    if not body.strip():
        raise NoDraftError("a draft needs words: to send no reply, set the inquiry aside")
    with store.writing() as book:
        inquiry = the_inquiry(book, id, to_change=True)
        as_expected(book, inquiry, expected_version)
        _refuse_delivered(inquiry, "reworded")
        old = inquiry.draft
        if subject is None:
            subject = old.subject if old else reply_subject(inquiry.message.subject)
        if old is not None and (old.subject, old.body) == (subject, body):
            return Changed(
                inquiry=inquiry,
                told=(f"the draft of inquiry {inquiry.id} says so already: nothing was changed",),
            )
        told = withdraw_approval(book, inquiry, name, "the draft was edited")
        words = Draft(
            subject=subject,
            body=body,
            template=old.template if old else "",
            answers=old.answers if old else (),
        )
        number = next_draft(book, inquiry, words, by=name)
        book.move(inquiry, State.WAITING)
        book.log(inquiry.id, name, "draft edited", draft=number)
        return Changed(inquiry=the_inquiry(book, inquiry.id), told=told)


def _refuse_delivered(inquiry: Inquiry, doing: str) -> None:
    if inquiry.state is State.ANSWERED:
        raise AlreadyDeliveredError(
            f"inquiry {inquiry.id} is answered and can't be {doing} any more: the reply lies in "
            "the Sent folder"
        )
    if inquiry.state is State.DELIVERED:
        raise AlreadyDeliveredError(
            f"the draft of inquiry {inquiry.id} has been delivered and can't be {doing} any more: "
            "change it in your mail program"
        )
