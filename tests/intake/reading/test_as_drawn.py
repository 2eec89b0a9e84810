"""A radius as a drawing or sketch tells it, its name far ahead; and no number of a drawing."""

from __future__ import annotations

from decimal import Decimal

import pytest

from .support import read_text


@pytest.mark.parametrize(
    ("said", "doubted"),
    [
        ('Beim Radius steht auf der Skizze "ca. 110".', True),
        ('Radius laut Zeichnung "110".', False),
        ("Beim Radius steht 110.", False),
        ("Für den Radius steht im Plan 110 mm.", False),
        ("As radius the sketch gives 110.", False),
        ("For the radius it says 110 on the sketch.", False),
        ('Radius per sketch "approx 110".', True),
        ("Pour le rayon, le plan indique 110.", False),
        ('Pour le rayon, le croquis indique "env. 110".', True),
        ("Para el radio el plano dice 110.", False),
        ('Para el radio el plano pone "aprox. 110".', True),
        ('Per il raggio sullo schizzo c\'è scritto "ca. 110".', True),
        ('Bij de radius staat op de schets "ca. 110".', True),
    ],
)
def test_a_radius_as_drawn(said: str, doubted: bool) -> None:
    (size,) = read_text(f"One mandrel for 35 x 2 mm tube. {said}")
    assert size.clr_mm == Decimal(110)
    assert bool(size.doubt_on("clr")) == doubted


@pytest.mark.parametrize(
    "said",
    [
        "35 x 2 mm tube, 4 bends a tube, radius per drawing.",
        "Radius laut Zeichnung, Rohr 35 x 2 mm.",
    ],
)
def test_none_is_told(said: str) -> None:
    (size,) = read_text(f"One mandrel. {said}")
    assert (size.od_mm, size.wall_mm, size.clr_mm) == (Decimal(35), Decimal(2), None)


@pytest.mark.parametrize(
    "text",
    [
        "Repère 1 : mandrin, tube 60,3 x 2 mm, R = 120 mm\nRepère 2 : mandrin, tube 76,1 x 2 mm,"
        " R = 152 mm\nRepère 3 : lissoir pour repère 2, quantité 1",
        "Item 1: mandrel, tube 60.3 x 2 mm, R = 120 mm\nItem 2: mandrel, tube 76.1 x 2 mm,"
        " R = 152 mm\nItem 3: wiper for item 2, qty 1",
    ],
)
def test_a_place_of_a_list_is_no_radius(text: str) -> None:
    """'3' numbers its own line, whatever it is for."""
    assert [size.clr_mm for size in read_text(text)] == [Decimal(120), Decimal(152)]


def test_what_is_written_on_a_carton() -> None:
    (size,) = read_text("A mandrel please. He wrote on the carton: 1-1/8, 14 GAUGE, 3 1/2 RAD.")
    assert size.od_mm == Decimal("28.575")
