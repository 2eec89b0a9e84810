"""What is told beside the decision: stretch against the listed material, lead time, price."""

from __future__ import annotations

from datetime import date
from decimal import Decimal

import pytest

from bendreply.rules.assess import assess
from bendreply.rules.assessment import Assessment, Decision, Finding
from bendreply.rules.listed import listed
from bendreply.rules.request import Material, SizeRequest
from bendreply.rules.shop import Shop, sample_shop
from bendreply.rules.shop_prices import Prices
from bendreply.rules.units import parse_length

STEEL, CHROMOLY = Material.CARBON_STEEL, Material.ALLOY_STEEL
STAINLESS, ALUMINIUM = Material.STAINLESS_STEEL, Material.ALUMINIUM


def judged(
    d_of_bend: str,
    grade: str | None,
    material: Material,
    shop: Shop | None = None,
    needed_by: date | None = None,
) -> Assessment:
    od_mm = parse_length("1.7 in")  # an odd size: never on the shelf
    request = SizeRequest(
        od_mm=od_mm,
        wall_mm=parse_length("0.095 in"),
        clr_mm=od_mm * Decimal(d_of_bend),
        material=material,
        grade=grade,
        needed_by=needed_by,
    )
    return assess(request, shop or sample_shop(), today=date(2026, 11, 2))


def finding(assessment: Assessment, rule: str) -> Finding | None:
    return next((f for f in assessment.findings if f.rule == rule), None)


# Stretch is 50 / D of bend in %; listed figures are those of materials.csv.
@pytest.mark.parametrize(
    ("d_of_bend", "grade", "material", "says"),
    [
        ("2.5", "304", STAINLESS, None),  # 20 of 35 %
        ("5", "DOM 1020", STEEL, None),  # 10 of 10 %: exactly on it is fine
        ("4.9", "DOM 1020", STEEL, "please tell us the temper."),  # 10.2 of 10 %
        ("2.5", "DOM 1020", STEEL, "please tell us the temper."),  # 20 of 10 %: twice, not more
        ("3.125", "6061-T6", ALUMINIUM, "8 %; please tell us the elongation on"),  # T6 is said
        ("3", "6061-T6", ALUMINIUM, "mill certificate"),  # 16.7 of 8 %: more than twice
        ("3", "6061", ALUMINIUM, "8 to 22 %"),  # any temper may be meant
        ("3", "4130", CHROMOLY, "12 to 30 %"),
        ("2.5", "DOM", STEEL, None),  # a family, not a material
        ("2.5", "mild steel", STEEL, None),
        ("2.5", None, STEEL, None),
        ("2.5", "4130", STAINLESS, None),  # contradicts the family: nothing is listed
    ],
)
def test_stretch_beyond_what_is_listed(
    d_of_bend: str, grade: str | None, material: Material, says: str | None
) -> None:
    assessment = judged(d_of_bend, grade, material)
    assert assessment.decision is Decision.CUSTOM_MAKE  # whatever the stretch: it only advises
    found = finding(assessment, "elongation")
    if says is None:
        assert found is None
    else:
        assert found is not None
        assert found.effect == "warns"
        assert says in found.text


def test_a_decline_asks_no_temper() -> None:
    assessment = judged("2", "6061-T6", ALUMINIUM)
    assert assessment.decision is Decision.DECLINE
    assert finding(assessment, "elongation") is None


@pytest.mark.parametrize(
    ("grade", "names"),
    [
        ("6061-T6", ["6061-T6 drawn", "6061-T6 extruded"]),
        ("304", ["304"]),
        ("stainless 304L", ["304L"]),
        ("e235 +n", ["E235+N"]),
        ("Grade 2", ["CP-2 titanium"]),
        ("1020 DOM", ["DOM 1020"]),
        ("ERW", []),
        ("chromoly", []),
        ("T6", []),
        ("99", []),
        ("", []),
    ],
)
def test_which_materials_a_grade_may_mean(grade: str, names: list[str]) -> None:
    assert [entry.name for entry in listed(grade, None)] == names


def test_no_price_unless_the_shop_has_one() -> None:
    assert sample_shop().prices is None
    assert finding(judged("3", "304", STAINLESS), "custom-price") is None


@pytest.mark.parametrize(
    ("up_to", "price"), [("1.7 in", "USD 240"), ("1.69 in", None), (None, "USD 240")]
)
def test_the_shops_own_price_is_told_as_it_stands(up_to: str | None, price: str | None) -> None:
    band = {"price": "USD 240", **({"tube_od_up_to": up_to} if up_to else {})}
    prices = Prices.model_validate({"custom": [band]})
    found = finding(
        judged("3", "304", STAINLESS, sample_shop().model_copy(update={"prices": prices})),
        "custom-price",
    )
    assert (found is not None) is (price is not None)
    if found is not None:
        assert price is not None
        assert price in found.text


def test_prices_have_to_ascend() -> None:
    bands = [
        {"tube_od_up_to": "2 in", "price": "USD 240"},
        {"tube_od_up_to": "1 in", "price": "USD 190"},
    ]
    with pytest.raises(ValueError, match="ascend"):
        Prices.model_validate({"custom": bands})


def test_lead_time_is_told_where_something_is_to_leave() -> None:
    early = date(2026, 11, 9)
    custom = judged("3", "304", STAINLESS, needed_by=early)
    found = finding(custom, "lead-time")
    assert found is not None
    assert found.effect == "warns"
    assert custom.decision is Decision.CUSTOM_MAKE
    assert finding(judged("2", "304", STAINLESS, needed_by=early), "lead-time") is None
