"""Facts as words: what the assessments of one message give a reply template to say.

The templates hold the sentences, this module the figures in them: sizes in both units with the
sender's own first, ratios beside the shop's limits, what is to be asked and what confirmed.
Customers' words come through ``one_line`` and stay values; no template reads them as code.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import ROUND_HALF_UP, Decimal
from typing import TYPE_CHECKING, Literal

from ..rules.assessment import Alternative, Assessment, Decision, Finding
from ..rules.request import LENGTH_FIELDS, Doubt, FieldName, Material, Shape, SizeRequest
from ..rules.units import both_units
from .addressing import one_line
from .reply_facts import (
    AMERICAN,
    BRITISH,
    AlternativeWords,
    NoteWords,
    ShopWords,
    SizeWords,
    Words,
)
from .wording_tool import clearance_words, mandrel_words, plain, spelled, stock_words

if TYPE_CHECKING:
    from ..rules.shop import Shop
    from ..rules.shop_settings import Limit

LONGEST_GRADE = 40
LEAD_TIME, RULE_BOOK = "lead-time", "rule-book"
"""Rules whose findings have a place of their own in a reply."""
_FIELD_NAMES: dict[FieldName, str] = {
    "od": "OD",
    "wall": "wall",
    "clr": "CLR",
    "material": "tube material",
    "shape": "tube shape",
    "quantity": "number of mandrels",
    "needed_by": "date needed",
}
_GAP_QUESTIONS: dict[FieldName, str] = {
    "od": "What is the tube's outside diameter (OD)?",
    "wall": "What is the wall thickness (or gauge)?",
    "clr": "What is the centreline radius (CLR) of the bend?",
    "material": "What is the tube material?",
}


def words_of(shop: Shop) -> Words:
    """The spelling of the shop's own words."""
    return AMERICAN if shop.spelling == "american" else BRITISH


def shop_words(shop: Shop) -> ShopWords:
    """What a template may say of the shop."""
    limits = shop.limits
    return ShopWords(
        name=shop.name,
        signature=shop.signature,
        wall_factor_max=plain(limits.wall_factor_max.value),
        wall_factor_reason=limits.wall_factor_max.reason.rstrip("."),
        d_of_bend_min=plain(limits.d_of_bend_min.value),
        d_of_bend_reason=limits.d_of_bend_min.reason.rstrip("."),
        stock_days=shop.lead_times.stock_working_days,
        custom_days=shop.lead_times.custom_working_days,
        clearance=clearance_words(shop.mandrel_clearance),
        clearance_reason=shop.mandrel_clearance.reason.rstrip("."),
    )


def size_words(assessment: Assessment, shop: Shop, *, number: int) -> SizeWords:
    """One assessed size as words; ``number`` is its place in the reply, from 1."""
    request, words, limits = assessment.request, words_of(shop), shop.limits
    declines = [f for f in assessment.findings if f.effect == "declines"]
    over = [f for f in declines if _is_about(f, assessment.wall_factor, limits.wall_factor_max)]
    under = [f for f in declines if _is_about(f, assessment.d_of_bend, limits.d_of_bend_min)]
    warns = [f for f in assessment.findings if f.effect == "warns"]
    lead_times = _texts([f for f in assessment.findings if f.rule == LEAD_TIME], words)
    made_of = material(request, words)
    return SizeWords(
        number=number,
        summary=", ".join(filter(None, (tube(request), made_of))),
        tube=tube(request),
        material=made_of,
        decision=assessment.decision.value,
        wall_factor=ratio(assessment.wall_factor, limits.wall_factor_max.value),
        d_of_bend=ratio(assessment.d_of_bend, limits.d_of_bend_min.value),
        wall_factor_over=bool(over),
        d_of_bend_under=bool(under),
        other_reasons=_texts([f for f in declines if f not in over and f not in under], words),
        warnings=_texts([f for f in warns if f.rule != LEAD_TIME and not _of_book(f)], words),
        rule_books=_texts([f for f in warns if _of_book(f)], words),
        notes=tuple(
            NoteWords(f.rule, spelled(one_line(f.text, 400), words))
            for f in assessment.findings
            if f.effect == "notes"
        ),
        questions=tuple(dict.fromkeys(_questions(assessment, words))),
        confirmations=tuple(_confirmations(assessment, words)),
        alternatives=tuple(_alternative(a, request, words) for a in assessment.alternatives),
        stock=stock_words(assessment, words),
        mandrel=mandrel_words(assessment, words),
        quantity=request.quantity or 0,
        needed_by=_long_date(request),
        lead_time=lead_times[0] if lead_times else "",
    )


def tube(request: SizeRequest) -> str:
    """'square tube, 1.5 in (38.1 mm) x 0.12 in (3.048 mm) wall, CLR not given'."""
    said = {
        "od": f"{_size(request, 'od')} OD"
        if request.shape is Shape.ROUND
        else _size(request, "od"),
        "wall": f"{_size(request, 'wall')} wall",
        "clr": f"{_size(request, 'clr')} CLR",
    }
    gaps = {"od": "OD not given", "wall": "wall not given", "clr": "CLR not given"}
    parts = {f: gaps[f] if request.length_mm(f) is None else said[f] for f in LENGTH_FIELDS}
    pipe = f" ({one_line(request.nominal_pipe, 60)})" if request.nominal_pipe else ""
    bend = f"{parts['wall']}{pipe}, {parts['clr']}"
    if request.shape is Shape.ROUND:
        return f"{parts['od']} x {bend}"
    # "2 x 2 x .120" has no OD, and saying that it lacks one would puzzle its sender.
    outside = "" if request.od_mm is None else f"{parts['od']} x "
    return f"{request.shape.value} tube, {outside}{bend}"


def material(request: SizeRequest, words: Words) -> str:
    """'DOM carbon steel', '304 stainless steel', '' where neither family nor grade was given."""
    grade = one_line(request.grade or "", LONGEST_GRADE)
    if request.material is None or request.material is Material.OTHER:
        return grade
    family = _material_name(request.material, words)
    # "stainless 304" and "mild steel" say their family; "304" and "DOM" don't.
    names_family = any(w[:5] in grade.casefold() for w in family.split())
    return grade if grade and names_family else f"{grade} {family}".strip()


def ratio(value: Decimal | None, limit: Decimal) -> str:
    """A ratio [-] to one decimal ('18.4', '3.0'), '' where unknown; more decimals where it would
    else look as if it were on the limit, or on the wrong side of it (30.04 against 30).
    """
    if value is None:
        return ""
    for places in range(1, 7):
        shown = value.quantize(Decimal(1).scaleb(-places), ROUND_HALF_UP)
        if shown.compare(limit) == value.compare(limit):
            break
    return format(shown, "f")


def _size(request: SizeRequest, field: Literal["od", "wall", "clr"]) -> str:
    value = request.length_mm(field)
    return "" if value is None else both_units(value, request.written_in, wall=field == "wall")


def _material_name(family: Material, words: Words) -> str:
    return words.aluminium if family is Material.ALUMINIUM else family.value.replace("_", " ")


def _is_about(finding: Finding, measured: Decimal | None, limit: Limit) -> bool:
    """Whether the ratios already printed beside their limits say all that this finding does."""
    return measured is not None and (finding.measured, finding.limit) == (measured, limit.value)


def _of_book(finding: Finding) -> bool:
    return finding.rule.startswith(RULE_BOOK)


def _texts(findings: Sequence[Finding], words: Words) -> tuple[str, ...]:
    texts = (spelled(one_line(finding.text, 400), words) for finding in findings)
    return tuple(dict.fromkeys(texts))


def _questions(assessment: Assessment, words: Words) -> Iterator[str]:
    """What has to be known: the rules' own questions, then gaps that no rule asked about."""
    request = assessment.request
    if assessment.decision is Decision.DECLINE:
        return  # no answer would change it
    asked = set()
    for finding in assessment.findings:
        if finding.effect == "asks":
            asked.add(finding.field)
            if finding.field == "shape" and finding.question is None:
                return  # a square tube is for a person to look at, whatever else is open
            question = finding.question or _own_question(finding, request, words)
            leads = "; ".join(finding.leads)
            told = f" {leads[0].upper()}{leads[1:]}." if leads else ""
            yield spelled(one_line(question + told, 500), words)
    for field in request.missing:
        if field not in asked:
            yield _gap_question(field, words)


def _own_question(finding: Finding, request: SizeRequest, words: Words) -> str:
    """A question for a finding that brought none."""
    if finding.field is None:
        return finding.text
    doubt = request.doubt_on(finding.field)
    if doubt is None or len(doubt.readings) < 2:
        return _gap_question(finding.field, words)
    readings = " or ".join(_readings(doubt, request, words))
    return f"Is the {_FIELD_NAMES[finding.field]} {readings}? ({doubt.why})"


def _gap_question(field: FieldName, words: Words) -> str:
    return spelled(_GAP_QUESTIONS.get(field, f"What is the {_FIELD_NAMES[field]}?"), words)


def _confirmations(assessment: Assessment, words: Words) -> Iterator[str]:
    """Doubts that change nothing in the decision: stated, and put for a yes or no."""
    request = assessment.request
    asked = {finding.field for finding in assessment.findings if finding.effect == "asks"}
    for doubt in request.doubts:
        # Whether the size is wanted at all is one question, not one a field.
        if doubt.field not in asked and doubt.readings and doubt.about == "value":
            stated, *others = _readings(doubt, request, words)
            instead = f", not {' or '.join(others)}" if others else ""
            why = one_line(doubt.why, 160).rstrip(".")
            yield f"{_FIELD_NAMES[doubt.field]} {stated}{instead}? ({why})"


def _readings(doubt: Doubt, request: SizeRequest, words: Words) -> list[str]:
    """All readings of a doubtful field in words, the stated one first, each once."""
    values = doubt.readings
    if doubt.field in LENGTH_FIELDS and (stated := request.length_mm(doubt.field)) is not None:
        values = (stated, *values)
    return list(dict.fromkeys(_reading(v, doubt.field, request, words) for v in values))


def _reading(value: Decimal | str, field: FieldName, request: SizeRequest, words: Words) -> str:
    if isinstance(value, Decimal):
        if field in LENGTH_FIELDS:
            return both_units(value, request.written_in, wall=field == "wall")
        return plain(value)
    if field == "material" and value in set(Material):
        return _material_name(Material(value), words)
    return one_line(value.replace("_", " "), 60)


def _alternative(offer: Alternative, request: SizeRequest, words: Words) -> AlternativeWords:
    bend = SizeRequest(
        shape=request.shape,
        od_mm=offer.od_mm,
        wall_mm=offer.wall_mm,
        clr_mm=offer.clr_mm,
        written_in=request.written_in,
    )
    why = spelled(one_line(offer.why, 160).rstrip("."), words)
    return AlternativeWords(summary=tube(bend), why=why)


def _long_date(request: SizeRequest) -> str:
    day = request.needed_by
    # Month in words: 04/12 is April to half of the customers.
    return f"{day.day} {day:%B %Y}" if day else ""
