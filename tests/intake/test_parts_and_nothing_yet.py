"""Bent parts that a shop makes itself are no order for them; 'nog niks' alone waits for nothing."""

from __future__ import annotations

import pytest

from bendreply.intake.model import Address, Message
from bendreply.intake.pipeline import understand


@pytest.mark.parametrize(
    ("subject", "body", "kind"),
    [
        (
            "Tool request",
            "OD = 22.0 mm\nWT = 1.0 mm\nCLR = 33.0 mm\nQty tools = 2\nQty bent parts p.a. = 8500",
            "sizes",
        ),
        (
            "mandrel",
            "One mandrel for 1.5 x .065 on a 4.5 CLR please, about 400 bent parts a year.",
            "sizes",
        ),
        ("mandrel", "Mandrel for 38 x 1.5, R 76 please. We run 2000 bent parts per week.", "sizes"),
        ("parts", "Could you supply 200 bent parts in 38 x 1.5 tube, R 76?", "other"),
        ("parts", "We are looking for a supplier of bent tubes, 38 x 1.5.", "other"),
        ("vraagje", "Maken jullie ook doornen op maat? Verder heb ik nog niks nodig.", "question"),
        ("vraagje", "Slijpen jullie doornen na? We hebben nog niet besloten.", "question"),
        ("bestelling", "Onze doorn 38 x 1,5: nog steeds niks. Wanneer komt hij?", "other"),
        ("bestelling 4411", "We hebben nog niets van jullie gehoord over onze order.", "other"),
    ],
)
def test_kind(subject: str, body: str, kind: str) -> None:
    said = understand(
        Message(
            message_id="a@example.com",
            sender=Address(name="", address="customer@example.net"),
            subject=subject,
            body=body,
        )
    )
    assert said.kind.value == kind, said.why_kind
