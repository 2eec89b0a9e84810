"""Two walls that are both possible, the likelier told; a radius that the sender works out."""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import doubted, read_text

LIKELIER: list[tuple[str, str, str]] = [
    (
        "1.75 OD, 5.5 CLR. Wall: either .095 or .120, most likely .120. One mandrel.",
        "3.048",
        "2.413",
    ),
    ("1.75 OD, 5.5 CLR, wall .095 or .120, leaning towards .120. One mandrel.", "3.048", "2.413"),
    ("Rohr 42,4, Radius 85. Wand 2 oder 2,6, wahrscheinlich 2,6. Einen Dorn bitte.", "2.6", "2"),
    ("Tube 42,4, rayon 85. Épaisseur soit 2 soit 2,6, plutôt 2,6. Un mandrin svp.", "2.6", "2"),
    ("Tubo 42,4, radio 85. Espesor 2 o 2,6, seguramente 2,6. Un mandril por favor.", "2.6", "2"),
    ("Tubo 42,4, raggio 85. Spessore 2 oppure 2,6, probabilmente 2,6. Un mandrino.", "2.6", "2"),
    ("Buis 42,4, radius 85. Wand 2 of 2,6, waarschijnlijk 2,6. Een doorn graag.", "2.6", "2"),
]


@pytest.mark.parametrize(("text", "likelier", "other"), LIKELIER)
def test_the_likelier_wall_stands_first(text: str, likelier: str, other: str) -> None:
    (request,) = read_text(text)
    assert request.wall_mm == Decimal(likelier)
    doubt = request.doubt_on("wall")
    assert doubt is not None
    assert doubt.readings == (Decimal(likelier), Decimal(other))
    assert doubted(request) == {"wall"}


def test_the_other_wall_is_read_in_the_same_unit() -> None:
    (request,) = read_text("Rohr 42,4, Radius 85. Wand 2 oder 2,6. Einen Dorn bitte.")
    doubt = request.doubt_on("wall")
    assert doubt is not None
    assert doubt.readings == (2, Decimal("2.6"))


@pytest.mark.parametrize(
    ("legs", "doubts"),
    [
        ("the distance between the axes of the two legs is 50 mm, so I think radius 25", set()),
        ("legs 50 mm apart centre to centre, so I guess radius 25", set()),
        ("U-bocht, hart op hart 50 mm, dus ik denk radius 25", set()),
        ("legs 50 mm apart, so I think radius 25", {"clr"}),
        ("legs 60 mm apart centre to centre, so I think radius 25", {"clr"}),
        ("I think radius 25", {"clr"}),
    ],
)
def test_a_radius_that_the_legs_confirm(legs: str, doubts: set[str]) -> None:
    (request,) = read_text(f"2 mandrels for U-bends, tube 16 x 1 mm, {legs}.")
    assert request.clr_mm == 25
    assert doubted(request) == doubts


TOLD_TWICE = [
    "One mandrel, CLR 114, mild steel. Tube is either 38 x 1.5 or 38 x 2, can't decide.",
    "One mandrel, CLR 114, mild steel. Tube will be 38 x 1.5 or 38 x 2, not decided yet.",
    "Ein Dorn, R 114 Mitte, Stahl. Rohr entweder 38 x 1,5 oder 38 x 2, noch nicht entschieden.",
    "Un mandrin, rayon 114 à l'axe. Le tube sera soit 38 x 1,5 soit 38 x 2, pas encore décidé.",
    "Un mandril, radio 114 al eje. El tubo es 38 x 1,5 o 38 x 2, aún sin decidir.",
    "Un mandrino, raggio asse 114. Tubo 38 x 1,5 oppure 38 x 2, non abbiamo ancora deciso.",
    "Een doorn, radius 114 hart. De buis wordt 38 x 1,5 of 38 x 2, nog niet besloten.",
]


@pytest.mark.parametrize("text", TOLD_TWICE)
def test_one_tube_told_twice_for_its_wall(text: str) -> None:
    (request,) = read_text(text)
    assert (request.od_mm, request.clr_mm) == (38, 114)
    doubt = request.doubt_on("wall")
    assert doubt is not None
    assert set(doubt.readings) == {Decimal("1.5"), Decimal(2)}
    assert {d.field for d in request.doubts} == {"wall"}


def test_one_tube_told_twice_with_the_likelier_wall() -> None:
    text = "One mandrel, CLR 4.5. Tube will be 1.5 x .065 or 1.5 x .083, leaning to the .083."
    (request,) = read_text(text)
    assert request.wall_mm == Decimal("2.1082")


def test_two_walls_that_are_both_asked_for() -> None:
    requests = read_text("Please quote 38 x 1.5 and 38 x 2, CLR 114, one mandrel each.")
    assert [r.wall_mm for r in requests] == [Decimal("1.5"), 2]
