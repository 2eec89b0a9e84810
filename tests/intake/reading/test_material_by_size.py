"""Which of two materials belongs to which size, where later words say so; else it is doubted."""

from __future__ import annotations

import pytest

from bendreply.rules.request import Material

from .support import read_text

CS, AS, SS = Material.CARBON_STEEL, Material.ALLOY_STEEL, Material.STAINLESS_STEEL
AL = Material.ALUMINIUM

GIVEN: list[tuple[str, tuple[Material, Material]]] = [
    ("1.5 x .065 on 4.5 clr, 2 x .083 on 6 clr. The 1.5 is 304 and the 2 is 6061.", (SS, AL)),
    ("Rohr 38 x 1,5 R 57 und 50 x 2 R 100. Das 38er ist 1.4301, das 50er St37.", (SS, CS)),
    (
        "1.625 x .095 5.0 CLR\n1.500 x .120 4.5 CLR\n\n4130 for the 1-5/8, DOM for the other.",
        (AS, CS),
    ),
    (
        "Main hoop 1.75 x .120, braces 1.5 x .095, all 6 CLR. Hoop is DOM, braces are 4130.",
        (CS, AS),
    ),
    ("2 x .065 304 on 6 clr, 1.5 x .065 6061 on 4.5 clr", (SS, AL)),
    ("One for 2.5 x .065 aluminized on 5 clr. And one for 3 x .065 304, 4.5 clr.", (CS, SS)),
]


@pytest.mark.parametrize(("text", "materials"), GIVEN)
def test_a_size_has_the_material_given_to_it(
    text: str, materials: tuple[Material, Material]
) -> None:
    requests = read_text(text)
    assert tuple(request.material for request in requests) == materials
    assert not any(request.doubt_on("material") for request in requests)


@pytest.mark.parametrize(
    "text",
    [
        "1.5 x .065 and 2 x .083, all on 6 clr. One is 304, the other 6061.",
        "Rohr 38 x 1,5 und 50 x 2, beide R 100 mm. Eines ist 1.4301, das andere St37.",
    ],
)
def test_where_it_is_not_said_which_is_which_it_is_doubted(text: str) -> None:
    requests = read_text(text)
    assert len(requests) == 2
    assert all(request.doubt_on("material") for request in requests)
