"""Sizes judged by hand, and the reply that is drafted for them."""

from __future__ import annotations

from decimal import Decimal
from typing import Any

from bendreply.intake.drafting import draft
from bendreply.intake.model import (
    Address,
    Draft,
    Kind,
    Message,
    OwnText,
    Question,
)
from bendreply.rules.assessment import (
    Alternative,
    Assessment,
    Decision,
    MandrelNeeded,
    StockMatch,
)
from bendreply.rules.request import Material, SizeRequest
from bendreply.rules.shop import Shop

SHOP = Shop.model_validate(
    {
        "name": "Larkfield Tooling",
        "signature": ("Pat Example", "Larkfield Tooling"),
        "reply_name": "Larkfield Tooling",
        "limits": {
            "wall_factor_max": {"value": Decimal(30), "reason": "we have no wiper dies"},
            "d_of_bend_min": {"value": Decimal("2.5"), "reason": "our bender"},
        },
        "mandrel_clearance": {
            "reason": "house rule",
            "bands": ({"low": "0.1 mm", "high": "0.3 mm"},),
        },
        "lead_times": {"stock_working_days": 2, "custom_working_days": 15},
    }
)
STOCK = StockMatch(
    part="M-1750-095",
    mandrel_diameter_mm=Decimal("39.37"),
    balls=2,
    surface="chromed tool steel",
    on_hand=3,
)
MANDREL = MandrelNeeded(
    bore_mm=Decimal("39.624"),
    diameter_low_mm=Decimal("39.324"),
    diameter_high_mm=Decimal("39.524"),
    balls_low=2,
    balls_high=3,
    surfaces=("chromed tool steel", "aluminium bronze"),
)
LARGER_RADIUS = Alternative(
    od_mm=Decimal("44.45"),
    wall_mm=Decimal("2.413"),
    clr_mm=Decimal("114.3"),
    why="larger radius: the next die we have",
)


def size(od: str | None, wall: str | None, clr: str | None, **more: Any) -> SizeRequest:
    """A request; sizes in inches as written, converted by the defined inch."""
    inches = {"od_mm": od, "wall_mm": wall, "clr_mm": clr}
    lengths = {k: None if v is None else Decimal(v) * Decimal("25.4") for k, v in inches.items()}
    facts = {"material": Material.CARBON_STEEL, "grade": "DOM", **lengths, **more}
    return SizeRequest.model_validate(facts)


def judged(request: SizeRequest, decision: Decision, **more: Any) -> Assessment:
    od, wall, clr = request.od_mm, request.wall_mm, request.clr_mm
    return Assessment(
        request=request,
        decision=decision,
        wall_factor=od / wall if od and wall else None,
        d_of_bend=clr / od if clr and od else None,
        **more,
    )


def message(body: str = "Can you make this?", name: str = "Dale Prukop", **more: Any) -> Message:
    sender = Address(name=name, address="sender@example.net")
    return Message(message_id="m1", sender=sender, body=body, **{"subject": "mandrel", **more})


def own(mail: Message) -> OwnText:
    return OwnText(text=mail.text, body_start=mail.body_start, subject_counts=True)


def reply(
    *assessments: Assessment,
    mail: Message | None = None,
    kind: Kind = Kind.SIZES,
    questions: tuple[Question, ...] = (),
    shop: Shop = SHOP,
) -> Draft:
    mail = mail or message()
    made = draft(mail, kind, assessments, questions, own(mail), shop)
    assert made is not None
    return made


EASY = size("1.75", "0.095", "5.25")  # 1.75 / 0.095 = 18.42; 5.25 / 1.75 = 3
