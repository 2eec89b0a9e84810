"""How the desk looks in a terminal: what waits, one line a message, and one inquiry in full."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date

from rich.console import Console

from ..rules.assessment import Assessment, Decision, Finding
from ..rules.request import SizeRequest
from .cli_common import printable
from .desk_change import Changed
from .inquiry import Asking, Correction, Inquiry, Reply, Row, State
from .letter import Mailbox, recipients
from .model import Address, Kind, Message
from .screen import (
    ANSWERS,
    FIELD_WORDS,
    LEGEND,
    NO_SIZE_ANSWERS,
    draft_view,
    hanging,
    letter,
    material,
    one_line,
    ratio,
    remarks,
    request_view,
    said,
    short_reading,
    size,
    table,
)
from .screen_history import change

WIDE = 110
"""Columns from which on a table can be wide."""
SUBJECT_SHOWN = 26
NOTE_SHOWN = 80
MOST_SIZES = 4
"""Sizes of one message that a line of the triage table names; `show` has all."""
LIMIT_WORDS = {"wall-factor-limit": "wall factor", "d-of-bend-limit": "D of bend"}


@dataclass(frozen=True, slots=True)
class Line:
    """One message in the triage table."""

    number: int
    sender: Address
    subject: str
    kind: Kind
    assessments: tuple[Assessment, ...]
    needed_by: date | None = None
    why_kind: str = ""
    """What is said of a message without sizes."""
    notes: tuple[str, ...] = ()
    """What a person should look at besides: a file that was not read."""

    @classmethod
    def of_row(cls, row: Row) -> Line:
        """A line of the backlog."""
        return cls(
            row.id, row.sender, row.subject, row.kind, row.assessments, row.needed_by,
            "no draft yet" if row.kind is Kind.QUESTION and not row.has_draft else row.why_kind,
            row.notes,
        )  # fmt: skip

    @classmethod
    def of_asking(cls, asking: Asking, inquiry: Inquiry) -> Line:
        """An inquiry as the report has it, and as `show` has it."""
        first = inquiry.messages[0]
        dates = [a.request.needed_by for a in asking.assessments if a.request.needed_by]
        return cls(
            asking.id,
            asking.sender,
            first.message.subject,
            asking.kind,
            asking.assessments,
            min(dates, default=None),
            first.why_kind,
            inquiry.remarks,
        )


def triage_table(out: Console, lines: Iterable[Line], *, title: str) -> None:
    """Who, what was asked for, the answer in words, and why or what to settle first.

    On a wide screen the material has a column of its own, and a size one line.
    """
    wide = out.width >= WIDE
    heads = ["", "who", "asked for", *(["material"] if wide else []), "answer"]
    rows = table(*heads, "why, or what to settle", title=title)
    rows.columns[0].justify = "right"
    rows.columns[1].max_width = 20 if wide else 16
    rows.columns[2].no_wrap = rows.columns[-2].no_wrap = True
    for line in lines:
        person = printable(line.sender.name or line.sender.address or "unknown")
        if line.needed_by:
            person += f"\nby {line.needed_by:%d %b}"
        sizes = line.assessments[:MOST_SIZES]
        for index, assessment in enumerate(sizes):
            asked, tube = size(assessment.request), material(assessment.request)
            rows.add_row(
                "" if index else str(line.number),
                "" if index else person,
                *([asked, tube] if wide else [f"{asked}\n{tube}"]),
                ANSWERS[assessment.decision],
                short_reason(assessment),
            )
        if not sizes:
            rows.add_row(
                str(line.number),
                person,
                shorten(one_line(line.subject), SUBJECT_SHOWN) or "(no subject)",
                *([""] if wide else []),
                NO_SIZE_ANSWERS.get(line.kind, "by hand"),
                printable(line.why_kind),
            )
        if line.notes:
            more_notes = f" (and {len(line.notes) - 1} more)" if len(line.notes) > 1 else ""
            note = shorten(one_line(line.notes[0]), NOTE_SHOWN) + more_notes
            rows.add_row("", "", "", *([""] if wide else []), "", f"note: {note}")
        if (more := len(line.assessments) - MOST_SIZES) > 0:
            see = f"`bendreply show {line.number}`"
            rows.add_row("", "", f"and {more} more", *([""] if wide else []), "", see)
    out.print(rows)
    out.print(LEGEND, style="dim")


def shorten(text: str, most: int) -> str:
    """At most so many characters, cut with an ellipsis."""
    return text if len(text) <= most else f"{text[: most - 1]}…"


def short_reason(assessment: Assessment) -> str:
    """Why in a few words: the limit that is broken, what is to be asked, the part on the shelf."""
    words: list[str] = []
    match assessment.decision:
        case Decision.DECLINE:
            words += (_broken(f) for f in assessment.findings if f.effect == "declines")
        case Decision.ASK:
            words += (
                _open(f, assessment.request) for f in assessment.findings if f.effect == "asks"
            )
        case Decision.STOCK if assessment.stock:
            words.append(f"{assessment.stock.part}, {assessment.stock.on_hand} on hand")
        case _:
            too_few = [f.text for f in assessment.findings if f.rule == "enough-on-hand"]
            words += too_few or ["none on hand fits"]
    if assessment.decision is not Decision.ASK:
        words += (f"confirm {_field(doubt.field)}" for doubt in assessment.request.doubts)
    return printable("; ".join(dict.fromkeys(words)))


def _broken(finding: Finding) -> str:
    name = LIMIT_WORDS.get(finding.rule)
    if name is None:
        return finding.text
    return f"{name} {ratio(finding.measured)}, limit {ratio(finding.limit)}"


def _open(finding: Finding, request: SizeRequest) -> str:
    """What has to be settled, as short as can be."""
    field = finding.field
    if field is None:
        return finding.text
    if doubt := request.doubt_on(field):
        if len(doubt.readings) < 2:
            return f"{_field(field)}: {doubt.why}"
        readings = " or ".join(short_reading(r, request) for r in doubt.readings)
        return f"{_field(field)} {readings}?"
    if field in request.missing:
        return f"{_field(field)} not given"
    return f"{request.shape} tube" if field == "shape" else finding.text


def _field(name: str) -> str:
    return FIELD_WORDS.get(name, name.replace("_", " "))


def inquiry_view(out: Console, inquiry: Inquiry, shop_address: str = "") -> None:
    """One inquiry in full: who and when, what was read, decided, drafted, and said of it."""
    message = inquiry.message
    out.print(said(f"Inquiry {inquiry.id}: {one_line(message.subject) or '(no subject)'}"),
              style="bold")  # fmt: skip
    address = f" <{message.sender.address}>" if message.sender.address else ""
    out.print(hanging("from", printable(f"{message.sender.name}{address}".strip() or "unknown")))
    out.print(hanging("to", printable(goes_to(message, shop_address))))
    if message.received_at:
        out.print(hanging("received", f"{message.received_at:%Y-%m-%d %H:%M} UTC"))
    out.print(hanging("stands", stands(inquiry)))
    latest = inquiry.latest
    out.print(hanging("kind", printable(f"{inquiry.kind}: {latest.why_kind}")))
    for number, assessment in enumerate(inquiry.assessments, start=1):
        out.print()
        if len(inquiry.assessments) > 1:
            out.print(f"Size {number} of {len(inquiry.assessments)}", style="bold")
        request_view(out, assessment)
    remarks(out, inquiry.questions, inquiry.remarks)
    for c in inquiry.corrections:
        by = f" by {c.by}" if c.by else ""
        out.print(hanging("corrected", printable(f"size {c.index + 1} {_change(c, inquiry)}{by}")))
    out.print()
    out.rule("their words", style="dim", align="left")
    letter(out, message.body.rstrip())
    if inquiry.draft:
        draft_view(out, inquiry.draft.subject, inquiry.draft.body)
    else:
        out.rule(style="dim")


def goes_to(message: Message, shop_address: str) -> str:
    """Where the reply goes."""
    if message.channel == "chat":
        return "the chat that it came from: the draft is text to paste"
    boxes = recipients(message, Mailbox("", shop_address))
    return ", ".join(map(str, boxes)) or "nobody: the message has no address to reply to"


def stands(inquiry: Inquiry) -> str:
    """Where an inquiry stands, by whose word and since when."""
    if inquiry.state is State.WAITING:
        return "waits for a person"
    if inquiry.state is State.ANSWERED and inquiry.replies:
        return printable(answered(inquiry.replies[-1]))
    last = inquiry.words[-1] if inquiry.words else None
    if last is None:
        return str(inquiry.state)
    why = f": {last.why}" if last.why else ""
    by = f" by {last.by}, {last.at:%Y-%m-%d %H:%M} UTC{why}"
    delivered = ", draft delivered" if inquiry.state is State.DELIVERED else ""
    return printable(f"{last.said}{by}{delivered}")


def answered(reply: Reply) -> str:
    """When a reply was sent, how soon, and how far it is from the draft."""
    words = ["answered"]
    if reply.sent_at is not None:
        words.append(f"{reply.sent_at:%Y-%m-%d %H:%M} UTC")
    if reply.after is not None:
        hours, minutes = divmod(int(reply.after.total_seconds()) // 60, 60)
        words.append(f"after {hours} h {minutes} min")
    if reply.likeness is not None:
        words.append(f"{reply.likeness:.0%} of the words as drafted")
    return ", ".join(words)


def correction_view(out: Console, changed: Changed, index: int) -> None:
    """What a correction changed, and how the size is judged now."""
    for sentence in changed.told:
        out.print(printable(sentence))
    for c in changed.corrections:
        out.print(hanging("corrected", printable(_change(c, changed.inquiry))))
    if changed.corrections:
        request_view(out, changed.inquiry.assessments[index])
        out.print(f"`bendreply show {changed.inquiry.id}` has the new draft")


def _change(made: Correction, inquiry: Inquiry) -> str:
    unit = inquiry.assessments[made.index].request.written_in
    return change(made.field, made.before, made.after, unit)
