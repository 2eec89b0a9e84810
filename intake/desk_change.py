"""A person's hand on an inquiry: a reading put right, a draft reworded.

Neither passes over what a person has said in silence: an approval is withdrawn and an edited draft
replaced only with a sentence that says so, and what was delivered is not touched any more.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import date, timedelta
from decimal import Decimal
from enum import Enum
from typing import TYPE_CHECKING, Any, get_args

from pydantic import ValidationError

from ..rules.request import LENGTH_FIELDS, FieldName, SizeRequest
from .addressing import reply_subject
from .desk_common import a_name, as_seen, earliest, in_short, the_inquiry, when
from .desk_errors import (
    AlreadyDeliveredError,
    BadCorrectionError,
    EditedDraftError,
    NoDraftError,
)
from .inquiry import BENDREPLY, Correction, Inquiry, Said, State, StoredDraft, Word
from .model import Draft, Message, Result

if TYPE_CHECKING:
    from .store import Store
    from .store_writer import Writer

Rejudge = Callable[[Message, tuple[SizeRequest, ...]], Result]
"""Judges and words anew what a message asks for, given its sizes as a person has put them right."""

Value = Decimal | str | int | date | None
"""A corrected value: lengths in mm; None for 'not given'."""

MOST_MANDRELS = 999
"""More of one size is a slip of the finger (common practice, no source)."""

_ATTRIBUTES = {f: f"{f}_mm" if f in LENGTH_FIELDS else f for f in (*get_args(FieldName), "grade")}


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
    seen: int | None = None,
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
        _refuse_delivered(inquiry, "corrected")
        as_seen(inquiry, seen)
        requests = [one.request for one in inquiry.assessments] or [SizeRequest()]
        if not 0 <= index < len(requests):
            sizes = "1 size" if len(requests) == 1 else f"{len(requests)} sizes"
            raise BadCorrectionError(
                f"inquiry {inquiry.id} has {sizes}: there is no size {index + 1}"
            )
        before, after = requests[index], corrected(requests[index], changes)
        _refuse_past(inquiry, changes)
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
                before=as_text(getattr(before, _ATTRIBUTES[field])),
                after=as_text(getattr(after, _ATTRIBUTES[field])),
                by=name,
                at=book.now,
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
    seen: int | None = None,
) -> Changed:
    """A person's own wording of the reply; also the first one, where nothing was drafted."""
    name = a_name(by, "editing a draft")
    if not body.strip():
        raise NoDraftError("a draft needs words: to send no reply, set the inquiry aside")
    with store.writing() as book:
        inquiry = the_inquiry(book, id, to_change=True)
        _refuse_delivered(inquiry, "reworded")
        as_seen(inquiry, seen)
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


def corrected(request: SizeRequest, changes: Mapping[str, Value]) -> SizeRequest:
    """The request with fields put right: no doubt is left on them, and no words of the customer
    stand for them any more. Raises BadCorrectionError.
    """
    updates: dict[str, Any] = {}
    for field, value in changes.items():
        if field not in _ATTRIBUTES:
            raise BadCorrectionError(
                f"there is no field {field!r}: the fields are {', '.join(_ATTRIBUTES)}"
            )
        updates[_ATTRIBUTES[field]] = value
    try:
        checked = SizeRequest(**updates)
    except ValidationError as error:
        first = error.errors()[0]
        where = str(first["loc"][0]).removesuffix("_mm")
        raise BadCorrectionError(
            f"{where} can't be {changes.get(where)!s}: {first['msg'].lower()}"
        ) from error
    for field in LENGTH_FIELDS:
        length = checked.length_mm(field)
        if field in changes and length is not None:
            if length <= 0:
                raise BadCorrectionError(
                    f"{field} can't be {length:f} mm: it has to be more than 0"
                )
            updates[f"{field}_mm"] = length.normalize()  # 44.450 and 44.45 are one size
    clean = {key: updates[key] if key.endswith("_mm") else getattr(checked, key) for key in updates}
    if any(f"{f}_mm" in clean and clean[f"{f}_mm"] != request.length_mm(f) for f in ("od", "wall")):
        clean["nominal_pipe"] = None  # it is not the pipe any more that the customer named
    clean["doubts"] = tuple(one for one in request.doubts if one.field not in changes)
    clean["evidence"] = tuple(
        one
        for one in request.evidence
        if one.field not in changes
        or clean[_ATTRIBUTES[one.field]] == getattr(request, _ATTRIBUTES[one.field])
    )
    after = request.model_copy(update=clean)
    _refuse_impossible(after, changes)
    return after


def _refuse_impossible(request: SizeRequest, changes: Mapping[str, Value]) -> None:
    """Refuse figures that make no tube or bend, where one of them was just put in."""
    od, wall, clr, count = request.od_mm, request.wall_mm, request.clr_mm, request.quantity
    if od is not None and wall is not None and {"od", "wall"} & changes.keys() and wall * 2 >= od:
        than = "half of" if wall * 2 == od else "more than half of"
        raise BadCorrectionError(
            f"that wall and OD make no tube: {wall:f} mm is {than} the OD {od:f} mm"
        )
    if od is not None and clr is not None and {"od", "clr"} & changes.keys() and clr * 2 < od:
        raise BadCorrectionError(
            f"that CLR and OD make no bend: {clr:f} mm is less than half of the OD {od:f} mm"
        )
    if "quantity" in changes and count is not None and not 1 <= count <= MOST_MANDRELS:
        raise BadCorrectionError(f"quantity can't be {count}: it has to be 1 to {MOST_MANDRELS}")


def _refuse_past(inquiry: Inquiry, changes: Mapping[str, Value]) -> None:
    needed = changes.get("needed_by")
    asked = inquiry.message.received_at or inquiry.created_at
    # A day's grace: the customer's day can be another than the day in UTC.
    if isinstance(needed, date) and needed < asked.date() - timedelta(days=1):
        raise BadCorrectionError(
            f"needed_by can't be {needed.isoformat()}: the message came on {asked:%Y-%m-%d}"
        )


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


def as_text(value: object) -> str | None:
    """A field's value as the store keeps it in corrections and history: lengths in mm."""
    match value:
        case None:
            return None
        case Decimal():
            return f"{value:f}"
        case Enum():
            return str(value.value)
        case date():
            return value.isoformat()
    return str(value)
