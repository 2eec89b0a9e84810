"""A radius whose side the drawing does not tell, or two people dispute, is doubted."""

from __future__ import annotations

import pytest

from .support import doubted, read_text, written_down

UNTOLD = [
    'The print only says "R 100" and does not say to where. Tube is 38 x 2, one mandrel.',
    "The drawing says R 100 but not to which side. Tube is 38 x 2. I need 1 mandrel.",
    "The sketch has R 100 but it isn't clear where that's measured. Tube is 38 x 2, 1 mandrel.",
    "Radius is 100, my welder says inside, I say centerline. Tube is 38 x 2. 1 mandrel please.",
    "R 100: Bob thinks it's the inside, I think it's the center. Tube 38 x 2, one mandrel.",
    "Auf der Zeichnung steht R 100, aber nicht wohin gemessen. Rohr 38 x 2, ein Dorn.",
    "Le plan indique R 100 sans préciser par rapport à quoi. Tube 38 x 2, un mandrin.",
    "El plano pone R 100 pero no dice hasta dónde. Tubo 38 x 2, un mandril.",
    "Il disegno riporta R 100 senza dire fin dove. Tubo 38 x 2, un mandrino.",
    "Op de tekening staat R 100 maar niet tot waar. Buis 38 x 2, een doorn.",
]
TOLD = [
    "One mandrel 38 x 2 on CLR 100. Unclear to what date you can deliver.",
    "One mandrel 38 x 2 on CLR 100, the print does not say to which revision.",
    "The print doesn't say which material. CLR 100, 38 x 2, one mandrel.",
]


@pytest.mark.parametrize("text", UNTOLD)
def test_the_side_is_asked(text: str) -> None:
    (request,) = read_text(text)
    assert (request.od_mm, request.wall_mm) == (38, 2)
    assert "clr" in doubted(request), written_down([request])


@pytest.mark.parametrize("text", TOLD)
def test_the_side_is_told(text: str) -> None:
    (request,) = read_text(text)
    assert request.clr_mm == 100
    assert not doubted(request), written_down([request])
