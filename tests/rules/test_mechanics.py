"""Formulas of bend mechanics against published figures, numeric integration, and themselves."""

from __future__ import annotations

import csv
import doctest
import importlib
import inspect
import json
from collections.abc import Callable
from decimal import Decimal
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import integrate

from bendreply.rules.formula import Outside, described
from bendreply.rules.mechanics import FORMULAS
from bendreply.rules.ovality import (
    boiler_tube_limit_pct,
    flattening_pct,
    out_of_roundness_pct,
    roundness_ratio,
    smallest_diameter_faa,
)
from bendreply.rules.pressure_wall import extrados_factor, intrados_factor, pressure_wall
from bendreply.rules.springback import (
    FULLY_PLASTIC,
    flow_stress_range,
    plastic_modulus,
    plastic_moment,
    second_moment,
    springback_deg,
)
from bendreply.rules.strain import (
    elastic_limit_radius,
    elongation_share,
    extrados_strain,
    intrados_strain,
    smallest_d_by_elongation,
)
from bendreply.rules.thinning import (
    b31_1_extrados_wall,
    b31_1_order_factor,
    extrados_wall,
    handbook_extrados_wall,
    intrados_wall,
    tema_extrados_wall,
    tema_wall_before,
    thinning_range,
)
from bendreply.rules.tooling_lengths import (
    arc_length,
    clamp_length,
    pressure_die_length,
    straight_between_bends,
)
from bendreply.rules.units import to_mm

D = Decimal
CHECK_VALUES = Path(__file__).parents[1] / "data" / "check_values.csv"


def figure(result: Decimal | Outside) -> Decimal:
    assert isinstance(result, Decimal), result
    return result


def inch(value: Decimal) -> Decimal:
    return to_mm(value, "in")


def thinned_pct(wall: Callable[..., Decimal | Outside], d_of_bend: Decimal) -> Decimal:
    """Thinning [%] of a wall of 1 in a tube of 20 bent to ``d_of_bend``."""
    after = figure(wall(od_mm=D(20), wall_mm=D(1), clr_mm=20 * d_of_bend))
    return 100 * (1 - after)


def elongation_needed(values: dict[str, Decimal]) -> Decimal:
    od_mm, clr_mm = (
        (values["od_mm"], values["clr_mm"]) if "od_mm" in values else (D(1), values["d_of_bend"])
    )
    return 100 * figure(extrados_strain(od_mm=od_mm, clr_mm=clr_mm))


def b313(values: dict[str, Decimal], factor: Callable[..., Decimal | Outside]) -> Decimal:
    wall_factor = figure(factor(d_of_bend=values["R"] / values["D"]))
    return figure(
        pressure_wall(
            pressure_mpa=values["P"],
            od_mm=values["D"],
            stress_mpa=values["S"],
            factor=wall_factor,
            quality=values["E"],
            weld=values["W"],
            y=values["Y"],
        )
    )


def od_wall(values: dict[str, Decimal]) -> dict[str, Decimal]:
    return {"od_mm": values["od_mm"], "wall_mm": values["wall_mm"]}


# topic of check_values.csv -> how the figure is worked out here, in the row's own unit
WORKED: dict[str, Callable[[dict[str, Any]], Decimal]] = {
    "elongation_needed_pct": elongation_needed,
    "elastic_limit_radius": lambda v: (
        figure(elastic_limit_radius(od_mm=inch(v["od_in"]), yield_strain=v["yield_strain"]))
        / inch(D(1))
    ),
    "thinning_trade": lambda v: figure(
        extrados_wall(od_mm=v["od"], wall_mm=v["wall"], clr_mm=v["clr"])
    ),
    "thinning_trade_pct": lambda v: thinned_pct(extrados_wall, v["d_of_bend"]),
    "intrados_thickening_pct": lambda v: -thinned_pct(intrados_wall, v["d_of_bend"]),
    "tema_t0": lambda v: figure(
        tema_wall_before(od_mm=v["d0_mm"], wall_mm=v["t1_mm"], clr_mm=v["R_mm"])
    ),
    "tema_thinning_pct": lambda v: thinned_pct(tema_extrados_wall, v["d_of_bend"]),
    "b311_order_factor": lambda v: figure(b31_1_order_factor(diameters=v["R_over_D"])),
    "I_intrados": lambda v: figure(intrados_factor(d_of_bend=v["R"] / v["D"])),
    "I_extrados": lambda v: figure(extrados_factor(d_of_bend=v["R"] / v["D"])),
    "b313_t_intrados": lambda v: b313(v, intrados_factor),
    "b313_t_extrados": lambda v: b313(v, extrados_factor),
    "ovality_b31_pct": lambda v: figure(
        flattening_pct(largest_mm=v["dmax"], smallest_mm=v["dmin"], od_mm=v["dnom"])
    ),
    "ovality_en_pct": lambda v: figure(
        out_of_roundness_pct(largest_mm=v["dmax"], smallest_mm=v["dmin"])
    ),
    "ovality_fia_ratio": lambda v: figure(
        roundness_ratio(largest_mm=v["dmax"], smallest_mm=v["dmin"])
    ),
    "ovality_fia_ratio_as_en_pct": lambda v: figure(
        out_of_roundness_pct(largest_mm=D(1), smallest_mm=v["ratio"])
    ),
    "faa_min_flattened": lambda v: (
        figure(smallest_diameter_faa(od_mm=inch(v["od_in"]))) / inch(D(1))
    ),
    "ubend_ovality_limit_pct": lambda v: figure(boiler_tube_limit_pct(d_of_bend=v["rm_over_da"])),
    "plastic_modulus": lambda v: figure(plastic_modulus(**od_wall(v))),
    # the row is in kN m, the function in N m
    "plastic_moment": lambda v: figure(plastic_moment(**od_wall(v), flow_mpa=v["flow_mpa"])) / 1000,
    "springback_deg_90": lambda v: figure(
        springback_deg(
            **od_wall(v),
            clr_mm=v["clr_mm"],
            angle_deg=D(90),
            flow_mpa=v["flow_mpa"],
            e_gpa=v["E_gpa"],
        )
    ),
    "clamp_length_preferred": lambda v: figure(clamp_length(od_mm=inch(v["od_in"]))) / inch(D(1)),
    "pressure_die_length_180": lambda v: (
        figure(
            pressure_die_length(od_mm=inch(v["od_in"]), clr_mm=inch(v["clr_in"]), angle_deg=D(180))
        )
        / inch(D(1))
    ),
    "arc_length": lambda v: figure(arc_length(clr_mm=v["clr_mm"], angle_deg=v["angle"])),
    "practice_vs_elongation_6061T6": lambda v: (
        100 * figure(extrados_strain(od_mm=inch(v["od_in"]), clr_mm=inch(v["clr_in"])))
    ),
    "practice_vs_elongation_6061T6_b": lambda v: (
        100 * figure(extrados_strain(od_mm=inch(v["od_in"]), clr_mm=inch(v["clr_in"])))
    ),
}


def check_rows() -> list[dict[str, str]]:
    with CHECK_VALUES.open(encoding="utf-8") as file:
        return [row for row in csv.DictReader(file) if row["topic"] in WORKED]


@pytest.mark.parametrize(
    "row", check_rows(), ids=lambda row: f"{row['id']} {row['topic']}, {row['source']}"
)
def test_a_published_or_worked_figure_comes_out(row: dict[str, str]) -> None:
    values = json.loads(row["inputs"], parse_float=Decimal, parse_int=Decimal)
    worked = WORKED[row["topic"]](values)
    assert abs(worked - D(row["expected"])) <= D(row["tolerance"]), row["source"]


def test_each_formula_to_be_checked_has_a_row() -> None:
    assert {row["topic"] for row in check_rows()} == set(WORKED)


# -- what the docstrings promise ---------------------------------------------------------------


@pytest.mark.parametrize("formula", FORMULAS, ids=lambda formula: formula.__name__)
def test_a_formula_says_what_it_is(formula: Callable[..., object]) -> None:
    words = described(formula)
    assert words.title
    assert words.formula
    assert "[" in words.symbols
    assert "]" in words.symbols
    assert words.valid
    assert words.source
    doc = inspect.getdoc(formula) or ""
    assert ">>> " in doc
    units = {"[mm]", "[-]", "[%]", "[MPa]", "[mm3]", "[mm4]", "[N m]", "[N mm]", "[deg]"}
    for symbol in words.symbols.split(";"):
        assert any(unit in symbol for unit in units), f"no unit: {symbol}"


def test_every_public_formula_of_these_files_is_in_the_list() -> None:
    named = {f.__module__: set[str]() for f in FORMULAS}
    for formula in FORMULAS:
        named[formula.__module__].add(formula.__name__)
    for name in ("strain", "thinning", "springback", "tooling_lengths", "pressure_wall", "ovality"):
        module = importlib.import_module(f"bendreply.rules.{name}")
        public = {
            key
            for key, value in vars(module).items()
            if inspect.isfunction(value)
            and value.__module__ == module.__name__
            and not key.startswith("_")
        }
        assert public == named[module.__name__]


@pytest.mark.parametrize("module", sorted({f.__module__ for f in FORMULAS}))
def test_the_examples_run(module: str) -> None:
    outcome = doctest.testmod(importlib.import_module(module))
    assert outcome.attempted > 0
    assert outcome.failed == 0


def test_a_docstring_without_its_parts_is_our_fault() -> None:
    def bare() -> None:
        """No formula here."""

    with pytest.raises(ValueError, match="bare"):
        described(bare)


# -- section properties by numeric integration (numpy, scipy) ----------------------------------


@pytest.mark.parametrize(("od", "wall"), [("50.8", "1.651"), ("25.4", "0.889"), ("60.3", "8.74")])
def test_second_moment_by_integration(od: str, wall: str) -> None:
    outer, inner = float(od) / 2, float(od) / 2 - float(wall)
    # I = integral of y^2 dA, y = r sin(angle), dA = r dr d(angle)
    by_integration, _ = integrate.dblquad(
        lambda r, angle: (r * np.sin(angle)) ** 2 * r, 0, 2 * np.pi, inner, outer
    )
    worked = float(figure(second_moment(od_mm=D(od), wall_mm=D(wall))))
    assert worked == pytest.approx(by_integration, rel=1e-8)


@pytest.mark.parametrize(("od", "wall"), [("50.8", "1.651"), ("25.4", "0.889"), ("60.3", "8.74")])
def test_plastic_modulus_by_integration(od: str, wall: str) -> None:
    outer, inner = float(od) / 2, float(od) / 2 - float(wall)
    # Zp = integral of |y| dA: twice the upper half
    half, _ = integrate.dblquad(lambda r, angle: r * np.sin(angle) * r, 0, np.pi, inner, outer)
    worked = float(figure(plastic_modulus(od_mm=D(od), wall_mm=D(wall))))
    assert worked == pytest.approx(2 * half, rel=1e-8)


def test_a_thin_tube_is_nearly_plastic_at_twice_the_yield_strain() -> None:
    # A thin ring under bending, elastic up to yield and then at it: M = integral of s(y) y ds.
    # At r = outer strain / yield strain, s(y) = min(1, r |y|) with y from -1 to 1.
    r = float(FULLY_PLASTIC)

    def moment(strain: float) -> float:
        value, _ = integrate.quad(
            lambda a: min(1.0, strain * np.sin(a)) * np.sin(a), 0, np.pi, points=[np.pi / 2]
        )
        return float(value)

    full, _ = integrate.quad(np.sin, 0, np.pi)
    assert moment(r) / full == pytest.approx(0.957, abs=0.001)


# -- outside their range they say so -----------------------------------------------------------

BEND = {"od_mm": D(50), "clr_mm": D(100)}
SIZE = {**BEND, "wall_mm": D(2)}
SPRING = {**SIZE, "angle_deg": D(90), "flow_mpa": D(350), "e_gpa": D(205)}
PRESSURE = {
    "pressure_mpa": D(5), "od_mm": D(60), "stress_mpa": D(120), "factor": D(1),
    "quality": D(1), "weld": D(1), "y": D("0.4"),
}  # fmt: skip


@pytest.mark.parametrize(
    ("formula", "inputs", "says"),
    [
        (extrados_strain, {**BEND, "clr_mm": D(25)}, "half the OD"),
        (intrados_strain, {**BEND, "clr_mm": D(25)}, "half the OD"),
        (elongation_share, {"strain": D(1), "elongation_pct": D(0)}, "elongation"),
        (smallest_d_by_elongation, {"elongation_pct": D(0)}, "elongation"),
        (smallest_d_by_elongation, {"elongation_pct": D(100)}, "100 %"),
        (elastic_limit_radius, {"od_mm": D(50), "yield_strain": D(0)}, "yield strain"),
        (extrados_wall, {**SIZE, "wall_mm": D(25)}, "wall"),
        (intrados_wall, {**SIZE, "clr_mm": D(25)}, "half the OD"),
        (tema_wall_before, {**SIZE, "wall_mm": D(0)}, "wall"),
        (tema_extrados_wall, {**SIZE, "clr_mm": D(20)}, "half the OD"),
        (handbook_extrados_wall, {**SIZE, "wall_mm": D(30)}, "wall"),
        (b31_1_order_factor, {"diameters": D("2.999")}, "below 3"),
        (b31_1_extrados_wall, {"wall_mm": D(2), "diameters": D("2.5")}, "below 3"),
        (plastic_modulus, {"od_mm": D(50), "wall_mm": D(25)}, "wall"),
        (second_moment, {"od_mm": D(50), "wall_mm": D(0)}, "wall"),
        (plastic_moment, {"od_mm": D(50), "wall_mm": D(2), "flow_mpa": D(0)}, "flow stress"),
        (springback_deg, {**SPRING, "clr_mm": D(10000)}, "not plastic"),
        (springback_deg, {**SPRING, "angle_deg": D(0)}, "angle"),
        (flow_stress_range, {"yield_mpa": None, "ultimate_mpa": D(480)}, "not listed"),
        (clamp_length, {"od_mm": D(0)}, "OD"),
        (straight_between_bends, {"od_mm": D(-1)}, "OD"),
        (arc_length, {"clr_mm": D(100), "angle_deg": D(361)}, "whole turn"),
        (pressure_die_length, {**BEND, "angle_deg": D(0)}, "angle"),
        (intrados_factor, {"d_of_bend": D("0.5")}, "inside radius"),
        (extrados_factor, {"d_of_bend": D("0.5")}, "inside radius"),
        (pressure_wall, {**PRESSURE, "pressure_mpa": D(60)}, "OD/6"),
        (pressure_wall, {**PRESSURE, "weld": D(0)}, "weld factor"),
        (flattening_pct, {"largest_mm": D(48), "smallest_mm": D(52), "od_mm": D(50)}, "more than"),
        (out_of_roundness_pct, {"largest_mm": D(50), "smallest_mm": D(0)}, "smallest"),
        (roundness_ratio, {"largest_mm": D(0), "smallest_mm": D(0)}, "largest"),
        (boiler_tube_limit_pct, {"d_of_bend": D("0.4")}, "inside radius"),
        (smallest_diameter_faa, {"od_mm": D(0)}, "OD"),
    ],
)
def test_outside_its_range_a_formula_says_why(
    formula: Callable[..., object], inputs: dict[str, Any], says: str
) -> None:
    result = formula(**inputs)
    assert isinstance(result, Outside)
    assert says in result.reason


@pytest.mark.parametrize(
    ("diameters", "factor"),
    # ASME B31.1 Table 102.4.5 by S11: the rows, and beyond the last of them.
    [("3", "1.25"), ("4", "1.14"), ("5", "1.08"), ("6", "1.06"), ("60", "1.06")],
)
def test_order_factors_of_the_table(diameters: str, factor: str) -> None:
    assert b31_1_order_factor(diameters=D(diameters)) == D(factor)


def test_a_form_that_says_nothing_is_named_and_left_out_of_the_range() -> None:
    thinning = thinning_range(od_mm=D(50), wall_mm=D(2), clr_mm=D(125))  # 2.5 D
    shares = dict(thinning.by_form)
    assert isinstance(shares["ASME B31.1 order factor"], Outside)
    # Constant volume at 2.5 D: 1 / (2 k + 1) = 1/6; TEMA: 1 / (4 k + 1) = 1/11.
    assert thinning.low == pytest.approx(D(1) / 11)
    # Handbook form: (1 - 2/50) / (2 x 2.5) = 0.192
    assert thinning.high == D("0.192")


def test_pipe_counts_its_diameters_by_the_nominal_size() -> None:
    # NPS 2 (OD 60.325) at 152.4 mm: 3 nominal diameters, but only 2.53 of the OD.
    size = {"od_mm": D("60.325"), "wall_mm": D("3.9116"), "clr_mm": D("152.4")}
    by_od = dict(thinning_range(**size).by_form)["ASME B31.1 order factor"]
    by_nominal = dict(thinning_range(**size, nominal_mm=D("50.8")).by_form)
    assert isinstance(by_od, Outside)
    assert by_nominal["ASME B31.1 order factor"] == D("0.2")  # 1 - 1/1.25


# -- properties --------------------------------------------------------------------------------

ODS = st.decimals("3", "300", places=2)
RATIOS = st.decimals("0.6", "40", places=2)
WALL_SHARES = st.decimals("0.005", "0.45", places=3)


@given(ODS, RATIOS, st.decimals("0.01", "20", places=2))
def test_strain_falls_as_the_radius_grows(od: Decimal, k: Decimal, more: Decimal) -> None:
    tight = figure(extrados_strain(od_mm=od, clr_mm=k * od))
    wide = figure(extrados_strain(od_mm=od, clr_mm=(k + more) * od))
    assert wide < tight
    assert intrados_strain(od_mm=od, clr_mm=k * od) == -tight


@given(ODS, WALL_SHARES, RATIOS)
def test_the_thinning_range_is_in_order(od: Decimal, share: Decimal, k: Decimal) -> None:
    thinning = thinning_range(od_mm=od, wall_mm=share * od, clr_mm=k * od)
    assert thinning.low is not None
    assert thinning.high is not None
    assert 0 < thinning.low <= thinning.high < 1


@given(ODS, WALL_SHARES, RATIOS, st.sampled_from([D(2), D("25.4"), D("0.1")]))
def test_scaling_all_lengths_leaves_ratios(
    od: Decimal, share: Decimal, k: Decimal, scale: Decimal
) -> None:
    size = {"od_mm": od, "wall_mm": share * od, "clr_mm": k * od}
    scaled = {name: scale * value for name, value in size.items()}
    small, large = thinning_range(**size), thinning_range(**scaled)
    assert small.low == pytest.approx(large.low)
    assert small.high == pytest.approx(large.high)
    spring = {"angle_deg": D(90), "flow_mpa": D(400), "e_gpa": D(200)}
    returns = springback_deg(**size, **spring), springback_deg(**scaled, **spring)
    if isinstance(returns[0], Outside) or isinstance(returns[1], Outside):
        assert returns[0] == returns[1]
    else:
        assert returns[0] == pytest.approx(returns[1])


@given(st.decimals("3", "12", places=3), st.decimals("0.001", "3", places=3))
def test_the_order_factor_never_grows_with_the_radius(d: Decimal, more: Decimal) -> None:
    assert figure(b31_1_order_factor(diameters=d + more)) <= figure(b31_1_order_factor(diameters=d))
