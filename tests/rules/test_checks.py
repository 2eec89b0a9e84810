"""Each rule on both sides of its limit: what it finds, and that it keeps quiet otherwise."""

from __future__ import annotations

from decimal import Decimal

import pytest

from bendreply.rules.assessment import Finding
from bendreply.rules.case import Case
from bendreply.rules.checks import RULES, ratio_text
from bendreply.rules.readings import Reading
from bendreply.rules.request import Material, Shape
from bendreply.rules.shop import sample_shop
from bendreply.rules.tolerances import make_named
from bendreply.rules.units import parse_length


def findings(
    od: str | None = "2.5 in",
    wall: str | None = "0.109 in",
    clr: str | None = "7.5 in",
    *,
    material: Material | None = Material.CARBON_STEEL,
    shape: Shape = Shape.ROUND,
    quantity: int | None = None,
    make: str = "",
) -> dict[str, Finding]:
    """What the rules find; the default is a bend that none of them has a word on."""
    lengths = [parse_length(text) if text else None for text in (od, wall, clr)]
    reading = Reading(shape, *lengths, material, quantity)
    case = Case(reading, sample_shop(), make=make_named(make, material))
    return {finding.rule: finding for rule in RULES for finding in rule(case)}


def test_a_bend_that_is_fine_has_no_findings() -> None:
    # 2.5 / 0.109 = 22.9; 7.5 / 2.5 = 3; the sample shop has that die
    assert findings() == {}


EITHER_SIDE = [
    # rule, effect, a request that it speaks on, the nearest on which it keeps quiet
    ("shape", "asks", {"shape": Shape.SQUARE}, {}),
    ("missing-od", "asks", {"od": None}, {}),
    ("missing-wall", "asks", {"wall": None}, {}),
    ("missing-clr", "asks", {"clr": None}, {}),
    ("positive-sizes", "asks", {"wall": "0 in"}, {"wall": "0.0001 in"}),
    ("possible-wall", "asks", {"wall": "1.25 in"}, {"wall": "1.249 in"}),
    ("possible-clr", "asks", {"clr": "1.25 in"}, {"clr": "1.2501 in"}),
    # 1.5 / 0.05 is exactly 30
    (
        "wall-factor-limit",
        "declines",
        {"od": "1.5 in", "wall": "0.0499 in"},
        {"od": "1.5 in", "wall": "0.05 in"},
    ),
    # 2.5 x 2.5 = 6.25
    ("d-of-bend-limit", "declines", {"clr": "6.2499 in"}, {"clr": "6.25 in"}),
    ("unusual-wall-factor", "warns", {"wall": "0.0124 in"}, {"wall": "0.0125 in"}),
    ("unusual-d-of-bend", "warns", {"clr": "125.1 in"}, {"clr": "125 in"}),
    # a bore of exactly the clearance, 0.30 mm, leaves no mandrel
    (
        "room-for-mandrel",
        "asks",
        {"od": "6.3 mm", "wall": "3 mm", "clr": "30 mm"},
        {"od": "6.3 mm", "wall": "2.9 mm", "clr": "30 mm"},
    ),
    # flash may be left in ERW tube; the DOM table has no doubt for it
    (
        "doubtful-bore",
        "warns",
        {"od": "1.5 in", "wall": "0.065 in", "make": "ERW"},
        {"od": "1.5 in", "wall": "0.065 in", "make": "DOM"},
    ),
    # from 3 D on below a wall factor of 15: 2.5 / 15 = 0.1667
    ("mandrel-perhaps-not-needed", "notes", {"wall": "0.167 in"}, {"wall": "0.1666 in"}),
    ("missing-material", "notes", {"material": None}, {}),
    ("material-surface", "notes", {"material": Material.OTHER}, {"material": Material.BRASS}),
    ("die-on-hand", "notes", {"clr": "7.6 in"}, {}),
    # the sample shop has two mandrels for 1.75 x 0.120
    (
        "enough-on-hand",
        "notes",
        {"od": "1.75 in", "wall": "0.120 in", "quantity": 3},
        {"od": "1.75 in", "wall": "0.120 in", "quantity": 2},
    ),
    # 2 x 0.120 is in the catalogue, none on hand; 1.75 x 0.120 is on hand
    (
        "near-on-shelf",
        "notes",
        {"od": "2 in", "wall": "0.120 in"},
        {"od": "1.75 in", "wall": "0.120 in"},
    ),
]


@pytest.mark.parametrize(
    ("rule", "effect", "spoken", "quiet"), EITHER_SIDE, ids=[row[0] for row in EITHER_SIDE]
)
def test_each_rule_on_both_sides(
    rule: str, effect: str, spoken: dict[str, object], quiet: dict[str, object]
) -> None:
    found = findings(**spoken)  # type: ignore[arg-type]
    assert rule in found
    assert found[rule].effect == effect
    assert found[rule].text.endswith(".")
    assert rule not in findings(**quiet)  # type: ignore[arg-type]


def test_every_rule_has_its_row_above() -> None:
    # unusual_figures holds two ids, one a ratio; room_for_mandrel also tells of a rule that ends
    ids = {rule.__name__.replace("_", "-") for rule in RULES} - {"unusual-figures"}
    assert ids <= {row[0] for row in EITHER_SIDE}


@pytest.mark.parametrize("asked", [{"shape": Shape.SQUARE}, {"wall": "1.3 in"}, {"clr": "1 in"}])
def test_what_can_not_be_judged_is_not_declined(asked: dict[str, object]) -> None:
    thin_and_tight = {"wall": "0.02 in", "clr": "4 in"} | asked
    found = findings(**thin_and_tight)  # type: ignore[arg-type]
    assert "declines" not in {finding.effect for finding in found.values()}


TEXTS = [
    (
        {"od": "1.5 in", "wall": "0.065 in", "make": "ERW"},  # 1.370 - 0.019; 1.495 - 3 x 0.065
        "doubtful-bore",
        "The mandrel is worked out for the nominal bore, 1.37 in (34.798 mm); it can be as small "
        "as 1.351 in (34.315 mm) for ASTM A513 Type 2 (ERW, flash controlled to 0.005 in) or 1.3 "
        "in (33.02 mm) for ASTM A513 Type 2 (ERW, flash in). Please measure the smallest bore, "
        "inside weld bead included.",
    ),
    (
        {"make": "HREW"},  # 2.5 - 2 x 0.109
        "doubtful-bore",
        "The mandrel is worked out for a bore of 2.282 in (57.963 mm); a weld bead inside, as "
        "hot-rolled ERW (ASTM A513 Type 1) may have, is not counted. Please measure the smallest "
        "bore, inside weld bead included.",
    ),
    (
        {"od": "1.575 in", "wall": "0.05 in"},  # 1.575 / 0.05 = 31.5
        "wall-factor-limit",
        "Wall factor 31.5 is above our limit of 30 (house rule: no wiper die on this tooling).",
    ),
    (
        {"clr": "6 in"},  # 6 / 2.5 = 2.4
        "d-of-bend-limit",
        "D of bend 2.4 is below our limit of 2.5 (house rule: no wiper die on this tooling).",
    ),
    (
        {"wall": "1.3 in"},
        "possible-wall",
        "A wall of 1.300 in (33.02 mm) is more than half of the tube's OD, 2.5 in (63.5 mm): "
        "one of the two must be meant otherwise.",
    ),
    (
        {"od": "1.75 in", "clr": "5 in"},
        "die-on-hand",
        "We have no bend die for 1.75 in (44.45 mm) OD at 5 in (127 mm) CLR; the nearest we have "
        "for this OD: 4.5 in (114.3 mm) and 5.25 in (133.35 mm).",
    ),
    (
        {"od": "1.75 in", "wall": "0.120 in", "material": None},
        "missing-material",
        "FM-1750-120 (chromed tool steel) would fit by size; whether the surface suits depends on "
        "the material.",
    ),
    (
        {"od": "1.75 in", "wall": "0.120 in", "quantity": 5},
        "enough-on-hand",
        "FM-1750-120 would fit, but 5 are wanted and 2 on hand.",
    ),
    (
        {"od": "2 in", "wall": "0.120 in"},
        "near-on-shelf",
        "FM-2000-120 comes nearest on our shelf, but none is on hand.",
    ),
]


@pytest.mark.parametrize(("asked", "rule", "text"), TEXTS, ids=[row[1] for row in TEXTS])
def test_findings_are_plain_sentences_with_the_figures(
    asked: dict[str, object], rule: str, text: str
) -> None:
    assert findings(**asked)[rule].text == text  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("value", "limit", "text"),
    [
        ("31.5", "30", "31.5"),
        ("31.499", "30", "31.5"),
        ("30.004", "30", "30.004"),
        ("2.4999", "2.5", "2.4999"),
        ("2.5", "2.5", "2.5"),
        ("30", "30", "30"),
        ("30.00000000000000001", "30", "30.00000000000000001"),
    ],
)
def test_a_ratio_is_never_rounded_onto_its_limit(value: str, limit: str, text: str) -> None:
    assert ratio_text(Decimal(value), Decimal(limit)) == text
