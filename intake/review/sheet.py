"""One inquiry as its page shows it: words, sizes, reasons, draft, history."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import TYPE_CHECKING

from ...rules.request import SizeRequest
from ..cli_common import printable
from ..inquiry import Inquiry, Role, State
from ..screen import one_line
from ..screen_desk import goes_to, stands
from ..screen_history import details
from .drawn import BEND
from .marked import Marked, marked
from .sheet_size import FormState, SizeView, size_view
from .typed import key

if TYPE_CHECKING:
    from ...rules.shop import Shop
    from ..inquiry import Event, StoredDraft

EDITABLE = frozenset((State.WAITING, State.APPROVED, State.SET_ASIDE, State.NO_REPLY))
"""Where a person can still change something: what was delivered is in the mail program."""


@dataclass(frozen=True, slots=True)
class DraftView:
    """The words of the reply, as they stand or as they were typed."""

    subject: str
    body: str
    told: str
    """Whose words these are."""
    exists: bool

    @property
    def rows(self) -> int:
        """Lines that the text takes, for the height of its box."""
        return max(8, sum(1 + len(line) // 88 for line in self.body.split("\n")) + 1)


@dataclass(frozen=True, slots=True)
class EarlierView:
    """A message of the same customer that came before."""

    head: str
    words: Marked


@dataclass(frozen=True, slots=True)
class FileView:
    """A file that came with the message: its name and what was read of it."""

    name: str
    told: str
    text: str


@dataclass(frozen=True, slots=True)
class Happened:
    """A line of the history."""

    at: str
    who: str
    what: str
    details: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Sheet:
    """All that the page of one inquiry shows."""

    number: int
    version: int
    title: str
    sender: str
    goes_to: str
    received: str
    needed_by: str
    stands: str
    kind: str
    waits: bool
    editable: bool
    words: Marked
    earlier: tuple[EarlierView, ...]
    files: tuple[FileView, ...]
    questions: tuple[tuple[str, str], ...]
    notes: tuple[str, ...]
    sizes: tuple[SizeView, ...]
    draft: DraftView
    picture: str | None
    """The kind of picture asked for beside the draft; None where none can be drawn."""
    older_drafts: tuple[DraftView, ...]
    history: tuple[Happened, ...]


def sheet_of(
    inquiry: Inquiry,
    events: tuple[Event, ...],
    shop: Shop,
    typed: Mapping[str, str] | None = None,
    wrong: Mapping[str, str] | None = None,
) -> Sheet:
    """The page of ``inquiry``. ``typed``: what stands in the form already, kept as it is."""
    message = inquiry.message
    typed = typed or {}
    form = FormState(typed, wrong or {}, _put_right(inquiry))
    draft = _draft(inquiry, typed)
    assessments, of = inquiry.assessments, (inquiry.id, inquiry.version)
    sizes: tuple[SizeView, ...]
    if assessments:
        sizes = tuple(
            size_view(one, one.request, number, shop, draft.body, form, of)
            for number, one in enumerate(assessments)
        )
    else:
        sizes = (size_view(None, SizeRequest(), 0, shop, draft.body, form, of),)
    address = f"<{message.sender.address}>" if message.sender.address else ""
    return Sheet(
        number=inquiry.id,
        version=inquiry.version,
        title=one_line(message.subject) or "(no subject)",
        sender=printable(f"{message.sender.name} {address}".strip()) or "unknown",
        goes_to=printable(goes_to(message, shop.reply_address or "")),
        received=when(message.received_at, shop) if message.received_at else "without a date",
        needed_by=f"{inquiry.needed_by:%-d %b %Y}" if inquiry.needed_by else "",
        stands=stands(inquiry),
        kind=printable(f"{inquiry.kind}: {inquiry.latest.why_kind}"),
        waits=inquiry.state is State.WAITING,
        editable=inquiry.state in EDITABLE,
        words=marked(message, assessments),
        earlier=tuple(_earlier(inquiry, shop)),
        files=tuple(_files(inquiry)),
        questions=tuple(
            (
                one_line(one.surface),
                f"answer “{one.answer}”" if one.answer else "no approved answer fits",
            )
            for one in inquiry.questions
        ),
        notes=tuple(printable(one) for one in inquiry.remarks),
        sizes=sizes,
        draft=draft,
        picture=typed.get("picture", "") if _can_show(sizes) else None,
        older_drafts=tuple(_stored(one) for one in reversed(inquiry.drafts) if one.withdrawn),
        history=tuple(_happened(events, inquiry, shop)),
    )


def _put_right(inquiry: Inquiry) -> dict[str, str]:
    """Field of the form to who put it right; the last to do so counts."""
    return {
        key(one.field, one.index): printable(f"put right by {one.by or 'somebody'}")
        for one in inquiry.corrections
    }


def _can_show(sizes: tuple[SizeView, ...]) -> bool:
    return any(one.name == BEND and one.address for size in sizes for one in size.pictures)


def when(moment: datetime, shop: Shop) -> str:
    """A moment by the shop's clocks."""
    return f"{moment.astimezone(shop.zone):%-d %b %Y, %H:%M}"


def _draft(inquiry: Inquiry, typed: Mapping[str, str]) -> DraftView:
    draft = inquiry.draft
    view = DraftView("", "", "", exists=False) if draft is None else _stored(draft)
    return DraftView(
        typed.get("subject", view.subject),
        typed.get("body", view.body).replace("\r\n", "\n"),
        view.told,
        view.exists,
    )


def _stored(draft: StoredDraft) -> DraftView:
    by = f"in the words of {draft.made_by}" if draft.edited else f"by {draft.made_by}"
    return DraftView(
        draft.subject, draft.body, printable(f"Draft {draft.number}, {by}"), exists=True
    )


def _earlier(inquiry: Inquiry, shop: Shop) -> Iterator[EarlierView]:
    latest = inquiry.latest
    for stored in reversed(inquiry.messages):
        if stored is latest or stored.role is Role.COPY:
            continue
        message = stored.message
        at = when(message.received_at or stored.taken_at, shop)
        who = message.sender.name or message.sender.address or "unknown"
        words = marked(message, inquiry.assessments, message.message_id)
        yield EarlierView(printable(f"{at}, {who}"), words)


def _files(inquiry: Inquiry) -> Iterator[FileView]:
    for one in inquiry.message.attachments:
        told = f"{one.content_type}, {max(1, one.size // 1024)} kB"
        if one.is_unread:
            told += f"; not read{': ' if one.why_unread else ''}{one.why_unread}"
        for remark in one.remarks:
            told += f"; {remark}"
        text = printable((one.text or "").replace("\f", "\n\n"))
        yield FileView(one_line(one.name) or "without a name", printable(told), text)


def _happened(events: tuple[Event, ...], inquiry: Inquiry, shop: Shop) -> Iterator[Happened]:
    for event in reversed(events):
        yield Happened(
            when(event.at, shop),
            printable(event.who),
            printable(event.what),
            tuple(printable(line) for line in details(event, inquiry)),
        )
