"""The mandrel that a bend calls for: diameter, balls, nose, surface, and where to set it first."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache
from typing import TYPE_CHECKING

from .advance import advance_advised, advance_by_table, advance_max
from .assessment import MandrelNeeded
from .ball_chart import BallChart, BallsNeeded, balls_needed
from .bore import bore_range
from .needed import mandrel_need
from .request import Material
from .tables import rows

if TYPE_CHECKING:
    from decimal import Decimal

    from .bend import BendSpec
    from .bore import BoreRange
    from .shop_settings import ClearanceRule
    from .tolerances import TubeMake

CHROME, BRONZE = "chromed tool steel", "aluminium bronze"

SURFACE_WORDS: dict[str, str] = {
    "chromed tool steel": CHROME,
    "hard-chromed tool steel": CHROME,
    "chromed steel": CHROME,
    "hard chrome": CHROME,
    "chrome": CHROME,
    "aluminium bronze": BRONZE,
    "aluminum bronze": BRONZE,
    "bronze": BRONZE,
}
"""What owners write in the catalogue (lower case) -> the surface as the tables name it."""

_NO_CHART = BallChart()


def mandrel_needed(
    spec: BendSpec,
    clearance: ClearanceRule,
    *,
    make: TubeMake | None = None,
    chart: BallChart = _NO_CHART,
    angle_deg: Decimal | None = None,
    wiper_dies: bool = False,
) -> MandrelNeeded | None:
    """The mandrel for ``spec``: diameter = smallest bore - diametral clearance [mm], low to high.

    The bore is the smallest that the tube's ``make`` allows, inside weld bead counted; the nominal
    one, with a note, where the make is not said or nothing is on record for it. Balls, nose and
    pitch are the shop's ``chart``'s, for a bend of ``angle_deg`` [degrees] where that is given.
    None where the shop's clearance rule does not reach that OD, or where the bore leaves nothing
    after the clearance. Source: geometry; clearance and chart as the shop's files have them.
    """
    bore = bore_range(od_mm=spec.od_mm, wall_mm=spec.wall_mm, make=make)
    band = clearance.band_for(spec.od_mm)
    if band is None or bore.counts_mm <= band.high_mm:
        return None
    ratios = {"wall_factor": spec.wall_factor, "d_of_bend": spec.d_of_bend}
    need = mandrel_need(**ratios, material=spec.material)
    said = balls_needed(chart, **ratios, material=spec.material, angle_deg=angle_deg)
    balls = said if isinstance(said, BallsNeeded) else None
    # Of the diameters in the range the middle one: half of its diametral clearance on each side.
    advance = _advance(
        od_mm=spec.od_mm,
        clr_mm=spec.clr_mm,
        bore_mm=bore.counts_mm,
        radial_clearance_mm=(band.low_mm + band.high_mm) / 4,
    )
    notes = [
        bore.basis,
        *bore.notes,
        need.why,
        balls.note if balls else str(said),
        *(_wiper_notes(balls, wiper_dies) if balls else ()),
        advance.note,
        *surface_notes(spec.material),
    ]
    return MandrelNeeded(
        bore_mm=bore.nominal_mm,
        bore_low_mm=bore.low_mm,
        bore_high_mm=bore.high_mm,
        diameter_low_mm=bore.counts_mm - band.high_mm,
        diameter_high_mm=bore.counts_mm - band.low_mm,
        balls_low=balls.low if balls else None,
        balls_high=balls.high if balls else None,
        nose=balls.nose if balls else None,
        pitch=balls.pitch if balls else None,
        wiper=balls.wiper if balls else None,
        surfaces=surfaces_for(spec.material),
        advance_max_mm=advance.max_mm,
        advance_mm=advance.advised_mm,
        advance_table_mm=advance.table_mm,
        needed=need.needed,
        notes=tuple(notes),
    )


def _wiper_notes(balls: BallsNeeded, wiper_dies: bool) -> Iterator[str]:
    if balls.wiper in ("yes", "maybe"):
        would = "would" if balls.wiper == "yes" else "might"
        note = f"a wiper die {would} be called for by the shop's chart"
        yield note if wiper_dies else f"{note}: the shop has none, and its limits are set for that"


@dataclass(frozen=True, slots=True)
class _Advance:
    max_mm: Decimal
    advised_mm: Decimal
    table_mm: Decimal | None
    note: str


@lru_cache(maxsize=4096)
def _advance(
    *, od_mm: Decimal, clr_mm: Decimal, bore_mm: Decimal, radial_clearance_mm: Decimal
) -> _Advance:
    setting = {"clr_mm": clr_mm, "bore_mm": bore_mm, "radial_clearance_mm": radial_clearance_mm}
    advised_mm, table_mm = advance_advised(**setting), advance_by_table(od_mm=od_mm)
    note = f"set {advised_mm} mm past tangent to start with: two thirds of the furthest"
    if table_mm is not None:
        apart = abs(table_mm - advised_mm)
        note += (
            f"; a table that looks at the OD alone says {table_mm} mm (S06), {apart} mm "
            f"{'more' if table_mm >= advised_mm else 'less'}: bend and try"
        )
    return _Advance(advance_max(**setting), advised_mm, table_mm, note)


@lru_cache(maxsize=16)
def surfaces_for(material: Material | None) -> tuple[str, ...]:
    """Surfaces that suit a tube of ``material``, best first; empty where nothing is on record.

    A surface that only some jobs run better on ('sometimes' in the table) is left out: it is for
    a person to choose. Source: data/mandrel_material.csv.
    """
    return tuple(
        row["mandrel_surface"]
        for row in rows("mandrel_material.csv")
        if row["material"] == material and row["verdict"] == "suits"
    )


@lru_cache(maxsize=16)
def surface_notes(material: Material | None) -> tuple[str, ...]:
    """What the sources say against or between surfaces for ``material``, one clause each.

    Source: data/mandrel_material.csv.
    """
    return tuple(
        f"{row['mandrel_surface']}: {row['verdict']} ({row['source']}"
        f"{'; ' + row['note'] if row['note'] else ''})"
        for row in rows("mandrel_material.csv")
        if row["material"] == material and (row["note"] or row["verdict"] != "suits")
    )


def doubtful_bores(bore: BoreRange) -> tuple[tuple[str, Decimal], ...]:
    """Smaller bores than the mandrel is made for that can't be ruled out: (of what, mm)."""
    return tuple((title, mm) for title, mm in bore.doubtful if mm < bore.counts_mm)
