"""The mandrel that a bend calls for: its diameter, and the surface that suits the tube."""

from __future__ import annotations

from functools import lru_cache
from typing import TYPE_CHECKING

from .assessment import MandrelNeeded
from .request import Material
from .tables import rows

if TYPE_CHECKING:
    from .bend import BendSpec
    from .shop_settings import ClearanceRule

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


def mandrel_needed(spec: BendSpec, clearance: ClearanceRule) -> MandrelNeeded | None:
    """The mandrel for ``spec``: diameter = bore - diametral clearance [mm], low to high.

    From the NOMINAL bore OD - 2 x wall: tolerances of the tube and an inside weld bead are not
    counted yet. None where the shop's clearance rule does not reach that OD, or where the bore
    leaves nothing after the clearance. Source: geometry; clearance as the shop file has it.
    """
    band = clearance.band_for(spec.od_mm)
    if band is None or spec.bore_mm <= band.high_mm:
        return None
    return MandrelNeeded(
        bore_mm=spec.bore_mm,
        diameter_low_mm=spec.bore_mm - band.high_mm,
        diameter_high_mm=spec.bore_mm - band.low_mm,
        surfaces=surfaces_for(spec.material),
    )


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
