"""What shop.toml says of prices. Without it no price is mentioned but those of the catalogue."""

from __future__ import annotations

from decimal import Decimal
from itertools import pairwise

from pydantic import Field, field_validator

from .request import Frozen
from .shop_fields import Length, Line


class PriceBand(Frozen):
    """The price of a mandrel made to order, for tubes up to an OD [mm]."""

    tube_od_up_to_mm: Length | None = Field(None, alias="tube_od_up_to")
    """None: for every OD above the band before."""
    price: Line
    """As it is told to the customer, with its currency: 'USD 240'."""


class Prices(Frozen):
    """Price rules of this shop."""

    custom: tuple[PriceBand, ...]

    @field_validator("custom")
    @classmethod
    def _ascend(cls, bands: tuple[PriceBand, ...]) -> tuple[PriceBand, ...]:
        ends = [band.tube_od_up_to_mm or Decimal("Infinity") for band in bands]
        if any(later <= earlier for earlier, later in pairwise(ends)):
            raise ValueError(
                "prices have to ascend by tube_od_up_to; only the last may leave it out"
            )
        return bands

    def custom_price(self, od_mm: Decimal) -> str | None:
        """Price of one mandrel made for a tube of ``od_mm`` [mm]; None where no rule reaches."""
        return next(
            (
                band.price
                for band in self.custom
                if band.tube_od_up_to_mm is None or od_mm <= band.tube_od_up_to_mm
            ),
            None,
        )
