"""Tubes asked for in a week, taken into a store, and the report on them."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime
from decimal import Decimal

from bendreply.intake import desk
from bendreply.intake.model import Address, Kind, Message, Question, Result
from bendreply.intake.report import LAST_WEEK, Report, weekly_report
from bendreply.intake.report_weeks import Weeks
from bendreply.intake.store import Store
from bendreply.rules.assess import assess
from bendreply.rules.request import Material, SizeRequest
from bendreply.rules.shop import Shop, sample_shop

NOW = datetime(2026, 11, 25, 12, tzinfo=UTC)  # a Wednesday of week 48
IN_47 = datetime(2026, 11, 18, 12, tzinfo=UTC)
SHOP = sample_shop().model_copy(update={"time_zone": "UTC"})


def tube(
    od: str = "44.45", wall: str = "2.413", clr: str = "133.35", **more: object
) -> SizeRequest:
    return SizeRequest(
        od_mm=Decimal(od),
        wall_mm=Decimal(wall),
        clr_mm=Decimal(clr),
        **{"material": Material.CARBON_STEEL, **more},  # type: ignore[arg-type]
    )


Take = Callable[..., int]


def taker(store: Store) -> Take:
    """Takes a message in; its inquiry's number."""
    count = 0

    def taken(
        *sizes: SizeRequest,
        sender: str = "ada@example.com",
        at: datetime | None = IN_47,
        kind: Kind = Kind.SIZES,
        questions: tuple[Question, ...] = (),
        body: str = "a mandrel, please",
        **message: object,
    ) -> int:
        nonlocal count
        count += 1
        came = Message(
            message_id=f"{count}@example.com",
            sender=Address(name="", address=sender),
            received_at=at,
            body=body,
            **message,  # type: ignore[arg-type]
        )
        result = Result(
            message=came,
            kind=kind,
            why_kind="",
            assessments=tuple(assess(one, SHOP) for one in sizes),
            questions=questions,
        )
        return desk.take_in(store, result, "x").inquiry

    return taken


def report(
    store: Store, weeks: str | None = None, now: datetime = NOW, shop: Shop = SHOP
) -> Report:
    wanted = weeks if weeks in (None, LAST_WEEK) else Weeks.parse(weeks)
    return weekly_report(store, shop, now, wanted)
