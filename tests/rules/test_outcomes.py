"""Whole requests and what the sample shop answers, worked out by hand, either side of every limit.

The limits are the sample shop's: wall factor (WF) = OD / wall at most 30, D of bend = CLR / OD at
least 2.5, mandrels 0.10 to 0.30 mm smaller than the bore, and what lies on its shelf. The
arithmetic stands beside each row.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from typing import Any

import pytest

from bendreply.rules.assess import assess
from bendreply.rules.assessment import Decision
from bendreply.rules.request import Doubt, Material, Shape, SizeRequest
from bendreply.rules.shop import Shop, sample_shop
from bendreply.rules.shop_settings import ClearanceRule
from bendreply.rules.units import parse_length

STOCK, CUSTOM = Decision.STOCK, Decision.CUSTOM_MAKE
DECLINE, ASK = Decision.DECLINE, Decision.ASK
STEEL, MOLY = Material.CARBON_STEEL, Material.ALLOY_STEEL
STAINLESS, ALU = Material.STAINLESS_STEEL, Material.ALUMINIUM
MONDAY = date(2026, 11, 2)


@dataclass(frozen=True)
class Row:
    """A request and its outcome."""

    size: tuple[str, str, str]
    """OD, wall, CLR; '' is not given."""
    material: Material | None
    decision: Decision
    reasons: set[str]
    """Every finding that declines, asks or warns, by its rule; the part, where one serves."""
    why: str
    more: dict[str, Any] = field(default_factory=dict)
    uses: tuple[str, ...] = ()
    shelf: dict[str, Any] = field(default_factory=dict)
    """Changes to one mandrel, by its part, that then is the whole shelf."""
    noted: str = ""
    """A rule that has to be among the notes."""


def row(
    size: str,
    material: Material | None,
    decision: Decision,
    reasons: str,
    why: str,
    *,
    uses: tuple[str, ...] = (),
    shelf: dict[str, Any] | None = None,
    noted: str = "",
    **more: Any,
) -> Row:
    od, wall, clr = (part.strip() for part in size.split("|"))
    told = set(reasons.split())
    return Row((od, wall, clr), material, decision, told, why, more, uses, shelf or {}, noted)


def doubt(name: Any, *readings: str) -> tuple[Doubt, ...]:
    values = [parse_length(r) if name in ("od", "wall", "clr") else r for r in readings]
    return (Doubt(field=name, readings=tuple(values), why="smudged"),)


WIDE = {"tube_wall_min_mm": parse_length("1 mm"), "tube_wall_max_mm": parse_length("3 mm")}
PLUG = {"part": "FM-1500-065B", "surface": "chromed tool steel", "balls": 0}

ROWS = [
    # -- wall factor: OD against 30 x wall
    row("1.5 in|0.05 in|4.5 in", STEEL, CUSTOM, "", "1.5 / 0.05 = 30 exactly"),
    row("1.5 in|0.0499 in|4.5 in", STEEL, DECLINE, "wall-factor-limit", "1.5 / 0.0499 = 30.06"),
    row("38.1 mm|1.27 mm|114.3 mm", STEEL, CUSTOM, "", "38.1 / 1.27 = 30 exactly, in mm"),
    row("60 mm|2 mm|180 mm", STEEL, CUSTOM, "", "60 / 2 = 30 exactly"),
    row("60 mm|1.99 mm|180 mm", STEEL, DECLINE, "wall-factor-limit", "60 / 1.99 = 30.15"),
    row("2 in|0.065 in|6 in", STAINLESS, DECLINE, "wall-factor-limit", "2 / 0.065 = 30.77"),
    row("2 in|0.072 in|6 in", STAINLESS, CUSTOM, "", "2 / 0.072 = 27.8: 15 gauge passes"),
    row("1.25 in|0.049 in|3.5 in", STEEL, CUSTOM, "", "practice, no source: WF 25.5, 2.8 D"),
    row("1.55 in|0.05 in|6 in", STEEL, DECLINE, "wall-factor-limit", "1.55 / 0.05 = 31"),
    row("1.75 in|0.0583 in|6 in", STEEL, DECLINE, "wall-factor-limit", "1.75 / 0.0583 = 30.02"),
    row("1.75 in|0.0584 in|6 in", STEEL, CUSTOM, "", "1.75 / 0.0584 = 29.97"),
    # -- D of bend: CLR against 2.5 x OD
    row("1.9 in|0.109 in|4.75 in", STEEL, CUSTOM, "", "4.75 / 1.9 = 2.5 exactly"),
    row("1.9 in|0.109 in|4.7499 in", STEEL, DECLINE, "d-of-bend-limit", "2.49995"),
    row("30 mm|2 mm|75 mm", STEEL, CUSTOM, "", "75 / 30 = 2.5 exactly"),
    row("30 mm|2 mm|74.9 mm", STEEL, DECLINE, "d-of-bend-limit", "74.9 / 30 = 2.497"),
    row("2 in|0.120 in|4.8 in", STEEL, DECLINE, "d-of-bend-limit", "practice: 4.8 / 2 = 2.4"),
    row("1.625 in|0.083 in|4.5 in", MOLY, CUSTOM, "", "practice: WF 19.6, 2.77 D"),
    row(
        "3 in|0.065 in|4.5 in",
        STAINLESS,
        DECLINE,
        "wall-factor-limit d-of-bend-limit",
        "3 / 0.065 = 46.2; 4.5 / 3 = 1.5",
    ),
    row("2 in|0.120 in|101 in", STEEL, CUSTOM, "unusual-d-of-bend", "101 / 2 = 50.5: a slip?"),
    row("2 in|0.120 in|100 in", STEEL, CUSTOM, "", "100 / 2 = 50: not above it"),
    row("2 in|0.01 in|6 in", STEEL, DECLINE, "wall-factor-limit", "2 / 0.01 = 200: not above it"),
    row(
        "2 in|0.0099 in|6 in",
        STEEL,
        DECLINE,
        "wall-factor-limit unusual-wall-factor",
        "2 / 0.0099 = 202",
    ),
    # -- something missing
    row("|0.120 in|5.25 in", STEEL, ASK, "missing-od", "no OD: no ratio at all"),
    row("1.75 in||5.25 in", STEEL, ASK, "missing-wall", "3 D, WF unknown"),
    row("1.75 in|0.120 in|", STEEL, ASK, "missing-clr", "WF 14.6, D unknown"),
    row("||", None, ASK, "missing-od missing-wall missing-clr", "nothing given"),
    row("1.75 in|0.049 in|", STEEL, DECLINE, "wall-factor-limit", "1.75 / 0.049 = 35.7, any CLR"),
    row("1.75 in||4 in", STEEL, DECLINE, "d-of-bend-limit", "4 / 1.75 = 2.29, any wall"),
    row("1.5 in|0.05 in|", STEEL, ASK, "missing-clr", "WF exactly 30: the CLR is still needed"),
    row("1.75 in||4.375 in", STEEL, ASK, "missing-wall", "exactly 2.5 D: the wall is needed"),
    row("1.75 in|0.120 in|5.25 in", None, ASK, "missing-material", "FM-1750-120 fits by size"),
    row("1.75 in|0.134 in|5.25 in", None, CUSTOM, "", "no mandrel fits by size"),
    row("1.75 in|0.049 in|5.25 in", None, DECLINE, "wall-factor-limit", "any material"),
    # -- what can't be
    row("1.75 in|0.875 in|5.25 in", STEEL, ASK, "possible-wall", "0.875 is half of 1.75"),
    row("1.75 in|0.8749 in|5.25 in", STEEL, ASK, "room-for-mandrel", "a bore of 0.005 mm"),
    row("1.75 in|0.120 in|0.875 in", STEEL, ASK, "possible-clr", "0.875 is half of 1.75"),
    row("1.75 in|0.120 in|0.8751 in", STEEL, DECLINE, "d-of-bend-limit", "possible, at 0.5001 D"),
    row("0 in|0.120 in|5.25 in", STEEL, ASK, "positive-sizes", "no tube of nothing"),
    row("6.3 mm|3 mm|30 mm", STEEL, ASK, "room-for-mandrel", "bore 0.3 = clearance 0.3 mm"),
    row("6.3 mm|2.99 mm|30 mm", STEEL, CUSTOM, "", "bore 0.32 mm, above 0.3"),
    row("|0.05 in|4 in", STEEL, ASK, "shape", "square: a person looks", shape=Shape.SQUARE),
    row("2 in|0.01 in|3 in", STEEL, ASK, "shape", "no ratio is judged", shape=Shape.RECTANGULAR),
    # -- from stock: size, walls (0.005 mm forgiven), radii and ODs (0.05 mm forgiven)
    row("1.75 in|0.120 in|5.25 in", STEEL, STOCK, "FM-1750-120", "bore 38.354, mandrel 38.1 mm"),
    row("44.45 mm|3.05 mm|133 mm", STEEL, STOCK, "FM-1750-120", "3.048 rounded; 2.99 D"),
    row("1.75 in|0.121 in|5.25 in", STEEL, STOCK, "FM-1750-120", "its thickest wall"),
    row("44.45 mm|3.08 mm|133 mm", STEEL, CUSTOM, "", "0.121 in + 0.005 = 3.0784 mm at most"),
    row("1.75 in|0.120 in|10.5 in", STEEL, STOCK, "FM-1750-120", "its largest CLR"),
    row("1.75 in|0.120 in|10.51 in", STEEL, CUSTOM, "", "0.25 mm above its largest CLR"),
    row("44.5 mm|3.06 mm|133 mm", STEEL, STOCK, "FM-1750-120", "44.45 + 0.05; 38.38 - 38.1 = 0.28"),
    row("44.51 mm|3.06 mm|133 mm", STEEL, CUSTOM, "", "0.06 mm off: another tube"),
    row("48.3 mm|3.683 mm|150 mm", STEEL, STOCK, "FM-1900-145", "1.9 in is 48.26 mm"),
    row("25 mm|2 mm|75 mm", STEEL, STOCK, "FM-M25-20", "bore 21, mandrel 20.8"),
    row("25.4 mm|2 mm|75 mm", STEEL, CUSTOM, "", "25.4 is not 25"),
    row("2 in|0.120 in|6 in", STEEL, CUSTOM, "", "FM-2000-120: none on hand"),
    # -- clearance: mandrel 1.574 in = 39.9796 mm, so bores of 40.0796 to 40.2796 mm
    *(
        row(
            f"44.45 mm|{wall} mm|133.35 mm",
            STEEL,
            decision,
            "FM-1750-083" if decision is STOCK else "",
            f"(44.45 - 2 x {wall}) - 39.9796 = {clearance}",
            shelf={"part": "FM-1750-083", **WIDE},
        )
        for wall, clearance, decision in (
            ("2.1852", "0.1000", STOCK),
            ("2.1853", "0.0998", CUSTOM),
            ("2.0852", "0.3000", STOCK),
            ("2.0851", "0.3002", CUSTOM),
        )
    ),
    # -- balls: at WF 20 to 30 the chart has 1 to 2 in soft tube up to 2.5 D, 0 to 1 above
    row("1.5 in|0.065 in|3.75 in", ALU, CUSTOM, "", "2.5 D: a ball is needed", shelf=PLUG),
    row("1.5 in|0.065 in|3.76 in", ALU, STOCK, "FM-1500-065B", "2.507 D: none is", shelf=PLUG),
    row("1.5 in|0.065 in|3.75 in", STEEL, STOCK, "FM-1500-065B", "ferrous: 0 to 1", shelf=PLUG),
    # -- surfaces: bronze never in aluminium, chrome not in stainless
    row("1.5 in|0.065 in|4.5 in", STAINLESS, STOCK, "FM-1500-065B", "bronze"),
    row("1.5 in|0.065 in|4.5 in", ALU, CUSTOM, "", "bronze galls in aluminium"),
    row("1.75 in|0.120 in|5.25 in", ALU, STOCK, "FM-1750-120", "chrome"),
    row("1.75 in|0.120 in|5.25 in", STAINLESS, CUSTOM, "", "never chrome in stainless (S04)"),
    row(
        "1.75 in|0.120 in|5.25 in",
        Material.OTHER,
        CUSTOM,
        "",
        "no surface on record",
        noted="material-surface",
    ),
    # -- how many
    row("1.75 in|0.120 in|5.25 in", STEEL, STOCK, "FM-1750-120", "2 of 2", quantity=2),
    row(
        "1.75 in|0.120 in|5.25 in",
        STEEL,
        CUSTOM,
        "",
        "3, and 2 on hand",
        noted="enough-on-hand",
        quantity=3,
    ),
    # -- makes of tube: the smallest bore counts
    row(
        "1.5 in|0.065 in|4.5 in",
        STEEL,
        STOCK,
        "FM-1500-065B doubtful-bore",
        "ERW: flash may be left inside",
        grade="ERW",
    ),
    row(
        "1.75 in|0.120 in|5.25 in",
        STEEL,
        STOCK,
        "FM-1750-120",
        "DOM (S29): bore 1.504 in = 38.2016 mm, less 38.1 = 0.1016 mm",
        grade="DOM",
    ),
    row(
        "1.5 in|0.065 in|4.5 in",
        STEEL,
        CUSTOM,
        "",
        "flash in (S30): 1.495 - 0.13 - 0.065 = 1.300 in, below 1.363",
        grade="ERW flash-in",
    ),
    # -- rule books: told, never judged by
    row("1.75 in|0.134 in|4.5 in", STEEL, CUSTOM, "rule-book-cage", "2.57 of 3 D", uses=("cage",)),
    row(
        "1.75 in|0.134 in|5.25 in",
        STEEL,
        CUSTOM,
        "",
        "exactly 3 D",
        uses=("cage",),
        noted="rule-book-cage",
    ),
    row(
        "1.75 in|0.134 in|4 in",
        STEEL,
        DECLINE,
        "d-of-bend-limit rule-book-cage",
        "2.29 D: our own limit as well",
        uses=("cage",),
    ),
    row(
        "1.75 in|0.134 in|4.5 in",
        STEEL,
        CUSTOM,
        "",
        "3 D in hydraulics is hearsay: only noted",
        uses=("hydraulic",),
        noted="rule-book-hydraulic",
    ),
    # -- dates: from Monday 2 November 2 working days end on the 4th, 15 on the 23rd
    row(
        "1.75 in|0.120 in|5.25 in",
        STEEL,
        STOCK,
        "FM-1750-120",
        "the 4th is met",
        noted="lead-time",
        needed_by=date(2026, 11, 4),
    ),
    row(
        "1.75 in|0.120 in|5.25 in",
        STEEL,
        STOCK,
        "FM-1750-120 lead-time",
        "the 3rd is not",
        needed_by=date(2026, 11, 3),
    ),
    row(
        "1.75 in|0.134 in|5.25 in",
        STEEL,
        CUSTOM,
        "",
        "the 23rd is met",
        noted="lead-time",
        needed_by=date(2026, 11, 23),
    ),
    row(
        "1.75 in|0.134 in|5.25 in",
        STEEL,
        CUSTOM,
        "lead-time",
        "Friday the 20th is not",
        needed_by=date(2026, 11, 20),
    ),
    # -- stretch: 50 / D in %, against the listed elongation; it only advises
    row("2 in|0.095 in|10 in", STEEL, CUSTOM, "", "50 / 5 = 10 of 10 %", grade="DOM 1020"),
    row("2 in|0.095 in|9.8 in", STEEL, CUSTOM, "elongation", "10.2 of 10 %", grade="DOM 1020"),
    row("2 in|0.095 in|6 in", ALU, CUSTOM, "elongation", "16.7 of 8 %", grade="6061-T6"),
    # -- doubts: asked only where the answer hangs on them
    row(
        "1.75 in|0.083 in|5.25 in",
        STEEL,
        STOCK,
        "FM-1750-083",
        "3 D or 3.43 D: the same mandrel",
        noted="doubt-clr",
        doubts=doubt("clr", "5.25 in", "6 in"),
    ),
    row(
        "1.75 in|0.083 in|5.25 in",
        STEEL,
        ASK,
        "FM-1750-083 doubt-clr",
        "3 D or 2.29 D",
        doubts=doubt("clr", "5.25 in", "4 in"),
    ),
    row(
        "1.75 in|0.035 in|5.25 in",
        STEEL,
        DECLINE,
        "wall-factor-limit",
        "WF 50 or 62.5: broken either way",
        noted="doubt-wall",
        doubts=doubt("wall", "0.035 in", "0.028 in"),
    ),
    row(
        "1.75 in|0.083 in|5.25 in",
        STEEL,
        ASK,
        "FM-1750-083 doubt-material",
        "chrome for steel only",
        doubts=doubt("material", "carbon_steel", "stainless_steel"),
    ),
    row(
        "1.75 in|0.120 in|5.25 in",
        STEEL,
        ASK,
        "FM-1750-120 doubt-quantity",
        "2 are on hand, 4 are not",
        doubts=doubt("quantity", "2", "4"),
        quantity=2,
    ),
]


def shop_of(row: Row) -> Shop:
    shop = sample_shop()
    if not row.shelf:
        return shop
    (mandrel,) = [m for m in shop.catalogue if m.part == row.shelf["part"]]
    return shop.model_copy(update={"catalogue": (mandrel.model_copy(update=row.shelf),)})


def test_there_are_more_than_sixty() -> None:
    assert len(ROWS) >= 60


@pytest.mark.parametrize(
    "row", ROWS, ids=[f"{' x '.join(r.size)} {r.material or ''}: {r.why}" for r in ROWS]
)
def test_the_outcome_worked_out_by_hand(row: Row) -> None:
    od, wall, clr = (parse_length(text) if text else None for text in row.size)
    request = SizeRequest(od_mm=od, wall_mm=wall, clr_mm=clr, material=row.material, **row.more)
    found = assess(request, shop_of(row), row.uses, today=MONDAY)
    told = {finding.rule for finding in found.findings if finding.effect != "notes"}
    if found.stock is not None:
        told.add(found.stock.part)
    assert (found.decision, told) == (row.decision, row.reasons)
    noted = {finding.rule for finding in found.findings if finding.effect == "notes"}
    assert not row.noted or row.noted in noted


# The sample shop's clearance reaches every OD; this one ends at 4 in.
@pytest.mark.parametrize(("od", "noted"), [("4 in", False), ("4.001 in", True)])
def test_beyond_the_clearance_rule_a_person_works_out_the_mandrel(od: str, noted: bool) -> None:
    rule = ClearanceRule.model_validate(
        {
            "reason": "test",
            "bands": [{"tube_od_up_to": "4 in", "low": "0.1 mm", "high": "0.3 mm"}],
        }
    )
    shop = sample_shop().model_copy(update={"mandrel_clearance": rule})
    od_mm = parse_length(od)
    request = SizeRequest(
        od_mm=od_mm, wall_mm=parse_length("0.25 in"), clr_mm=3 * od_mm, material=STEEL
    )
    found = assess(request, shop)
    assert found.decision is CUSTOM
    assert (found.mandrel is None) is noted
    assert ("clearance-range" in {finding.rule for finding in found.findings}) is noted
