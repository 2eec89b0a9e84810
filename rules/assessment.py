"""What the rules say of one request: a decision, and every finding that led to it."""

from __future__ import annotations

from decimal import Decimal
from enum import StrEnum
from typing import Literal

from .request import FieldName, Frozen, SizeRequest


class Decision(StrEnum):
    """What the shop can answer."""

    STOCK = "stock"
    CUSTOM_MAKE = "custom-make"
    DECLINE = "decline"
    ASK = "ask"


class Finding(Frozen):
    """One rule's word on one request. ``declines`` and ``asks`` settle the decision."""

    rule: str
    effect: Literal["declines", "asks", "warns", "notes"]
    text: str
    """One plain sentence with the figures in it, fit for a customer."""
    source: str
    """A standard, a table, or 'house rule'."""
    measured: Decimal | None = None
    limit: Decimal | None = None
    field: FieldName | None = None
    """The field an ``asks`` finding wants settled."""
    question: str | None = None
    """For ``asks``: a question that one word answers."""
    leads: tuple[str, ...] = ()
    """Which answer leads where, one clause each: 'if 4 in: not likely to be feasible'."""


class MandrelNeeded(Frozen):
    """The tool a complete request calls for. Diameters in mm."""

    bore_mm: Decimal
    diameter_low_mm: Decimal
    diameter_high_mm: Decimal
    balls_low: int | None = None
    balls_high: int | None = None
    surfaces: tuple[str, ...] = ()
    """Surfaces that suit the material, best first; empty where the material is unknown."""
    bore_low_mm: Decimal | None = None
    bore_high_mm: Decimal | None = None
    """Smallest and largest bore by the tube's tolerances; None where only ``bore_mm``, the
    nominal one, is known. The diameters are for the smallest."""
    nose: str | None = None
    """What the shop's ball chart names: 'none or plug', 'plug', 'plug or ball', 'ball' ..."""
    pitch: str | None = None
    """Pitch of the balls: 'regular', 'close' ...; None where the chart names none."""
    wiper: Literal["no", "maybe", "yes"] | None = None
    """Whether the chart would have a wiper die as well."""
    advance_max_mm: Decimal | None = None
    advance_mm: Decimal | None = None
    """Advance of the nose past the tangent: the furthest, and the value to start with."""
    advance_table_mm: Decimal | None = None
    """A second opinion on it by the OD alone; None outside that table."""
    needed: Literal["needed", "either", "may not be needed"] | None = None
    """Whether the bend needs a mandrel at all; None where nobody has worked it out."""
    notes: tuple[str, ...] = ()
    """Where the figures are from and what they leave open, one clause each."""


class StockMatch(Frozen):
    """A mandrel on the shelf that serves the request."""

    part: str
    mandrel_diameter_mm: Decimal
    balls: int
    surface: str
    on_hand: int
    price: str | None = None


class Alternative(Frozen):
    """A nearby bend that would be feasible. Lengths in mm."""

    od_mm: Decimal
    wall_mm: Decimal
    clr_mm: Decimal
    why: str
    """E.g. 'larger radius: the next die we have, 5.25 in CLR'."""


class Assessment(Frozen):
    """A request with everything the rules found."""

    request: SizeRequest
    decision: Decision
    findings: tuple[Finding, ...] = ()
    wall_factor: Decimal | None = None
    d_of_bend: Decimal | None = None
    mandrel: MandrelNeeded | None = None
    stock: StockMatch | None = None
    alternatives: tuple[Alternative, ...] = ()
