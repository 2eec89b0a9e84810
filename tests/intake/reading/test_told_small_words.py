"""Small words around a figure that is sure: 'the smallest die they have', 'would be', 'after
bending', tube that is there, and a tube that somebody goes away from."""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import doubted, read_text

INCH = Decimal("25.4")


@pytest.mark.parametrize(
    "text",
    [
        "Tube 30 x 2. The tightest bend has a radius of 60 to the tube axis, all others are larger"
        " and can be rolled. One mandrel please.",
        "Tube 30 x 2, CLR 60 (2D, the smallest die they have). One mandrel please.",
        "Rohr 30 x 2. Der Radius, Mitte Rohr, wären 60 mm. Bitte einen Dorn.",
        "Tube 30 x 2. The radius, centre of tube, would be 60 mm. One mandrel please.",
        "Tube 30 x 2. Le rayon, à l'axe, serait de 60 mm. Il faut un mandrin.",
        "Tubo 30 x 2. Il raggio, in asse, sarebbe 60 mm. Ci serve un'anima.",
        "Tube acier 30 mm, paroi 2 mm, à chromer après cintrage, rayon 60 à l'axe. Il nous faut un"
        " mandrin.",
        "Rohr 30 mm, Wand 2 mm, nach dem Biegen zu verchromen, R 60 Rohrmitte. Ein Dorn bitte.",
        "Steel tube 30 mm, wall 2 mm, to be chromed after bending, 60 CLR. One mandrel.",
    ],
)
def test_a_length_said_so_is_sure(text: str) -> None:
    (request,) = read_text(text)
    assert (request.od_mm, request.wall_mm, request.clr_mm) == (30, 2, 60)
    assert not doubted(request)


@pytest.mark.parametrize(
    "text",
    [
        "We want to go from 25 to 38 mm tube. Tube: 38 OD x 1.5 wall, 76 CLR. One mandrel.",
        "Wir steigen von 25 auf 38 mm um. Rohr 38 x 1,5, R 76. Bitte ein Dorn.",
        "Nous voulons passer de 25 à 38 mm. Tube 38 x 1,5, rayon 76. Il nous faut un mandrin.",
        "Queremos pasar de 25 a 38 mm. Tubo 38 x 1,5, radio 76. Necesitamos un mandril.",
        "Vogliamo passare da 25 a 38 mm. Tubo 38 x 1,5, raggio 76. Ci serve un'anima.",
        "We willen van 25 naar 38 mm gaan. Buis 38 x 1,5, straal 76. Graag een doorn.",
    ],
)
def test_what_somebody_goes_away_from_is_no_size(text: str) -> None:
    (request,) = read_text(text)
    assert (request.od_mm, request.wall_mm, request.clr_mm) == (38, Decimal("1.5"), 76)


def test_copper_that_is_there_is_of_the_type_that_is_told() -> None:
    (request,) = read_text(
        "I have the pipe already from a job, it's 1\" type L copper, hard. The bend is on a 2-1/2"
        " inch radius to centerline. I want one mandrel."
    )
    assert (request.od_mm, request.wall_mm) == (Decimal("1.125") * INCH, Decimal("0.05") * INCH)
