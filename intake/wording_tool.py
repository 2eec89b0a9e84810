"""The tool as words: the mandrel on the shelf, or the one that would be made."""

from __future__ import annotations

from decimal import ROUND_HALF_UP, Decimal
from typing import TYPE_CHECKING, Literal

from ..rules.units import MM_PER_INCH, both_units
from .reply_facts import StockWords, Words

if TYPE_CHECKING:
    from ..rules.assessment import Assessment, MandrelNeeded
    from ..rules.shop_settings import ClearanceRule


def stock_words(assessment: Assessment, words: Words) -> StockWords | None:
    """The mandrel on the shelf that serves, or None."""
    if (stock := assessment.stock) is None:
        return None
    return StockWords(
        part=stock.part,
        diameter=both_units(stock.mandrel_diameter_mm, assessment.request.written_in),
        balls=stock.balls,
        surface=spelled(stock.surface, words),
        on_hand=stock.on_hand,
        price=stock.price or "",
    )


def mandrel_words(assessment: Assessment, words: Words) -> str:
    """The tool a complete request calls for; the balls are a range because charts differ."""
    if (mandrel := assessment.mandrel) is None:
        return ""
    parts = [_diameters(mandrel, assessment.request.written_in)]
    if mandrel.balls_low is not None and mandrel.balls_high is not None:
        few, many = mandrel.balls_low, mandrel.balls_high
        parts.append(f"{few} to {many} balls" if few != many else _balls(few))
    if mandrel.surfaces:
        parts.append(spelled(" or ".join(mandrel.surfaces), words))
    return ", ".join(parts)


def clearance_words(rule: ClearanceRule) -> str:
    """'0.1 to 0.3 mm (0.004 to 0.012 in)' on the diameter; '' where it differs by OD."""
    if len(rule.bands) != 1:
        return ""
    ends = (rule.bands[0].low_mm, rule.bands[0].high_mm)
    mms = " to ".join(dict.fromkeys(round_to(end, 2) for end in ends))
    inches = " to ".join(dict.fromkeys(round_to(end / MM_PER_INCH, 3) for end in ends))
    return f"{mms} mm ({inches} in)"


def _diameters(mandrel: MandrelNeeded, first: Literal["in", "mm"]) -> str:
    """'1.547 to 1.555 in (39.29 to 39.5 mm) diameter': to 0.001 in and 0.01 mm, as made."""
    ends = (mandrel.diameter_low_mm, mandrel.diameter_high_mm)
    inches = [round_to(end / MM_PER_INCH, 3) for end in ends]
    mms = [round_to(end, 2) for end in ends]
    written = {
        "in": f"{' to '.join(dict.fromkeys(inches))} in",
        "mm": f"{' to '.join(dict.fromkeys(mms))} mm",
    }
    return f"{written[first]} ({written['mm' if first == 'in' else 'in']}) diameter"


def _balls(count: int) -> str:
    return {0: "no balls (plug)", 1: "1 ball"}.get(count, f"{count} balls")


def plain(value: Decimal) -> str:
    """'30' for 30.0, '2.5' for 2.50."""
    text = format(value, "f")
    return text.rstrip("0").rstrip(".") if "." in text else text


def round_to(value: Decimal, places: int) -> str:
    """A length rounded to ``places`` decimals, without trailing zeros."""
    return plain(value.quantize(Decimal(1).scaleb(-places), ROUND_HALF_UP))


def spelled(text: str, words: Words) -> str:
    """The rules' own words, written in British, as the shop spells them."""
    return text.replace("centreline", words.centreline).replace("aluminium", words.aluminium)
