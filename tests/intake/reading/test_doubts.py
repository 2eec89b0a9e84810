"""Two readings are a doubt: the field is asked back, and every reading is one the words allow."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import doubted, read_text, row, written_down

IN = Decimal("25.4")

# (words, doubted field, readings in mm that the words allow)
ONLY_THE_DOUBT_IS_CERTAIN = [
    row("wall-range", "2 OD, wall .095 to .120, 6 clr", "wall", [IN * Decimal("0.095"), IN * Decimal("0.12")]),
    row("gauge-choice", "2 OD, 17 or 16 gauge, 6 clr", "wall", [IN * Decimal("0.058"), IN * Decimal("0.065")]),
    row("radius-range", "38 x 1.5 mm, radius 75 mm to 250 mm", "clr", [Decimal(75), Decimal(250)]),
    row("od-range", "1.5 to 1.75 OD x .120, 6 clr", "od", [IN * Decimal("1.5"), IN * Decimal("1.75")]),
    row("wall-range-dash", "38 x 1,5-2,0 mm, R 76", "wall", [Decimal("1.5"), Decimal(2)]),
    row("d-against-radius", "2 inch OD x .065 tube, 3D bend, 5 inch clr", "clr", [IN * 6, IN * 5]),
    row("gauge-against-decimal", "2 OD, 12 gauge (.120) wall, 6 clr", "wall", [IN * Decimal("0.109"), IN * Decimal("0.12")]),
    row("mm-against-inch", '38.1 mm (1-3/8") OD x 1.65 mm wall, 114.3 mm CLR', "od", [Decimal("38.1"), IN * Decimal("1.375")]),
    row("radius-choice", "1.5 x .065, radius of 4 or 4.5 inches, not decided", "clr", [IN * 4, IN * Decimal("4.5")]),
    row("or-maybe", "2 OD .083 wall or maybe .065, 4 clr", "wall", [IN * Decimal("0.083"), IN * Decimal("0.065")]),
]  # fmt: skip


@pytest.mark.parametrize(("text", "field", "allowed"), ONLY_THE_DOUBT_IS_CERTAIN)
def test_a_choice_is_doubted_and_both_ends_are_named(
    text: str, field: str, allowed: list[Decimal]
) -> None:
    requests = read_text(text)
    assert requests, f"{text!r}: nothing read"
    assert all(field in doubted(r) for r in requests), f"{text!r}\n{written_down(requests)}"
    stated = {getattr(r, f"{field}_mm") for r in requests}
    named = {
        reading for r in requests for d in r.doubts if d.field == field for reading in d.readings
    }
    assert stated <= set(allowed), f"{text!r}\n{written_down(requests)}"
    assert stated | named == set(allowed)


# (subject, body, field, value from the body in mm)
SUBJECT_SAYS_OTHERWISE = [
    row("od", "Mandrel 1.5 x .095", "We need a mandrel for 1.75 x .095 wall, 5.25 clr.", "od", IN * Decimal("1.75")),
    row("wall", "1.75 x .120 mandrel", "Quote a mandrel, 1.75 OD x .095 wall, 5.25 clr.", "wall", IN * Decimal("0.095")),
]  # fmt: skip


@pytest.mark.parametrize(("subject", "body", "field", "value"), SUBJECT_SAYS_OTHERWISE)
def test_body_beats_subject_with_a_doubt(
    subject: str, body: str, field: str, value: Decimal
) -> None:
    (request,) = read_text(body, subject)
    assert getattr(request, f"{field}_mm") == value
    assert doubted(request) == {field}


SUBJECT_FILLS_A_GAP = [
    row("subject-fills-a-gap", "1.75 x .095 DOM", "How much for one mandrel, 5.25 clr?"),
    row("subject-fills-the-tube", "Mandrel 1-3/4 x .095", "Radius is 5-1/4 CLR. Price please."),
]


@pytest.mark.parametrize(("subject", "body"), SUBJECT_FILLS_A_GAP)
def test_subject_fills_a_gap_without_doubt(subject: str, body: str) -> None:
    (request,) = read_text(body, subject)
    assert (request.od_mm, request.wall_mm, request.clr_mm) == (
        IN * Decimal("1.75"),
        IN * Decimal("0.095"),
        IN * Decimal("5.25"),
    )
    assert not doubted(request)


def test_a_complete_subject_alone_is_a_request() -> None:
    (request,) = read_text("Price and delivery please.", "Mandrel 1.75 x .095 x 5.25 CLR")
    assert (request.od_mm, request.wall_mm, request.clr_mm) == (
        IN * Decimal("1.75"),
        IN * Decimal("0.095"),
        IN * Decimal("5.25"),
    )


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        # Read as a bore of 2: a wall of (30 - 2) / 2 = 14, an OD of 2.1 walls.
        ("Rohr 30 x 2 innen roh, R 57, ein Dorn bitte", True),
        ("mandrel for 30 mm OD, 10 mm wall, 90 mm CLR", True),  # 30 / 10 = 3
        ("mandrel for 40 mm OD, 8 mm wall, 120 mm CLR", False),  # 40 / 8 = 5
    ],
)
def test_a_wall_of_more_than_a_quarter_of_the_od_is_asked_about(text: str, *, asked: bool) -> None:
    """Common practice, no published source."""
    (request,) = read_text(text)
    assert bool(request.doubt_on("wall")) is asked
