"""Answers between our quoted questions: to which side of the bend the radius is told."""

from __future__ import annotations

from datetime import date
from decimal import Decimal

import pytest

from bendreply.intake.pasted import text_message
from bendreply.intake.pipeline import understand

INSIDE_50 = Decimal("62.5")  # 50 to the inside, and half of 25


@pytest.mark.parametrize(
    ("question", "answer", "clr"),
    [
        (
            "3. Biegeradius (Mitte Rohr)?",
            "ich hab nur den Innenradius, der ist 50. Dann wär die Mitte ja 62,5 oder?",
            INSIDE_50,
        ),
        ("Centreline radius?", "I only have the inside radius, that's 50", INSIDE_50),
        ("CLR?", "50 to the inside", INSIDE_50),
        ("CLR?", "50 inside", INSIDE_50),
        ("Rayon à l'axe ?", "j'ai seulement le rayon intérieur, 50", INSIDE_50),
        ("Buigradius hartlijn?", "binnenradius 50", INSIDE_50),
        ("CLR?", "62.5 (inside radius 50)", INSIDE_50),
        ("CLR?", "measured 75 to the outside of the bend", INSIDE_50),  # 75 - 12.5
        ("CLR?", "50", Decimal(50)),
        ("Inside radius or CLR?", "50 centreline, not inside", Decimal(50)),
    ],
)
def test_an_answer_says_to_which_side(question: str, answer: str, clr: Decimal) -> None:
    text = f"> OD?\n25 mm\n> Wall?\n1.5\n> {question}\n{answer}\n> Material?\n304\n> Qty?\n2\n"
    requests = understand(text_message(text, date(2026, 11, 25))).requests
    assert [(r.od_mm, r.wall_mm, r.clr_mm) for r in requests] == [(25, Decimal("1.5"), clr)]
