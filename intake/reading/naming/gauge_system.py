"""Which table a gauge is of, where the sender tells the thickness beside it.

'20 gauge (.036", I've measured it)' is SWG, since that column says .036 and the BWG column .035.
"""

from __future__ import annotations

from decimal import Decimal

from ....rules import standards
from ..text.figures import Layout

_INCH = Decimal("25.4")
_EXACT = Decimal("0.008")
"""mm: a third of a thousandth of an inch, since thicknesses are told in whole ones."""


def name_gauges(layout: Layout) -> None:
    """Note 'swg' on each bare gauge whose thickness is told, and is that of the SWG column only."""
    for figure in layout.figures:
        told = layout.after_in_sentence(figure)
        if figure.unit != "ga" or figure.notes or told is None or told.link != "restate":
            continue
        if told.role != "wall" or told.unit not in (None, "in") or told.number.style != "decimal":
            continue
        gauge = str(figure.number.value)
        mm = told.number.value * _INCH
        bwg, swg = standards.bwg_mm(gauge), standards.swg_mm(gauge)
        if swg is None or abs(swg - mm) > _EXACT or (bwg and abs(bwg - mm) <= _EXACT):
            continue
        figure.notes.append("swg")
