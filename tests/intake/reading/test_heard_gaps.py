"""Lengths that no rule hears, in words made up for these tests, are filled in with a doubt."""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text


@pytest.mark.parametrize(
    ("text", "clr"),
    [
        ("One mandrel please: 1.5 x .065 304. It goes round something that is 4.5 in the middle.",
         "114.3"),  # 4.5 x 25.4
        ("Tube 42.4 x 2, the arc has 85 mm. One mandrel please.", "85"),
        ("30 x 1,5 Rohr, der Schwung hat 60 mm. Ein Dorn bitte.", "60"),
        ("Tube 30 x 1,5, le galbe fait 60 mm. Un mandrin svp.", "60"),
    ],
)  # fmt: skip
def test_a_radius_put_in_words_that_no_rule_knows_is_asked_about(text: str, clr: str) -> None:
    (size,) = read_text(text)
    assert size.clr_mm == Decimal(clr)
    assert size.doubt_on("clr") is not None


def test_a_wall_put_in_words_that_no_rule_knows_is_asked_about() -> None:
    (size,) = read_text("Das Rohr 38, Blech 1,5 mm, R 76. Ein Dorn.")
    assert (size.wall_mm, size.clr_mm) == (Decimal("1.5"), 76)
    assert size.doubt_on("wall") is not None
    assert size.doubt_on("clr") is None


@pytest.mark.parametrize(
    "text",
    [
        "One mandrel for 1.5 x .065, the price was 114 last year.",
        "One mandrel for 38 x 1.5. Our phone is 555 0142.",
        "One mandrel for 38 x 1.5, we make 90 a month.",
        "One mandrel for 38 x 1.5, bent to 90 degrees, legs 300 mm.",
        "Ein Dorn für 38 x 1,5, 45 Stück im Jahr, Lieferung bis 12.6.",
        "Un mandrin pour 38 x 1,5, cintrage à 90 degrés, 200 pièces.",
        "Mandrel for 38 x 1.5; quote no. 80, thanks.",
    ],
)
def test_a_figure_that_is_no_radius_fills_no_gap(text: str) -> None:
    (size,) = read_text(text)
    assert size.od_mm is not None
    assert size.clr_mm is None


def test_what_is_told_is_left_as_it_is() -> None:
    (size,) = read_text("One mandrel for 38 x 1.5, R 76. The arc has 85 mm.")
    assert size.clr_mm == 76


@pytest.mark.xfail(strict=True, reason="a machine's size is heard as the radius, though in doubt")
def test_a_machines_size_fills_no_gap() -> None:
    (size,) = read_text("Mandrel for 38 x 1.5. Machine is a 76 mm one.")
    assert size.clr_mm is None


@pytest.mark.xfail(strict=True, reason="a time of day is the radius by its place, in silence")
@pytest.mark.parametrize(
    "text",
    [
        "Need a mandrel for 2 x .120 tube. We close at 5.",
        "Need a mandrel for 2 x .120 tube. Pick up at 6?",
        "Need a mandrel for 2 x .120 tube. Our dock closes at 5 so come before",
    ],
)
def test_a_time_of_day_is_no_radius(text: str) -> None:
    (size,) = read_text(text)
    assert size.clr_mm is None
