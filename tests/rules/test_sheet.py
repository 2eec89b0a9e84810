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


def test_the_mandrel_is_told_with_all_that_is_known_of_it() -> None:
    found = figures(
        od_mm=parse_length("1.75 in"),
        wall_mm=parse_length("0.120 in"),
        clr_mm=parse_length("5.25 in"),
        material=Material.CARBON_STEEL,
        grade="DOM",
    )
    # C54 of check_values.csv (S29): at least 1.504 in; at most 1.510
    assert found["Bore by the tube's tolerances"].values == (
        parse_length("1.504 in"),
        parse_length("1.510 in"),
    )
    assert found["Need for a mandrel"].text == "may not be needed"  # WF 14.6 at 3 D (memory)
    assert found["Nose, pitch and wiper die"].text == "nose: none or plug, wiper die: no"
    assert "no wiper dies" in found["Nose, pitch and wiper die"].note
    furthest, advised = (
        found[name].values[0]
        for name in ("Furthest advance past the tangent", "Advance to start with")
    )
    assert advised == pytest.approx(furthest * 2 / 3, abs=Decimal("0.01"))
    # S06: 44 mm OD
    assert found["Advance past the tangent, a second opinion"].values


def test_where_the_make_is_not_said_or_leaves_the_bead_open_the_sheet_says_so() -> None:
    size = {"od_mm": parse_length("1.5 in"), "wall_mm": parse_length("0.065 in")}
    bore = "Bore by the tube's tolerances"
    assert "is not said" in figures(**size)[bore].outside
    erw = figures(**size, grade="ERW", material=Material.CARBON_STEEL)[bore]
    assert "inside flash" in erw.outside
    assert "1.351 in" in erw.note  # C55 of check_values.csv (S30)


def test_outside_the_tables_each_line_says_so() -> None:
    # 300 / 1 = 300 is the chart's last row, 400 lies beyond it; the advance table ends at 152 mm
    found = figures(
        od_mm=Decimal(400), wall_mm=Decimal(1), clr_mm=Decimal(1200), material=Material.OTHER
    )
    assert found["Balls"].outside
    assert found["Surface"].outside
    assert "outside that table" in found["Advance past the tangent, a second opinion"].outside


def test_where_no_mandrel_has_room_the_sheet_says_so() -> None:
    found = figures(od_mm=Decimal("6.3"), wall_mm=Decimal(3), clr_mm=Decimal(30))
    assert "leaves no mandrel" in found["Mandrel diameter"].outside
    assert "Balls" not in found
