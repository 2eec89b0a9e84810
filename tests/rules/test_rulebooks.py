"""What rule books are told to say: for which uses, on which side of a limit, in which words."""

from __future__ import annotations

import csv
import json
from decimal import Decimal
from pathlib import Path

import pytest

from bendreply.rules.assess import assess
from bendreply.rules.assessment import Decision, Finding
from bendreply.rules.request import Material, SizeRequest
from bendreply.rules.rulebooks import USE_WORDS, rule_book_findings, rule_book_lines
from bendreply.rules.shop import sample_shop
from bendreply.rules.units import parse_length, to_mm

D = Decimal
CHECK_VALUES = Path(__file__).parents[1] / "data" / "check_values.csv"


def tube(od: str, clr: str, **more: object) -> SizeRequest:
    return SizeRequest(
        od_mm=parse_length(od),
        wall_mm=parse_length("0.095 in"),
        clr_mm=parse_length(clr),
        material=Material.CARBON_STEEL,
        **more,  # type: ignore[arg-type]
    )


def told(request: SizeRequest, *uses: str, can_be_bent: bool = True) -> list[Finding]:
    return list(rule_book_findings(request, uses, can_be_bent=can_be_bent))


def row_of(topic: str) -> tuple[dict[str, Decimal], Decimal]:
    with CHECK_VALUES.open(encoding="utf-8") as file:
        row = next(row for row in csv.DictReader(file) if row["topic"] == topic)
    return json.loads(row["inputs"], parse_float=D, parse_int=D), D(row["expected"])


@pytest.mark.parametrize(
    ("topic", "unit", "key"), [("fia_min_clr", "mm", "od_mm"), ("fsae_min_clr", "in", "od_in")]
)
def test_the_smallest_cage_radius_is_as_published(topic: str, unit: str, key: str) -> None:
    values, smallest = row_of(topic)
    od_mm, clr_mm = to_mm(values[key], unit), to_mm(smallest, unit)
    at, below = (
        SizeRequest(od_mm=od_mm, wall_mm=D(2), clr_mm=radius)
        for radius in (clr_mm, clr_mm - D("0.01"))
    )
    assert [f.effect for f in told(at, "cage")] == ["notes"]
    assert [f.effect for f in told(below, "cage")] == ["warns"]


def test_a_bend_that_we_can_make_but_a_rule_book_forbids_is_said_so() -> None:
    # 1.75 in at 4.725 in is 2.7 D: above our 2.5, below the 3 of the books.
    found = assess(tube("1.75 in", "4.725 in"), sample_shop(), ("cage",))
    assert found.decision in (Decision.STOCK, Decision.CUSTOM_MAKE)
    (finding,) = [f for f in found.findings if f.rule == "rule-book-cage"]
    assert finding.effect == "warns"
    assert "2.7 x OD" in finding.text
    assert "our tooling can bend that, but FIA Appendix J Art. 253-8.3.3" in finding.text
    assert "Formula SAE F.5.2.1" in finding.text
    assert "edition in force" in finding.text
    assert "S17" in finding.source


def test_the_decision_is_the_same_with_and_without_a_use() -> None:
    for clr in ("3.5 in", "4.5 in", "5.25 in"):
        request = tube("1.75 in", clr)
        plain = assess(request, sample_shop())
        for use in USE_WORDS:
            assert assess(request, sample_shop(), (use,)).decision is plain.decision


def test_nobody_is_told_that_we_could_bend_what_is_declined() -> None:
    (finding,) = told(tube("1.75 in", "3.5 in"), "cage", can_be_bent=False)
    assert "our tooling can" not in finding.text
    assert "at least 3 x OD" in finding.text


def test_a_race_seat_in_a_cage_is_said_once() -> None:
    assert len(told(tube("1.75 in", "4.5 in"), "cage", "seat")) == 1
    assert len(told(tube("1.75 in", "4.5 in"), "seat")) == 1


def test_aircraft_lines_keep_three_quarters_of_the_diameter() -> None:
    # FAA by S20: 0.5 in leaves 0.375 in (check value C43).
    (finding,) = told(tube("0.5 in", "1.5 in"), "aircraft")
    assert finding.effect == "notes"
    assert "0.375 in" in finding.text
    assert "75 %" in finding.text


@pytest.mark.parametrize(
    ("clr", "says"),
    [
        ("9 in", "1.08 times"),  # 9 / 1.8 = 5 diameters: table row, S11
        ("8.1 in", "1.11 times"),  # 4.5 diameters: check value C28
        ("5 in", "says nothing below 3 diameters"),
    ],
)
def test_pressure_is_told_the_wall_to_order(clr: str, says: str) -> None:
    finding = next(f for f in told(tube("1.8 in", clr), "pressure") if f.rule.endswith("-wall"))
    assert says in finding.text
    assert "licensed engineer" in finding.text
    assert finding.effect == "notes"


def test_pipe_is_counted_by_its_nominal_size() -> None:
    pipe = tube("2.375 in", "6 in", nominal_pipe="NPS 2 schedule 40")
    finding = next(f for f in told(pipe, "pressure") if f.rule.endswith("-wall"))
    assert finding.measured == D(3)
    assert "1.25 times" in finding.text


def test_a_boiler_tube_is_told_its_roundness() -> None:
    # 20 / 2.5 = 8 % (check value C46)
    finding = next(
        f for f in told(tube("2 in", "5 in"), "boiler") if f.rule.endswith("-circularity")
    )
    assert "8 %" in finding.text


def test_common_practice_without_a_source_only_notes() -> None:
    (finding,) = told(tube("1 in", "2.6 in"), "hydraulic")
    assert finding.effect == "notes"
    assert "no source found" in finding.source


def test_without_a_use_or_a_size_nothing_is_told() -> None:
    assert told(tube("1.75 in", "4.5 in")) == []
    assert told(SizeRequest(od_mm=D(40)), "cage", "pressure", "aircraft") == []
    assert told(SizeRequest(od_mm=D(40), clr_mm=D(20)), "cage", "pressure") == []


def test_no_finding_certifies() -> None:
    for use in USE_WORDS:
        for clr in ("4.4 in", "5.25 in", "12 in"):
            for finding in told(tube("1.75 in", clr), use):
                assert finding.effect in ("warns", "notes")
                assert not {"complies", "certified", "approved", "legal"} & set(
                    finding.text.casefold().split()
                )
                assert "in force" in finding.text


def test_each_row_says_whence_and_how_sure() -> None:
    lines = rule_book_lines()
    assert len({line.id for line in lines}) == len(lines) == 27
    for line in lines:
        assert line.book
        assert line.says
        assert line.source
        assert line.how_sure
        assert set(line.uses) <= set(USE_WORDS)
