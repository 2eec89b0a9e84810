"""Formulas that mix units, worked out again by pint, which carries the units along.

A factor of 1000 slipped between MPa, GPa, N mm and N m shows here and nowhere else.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from decimal import Decimal
from typing import Any

import pint
import pytest

from bendreply.rules.formula import PI, described
from bendreply.rules.mechanics import FORMULAS
from bendreply.rules.pressure_wall import pressure_wall
from bendreply.rules.springback import plastic_moment, springback_deg
from bendreply.rules.tooling_lengths import arc_length

D = Decimal
OD, WALL, CLR = D("50.8"), D("1.651"), D("101.6")


@pytest.fixture(scope="module")
def ureg() -> Any:
    return pint.UnitRegistry(non_int_type=Decimal)


def moment(q: Any) -> Any:
    """Flow stress times plastic modulus (OD^3 - ID^3) / 6, in whatever unit comes out."""
    modulus = (q(OD, "mm") ** 3 - q(OD - 2 * WALL, "mm") ** 3) / 6
    return q(D(350), "MPa") * modulus


def test_the_bending_moment_comes_out_in_newton_metres(ureg: Any) -> None:
    by_pint = moment(ureg.Quantity).to("N m").magnitude
    worked = plastic_moment(od_mm=OD, wall_mm=WALL, flow_mpa=D(350))
    assert worked == pytest.approx(by_pint)


def test_the_moment_given_in_inches_and_psi_is_the_same(ureg: Any) -> None:
    # 2 x 0.065 in tube; 350 MPa in psi by pint
    inch = D("25.4")
    stress = ureg.Quantity(D(350), "MPa").to("psi")
    modulus = (
        ureg.Quantity(OD / inch, "in") ** 3 - ureg.Quantity((OD - 2 * WALL) / inch, "in") ** 3
    ) / 6
    by_pint = (stress * modulus).to("N m").magnitude
    assert plastic_moment(od_mm=OD, wall_mm=WALL, flow_mpa=D(350)) == pytest.approx(by_pint)


def test_springback_comes_out_in_degrees(ureg: Any) -> None:
    q = ureg.Quantity
    area = PI * (q(OD, "mm") ** 4 - q(OD - 2 * WALL, "mm") ** 4) / 64
    # d = a M CLR / (E I): the curvature let go, times the length of the arc
    curvature = moment(q) / (q(D(205), "GPa") * area)
    arc_per_radius = q(D(90), "degree").to("radian").magnitude
    by_pint = q((curvature * q(CLR, "mm")).to("").magnitude * arc_per_radius, "radian")
    worked = springback_deg(
        angle_deg=D(90), od_mm=OD, wall_mm=WALL, clr_mm=CLR, flow_mpa=D(350), e_gpa=D(205)
    )
    assert worked == pytest.approx(by_pint.to("degree").magnitude)


def test_the_arc_is_radius_times_angle(ureg: Any) -> None:
    angle = ureg.Quantity(D(90), "degree").to("radian").magnitude
    assert arc_length(clr_mm=CLR, angle_deg=D(90)) == pytest.approx(CLR * angle)


def test_a_wall_under_pressure_is_the_same_in_bar_and_psi(ureg: Any) -> None:
    # B31.3: t = P D / (2 (S E W / I + P Y)); P and S in psi, D in inches, by pint
    q = ureg.Quantity
    p, s = q(D("5.82"), "MPa").to("psi"), q(D("82.68"), "MPa").to("psi")
    factor, weld, y = D("1.06"), D("0.975"), D("0.4")
    by_pint = (p * q(D("273.2"), "mm").to("in") / (2 * (s * weld / factor + p * y))).to("mm")
    worked = pressure_wall(
        pressure_mpa=D("5.82"), od_mm=D("273.2"), stress_mpa=D("82.68"),
        factor=factor, quality=D(1), weld=weld, y=y,
    )  # fmt: skip
    assert worked == pytest.approx(by_pint.magnitude)


@pytest.mark.parametrize("formula", FORMULAS, ids=lambda formula: formula.__name__)
def test_every_unit_in_a_docstring_is_one_that_pint_knows(
    ureg: Any, formula: Callable[..., object]
) -> None:
    units = re.findall(r"\[([^\]]+)\]", described(formula).symbols)
    assert units
    for unit in units:
        if unit not in ("-", "%"):
            ureg.parse_units(re.sub(r"(?<=mm)(\d)", r"**\1", unit))
