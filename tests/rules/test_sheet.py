"""The sheet of a bend: each figure with its formula and source, or a reason why there is none."""

from __future__ import annotations

from decimal import Decimal

import pytest

from bendreply.rules.assess import assess
from bendreply.rules.request import Material, SizeRequest
from bendreply.rules.sheet import Figure, sheet
from bendreply.rules.shop import sample_shop
from bendreply.rules.units import parse_length


def figures(**more: object) -> dict[str, Figure]:
    values: dict[str, object] = {
        "od_mm": parse_length("2 in"),
        "wall_mm": parse_length("0.083 in"),
        "clr_mm": parse_length("6 in"),
        "material": Material.STAINLESS_STEEL,
        "grade": "304",
        "angle_deg": Decimal(90),
        **more,
    }
    request = SizeRequest(**values)  # type: ignore[arg-type]
    sections = sheet(assess(request, sample_shop()), sample_shop())
    return {figure.name: figure for section in sections for figure in section.figures}


def test_every_figure_says_whence() -> None:
    for figure in figures().values():
        assert figure.formula
        assert figure.source
        assert figure.values or figure.text or figure.outside
        if figure.values:
            assert not figure.outside


def test_a_few_figures() -> None:
    found = figures()
    assert found["D of bend"].values == (Decimal(3),)
    # 2 in / (2 x 6 in) = 1/6; 304 is listed with 35 %
    assert found["Strain of the outer fibre"].values[0] == pytest.approx(Decimal(100) / 6)
    (share,) = found["Stretch needed / elongation listed"].values
    assert share == pytest.approx(Decimal(100) / 6 / 35)
    # at 3 D: TEMA 1/13, B31.1 order factor 1 - 1/1.25
    assert found["Thinning at the outside of the bend"].values == (
        pytest.approx(Decimal(100) / 13),
        pytest.approx(Decimal(20)),
    )
    assert found["Clamp length preferred"].values == (Decimal("152.4"),)


def test_springback_is_a_range_over_the_flow_stress() -> None:
    low, high = figures()["Springback of a bend"].values
    # 304: yield 207, tensile 517 MPa, and springback is proportional to the flow stress
    assert high / low == pytest.approx(Decimal(517) / 207)


def test_without_angle_or_grade_the_reason_stands_in_place_of_a_figure() -> None:
    found = figures(angle_deg=None, grade="DOM", material=Material.CARBON_STEEL)
    assert found["Length of the bend along the centreline"].outside == "no bend angle is given"
    assert "no grade is named" in found["Stretch needed / elongation listed"].outside
    assert "no grade is named" in found["Moment that bends the tube"].outside
    assert not found["Springback of a bend"].values


def test_below_the_table_no_order_factor_is_given() -> None:
    found = figures(clr_mm=parse_length("5.5 in"))
    assert "below 3" in found["Wall to order / wall needed, ASME B31.1"].outside
    assert "below 3" in found["Thinning at the outside of the bend"].note


@pytest.mark.parametrize("gap", ["od_mm", "wall_mm", "clr_mm"])
def test_an_incomplete_bend_has_no_sheet(gap: str) -> None:
    assert figures(**{gap: None}) == {}
