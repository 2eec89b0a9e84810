"""One decision for a request, whatever is missing or in doubt in it."""

from __future__ import annotations

from decimal import Decimal
from itertools import product
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bendreply.rules.assess import assess
from bendreply.rules.assessment import Assessment, Decision
from bendreply.rules.request import LENGTH_FIELDS, Doubt, Material, Shape, SizeRequest
from bendreply.rules.shop import sample_shop
from bendreply.rules.units import parse_length

STOCK, CUSTOM, DECLINE, ASK = (
    Decision.STOCK,
    Decision.CUSTOM_MAKE,
    Decision.DECLINE,
    Decision.ASK,
)
STEEL, CHROMOLY = Material.CARBON_STEEL, Material.ALLOY_STEEL


def request(
    od: str | None,
    wall: str | None,
    clr: str | None,
    material: Material | None = STEEL,
    **more: Any,
) -> SizeRequest:
    lengths = [parse_length(text) if text else None for text in (od, wall, clr)]
    return SizeRequest(
        od_mm=lengths[0], wall_mm=lengths[1], clr_mm=lengths[2], material=material, **more
    )


def judged(*args: Any, **more: Any) -> Assessment:
    return assess(request(*args, **more), sample_shop())


def doubt(field: Any, *readings: str, why: str = "two readings") -> Doubt:
    lengths = field in ("od", "wall", "clr")
    return Doubt(
        field=field,
        readings=tuple(parse_length(r) if lengths else r for r in readings),
        why=why,
    )


def rules(assessment: Assessment, effect: str) -> list[str]:
    return [finding.rule for finding in assessment.findings if finding.effect == effect]


OUTCOMES = [
    # Common practice, no published source:
    ("1.25 in", "0.049 in", "3.5 in", STEEL, CUSTOM, "practice: WF 25.5, D 2.8 is bent"),
    ("1.625 in", "0.083 in", "4.5 in", CHROMOLY, CUSTOM, "practice: WF 19.6, D 2.77 is bent"),
    ("1.55 in", "0.05 in", "6 in", STEEL, DECLINE, "practice: WF 31 is not"),
    ("2 in", "0.120 in", "4.8 in", STEEL, DECLINE, "practice: D 2.4 is not"),
    # Both sides of each limit:
    ("1.5 in", "0.05 in", "4.5 in", STEEL, CUSTOM, "WF exactly 30"),
    ("1.5 in", "0.0499 in", "4.5 in", STEEL, DECLINE, "WF just above 30"),
    ("38.1 mm", "1.27 mm", "114.3 mm", STEEL, CUSTOM, "WF exactly 30, in mm"),
    ("1.9 in", "0.109 in", "4.75 in", STEEL, CUSTOM, "D exactly 2.5"),
    ("1.9 in", "0.109 in", "4.7499 in", STEEL, DECLINE, "D just below 2.5"),
    # On the shelf, and not:
    ("1.75 in", "0.120 in", "5.25 in", STEEL, STOCK, "a mandrel on hand"),
    ("1.75 in", "11.9 mm", "5.25 in", STEEL, CUSTOM, "another wall"),
    ("1.75 in", "0.120 in", "5.25 in", Material.STAINLESS_STEEL, CUSTOM, "only a chromed one"),
    ("2 in", "0.120 in", "6 in", STEEL, CUSTOM, "none on hand"),
    ("48.3 mm", "3.683 mm", "150 mm", STEEL, STOCK, "1-1/2 pipe by its European OD"),
    # Missing:
    (None, "0.120 in", "5.25 in", STEEL, ASK, "no OD"),
    ("1.75 in", None, "5.25 in", STEEL, ASK, "no wall"),
    ("1.75 in", "0.120 in", None, STEEL, ASK, "no CLR"),
    (None, None, None, None, ASK, "nothing"),
    ("1.75 in", "0.049 in", None, STEEL, DECLINE, "OD and wall alone: WF 35.7"),
    ("1.75 in", None, "4 in", STEEL, DECLINE, "OD and CLR alone: D 2.29"),
    ("1.75 in", "0.120 in", "5.25 in", None, ASK, "material settles whether the shelf serves"),
    ("1.75 in", "0.134 in", "5.25 in", None, CUSTOM, "nothing on the shelf for any material"),
    # Impossible:
    ("1.75 in", "0.875 in", "4 in", STEEL, ASK, "a wall of OD/2"),
    ("1.75 in", "0.049 in", "0.875 in", STEEL, ASK, "a CLR of OD/2"),
    ("0 in", "0.049 in", "4 in", STEEL, ASK, "no size"),
]


@pytest.mark.parametrize(
    ("od", "wall", "clr", "material", "decision"),
    [row[:5] for row in OUTCOMES],
    ids=[row[5] for row in OUTCOMES],
)
def test_decisions(
    od: str | None, wall: str | None, clr: str | None, material: Material | None, decision: Decision
) -> None:
    assert judged(od, wall, clr, material).decision is decision


def test_figures_are_those_of_the_request_as_stated() -> None:
    found = judged("1.75 in", "0.120 in", "5.25 in")
    assert found.wall_factor is not None
    assert round(found.wall_factor, 3) == Decimal("14.583")  # 1.75 / 0.12
    assert found.d_of_bend == 3  # 5.25 / 1.75
    assert found.mandrel is not None
    assert found.mandrel.bore_mm == Decimal("38.354")  # (1.75 - 0.24) x 25.4
    assert found.stock is not None
    assert (found.stock.part, found.stock.on_hand) == ("FM-1750-120", 2)


def test_more_wanted_than_on_hand_are_made() -> None:
    found = judged("1.75 in", "0.120 in", "5.25 in", quantity=3)
    assert (found.decision, found.stock) == (CUSTOM, None)
    assert "enough-on-hand" in rules(found, "notes")


def test_a_square_tube_goes_to_a_person() -> None:
    found = judged(None, "0.05 in", "4 in", shape=Shape.SQUARE)
    assert found.decision is ASK
    assert rules(found, "asks") == ["shape"]


def test_a_decline_asks_nothing() -> None:
    found = judged("1.75 in", "0.049 in", None, None)
    assert rules(found, "asks") == []
    assert all(finding.question is None for finding in found.findings)


def test_a_missing_material_that_settles_nothing_is_asked_along_the_way() -> None:
    found = judged("1.75 in", "0.134 in", "5.25 in", None)
    (finding,) = [f for f in found.findings if f.rule == "missing-material"]
    assert (finding.effect, finding.question) == ("notes", "What is the tube's material?")


# -- doubts ------------------------------------------------------------------------------------

FEASIBLE = ("1.75 in", "0.083 in", "5.25 in")  # on the shelf as FM-1750-083

DOUBTS = [
    # what is doubtful, the decision, whether the doubt is asked or noted
    ("no difference", FEASIBLE, (doubt("clr", "5.25 in", "6 in"),), STOCK, "notes"),
    ("stock or not", FEASIBLE, (doubt("clr", "5.25 in", "11 in"),), ASK, "asks"),
    ("feasible or not", FEASIBLE, (doubt("clr", "5.25 in", "4 in"),), ASK, "asks"),
    ("only to confirm", FEASIBLE, (doubt("clr", "5.25 in"),), STOCK, "notes"),
    ("two mandrels on the shelf", FEASIBLE, (doubt("wall", "0.083 in", "0.095 in"),), ASK, "asks"),
    ("one mandrel serves both", FEASIBLE, (doubt("wall", "0.083 in", "2.1 mm"),), STOCK, "notes"),
    ("an OD only to confirm", FEASIBLE, (doubt("od", "1.75 in"),), ASK, "asks"),
    (
        "two to be made",
        ("2.5 in", "0.109 in", "7.5 in"),
        (doubt("od", "2.5 in", "2.75 in"),),
        ASK,
        "asks",
    ),
    (
        "broken under both",
        ("1.75 in", "0.035 in", "5.25 in"),
        (doubt("wall", "0.035 in", "0.028 in"),),
        DECLINE,
        "notes",
    ),
    (
        "broken as first read only",
        ("1.75 in", "0.028 in", "5.25 in"),
        (doubt("wall", "0.028 in", "0.083 in"),),
        ASK,
        "asks",
    ),
    (
        "the other reading can't be",
        ("1.75 in", "0.049 in", "5.25 in"),
        (doubt("wall", "0.049 in", "1 in"),),
        DECLINE,
        "notes",
    ),
    (
        "material that settles nothing",
        FEASIBLE,
        (doubt("material", "carbon_steel", "alloy_steel"),),
        STOCK,
        "notes",
    ),
    (
        "material that settles the shelf",
        FEASIBLE,
        (doubt("material", "carbon_steel", "stainless_steel"),),
        ASK,
        "asks",
    ),
    ("shape", FEASIBLE, (doubt("shape", "round", "rectangular"),), ASK, "asks"),
    ("number on hand or not", FEASIBLE, (doubt("quantity", "1", "4"),), ASK, "asks"),
    ("a date", FEASIBLE, (doubt("needed_by", "2026-11-04", "2026-04-11"),), STOCK, "notes"),
]


@pytest.mark.parametrize(
    ("size", "doubts", "decision", "effect"),
    [row[1:] for row in DOUBTS],
    ids=[r[0] for r in DOUBTS],
)
def test_a_doubt_is_asked_only_where_the_answer_hangs_on_it(
    size: tuple[str, str, str], doubts: tuple[Doubt, ...], decision: Decision, effect: str
) -> None:
    found = judged(*size, doubts=doubts)
    assert found.decision is decision
    assert f"doubt-{doubts[0].field}" in rules(found, effect)


def test_whether_a_size_is_wanted_is_one_question() -> None:
    """OD, wall, radius and material are doubted for one reason: that it may only be mentioned."""
    said = (doubt("od", "1.75 in"), doubt("wall", "0.095 in"), doubt("material", "carbon_steel"))
    doubts = tuple(one.model_copy(update={"about": "size"}) for one in said)
    asked = judged("1.75 in", "0.095 in", "5.25 in", doubts=doubts)
    assert asked.decision is Decision.ASK
    questions = [f.question for f in asked.findings if f.rule.startswith("doubt-")]
    assert questions == ["Is a mandrel wanted for the tube of 1.75 in (44.45 mm) OD?"]


def test_a_doubt_names_which_answer_leads_where() -> None:
    found = judged(*FEASIBLE, doubts=(doubt("wall", "0.083 in", "0.028 in", why="smudged"),))
    assert found.findings[0].text == (
        "The wall can be read as 0.083 in (2.108 mm) or 0.028 in (0.711 mm) (smudged). "
        "If 0.083 in (2.108 mm): FM-1750-083 from our shelf; "
        "if 0.028 in (0.711 mm): not likely to be feasible (wall factor 62.5)."  # 1.75 / 0.028
    )
    assert found.findings[0].question == (
        "Which wall is meant: 0.083 in (2.108 mm) or 0.028 in (0.711 mm)?"
    )


def test_a_question_carries_where_each_answer_leads() -> None:
    # 1.625 / 0.065 = 25 is made; 2.125 / 0.065 = 32.7 is above 30
    asked = judged("1.625 in", "0.065 in", "6 in", doubts=(doubt("od", "1.625 in", "2.125 in"),))
    (finding,) = [f for f in asked.findings if f.effect == "asks"]
    assert finding.leads == (
        "if 1.625 in (41.275 mm): we would make the mandrel",
        "if 2.125 in (53.975 mm): not likely to be feasible (wall factor 32.69)",
    )


def test_a_limit_broken_as_first_read_is_not_told_as_a_decline() -> None:
    found = judged(
        "1.75 in", "0.028 in", "5.25 in", doubts=(doubt("wall", "0.028 in", "0.083 in"),)
    )
    assert rules(found, "declines") == []
    assert "wall-factor-limit" in rules(found, "warns")
    assert found.alternatives == ()


def test_a_value_that_could_not_be_settled_is_asked_once() -> None:
    found = judged("1.75 in", "0.083 in", None, doubts=(doubt("clr", "5.25 in", "6 in"),))
    assert found.decision is ASK
    assert [f.rule for f in found.findings if f.field == "clr"] == ["doubt-clr"]


def test_too_many_readings_are_asked_not_worked_out() -> None:
    many = [f"{n}.5 in" for n in range(3, 13)]
    walls = [f"0.{n} in" for n in range(105, 115)]
    found = judged(
        "1.75 in", walls[0], many[0], doubts=(doubt("clr", *many), doubt("wall", *walls))
    )
    assert found.decision is ASK
    assert "too-many-readings" in rules(found, "asks")


# -- properties --------------------------------------------------------------------------------


def sixty_fourths(lowest: int, highest: int) -> st.SearchStrategy[Decimal]:
    """Lengths in mm, by 1/64 in."""
    return st.integers(lowest, highest).map(lambda n: n * Decimal("25.4") / 64)


ods = sixty_fourths(16, 256)
walls = sixty_fourths(1, 24)
radii = sixty_fourths(16, 1024)
materials = st.sampled_from([None, *Material])


@given(ods, walls, radii, sixty_fourths(0, 256), materials)
def test_a_larger_clr_never_turns_a_feasible_bend_into_a_decline(
    od: Decimal, wall: Decimal, clr: Decimal, more: Decimal, material: Material | None
) -> None:
    tight = SizeRequest(od_mm=od, wall_mm=wall, clr_mm=clr, material=material)
    wide = tight.model_copy(update={"clr_mm": clr + more})
    if assess(tight, sample_shop()).decision in (STOCK, CUSTOM):
        assert assess(wide, sample_shop()).decision is not DECLINE


@given(ods, walls, radii, walls, materials)
def test_a_heavier_wall_never_turns_a_feasible_bend_into_a_decline(
    od: Decimal, wall: Decimal, clr: Decimal, more: Decimal, material: Material | None
) -> None:
    thin = SizeRequest(od_mm=od, wall_mm=wall, clr_mm=clr, material=material)
    heavy = thin.model_copy(update={"wall_mm": wall + more})
    if assess(thin, sample_shop()).decision in (STOCK, CUSTOM):
        assert assess(heavy, sample_shop()).decision is not DECLINE


@given(st.none() | ods, st.none() | walls, st.none() | radii, materials)
def test_the_unit_a_size_is_written_in_changes_no_decision(
    od: Decimal | None, wall: Decimal | None, clr: Decimal | None, material: Material | None
) -> None:
    inches = SizeRequest(od_mm=od, wall_mm=wall, clr_mm=clr, material=material, written_in="in")
    metric = inches.model_copy(update={"written_in": "mm"})
    first, second = assess(inches, sample_shop()), assess(metric, sample_shop())
    assert first.decision is second.decision
    assert (first.stock, first.wall_factor) == (second.stock, second.wall_factor)


doubtful = st.sampled_from(["od", "wall", "clr"]).flatmap(
    lambda field: st.lists(walls | ods | radii, min_size=1, max_size=3).map(
        lambda values: Doubt(field=field, readings=tuple(values), why="x")
    )
)


@given(
    st.none() | ods, st.none() | walls, st.none() | radii, materials, st.lists(doubtful, max_size=3)
)
def test_an_answer_given_in_doubt_holds_for_every_reading(
    od: Decimal | None,
    wall: Decimal | None,
    clr: Decimal | None,
    material: Material | None,
    doubts: list[Doubt],
) -> None:
    by_field = {d.field: d for d in doubts}
    asked = SizeRequest(
        od_mm=od, wall_mm=wall, clr_mm=clr, material=material, doubts=tuple(by_field.values())
    )
    found = assess(asked, sample_shop())
    if found.decision is ASK:
        assert rules(found, "asks")
        return
    assert not rules(found, "asks")
    options = [
        {v for v in (asked.length_mm(f), *(by_field[f].readings if f in by_field else ())) if v}
        or {None}
        for f in LENGTH_FIELDS
    ]
    for settled in product(*options):
        lengths = dict(zip(("od_mm", "wall_mm", "clr_mm"), settled, strict=True))
        again = assess(asked.model_copy(update={**lengths, "doubts": ()}), sample_shop())
        impossible = {"possible-wall", "possible-clr"} & set(rules(again, "asks"))
        assert again.decision is found.decision or impossible
