"""What shop.toml says: who the shop is, and its limits, each with its reason."""

from __future__ import annotations

import re
import zoneinfo
from datetime import tzinfo
from decimal import Decimal
from functools import lru_cache
from itertools import pairwise
from typing import Annotated, Literal, Self

from pydantic import Field, field_validator, model_validator

from .request import Frozen
from .shop_chat import ChatSettings
from .shop_fields import Length, Line, Number
from .shop_lead_times import LeadTimes
from .shop_mailbox import Mailbox
from .shop_prices import Prices
from .shop_report import Keeping, ReportSettings


class Limit(Frozen):
    """A limit of this shop's tooling, and why it is one. Exactly on the limit is feasible."""

    value: Number
    reason: Line


class Limits(Frozen):
    """Beyond these a bend is not likely to be feasible here."""

    wall_factor_max: Limit
    d_of_bend_min: Limit

    @model_validator(mode="after")
    def _can_be_met(self) -> Self:
        # A tube's wall factor is always above 2 and a bend's D above 0.5: geometry.
        if self.wall_factor_max.value <= 2:
            raise ValueError("wall_factor_max has to be more than 2, or no tube could pass")
        if self.d_of_bend_min.value < 0:
            raise ValueError("d_of_bend_min can't be less than 0")
        return self


class ClearanceBand(Frozen):
    """Diametral clearance between bore and mandrel [mm], for tubes up to an OD."""

    tube_od_up_to_mm: Length | None = Field(None, alias="tube_od_up_to")
    """None: for every OD above the band before."""
    low_mm: Length = Field(alias="low")
    high_mm: Length = Field(alias="high")

    @model_validator(mode="after")
    def _low_is_lower(self) -> Self:
        if self.low_mm > self.high_mm:
            raise ValueError("low is more than high")
        return self


class ClearanceRule(Frozen):
    """How much smaller than the bore this shop makes its mandrels, by OD."""

    reason: Line
    bands: tuple[ClearanceBand, ...]

    @field_validator("bands")
    @classmethod
    def _ascend(cls, bands: tuple[ClearanceBand, ...]) -> tuple[ClearanceBand, ...]:
        if not bands:
            raise ValueError("give at least one band")
        ends = [band.tube_od_up_to_mm or Decimal("Infinity") for band in bands]
        if any(later <= earlier for earlier, later in pairwise(ends)):
            raise ValueError(
                "bands have to ascend by tube_od_up_to; only the last may leave it out"
            )
        return bands

    def band_for(self, od_mm: Decimal) -> ClearanceBand | None:
        """The band for a tube of ``od_mm`` [mm]; None where the shop's rule does not reach."""
        return next(
            (b for b in self.bands if b.tube_od_up_to_mm is None or od_mm <= b.tube_od_up_to_mm),
            None,
        )


class StorePlace(Frozen):
    """Where inquiries are kept: a file, or the URL of a database server."""

    path: Line | None = None
    url: Line | None = None
    password_env: Line | None = None
    password_command: tuple[Line, ...] | None = None
    """Where the server's password is had; neither: the database library's own ways."""

    @model_validator(mode="after")
    def _one_place(self) -> Self:
        if (self.path is None) == (self.url is None):
            raise ValueError("give either path or url")
        if self.url and re.search(r"//[^/@]*:[^/@]*@|[?&]password=", self.url):
            raise ValueError(
                "the url holds a password: leave it out and name a variable (password_env) or a "
                "command (password_command)"
            )
        if self.password_env is not None and self.password_command is not None:
            raise ValueError("give one of password_env and password_command")
        if self.password_command == ():
            raise ValueError("password_command is empty: give the command and its arguments")
        if self.path is not None and (self.password_env or self.password_command):
            raise ValueError("a file needs no password: it is for a url")
        return self


class DeliverTo(Frozen):
    """Where approved drafts are laid when there is no mailbox server."""

    folder: Line | None = None
    """Drafts as .eml files in this folder."""
    maildir: Line | None = None
    mbox: Line | None = None

    @model_validator(mode="after")
    def _one_place(self) -> Self:
        if sum(one is not None for one in (self.folder, self.maildir, self.mbox)) != 1:
            raise ValueError("give one of folder, maildir and mbox")
        return self


class ShopSettings(Frozen):
    """All that shop.toml says."""

    name: Line
    signature: tuple[Line, ...]
    reply_name: Line
    reply_address: Line | None = None
    people: tuple[Line, ...] = ()
    """Who may approve; empty: anybody who gives a name."""
    spelling: Literal["american", "british"] = "american"
    time_zone: Line = "UTC"
    limits: Limits
    mandrel_clearance: ClearanceRule
    wiper_dies: Annotated[bool, Field(strict=True)] = False
    """Whether the shop bends with wiper dies; without them its limits are what they are."""
    lead_times: LeadTimes
    prices: Prices | None = None
    mailbox: Mailbox | None = None
    chat: ChatSettings = ChatSettings()
    store: StorePlace | None = None
    deliver: DeliverTo | None = None
    report: ReportSettings = ReportSettings()
    keep: Keeping | None = None
    """None: customers' words are kept until somebody removes them."""

    @field_validator("reply_address")
    @classmethod
    def _is_address(cls, value: str | None) -> str | None:
        if value is not None and not re.fullmatch(r"[^\s@<>,;]+@[^\s@<>,;]+", value):
            raise ValueError(f"{value!r} is not a mail address")
        return value

    @field_validator("time_zone")
    @classmethod
    def _is_zone(cls, value: str) -> str:
        if zone_of(value) is None:
            raise ValueError(f"{value!r} is not a time zone: write e.g. 'America/Chicago' or 'UTC'")
        return value


@lru_cache(maxsize=16)
def zone_of(name: str) -> tzinfo | None:
    """The time zone of that name, or None."""
    try:
        return zoneinfo.ZoneInfo(name)
    except (zoneinfo.ZoneInfoNotFoundError, ValueError, OSError):
        if zoneinfo.available_timezones():
            return None
        # Some systems carry no zones of their own; older dateutil brings them along.
        from dateutil import tz

        return tz.gettz(name)
