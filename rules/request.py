"""What a customer asked for, as read, perhaps incomplete, each doubt kept beside its value."""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from enum import StrEnum
from typing import Literal

from pydantic import BaseModel, ConfigDict

FieldName = Literal["od", "wall", "clr", "material", "shape", "quantity", "needed_by"]
LENGTH_FIELDS: tuple[Literal["od", "wall", "clr"], ...] = ("od", "wall", "clr")


class Frozen(BaseModel):
    """Base of the value types: immutable, and no field that nobody declared."""

    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True)


class Shape(StrEnum):
    """Cross-section of the tube."""

    ROUND = "round"
    SQUARE = "square"
    RECTANGULAR = "rectangular"
    OTHER = "other"


class Material(StrEnum):
    """Material family: what decides the surface of the mandrel."""

    CARBON_STEEL = "carbon_steel"
    ALLOY_STEEL = "alloy_steel"
    STAINLESS_STEEL = "stainless_steel"
    ALUMINIUM = "aluminium"
    TITANIUM = "titanium"
    COPPER = "copper"
    BRASS = "brass"
    NICKEL_ALLOY = "nickel_alloy"
    OTHER = "other"


class Doubt(Frozen):
    """Two or more plausible readings of one field; the first is the one stated."""

    field: FieldName
    readings: tuple[Decimal | str, ...]
    """Lengths in mm as Decimal; materials, shapes, dates and counts as text. May hold one reading
    where only the stated value itself is to be confirmed ("no tighter than 6 in")."""
    why: str
    """One plain clause a customer would understand, e.g. 'radius given as a limit'."""
    about: Literal["value", "size"] = "value"
    """'size' where the value is not in question, but whether this size is asked for at all."""


class Evidence(Frozen):
    """Where a value stands in the customer's words: ``text[start:end] == surface`` always.

    A value out of an attached file stands nowhere in that text: ``surface`` is empty, and
    ``attachment`` and ``written`` say where it was instead.
    """

    field: FieldName
    start: int
    end: int
    surface: str
    how: str = ""
    """How the words became the value, e.g. '16 ga BWG', '2 x OD', '1-3/4 in'."""
    attachment: str | None = None
    """The attached file that says it, e.g. 'sizes.xlsx, sheet Tubes'; None for the message."""
    written: str = ""
    """The words in the attached file."""

    message_id: str = ""
    """The earlier message of the conversation that they stand in; empty: the one at hand."""

    @property
    def words(self) -> str:
        """The customer's words, wherever they stand."""
        return self.written or self.surface


class SizeRequest(Frozen):
    """One distinct tube and radius asked for. Lengths in mm, exact; None is 'not given'."""

    shape: Shape = Shape.ROUND
    od_mm: Decimal | None = None
    wall_mm: Decimal | None = None
    clr_mm: Decimal | None = None
    material: Material | None = None
    grade: str | None = None
    quantity: int | None = None
    """Mandrels wanted, never tubes or bent parts."""
    needed_by: date | None = None
    doubts: tuple[Doubt, ...] = ()
    evidence: tuple[Evidence, ...] = ()
    angle_deg: Decimal | None = None
    nominal_pipe: str | None = None
    """'NPS 1-1/2 schedule 40' or 'DN 40' where the size was given as pipe."""
    written_in: Literal["in", "mm"] = "in"
    """The unit the sender thinks in: replies put it first, alternatives use its gauge series."""

    def length_mm(self, field: Literal["od", "wall", "clr"]) -> Decimal | None:
        """The value of one length field [mm], or None where it was not given."""
        return {"od": self.od_mm, "wall": self.wall_mm, "clr": self.clr_mm}[field]

    @property
    def missing(self) -> tuple[FieldName, ...]:
        """Fields needed to judge the bend that the sender did not give."""
        absent: list[FieldName] = [f for f in LENGTH_FIELDS if self.length_mm(f) is None]
        if self.material is None:
            absent.append("material")
        return tuple(absent)

    def doubt_on(self, field: FieldName) -> Doubt | None:
        """The doubt on one field, or None."""
        return next((d for d in self.doubts if d.field == field), None)
