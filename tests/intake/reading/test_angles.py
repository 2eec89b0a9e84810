"""Bend angles as customers write them, and degrees that are none."""

from __future__ import annotations

from datetime import date
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bendreply.intake.own_text import mask
from bendreply.intake.pasted import text_message
from bendreply.intake.reading import read
from bendreply.intake.reading.aside.angles import WHOLE_TURN, find_angle


@pytest.mark.parametrize(
    ("words", "angle"),
    [
        ("1.75 x .083 4130 on 4.5 clr, 90 deg", "90"),
        ("90° on a 6 in radius", "90"),
        ("bend angle: 135", "135"),
        ("22.5 degrees", "22.5"),
        ("a 90-degree elbow", "90"),
        ("four 90s and a 45", "90"),
        ("two 180's", "180"),
        ("45 deg, later 120 deg", "120"),
        ("a U-bend in 1 in tube", "180"),
        ("hairpins", "180"),
        ("a quarter turn", "90"),
        ("bent to 90.", "90"),
        ("37° flare on a 90° bend", "90"),
        ("Biegewinkel 75", "75"),
        ("90°-Bogen", "90"),
        ("90er Bogen", "90"),
        ("Biegung 60 Grad", "60"),
        ("22,5 Grad", "22.5"),
        ("coude à 90 degrés", "90"),
        ("curva a 90 gradi", "90"),
        ("codo de 90 grados", "90"),
        ("bocht van 90 graden", "90"),
    ],
)
def test_an_angle_is_seen(words: str, angle: str) -> None:
    assert find_angle(words) == Decimal(angle)


@pytest.mark.parametrize(
    "words",
    [
        "1.75 x .083 on 4.5 clr",
        "37 degree flare",
        "45° miter cut",
        "20 °C in the shop",
        "preheat to 200 degrees F",
        "rotate 90 degrees between bends",
        "twist it: rotated 90°",
        "tolerance of 1 degree",
        "within 2 degrees",
        "±1°",
        "+/- 2 deg",
        "60 bends a day",
        "90 bends",
        "in the 90s",
        "r 90 bend",
        "bent to 4.5 in clr",
        "bend 90 mm radius",
        "angle iron 2 x 2",
        "720 degrees of coil",
        "0 deg",
        "",
    ],
)
def test_other_degrees_and_numbers_are_no_bend(words: str) -> None:
    assert find_angle(words) is None


def test_only_the_stretch_asked_for_counts() -> None:
    text = "1 x .065 on 3 clr, 90 deg. 2 x .083 on 6 clr, 180 deg."
    middle = text.index("2 x")
    assert find_angle(text, 0, middle) == 90
    assert find_angle(text, middle) == 180


def read_angles(words: str) -> list[Decimal | None]:
    message = text_message(words, date(2026, 11, 2))
    return [request.angle_deg for request in read(mask(message), message).requests]


@pytest.mark.parametrize(
    ("words", "angles"),
    [
        ("1.75 x .083 4130 on 4.5 clr, 90 deg", [90]),
        ("We bend 180s: 1.75 x .083 4130 on 4.5 clr", [180]),
        ("1 x .065 on 3 in clr, 90 deg\n2 x .083 on 6 in clr, 45 deg", [90, 45]),
        ("1 x .065 on 3 in clr, 90 deg\n2 x .083 on 6 in clr", [90, None]),
        ("1 x .065 on 3 in clr\n2 x .083 on 6 in clr\nAll bends are 90 degrees.", [90, 90]),
        ("1.5 x .065 on 4 in clr and 6 in clr, all 90 deg", [90, 90]),
        ("1.75 x .083 4130 on 4.5 clr", [None]),
    ],
)
def test_each_request_has_its_angle(words: str, angles: list[int | None]) -> None:
    assert read_angles(words) == angles


@given(st.text(max_size=300))
def test_no_text_breaks_it(text: str) -> None:
    angle = find_angle(text)
    assert angle is None or 0 < angle <= WHOLE_TURN
