"""Counts at the ends of lines, by OD, 'mandrel for each'; and what only looks like one."""

from __future__ import annotations

import pytest

from bendreply.rules.request import Material

from .support import read_text

SIZES = "1.5 x .065 on 4.5 clr and 2 x .065 on 6 clr, 304. "
METRIC = "Tube 30 x 2 R 90 and 32 x 2 R 96, E235. "

TWO: list[tuple[str, tuple[int | None, int | None]]] = [
    (SIZES + "Mandrel for each please.", (1, 1)),
    (SIZES + "Please quote mandrel for both.", (1, 1)),
    ("Rohr 30 x 2 R 90 und Rohr 32 x 2 R 96, 1.4301. Bitte Dorn für jedes Rohr.", (1, 1)),
    ("Tubo 30 x 2 radio 90 y tubo 32 x 2 radio 96, inox. Mandril para cada uno, gracias.", (1, 1)),
    (SIZES + "Do I need a mandrel for each?", (None, None)),
    (SIZES + "He asked whether mandrel for each.", (None, None)),
    (METRIC + "I want to buy mandrels, 2 pcs for 30 and 1 pc for 32.", (2, 1)),
    (METRIC + "Mandrels: 1 for the 32 and 3 for the 30.", (3, 1)),
    ("Rohr 30 x 2 R 90 und 32 x 2 R 96, E235. Dorne: zwei für 30 und einer für 32.", (2, 1)),
    (METRIC + "Mandrels please. We bend 2 parts for 30 customers.", (None, None)),
    ("need mandrels for 304:\n1.5 x .065, 4.5 clr (2)\n2 x .065, 6 clr (1)", (2, 1)),
    ("need mandrels for 304:\n1.5 x .065, 4.5 clr = 3\n2 x .065, 6 clr = 1", (3, 1)),
    ("need mandrels for 304:\n1.5 x .065, 4.5 clr - 2\n2 x .065, 6 clr - 1", (2, 1)),
    ("Dorne, 1.4301:\nRohr 30 x 2, R 90    2\nRohr 32 x 2, R 96    1", (2, 1)),
    ("Mandrels, bends per part last:\n30 x 2, R 90    2\n32 x 2, R 96    4", (None, None)),
    ("Mandrels, 304:\n1.5 x .065, 4.5 clr (2)\n2 x .065, 6 clr", (None, None)),
    ("Mandrels, 1.4301:\n30 x 2, R 90 ..... pls make 2\n32 x 2, R 96 ..... pls make 1", (2, 1)),
]


@pytest.mark.parametrize(("text", "counts"), TWO)
def test_counts_of_two_sizes(text: str, counts: tuple[int | None, int | None]) -> None:
    requests = read_text(text)
    assert tuple(request.quantity for request in requests) == counts


ONE: list[tuple[str, int | None]] = [
    ("Hook me up with one?", 1),
    ("Can you set us up with two?", 2),
    ("We bend it with one now and it marks.", None),
    ("Qty tools = 2\nQty bent parts p.a. = 8500", 2),
    ("No. of tools: 3", 3),
    ("Qty parts p.a. = 20", None),
    ("Pls make 2.", 2),
    ("We make 2 per week.", None),
    ("Bauen Sie uns bitte einen.", 1),
    ("Haced uno por favor.", 1),
    ("A mandrel to start with.", 1),
    ("Erst mal ein Dorn.", 1),
    ("Zunächst ein Dorn, danke.", 1),
    ("Un mandrin pour commencer.", 1),
    ("D'abord un mandrin, merci.", 1),
    ("De momento un mandril.", 1),
    ("Per ora un mandrino.", 1),
    ("Voorlopig een doorn.", 1),
    ("For now a mandrel is too dear.", None),
    ("Schicken Sie uns bitte einen Katalog.", None),
]


@pytest.mark.parametrize(("said", "count"), ONE)
def test_counts_of_one_size(said: str, count: int | None) -> None:
    (request,) = read_text(f"Tube 38 x 1.5 mm, CLR 57 mm, 304.\n{said}")
    assert request.quantity == count


@pytest.mark.parametrize(
    ("text", "count"),
    [
        ("Tubo 54 x 1,5: inox 304, raggio 81, un mandrino.", 1),
        ("Rohr 54 x 1,5, Edelstahl, R 81, ein Dorn.", 1),
        ("Rohr 54 x 1,5, Edelstahl, R 81. Wir haben 304, R 81, einen Dorn.", None),
    ],
)
def test_an_article_at_the_end_of_a_list(text: str, count: int | None) -> None:
    (request,) = read_text(text)
    assert request.quantity == count


AS, CS, SS, TI = (
    Material.ALLOY_STEEL,
    Material.CARBON_STEEL,
    Material.STAINLESS_STEEL,
    Material.TITANIUM,
)


@pytest.mark.parametrize(
    ("said", "material"),
    [
        ("CDS2 tube", CS),
        ("BS 980 CDS-2", CS),
        ("CDS 2 tube", CS),
        ("ERW1", CS),
        ("for a ti exhaust", TI),
        ("Ti handlebars", TI),
        ("ti mando il disegno", None),
    ],
)
def test_grades_and_things(said: str, material: Material | None) -> None:
    (request,) = read_text(f'One mandrel, 1.5" x .065", {said}, 4.5" clr')
    assert request.material is material
    assert float(request.clr_mm or 0) == 114.3
    assert not request.doubts


@pytest.mark.parametrize(
    ("text", "materials"),
    [
        ("16 x 0,8, acier 25CD4, rayon 60\n14 x 0,8, même acier, rayon 50", (AS, AS)),
        ("16 x 1, Edelstahl 1.4301, R 40\n14 x 1, gleicher Stahl, R 40", (SS, SS)),
        ("1st: 16 x 1, 4130, R 60\n2nd: 14 x 1, same steel, R 60", (AS, AS)),
        ("16 x 1, 1.4301, R 40\n14 x 1, normaler Stahl, R 40", (SS, CS)),
        (
            "axle 32 x 2, R 64 ...... pls make 2 (25CrMo4 like the other)\n"
            "hoop 28 x 1.5, R 84 .... pls make 1, this one E235",
            (AS, CS),
        ),
    ],
)
def test_materials_of_two_lines(text: str, materials: tuple[Material, Material]) -> None:
    requests = read_text(f"Mandrels please:\n{text}")
    assert tuple(request.material for request in requests) == materials
