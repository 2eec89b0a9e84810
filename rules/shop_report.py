"""What shop.toml says of the weekly report, and of how long customers' words are kept."""

from __future__ import annotations

from decimal import Decimal
from typing import Annotated, Self

from pydantic import Field, model_validator

from .request import Frozen
from .shop_fields import Line, Number

Weeks = Annotated[int, Field(strict=True, ge=1, le=520)]


class ReportSettings(Frozen):
    """How demand is weighed, and where the report is laid. All of it house rules."""

    weight_buying: Number = Decimal(3)
    """A customer who says that he buys, wants several mandrels, or names a day."""
    weight_asking: Number = Decimal(1)
    """A customer who just asks."""
    half_life_weeks: Weeks = 13
    """A request that old weighs half as much as one of the report's last week."""
    demand_weeks: Weeks = 52
    """How far back demand is looked at, the report's last week included."""
    folder: Line = "Reports"
    """The mailbox folder that ``report --deliver`` lays the report in."""

    @model_validator(mode="after")
    def _weights(self) -> Self:
        if self.weight_buying < 0 or self.weight_asking < 0:
            raise ValueError("a weight can't be less than 0")
        if max(self.weight_buying, self.weight_asking) == 0:
            raise ValueError("weight_buying and weight_asking can't both be 0")
        if max(self.weight_buying, self.weight_asking) > 1000:
            raise ValueError("a weight can't be more than 1000")
        return self


class Keeping(Frozen):
    """How long customers' words are kept."""

    messages_months: Annotated[int, Field(strict=True, ge=1, le=1200)]
    """Settled inquiries older than this are reduced to their figures."""
