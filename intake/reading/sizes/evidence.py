"""Where in the customer's words the lengths of a request stand."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from ....rules.request import Evidence
from ..text.figures import Figure
from ..text.plain import Plain
from .choices import Length
from .groups import Slot

LENGTH_OF: dict[Slot, Length] = {"od": "od", "id": "wall", "wall": "wall", "clr": "clr"}
"""The length that a slot is evidence of: a bore tells the wall."""
_UNIT = {
    "ga": "gauge, BWG", "bwg": "BWG", "swg": "SWG", "in": "inch", "mm": "mm", "cm": "cm",
    "m": "m", "ft": "ft", "sch": "schedule", "D": "times OD",
}  # fmt: skip
_ROLE = {
    "id": "bore", "inside_r": "inside radius", "outside_r": "outside radius",
    "inside_d": "across the bend inside", "outside_d": "across the bend outside",
    "centres": "half the leg centres", "bend_dia": "half the bend diameter",
    "times_d": "times OD", "nps": "nominal pipe size", "dn": "DN",
    "dash": "sixteenths of an inch",
}  # fmt: skip


def evidence_of(
    slots: Mapping[Slot, list[Figure]], original: str, plain: Plain, offset: int
) -> tuple[Evidence, ...]:
    """The figures of a request in order. ``offset`` is where ``original`` begins in the message."""

    def found() -> Iterator[Evidence]:
        for slot, figures in slots.items():
            for figure in figures:
                if figure.how == "quoted":
                    continue  # it stands in another mail, which has evidence of its own
                start, end = plain.span(figure.start, figure.end)
                yield Evidence(
                    field=LENGTH_OF[slot],
                    start=start + offset,
                    end=end + offset,
                    surface=original[start:end],
                    how=_how(figure),
                )

    return tuple(sorted(found(), key=lambda evidence: evidence.start))


def _how(figure: Figure) -> str:
    """How the words became the value: '16 ga' by BWG, '2D' times the OD."""
    parts = [_ROLE.get(figure.role or "", ""), _UNIT.get(figure.unit or "", "")]
    return ", ".join(part for part in dict.fromkeys(parts) if part)
