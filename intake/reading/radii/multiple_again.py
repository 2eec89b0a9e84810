"""Radii worked out from a multiple for several tubes: '26.9 x 2.3 and 33.7 x 2.6, both on 3D, so
80.7 and 101.1'. The multiple has said them; which product is for which tube needs no rule."""

from __future__ import annotations

from decimal import Decimal

from ..text.figures import Figure, Layout
from ..text.roles import RADIUS_ROLES

_SAME = Decimal("0.006")
"""Senders round what they work out."""
_FAR = 8
"""Figures behind the multiple that are looked at."""


def set_products_aside(layout: Layout) -> None:
    """Figures behind a multiple that are that many times the ODs, each of another tube."""
    for multiple in layout.figures:
        if multiple.role != "times_d" or multiple.negated:
            continue
        ods = [f for f in layout.figures[: multiple.index] if f.role == "od" and not f.negated]
        behind = layout.figures[multiple.index + 1 : multiple.index + 1 + _FAR]
        found: list[Figure] = []
        tubes: set[int] = set()
        for figure in behind:
            od = next((od for od in ods if _is_product(figure, multiple, od)), None)
            if od is None or figure.sentence != multiple.sentence:
                break
            found.append(figure)
            tubes.add(od.index)
        if len(found) > 1 and len(tubes) == len(found):
            for figure in found:
                figure.give("noise", "same")


def _is_product(figure: Figure, multiple: Figure, od: Figure) -> bool:
    if figure.role not in (None, "od") and figure.role not in RADIUS_ROLES:
        return False
    product = multiple.number.value * od.number.value
    return figure.unit in (None, od.unit) and (
        abs(figure.number.value - product) <= product * _SAME
    )
