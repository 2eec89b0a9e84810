"""The diameter of a bend whose radius is named beside it, multiples of the real OD, and radii to
the neutral axis. The sentences are made up; no published source.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text


@pytest.mark.parametrize(
    "bend",
    [
        "bent at 112mm diameter (the diameter of the bend on the centre line, so 56mm radius)",
        "bent to 112mm diameter on the centre line (56mm radius)",
        "bent on a 112mm centreline diameter, so 56mm radius",
        "bent at 112 dia, so radius 56",
        "gebogen mit 112 mm Durchmesser (in der Rohrmitte, also Radius 56 mm)",
        "Biegedurchmesser 112 mm, also Radius 56 mm",
        "cintré à un diamètre de 112 mm (à la fibre neutre, donc rayon 56 mm)",
        "curvato a diametro 112 mm in asse, quindi raggio 56 mm",
        "gebogen op een diameter van 112 mm (hart op hart, dus straal 56 mm)",
    ],
)
def test_a_diameter_and_its_half_are_one_bend(bend: str) -> None:
    (size,) = read_text(f"A mandrel for 28mm od x 1.5mm wall tube, {bend}.")
    assert (size.od_mm, size.wall_mm, size.clr_mm) == (28, Decimal("1.5"), 56)
    assert not size.doubts


@pytest.mark.parametrize(
    "bend",
    [
        "5D where D = actual outside diameter",
        "5D (D = real OD)",
        "5D, D being the outside diameter of the pipe",
        "CLR 5 x actual OD",
        "5D (D = Außendurchmesser)",
        "5D (D = diamètre extérieur réel)",
        "5D (D = diámetro exterior real)",
        "5D (D = diametro esterno reale)",
    ],
)
def test_times_the_real_od_is_sure(bend: str) -> None:
    (size,) = read_text(f"Mandrel for NPS 3 sch 10S pipe, {bend}. Qty 2")
    assert size.clr_mm == 5 * Decimal("88.9")
    assert not size.doubt_on("clr")


def test_times_d_of_nominal_pipe_is_asked_for() -> None:
    (size,) = read_text("Mandrel for NPS 3 sch 10S pipe, 5D bend. Qty 2")
    assert size.doubt_on("clr")


@pytest.mark.parametrize(
    "radius",
    [
        "De straal is 3x de buitendiameter, hart op hart van de buis dus 180 mm.",
        "De straal is 3x de buitendiameter, dus 180 mm.",
        "De straal is 180 mm hart op hart van de buis.",
        "Radius auf der neutralen Achse 180.",
        "Raggio sull'asse neutro 180.",
        "Radio en el eje neutro 180.",
        "Radius in the neutral axis 180.",
        "Radius in the middle of the tube 180.",
    ],
)
def test_a_radius_to_the_middle_is_one(radius: str) -> None:
    (size,) = read_text(f"Doorn voor buis 60,0 x 2,0. {radius}")
    assert (size.od_mm, size.clr_mm) == (60, 180)
    assert not size.doubt_on("clr")
