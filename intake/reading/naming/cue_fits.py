"""Whether a number of a spelling can be what a cue says."""

from __future__ import annotations

from decimal import Decimal

from ....rules.standards import nps_of_dn, nps_of_inches
from ..text.cues import Cue
from ..text.figures import Figure
from ..text.roles import RADIUS_ROLES

_MOST_COUNTED = 500
_LEAST_RADIUS_IN = Decimal("0.2")
_THICKEST_MM = 25
_THICKEST_IN = 13
"""More in a 'wall' would be a length; written as inch it may still be a slip for mm."""
_THINNEST_OD_IN = Decimal("0.1")


def fits(figure: Figure, cue: Cue) -> bool:
    """Whether a number of this spelling can be what the cue says."""
    unit, value = figure.unit, figure.number.value
    if cue.role == "quantity":
        counts = unit is None and figure.number.style in ("integer", "words")
        return counts and value <= _MOST_COUNTED and figure.link not in ("times", "slash")
    if (
        cue.role == "noise"
        and cue.side == "before"
        and (figure.number.style != "integer" or unit in ("mm", "in", "cm"))
    ):
        return False  # "RFQ: 1.75 x .083": orders and drawings have whole numbers
    if figure.is_gauge:
        return cue.role == "wall"
    if unit == "sch":
        return False
    if cue.role == "nps" and cue.side == "after":
        # "0.049 nominal" is a wall, "50 NB" a DN
        whole = value == value.to_integral_value()
        return nps_of_inches(value) is not None or (whole and nps_of_dn(int(value)) is not None)
    if unit == "D":
        return cue.role in ("clr", "radius", "times_d", "inside_r", "outside_r")
    if cue.role in RADIUS_ROLES:
        return not (unit in ("in", None) and value < _LEAST_RADIUS_IN)
    if cue.role == "id":
        # "weld bead inside max 0.3 mm"
        return value >= (2 if unit == "mm" else Decimal("0.1"))
    if cue.role == "wall" and unit == "mm":
        return value <= _THICKEST_MM  # "38 mm dick" is a diameter
    if cue.role == "wall":
        return not (unit == "in" and value > _THICKEST_IN)
    return not (cue.role == "od" and unit in ("in", None) and value < _THINNEST_OD_IN)
