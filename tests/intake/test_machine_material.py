"""What a machine can bend is told of the machine: it is not the tube's material."""

from __future__ import annotations

import pytest

from .reading.support import read_text


@pytest.mark.parametrize(
    ("text", "material"),
    [
        (
            '5" od, .065 wall, 304, 7.5" clr, one please. machine is rated 6" x .083 mild',
            "stainless_steel",
        ),
        ('1.5 x .065, 4.5 clr. Our bender is good for 2" x .120 mild steel.', None),
        ("Rohr 38 x 2, 1.4301, R 76. Maschine biegt maximal 60 x 3 mm in S235.", "stainless_steel"),
        (
            "Tube 38 x 2, R 76, inox 304. La cintreuse va jusqu'à 60 x 3 mm acier.",
            "stainless_steel",
        ),
        # the tube's own sentence, though it names the machine
        ("Mandrel for our bender, 1.5 x .065 304 up to 90 deg, 4.5 clr", "stainless_steel"),
        ("1.5 x .065, 4.5 clr, mild steel. The bender is an old one.", "carbon_steel"),
    ],
)
def test_material_of_a_machine(text: str, material: str | None) -> None:
    (request,) = read_text(text)
    assert (request.material.value if request.material else None) == material
    assert not request.doubt_on("material")
