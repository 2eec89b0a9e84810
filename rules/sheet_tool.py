"""The sheet's part on the mandrel: bore, diameter, balls, surface, and where to set it."""

from __future__ import annotations

from decimal import Decimal
from typing import TYPE_CHECKING

from .advance import advance_advised, advance_by_table, advance_max
from .ball_chart import BallsNeeded, balls_needed
from .bore import bore_range, smallest_bore
from .formula import Outside
from .mandrel import surface_notes
from .needed import mandrel_need
from .sheet_figure import Figure, figure_of
from .tolerances import make_of
from .units import both_units

if TYPE_CHECKING:
    from .assessment import Assessment, MandrelNeeded
    from .bend import BendSpec
    from .request import SizeRequest
    from .shop import Shop

_CHART = "the shop's ball chart"
_NO_TABLE = Outside("the OD lies outside that table")


def tool_figures(spec: BendSpec, assessment: Assessment, shop: Shop) -> tuple[Figure, ...]:
    """What the bend calls for; all but need, bore and diameter only where a mandrel has room."""
    mandrel = assessment.mandrel
    always = (
        _need(spec),
        _bore(spec, assessment.request),
        _diameter(mandrel, shop),
    )
    if mandrel is None:
        return always
    return (
        *always,
        *_balls(spec, mandrel, assessment.request, shop),
        Figure(
            name="Surface",
            unit="text",
            text=" or ".join(mandrel.surfaces),
            formula="by the tube's material",
            source="mandrel_material.csv",
            note="; ".join(surface_notes(spec.material)),
            outside="" if mandrel.surfaces else _no_surface(spec),
        ),
        figure_of(advance_max, mandrel.advance_max_mm, unit="mm"),
        figure_of(advance_advised, mandrel.advance_mm, unit="mm", note="bend and try"),
        figure_of(advance_by_table, mandrel.advance_table_mm or _NO_TABLE, unit="mm"),
    )


def _need(spec: BendSpec) -> Figure:
    need = mandrel_need(
        wall_factor=spec.wall_factor, d_of_bend=spec.d_of_bend, material=spec.material
    )
    line = figure_of(mandrel_need, unit="text", note=need.why)
    return line.model_copy(update={"text": need.needed})


def _bore(spec: BendSpec, request: SizeRequest) -> Figure:
    found = bore_range(od_mm=spec.od_mm, wall_mm=spec.wall_mm, make=make_of(request))
    doubtful = [
        f"can be as small as {both_units(mm, request.written_in)} for {title}"
        for title, mm in found.doubtful
    ]
    low = found.low_mm
    if low is None:
        why = Outside(found.basis.removeprefix("nominal bore: ") + ", so the nominal bore counts")
        line = figure_of(smallest_bore, why, unit="mm", note="; ".join((*found.notes, *doubtful)))
    else:
        note = "; ".join((found.basis, *found.notes, *doubtful))
        line = figure_of(smallest_bore, low, found.high_mm, unit="mm", note=note)
    return line.model_copy(update={"name": "Bore by the tube's tolerances"})


def _diameter(mandrel: MandrelNeeded | None, shop: Shop) -> Figure:
    rule = shop.mandrel_clearance
    return Figure(
        name="Mandrel diameter",
        values=(mandrel.diameter_low_mm, mandrel.diameter_high_mm) if mandrel else (),
        unit="mm",
        formula="d = ID - c",
        symbols="d mandrel diameter [mm]; ID smallest bore [mm]; c diametral clearance [mm]",
        source=f"geometry; clearance: {rule.reason}",
        outside="" if mandrel else "our clearance does not reach this tube, or leaves no mandrel",
    )


def _balls(
    spec: BendSpec, mandrel: MandrelNeeded, request: SizeRequest, shop: Shop
) -> tuple[Figure, Figure]:
    said = balls_needed(
        shop.balls,
        wall_factor=spec.wall_factor,
        d_of_bend=spec.d_of_bend,
        material=spec.material,
        angle_deg=request.angle_deg,
    )
    outside = said if isinstance(said, str) else ""
    numbers = () if isinstance(said, str) else (Decimal(said.low), Decimal(said.high))
    shape = (
        f"nose: {mandrel.nose}" if mandrel.nose else "",
        f"pitch: {mandrel.pitch}" if mandrel.pitch else "",
        f"wiper die: {mandrel.wiper}" if mandrel.wiper else "",
    )
    return (
        Figure(
            name="Balls",
            values=tuple(dict.fromkeys(numbers)),
            unit="-",
            formula="by wall factor, D of bend, angle and kind of tube",
            source=_CHART,
            note=said.note if isinstance(said, BallsNeeded) else "",
            outside=outside,
        ),
        Figure(
            name="Nose, pitch and wiper die",
            unit="text",
            text=", ".join(filter(None, shape)),
            formula="by wall factor, D of bend and kind of tube",
            source=_CHART,
            note="" if shop.wiper_dies else "we have no wiper dies, hence our limits",
            outside="" if any(shape) else outside or "ferrous and soft tube differ here",
        ),
    )


def _no_surface(spec: BendSpec) -> str:
    if spec.material is None:
        return "it depends on the material, which is not given"
    return "no surface is on record for this material"
