"""What the dies, the screws and the mandrel itself are of says nothing of the tube."""

# ruff: noqa: E501 - a row of a table stands on one line

from __future__ import annotations

import pytest

from .support import read_text


@pytest.mark.parametrize(
    ("text", "family"),
    [
        ("Need a mandrel for 1.5 x .095, 4.5 CLR, stainless. The dies are 4140.", "stainless_steel"),
        ("Need a mandrel for 1.5 x .095, 4.5 CLR. Our dies are 4140 steel.", None),
        ("Need a mandrel for 1.5 x .095, 4.5 CLR. Tube is stainless, fittings are brass.", "stainless_steel"),
        ("Need a mandrel for 1.5 x .095 carbon steel, 4.5 CLR, the bolts are stainless.", "carbon_steel"),
        ("Wir brauchen einen Dorn für 38 x 2, R 76, Edelstahl. Die Schrauben sind aus Messing.", "stainless_steel"),
        ("Necesitamos un mandril de acero para 38 x 2, R 76.", None),
        ("Necesitamos un mandril para tubo de acero 38 x 2, R 76.", "carbon_steel"),
        ("Ci serve un mandrino di acciaio per 38 x 2, R 76, tubo inox.", "stainless_steel"),
    ],
)  # fmt: skip
def test_the_tube_is_of_what_is_said_of_it(text: str, family: str | None) -> None:
    (size,) = read_text(text)
    assert (size.material.value if size.material else None) == family
    assert size.doubt_on("material") is None
