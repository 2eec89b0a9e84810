"""What is told beside the decision and never changes it: stretch, rule books, lead time, price."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from datetime import date
from decimal import Decimal
from typing import TYPE_CHECKING

from .assessment import Decision, Finding
from .checks import ratio_text
from .formula import Outside
from .lead_time import lead_time_finding
from .listed import elongation_range, listed
from .rulebooks import rule_book_findings
from .strain import elongation_share, extrados_strain

if TYPE_CHECKING:
    from .bend import BendSpec
    from .request import SizeRequest
    from .shop import Shop

ASK_ABOVE = Decimal(2)
"""Stretch needed / elongation listed from where the customer is asked before all else.

A judgement, not a law: catalogue minima are exceeded daily (6061-T6 of 8 % is bent at 3 D), so
this never declines."""
_TEMPER = re.compile(r"(?i)\b[th]\d|\+\s?(?:n|c|lc|sr|ar?|cr)\b|anneal|normali|hard|drawn")
"""A grade that names its temper: '6061-T6', 'E235+N', '4130 normalized'."""
_SOURCE = "materials.csv; outer fibre strain OD / (2 x CLR) (S25), advisory (S49)"


def advice(
    request: SizeRequest,
    spec: BendSpec | None,
    decision: Decision,
    shop: Shop,
    uses: Iterable[str],
    today: date | None,
) -> Iterator[Finding]:
    """Findings that warn or note. ``spec`` is the bend as stated, where complete and possible."""
    declined = decision is Decision.DECLINE
    if spec is not None and not declined:
        yield from elongation_findings(request, spec)
    can_be_bent = decision in (Decision.STOCK, Decision.CUSTOM_MAKE)
    yield from rule_book_findings(request, uses, can_be_bent=can_be_bent)
    if can_be_bent and today is not None:
        from_stock = decision is Decision.STOCK
        yield from lead_time_finding(request, shop.lead_times, today, from_stock=from_stock)
    if decision is Decision.CUSTOM_MAKE and shop.prices is not None and spec is not None:
        price = shop.prices.custom_price(spec.od_mm)
        if price is not None:
            yield Finding(
                rule="custom-price",
                effect="notes",
                text=f"Made to order, the price is {price} each.",
                source="shop.toml, prices",
            )


def elongation_findings(request: SizeRequest, spec: BendSpec) -> Iterator[Finding]:
    """Warns where the outer fibre stretches beyond what the named material is listed with.

    Up to the listed figure: nothing. Up to twice: the temper is asked. Above: temper and mill
    certificate are asked, though the decision stands. Nothing where no grade, or only a family
    ('DOM'), is named: then no figure is listed.
    """
    found = listed(request.grade, request.material)
    span = elongation_range(found)
    strain = extrados_strain(od_mm=spec.od_mm, clr_mm=spec.clr_mm)
    if span is None or isinstance(strain, Outside):
        return
    worst = elongation_share(strain=strain, elongation_pct=span[0])
    if isinstance(worst, Outside) or worst <= 1:
        return
    best = elongation_share(strain=strain, elongation_pct=span[1])
    assert isinstance(best, Decimal), "more elongation can't be outside where less is not"
    # One decimal where the whole percent would look like the listed figure: 10.2 against 10.
    places = 0 if round(100 * strain) > span[0] else 1
    needs = f"The outside of this bend stretches by about {100 * strain:.{places}f} %"
    listing = (
        f"{found[0].name} is listed with {ratio_text(span[0])} %"
        if span[0] == span[1]
        else f"{request.grade} is listed with {ratio_text(span[0])} to {ratio_text(span[1])} %, "
        "depending on its temper"
    )
    wanted = [] if _TEMPER.search(request.grade or "") else ["the temper"]
    if best > ASK_ABOVE or not wanted:
        wanted.append("the elongation on the mill certificate")
    ask = f"please tell us {' and '.join(wanted)}"
    yield Finding(
        rule="elongation",
        effect="warns",
        text=f"{needs}, and {listing}; {ask}.",
        source=_SOURCE,
        measured=best,
        limit=ASK_ABOVE if best > ASK_ABOVE else Decimal(1),
        field="material",
    )
