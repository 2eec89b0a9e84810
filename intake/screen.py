"""How results look in a terminal: wording and tables, legible at 80 columns."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from decimal import Decimal
from typing import Literal

from rich import box
from rich.console import Console
from rich.padding import Padding
from rich.table import Table
from rich.text import Text

from ..rules.assessment import Assessment, Decision
from ..rules.checks import ratio_text
from ..rules.request import LENGTH_FIELDS, FieldName, SizeRequest
from ..rules.units import both_units, converted_in, format_in, format_mm
from .cli_common import printable
from .model import Kind, Message, Question, Result

Unit = Literal["in", "mm"]

ANSWERS = {
    Decision.STOCK: "from stock",
    Decision.CUSTOM_MAKE: "custom make",
    Decision.DECLINE: "decline",
    Decision.ASK: "ask first",
}
"""What a decision is called on screen."""

NO_SIZE_ANSWERS = {
    Kind.QUESTION: "answer",
    Kind.OTHER: "by hand",
    Kind.AUTOMATIC: "no reply",
}
"""What is done with a message that asks for no size."""

FIELD_WORDS = {"od": "OD", "wall": "wall", "clr": "CLR"}
LEGEND = "OD × wall × CLR;  ? = doubtful,  – = not given"


class _Console(Console):
    def on_broken_pipe(self) -> None:
        """A reader that has seen enough (`| head`) is no error: leave it to the command line."""
        raise BrokenPipeError


def console(width: int | None = None) -> Console:
    """Standard output. Customers' text is never markup: "[red]" stays what they wrote."""
    return _Console(markup=False, highlight=False, emoji=False, width=width)


def table(*heads: str, title: str | None = None) -> Table:
    """An empty table in the house style."""
    rows = Table(
        box=box.SIMPLE_HEAD,
        show_edge=False,
        title=title,
        title_justify="left",
        title_style="bold",
        pad_edge=False,
        collapse_padding=True,
    )
    for head in heads:
        rows.add_column(head, overflow="fold")
    return rows


def said(text: str) -> Text:
    """Customers' words as one harmless stretch."""
    return Text(printable(text))


def who(message: Message) -> str:
    """The sender in a few words: the name, else the address."""
    return printable(message.sender.name or message.sender.address or "unknown sender")


def size(request: SizeRequest, unit: Unit | None = None) -> str:
    """``1.75 × 0.095? × – in``: as read, in the sender's unit unless another is wanted."""
    unit = unit or request.written_in
    figures = " × ".join(_figure(request, field, unit) for field in LENGTH_FIELDS)
    shape = "" if request.shape == "round" else f"{request.shape} "
    return f"{shape}{figures} {unit}"


def _figure(request: SizeRequest, field: Literal["od", "wall", "clr"], unit: Unit) -> str:
    value = request.length_mm(field)
    if value is None:
        return "–"
    in_inches = format_in if request.written_in == "in" else converted_in
    written = in_inches(value, wall=field == "wall") if unit == "in" else format_mm(value)
    return written + ("?" if request.doubt_on(field) else "")


def material(request: SizeRequest) -> str:
    """Family and grade as one phrase, '–' where neither is given."""
    family = request.material.replace("_", " ") if request.material else ""
    if not request.grade or request.grade.casefold() == family:
        words = family or "–"
    else:
        words = f"{family}, {request.grade}" if family else request.grade
    return printable(words) + ("?" if request.doubt_on("material") else "")


def reading(value: Decimal | str, unit: Unit, *, wall: bool = False) -> str:
    """One reading of a doubtful field in words."""
    if isinstance(value, Decimal):
        return both_units(value, unit, wall=wall)
    return printable(value.replace("_", " "))


def short_reading(value: Decimal | str, request: SizeRequest) -> str:
    """One reading in the sender's unit only."""
    if not isinstance(value, Decimal):
        return printable(value.replace("_", " "))
    return f"{format_in(value)} in" if request.written_in == "in" else f"{format_mm(value)} mm"


def doubts(request: SizeRequest) -> Iterator[tuple[FieldName, str]]:
    """(field, sentence) of each doubt: ``wall 0.083 in (2.108 mm) or 0.83 in ...: why``. Whether a
    size is wanted at all is told among the reasons."""
    for doubt in request.doubts:
        if doubt.about == "size":
            continue
        readings = " or ".join(
            reading(r, request.written_in, wall=doubt.field == "wall") for r in doubt.readings
        )
        field = FIELD_WORDS.get(doubt.field, doubt.field.replace("_", " "))
        yield doubt.field, f"{field} {readings}: {printable(doubt.why)}"


def reasons(assessment: Assessment) -> list[str]:
    """Why the decision is what it is, the deciding findings first and each said once."""
    deciding = {Decision.DECLINE: "declines", Decision.ASK: "asks"}.get(assessment.decision)
    settled = [f.text for f in assessment.findings if f.effect == deciding]
    if assessment.stock:
        settled.append(f"{assessment.stock.part}, {assessment.stock.on_hand} on hand")
    rest = [f.text for f in assessment.findings if f.effect != deciding]
    return [printable(text) for text in dict.fromkeys(settled + rest)]


def read_view(out: Console, result: Result, file: str) -> None:
    """One message of ``read``: who, what kind, a compact table of its sizes."""
    out.print(Text.assemble((printable(file), "bold"), "  ", who(result.message)))
    _kind_line(out, result)
    if result.assessments:
        rows = table("", "OD × wall × CLR", "material", "wall\nfactor", "D of\nbend", "answer")
        rows.columns[1].no_wrap = True
        rows.columns[3].justify = rows.columns[4].justify = "right"
        for number, assessment in enumerate(result.assessments, start=1):
            request = assessment.request
            other: Unit = "mm" if request.written_in == "in" else "in"
            rows.add_row(
                str(number),
                f"{size(request)}\n{size(request, other)}",
                material(request),
                ratio(assessment.wall_factor),
                ratio(assessment.d_of_bend),
                ANSWERS[assessment.decision],
            )
        out.print(rows)
        out.print()
        for number, assessment in enumerate(result.assessments, start=1):
            for _, sentence in doubts(assessment.request):
                out.print(hanging(f"{number} ?", sentence))
    remarks(out, result.questions, (*result.message.faults, *result.notes))
    out.print()


def answer_view(out: Console, result: Result) -> None:
    """One message in full: every value with the words it came from, decision, reasons, draft."""
    _kind_line(out, result)
    for number, assessment in enumerate(result.assessments, start=1):
        out.print()
        if len(result.assessments) > 1:
            out.print(f"Size {number} of {len(result.assessments)}", style="bold")
        request_view(out, assessment)
    remarks(out, result.questions, (*result.message.faults, *result.notes))
    if result.draft:
        draft_view(out, result.draft.subject, result.draft.body)


def request_view(out: Console, assessment: Assessment) -> None:
    """What was read and where, what was decided and why."""
    request = assessment.request
    rows = Table.grid(padding=(0, 2))
    rows.add_column(min_width=8, style="bold", no_wrap=True)
    rows.add_column(ratio=3, overflow="fold")
    rows.add_column(ratio=2, overflow="fold", style="dim")
    for label, value, field in _values(request):
        rows.add_row(label, value, said(_surfaces(request, field)))
    out.print(rows)
    facts = [ANSWERS[assessment.decision].capitalize()]
    if assessment.wall_factor is not None:
        facts.append(f"wall factor {ratio(assessment.wall_factor)}")
    if assessment.d_of_bend is not None:
        facts.append(f"D of bend {ratio(assessment.d_of_bend)}")
    out.print(hanging("decision", ", ".join(facts), label_style="bold"))
    told = {finding.field for finding in assessment.findings}
    for field, sentence in doubts(request):
        if field not in told:  # most doubts have a finding that says what hangs on them
            out.print(hanging("doubt", sentence))
    for index, sentence in enumerate(reasons(assessment)):
        out.print(hanging("" if index else "why", sentence))
    for offer in assessment.alternatives:
        bend = SizeRequest(
            od_mm=offer.od_mm,
            wall_mm=offer.wall_mm,
            clr_mm=offer.clr_mm,
            written_in=request.written_in,
        )
        out.print(hanging("instead", f"{size(bend)} ({printable(offer.why)})"))


def draft_view(out: Console, subject: str, body: str) -> None:
    """The reply between two rules."""
    out.print()
    out.rule("draft", style="dim", align="left")
    letter(out, f"Subject: {subject}\n\n{body.rstrip()}")
    out.rule(style="dim")


def letter(out: Console, words: str) -> None:
    """Words as written. Only a terminal has lines too long for it wrapped, between words: it would
    break them anywhere.
    """
    out.print(said(words), soft_wrap=not out.is_terminal)


def ratio(value: Decimal | None) -> str:
    """A bare ratio, '–' where unknown. Never rounded onto a whole or half, where limits lie:
    30.004 shows as 30.004, or a decline would look like a mistake.
    """
    return "–" if value is None else ratio_text(value, round(value * 2) / Decimal(2))


def _values(request: SizeRequest) -> Iterator[tuple[str, str, str]]:
    for field in LENGTH_FIELDS:
        value = request.length_mm(field)
        written = (
            "–" if value is None else both_units(value, request.written_in, wall=field == "wall")
        )
        if field == "od" and request.nominal_pipe:
            written += f", {request.nominal_pipe}"
        yield FIELD_WORDS[field], written, field
    yield "material", material(request), "material"
    if request.shape != "round":
        yield "shape", request.shape, "shape"
    if request.quantity is not None:
        yield "quantity", str(request.quantity), "quantity"
    if request.needed_by is not None:
        yield "needed", f"by {request.needed_by.isoformat()}", "needed_by"


def _surfaces(request: SizeRequest, field: str) -> str:
    quotes = dict.fromkeys(
        f"“{' '.join(e.words.split())}”" + (f" in {e.attachment}" if e.attachment else "")
        for e in request.evidence
        if e.field == field
    )
    return ", ".join(quotes)


def one_line(text: str) -> str:
    """Customers' words on one line."""
    return printable(" ".join(text.split()))


def _kind_line(out: Console, result: Result) -> None:
    out.print(said(f"{result.kind}: {result.why_kind}"))


def remarks(out: Console, questions: Iterable[Question], notes: Iterable[str]) -> None:
    """Questions with the answers that fit, and what a person should look at."""
    for question in questions:
        out.print(hanging("question", _question_line(question)))
    for note in notes:
        out.print(hanging("note", printable(note)))


def _question_line(question: Question) -> str:
    asked = f"“{one_line(question.surface)}”"
    if question.answer is None:
        return f"a question we have no answer for: {asked}"
    fits = "" if question.score is None else f", fits {question.score} of 100"
    return f"{asked}: answer “{question.answer}”{fits}"


def hanging(label: str, text: str, *, label_style: str = "") -> Padding:
    """A label and a sentence that wraps under itself."""
    line = Table.grid(padding=(0, 2))
    line.add_column(min_width=8, no_wrap=True, style=label_style)
    line.add_column(overflow="fold")
    line.add_row(label, text)
    return Padding(line, 0)


def pairs(*lines: tuple[str, str]) -> Table:
    """A thing and what it is, line by line."""
    rows = Table.grid(padding=(0, 2))
    rows.add_column(no_wrap=True)
    rows.add_column(overflow="fold", style="dim")
    for thing, what in lines:
        rows.add_row(thing, what)
    return rows
