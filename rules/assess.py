"""A request judged: every reading of it before the shop, and one decision for all of them.

1. A limit broken under every reading, whatever is missing: decline (OD and wall alone can do it).
2. Otherwise, something missing or doubtful that the answer hangs on: ask.
3. Otherwise stock if a mandrel on hand fits, else custom-make; what is doubtful but makes no
   difference is confirmed in the reply, not asked first.
"""

from __future__ import annotations

from functools import lru_cache
from typing import TYPE_CHECKING, Literal

from .advice import advice
from .alternatives import alternatives_for
from .assessment import Assessment, Decision, Finding, StockMatch
from .by_value import Itself
from .case import Case
from .doubts import doubt_findings
from .judgement import Judgement, judge
from .readings import MOST_READINGS, Reading, all_readings, stated_reading
from .tolerances import TubeMake, make_of

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import date
    from decimal import Decimal

    from .request import SizeRequest
    from .shelf import CatalogueMandrel
    from .shop import Shop

_ORDER = {"declines": 0, "asks": 1, "warns": 2, "notes": 3}


def assess(
    request: SizeRequest, shop: Shop, uses: Iterable[str] = (), *, today: date | None = None
) -> Assessment:
    """The decision on ``request`` by the limits and the shelf of ``shop``, with every finding.

    ``uses`` are the safety-relevant ones the sender named ('cage', 'pressure' ...): rule books are
    told for them. ``today`` is the day the lead time counts from; without it none is told.
    Wall factor, D of bend, mandrel and stock are those of the request as stated. Never raises for
    anything a customer can write: what can't be is asked.
    """

    before = Itself(shop), request.written_in, make_of(request), request.angle_deg
    stated = _judged(stated_reading(request), *before)
    readings = all_readings(request, stated.case.reading)
    judgements = [
        stated if reading == stated.case.reading else _judged(reading, *before)
        for reading in readings or ()
    ]
    doubts = doubt_findings(request, stated.case, judgements)
    decision = _settle(stated, judgements, doubts)
    base = judgements[0] if decision is Decision.DECLINE else stated
    doubtful = {f"missing-{doubt.field}" for doubt in doubts if doubt.effect == "asks"}
    told = [finding for finding in base.findings if finding.rule not in doubtful]
    told_beside = advice(request, stated.case.spec, decision, shop, uses, today)
    findings = [*_fitting(told, decision), *doubts, *told_beside]
    if readings is None:
        findings.append(_too_many())
    return Assessment(
        request=request,
        decision=decision,
        findings=tuple(sorted(findings, key=lambda finding: _ORDER[finding.effect])),
        wall_factor=stated.case.wall_factor,
        d_of_bend=stated.case.d_of_bend,
        mandrel=stated.case.mandrel,
        stock=_stock_match(stated.case.stock),
        alternatives=alternatives_for(base.case) if decision is Decision.DECLINE else (),
    )


@lru_cache(maxsize=1024)
def _judged(
    reading: Reading,
    shop: Itself[Shop],
    written_in: Literal["in", "mm"],
    make: TubeMake | None,
    angle_deg: Decimal | None,
) -> Judgement:
    """One reading judged; the same size asked for again, or read twice, is not worked out anew."""
    return judge(Case(reading, shop.value, written_in, make, angle_deg))


def _settle(
    stated: Judgement, judgements: list[Judgement], doubts: tuple[Finding, ...]
) -> Decision:
    if judgements and all(j.decision is Decision.DECLINE for j in judgements):
        return Decision.DECLINE
    if not any(j is stated for j in judgements) or any(doubt.effect == "asks" for doubt in doubts):
        return Decision.ASK
    return stated.decision


def _fitting(findings: Iterable[Finding], decision: Decision) -> Iterable[Finding]:
    """The findings on one reading, toned to the decision that all readings together led to.

    Under a decline no question is asked that could not change it; under a question no limit is
    told as broken that may turn out not to be.
    """
    for finding in findings:
        if decision is Decision.DECLINE and finding.effect == "asks":
            text = f"{finding.text} It would not change this answer."
            yield finding.model_copy(update={"effect": "notes", "text": text, "question": None})
        elif decision is not Decision.DECLINE and finding.effect == "declines":
            text = f"As first read: {finding.text[0].lower()}{finding.text[1:]}"
            yield finding.model_copy(update={"effect": "warns", "text": text})
        else:
            yield finding


def _too_many() -> Finding:
    return Finding(
        rule="too-many-readings",
        effect="asks",
        text="Too much of this size is in doubt to work out every way it can be meant.",
        source=f"house rule: at most {MOST_READINGS} readings",
        question="What are OD, wall and CLR, each with its unit?",
    )


def _stock_match(mandrel: CatalogueMandrel | None) -> StockMatch | None:
    if mandrel is None:
        return None
    return StockMatch(
        part=mandrel.part,
        mandrel_diameter_mm=mandrel.mandrel_diameter_mm,
        balls=mandrel.balls,
        surface=mandrel.surface,
        on_hand=mandrel.on_hand,
        price=mandrel.price,
    )
