"""Counts and materials in running prose: halves of a dozen, '2x' before a size, runs of parts."""

# ruff: noqa: E501 - a row of a table stands on one line: the words, then their meaning

from __future__ import annotations

from datetime import date
from decimal import Decimal

import pytest

from bendreply.intake.pasted import text_message
from bendreply.intake.pipeline import understand
from bendreply.rules.request import Material

from .support import read_text

A, B = "1.5 x .065 on a 4.5 CLR", "2 x .083 on a 6 CLR"


@pytest.mark.parametrize(
    ("text", "counts"),
    [
        (f"Need half a dozen mandrels: half for {A} and half for {B}.", [3, 3]),
        (f"Need a dozen mandrels. Half of them for {A}, half for {B}.", [6, 6]),
        ("Ein Dutzend Dorne: die Hälfte für 38 x 1,5 R 76 und die Hälfte für 45 x 2 R 90.", [6, 6]),
        (f"Quote 6 mandrels please: 3 for {A} and 3 for .083 wall 2 in on a 6 CLR.", [3, 3]),
        (f"Mandrels: 2x {A} and 3x {B}", [2, 3]),
        ("Mandrels: 2x 16mm OD, 1.2mm wall at CLR 30 mm and 3x 30 mm x 2.5 mm at a 107 mm radius.", [2, 3]),
        ("Mandrels: 1x 2.5 .065 wall on 6.25 CLR and 2x 13 gauge 1.25 in tube on a 3 CLR.", [1, 2]),
        ("Order: 3 mandrels for 2 in. OD, .134 wall on a 4 CLR die and 1 for 1.875 x .095 at CLR 6.5.", [3, 1]),
        ("Mandrels for 3 x .109 and 2 x .083. CLR 9 on the 3 in, 6 on the 2 in.", [None, None]),
        (f"This is for a 40 piece order. Put me down for a mandrel for {A}.", [1]),
        (f"Need a mandrel for {A}. Might want a 4 in one down the road, not now.", [1]),
        ("Need a mandrel for a rectangular tube, 2x 1.5 .065 wall", [1]),
    ],
)  # fmt: skip
def test_counts_in_prose(text: str, counts: list[int | None]) -> None:
    assert [request.quantity for request in read_text(text)] == counts


def test_half_of_the_mandrels_is_no_half_inch() -> None:
    text = f"Half a dozen mandrels: half for 2 x .083 at CLR 6 inch and half for {A}."
    assert [(one.clr_mm, one.quantity) for one in read_text(text)] == [
        (Decimal("152.4"), 3),
        (Decimal("114.3"), 3),
    ]


def test_a_radius_behind_an_article_is_no_steel() -> None:
    text = (
        "Mandrels for 45 x 2.5 and 51 x 2.5. The 45 gets a 110 radius and the 51 mm a 179 radius."
    )
    assert [request.material for request in read_text(text)] == [None, None]
    assert read_text("mandrel for 2-3/8 x .154 a53, 6 CLR")[0].material is Material.CARBON_STEEL


@pytest.mark.parametrize(
    "text",
    [
        "We're after a mandrel for 1 OD x .049 wall at 2.5 clr. We own the 1.25 x .095 one and it works great.",
        "Two sizes:\nHeader, 2 x .095 with a 6 CLR\nDownpipe, 2.25 x .083 with a 7 CLR\n\nNo need to quote the downpipe, we have that one.",
    ],
)
def test_what_is_owned_beside_it_makes_no_mail_of_another_kind(text: str) -> None:
    assert understand(text_message(text, date(2026, 11, 4))).kind.value == "sizes"
