"""The whole sheet of one bend: every figure with its formula, symbols, range and source.

Information for whoever quotes the job. Where a figure can't be worked out it says why.
"""

from __future__ import annotations

from decimal import Decimal
from typing import TYPE_CHECKING

from .bend import BendSpec, d_of_bend
from .formula import Outside
from .listed import elongation_range, listed
from .pipe import nominal_size_mm
from .pressure_wall import extrados_factor, intrados_factor
from .readings import stated_reading
from .sheet_figure import Figure, Section, Value, figure_of
from .sheet_tool import tool_figures
from .springback import (
    flow_stress_range,
    plastic_modulus,
    plastic_moment,
    second_moment,
    springback_deg,
)
from .strain import elongation_share, extrados_strain, intrados_strain, smallest_d_by_elongation
from .thinning import (
    b31_1_order_factor,
    extrados_wall,
    intrados_wall,
    tema_wall_before,
    thinning_range,
)
from .tooling_lengths import arc_length, clamp_length, pressure_die_length, straight_between_bends
from .tube import bore, wall_factor

if TYPE_CHECKING:
    from .assessment import Assessment
    from .materials import MaterialEntry
    from .request import SizeRequest
    from .shop import Shop

__all__ = ["Figure", "Section", "sheet"]

_NO_ANGLE = Outside("no bend angle is given")
_NO_GRADE = Outside("no grade is named that the table lists: a family alone has no one figure")
_PERCENT = Decimal(100)


def sheet(assessment: Assessment, shop: Shop) -> tuple[Section, ...]:
    """All figures of the bend as stated; () where it is incomplete, impossible or not round."""
    request = assessment.request
    spec = stated_reading(request).spec
    if spec is None:
        return ()
    grades = listed(request.grade, request.material)
    return (
        Section(title="Tube and bend", figures=_ratios(spec, shop)),
        Section(title="Mandrel", figures=tool_figures(spec, assessment, shop)),
        Section(title="Stretch", figures=_stretch(spec, grades)),
        Section(title="Wall after bending", figures=_walls(spec, request)),
        Section(title="Moment and springback", figures=_moment(spec, request, grades)),
        Section(title="Lengths along the tube", figures=_lengths(spec, request.angle_deg)),
        Section(title="Pressure service, for information", figures=_pressure(spec, request)),
    )


def _ratios(spec: BendSpec, shop: Shop) -> tuple[Figure, ...]:
    thin, tight = shop.limits.wall_factor_max, shop.limits.d_of_bend_min
    return (
        figure_of(
            wall_factor,
            spec.wall_factor,
            unit="-",
            note=f"our limit: at most {thin.value} ({thin.reason})",
        ),
        figure_of(
            d_of_bend,
            spec.d_of_bend,
            unit="-",
            note=f"our limit: at least {tight.value} ({tight.reason})",
        ),
        figure_of(bore, spec.bore_mm, unit="mm"),
    )


def _stretch(spec: BendSpec, grades: tuple[MaterialEntry, ...]) -> tuple[Figure, ...]:
    size = {"od_mm": spec.od_mm, "clr_mm": spec.clr_mm}
    strain = extrados_strain(**size)
    span = elongation_range(grades)
    shares: list[Value] = [_NO_GRADE]
    smallest: list[Value] = [_NO_GRADE]
    if span is not None and isinstance(strain, Decimal):
        # The most elongation gives the least share and the smallest D.
        ends = (span[1], span[0])
        shares = [elongation_share(strain=strain, elongation_pct=end) for end in ends]
        smallest = [smallest_d_by_elongation(elongation_pct=end) for end in ends]
    note = _listed_as(grades, "elongation", [e.elongation_pct for e in grades], "%")
    return (
        figure_of(extrados_strain, strain, unit="%", times=_PERCENT),
        figure_of(intrados_strain, intrados_strain(**size), unit="%", times=_PERCENT),
        figure_of(elongation_share, *shares, unit="-", note=note),
        figure_of(smallest_d_by_elongation, *smallest, unit="-", note="advisory only"),
    )


def _walls(spec: BendSpec, request: SizeRequest) -> tuple[Figure, ...]:
    size = {"od_mm": spec.od_mm, "wall_mm": spec.wall_mm, "clr_mm": spec.clr_mm}
    thinning = thinning_range(**size, nominal_mm=nominal_size_mm(request.nominal_pipe or ""))
    forms = "; ".join(
        f"{form}: {share.reason}" if isinstance(share, Outside) else f"{form} {100 * share:.1f} %"
        for form, share in thinning.by_form
    )
    return (
        figure_of(
            thinning_range, thinning.low, thinning.high, unit="%", times=_PERCENT, note=forms
        ),
        figure_of(extrados_wall, extrados_wall(**size), unit="mm"),
        figure_of(intrados_wall, intrados_wall(**size), unit="mm"),
        figure_of(
            tema_wall_before,
            tema_wall_before(**size),
            unit="mm",
            note="to keep this wall at the outside of the bend",
        ),
    )


def _moment(
    spec: BendSpec, request: SizeRequest, grades: tuple[MaterialEntry, ...]
) -> tuple[Figure, ...]:
    size = {"od_mm": spec.od_mm, "wall_mm": spec.wall_mm}
    flows: list[Value] = []
    moments: list[Value] = []
    returns: list[Value] = []
    for entry in grades:
        span = flow_stress_range(yield_mpa=entry.yield_mpa, ultimate_mpa=entry.ultimate_mpa)
        if isinstance(span, Outside) or entry.e_gpa is None:
            continue
        for flow in span:
            flows.append(flow)
            moments.append(plastic_moment(**size, flow_mpa=flow))
            if request.angle_deg is not None:
                returns.append(
                    springback_deg(
                        **size,
                        clr_mm=spec.clr_mm,
                        angle_deg=request.angle_deg,
                        flow_mpa=flow,
                        e_gpa=entry.e_gpa,
                    )
                )
    unknown = _NO_GRADE if not grades else Outside("its strength is not listed")
    no_return = _NO_ANGLE if request.angle_deg is None else unknown
    note = _listed_as(grades, "yield", [e.yield_mpa for e in grades], "MPa")
    return (
        figure_of(plastic_modulus, plastic_modulus(**size), unit="mm3"),
        figure_of(second_moment, second_moment(**size), unit="mm4"),
        figure_of(flow_stress_range, *(_ends(flows) or [unknown]), unit="MPa", note=note),
        figure_of(plastic_moment, *(_ends(moments) or [unknown]), unit="N m"),
        figure_of(
            springback_deg,
            *(_ends(returns) or [no_return]),
            unit="deg",
            note="the range is that of the flow stress; shop values run higher: bend a trial",
        ),
    )


def _lengths(spec: BendSpec, angle_deg: Decimal | None) -> tuple[Figure, ...]:
    arc: Value = _NO_ANGLE
    die: Value = _NO_ANGLE
    if angle_deg is not None:
        arc = arc_length(clr_mm=spec.clr_mm, angle_deg=angle_deg)
        die = pressure_die_length(od_mm=spec.od_mm, clr_mm=spec.clr_mm, angle_deg=angle_deg)
    return (
        figure_of(arc_length, arc, unit="mm"),
        figure_of(pressure_die_length, die, unit="mm"),
        figure_of(clamp_length, clamp_length(od_mm=spec.od_mm), unit="mm"),
        figure_of(straight_between_bends, straight_between_bends(od_mm=spec.od_mm), unit="mm"),
    )


def _pressure(spec: BendSpec, request: SizeRequest) -> tuple[Figure, ...]:
    nominal_mm = nominal_size_mm(request.nominal_pipe or "")
    diameters = spec.clr_mm / (nominal_mm or spec.od_mm)
    counted = "nominal size" if nominal_mm else "OD"
    k = spec.d_of_bend
    return (
        figure_of(
            b31_1_order_factor,
            b31_1_order_factor(diameters=diameters),
            unit="-",
            note=f"at {diameters:.2f} diameters by the {counted}",
        ),
        figure_of(intrados_factor, intrados_factor(d_of_bend=k), unit="-"),
        figure_of(extrados_factor, extrados_factor(d_of_bend=k), unit="-"),
    )


def _ends(values: list[Value]) -> list[Value]:
    """Low and high of the figures; where one is outside its range, that one alone."""
    outside = [v for v in values if isinstance(v, Outside)]
    figures = [v for v in values if isinstance(v, Decimal)]
    return list(outside[:1]) if outside else [min(figures), max(figures)] if figures else []


def _listed_as(
    grades: tuple[MaterialEntry, ...], what: str, figures: list[Decimal | None], unit: str
) -> str:
    """'4130 annealed: elongation 30 %, typical, from ASTM A519 appendix, memory; ...'."""
    return "; ".join(
        f"{entry.name}: {what} {f'{figure} {unit}' if figure is not None else 'not listed'}, "
        f"{entry.value_kind}, from {entry.source}, {entry.confidence}"
        for entry, figure in zip(grades, figures, strict=True)
    )
