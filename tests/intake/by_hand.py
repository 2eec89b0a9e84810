"""Results made by hand, and a clock that counts looks."""

from __future__ import annotations

import hashlib
from collections.abc import Callable
from datetime import UTC, date, datetime, timedelta
from decimal import Decimal

from bendreply.intake.model import Address, Draft, Kind, Message, Result
from bendreply.rules.assessment import Assessment, Decision
from bendreply.rules.request import Material, SizeRequest

START = datetime(2026, 11, 25, 9, 0, tzinfo=UTC)
MakeResult = Callable[..., Result]


class Clock:
    """A minute passes with each look."""

    def __init__(self) -> None:
        self.now = START

    def __call__(self) -> datetime:
        self.now += timedelta(minutes=1)
        return self.now


def made_result(
    name: str = "lou",
    *,
    kind: Kind = Kind.SIZES,
    decisions: tuple[Decision, ...] = (Decision.STOCK,),
    needed_by: date | None = None,
    draft: bool | str = True,
    **message: object,
) -> Result:
    """What might be made of one message of ``name``; ``message`` sets fields of the Message."""
    fields: dict[str, object] = {
        "message_id": f"{name}-1@mail.example.net",
        "sender": Address(name=name.title(), address=f"{name}@example.net"),
        "subject": "Mandrel",
        "received_at": datetime(2026, 11, 24, 8, 0, tzinfo=UTC),
        "body": f"1.75 x .095 on a 4.5 clr, {name}",
        "raw_sha256": hashlib.sha256(name.encode()).hexdigest(),
    }
    came = Message.model_validate(fields | message)
    request = SizeRequest(
        od_mm=Decimal("44.45"),
        wall_mm=Decimal("2.413"),
        clr_mm=Decimal("114.3"),
        material=Material.CARBON_STEEL,
        needed_by=needed_by,
    )
    return Result(
        message=came,
        kind=kind,
        why_kind="made by hand",
        assessments=tuple(Assessment(request=request, decision=one) for one in decisions)
        if kind is Kind.SIZES
        else (),
        draft=Draft(
            subject="Re: Mandrel",
            body=draft if isinstance(draft, str) else "Hello,\n\nwe have it on the shelf.\n",
            template="stock",
        )
        if draft
        else None,
    )
