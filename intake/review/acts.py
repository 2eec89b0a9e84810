"""What a submitted form does to an inquiry: readings put right, the draft reworded, approved.

One form holds all of an inquiry's fields and its draft, so that nothing typed is lost whichever
button is pressed, also without JavaScript. Nothing that a person has written is replaced before
they were asked, and nobody approves a draft that they have not seen.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from ...rules.request import SizeRequest
from .. import desk
from ..desk_common import as_expected
from ..desk_errors import ChangedMeanwhileError, DeskError, EditedDraftError
from ..desk_fields import Value
from ..desk_pictures import KINDS
from ..inquiry import Inquiry
from ..pipeline import process_again
from ..templates import BadTemplate
from .offers import offers_of, put_in, take_out
from .typed import Changes, NoSuchReading, settled, typed_changes

if TYPE_CHECKING:
    from ...rules.shop import Shop
    from ..store import Store
    from ..templates import Templates

KEEP, REPLACE = "keep", "replace"
"""What to do with a person's wording once a reading has changed."""
LOOK_FIRST = (
    "A reading was changed, so nothing was approved yet: look at the draft as it is now, then "
    "approve it."
)


@dataclass(frozen=True, slots=True)
class Outcome:
    """What became of a form."""

    told: tuple[str, ...] = ()
    refused: str = ""
    """Why nothing (more) was done; empty where all went well."""
    wrong: Mapping[str, str] = field(default_factory=dict)
    """Field of the form to what is wrong with it."""
    asks: bool = False
    """Whether a person's wording would be replaced: they have to say what becomes of it."""
    meanwhile: bool = False
    """Whether somebody else was first."""
    approved: bool = False
    set_aside: bool = False

    @property
    def status(self) -> int:
        """For the answer that shows the page again; 0: all done, the browser is sent on."""
        if self.meanwhile or self.asks:
            return 409
        return 422 if self.refused or self.wrong else 0


@dataclass(frozen=True, slots=True)
class Worker:
    """Who does what with which store, by whose rules and wording."""

    store: Store
    shop: Shop
    templates: Templates

    def work(self, number: int, form: Mapping[str, str], name: str) -> Outcome:
        """Do what the form asks for. Raises UnknownInquiryError."""
        inquiry = desk.show(self.store, number)
        one = _Work(self, inquiry, form, name)
        try:
            with self.store.reading() as book:
                as_expected(book, inquiry, one.version)
            return one.done()
        except ChangedMeanwhileError as error:
            return Outcome(tuple(one.told), refused=str(error), meanwhile=True)
        except (DeskError, NoSuchReading, BadTemplate) as error:
            return Outcome(tuple(one.told), refused=str(error))

    def set_aside(self, number: int, form: Mapping[str, str], name: str) -> Outcome:
        """Put an inquiry away with its reason. Raises UnknownInquiryError."""
        inquiry = desk.show(self.store, number)
        try:
            desk.set_aside(
                self.store,
                inquiry.id,
                name,
                form.get("why", ""),
                expected_version=_version(form, inquiry),
            )
        except ChangedMeanwhileError as error:
            return Outcome(refused=str(error), meanwhile=True)
        except DeskError as error:
            return Outcome(refused=str(error))
        return Outcome((f"Inquiry {inquiry.id} is set aside.",), set_aside=True)


class _Work:
    """One form on its way; ``version`` goes up with each change that was made."""

    def __init__(
        self, worker: Worker, inquiry: Inquiry, form: Mapping[str, str], name: str
    ) -> None:
        self._worker, self._form, self._name = worker, form, name
        self._inquiry = inquiry
        self._do = form.get("do", "")
        self._requests = [one.request for one in inquiry.assessments] or [SizeRequest()]
        self._subject, self._body = words_of(form, inquiry)
        self.version = _version(form, inquiry)
        self.told: list[str] = []

    def done(self) -> Outcome:
        typed = typed_changes(self._form, self._requests)
        if typed.wrong:
            return Outcome(refused="Some fields can't be read: see below.", wrong=typed.wrong)
        changes = typed.changes
        if button := self._form.get("settle"):
            for index, more in settled(button, self._requests).items():
                changes.setdefault(index, {}).update(more)
        if changes:
            return self._corrected(changes)
        self._offer()
        if self._reworded():
            self._edit()
        if self._do == "approve":
            return self._approved()
        return Outcome(tuple(self.told or ["Nothing was changed."]))

    def _corrected(self, changes: Changes) -> Outcome:
        over = self._form.get("over")
        if self._reworded() and over not in (KEEP, REPLACE):
            return Outcome(asks=True)
        try:
            for index, fields in sorted(changes.items()):
                self._correct(index, fields, replace=over in (KEEP, REPLACE))
        except EditedDraftError:
            return Outcome(tuple(self.told), asks=True)
        if over == KEEP and self._body.strip():
            self._edit()
        if self._do == "approve":
            self.told.append(LOOK_FIRST)
        return Outcome(tuple(self.told))

    def _correct(self, index: int, fields: Mapping[str, Value], *, replace: bool) -> None:
        worker, earlier = self._worker, self._inquiry.earlier
        changed = desk.correct(
            worker.store,
            self._inquiry.id,
            fields,
            index,
            lambda message, requests: process_again(
                message, requests, worker.shop, worker.templates, earlier
            ),
            self._name,
            replace_edited=replace,
            expected_version=self.version,
        )
        self.version = changed.inquiry.version
        self.told += map(_sentence, changed.told)
        if changed.corrections:
            self.told.append("Judged and drafted anew.")

    def _reworded(self) -> bool:
        old = self._inquiry.draft
        if old is None:
            return bool(self._body.strip())
        return (old.subject, old.body) != (self._subject, self._body)

    def _edit(self) -> None:
        changed = desk.edit_draft(
            self._worker.store,
            self._inquiry.id,
            self._body,
            self._name,
            subject=self._subject or None,
            expected_version=self.version,
        )
        self.version = changed.inquiry.version
        self.told += map(_sentence, changed.told)
        self.told.append("The draft is kept in your words.")

    def _offer(self) -> None:
        """An alternative into the draft, or out of it."""
        doing, _, place = self._do.partition(":")
        if doing not in ("offer", "drop"):
            return
        size, _, which = place.partition("-")
        offers = [offers_of(one, self._worker.shop) for one in self._inquiry.assessments]
        if not (size.isdecimal() and which.isdecimal() and 1 <= int(size) <= len(offers)):
            return
        beside = offers[int(size) - 1]
        if not 1 <= int(which) <= len(beside):
            return
        offer = beside[int(which) - 1]
        signature = self._worker.shop.signature
        self._body = (
            put_in(self._body, offer, beside, signature)
            if doing == "offer"
            else take_out(self._body, offer, beside)
        )

    def _approved(self) -> Outcome:
        shop = self._worker.shop
        done = desk.approve(
            self._worker.store,
            self._inquiry.id,
            self._name,
            people=shop.people,
            shop_address=shop.reply_address or "",
            expected_version=self.version,
            picture=next((kind for kind in KINDS if kind == self._form.get("picture")), None),
        )
        told = f"Draft {done.draft_number} of inquiry {done.inquiry} is approved by {self._name}."
        return Outcome((*self.told, told), approved=True)


def words_of(form: Mapping[str, str], inquiry: Inquiry) -> tuple[str, str]:
    """Subject and body of the draft as the form has them; browsers end lines with CRLF."""
    draft = inquiry.draft
    old = draft.subject if draft else ""
    # An emptied subject is none to reply under: the one that stood there stays.
    subject = form.get("subject", old).strip() or old
    body = form.get("body", draft.body if draft else "")
    return subject, body.replace("\r\n", "\n").replace("\r", "\n")


def _version(form: Mapping[str, str], inquiry: Inquiry) -> int:
    """The version that the person looked at. A form without one was not made by our page."""
    told = form.get("version", "")
    return int(told) if told.isdecimal() and len(told) < 10 else -inquiry.version


def _sentence(text: str) -> str:
    return f"{text[:1].upper()}{text[1:].rstrip('.')}."
