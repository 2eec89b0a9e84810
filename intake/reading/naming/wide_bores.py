"""Bores of something that a tube goes into: 'the shell is 42 ID', 'a header of 60 mm ID'. They are
wider than every tube that is told with its wall."""

from __future__ import annotations

from decimal import Decimal

from ..sizes.habits import usual_unit
from ..text.figures import Figure, Layout

_INCH = Decimal("25.4")
_WIDEST = Decimal(330)
"""No tube that is bent over a mandrel is wider [mm]."""
_SCALES = {"mm": (Decimal(1),), "cm": (Decimal(10),), "in": (_INCH,)}


def set_wide_bores_aside(layout: Layout) -> None:
    """A bore that no tube of the message could have, and no wall in its sentence that were its."""
    bores = [figure for figure in layout.figures if figure.role == "id" and figure.row is None]
    ods = [figure for figure in layout.figures if figure.role == "od" and not figure.negated]
    if not bores or not ods or not any(figure.role == "wall" for figure in layout.figures):
        return
    usual = usual_unit(layout)
    widest = max(max(_lengths(od, usual)) for od in ods)
    for bore in bores:
        near = [other.role for other in layout.in_sentence(bore.sentence)]
        alone = near.count("wall") <= near.count("od")
        if alone and min(_lengths(bore, usual)) > widest:
            bore.give("noise", "cue")


def _lengths(figure: Figure, usual: str | None) -> list[Decimal]:
    """What a figure may measure [mm], without its unit in the one that the message uses."""
    scales = _SCALES.get(figure.unit or usual or "", (Decimal(1), _INCH))
    lengths = [figure.number.value * scale for scale in scales]
    return [length for length in lengths if length <= _WIDEST] or lengths[:1]
