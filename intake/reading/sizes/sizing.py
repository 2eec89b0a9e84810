"""A size while it is settled: its figures, how they are read, and what is in doubt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from decimal import Decimal

from ....rules.request import Doubt, FieldName
from ....rules.units import tidy
from ..text.figures import Figure
from ..text.roles import Role
from .choices import Choice, Length
from .groups import Group, Slot

_SHOWN = Decimal("0.00001")


class Doubts:
    """Doubts by field, readings joined, reasons kept apart by semicolons."""

    def __init__(self) -> None:
        self._readings: dict[FieldName, list[Decimal | str]] = {}
        self._why: dict[FieldName, list[str]] = {}

    def add(self, name: FieldName, values: Sequence[Decimal | str | None], why: str) -> None:
        """Doubt a field: what it may be [mm], the stated value first, and why."""
        held = self._readings.setdefault(name, [])
        for value in values:
            shown = tidy(value.quantize(_SHOWN)) if isinstance(value, Decimal) else value
            if shown is not None and shown not in held:
                held.append(shown)
        reasons = self._why.setdefault(name, [])
        if why not in reasons:
            reasons.append(why)

    def all(self) -> tuple[Doubt, ...]:
        """One doubt for each field that has any."""
        return tuple(
            Doubt(field=name, readings=tuple(values), why="; ".join(self._why[name]))
            for name, values in self._readings.items()
        )


@dataclass(slots=True)
class Sizing:
    """A size being settled. ``lengths`` [mm] start as the best reading and are completed."""

    group: Group
    schedule: Figure | None
    radius: Figure | None
    """The one radius that counts."""
    radius_role: Role
    choices: list[Choice]
    """Best first."""
    best: Choice
    lengths: dict[Length, Decimal | None]
    doubts: Doubts = field(default_factory=Doubts)

    @property
    def slots(self) -> dict[Slot, list[Figure]]:
        """The figures of the group."""
        return self.group.slots

    def drop_impossible(self) -> None:
        """'OD 38, ID 38' has no wall, a 38 tube no outside radius of 15: both are asked for."""
        for name, length in self.lengths.items():
            if length is not None and length <= 0:
                self.lengths[name] = None

    def doubt(self, name: Length, why: str, *others: Decimal | None) -> None:
        """Doubt a length as stated; ``others`` [mm] are what else it may be."""
        self.doubts.add(name, [self.lengths[name], *others], why)
