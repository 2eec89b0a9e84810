"""The JSON that other programs rely on: what ``read --json`` and ``answer --json`` print.

Names here are a promise: add fields, never rename or drop one. Lengths are numbers in mm (25.4 mm
is 1 in exactly), null where not given. Each span of evidence counts characters of ``text``.
"""

from __future__ import annotations

import json
from collections.abc import Iterable
from decimal import Decimal
from typing import Literal

from pydantic import BaseModel, ConfigDict

from ..rules.assessment import Assessment, Decision, Finding
from ..rules.request import Doubt, FieldName, Material, Shape
from .model import Kind, Result


class _Out(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid")


class DoubtOut(_Out):
    """A field with more than one plausible reading; the first is the one stated."""

    field: FieldName
    readings: list[float | str]
    why: str


class EvidenceOut(_Out):
    """Where a value stands: ``text[start:end] == surface``, or ``written`` in an attached file."""

    field: FieldName
    start: int
    end: int
    surface: str
    how: str
    attachment: str | None
    written: str


class FindingOut(_Out):
    """One rule's word on the request."""

    rule: str
    effect: Literal["declines", "asks", "warns", "notes"]
    text: str
    source: str
    measured: float | None
    limit: float | None
    field: FieldName | None
    question: str | None
    leads: list[str]


class MandrelOut(_Out):
    """The mandrel the request calls for; diameters in mm, null where nothing is on record.

    ``bore_mm`` is the nominal one, low and high those of the tube's tolerances.
    """

    bore_mm: float
    diameter_low_mm: float
    diameter_high_mm: float
    balls_low: int | None
    balls_high: int | None
    surfaces: list[str]
    bore_low_mm: float | None
    bore_high_mm: float | None
    nose: str | None
    pitch: str | None
    wiper: Literal["no", "maybe", "yes"] | None
    advance_max_mm: float | None
    advance_mm: float | None
    advance_table_mm: float | None
    needed: Literal["needed", "either", "may not be needed"] | None
    notes: list[str]


class StockOut(_Out):
    """The mandrel on the shelf that serves it."""

    part: str
    mandrel_diameter_mm: float
    balls: int
    surface: str
    on_hand: int
    price: str | None


class AlternativeOut(_Out):
    """A nearby bend that would be feasible; lengths in mm."""

    od_mm: float
    wall_mm: float
    clr_mm: float
    why: str


class RequestOut(_Out):
    """One tube and radius asked for, as read, with what the rules say of it."""

    shape: Shape
    od_mm: float | None
    wall_mm: float | None
    clr_mm: float | None
    material: Material | None
    grade: str | None
    quantity: int | None
    needed_by: str | None
    angle_deg: float | None
    nominal_pipe: str | None
    written_in: Literal["in", "mm"]
    missing: list[FieldName]
    doubts: list[DoubtOut]
    evidence: list[EvidenceOut]
    wall_factor: float | None
    d_of_bend: float | None
    decision: Decision
    findings: list[FindingOut]
    mandrel: MandrelOut | None
    stock: StockOut | None
    alternatives: list[AlternativeOut]


class QuestionOut(_Out):
    """A question in the sender's words; ``answer`` names the approved answer, if one fits;
    ``score`` says how well the best one fits, 0 to 100."""

    answer: str | None
    surface: str
    score: int | None


class DraftOut(_Out):
    """The reply proposed. Only a person sends it."""

    subject: str
    body: str


class MessageOut(_Out):
    """One message: what it is, what was read in it, what the shop can answer."""

    file: str
    message_id: str
    subject: str
    sender: str
    sender_name: str
    received_at: str | None
    channel: Literal["email", "chat"]
    kind: Kind
    why_kind: str
    requests: list[RequestOut]
    questions: list[QuestionOut]
    draft: DraftOut | None
    text: str
    faults: list[str]
    notes: list[str]


def message_out(result: Result, file: str) -> MessageOut:
    """The printable form of one result; ``file`` is the path as the caller gave it."""
    message = result.message
    return MessageOut(
        # A file name that is no UTF-8 holds half surrogates, which no JSON parser has to take.
        file=file.encode("utf-8", "replace").decode("utf-8"),
        message_id=message.message_id,
        subject=message.subject,
        sender=message.sender.address,
        sender_name=message.sender.name,
        received_at=message.received_at.isoformat() if message.received_at else None,
        channel=message.channel,
        kind=result.kind,
        why_kind=result.why_kind,
        requests=[request_out(assessment) for assessment in result.assessments],
        questions=[
            QuestionOut(answer=q.answer, surface=q.surface, score=q.score) for q in result.questions
        ],
        draft=(
            DraftOut(subject=result.draft.subject, body=result.draft.body) if result.draft else None
        ),
        text=message.text,
        faults=list(message.faults),
        notes=list(result.notes),
    )


def request_out(assessment: Assessment) -> RequestOut:
    """The printable form of one request with its assessment."""
    request = assessment.request
    return RequestOut(
        shape=request.shape,
        od_mm=_number(request.od_mm),
        wall_mm=_number(request.wall_mm),
        clr_mm=_number(request.clr_mm),
        material=request.material,
        grade=request.grade,
        quantity=request.quantity,
        needed_by=request.needed_by.isoformat() if request.needed_by else None,
        angle_deg=_number(request.angle_deg),
        nominal_pipe=request.nominal_pipe,
        written_in=request.written_in,
        missing=list(request.missing),
        doubts=[_doubt_out(doubt) for doubt in request.doubts],
        evidence=[
            EvidenceOut(**evidence.model_dump(exclude={"message_id"}))
            for evidence in request.evidence
        ],
        wall_factor=_number(assessment.wall_factor),
        d_of_bend=_number(assessment.d_of_bend),
        decision=assessment.decision,
        findings=[_finding_out(finding) for finding in assessment.findings],
        mandrel=_mandrel_out(assessment),
        stock=_stock_out(assessment),
        alternatives=[
            AlternativeOut(
                od_mm=float(a.od_mm), wall_mm=float(a.wall_mm), clr_mm=float(a.clr_mm), why=a.why
            )
            for a in assessment.alternatives
        ],
    )


def json_line(out: BaseModel) -> str:
    """One object on one line, in ASCII: no charset of a terminal or pipe can break it."""
    return json.dumps(out.model_dump(mode="json"))


def json_schema() -> str:
    """JSON Schema of one object of ``read --json``."""
    return json.dumps(MessageOut.model_json_schema(mode="serialization"), indent=2)


def _number(value: Decimal | None) -> float | None:
    return None if value is None else float(value)


def _readings(readings: Iterable[Decimal | str]) -> list[float | str]:
    return [float(r) if isinstance(r, Decimal) else r for r in readings]


def _doubt_out(doubt: Doubt) -> DoubtOut:
    return DoubtOut(field=doubt.field, readings=_readings(doubt.readings), why=doubt.why)


def _finding_out(finding: Finding) -> FindingOut:
    return FindingOut(
        rule=finding.rule,
        effect=finding.effect,
        text=finding.text,
        source=finding.source,
        measured=_number(finding.measured),
        limit=_number(finding.limit),
        field=finding.field,
        question=finding.question,
        leads=list(finding.leads),
    )


def _mandrel_out(assessment: Assessment) -> MandrelOut | None:
    if (mandrel := assessment.mandrel) is None:
        return None
    return MandrelOut(
        bore_mm=float(mandrel.bore_mm),
        diameter_low_mm=float(mandrel.diameter_low_mm),
        diameter_high_mm=float(mandrel.diameter_high_mm),
        balls_low=mandrel.balls_low,
        balls_high=mandrel.balls_high,
        surfaces=list(mandrel.surfaces),
        bore_low_mm=_number(mandrel.bore_low_mm),
        bore_high_mm=_number(mandrel.bore_high_mm),
        nose=mandrel.nose,
        pitch=mandrel.pitch,
        wiper=mandrel.wiper,
        advance_max_mm=_number(mandrel.advance_max_mm),
        advance_mm=_number(mandrel.advance_mm),
        advance_table_mm=_number(mandrel.advance_table_mm),
        needed=mandrel.needed,
        notes=list(mandrel.notes),
    )


def _stock_out(assessment: Assessment) -> StockOut | None:
    if (stock := assessment.stock) is None:
        return None
    return StockOut(
        part=stock.part,
        mandrel_diameter_mm=float(stock.mandrel_diameter_mm),
        balls=stock.balls,
        surface=stock.surface,
        on_hand=stock.on_hand,
        price=stock.price,
    )
