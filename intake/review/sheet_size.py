"""One size on the page of its inquiry: fields to type into, the answer, why, and what instead."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from decimal import Decimal
from typing import TYPE_CHECKING

from ...rules.assessment import Decision
from ...rules.request import LENGTH_FIELDS, FieldName, Shape
from ..cli_common import printable
from ..screen import ANSWERS, ratio, reading
from ..screen import size as size_words
from ..wording import words_of
from ..wording_tool import mandrel_words, stock_words
from .drawn import PictureView, views
from .offers import can_go, offers_of
from .typed import FIELDS, key, other_unit, readings_of, shown

if TYPE_CHECKING:
    from ...rules.assessment import Assessment
    from ...rules.request import Evidence, SizeRequest
    from ...rules.shop import Shop

LABELS: dict[FieldName, str] = {
    "od": "OD", "wall": "Wall", "clr": "CLR", "material": "Material", "quantity": "Mandrels",
    "needed_by": "Needed by", "shape": "Shape",
}  # fmt: skip
EFFECTS = {"declines": "against it", "asks": "to settle", "warns": "mind", "notes": "note"}
SHAPES = tuple(one.value for one in Shape)


@dataclass(frozen=True, slots=True)
class FormState:
    """What is known of the fields besides their values, each by its name in the form."""

    typed: Mapping[str, str] = field(default_factory=dict)
    wrong: Mapping[str, str] = field(default_factory=dict)
    put_right: Mapping[str, str] = field(default_factory=dict)
    """Who put a reading right."""


@dataclass(frozen=True, slots=True)
class FieldView:
    """One field of a size."""

    key: str
    name: FieldName
    label: str
    value: str
    """What stands in it: as read, or as typed."""
    other: str
    said: str
    """The customer's words it was read from."""
    doubt: str
    readings: tuple[tuple[str, str], ...]
    """(what the button says to the server, the reading in words)"""
    wrong: str
    missing: bool

    @property
    def minor(self) -> bool:
        """Whether it can share a line with others: nothing has to be said of it."""
        plain = not (self.said or self.doubt or self.wrong)
        return plain and self.name in ("quantity", "needed_by", "shape")


@dataclass(frozen=True, slots=True)
class FindingView:
    """One rule's word."""

    effect: str
    text: str
    source: str
    leads: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class OfferView:
    """One alternative, and what can be done with it."""

    place: str
    size: str
    why: str
    is_in: bool
    can_go: bool


@dataclass(frozen=True, slots=True)
class SizeView:
    """One size with its answer."""

    number: int
    words: str
    """The size itself, as the list of what waits has it."""
    answer: str
    """As ``lines.ORDER`` has it; empty where no size was read."""
    spoken: str
    ratios: tuple[tuple[str, str, str], ...]
    """(name, figure, the shop's limit)"""
    tool: str
    fields: tuple[FieldView, ...]
    findings: tuple[FindingView, ...]
    notes: tuple[FindingView, ...]
    offers: tuple[OfferView, ...]
    pictures: tuple[PictureView, ...] = ()


def size_view(
    assessment: Assessment | None,
    request: SizeRequest,
    index: int,
    shop: Shop,
    body: str,
    form: FormState,
    of: tuple[int, int],
) -> SizeView:
    """Size ``index`` (from 0). Without an assessment: empty fields, to enter one by hand.

    ``of``: number and version of the inquiry.
    """
    fields = tuple(_field(request, name, index, form) for name in FIELDS)
    if assessment is None:
        return SizeView(1, "", "", "", (), "", fields, (), (), ())
    findings = tuple(_findings(assessment))
    limits = shop.limits
    return SizeView(
        number=index + 1,
        words=size_words(request),
        answer=assessment.decision.value,
        spoken=ANSWERS[assessment.decision].capitalize(),
        ratios=(
            (
                "Wall factor",
                ratio(assessment.wall_factor),
                f"limit {ratio(limits.wall_factor_max.value)}",
            ),
            (
                "D of bend",
                ratio(assessment.d_of_bend),
                f"at least {ratio(limits.d_of_bend_min.value)}",
            ),
        ),
        tool=_tool(assessment, shop),
        fields=fields,
        findings=tuple(one for one in findings if one.effect != EFFECTS["notes"]),
        notes=tuple(one for one in findings if one.effect == EFFECTS["notes"]),
        offers=tuple(_offers(assessment, index, shop, body)),
        pictures=tuple(views(assessment, shop, *of, index)),
    )


def _field(
    request: SizeRequest,
    name: FieldName,
    index: int,
    form: FormState,
) -> FieldView:
    place = key(name, index)
    doubt = request.doubt_on(name)
    stands = shown(request, name)
    said = ", ".join(dict.fromkeys(_said(e) for e in request.evidence if e.field == name))
    return FieldView(
        key=place,
        name=name,
        label=LABELS[name],
        value=form.typed.get(place, stands),
        other=other_unit(request, name),
        said=said or form.put_right.get(place, ""),
        doubt=printable(doubt.why) if doubt else "",
        readings=tuple(
            (f"{place}:{number}", _in_words(one, request, name))
            for number, one in enumerate(readings_of(request, name))
        ),
        wrong=form.wrong.get(place, ""),
        missing=name in request.missing,
    )


def _in_words(value: Decimal | str, request: SizeRequest, name: FieldName) -> str:
    if isinstance(value, Decimal) and name not in LENGTH_FIELDS:
        return f"{value:f}"
    return reading(value, request.written_in, wall=name == "wall")


def _said(evidence: Evidence) -> str:
    where = f" in {evidence.attachment}" if evidence.attachment else ""
    if evidence.message_id and not evidence.attachment:
        where = " in an earlier message"
    how = f" ({evidence.how})" if evidence.how else ""
    return printable(f"“{' '.join(evidence.words.split())}”{where}{how}")


def _findings(assessment: Assessment) -> Iterator[FindingView]:
    seen = set()
    for one in assessment.findings:
        if one.text not in seen:
            seen.add(one.text)
            yield FindingView(
                EFFECTS[one.effect],
                printable(one.text),
                printable(one.source),
                tuple(printable(lead) for lead in one.leads if not _says(one.text, lead)),
            )


def _says(text: str, lead: str) -> bool:
    """Whether a finding's own sentence ends with what an answer leads to."""
    return lead.casefold() in text.casefold()


def _tool(assessment: Assessment, shop: Shop) -> str:
    """The mandrel on the shelf, else the one that would be made."""
    words = words_of(shop)
    if stock := stock_words(assessment, words):
        price = f", {stock.price} each" if stock.price else ""
        balls = "1 ball" if stock.balls == 1 else f"{stock.balls} balls"
        return (
            f"On the shelf: {stock.part}, {stock.diameter} diameter, {balls}, {stock.surface}, "
            f"{stock.on_hand} on hand{price}"
        )
    made = mandrel_words(assessment, words)
    if not made or assessment.decision is Decision.DECLINE:
        return ""
    return f"Mandrel: {made}"


def _offers(assessment: Assessment, index: int, shop: Shop, body: str) -> Iterator[OfferView]:
    offers = offers_of(assessment, shop)
    for number, (one, bend) in enumerate(
        zip(offers, assessment.alternatives, strict=True), start=1
    ):
        as_request = assessment.request.model_copy(
            update={
                "od_mm": bend.od_mm, "wall_mm": bend.wall_mm, "clr_mm": bend.clr_mm, "doubts": (),
            }
        )  # fmt: skip
        yield OfferView(
            f"{index + 1}-{number}",
            printable(size_words(as_request)),
            printable(one.why),
            one.is_in(body),
            can_go(body, one),
        )
