"""How the desk looks in a terminal: what waits, one line a message, and one inquiry in full."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date

from rich.console import Console

from ..rules.assessment import Assessment, Decision
from .cli_common import printable
from .inquiry import Inquiry, Row, State
from .model import Address, Kind, Result
from .screen import (
    ANSWERS,
    FIELD_WORDS,
    LEGEND,
    NO_SIZE_ANSWERS,
    draft_view,
    hanging,
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

    @classmethod
    def of_row(cls, row: Row) -> Line:
        """A line of the backlog."""
        return cls(
            row.id, row.sender, row.subject, row.kind, row.assessments, row.needed_by,
            "" if row.has_draft else "no draft: reply by hand",
        )  # fmt: skip

    @classmethod
    def of_result(cls, number: int, result: Result) -> Line:
        """A message just judged."""
        dates = [a.request.needed_by for a in result.assessments if a.request.needed_by]
        return cls(
            number, result.message.sender, result.message.subject, result.kind, result.assessments,
            min(dates, default=None), result.why_kind,
        )  # fmt: skip


def triage_table(out: Console, lines: Iterable[Line], *, title: str) -> None:
    """Who, what was asked for, the answer in words, and why or what to settle first."""
    rows = table("", "who", "asked for", "answer", "why, or what to settle", title=title)
    rows.show_lines = False
    rows.columns[0].justify = "right"
    rows.columns[2].no_wrap = True
    rows.columns[3].no_wrap = True
    rows.columns[1].max_width = 18
    for line in lines:
        person = printable(line.sender.name or line.sender.address or "unknown")
        if line.needed_by:
            person += f"\nby {line.needed_by:%d %b}"
        if not line.assessments:
            subject = one_line(line.subject) or "(no subject)"
            rows.add_row(
                str(line.number),
                person,
                said(subject if len(subject) <= 26 else subject[:25] + "…"),
                NO_SIZE_ANSWERS.get(line.kind, "by hand"),
                printable(line.why_kind),
            )
            continue
        for index, assessment in enumerate(line.assessments[:MOST_SIZES]):
            rows.add_row(
                "" if index else str(line.number),
                "" if index else person,
                f"{size(assessment.request)}\n{material(assessment.request)}",
                ANSWERS[assessment.decision],
                short_reason(assessment),
            )
        if (more := len(line.assessments) - MOST_SIZES) > 0:
            rows.add_row("", "", f"and {more} more", "", f"see `bendreply show {line.number}`")
    out.print(rows)
    out.print(LEGEND, style="dim")


def short_reason(assessment: Assessment) -> str:
    """Why in a few words: the limit that is broken, what is to be asked, the part on the shelf."""
    request = assessment.request
    words: list[str] = []
    match assessment.decision:
        case Decision.DECLINE:
            for f in assessment.findings:
                if f.effect == "declines":
                    name = LIMIT_WORDS.get(f.rule)
                    words.append(
                        f"{name} {ratio(f.measured)}, limit {ratio(f.limit)}"
                        if name
                        else printable(f.text)
                    )
        case Decision.ASK:
            for f in assessment.findings:
                if f.effect == "asks":
                    doubt = request.doubt_on(f.field) if f.field else None
                    field = FIELD_WORDS.get(f.field or "", f.field or "")
                    if doubt and len(doubt.readings) > 1:
                        readings = " or ".join(short_reading(r, request) for r in doubt.readings)
                        words.append(f"{field} {readings}?")
                    elif doubt:
                        words.append(f"{field}: {printable(doubt.why)}?")
                    else:
                        words.append(f"{field} not given" if field in _missing(assessment) else
                                     printable(f.text))  # fmt: skip
        case Decision.STOCK if assessment.stock:
            words.append(f"{assessment.stock.part}, {assessment.stock.on_hand} on hand")
        case _:
            short = [f.text for f in assessment.findings if f.rule == "enough-on-hand"]
            words += map(printable, short or ["nothing on the shelf fits"])
    if assessment.decision is not Decision.ASK:
        words += (
            f"to confirm: {FIELD_WORDS.get(d.field, d.field.replace('_', ' '))}"
            for d in request.doubts
        )
    return "; ".join(dict.fromkeys(words))


def _missing(assessment: Assessment) -> set[str]:
    return {FIELD_WORDS.get(field, field) for field in assessment.request.missing}


def inquiry_view(out: Console, inquiry: Inquiry) -> None:
    """One inquiry in full: who and when, what was read, decided, drafted, and said of it."""
    message = inquiry.message
    out.print(said(f"Inquiry {inquiry.id}: {one_line(message.subject) or '(no subject)'}"),
              style="bold")  # fmt: skip
    address = f" <{message.sender.address}>" if message.sender.address else ""
    out.print(hanging("from", printable(f"{message.sender.name}{address}".strip() or "unknown")))
    if message.received_at:
        out.print(hanging("received", f"{message.received_at:%Y-%m-%d %H:%M} UTC"))
    out.print(hanging("stands", _state(inquiry)))
    latest = inquiry.messages[-1]
    out.print(hanging("kind", printable(f"{inquiry.kind}: {latest.why_kind}")))
    for number, assessment in enumerate(inquiry.assessments, start=1):
        out.print()
        if len(inquiry.assessments) > 1:
            out.print(f"Size {number} of {len(inquiry.assessments)}", style="bold")
        request_view(out, assessment)
    remarks(out, inquiry.questions, (*message.faults, *inquiry.notes))
    for c in inquiry.corrections:
        by = f" by {c.by}" if c.by else ""
        change = f"size {c.index + 1} {c.field}: {c.before or '–'} to {c.after or '–'}{by}"
        out.print(hanging("correction", printable(change)))
    out.print()
    out.rule("their words", style="dim", align="left")
    out.print(said(message.body.rstrip()), soft_wrap=True)
    if inquiry.draft:
        draft_view(out, inquiry.draft.subject, inquiry.draft.body)
    else:
        out.rule(style="dim")


def _state(inquiry: Inquiry) -> str:
    if inquiry.state is State.WAITING:
        return "waits for a person"
    last = inquiry.words[-1] if inquiry.words else None
    if last is None:
        return str(inquiry.state)
    why = f": {last.why}" if last.why else ""
    by = f" by {last.by}, {last.at:%Y-%m-%d %H:%M} UTC{why}"
    delivered = ", draft delivered" if inquiry.state is State.DELIVERED else ""
    return printable(f"{last.said}{by}{delivered}")
