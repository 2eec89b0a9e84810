"""One tube asked for, another told of in plain words: the first is not in doubt."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text, row, written_down

_ASKED = 'One mandrel for 2.0" OD x .156" wall DOM, CLR 7". '

LEFT_OUT = [
    row("list-old-mandrel", "Two tubes on it:\n\n- 60.3 x 3.2, bent at 250 centreline. Don't need anything for that, our old mandrel does it.\n- 50.8 x 3.2, bent at 150 centreline. This is the one, I need a mandrel."),
    row("list-fine", "- 60.3 x 3.2, 250 centreline. We're fine on that one.\n- 50.8 x 3.2, 150 centreline. Need a mandrel for this one please."),
    row("list-nothing-there", "- 60.3 x 3.2, 250 centreline. Nothing needed there, we have a mandrel.\n- 50.8 x 3.2, 150 centreline. Please quote a mandrel."),
    row("run-two", "We run two tubes. 60.3 x 3.2 at 250 centreline: don't need anything for that, the old mandrel does it. 50.8 x 3.2 at 150 centreline: this is the one, I need a mandrel."),
    row("bend-empty", _ASKED + "The other tube on that print (1.5 x .120) we bend empty so nothing needed there. Want it on the floor by June 30."),
    row("bend-dry", _ASKED + "The 1.5 x .120 braces we bend dry, no mandrel needed there."),
    row("straight-on-drawing", _ASKED + "The other tube on the drawing, 1.5 x .120, is straight so nothing needed there."),
    row("home-made", _ASKED + "We've been running 1.25 x .065 with a home-made mandrel and that one is fine."),
]  # fmt: skip


@pytest.mark.parametrize("text", LEFT_OUT)
def test_the_other_is_left_out(text: str) -> None:
    requests = read_text(text)
    assert len(requests) == 1, written_down(requests)
    assert requests[0].od_mm == Decimal("50.8")
    assert not requests[0].doubts, written_down(requests)


@pytest.mark.parametrize(
    "text",
    [
        "Sizes in the shed are 38.1, 50.8, 63.5 and 76.2, all 1.6 wall 304.\n\nTo start with we'd only tool up for the 50.8, on a 76.2mm centreline radius. How much for one mandrel?",
        "We stock 38.1, 50.8 and 63.5, all 1.6 wall. Right now I only want a mandrel for the 50.8 on a 76.2 CLR.",
    ],
)
def test_one_of_those_in_the_shed(text: str) -> None:
    sure = [request for request in read_text(text) if not request.doubts]
    assert [(r.od_mm, r.clr_mm) for r in sure] == [(Decimal("50.8"), Decimal("76.2"))]


@pytest.mark.parametrize(
    "text",
    [
        "One mandrel each. 60.3 x 3.2, 250 centreline. 50.8 x 3.2, 150 centreline. The two tubes we bend dry wrinkle.",
        "Need mandrels for two tubes: 60.3 x 3.2 on 250 centreline and 50.8 x 3.2 on 150 centreline.",
    ],
)
def test_both_are_asked_for(text: str) -> None:
    assert len(read_text(text)) == 2
